using Glazewright.Design.Services;

namespace Glazewright.Published.Tests.Design;

/// <summary>
/// NEC 2023, tables 310.16, 250.122 and chapter 9 table 8. Read at second hand: reprints by two wire-size guides, a voltage-drop guide that prints Ω/km too,
/// a code trainer's newsletter and an engineer's page for table 250.122.
/// </summary>
public class ConductorTables
{
    private static ConductorSize Copper(string name) => ConductorTable.Copper.Single(c => c.Name == name);

    private static ConductorSize Aluminium(string name) => ConductorTable.Aluminium.Single(c => c.Name == name);

    [Theory]
    [InlineData("14", 15, 20, 25), InlineData("12", 20, 25, 30), InlineData("10", 30, 35, 40), InlineData("8", 40, 50, 55), InlineData("6", 55, 65, 75), InlineData("4", 70, 85, 95)]
    [InlineData("2", 95, 115, 130), InlineData("1", 110, 130, 145), InlineData("1/0", 125, 150, 170), InlineData("3/0", 165, 200, 225), InlineData("4/0", 195, 230, 260), InlineData("500", 320, 380, 430)]
    public void Table_310_16_copper(string name, double at60A, double at75A, double at90A) =>
        Assert.Equal((at60A, at75A, at90A), (Copper(name).At60A, Copper(name).At75A, Copper(name).At90A));

    [Theory]
    [InlineData("4", 55, 65, 75), InlineData("2", 75, 90, 100), InlineData("2/0", 115, 135, 150), InlineData("4/0", 150, 180, 205), InlineData("250", 170, 205, 230), InlineData("350", 210, 250, 280)]
    public void Table_310_16_aluminium(string name, double at60A, double at75A, double at90A) =>
        Assert.Equal((at60A, at75A, at90A), (Aluminium(name).At60A, Aluminium(name).At75A, Aluminium(name).At90A));

    // The reprint's Ω/km have three decimals of their own: half of the last, and the half of the last digit of Ω per 1,000 ft behind it.
    [Theory]
    [InlineData("14", 10.071), InlineData("12", 6.333), InlineData("10", 3.970), InlineData("8", 2.507), InlineData("6", 1.611), InlineData("4", 1.010), InlineData("1", 0.505), InlineData("3/0", 0.251)]
    public void Chapter_9_table_8_copper(string name, double publishedOhmPerKm) => Assert.Equal(publishedOhmPerKm, 1000 * Copper(name).OhmPerM, tolerance: 0.0016);

    [Theory]
    [InlineData("2", 1.047), InlineData("1/0", 0.659), InlineData("4/0", 0.328), InlineData("250", 0.278), InlineData("350", 0.198)]
    public void Chapter_9_table_8_aluminium(string name, double publishedOhmPerKm) => Assert.Equal(publishedOhmPerKm, 1000 * Aluminium(name).OhmPerM, tolerance: 0.0006);

    // IEC sections are not AWG, but the areas are known: 12 AWG is 3.31 mm², 4/0 107 mm² (two general tables).
    [Theory]
    [InlineData("12", 3.31), InlineData("10", 5.26), InlineData("8", 8.37), InlineData("6", 13.3)]
    public void Areas(string name, double publishedMm2) => Assert.Equal(publishedMm2, Copper(name).AreaMm2, tolerance: 0.01 * publishedMm2 / 2);

    [Theory]
    [InlineData(15, "14"), InlineData(20, "12"), InlineData(30, "10"), InlineData(60, "10"), InlineData(70, "8"), InlineData(100, "8"), InlineData(200, "6"), InlineData(300, "4"), InlineData(400, "3")]
    [InlineData(500, "2"), InlineData(800, "1/0"), InlineData(1000, "2/0")]
    public void Table_250_122(double breakerA, string name) => Assert.Equal(name, ConductorTable.Ground(breakerA, Copper("500"), Copper("500")).Name);

    // A tool guide's worked example: a 60 A circuit of 6 AWG made 4 AWG for its length; 10 AWG grows by the same 1.59 to 8 AWG.
    [Fact]
    public void A_ground_grows_with_its_conductors() => Assert.Equal("8", ConductorTable.Ground(60, Copper("6"), Copper("4")).Name);
}
