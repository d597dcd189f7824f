using Glazewright.Design.Contracts;
using Glazewright.Design.Document;

namespace Glazewright.Papers.Sets;

/// <summary>
/// Stages know a field by its pointer and call it given; whether it was typed or is a default only the reading of the document knows. Here the two are
/// brought together, so that no default is passed off as typed.
/// </summary>
internal sealed class DefaultsTold
{
    private readonly Dictionary<string, DefaultUsed> _used = [];

    /// <summary>Knows the defaults of one reading.</summary>
    public DefaultsTold(IEnumerable<DefaultUsed> used)
    {
        foreach (DefaultUsed one in used)
        {
            _used.TryAdd(one.Pointer, one);
        }
    }

    /// <summary>The report with each source that names a defaulted field called a default.</summary>
    public StageReport Of(StageReport report) => report with { Figures = report.Figures.Select(Of).ToEqList(), Findings = report.Findings.Select(f => f with { Source = Of(f.Source) }).ToEqList() };

    private Figure Of(Figure figure) => figure with
    {
        Source = Of(figure.Source),
        Working = figure.Working switch
        {
            Working.Derived derived => derived with { Inputs = Of(derived.Inputs) },
            Working.Observed observed => observed with { Inputs = Of(observed.Inputs) },
            Working other => other,
        },
    };

    private EqList<WorkingInput> Of(EqList<WorkingInput> inputs) => inputs.Select(i => i with { Source = Of(i.Source) }).ToEqList();

    private Source Of(Source source) =>
        source is Source.Given given && Covering(given.Pointer) is DefaultUsed used ? new Source.Default(used.Pointer, used.Value) : source;

    // A default for a list or an object covers all that stands in it.
    private DefaultUsed? Covering(string pointer)
    {
        while (pointer.Length > 0)
        {
            if (_used.TryGetValue(pointer, out DefaultUsed? used))
            {
                return used;
            }

            pointer = pointer[..Math.Max(0, pointer.LastIndexOf('/'))];
        }

        return null;
    }
}
