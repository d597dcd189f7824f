using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Sheets;

/// <summary>One edge of a cross-section that light meets.</summary>
/// <param name="A">One end, m.</param>
/// <param name="B">Other end, m.</param>
/// <param name="Clear">Whether light passes it.</param>
public sealed record SectionEdge(Spot A, Spot B, bool Clear);

/// <summary>Traces parallel sun rays into a cross-section.</summary>
public static class SectionRays
{
    /// <summary>Rays at equal distances: each comes in from outside, stops at what is opaque, or goes on to the inside it strikes.</summary>
    /// <param name="ring">The edges of the section in order round it.</param>
    /// <param name="profileDeg">Angle of the rays over the horizon, degrees, 0 to 90.</param>
    /// <param name="fromLeft">Whether they come from the left.</param>
    /// <param name="spacingM">Distance between rays, m.</param>
    /// <param name="leadM">How far outside they begin, m.</param>
    /// <returns>Start and end of each.</returns>
    public static IReadOnlyList<(Spot From, Spot To)> Trace(
        IReadOnlyList<SectionEdge> ring, double profileDeg, bool fromLeft, double spacingM, double leadM)
    {
        ArgumentNullException.ThrowIfNull(ring);
        double angle = profileDeg * Math.PI / 180;
        Spot down = new((fromLeft ? 1 : -1) * Math.Cos(angle), -Math.Sin(angle));
        Spot across = new(-down.Y, down.X);
        double low = ring.Min(e => e.A.Dot(across));
        double high = ring.Max(e => e.A.Dot(across));
        List<(Spot, Spot)> rays = [];
        int count = (int)Math.Floor((high - low) / spacingM);
        double first = (low + high) / 2 - (count - 1) * spacingM / 2;
        for (int i = 0; i < count; i++)
        {
            double c = first + i * spacingM;
            List<(double T, bool Clear)> hits = [];
            foreach (SectionEdge edge in ring)
            {
                double da = edge.A.Dot(across) - c;
                double db = edge.B.Dot(across) - c;
                if ((da < 0) != (db < 0))
                {
                    Spot at = edge.A + da / (da - db) * (edge.B - edge.A);
                    hits.Add((at.Dot(down), edge.Clear));
                }
            }

            if (hits.Count < 2)
            {
                continue;
            }

            hits.Sort((a, b) => a.T.CompareTo(b.T));
            double end = hits[0].Clear ? hits[1].T : hits[0].T;
            rays.Add(((hits[0].T - leadM) * down + c * across, end * down + c * across));
        }

        return rays;
    }
}
