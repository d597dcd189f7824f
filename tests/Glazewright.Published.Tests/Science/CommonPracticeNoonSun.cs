using Glazewright.Science.Shape;

namespace Glazewright.Published.Tests.Science;

/// <summary>
/// Two statements of common practice on the noon sun of 21 June in houses 30 ft wide (mark: common practice). Expected numbers are worked by hand from
/// noon altitude = 90° − |latitude − 23.44°| and one tangent; no number comes from our own program.
/// </summary>
public class CommonPracticeNoonSun
{
    private const double FootM = 0.3048;

    // "Ridge in the middle, opaque north slope: about 10 ft along the north wall lose the sun." 8 ft eaves, 6:12, ridge 15.5 ft:
    // 15 − 15.5/tan 73.44° = 15 − 15.5/3.3630 = 10.39 ft at 40° N; 15 − 15.5/tan 71.44° = 9.80 at 42°; 15 − 15.5/tan 88.44° = 14.58 at 25°; 5.85 at 54°.
    [Theory]
    [InlineData(40, 10.391), InlineData(42, 9.796), InlineData(25, 14.578), InlineData(54, 5.848)]
    public void Strip_under_a_ridge_in_the_middle(double latitudeDeg, double handFt) =>
        Assert.Equal(handFt, PracticeStatements.MiddleRidgeStripM(latitudeDeg, 8 * FootM, 0.5) / FootM, 0.001);

    // "3:12 over 24 ft, 9.5:12 behind: about 4 ft up the north wall." Ridge = eave + 6 ft; reach = eave + 6 − 6·tan(noon altitude).
    // 8 ft eave: 14 − 6·1.69361 = 3.838 at 54° N, so the statement holds there; 14 − 6·2.97832 = −3.870 at 42° and −6.178 at 40°: not there.
    [Theory]
    [InlineData(54, 3.838), InlineData(42, -3.870), InlineData(40, -6.178)]
    public void Reach_under_a_long_flat_slope(double latitudeDeg, double handFt) =>
        Assert.Equal(handFt, PracticeStatements.LongSlopeReachM(latitudeDeg, 8 * FootM) / FootM, 0.001);

    // "The eaves are 1.25 ft apart then": 24·3/12 − 6·9.5/12 = 6 − 4.75.
    [Fact]
    public void Eaves_of_the_long_slope()
    {
        GableSection s = PracticeStatements.LongSlope(8 * FootM);
        Assert.Equal(1.25, (s.FarEaveM - s.NearEaveM) / FootM, 1e-9);
        Assert.Equal(9.5 / 12, s.FarPitchRatio, 1e-9);
    }

    // tan a = (eave + 6 − 4)/6 and latitude = 23.44° + 90° − a: 8 ft: atan(10/6) = 59.036° → 54.40° N; 12 ft: atan(14/6) = 66.801° → 46.64° N.
    [Theory]
    [InlineData(8, 54.404), InlineData(12, 46.639)]
    public void Latitude_of_four_feet(double eaveFt, double handDeg) =>
        Assert.Equal(handDeg, PracticeStatements.LongSlopeLatitudeDeg(eaveFt * FootM, 4 * FootM), 0.001);
}
