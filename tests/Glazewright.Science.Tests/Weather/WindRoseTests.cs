using Glazewright.Science.Weather;

namespace Glazewright.Science.Tests.Weather;

public class WindRoseTests
{
    [Fact]
    public void A_wind_that_never_turns_is_all_in_its_sector_and_presses_on_the_wall_that_looks_there()
    {
        WindRose south = WindRose.Of([180, 180, 180, 180], [4, 4, 4, 0]);
        Assert.Equal(8, south.MostlyFrom);
        Assert.Equal("S", WindRose.Name(south.MostlyFrom));
        Assert.Equal(0.75, south.ShareFraction(8));
        Assert.Equal(0.25, south.CalmFraction);
        Assert.Equal(4, south.MeanMs(8));
        Assert.Equal(0, south.MeanMs(0));
        Assert.Equal(12, south.PushM2PerS2(180), 1e-12);
        Assert.Equal(-12, south.PushM2PerS2(0), 1e-12);
        Assert.Equal(0, south.PushM2PerS2(90), 1e-12);
        Assert.Equal(0.75, south.OntoFraction(140));
        Assert.Equal(0, south.OntoFraction(130));
        Assert.Equal(4, south.OntoMs(180));
    }

    [Theory]
    [InlineData(0, 0), InlineData(11.2, 0), InlineData(11.3, 1), InlineData(348.8, 0), InlineData(348.7, 15), InlineData(360, 0), InlineData(270, 12)]
    public void Sectors_are_centred_on_their_names(double fromDeg, int sector) => Assert.Equal(1, WindRose.Of([fromDeg], [3]).ShareFraction(sector));

    [Fact]
    public void Sectors_and_calm_are_all_there_is()
    {
        WindRose rose = WindRose.Of([.. Enumerable.Range(0, 720).Select(i => i * 0.5)], [.. Enumerable.Range(0, 720).Select(i => i % 7 * 1.0)]);
        Assert.Equal(1, rose.CalmFraction + Enumerable.Range(0, WindRose.Sectors).Sum(rose.ShareFraction), 1e-12);
    }

    [Fact]
    public void No_hours_blow_nowhere()
    {
        WindRose none = WindRose.Of([], []);
        Assert.Equal(0, none.PushM2PerS2(10));
        Assert.Equal(0, none.OntoFraction(10));
        Assert.Equal(0, none.MeanMs(none.MostlyFrom));
    }
}
