namespace Glazewright.Science.Light.Shadows;

/// <summary>
/// The bars of a house laid flat along a beam, in spots: without the parked curtain, and with it. Drawn once a direction, for the house with its curtain open
/// and drawn alike. Not for use by several threads at once.
/// </summary>
internal sealed class BarPicture
{
    /// <summary>Lines across the house's picture, spots along it: a 2 in tube of a 150 ft house is one spot or two, and hundreds of tubes even out.</summary>
    internal const int Lines = 192;

    internal const int Words = 12;

    private readonly Vector3d[] corners;
    private readonly BarShadows still;
    private readonly BarShadows parked;
    private readonly BitRows withoutParked = new(Lines, Words);
    private readonly BitRows whole;
    private Vector3d along;
    private FlatMap map;

    /// <summary>Prepares a house.</summary>
    /// <param name="enclosure">The house with all its bars.</param>
    internal BarPicture(Enclosure enclosure)
    {
        corners = [.. enclosure.Faces.SelectMany(f => f.Polygon).Distinct()];
        still = BarShadows.Of([.. enclosure.Bars.Where(b => b.Cause != ShadeCause.Curtain)]);
        parked = BarShadows.Of([.. enclosure.Bars.Where(b => b.Cause == ShadeCause.Curtain)]);
        whole = parked.Any ? new BitRows(Lines, Words) : withoutParked;
    }

    internal bool Any => still.Any || parked.Any;

    /// <summary>How the house lies in the picture.</summary>
    internal ref readonly FlatMap Map => ref map;

    /// <summary>Place of a spot's middle in the spot.</summary>
    internal (double X, double Y) Phase { get; private set; }

    /// <summary>All bars, or those that a drawn curtain leaves.</summary>
    internal BitRows Bars(bool withParked) => withParked ? whole : withoutParked;

    /// <summary>Draws the bars along a direction, unless they are drawn so already.</summary>
    internal void Turn(Vector3d towards)
    {
        if (along == towards)
        {
            return;
        }

        along = towards;
        map = Laid(towards);
        Phase = Phases.Of(towards);
        withoutParked.Clear();
        still.Cast(withoutParked, map, towards, Phase.X, Phase.Y);
        if (parked.Any)
        {
            whole.CopyFrom(withoutParked);
            parked.Cast(whole, map, towards, Phase.X, Phase.Y);
        }
    }

    // The house's picture along the beam, turned so that its longest axis lies along the lines.
    private FlatMap Laid(Vector3d towards)
    {
        var length = new Vector3d(1, 0, 0);
        Vector3d u = length - (length.Dot(towards) * towards);
        u = u.LengthM > 0.1 ? u.Unit() : new Vector3d(0, 1, 0).Cross(towards).Cross(towards).Unit();
        Vector3d v = towards.Cross(u);
        double leastX = double.PositiveInfinity;
        double mostX = double.NegativeInfinity;
        double leastY = double.PositiveInfinity;
        double mostY = double.NegativeInfinity;
        foreach (Vector3d p in corners)
        {
            double x = u.Dot(p);
            double y = v.Dot(p);
            leastX = Math.Min(leastX, x);
            mostX = Math.Max(mostX, x);
            leastY = Math.Min(leastY, y);
            mostY = Math.Max(mostY, y);
        }

        return new FlatMap(
            (leastX * u) + (leastY * v),
            64 * Words / Math.Max(1e-9, mostX - leastX) * u,
            Lines / Math.Max(1e-9, mostY - leastY) * v);
    }
}
