using Glazewright.Design.Calibration;
using Glazewright.Design.Calibration.Reading;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Tests.Calibration;

public class CalibratorTests
{
    private static readonly EqList<FittedSize> s_sizes = [FittedSize.Vents, FittedSize.Sun, FittedSize.Leaves, FittedSize.Leaks, FittedSize.Mass, FittedSize.WetFloor];

    // Not the start values, and not the middle of any range.
    private static readonly double[] s_truth = [1.7, 0.85, 1.4, 2.2, 110, 0.32];

    [Fact]
    public void Sizes_of_a_made_house_come_back_within_their_uncertainty()
    {
        (ColumnMap map, HouseLog log) = Made(noiseK: 0.15, noisePercent: 1.0, out _);
        CalibrationResult r = Calibrator.Run(map, log, null, [], 2, null, TestContext.Current.CancellationToken);

        Assert.Equal(s_sizes, r.Sizes.Select(s => s.Range.Size).ToEqList());
        for (int k = 0; k < s_truth.Length; k++)
        {
            FittedValue v = r.Sizes[k];
            // ± is two standard errors: three of them (1.5 ×) hold 99.7 % of honest fits of one size.
            Assert.True(Math.Abs(v.Value - s_truth[k]) <= 1.5 * v.PlusMinusValue, $"{v.Range.Word}: {v.Value} ± {v.PlusMinusValue}, was {s_truth[k]}");
            Assert.True(v.PlusMinusValue < 0.15 * (v.Range.MostValue - v.Range.LeastValue), $"{v.Range.Word} ± {v.PlusMinusValue}");
            Assert.Equal(SizeStanding.Told, v.Standing);
        }

        // What is left is the noise that was put in.
        Assert.InRange(r.Scores[0].AirRmsK, 0.14, 0.17);
        Assert.InRange(r.Scores[0].HumidityRmsPercent, 0.95, 1.15);
        Assert.True(r.Scores[0].SkillRatio > 0.75);
        Assert.DoesNotContain(r.Report.Findings, f => f.Severity >= Severity.Miss);
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void Threads_change_the_time_and_not_the_result()
    {
        (ColumnMap map, HouseLog log) = Made(0.1, 0.5, out _, weeks: 4);
        CalibrationResult one = Calibrator.Run(map, log, null, [], 1, null, TestContext.Current.CancellationToken);
        CalibrationResult eight = Calibrator.Run(map, log, null, [], 8, null, TestContext.Current.CancellationToken);
        Assert.Equal(one.Sizes, eight.Sizes);
        Assert.Equal(one.Hours, eight.Hours);
    }

    // The same weather on other days: what is computed no longer has to do with what was measured.
    [Fact]
    [Trait("Category", "Slow")]
    public void A_week_of_other_weather_makes_the_skill_collapse()
    {
        (ColumnMap map, HouseLog log) = Made(0.1, 0.5, out string text);
        string[] lines = text.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        int shift = 7 * 24 * 6 + 250;
        string[] rows = [.. lines.Skip(1)];
        string swapped = string.Join('\n', lines.Take(1).Concat(rows.Select((row, i) =>
        {
            string[] own = row.Split(','), other = rows[(i + shift) % rows.Length].Split(',');
            return string.Join(',', own[..3].Concat(other[3..]));
        })));
        HouseLog late = SyntheticLog.Read(map, swapped);
        CalibrationResult before = Calibrator.Run(map, log, null, [], 2, null, TestContext.Current.CancellationToken);
        CalibrationResult after = Calibrator.Run(map, late, null, [], 2, null, TestContext.Current.CancellationToken);
        Assert.True(before.Scores[0].SkillRatio > 0.75);
        Assert.True(after.Scores[0].SkillRatio < 0.3, $"{after.Scores[0].SkillRatio}");
    }

    // The scored weeks have no part in the fit: spoil them, and the sizes stay to the last bit.
    [Fact]
    [Trait("Category", "Slow")]
    public void What_stands_in_the_scored_weeks_does_not_move_the_sizes()
    {
        (ColumnMap map, HouseLog log) = Made(0.1, 0.5, out string text);
        CalibrationResult clean = Calibrator.Run(map, log, null, [], 2, null, TestContext.Current.CancellationToken);
        string[] lines = text.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        int perWeek = 7 * 24 * 6;
        HouseLog spoilt = SyntheticLog.Read(map, string.Join('\n', lines.Select((line, i) =>
        {
            string[] cells = line.Split(',');
            bool scored = i > 0 && ((i - 1) / perWeek + 1) is 3 or 4 or 5;
            return scored ? string.Join(',', cells[0], (20 + 3 * Math.Sin(i / 40.0)).ToString("0.00", System.Globalization.CultureInfo.InvariantCulture), cells[2], string.Join(',', cells[3..])) : line;
        })));
        CalibrationResult r = Calibrator.Run(map, spoilt, null, [], 2, null, TestContext.Current.CancellationToken);
        Assert.Equal(clean.Sizes, r.Sizes);
        Assert.True(r.Scores[0].AirRmsK > 2 * clean.Scores[0].AirRmsK);
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void A_size_outside_its_range_ends_at_the_bound_and_is_told()
    {
        double[] truth = [.. s_truth];
        truth[1] = 1.9; // beyond the most, 1.5
        (ColumnMap map, HouseLog log) = Made(0.1, 0.5, out _, truth);
        CalibrationResult r = Calibrator.Run(map, log, null, [], 2, null, TestContext.Current.CancellationToken);
        Assert.Equal(SizeStanding.AtBound, r.Sizes[1].Standing);
        Assert.Contains(r.Report.Findings, f => f.Code == "fit/at-bound" && f.What.StartsWith("Sun that gets in", StringComparison.Ordinal));
    }

    [Fact]
    public void A_size_that_the_log_cannot_tell_is_said_to_be_so()
    {
        // Curtain never drawn: nothing tells its cloth.
        string map = SyntheticLog.Map.Replace("\"house\":", "\"fit\": [{ \"size\": \"sun\" }, { \"size\": \"curtain\" }],\n  \"house\":", StringComparison.Ordinal)
            .Replace("{ \"column\": \"screen\", \"is\": \"curtain\", \"unit\": \"%\" },", "", StringComparison.Ordinal);
        ColumnMap columns = SyntheticLog.Columns(map);
        HouseLog log = SyntheticLog.Read(columns, SyntheticLog.Text(4, 10, i => (18 + 6 * Math.Sin(i / 23.0), 70)));
        CalibrationResult r = Calibrator.Run(columns, log, null, [], 2, null, TestContext.Current.CancellationToken);
        Assert.Equal(SizeStanding.NotTold, r.Sizes[1].Standing);
        Assert.Contains(r.Report.Findings, f => f.Code == "fit/not-told");
    }

    [Fact]
    public void Sizes_of_an_earlier_fit_are_scored_on_every_week()
    {
        (ColumnMap map, HouseLog log) = Made(0.1, 0.5, out _);
        CalibrationResult r = Calibrator.Run(map, log, null, s_sizes.Select((s, k) => new GivenSize(s, s_truth[k])).ToEqList(), 2, null, TestContext.Current.CancellationToken);
        Assert.Empty(r.TrainedWeeks);
        Assert.Equal(6, r.ScoredWeeks.Count);
        Assert.InRange(r.Scores[0].AirRmsK, 0.09, 0.12);
        Assert.All(r.Sizes, s => Assert.Equal(SizeStanding.Given, s.Standing));
    }

    [Fact]
    public void No_more_than_six_sizes_are_ever_chosen()
    {
        Assert.Equal(6, SizeRange.Most);
        (ColumnMap map, HouseLog log) = Made(0.1, 0.5, out _, weeks: 4);
        Assert.InRange(Calibrator.SizesFor(map, log).Count, 1, 6);
        Assert.All(SizeRange.All, s => Assert.True(s.LeastValue < s.StartValue && s.StartValue < s.MostValue));
    }

    [Fact]
    public void A_stopped_fit_stops()
    {
        (ColumnMap map, HouseLog log) = Made(0.1, 0.5, out _, weeks: 4);
        using CancellationTokenSource stopped = new();
        stopped.Cancel();
        Assert.Throws<OperationCanceledException>(() => Calibrator.Run(map, log, null, [], 1, null, stopped.Token));
    }

    /// <summary>By hand, when the model's results have changed: the air of the example's log made anew with its own weather, the sizes that its map tells and chance (0.3 K, 1.5 %).</summary>
    [Fact(Explicit = true)]
    public void Make_the_examples_log_anew()
    {
        string folder = Path.Combine(Brief.Examples.Folder, "calibration"), path = Path.Combine(folder, "made-log.csv");
        ColumnMap map = SyntheticLog.Columns(File.ReadAllText(Path.Combine(folder, "made-log.columns.json")));
        string[] rows = File.ReadAllLines(path);
        HouseLog log = SyntheticLog.Read(map, string.Join('\n', rows));
        ReplayHouse house = ReplayHouse.Of(map.House!, log);
        ReplayedAir air = new HouseReplay(log, house, []).Run(SizeValues.Of(house, true, s_sizes, [1.4, 0.9, 1.3, 1.8, 90, 0.2]), log.Count, 60, TestContext.Current.CancellationToken);
        Func<double> noise = Noise();
        File.WriteAllText(path, rows[0] + "\n" + string.Concat(rows.Skip(1).Select((row, i) => string.Create(
            System.Globalization.CultureInfo.InvariantCulture,
            $"{row.Split(',')[0]},{air.AirC[i] + 0.3 * noise():0.0},{Math.Clamp(air.RelativePercent[i] + 1.5 * noise(), 0, 100):0},{string.Join(',', row.Split(',')[3..])}\n"))));
    }

    // Near a normal distribution of deviation 1.
    private static Func<double> Noise()
    {
        Random chance = new(11);
        return () => Math.Sqrt(3) * (chance.NextDouble() + chance.NextDouble() + chance.NextDouble() + chance.NextDouble() - 2); // variance 1/3
    }

    private static (ColumnMap Map, HouseLog Log) Made(double noiseK, double noisePercent, out string text, double[]? truth = null, int weeks = 6)
    {
        ColumnMap map = SyntheticLog.Columns();
        HouseLog blank = SyntheticLog.Read(map, SyntheticLog.Text(weeks, 10, null));
        ReplayHouse house = ReplayHouse.Of(map.House!, blank);
        ReplayedAir air = new HouseReplay(blank, house, []).Run(SizeValues.Of(house, true, s_sizes, truth ?? s_truth), blank.Count, 300, default);
        Func<double> noise = Noise();
        text = SyntheticLog.Text(weeks, 10, i => (air.AirC[i] + noiseK * noise(), Math.Clamp(air.RelativePercent[i] + noisePercent * noise(), 0, 100)));
        return (map, SyntheticLog.Read(map, text));
    }
}
