namespace Glazewright.Mechanics.Sections;

/// <summary>The outline of a tube: a closed set of cases.</summary>
public abstract record TubeShape
{
    private TubeShape()
    {
    }

    /// <summary>Wall thickness used for strength, m.</summary>
    public abstract double WallM { get; }

    /// <summary>A square or rectangular tube with round corners.</summary>
    /// <param name="DepthM">Outside size in the plane of strong-axis bending, m.</param>
    /// <param name="WidthM">Outside size across it, m.</param>
    /// <param name="WallM">Wall thickness used for strength, m.</param>
    /// <param name="OuterRadiusM">Outside corner radius, m; the inside radius is this less the wall.</param>
    public sealed record Rectangular(double DepthM, double WidthM, double WallM, double OuterRadiusM) : TubeShape
    {
        /// <inheritdoc/>
        public override double WallM { get; } = WallM;
    }

    /// <summary>A round tube.</summary>
    /// <param name="DiameterM">Outside diameter, m.</param>
    /// <param name="WallM">Wall thickness used for strength, m.</param>
    public sealed record Round(double DiameterM, double WallM) : TubeShape
    {
        /// <inheritdoc/>
        public override double WallM { get; } = WallM;
    }
}
