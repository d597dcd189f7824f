namespace Glazewright.Design.Program;

/// <summary>
/// A program as flat arrays of integers, made by <see cref="ProgramCompiler"/> and run by <see cref="ProgramInterpreter"/>. Temperatures 0.01 °C, humidity 0.1 %, times ms,
/// levels 0 to 10 000. At most 64 actuators: sets of them are bit masks.
/// </summary>
public sealed class CompiledProgram
{
    internal const int MostAlarms = 64 - OwnAlarms; // a bit each
    internal const int OwnAlarms = 3;

    /// <summary>Lowest humidity that a deficit asks for, 0.1 %: in a house colder than its target the rest is heat's to bring (our choice).</summary>
    internal const int DriestByDeficit = 300;

    internal const int ActuatorParts = 4;
    internal const int Level = 0;
    internal const int Since = 1;
    internal const int Runtime = 2;
    internal const int Hand = 3;
    internal const int PerStage = 2;
    internal const int PerAlarm = 2;
    internal const int PerWeather = 3; // what is held back, 0 to 10 000, ms since the weather asked for it, and whether rain did
    internal const int Extras = 29;
    internal const int ExtrasOfSecondCurtain = 5;

    private readonly HumidityPart _humidity;

    internal CompiledProgram()
    {
    }

    /// <summary>House id.</summary>
    public required string House { get; init; }

    /// <summary>Actuators, in the order of the commands.</summary>
    public required Contracts.EqList<Actuator> Actuators { get; init; }

    /// <summary>Alarms of the document, then three of our own: no temperature inside; temperature inside does not change; the two thermometers over the crop disagree.</summary>
    public required Contracts.EqList<string> AlarmIds { get; init; }

    /// <summary>Period ids.</summary>
    public required Contracts.EqList<string> PeriodIds { get; init; }

    /// <summary>How many integers a state holds.</summary>
    public int StateLength => ModulatedAt + (Modulates ? HeatOn.Length : 0);

    /// <summary>What each heating stage adds by its reset, ten-millionths of all; none where no stage modulates.</summary>
    internal int ModulatedAt => WeatherAt + Weather.Length * PerWeather;

    internal int WeatherAt => ExtrasAt + Extras + (SecondCurtain is null ? 0 : ExtrasOfSecondCurtain);

    internal int Count => Kinds.Length;

    /// <summary>Length of a column of actuators in a state, filled up to whole vectors: all levels, then all times since, runtimes, hands.</summary>
    internal int Column => ColumnOf(Count);

    internal static int ColumnOf(int count) => (count + 7) & ~7;

    internal int CoolAt => Column * ActuatorParts;

    internal int HeatAt { get; init; }

    internal int AlarmAt { get; init; }

    internal int ExtrasAt { get; init; }

    internal ActuatorKind[] Kinds { get; init; } = [];

    internal int[] MinOnMs { get; init; } = [];

    internal int[] MinOffMs { get; init; } = [];

    internal int[] TravelMs { get; init; } = [];

    internal int[] CoolOn { get; init; } = [];

    internal int[] CoolOff { get; init; } = [];

    internal int[] CoolDelayMs { get; init; } = [];

    internal Settings[] CoolSettings { get; init; } = [];

    /// <summary>Where the first of the cooling stages would begin.</summary>
    internal int FirstCoolOn { get; init; } = int.MaxValue;

    /// <summary>Where the first of the heating stages would begin.</summary>
    internal int FirstHeatOn { get; init; } = int.MaxValue;

    internal int[] HeatOn { get; init; } = [];

    internal int[] HeatOff { get; init; } = [];

    internal int[] HeatDelayMs { get; init; } = [];

    internal Settings[] HeatSettings { get; init; } = [];

    /// <summary>How each heating stage modulates; a band of 0 where it does not.</summary>
    internal ModulationPart[] HeatModulation { get; init; } = [];

    /// <summary>Whether some heating stage modulates.</summary>
    internal bool Modulates { get; init; }

    /// <summary>Actuators with a least level.</summary>
    internal ulong LeastMask { get; init; }

    internal int[] LeastLevel { get; init; } = [];

    /// <summary>Winners before losers, needs before what needs them.</summary>
    internal int[] Order { get; init; } = [];

    /// <summary>Never on together, both ways.</summary>
    internal ulong[] Partners { get; init; } = [];

    internal ulong[] Losers { get; init; } = [];

    /// <summary>Owner of each need, ascending: the needs of actuator i are NeedStart[i] up to NeedStart[i + 1].</summary>
    internal int[] NeedOwner { get; init; } = [];

    internal int[] NeedStart { get; init; } = [];

