using CsCheck;
using Glazewright.Science.Sky;

namespace Glazewright.Science.Tests.Sky;

public class PerezSkyTests
{
    // The parts must give the measured diffuse back on the horizontal: the model only moves light about.
    [Fact]
    public void On_the_horizontal_the_diffuse_comes_back() =>
        Gen.Select(Gen.Double[0, 1000], Gen.Double[1, 500], Gen.Double[0, 84.9]).Sample((beam, diffuse, zenith) =>
        {
            double cos = Math.Cos(zenith * Math.PI / 180);
            SkySources sky = PerezSky.Sources(beam, diffuse, zenith, 1361, 0.2);
            Assert.Equal(diffuse, PerezSky.OnPlane(sky, cos, 0).SkyDiffuseWm2, 1e-9 * diffuse);
        });

    [Fact]
    public void Everything_stays_finite_and_not_negative() =>
        Gen.Select(Gen.Double[0, 1400], Gen.Double[0, 900], Gen.Double[0, 180], Gen.Double[-1, 1], Gen.Double[0, 180]).Sample(
            (beam, diffuse, zenith, cosine, tilt) =>
            {
                TiltedLight light = PerezSky.OnPlane(PerezSky.Sources(beam, diffuse, zenith, 1361, 0.6), cosine, tilt);
                Assert.True(double.IsFinite(light.TotalWm2) && light.TotalWm2 >= 0);
            });
}
