using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Tests.Drawing;

public class LengthTextTests
{
    private const double FootM = 0.3048;

    [Theory]
    [InlineData(26 * FootM, "26'-0\"")]
    [InlineData(7.5 * FootM, "7'-6\"")]
    [InlineData(0, "0\"")]
    [InlineData(12.5 * FootM + 0.0127, "12'-6 1/2\"")]
    [InlineData(FootM - 0.0254 / 40, "1'-0\"")] // rounds up over the foot
    [InlineData(0.0254 * 3 / 16, "3/16\"")]
    [InlineData(-0.0254 * 14, "-1'-2\"")]
    public void Feet_and_inches(double lengthM, string text) =>
        Assert.Equal(text, LengthText.Of(lengthM, LengthStyle.FeetInches));

    [Theory]
    [InlineData(7.9248, "7925"), InlineData(0.0004, "0"), InlineData(1.0005, "1001")]
    public void Millimetres(double lengthM, string text) =>
        Assert.Equal(text, LengthText.Of(lengthM, LengthStyle.Millimetres));

    [Fact]
    public void Levels_bear_their_sign()
    {
        Assert.Equal("±0\"", LengthText.Level(0, LengthStyle.FeetInches));
        Assert.Equal("+2286", LengthText.Level(2.286, LengthStyle.Millimetres));
        Assert.Equal("−1000", LengthText.Level(-1, LengthStyle.Millimetres));
    }

    [Fact]
    public void Not_a_number_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LengthText.Of(double.NaN, LengthStyle.FeetInches));
}
