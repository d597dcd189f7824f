namespace Glazewright.Design.Program;

/// <summary>
/// What may change the box's mind before it is asked again: a time that runs out, or a reading that gets past a threshold. So that who runs it in long steps can ask it when it matters.
/// It is told of stages, drying, fog, least times and motors that others wait for; all else changes by the minute or slower.
/// </summary>
internal struct Outlook
{
    /// <summary>Time until something is decided, ms, whatever is read; <see cref="int.MaxValue"/> for never.</summary>
    public int DueMs;

    /// <summary>How far the temperature inside must rise, and fall, 0.01 K.</summary>
    public int Warmer, Colder;

    /// <summary>How far the humidity inside must rise, and fall, 0.1 %.</summary>
    public int Damper, Drier;

    /// <summary>Some equipment was switched or is on its way.</summary>
    public bool Switched;

    /// <summary>Fog sprays: a pulse and not the wait after it.</summary>
    public bool Sprays;

    /// <summary>What runs or stands open, by its place in the program's order.</summary>
    public ulong Running;

    /// <summary>Nothing in sight.</summary>
    public static Outlook Quiet => new() { DueMs = int.MaxValue, Warmer = int.MaxValue, Colder = int.MaxValue, Damper = int.MaxValue, Drier = int.MaxValue };
}
