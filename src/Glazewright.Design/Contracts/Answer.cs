namespace Glazewright.Design.Contracts;

/// <summary>A choice made against a wish: it always carries the choice; a missed one also says what limits it.</summary>
/// <typeparam name="T">What was chosen.</typeparam>
public abstract record Answer<T>
{
    private Answer(T choice, double margin)
    {
        Choice = choice;
        Margin = margin;
    }

    /// <summary>The choice later stages use, met or not.</summary>
    public T Choice { get; }

    /// <summary>Provided over required, less one: 0.1 is ten percent to spare, negative falls short.</summary>
    public double Margin { get; }

    /// <summary>The wish is met.</summary>
    public sealed record Met : Answer<T>
    {
        /// <summary>A met wish.</summary>
        /// <param name="choice">The choice.</param>
        /// <param name="margin">To spare, not negative.</param>
        public Met(T choice, double margin)
            : base(choice, margin)
        {
        }
    }

    /// <summary>The best that can be had falls short.</summary>
    public sealed record Missed : Answer<T>
    {
        /// <summary>A missed wish.</summary>
        /// <param name="choice">The best choice.</param>
        /// <param name="margin">How far short, negative.</param>
        /// <param name="limit">What limits it and what would help.</param>
        public Missed(T choice, double margin, string limit)
            : base(choice, margin) => Limit = limit;

        /// <summary>What limits it and what would help.</summary>
        public string Limit { get; }
    }
}
