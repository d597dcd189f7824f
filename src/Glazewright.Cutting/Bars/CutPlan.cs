namespace Glazewright.Cutting.Bars;

/// <summary>One piece on a stick.</summary>
/// <param name="Mark">Shop mark.</param>
/// <param name="LengthTicks">Cut length over the long points, ticks.</param>
public readonly record struct CutPiece(string Mark, int LengthTicks);

/// <summary>How one stick is cut.</summary>
/// <param name="Stock">The stick.</param>
/// <param name="Pieces">Pieces in the order they leave the saw, longest first.</param>
/// <param name="KerfTicks">All the saw's passes together, ticks.</param>
/// <param name="DropTicks">What is left, ticks.</param>
/// <param name="DropIsUsable">True when the drop goes back to the rack.</param>
public sealed record CutPattern(
    StockLength Stock, IReadOnlyList<CutPiece> Pieces, int KerfTicks, int DropTicks, bool DropIsUsable);

/// <summary>Sticks cut alike, marks included.</summary>
/// <param name="SetUp">Number of the saw set-up, from 1: runs that differ only in marks, or in pieces left out, share one.</param>
/// <param name="Sticks">How many.</param>
/// <param name="Pattern">How each is cut.</param>
public sealed record CutRun(int SetUp, int Sticks, CutPattern Pattern);

/// <summary>How a bound was proved.</summary>
public enum BoundMethod
{
    /// <summary>Total length of the pieces with their kerfs, at the cheapest stock price per length.</summary>
    LengthOnly,

    /// <summary>Linear relaxation over every cutting pattern (column generation), its dual checked in whole numbers.</summary>
    LinearProgram,

    /// <summary>Integer program over every pattern a cheaper plan could hold, solved to its end: the plan's sticks are the best there are.</summary>
    IntegerProgram,
}

/// <summary>No plan whatever can cost less than this.</summary>
/// <param name="SticksCents">Bound on metal and handling, hundredths of the currency.</param>
/// <param name="SetUpsCents">Bound on set-ups: the fewest patterns that could show every length, at the set-up price.</param>
/// <param name="Method">How the first part was proved; the second is always counted.</param>
public sealed record CutBound(long SticksCents, long SetUpsCents, BoundMethod Method)
{
    /// <summary>Bound on the whole cost, hundredths of the currency.</summary>
    public long TotalCents => SticksCents + SetUpsCents;
}

/// <summary>A complete cut list with its proof.</summary>
/// <param name="Runs">Runs in saw order: by stock, then the longest runs first.</param>
/// <param name="StockCents">Price of the sticks.</param>
/// <param name="HandlingCents">Handling of the sticks.</param>
/// <param name="SetUps">Number of saw set-ups.</param>
/// <param name="SetUpsCents">Their cost.</param>
/// <param name="Bound">What no plan can beat.</param>
/// <param name="Solver">True when the integer program's solver was needed; false when first fit and rounding already met the bound.</param>
public sealed record CutPlan(
    IReadOnlyList<CutRun> Runs, long StockCents, long HandlingCents, int SetUps, long SetUpsCents, CutBound Bound, bool Solver)
{
    /// <summary>Metal, handling and set-ups, hundredths of the currency.</summary>
    public long TotalCents => StockCents + HandlingCents + SetUpsCents;

    /// <summary>True when the plan meets its bound: it is then proved that nothing cheaper exists.</summary>
    public bool IsProvedBest => TotalCents <= Bound.TotalCents;

    /// <summary>How far the plan may be from the best one: (cost − bound) / bound, 0 when proved.</summary>
    public double GapFraction => Bound.TotalCents == 0 ? 0 : (TotalCents - Bound.TotalCents) / (double)Bound.TotalCents;

    /// <summary>Sticks bought.</summary>
    public int Sticks => Runs.Sum(run => run.Sticks);

    /// <summary>Length bought, ticks.</summary>
    public long StockTicks => Runs.Sum(run => (long)run.Sticks * run.Pattern.Stock.LengthTicks);

    /// <summary>Length of all pieces, ticks.</summary>
    public long PieceTicks => Runs.Sum(run => run.Sticks * run.Pattern.Pieces.Sum(piece => (long)piece.LengthTicks));

    /// <summary>Length of drops that go back to the rack, ticks.</summary>
    public long UsableDropTicks => Runs.Where(run => run.Pattern.DropIsUsable).Sum(run => (long)run.Sticks * run.Pattern.DropTicks);
}

/// <summary>A piece that no stick can give.</summary>
/// <param name="Demand">The piece.</param>
/// <param name="LongestTicks">The longest piece the saw could give from the longest stick, ticks; 0 when the trim eats every stick.</param>
public sealed record TooLong(CutDemand Demand, int LongestTicks);

/// <summary>The answer to a cutting problem: always a plan, with what it could not hold.</summary>
public abstract record CutAnswer
{
    private CutAnswer(CutPlan plan) => Plan = plan;

    /// <summary>The cut list, of everything that can be cut.</summary>
    public CutPlan Plan { get; }

    /// <summary>Every piece is in the plan.</summary>
    public sealed record Planned : CutAnswer
    {
        internal Planned(CutPlan plan)
            : base(plan)
        {
        }
    }

    /// <summary>Some pieces are longer than any stick gives; the plan holds the rest.</summary>
    public sealed record Missed : CutAnswer
    {
        internal Missed(CutPlan plan, IReadOnlyList<TooLong> tooLong)
            : base(plan) => TooLong = tooLong;

        /// <summary>The pieces left out.</summary>
        public IReadOnlyList<TooLong> TooLong { get; }
    }
}
