using System.Globalization;

namespace Glazewright.Design.Contracts;

/// <summary>One input of a working: what it is called in the formula, where it comes from, its value.</summary>
/// <param name="Symbol">Its name in the formula: letters, digits, underscores.</param>
/// <param name="Label">What it is, in words.</param>
/// <param name="Reference">Id of another figure, JSON pointer of a job field, or empty.</param>
/// <param name="Value">SI value.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record WorkingInput(string Symbol, string Label, string Reference, double Value, Unit Unit, Source Source);

/// <summary>
/// A number that remembers how it was made: the operators compute the value and write the formula at once, so that what
/// is printed is what was computed. Formulas are plain infix text: + - * / ^, sqrt exp ln min max, symbols and numbers.
/// </summary>
public sealed class Term
{
    private const int Sum = 1;
    private const int Product = 2;
    private const int PowerOf = 3;
    private const int Atom = 4;

    private readonly int _binds;

    private Term(double value, string formula, int binds, EqList<WorkingInput> inputs)
    {
        Value = value;
        Formula = formula;
        _binds = binds;
        Inputs = inputs;
    }

    /// <summary>The value, SI.</summary>
    public double Value { get; }

    /// <summary>How it was made.</summary>
    public string Formula { get; }

    /// <summary>The inputs in order of first use.</summary>
    public EqList<WorkingInput> Inputs { get; }

    /// <summary>An input.</summary>
    /// <param name="input">Its name, value, unit and source.</param>
    /// <returns>A term that is the input's symbol.</returns>
    public static Term Of(WorkingInput input) => new(input.Value, input.Symbol, Atom, [input]);

    /// <summary>Another figure as an input.</summary>
    /// <param name="symbol">Its name in this formula.</param>
    /// <param name="figure">The figure.</param>
    /// <returns>A term that is that symbol.</returns>
    public static Term Of(string symbol, Figure figure) =>
        Of(new WorkingInput(symbol, figure.Label, figure.Id, figure.Value, figure.Unit, figure.Source));

    /// <summary>A value as an input.</summary>
    /// <param name="symbol">Its name in this formula.</param>
    /// <param name="label">What it is.</param>
    /// <param name="value">SI value.</param>
    /// <param name="unit">Unit.</param>
    /// <param name="source">Where it comes from; a given or default one also becomes the reference.</param>
    /// <returns>A term that is that symbol.</returns>
    public static Term Of(string symbol, string label, double value, Unit unit, Source source) =>
        Of(new WorkingInput(symbol, label, source is Source.Given g ? g.Pointer : source is Source.Default d ? d.Pointer : "", value, unit, source));

    /// <summary>A constant of the formula.</summary>
    /// <param name="value">The number.</param>
    /// <returns>A term that is the number.</returns>
    public static implicit operator Term(double value) =>
        new(value, value.ToString("R", CultureInfo.InvariantCulture), value < 0 ? Sum : Atom, EqList<WorkingInput>.Empty);

    /// <summary>Sum.</summary>
    public static Term operator +(Term a, Term b) => new(a.Value + b.Value, $"{a.At(Sum)} + {b.At(Product)}", Sum, Join(a, b));

    /// <summary>Difference.</summary>
    public static Term operator -(Term a, Term b) => new(a.Value - b.Value, $"{a.At(Sum)} - {b.At(Product)}", Sum, Join(a, b));

    /// <summary>Product.</summary>
    public static Term operator *(Term a, Term b) => new(a.Value * b.Value, $"{a.At(Product)} * {b.At(PowerOf)}", Product, Join(a, b));

    /// <summary>Quotient.</summary>
    public static Term operator /(Term a, Term b) => new(a.Value / b.Value, $"{a.At(Product)} / {b.At(PowerOf)}", Product, Join(a, b));

    /// <summary>Square root.</summary>
    /// <param name="a">Not negative.</param>
    /// <returns>The root.</returns>
    public static Term Sqrt(Term a) => new(Math.Sqrt(a.Value), $"sqrt({a.Formula})", Atom, a.Inputs);

    /// <summary>Natural exponential.</summary>
    /// <param name="a">Exponent.</param>
    /// <returns>e^a.</returns>
    public static Term Exp(Term a) => new(Math.Exp(a.Value), $"exp({a.Formula})", Atom, a.Inputs);

    /// <summary>Power.</summary>
    /// <param name="a">Base, not negative.</param>
    /// <param name="exponent">Exponent.</param>
    /// <returns>a to the exponent.</returns>
    public static Term Pow(Term a, double exponent) =>
        new(Math.Pow(a.Value, exponent), $"{a.At(Atom)} ^ {((Term)exponent).At(Atom)}", PowerOf, a.Inputs);

    /// <summary>The larger.</summary>
    /// <param name="a">One.</param>
    /// <param name="b">Other.</param>
    /// <returns>The larger of both.</returns>
    public static Term Max(Term a, Term b) => new(Math.Max(a.Value, b.Value), $"max({a.Formula}, {b.Formula})", Atom, Join(a, b));

    /// <summary>The smaller.</summary>
    /// <param name="a">One.</param>
    /// <param name="b">Other.</param>
    /// <returns>The smaller of both.</returns>
    public static Term Min(Term a, Term b) => new(Math.Min(a.Value, b.Value), $"min({a.Formula}, {b.Formula})", Atom, Join(a, b));

    /// <summary>Adds any number of terms.</summary>
    /// <param name="terms">The terms; none gives zero.</param>
    /// <returns>Their sum.</returns>
    public static Term Total(IEnumerable<Term> terms)
    {
        Term? sum = null;
        foreach (Term term in terms)
        {
            sum = sum is null ? term : sum + term;
        }

        return sum ?? 0;
    }

    private static EqList<WorkingInput> Join(Term a, Term b)
    {
        List<WorkingInput> all = [.. a.Inputs];
        foreach (WorkingInput input in b.Inputs)
        {
            WorkingInput? same = all.Find(i => i.Symbol == input.Symbol);
            if (same is null)
            {
                all.Add(input);
            }
            else if (same.Value != input.Value)
            {
                throw new InvalidOperationException($"Two inputs are called '{input.Symbol}' in one formula.");
            }
        }

        return all.ToEqList();
    }

    private string At(int binds) => _binds >= binds ? Formula : $"({Formula})";
}
