using System.Reflection;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Price;
using Glazewright.Design.Program;
using Glazewright.Papers.Sets;

namespace Glazewright.Cli.Running;

/// <summary>Asks the pipeline for everything that the papers need.</summary>
internal static class Evaluating
{
    public static PaperSource Run(LoadedJob loaded, EqList<ProgramDocument> programs, int threads, Action<string> say, CancellationToken cancel)
    {
        Ground ground = Ground.Of(loaded.Weather, CatalogueReader.Generic, PriceBook.Generic()) with { Programs = programs };
        Evaluation all = new(loaded.Job, ground, new StageRunner(512, new StageTold(say)), cancel);
        all.Everything(threads);
        string version = typeof(Evaluating).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "";
        return PaperSource.From(all, loaded.Defaults, version);
    }

    private sealed class StageTold(Action<string> say) : IProgress<StageProgress>
    {
        public void Report(StageProgress value) => say(StageWords.Of(value));
    }
}
