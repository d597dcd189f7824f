using System.Globalization;
using System.Text;
using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Price;
using Glazewright.Design.Program;
using Glazewright.Design.Year;
using Glazewright.Papers.Days;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Package;
using Glazewright.Papers.Reports;

namespace Glazewright.Cli.Running;

/// <summary>What a day is asked for.</summary>
/// <param name="JobPath">Job document.</param>
/// <param name="House">House id, or null for the first.</param>
/// <param name="Day">07-14, coldest or hottest.</param>
/// <param name="OutPath">Folder for files, or null for none.</param>
/// <param name="WeatherPath">Weather file in place of the job's, or null.</param>
/// <param name="Json">JSON instead of text.</param>
/// <param name="Programs">Edited control programs.</param>
/// <param name="Along">Cell by cell along the house, too.</param>
internal sealed record DayWish(
    string JobPath, string? House, string Day, string? OutPath, string? WeatherPath, bool Json, IReadOnlyList<string> Programs, bool Along);

/// <summary>Loads, runs the year, runs the day again, tells.</summary>
internal static class DayRun
{
    private static readonly UTF8Encoding s_utf8 = new(false);

    public static int Run(Desk desk, DayWish wish)
    {
        IReadOnlyList<Fault> faults = JobLoading.Load(wish.JobPath, wish.WeatherPath, null, out LoadedJob? loaded);
        if (loaded is null)
        {
            return Refusal.Of(desk, wish.Json, wish.JobPath, faults);
        }

        House? house = wish.House is null ? loaded.Job.Houses[0] : loaded.Job.Houses.FirstOrDefault(h => h.Id == wish.House);
        if (house is null)
        {
            string ids = string.Join(", ", loaded.Job.Houses.Select(h => h.Id));
            return Refusal.Of(desk, wish.Json, wish.JobPath, [new Fault(FaultKind.NotFound, "/houses", "", 0, 0, $"the job has no house '{wish.House}'", ids)]);
        }

        if (Pick(wish.Day) is not { } pick)
        {
            return Refusal.Of(desk, wish.Json, wish.JobPath, [new Fault(FaultKind.Usage, "", "", 0, 0, $"--day '{wish.Day}' is no day of a common year.", "07-14 for 14 July, coldest, or hottest.")]);
        }

        IReadOnlyList<Fault> misfits = GivenPrograms.Read(wish.Programs, loaded, desk.Cancel, out EqList<ProgramDocument> programs);
        if (misfits.Count > 0)
        {
            return Refusal.Of(desk, wish.Json, wish.JobPath, misfits);
        }

        OutputFolder? folder = null;
        if (wish.OutPath is not null && !OutputFolder.TryOpen(wish.OutPath, out folder, out OutputProblem? problem))
        {
            return Refusal.Of(desk, wish.Json, problem);
        }

        using (folder)
        {
            DayReplay? replay = null;
            DetailDay? detail = null;
            string weather = "";
            int exit = Watching.Run(desk, wish.Json, say =>
            {
                say("Running the year");
                Evaluation evaluation = new(loaded.Job, Ground.Of(loaded.Weather, CatalogueReader.Generic, PriceBook.Generic()) with { Programs = programs }, new StageRunner(64), desk.Cancel);
                if (wish.Along)
                {
                    detail = evaluation.DayInDetail(house.Id, pick);
                }

                replay = detail?.Whole ?? evaluation.Day(house.Id, pick);
                weather = evaluation.Year(house.Id).Value.Weather;
                return folder is null ? Exit.Done : Write(desk, wish, loaded.Job, weather, replay, detail, folder);
            });
            if (exit == Exit.Done)
            {
                Tell(desk, wish, loaded.Job, weather, replay!, detail);
            }

            return exit;
        }
    }

    private static int Write(Desk desk, DayWish wish, Job job, string weather, DayReplay replay, DetailDay? detail, OutputFolder folder)
    {
        string name = job.Name.Length > 0 ? job.Name : "Unnamed job";
        SheetSize size = job.Units == UnitSystem.Us ? SheetSize.Letter : SheetSize.A4;
        try
        {
            folder.Add("day.pdf", ReportSetting.Pdf(DayReport.Of(name, weather, replay, job.Units, size, null, detail)));
            folder.Add("minutes.csv", s_utf8.GetBytes(DayReport.Minutes(replay)));
            folder.Add("commands.csv", s_utf8.GetBytes(DayReport.CommandTable(replay)));
            if (detail is not null)
            {
                folder.Add("along.csv", s_utf8.GetBytes(AlongReport.Minutes(detail)));
                folder.Add("along-commands.csv", s_utf8.GetBytes(AlongReport.Commands(detail)));
            }
        }
        catch (OutputProblemException e)
        {
            return Refusal.Of(desk, wish.Json, e.Problem);
        }

        return folder.TryFinish(out OutputProblem? late) ? Exit.Done : Refusal.Of(desk, wish.Json, late);
    }

