using Glazewright.Design.LightMaps;
using Glazewright.Design.Tests.GainTables;
using Glazewright.Science.Light;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Tests.LightMaps;

/// <summary>The isotropic sky beside the anisotropic one: both hold the file's energy on the level; only where it comes from differs.</summary>
public class EvenSkyTests
{
    [Fact]
    public void Both_skies_have_the_file_s_energy_on_the_level()
    {
        SunGrid grid = SunGrid.Even(72, 36);
        SkyMonths perez = SkyMonths.Of(LightJobs.Weather, 90, 0.2, grid);
        SkyMonths even = SkyMonths.Of(LightJobs.Weather, 90, 0.2, grid, evenSky: true);
        for (int m = 0; m < 12; m++)
        {
            // Nodes 2.5° apart stand for the sun between them, and around a sun below 5° the anisotropic model gives less than its share: 1 %.
            Assert.Equal(even.Global[m], Level(even, grid, m), 0.01 * even.Global[m]);
            Assert.Equal(perez.Global[m], Level(perez, grid, m), 0.01 * perez.Global[m]);
            Assert.Equal(0, even.Horizon[m]);
            Assert.True(even.Dome[m] > perez.Dome[m]);
            Assert.True(even.Beam[m].Sum() < perez.Beam[m].Sum());
        }
    }

    // Around the sun and along the horizon stands part of a real sky's light: a house that looks south gets less December light from an even one.
    [Fact]
    public void December_is_told_under_both()
    {
        LightMap map = LightJobs.Map(TestJobs.OneHouse());
        double perez = map.Report.Figures.Single(f => f.Id == "A/light/december-mean").Value;
        double even = map.Report.Figures.Single(f => f.Id == "A/light/december-mean-even-sky").Value;
        Assert.InRange(even / perez, 0.85, 1);
    }

    private static double Level(SkyMonths sky, SunGrid grid, int month) =>
        sky.Dome[month] + Enumerable.Range(0, grid.Count).Sum(n => sky.Beam[month][n] * grid.Direction(n).Z);
}
