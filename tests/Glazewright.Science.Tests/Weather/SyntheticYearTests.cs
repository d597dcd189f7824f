using Glazewright.Science.Weather;

namespace Glazewright.Science.Tests.Weather;

public class SyntheticYearTests
{
    private static readonly WeatherStation s_place = new("Lowmarsh", "-", "-", "normals", "-", 52.0, 5.0, 1.0, 10);

    // Invented for a cool maritime place; no station's numbers.
    private static readonly MonthlyNormals[] s_normals =
    [
        new(3.0, 5.0, 3.8, 0.70, 0.8, 0.31, 0.13, 0.20, 0.68, 5.5, 2.6),
        new(3.4, 6.0, 3.5, 0.68, 0.6, 0.36, 0.14, 0.20, 0.62, 5.2, 2.5),
        new(6.0, 7.8, 3.0, 0.62, 2.2, 0.41, 0.15, 0.20, 0.57, 5.0, 2.4),
        new(9.4, 9.8, 2.8, 0.60, 4.2, 0.47, 0.15, 0.20, 0.51, 4.5, 2.1),
        new(13.2, 10.2, 2.9, 0.62, 8.0, 0.49, 0.15, 0.25, 0.50, 4.2, 1.9),
        new(16.0, 10.0, 2.7, 0.60, 10.9, 0.49, 0.14, 0.25, 0.51, 4.0, 1.8),
        new(18.2, 10.1, 2.6, 0.60, 12.9, 0.48, 0.13, 0.25, 0.52, 4.0, 1.8),
        new(17.9, 9.8, 2.4, 0.58, 12.9, 0.48, 0.13, 0.20, 0.51, 3.9, 1.8),
        new(15.0, 9.0, 2.3, 0.58, 11.0, 0.45, 0.14, 0.20, 0.54, 4.2, 2.0),
        new(11.2, 7.4, 2.8, 0.62, 8.2, 0.39, 0.14, 0.20, 0.60, 4.7, 2.3),
        new(6.8, 5.4, 3.2, 0.65, 4.6, 0.32, 0.13, 0.20, 0.67, 5.0, 2.5),
        new(4.0, 4.8, 3.7, 0.70, 2.0, 0.28, 0.12, 0.20, 0.72, 5.3, 2.6),
    ];

    private static readonly WeatherYear s_year = SyntheticYear.Make(s_place, s_normals, seed: 7, prevailingWindFromDeg: 240);

    [Fact]
    public void Its_months_are_its_normals()
    {
        Keeps(s_normals, MonthStatistics.Of(s_year));
    }

    [Fact]
    public void It_also_keeps_the_statistics_of_the_demo_year()
    {
        WeatherYear demo = WeatherText.Year(WeatherText.Demo());
        MonthlyNormals[] normals = [.. MonthStatistics.Of(demo).Select(MonthlyNormals.Of)];
        Keeps(normals, MonthStatistics.Of(SyntheticYear.Make(demo.Station, normals, seed: 1, prevailingWindFromDeg: 270)));
    }

    [Fact]
    public void It_says_that_it_is_synthetic()
    {
        Assert.Equal(WeatherOrigin.Synthetic, s_year.Provenance.Kind);
        Assert.Contains("synthetic", s_year.Provenance.Label);
        Assert.Contains(WeatherReport.Of(s_year).Findings, f => f.Text.Contains("synthetic", StringComparison.Ordinal));
    }

    [Fact]
    public void One_seed_one_year_another_seed_another_year()
    {
        WeatherYear same = SyntheticYear.Make(s_place, s_normals, seed: 7, prevailingWindFromDeg: 240);
        Assert.Equal(s_year.DryBulbC, same.DryBulbC);
        Assert.Equal(s_year.DniWhm2, same.DniWhm2);
        Assert.Equal(s_year.WindMs, same.WindMs);
        Assert.Equal(s_year.Provenance.ContentSha256, same.Provenance.ContentSha256);
        WeatherYear other = SyntheticYear.Make(s_place, s_normals, seed: 8, prevailingWindFromDeg: 240);
        Assert.NotEqual(s_year.DryBulbC, other.DryBulbC);
        Assert.NotEqual(s_year.Provenance.ContentSha256, other.Provenance.ContentSha256);
        Keeps(s_normals, MonthStatistics.Of(other));
    }

