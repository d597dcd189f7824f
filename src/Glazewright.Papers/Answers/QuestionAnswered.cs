using Glazewright.Papers.Reports;

namespace Glazewright.Papers.Answers;

/// <summary>A question a grower asks in the first hour, answered: short, then with numbers, picture and caution.</summary>
/// <param name="Question">The question.</param>
/// <param name="Brief">The answer in a few words, for the table on the first page.</param>
/// <param name="Short">The answer in a sentence or two.</param>
/// <param name="Standing">How the wish fared.</param>
/// <param name="Blocks">Numbers, pictures, cautions.</param>
internal sealed record QuestionAnswered(string Question, string Brief, string Short, Standing Standing, IReadOnlyList<Block> Blocks);
