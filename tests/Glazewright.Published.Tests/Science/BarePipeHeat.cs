using Glazewright.Design.Catalogues;

namespace Glazewright.Published.Tests.Science;

/// <summary>Heat of a bare level pipe: Churchill and Chu 1975, Int. J. Heat Mass Transfer 18:1049, eq. for horizontal cylinders, and radiation (both from memory).</summary>
public class BarePipeHeat
{
    // 1-1/4 in steel pipe is 42.2 mm outside; water of 140 °F, air of 65 °F; steel painted or rusted, emissivity 0.9. Air at the film's mean of 39 °C: ν 1.69e-5, k 0.0271, Pr 0.705.
    [Fact]
    public void The_catalogues_bench_pipe_gives_what_the_correlation_says()
    {
        const double diameterM = 0.0422, waterC = 60, airC = 18.3, viscosity = 1.69e-5, conductivity = 0.0271, prandtl = 0.705;
        double rayleigh = 9.81 / (0.5 * (waterC + airC) + 273.15) * (waterC - airC) * Math.Pow(diameterM, 3) / (viscosity * viscosity) * prandtl;
        double nusselt = Math.Pow(0.60 + 0.387 * Math.Pow(rayleigh, 1.0 / 6) / Math.Pow(1 + Math.Pow(0.559 / prandtl, 9.0 / 16), 8.0 / 27), 2);
        double convectionWm2 = nusselt * conductivity / diameterM * (waterC - airC);
        double radiationWm2 = 0.9 * 5.670374e-8 * (Math.Pow(waterC + 273.15, 4) - Math.Pow(airC + 273.15, 4));
        double heatWPerM = (convectionWm2 + radiationWm2) * Math.PI * diameterM;
        Assert.Equal(heatWPerM, CatalogueReader.Generic.Pipes.Single(p => p.Id == "bench-pipe-1-1/4").OutputWPerM, 0.05 * heatWPerM);
    }
}
