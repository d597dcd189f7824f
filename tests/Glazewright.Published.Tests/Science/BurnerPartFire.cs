using Glazewright.Design.Catalogues;

namespace Glazewright.Published.Tests.Science;

/// <summary>
/// The catalogue's burners at part of their fire against the Siegert formula of stack loss for natural gas, ΔT (0.66/(21 − O₂) + 0.009) % of the net heating value (as in EN 50379; constants from memory),
/// and turndowns that makers publish (2:1 of two-stage valves, 4:1 of modulating unit heaters, read).
/// </summary>
public class BurnerPartFire
{
    private const double NetOverGross = 1 / 1.109; // natural gas, common tables

    private static double GrossEfficiency(double overRoomK, double oxygenPercent) => (1 - overRoomK * (0.66 / (21 - oxygenPercent) + 0.009) / 100) * NetOverGross;

    [Fact]
    public void Efficiencies_lie_between_what_leaner_and_richer_fires_leave()
    {
        foreach (HeaterEntry e in CatalogueReader.Generic.Heaters.Where(h => h.Part is not null))
        {
            // Full fire: flue 170 to 230 °C, 5 to 8 % O₂.
            Assert.InRange(e.EfficiencyFraction, GrossEfficiency(210, 8), GrossEfficiency(150, 5));
            // Least fire: flue gas cooler, air in excess: 110 to 140 °C, 9 to 14 % O₂ (to 15 where its air stays).
            Assert.InRange(e.Part!.LeastEfficiencyFraction, GrossEfficiency(120, e.Part.TwoStage ? 15 : 14), GrossEfficiency(90, 9));
        }
    }

    [Fact]
    public void Turndowns_are_those_published()
    {
        Assert.All(CatalogueReader.Generic.Heaters.Where(h => h.Fire == HeaterFire.TwoStage), h => Assert.Equal(0.5, h.Part!.LeastFraction));
        Assert.All(CatalogueReader.Generic.Heaters.Where(h => h.Fire == HeaterFire.Modulating && h.OutputW < 80_000), h => Assert.Equal(0.25, h.Part!.LeastFraction));
    }
}
