using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Plant;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Science.Air;

namespace Glazewright.Papers.Plant;

/// <summary>The design days of a house and what its air does on them.</summary>
internal static class AirChapter
{
    public static IEnumerable<Block> Of(PaperSource source, HouseResults house)
    {
        UnitSystem units = source.Job.Units;
        Said said = new(units);
        DutyResult duty = house.Duty;
        string id = house.Form.Id;
        yield return new Block.Heading(2, "Design days");
        yield return new Block.TableOf(Days(duty, said));
        yield return new Block.Paragraph("“This year” is the same statistic counted in the weather year of the simulation: a typical year leaves the extremes out, so it is milder than many years of record. For the wettest day it is the wet bulb.", Quiet: true);

        AirWay summer = AirStory.Summer(duty, house.Plant);
        AirWay wettest = AirStory.WetDay(duty, house.Plant);
        AirState exhaust = summer.Steps[^1].States[^1];
        yield return new Block.Heading(2, "The hottest and the wettest day on the chart");
        yield return new Block.Lead($"Outside {said.Text(duty.Air.Summer.DryBulbC, Unit.Celsius)}, in at {said.Text(summer.Steps[^1].States[0].DryBulbC, Unit.Celsius)}, out at {said.Text(exhaust.DryBulbC, Unit.Celsius)} and {Said.Percent(exhaust.RelativeHumidityFraction)} % relative humidity, with {said.Round(summer.FlowM3PerS, Unit.CubicMetrePerSecond)} {(house.Plant.Exhaust is null ? "supposed to move: what the design day asks for, and the house has no exhaust fans" : "moving")}.");
        yield return new Block.Picture(
            PsychrometricChart.Draw($"air-summer-{id}", $"House {id}: air on the hottest and on the wettest design day", [summer, wettest], units, Said.WidthMm, 96),
            "Solid top line: saturation. Dashed: relative humidity. Dotted: wet bulb, one line for each temperature on the axis.");
        yield return new Block.TableOf(NumberedStates.Table([summer, wettest], units));
        yield return new Block.TableOf(Steps([summer, wettest], said));

        yield return new Block.Paragraph("The wettest day has the hottest day's sun: cautious. It shows the least that a wet wall or fog can do here.", Quiet: true);
        yield return new Block.Heading(2, "Ventilation, two ways and what other rules say");
        yield return new Block.TableOf(LossTables.Ventilation(duty, house.House.Equipment, house.Form.FloorAreaM2, said));
        yield return new Block.Paragraph(LossTables.WhyTheyDiffer(duty, said));
        yield return new Block.Heading(2, "Heat loss on the design night, by face");
        yield return new Block.TableOf(LossTables.Paths(duty, said));
        yield return new Block.Paragraph(LossTables.Skies(duty, said), Quiet: true);
        AirWay[] nights = AirStory.DampNight(duty) is { } damp ? [AirStory.WinterNight(duty), damp] : [AirStory.WinterNight(duty)];
        yield return new Block.Heading(2, "Nights");
        yield return new Block.Lead(Night(duty, said));
        yield return new Block.Picture(
            PsychrometricChart.Draw($"air-nights-{id}", $"House {id}: air on the design nights", nights, units, Said.WidthMm, 84),
            "The cold night with the house closed, and the damp mild night aired to the night target.");
        yield return new Block.TableOf(NumberedStates.Table(nights, units));
        yield return new Block.TableOf(Steps(nights, said));
    }

    private static string Night(DutyResult duty, Said said)
    {
        NightBalance b = duty.Air.Balance;
        string cover = $"the coldest inner face, {b.ColdestZone}, is at {said.Text(b.CoverC, Unit.Celsius)}, the dew point of the house at {said.Text(b.House.DewPointC, Unit.Celsius)}";
        return b.CondensationKgPerS * 3600 >= 0.1
            ? $"Closed on the design night, the house settles at {Said.Percent(b.House.RelativeHumidityFraction)} % relative humidity; {cover}: about {said.Text(b.CondensationKgPerS, Unit.KilogramPerSecond)} run down the covering, {said.Text(b.LeakedKgPerS, Unit.KilogramPerSecond)} leave with the leaking air."
            : $"Closed on the design night, the house settles at {Said.Percent(b.House.RelativeHumidityFraction)} % relative humidity; {cover}: next to nothing condenses; {said.Text(b.LeakedKgPerS, Unit.KilogramPerSecond)} leave with the leaking air.";
    }

    private static Table Days(DutyResult duty, Said said) => new(
        [
            new Column("Design day", 40), new Column("Dry bulb", 17, Along.End), new Column("Wet bulb", 17, Along.End), new Column("Wind", 17, Along.End),
            new Column("This year", 17, Along.End), new Column("Sizes", 28), new Column("From", 36),
        ],
        [
            .. duty.Air.Days.Select(d => (IReadOnlyList<string>)
            [
                d.Label, said.Text(d.DryBulbC, Unit.Celsius), said.Text(d.WetBulbC, Unit.Celsius), d.WindMs < 0 ? "not stated" : said.Text(d.WindMs, Unit.MetrePerSecond),
                said.Text(d.FromYearC, Unit.Celsius), d.Use, From(d.Source),
            ]),
        ]);

    private static Table Steps(IReadOnlyList<AirWay> ways, Said said) => new(
        [new Column("Day", 56), new Column("Step", 40), new Column("Outside air", 26, Along.End), new Column("Warms by", 25, Along.End), new Column("Takes up", 25, Along.End)],
        [
            .. ways.SelectMany(w => w.Steps.Select((s, i) => (IReadOnlyList<string>)
            [
                i == 0 ? w.Title : "", NumberedStates.Word(s.Act), i == 0 ? said.Round(w.FlowM3PerS, Unit.CubicMetrePerSecond) : "", said.Text(s.HeatW, Unit.Watt), said.Text(s.WaterKgPerS, Unit.KilogramPerSecond),
            ])),
        ]);

    private static string From(Source source) => source switch
    {
        Source.Given => "typed in the job",
        Source.Standard standard => $"{standard.Name}, {standard.Clause}",
        Source.Default => "computed from one typical year",
        Source.FirstPrinciples first => first.Of,
        _ => "common practice",
    };
}
