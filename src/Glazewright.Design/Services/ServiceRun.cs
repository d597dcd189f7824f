using Glazewright.Design.Brief;

namespace Glazewright.Design.Services;

/// <summary>The run from the pole: aluminium in a trench, sized for the main and for its voltage drop.</summary>
internal static class ServiceRun
{
    /// <summary>Most drop from the pole to the panels; with 3 % on the branches the usual 5 % is kept (NEC 210.19, 215.2, informational notes).</summary>
    public const double LimitFraction = 0.02;

    /// <summary>Smallest main, A (common practice).</summary>
    public const double LeastA = 60;

    private const int MostSets = 4;

    /// <summary>Main and run for a demand.</summary>
    /// <param name="lot">The lot.</param>
    /// <param name="demandA">Current it must carry, A.</param>
    public static FeederRun Of(Utilities lot, double demandA)
    {
        double mainA = Math.Max(ConductorTable.NextBreakerA(Math.Max(demandA, LeastA)), lot.ServiceA >= demandA ? lot.ServiceA : 0);
        bool three = lot.Phase == Phase.Three;
        ConductorSize[] sizes = ConductorTable.Aluminium;
        double Drop(ConductorSize size, int sets) => BranchSizing.DropV(size.OhmPerM, demandA / sets, lot.PoleDistanceM, three) / lot.ServiceV;
        int sets = 1;
        int asked;
        while ((asked = Array.FindIndex(sizes, s => sets * s.At75A >= mainA)) < 0 && sets < MostSets)
        {
            sets++;
        }

        asked = asked < 0 ? sizes.Length - 1 : asked;
        int used = asked;
        while (used < sizes.Length - 1 && Drop(sizes[used], sets) > LimitFraction)
        {
            used++;
        }

        return new FeederRun(
            "pole", "aluminium", sets, sizes[used].Name, sizes[used].AreaMm2, "", mainA, sets * sizes[used].At75A, demandA, lot.PoleDistanceM,
            Drop(sizes[used], sets), used > asked ? sizes[asked].Name : "");
    }
}
