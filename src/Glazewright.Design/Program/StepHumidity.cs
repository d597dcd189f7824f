using Extra = Glazewright.Design.Program.CompiledProgram.Extra;

namespace Glazewright.Design.Program;

/// <summary>Drying, fogging and the curtain's wishes.</summary>
internal ref partial struct StepRun
{
    private const int CurtainOpen = 0;
    private const int CurtainWarm = 1;
    private const int CurtainShade = 2;

    /// <summary>How long a new wish must last before the curtain follows it, ms: our choice against hunting under passing clouds.</summary>
    private const int CurtainDelayMs = 300_000;

    private void AskHumidity()
    {
        ref readonly CompiledProgram.HumidityPart h = ref _p.HumidityRef;
        if (_humidity == Missing || _targetHumidity <= 0)
        {
            SetX(Extra.Drying, 0);
            SetX(Extra.Fogging, 0);
            return;
        }

        int dryAt = _targetHumidity + h.DryAbove;
        // Wet is wet in any cold: the curtain's gap dries against the cold cover when outside air must stay out.
        bool wet = X(Extra.Drying) != 0 ? _humidity > dryAt - h.DryDeadband : _humidity > dryAt;
        SetX(Extra.Drying, wet ? 1 : 0);
        if (wet)
        {
            int vapourShare = VapourShare();
            if (!h.DriesByOutsideAir || (vapourShare < 950 && _outside != Missing && _outside >= h.DryOnlyAboveOutside))
            {
                AskAll(h.Drying, ReasonCode.Drying, _humidity, dryAt, vapourShare);
            }
        }

        int fogAt = _targetHumidity - h.FogBelow;
        bool fogging = h.Fogging.Actuators.Length > 0 && (X(Extra.Fogging) != 0 ? _humidity < fogAt + h.FogDeadband : _humidity < fogAt);
        SetX(Extra.Fogging, fogging ? 1 : 0);
        if (fogging)
        {
            AskAll(h.Fogging, ReasonCode.Fogging, _humidity, fogAt, h.FogCeiling);
        }
    }

    /// <summary>Vapour of the outside air over that inside, 0.1 %; without an outside humidity the worst is taken.</summary>
    private readonly int VapourShare()
    {
        if (_outside == Missing || _inside == Missing)
        {
            return Missing;
        }

        int humidity = Read(Reading.OutsideHumidity, 0, 1300);
        long outside = (long)VapourTable.SaturationPa(_outside) * (humidity == Missing ? 1000 : Math.Min(humidity, 1000));
        long inside = (long)VapourTable.SaturationPa(_inside) * Math.Max(_humidity, 1);
        return (int)Math.Min(100_000, outside * 1000 / Math.Max(1, inside));
    }

    private void AskCurtain()
    {
        if (_p.Curtain is not { } c)
        {
            return;
        }

        int mode = X(Extra.CurtainMode);
        int wished = WishedCurtain(c, mode);
        bool snow = c.HoldOpenOnSnow && _readings[(int)Reading.Snow] == 1;
        if (snow)
        {
            mode = CurtainOpen;
            SetX(Extra.CurtainTimerMs, 0);
        }
        else if (wished == mode)
        {
            SetX(Extra.CurtainTimerMs, 0);
        }
        else if (X(Extra.CurtainTimerMs) >= CurtainDelayMs)
        {
            mode = wished;
            SetX(Extra.CurtainTimerMs, 0);
        }
        else
        {
            SetX(Extra.CurtainTimerMs, ProgramInterpreter.Later(X(Extra.CurtainTimerMs), _dt));
        }

        SetX(Extra.CurtainMode, mode);
        int gap = X(Extra.Drying) != 0 ? c.Gap : 0;
        int goal = mode switch { CurtainWarm => 10_000 - gap, CurtainShade => c.ShadeLevel, _ => 0 };
        int target = Stepped(c, goal);
        ReasonCode reason = snow ? ReasonCode.CurtainForSnow
            : target > goal ? ReasonCode.CurtainInSteps
            : mode == CurtainWarm ? ReasonCode.CurtainForWarmth
            : mode == CurtainShade ? ReasonCode.CurtainForShade
            : ReasonCode.Idle;
        (int a, int b, int third) = reason switch
        {
            ReasonCode.CurtainInSteps => (target, c.OpenStep, Math.Max(0, c.OpenStepMs - X(Extra.CurtainStepMs)) / 1000),
            ReasonCode.CurtainForWarmth => (_light, _outside, gap),
            ReasonCode.CurtainForShade => (_light, _inside == Missing ? Missing : _inside - _coolAt, 0),
            _ => (0, 0, 0),
        };
        _want[c.Actuator] = target;
        _wanted = target > 0 ? _wanted | 1UL << c.Actuator : _wanted & ~(1UL << c.Actuator);
        _commands[c.Actuator] = new Command(0, (int)reason, a, b, third);
    }

    private readonly int WishedCurtain(CompiledProgram.CurtainPart c, int mode)
    {
        bool dark = _light != Missing
            ? _light < c.DrawBelowLight + (mode == CurtainWarm ? Math.Max(10, c.DrawBelowLight / 5) : 0)
            : _clock < _sunrise || _clock >= _sunset;
        bool cold = _outside == Missing || _outside < c.DrawBelowOutside + (mode == CurtainWarm ? 100 : 0);
        if (dark && cold)
        {
            return CurtainWarm;
        }

        int past = _inside == Missing ? Missing : _inside - _coolAt;
        bool sunny = _light != Missing && _light > c.ShadeAboveLight - (mode == CurtainShade ? c.ShadeAboveLight / 6 : 0);
        bool warm = past != Missing && past >= c.ShadeAboveInside - (mode == CurtainShade ? 100 : 0);
        return sunny && warm ? CurtainShade : CurtainOpen;
    }

    /// <summary>Drawing goes straight to the goal; opening goes in steps with waits, so that the cold air above never falls on the crop at once.</summary>
    private readonly int Stepped(CompiledProgram.CurtainPart c, int goal)
    {
        int target = X(Extra.CurtainTarget);
        int waited = X(Extra.CurtainStepMs);
        if (goal >= target)
        {
            target = goal;
            waited = c.OpenStepMs;
        }
        else
        {
            while (waited >= c.OpenStepMs && target > goal)
            {
                target = Math.Max(goal, target - c.OpenStep);
                waited -= Math.Max(1, c.OpenStepMs);
            }

            waited = ProgramInterpreter.Later(Math.Max(0, waited), _dt);
        }

        SetX(Extra.CurtainTarget, target);
        SetX(Extra.CurtainStepMs, waited);
        return target;
    }
}
