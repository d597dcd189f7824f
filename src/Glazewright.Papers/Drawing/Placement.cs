namespace Glazewright.Papers.Drawing;

/// <summary>How drawn coordinates come to lie on paper: a view turns y over and scales, the sheet leaves them as they are.</summary>
/// <param name="OriginMm">Where the coordinate origin lies on paper, mm.</param>
/// <param name="MmPerUnit">Scale.</param>
/// <param name="YUp">Whether y grows upwards.</param>
public readonly record struct Placement(Spot OriginMm, double MmPerUnit, bool YUp)
{
    /// <summary>The sheet's own placement.</summary>
    public static Placement OnSheet => new(new(0, 0), 1, false);

    /// <summary>A view's placement.</summary>
    public static Placement Of(View view)
    {
        ArgumentNullException.ThrowIfNull(view);
        double scale = view.Scale.MmPerM;
        return new(
            new(view.AtMm.X - view.WindowM.Left * scale, view.AtMm.Y + view.WindowM.Bottom * scale), scale, true);
    }

    /// <summary>The point on paper, mm.</summary>
    public Spot At(Spot p) => OriginMm + Turn(p);

    /// <summary>The vector on paper, mm.</summary>
    public Spot Turn(Spot v) => new(MmPerUnit * v.X, YUp ? -MmPerUnit * v.Y : MmPerUnit * v.Y);

    /// <summary>The points on paper, mm.</summary>
    public IReadOnlyList<Spot> At(IReadOnlyList<Spot> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        Spot[] placed = new Spot[points.Count];
        for (int i = 0; i < placed.Length; i++)
        {
            placed[i] = At(points[i]);
        }

        return placed;
    }
}
