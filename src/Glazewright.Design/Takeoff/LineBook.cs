using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Takeoff;

/// <summary>Collects takeoff lines and stamps each with who supplies its system.</summary>
internal sealed class LineBook
{
    private readonly List<TakeoffLine> _lines = [];
    private readonly Dictionary<ScopeSystem, ScopeBy> _by;

    public LineBook(EqList<ScopeLine> scope) =>
        _by = scope.GroupBy(line => line.System).ToDictionary(group => group.Key, group => group.First().By);

    /// <summary>Adds a line; nothing is no line.</summary>
    public void Add(ScopeSystem system, string item, string label, double quantity, string per, string from)
    {
        if (quantity > 0)
        {
            _lines.Add(new TakeoffLine(item, label, system, quantity, per, from, _by.GetValueOrDefault(system, ScopeBy.Us)));
        }
    }

    /// <summary>The lines by system, equal ones (item, label, unit) added up.</summary>
    public EqList<TakeoffLine> Finish() => _lines
        .GroupBy(line => (line.System, line.Item, line.Label, line.Per, line.By))
        .OrderBy(group => group.Key.System)
        .Select(group => group.First() with
        {
            Quantity = group.Sum(line => line.Quantity),
            From = string.Join("; ", group.Select(line => line.From).Distinct()),
        })
        .ToEqList();
}
