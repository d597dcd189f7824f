using System.Numerics;
using Extra = Glazewright.Design.Program.CompiledProgram.Extra;

namespace Glazewright.Design.Program;

/// <summary>One step under way: readings made sane, wishes gathered, then the interlocks and least times settled.</summary>
internal ref partial struct StepRun
{
    private const int Missing = int.MinValue;
    private const int DayMs = 86_400_000;

    /// <summary>From one period to the next the temperature target goes over in two hours, ms: our choice, so that a lower target is not chased with every fan.</summary>
    private const int BlendMs = 7_200_000;

    private readonly CompiledProgram _p;
    private readonly ReadOnlySpan<int> _readings;
    private readonly int _dt;
    private readonly Span<int> _s;
    private readonly Span<Command> _commands;
    private readonly Span<int> _want;
    private int _inside;
    private int _humidity;
    private int _outside;
    private int _light;
    private int _sunrise;
    private int _sunset;
    private int _clock;
    private int _target;
    private int _targetHumidity;
    private int _coolAt;
    private int _heatAt;
    private ulong _wanted;
    private ulong _on;
    private ulong _stopped;
    private ulong _nextOn;
    private int _proofAllowed;
    private int _pulse;

    public StepRun(CompiledProgram program, ReadOnlySpan<int> readings, int dtMs, Span<int> state, Span<Command> commands, Span<int> want)
    {
        _p = program;
        _readings = readings;
        _dt = dtMs;
        _s = state;
        _commands = commands;
        _want = want;
    }

    public void Go()
    {
        _commands.Clear();
        ReadSanely();
        FindTarget();
        AskTemperature();
        AskHumidity();
        AskCurtain();
        AskLamps();
        AskBackground();
        Rotate();
        TakeHands();
        Settle();
        Sound();
    }

    private readonly int X(int extra) => _s[_p.ExtrasAt + extra];

    private readonly void SetX(int extra, int value) => _s[_p.ExtrasAt + extra] = value;

    private readonly int Read(Reading reading, int least, int most)
    {
        int raw = _readings[(int)reading];
        return raw >= least && raw <= most ? raw : Missing;
    }

    /// <summary>Out-of-range readings are missing ones; a humidity a little over saturation is a wet sensor and counts as saturation.</summary>
    private void ReadSanely()
    {
        _inside = Read(Reading.InsideTemperature, -5000, 8000);
        if (_inside == Missing)
        {
            _inside = Read(Reading.UpperTemperature, -5000, 8000);
        }

        int humidity = Read(Reading.InsideHumidity, 0, 1300);
        _humidity = humidity == Missing ? Missing : Math.Min(humidity, 1000);
        _outside = Read(Reading.OutsideTemperature, -7000, 7000);
        _light = Read(Reading.Light, 0, 1600);
        int rise = Read(Reading.Sunrise, 0, DayMs);
        int set = Read(Reading.Sunset, 0, DayMs);
        _sunrise = rise == Missing ? DayMs / 4 : rise;
        _sunset = set == Missing ? DayMs / 4 * 3 : set;
        int clock = Read(Reading.TimeOfDay, 0, DayMs);
        _clock = clock == Missing ? X(Extra.ClockMs) : clock == DayMs ? 0 : clock;
        int day = Read(Reading.DayOfYear, 1, 366);
        int today = day == Missing ? X(Extra.Day) : Math.Min(day, 365);
        int next = _clock + _dt;
        SetX(Extra.Day, next >= DayMs ? today % 365 + 1 : today);
        SetX(Extra.ClockMs, next % DayMs);
        int period = _p.PeriodOfDay[today];
        if (period != X(Extra.Period))
        {
            SetX(Extra.BlendFrom, X(Extra.TargetTemperature));
            SetX(Extra.BlendMs, X(Extra.Period) < 0 ? 0 : BlendMs);
            SetX(Extra.Period, period);
        }
    }

    private readonly int MarkMs(CompiledProgram.MarkPart mark)
    {
        int at = mark.Kind switch { 0 => 0, 1 => _sunrise, _ => _sunset } + mark.OffsetMs;
        return at < 0 ? at + DayMs : at >= DayMs ? at - DayMs : at;
    }

    /// <summary>Day from its start to its end, the rest night; a straight ramp after each.</summary>
    private void FindTarget()
    {
        ref readonly CompiledProgram.PeriodPart period = ref _p.Periods[X(Extra.Period)];
        int starts = MarkMs(period.Starts);
        int ends = MarkMs(period.Ends);
        int sinceStart = _clock - starts + (_clock < starts ? DayMs : 0);
        int length = ends - starts + (ends <= starts ? DayMs : 0);
        bool day = sinceStart < length;
        int since = day ? sinceStart : sinceStart - length;
        long done = period.RampMs > 0 && since < period.RampMs ? since * 10_000L / period.RampMs : 10_000;
        long dayShare = day ? done : 10_000 - done;
        _target = Between(period.NightTemperature, period.DayTemperature, dayShare);
        _targetHumidity = period.DayHumidity > 0 && period.NightHumidity > 0
            ? Between(period.NightHumidity, period.DayHumidity, dayShare)
            : day ? period.DayHumidity : period.NightHumidity;
        int blend = X(Extra.BlendMs);
        if (blend > 0)
        {
            _target = Between(_target, X(Extra.BlendFrom), blend * 10_000L / BlendMs);
            SetX(Extra.BlendMs, Math.Max(0, blend - _dt));
        }

        _coolAt = _target + period.CoolAbove + ColdRaise();
        _heatAt = _target - period.HeatBelow;
        SetX(Extra.TargetTemperature, _target);
        SetX(Extra.TargetHumidity, _targetHumidity);
    }

    /// <summary>How far the cooling threshold rises in the cold, 0.01 K.</summary>
    private readonly int ColdRaise()
    {
        if (_outside == Missing || _p.Cold.Raise == 0)
        {
            return 0;
        }

        long below = Math.Clamp(_target - _outside - _p.Cold.From, 0, _p.Cold.Full - _p.Cold.From);
        return (int)(below * _p.Cold.Raise / (_p.Cold.Full - _p.Cold.From));
    }

    private static int Between(int from, int to, long share) => from + (int)((to - from) * share / 10_000);

    /// <summary>The strongest wish wins; the first of equals keeps its reason.</summary>
    private void Ask(int actuator, int level, ReasonCode reason, int a, int b, int c)
    {
        if (level > _want[actuator])
        {
            _want[actuator] = level;
            _wanted |= 1UL << actuator;
            _commands[actuator] = new Command(0, (int)reason, a, b, c);
        }
    }

    private void Deny(int actuator, ReasonCode reason, int a, int b, int c)
    {
        _want[actuator] = 0;
        _wanted &= ~(1UL << actuator);
        _commands[actuator] = new Command(0, (int)reason, a, b, c);
    }

    private void AskAll(in CompiledProgram.Settings settings, ReasonCode reason, int a, int b, int c)
    {
        for (int i = 0; i < settings.Actuators.Length; i++)
        {
            Ask(settings.Actuators[i], settings.Levels[i], reason, a, b, c);
        }
    }

    private void AskTemperature()
    {
        if (_inside == Missing)
        {
            AskBlindly();
            return;
        }

        AskStages(_p.CoolAt, _p.CoolOn, _p.CoolOff, _p.CoolDelayMs, _p.CoolSettings, _inside - _coolAt, ReasonCode.Cooling,
            _outside != Missing && _target - _outside > _p.Cold.Full ? _p.Cold.Stages : int.MaxValue);
        AskStages(_p.HeatAt, _p.HeatOn, _p.HeatOff, _p.HeatDelayMs, _p.HeatSettings, _heatAt - _inside, ReasonCode.Heating, int.MaxValue);
    }

    private void AskStages(int at, int[] on, int[] off, int[] delayMs, CompiledProgram.Settings[] settings, int past, ReasonCode reason, int most)
    {
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
                    continue;
                }

                if (timer < delayMs[k])
                {
                    timer = ProgramInterpreter.Later(timer, _dt);
                    continue;
                }

                isOn = 1;
            }
            else if (past <= off[k])
            {
                isOn = 0;
                timer = 0;
                continue;
            }

            if (isOn == 0)
            {
                continue;
            }

            AskAll(settings[k], reason, past, timer / 1000, k + 1);
            timer = ProgramInterpreter.Later(timer, _dt);
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

    /// <summary>Equal machines take turns: as many as are asked for, those already running first, then the least used.</summary>
    private void Rotate()
    {
        foreach (ulong group in _p.RotationMasks)
        {
            if ((group & _wanted) == 0)
            {
                continue;
            }

            ulong free = 0;
            int asked = 0;
            int level = 0;
            Command why = default;
            for (ulong rest = group; rest != 0; rest &= rest - 1)
            {
                int i = BitOperations.TrailingZeroCount(rest);
                if (_s[i * CompiledProgram.PerActuator + CompiledProgram.Hand] >= 0)
                {
                    continue;
                }

                free |= 1UL << i;
                if (_want[i] > 0)
                {
                    asked++;
                    level = Math.Max(level, _want[i]);
                    why = asked == 1 ? _commands[i] : why;
                    _want[i] = 0;
                    _wanted &= ~(1UL << i);
                    _commands[i] = default;
                }
            }

            for (; asked > 0; asked--)
            {
                int best = BestOf(free);
                if (best < 0)
                {
                    break;
                }

                free &= ~(1UL << best);
                _want[best] = level;
                _wanted |= 1UL << best;
                _commands[best] = why;
            }
        }
    }

    /// <summary>A running one before a resting one, a startable one before one that must rest; then the least used.</summary>
    private readonly int BestOf(ulong free)
    {
        int best = -1;
        long bestRank = long.MaxValue;
        for (ulong rest = free; rest != 0; rest &= rest - 1)
        {
            int i = BitOperations.TrailingZeroCount(rest);
            int at = i * CompiledProgram.PerActuator;
            bool on = _s[at + CompiledProgram.Level] > 0;
            bool ready = _s[at + CompiledProgram.Since] >= _p.MinOffMs[i];
            long rank = (on ? 0L : ready ? 1L : 2L) << 40 | (uint)_s[at + CompiledProgram.Runtime];
            if (rank < bestRank)
            {
                bestRank = rank;
                best = i;
            }
        }

        return best;
    }

    private void TakeHands()
    {
        for (ulong rest = _p.ReadMask(_s, Extra.HandMask); rest != 0; rest &= rest - 1)
        {
            int i = BitOperations.TrailingZeroCount(rest);
            int hand = _s[i * CompiledProgram.PerActuator + CompiledProgram.Hand];
            _want[i] = hand;
            _wanted = hand > 0 ? _wanted | 1UL << i : _wanted & ~(1UL << i);
            _commands[i] = new Command(0, (int)ReasonCode.Hand, hand, 0, 0);
        }
    }

    /// <summary>Alarms of the document (a missing reading counts as out of range), then no temperature inside, then one that does not move for 12 h.</summary>
    private void Sound()
    {
        for (int k = 0; k < _p.Alarms.Length; k++)
        {
            CompiledProgram.AlarmPart alarm = _p.Alarms[k];
            int raw = _readings[alarm.Reading];
            Time(k, raw == Missing || raw < alarm.Low || raw > alarm.High, alarm.DelayMs);
        }

        int inside = Read(Reading.InsideTemperature, -5000, 8000);
        Time(_p.Alarms.Length, inside == Missing, 60_000);
        bool same = inside != Missing && inside == X(Extra.LastInside);
        SetX(Extra.SameInsideMs, same ? ProgramInterpreter.Later(X(Extra.SameInsideMs), _dt) : 0);
        SetX(Extra.LastInside, inside);
        Time(_p.Alarms.Length + 1, X(Extra.SameInsideMs) >= DayMs / 2, 0);
    }

    private readonly void Time(int alarm, bool bad, int delayMs)
    {
        int at = _p.AlarmAt + alarm * CompiledProgram.PerAlarm;
        _s[at] = bad && _s[at + 1] >= delayMs ? 1 : 0;
        _s[at + 1] = bad ? ProgramInterpreter.Later(_s[at + 1], _dt) : 0;
    }
}
