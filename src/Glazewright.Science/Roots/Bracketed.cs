namespace Glazewright.Science.Roots;

/// <summary>A root that was looked for inside a bracket.</summary>
/// <param name="Argument">The best argument found, in the caller's unit.</param>
/// <param name="ResidualValue">The function's value there, in the function's unit.</param>
/// <param name="Converged">Whether the bracket held a sign change and shrank to the tolerance.</param>
public readonly record struct RootResult(double Argument, double ResidualValue, bool Converged);

/// <summary>One-dimensional roots inside a bracket. The bracket is kept at each step, so the search cannot run away.</summary>
public static class Bracketed
{
    private const int StepLimit = 200;

    /// <summary>Finds where a continuous function changes sign between two ends.</summary>
    /// <param name="function">The function, finite over the bracket.</param>
    /// <param name="lower">One end, in the argument's unit.</param>
    /// <param name="upper">The other end, in the argument's unit.</param>
    /// <param name="tolerance">Width of the bracket at which to stop, in the argument's unit, above 0.</param>
    /// <returns>The root and whether it converged; without a sign change, the end with the smaller residual and false.</returns>
    /// <remarks>Ridders' method (1979, IEEE Trans. Circuits Syst. 26:979) guarded by bisection; from memory.</remarks>
    public static RootResult Find(Func<double, double> function, double lower, double upper, double tolerance)
    {
        double lowerValue = function(lower);
        double upperValue = function(upper);
        if (lowerValue == 0)
        {
            return new RootResult(lower, 0, true);
        }

        if (upperValue == 0)
        {
            return new RootResult(upper, 0, true);
        }

        if (!(lowerValue * upperValue < 0))
        {
            return Math.Abs(lowerValue) <= Math.Abs(upperValue)
                ? new RootResult(lower, lowerValue, false)
                : new RootResult(upper, upperValue, false);
        }

        for (int step = 0; step < StepLimit; step++)
        {
            double middle = 0.5 * (lower + upper);
            double middleValue = function(middle);
            if (middleValue == 0 || Math.Abs(upper - lower) <= tolerance)
            {
                return new RootResult(middle, middleValue, true);
            }

            double spread = Math.Sqrt(middleValue * middleValue - lowerValue * upperValue);
            double next = middle + (middle - lower) * Math.Sign(lowerValue - upperValue) * middleValue / spread;
            double nextValue = function(next);
            if (nextValue == 0)
            {
                return new RootResult(next, 0, true);
            }

            // Keep the tightest pair that still straddles the root.
            if (middleValue * nextValue < 0)
            {
                (lower, lowerValue, upper, upperValue) = (middle, middleValue, next, nextValue);
            }
            else if (lowerValue * nextValue < 0)
            {
                (upper, upperValue) = (next, nextValue);
            }
            else
            {
                (lower, lowerValue) = (next, nextValue);
            }
        }

        double last = 0.5 * (lower + upper);
        return new RootResult(last, function(last), false);
    }
}