    // Which day, once the year is known; null for what is no day.
    private static Func<YearResult, int>? Pick(string text)
    {
        switch (text)
        {
            case "coldest":
                return year => year.Extremes.LowestMinute / 1440;
            case "hottest":
                return year => year.Extremes.HighestMinute / 1440;
            default:
                return DateTime.TryParseExact("2011-" + text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime day)
                    ? _ => day.DayOfYear - 1
                    : null;
        }
    }

    private static void Tell(Desk desk, DayWish wish, Job job, string weather, DayReplay replay, DetailDay? detail)
    {
        if (wish.Json)
        {
            desk.Out.WriteLine(Json(replay, detail));
            return;
        }

        string Degrees(double c) => Shown.Of(c, Unit.Celsius, job.Units).Text;
        desk.Out.WriteLine($"House {replay.House}, {DayReport.Name(replay.Day)}; {weather}; standard time");
        desk.Out.WriteLine($"Outside {Degrees(replay.Minutes.Min(m => m.OutsideC))} to {Degrees(replay.Minutes.Max(m => m.OutsideC))}, at the crop {Degrees(replay.Minutes.Min(m => m.InsideC))} to {Degrees(replay.Minutes.Max(m => m.InsideC))}.");
        if (detail is not null)
        {
            desk.Out.WriteLine(AlongReport.Sentence(detail, job.Units));
        }

        desk.Out.WriteLine();
        foreach (CommandSpell spell in replay.Spells)
        {
            desk.Out.WriteLine($"{DayReport.ToTheSecond(spell.FromMinute)}–{DayReport.ToTheSecond(spell.ToMinute)}  {UsReasons.Of(spell.Because, job.Units)}");
        }

        if (wish.OutPath is not null)
        {
            desk.Out.WriteLine();
            desk.Out.WriteLine($"{(detail is null ? 3 : 5)} files in {wish.OutPath}.");
        }
    }

    private static string Json(DayReplay replay, DetailDay? detail)
    {
        StringBuilder text = new();
        text.Append("{\n  \"house\": ").Append(JsonText.Quote(replay.House)).Append(",\n  \"day\": ").Append(JsonText.Quote(DayReport.Name(replay.Day)));
        bool two = DayReport.HasSecondCurtain(replay);
        text.Append(",\n  \"minutes\": [\n");
        text.AppendJoin(",\n", replay.Minutes.Select((m, i) => string.Create(
            CultureInfo.InvariantCulture,
            $"    {{ \"at\": \"{DayReport.Clock(i)}\", \"insideC\": {m.InsideC:0.00}, \"insideRhPercent\": {m.InsideRhPercent:0.0}, \"outsideC\": {m.OutsideC:0.00}, \"sunWm2\": {m.SunWm2:0}, \"targetC\": {(double.IsNaN(m.TargetC) ? "null" : m.TargetC.ToString("0.00", CultureInfo.InvariantCulture))}, \"heatW\": {m.HeatW:0}, \"exhaustM3PerS\": {m.FlowM3PerS:0.00}, \"curtainFraction\": {m.CurtainFraction:0.000}, {(two ? string.Create(CultureInfo.InvariantCulture, $"\"secondCurtainFraction\": {m.SecondCurtainFraction:0.000}, ") : "")}\"powerW\": {m.PowerW:0} }}")));
        text.Append("\n  ],\n  \"commands\": [\n");
        text.AppendJoin(",\n", replay.Spells.Select(s => string.Create(
            CultureInfo.InvariantCulture,
            $"    {{ \"from\": \"{DayReport.ToTheSecond(s.FromMinute)}\", \"to\": \"{DayReport.ToTheSecond(s.ToMinute)}\", \"equipment\": {JsonText.Quote(replay.Actuators[s.Actuator])}, \"levelFraction\": {s.LevelFraction:0.000}, \"reason\": {JsonText.Quote(s.Because)} }}")));
        text.Append("\n  ]");
        if (detail is not null)
        {
            text.Append(string.Create(CultureInfo.InvariantCulture, $",\n  \"along\": {{ \"stepS\": {detail.StepS:0}, \"cellLengthM\": {detail.CellLengthM:0.00}, \"intakeAtEnd2\": {(detail.IntakeAtEnd2 ? "true" : "false")}, \"sensorCell\": {detail.SensorCell + 1}, \"cells\": [\n"));
            text.AppendJoin(",\n", detail.Cells.Select(c => "    { \"airC\": [" + Numbers(c.AirC) + "], \"rhPercent\": [" + Numbers(c.RhPercent) + "] }"));
            text.Append("\n  ] }");
        }

        return text.Append("\n}").ToString();

        static string Numbers(EqList<double> values) => string.Join(", ", values.Select(v => v.ToString("0.00", CultureInfo.InvariantCulture)));
    }
}
