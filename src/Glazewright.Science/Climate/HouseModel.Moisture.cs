using System.Runtime.CompilerServices;

namespace Glazewright.Science.Climate;

public sealed partial class HouseModel
{
    private double vapourBelowPerPa; // kg/(s Pa): all surfaces that meet the air below
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

    private void SetLatent(HouseState state, in Drive d, in HouseForcing f, double stepS)
    {
        double perS = 1.0 / stepS;
        double filmFactor = HouseFilms.VapourPerFilm(d.PressurePa); // kg/(s Pa m²) for each W/(m² K)
        ref PerSurface film = ref state.Film;
        vapourBelowPerPa = 0.0;
        for (int p = 0; p < HouseNodes.PartCount; p++)
        {
            if (surfaces[p].IsThere)
            {
                double airPa = parts[p].IsAbove ? d.VapourAbovePa : d.VapourBelowPa;
                gain.Inner[p] -= Wet(state, p, state.SaturationPa[p] - airPa, filmFactor * parts[p].FilmWPerM2K * parts[p].AreaM2, Exchange.Film, stepS, perS);
            }
        }

        const int Curtain = (int)WetSurface.Curtain, Canopy = (int)WetSurface.Canopy, Floor = (int)WetSurface.Floor;
        double open = film[Curtain] > 0.0 ? 0.05 : 0.0;
        double clothPerPa = filmFactor * curtainFilmBelow * house.FloorAreaM2 * (d.Closed > open ? d.Closed : open);
        gain.Curtain -= Wet(state, Curtain, state.SaturationPa[Curtain] - d.VapourBelowPa, clothPerPa, Exchange.Film, stepS, perS);
        double leavesPa = state.SaturationPa[Canopy] - d.VapourBelowPa;
        double leavesPerPa = Leaves(in d, in f, leavesPa, film[Canopy], out Exchange leavesHow);
        gain.Canopy -= Wet(state, Canopy, leavesPa, leavesPerPa, leavesHow, stepS, perS);
        double floorPa = state.SaturationPa[Floor] - d.VapourBelowPa;
        double floorPerPa = Ground(film[Floor], floorPa, filmFactor, out Exchange floorHow);
        gain.Floor -= Wet(state, Floor, floorPa, floorPerPa, floorHow, stepS, perS);
    }

    /// <summary>Sets a surface's exchange of vapour over the step.</summary>
    /// <returns>Latent heat at the old temperatures, W, to be taken from the surface's gain; what changes with its temperature stands in the latent link.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double Wet(HouseState state, int s, double deficitPa, double perPa, Exchange how, double stepS, double perS)
    {
        ref Surface w = ref surfaces[s];
        double filmKg = state.Film[s];
        if (how == Exchange.Film && deficitPa > 0.0)
        {
            // Above 0 the surface dries.
            how = filmKg <= 0.0 ? Exchange.None : perPa * deficitPa * stepS > filmKg ? Exchange.Rest : Exchange.Film;
        }

        how = perPa > 0.0 ? how : Exchange.None;
        w.How = how;
        w.PerPa = how is Exchange.Film or Exchange.Endless ? perPa : 0.0;
        w.FixedKgPerS = how == Exchange.Rest ? filmKg * perS : 0.0;
        vapourBelowPerPa += w.Above ? 0.0 : w.PerPa;
        double latent = w.Heats ? LatentJPerKg : 0.0;
        rates.Latent[s] = w.PerPa * latent * state.SaturationSlope[s];
        w.ToldW = (w.FixedKgPerS + w.PerPa * deficitPa) * latent;
        return w.ToldW;
    }

