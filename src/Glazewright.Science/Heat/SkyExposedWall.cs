using Glazewright.Science.Guards;
using Glazewright.Science.Roots;

namespace Glazewright.Science.Heat;

/// <summary>Heat through a wall or roof at night, with its outer face between wind and sky.</summary>
/// <param name="FluxWPerM2">Heat lost, W/m².</param>
/// <param name="OuterFaceC">Outer face, °C: below the outside air where the sky takes more than the house gives.</param>
/// <param name="InnerFaceC">Inner face, °C.</param>
public sealed record NightLoss(double FluxWPerM2, double OuterFaceC, double InnerFaceC);

/// <summary>Night loss of a sheet that sees the sky.</summary>
/// <remarks>
/// Steady balance of the outer face: conducted from inside = convected to the air + radiated to sky and ground, view of the sky (1 + cos tilt)/2. Convection is
/// the Handbook's combined outdoor film less the radiation it holds (0.9 · 4σT³ near 10 °C), so that an overcast sky at air temperature gives the handbook U back
/// (test). Heat radiation through the sheet itself is left out: films lose more.
/// </remarks>
public static class SkyExposedWall
{
    /// <summary>What the combined films of the Handbook hold of radiation, W/(m² K).</summary>
    public const double RadiationInFilmWPerM2K = 4.6;

    private const double EmissivityFraction = 0.9;
    private const double ZeroCelsiusK = 273.15;

    /// <summary>Loss on a night.</summary>
    /// <param name="insideC">Inside air, °C, −30 to 60.</param>
    /// <param name="outsideC">Outside air and ground, °C, −60 to 60.</param>
    /// <param name="skyC">Temperature the sky radiates with, °C, −120 to 60.</param>
    /// <param name="tiltDeg">Slope from horizontal, 0 to 90°.</param>
    /// <param name="windMPerS">Wind at the surface, m/s, 0 to 40.</param>
    /// <param name="coreM2KPerW">Resistance of the sheet without films, m² K/W, 0 to 20.</param>
    /// <returns>Flux and faces.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static NightLoss Of(double insideC, double outsideC, double skyC, double tiltDeg, double windMPerS, double coreM2KPerW)
    {
        Within.Require(insideC, -30, 60);
        Within.Require(outsideC, -60, 60);
        Within.Require(skyC, -120, 60);
        Within.Require(tiltDeg, 0, 90);
        Within.Require(coreM2KPerW, 0, 20);
        double indoorFilm = SurfaceFilm.IndoorWPerM2K(tiltDeg, heatUp: insideC >= outsideC);
        double convection = SurfaceFilm.OutdoorWPerM2K(windMPerS) - RadiationInFilmWPerM2K;
        double inward = 1 / (1 / indoorFilm + coreM2KPerW);
        double skyView = 0.5 * (1 + Math.Cos(tiltDeg * Math.PI / 180));
        double Surplus(double faceC) =>
            inward * (insideC - faceC)
            - convection * (faceC - outsideC)
            - EmissivityFraction * SkyTemperature.StefanBoltzmann
                * (Fourth(faceC) - skyView * Fourth(skyC) - (1 - skyView) * Fourth(outsideC));
        double least = Math.Min(Math.Min(insideC, outsideC), skyC) - 1;
        double most = Math.Max(Math.Max(insideC, outsideC), skyC) + 1;
        double faceC = Bracketed.Find(Surplus, least, most, 1e-9).Argument;
        double flux = inward * (insideC - faceC);
        return new NightLoss(flux, faceC, insideC - flux / indoorFilm);
    }

    private static double Fourth(double celsius) => Math.Pow(celsius + ZeroCelsiusK, 4);
}
