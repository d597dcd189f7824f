using CsCheck;
using Glazewright.Science.Crop;

namespace Glazewright.Science.Tests.Crop;

public class TranspirationTests
{
    [Fact]
    public void More_light_or_drier_air_takes_more_water() =>
        Gen.Select(Gen.Double[0, 600], Gen.Double[5, 40], Gen.Double[100, 3000]).Sample((net, airC, deficit) =>
        {
            double flux = Transpiration.BigLeafWPerM2(net, airC, deficit, 120, 150, 98_000);
            return flux > 0
                && Transpiration.BigLeafWPerM2(net + 20, airC, deficit, 120, 150, 98_000) > flux
                && Transpiration.BigLeafWPerM2(net, airC, deficit + 100, 120, 150, 98_000) > flux
                && Transpiration.BigLeafWPerM2(net, airC, deficit, 120, 200, 98_000) < flux;
        });

    [Fact]
    public void Saturated_still_dark_air_takes_none()
    {
        Assert.Equal(0, Transpiration.BigLeafWPerM2(0, 20, 0, 100, 100, 101_300));
        Assert.Equal(0, Transpiration.QuickWPerM2(0, 0, 3, 0.4, 20));
        Assert.Equal(0, Transpiration.QuickWPerM2(500, 1500, 0, 0.4, 20));
    }

    [Fact]
    public void Stomata_close_in_the_dark_and_in_dry_air()
    {
        double open = Transpiration.StomatalSPerM(150, 500, 82);
        Assert.True(Transpiration.StomatalSPerM(0, 500, 82) > 4 * open);
        Assert.True(Transpiration.StomatalSPerM(150, 3000, 82) > open);
        Assert.True(open > 82);
    }

    [Fact]
    public void The_sun_does_not_shine_at_night()
    {
        Assert.Equal(0, Fao56.PeriodExtraterrestrialMjPerM2(40, -90, -90, 80, 0.5, 1));
        double sum = 0;
        for (int hour = 0; hour < 24; hour++)
        {
            sum += Fao56.PeriodExtraterrestrialMjPerM2(40, -90, -90, 170, hour + 0.5, 1);
        }

        Assert.Equal(Fao56.DailyExtraterrestrialMjPerM2(40, 170), sum, 1e-6);
    }
}