    // Stanghellini 1987, in the form of Katsoulas and Stanghellini 2019.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double Leaves(in Drive d, in HouseForcing f, double deficitPa, double filmKg, out Exchange how)
    {
        how = Exchange.None;
        if (d.LeafAreaIndex <= 0.0)
        {
            return 0.0;
        }

        double boundary = LeafResistance.BoundarySPerM(d.Moving);
        double leaves = house.FloorAreaM2 * LeafResistance.CanopyFactor(d.LeafAreaIndex, d.OutsideDensity, d.PressurePa);
        how = Exchange.Film;
        if (deficitPa <= 0.0 || filmKg > 1e-6 * house.FloorAreaM2)
        {
            return leaves / boundary;
        }

        how = Exchange.Endless;
        double lightW = (Sun(f.SunCanopyW) + Clamp(f.LampW, 0.0, 1e9, 0.0) * Clamp(f.LampRadiantFraction, 0.0, 1.0, 0.0) * canopyCover)
            / (d.LeafAreaIndex * house.FloorAreaM2);
        double stomata = LeafResistance.StomatalSPerM(house.LeastStomatalResistanceSPerM, lightW, Clamp(f.Co2Ppm, 200.0, 2000.0, 420.0), deficitPa);
        return leaves / (boundary + stomata);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double Ground(double filmKg, double deficitPa, double filmFactor, out Exchange how)
    {
        double wholeFloor = filmFactor * floorFilm * house.FloorAreaM2;
        how = Exchange.Film;
        if (deficitPa <= 0.0)
        {
            return wholeFloor;
        }

        double holds = house.FloorHoldsKgPerM2 * house.FloorAreaM2;
        double wet = holds > 0.0 && filmKg > 0.0 ? Math.Min(1.0, filmKg / holds) : 0.0;
        if (house.WetFloorFraction > wet)
        {
            how = Exchange.Endless;
            return wholeFloor * house.WetFloorFraction;
        }

        return wholeFloor * wet;
    }

    private void SolveHumidity(HouseState state, in Drive d, in HouseForcing f, double stepS)
    {
        double oldBelow = state.WaterBelow, oldAbove = state.WaterAbove;
        double perS = 1.0 / stepS, intake = d.Intake * d.WaterEndOverMean, vapour = Clamp(f.VapourKgPerS, 0.0, 1e3, 0.0);
        double fixedBelow = d.AirKgBelow * perS + d.OutsideBelow + intake + d.Exchange + d.Downward;
        double fixedAbove = d.AirKgAbove * perS + d.OutsideAbove + d.Exchange + d.Upward;
        double knownBelow = d.AirKgBelow * perS * oldBelow + d.OutsideBelow * d.OutsideHumidity + intake * d.IntakeHumidity + d.FogEvaporated + vapour - d.Dried;
        double knownAbove = d.AirKgAbove * perS * oldAbove + d.OutsideAbove * d.OutsideHumidity;
        double fromAbove = d.Exchange + d.Downward, fromBelow = d.Exchange + d.Upward;
        double below, above;
        Surface[] all = surfaces;
        bool again;
        do
        {
            double perPaBelow = 0.0, perPaAbove = 0.0, rightBelow = knownBelow, rightAbove = knownAbove;
            for (int s = 0; s < all.Length; s++)
            {
                ref Surface w = ref all[s];
                double source = w.FixedKgPerS + w.PerPa * state.SaturationPa[s];
                if (w.Above)
                {
                    rightAbove += source;
                    perPaAbove += w.PerPa;
                }
                else
                {
                    rightBelow += source;
                    perPaBelow += w.PerPa;
                }
            }

            double diagonalBelow = fixedBelow + perPaBelow * d.KappaBelow, diagonalAbove = fixedAbove + perPaAbove * d.KappaAbove;
            double determinant = 1.0 / (diagonalBelow * diagonalAbove - fromAbove * fromBelow);
            below = (rightBelow * diagonalAbove + fromAbove * rightAbove) * determinant;
            above = (rightAbove * diagonalBelow + fromBelow * rightBelow) * determinant;
            double belowPa = d.KappaBelow * below, abovePa = d.KappaAbove * above;
            again = false;
            for (int s = 0; s < all.Length; s++)
            {
                ref Surface w = ref all[s];
                w.EvaporatedKgPerS = w.FixedKgPerS + w.PerPa * (state.SaturationPa[s] - (w.Above ? abovePa : belowPa));
                if (w.How == Exchange.Film && w.EvaporatedKgPerS * stepS > state.Film[s])
                {
                    // The film would go below nothing: give what there is and solve once more.
                    w.How = Exchange.Rest;
                    w.FixedKgPerS = state.Film[s] * perS;
                    w.PerPa = 0.0;
                    again = true;
                }
            }
        }
        while (again);

        fluxes.AirWaterLossKgPerS = d.OutsideBelow * (below - d.OutsideHumidity) + intake * (below - d.IntakeHumidity)
            + d.OutsideAbove * (above - d.OutsideHumidity) + (d.Upward - d.Downward) * (above - below);
        fluxes.VapourKgPerS = vapour;
        fluxes.DriedKgPerS = d.Dried;
        fluxes.FanEndHumidityRatio = d.Intake > 0.0 ? d.IntakeHumidity + d.WaterEndOverMean * (below - d.IntakeHumidity) : below;
        double mistBelowKg = Mist(ref below, d.AirKgBelow, state.SaturationBelowPa, state.SlopeBelow, d.PressurePa, capacity.AirBelow);
        double mistAboveKg = Mist(ref above, d.AirKgAbove, state.SaturationAbovePa, state.SlopeAbove, d.PressurePa, capacity.AirAbove);
        state.WaterBelow = below;
        state.WaterAbove = above;
        double storedKg = d.AirKgBelow * (below - oldBelow) + d.AirKgAbove * (above - oldAbove);
        BookLatent(state, in d, mistBelowKg * perS, mistAboveKg * perS);
        BookFilms(state, in d, mistBelowKg + mistAboveKg, storedKg, stepS, perS);
    }

    // What the air cannot hold falls out as mist, as much as its own heat of condensation lets it.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Mist(ref double humidityRatio, double airKg, double saturationPa, double slopePaPerK, double pressurePa, double capacityJPerK)
    {
        double vapourPa = double.MinNative(saturationPa, 0.95 * pressurePa);
        if (humidityRatio * (pressurePa - vapourPa) <= 0.621945 * vapourPa)
        {
            return 0.0;
        }

        double saturated = 0.621945 * vapourPa / (pressurePa - vapourPa);
        double fallen = Math.Max(0.0, (humidityRatio - saturated) / (1.0 + LatentJPerKg * airKg / capacityJPerK * saturated * slopePaPerK / saturationPa));
        humidityRatio -= fallen;
        return fallen * airKg;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void BookLatent(HouseState state, in Drive d, double mistBelowKgPerS, double mistAboveKgPerS)
    {
        ref PerNode t = ref state.Temperature;
        double booked = LatentJPerKg * (d.FogEvaporated - d.Dried) - state.CarriedBelowW - state.CarriedAboveW;
        for (int s = 0; s < HouseNodes.SurfaceCount; s++)
        {
            ref Surface w = ref surfaces[s];
            double warmerK = s switch
            {
                (int)WetSurface.Curtain => t.Curtain - was.Curtain,
                (int)WetSurface.Canopy => t.Canopy - was.Canopy,
                (int)WetSurface.Floor => t.Floor - was.Floor,
                _ => t.Inner[s] - was.Inner[s],
            };
            double toldW = rates.Latent[s] * warmerK + w.ToldW;
            booked += toldW - state.CarriedW[s];
            state.CarriedW[s] = w.Heats ? toldW - LatentJPerKg * w.EvaporatedKgPerS : 0.0;
        }

        bookedLatentW = booked;
        state.CarriedBelowW = house.CondensationHeats ? LatentJPerKg * mistBelowKgPerS : 0.0;
        state.CarriedAboveW = house.CondensationHeats ? LatentJPerKg * mistAboveKgPerS : 0.0;
    }

    private void BookFilms(HouseState state, in Drive d, double mistKg, double airStoredKg, double stepS, double perS)
    {
        const int Canopy = (int)WetSurface.Canopy, Floor = (int)WetSurface.Floor;
        double storedKg = airStoredKg, condensed = 0.0, transpired = 0.0, irrigated = 0.0;
        double toFloorKg = mistKg + d.FogFallen * (1.0 - canopyCover) * stepS;
        for (int s = 0; s < HouseNodes.SurfaceCount; s++)
        {
            ref Surface w = ref surfaces[s];
            double evaporated = w.EvaporatedKgPerS, beforeKg = state.Film[s], filmKg = beforeKg;
            if (w.How == Exchange.Endless && evaporated > 0.0)
            {
                transpired += s == Canopy ? evaporated : 0.0;
                irrigated += s == Floor ? evaporated : 0.0;
            }
            else
            {
                filmKg = w.How == Exchange.Rest ? 0.0 : double.MaxNative(filmKg - evaporated * stepS, 0.0);
                condensed -= s == Floor ? 0.0 : evaporated;
            }

            filmKg += s == Canopy ? d.FogFallen * canopyCover * stepS : s == Floor ? toFloorKg : 0.0;
            double overKg = double.MaxNative(filmKg - w.HoldsKg, 0.0);
            filmKg -= overKg;
            state.Film[s] = filmKg;
            storedKg += filmKg - beforeKg;
            if (s == Floor)
            {
                fluxes.DrainedKgPerS = overKg * perS;
            }
            else
            {
                toFloorKg += overKg;
            }
        }

        fluxes.TranspirationKgPerS = transpired;
        fluxes.IrrigatedFloorKgPerS = irrigated;
        fluxes.CondensedKgPerS = condensed;
        fluxes.FogEvaporatedKgPerS = d.FogEvaporated;
        fluxes.FogFallenKgPerS = d.FogFallen;
        fluxes.WaterStoredKgPerS = storedKg * perS;
    }

    /// <summary>A surface that can be wet: what is fixed of it, and its exchange over the last step.</summary>
    private struct Surface
    {
        public bool Heats, Above, IsThere;
        public Exchange How;
        public double HoldsKg, PerPa, FixedKgPerS, ToldW, EvaporatedKgPerS;
    }
}
