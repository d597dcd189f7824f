using Glazewright.Design.Duty;

namespace Glazewright.Design.Tests.Duty;

/// <summary>Wet-bulb globe temperature out of the sun.</summary>
public class PeopleInHeatTests
{
    // 0.7 wet bulb + 0.3 globe (ISO 7243:2017), wet bulbs from Stull 2011, J. Appl. Meteorol. Climatol. 50:2267, eq. 1 (±0.3 K in this range), the globe at the air's temperature.
    [Theory]
    [InlineData(31, 95)]
    [InlineData(24, 80)]
    [InlineData(35, 60)]
    public void It_is_that_of_the_standard(double airC, double percent)
    {
        double stull = airC * Math.Atan(0.151977 * Math.Sqrt(percent + 8.313659)) + Math.Atan(airC + percent) - Math.Atan(percent - 1.676331)
            + 0.00391838 * Math.Pow(percent, 1.5) * Math.Atan(0.023101 * percent) - 4.686035;
        Assert.Equal(0.7 * stull + 0.3 * airC, PeopleInHeat.LeastWbgtC(airC, percent, 101_325), 0.7 * 0.5);
    }
}
