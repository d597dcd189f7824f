using Glazewright.Papers.Answers;
using Glazewright.Papers.Sets;

namespace Glazewright.Cli.Running;

/// <summary>The answers in short, a line each.</summary>
internal static class Headlines
{
    public static IEnumerable<string> Of(PaperSource source)
    {
        IReadOnlyList<ShortAnswer> answers = AnswersReport.InShort(source);
        int widest = Math.Min(64, answers.Select(a => a.Question.Length).DefaultIfEmpty(0).Max());
        foreach (ShortAnswer answer in answers)
        {
            yield return $"{answer.Question.PadRight(widest)}  {answer.Brief}{(answer.Standing.Length > 0 ? $"  [{answer.Standing}]" : "")}";
        }
    }
}
