using System.Globalization;
using Glazewright.Design.Behaviour;
using Glazewright.Design.Contracts;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;

namespace Glazewright.Papers.Plant;

/// <summary>Wet wall, fog, both or neither: the hours each holds by month, the water it takes, and what to have.</summary>
internal static class SeasonChapter
{
    private static readonly string[] Months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

    public static IEnumerable<Block> Of(SeasonResult season, Said said)
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
    }

    private static double[] Missed(SeasonResult season, Func<SeasonMonth, WayHeld> way) => [.. season.Months.Select(m => Math.Max(m.AskedH - way(m).HeldH, 0))];

    private static string Hours(WayHeld way) => way.HumidHeldH < way.HeldH ? $"{Whole(way.HeldH)} ({Whole(way.HumidHeldH)})" : Whole(way.HeldH);

    private static string Whole(double value) => value.ToString("#,0", CultureInfo.InvariantCulture);
}
