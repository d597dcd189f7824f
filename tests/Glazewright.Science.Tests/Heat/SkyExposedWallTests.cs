using Glazewright.Science.Heat;

namespace Glazewright.Science.Tests.Heat;

public class SkyExposedWallTests
{
    // An overcast sky at air temperature: the radiative film 0.9·4σT³ is 4.6 W/m²K at 10 °C mean, so near there the handbook's U must come back.
    [Theory]
    [InlineData(0, 6.7, 90), InlineData(0.2, 3.4, 45), InlineData(0.5, 6.7, 26)]
    public void Under_an_overcast_sky_the_handbook_U_returns(double coreM2KPerW, double windMPerS, double tiltDeg)
    {
        NightLoss loss = SkyExposedWall.Of(14, 9, 9, tiltDeg, windMPerS, coreM2KPerW);
        double handbook = BuildUp.UValueWPerM2K(SurfaceFilm.IndoorWPerM2K(tiltDeg, true), [coreM2KPerW], SurfaceFilm.OutdoorWPerM2K(windMPerS));
        Assert.Equal(handbook, loss.FluxWPerM2 / 5, 0.004 * handbook);
    }

    // House, air and sheet alike: only the sky is colder. The face must come to lie under the air, and the calmer the deeper.
    [Fact]
    public void On_a_clear_calm_night_the_outer_face_is_colder_than_the_air()
    {
        double skyC = SkyTemperature.ClearC(0, -5);
        NightLoss calm = SkyExposedWall.Of(0, 0, skyC, 26, 0, 0.4);
        NightLoss windy = SkyExposedWall.Of(0, 0, skyC, 26, 6.7, 0.4);
        Assert.InRange(calm.OuterFaceC, -12, -4);
        Assert.InRange(windy.OuterFaceC, calm.OuterFaceC + 2, -0.5);
        Assert.True(calm.FluxWPerM2 > windy.FluxWPerM2);
    }

    // A wall sees half the sky a flat roof sees.
    [Fact]
    public void A_roof_loses_more_to_the_sky_than_a_wall() => Assert.True(
        SkyExposedWall.Of(17, -10, -35, 10, 1, 0.3).FluxWPerM2 > SkyExposedWall.Of(17, -10, -35, 90, 1, 0.3).FluxWPerM2 * 1.02);
}
