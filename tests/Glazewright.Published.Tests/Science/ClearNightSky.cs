using Glazewright.Science.Heat;

namespace Glazewright.Published.Tests.Science;

/// <summary>Berdahl and Martin 1984, monthly form, computed beside from the printed coefficients (from memory) with general arithmetic; case TM-7 of our list.</summary>
public class ClearNightSky
{
    // Half the last digit printed.
    [Theory]
    [InlineData(20, 10, 1.84)]
    [InlineData(0, -5, -24.67)]
    public void Sky_temperature(double airC, double dewPointC, double computedC) =>
        Assert.Equal(computedC, SkyTemperature.ClearC(airC, dewPointC), 0.02);
}
