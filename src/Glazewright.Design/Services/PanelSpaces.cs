using System.Globalization;

namespace Glazewright.Design.Services;

/// <summary>Circuits into the spaces of a panel: odd numbers left, even right, legs in turn down the rows.</summary>
internal sealed class PanelSpaces(int legs)
{
    private static readonly int[] Sizes = [12, 20, 24, 30, 42, 54, 66, 84];

    private readonly List<bool[]> _rows = [];
    private int _used;

    /// <summary>Share of spaces to leave free, at least.</summary>
    public const double SpareFraction = 0.2;

    /// <summary>Takes the first spaces whose legs suit; gives the numbers and their first.</summary>
    public (string Number, int First) Take(int poles, int startLeg)
    {
        for (int row = 0; ; row++)
        {
            for (int side = 0; side < 2; side++)
            {
                if (row % legs == startLeg % legs && Free(row, side, poles))
                {
                    for (int p = 0; p < poles; p++)
                    {
                        _rows[row + p][side] = true;
                    }

                    _used += poles;
                    int first = 2 * row + side + 1;
                    return (string.Join(',', Enumerable.Range(0, poles).Select(p => (first + 2 * p).ToString(CultureInfo.InvariantCulture))), first);
                }
            }
        }
    }

    /// <summary>Spaces taken.</summary>
    public int Used => _used;

    /// <summary>Panel to buy: past the largest usual one, in sections of 42.</summary>
    public int ToBuy()
    {
        double need = Math.Max(_used / (1 - SpareFraction), 2 * _rows.Count);
        return Sizes.FirstOrDefault(s => s >= need - 1e-9) is > 0 and int size ? size : 42 * (int)Math.Ceiling(need / 42);
    }

    private bool Free(int row, int side, int poles)
    {
        while (_rows.Count < row + poles)
        {
            _rows.Add([false, false]);
        }

        return Enumerable.Range(row, poles).All(r => !_rows[r][side]);
    }
}
