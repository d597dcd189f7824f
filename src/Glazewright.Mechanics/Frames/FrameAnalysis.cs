using Glazewright.Mechanics.Guards;

namespace Glazewright.Mechanics.Frames;

/// <summary>
/// Plane frames by the direct stiffness method: bending and axial strain of straight prismatic members, pins, forced
/// support movements; second order by geometric stiffness. Limits: docs/methods/structure.md#frames.
/// </summary>
public static class FrameAnalysis
{
    private const int MostSteps = 60;
    private const double Settled = 1e-7;

    /// <summary>First-order solution of several loadings of one frame; the stiffness is factored once.</summary>
    /// <param name="model">The frame; m, Pa, m², m⁴.</param>
    /// <param name="loadings">The loadings; N, N/m, N·m.</param>
    /// <returns>An outcome for each loading, in order.</returns>
    /// <exception cref="ArgumentException">An index, size or load that makes no sense.</exception>
    public static IReadOnlyList<FrameOutcome> FirstOrder(FrameModel model, IReadOnlyList<FrameLoading> loadings)
    {
        var system = new FrameSystem(model);
        FrameOutcome.Unstable? unstable = system.Factor(null);
        var outcomes = new FrameOutcome[loadings.Count];
        for (int i = 0; i < outcomes.Length; i++)
        {
            outcomes[i] = unstable ?? (FrameOutcome)new FrameOutcome.Solved(
                Results.Of(model, Refinement.Whole(model), system.Solve(loadings[i])));
        }

        return outcomes;
    }

    /// <summary>First-order solution of one loading.</summary>
    /// <param name="model">The frame.</param>
    /// <param name="loading">The loading.</param>
    /// <returns>Solved, or unstable when the frame is a mechanism.</returns>
    /// <exception cref="ArgumentException">An index, size or load that makes no sense.</exception>
    public static FrameOutcome FirstOrder(FrameModel model, FrameLoading loading) => FirstOrder(model, [loading])[0];

    /// <summary>
    /// Second-order elastic solution: equilibrium on the moved frame, by geometric stiffness of the axial forces, which are
    /// found in steps. Members are cut in pieces so that bending between joints counts too.
    /// </summary>
    /// <param name="model">The frame.</param>
    /// <param name="loading">The factored loading; the answer is not proportional to it.</param>
    /// <param name="piecesPerMember">Pieces a member is cut in, 1 to 50; four give the benchmark columns within 0.3 %.</param>
    /// <returns>Solved; unstable when past the buckling load; unsettled when the steps run out.</returns>
    /// <exception cref="ArgumentException">An index, size or load that makes no sense.</exception>
    public static FrameOutcome SecondOrder(FrameModel model, FrameLoading loading, int piecesPerMember = 4)
    {
        Require.Within(piecesPerMember, 1, 50);
        FrameDoor.Check(model);
        FrameDoor.Check(model, loading);
        Refinement refinement = Refinement.Split(model, piecesPerMember);
        FrameLoading fine = refinement.Split(loading);
        var system = new FrameSystem(refinement.Fine);
        double[]? tensionsN = null;
        for (int step = 0; step < MostSteps; step++)
        {
            FrameOutcome.Unstable? unstable = system.Factor(tensionsN);
            if (unstable is not null)
            {
                return new FrameOutcome.Unstable(refinement.CoarseNode(unstable.Node), unstable.Freedom);
            }

            SystemResult raw = system.Solve(fine);
            double[] next = Tensions(raw);
            if (tensionsN is not null && Change(tensionsN, next) <= Settled)
            {
                return new FrameOutcome.Solved(Results.Of(model, refinement, raw));
            }

            tensionsN = next;
        }

        return new FrameOutcome.Unsettled(MostSteps);
    }

    // The mean of both ends: own weight along a column changes its axial force.
    private static double[] Tensions(SystemResult raw)
    {
        var tensionsN = new double[raw.EndForces.Length];
        for (int m = 0; m < tensionsN.Length; m++)
        {
            tensionsN[m] = (raw.EndForces[m][3] - raw.EndForces[m][0]) / 2;
        }

        return tensionsN;
    }

    private static double Change(double[] before, double[] after)
    {
        double largest = 0;
        double change = 0;
        for (int m = 0; m < before.Length; m++)
        {
            largest = Math.Max(largest, Math.Abs(after[m]));
            change = Math.Max(change, Math.Abs(after[m] - before[m]));
        }

        return largest == 0 ? 0 : change / largest;
    }
}
