using Glazewright.Design.Calibration;
using Glazewright.Design.Calibration.Reading;
using Glazewright.Design.Contracts;

namespace Glazewright.Published.Tests.Design;

/// <summary>
/// Two lettuce compartments of the 2018 facility in spring 2022 (Petropoulou et al. 2023, Sensors 23:2929; data read, MIT), and the same in May and June with vents wide open. Grown area a sixth of the floor, lamps' dimming known only as a
/// set point, a second pipe, fog and warm neighbours not known.
/// </summary>
public class LettuceHouses2022
{
    [Fact]
    public void Vents_wide_in_May_are_within_the_marks()
    {
        ColumnMap map = MeasuredLogs.Map("lettuce-may-2022");
        HouseLog log = MeasuredLogs.Read(map, "agc2022-lettuce-may/reference/climate_data.csv.gz", "agc2022-lettuce-may/weather.csv.gz");
        Assert.Equal(15, log.StepMinutes);
        CalibrationResult r = Calibrator.Run(map, log, null, [], 2, null, TestContext.Current.CancellationToken);
        Assert.True(r.Scores[0].AirRmsK <= 1.5, $"{r.Scores[0].AirRmsK:0.00} K");
        Assert.True(r.Scores[0].SkillRatio >= 0.25, $"{r.Scores[0].SkillRatio:0.00}");
        Assert.All(r.Marks.Where(m => m.Id.StartsWith("vents-wide", StringComparison.Ordinal)), m => Assert.Equal(MarkState.Met, m.State));
        Assert.Equal(MarkState.Missed, r.Marks.Single(m => m.Id == "humidity").State);
    }

    // A house beside warm neighbours: it is read, and the tool says that it misses.
    [Theory]
    [Trait("Category", "Slow")]
    [InlineData("reference")]
    [InlineData("team-m")]
    public void February_is_read_and_its_misses_are_told(string compartment)
    {
        ColumnMap map = MeasuredLogs.Map("lettuce-feb-2022");
        HouseLog log = MeasuredLogs.Read(
            map, $"agc2022-lettuce-feb/{compartment}/GreenhouseClimate.csv.gz", $"agc2022-lettuce-feb/{compartment}/GreenhouseControls.csv.gz", "agc2022-lettuce-feb/weather.csv.gz");
        Assert.Equal(5, log.StepMinutes);
        CalibrationResult r = Calibrator.Run(map, log, null, [], 2, null, TestContext.Current.CancellationToken);
        Assert.Equal(MarkState.Missed, r.Marks.Single(m => m.Id == "air").State);
        Assert.Contains(r.Report.Findings, f => f.Code == "fit/at-bound");
        Assert.Equal(MarkState.Met, r.Marks.Single(m => m.Id == "night-loss-two").State);
    }
}

/// <summary>Two pad-and-fan houses in a desert (Tucson AZ, 2013 to 2014; open data, read): no state of any equipment, no light outside, no wind. Thermostats on the computed air stand for the control.</summary>
public class PadAndFanTucson
{
    [Theory]
    [InlineData("tucson-2013-A")]
    [InlineData("tucson-2013-B")]
    public void Hot_days_are_within_two_kelvin(string name)
    {
        ColumnMap map = MeasuredLogs.Map(name);
        HouseLog log = MeasuredLogs.Read(map, "tucson-pad-fan-2013-14/Air.csv.gz", "tucson-pad-fan-2013-14/PAR.csv.gz");
        Assert.Equal(10, log.StepMinutes);
        Assert.Contains(log.Notes, n => n.Code == "log/rows-dropped");

        // Sizes of a fit, rounded, so that the check is quick; the mark (within 2 K of the measured) was set before.
        bool first = name.EndsWith('A');
        EqList<GivenSize> sizes =
        [
            new(FittedSize.Sun, 1.5), new(FittedSize.Leaves, first ? 1.65 : 1.3), new(FittedSize.Leaks, first ? 2.1 : 3), new(FittedSize.Mass, 2), new(FittedSize.Fans, first ? 1.15 : 0.9),
            new(FittedSize.Pad, first ? 1.15 : 1),
        ];
        CalibrationResult r = Calibrator.Run(map, log, null, sizes, 2, null, TestContext.Current.CancellationToken);
        Assert.Equal(MarkState.Met, r.Marks.Single(m => m.Id == "pad-and-fan").State);
        Assert.Contains(r.Report.Findings, f => f.Code == "log/assumed");
    }
}

/// <summary>A pad-and-fan house in a humid summer (Columbus OH, 2024; open data, read): fans, vents and screens by the time; neither light, wind, pump nor heat.</summary>
/// <remarks>Another mark, inside within 2.5 K of outside above 29 °C, is missed by 0.3 K (2.8 K colder; measured 1.5): docs/methods/climate-model.md. The sizes here are those of a fit, rounded, so that the check is quick.</remarks>
public class PadAndFanColumbus
{
    [Fact]
    public void A_humid_summer_is_read_and_hot_days_are_within_two_kelvin()
    {
        ColumnMap map = MeasuredLogs.Map("columbus-2024");
        HouseLog log = MeasuredLogs.Read(map, "columbus-oh-pad-fan-2024/Environment.csv.gz");
        Assert.True(log.Has(LoggedQuantity.Fans) && log.Has(LoggedQuantity.SecondCurtain));
        EqList<GivenSize> sizes = [new(FittedSize.Sun, 1.5), new(FittedSize.Leaves, 0.28), new(FittedSize.Leaks, 3.3), new(FittedSize.Mass, 250), new(FittedSize.Fans, 0.4), new(FittedSize.Pad, 0.5)];
        CalibrationResult r = Calibrator.Run(map, log, null, sizes, 2, null, TestContext.Current.CancellationToken);
        Assert.Equal(MarkState.Met, r.Marks.Single(m => m.Id == "pad-and-fan").State);
        Assert.Contains(r.Report.Findings, f => f.Code == "fit/no-light");
    }
}

/// <summary>A small pad-and-fan glasshouse in winter (Ithaca NY, 2020 to 2021; open data, read): no weather outside at all, so it is read and refused.</summary>
public class PadAndFanIthaca
{
    [Fact]
    public void Without_weather_outside_the_log_is_refused_with_what_lacks()
    {
        ColumnMap map = MeasuredLogs.Map("ithaca-2020");
        EqList<Fault> faults = LogReader.Read(map, MeasuredLogs.Texts("ithaca-ny-pad-fan/tomato-environment.csv.gz"), out HouseLog? log);
        Assert.Null(log);
        Assert.Equal(["outside-temperature is not logged", "outside-humidity is not logged"], faults.Select(f => f.Wrong));
    }
}
