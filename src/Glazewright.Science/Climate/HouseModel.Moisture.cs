using Glazewright.Science.Network;

namespace Glazewright.Science.Climate;

public sealed partial class HouseModel
{
    private const double LatentJPerKg = AirConstants.LatentHeatJPerKg;

    private readonly Exchange[] regime = new Exchange[HouseNodes.SurfaceCount];
    private readonly double[] vapourPerPaOf = new double[HouseNodes.SurfaceCount]; // kg/(s Pa)
    private readonly double[] fixedKgPerS = new double[HouseNodes.SurfaceCount];
    private readonly double[] toldFixedW = new double[HouseNodes.SurfaceCount]; // latent heat of a film's rest, as the temperatures were told
    private readonly double[] vapourPerPa = new double[2]; // sums by air space
    private double bookedLatentW;

    /// <summary>How a surface gives or takes vapour over one step.</summary>
    private enum Exchange
    {
        /// <summary>Dry and above the dew point.</summary>
        None,

        /// <summary>Condensing, or drying with film enough.</summary>
        Film,

        /// <summary>The film ends within the step: what is left goes, at a steady rate.</summary>
        Rest,

        /// <summary>A source that does not end: leaves, a floor kept wet.</summary>
        Endless,
    }

    private bool Heats(int surface) => house.CondensationHeats || surface == (int)WetSurface.Canopy;

    private void SetLatent(NetworkState net, HouseState state, in Drive d, in HouseForcing f, double stepS)
    {
        double filmFactor = HouseFilms.VapourPerFilm(d.PressurePa); // kg/(s Pa m²) for each W/(m² K)
        ReadOnlySpan<double> film = state.Film, saturationPa = state.SaturationPa, slope = state.SaturationSlope;
        vapourPerPa[0] = vapourPerPa[1] = 0.0;
        for (int s = 0; s < HouseNodes.SurfaceCount; s++)
        {
            double airPa = HouseNodes.ZoneOfSurface[s] == 0 ? d.VapourBelowPa : d.VapourAbovePa;
            double deficitPa = saturationPa[s] - airPa; // above 0 the surface dries
            (double perPa, Exchange how) = s switch
            {
                < HouseNodes.PartCount => (filmFactor * innerFilm[s] * parts[s].AreaM2, Exchange.Film),
                (int)WetSurface.Curtain => (filmFactor * curtainFilmBelow * house.FloorAreaM2 * Math.Max(d.Closed, film[s] > 0.0 ? 0.05 : 0.0), Exchange.Film),
                (int)WetSurface.Canopy => Leaves(in d, in f, deficitPa, film[s]),
                _ => Ground(film[s], deficitPa, filmFactor),
            };
            if (how == Exchange.Film && deficitPa > 0.0)
            {
                how = film[s] <= 0.0 ? Exchange.None : perPa * deficitPa * stepS > film[s] ? Exchange.Rest : Exchange.Film;
            }

            if (perPa <= 0.0)
            {
                how = Exchange.None;
            }

            regime[s] = how;
            vapourPerPaOf[s] = how is Exchange.Film or Exchange.Endless ? perPa : 0.0;
            fixedKgPerS[s] = how == Exchange.Rest ? film[s] / stepS : 0.0;
            vapourPerPa[HouseNodes.ZoneOfSurface[s]] += vapourPerPaOf[s];

            // Evaporation as a conductance to the temperature at which the tangent meets the air's vapour pressure.
            int node = HouseNodes.NodeOfSurface[s];
            bool heats = Heats(s);
            net.LinkWPerK[link.Latent + s] = heats ? vapourPerPaOf[s] * LatentJPerKg * slope[s] : 0.0;
            net.TemperatureC[HouseNodes.Latent + s] = net.TemperatureC[node] - deficitPa / slope[s];
            toldFixedW[s] = heats ? fixedKgPerS[s] * LatentJPerKg : 0.0;
            net.GainW[node] -= toldFixedW[s];
        }
    }

    // Stanghellini 1987, in the form of Katsoulas and Stanghellini 2019.
    private (double PerPa, Exchange How) Leaves(in Drive d, in HouseForcing f, double deficitPa, double filmKg)
    {
        if (d.LeafAreaIndex <= 0.0)
        {
            return (0.0, Exchange.None);
        }

        double boundary = LeafResistance.BoundarySPerM(d.Circulation > 0.0 || d.ExhaustAirChangesPerHour > 10.0);
        double leaves = house.FloorAreaM2 * LeafResistance.CanopyFactor(d.LeafAreaIndex, d.OutsideDensity, d.PressurePa);
        if (deficitPa <= 0.0 || filmKg > 1e-6 * house.FloorAreaM2)
        {
            return (leaves / boundary, Exchange.Film);
        }

        double lightW = (Sun(f.SunCanopyW) + Clamp(f.LampW, 0.0, 1e9, 0.0) * Clamp(f.LampRadiantFraction, 0.0, 1.0, 0.0) * d.CanopyCover)
            / (d.LeafAreaIndex * house.FloorAreaM2);
        double stomata = LeafResistance.StomatalSPerM(house.LeastStomatalResistanceSPerM, lightW, Clamp(f.Co2Ppm, 200.0, 2000.0, 420.0), deficitPa);
        return (leaves / (boundary + stomata), Exchange.Endless);
    }

