using System.Globalization;
using System.Reflection;
using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Price;
using Glazewright.Papers.Sets;
using Glazewright.Science.Optics;

namespace Glazewright.Cli.Running;

/// <summary>Asks the pipeline for everything that the papers need.</summary>
internal static class Evaluating
{
    public static PaperSource Run(LoadedJob loaded, int threads, Action<string> say, CancellationToken cancel)
    {
        Job job = loaded.Job;
        Evaluation all = new(job, Ground.Of(loaded.Weather, CatalogueReader.Generic, PriceBook.Generic()), new StageRunner(512, new StageTold(say)), cancel);
        all.Everything(threads);
        return new PaperSource(
            job,
            all.Form.Value,
            all.Body.Value,
            job.Houses.Select(h => Of(all, h)).ToEqList(),
            all.Takeoff.Value,
            all.Cuts.Value,
            all.Price.Value,
            GenericCovers.All.Select(Look).ToEqList(),
            loaded.Defaults,
            typeof(Evaluating).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "");
    }

    private static HouseResults Of(Evaluation all, House house) => new(
        house,
        all.Form.Value.Building(house.Id),
        all.Frame(house.Id).Value,
        all.GainTable(house.Id).Value,
        all.Duty(house.Id).Value,
        all.Plant(house.Id).Value,
        all.Layout(house.Id).Value,
        all.LightMap(house.Id).Value,
        all.Program(house.Id).Value,
        all.Year(house.Id).Value);

    // polycarbonate-16-triple is 16 mm thick, panel-76 76 mm; film has no number and is drawn as a line.
    private static CoverLook Look(GenericCover cover)
    {
        string? number = cover.Id.Split('-').FirstOrDefault(part => int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out _));
        double thicknessM = number is null ? 0.001 : int.Parse(number, CultureInfo.InvariantCulture) / 1000.0;
        return new CoverLook(cover.Id, cover.Name, cover.Make is not CoverMake.Opaque, thicknessM);
    }

    private sealed class StageTold(Action<string> say) : IProgress<StageProgress>
    {
        public void Report(StageProgress value) => say(StageWords.Of(value));
    }
}