    /// <summary>Actuators that something needs.</summary>
    internal ulong NeededMask { get; init; }

    /// <summary>Actuators that need something.</summary>
    internal ulong OwnerMask { get; init; }

    /// <summary>Actuators that win over something.</summary>
    internal ulong WinnerMask { get; init; }

    /// <summary>How many of some may be on while one is.</summary>
    internal LimitPart[] Limits { get; init; } = [];

    internal ulong[] NeedMask { get; init; } = [];

    internal ulong MovingMask { get; init; }

    internal ulong FogMask { get; init; }

    internal ulong PumpMask { get; init; }

    internal ColdPart Cold { get; init; }

    internal ulong ProofMask { get; init; }

    internal int FansWithoutProof { get; init; }

    internal int GuardLouver { get; init; }

    internal int GuardGraceMs { get; init; }

    internal int GuardLimit { get; init; }

    internal int GuardLockMs { get; init; }

    internal ulong[] RotationMasks { get; init; } = [];

    internal BackgroundPart[] Background { get; init; } = [];

    internal byte[] PeriodOfDay { get; init; } = [];

    internal PeriodPart[] Periods { get; init; } = [];

    internal HumidityPart Humidity
    {
        get => _humidity;
        init => _humidity = value;
    }

    internal ref readonly HumidityPart HumidityRef => ref _humidity;

    internal CurtainPart? Curtain { get; init; }

    internal CurtainPart? SecondCurtain { get; init; }

    internal LampPart? Lamps { get; init; }

    internal Co2Part? Co2 { get; init; }

    internal UpperAirPart? UpperAir { get; init; }

    internal WeatherPart[] Weather { get; init; } = [];

    internal AlarmPart[] Alarms { get; init; } = [];

    internal SensorWiring? Wiring { get; init; }

    /// <summary>Readings that a step must be given: clock and almanac, and what alarms watch.</summary>
    internal int FewestReadings { get; init; }

    /// <summary>Writes the state of a house long at rest: everything off and shut, free to start.</summary>
    /// <param name="state">At least <see cref="StateLength"/> integers.</param>
    public void Rest(Span<int> state)
    {
        state = state[..StateLength];
        state.Clear();
        for (int i = 0; i < Count; i++)
        {
            state[Column * Since + i] = ProgramInterpreter.LongAgoMs;
            state[Column * Hand + i] = -1;
        }

        state[ExtrasAt + Extra.LastInside] = int.MinValue;
        state[ExtrasAt + Extra.Day] = 1;
        state[ExtrasAt + Extra.Period] = -1;
    }

    internal const int RestartApartMs = 5000;

    /// <summary>Writes the state after a power cut: everything off, motors where they stood, least times off running, starts spread 5 s apart.</summary>
    /// <param name="before">State when the power went.</param>
    /// <param name="state">At least <see cref="StateLength"/> integers.</param>
    public void Restart(ReadOnlySpan<int> before, Span<int> state)
    {
        Rest(state);
        for (int i = 0; i < Count; i++)
        {
            int level = Column * Level + i, runtime = Column * Runtime + i, hand = Column * Hand + i;
            bool moves = (MovingMask >> i & 1) != 0;
            state[level] = moves ? before[level] : 0;
            state[runtime] = before[runtime];
            state[hand] = before[hand];
            state[Column * Since + i] = moves ? ProgramInterpreter.LongAgoMs : -RestartApartMs * i;
            WriteMask(state, Extra.OnMask, ReadMask(state, Extra.OnMask) | (state[level] > 0 ? 1UL << i : 0));
        }

        WriteMask(state, Extra.HandMask, ReadMask(before, Extra.HandMask));
    }

    /// <summary>Puts an actuator under hand, or back.</summary>
    /// <param name="state">State to write.</param>
    /// <param name="actuator">Its number.</param>
    /// <param name="level">0 to 10 000, or −1 for automatic. Interlocks and least times hold for the hand too.</param>
    public void SetHand(Span<int> state, int actuator, int level)
    {
        state[Column * Hand + actuator] = Math.Clamp(level, -1, 10_000);
        ulong hands = ReadMask(state, Extra.HandMask) & ~(1UL << actuator);
        WriteMask(state, Extra.HandMask, level >= 0 ? hands | 1UL << actuator : hands);
    }

    internal ulong ReadMask(ReadOnlySpan<int> state, int extra) => (uint)state[ExtrasAt + extra] | (ulong)(uint)state[ExtrasAt + extra + 1] << 32;

    internal void WriteMask(Span<int> state, int extra, ulong mask)
    {
        state[ExtrasAt + extra] = (int)(uint)mask;
        state[ExtrasAt + extra + 1] = (int)(uint)(mask >> 32);
    }

