namespace Glazewright.Papers.Drawing;

/// <summary>What a line or a text is on a drawing; it decides weight, dashes, colour and layer.</summary>
public enum Role
{
    /// <summary>Material that the cutting plane goes through.</summary>
    Cut,

    /// <summary>An edge in view.</summary>
    Visible,

    /// <summary>An edge in view, far behind.</summary>
    Beyond,

    /// <summary>An edge that something hides.</summary>
    Hidden,

    /// <summary>Centre lines and axes.</summary>
    Centre,

    /// <summary>Dimension and extension lines.</summary>
    Dimension,

    /// <summary>Lettering.</summary>
    Text,

    /// <summary>Section hatching.</summary>
    Hatch,

    /// <summary>Sun rays and shadow edges.</summary>
    Light,

    /// <summary>Lot lines.</summary>
    Lot,

    /// <summary>Setbacks, easements and lanes.</summary>
    Setback,

    /// <summary>Equipment outlines.</summary>
    Equipment,

    /// <summary>Coloured areas: maps, covering, ground.</summary>
    Fill,

    /// <summary>Sheet border, title block and table rules.</summary>
    Frame,

    /// <summary>A curve of a chart.</summary>
    Curve,

    /// <summary>Grid lines of a chart.</summary>
    Grid,
}

/// <summary>How a line is drawn.</summary>
/// <param name="WidthMm">Line width, mm.</param>
/// <param name="DashesMm">Lengths of dash, gap, dash, gap…, mm; none is a full line.</param>
/// <param name="Paint">Its colour.</param>
public sealed record Pen(double WidthMm, IReadOnlyList<double> DashesMm, Paint Paint);

/// <summary>The pen of each role.</summary>
/// <remarks>
/// Widths from the ISO 128 line group 0.5 (0.13 0.18 0.25 0.35 0.5, steps of √2), dashes in multiples of the width as ISO 128
/// has them for dashed and long-dash-dotted lines: both from memory.
/// </remarks>
public static class Pens
{
    private static readonly double[] Full = [];

    /// <summary>The pen that a role is drawn with unless an entity names another.</summary>
    public static Pen Of(Role role) => role switch
    {
        Role.Cut => new(0.5, Full, Paint.Of(Tone.Ink)),
        Role.Visible => new(0.35, Full, Paint.Of(Tone.Ink)),
        Role.Beyond => new(0.18, Full, Paint.Of(Tone.Ink2)),
        Role.Hidden => new(0.25, [3, 1], Paint.Of(Tone.Ink2)),
        Role.Centre => new(0.18, [6, 1, 0.4, 1], Paint.Of(Tone.Ink2)),
        Role.Dimension => new(0.18, Full, Paint.Of(Tone.Ink2)),
        Role.Text => new(0.18, Full, Paint.Of(Tone.Ink)),
        Role.Hatch => new(0.13, Full, Paint.Of(Tone.Edge)),
        Role.Light => new(0.25, Full, Paint.Of(Tone.Sun)),
        Role.Lot => new(0.5, [9, 1.5, 1.5, 1.5, 1.5, 1.5], Paint.Of(Tone.Ink)),
        Role.Setback => new(0.25, [4, 1.5], Paint.Of(Tone.Edge)),
        Role.Equipment => new(0.25, Full, Paint.Of(Tone.Accent)),
        Role.Fill => new(0.13, Full, Paint.Of(Tone.Edge)),
        Role.Frame => new(0.25, Full, Paint.Of(Tone.Ink)),
        Role.Curve => new(0.4, Full, Paint.Of(Tone.Series1)),
        Role.Grid => new(0.13, Full, Paint.Of(Tone.Rule)),
        _ => throw new ArgumentOutOfRangeException(nameof(role), role, "No such role."),
    };

    /// <summary>The layer a role goes on unless an entity names another: its own name in small letters.</summary>
    public static string LayerOf(Role role) => role.ToString().ToLowerInvariant();
}
