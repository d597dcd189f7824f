using System.Globalization;
using System.Text;
using Glazewright.Design.Form;

namespace Glazewright.Papers.Ifc;

/// <summary>The data section of an exchange structure: numbered instances, those alike written once where that is asked for.</summary>
internal sealed class StepFile
{
    private readonly StringBuilder _data = new(1 << 16);
    private readonly Dictionary<string, string> _shared = [];
    private int _count;

    /// <summary>Writes an instance.</summary>
    /// <returns>Its name, <c>#12</c>.</returns>
    public string Add(string entity)
    {
        string name = string.Create(CultureInfo.InvariantCulture, $"#{++_count}");
        _data.Append(name).Append('=').Append(entity).Append(";\n");
        return name;
    }

    /// <summary>An instance with no identity of its own: the same text is the same instance.</summary>
    public string Shared(string entity) => _shared.TryGetValue(entity, out string? name) ? name : _shared[entity] = Add(entity);

    /// <summary>A point.</summary>
    public string Point(Point3 p) => Shared($"IFCCARTESIANPOINT(({StepText.Real(p.XM)},{StepText.Real(p.YM)},{StepText.Real(p.ZM)}))");

    /// <summary>A direction.</summary>
    public string Direction(Point3 p) => Shared($"IFCDIRECTION(({StepText.Real(p.XM)},{StepText.Real(p.YM)},{StepText.Real(p.ZM)}))");

    /// <summary>Axes: origin, z and x; those of the parent are left out.</summary>
    public string Axes(Point3 origin, Point3 z, Point3 x) => z == new Point3(0, 0, 1) && x == new Point3(1, 0, 0)
        ? Shared($"IFCAXIS2PLACEMENT3D({Point(origin)},$,$)")
        : Shared($"IFCAXIS2PLACEMENT3D({Point(origin)},{Direction(z)},{Direction(x)})");

    /// <summary>A list of references.</summary>
    public static string List(IEnumerable<string> names) => "(" + string.Join(',', names) + ")";

    /// <summary>A list of what is made of things.</summary>
    public static string List<T>(IEnumerable<T> things, Func<T, string> name) => List(things.Select(name));

    /// <summary>The whole file.</summary>
    public byte[] Bytes(string name, string description, string stamp, string version)
    {
        StringBuilder file = new(_data.Length + 1024);
        file.Append("ISO-10303-21;\nHEADER;\n");
        file.Append("FILE_DESCRIPTION((").Append("'ViewDefinition [notYetAssigned]',").Append(StepText.Quote(description)).Append("),'2;1');\n");
        file.Append("FILE_NAME(").Append(StepText.Label(name)).Append(',').Append(StepText.Quote(stamp)).Append(",(''),(''),")
            .Append(StepText.Quote("Glazewright " + version)).Append(',').Append(StepText.Quote("Glazewright")).Append(",'');\n");
        file.Append("FILE_SCHEMA(('IFC4'));\nENDSEC;\nDATA;\n").Append(_data).Append("ENDSEC;\nEND-ISO-10303-21;\n");
        return Encoding.ASCII.GetBytes(file.ToString());
    }
}
