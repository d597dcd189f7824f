namespace Glazewright.Papers.Drawing;

/// <summary>A view on a sheet: model metres at a true scale, cut off at its window.</summary>
/// <param name="Id">Short name, unique on the sheet.</param>
/// <param name="Title">What it shows.</param>
/// <param name="Scale">Its scale.</param>
/// <param name="WindowM">The part of the model in view, metres; its <c>Top</c> is the lower y, as y points up.</param>
/// <param name="AtMm">Where the window's upper left corner lies on the sheet, mm.</param>
/// <param name="Entities">What is drawn, in order: later things cover earlier ones.</param>
public sealed record View(
    string Id, string Title, DrawingScale Scale, Box WindowM, Spot AtMm, IReadOnlyList<Entity> Entities)
{
    /// <summary>The window on paper, mm.</summary>
    public Box OnSheetMm() => new(
        AtMm.X, AtMm.Y, WindowM.Width * Scale.MmPerM, WindowM.Height * Scale.MmPerM);
}

/// <summary>A drawing on paper of a given size: views of the model, and things drawn on the paper itself.</summary>
/// <param name="Id">Short name, used for ids in files.</param>
/// <param name="Title">What it is.</param>
/// <param name="Description">A sentence for a reader who cannot see it.</param>
/// <param name="WidthMm">Width of the paper, mm.</param>
/// <param name="HeightMm">Height of the paper, mm.</param>
/// <param name="Views">The views, drawn first.</param>
/// <param name="OnPaper">What is drawn on the paper, mm, over the views.</param>
public sealed record Sheet(
    string Id,
    string Title,
    string Description,
    double WidthMm,
    double HeightMm,
    IReadOnlyList<View> Views,
    IReadOnlyList<Entity> OnPaper)
{
    /// <summary>Other drawings laid on this one, each at a place of its own, mm; drawn before what is on the paper.</summary>
    public IReadOnlyList<Inset> Insets { get; init; } = [];

    /// <summary>Values that can be pointed at on a page; paper has the picture alone.</summary>
    public IReadOnlyList<ReadingGrid> Readings { get; init; } = [];
}

/// <summary>A drawing laid on another.</summary>
/// <param name="Drawing">The drawing.</param>
/// <param name="AtMm">Where its upper left corner lies, mm.</param>
public sealed record Inset(Sheet Drawing, Spot AtMm);
