using System.Globalization;
using System.Runtime.InteropServices;
using Glazewright.Cutting.Bars;

namespace Glazewright.Cutting.Tests.Bars;

/// <summary>
/// The solvers used to hook Ctrl-C for themselves: they stopped early with a worse list that went on as if it were the answer, and
/// left the signal at its default, so that the next Ctrl-C killed the program with its package half made.
/// </summary>
public class InterruptStaysOurs
{
    [Fact]
    public void Solving_leaves_the_interrupt_handled_by_the_program()
    {
        Assert.SkipUnless(File.Exists("/proc/self/status"), "Signal masks are read from /proc: Linux only.");
        Assert.SkipWhen(Interrupt("SigIgn:"), "Who started these tests has interrupts ignored: nobody here can handle them.");
        using PosixSignalRegistration ours = PosixSignalRegistration.Create(PosixSignal.SIGINT, context => context.Cancel = true);
        Assert.True(Interrupt("SigCgt:"));
        Random chance = new(5);
        bool byInteger = false;
        for (int i = 0; i < 12; i++)
        {
            CutProblem problem = new(
                [.. Enumerable.Range(0, 6).Select(k => new CutDemand("m" + k, chance.Next(60, 230), chance.Next(3, 25)))],
                [new StockLength("long", 480, 480), new StockLength("short", 400, 405)],
                new SawRules(KerfRule.BetweenPieces, 1, 0, 48),
                new CutCosts(i % 2 == 0 ? 0 : 60, 5));
            byInteger |= BarCutter.Cut(problem).Plan.Bound.Method != BoundMethod.LengthOnly;
            Assert.True(Interrupt("SigCgt:"), $"after problem {i}");
        }

        Assert.True(byInteger, "No problem reached the solvers: the test would prove nothing.");
    }

    private static bool Interrupt(string mask)
    {
        const int interrupt = 2;
        string signals = File.ReadLines("/proc/self/status").First(l => l.StartsWith(mask, StringComparison.Ordinal))[mask.Length..].Trim();
        return (ulong.Parse(signals, NumberStyles.HexNumber, CultureInfo.InvariantCulture) >> (interrupt - 1) & 1) == 1;
    }
}
