using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Exchange;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Tests.Sets;

namespace Glazewright.Papers.Tests.Answers;

/// <summary>Answers on cooling and heating say one thing in all their places.</summary>
public class PlantAnswersTests
{
    private static HouseResults WithWarmHours(HouseResults house, double hours) => house with { Year = house.Year with { Held = house.Year.Held with { TooWarmH = hours } } };

    // Fans that suit the design day hold nothing in a year that is too warm for a tenth of its hours.
    [Theory]
    [InlineData(0, Standing.Held), InlineData(100, Standing.Held), InlineData(600, Standing.Near), InlineData(1500, Standing.Miss)]
    public void Cooling_is_judged_by_the_year_as_well(double warmH, Standing least)
    {
        PaperSource source = SampleSource.Make(houses: 1);
        HouseResults house = WithWarmHours(source.Houses[0], warmH);
        QuestionAnswered answer = PlantAnswers.Cooling(source, house);
        BigFigure hours = answer.Blocks.OfType<Block.Figures>().Single().Items.Single(f => f.Label == "Hours too warm");
        Assert.Equal(least, hours.Standing);
        Assert.True(answer.Standing >= least);
        Assert.Equal(warmH > 0, answer.Short.Contains("it is too warm in", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(8.6), InlineData(8.4), InlineData(7.99)]
    public void One_heater_out_is_one_temperature_everywhere(double holdsC)
    {
        PaperSource source = SampleSource.Make(houses: 1);
        HouseResults house = source.Houses[0];
        HeatPlant heat = house.Plant.Heat!.Choice;
        house = house with { Plant = house.Plant with { Heat = new Answer<HeatPlant>.Met(heat with { OneOutHoldsC = holdsC, OneOutHoldsOpenC = holdsC }, 0.1) } };
        QuestionAnswered answer = PlantAnswers.Heat(source, house);
        string floor = PlantWordsFloor(holdsC);
        Assert.Contains(floor, answer.Short, StringComparison.Ordinal);
        BigFigure figure = answer.Blocks.OfType<Block.Figures>().Single().Items.Single(f => f.Label.EndsWith("heater out holds", StringComparison.Ordinal));
        Assert.Equal(floor, $"{figure.Value} {figure.Unit}");
    }

    [Fact]
    public void Alternatives_are_in_the_units_of_the_job()
    {
        Assert.StartsWith("house,about,alternative,air_cfm,hottest_F,", AlternativesCsv.Table(SampleSource.Make()), StringComparison.Ordinal);
        Assert.StartsWith("house,about,alternative,air_m3_per_h,hottest_C,", AlternativesCsv.Table(SampleSource.Make(UnitSystem.Metric)), StringComparison.Ordinal);
    }

    private static string PlantWordsFloor(double valueC) => FormattableString.Invariant($"{Math.Floor(valueC * 1.8 + 32)} °F");
}
