using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Quantities;

namespace Glazewright.Design.Document;

/// <content>Dates, times of day, stretches of the year.</content>
public sealed partial class FieldReader
{
    /// <summary>Reads a date.</summary>
    /// <param name="key">Key.</param>
    /// <param name="blank">What a blank date means.</param>
    /// <param name="doc">What it is for.</param>
    /// <returns>The date as typed (2027-05-18), or empty.</returns>
    public string DateText(string key, string blank, string doc)
    {
        if (IsDescribing)
        {
            Describe(key, doc, new FieldShape.Prose(10, "^$|^[0-9]{4}-[0-9]{2}-[0-9]{2}$", "2027-05-18"), "", blank);
            return "";
        }

        Node? node = Take(key);
        if (node is null or TextNode { Text: "" })
        {
            _session.Defaults.Add(new DefaultUsed(At(key), blank, doc));
            return "";
        }

        string text = node is TextNode t ? t.Text : "";
        if (!DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _))
        {
            string wrong = node is TextNode ? $"'{(text.Length > 30 ? text[..30] + "…" : text)}' is not a date" : $"{node.Called} stands where a date belongs";
            Report(node is TextNode ? FaultKind.Unit : FaultKind.WrongType, At(key), node.Place, wrong, "year-month-day, as in 2027-05-18");
        }

        return text;
    }

    /// <summary>Reads a time of day.</summary>
    /// <param name="key">Key.</param>
    /// <param name="default">What holds when it is left out.</param>
    /// <param name="doc">What it is for.</param>
    /// <returns>The time.</returns>
    public TimeOfDay Time(string key, string @default, string doc)
    {
        (string text, Node? node) = Spelled(key, @default, doc, "06:30");
        if (TimeOfDay.TryRead(text, out TimeOfDay? time, out Misreading? misreading))
        {
            return time;
        }

        if (text.Length == 0 && node is not TextNode)
        {
            return new TimeOfDay.Clock(0);
        }

        Report(FaultKind.Unit, At(key), node?.Place ?? _place, misreading.Wrong, misreading.Right);
        return new TimeOfDay.Clock(0);
    }

    /// <summary>Reads a stretch of the year.</summary>
    /// <param name="key">Key.</param>
    /// <param name="default">What holds when it is left out; null when it must be given.</param>
    /// <param name="doc">What it is for.</param>
    /// <returns>The stretch.</returns>
    public YearSpan Span(string key, string? @default, string doc)
    {
        (string text, Node? node) = Spelled(key, @default, doc, "wk 2-17");
        if (YearSpan.TryRead(text, out YearSpan span, out Misreading? misreading))
        {
            return span;
        }

        if (text.Length == 0 && node is not TextNode)
        {
            return new YearSpan(1, 365);
        }

        Report(FaultKind.Unit, At(key), node?.Place ?? _place, misreading.Wrong, misreading.Right);
        return new YearSpan(1, 365);
    }

    /// <summary>Reads a stretch of whole weeks. Dates and months are taken to the nearest weeks, and what was taken is told with the defaults.</summary>
    /// <param name="key">Key.</param>
    /// <param name="default">What holds when it is left out; null when it must be given.</param>
    /// <param name="doc">What it is for.</param>
    /// <returns>First and last week, 1 to 52; the last is smaller when they run over new year.</returns>
    public (int First, int Last) Weeks(string key, string? @default, string doc)
    {
        YearSpan typed = Span(key, @default, doc);
        if (!typed.TryWholeWeeks(out YearSpan weeks))
        {
            Report(FaultKind.Unit, At(key), _node.Find(key)?.Place ?? _place, "a period runs over whole weeks", typed.WeeksAround);
            weeks = new YearSpan(1, 365);
        }
        else if (weeks != typed)
        {
            _session.Defaults.Add(new DefaultUsed(At(key), weeks.WeeksText, $"Whole weeks nearest to {typed}."));
        }

        return (weeks.FirstWeek, weeks.LastWeek);
    }

    // A text field whose form is checked by the caller; empty text after a fault that was already reported.
    private (string Text, Node? Node) Spelled(string key, string? @default, string doc, string example)
    {
        string text = Words(key, @default, doc, example, longest: 60);
        return (text, _node.Find(key));
    }
}
