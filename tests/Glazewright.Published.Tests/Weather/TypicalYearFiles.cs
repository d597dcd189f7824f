using Glazewright.Science.Weather;

namespace Glazewright.Published.Tests.Weather;

/// <summary>
/// Thirty-three public typical years (TMY3 of NREL, CWEC2016, TMYx, PVGIS). Station facts read in the files; the closure's rms and place and the annual sum were
/// computed with numpy and another sun code when the files were gathered (computed). The files are not in the repository.
/// </summary>
public class TypicalYearFiles
{
    // Columns: file, site, offset of the best closure on a half-hour grid, its rms rounded to 1 W/m2, annual global kWh/m2.
    [Theory]
    [InlineData("USA_MN_Duluth.Intl.AP.727450_TMY3.epw.gz", "duluth-mn", -0.5, 2, 1342)]
    [InlineData("USA_VT_Burlington.Intl.AP.726170_TMY3.epw.gz", "burlington-vt", -0.5, 5, 1341)]
    [InlineData("USA_NY_Buffalo-Greater.Buffalo.Intl.AP.725280_TMY3.epw.gz", "buffalo-ny", -0.5, 1, 1359)]
    [InlineData("USA_MI_Detroit.Metro.AP.725370_TMY3.epw.gz", "detroit-mi", -0.5, 2, 1382)]
    [InlineData("USA_IL_Chicago-OHare.Intl.AP.725300_TMY3.epw.gz", "chicago-il", -0.5, 2, 1407)]
    [InlineData("USA_IA_Cedar.Rapids.Muni.AP.725450_TMY3.epw.gz", "cedar-rapids-ia", -0.5, 2, 1299)]
    [InlineData("USA_IN_Indianapolis.Intl.AP.724380_TMY3.epw.gz", "indianapolis-in", -0.5, 4, 1500)]
    [InlineData("USA_MA_Boston-Logan.Intl.AP.725090_TMY3.epw.gz", "boston-ma", -0.5, 1, 1408)]
    [InlineData("USA_NJ_Cape.May.County.AP.745966_TMY3.epw.gz", "cape-may-nj", -0.5, 3, 1569)]
    [InlineData("USA_MD_Baltimore-Washington.Intl.AP.724060_TMY3.epw.gz", "baltimore-md", -0.5, 1, 1488)]
    [InlineData("USA_NC_Raleigh-Durham.Intl.AP.723060_TMY3.epw.gz", "raleigh-nc", -0.5, 4, 1589)]
    [InlineData("USA_GA_Atlanta-Hartsfield-Jackson.Intl.AP.722190_TMY3.epw.gz", "atlanta-ga", -0.5, 1, 1686)]
    [InlineData("USA_FL_Tampa.Intl.AP.722110_TMY3.epw.gz", "tampa-fl", -0.5, 1, 1811)]
    [InlineData("USA_FL_Miami.Intl.AP.722020_TMY3.epw.gz", "miami-fl", -0.5, 2, 1753)]
    [InlineData("USA_TX_Houston-Bush.Intercontinental.AP.722430_TMY3.epw.gz", "houston-tx", -0.5, 1, 1627)]
    [InlineData("USA_TX_Dallas-Fort.Worth.Intl.AP.722590_TMY3.epw.gz", "dallas-tx", -0.5, 1, 1784)]
    [InlineData("USA_OK_Oklahoma.City-Wiley.Post.Field.723544_TMY3.epw.gz", "oklahoma-city-ok", -0.5, 2, 1619)]
    [InlineData("USA_CO_Denver.Intl.AP.725650_TMY3.epw.gz", "denver-co", -0.5, 2, 1670)]
    [InlineData("USA_CO_Colorado.Springs-Peterson.Field.724660_TMY3.epw.gz", "colorado-springs-co", -0.5, 1, 1725)]
    [InlineData("USA_AZ_Phoenix-Sky.Harbor.Intl.AP.722780_TMY3.epw.gz", "phoenix-az", -0.5, 4, 2094)]
    [InlineData("USA_AZ_Tucson.Intl.AP.722740_TMY3.epw.gz", "tucson-az", -0.5, 2, 2062)]
    [InlineData("USA_WA_Seattle-Tacoma.Intl.AP.727930_TMY3.epw.gz", "seattle-wa", -0.5, 4, 1240)]
    [InlineData("USA_OR_Portland.Intl.AP.726980_TMY3.epw.gz", "portland-or", -0.5, 2, 1286)]
    [InlineData("USA_CA_San.Francisco.Intl.AP.724940_TMY3.epw.gz", "san-francisco-ca", -0.5, 2, 1716)]
    [InlineData("CAN_BC_Vancouver.Intl.AP.718920_CWEC2016.epw.gz", "vancouver-bc", -0.5, 1, 1223)]
    [InlineData("ITA_ER_Bologna-Marconi.AP.161400_TMYx.2004-2018.epw.gz", "bologna-it", -0.5, 1, 1546)]
    [InlineData("PVGIS_TMY_45.000N_8.000E_2005-2023.epw.gz", "pvgis-45n8e-it", 0.0, 11, 1436)]
    [InlineData("TMY3_727810_WA-Yakima.csv.gz", "yakima-wa", -0.5, 2, 1487)]
    [InlineData("TMY3_722640_TX-Marfa.csv.gz", "marfa-tx", -0.5, 3, 2082)]
    [InlineData("TMY3_723630_TX-Amarillo.csv.gz", "amarillo-tx", -0.5, 2, 1844)]
    [InlineData("TMY3_722950_CA-Los.Angeles.csv.gz", "los-angeles-ca", -0.5, 1, 1825)]
    [InlineData("TMY3_723170_NC-Greensboro.csv.gz", "greensboro-nc", -0.5, 1, 1566)]
    [InlineData("TMY3_703165_AK-Sand.Point.csv.gz", "sand-point-ak", -0.5, 3, 829)]
    public void Radiation_closes_at_the_gathered_half_hour_within_the_gathered_rms(string file, string site, double offsetH, double rmsWm2, double annualKwhm2)
    {
        WeatherYear year = WeatherCases.ReadOrSkip(file);
        Assert.NotEmpty(site);
        // Real columns of thirty-three places: none is taken for another unit, none holds what cannot be.
        Assert.Empty(year.Rejected);
        Assert.DoesNotContain(year.Notes, n => n.Gravity == WeatherGravity.Warning);
        double sum = 0;
        foreach (double ghi in year.GhiWhm2.Span)
        {
            sum += ghi;
        }

        Assert.Equal(annualKwhm2, sum / 1000, tolerance: 0.6);
        RadiationClosure closure = RadiationClosure.Of(year.WithRadiationOffset(offsetH));

        // Half of the last printed digit of the rms.
        Assert.InRange(closure.StatedRmsWm2, 0, rmsWm2 + 0.5);
        if (offsetH == -0.5)
        {
            Assert.Equal(ClosureVerdict.Closes, RadiationClosure.Of(year).Verdict);
            Assert.InRange(RadiationClosure.Of(year.WithRadiationOffset(0)).StatedRmsWm2, 15, 60);
        }
    }

    /// <summary>
    /// Clark and Allen (1978) with the files' own dry bulb, dew point and opaque cover gives their infrared column back: 0.3 W/m² rms in every EPW tried when the files were
    /// gathered (computed); whole watt-hours alone make 0.29. (The TMYx file of
    /// Bologna is left out: its makers smoothed the temperatures at the joins of its months afterwards, so 113 hours there differ by up to 23 W/m².)
    /// </summary>
    [Theory]
    [InlineData("USA_MN_Duluth.Intl.AP.727450_TMY3.epw.gz")]
    [InlineData("USA_FL_Miami.Intl.AP.722020_TMY3.epw.gz")]
    [InlineData("USA_CO_Denver.Intl.AP.725650_TMY3.epw.gz")]
    [InlineData("CAN_BC_Vancouver.Intl.AP.718920_CWEC2016.epw.gz")]
    [InlineData("USA_VT_Burlington.Intl.AP.726170_TMY3.epw.gz")]
    public void Infrared_is_Clark_and_Allen(string file) =>
        Assert.InRange(WeatherReport.Of(WeatherCases.ReadOrSkip(file)).InfraredRmsWm2, 0.2, 0.35);
}
