using System.Runtime.CompilerServices;
using Extra = Glazewright.Design.Program.CompiledProgram.Extra;

namespace Glazewright.Design.Program;

/// <summary>One step under way: readings made sane, wishes gathered, then the interlocks and least times settled.</summary>
internal ref partial struct StepRun
{
    private const int Missing = int.MinValue;
    private const int DayMs = 86_400_000;
    private const int Whole = 10_000_000; // what a modulating stage adds up is kept finer than a level

    /// <summary>From one period to the next the temperature target goes over in two hours, ms: our choice, so that a lower target is not chased with every fan.</summary>
    private const int BlendMs = 7_200_000;

    private readonly CompiledProgram _p;
    private readonly ReadOnlySpan<int> _readings;
    private readonly int _dt;
    private readonly Span<int> _s;
    private readonly Span<int> _x; // the state's extras
    private readonly Span<Command> _commands;
    private readonly Span<int> _want; // a column long
    private readonly int _column;
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
    private int _warmAt; // the cooling threshold, not raised in the cold
    private int _heatAt;
    private ulong _wanted;
    private ulong _on;
    private ulong _stopped;
    private ulong _nextOn;
    private int _proofAllowed;
    private int _pulse;
    private bool _moved;
    private int _vapourShare;
    private bool _wet;
    private bool _isMild;
    private bool _purges;
    private Outlook _soon;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public StepRun(CompiledProgram program, ReadOnlySpan<int> readings, int dtMs, Span<int> state, Span<Command> commands, Span<int> want)
    {
        _p = program;
        _readings = readings;
        _dt = dtMs;
        _s = state;
        _x = state[program.ExtrasAt..];
        _commands = commands;
        _want = want;
        _column = want.Length;
        _soon = Outlook.Quiet;
    }

    /// <summary>What may change the box's mind before it is asked again.</summary>
    public readonly Outlook Soon => _soon;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public bool Go()
    {
        _commands.Clear();
        ReadSanely();
        FindTarget();
        FindDrying();
        AskTemperature();
        AskHumidity();
        AskCurtain();
        AskLamps();
        AskCo2();
        AskUpperAir();
        AskBackground();
        Rotate();
        TakeHands();
        Settle();
        Sound();
        return _moved;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly int X(int extra) => _x[extra];

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly void SetX(int extra, int value) => _x[extra] = value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly int Read(Reading reading, int least, int most)
    {
        // A box may leave out the last of them.
        int raw = (int)reading < _readings.Length ? _readings[(int)reading] : Missing;
        return raw >= least && raw <= most ? raw : Missing;
    }

    /// <summary>Out-of-range readings are missing ones; a humidity a little over saturation is a wet sensor and counts as saturation.</summary>
    private void ReadSanely()
    {
        _inside = Read(Reading.InsideTemperature, -5000, 8000);
        if (_inside == Missing)
        {
            int second = Read(Reading.SecondTemperature, -5000, 8000);
            _inside = second != Missing ? second : Read(Reading.UpperTemperature, -5000, 8000);
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

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly int MarkMs(CompiledProgram.MarkPart mark) => mark.Kind switch { 0 => 0, 1 => _sunrise, _ => _sunset } + mark.OffsetMs;

    /// <summary>Day from its start to its end, the rest night; a straight ramp after each.</summary>
    private void FindTarget()
    {
        ref readonly CompiledProgram.PeriodPart period = ref _p.Periods[X(Extra.Period)];
        (bool day, int since) = DayPart
            .Between((DayPart.Mark)period.Starts.Kind, MarkMs(period.Starts), (DayPart.Mark)period.Ends.Kind, MarkMs(period.Ends), DayMs)
            .At(_clock, DayMs);
        long done = period.RampMs > 0 && since < period.RampMs ? since * 10_000L / period.RampMs : 10_000;
        long dayShare = day ? done : 10_000 - done;
        _target = Between(period.NightTemperature, period.DayTemperature, dayShare);
        _targetHumidity = period.DayHumidity > 0 && period.NightHumidity > 0
            ? Between(period.NightHumidity, period.DayHumidity, dayShare)
            : day ? period.DayHumidity : period.NightHumidity;
        if (period.DayDeficitPa + period.NightDeficitPa > 0)
        {
            AskDeficit(in period, day, dayShare);
        }

        int blend = X(Extra.BlendMs);
        if (blend > 0)
        {
            _target = Between(_target, X(Extra.BlendFrom), blend * 10_000L / BlendMs);
            SetX(Extra.BlendMs, Math.Max(0, blend - _dt));
        }

        _warmAt = _target + period.CoolAbove;
        _coolAt = _warmAt + ColdRaise();
        _heatAt = _target - period.HeatBelow;
        SetX(Extra.TargetTemperature, _target);
        SetX(Extra.TargetHumidity, _targetHumidity);
    }

    /// <summary>A vapour pressure deficit as the humidity it means at the temperature of the moment; without a temperature, at the target's.</summary>
    private void AskDeficit(in CompiledProgram.PeriodPart period, bool day, long dayShare)
    {
        int deficit = period.DayDeficitPa > 0 && period.NightDeficitPa > 0
            ? Between(period.NightDeficitPa, period.DayDeficitPa, dayShare)
            : day ? period.DayDeficitPa : period.NightDeficitPa;
        if (deficit > 0)
        {
            int saturated = Math.Max(1, VapourTable.SaturationPa(_inside == Missing ? _target : _inside));
            _targetHumidity = Math.Max(CompiledProgram.DriestByDeficit, 1000 - (int)(deficit * 1000L / saturated));
        }
    }

    /// <summary>How far the cooling threshold rises in the cold, 0.01 K.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly int ColdRaise()
    {
        if (_outside == Missing || _p.Cold.Raise == 0)
        {
            return 0;
        }

        int below = _target - _outside - _p.Cold.From, whole = _p.Cold.Full - _p.Cold.From;
        return below <= 0 ? 0 : below >= whole ? _p.Cold.Raise : (int)((long)below * _p.Cold.Raise / whole);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static int Between(int from, int to, long share) => from + (int)((to - from) * share / 10_000);

    /// <summary>The strongest wish wins; the first of equals keeps its reason.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
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

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void AskAll(in CompiledProgram.Settings settings, ReasonCode reason, int a, int b, int c)
    {
        for (int i = 0; i < settings.Actuators.Length; i++)
        {
            Ask(settings.Actuators[i], settings.Levels[i], reason, a, b, c);
        }
    }
}
