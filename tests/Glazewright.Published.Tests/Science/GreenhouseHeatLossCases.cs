using Glazewright.Science.Air;
using Glazewright.Science.Heat;

namespace Glazewright.Published.Tests.Science;

/// <summary>
/// Steady heat loss of plain houses. GH-1: a supplier's sizing page (read; its arithmetic only). GH-2 to GH-4: computed from the trade's U-values and the
/// form q = A U ΔT + 0.018 V N ΔT (from memory). TM-6: state energy code table WAC 51-11C A106.1 (read). TM-5: ISO 13370 formula from memory, computed.
/// </summary>
public class GreenhouseHeatLossCases
{
    private const double FootM = 0.3048;
    private const double SquareFootM2 = FootM * FootM;
    private const double UnitWPerM2K = 5.678263;
    private const double UnitWPerK = 0.5275279;

    // 0.018 Btu/(ft³ °F): the rule's own air.
    private const double RuleJPerM3K = 0.018 * 1055.05585262 * 1.8 / (FootM * FootM * FootM);

    [Fact]
    public void Tunnel_22_by_96()
    {
        double endsWPerK = 352 * SquareFootM2 * 0.53 * UnitWPerM2K;
        double roofWPerK = 3456 * SquareFootM2 * 0.7 * UnitWPerM2K;
        Assert.Equal(186.56, endsWPerK / UnitWPerK, 0.1);
        Assert.Equal(2419.2, roofWPerK / UnitWPerK, 0.1);
        Assert.Equal(2605.8, (endsWPerK + roofWPerK) / UnitWPerK, 0.1);
    }

    // 0.1 %: as the case states.
    [Theory]
    [InlineData(1.1, 463_131)]
    [InlineData(0.70, 310_224)]
    [InlineData(0.62, 279_643)]
    [InlineData(0.58, 264_352)]
    public void Gable_30_by_96(double uValue, double publishedBtuPerH)
    {
        double slopeFt = Math.Sqrt(15 * 15 + 7.5 * 7.5);
        double areaFt2 = 2 * slopeFt * 96 + 2 * 8 * 96 + 2 * (30 * 8 + 0.5 * 30 * 7.5);
        double volumeM3 = (30 * 8 + 0.5 * 30 * 7.5) * 96 * FootM * FootM * FootM;
        double conductance = areaFt2 * SquareFootM2 * uValue * UnitWPerM2K;
        double lossW = (conductance + SteadyLoss.InfiltrationWPerK(volumeM3, 1.0, RuleJPerM3K)) * 70 / 1.8;
        Assert.Equal(publishedBtuPerH, lossW / 0.29307107, 0.001 * publishedBtuPerH);
    }

    [Fact]
    public void Asymmetric_24_by_48()
    {
        double ridgeFt = 7 + 8 * 10 / 12.0;
        double leftFt = Math.Sqrt(8 * 8 + (ridgeFt - 7) * (ridgeFt - 7));
        double rightFt = Math.Sqrt(16 * 16 + (ridgeFt - 7) * (ridgeFt - 7));
        double endFt2 = 24 * 7 + 0.5 * 24 * (ridgeFt - 7);
        double roofFt2 = (leftFt + rightFt) * 48;
        Assert.Equal(1331.86, roofFt2, 0.01);
        Assert.Equal(496.0, 2 * endFt2, 0.01);
        double conductance = (roofFt2 * 0.58 + (672 + 2 * endFt2) * 0.62) * SquareFootM2 * UnitWPerM2K;
        double volumeM3 = endFt2 * 48 * FootM * FootM * FootM;
        double airWPerK = SteadyLoss.InfiltrationWPerK(volumeM3, 0.75, RuleJPerM3K);
        Assert.Equal(89_798, conductance * 60 / 1.8 / 0.29307107, 90.0);
        Assert.Equal(9642, airWPerK * 60 / 1.8 / 0.29307107, 10.0);
        Assert.Equal(99_440, (conductance + airWPerK) * 60 / 1.8 / 0.29307107, 100.0);
    }

    [Fact]
    public void Slab_perimeter() =>
        Assert.Equal(
            12_877,
            SlabOnGround.PerimeterLossW(SlabOnGround.FFactorWPerMK(SlabEdge.Bare), 252 * FootM, 70 / 1.8) / 0.29307107,
            10.0);

    [Theory]
    [InlineData(SlabEdge.Bare, 0.73)]
    [InlineData(SlabEdge.TwoFeetDownR5, 0.58)]
    [InlineData(SlabEdge.TwoFeetDownR10, 0.54)]
    [InlineData(SlabEdge.TwoFeetDownR15, 0.52)]
    [InlineData(SlabEdge.FourFeetDownR5, 0.54)]
    [InlineData(SlabEdge.FourFeetDownR10, 0.48)]
    [InlineData(SlabEdge.FourFeetDownR15, 0.45)]
    public void Perimeter_factors(SlabEdge edge, double publishedIp) =>
        Assert.Equal(publishedIp, SlabOnGround.FFactorWPerMK(edge) * FootM / 1.8 / 0.29307107, 0.0005);

