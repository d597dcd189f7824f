using System.Globalization;
using System.Text;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Year;
using Glazewright.Papers.Days;

namespace Glazewright.Cli.Running;

/// <summary>A comparison on the terminal and as JSON.</summary>
internal static class ComparisonText
{
    public static string Of(IReadOnlyList<ComparedHouse> all, ComparedNames names, UnitSystem units)
    {
        StringBuilder text = new();
        foreach (ComparedHouse h in all)
        {
            int widest = h.Rows.Max(r => r.Label.Length);
            text.Append(CultureInfo.InvariantCulture, $"House {h.House}{new string(' ', Math.Max(1, widest - h.House.Length - 4))}{names.Before,16}{names.After,16}{"change",16}\n");
            foreach (ComparedValue row in h.Rows)
            {
                ComparedWords w = ComparedWords.Of(row, units);
                text.Append(CultureInfo.InvariantCulture, $"  {row.Label.PadRight(widest)}{w.Before,16}{w.After,16}{w.Change,16}{(w.Verdict.Length > 0 ? "  " + w.Verdict : "")}\n");
            }

            foreach (string note in h.Notes)
            {
                text.Append("  ").Append(note).Append('\n');
            }

            text.Append('\n');
        }

        return text.Append("The same typical year twice: what weather leaves out, both leave out.\n").ToString();
    }

    public static string Json(IReadOnlyList<ComparedHouse> all, ComparedNames names)
    {
        StringBuilder text = new("{\n  \"houses\": [\n");
        text.AppendJoin(",\n", all.Select(h => $"    {{ \"house\": {JsonText.Quote(h.House)}, \"values\": [\n" + string.Join(",\n", h.Rows.Select(r => string.Create(
            CultureInfo.InvariantCulture,
            $"      {{ \"id\": {JsonText.Quote(r.Id)}, \"label\": {JsonText.Quote(r.Label)}, \"unit\": {JsonText.Quote(Shown.Of(r.BeforeValue, r.Unit, UnitSystem.Metric).Unit)}, \"{names.BeforeKey}\": {Number(r, r.BeforeValue, 1)}, \"{names.AfterKey}\": {Number(r, r.AfterValue, 2)} }}")))
            + $"\n    ], \"notes\": [{string.Join(", ", h.Notes.Select(JsonText.Quote))}] }}"));
        return text.Append("\n  ]\n}\n").ToString();
    }

    private static string Number(ComparedValue row, double value, int side) =>
        row.OnlyIn > 0 && row.OnlyIn != side ? "null" : Shown.Of(value, row.Unit, UnitSystem.Metric).Value.ToString("0.####", CultureInfo.InvariantCulture);
}
