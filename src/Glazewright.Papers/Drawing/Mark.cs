using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Drawing;

/// <summary>What a drawing is boiled down to before it is written: four kinds of marks, in mm on paper, y down.</summary>
public abstract record Mark(Role Role, string Layer, string Source)
{
    /// <summary>A stroked chain of straight lines.</summary>
    public sealed record Lines(IReadOnlyList<Spot> Points, bool Closed, Pen Pen, Role Role, string Layer, string Source)
        : Mark(Role, Layer, Source);

    /// <summary>A stroked circle or part of one; angles counter-clockwise as seen, degrees.</summary>
    public sealed record Curve(
        Spot Centre, double RadiusMm, double StartDeg, double SweepDeg, Pen Pen, Role Role, string Layer, string Source)
        : Mark(Role, Layer, Source);

    /// <summary>A filled area, even-odd.</summary>
    public sealed record Area(
        IReadOnlyList<IReadOnlyList<Spot>> Rings, Paint Paint, double OpacityFraction, Role Role, string Layer, string Source)
        : Mark(Role, Layer, Source);

    /// <summary>One line of lettering whose baseline starts at <paramref name="Start"/>.</summary>
    public sealed record Words(
        Spot Start, string Text, Face Face, double CapHeightMm, double AngleDeg, Paint Paint, Role Role, string Layer, string Source)
        : Mark(Role, Layer, Source)
    {
        /// <summary>Length of the baseline, mm.</summary>
        public double WidthMm() => Lettering.WidthMm(Text, Face, CapHeightMm);

        /// <summary>The corners of the box from baseline to cap height, in order round it.</summary>
        public IReadOnlyList<Spot> Corners()
        {
            double angle = AngleDeg * Math.PI / 180;
            Spot along = WidthMm() * new Spot(Math.Cos(angle), -Math.Sin(angle));
            Spot up = CapHeightMm * new Spot(-Math.Sin(angle), -Math.Cos(angle));
            return [Start, Start + along, Start + along + up, Start + up];
        }
    }
}

/// <summary>What marks are to someone who has a page read aloud.</summary>
public enum Spoken
{
    /// <summary>Running text.</summary>
    Text,

    /// <summary>Title of a chapter.</summary>
    Heading1,

    /// <summary>Title of what stands under it.</summary>
    Heading2,

    /// <summary>Title of less.</summary>
    Heading3,

    /// <summary>A picture: its words are read in place of its marks.</summary>
    Picture,

    /// <summary>A cell of a table's head.</summary>
    HeadCell,

    /// <summary>A cell of a table.</summary>
    Cell,

    /// <summary>What is on every page, and is passed over.</summary>
    Furniture,
}

/// <summary>Marks that belong together and are cut off at a window, if there is one.</summary>
/// <param name="Id">Short name.</param>
/// <param name="Title">What they show, or empty.</param>
/// <param name="ClipMm">The window, mm, or none.</param>
/// <param name="Marks">The marks in the order they are laid.</param>
public sealed record MarkGroup(string Id, string Title, Box? ClipMm, IReadOnlyList<Mark> Marks)
{
    /// <summary>What they are to a reader by ear.</summary>
    public Spoken Spoken { get; init; }

    /// <summary>What is read in place of a picture; groups that follow each other with the same words are one picture. For cells, their row: cells that follow each other with the same words are one row.</summary>
    public string Words { get; init; } = "";

    /// <summary>The same marks moved over the paper, mm.</summary>
    public MarkGroup Moved(Spot byMm)
    {
        Box? clip = ClipMm is Box box ? box with { Left = box.Left + byMm.X, Top = box.Top + byMm.Y } : null;
        return this with { ClipMm = clip, Marks = [.. Marks.Select(m => Moved(m, byMm))] };
    }

    /// <summary>The same marks larger or smaller, paper and pens and all.</summary>
    /// <param name="factor">How many times as large.</param>
    public MarkGroup Scaled(double factor)
    {
        Box? clip = ClipMm is Box box ? new Box(box.Left * factor, box.Top * factor, box.Width * factor, box.Height * factor) : null;
        return this with { ClipMm = clip, Marks = [.. Marks.Select(m => Scaled(m, factor))] };
    }

    private static Mark Scaled(Mark mark, double by) => mark switch
    {
        Mark.Lines lines => lines with { Points = [.. lines.Points.Select(p => by * p)], Pen = Scaled(lines.Pen, by) },
        Mark.Curve curve => curve with { Centre = by * curve.Centre, RadiusMm = by * curve.RadiusMm, Pen = Scaled(curve.Pen, by) },
        Mark.Area area => area with { Rings = [.. area.Rings.Select(r => (IReadOnlyList<Spot>)[.. r.Select(p => by * p)])] },
        Mark.Words words => words with { Start = by * words.Start, CapHeightMm = by * words.CapHeightMm },
        _ => throw new InvalidOperationException("Marks are a closed set."),
    };

    private static Pen Scaled(Pen pen, double by) => pen with { WidthMm = by * pen.WidthMm, DashesMm = [.. pen.DashesMm.Select(d => by * d)] };

    private static Mark Moved(Mark mark, Spot by) => mark switch
    {
        Mark.Lines lines => lines with { Points = Moved(lines.Points, by) },
        Mark.Curve curve => curve with { Centre = curve.Centre + by },
        Mark.Area area => area with { Rings = [.. area.Rings.Select(r => Moved(r, by))] },
        Mark.Words words => words with { Start = words.Start + by },
        _ => throw new InvalidOperationException("Marks are a closed set."),
    };

    private static IReadOnlyList<Spot> Moved(IReadOnlyList<Spot> points, Spot by) => [.. points.Select(p => p + by)];
}

/// <summary>A page ready to be written.</summary>
public sealed record Page(double WidthMm, double HeightMm, IReadOnlyList<MarkGroup> Groups)
{
    /// <summary>The same page larger or smaller.</summary>
    /// <param name="factor">How many times as large.</param>
    public Page Scaled(double factor) => new(WidthMm * factor, HeightMm * factor, [.. Groups.Select(g => g.Scaled(factor))]);

    /// <summary>All lettering of the page.</summary>
    public IEnumerable<Mark.Words> Words() => Groups.SelectMany(g => g.Marks).OfType<Mark.Words>();
}
