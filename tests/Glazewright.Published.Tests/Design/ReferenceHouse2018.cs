using Glazewright.Design.Calibration;
using Glazewright.Design.Calibration.Reading;

namespace Glazewright.Published.Tests.Design;

/// <summary>
/// Measured climate of a heated glasshouse compartment, autumn 2018 (Hemming, de Zwart, Elings, Righini, Petropoulou 2019, Sensors 19:1807; data read): outside weather, pipes, vents, two screens and lamps replayed
/// through the product's own calibration for 115 days without a restart. Six sizes are fitted on weeks 2, 6, 10 and 14 in ranges stated before; the other thirteen weeks are scored.
/// </summary>
/// <remarks>
/// The marks were set before the model was written. Which laws the replay uses (two screens as two cloths, a slow mass, a wet floor, a tenth of the sun to the air, leaf resistance for transpiration) was chosen on the training weeks' sum of
/// squares, but with the other weeks' scores in sight: the score is not untouched by them (docs/methods/climate-model.md).
/// </remarks>
public class ReferenceHouse2018
{
    [Fact]
    public void Other_weeks_are_within_the_marks()
    {
        ColumnMap map = MeasuredLogs.Map("cucumber-2018");
        HouseLog log = MeasuredLogs.Read(map, "agc2018-cucumber/reference/Greenhouse_climate.csv.gz", "agc2018-cucumber/meteo.csv.gz");
        CalibrationResult r = Calibrator.Run(map, log, null, [], 2, null, TestContext.Current.CancellationToken);
        ScoreLine all = r.Scores[0];

        Assert.Equal([2, 6, 10, 14], r.TrainedWeeks);
        Assert.True(all.Count > 20_000);
        Assert.True(all.AirRmsK <= 1.5, $"{all.AirRmsK:0.00} K");
        Assert.InRange(all.AirBiasK, -0.5, 0.5);
        Assert.True(all.SkillRatio >= 0.25, $"{all.SkillRatio:0.00}");
        Assert.True(all.HumidityRmsPercent <= 6, $"{all.HumidityRmsPercent:0.0} %");
        Assert.InRange(all.HumidityBiasPercent, -3, 3);
        Assert.True(all.VapourRmsKgPerM3 <= 1.65e-3, $"{1000 * all.VapourRmsKgPerM3:0.00} g/m³");
        ScoreLine sunny = r.Scores.Single(s => s.Id == "sun");
        Assert.True(sunny.AirRmsK <= 2 && sunny.HumidityRmsPercent <= 9 && sunny.VapourRmsKgPerM3 <= 2.5e-3, sunny.ToString());
        Assert.All(r.Marks.Where(m => m.Id.StartsWith("night-loss", StringComparison.Ordinal)), m => Assert.Equal(MarkState.Met, m.State));

        Assert.DoesNotContain(r.Marks, m => m.State == MarkState.Missed);
        // No vents wide in strong sun, no pads: a mark without hours is not a mark met.
        Assert.Equal(["vents-wide-open", "vents-wide-curtain", "pad-and-fan"], r.Marks.Where(m => m.State == MarkState.NoHours).Select(m => m.Id));
        Assert.Equal(["wet-floor"], r.Sizes.Where(s => s.Standing == SizeStanding.AtBound).Select(s => s.Range.Word));
    }

    // Shuffled weather must ruin the fit: the score is of physics, not of the controlled house.
    [Fact]
    [Trait("Category", "Slow")]
    public void Weather_of_another_week_ruins_the_score()
    {
        ColumnMap map = MeasuredLogs.Map("cucumber-2018");
        IReadOnlyList<string> texts = MeasuredLogs.Texts("agc2018-cucumber/reference/Greenhouse_climate.csv.gz", "agc2018-cucumber/meteo.csv.gz");
        string[] lines = texts[1].Split('\n', StringSplitOptions.RemoveEmptyEntries);
        string late = string.Join('\n', lines.Take(1).Concat(lines.Skip(1 + 2016)).Concat(lines.Skip(1).Take(2016)));
        Assert.Empty(LogReader.Read(map, [texts[0], late], out HouseLog? log));
        CalibrationResult r = Calibrator.Run(map, log!, null, [], 2, null, TestContext.Current.CancellationToken);
        Assert.True(r.Scores[0].SkillRatio < 0.25, $"{r.Scores[0].SkillRatio:0.00}");
        Assert.True(r.Scores[0].AirRmsK > 1.3, $"{r.Scores[0].AirRmsK:0.00} K");
    }
}
