using System.Globalization;
using System.Text;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Price;
using Glazewright.Design.Program;
using Glazewright.Design.Year;

namespace Glazewright.Cli.Running;

/// <summary>What a comparison is asked for.</summary>
/// <param name="JobPath">Job document.</param>
/// <param name="Programs">Edited programs.</param>
/// <param name="WeatherPath">Weather file in place of the job's, or null.</param>
/// <param name="Json">JSON instead of text.</param>
internal sealed record CompareWish(string JobPath, IReadOnlyList<string> Programs, string? WeatherPath, bool Json);

/// <summary>Loads, runs both years of each house, tells.</summary>
internal static class CompareRun
{
    public static int Run(Desk desk, CompareWish wish)
    {
        IReadOnlyList<Fault> faults = JobLoading.Load(wish.JobPath, wish.WeatherPath, null, out LoadedJob? loaded);
        if (loaded is null)
        {
            return Refusal.Of(desk, wish.Json, wish.JobPath, faults);
        }

        Ground ground = Ground.Of(loaded.Weather, CatalogueReader.Generic, PriceBook.Generic());
        StageRunner runner = new(128);
        Evaluation written = new(loaded.Job, ground, runner, desk.Cancel);
        IReadOnlyList<Fault> misfits = GivenPrograms.Read(wish.Programs, written, out EqList<ProgramDocument> programs);
        if (misfits.Count > 0)
        {
            return Refusal.Of(desk, wish.Json, wish.JobPath, misfits);
        }

        List<(string House, EqList<ComparedValue> Rows)> all = [];
        int exit = Watching.Run(desk, wish.Json, say =>
        {
            Evaluation edited = new(loaded.Job, ground with { Programs = programs }, runner, desk.Cancel);
            foreach (ProgramDocument program in programs)
            {
                say($"The year of house {program.House}, twice");
                all.Add((program.House, YearComparison.Of(written.Year(program.House).Value, edited.Year(program.House).Value)));
            }

            return Exit.Done;
        });
        if (exit == Exit.Done)
        {
            desk.Out.Write(wish.Json ? Json(all) : Text(all, loaded.Job.Units));
        }

        return exit;
    }

    private static string Text(List<(string House, EqList<ComparedValue> Rows)> all, UnitSystem units)
    {
        StringBuilder text = new();
        foreach ((string house, EqList<ComparedValue> rows) in all)
        {
            int widest = rows.Max(r => r.Label.Length);
            text.Append(CultureInfo.InvariantCulture, $"House {house}{new string(' ', Math.Max(1, widest - house.Length - 4))}{"as written",16}{"as edited",16}{"change",16}\n");
            foreach (ComparedValue row in rows)
            {
                Shown before = Shown.Of(row.BeforeValue, row.Unit, units);
                Shown after = Shown.Of(row.AfterValue, row.Unit, units);
                bool same = before.Text == after.Text;
                string sign = row.AfterValue > row.BeforeValue ? "+" : "";
                string change = same ? "" : sign + Shown.Of(row.AfterValue - row.BeforeValue, row.Unit == Unit.Celsius ? Unit.Kelvin : row.Unit, units).Text;
                string verdict = same || row.MoreIsBetter is not { } more ? "" : more == row.AfterValue > row.BeforeValue ? "  better" : "  worse";
                text.Append(CultureInfo.InvariantCulture, $"  {row.Label.PadRight(widest)}{before.Text,16}{after.Text,16}{change,16}{verdict}\n");
            }

            text.Append('\n');
        }

        return text.Append("The same typical year twice: what weather leaves out, both leave out.\n").ToString();
    }

    private static string Json(List<(string House, EqList<ComparedValue> Rows)> all)
    {
        StringBuilder text = new("{\n  \"houses\": [\n");
        text.AppendJoin(",\n", all.Select(h => $"    {{ \"house\": {JsonText.Quote(h.House)}, \"values\": [\n" + string.Join(",\n", h.Rows.Select(r => string.Create(
            CultureInfo.InvariantCulture,
            $"      {{ \"id\": {JsonText.Quote(r.Id)}, \"label\": {JsonText.Quote(r.Label)}, \"unit\": {JsonText.Quote(Shown.Of(r.BeforeValue, r.Unit, UnitSystem.Metric).Unit)}, \"asWritten\": {Number(r.BeforeValue, r.Unit)}, \"asEdited\": {Number(r.AfterValue, r.Unit)} }}"))) + "\n    ] }"));
        return text.Append("\n  ]\n}\n").ToString();
    }

    private static string Number(double value, Unit unit) => Shown.Of(value, unit, UnitSystem.Metric).Value.ToString("0.####", CultureInfo.InvariantCulture);
}
