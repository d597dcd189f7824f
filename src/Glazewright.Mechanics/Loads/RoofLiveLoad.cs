using Glazewright.Mechanics.Guards;

namespace Glazewright.Mechanics.Loads;

/// <summary>Live loads of greenhouses that the standards and the trade name.</summary>
public static class RoofLiveLoad
{
    /// <summary>Greenhouse roof, per horizontal area: 10 psf, also after reduction. IBC table 1607.1 and 1607.14.2; from memory.</summary>
    public const double GreenhousePa = 10 * UsUnits.PaPerPsf;

    /// <summary>Ordinary roof: 20 psf. IBC table 1607.1; from memory.</summary>
    public const double OrdinaryPa = 20 * UsUnits.PaPerPsf;

    /// <summary>Point load at midspan of a purlin, rafter or truss member: 100 lb. Extension text; read.</summary>
    public const double PersonN = 100 * UsUnits.NPerLbf;

    /// <summary>The most that hanging plants are allowed to be counted as: 15 psf. Extension text; read.</summary>
    public const double MostHangingCropPa = 15 * UsUnits.PaPerPsf;
}
