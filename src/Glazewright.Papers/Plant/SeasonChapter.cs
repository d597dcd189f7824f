using System.Globalization;
using Glazewright.Design.Behaviour;
using Glazewright.Design.Contracts;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Plant;

/// <summary>Wet wall, fog, both or neither: the hours each holds by month, the water it takes, and what to have.</summary>
internal static class SeasonChapter
{
    private static readonly string[] Months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

    public static IEnumerable<Block> Of(SeasonResult season, HouseResults house, Said said)
    {
        yield return new Block.Heading(2, "Wet wall, fog, both or neither");
        yield return new Block.Paragraph(season.Reason);
        yield return new Block.Picture(
            MonthBars.Draw(
                "season", "Hours that ask for cooling and are not held", "h",
                [
                    new MonthSeries("fans alone", Missed(season, m => m.Fans)), new MonthSeries("with wet wall", Missed(season, m => m.Pad)),
                    new MonthSeries("with fog", Missed(season, m => m.Fog)),
                ],
                null, Said.WidthMm, 46),
            "Hours not held by month of the weather year.");
        yield return new Block.TableOf(new Table(
            [
                new Column("Month", 14), new Column("Asked, h", 18, Along.End), new Column("Fans hold", 19, Along.End), new Column("Wet wall", 19, Along.End), new Column("Fog", 19, Along.End),
                new Column("Both", 19, Along.End), new Column("Pad cools", 20, Along.End), new Column("Pad water", 22, Along.End), new Column("Fog water", 22, Along.End),
            ],
            [
                .. season.Months.Where(m => m.AskedH > 0).Select(m => (IReadOnlyList<string>)
                [
                    Months[m.Month - 1], Whole(m.AskedH), Hours(m.Fans), Hours(m.Pad), Hours(m.Fog), Hours(m.Both), said.Text(m.PadDropK, Unit.Kelvin),
                    said.Round(m.Pad.WaterM3, Unit.WaterCubicMetre), said.Round(m.Fog.WaterM3, Unit.WaterCubicMetre),
                ]),
            ]));
        yield return new Block.Paragraph(
            $"Hours held in temperature; in brackets those held within ten points of the wished humidity too. The wet wall is {(season.PadInHouse ? "the house's" : "a supposed one of 80 % effectiveness")}, the fog {(season.FogInHouse ? "the house's" : "a supposed one that fills half of what the design day's air can take")}. Water runs only in hours that fans alone do not hold. A typical year, shade drawn.", Quiet: true);
        yield return new Block.Paragraph(AgainstYear(season, house));
    }

    // Two counts of one year that do not ask the same: a reader who finds both must be told which to go by.
    private static string AgainstYear(SeasonResult season, HouseResults house)
    {
        double Sum(Func<SeasonMonth, WayHeld> way) => season.Months.Sum(m => way(m).HeldH);
        (string name, double heldH) = (season.PadInHouse, season.FogInHouse) switch
        {
            (true, true) => ("fans, wet wall and fog", Sum(m => m.Both)),
            (true, false) => ("fans and wet wall", Sum(m => m.Pad)),
            (false, true) => ("fans and fog", Sum(m => m.Fog)),
            _ => ("fans", Sum(m => m.Fans)),
        };
        double asked = season.Months.Sum(m => m.AskedH);
        string other = season.Advice switch
        {
            SeasonWay.Pad when !season.PadInHouse => " The count advises a wet wall, which this house has not.",
            SeasonWay.Fog when !season.FogInHouse => " The count advises fog, which this house has not.",
            SeasonWay.Both when !(season.PadInHouse && season.FogInHouse) => " The count advises wet wall and fog, and this house has not both.",
            _ => "",
        };
        return $"This count and the simulated year ask different things. Here each hour stands still with everything on, and the air at the fans may be the allowed rise above the wish: by that measure this house's {name} leave {Whole(Math.Max(asked - heldH, 0))} of {Whole(asked)} hours. The year runs the control program minute by minute on the mean air of the house, with its stores of heat, its stages and its humidity ceiling, against the wish and its band: there it is too warm in {Whole(house.Year.Held.TooWarmH)} h.{other} The count ranks ways of cooling by water and hours; what is promised is the year's run. Before changing the way, change it in the job and run the year: the order can turn.";
    }

    private static double[] Missed(SeasonResult season, Func<SeasonMonth, WayHeld> way) => [.. season.Months.Select(m => Math.Max(m.AskedH - way(m).HeldH, 0))];

    private static string Hours(WayHeld way) => way.HumidHeldH < way.HeldH ? $"{Whole(way.HeldH)} ({Whole(way.HumidHeldH)})" : Whole(way.HeldH);

    private static string Whole(double value) => value.ToString("#,0", CultureInfo.InvariantCulture);
}
