using System.Globalization;
using System.Text;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Program;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Package;
using Glazewright.Papers.Sets;

namespace Glazewright.Cli.Running;

/// <summary>What a design run is asked for.</summary>
/// <param name="JobPath">Job document.</param>
/// <param name="OutPath">Folder of the package.</param>
/// <param name="WeatherPath">Weather file in place of the job's, or null.</param>
/// <param name="Date">Date in place of the job's, or null.</param>
/// <param name="Threads">Most threads.</param>
/// <param name="Json">JSON instead of text.</param>
/// <param name="Programs">Edited control programs.</param>
/// <param name="Reader">Whose set is written; null for the whole package.</param>
internal sealed record DesignWish(
    string JobPath, string OutPath, string? WeatherPath, string? Date, int Threads, bool Json, IReadOnlyList<string> Programs, PaperReader? Reader);

/// <summary>Loads, evaluates, writes: the package is swapped in only when all of it is there.</summary>
internal static class DesignRun
{
    public static int Run(Desk desk, DesignWish wish)
    {
        IReadOnlyList<Fault> faults = JobLoading.Load(wish.JobPath, wish.WeatherPath, wish.Date, out LoadedJob? loaded);
        if (loaded is null)
        {
            return Refusal.Of(desk, wish.Json, wish.JobPath, faults);
        }

        IReadOnlyList<Fault> misfits = GivenPrograms.Read(wish.Programs, loaded, desk.Cancel, out EqList<ProgramDocument> programs);
        if (misfits.Count > 0)
        {
            return Refusal.Of(desk, wish.Json, wish.JobPath, misfits);
        }

        // The target is looked at first: nobody waits for a package that cannot be written.
        if (!OutputFolder.TryOpen(wish.OutPath, out OutputFolder? folder, out OutputProblem? problem, wish.Reader is { } reader ? PaperReaders.Word(reader) : ""))
        {
            return Refusal.Of(desk, wish.Json, problem);
        }

        using (folder)
        {
            PaperSource? source = null;
            IReadOnlyList<PaperFile> files = [];
            int exit = Watching.Run(desk, wish.Json, say => Build(desk, wish, loaded, programs, folder, say, out source, out files));
            return exit == Exit.Done ? TellWhole(desk, wish, loaded, source!, files, folder.KeptCopies) : exit;
        }
    }

    // The package stands; who cannot be told the answer is told at least that.
    private static int TellWhole(Desk desk, DesignWish wish, LoadedJob loaded, PaperSource source, IReadOnlyList<PaperFile> files, IReadOnlyList<string> kept)
    {
        try
        {
            Tell(desk, wish, loaded, source, files, kept);
            desk.Out.Flush();
            return Exit.Done;
        }
        catch (AnswerLostException e)
        {
            desk.Errors.WriteLine($"The package in '{wish.OutPath}' is complete, but the answer could not be written to standard output: {e.Message}.");
            return Exit.Ours;
        }
    }

    private static int Build(
        Desk desk, DesignWish wish, LoadedJob loaded, EqList<ProgramDocument> programs, OutputFolder folder, Action<string> say, out PaperSource? source, out IReadOnlyList<PaperFile> files)
    {
        PaperSource made = Evaluating.Run(loaded, programs, wish.Threads, say, desk.Cancel);
        say("Writing papers");
        files = ThreadLimit.Run(wish.Threads, () => PaperWriter.Write(made, wish.Reader, desk.Cancel));
        source = made;
        try
        {
            foreach (PaperFile file in files)
            {
                desk.Cancel.ThrowIfCancellationRequested();
                folder.Add(file.Path, file.Bytes.Span);
            }
        }
        catch (OutputProblemException e)
        {
            return Refusal.Of(desk, wish.Json, e.Problem);
        }

        return folder.TryFinish(out OutputProblem? problem) ? Exit.Done : Refusal.Of(desk, wish.Json, problem);
    }

    private static void Tell(Desk desk, DesignWish wish, LoadedJob loaded, PaperSource source, IReadOnlyList<PaperFile> files, IReadOnlyList<string> kept)
    {
        Finding[] findings = [.. source.Reports().SelectMany(r => r.Findings).OrderByDescending(f => f.Severity)];
        if (wish.Json)
        {
            desk.Out.Write(Json(wish, loaded, findings, files, kept));
            return;
        }

        TextWriter page = desk.Out;
        page.WriteLine(loaded.Job.Name);
        page.WriteLine($"Weather: {loaded.Weather.Provenance.Label}");
        page.WriteLine();
        foreach (string line in Headlines.Of(source))
        {
            page.WriteLine(line);
        }

        page.WriteLine();
        OpenCounts counts = OpenCounts.Of(source);
        FindingLines.Write(page, findings, counts.OwnNotes, wish.Reader is null);
        page.WriteLine();
        page.WriteLine(wish.Reader is { } reader
            ? string.Create(CultureInfo.InvariantCulture, $"{files.Count} files in {wish.OutPath}: the set {char.ToLowerInvariant(PaperReaders.Heading(reader)[0])}{PaperReaders.Heading(reader)[1..]}, to be handed on. What is said above is for you; {loaded.Defaults.Count} defaults hold (glazewright job-check lists them).")
            : string.Create(CultureInfo.InvariantCulture, $"{files.Count} files in {wish.OutPath}; {loaded.Defaults.Count} defaults hold (glazewright job-check lists them; {counts.Defaults} stand in basis.pdf, {counts.OwnDefaults} on buying and pricing are yours alone)."));
        if (kept.Count > 0)
        {
            page.WriteLine($"Edited by hand since the earlier package, so kept beside the new files: {string.Join(", ", kept)}.");
        }

        page.WriteLine("Preliminary: for review and sealing by a licensed engineer under the code adopted locally; loads to be confirmed with the authority.");
    }

    private static string Json(DesignWish wish, LoadedJob loaded, Finding[] findings, IReadOnlyList<PaperFile> files, IReadOnlyList<string> kept)
    {
        StringBuilder json = new();
        json.Append("{\n  \"job\": ").Append(JsonText.Quote(loaded.Job.Name)).Append(",\n  \"weather\": ").Append(JsonText.Quote(loaded.Weather.Provenance.Label))
            .Append(",\n  \"for\": ").Append(JsonText.Quote(wish.Reader is { } reader ? PaperReaders.Word(reader) : "contractor")).Append(",\n  \"out\": ").Append(JsonText.Quote(wish.OutPath)).Append(",\n  \"files\": [\n    ")
            .AppendJoin(",\n    ", files.Select(f => JsonText.Quote(f.Path))).Append("\n  ],\n  \"keptCopies\": [").AppendJoin(", ", kept.Select(JsonText.Quote)).Append("],\n  \"findings\": [");
        json.AppendJoin(",", findings.Select(f => $"\n    {{ \"code\": {JsonText.Quote(f.Code)}, \"severity\": \"{f.Severity}\", \"part\": {JsonText.Quote(f.Id)}, \"what\": {JsonText.Quote(f.What)}, \"mend\": {JsonText.Quote(f.Mend)} }}"))
            .Append(findings.Length == 0 ? "]" : "\n  ]").Append(",\n  \"defaults\": ").Append(FaultLines.Json(loaded.Defaults)).Append("\n}\n");
        return json.ToString();
    }
}