    private (double PerPa, Exchange How) Ground(double filmKg, double deficitPa, double filmFactor)
    {
        double wholeFloor = filmFactor * floorFilm * house.FloorAreaM2;
        if (deficitPa <= 0.0)
        {
            return (wholeFloor, Exchange.Film);
        }

        double holds = house.FloorHoldsKgPerM2 * house.FloorAreaM2;
        double wet = holds > 0.0 ? Math.Min(1.0, filmKg / holds) : 0.0;
        return house.WetFloorFraction > wet
            ? (wholeFloor * house.WetFloorFraction, Exchange.Endless)
            : (wholeFloor * wet, Exchange.Film);
    }

    private void SolveHumidity(HouseState state, in Drive d, in HouseForcing f, double stepS)
    {
        Span<double> water = state.Water, film = state.Film, saturationPa = state.SaturationPa;
        double oldBelow = water[0], oldAbove = water[1];
        double perS = 1.0 / stepS, intake = d.Intake * d.WaterEndOverMean, vapour = Clamp(f.VapourKgPerS, 0.0, 1e3, 0.0);
        double below, above;
        Span<double> evaporated = stackalloc double[HouseNodes.SurfaceCount];
        bool again;
        do
        {
            double diagonalBelow = d.AirKgBelow * perS + d.OutsideBelow + intake + d.Exchange + d.Downward;
            double diagonalAbove = d.AirKgAbove * perS + d.OutsideAbove + d.Exchange + d.Upward;
            double rightBelow = d.AirKgBelow * perS * oldBelow + d.OutsideBelow * d.OutsideHumidity + intake * d.IntakeHumidity + d.FogEvaporated + vapour;
            double rightAbove = d.AirKgAbove * perS * oldAbove + d.OutsideAbove * d.OutsideHumidity;
            for (int s = 0; s < HouseNodes.SurfaceCount; s++)
            {
                double source = fixedKgPerS[s] + vapourPerPaOf[s] * saturationPa[s];
                if (HouseNodes.ZoneOfSurface[s] == 0)
                {
                    rightBelow += source;
                    diagonalBelow += vapourPerPaOf[s] * d.KappaBelow;
                }
                else
                {
                    rightAbove += source;
                    diagonalAbove += vapourPerPaOf[s] * d.KappaAbove;
                }
            }

            double fromAbove = d.Exchange + d.Downward, fromBelow = d.Exchange + d.Upward;
            double determinant = diagonalBelow * diagonalAbove - fromAbove * fromBelow;
            below = (rightBelow * diagonalAbove + fromAbove * rightAbove) / determinant;
            above = (rightAbove * diagonalBelow + fromBelow * rightBelow) / determinant;
            again = false;
            for (int s = 0; s < HouseNodes.SurfaceCount; s++)
            {
                double airPa = HouseNodes.ZoneOfSurface[s] == 0 ? d.KappaBelow * below : d.KappaAbove * above;
                evaporated[s] = fixedKgPerS[s] + vapourPerPaOf[s] * (saturationPa[s] - airPa);
                if (regime[s] == Exchange.Film && evaporated[s] * stepS > film[s])
                {
                    // The film would go below nothing: give what there is and solve once more.
                    regime[s] = Exchange.Rest;
                    fixedKgPerS[s] = film[s] * perS;
                    vapourPerPaOf[s] = 0.0;
                    again = true;
                }
            }
        }
        while (again);

        fluxes.AirWaterLossKgPerS = d.OutsideBelow * (below - d.OutsideHumidity) + intake * (below - d.IntakeHumidity)
            + d.OutsideAbove * (above - d.OutsideHumidity) + (d.Upward - d.Downward) * (above - below);
        fluxes.VapourKgPerS = vapour;
        fluxes.FanEndHumidityRatio = d.Intake > 0.0 ? d.IntakeHumidity + d.WaterEndOverMean * (below - d.IntakeHumidity) : below;
        double mistBelowKg = Mist(ref below, d.AirKgBelow, state.AirBelowC, d.PressurePa, state.Network.CapacityJPerK[HouseNodes.AirBelow]);
        double mistAboveKg = Mist(ref above, d.AirKgAbove, state.AirAboveC, d.PressurePa, state.Network.CapacityJPerK[HouseNodes.AirAbove]);
        water[0] = below;
        water[1] = above;
        fluxes.WaterStoredKgPerS = (d.AirKgBelow * (below - oldBelow) + d.AirKgAbove * (above - oldAbove)) * perS;
        BookLatent(state, in d, evaporated, mistBelowKg * perS, mistAboveKg * perS);
        BookFilms(state, in d, evaporated, mistBelowKg + mistAboveKg, stepS);
    }

