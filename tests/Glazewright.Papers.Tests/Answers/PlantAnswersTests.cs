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
    public void A_house_on_its_bench_pipe_alone_is_told_what_the_boiler_leaves_when_it_stops()
    {
        PaperSource source = SampleSource.Make(houses: 1);
        HouseResults house = source.Houses[0];
        house = house with { Plant = house.Plant with { Heat = null, BenchPipeW = house.Duty.HeatLossW / 2 } };
        QuestionAnswered answer = PlantAnswers.Heat(source, house);
        BigFigure[] figures = [.. answer.Blocks.OfType<Block.Figures>().Single().Items];
        Assert.Equal(Standing.Miss, figures.Single(f => f.Label == "The bench pipe gives").Standing);
        Assert.Equal(PlantWordsFloor(Math.Min(house.Duty.Conditions.Heating996C, house.Duty.NightTargetC)), $"{figures.Single(f => f.Label == "The boiler out holds").Value} °F");
        Assert.Equal(Standing.Miss, answer.Standing);
        Assert.Contains("with it out the house comes to", answer.Short, StringComparison.Ordinal);
    }

    // 92,500 Btu in a gallon of propane and 100,000 in a therm (extension tables, as in Fuel); 3.785 L in a gallon.
    [Theory]
    [InlineData(Design.Brief.FuelKind.Propane, UnitSystem.Us, 1000, "gal"), InlineData(Design.Brief.FuelKind.Propane, UnitSystem.Metric, 3785.411784, "L")]
    [InlineData(Design.Brief.FuelKind.NaturalGas, UnitSystem.Us, 925, "therms")]
    public void Fuel_is_told_in_what_it_is_sold_in(Design.Brief.FuelKind fuel, UnitSystem units, double amount, string unit)
    {
        (double got, string word) = FuelBought.Of(fuel, 1000 * 92_500 * 1055.05585262, units);
        Assert.Equal(amount, got, 1e-6 * amount);
        Assert.Equal(unit, word);
    }

    [Fact]
    public void Alternatives_are_in_the_units_of_the_job()
    {
        Assert.StartsWith("house,about,alternative,air_cfm,hottest_F,", AlternativesCsv.Table(SampleSource.Make()), StringComparison.Ordinal);
        Assert.StartsWith("house,about,alternative,air_m3_per_h,hottest_C,", AlternativesCsv.Table(SampleSource.Make(UnitSystem.Metric)), StringComparison.Ordinal);
    }

    private static string PlantWordsFloor(double valueC) => FormattableString.Invariant($"{Math.Floor(valueC * 1.8 + 32)} °F").Replace('-', '−');
}
