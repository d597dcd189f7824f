using System.Globalization;
using System.Text;
using System.Text.Json;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;

namespace Glazewright.Papers.Sets;

/// <summary>Writes and reads <c>result.json</c>: every figure with its working, findings, defaults, what is left out. The contractor's own.</summary>
public static class ResultFile
{
    /// <summary>Version of the file's form.</summary>
    public const int FormVersion = 1;

    private static readonly JsonWriterOptions Plain = new() { Indented = true, NewLine = "\n", Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The file.</summary>
    /// <param name="source">What the papers are made from.</param>
    public static byte[] Bytes(PaperSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream, Plain))
        {
            json.WriteStartObject();
            json.WriteNumber("glazewrightResult", FormVersion);
            json.WriteString("program", source.Version);
            json.WriteString("for", "the contractor: holds costs, margin and labour rates");
            json.WriteString("job", source.Job.Name);
            json.WriteString("revision", source.Job.Revision);
            json.WriteString("date", source.Job.Date.Length > 0 ? source.Job.Date : "undated draft");
            json.WriteString("units", source.Job.Units == UnitSystem.Us ? "us" : "metric");
            json.WriteString("promise", "predicted under the conditions of the job, not a warranty; a typical weather year leaves the extremes out");
            Weather(json, source);
            json.WriteStartArray("figures");
            foreach (Figure figure in source.Reports().SelectMany(r => r.Figures))
            {
                Write(json, figure, source.Job.Units);
            }

            json.WriteEndArray();
            json.WriteStartArray("findings");
            foreach (Finding finding in source.Reports().SelectMany(r => r.Findings))
            {
                Write(json, finding);
            }

            json.WriteEndArray();
            json.WriteStartArray("defaults");
            foreach (DefaultUsed used in source.Defaults)
            {
                json.WriteStartObject();
                json.WriteString("field", used.Pointer);
                json.WriteString("value", used.Value);
                json.WriteString("what", used.Doc);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartArray("leftOut");
            foreach (string left in source.Reports().SelectMany(r => r.LeftOut).Distinct())
            {
                json.WriteStringValue(left);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    private static void Weather(Utf8JsonWriter json, PaperSource source)
    {
        json.WriteStartArray("weather");
        foreach ((string words, bool synthetic) in source.Houses.Select(h => (h.Year.Weather, h.Year.Synthetic)).Distinct())
        {
            json.WriteStartObject();
            json.WriteString("year", words);
            json.WriteBoolean("synthetic", synthetic);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, Figure figure, UnitSystem units)
    {
        json.WriteStartObject();
        json.WriteString("id", figure.Id);
        json.WriteString("label", figure.Label);
        json.WriteNumber("value", figure.Value);
        json.WriteString("unit", figure.Unit.ToString());
        json.WriteString("shown", Text(figure.Value, figure.Unit, units));
        json.WriteStartObject("working");
        switch (figure.Working)
        {
            case Working.Derived derived:
                json.WriteString("kind", "derived");
                json.WriteString("formula", derived.Formula);
                Inputs(json, derived.Inputs, units);
                break;
            case Working.Observed observed:
                json.WriteString("kind", "observed");
                json.WriteString("method", observed.Method);
                json.WriteString("limits", observed.Limits);
                Inputs(json, observed.Inputs, units);
                break;
            default:
                json.WriteString("kind", "stated");
                break;
        }

        json.WriteEndObject();
        Write(json, "source", figure.Source);
        if (figure.Caution.Length > 0)
        {
            json.WriteString("caution", figure.Caution);
        }

        if (figure.Confidential)
        {
            json.WriteBoolean("confidential", true);
        }

        json.WriteEndObject();
    }

    private static void Inputs(Utf8JsonWriter json, EqList<WorkingInput> inputs, UnitSystem units)
    {
        json.WriteStartArray("inputs");
        foreach (WorkingInput input in inputs)
        {
            json.WriteStartObject();
            json.WriteString("symbol", input.Symbol);
            json.WriteString("label", input.Label);
            if (input.Reference.Length > 0)
            {
                json.WriteString("reference", input.Reference);
            }

            json.WriteNumber("value", input.Value);
            json.WriteString("unit", input.Unit.ToString());
            json.WriteString("shown", Text(input.Value, input.Unit, units));
            Write(json, "source", input.Source);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, Finding finding)
    {
        json.WriteStartObject();
        json.WriteString("code", finding.Code);
        json.WriteString("severity", finding.Severity.ToString().ToLowerInvariant());
        if (finding.Id.Length > 0)
        {
            json.WriteString("part", finding.Id);
        }

        json.WriteString("what", finding.What);
        if (finding.Mend.Length > 0)
        {
            json.WriteString("mend", finding.Mend);
        }

        Write(json, "source", finding.Source);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, Source source)
    {
        json.WriteStartObject(name);
        (string kind, (string Key, string Text)[] parts) = Parts(source);
        json.WriteString("kind", kind);
        foreach ((string key, string text) in parts)
        {
            json.WriteString(key, text);
        }

        json.WriteEndObject();
    }

    private static (string Kind, (string Key, string Text)[] Parts) Parts(Source source) => source switch
    {
        Source.Standard s => ("standard", [("name", s.Name), ("clause", s.Clause), ("seen", Seen(s.Seen))]),
        Source.Paper p => ("paper", [("work", p.Work), ("place", p.Place), ("seen", Seen(p.Seen))]),
        Source.FirstPrinciples f => ("first principles", [("of", f.Of)]),
        Source.CommonPractice c => ("common practice", [("rule", c.Rule)]),
        Source.Given g => ("given", [("field", g.Pointer)]),
        Source.Default d => ("default", [("field", d.Pointer), ("reason", d.Reason)]),
        Source.Catalogue c => ("catalogue", [("entry", c.Entry)]),
        _ => throw new InvalidOperationException("Sources are a closed set."),
    };

    private static string Seen(Source.Mark mark) => mark switch
    {
        Source.Mark.Read => "read",
        Source.Mark.ReadSecondHand => "read at second hand",
        _ => "from memory",
    };

    // Small rates and pure numbers keep their digits: a value that is not zero is never shown as zero.
    private static string Text(double value, Unit unit, UnitSystem units)
    {
        if (unit == Unit.None)
        {
            return value.ToString("G7", CultureInfo.InvariantCulture);
        }

        Shown shown = Shown.Of(value, unit, units);
        return value != 0 && !shown.Number.Any(c => c is >= '1' and <= '9')
            ? $"{shown.Value.ToString("G4", CultureInfo.InvariantCulture)} {shown.Unit}".TrimEnd()
            : shown.Text;
    }
}
