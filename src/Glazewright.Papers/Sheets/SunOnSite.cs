using Glazewright.Design.Brief;
using Glazewright.Design.Form;
using Glazewright.Papers.Drawing;
using Glazewright.Science.Sun;

namespace Glazewright.Papers.Sheets;

/// <summary>Where the sun rises and sets, and what shadows bodies throw on level ground.</summary>
internal static class SunOnSite
{
    /// <summary>Obliquity of the ecliptic: the declination at the solstices, degrees (from memory).</summary>
    public const double ObliquityDeg = 23.44;

    /// <summary>A day of the sun.</summary>
    /// <param name="Name">As lettered.</param>
    /// <param name="Month">1 to 12.</param>
    /// <param name="DeclinationDeg">Its declination, degrees.</param>
    public readonly record struct Day(string Name, int Month, double DeclinationDeg);

    /// <summary>Solstices and equinoxes, in the order of the year.</summary>
    public static IReadOnlyList<Day> Days { get; } = [new("21 Mar", 3, 0), new("21 Jun", 6, ObliquityDeg), new("21 Sep", 9, 0), new("21 Dec", 12, -ObliquityDeg)];

    /// <summary>The shortest day of the year at a latitude.</summary>
    public static Day Shortest(double latitudeDeg) => latitudeDeg >= 0 ? Days[3] : Days[1];

    /// <summary>Azimuth of sunrise over a flat horizon; sunset is 360° less it. None where the sun neither rises nor sets.</summary>
    /// <remarks>cos A = (sin δ − sin φ sin h) / (cos φ cos h) with the upper edge on the horizon, h = −0.833° (spherical triangle of pole, zenith and sun).</remarks>
    public static double? RiseAzimuthDeg(double latitudeDeg, double declinationDeg)
    {
        const double rad = Math.PI / 180;
        double h = DaySpan.RiseElevationDeg * rad;
        double denominator = Math.Cos(latitudeDeg * rad) * Math.Cos(h);
        if (Math.Abs(denominator) < 1e-9)
        {
            return null;
        }

        double cosine = (Math.Sin(declinationDeg * rad) - Math.Sin(latitudeDeg * rad) * Math.Sin(h)) / denominator;
        return Math.Abs(cosine) > 1 ? null : Math.Acos(cosine) / rad;
    }

    /// <summary>Horizontal unit vector towards an azimuth, range axes.</summary>
    public static Spot Towards(double azimuthDeg, double rangeBearingDeg)
    {
        double turn = (azimuthDeg - rangeBearingDeg) * Math.PI / 180;
        return new Spot(Math.Cos(turn), -Math.Sin(turn));
    }

    /// <summary>The outline of the shadow of a building on level ground, with its own footprint.</summary>
    /// <param name="b">The building, a convex body.</param>
    /// <param name="sun">The sun, over the horizon.</param>
    /// <param name="rangeBearingDeg">Bearing of x.</param>
    public static IReadOnlyList<Spot> Shadow(BuildingForm b, SunAngles sun, double rangeBearingDeg)
    {
        Point3 At(double x, double y, double z) => b.Origin + x * b.AlongX + y * b.AlongY + new Point3(0, 0, z);
        List<Point3> corners = [];
        foreach (double x in (double[])[0, b.LengthM])
        {
            corners.AddRange([At(x, 0, b.Roof.LeftEaveM), At(x, b.Roof.RidgeOffsetM, b.Roof.RidgeM), At(x, b.WidthM, b.Roof.RightEaveM)]);
        }

        return Shadow(corners, PlanSymbols.Footprint(b), sun, rangeBearingDeg);
    }

    /// <summary>The outline of the shadow of a box.</summary>
    public static IReadOnlyList<Spot> Shadow(NeighbourBox box, SunAngles sun, double rangeBearingDeg)
    {
        IReadOnlyList<Spot> foot = Foot(box);
        return Shadow([.. foot.Select(p => new Point3(p.X, p.Y, box.HeightM))], foot, sun, rangeBearingDeg);
    }

    public static IReadOnlyList<Spot> Foot(NeighbourBox box) => new Box(box.OriginXM, box.OriginYM, box.SizeXM, box.SizeYM).Corners();

    private static IReadOnlyList<Spot> Shadow(IReadOnlyList<Point3> corners, IReadOnlyList<Spot> foot, SunAngles sun, double rangeBearingDeg)
    {
        double reach = 1 / Math.Tan(sun.ElevationDeg * Math.PI / 180);
        Spot away = -1 * Towards(sun.AzimuthDeg, rangeBearingDeg);
        return Hull([.. foot, .. corners.Select(c => SheetStyle.Flat(c) + c.ZM * reach * away)]);
    }

    /// <summary>Convex hull, counter-clockwise (monotone chain).</summary>
    public static IReadOnlyList<Spot> Hull(IReadOnlyList<Spot> points)
    {
        Spot[] sorted = [.. points.OrderBy(p => p.X).ThenBy(p => p.Y)];
        List<Spot> hull = [];
        foreach (IEnumerable<Spot> way in (IEnumerable<Spot>[])[sorted, sorted.Reverse()])
        {
            int from = hull.Count;
            foreach (Spot p in way)
            {
                while (hull.Count > from + 1 && Turn(hull[^2], hull[^1], p) <= 1e-12)
                {
                    hull.RemoveAt(hull.Count - 1);
                }

                hull.Add(p);
            }

            hull.RemoveAt(hull.Count - 1);
        }

        return hull;

        static double Turn(Spot a, Spot b, Spot c) => (b.X - a.X) * (c.Y - a.Y) - (b.Y - a.Y) * (c.X - a.X);
    }
}
