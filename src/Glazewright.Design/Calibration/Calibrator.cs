using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.Calibration.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.GainTables;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Plant;
using Glazewright.Design.Year;

namespace Glazewright.Design.Calibration;

/// <summary>A built house of a job, as far as a replay needs it.</summary>
/// <param name="Input">The job's part for the year.</param>
/// <param name="Site">Where it stands.</param>
/// <param name="Form">Its shape.</param>
/// <param name="Gains">Where the sun goes.</param>
/// <param name="Plant">Its equipment.</param>
public sealed record JobHouse(YearInput Input, Site Site, BuildingForm Form, GainTable Gains, PlantResult Plant)
{
    /// <summary>A house of a job, computed as far as that.</summary>
    /// <param name="evaluation">The job's evaluation.</param>
    /// <param name="house">House id.</param>
    public static JobHouse Of(Evaluation evaluation, string house)
    {
        ArgumentNullException.ThrowIfNull(evaluation);
        return new JobHouse(
            YearInput.From(evaluation.Job, house), evaluation.Job.Site, evaluation.Form.Value.Building(house), evaluation.GainTable(house).Value, evaluation.Plant(house).Value);
    }
}

/// <summary>
/// Fits a house to its log on some weeks and scores it on the others. The outside weather and the equipment as logged are replayed from the first step to the last without a restart; at most six sizes are
/// looked for, each in a range stated before; the weeks that are scored have no part in it.
/// </summary>
public static class Calibrator
{
    private const double FinalStepS = 60;
    private const double SearchStepS = 300;
    private const double AirWeightK = 1.0; // an error of this counts as much as
    private const double VapourWeightKgPerM3 = 1.1e-3; // one of this (choice: the marks' own proportion)

    /// <summary>What keeps a log from being fitted.</summary>
    /// <param name="map">The column map.</param>
    /// <param name="log">The log.</param>
    /// <param name="job">The house of a job; null when the map gives it by its sizes.</param>
    /// <param name="given">Sizes of an earlier fit; empty to fit.</param>
    /// <returns>Every fault.</returns>
    public static EqList<Fault> Faults(ColumnMap map, HouseLog log, JobHouse? job, EqList<GivenSize> given)
    {
        ArgumentNullException.ThrowIfNull(map);
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(given);
        List<Fault> faults = [];
        if (given.Select(g => g.Size).Distinct().Count() != given.Count)
        {
            faults.Add(new Fault(FaultKind.Duplicate, "/sizes", "", 0, 0, "a size is given twice", "each size once"));
        }

        if (job is null && map.House is null)
        {
            faults.Add(new Fault(FaultKind.Missing, "/house", "", 0, 0, "no house is given", "a job with --job and --house, or the house's sizes in the map"));
        }

        if (job is not null && map.House is not null)
        {
            faults.Add(new Fault(FaultKind.Contradiction, "/house", "", 0, 0, "the house is given twice, by a job and by its sizes", "one of the two"));
        }

        if (job is not null && !log.Has(LoggedQuantity.OutsideRadiation))
        {
            faults.Add(new Fault(FaultKind.Missing, "/tables", "", 0, 0, "outside-radiation is not logged", "a column for it: the house's gain tables need the light outside"));
        }

        MeasuredAir measured = new(log, map.TrainEvery, map.TrainFrom);
        int trains = 0, scores = 0;
        for (int i = 0; i < log.Count; i++)
        {
            trains += measured.Counts[i] && measured.Trains[i] ? 1 : 0;
            scores += measured.Counts[i] && !measured.Trains[i] ? 1 : 0;
        }

        if (given.Count == 0 && Math.Min(trains, scores) * log.StepMinutes < 2 * 1440)
        {
            faults.Add(new Fault(
                FaultKind.Missing, "/tables", "", 0, 0,
                string.Create(CultureInfo.InvariantCulture, $"{trains * log.StepMinutes / 1440.0:0.0} whole days are left to fit on and {scores * log.StepMinutes / 1440.0:0.0} to score"), "two days or more of each, without gaps"));
        }

        return faults.ToEqList();
    }

    /// <summary>Sizes to fit where the map does not name them: what the log can tell.</summary>
    /// <param name="map">The column map.</param>
    /// <param name="log">The log.</param>
    /// <returns>At most six.</returns>
    public static EqList<FittedSize> SizesFor(ColumnMap map, HouseLog log)
    {
        ArgumentNullException.ThrowIfNull(map);
        ArgumentNullException.ThrowIfNull(log);
        if (map.Sizes.Count > 0)
        {
            return map.Sizes;
        }

        bool Driven(LoggedQuantity q) => log.Has(q) || map.Thermostats.Any(t => t.Quantity == q);
        List<FittedSize> sizes = [FittedSize.Sun, FittedSize.Leaks, FittedSize.Mass];
        if (log.Has(LoggedQuantity.InsideHumidity))
        {
            sizes.Add(FittedSize.Leaves);
        }

        if (Driven(LoggedQuantity.RoofVents) || Driven(LoggedQuantity.SideVents))
        {
            sizes.Add(FittedSize.Vents);
        }

        if (Driven(LoggedQuantity.Fans))
        {
            sizes.Add(FittedSize.Fans);
        }

        if (sizes.Count < SizeRange.Most && log.Has(LoggedQuantity.InsideHumidity))
        {
            sizes.Add(FittedSize.WetFloor);
        }

        return sizes.Order().ToEqList();
    }

