using CsCheck;
using Glazewright.Mechanics.Checks;
using Glazewright.Mechanics.Frames;
using Glazewright.Mechanics.Guards;
using Glazewright.Mechanics.Loads;
using Glazewright.Mechanics.Sections;

namespace Glazewright.Mechanics.Tests.Checks;

public class TubeCheckTests
{
    private static readonly Gen<TubeSection> AnyTube =
        from depthIn in Gen.Double[2, 12]
        from widthIn in Gen.Double[2, 8]
        from wallIn in Gen.Double[0.06, 0.375]
        from structural in Gen.Bool
        select structural
            ? Tubes.Structural("t", depthIn * UsUnits.MPerIn, widthIn * UsUnits.MPerIn, wallIn * UsUnits.MPerIn)
            : Tubes.Gauge("t", depthIn * UsUnits.MPerIn, widthIn * UsUnits.MPerIn, wallIn * UsUnits.MPerIn);

    private static Steel SteelOf(TubeSection s) => s.Standard == TubeStandard.Structural ? Steel.A500GradeC : Steel.A653Grade50;

    [Fact]
    public void Longer_is_never_stronger() => Gen.Select(AnyTube, Gen.Double[0.1, 12], Gen.Double[1, 2]).Sample((s, lengthM, more) =>
    {
        MemberCapacity Of(double m) => TubeCheck.CapacityOf(s, SteelOf(s), new MemberLengths(m, m, m), DesignMethod.Lrfd);
        MemberCapacity shorter = Of(lengthM);
        MemberCapacity longer = Of(lengthM * more);
        return longer.Compression.NominalValue <= shorter.Compression.NominalValue * (1 + 1e-12)
            && longer.StrongBending.NominalValue <= shorter.StrongBending.NominalValue * (1 + 1e-12);
    }, iter: 500);

    [Fact]
    public void No_strength_beyond_squash_and_full_plastic() => Gen.Select(AnyTube, Gen.Double[0, 12]).Sample((s, lengthM) =>
    {
        Steel steel = SteelOf(s);
        MemberCapacity c = TubeCheck.CapacityOf(s, steel, new MemberLengths(lengthM, lengthM, lengthM), DesignMethod.Asd);
        return c.Compression.NominalValue <= steel.YieldPa * s.AreaM2 * (1 + 1e-12)
            && c.StrongBending.NominalValue <= steel.YieldPa * s.StrongPlasticModulusM3 * (1 + 1e-12)
            && c.WeakBending.NominalValue <= steel.YieldPa * s.WeakPlasticModulusM3 * (1 + 1e-12)
            && c.Compression.NominalValue > 0 && c.StrongBending.NominalValue > 0 && c.Shear.NominalValue > 0;
    }, iter: 500);

    [Fact]
    public void Twice_the_force_uses_about_twice_the_strength() => AnyTube.Sample(s =>
    {
        MemberCapacity c = TubeCheck.CapacityOf(s, SteelOf(s), new MemberLengths(3, 3, 3), DesignMethod.Lrfd);
        var f = new MemberForces(-5000, 800, 100, 1500);
        Utilisation one = TubeCheck.Of(c, f);
        Utilisation two = TubeCheck.Of(c, new MemberForces(-10_000, 1600, 200, 3000));
        // H1-1a takes 8/9 of the bending that H1-1b takes whole, and all of the axial force that it takes half.
        return two.LargestRatio >= one.LargestRatio * 16 / 9 * (1 - 1e-12) && two.LargestRatio <= one.LargestRatio * 4;
    }, iter: 300);

