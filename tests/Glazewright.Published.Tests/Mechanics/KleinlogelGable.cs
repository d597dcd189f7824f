using Glazewright.Mechanics.Frames;
using static Glazewright.Published.Tests.Mechanics.FrameBuild;

namespace Glazewright.Published.Tests.Mechanics;

/// <summary>
/// Kleinlogel, Rigid Frame Formulas: symmetric gable under vertical load on the whole span, pinned and fixed bases. Formulae from
/// memory; the pinned check value was computed from the formula and with an independent stiffness program. Valid without axial strain, so
/// the members get a very large area.
/// </summary>
public class KleinlogelGable
{
    private static FrameSolution Gable(double spanM, double eaveM, double riseM, double inertiaRatio, double w, bool fixedBases)
    {
        const double E = 2e11, I = 1e-4, A = 1e2;
        var frame = new FrameModel(
            [new(0, 0), new(0, eaveM), new(spanM / 2, eaveM + riseM), new(spanM, eaveM), new(spanM, 0)],
            [
                new(0, 1, E, A, I), new(1, 2, E, A, I * inertiaRatio), new(2, 3, E, A, I * inertiaRatio), new(3, 4, E, A, I),
            ],
            fixedBases
                ? [FrameSupport.Fixed(0), FrameSupport.Fixed(4)]
                : [FrameSupport.Pinned(0), FrameSupport.Pinned(4)]);
        return FrameAnalysis.FirstOrder(frame, On(
            new MemberLoad.Spread(1, SpreadDirection.UpPerRun, -w, -w),
            new MemberLoad.Spread(2, SpreadDirection.UpPerRun, -w, -w))).OrThrow();
    }

    [Fact]
    public void Pinned_check_value()
    {
        FrameSolution r = Gable(20, 5, 3, 1, 10_000, fixedBases: false);
        Near(48_768.3, r.Reactions[0].AcrossN, 0.5);
        Near(-243_841, r.Members[1].At(0).MomentNm, 1);
        Near(109_854, r.Members[2].At(0).MomentNm, 1);
    }

    // Pinned: k = (I_rafter/I_column)(h/s), phi = f/h, m = 1 + phi, B = 2(k+1)+m, C = 1+2m, N = B+mC, M_eave = −wL²(3+5m)/(16N).
    // Fixed: K1 = 2(k+1+m+m²), K2 = 2(k+phi²), R = phi·C − k, N1 = K1·K2 − R²,
    // M_eave = −wL²/16 · (k(16+15phi)+phi²)/N1, M_base = wL²/16 · (k(8+15phi)+phi(6−phi))/N1.
    [Theory]
    [InlineData(20, 5, 3, 1.0), InlineData(9, 2.6, 1.9, 0.6), InlineData(12, 4.2, 2.2, 2.5)]
    public void Fixing_the_bases_moves_the_eave_moment_as_the_closed_form(double spanM, double eaveM, double riseM, double inertiaRatio)
    {
        const double W = 3000;
        double slopeM = Math.Sqrt(spanM * spanM / 4 + riseM * riseM);
        double k = inertiaRatio * eaveM / slopeM;
        double phi = riseM / eaveM;
        double m = 1 + phi;
        double c = 1 + 2 * m;
        double pinned = -W * spanM * spanM * (3 + 5 * m) / (16 * (2 * (k + 1) + m + m * c));
        double k1 = 2 * (k + 1 + m + m * m);
        double k2 = 2 * (k + phi * phi);
        double r = phi * c - k;
        double n1 = k1 * k2 - r * r;
        double fixedEave = -W * spanM * spanM / 16 * (k * (16 + 15 * phi) + phi * phi) / n1;
        double fixedBase = W * spanM * spanM / 16 * (k * (8 + 15 * phi) + phi * (6 - phi)) / n1;

        double solvedPinned = Gable(spanM, eaveM, riseM, inertiaRatio, W, false).Members[1].At(0).MomentNm;
        FrameSolution solvedFixed = Gable(spanM, eaveM, riseM, inertiaRatio, W, true);
        Near(pinned, solvedPinned, 1e-6 * Math.Abs(pinned));
        Near(fixedEave, solvedFixed.Members[1].At(0).MomentNm, 1e-6 * Math.Abs(fixedEave));
        Near(fixedBase, Math.Abs(solvedFixed.Reactions[0].MomentNm), 1e-6 * fixedBase);
    }
}
