namespace Glazewright.Science.Shape;

/// <summary>Which angles a point sees each part of a section under.</summary>
internal static class SectionView
{
    /// <summary>Profile angles of the corners from a point, from 0 at the near horizon to π at the far one; what lies below the point falls on the horizon.</summary>
    internal static void Edges(ReadOnlySpan<double> y, ReadOnlySpan<double> z, double pointY, double heightM, Span<double> edges)
    {
        edges[0] = 0;
        for (int i = 1; i < 6; i++)
        {
            double up = z[i] - heightM;
            double angle = up <= 0 ? (i < 3 ? 0 : Math.PI) : Math.Atan2(up, pointY - y[i]);
            edges[i] = Math.Max(edges[i - 1], angle);
        }

        edges[6] = Math.PI;
    }
}
