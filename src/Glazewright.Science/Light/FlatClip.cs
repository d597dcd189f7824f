namespace Glazewright.Science.Light;

/// <summary>Common area of convex polygons in a plane, corners as x, y pairs, anticlockwise. Kernels: no allocation.</summary>
/// <remarks>Sutherland &amp; Hodgman 1974, Comm. ACM 17:32.</remarks>
internal static class FlatClip
{
    /// <summary>Most corners of an outline that is to be clipped.</summary>
    internal const int MostCorners = 10;

    /// <summary>
    /// Room for an outline clipped by up to four others (two neighbours, the curtain, an inside face): each adds at most its own corners; two numbers
    /// a corner.
    /// </summary>
    internal const int Room = 2 * 5 * MostCorners;

    /// <summary>Cuts the subject by the clip polygon; returns how many numbers of the result were written.</summary>
    internal static int Clip(ReadOnlySpan<double> subject, ReadOnlySpan<double> clip, Span<double> result)
    {
        Span<double> other = stackalloc double[Room];
        Span<double> from = stackalloc double[Room];
        subject.CopyTo(from);
        int count = subject.Length;
        for (int e = 0; e < clip.Length && count > 0; e += 2)
        {
            double ax = clip[e];
            double ay = clip[e + 1];
            int next = e + 2 == clip.Length ? 0 : e + 2;
            double ex = clip[next] - ax;
            double ey = clip[next + 1] - ay;
            int written = 0;
            double px = from[count - 2];
            double py = from[count - 1];
            double pd = (ex * (py - ay)) - (ey * (px - ax));
            for (int i = 0; i < count; i += 2)
            {
                double qx = from[i];
                double qy = from[i + 1];
                double qd = (ex * (qy - ay)) - (ey * (qx - ax));
                if ((pd < 0 && qd > 0) || (pd > 0 && qd < 0))
                {
                    double k = pd / (pd - qd);
                    other[written++] = px + (k * (qx - px));
                    other[written++] = py + (k * (qy - py));
                }

                if (qd >= 0)
                {
                    other[written++] = qx;
                    other[written++] = qy;
                }

                px = qx;
                py = qy;
                pd = qd;
            }

            count = written;
            Span<double> swap = from;
            from = other;
            other = swap;
        }

        from[..count].CopyTo(result);
        return count;
    }

    /// <summary>Area of a polygon, positive when anticlockwise.</summary>
    internal static double Area(ReadOnlySpan<double> polygon)
    {
        if (polygon.Length < 6)
        {
            return 0;
        }

        double twice = 0;
        double x0 = polygon[0];
        double y0 = polygon[1];
        for (int i = 2; i + 3 < polygon.Length; i += 2)
        {
            twice += ((polygon[i] - x0) * (polygon[i + 3] - y0)) - ((polygon[i + 2] - x0) * (polygon[i + 1] - y0));
        }

        return twice / 2;
    }

    /// <summary>Common area of two polygons.</summary>
    internal static double CommonArea(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        if (a.Length < 6 || b.Length < 6 || Apart(a, b))
        {
            return 0;
        }

        Span<double> both = stackalloc double[Room];
        int count = Clip(a, b, both);
        return Math.Max(0, Area(both[..count]));
    }

    private static bool Apart(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        for (int axis = 0; axis < 2; axis++)
        {
            double aLow = a[axis];
            double aHigh = a[axis];
            for (int i = axis + 2; i < a.Length; i += 2)
            {
                aLow = Math.Min(aLow, a[i]);
                aHigh = Math.Max(aHigh, a[i]);
            }

            double bLow = b[axis];
            double bHigh = b[axis];
            for (int i = axis + 2; i < b.Length; i += 2)
            {
                bLow = Math.Min(bLow, b[i]);
                bHigh = Math.Max(bHigh, b[i]);
            }

            if (aHigh <= bLow || bHigh <= aLow)
            {
                return true;
            }
        }

        return false;
    }
}
