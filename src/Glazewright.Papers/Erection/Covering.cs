using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Takeoff;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Sheets;

namespace Glazewright.Papers.Erection;

/// <summary>Sheets and panels of a house by mark, how much plastic moves, and the order of covering.</summary>
internal static class Covering
{
    /// <summary>Polycarbonate's expansion with temperature, 1/K (general engineering value, from memory: 6.5 to 7·10⁻⁵; 20 ft move 7/8 in in 100 °F, common practice).</summary>
    internal const double ExpansionPerK = 6.5e-5;

    private const double HotSheetC = 60;

    public static IEnumerable<Block> Of(PaperSource source, HouseResults house)
    {
        LengthStyle style = SheetStyle.Lengths(source.Job);
        Said said = new(source.Job.Units);
        SheetPiece[] own = [.. source.Takeoff.Sheets.Where(s => s.Zone.StartsWith(house.Form.Id + "/", StringComparison.Ordinal))];
        List<Block> blocks = [.. CrewReport.Page(house, "cover it")];
        SheetPiece? longest = own.Where(s => s.CoverKind.StartsWith("polycarbonate", StringComparison.Ordinal)).MaxBy(s => s.LengthM);
        double coldC = house.Duty.Conditions.ExtremeMinC;
        if (longest is not null)
        {
            double movesM = MovementM(longest.LengthM, coldC);
            blocks.Add(new Block.Caution("Sheet moves", string.Create(CultureInfo.InvariantCulture, $"The longest sheet ({longest.Mark}, {LengthText.Of(longest.LengthM, style)}) is {LengthText.Of(movesM, style)} longer at {said.Round(HotSheetC, Unit.Celsius)} in the sun than at {said.Round(coldC, Unit.Celsius)}. Leave that play at its ends, drill holes oversize, tighten no screw hard; the maker's sheet book rules.")));
        }

        blocks.Add(CrewReport.Steps(
        [
            "Hold: frame braced, wind below the limit of page 1",
            "Sheets out of the sun, wrapped until used; sun side up as printed on the film; flutes run down the slope",
            "Top end sealed, bottom end on vented tape with its profile, both on the ground; cut at the eave end only, flutes blown clean",
            "Start at the end away from the usual wind, side laps away from it; first sheet square to the eave",
            "Panels: factory edge in the joint, butyl unbroken, cut edges sealed, no abrasive wheel",
            "Flashings at ridge, eaves, corners and each opening; film off the same day",
        ]));
        if (own.Length > 0)
        {
            blocks.Add(new Block.Heading(2, "Sheets and panels"));
            blocks.Add(new Block.TableOf(new Table(
                [new("Mark", 14), new("What", 56), new("Where", 40), new("Length", 32, Along.End), new("Last one wide", 20, Along.End), new("Count", 14, Along.End)],
                [.. own.Select(s => (IReadOnlyList<string>)[s.Mark, CoverSheets.Name(s.CoverKind), CoverSheets.Place(house.Form, s.Zone), LengthText.Of(s.LengthM, style), LengthText.Of(s.TrimmedWidthM, style), s.Count.ToString(CultureInfo.InvariantCulture)])])));
        }

        return blocks;
    }

    /// <summary>How much longer a sheet of polycarbonate is hot in the sun (60 °C taken) than on the coldest night, m.</summary>
    internal static double MovementM(double lengthM, double coldC) => ExpansionPerK * lengthM * (HotSheetC - coldC);
}
