namespace Glazewright.Design.Form;

/// <summary>Plane polygons, corner points counter-clockwise, m. Clipping is for convex polygons, which all faces are.</summary>
public static class Polygons
{
    /// <summary>Area by the shoelace sum.</summary>
    /// <param name="outline">Corner points.</param>
    /// <returns>Area, m²; positive when counter-clockwise.</returns>
    public static double AreaM2(IReadOnlyList<Point2> outline)
    {
        double twice = 0;
        for (int i = 0; i < outline.Count; i++)
        {
            Point2 a = outline[i];
            Point2 b = outline[(i + 1) % outline.Count];
            twice += a.UM * b.VM - b.UM * a.VM;
        }

        return twice / 2;
    }

    /// <summary>A rectangle.</summary>
    /// <param name="uM">Left edge.</param>
    /// <param name="vM">Lower edge.</param>
    /// <param name="widthM">Size along u.</param>
    /// <param name="heightM">Size along v.</param>
    /// <returns>Its four corners.</returns>
    public static Point2[] Rectangle(double uM, double vM, double widthM, double heightM) =>
        [new(uM, vM), new(uM + widthM, vM), new(uM + widthM, vM + heightM), new(uM, vM + heightM)];

    /// <summary>The common part of two convex polygons (Sutherland and Hodgman 1974).</summary>
    /// <param name="subject">One, counter-clockwise.</param>
    /// <param name="clip">The other, counter-clockwise.</param>
    /// <returns>Corner points of the common part; empty when there is none.</returns>
    public static IReadOnlyList<Point2> Common(IReadOnlyList<Point2> subject, IReadOnlyList<Point2> clip)
    {
        List<Point2> result = [.. subject];
        for (int i = 0; i < clip.Count && result.Count > 0; i++)
        {
            Point2 a = clip[i];
            Point2 b = clip[(i + 1) % clip.Count];
            List<Point2> next = new(result.Count + 1);
            for (int j = 0; j < result.Count; j++)
            {
                Point2 p = result[j];
                Point2 q = result[(j + 1) % result.Count];
                double sideP = Side(a, b, p);
                double sideQ = Side(a, b, q);
                if (sideP >= 0)
                {
                    next.Add(p);
                }

                if ((sideP > 0 && sideQ < 0) || (sideP < 0 && sideQ > 0))
                {
                    double t = sideP / (sideP - sideQ);
                    next.Add(new Point2(p.UM + t * (q.UM - p.UM), p.VM + t * (q.VM - p.VM)));
                }
            }

            result = next;
        }

        return result.Count >= 3 && AreaM2(result) > 1e-9 ? result : [];
    }

    /// <summary>Makes a polygon counter-clockwise.</summary>
    /// <param name="outline">Corner points in either turn.</param>
    /// <returns>The same corners, counter-clockwise.</returns>
    public static IReadOnlyList<Point2> CounterClockwise(IReadOnlyList<Point2> outline) =>
        AreaM2(outline) >= 0 ? outline : [.. outline.Reverse()];

    private static double Side(Point2 a, Point2 b, Point2 p) =>
        (b.UM - a.UM) * (p.VM - a.VM) - (b.VM - a.VM) * (p.UM - a.UM);
}
