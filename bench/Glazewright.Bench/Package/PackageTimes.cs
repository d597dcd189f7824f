using System.Diagnostics;
using System.Globalization;
using Glazewright.Bench.Convergence;
using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Document;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Price;
using Glazewright.Papers.Sets;
using Glazewright.Science.Weather;

namespace Glazewright.Bench.Package;

/// <summary>
/// "package [repeats] [job] [weather]": what a whole package takes, stage after stage and then paper after paper: processor time, not the clock's, since the machine has others to serve. The first round has the compiling in it.
/// </summary>
internal static class PackageTimes
{
    internal const string Word = "package";

    internal static void Run(int repeats, string? jobPath, string? weatherPath) =>
        RunText(repeats, File.ReadAllText(jobPath ?? Path.Combine(StudyYear.RepoRoot(), "examples", "two-ridge-herb-yard.json")), weatherPath);

    internal static void RunText(int repeats, string jobText, string? weatherPath)
    {
        string examples = Path.Combine(StudyYear.RepoRoot(), "examples");
        string weatherFile = weatherPath ?? Path.Combine(examples, "weather", "demo-continental-42N.epw.gz");
        for (int round = 0; round < repeats; round++)
        {
            TimeSpan start = Spent();
            JobDocument document = JobDocument.Read(jobText);
            WeatherYear year = ((WeatherReading.Read)WeatherFile.Read(File.ReadAllBytes(weatherFile))).Year;
            var reading = JobReader.Read(document, SiteWeather.HintOf(year));
            Job job = reading.Value ?? throw new InvalidOperationException("The job has faults.");
            Say($"{"read",-24}{(Spent() - start).TotalSeconds,8:0.000}");
            StageClock clock = new();
            Evaluation all = new(job, Ground.Of(year, CatalogueReader.Generic, PriceBook.Generic()), new StageRunner(512, clock));
            TimeSpan stages = Spent();
            all.Everything(1);
            PaperSource source = PaperSource.From(all, reading.Defaults, "");
            Say($"{"all stages",-24}{(Spent() - stages).TotalSeconds,8:0.000}");
            foreach ((string stage, double seconds) in clock.Spent.OrderByDescending(s => s.Value))
            {
                Say($"   {stage,-21}{seconds,8:0.000}");
            }

            TimeSpan papers = Spent();
            Dictionary<string, double> byEnding = [];
            foreach (PlannedPaper paper in PaperPlan.Of(source, null))
            {
                TimeSpan before = Spent();
                paper.Make();
                string kind = paper.Path.EndsWith(".pdf", StringComparison.Ordinal) ? paper.Path : Path.GetExtension(paper.Path);
                byEnding[kind] = byEnding.GetValueOrDefault(kind) + (Spent() - before).TotalSeconds;
            }

            Say($"{"papers",-24}{(Spent() - papers).TotalSeconds,8:0.000}");
            foreach ((string kind, double seconds) in byEnding.OrderByDescending(s => s.Value))
            {
                Say($"   {kind,-21}{seconds,8:0.000}");
            }

            Say($"{"round",-24}{(Spent() - start).TotalSeconds,8:0.000}   allocated so far {GC.GetTotalAllocatedBytes() / 1_000_000} MB, most held {Environment.WorkingSet / 1_000_000} MB");
        }
    }

    private static TimeSpan Spent() => Process.GetCurrentProcess().TotalProcessorTime;

    private static void Say(FormattableString text) => Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));

    /// <summary>Processor time of each stage: with one thread they follow one another, though a stage may ask for another inside.</summary>
    private sealed class StageClock : IProgress<StageProgress>
    {
        private readonly Stack<(string Stage, TimeSpan At)> open = new();

        public Dictionary<string, double> Spent { get; } = [];

        public void Report(StageProgress value)
        {
            TimeSpan now = PackageTimes.Spent();
            if (open.TryPeek(out (string Stage, TimeSpan At) last))
            {
                Spent[last.Stage] = Spent.GetValueOrDefault(last.Stage) + (now - last.At).TotalSeconds;
            }

            if (value.Ended)
            {
                open.Pop();
                if (open.TryPop(out (string Stage, TimeSpan At) outer))
                {
                    open.Push((outer.Stage, now));
                }
            }
            else
            {
                open.Push((value.Stage, now));
            }
        }
    }
}
