namespace Glazewright.Science.Shape;

/// <summary>What covers one part of a section. A closed case.</summary>
public abstract record SectionCover
{
    private SectionCover()
    {
    }

    /// <summary>Lets light in.</summary>
    /// <param name="Year">The cover under the year.</param>
    public sealed record Clear(CoverYear Year) : SectionCover;

    /// <summary>Lets none in.</summary>
    /// <param name="InsideReflectanceFraction">Diffuse, 0 to 0.95.</param>
    public sealed record Opaque(double InsideReflectanceFraction) : SectionCover;
}

/// <summary>Covers of a section's six outer parts.</summary>
/// <param name="NearPony">Near wall below the pony wall's top.</param>
/// <param name="NearWall">Near wall above it.</param>
/// <param name="NearSlope">Near slope.</param>
/// <param name="FarSlope">Far slope.</param>
/// <param name="FarWall">Far wall above the pony wall.</param>
/// <param name="FarPony">Far wall below its top.</param>
public sealed record SectionCovers(
    SectionCover NearPony, SectionCover NearWall, SectionCover NearSlope, SectionCover FarSlope, SectionCover FarWall, SectionCover FarPony)
{
    internal SectionCover At(int face) => face switch
    {
        0 => NearPony,
        1 => NearWall,
        2 => NearSlope,
        3 => FarSlope,
        4 => FarWall,
        _ => FarPony,
    };
}