    // 0.1 %: the formula is closed.
    [Theory]
    [InlineData(80, 36, 0.3, 0, 2.0, 0.82142)]
    [InlineData(100, 40, 0.3, 1, 2.0, 0.41529)]
    [InlineData(9.144 * 29.26, 2 * (9.144 + 29.26), 0.1, 0, 1.5, 0.53594)]
    public void Iso_13370_slab(double areaM2, double perimeterM, double wallM, double resistance, double ground, double published)
    {
        double thicknessM = SlabOnGround.EquivalentThicknessM(wallM, resistance, ground);
        Assert.Equal(published, SlabOnGround.UValueWPerM2K(areaM2, perimeterM, thicknessM, ground), 0.001 * published);
    }

    [Fact]
    public void Iso_13370_edge_insulation()
    {
        double thicknessM = SlabOnGround.EquivalentThicknessM(0.3, 0, 2.0);
        double edge = SlabOnGround.EdgeWPerMK(0.6, 0.05, 0.035, thicknessM, 2.0);
        Assert.Equal(-0.43799, edge, 0.0005);
        Assert.Equal(49.946, 80 * SlabOnGround.UValueWPerM2K(80, 36, thicknessM, 2.0) + 36 * edge, 0.05);
    }

    [Fact]
    public void Film_u_value()
    {
        Assert.Equal(6.099, BuildUp.UValueWPerM2K(8.3, [], 23), 0.0005);
        Assert.Equal(3.087, BuildUp.UValueWPerM2K(8.3, [0.16], 23), 0.0005);
    }

    // 0.02 K: the case was computed with the Magnus formula.
    [Theory]
    [InlineData(18, 0.70, -20, 6.3, -10.878, 12.447)]
    [InlineData(18, 0.70, -20, 3.3, 2.873, 12.447)]
    [InlineData(16, 0.85, -10, 2.0, 9.727, 13.479)]
    public void Steady_condensation(double insideC, double humidity, double outsideC, double uValue, double surfaceC, double dewC)
    {
        AirState inside = AirState.FromRelativeHumidity(insideC, humidity, 101_325);
        SteadyCondensation state = Condensation.Steady(inside, outsideC, uValue, 8.29, 3);
        Assert.Equal(surfaceC, state.DrySurfaceC, 0.02);
        Assert.Equal(dewC, state.DewPointC, 0.02);
        Assert.True(state.Wet);
        Assert.True(state.RateKgPerM2S > 0);
        Assert.InRange(state.WetSurfaceC, state.DrySurfaceC, state.DewPointC);
    }

    // Closed forms, 1e-3 relative.
    [Fact]
    public void Steady_heat_with_fans_and_walls()
    {
        double airWPerK = 4 * 1.2 * 1006;
        Assert.Equal(5.427, SteadyLoss.RiseK(30_000, 700, airWPerK), 0.005);
        Assert.Equal(6.21, SteadyLoss.RiseK(30_000, 0, airWPerK), 0.006);
    }

    // EC-1, EC-2: heating values from a university extension table (read); arithmetic.
    [Fact]
    public void Fuel_for_a_million_btu()
    {
        double million = 1e6 * Fuel.BtuJ;
        Assert.Equal(13.66, Fuel.Units(million, 91_500 * Fuel.BtuJ, 0.80), 0.005);
        Assert.Equal(13.51, Fuel.Units(million, Fuel.HeatJPerUnit(FuelKind.PropaneGallon), 0.80), 0.005);
        Assert.Equal(12.5, Fuel.Units(million, Fuel.HeatJPerUnit(FuelKind.NaturalGasTherm), 0.80), 0.005);
        Assert.Equal(10.75, Fuel.Units(million, Fuel.HeatJPerUnit(FuelKind.NaturalGasTherm), 0.93), 0.005);
        Assert.Equal(9.03, Fuel.Units(million, Fuel.HeatJPerUnit(FuelKind.FuelOilGallon), 0.80), 0.005);
        Assert.Equal(293.1, Fuel.Units(million, Fuel.HeatJPerUnit(FuelKind.ElectricityKwh), 1), 0.05);
        Assert.Equal(0.0833, Fuel.Units(million, Fuel.HeatJPerUnit(FuelKind.PelletsTon), 0.75), 0.0001);
    }

    [Fact]
    public void Season_by_degree_days()
    {
        double heatJ = SteadyLoss.DegreeDayHeatJ(3000 * UnitWPerK, 7000 / 1.8);
        Assert.Equal(504, heatJ / (1e6 * Fuel.BtuJ), 0.1);
        Assert.Equal(6885, Fuel.Units(heatJ, 91_500 * Fuel.BtuJ, 0.80), 2.0);
    }
}
