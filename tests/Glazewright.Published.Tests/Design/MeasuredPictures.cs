using System.Globalization;
using System.Text.RegularExpressions;
using Glazewright.Design.Calibration;
using Glazewright.Design.Calibration.Reading;

namespace Glazewright.Published.Tests.Design;

/// <summary>
/// By hand: pictures of the errors against measured houses, into docs/methods/pictures. They hold sums of our own (errors by week, hour, bin), no reading of anyone's: the data's licences do not let us ship those.
/// </summary>
public class MeasuredPictures
{
    [Fact(Explicit = true)]
    public void Draw_the_errors_against_measured_houses()
    {
        CalibrationResult autumn = Run("cucumber-2018", "agc2018-cucumber/reference/Greenhouse_climate.csv.gz", "agc2018-cucumber/meteo.csv.gz");
        CalibrationResult may = Run("lettuce-may-2022", "agc2022-lettuce-may/reference/climate_data.csv.gz", "agc2022-lettuce-may/weather.csv.gz");
        CalibrationResult neighbour = February("reference"), team = February("team-m");
        (string, CalibrationResult)[] houses = [("autumn 2018", autumn), ("May 2022", may), ("Feb 2022, reference", neighbour), ("Feb 2022, team", team)];
        Weeks(autumn, "measured-weeks", "Heated glasshouse, autumn 2018: error of the air by week");
        Weeks(team, "measured-weeks-missed", "Lettuce house beside warm neighbours, February 2022 (team): it misses");
        string[] hours = [.. Enumerable.Range(0, 24).Select(h => h.ToString(CultureInfo.InvariantCulture))];
        Save("measured-hours", new ErrorPlot(
            "Mean error of the air by hour of day, weeks not fitted on", "hour of day", "computed less measured, K", -3, 2, 0.5, hours, [.. houses.Select(h => (h.Item1, ByHour(h.Item2, e => e.AirBiasK)))], 0, ([], "")));
        Save("measured-humidity", new ErrorPlot(
            "Mean error of relative humidity by hour of day, weeks not fitted on", "hour of day", "computed less measured, %", -20, 15, 5, hours, [.. houses.Select(h => (h.Item1, ByHour(h.Item2, e => e.HumidityBiasPercent)))], 0, ([], "")));
        double[] colder = [0, 5, 10, 15, 20], sun = [0, 1, 50, 150, 300, 500, 700];
        Save("measured-outside", new ErrorPlot(
            "Mean error of the air by outside temperature, weeks not fitted on", "outside air from, °C (bins of 5 K, at least 10 hours)", "computed less measured, K", -3, 2, 0.5, Names(colder),
            [.. houses.Select(h => (h.Item1, Bins(h.Item2, colder, x => x.OutsideC)))], 0, ([], "")));
        Save("measured-sun", new ErrorPlot(
            "Mean error of the air by sun outside, weeks not fitted on", "global light from, W/m² (at least 10 hours)", "computed less measured, K", -3, 2, 0.5, Names(sun),
            [.. houses.Select(h => (h.Item1, Bins(h.Item2, sun, x => x.GlobalWm2)))], 0, ([], "")));
        NightLoss([.. houses.Where(h => h.Item2 != may)]);
    }

    private static CalibrationResult February(string compartment) => Run(
        "lettuce-feb-2022", $"agc2022-lettuce-feb/{compartment}/GreenhouseClimate.csv.gz", $"agc2022-lettuce-feb/{compartment}/GreenhouseControls.csv.gz", "agc2022-lettuce-feb/weather.csv.gz");

    private static CalibrationResult Run(string name, params string[] files)
    {
        ColumnMap map = MeasuredLogs.Map(name);
        return Calibrator.Run(map, MeasuredLogs.Read(map, files), null, [], 2, null, TestContext.Current.CancellationToken);
    }

