namespace Glazewright.Design.Contracts;

/// <summary>How a figure came to be. A closed case.</summary>
public abstract record Working
{
    private Working()
    {
    }

    /// <summary>By a formula: computing it again from the printed inputs gives the value to 1e-9.</summary>
    /// <param name="Formula">Infix text over the inputs' symbols.</param>
    /// <param name="Inputs">The inputs.</param>
    public sealed record Derived(string Formula, EqList<WorkingInput> Inputs) : Working;

    /// <summary>From a loop or a solver.</summary>
    /// <param name="Method">What was done.</param>
    /// <param name="Inputs">What went in.</param>
    /// <param name="Limits">Where it holds and what it leaves out.</param>
    public sealed record Observed(string Method, EqList<WorkingInput> Inputs, string Limits) : Working;

    /// <summary>Typed in the job, or a default of ours: the source says which.</summary>
    public sealed record Stated : Working;
}

/// <summary>A number that shows its working.</summary>
/// <param name="Id">Path id: house, stage, name (<c>A/duty/heat-loss</c>); a job-wide one starts with the stage.</param>
/// <param name="Label">What it is, in plain words, no unit.</param>
/// <param name="Value">SI value.</param>
/// <param name="Unit">Unit.</param>
/// <param name="Working">How it came to be.</param>
/// <param name="Source">Standard, paper, practice, given or default.</param>
/// <param name="Caution">What the reader must know beside the number (preliminary, typical year), or empty.</param>
/// <param name="Confidential">True for cost, margin, supplier and labour rate: contractor's eyes only.</param>
public sealed record Figure(
    string Id, string Label, double Value, Unit Unit, Working Working, Source Source, string Caution = "", bool Confidential = false)
{
    /// <summary>SI value; NaN and infinity never become a figure.</summary>
    public double Value { get; } = double.IsFinite(Value)
        ? Value
        : throw new ArgumentOutOfRangeException(nameof(Value), Value, $"Figure {Id} is not a number.");

    /// <summary>A figure by formula.</summary>
    /// <param name="id">Path id.</param>
    /// <param name="label">What it is.</param>
    /// <param name="unit">Unit.</param>
    /// <param name="term">Value and formula.</param>
    /// <param name="source">Where the formula comes from.</param>
    /// <param name="caution">What must stand beside it.</param>
    /// <param name="confidential">Contractor's eyes only.</param>
    /// <returns>The figure.</returns>
    public static Figure Derive(
        string id, string label, Unit unit, Term term, Source source, string caution = "", bool confidential = false) =>
        new(id, label, term.Value, unit, new Working.Derived(term.Formula, term.Inputs), source, caution, confidential);

    /// <summary>A figure from a loop or solver.</summary>
    /// <param name="id">Path id.</param>
    /// <param name="label">What it is.</param>
    /// <param name="unit">Unit.</param>
    /// <param name="value">SI value.</param>
    /// <param name="method">What was done.</param>
    /// <param name="inputs">What went in.</param>
    /// <param name="limits">Where it holds.</param>
    /// <param name="source">Where the method comes from.</param>
    /// <param name="caution">What must stand beside it.</param>
    /// <param name="confidential">Contractor's eyes only.</param>
    /// <returns>The figure.</returns>
    public static Figure Observe(
        string id,
        string label,
        Unit unit,
        double value,
        string method,
        EqList<WorkingInput> inputs,
        string limits,
        Source source,
        string caution = "",
        bool confidential = false) =>
        new(id, label, value, unit, new Working.Observed(method, inputs, limits), source, caution, confidential);

    /// <summary>A figure that was typed or is a default.</summary>
    /// <param name="id">Path id.</param>
    /// <param name="label">What it is.</param>
    /// <param name="unit">Unit.</param>
    /// <param name="value">SI value.</param>
    /// <param name="source">Given or default.</param>
    /// <param name="caution">What must stand beside it.</param>
    /// <param name="confidential">Contractor's eyes only.</param>
    /// <returns>The figure.</returns>
    public static Figure State(
        string id, string label, Unit unit, double value, Source source, string caution = "", bool confidential = false) =>
        new(id, label, value, unit, new Working.Stated(), source, caution, confidential);
}
