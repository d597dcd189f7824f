using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Papers.Solids;

/// <summary>The outline that a prism is drawn out of, in its own x and y. A closed case.</summary>
public abstract record Profile
{
    private Profile()
    {
    }

    /// <summary>Area of the profile, m².</summary>
    public abstract double AreaM2 { get; }

    /// <summary>A rectangular tube about its centre.</summary>
    /// <param name="WidthM">Outside size along x, m.</param>
    /// <param name="DepthM">Outside size along y, m.</param>
    /// <param name="WallM">Wall as ordered, m.</param>
    /// <param name="CornerM">Outside corner radius, m; the inside one is a wall less.</param>
    public sealed record Tube(double WidthM, double DepthM, double WallM, double CornerM) : Profile
    {
        private const double SpandrelFactor = 4 - Math.PI;

        /// <inheritdoc/>
        public override double AreaM2
        {
            get
            {
                double insideM = Math.Max(0, CornerM - WallM);
                return WidthM * DepthM - SpandrelFactor * CornerM * CornerM - ((WidthM - 2 * WallM) * (DepthM - 2 * WallM) - SpandrelFactor * insideM * insideM);
            }
        }
    }

    /// <summary>A full circle about the centre.</summary>
    /// <param name="RadiusM">Radius, m.</param>
    public sealed record Disc(double RadiusM) : Profile
    {
        /// <inheritdoc/>
        public override double AreaM2 => Math.PI * RadiusM * RadiusM;
    }

    /// <summary>A convex polygon with convex holes that lie in it and apart from each other.</summary>
    /// <param name="Outline">Corner points, counter-clockwise.</param>
    /// <param name="Holes">Corner points of each hole, counter-clockwise.</param>
    public sealed record Area(EqList<Point2> Outline, EqList<EqList<Point2>> Holes) : Profile
    {
        /// <inheritdoc/>
        public override double AreaM2 => Polygons.AreaM2(Outline) - Holes.Sum(h => Polygons.AreaM2(h));
    }

    /// <summary>A rectangle from a corner.</summary>
    /// <param name="xM">Least x, m.</param>
    /// <param name="yM">Least y, m.</param>
    /// <param name="widthM">Size along x, m.</param>
    /// <param name="heightM">Size along y, m.</param>
    /// <returns>The profile, rounded to a micrometre.</returns>
    public static Area Rectangle(double xM, double yM, double widthM, double heightM) => new(Rounded(Polygons.Rectangle(xM, yM, widthM, heightM)), []);

    internal static EqList<Point2> Rounded(IEnumerable<Point2> points) => points.Select(p => new Point2(Prism.Round(p.UM), Prism.Round(p.VM))).ToEqList();
}

/// <summary>Where a prism ends: the plane z = at + rise in x · x + rise in y · y.</summary>
/// <param name="AtM">z on the axis, m.</param>
/// <param name="RiseXFactor">Rise along x, m/m.</param>
/// <param name="RiseYFactor">Rise along y, m/m.</param>
public sealed record EndCut(double AtM, double RiseXFactor = 0, double RiseYFactor = 0)
{
    /// <summary>True when the end is sawn square.</summary>
    public bool IsSquare => RiseXFactor == 0 && RiseYFactor == 0;

    /// <summary>z of the plane over a point of the profile.</summary>
    /// <param name="xM">x, m.</param>
    /// <param name="yM">y, m.</param>
    /// <returns>z, m.</returns>
    public double HeightM(double xM, double yM) => AtM + RiseXFactor * xM + RiseYFactor * yM;
}

/// <summary>A profile drawn out along z between two planes.</summary>
/// <param name="Profile">The profile.</param>
/// <param name="Start">Lower end.</param>
/// <param name="End">Upper end.</param>
public sealed record Prism(Profile Profile, EndCut Start, EndCut End)
{
    /// <summary>Volume, m³: area times the length on the axis (a sloped end needs a profile about its own centre, which tubes and discs are).</summary>
    public double VolumeM3 => Profile.AreaM2 * (End.AtM - Start.AtM);

    /// <summary>A prism with square ends.</summary>
    /// <param name="profile">Profile.</param>
    /// <param name="fromM">Lower end, m.</param>
    /// <param name="toM">Upper end, m.</param>
    /// <returns>The prism.</returns>
    public static Prism Square(Profile profile, double fromM, double toM) => new(profile, new EndCut(Round(fromM)), new EndCut(Round(toM)));

    // Parts alike share one shape: a micrometre is far below any tolerance and far above rounding.
    internal static double Round(double metres) => Math.Round(metres, 6) + 0.0;
}

/// <summary>One or more prisms in common axes.</summary>
/// <param name="Prisms">The prisms.</param>
public sealed record SolidShape(EqList<Prism> Prisms)
{
    /// <summary>Volume, m³.</summary>
    public double VolumeM3 => Prisms.Sum(p => p.VolumeM3);
}