    [Fact]
    public void Its_radiation_closes_and_it_passes_the_sanity_checks()
    {
        WeatherReport report = WeatherReport.Of(s_year);
        Assert.Equal(ClosureVerdict.Closes, report.Closure.Verdict);
        Assert.Single(report.Findings, f => f.Gravity == WeatherGravity.Warning);
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            Assert.True(s_year.DewPointC[h] <= s_year.DryBulbC[h]);
            Assert.InRange(s_year.DniWhm2[h], 0, 1150);
            Assert.True(s_year.DhiWhm2[h] <= s_year.GhiWhm2[h] + 0.051);
        }
    }

    [Fact]
    public void South_of_the_equator_and_inside_the_polar_circle_it_stays_sane()
    {
        MonthlyNormals[] south = [.. s_normals.Skip(6).Concat(s_normals.Take(6))];
        WeatherYear year = SyntheticYear.Make(s_place with { LatitudeDeg = -35, LongitudeDeg = 20, ZoneH = 2 }, south, 3, 200);
        Keeps(south, MonthStatistics.Of(year));
        WeatherYear polar = SyntheticYear.Make(s_place with { LatitudeDeg = 70 }, s_normals, 3, 200);
        Assert.Equal(0, MonthStatistics.Of(polar)[11].GhiWhm2Day, tolerance: 30);
        Assert.True(polar.DryBulbC.IsComplete);
    }

    [Fact]
    public void Wrong_normals_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SyntheticYear.Make(s_place, s_normals[..11], 1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => SyntheticYear.Make(s_place, [.. s_normals[..11], s_normals[11] with { DewPointC = 30 }], 1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => SyntheticYear.Make(s_place, [.. s_normals[..11], s_normals[11] with { ClearnessRatio = double.NaN }], 1, 0));
    }

    /// <summary>The bounds of what is promised: means of dry bulb 0.05 K, dew point 0.1 K, ranges 0.3 K, spread 5 %, global and diffuse 1 and 3 %, wind 1 and 5 %.</summary>
    private static void Keeps(MonthlyNormals[] normals, IReadOnlyList<MonthStatistics> months)
    {
        double lag = 0;
        double lagWanted = 0;
        for (int m = 0; m < 12; m++)
        {
            MonthlyNormals n = normals[m];
            MonthStatistics s = months[m];
            string at = $"month {m + 1}";
            Near(n.MeanC, s.MeanC, 0.05, at + " mean");
            Near(n.DailyRangeK, s.MeanDailyMaxC - s.MeanDailyMinC, 0.3, at + " range");
            Near(n.DailyMeanDeviationK, s.DailyMeanDeviationK, 0.05 * n.DailyMeanDeviationK + 0.05, at + " spread");
            Near(n.DewPointC, s.MeanDewPointC, 0.1, at + " dew");
            Near(n.ClearnessRatio, s.ClearnessRatio, 0.01 * n.ClearnessRatio, at + " clearness");
            Near(n.DailyClearnessDeviationRatio, s.DailyClearnessDeviationRatio, 0.15 * n.DailyClearnessDeviationRatio, at + " clearness spread");
            Near(n.DiffuseFraction, s.DhiWhm2Day / s.GhiWhm2Day, 0.03, at + " diffuse");
            Near(n.WindMs, s.MeanWindMs, 0.01 * n.WindMs + 0.01, at + " wind");
            Near(n.WindDeviationMs, s.WindDeviationMs, 0.05 * n.WindDeviationMs, at + " wind spread");
            lag += s.DailyMeanLag1Ratio / 12;
            lagWanted += n.DailyMeanLag1Ratio / 12;
        }

        // One month's correlation from 30 days has a standard error of 0.14; the mean of twelve 0.04.
        Near(lagWanted, lag, 0.12, "persistence");
    }

    private static void Near(double wanted, double got, double within, string what) =>
        Assert.True(Math.Abs(wanted - got) <= within, $"{what}: {got:0.###} for {wanted:0.###}");
}