    // What the air cannot hold falls out as mist, as much as its own heat of condensation lets it.
    private static double Mist(ref double humidityRatio, double airKg, double airC, double pressurePa, double capacityJPerK)
    {
        double saturated = VapourTable.SaturatedHumidityRatio(airC, pressurePa);
        if (humidityRatio <= saturated)
        {
            return 0.0;
        }

        double pressure = VapourTable.PressurePa(airC, out double slope);
        double fallen = (humidityRatio - saturated) / (1.0 + LatentJPerKg * airKg / capacityJPerK * saturated * slope / pressure);
        humidityRatio -= fallen;
        return fallen * airKg;
    }

    private void BookLatent(HouseState state, in Drive d, ReadOnlySpan<double> evaporated, double mistBelowKgPerS, double mistAboveKgPerS)
    {
        Span<double> carriedW = state.CarriedW;
        const int Air = HouseNodes.SurfaceCount;
        bookedLatentW = LatentJPerKg * d.FogEvaporated - carriedW[Air] - carriedW[Air + 1];
        for (int s = 0; s < HouseNodes.SurfaceCount; s++)
        {
            double toldW = state.Network.FluxW[link.Latent + s] + toldFixedW[s];
            bookedLatentW += toldW - carriedW[s];
            carriedW[s] = Heats(s) ? toldW - LatentJPerKg * evaporated[s] : 0.0;
        }

        carriedW[Air] = house.CondensationHeats ? LatentJPerKg * mistBelowKgPerS : 0.0;
        carriedW[Air + 1] = house.CondensationHeats ? LatentJPerKg * mistAboveKgPerS : 0.0;
    }

    private void BookFilms(HouseState state, in Drive d, ReadOnlySpan<double> evaporated, double mistKg, double stepS)
    {
        const int Canopy = (int)WetSurface.Canopy, Floor = (int)WetSurface.Floor;
        Span<double> film = state.Film;
        double filmBefore = 0.0, filmAfter = 0.0, condensed = 0.0, transpired = 0.0, irrigated = 0.0;
        double toFloorKg = mistKg + d.FogFallen * (1.0 - d.CanopyCover) * stepS;
        for (int s = 0; s < HouseNodes.SurfaceCount; s++)
        {
            filmBefore += film[s];
            bool endless = regime[s] == Exchange.Endless && evaporated[s] > 0.0;
            transpired += endless && s == Canopy ? evaporated[s] : 0.0;
            irrigated += endless && s == Floor ? evaporated[s] : 0.0;
            if (!endless)
            {
                film[s] = regime[s] == Exchange.Rest ? 0.0 : Math.Max(film[s] - evaporated[s] * stepS, 0.0);
                condensed -= s == Floor ? 0.0 : evaporated[s];
            }

            film[s] += s == Canopy ? d.FogFallen * d.CanopyCover * stepS : 0.0;
            if (s == Floor)
            {
                film[s] += toFloorKg;
            }

            double holdsKg = s switch
            {
                Canopy => house.FilmHoldsKgPerM2 * d.LeafAreaIndex * house.FloorAreaM2,
                Floor => house.FloorHoldsKgPerM2 * house.FloorAreaM2,
                (int)WetSurface.Curtain => house.FilmHoldsKgPerM2 * house.FloorAreaM2,
                _ => house.FilmHoldsKgPerM2 * parts[s].AreaM2,
            };
            double overKg = Math.Max(film[s] - holdsKg, 0.0);
            film[s] -= overKg;
            filmAfter += film[s];
            toFloorKg += s == Floor ? 0.0 : overKg;
            fluxes.DrainedKgPerS = s == Floor ? overKg / stepS : 0.0;
        }

        fluxes.TranspirationKgPerS = transpired;
        fluxes.IrrigatedFloorKgPerS = irrigated;
        fluxes.CondensedKgPerS = condensed;
        fluxes.FogEvaporatedKgPerS = d.FogEvaporated;
        fluxes.FogFallenKgPerS = d.FogFallen;
        fluxes.WaterStoredKgPerS += (filmAfter - filmBefore) / stepS;
    }
}
