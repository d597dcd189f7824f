namespace Glazewright.Design.Contracts;

/// <summary>Where a formula or a value comes from. A closed case.</summary>
public abstract record Source
{
    private Source()
    {
    }

    /// <summary>How well the place was seen.</summary>
    public enum Mark
    {
        /// <summary>Read in the work itself.</summary>
        Read,

        /// <summary>Read in another work that quotes it.</summary>
        ReadSecondHand,

        /// <summary>Recalled; re-read the print before relying on it.</summary>
        FromMemory,
    }

    /// <summary>A standard and its clause.</summary>
    /// <param name="Name">Standard with edition.</param>
    /// <param name="Clause">Clause, table or equation.</param>
    /// <param name="Seen">How it was seen.</param>
    public sealed record Standard(string Name, string Clause, Mark Seen) : Source;

    /// <summary>A handbook, book or paper.</summary>
    /// <param name="Work">Author, work, year.</param>
    /// <param name="Place">Equation, table or page.</param>
    /// <param name="Seen">How it was seen.</param>
    public sealed record Paper(string Work, string Place, Mark Seen) : Source;

    /// <summary>Geometry, conservation, arithmetic: true by itself.</summary>
    /// <param name="Of">What law or definition.</param>
    public sealed record FirstPrinciples(string Of) : Source;

    /// <summary>A rule of thumb of the trade.</summary>
    /// <param name="Rule">The rule in our words.</param>
    public sealed record CommonPractice(string Rule) : Source;

    /// <summary>Typed in the job.</summary>
    /// <param name="Pointer">JSON pointer of the field.</param>
    public sealed record Given(string Pointer) : Source;

    /// <summary>Our default, because the job does not say.</summary>
    /// <param name="Pointer">JSON pointer of the field that would override it.</param>
    /// <param name="Reason">Why this value.</param>
    public sealed record Default(string Pointer, string Reason) : Source;

    /// <summary>An entry of the catalogue or the price book.</summary>
    /// <param name="Entry">Its id.</param>
    public sealed record Catalogue(string Entry) : Source;
}
