using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Takeoff;

/// <summary>Collects takeoff lines and stamps each with who supplies its system.</summary>
internal sealed class LineBook
{
    private readonly List<TakeoffLine> _lines = [];
    private readonly Dictionary<ScopeSystem, ScopeBy> _by;

    private readonly bool _us;

    public LineBook(EqList<ScopeLine> scope, UnitSystem units)
    {
        _us = units == UnitSystem.Us;
        _by = scope.GroupBy(line => line.System).ToDictionary(group => group.Key, group => group.First().By);
    }

    /// <summary>A length in words, as the job's people read it.</summary>
    public string Length(double lengthM) => Say(_us, lengthM);

    /// <summary>A thickness or a small size in words: inches or millimetres.</summary>
    public string Size(double sizeM) => _us ? FormattableString.Invariant($"{sizeM / 0.0254:0.##} in") : FormattableString.Invariant($"{1000 * sizeM:0} mm");

    /// <summary>An area in words.</summary>
    public string Area(double areaM2) => _us ? FormattableString.Invariant($"{areaM2 / 0.09290304:0} ft²") : FormattableString.Invariant($"{areaM2:0} m²");

    /// <summary>A mass in words.</summary>
    public string Mass(double massKg) => _us ? FormattableString.Invariant($"{massKg / 0.45359237:0} lb") : FormattableString.Invariant($"{massKg:0} kg");

    /// <summary>A heat output by length in words.</summary>
    public string Output(double outputWPerM) => _us ? FormattableString.Invariant($"{outputWPerM * 0.3048 / 0.29307107:0} Btu/h·ft") : FormattableString.Invariant($"{outputWPerM:0} W/m");

    /// <summary>A length in words, feet or metres.</summary>
    public static string Say(bool us, double lengthM) => us ? FormattableString.Invariant($"{lengthM / 0.3048:0.0} ft") : FormattableString.Invariant($"{lengthM:0.0#} m");

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