    /// <summary>True while an alarm sounds.</summary>
    /// <param name="state">State after a step.</param>
    /// <param name="alarm">Index into <see cref="AlarmIds"/>.</param>
    public bool AlarmIsOn(ReadOnlySpan<int> state, int alarm) => state[AlarmAt + alarm * PerAlarm] != 0;

    /// <summary>What was wanted in the last step, ramps followed.</summary>
    /// <param name="state">State after a step.</param>
    public TargetNow TargetOf(ReadOnlySpan<int> state) => new(
        state[ExtrasAt + Extra.TargetTemperature], state[ExtrasAt + Extra.TargetHumidity], state[ExtrasAt + Extra.Period]);

    internal static class Extra
    {
        public const int TargetTemperature = 0;
        public const int TargetHumidity = 1;
        public const int Period = 2;
        public const int Drying = 3;
        public const int Fogging = 4;
        public const int FogPhaseMs = 5;
        public const int Curtain = 6; // five of them, see CurtainAt
        public const int ProofMissingMs = 11;
        public const int GuardLockedMs = 12;
        public const int LampsOn = 13;
        public const int LastInside = 14;
        public const int SameInsideMs = 15;
        public const int ClockMs = 16;
        public const int Day = 17;
        public const int OnMask = 18;
        public const int HandMask = 20;
        public const int BlendFrom = 22;
        public const int BlendMs = 23;
        public const int Dosing = 24;
        public const int CoolBusy = 25; // a stage is on or its delay runs
        public const int HeatBusy = 26;
        public const int AlarmBusy = 27; // an alarm sounds or its delay runs
        public const int PurgeMs = 28; // since a purge began
        public const int SecondCurtain = 29; // five, where there is one
    }

    /// <summary>What a curtain remembers, counted from its own place.</summary>
    internal static class CurtainAt
    {
        public const int Mode = 0;
        public const int TimerMs = 1;
        public const int StepMs = 2;
        public const int Target = 3;
        public const int HeatMs = 4; // since it opens to let heat go; below nothing: since it no longer does
    }

    internal readonly record struct Settings(int[] Actuators, int[] Levels);

    internal readonly record struct ModulationPart(int Band, int ResetMs, int Deadband, int HoldsAt);

    internal readonly record struct BackgroundPart(int Actuator, int Level, ulong RestsWith, int RestsAboveWind);

    internal readonly record struct LimitPart(int Owner, ulong Counted, int Most);

    internal readonly record struct ColdPart(int From, int Full, int Raise, int Stages, int NoWaterBelow, int NoWaterAbove);

    internal readonly record struct MarkPart(int Kind, int OffsetMs);

    internal readonly record struct PeriodPart(
        int DayTemperature, int DayHumidity, int NightTemperature, int NightHumidity, MarkPart Starts, MarkPart Ends, int RampMs, int CoolAbove, int HeatBelow,
        int DayDeficitPa, int NightDeficitPa);

    internal readonly record struct HumidityPart(
        int DryAbove, int DryDeadband, Settings Drying, int DryOnlyAboveOutside, bool DriesByOutsideAir,
        int FogBelow, int FogDeadband, int FogCeiling, Settings Fogging, int FogOnMs, int FogOffMs,
        int DryHeat, int PurgeOnMs, int PurgeMs, int PurgeLeastBelow, Settings Purging);

    internal sealed record CurtainPart(
        int Actuator, int DrawBelowLight, int DrawBelowOutside, int ShadeAboveLight, int ShadeAboveInside, int ShadeLevel,
        int Gap, int OpenStep, int OpenStepMs, bool HoldOpenOnSnow, MarkPart DarkFrom, MarkPart DarkTo, bool Darkens,
        int WarmGap, int WarmPast, int WarmDeadband);

    internal sealed record LampPart(int Actuator, int[] WindowMinByPeriod, int OffAboveLight);

    internal sealed record Co2Part(int Actuator, int Target, int Deadband, int OnlyAboveLight, ulong RestsWith);

    internal sealed record UpperAirPart(int Actuator, int OnAboveOutside, int Deadband, int DrawnLevel);

    internal readonly record struct WeatherPart(ulong Motors, int Wind, int InWind, int Storm, int InRain, int CalmMs);

    internal readonly record struct AlarmPart(int Reading, int Low, int High, int DelayMs);
}

/// <summary>What is wanted at a moment.</summary>
/// <param name="TemperatureCentiC">0.01 °C.</param>
/// <param name="HumidityPerMille">0.1 % RH; 0 when not asked.</param>
/// <param name="Period">Index into the program's periods.</param>
public readonly record struct TargetNow(int TemperatureCentiC, int HumidityPerMille, int Period);
