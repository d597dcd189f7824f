namespace Glazewright.Design.Services;

/// <summary>What a circuit's conductors must do.</summary>
/// <param name="LeastA">Least ampacity, A.</param>
/// <param name="BreakerA">Breaker, A.</param>
/// <param name="MotorRule">The breaker guards a motor branch (NEC 430.52): it may stand above the conductor's ampacity.</param>
/// <param name="RoundUp">The breaker may be the next standard rating above the ampacity (240.4(B)); not so for circuits of several receptacles.</param>
/// <param name="DropA">Current for the voltage drop, A.</param>
/// <param name="NominalV">Nominal voltage, V.</param>
/// <param name="ThreePhase">Three-phase.</param>
/// <param name="DropRunM">One-way length at which all of the current would drop as much as the loads do where they stand, m.</param>
/// <param name="LimitFraction">Most voltage drop, share of the nominal voltage.</param>
/// <param name="Sets">Sets of conductors in parallel.</param>
internal readonly record struct ConductorTask(
    double LeastA, double BreakerA, bool MotorRule, bool RoundUp, double DropA, double NominalV, bool ThreePhase, double DropRunM, double LimitFraction, int Sets = 1);

/// <summary>A chosen conductor.</summary>
/// <param name="Asked">Size by ampacity alone.</param>
/// <param name="Used">Size chosen.</param>
/// <param name="Ground">Equipment ground.</param>
/// <param name="AmpacityA">Ampacity of all sets after all corrections and the terminals' limit, A.</param>
/// <param name="DropFraction">Voltage drop.</param>
/// <param name="Carries">False when no size of the table has the ampacity.</param>
internal readonly record struct ConductorChoice(ConductorSize Asked, ConductorSize Used, ConductorSize Ground, double AmpacityA, double DropFraction, bool Carries);

/// <summary>Copper conductors in raceways of a warm house.</summary>
internal static class BranchSizing
{
    /// <summary>Air round the raceways: under the roof of a house in summer, °C (our judgement).</summary>
    public const double AmbientC = 45;

    /// <summary>Correction of 90 °C insulation at 41 to 45 °C, NEC table 310.15(B)(1).</summary>
    public const double HeatRatio = 0.87;

    /// <summary>Four to six current-carrying conductors in a raceway, NEC table 310.15(C)(1).</summary>
    public const double BundleRatio = 0.8;

    /// <summary>Terminals count as 60 °C up to this breaker, NEC 110.14(C)(1), A.</summary>
    public const double CoolTerminalsUpToA = 100;

    /// <summary>Inverse-time breaker over full-load current, NEC table 430.52.</summary>
    public const double MotorBreakerRatio = 2.5;

    // 240.4(B) ends at 800 A.
    private const double RoundUpToA = 800;

    /// <summary>Breaker of one motor: 250 % of the full-load current, next standard rating (430.52(C)(1), exception 1), A.</summary>
    public static double MotorBreakerA(double fullLoadA) => ConductorTable.NextBreakerA(MotorBreakerRatio * fullLoadA);

    /// <summary>Ampacity after heat, bundling and terminals, A.</summary>
    public static double AmpacityA(ConductorSize size, double breakerA) =>
        Math.Min(size.At90A * HeatRatio * BundleRatio, breakerA <= CoolTerminalsUpToA ? size.At60A : size.At75A);

    /// <summary>Voltage drop of a circuit, V: there and back on one phase, √3 on three.</summary>
    /// <param name="ohmPerM">Resistance of one conductor, Ω/m.</param>
    /// <param name="currentA">Current, A.</param>
    /// <param name="runM">One way, m.</param>
    /// <param name="threePhase">Three-phase.</param>
    public static double DropV(double ohmPerM, double currentA, double runM, bool threePhase) => (threePhase ? Math.Sqrt(3) : 2) * ohmPerM * currentA * runM;

    /// <summary>Smallest copper size from 12 AWG that carries the load, is guarded by its breaker and keeps the drop; the largest of the table when none does.</summary>
    public static ConductorChoice Choose(ConductorTask task)
    {
        ConductorSize[] sizes = ConductorTable.Copper;
        int asked = Array.FindIndex(sizes, 1, s => Serves(s, task));
        bool carries = asked >= 0;
        asked = carries ? asked : sizes.Length - 1;
        int used = asked;
        while (used < sizes.Length - 1 && Drop(sizes[used], task) > task.LimitFraction + 1e-12)
        {
            used++;
        }

        return new ConductorChoice(
            sizes[asked], sizes[used], ConductorTable.Ground(task.BreakerA, sizes[asked], sizes[used]), task.Sets * AmpacityA(sizes[used], task.BreakerA), Drop(sizes[used], task), carries);
    }

    private static bool Serves(ConductorSize size, ConductorTask task)
    {
        double ampacityA = task.Sets * AmpacityA(size, task.BreakerA);
        if (ampacityA < task.LeastA - 1e-9 || task.MotorRule)
        {
            return ampacityA >= task.LeastA - 1e-9;
        }

        double guarded = task.RoundUp && ampacityA <= RoundUpToA ? ConductorTable.NextBreakerA(ampacityA) : ampacityA;
        return task.BreakerA <= Math.Min(guarded, ConductorTable.SmallConductorLimitA(size)) + 1e-9;
    }

    private static double Drop(ConductorSize size, ConductorTask task) => DropV(size.OhmPerM, task.DropA / task.Sets, task.DropRunM, task.ThreePhase) / task.NominalV;
}