    // Errors of hourly means, so that fitted weeks stand beside the others.
    private static void Weeks(CalibrationResult r, string id, string title)
    {
        int[] weeks = [.. r.Hours.Select(h => h.Week).Distinct().Order()];
        double[] Of(Func<double[], double> sum) =>
            [.. weeks.Select(w => r.Hours.Where(h => h.Week == w && double.IsFinite(h.MeasuredC) && double.IsFinite(h.ComputedC)).Select(h => h.ComputedC - h.MeasuredC).ToArray()).Select(e => e.Length < 10 ? double.NaN : sum(e))];
        double[] rms = Of(e => Math.Sqrt(e.Average(x => x * x))), bias = Of(e => e.Average());
        double high = Math.Max(2, Math.Ceiling(rms.Where(double.IsFinite).Max())), low = Math.Min(-1, Math.Floor(bias.Where(double.IsFinite).Min()));
        Save(id, new ErrorPlot(
            title, "week of the log", "K, hourly means", low, high, high - low > 6 ? 1 : 0.5, [.. weeks.Select(w => w.ToString(CultureInfo.InvariantCulture))],
            [("root mean square", rms), ("mean, computed less measured", bias)], 1, ([.. weeks.Select((w, i) => (w, i)).Where(p => r.TrainedWeeks.Contains(p.w)).Select(p => p.i)], "fitted on")));
    }

    private static double[] ByHour(CalibrationResult r, Func<HourError, double> of) =>
        [.. Enumerable.Range(0, 24).Select(h => r.ByHour.Where(e => e.Hour == h).Select(of).DefaultIfEmpty(double.NaN).First())];

    private static string[] Names(double[] from) => [.. from.Select(f => f.ToString("0", CultureInfo.InvariantCulture))];

    private static double[] Bins(CalibrationResult r, double[] from, Func<LogHour, double> by) =>
    [
        .. from.Select((low, i) =>
        {
            double high = i + 1 < from.Length ? from[i + 1] : double.MaxValue;
            double[] errors = [.. r.Hours.Where(h => !h.Trained && double.IsFinite(h.MeasuredC) && double.IsFinite(h.ComputedC) && by(h) >= low && by(h) < high).Select(h => h.ComputedC - h.MeasuredC)];
            return errors.Length < 10 ? double.NaN : errors.Average();
        }),
    ];

    private static void NightLoss((string Name, CalibrationResult Result)[] houses)
    {
        List<(string Place, double Computed, double Measured)> all = [];
        foreach ((string name, CalibrationResult r) in houses)
        {
            foreach ((CalibrationMark mark, string screens) in r.Marks.Where(m => m.Id.StartsWith("night-loss", StringComparison.Ordinal)).Zip(["none", "one", "two"]))
            {
                double[] found = [.. Regex.Matches(mark.Found, @"-?\d+(\.\d+)?").Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture))];
                if (mark.State != MarkState.NoHours && found.Length >= 2)
                {
                    all.Add(($"{name.Replace(" 2022, ", " ", StringComparison.Ordinal).Replace("autumn 2018", "2018", StringComparison.Ordinal)}: {screens}", found[0], found[1]));
                }
            }
        }

        Save("measured-night-loss", new ErrorPlot(
            "Heat lost on nights without sun and lamps, by screens drawn", "house: screens drawn", "W/m²K of floor", 0, 8, 1, [.. all.Select(a => a.Place)],
            [("computed", [.. all.Select(a => a.Computed)]), ("measured", [.. all.Select(a => a.Measured)])], 2, ([], "")));
    }

    private static void Save(string id, ErrorPlot plot)
    {
        DirectoryInfo? at = new(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "Glazewright.slnx")))
        {
            at = at.Parent;
        }

        string into = Path.Combine(at?.FullName ?? throw new InvalidOperationException("The repository's root was not found."), "docs", "methods", "pictures", id);
        File.WriteAllText(into + ".svg", plot.Svg());
        File.WriteAllText(into + ".csv", plot.Csv());
    }
}
