using CsCheck;
using Glazewright.Science.Air;

namespace Glazewright.Science.Tests.Air;

public class AirPairTests
{
    private static readonly AirProperty[] All = Enum.GetValues<AirProperty>();

    private static double Value(AirState air, AirProperty property) => property switch
    {
        AirProperty.DryBulb => air.DryBulbC,
        AirProperty.WetBulb => air.WetBulbC,
        AirProperty.DewPoint => air.DewPointC,
        AirProperty.RelativeHumidity => air.RelativeHumidityFraction,
        AirProperty.HumidityRatio => air.HumidityRatio,
        AirProperty.VapourPressure => air.VapourPressurePa,
        AirProperty.VapourDeficit => air.VapourDeficitPa,
        AirProperty.Enthalpy => air.EnthalpyJPerKg,
        AirProperty.Volume => air.VolumeM3PerKg,
        _ => air.DensityKgPerM3,
    };

    [Fact]
    public void Forty_pairs_fix_a_state_and_five_do_not()
    {
        (AirProperty A, AirProperty B)[] pairs = [.. All.SelectMany(a => All.Where(b => b > a).Select(b => (a, b)))];
        Assert.Equal(45, pairs.Length);
        Assert.Equal(5, pairs.Count(p => AirPair.Problem(p.A, p.B) is not null));
        Assert.All(All, a => Assert.Equal(PairProblem.SayTheSame, AirPair.Problem(a, a)));
    }

    // A state's own properties, taken two by two in both orders, must lead back to it. The iced wet bulb just under frost is left out: there two lines answer (AirState.WetBulbC).
    [Fact]
    public void Any_two_properties_lead_back_to_the_state() =>
        Gen.Select(Gen.Double[-40, 60], Gen.Double[0.05, 0.98], Gen.Double[60_000, 105_000]).Sample((t, humidity, pressure) =>
        {
            AirState air = AirState.FromRelativeHumidity(t, humidity, pressure);
            bool frost = air.WetBulbC is > -3 and < 0.5;
            foreach (AirProperty a in All)
            {
                foreach (AirProperty b in All)
                {
                    if (AirPair.Problem(a, b) is not null || (frost && (a == AirProperty.WetBulb || b == AirProperty.WetBulb)))
                    {
                        continue;
                    }

                    PairReading read = AirPair.Read(a, Value(air, a), b, Value(air, b), pressure);
                    AirState back = Assert.IsType<PairReading.Fixed>(read).State;
                    Assert.Equal(air.DryBulbC, back.DryBulbC, 2e-4);
                    Assert.Equal(air.HumidityRatio, back.HumidityRatio, 1e-6 * air.HumidityRatio + 1e-7);
                }
            }
        }, iter: 300);

    [Theory]
    [InlineData(AirProperty.DryBulb, 20, AirProperty.WetBulb, 21, PairProblem.BeyondSaturation)]
    [InlineData(AirProperty.DryBulb, 20, AirProperty.DewPoint, 20.1, PairProblem.BeyondSaturation)]
    [InlineData(AirProperty.DryBulb, 20, AirProperty.RelativeHumidity, 1.2, PairProblem.BeyondSaturation)]
    [InlineData(AirProperty.DryBulb, 35, AirProperty.WetBulb, 5, PairProblem.DrierThanDry)]
    [InlineData(AirProperty.DryBulb, -280, AirProperty.RelativeHumidity, 0.5, PairProblem.NoSuchValue)]
    [InlineData(AirProperty.DryBulb, 20, AirProperty.VapourPressure, -5, PairProblem.NoSuchValue)]
    [InlineData(AirProperty.DryBulb, double.NaN, AirProperty.RelativeHumidity, 0.5, PairProblem.NoSuchValue)]
    [InlineData(AirProperty.DryBulb, 95, AirProperty.RelativeHumidity, 0.5, PairProblem.OutOfRange)]
    [InlineData(AirProperty.DewPoint, 12, AirProperty.HumidityRatio, 0.009, PairProblem.SayTheSame)]
    [InlineData(AirProperty.WetBulb, 20, AirProperty.Enthalpy, 57_000, PairProblem.RunAlongEachOther)]
    [InlineData(AirProperty.RelativeHumidity, 1, AirProperty.VapourDeficit, 0, PairProblem.SayTheSame)]
    [InlineData(AirProperty.DewPoint, 25, AirProperty.WetBulb, 20, PairProblem.BeyondSaturation)]
    [InlineData(AirProperty.Density, 3, AirProperty.RelativeHumidity, 0.5, PairProblem.OutOfRange)]
    public void Impossible_air_is_told(AirProperty a, double first, AirProperty b, double second, PairProblem problem) =>
        Assert.Equal(problem, Assert.IsType<PairReading.Fault>(AirPair.Read(a, first, b, second, 101_325)).Problem);

    // The fast way must be the exact way: below, at and above frost, dry to saturated, low to high.
    [Fact]
    public void All_properties_at_once_are_the_state_s_own() =>
        Gen.Select(Gen.Double[-60, 80], Gen.Double[0.001, 1], Gen.Double[60_000, 108_000]).Sample((t, humidity, pressure) =>
        {
            AirState air = AirState.FromRelativeHumidity(t, humidity * Math.Min(1, 45_000 / Saturation.PressurePa(t)), pressure);
            if (air.HumidityRatio < 2e-7)
            {
                return;
            }

            AirProperties all = AirProperties.Of(t, air.HumidityRatio, pressure);

            // The table goes over from ice to water at 0 °C, the Handbook's formulas at 0.01 °C, where both lines are 1e-4 apart.
            if (NearIce(t) || NearIce(air.WetBulbC) || NearIce(air.DewPointC))
            {
                return;
            }

            Assert.Equal(air.WetBulbC, all.WetBulbC, 1e-5);
            Assert.Equal(Math.Max(air.DewPointC, -100), all.DewPointC, 1e-5);
            Assert.Equal(air.RelativeHumidityFraction, all.RelativeHumidityFraction, 1e-7);
            // At saturation the table's 1e-8 of the vapour, times its latent heat.
            Assert.Equal(air.EnthalpyJPerKg, all.EnthalpyJPerKg, 2e-8 * 2.6e6 * air.HumidityRatio + 1e-6);
            Assert.Equal(air.VapourDeficitPa, all.VapourDeficitPa, 1e-7 * Saturation.PressurePa(t));
            Assert.Equal(air.VolumeM3PerKg, all.VolumeM3PerKg, 2e-8 * air.VolumeM3PerKg);
        }, iter: 5000);

    private static bool NearIce(double celsius) => celsius is > -0.002 and < 0.012;

    [Fact]
    public void All_properties_of_nonsense_stay_finite()
    {
        foreach (double odd in (double[])[double.NaN, double.PositiveInfinity, -500, 0, 1e9])
        {
            AirProperties p = AirProperties.Of(odd, odd, 101_325);
            Assert.True(double.IsNaN(odd) || double.IsFinite(p.WetBulbC + p.DewPointC + p.EnthalpyJPerKg));
        }
    }
}
