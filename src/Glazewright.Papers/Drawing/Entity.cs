using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Drawing;

/// <summary>Where a label's reference point lies in its width.</summary>
public enum Along
{
    /// <summary>At the start of the text.</summary>
    Start,

    /// <summary>In the middle.</summary>
    Middle,

    /// <summary>At the end.</summary>
    End,
}

/// <summary>Where a label's reference point lies in its height.</summary>
public enum Across
{
    /// <summary>On the baseline.</summary>
    Base,

    /// <summary>Half way up the capitals.</summary>
    Middle,

    /// <summary>At the top of the capitals.</summary>
    Top,
}

/// <summary>How a hatch fills an area.</summary>
public enum HatchPattern
{
    /// <summary>Lines at 45°: metal and general material.</summary>
    Slanted,

    /// <summary>Lines both ways: insulation and panels.</summary>
    Crossed,

    /// <summary>Wide lines at 45°, alternately long and short: ground.</summary>
    Ground,

    /// <summary>Closely spaced upright lines: wetted pad, louvers.</summary>
    Upright,

    /// <summary>Short strokes this way and that: concrete.</summary>
    Concrete,
}

/// <summary>A thing drawn, with what it is (role), the layer and the part of the building it shows.</summary>
/// <remarks>
/// Coordinates are metres when it stands in a view, mm when it stands on the sheet itself. Whatever belongs to paper (heights of
/// lettering, offsets, widths) is mm in both.
/// </remarks>
public abstract record Entity
{
    private Entity()
    {
    }

    /// <summary>What it is.</summary>
    public Role Role { get; init; } = Role.Visible;

    /// <summary>Path of the part it shows (<c>A/frame-07/rafter-left</c>), or empty.</summary>
    public string Source { get; init; } = "";

    /// <summary>Layer name when it is not the role's own.</summary>
    public string? Layer { get; init; }

    /// <summary>Pen when it is not the role's own.</summary>
    public Pen? Pen { get; init; }

    /// <summary>A chain of straight lines.</summary>
    public sealed record Polyline(IReadOnlyList<Spot> Points, bool Closed = false) : Entity;

    /// <summary>A circle or a part of one; angles counter-clockwise from the x axis as seen on paper, degrees.</summary>
    public sealed record Arc(Spot Centre, double Radius, double StartDeg = 0, double SweepDeg = 360) : Entity;

    /// <summary>A coloured area; rings after the first cut holes (even-odd).</summary>
    public sealed record Fill(IReadOnlyList<IReadOnlyList<Spot>> Rings, Paint Paint, double OpacityFraction = 1) : Entity;

    /// <summary>A hatched area; rings after the first cut holes (even-odd).</summary>
    public sealed record Hatch(IReadOnlyList<IReadOnlyList<Spot>> Rings, HatchPattern Pattern, double SpacingMm = 2) : Entity;

    /// <summary>Lettering at a point, in one line.</summary>
    /// <param name="At">Reference point.</param>
    /// <param name="Text">What it says.</param>
    /// <param name="CapHeightMm">Height of its capitals on paper, mm.</param>
    public sealed record Label(Spot At, string Text, double CapHeightMm = Lettered.SmallestMm) : Entity
    {
        /// <summary>Which weight.</summary>
        public Face Face { get; init; } = Face.Regular;

        /// <summary>Reference point along the text.</summary>
        public Along Along { get; init; } = Along.Start;

        /// <summary>Reference point across the text.</summary>
        public Across Across { get; init; } = Across.Base;

        /// <summary>Turn of the baseline on paper, degrees counter-clockwise.</summary>
        public double AngleDeg { get; init; }

        /// <summary>Colour.</summary>
        public Paint Paint { get; init; } = Paint.Of(Tone.Ink);

        /// <summary>Whether a patch of paper colour is laid under it, where it crosses lines.</summary>
        public bool Masked { get; init; }

        /// <summary>Shift on paper from the reference point, mm (x right, y down).</summary>
        public Spot ShiftMm { get; init; }
    }

    /// <summary>A chain of dimensions; its texts are made from the distances themselves.</summary>
    /// <param name="From">A point the measuring starts at.</param>
    /// <param name="Direction">Direction measured along.</param>
    /// <param name="StationsM">Distances from <paramref name="From"/> along the direction, growing, m (two or more).</param>
    /// <param name="OffsetMm">Distance on paper of the dimension line from the points, to the left of the direction as seen on paper; negative to the right.</param>
    /// <param name="Style">How lengths are written.</param>
    public sealed record Dimensions(
        Spot From, Spot Direction, IReadOnlyList<double> StationsM, double OffsetMm, LengthStyle Style) : Entity;

    /// <summary>A note with a line to the thing it is about.</summary>
    /// <param name="Tip">The point it is about.</param>
    /// <param name="ToMm">Where the note stands, as a shift on paper from the tip, mm (x right, y down).</param>
    /// <param name="Text">The note; line ends break it.</param>
    public sealed record Leader(Spot Tip, Spot ToMm, string Text) : Entity
    {
        /// <summary>Height of capitals, mm.</summary>
        public double CapHeightMm { get; init; } = Lettered.SmallestMm;
    }

    /// <summary>A level mark: a small triangle standing on the level, with its value.</summary>
    public sealed record Level(Spot At, string Text, bool TextOnLeft = false) : Entity;
}

/// <summary>The rule for lettering on sheets.</summary>
public static class Lettered
{
    /// <summary>Smallest height of capitals that is printed, mm (ISO 3098 nominal size 2.5, from memory).</summary>
    public const double SmallestMm = 2.5;
}
