using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Glazewright.Design.Calibration;
using Glazewright.Design.Contracts;

namespace Glazewright.Papers.Calibration;

/// <summary>A calibration as JSON, SI; and its sizes read back, to score another log with the same house.</summary>
public static class CalibrationJson
{
    private const string VersionKey = "glazewrightCalibration";

    /// <summary>Writes.</summary>
    /// <param name="r">The calibration.</param>
    /// <returns>Indented JSON, LF.</returns>
    public static string Of(CalibrationResult r)
    {
        ArgumentNullException.ThrowIfNull(r);
        using MemoryStream stream = new();
        using (Utf8JsonWriter j = new(stream, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            j.WriteStartObject();
            j.WriteNumber(VersionKey, 1);
            j.WriteString("log", r.Name);
            j.WriteString("house", r.House);
            j.WriteString("from", r.FirstStamp);
            j.WriteString("to", r.LastStamp);
            j.WriteNumber("stepMinutes", r.StepMinutes);
            j.WriteNumber("steps", r.Steps);
            Ints(j, "trainedWeeks", r.TrainedWeeks);
            Ints(j, "scoredWeeks", r.ScoredWeeks);
            j.WriteNumber("rounds", r.Rounds);
            j.WriteBoolean("settled", r.Settled);
            j.WriteStartArray("sizes");
            foreach (FittedValue v in r.Sizes)
            {
                j.WriteStartObject();
                j.WriteString("size", v.Range.Word);
                j.WriteString("what", v.Range.What);
                j.WriteString("unit", v.Range.UnitText);
                Value(j, "value", v.Value, 6);
                Value(j, "plusMinus", v.PlusMinusValue, 6);
                j.WriteNumber("least", v.Range.LeastValue);
                j.WriteNumber("most", v.Range.MostValue);
                j.WriteNumber("began", v.Range.StartValue);
                j.WriteString("standing", v.Standing switch { SizeStanding.Told => "told", SizeStanding.AtBound => "at-bound", SizeStanding.NotTold => "not-told", _ => "given" });
                j.WriteString("twin", v.TwinWord);
                j.WriteEndObject();
            }

            j.WriteEndArray();
            Score(j, "before", r.Start);
            Score(j, "trained", r.Trained);
            Scores(j, "scores", r.Scores);
            Scores(j, "weeks", r.Weeks);
            j.WriteStartArray("marks");
            foreach (CalibrationMark m in r.Marks)
            {
                j.WriteStartObject();
                j.WriteString("id", m.Id);
                j.WriteString("name", m.Name);
                j.WriteString("found", m.Found);
                j.WriteString("asked", m.Asked);
                j.WriteString("state", CalibrationText.MarkWord(m.State));
                j.WriteEndObject();
            }

            j.WriteEndArray();
            j.WriteStartArray("byHour");
            foreach (HourError e in r.ByHour)
            {
                j.WriteStartObject();
                j.WriteNumber("hour", e.Hour);
                j.WriteNumber("steps", e.Count);
                Value(j, "airBiasK", e.AirBiasK, 3);
                Value(j, "airRmsK", e.AirRmsK, 3);
                Value(j, "humidityBiasPercent", e.HumidityBiasPercent, 2);
                j.WriteEndObject();
            }

            j.WriteEndArray();
            j.WriteStartArray("findings");
            foreach (Finding f in r.Report.Findings)
            {
                j.WriteStartObject();
                j.WriteString("code", f.Code);
                j.WriteString("severity", f.Severity.ToString());
                j.WriteString("what", f.What);
                j.WriteString("mend", f.Mend);
                j.WriteEndObject();
            }

            j.WriteEndArray();
            j.WritePropertyName("jobHouse");
            j.WriteRawValue(r.JobFragment.Length > 0 ? r.JobFragment : "null");
            j.WriteStartArray("leftOut");
            foreach (string left in r.Report.LeftOut)
            {
                j.WriteStringValue(left);
            }

            j.WriteEndArray();
            j.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    /// <summary>Reads the sizes of an earlier calibration.</summary>
    /// <param name="text">Its JSON.</param>
    /// <param name="sizes">The sizes, when there are no faults.</param>
    /// <returns>Every fault.</returns>
    public static EqList<Fault> Sizes(string text, out EqList<GivenSize> sizes)
    {
        ArgumentNullException.ThrowIfNull(text);
        sizes = [];
        List<Fault> faults = [];
        List<GivenSize> read = [];
        try
        {
            using JsonDocument tree = JsonDocument.Parse(text);
            if (tree.RootElement.ValueKind != JsonValueKind.Object || !tree.RootElement.TryGetProperty(VersionKey, out _)
                || !tree.RootElement.TryGetProperty("sizes", out JsonElement list) || list.ValueKind != JsonValueKind.Array)
            {
                return [new Fault(FaultKind.WrongType, "/sizes", "", 0, 0, "this is no calibration", "a calibration.json of an earlier run")];
            }

            int i = 0;
            foreach (JsonElement item in list.EnumerateArray())
            {
                string at = "/sizes/" + (i++).ToString(System.Globalization.CultureInfo.InvariantCulture);
                string word = item.ValueKind == JsonValueKind.Object && item.TryGetProperty("size", out JsonElement w) && w.ValueKind == JsonValueKind.String ? w.GetString()! : "";
                SizeRange? range = SizeRange.All.FirstOrDefault(s => s.Word == word);
                if (range is null)
                {
                    faults.Add(new Fault(FaultKind.UnknownChoice, at + "/size", "", 0, 0, $"'{word}' is no size", string.Join(", ", SizeRange.All.Select(s => s.Word))));
                }
                else if (!item.TryGetProperty("value", out JsonElement v) || v.ValueKind != JsonValueKind.Number || v.GetDouble() < range.LeastValue || v.GetDouble() > range.MostValue)
                {
                    faults.Add(new Fault(FaultKind.OutOfRange, at + "/value", "", 0, 0, $"no value for {word}", string.Create(System.Globalization.CultureInfo.InvariantCulture, $"a number from {range.LeastValue} to {range.MostValue}")));
                }
                else
                {
                    read.Add(new GivenSize(range.Size, v.GetDouble()));
                }
            }
        }
        catch (JsonException e)
        {
            return [new Fault(FaultKind.NotJson, "", "", (int)(e.LineNumber ?? 0) + 1, (int)(e.BytePositionInLine ?? 0) + 1, "this is not a JSON document", "a calibration.json of an earlier run")];
        }

        if (faults.Count == 0 && read.Count == 0)
        {
            faults.Add(new Fault(FaultKind.Missing, "/sizes", "", 0, 0, "no size is given", "a calibration.json of an earlier run"));
        }

        sizes = read.ToEqList();
        return faults.ToEqList();
    }

    private static void Scores(Utf8JsonWriter j, string key, EqList<ScoreLine> lines)
    {
        j.WriteStartArray(key);
        foreach (ScoreLine s in lines)
        {
            Score(j, "", s);
        }

        j.WriteEndArray();
    }

    private static void Score(Utf8JsonWriter j, string key, ScoreLine s)
    {
        if (key.Length > 0)
        {
            j.WriteStartObject(key);
        }
        else
        {
            j.WriteStartObject();
        }

        j.WriteString("id", s.Id);
        j.WriteString("name", s.Name);
        j.WriteNumber("steps", s.Count);
        Value(j, "airRmsK", s.AirRmsK, 3);
        Value(j, "airBiasK", s.AirBiasK, 3);
        Value(j, "skill", s.SkillRatio, 3);
        Value(j, "humidityRmsPercent", s.HumidityRmsPercent, 2);
        Value(j, "humidityBiasPercent", s.HumidityBiasPercent, 2);
        Value(j, "vapourRmsGramPerM3", 1000 * s.VapourRmsKgPerM3, 3);
        Value(j, "vapourBiasGramPerM3", 1000 * s.VapourBiasKgPerM3, 3);
        j.WriteEndObject();
    }

    private static void Ints(Utf8JsonWriter j, string key, EqList<int> values)
    {
        j.WriteStartArray(key);
        foreach (int v in values)
        {
            j.WriteNumberValue(v);
        }

        j.WriteEndArray();
    }

    private static void Value(Utf8JsonWriter j, string key, double value, int decimals)
    {
        if (double.IsFinite(value))
        {
            j.WriteNumber(key, Math.Round(value, decimals));
        }
        else
        {
            j.WriteNull(key);
        }
    }
}
