using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Layout;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Sheets;

namespace Glazewright.Papers.Erection;

/// <summary>Where each piece of equipment goes: distance from end 1, from the left wall, and height of its underside.</summary>
internal static class Hanging
{
    private const double LineM = 3;

    public static IEnumerable<Block> Of(PaperSource source, HouseResults house)
    {
        LengthStyle style = SheetStyle.Lengths(source.Job);
        PlacedItem[] items = [.. house.Layout.Placed.Where(p => p.Kind is not (PlacedKind.Bench or PlacedKind.Aisle or PlacedKind.Curtain))];
        if (items.Length == 0)
        {
            return [];
        }

        string L(double m) => LengthText.Of(m, style);
        return
        [
            .. CrewReport.Page(house, "hang and set equipment"),
            new Block.Paragraph("Distances to the middle of what hangs inside (a line: to its near end) and to the near corner of what is in a wall, as drawn; the hung weight of the frame's design and the maker's brackets rule. Guards on before power; disconnect in sight of each motor; heaters and vents at their clearances.", Quiet: true),
            new Block.TableOf(new Table(
                [new("Piece", 58), new("Wall or floor", 20), new("From end 1", 28, Along.End), new("From left wall", 30, Along.End), new("Underside", 24, Along.End), new("Done", 14)],
                [
                    .. items.Select(p => (IReadOnlyList<string>)
                    [
                        p.Label.Length > 0 ? p.Label : p.Id, p.Face == Design.Form.FaceName.Floor ? "inside" : Exchange.ServicesCsv.Wall(p.Face), L(At(p, p.Corner.XM, p.Size.XM)), L(At(p, p.Corner.YM, p.Size.YM)), L(Math.Max(0, p.Corner.ZM)), "",
                    ]),
                ])),
        ];
    }

    // The layout sets the middles of hung pieces on whole inches or centimetres; lines run longer than anyone measures the middle of.
    private static double At(PlacedItem p, double cornerM, double sizeM) => Math.Max(0, cornerM + (p.Face == Design.Form.FaceName.Floor && sizeM < LineM ? sizeM / 2 : 0));
}
