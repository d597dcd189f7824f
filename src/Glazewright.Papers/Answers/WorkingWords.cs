using System.Globalization;
using Glazewright.Design.Contracts;

namespace Glazewright.Papers.Answers;

/// <summary>A figure's working in one paragraph.</summary>
public static class WorkingWords
{
    private const int LongMethod = 60;

    /// <summary>The whole working.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="methodMark">Where its method is told, or empty to tell it here.</param>
    /// <param name="cautionMark">Where its caution is told, or empty to tell it here.</param>
    public static string Of(Figure figure, string methodMark = "", string cautionMark = "")
    {
        string caution = cautionMark.Length > 0 ? " " + cautionMark : figure.Caution.Length > 0 ? " Caution: " + figure.Caution : "";
        string working = figure.Working switch
        {
            _ when methodMark.Length > 0 && figure.Working is Working.Observed told => methodMark + Inputs(told.Inputs),
            Working.Derived derived => $"{derived.Formula}{Inputs(derived.Inputs)} [{SourceText(figure.Source)}]",
            Working.Observed observed => observed.Method + Inputs(observed.Inputs) + Limits(observed) + $" [{SourceText(figure.Source)}]",
            _ => $"stated [{SourceText(figure.Source)}]",
        };
        return working + caution;
    }

    /// <summary>Method, limits and source of a figure from a loop or a solver, when they are worth telling apart from its numbers; else empty.</summary>
    /// <param name="figure">The figure.</param>
    public static string Method(Figure figure) =>
        figure.Working is Working.Observed observed && observed.Method.Length + observed.Limits.Length > LongMethod ? $"{observed.Method}.{Limits(observed)} [{SourceText(figure.Source)}]" : "";

    private static string Limits(Working.Observed observed) => observed.Limits.Length > 0 ? " Limits: " + observed.Limits + "." : "";

    /// <summary>A source in words.</summary>
    /// <param name="source">The source.</param>
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
        : "; " + string.Join(", ", inputs.Select(i => $"{i.Symbol} = {Digits(i.Value)}")) + ".";

    /// <summary>Five digits that count, and never fewer than stand before the point: enough to work the figure out again to all the digits it is told with.</summary>
    private static string Digits(double value)
    {
        int decimals = value == 0 ? 0 : Math.Clamp(4 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 12);
        return Math.Round(value, decimals).ToString("0.############", CultureInfo.InvariantCulture);
    }

    private static string Seen(Source.Mark mark) => mark switch
    {
        Source.Mark.Read => "",
        Source.Mark.ReadSecondHand => " (read at second hand)",
        _ => " (from memory)",
    };
}
