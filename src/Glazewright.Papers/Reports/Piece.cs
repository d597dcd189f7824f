using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Reports;

/// <summary>A part of a block that stays on one page.</summary>
/// <param name="HeightMm">Height, mm.</param>
/// <param name="BeforeMm">Space before it, dropped at the top of a page.</param>
/// <param name="Draw">Its marks when its upper left corner lies at a place, mm.</param>
internal sealed record Piece(double HeightMm, double BeforeMm, Func<Spot, IReadOnlyList<MarkGroup>> Draw)
{
    /// <summary>Whether the next piece must stand on the same page.</summary>
    public bool KeepWithNext { get; init; }

    /// <summary>A piece that is drawn again when this one opens a page (a table's head).</summary>
    public Piece? Head { get; init; }

    /// <summary>Its outline entry: depth and title.</summary>
    public (int Depth, string Title)? Outline { get; init; }

    /// <summary>Whether it starts a page.</summary>
    public bool OpensPage { get; init; }

    /// <summary>Whether it does so after a page that holds little, too.</summary>
    public bool OpensAlways { get; init; }

    /// <summary>A piece made of things drawn from its upper left corner, in mm.</summary>
    public static Piece Of(double heightMm, double beforeMm, IEnumerable<Entity> entities, Spoken spoken = Spoken.Text)
    {
        MarkGroup group = new("text", "", null, Plot.OnPaper(entities)) { Spoken = spoken };
        return new Piece(heightMm, beforeMm, at => [group.Moved(at)]);
    }
}
