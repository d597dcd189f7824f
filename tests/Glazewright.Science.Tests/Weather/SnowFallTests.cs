using Glazewright.Science.Weather;

namespace Glazewright.Science.Tests.Weather;

/// <summary>Falling snow read from the depth on the ground.</summary>
public class SnowFallTests
{
    private static double[] Fallen(double[] depthM, double airC = -5)
    {
        double[] air = new double[8760];
        Array.Fill(air, airC);
        return SnowFall.ByHourM(new HourlyColumn(depthM), new HourlyColumn(air));
    }

    private static double[] Depths(params (int Hour, double DepthM)[] from)
    {
        double[] all = new double[8760];
        foreach ((int hour, double depthM) in from)
        {
            Array.Fill(all, depthM, hour, 8760 - hour);
        }

        return all;
    }

    [Fact]
    public void Only_growth_is_a_fall()
    {
        double[] fallen = Fallen(Depths((100, 0.10), (200, 0.07), (300, 0.12), (400, 0)));
        Assert.Equal(0.10, fallen[100], 1e-12);
        Assert.Equal(0.05, fallen[300], 1e-12);
        Assert.Equal(0.15, fallen.Sum(), 1e-12);
    }

    [Fact]
    public void What_lies_at_the_years_end_lay_at_its_beginning() =>
        Assert.Equal(0, Fallen(Depths((0, 0.2), (2000, 0), (8000, 0.2))).Take(100).Sum());

    [Fact]
    public void A_gap_is_bridged_and_a_file_without_snow_says_so()
    {
        double[] depth = Depths((100, 0.10));
        Array.Fill(depth, double.NaN, 50, 100);
        double[] fallen = Fallen(depth);
        Assert.Equal(0.10, fallen[150], 1e-12);
        double[] none = new double[8760];
        Array.Fill(none, double.NaN);
        Assert.Empty(Fallen(none));
        Assert.Equal(8760, Fallen(new double[8760]).Length);
    }

    [Fact]
    public void In_thaw_a_growing_depth_is_no_snow() => Assert.Equal(0, Fallen(Depths((100, 0.10)), 3).Sum());
}
