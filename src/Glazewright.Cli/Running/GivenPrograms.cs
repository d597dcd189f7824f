using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Price;
using Glazewright.Design.Program;

namespace Glazewright.Cli.Running;

/// <summary>Reads edited control programs and holds each against its house.</summary>
internal static class GivenPrograms
{
    /// <summary>Reads the files for a job that nothing is computed of yet.</summary>
    public static IReadOnlyList<Fault> Read(IReadOnlyList<string> paths, LoadedJob loaded, CancellationToken cancel, out EqList<ProgramDocument> programs)
    {
        programs = [];
        return paths.Count == 0
            ? []
            : Read(paths, new Evaluation(loaded.Job, Ground.Of(loaded.Weather, CatalogueReader.Generic, PriceBook.Generic()), new StageRunner(64), cancel), out programs);
    }

    /// <summary>Reads the files.</summary>
    /// <param name="paths">Program files.</param>
    /// <param name="evaluation">For the equipment of each house.</param>
    /// <param name="programs">The programs, when there are no faults.</param>
    /// <returns>Every fault; pointers are into the file named in each.</returns>
    public static IReadOnlyList<Fault> Read(IReadOnlyList<string> paths, Evaluation evaluation, out EqList<ProgramDocument> programs)
    {
        List<Fault> faults = [];
        List<ProgramDocument> read = [];
        foreach (string path in paths)
        {
            string text;
            try
            {
                text = File.ReadAllText(path);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                faults.Add(new Fault(FaultKind.NotFound, "", "", 0, 0, $"the program '{path}' cannot be read", "a control/program-….json of a package, edited or not"));
                continue;
            }

            switch (ProgramJson.Read(text))
            {
                case ProgramReading.Refused refused:
                    faults.AddRange(refused.Faults.Select(f => f with { Wrong = $"{path}: {f.Wrong}" }));
                    break;
                case ProgramReading.Read { Document: var program } when evaluation.Job.Houses.All(h => h.Id != program.House):
                    faults.Add(new Fault(
                        FaultKind.NotFound, "/house", "", 0, 0, $"{path}: the job has no house '{program.House}'", string.Join(", ", evaluation.Job.Houses.Select(h => h.Id))));
                    break;
                case ProgramReading.Read { Document: var program } when read.Any(p => p.House == program.House):
                    faults.Add(new Fault(FaultKind.Usage, "/house", "", 0, 0, $"{path} is a second program for house '{program.House}'", "one program a house"));
                    break;
                case ProgramReading.Read { Document: var program }:
                    EqList<Fault> misfits = GivenProgram.Faults(program, evaluation.Program(program.House).Value);
                    faults.AddRange(misfits.Select(f => f with { Wrong = $"{path}: {f.Wrong}" }));
                    read.Add(program);
                    break;
                default:
                    throw new InvalidOperationException("Readings are a closed set.");
            }
        }

        programs = read.ToEqList();
        return faults;
    }
}
