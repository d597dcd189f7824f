namespace Glazewright.Design.Brief;

/// <summary>Systems of the scope in plain words.</summary>
public static class ScopeWords
{
    /// <summary>In running text.</summary>
    /// <param name="system">The system.</param>
    /// <returns>Words without a capital.</returns>
    public static string Of(ScopeSystem system) => system switch
    {
        ScopeSystem.AirAndLamps => "circulation fans, lamps, other air equipment",
        ScopeSystem.Permits => "permits and engineer",
        ScopeSystem.Plumbing => "water, drain and gas",
        ScopeSystem.Electrical => "power wiring",
        ScopeSystem.Doors => "doors and windows",
        _ => system.ToString().ToLowerInvariant(),
    };

    /// <summary>At the head of a line.</summary>
    /// <param name="system">The system.</param>
    /// <returns>The same words with a capital.</returns>
    public static string Headed(ScopeSystem system) => char.ToUpperInvariant(Of(system)[0]) + Of(system)[1..];
}