    [Fact]
    public void Interaction_equations_by_hand()
    {
        TubeSection s = Tubes.Structural("t", 4 * UsUnits.MPerIn, 2 * UsUnits.MPerIn, 0.125 * UsUnits.MPerIn);
        MemberCapacity c = TubeCheck.CapacityOf(s, Steel.A500GradeC, new MemberLengths(1, 1, 1), DesignMethod.Lrfd);
        double pc = c.Compression.Available(DesignMethod.Lrfd);
        double mc = c.StrongBending.Available(DesignMethod.Lrfd);
        // H1-1a above 0.2, H1-1b below.
        Assert.Equal(0.5 + 8.0 / 9 * 0.4, TubeCheck.Of(c, new MemberForces(-0.5 * pc, 0.4 * mc, 0, 0)).InteractionRatio, 1e-12);
        Assert.Equal(0.05 + 0.4, TubeCheck.Of(c, new MemberForces(-0.1 * pc, -0.4 * mc, 0, 0)).InteractionRatio, 1e-12);
    }

    [Fact]
    public void Thin_gauge_walls_are_told_as_not_covered()
    {
        TubeSection thin = Tubes.Gauge("t", 8 * UsUnits.MPerIn, 8 * UsUnits.MPerIn, 0.06 * UsUnits.MPerIn);
        MemberCapacity c = TubeCheck.CapacityOf(thin, Steel.A653Grade50, new MemberLengths(3, 3, 3), DesignMethod.Lrfd);
        Assert.Contains(CheckGap.ThinWalls, c.Gaps);
        TubeSection stout = Tubes.Gauge("t", 2 * UsUnits.MPerIn, 2 * UsUnits.MPerIn, SheetGauge.TwelveGaugeM);
        Assert.DoesNotContain(
            CheckGap.ThinWalls, TubeCheck.CapacityOf(stout, Steel.A653Grade50, new MemberLengths(2, 2, 2), DesignMethod.Lrfd).Gaps);
    }

    [Fact]
    public void A_slender_strut_is_told()
    {
        TubeSection s = Tubes.Structural("t", 2 * UsUnits.MPerIn, 2 * UsUnits.MPerIn, 0.125 * UsUnits.MPerIn);
        Assert.Contains(
            CheckGap.VerySlender, TubeCheck.CapacityOf(s, Steel.A500GradeC, new MemberLengths(5, 5, 5), DesignMethod.Lrfd).Gaps);
    }

    [Fact]
    public void Turning_a_tube_on_its_side_swaps_its_axes() => Gen.Select(Gen.Double[2, 8], Gen.Double[2, 8]).Sample((a, b) =>
    {
        TubeSection up = Tubes.Structural("t", a * UsUnits.MPerIn, b * UsUnits.MPerIn, 0.125 * UsUnits.MPerIn);
        TubeSection flat = Tubes.Structural("t", b * UsUnits.MPerIn, a * UsUnits.MPerIn, 0.125 * UsUnits.MPerIn);
        return up.StrongInertiaM4 == flat.WeakInertiaM4 && up.StrongPlasticModulusM3 == flat.WeakPlasticModulusM3
            && Math.Abs(up.TorsionConstantM4 - flat.TorsionConstantM4) < 1e-12;
    }, iter: 100);

    [Fact]
    public void Simple_span_agrees_with_the_frame_solver()
    {
        const double E = 2e11, I = 1e-6, L = 2.4;
        var beam = new FrameModel(
            [new(0, 0), new(L, 0)], [new(0, 1, E, 1e-3, I)],
            [FrameSupport.Pinned(0), new(1, false, true, false)]);
        MemberResult m = FrameAnalysis.FirstOrder(beam, new FrameLoading([],
        [
            new MemberLoad.Spread(0, SpreadDirection.UpPerLength, -900, -900),
            new MemberLoad.Point(0, 0.5, 0, -445),
        ])).OrThrow().Members[0];
        SpanResult s = SimpleSpan.Of(L, 900, 445, E, I);
        Assert.Equal(s.MomentNm, m.LargestMoment().MomentNm, 1e-6);
        Assert.Equal(s.DeflectionM, Math.Abs(m.LargestBow().BowM), 1e-9);
    }
}
