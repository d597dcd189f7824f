using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;
using Glazewright.Design.Year;

namespace Glazewright.Design.Tests.Year;

/// <summary>A day looked at closely.</summary>
public class DetailDayTests
{
    private const int July = 195;

    private static readonly YearResult Ran = YearScenes.Run();

    // A heater in each half, as contractors hang them.
    private static readonly LayoutResult Hung = new("A", [Heater("A/heater-1", 0.25), Heater("A/heater-2", 0.75)], 0, StageReport.Empty);

    // One cell is the year's house, bit for bit, in the same steps.
    [Fact]
    public void One_cell_is_the_year_s_house()
    {
        const int Steps = 12;
        DetailDay day = Of(July, 1, 60.0 / Steps);
        YearRun run = new(YearScenes.Input, YearScenes.Form, YearScenes.Gains, YearScenes.Plant, YearScenes.Program, YearScenes.Weather, ProgramControl.Of(YearScenes.Program));
        run.Load(Ran.Midnights[July]);
        for (int m = 0; m < 1440; m++)
        {
            double airC = 0;
            for (int s = 0; s < Steps; s++)
            {
                run.Step((July * 1440) + m, out _, 60.0 / Steps);
                airC += run.State.AirBelowC / Steps;
            }

            Assert.Equal(airC, day.Cells[0].AirC[m]);
        }
    }

    // Steps of five seconds move the mean of the day by little (mark of the year's own step: 0.5 % of energy, 0.1 K rms on replayed commands; here the loop is closed).
    // The box holds the air at its sensor: that cell must stay near, the mean of an uneven house need not.
    [Theory]
    [InlineData(15)]
    [InlineData(July)]
    public void Small_steps_and_cells_stay_near_the_year_s_day(int of)
    {
        DetailDay fine = Of(of, 1, 5);
        double offK = fine.Cells[0].AirC.Average() - fine.Whole.Minutes.Average(m => m.InsideC);
        Assert.InRange(Math.Abs(offK), 0, 0.5);
        DetailDay row = Of(of, 6, 5);
        Assert.Equal(6, row.Cells.Count);
        Assert.All(row.Cells, c => Assert.All(c.AirC, t => Assert.InRange(t, -40, 70)));
        double sensedK = row.Cells[row.SensorCell].AirC.Average() - fine.Cells[0].AirC.Average();
        Assert.InRange(Math.Abs(sensedK), 0, 1);
    }

    // Fans pull from cell 1 to the last: on a hot afternoon the last is the warmest.
    [Fact]
    public void On_a_hot_day_it_is_warmest_at_the_fans()
    {
        DetailDay row = Of(July, 6, 5);
        int afternoon = Enumerable.Range(0, 1440).Where(m => row.Whole.Minutes[m].FlowM3PerS > 5).MaxBy(m => row.Whole.Minutes[m].SunWm2);
        Assert.True(row.Cells[^1].AirC[afternoon] > row.Cells[0].AirC[afternoon] + 0.5);
    }

    // A heater blows as far as its throw: the coldest morning is more even than with a heater that warms its own corner only.
    [Fact]
    public void Throw_evens_the_house()
    {
        double Unevenness(double throwM)
        {
            HeatPlant heat = YearScenes.Plant.Heat!.Choice;
            heat = heat with { Heaters = heat.Heaters.Select(h => h with { ThrowM = throwM }).ToEqList() };
            PlantResult plant = YearScenes.Plant with { Heat = new Answer<HeatPlant>.Met(heat, 0) };
            DetailDay day = DetailDay.Of(YearScenes.Input, YearScenes.Form, YearScenes.Gains, plant, Hung, YearScenes.Program, YearScenes.Weather, Ran, 15, 6, 5);
            return Enumerable.Range(0, 1440).Average(m => day.Cells.Max(c => c.AirC[m]) - day.Cells.Min(c => c.AirC[m]));
        }

        Assert.True(Unevenness(15) < 0.8 * Unevenness(0), $"{Unevenness(15)} K against {Unevenness(0)} K");
    }

    private static PlacedItem Heater(string id, double along) =>
        new(id, PlacedKind.Heater, "heater", new Point3(along * YearScenes.Form.LengthM, 2, 2), new Point3(0, 0, 0), FaceName.Floor);

    private static DetailDay Of(int day, int cells, double stepS) => DetailDay.Of(
        YearScenes.Input, YearScenes.Form, YearScenes.Gains, YearScenes.Plant, Hung, YearScenes.Program, YearScenes.Weather, Ran, day, cells, stepS);
}
