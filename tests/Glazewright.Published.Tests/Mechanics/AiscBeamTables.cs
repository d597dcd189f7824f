using Glazewright.Mechanics.Frames;
using static Glazewright.Published.Tests.Mechanics.FrameBuild;

namespace Glazewright.Published.Tests.Mechanics;

/// <summary>
/// AISC Manual tables 3-22c (continuous beams) and 3-23 (shears, moments and deflections): coefficients and closed forms from memory, the cases listed in a
/// public validation set. Unit span, load and E·I. Coefficients: half of the last printed digit; closed forms: rounding.
/// </summary>
public class AiscBeamTables
{
    private static FrameSolution Spans(int count, bool startFixed, bool endFixed, params MemberLoad[] loads)
    {
        FrameNode[] nodes = [.. Enumerable.Range(0, count + 1).Select(i => new FrameNode(i, 0))];
        FrameMember[] members = [.. Enumerable.Range(0, count).Select(i => new FrameMember(i, i + 1, 1, 1000, 1))];
        FrameSupport[] supports =
        [
            .. Enumerable.Range(0, count + 1).Select(i => new FrameSupport(i, i == 0, true, (i == 0 && startFixed) || (i == count && endFixed))),
        ];
        return FrameAnalysis.FirstOrder(new FrameModel(nodes, members, supports), On(loads)).OrThrow();
    }

    private static MemberLoad[] Uniform(int count) =>
        [.. Enumerable.Range(0, count).Select(i => (MemberLoad)new MemberLoad.Spread(i, SpreadDirection.UpPerLength, -1, -1))];

    // Moment over the first inner support, moment in the first span, first reaction, largest deflection of the first span.
    [Theory]
    [InlineData(2, 0.125, 0.0703, 0.375, 0.0054), InlineData(3, 0.100, 0.080, 0.400, 0.0069), InlineData(4, 0.1071, 0.0772, 0.393, 0.0065)]
    public void Continuous_beams_all_spans_loaded(int spans, double support, double field, double reaction, double deflection)
    {
        FrameSolution r = Spans(spans, false, false, Uniform(spans));
        Near(support, -r.Members[0].At(1).MomentNm, 0.00005);
        Near(field, r.Members[0].Stations().Max(s => s.MomentNm), 0.00005);
        Near(reaction, r.Reactions[0].UpN, 0.0005);
        Near(deflection, Math.Abs(r.Members[0].LargestBow().BowM), 0.00005);
    }

    [Fact]
    public void Triangular_load_on_a_simple_span()
    {
        // Case 2: W total, largest moment 0.1283 W l at 0.5774 l, deflection 0.01304 W l³/EI at 0.5193 l.
        MemberResult m = Spans(1, false, false, new MemberLoad.Spread(0, SpreadDirection.UpPerLength, 0, -2)).Members[0];
        Near(2 / (9 * Math.Sqrt(3)), m.LargestMoment().MomentNm, 1e-9);
        Near(1 / Math.Sqrt(3), m.LargestMoment().AtM, 1e-9);
        Near(0.01304, Math.Abs(m.LargestBow().BowM), 0.000005);
        Near(0.5193, m.LargestBow().AtM, 0.00005);
    }

    [Fact]
    public void Part_of_a_simple_span_loaded()
    {
        // Case 4 with a = 0.2, b = 0.5, c = 0.3: R1 = w b (2c + b)/2l, M = R1 (a + R1/2w).
        const double A = 0.2, B = 0.5, C = 0.3;
        FrameSolution r = Spans(1, false, false, new MemberLoad.Spread(0, SpreadDirection.UpPerLength, -1, -1, A, A + B));
        double first = B * (2 * C + B) / 2;
        Near(first, r.Reactions[0].UpN, 1e-9);
        Near(first * (A + first / 2), r.Members[0].LargestMoment().MomentNm, 1e-9);
    }

    [Fact]
    public void Propped_cantilever()
    {
        // Case 12: M fixed wl²/8, field 9wl²/128 at 3l/8 from the prop, deflection wl⁴/185 at 0.4215 l.
        MemberResult m = Spans(1, false, true, Uniform(1)).Members[0];
        Near(-1.0 / 8, m.At(1).MomentNm, 1e-9);
        Near(9.0 / 128, m.At(0.375).MomentNm, 1e-9);
        Near(185, 1 / Math.Abs(m.LargestBow().BowM), 0.5);
        Near(0.4215, m.LargestBow().AtM, 0.0001);
    }

    [Fact]
    public void Fixed_beams()
    {
        // Cases 15 and 17: wl²/12, wl²/24, wl⁴/384; Pab²/l², Pa²b/l², 2Pa²b²/l³.
        MemberResult uniform = Spans(1, true, true, Uniform(1)).Members[0];
        Near(-1.0 / 12, uniform.At(0).MomentNm, 1e-9);
        Near(1.0 / 24, uniform.At(0.5).MomentNm, 1e-9);
        Near(1.0 / 384, Math.Abs(uniform.LargestBow().BowM), 1e-9);

        const double A = 0.3, B = 0.7;
        MemberResult point = Spans(1, true, true, new MemberLoad.Point(0, A, 0, -1)).Members[0];
        Near(-A * B * B, point.At(0).MomentNm, 1e-9);
        Near(-A * A * B, point.At(1).MomentNm, 1e-9);
        Near(2 * A * A * B * B, point.At(A).MomentNm, 1e-9);
        Near(A * A * A * B * B * B / 3, Math.Abs(point.At(A).OffsetM), 1e-9);
    }

    [Fact]
    public void Settled_end_of_a_fixed_beam()
    {
        // 6EIΔ/l², 12EIΔ/l³.
        var beam = new FrameModel(
            [new(0, 0), new(1, 0)], [new(0, 1, 1, 1000, 1)],
            [FrameSupport.Fixed(0), new FrameSupport(1, true, true, true, ForcedYM: -0.01)]);
        FrameSolution r = FrameAnalysis.FirstOrder(beam, FrameLoading.None).OrThrow();
        Near(-0.06, r.Members[0].At(0).MomentNm, 1e-12);
        Near(0.12, r.Reactions[0].UpN, 1e-12);
    }
}
