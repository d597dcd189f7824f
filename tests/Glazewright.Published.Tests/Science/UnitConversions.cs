using Glazewright.Design.Quantities;

namespace Glazewright.Published.Tests.Science;

/// <summary>Exact conversions of the trade's units (NIST SP 811 appendix B values; from memory), against the table every typed quantity goes through.</summary>
public class UnitConversions
{
    // Half the last digit of the printed factor.
    [Theory]
    [InlineData("1 hp", QuantityKind.Power, 745.7, 0.05)]
    [InlineData("1 cfm", QuantityKind.AirFlow, 0.000471947, 5e-10)]
    [InlineData("1 inwg", QuantityKind.Pressure, 249.09, 0.005)]
    [InlineData("1 therm", QuantityKind.Energy, 29.307 * 3.6e6, 0.0005 * 3.6e6)]
    [InlineData("3412.14 Btu", QuantityKind.Energy, 3.6e6, 6)]
    [InlineData("12000 Btu/h", QuantityKind.Power, 3517, 0.5)]
    [InlineData("1 gpm", QuantityKind.WaterFlow, 6.30902e-5, 5e-11)]
    [InlineData("1 psi", QuantityKind.Pressure, 6894.757, 0.0005)]
    [InlineData("0.17611 Btu/h·ft²·F", QuantityKind.Transmittance, 1, 0.00003)]
    public void Published_factor(string typed, QuantityKind kind, double publishedSi, double tolerance)
    {
        Assert.True(QuantityReader.TryRead(typed, kind, out Quantity quantity, out Misreading? wrong), wrong?.Wrong);
        Assert.Equal(publishedSi, quantity.Inside, tolerance);
    }
}
