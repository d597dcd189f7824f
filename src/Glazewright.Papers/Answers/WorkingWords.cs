using System.Globalization;
using Glazewright.Design.Contracts;

namespace Glazewright.Papers.Answers;

/// <summary>A figure's working in one paragraph.</summary>
internal static class WorkingWords
{
    public static string Of(Figure figure)
    {
        string working = figure.Working switch
        {
            Working.Derived derived => derived.Formula + Inputs(derived.Inputs),
            Working.Observed observed => observed.Method + Inputs(observed.Inputs) + (observed.Limits.Length > 0 ? " Limits: " + observed.Limits + "." : ""),
            _ => "stated",
        };
        string caution = figure.Caution.Length > 0 ? " Caution: " + figure.Caution : "";
        return $"{working} [{SourceText(figure.Source)}]{caution}";
    }

    public static string SourceText(Source source) => source switch
    {
        Source.Standard s => $"{s.Name}, {s.Clause}{Seen(s.Seen)}",
        Source.Paper p => $"{p.Work}, {p.Place}{Seen(p.Seen)}",
        Source.FirstPrinciples f => f.Of,
        Source.CommonPractice c => "common practice: " + c.Rule,
        Source.Given g => "given at " + g.Pointer,
        Source.Default d => $"default: {d.Reason}; set at {d.Pointer}",
        Source.Catalogue c => "catalogue entry " + c.Entry,
        _ => throw new InvalidOperationException("Sources are a closed set."),
    };

    private static string Inputs(EqList<WorkingInput> inputs) => inputs.Count == 0
        ? ""
        : "; " + string.Join(", ", inputs.Select(i => string.Create(CultureInfo.InvariantCulture, $"{i.Symbol} = {i.Value:0.######}"))) + ".";

    private static string Seen(Source.Mark mark) => mark switch
    {
        Source.Mark.Read => "",
        Source.Mark.ReadSecondHand => " (read at second hand)",
        _ => " (from memory)",
    };
}
