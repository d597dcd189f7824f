using System.Globalization;
using System.Text;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;

namespace Glazewright.Cli.Running;

/// <summary>Faults as lines for people and as JSON for programs.</summary>
public static class FaultLines
{
    /// <summary>One fault as a line an editor can jump to.</summary>
    /// <param name="file">Name of the job file.</param>
    /// <param name="fault">The fault.</param>
    /// <returns><c>yard.json:12:16: A /houses/0/width: 26 has no unit. Right: 26 ft or 26 m.</c></returns>
    public static string Line(string file, Fault fault)
    {
        string place = fault.Line > 0 ? string.Create(CultureInfo.InvariantCulture, $"{file}:{fault.Line}:{fault.Column}: ") : $"{file}: ";
        string pointer = fault.Pointer.Length > 0 ? fault.Pointer + ": " : "";
        string id = fault.Id.Length > 0 ? fault.Id + " " : "";
        string stop = fault.Wrong.EndsWith('?') || fault.Wrong.EndsWith('.') ? "" : ".";
        return $"{place}{id}{pointer}{fault.Wrong}{stop} Right: {fault.Right}";
    }

    /// <summary>Writes faults and how many.</summary>
    /// <param name="to">Where.</param>
    /// <param name="file">Name of the job file.</param>
    /// <param name="faults">The faults.</param>
    public static void Write(TextWriter to, string file, IReadOnlyList<Fault> faults)
    {
        foreach (Fault fault in faults)
        {
            to.WriteLine(Line(file, fault));
        }

        to.WriteLine(faults.Count == 1 ? "1 fault." : string.Create(CultureInfo.InvariantCulture, $"{faults.Count} faults."));
    }

    /// <summary>Faults as a JSON object with one list: what every command prints for <c>--json</c> when it cannot do what was asked.</summary>
    /// <param name="faults">The faults.</param>
    /// <returns>JSON.</returns>
    public static string JsonObject(IReadOnlyList<Fault> faults) => $"{{\n  \"faults\": {Json(faults)}\n}}";

    /// <summary>Faults as a JSON list.</summary>
    /// <param name="faults">The faults.</param>
    /// <returns>JSON.</returns>
    public static string Json(IReadOnlyList<Fault> faults)
    {
        StringBuilder json = new("[");
        for (int i = 0; i < faults.Count; i++)
        {
            Fault f = faults[i];
            json.Append(i == 0 ? "\n" : ",\n").Append(CultureInfo.InvariantCulture, $"    {{ \"kind\": {JsonText.Quote(f.Kind.ToString())}, \"pointer\": {JsonText.Quote(f.Pointer)}, \"id\": {JsonText.Quote(f.Id)}, \"line\": {f.Line}, \"column\": {f.Column}, \"wrong\": {JsonText.Quote(f.Wrong)}, \"right\": {JsonText.Quote(f.Right)} }}");
        }

        return json.Append(faults.Count == 0 ? "]" : "\n  ]").ToString();
    }

    /// <summary>Defaults as a JSON list.</summary>
    /// <param name="defaults">The defaults.</param>
    /// <returns>JSON.</returns>
    public static string Json(IReadOnlyList<DefaultUsed> defaults)
    {
        StringBuilder json = new("[");
        for (int i = 0; i < defaults.Count; i++)
        {
            DefaultUsed d = defaults[i];
            json.Append(i == 0 ? "\n" : ",\n").Append($"    {{ \"pointer\": {JsonText.Quote(d.Pointer)}, \"value\": {JsonText.Quote(d.Value)}, \"what\": {JsonText.Quote(d.Doc)} }}");
        }

        return json.Append(defaults.Count == 0 ? "]" : "\n  ]").ToString();
    }
}
