using Glazewright.Design.Contracts;

namespace Glazewright.Design.Cuts;

/// <summary>Shop habits that the job does not state. Common practice, from memory; lengths m.</summary>
public static class CutsRules
{
    /// <summary>Both mill ends squared together (1/2 in) before the first piece.</summary>
    public const double EndTrimM = 0.0127;

    /// <summary>Shortest drop that goes back to the rack (24 in).</summary>
    public const double UsableDropM = 0.6096;

    /// <summary>Usable drops above this share of the bought length are worth a word: the rack fills and the money lies in it.</summary>
    public const double ManyDropsFraction = 0.10;

    /// <summary>A saw set-up counts as so much tube in the objective (about 10 minutes of two hands).</summary>
    public const double SetUpM = 0.9;

    /// <summary>Handling a stick counts as so much tube in the objective (about 3 minutes).</summary>
    public const double HandlingM = 0.3;

    /// <summary>Kerf of the fine-tooth blade on sheet (1/8 in).</summary>
    public const double SheetKerfM = 0.003175;

    /// <summary>Shortest panel a mill makes (8 ft): shorter pieces are cut from longer panels.</summary>
    public const double ShortestPanelM = 2.4384;

    /// <summary>Longest panel that shorter pieces are cut from (20 ft: two can carry it to the saw).</summary>
    public const double LongestCutPanelM = 6.096;

    /// <summary>Kerf of the cold saw on panel (1/8 in).</summary>
    public const double PanelKerfM = 0.003175;

    /// <summary>Lengths multiwall sheet is sold in: 8 to 40 ft, or 2 to 12 m.</summary>
    /// <param name="units">Unit system of the job.</param>
    /// <returns>Lengths, m.</returns>
    public static EqList<double> SheetLengthsM(UnitSystem units) => units == UnitSystem.Us
        ? EqList.Create<double>([8 * 0.3048, 10 * 0.3048, 12 * 0.3048, 16 * 0.3048, 20 * 0.3048, 24 * 0.3048, 32 * 0.3048, 40 * 0.3048])
        : EqList.Create<double>([2, 3, 4, 5, 6, 7, 8, 10, 12]);
}
