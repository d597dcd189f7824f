using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Program;

/// <summary>A house's control program with what the job changes in it.</summary>
/// <param name="Written">As written from plant and wish.</param>
/// <param name="Document">With the changes that have something to change; without any of them where that would be no program.</param>
/// <param name="Faults">What the changes make wrong, each at the change that does it.</param>
public sealed record LaidProgram(ProgramDocument Written, ProgramDocument Document, EqList<Fault> Faults)
{
    internal static LaidProgram Of(ProgramDocument written, EqList<ProgramChange> changes)
    {
        if (changes.Count == 0)
        {
            return new LaidProgram(written, written, []);
        }

        ProgramChange[] held = [.. changes.Where(c => Finds(written, c))];
        ProgramDocument laid = With(written, held);
        EqList<Fault> slips = ProgramChecks.Of(laid);
        if (slips.Count > 0)
        {
            return new LaidProgram(written, written, slips.Select(slip => Told(slip, written, held)).ToEqList());
        }

        EqList<Finding> findings =
        [
            .. written.Report.Findings,
            .. changes.Where(c => !Finds(written, c)).Select(c => ProgramWords.WithoutTarget(written, c)),
            .. held.Length > 0 ? [ProgramWords.Changed(written.House, held)] : (Finding[])[],
            .. OutOfOrder("cooling", written.Cooling, laid.Cooling, laid.House, held),
            .. OutOfOrder("heating", written.Heating, laid.Heating, laid.House, held),
        ];
        EqList<Figure> figures = held.FirstOrDefault(c => c.Part == "periods" && c.Name == laid.Periods[0].Id) is { } first
            ? ProgramWorkings.Thresholds(laid.House, laid.Periods[0], new Source.Given(first.Pointer))
            : written.Report.Figures;
        return new LaidProgram(written, laid with { Report = written.Report with { Figures = figures, Findings = findings } }, []);
    }

    /// <summary>Whether what a change changes is in the program.</summary>
    /// <param name="program">The program.</param>
    /// <param name="change">The change.</param>
    public static bool Finds(ProgramDocument program, ProgramChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        return ProgramParts.Of(change.Part).Find(program, change.Name, change.Field) is not null;
    }

    // As written no stage comes on before the one ahead of it; a change, or equipment that came in behind one, may turn that about.
    private static IEnumerable<Finding> OutOfOrder(string part, EqList<ControlStage> written, EqList<ControlStage> laid, string house, ProgramChange[] held)
    {
        EqList<string> names = StageNames.Of(laid, house);
        for (int i = 1; i < laid.Count; i++)
        {
            int before = i - 1;
            if (laid[i].OnAtK < laid[before].OnAtK - 1e-9 && written[i].OnAtK >= written[before].OnAtK)
            {
                yield return ProgramWords.OutOfOrder(part, house, names[i], laid[i].OnAtK, names[before], laid[before].OnAtK, held.LastOrDefault(c => c.Part == part && (c.Name == names[i] || c.Name == names[before])) ?? held[^1]);
            }
        }
    }

    private static ProgramDocument With(ProgramDocument written, IEnumerable<ProgramChange> changes) =>
        changes.Aggregate(written, (program, c) => ProgramParts.Of(c.Part).With(program, c.Name, c.Field, c.Value));

    // The last change without which this would not be wrong; where it takes several, the last.
    private static Fault Told(Fault slip, ProgramDocument written, ProgramChange[] held)
    {
        bool Remains(ProgramChange without) => ProgramChecks.Of(With(written, held.Where(c => c != without))).Any(f => f.Kind == slip.Kind && f.Pointer == slip.Pointer);
        ProgramChange at = held.LastOrDefault(c => !Remains(c)) ?? held[^1];
        return new Fault(slip.Kind, at.Pointer, at.Name.Length > 0 ? $"{written.House}/{at.Name}" : written.House, 0, 0, ProgramWords.InJobNames(slip.Wrong, written), ProgramWords.InJobKeys(slip.Right));
    }
}
