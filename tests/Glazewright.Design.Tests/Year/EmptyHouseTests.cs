using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Program;
using Glazewright.Design.Year;

namespace Glazewright.Design.Tests.Year;

/// <summary>Where nothing grows the target is a floor: a parked house is not too warm in October, and no fan runs to chill it.</summary>
public class EmptyHouseTests
{
    [Theory]
    [InlineData(true, 20, 0, 0), InlineData(false, 20, 1, 0), InlineData(true, 0, 0, 1), InlineData(false, 0, 0, 1)]
    public void Warmer_is_a_miss_only_where_something_grows(bool empty, double airC, double warmH, double coldH)
    {
        HeldTally tally = default;
        for (int minute = 0; minute < 60; minute++)
        {
            tally.Add(new Asked(0, true, 5, 0, empty), new MinuteSeen(airC, 60, 0, false, false, false, false), new HeldBand(1.5, 7), 99);
        }

        HeldCounters hours = tally.Hours();
        Assert.Equal(warmH, hours.TooWarmH, 9);
        Assert.Equal(coldH, hours.TooColdH, 9);
        Assert.Equal(1 - warmH - coldH, hours.HeldTemperatureH, 9);
    }

    [Fact]
    public void The_default_program_cools_an_empty_house_only_to_spare_it()
    {
        CropPeriod herbs = TestJobs.OneHouse().Houses[0].Schedule[0] with { FromWeek = 1, ToWeek = 40 };
        CropPeriod parked = herbs with
        {
            Id = "parked",
            FromWeek = 41,
            ToWeek = 52,
            PlantedFraction = 0,
            Day = new ClimateTarget(4, 0),
            Night = new ClimateTarget(4, 0),
        };
        EqList<ProgramPeriod> periods = ProgramPeriods([herbs, parked]);
        Assert.True(periods.Single(p => p.Id == "herbs").CoolAboveK < 2);
        Assert.Equal(20, periods.Single(p => p.Id == "parked").CoolAboveK, 9);
    }

    private static EqList<ProgramPeriod> ProgramPeriods(EqList<CropPeriod> schedule) => DefaultPeriods.Of(schedule, new HeldBand(1.5, 7));
}
