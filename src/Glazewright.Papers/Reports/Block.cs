using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Reports;

/// <summary>How a promise fared; shown as word and shape before colour.</summary>
public enum Standing
{
    /// <summary>Nothing promised.</summary>
    None,

    /// <summary>Held.</summary>
    Held,

    /// <summary>Near its limit.</summary>
    Near,

    /// <summary>Missed.</summary>
    Miss,
}

/// <summary>A number made large.</summary>
/// <param name="Label">What it is.</param>
/// <param name="Value">The number.</param>
/// <param name="Unit">Its unit, set small beside it.</param>
/// <param name="Limit">What it is measured against, or empty.</param>
/// <param name="Standing">How it fared.</param>
public sealed record BigFigure(string Label, string Value, string Unit, string Limit = "", Standing Standing = Standing.None);

/// <summary>A block of a report.</summary>
public abstract record Block
{
    private Block()
    {
    }

    /// <summary>The opening of a report: title, a line under it, and short facts.</summary>
    public sealed record Opening(string Title, string Under, IReadOnlyList<string> Facts) : Block;

    /// <summary>A heading; levels 1 and 2 enter the outline.</summary>
    public sealed record Heading(int Level, string Text) : Block;

    /// <summary>Running text, one paragraph.</summary>
    public sealed record Paragraph(string Text, bool Quiet = false) : Block;

    /// <summary>A short answer, set larger than running text; what follows stands on the same page.</summary>
    public sealed record Lead(string Text) : Block;

    /// <summary>A list with dots.</summary>
    public sealed record Bullets(IReadOnlyList<string> Items) : Block;

    /// <summary>Numbers made large, side by side, up to four in a row.</summary>
    public sealed record Figures(IReadOnlyList<BigFigure> Items) : Block;

    /// <summary>A table; its head is repeated on each page, and no page has one row or two of a longer one.</summary>
    public sealed record TableOf(Table Table) : Block
    {
        /// <summary>Kept on one page where a page takes it.</summary>
        public bool Whole { get; init; }
    }

    /// <summary>A drawing at its own size, with a caption.</summary>
    public sealed record Picture(Sheet Drawing, string Caption) : Block
    {
        /// <summary>The numbers that it draws, for a page; paper has the picture alone. Null where a table beside it tells them.</summary>
        public Table? Numbers { get; init; }
    }

    /// <summary>A caution, in a box that cannot be overlooked.</summary>
    public sealed record Caution(string Title, string Text) : Block;

    /// <summary>The contents: every heading of levels 1 and 2 with its page.</summary>
    public sealed record Contents : Block;

    /// <summary>What follows starts a page.</summary>
    public sealed record NewPage : Block
    {
        /// <summary>Also after a page that holds little: what is torn out and handed on by itself.</summary>
        public bool Always { get; init; }
    }
}

/// <summary>A report.</summary>
/// <param name="Title">Its title, for the file's properties.</param>
/// <param name="Subject">A sentence on what it is.</param>
/// <param name="Foot">What stands at the foot of each page, left of the page number.</param>
/// <param name="Date">Its date, or none for an undated draft.</param>
/// <param name="Size">Paper.</param>
/// <param name="Blocks">What it says.</param>
public sealed record Report(
    string Title, string Subject, string Foot, DateOnly? Date, SheetSize Size, IReadOnlyList<Block> Blocks)
{
    /// <summary>How many times as large everything is set: above 1 for what is read at arm's length.</summary>
    public double TypeFactor { get; init; } = 1;
}
