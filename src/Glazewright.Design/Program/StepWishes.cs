using Extra = Glazewright.Design.Program.CompiledProgram.Extra;

namespace Glazewright.Design.Program;

/// <summary>What temperature, lamps and the background ask for.</summary>
internal ref partial struct StepRun
{
    private void AskTemperature()
    {
        if (_inside == Missing)
        {
            AskBlindly();
            return;
        }

        (int Up, int Down) cool, heat;
        cool = AskStages(_p.CoolAt, _p.CoolOn, _p.CoolOff, _p.CoolDelayMs, _p.CoolSettings, _inside - _coolAt, _p.FirstCoolOn, Extra.CoolBusy, ReasonCode.Cooling, false,
            _outside != Missing && _target - _outside > _p.Cold.Full ? _p.Cold.Stages : int.MaxValue);
        heat = AskStages(_p.HeatAt, _p.HeatOn, _p.HeatOff, _p.HeatDelayMs, _p.HeatSettings, _heatAt - _inside, _p.FirstHeatOn, Extra.HeatBusy, ReasonCode.Heating, _p.Modulates, int.MaxValue);
        (_soon.Warmer, _soon.Colder) = (Math.Min(cool.Up, heat.Down), Math.Min(cool.Down, heat.Up));
    }

    /// <returns>How far the distance past the threshold must grow, and how far it must fall, for a stage to change its mind; 0.01 K.</returns>
    private (int Up, int Down) AskStages(int at, int[] on, int[] off, int[] delayMs, CompiledProgram.Settings[] settings, int past, int firstOn, int busyAt, ReasonCode reason, bool modulates, int most)
    {
        // Nothing on, no delay running, nothing asked: nothing changes.
        if (past < firstOn && X(busyAt) == 0)
        {
            return (firstOn == int.MaxValue ? int.MaxValue : firstOn - past, int.MaxValue);
        }

        int busy = 0, up = int.MaxValue, down = int.MaxValue;
        for (int k = 0; k < on.Length; k++)
        {
            ref int isOn = ref _s[at + k * CompiledProgram.PerStage];
            ref int timer = ref _s[at + k * CompiledProgram.PerStage + 1];
            if (k >= most)
            {
                isOn = 0;
                timer = 0;
            }
            else if (isOn == 0)
            {
                if (past < on[k])
                {
                    timer = 0;
                    up = Math.Min(up, on[k] - past);
                    continue;
                }

                if (timer < delayMs[k])
                {
                    down = Math.Min(down, past - on[k] + 1);
                    Due(delayMs[k] - timer);
                    timer = ProgramInterpreter.Later(timer, _dt);
                    busy = 1;
                    continue;
                }

                isOn = 1;
                if (modulates)
                {
                    // A burner lights at its least fire: the air tells how much more it takes.
                    _s[_p.ModulatedAt + k] = 0;
                }
            }
            else if (past <= off[k])
            {
                isOn = 0;
                timer = 0;
                up = Math.Min(up, Math.Max(1, on[k] - past));
                continue;
            }

            if (isOn == 0)
            {
                continue;
            }

            if (modulates && _p.HeatModulation[k].Band > 0)
            {
                AskPart(k, in settings[k], past, timer / 1000);
            }
            else
            {
                AskAll(settings[k], reason, past, timer / 1000, k + 1);
            }

            down = Math.Min(down, Math.Max(1, past - off[k]));
            timer = ProgramInterpreter.Later(timer, _dt);
            busy = 1;
        }

        SetX(busyAt, busy);
        return (up, down);
    }

    /// <summary>Something will be decided when a time is over.</summary>
    private void Due(int inMs) => _soon.DueMs = Math.Min(_soon.DueMs, inMs);

    /// <summary>
    /// A heating stage that is on, in proportion to how far the air is from where it is to be held, and by what has added up. It adds up only while that can still move the burner, so that
    /// nothing has to be undone later, and anew each time the stage comes on: a burner lights at its least fire.
    /// </summary>
    private void AskPart(int stage, in CompiledProgram.Settings settings, int past, int seconds)
    {
        ref readonly CompiledProgram.ModulationPart m = ref _p.HeatModulation[stage];
        ref int added = ref _s[_p.ModulatedAt + stage];
        long off = past - m.HoldsAt;
        long proportion = off * Whole / m.Band;
        if (m.ResetMs > 0 && (off > 0 ? proportion + added < Whole : proportion + added > 0))
        {
            added = (int)Math.Clamp(added + proportion * _dt / m.ResetMs, 0, Whole);
        }

        long asked = Math.Clamp(proportion + added, 1, Whole);
        for (int i = 0; i < settings.Actuators.Length; i++)
        {
            int actuator = settings.Actuators[i], most = settings.Levels[i], now = At(actuator, CompiledProgram.Level);
            int level = (int)Math.Max(_p.LeastLevel[actuator], most * asked / Whole);
            // Within its deadband the burner stays as it is.
            bool stays = now > 0 && level < most && level > _p.LeastLevel[actuator] && Math.Abs(level - now) < m.Deadband;
            Ask(actuator, stays ? now : level, ReasonCode.Heating, past, seconds, stage + 1);
        }
    }

    /// <summary>
    /// No temperature inside and none above: the lead heater runs when it is cold out (or, with nothing to go by, at night), the first cooling stage in sun or heat.
    /// Frost and heat are then the hard-wired thermostat's and the alarm's affair; this only keeps the house out of the worst.
    /// </summary>
    private void AskBlindly()
    {
        for (int at = _p.CoolAt; at < _p.AlarmAt; at++)
        {
            _s[at] = 0;
        }

        SetX(Extra.CoolBusy, 0);
        SetX(Extra.HeatBusy, 0);
        bool night = _clock < _sunrise || _clock >= _sunset;
        bool bright = _light != Missing ? _light > 300 : _outside == Missing && !night;
        bool hot = _outside != Missing && _outside > _coolAt;
        bool cold = _outside != Missing ? _outside < _heatAt - 500 && !bright : night;
        if ((bright && (_outside == Missing || _outside > _heatAt - 1500)) || hot)
        {
            if (_p.CoolSettings.Length > 0)
            {
                AskAll(_p.CoolSettings[0], ReasonCode.Blind, _outside, _light, 0);
            }
        }
        else if (cold && _p.HeatSettings.Length > 0)
        {
            AskAll(_p.HeatSettings[0], ReasonCode.Blind, _outside, _light, 0);
        }
    }

    private void AskLamps()
    {
        if (_p.Lamps is not { } lamps)
        {
            return;
        }

        int windowMs = lamps.WindowMinByPeriod[X(Extra.Period)] * 60_000;
        int noon = _sunrise / 2 + _sunset / 2;
        int begins = noon - windowMs / 2;
        int since = _clock - begins;
        since = since < 0 ? since + DayMs : since >= DayMs ? since - DayMs : since;
        int dark = X(Extra.LampsOn) != 0 ? lamps.OffAboveLight + lamps.OffAboveLight / 5 : lamps.OffAboveLight;
        bool on = windowMs > 0 && since < windowMs && (_light == Missing || _light <= dark);
        SetX(Extra.LampsOn, on ? 1 : 0);
        if (on)
        {
            Ask(lamps.Actuator, 10_000, ReasonCode.Photoperiod, since / 60_000, _light, windowMs / 60_000);
        }
    }

    /// <summary>In light and a shut house, up to the target; without a reading, or in the dark, nothing.</summary>
    private void AskCo2()
    {
        if (_p.Co2 is not { } gas)
        {
            return;
        }

        int ppm = Read(Reading.Co2, 0, 10_000);
        bool may = ppm != Missing && _light != Missing && _light >= gas.OnlyAboveLight && (_wanted & gas.RestsWith) == 0;
        bool on = may && ppm < (X(Extra.Dosing) != 0 ? gas.Target : gas.Target - gas.Deadband);
        SetX(Extra.Dosing, on ? 1 : 0);
        if (on)
        {
            Ask(gas.Actuator, 10_000, ReasonCode.Dosing, ppm, gas.Target, _light);
        }
    }

    /// <summary>What stays above a drawn cloth is drawn off from there; whether it is drawn is what the curtain was just told.</summary>
    private void AskUpperAir()
    {
        if (_p.UpperAir is not { } fans)
        {
            return;
        }

        int upper = Read(Reading.UpperTemperature, -5000, 8000);
        int drawn = Math.Max(_want[_p.Curtain!.Actuator], _p.SecondCurtain is { } second ? _want[second.Actuator] : 0);
        if (upper == Missing || _outside == Missing || drawn < fans.DrawnLevel)
        {
            return;
        }

        bool runs = (_p.ReadMask(_s, Extra.OnMask) >> fans.Actuator & 1) != 0;
        int over = upper - _outside;
        if (upper >= _coolAt && over >= fans.OnAboveOutside - (runs ? fans.Deadband : 0))
        {
            Ask(fans.Actuator, 10_000, ReasonCode.UpperAir, over, upper - _coolAt, drawn);
        }
    }

    private void AskBackground()
    {
        ulong asked = _wanted;
        int wind = Read(Reading.Wind, 0, 10_000);
        foreach (CompiledProgram.BackgroundPart part in _p.Background)
        {
            if ((asked & part.RestsWith) == 0 && (part.RestsAboveWind == 0 || wind == Missing || wind <= part.RestsAboveWind))
            {
                Ask(part.Actuator, part.Level, ReasonCode.Background, 0, 0, 0);
            }
        }
    }
}
