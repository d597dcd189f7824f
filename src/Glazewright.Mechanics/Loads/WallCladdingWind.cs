using Glazewright.Mechanics.Guards;

namespace Glazewright.Mechanics.Loads;

/// <summary>Wind on wall parts (girts, sheets): components and cladding, buildings up to 18 m.</summary>
public static class WallCladdingWind
{
    /// <summary>Least pressure either way: 16 psf. From memory.</summary>
    public const double LeastPa = 16 * UsUnits.PaPerPsf;

    /// <summary>Design pressures of a wall part.</summary>
    /// <param name="site">The site.</param>
    /// <param name="meanRoofHeightM">Mean roof height, m, 0 to 18.</param>
    /// <param name="areaM2">Effective wind area, m² (a girt: span times the larger of spacing and a third of the span).</param>
    /// <param name="nearCorner">True in the end zone of a wall.</param>
    /// <param name="enclosure">Enclosure.</param>
    /// <returns>Inward (positive) and outward (negative), Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    /// <remarks>
    /// ASCE 7 figure 30.3-1, walls: GCp +1.0 falling to +0.7, zone 4 −1.1 to −0.8, zone 5 −1.4 to −0.8, with the logarithm of the area from 10 to
    /// 500 ft². From memory. Exposure B is taken no lower than Kz 0.70 (chapter 30; read).
    /// </remarks>
    public static WallPressures On(WindSite site, double meanRoofHeightM, double areaM2, bool nearCorner, Enclosure enclosure)
    {
        Require.Within(meanRoofHeightM, 0, 18.3);
        Require.Within(areaM2, 0, 10_000);
        double floor = site.Exposure == WindExposure.B
            ? Math.Max(1, 0.70 / VelocityPressure.ExposureFactor(site.Edition, WindExposure.B, meanRoofHeightM))
            : 1;
        double pa = VelocityPressure.DirectedPa(site, meanRoofHeightM) * floor;
        double areaFt2 = Math.Clamp(areaM2 / (UsUnits.MPerFt * UsUnits.MPerFt), 10, 500);
        double share = Math.Log(areaFt2 / 10) / Math.Log(50);
        double internalFactor = GableWind.InternalFactor(enclosure);
        double inward = 1.0 - 0.3 * share + internalFactor;
        double outward = (nearCorner ? -1.4 + 0.6 * share : -1.1 + 0.3 * share) - internalFactor;
        return new WallPressures(Math.Max(LeastPa, inward * pa), Math.Min(-LeastPa, outward * pa));
    }
}

/// <summary>Design pressures of a wall part.</summary>
/// <param name="InwardPa">Inward, positive, Pa.</param>
/// <param name="OutwardPa">Outward, negative, Pa.</param>
public sealed record WallPressures(double InwardPa, double OutwardPa);
