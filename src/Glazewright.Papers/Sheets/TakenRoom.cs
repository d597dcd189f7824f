using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Sheets;

/// <summary>Boxes of paper that lettering has taken, so that what would lie over them is left out or goes elsewhere; mm, any origin.</summary>
internal sealed class TakenRoom
{
    private const double ClearMm = 0.5;

    private readonly List<Box> _boxes = [];

    /// <summary>Takes a box if nothing lies there.</summary>
    public bool Take(Box box)
    {
        if (!IsFree(box))
        {
            return false;
        }

        _boxes.Add(box);
        return true;
    }

    /// <summary>Takes a box whatever lies there.</summary>
    public void Add(Box box) => _boxes.Add(box);

    public bool IsFree(Box box) => _boxes.TrueForAll(t =>
        t.Left >= box.Right + ClearMm || box.Left >= t.Right + ClearMm || t.Top >= box.Bottom + ClearMm || box.Top >= t.Bottom + ClearMm);

    /// <summary>A box round a middle.</summary>
    public static Box Round(Spot middleMm, double widthMm, double heightMm) => new(middleMm.X - widthMm / 2, middleMm.Y - heightMm / 2, widthMm, heightMm);
}
