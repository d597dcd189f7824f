using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Frame;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Price;
using Glazewright.Design.Shape;
using Glazewright.Papers.Package;
using Glazewright.Papers.Shapes;
using Glazewright.Science.Shape;

namespace Glazewright.Cli.Running;

/// <summary>What a shape run is asked for.</summary>
/// <param name="JobPath">Job document.</param>
/// <param name="House">House id, or null for the first.</param>
/// <param name="OutPath">Folder for files, or null for none.</param>
/// <param name="WeatherPath">Weather file in place of the job's, or null.</param>
/// <param name="Threads">Most threads.</param>
/// <param name="Json">JSON instead of text.</param>
internal sealed record ShapeRunWish(string JobPath, string? House, string? OutPath, string? WeatherPath, int Threads, bool Json);

/// <summary>Loads, looks, writes, tells.</summary>
internal static class ShapeRun
{
    public static int Run(Desk desk, ShapeRunWish wish)
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

        ShapeInput input = ShapeInput.From(loaded.Job, house.Id);
        IReadOnlyList<Fault> unfit = ShapeStage.Faults(input, loaded.Weather);
        if (unfit.Count > 0)
        {
            return Refusal.Of(desk, wish.Json, wish.JobPath, unfit);
        }

        if (wish.OutPath is null)
        {
            ShapeResult? found = null;
            int told = Watching.Run(desk, wish.Json, say =>
            {
                found = Find(loaded, input, wish.Threads, say, desk.Cancel);
                return Exit.Done;
            });
            return told == Exit.Done ? Tell(desk, wish, loaded, input, found!, []) : told;
        }

        if (!OutputFolder.TryOpen(wish.OutPath, out OutputFolder? folder, out OutputProblem? problem))
        {
            return Refusal.Of(desk, wish.Json, problem);
        }

        using (folder)
        {
            ShapeResult? found = null;
            IReadOnlyList<ShapeFile> files = [];
            int exit = Watching.Run(desk, wish.Json, say =>
            {
                found = Find(loaded, input, wish.Threads, say, desk.Cancel);
                files = ShapeFiles.Of(input, found);
                try
                {
                    foreach (ShapeFile file in files)
                    {
                        folder.Add(file.Path, file.Bytes.Span);
                    }
                }
                catch (OutputProblemException e)
                {
                    return Refusal.Of(desk, wish.Json, e.Problem);
                }

                return folder.TryFinish(out OutputProblem? late) ? Exit.Done : Refusal.Of(desk, wish.Json, late);
            });
            return exit == Exit.Done ? Tell(desk, wish, loaded, input, found!, files) : exit;
        }
    }

    private static ShapeResult Find(LoadedJob loaded, ShapeInput input, int threads, Action<string> say, CancellationToken cancel)
    {
        say("Frames as drawn");
        Evaluation evaluation = new(loaded.Job, Ground.Of(loaded.Weather, CatalogueReader.Generic, PriceBook.Generic()), new StageRunner(64), cancel);
        EqList<FrameResult> frames = loaded.Job.Houses.Select(h => evaluation.Frame(h.Id).Value).ToEqList();
        return ShapeStage.Run(input, loaded.Weather, ShapeRechecks.ByLightMap(loaded.Job, input.House, frames, loaded.Weather), threads, say, cancel);
    }

    private static int Tell(Desk desk, ShapeRunWish wish, LoadedJob loaded, ShapeInput input, ShapeResult r, IReadOnlyList<ShapeFile> files)
    {
        if (wish.Json)
        {
            desk.Out.Write(ShapeFiles.Json(r));
            return Exit.Done;
        }

        ShapePage.Write(desk.Out, loaded, input, r);
        if (files.Count > 0)
        {
            desk.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{files.Count} files in {wish.OutPath}."));
        }

        desk.Out.WriteLine("A shape is not a frame: put the chosen roof into the job and design it; structure is for review and sealing by a licensed engineer.");
        return Exit.Done;
    }
}
