using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Layout;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Exchange;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Plant;

/// <summary>Vent and combustion-air pipes of the heaters, for the gas fitter to price from.</summary>
internal static class VentChapter
{
    public static IEnumerable<Block> Of(PaperSource source)
    {
        List<FlueLine> lines = [.. source.Houses.SelectMany(h => h.Layout.Flues)];
        if (lines.Count == 0)
        {
            yield break;
        }

        bool us = source.Job.Units == UnitSystem.Us;
        Said said = new(source.Job.Units);
        yield return new Block.Heading(2, "Vents of heaters and boiler");
        yield return new Block.TableOf(Rows(lines, us));
        bool condensing = lines.Exists(f => f.Condensing);
        bool dry = lines.Exists(f => f.Sealed && !f.Condensing);
        bool direct = lines.Exists(f => f.Sealed);
        bool open = lines.Exists(f => !f.Sealed);
        yield return new Block.Caution(
            "Carbon monoxide",
            "A vent that is too long, sags, leaks or ends near an opening kills. The heater maker's vent table and listed pipe replace the sizes here, the adopted code and a licensed fitter decide; test draft and carbon monoxide with all fans on.");
        yield return new Block.Paragraph(
            (direct
                ? $"Wall terminals at least {said.Text(lines.First(f => f.Gravity is null).LeastHeightM, Unit.Metre)} above the floor: 12 in (0.3 m) over the undrifted ground snow. Direct vent: 6 in (15 cm) from doors, vents, louvers and wet wall up to 10 kBtu/h (3 kW) of input, 9 in (23 cm) up to 50 kBtu/h (15 kW), 12 in (30 cm) above, and 3 ft (0.9 m) above a filter intake within 10 ft (3 m); the combustion-air pipe ends beside it. "
                : "")
            + (open ? "Gravity vents: type B double-wall pipe straight up, smallest diameter that carries the input at its rise by the code's table for one natural-draft appliance; cap 1 ft (0.3 m) above roofs up to 6:12 and higher above steeper ones, at least 5 ft (1.5 m) above the collar, 2 ft (0.6 m) above buildings within 8 ft (2.4 m), 1 ft (0.3 m) above openings within 4 ft (1.2 m) and 3 ft (0.9 m) above louvers, wet wall and filter intake within 10 ft (3 m). An offset carries less: take the next size. 1 in (25 mm) clear of plastic sheet and cloth. " : "")
            + (dry ? "Direct vents that stay dry slope 1/4 in a foot (2 %) to the terminal: sealed, listed pipe for pressure. " : "")
            + (condensing ? "Condensing vents slope 1/4 in a foot (2 %) back to the heater, to a trapped, neutralised drain kept from frost. " : "")
            + (lines.Exists(f => f.Unplaced) ? "Where the boiler stands is not in the job: its pipe is priced by an allowance. " : "")
            + "An elbow counts 5 ft (1.5 m); runs of wall vents are square with the walls and end 1 ft (0.3 m) outside. Through the covering only in a listed thimble: plastic glazing softens. Places along a wall are from its start, as on the wall sheets. Keep off walks, meters and regulators, and 7 ft (2.1 m) above public walks. Clearances after NFPA 54 read at second hand in makers' tables; sizes of direct vents, elbow and longest runs are our assumptions.",
            Quiet: true);
    }

    private static Table Rows(List<FlueLine> lines, bool us)
    {
        string Pipe(double sizeM) => us ? $"{Whole(sizeM / 0.0254)} in" : $"{Whole(1000 * sizeM)} mm";
        (double unitM, string unit) = us ? (0.3048, "ft") : (1, "m");
        string Heat(double watt) => Whole(us ? watt / 293.07107 : watt / 1000);
        string power = us ? "kBtu/h" : "kW";
        string Long(double lengthM) => string.Create(CultureInfo.InvariantCulture, $"{lengthM / unitM:0.0} {unit}");
        return new(
            [
                new Column("Burner", 20), new Column("Vent / air", 24), new Column("Out by", 24), new Column("Height", 17, Along.End), new Column("Run, elbows", 23, Along.End),
                new Column("Length or input / most", 25, Along.End), new Column("Falls to", 17), new Column("Nearest", 22),
            ],
            [
                .. lines.Select(f => (IReadOnlyList<string>)
                [
                    f.Heater, f.VentM > 0 ? $"{Pipe(f.VentM)}{(f.Gravity is null ? "" : " type B")} / {(f.Sealed ? Pipe(f.IntakeM) : "none")}" : "maker's table",
                    f.Face is { } face ? $"{ServicesCsv.Wall(face)}, {Long(f.AlongM)}" : f.Unplaced ? "not in the job" : "no place found",
                    f.Face is null ? "–" : Long(f.HeightM), f.Face is null ? "–" : $"{Long(f.RunM)}, {Whole(f.Elbows)}",
                    f.Gravity is { } g ? $"{Heat(f.InputW)} / {Heat(g.CapacityW)} {power}" : f.Face is null || f.MostM <= 0 ? "–" : $"{Whole(f.EquivalentM / unitM)} / {Whole(f.MostM / unitM)} {unit}",
                    f.Gravity is not null ? "–" : f.Condensing ? "heater" : "terminal",
                    f.Nearest.Length == 0 ? "–" : $"{f.Nearest}, {Long(f.NearestM)}",
                ]),
            ]);
    }

    private static string Whole(double value) => value.ToString("#,0", CultureInfo.InvariantCulture);
}