    /// <summary>Fits and scores.</summary>
    /// <param name="map">The column map.</param>
    /// <param name="log">The log; without faults.</param>
    /// <param name="job">The house of a job; null when the map gives it.</param>
    /// <param name="given">Sizes of an earlier fit: nothing is looked for and every week is scored; empty to fit.</param>
    /// <param name="threads">Most threads; the result is the same for any number.</param>
    /// <param name="told">Told what is being done; may be null.</param>
    /// <param name="cancel">Cancelled by the user.</param>
    /// <returns>The fitted house and its score.</returns>
    /// <exception cref="ArgumentException">The log cannot be fitted (see <see cref="Faults"/>).</exception>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static CalibrationResult Run(ColumnMap map, HouseLog log, JobHouse? job, EqList<GivenSize> given, int threads, Action<string>? told, CancellationToken cancel)
    {
        if (Faults(map, log, job, given) is { Count: > 0 } faults)
        {
            throw new ArgumentException(faults[0].Wrong, nameof(log));
        }

        ReplayHouse house = job is null ? ReplayHouse.Of(map.House!, log) : ReplayHouse.Of(job.Input, job.Form, job.Gains, job.Plant, job.Site, log);
        bool frozen = given.Count > 0;
        MeasuredAir measured = new(log, map.TrainEvery, frozen ? int.MaxValue : map.TrainFrom);
        HouseReplay replay = new(log, house, map.Thermostats);
        EqList<FittedSize> sizes = frozen ? given.Select(g => g.Size).ToEqList() : SizesFor(map, log);
        SizeRange[] ranges = [.. sizes.Select(SizeRange.Of)];
        double[] start = [.. ranges.Select(r => r.StartValue)];
        int[] trained = TrainedSteps(log, measured);
        double stepS = map.Thermostats.Count > 0 ? FinalStepS : Math.Min(SearchStepS, log.StepMinutes * 60.0);

        double[] Residuals(double[] values)
        {
            ReplayedAir air = replay.Run(SizeValues.Of(house, job is null, sizes, values), trained[^1] + 1, stepS, cancel);
            double[] misses = new double[2 * trained.Length];
            for (int k = 0; k < trained.Length; k++)
            {
                int i = trained[k];
                misses[k] = (air.AirC[i] - measured.AirC[i]) / AirWeightK;
                double vapour = (air.VapourKgPerM3[i] - measured.VapourKgPerM3[i]) / VapourWeightKgPerM3;
                misses[trained.Length + k] = double.IsNaN(vapour) ? 0 : vapour;
            }

            return misses;
        }

        BoundedFit.Ended ended = frozen ? new BoundedFit.Ended([.. given.Select(g => g.Value)], [], [], 0, true) : BoundedFit.Search(
            start, [.. ranges.Select(r => r.LeastValue)], [.. ranges.Select(r => r.MostValue)], Residuals, threads,
            (round, sum) => told?.Invoke(string.Create(CultureInfo.InvariantCulture, $"Round {round}: {Math.Sqrt(sum / trained.Length):0.000}")),
            map.Thermostats.Count > 0 ? BoundedFit.RaggedSlopeFraction : BoundedFit.SmoothSlopeFraction);
        told?.Invoke("The whole log, once more");
        ReplayedAir before = replay.Run(SizeValues.Of(house, job is null, sizes, start), log.Count, FinalStepS, cancel);
        ReplayedAir after = replay.Run(SizeValues.Of(house, job is null, sizes, ended.Values), log.Count, FinalStepS, cancel);
        EqList<ScoreLine> scores = CalibrationScores.ByRegime(log, house.Sun, measured, after);
        EqList<FittedValue> values = frozen
            ? given.Select(g => new FittedValue(SizeRange.Of(g.Size), g.Value, double.NaN, SizeStanding.Given, "", 0)).ToEqList()
            : FitConfidence.Of(ranges, ended, trained.Length);
        int weeks = log.Week(log.Count - 1);
        EqList<int> trainedWeeks = Enumerable.Range(1, weeks).Where(w => !frozen && w >= map.TrainFrom && (w - map.TrainFrom) % map.TrainEvery == 0).ToEqList();
        EqList<int> scoredWeeks = Enumerable.Range(1, weeks).Except(trainedWeeks).ToEqList();
        return new CalibrationResult(
            log.Name,
            job?.Input.House ?? "by-sizes",
            CalibrationWords.Stamp(log.At(0)),
            CalibrationWords.Stamp(log.At(log.Count - 1)),
            log.StepMinutes,
            log.Count,
            trainedWeeks,
            scoredWeeks,
            values,
            ended.Rounds,
            ended.Settled,
            ScoreBook.Of("start", "the same hours with the sizes as stated", measured, before, i => !measured.Trains[i]),
            ScoreBook.Of("trained", "weeks fitted on", measured, after, i => measured.Trains[i]),
            scores,
            scoredWeeks.Select(w => ScoreBook.Of(CalibrationWords.Week(w), "week " + CalibrationWords.Week(w), measured, after, i => log.Week(i) == w)).Where(l => l.Count > 0).ToEqList(),
            CalibrationMarks.Of(log, house, measured, after, scores),
            LogHours.Of(log, house.Sun, measured, after),
            LogHours.ByHour(measured, after),
            CalibrationWords.Fragment(job, values),
            CalibrationWords.Report(map, log, values, ended, scores));
    }

    // One step in fifteen minutes is enough: neighbours say the same.
    private static int[] TrainedSteps(HouseLog log, MeasuredAir measured)
    {
        int stride = Math.Max(1, 15 / log.StepMinutes);
        return [.. Enumerable.Range(0, log.Count).Where(i => i % stride == 0 && measured.Counts[i] && measured.Trains[i])];
    }
}
