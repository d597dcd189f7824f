using Glazewright.Science.Shape;

namespace Glazewright.Science.Tests.Shape;

/// <summary>Brute force: a ray from a point inside towards the sun is cut with each part of the section in turn. Shares no formula with the code under test.</summary>
internal static class SectionRayTrace
{
    public static (double Y, double Z)[] Corners(GableSection s, double ponyM) =>
    [
        (0, 0), (0, ponyM), (0, s.NearEaveM), (s.RidgeOffsetM, s.RidgeM), (s.WidthM, s.FarEaveM), (s.WidthM, ponyM), (s.WidthM, 0),
    ];

    /// <summary>The part (0 near pony wall … 5 far pony wall, 6 floor) through which the point sees a direction; −1 for none.</summary>
    public static int PartSeen(GableSection s, double ponyM, double y, double z, double profileDeg)
    {
        (double Y, double Z)[] corners = Corners(s, ponyM);
        double dy = -Math.Cos(profileDeg * Math.PI / 180);
        double dz = Math.Sin(profileDeg * Math.PI / 180);
        int seen = -1;
        double nearest = double.PositiveInfinity;
        for (int f = 0; f < 7; f++)
        {
            (double ay, double az) = corners[f];
            (double by, double bz) = corners[(f + 1) % 7];

            // point + t·d = a + v·(b − a)
            double ey = by - ay;
            double ez = bz - az;
            double det = (dy * -ez) + (ey * dz);
            if (Math.Abs(det) < 1e-12)
            {
                continue;
            }

            double t = (((ay - y) * -ez) + (ey * (az - z))) / det;
            double v = ((dy * (az - z)) - (dz * (ay - y))) / det;
            if (t > 1e-9 && t < nearest && v is >= 0 and <= 1)
            {
                nearest = t;
                seen = f;
            }
        }

        return seen;
    }
}
