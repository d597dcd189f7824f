using Glazewright.Design.Contracts;
using Glazewright.Papers.Answers;

namespace Glazewright.Papers.Tests.Answers;

public class WorkingWordsTests
{
    [Theory]
    [InlineData(0, "0")]
    [InlineData(15, "15")]
    [InlineData(31.6992, "31.699")]
    [InlineData(-25531.088728, "-25531")]
    [InlineData(1234567.8, "1234568")]
    [InlineData(0.0012345678, "0.0012346")]
    [InlineData(0.0000001, "0.0000001")]
    public void A_number_that_went_in_is_told_to_five_digits_that_count(double value, string told)
    {
        Source source = new Source.FirstPrinciples("identity");
        Figure figure = Figure.Derive("a/b", "B", Unit.Fraction, Term.Of("x", "X", value, Unit.Fraction, source), source);
        Assert.Contains($"x = {told}.", WorkingWords.Of(figure), StringComparison.Ordinal);
    }
}
