namespace Glazewright.Papers.Drawing;

/// <summary>The named colours of the house look; each has a light and a dark value.</summary>
public enum Tone
{
    /// <summary>The page itself.</summary>
    Sheet,

    /// <summary>A quiet ground behind a block.</summary>
    Wash,

    /// <summary>Ornamental rule.</summary>
    Rule,

    /// <summary>Meaningful border.</summary>
    Edge,

    /// <summary>Main text and lines.</summary>
    Ink,

    /// <summary>Second text.</summary>
    Ink2,

    /// <summary>Third text.</summary>
    Ink3,

    /// <summary>The one accent.</summary>
    Accent,

    /// <summary>A promise held.</summary>
    Held,

    /// <summary>Near its limit; a caution.</summary>
    Near,

    /// <summary>A miss.</summary>
    Miss,

    /// <summary>Sun rays and other light, in graphics.</summary>
    Sun,

    /// <summary>First data series.</summary>
    Series1,

    /// <summary>Second data series.</summary>
    Series2,

    /// <summary>Third data series.</summary>
    Series3,

    /// <summary>Fourth data series.</summary>
    Series4,

    /// <summary>Fifth data series.</summary>
    Series5,

    /// <summary>Sixth data series.</summary>
    Series6,

    /// <summary>Water and wetted parts.</summary>
    Water,
}

/// <summary>The values of the tones.</summary>
public static class Tones
{
    /// <summary>Value for paper, 0xRRGGBB.</summary>
    public static int Light(Tone tone) => tone switch
    {
        Tone.Sheet => 0xFFFFFF,
        Tone.Wash => 0xF0ECE1,
        Tone.Rule => 0xDCD5C4,
        Tone.Edge => 0x857D6B,
        Tone.Ink => 0x1C262B,
        Tone.Ink2 => 0x4A555B,
        Tone.Ink3 => 0x5C656A,
        Tone.Accent or Tone.Series1 => 0x0B5A7A,
        Tone.Held => 0x006D5F,
        Tone.Near => 0x874E00,
        Tone.Miss => 0x751613,
        Tone.Sun => 0xB36B00,
        Tone.Series2 => 0x9C7C0B,
        Tone.Series3 => 0x5D3000,
        Tone.Series4 or Tone.Water => 0x0089C9,
        Tone.Series5 => 0x3A2786,
        Tone.Series6 => 0xA34A3D,
        _ => throw new ArgumentOutOfRangeException(nameof(tone), tone, "No such tone."),
    };

    /// <summary>Value for a dark screen, 0xRRGGBB.</summary>
    public static int Dark(Tone tone) => tone switch
    {
        Tone.Sheet => 0x1A2227,
        Tone.Wash => 0x222C32,
        Tone.Rule => 0x323E45,
        Tone.Edge => 0x7D8A91,
        Tone.Ink => 0xEBE7DC,
        Tone.Ink2 => 0xB9BFC0,
        Tone.Ink3 => 0x98A1A4,
        Tone.Accent or Tone.Series1 => 0x7CC4E0,
        Tone.Held => 0x8CDCD1,
        Tone.Near => 0xD6BD5C,
        Tone.Miss => 0xDE7D8D,
        Tone.Sun => 0xF2C14E,
        Tone.Series2 => 0xA46E00,
        Tone.Series3 => 0xECBE24,
        Tone.Series4 or Tone.Water => 0x5671D8,
        Tone.Series5 => 0xCAE9BB,
        Tone.Series6 => 0xFF7C8A,
        _ => throw new ArgumentOutOfRangeException(nameof(tone), tone, "No such tone."),
    };

    /// <summary>The tone of data series <paramref name="index"/>, counted from 0; six, then round again.</summary>
    public static Tone Series(int index) => Tone.Series1 + (index % 6);
}

/// <summary>What a line or face is coloured with: a tone, or an exact colour of a ramp.</summary>
public abstract record Paint
{
    private Paint()
    {
    }

    /// <summary>A tone, which follows the theme.</summary>
    public sealed record Named(Tone Tone) : Paint;

    /// <summary>A fixed colour, 0xRRGGBB, the same in both themes (map colours).</summary>
    public sealed record Exact(int Rgb) : Paint;

    /// <summary>Shorthand for a tone.</summary>
    public static Paint Of(Tone tone) => new Named(tone);

    /// <summary>The colour on paper, 0xRRGGBB.</summary>
    public int OnPaper() => this switch
    {
        Named named => Tones.Light(named.Tone),
        Exact exact => exact.Rgb,
        _ => throw new InvalidOperationException("Paint is a closed set."),
    };
}
