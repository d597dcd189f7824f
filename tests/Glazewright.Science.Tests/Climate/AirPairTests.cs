using System.Runtime.Intrinsics;
using CsCheck;
using Glazewright.Science.Climate;
using Glazewright.Science.Maths;

namespace Glazewright.Science.Tests.Climate;

/// <summary>Two airs through one step, against the exact answer of their linear equations (closed form of a second-order linear system).</summary>
public class AirPairTests
{
    [Fact]
    public void End_over_mean_is_the_plug_flow_s_within_four_in_a_hundred_thousand()
    {
        Assert.Equal(2.0, Of(0), 1e-12);
        for (double x = 1e-4; x < 1e5; x *= 1.01)
        {
            Assert.Equal(PadToFan.EndOverMean(x), Of(x), 4.5e-5 * PadToFan.EndOverMean(x));
            // What is left of the start, 1 − R x / (R + x), is e^(−x): never below nothing by more than the fit.
            Assert.InRange(1 - (Of(x) * x / (Of(x) + x)), -5e-5, 1);
        }
    }

    [Theory]
    [InlineData(1), InlineData(15), InlineData(60), InlineData(600)]
    public void One_air_alone_goes_as_the_exponential_goes_in_one_step_of_any_length(double stepS)
    {
        (double below, _, double mean) = Step(new AirStores(200, 50), stepS, outBelow: 3, outAbove: 0, exchange: 0, (20, 0));
        double x = 3 * stepS / 200, left = Elementary.Exp(-x);
        Assert.Equal(20 * left, below, 0.002);
        Assert.Equal(20 * (1 - left) / x, mean, 0.002);
    }

    [Fact]
    public void What_is_stored_is_what_flowed_in() =>
        Gen.Select(Gen.Double[1, 1e3], Gen.Double[1, 1e3], Gen.Double[0, 50], Gen.Double[0, 50], Gen.Double[0, 1e3], Gen.Double[1, 600]).Sample((below, above, outBelow, outAbove, exchange, stepS) =>
        {
            AirStores stores = new(below, above);
            AirPair airs = new(in stores, 1 / stepS, stepS, outBelow, outAbove, 0, 0, exchange);
            (double b, double a) = Means(in airs, outBelow, outAbove, exchange, (20, -5));
            (double bEnd, double aEnd) = airs.Ends(20, -5, b, a);
            double stored = (below * (bEnd - 20)) + (above * (aEnd + 5)), flowed = -stepS * ((outBelow * b) + (outAbove * a));
            Assert.Equal(flowed, stored, 1e-9 * (Math.Abs(flowed) + below + above));
            double rounding = 1e-12 * (below + above);
            Assert.InRange(airs.Link, -exchange - rounding, rounding);
            // Nothing rings: the ends stay between what they were and what is around them.
            Assert.InRange(bEnd, -5.3, 20.3);
            Assert.InRange(aEnd, -5.3, 20.3);
        });

    // Against the closed form, the worst of both airs, of a swing of 20 K. Implicit Euler misses by 1.4 to 3.5 K in the same steps.
    [Theory]
    [InlineData(0, 0.001)] // apart
    [InlineData(0.5, 0.6)]
    [InlineData(4, 0.6)]
    [InlineData(50, 0.1)]
    [InlineData(1000, 0.01)] // one air
    public void Airs_that_mix_little_or_much_go_as_their_equations_go(double exchange, double mostOffK)
    {
        AirStores stores = new(200, 50);
        (double below, double above, _) = Step(stores, 60, 3, 1, exchange, (20, 20));
        (double exactBelow, double exactAbove) = Exact(stores, 60, 3, 1, exchange, (20, 20));
        double off = Math.Max(Math.Abs(below - exactBelow), Math.Abs(above - exactAbove));
        Assert.True(off <= mostOffK, $"{off}");
        (double eulerBelow, double eulerAbove) = Euler(stores, 60, 3, 1, exchange, (20, 20));
        double euler = Math.Max(Math.Abs(eulerBelow - exactBelow), Math.Abs(eulerAbove - exactAbove));
        Assert.InRange(euler, 1.4, 3.5);
    }

    private static double Of(double x) => AirPair.EndOverMean(Vector256.Create(x)).ToScalar();

    private static (double Below, double Above, double MeanBelow) Step(AirStores stores, double stepS, double outBelow, double outAbove, double exchange, (double Below, double Above) start)
    {
        AirPair airs = new(in stores, 1 / stepS, stepS, outBelow, outAbove, 0, 0, exchange);
        (double b, double a) = Means(in airs, outBelow, outAbove, exchange, start);
        (double below, double above) = airs.Ends(start.Below, start.Above, b, a);
        return (below, above, b);
    }

    // Around them all is at 0.
    private static (double Below, double Above) Means(in AirPair airs, double outBelow, double outAbove, double exchange, (double Below, double Above) start)
    {
        double between = exchange + airs.Link, apart = airs.Link * (start.Below - start.Above);
        return Solve(airs.BelowStores + outBelow + between, airs.AboveStores + outAbove + between, between, (airs.BelowStores * start.Below) + apart, (airs.AboveStores * start.Above) - apart);
    }

    private static (double Below, double Above) Euler(AirStores stores, double stepS, double outBelow, double outAbove, double exchange, (double Below, double Above) start)
    {
        double b = stores.Below / stepS, a = stores.Above / stepS;
        return Solve(b + outBelow + exchange, a + outAbove + exchange, exchange, b * start.Below, a * start.Above);
    }

    private static (double Below, double Above) Solve(double b, double a, double between, double rightB, double rightA)
    {
        double determinant = (b * a) - (between * between);
        return (((rightB * a) + (between * rightA)) / determinant, ((rightA * b) + (between * rightB)) / determinant);
    }

    // x' = M x with M two by two: both eigenvalues are real and negative.
    private static (double Below, double Above) Exact(AirStores s, double t, double outBelow, double outAbove, double exchange, (double Below, double Above) start)
    {
        double p = -(outBelow + exchange) / s.Below, q = exchange / s.Below, r = exchange / s.Above, u = -(outAbove + exchange) / s.Above;
        double middle = 0.5 * (p + u), half = Math.Sqrt((0.25 * (p - u) * (p - u)) + (q * r));
        double e1 = Elementary.Exp((middle + half) * t), e2 = Elementary.Exp((middle - half) * t);
        // exp(M t) = e^(λ1 t) (M − λ2) / (λ1 − λ2) − e^(λ2 t) (M − λ1) / (λ1 − λ2), Sylvester's formula
        double Of(double diagonal, double other, double own, double others) =>
            half == 0 ? e1 * own
            : ((e1 * (((diagonal - middle + half) * own) + (other * others))) - (e2 * (((diagonal - middle - half) * own) + (other * others)))) / (2 * half);
        return (Of(p, q, start.Below, start.Above), Of(u, r, start.Above, start.Below));
    }
}
