using CsCheck;
using Glazewright.Science.Maths;

namespace Glazewright.Science.Tests.Maths;

/// <summary>Our own functions against the runtime's (a general library) and against algebra's identities.</summary>
public class ElementaryTests
{
    private static void Near(double expected, double ours, double relative, double absolute = 0.0) =>
        Assert.True(Math.Abs(ours - expected) <= relative * Math.Abs(expected) + absolute, $"{ours:R} against {expected:R}");

    [Fact]
    public void Exp_agrees_with_the_runtime() =>
        Gen.Double[-700, 700].Sample(x => Near(Math.Exp(x), Elementary.Exp(x), 4e-15), iter: 20_000);

    [Fact]
    public void Exp_near_zero_keeps_the_last_bits() =>
        Gen.Double[-1, 1].Sample(x => Near(Math.Exp(x), Elementary.Exp(x), 1.5e-15), iter: 20_000);

    [Fact]
    public void Log_agrees_with_the_runtime() =>
        Gen.Double[-690, 690].Sample(
            e =>
            {
                double x = Math.Exp(e);
                Near(Math.Log(x), Elementary.Log(x), 2e-15);
            },
            iter: 20_000);

    [Fact]
    public void Log_near_one_keeps_relative_accuracy() =>
        Gen.Double[-1e-3, 1e-3].Sample(d => Near(Math.Log(1.0 + d), Elementary.Log(1.0 + d), 2e-15), iter: 20_000);

    [Fact]
    public void Cube_root_cubed_is_the_number() =>
        Gen.Double[-1e6, 1e6].Sample(x => Near(Math.Cbrt(x), Elementary.Cbrt(x), 1e-15), iter: 20_000);

    [Theory]
    [InlineData(8.0, 2.0), InlineData(-27.0, -3.0), InlineData(0.0, 0.0), InlineData(1e-303, 1e-101), InlineData(1e303, 1e101)]
    public void Cube_root_of_known_cubes(double x, double root) => Near(root, Elementary.Cbrt(x), 3e-16);

    [Fact]
    public void Power_agrees_with_the_runtime() =>
        Gen.Select(Gen.Double[1e-3, 1e3], Gen.Double[-8, 8])
            .Sample(p => Near(Math.Pow(p.Item1, p.Item2), Elementary.Pow(p.Item1, p.Item2), 2e-14), iter: 20_000);

    [Fact]
    public void Sine_and_cosine_agree_with_the_runtime() =>
        Gen.Double[-1e5, 1e5].Sample(
            a =>
            {
                Near(Math.Sin(a), Elementary.Sin(a), 0.0, 1e-15);
                Near(Math.Cos(a), Elementary.Cos(a), 0.0, 1e-15);
            },
            iter: 20_000);

    [Fact]
    public void Small_sines_keep_relative_accuracy() =>
        Gen.Double[-3, 3].Sample(a => Near(Math.Sin(a), Elementary.Sin(a), 1e-15, 1e-17), iter: 20_000);

    [Fact]
    public void Arc_functions_agree_with_the_runtime() =>
        Gen.Select(Gen.Double[-30, 30], Gen.Double[-30, 30]).Sample(
            p =>
            {
                Near(Math.Atan(p.Item1), Elementary.Atan(p.Item1), 2e-15);
                Near(Math.Atan2(p.Item1, p.Item2), Elementary.Atan2(p.Item1, p.Item2), 2e-15, 1e-15);
                double s = p.Item1 / 30.0;
                Near(Math.Asin(s), Elementary.Asin(s), 3e-15, 1e-16);
                Near(Math.Acos(s), Elementary.Acos(s), 3e-15, 1e-15);
            },
            iter: 20_000);

    [Fact]
    public void Edges_are_total()
    {
        Assert.Equal(1.0, Elementary.Exp(0.0));
        Assert.Equal(0.0, Elementary.Exp(-1000.0));
        Assert.Equal(double.PositiveInfinity, Elementary.Exp(1000.0));
        Assert.True(double.IsNaN(Elementary.Exp(double.NaN)));
        Assert.Equal(0.0, Elementary.Log(1.0));
        Assert.Equal(double.NegativeInfinity, Elementary.Log(0.0));
        Assert.True(double.IsNaN(Elementary.Log(-1.0)));
        Assert.True(double.IsNaN(Elementary.Sin(double.PositiveInfinity)));
        Assert.Equal(0.0, Elementary.Pow(0.0, 2.0));
        Assert.Equal(0.0, Elementary.Sin(0.0));
        Assert.Equal(1.0, Elementary.Cos(0.0));
        Near(Math.Exp(-740), Elementary.Exp(-740), 1e-2);
        Near(Math.Log(1e-310), Elementary.Log(1e-310), 1e-14);
    }
}
