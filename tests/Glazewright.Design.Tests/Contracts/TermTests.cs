using Glazewright.Design.Contracts;

namespace Glazewright.Design.Tests.Contracts;

public class TermTests
{
    private static readonly Source Practice = new Source.CommonPractice("test");

    [Fact]
    public void The_formula_carries_the_brackets_the_value_needs()
    {
        Term a = In("a", 7);
        Term b = In("b", 2);
        Term c = In("c", 3);
        Assert.Equal("(a + b) * c", ((a + b) * c).Formula);
        Assert.Equal("a - (b - c)", (a - (b - c)).Formula);
        Assert.Equal("a / (b * c)", (a / (b * c)).Formula);
        Assert.Equal("(a / b) ^ 0.5", Term.Pow(a / b, 0.5).Formula);
        Assert.Equal("max(a, b) * sqrt(c)", (Term.Max(a, b) * Term.Sqrt(c)).Formula);
    }

    [Fact]
    public void The_printed_formula_and_inputs_give_the_value_again()
    {
        Term a = In("a", 7.25);
        Term b = In("b", -2.5);
        Term c = In("c", 0.3);
        Term[] terms =
        [
            (a - b) * c / (a + 2) - (b - (c - a)), Term.Pow(a * c, 1.7) / (a / (b * c)), Term.Min(a, Term.Exp(c)) - Term.Sqrt(a - b) * -3,
        ];
        foreach (Term term in terms)
        {
            Assert.Equal(term.Value, FormulaReader.Evaluate(term.Formula, term.Inputs), 1e-9 * Math.Abs(term.Value));
        }
    }

    [Fact]
    public void One_symbol_never_stands_for_two_values() =>
        Assert.Throws<InvalidOperationException>(() => In("a", 1) + In("a", 2));

    [Fact]
    public void Not_a_number_never_becomes_a_figure() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Figure.Derive("x", "x", Unit.None, In("a", 0) / In("b", 0), Practice));

    private static Term In(string symbol, double value) => Term.Of(symbol, symbol, value, Unit.None, Practice);
}
