using Glazewright.Mechanics.Checks;

namespace Glazewright.Mechanics.Tests.Checks;

/// <summary>Closed forms of AISC Manual table 3-23, from memory: case 1 (even), 7 (midspan), 8 (anywhere), 9 (two equal, symmetric).</summary>
public class PointLoadSpanTests
{
    private const double L = 3.6;
    private const double E = 200e9;
    private const double I = 4e-7;

    [Fact]
    public void Even_and_midspan_loads_are_cases_1_and_7()
    {
        PointSpanResult r = PointLoadSpan.Of(L, 900, [new(L / 2, 2000)], E, I);
        Assert.Equal(900 * L * L / 8 + 2000 * L / 4, r.MomentNm, 1e-9);
        Assert.Equal(5 * 900 * Math.Pow(L, 4) / (384 * E * I) + 2000 * Math.Pow(L, 3) / (48 * E * I), r.DeflectionM, 1e-12);
        Assert.Equal(900 * L / 2 + 1000, r.ShearN, 1e-9);
    }

    [Theory]
    [InlineData(0.4)]
    [InlineData(1.3)]
    [InlineData(3.1)]
    public void One_force_anywhere_is_case_8(double a)
    {
        double b = L - a;
        PointSpanResult r = PointLoadSpan.Of(L, 0, [new(a, 1500)], E, I);
        Assert.Equal(1500 * a * b / L, r.MomentNm, 1e-9);
        Assert.Equal(1500 * b / L, r.StartN, 1e-9);
        Assert.Equal(1500 * a / L, r.EndN, 1e-9);

        // Largest deflection of case 8, Pab(a + 2b)√(3a(a + 2b)) / 27EIL for a > b: ours at midspan is below it by 2.5 % at most.
        (double far, double near) = a > b ? (a, b) : (b, a);
        double most = 1500 * far * near * (far + 2 * near) * Math.Sqrt(3 * far * (far + 2 * near)) / (27 * E * I * L);
        Assert.InRange(r.DeflectionM, 0.974 * most, most * (1 + 1e-12));
    }

    [Fact]
    public void Two_equal_forces_are_case_9()
    {
        const double A = 0.9;
        PointSpanResult r = PointLoadSpan.Of(L, 0, [new(A, 800), new(L - A, 800)], E, I);
        Assert.Equal(800 * A, r.MomentNm, 1e-9);
        Assert.Equal(800 * A * (3 * L * L - 4 * A * A) / (24 * E * I), r.DeflectionM, 1e-12);
    }

    [Fact]
    public void Moment_between_forces_is_found_where_the_shear_turns()
    {
        SpanPoint[] points = [new(0.7, 300), new(2.9, 1100)];
        PointSpanResult r = PointLoadSpan.Of(L, 1200, points, E, I);
        double fine = Enumerable.Range(0, 36_001).Select(i => i * L / 36_000)
            .Max(x => r.StartN * x - 600 * x * x - points.Where(p => p.AtM < x).Sum(p => p.ForceN * (x - p.AtM)));
        Assert.InRange(r.MomentNm, fine - 1e-9, fine + 0.01);
        Assert.Equal(1200 * L + 1400, r.StartN + r.EndN, 1e-9);
        Assert.Equal(-r.MomentNm, PointLoadSpan.Of(L, -1200, [.. points.Select(p => p with { ForceN = -p.ForceN })], E, I).MomentNm, 1e-9);
    }

    /// <summary>Case 5 of the table: an even load over the first part of the span. M = R₁²/2w with R₁ = wa(2L − a)/2L.</summary>
    [Theory]
    [InlineData(0.6)]
    [InlineData(1.8)]
    [InlineData(3.0)]
    public void Load_over_the_first_part_is_case_5(double a)
    {
        const double W = 700;
        PointSpanResult r = PointLoadSpan.Of(L, [new SpanStrip(0, a, W)], [], E, I);
        double start = W * a * (2 * L - a) / (2 * L);
        Assert.Equal(start, r.StartN, 1e-9);
        Assert.Equal(W * a * a / (2 * L), r.EndN, 1e-9);
        Assert.Equal(start * start / (2 * W), r.MomentNm, 1e-9);

        // Deflection of case 5 at midspan: within the load wx(a²(2L − a)² − 2ax²(2L − a) + Lx³)/24EIL, past it wa²(L − x)(4xL − 2x² − a²)/24EIL.
        double x = L / 2;
        double sag = x <= a
            ? W * x * (a * a * Math.Pow(2 * L - a, 2) - 2 * a * x * x * (2 * L - a) + L * Math.Pow(x, 3)) / (24 * E * I * L)
            : W * a * a * (L - x) * (4 * x * L - 2 * x * x - a * a) / (24 * E * I * L);
        Assert.Equal(sag, r.DeflectionM, 1e-12);
    }

    [Fact]
    public void Strips_end_to_end_are_one_load()
    {
        PointSpanResult parts = PointLoadSpan.Of(L, [new(0, 0.9, 500), new(0.9, 2.2, 500), new(2.2, L, 500)], [new(1.1, 300)], E, I);
        PointSpanResult whole = PointLoadSpan.Of(L, 500, [new(1.1, 300)], E, I);
        Assert.Equal(whole.MomentNm, parts.MomentNm, 1e-9);
        Assert.Equal(whole.DeflectionM, parts.DeflectionM, 1e-12);
        Assert.Equal(whole.EndN, parts.EndN, 1e-9);
    }
}
