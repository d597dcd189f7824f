using Glazewright.Science.Sky;

namespace Glazewright.Published.Tests.Science;

/// <summary>
/// Maxwell 1987 (DISC) as run by pvlib (snapshot 6382338a): Phoenix, 24 June 2014, clock 12:00 and 18:00 (by then 25 June in universal time, the day its distance of the sun is taken
/// for), two pressures, read in its tests; three rows computed with it. Tolerance 0.05 W/m² where zenith and global are printed to 5 digits, 0.01 where they are whole numbers.
/// </summary>
public class DiscByGeneralLibrary
{
    [Theory]
    [InlineData(1038.62, 10.567, 175, 93_193, 830.466, 0.05), InlineData(254.53, 72.469, 176, 93_193, 676.183, 0.05)]
    [InlineData(1038.62, 10.567, 175, 101_325, 868.724, 0.05), InlineData(254.53, 72.469, 176, 101_325, 680.738, 0.05)]
    [InlineData(300, 60, 15, 101_325, 146.55, 0.01), InlineData(500, 45, 100, 101_325, 239.69, 0.01), InlineData(700, 30, 200, 101_325, 377.33, 0.01)]
    public void Beam(double globalWm2, double zenithDeg, int dayOfYear, double pressurePa, double beamWm2, double toleranceWm2)
    {
        BeamAndDiffuse split = DiscSplit.Split(globalWm2, zenithDeg, Extraterrestrial.NormalWm2(dayOfYear, 1370), pressurePa);
        Assert.Equal(beamWm2, split.BeamNormalWm2, toleranceWm2);
        Assert.Equal(globalWm2, (split.BeamNormalWm2 * Math.Cos(zenithDeg * Math.PI / 180)) + split.DiffuseHorizontalWm2, 1e-6);
    }

    [Fact]
    public void Any_global_at_any_sun_gives_parts_that_are_not_negative_and_close()
    {
        for (double zenithDeg = 0; zenithDeg <= 180; zenithDeg += 0.5)
        {
            for (double globalWm2 = 0; globalWm2 <= 1600; globalWm2 += 20)
            {
                BeamAndDiffuse split = DiscSplit.Split(globalWm2, zenithDeg, 1361, 101_325);
                Assert.InRange(split.BeamNormalWm2, 0, 1361);
                Assert.InRange(split.DiffuseHorizontalWm2, -1e-9, globalWm2);
            }
        }
    }
}
