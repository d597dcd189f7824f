namespace Glazewright.Science.Tests;

/// <summary>
/// Bytes a loop allocates in its quietest round. A loop that allocates does so in every round; the runtime, recompiling a hot method, may leave a
/// few bytes in one of them, and that is no fault of ours.
/// </summary>
internal static class LeastAllocated
{
    public static long InRounds(int rounds, int stepsPerRound, Action step)
    {
        long least = long.MaxValue;
        for (int r = 0; r < rounds; r++)
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            for (int i = 0; i < stepsPerRound; i++)
            {
                step();
            }

            least = Math.Min(least, GC.GetAllocatedBytesForCurrentThread() - before);
        }

        return least;
    }
}
