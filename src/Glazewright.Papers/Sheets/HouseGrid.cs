using System.Globalization;
using Glazewright.Design.Form;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Sheets;

/// <summary>
/// The grid of a house's plan: lines 1, 2 … at the frames and L, R at the walls, with their bubbles and dimensions. A house whose bays would be too small to
/// read is shown with its first bays up to a break line.
/// </summary>
internal sealed class HouseGrid
{
    /// <summary>Paper taken round the house, mm.</summary>
    public static readonly Pad Pad = new(38, 23, 10, 15);

    // A bay narrower than this holds no mark.
    private const double LeastBayMm = 14;

    private readonly BuildingForm _b;
    private readonly LengthStyle _style;

    public HouseGrid(BuildingForm b, Box roomMm, LengthStyle style)
    {
        _b = b;
        _style = style;
        IReadOnlyList<double> lines = b.FrameLinesXM;
        int bays = Math.Max(1, lines.Count - 1);
        double bayM = b.LengthM / bays;
        double freeMm = roomMm.Width - Pad.Left - Pad.Right;
        (DrawingScale whole, _) = SheetDraft.Fit(roomMm, new Box(0, 0, b.LengthM, b.WidthM), Pad, style);
        double lengthM = b.LengthM;
        Shown = lines.Count;
        Scale = whole;
        if (bayM * whole.MmPerM < LeastBayMm)
        {
            // As large as the width of the house or the marks need.
            DrawingScale part = DrawingScale.Largest(style, s => b.WidthM * s.MmPerM <= roomMm.Height - Pad.Top - Pad.Bottom && bayM * s.MmPerM <= freeMm / 6);
            int fit = (int)Math.Floor((freeMm - 8) / (bayM * part.MmPerM));
            if (part.MmPerM > whole.MmPerM && fit >= 2 && fit < bays)
            {
                Scale = part;
                Shown = fit + 1;
                lengthM = fit * bayM + 6 / part.MmPerM;
            }
        }

        EndM = IsWhole ? b.LengthM : Shown * bayM - bayM + 5 / Scale.MmPerM;
        Spot corner = SheetStyle.Flat(b.Origin);
        Spot far = At(lengthM, b.WidthM);
        Window = SheetDraft.Window(roomMm, SitePlan.Bounds([corner, far]), Pad, Scale);
    }

    public DrawingScale Scale { get; }

    public Box Window { get; }

    /// <summary>Frame lines shown.</summary>
    public int Shown { get; }

    /// <summary>Where what is drawn along the house ends, m: its end, or the break line.</summary>
    public double EndM { get; }

    public bool IsWhole => Shown == _b.FrameLinesXM.Count;

    public double BayMm => _b.LengthM / Math.Max(1, _b.FrameLinesXM.Count - 1) * Scale.MmPerM;

    /// <summary>What the title adds when not all is shown.</summary>
    public string Part => IsWhole ? "" : string.Create(CultureInfo.InvariantCulture, $", lines 1 to {Shown} of {_b.FrameLinesXM.Count}; the others alike");

    public Spot At(double x, double y) => SheetStyle.Flat(_b.Origin + x * _b.AlongX + y * _b.AlongY);

    /// <summary>Grid lines, bubbles, dimensions, and the break line if there is one.</summary>
    public IEnumerable<Entity> Lines(IReadOnlyList<double> acrossM)
    {
        double mm = 1 / Scale.MmPerM;
        double w = _b.WidthM;
        double[] x = [.. _b.FrameLinesXM.Take(Shown)];
        int step = Math.Max(1, (int)Math.Ceiling(2.2 * SheetMarks.BubbleMm / Math.Max(BayMm, 0.01)));
        bool chained = BayMm > Lettering.WidthMm(LengthText.Of(_b.LengthM / Math.Max(1, _b.FrameLinesXM.Count - 1), _style), Face.Regular, Lettered.SmallestMm) + 1.5;
        for (int i = 0; i < x.Length; i++)
        {
            if (i % step != 0 && i != x.Length - 1 || i != x.Length - 1 && i + step > x.Length - 1 && i > 0 && (x.Length - 1 - i) * BayMm < 2.2 * SheetMarks.BubbleMm)
            {
                continue;
            }

            yield return new Entity.Polyline([At(x[i], -4 * mm), At(x[i], w + 14 * mm)]) { Role = Role.Centre, Source = _b.Id + "/grid" };
            foreach (Entity e in SheetMarks.Bubble(At(x[i], w + (14 + SheetMarks.BubbleMm) * mm), (i + 1).ToString(CultureInfo.InvariantCulture), Scale.MmPerM, _b.Id + "/grid"))
            {
                yield return e;
            }
        }

        foreach ((double y, string name) in new[] { (0.0, "L"), (w, "R") })
        {
            if (y > 0 && y < 2.2 * SheetMarks.BubbleMm * mm)
            {
                continue;
            }

            yield return new Entity.Polyline([At(-29 * mm, y), At(EndM + (IsWhole ? 4 * mm : 0), y)]) { Role = Role.Centre, Source = _b.Id + "/grid" };
            foreach (Entity e in SheetMarks.Bubble(At(-(29 + SheetMarks.BubbleMm) * mm, y), name, Scale.MmPerM, _b.Id + "/grid"))
            {
                yield return e;
            }
        }

        Spot top = At(0, w);
        if (chained)
        {
            yield return new Entity.Dimensions(top, new(1, 0), x, 7, _style) { Source = _b.Id + "/frames" };
        }

        if (IsWhole)
        {
            yield return new Entity.Dimensions(At(0, 0), new(1, 0), [0, _b.LengthM], -9, _style) { Source = _b.Id + "/length" };
        }
        else
        {
            foreach (Entity e in Break())
            {
                yield return e;
            }
        }

        bool parted = acrossM.Count > 2 && acrossM.Zip(acrossM.Skip(1)).All(p => (p.Second - p.First) * Scale.MmPerM > Lettering.WidthMm(LengthText.Of(p.Second - p.First, _style), Face.Regular, Lettered.SmallestMm) + 1.5);
        if (parted)
        {
            yield return new Entity.Dimensions(At(0, 0), new(0, 1), acrossM, 9, _style) { Source = _b.Id + "/across" };
        }

        yield return new Entity.Dimensions(At(0, 0), new(0, 1), [0, w], parted ? 17 : 11, _style) { Source = _b.Id + "/width" };
    }

    private IEnumerable<Entity> Break()
    {
        double mm = 1 / Scale.MmPerM;
        double y = _b.WidthM / 2;
        yield return new Entity.Polyline([
            At(EndM, -4 * mm), At(EndM, y - 4 * mm), At(EndM - 2 * mm, y - 1.5 * mm), At(EndM + 2 * mm, y + 1.5 * mm), At(EndM, y + 4 * mm), At(EndM, _b.WidthM + 4 * mm),
        ])
        { Role = Role.Beyond, Source = _b.Id + "/break" };
    }
}
