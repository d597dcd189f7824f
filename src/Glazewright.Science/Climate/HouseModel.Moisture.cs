using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Glazewright.Science.Climate;

public sealed partial class HouseModel
{
    // One number a surface, worked on four at a time. A surface condenses, dries while its film lasts, gives the rest of its film at a steady rate, or does not end (leaves, a floor kept wet).
    private PerSurface latentJPerKg, holdsKg; // heat that goes with its vapour: 0 where condensation is not to heat; what it holds before it runs
    private PerSurface perPa, fixedKgPerS, toldW, evaporatedKgPerS;
    private double perPaBelow, perPaAbove; // kg/(s Pa): all surfaces that meet that air
    private bool leavesEndless, floorEndless;
    private double bookedLatentW;

    private void SetLatent(HouseState state, in Drive d, in HouseForcing f, double stepS, double perS)
    {
        double filmFactor = HouseFilms.VapourPerFilmAtPascal * d.PerPa; // kg/(s Pa) for each W/K
        Vector256<double> film = state.Film.Shell, most = filmFactor * rates.InnerAir.Four;
        Vector256<double> deficit = state.SaturationPa.Shell - Vector256.Create(d.VapourAbovePa, d.VapourBelowPa, d.VapourAbovePa, d.VapourBelowPa);
        Vector256<double> latent = latentJPerKg.Shell, told, link;
        (Vector256<double> gives, Vector256<double> rest) = Wet(film, deficit, most, Vector256<double>.Zero, stepS, perS);
        perPa.Shell = gives;
        fixedKgPerS.Shell = rest;
        told = (rest + gives * deficit) * latent;
        link = gives * latent * state.SaturationSlope.Shell;
        toldW.Shell = told;
        rates.Latent.Shell = link;
        gain.Inner.Four -= told;
        Vector128<double> spaces = gives.GetLower() + gives.GetUpper();

        double clothFilmKg = state.Film[(int)WetSurface.Curtain], leavesFilmKg = state.Film[(int)WetSurface.Canopy], floorFilmKg = state.Film[(int)WetSurface.Floor];
        double open = clothFilmKg > 0.0 ? 0.05 : 0.0;
        double clothPerPa = filmFactor * curtainFilmBelow * house.FloorAreaM2 * (d.Closed > open ? d.Closed : open);
        deficit = state.SaturationPa.Inside - Vector256.Create(d.VapourBelowPa);
        double leavesPerPa = Leaves(in d, in f, deficit.GetElement(1), leavesFilmKg, out leavesEndless, out double leavesSteady);
        double floorPerPa = Ground(floorFilmKg, deficit.GetElement(2), filmFactor, out floorEndless);
        most = Vector256.Create(clothPerPa, leavesPerPa, floorPerPa, 0.0);
        latent = latentJPerKg.Inside;
        (gives, rest) = Wet(state.Film.Inside, deficit, most, Endless(), stepS, perS);
        rest += Vector256.Create(0.0, leavesSteady, 0.0, 0.0);
        perPa.Inside = gives;
        fixedKgPerS.Inside = rest;
        told = (rest + gives * deficit) * latent;
        toldW.Inside = told;
        rates.Latent.Inside = gives * latent * state.SaturationSlope.Inside;
        gain.Curtain -= told.GetElement(0);
        gain.Canopy -= told.GetElement(1);
        gain.Floor -= told.GetElement(2);
        perPaAbove = spaces.GetElement(0);
        perPaBelow = spaces.GetElement(1) + Vector256.Sum(gives);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector256<double> Endless() =>
        Vector256.Create(0L, leavesEndless ? -1 : 0, floorEndless ? -1 : 0, 0).AsDouble();

    /// <summary>Exchange of vapour over the step: what a surface gives for each pascal, and what of its film goes whatever the air holds, kg/s.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (Vector256<double> PerPa, Vector256<double> Fixed) Wet(
        Vector256<double> filmKg, Vector256<double> deficitPa, Vector256<double> mostPerPa, Vector256<double> endless, double stepS, double perS)
    {
        Vector256<double> none = Vector256<double>.Zero;
        // Above a deficit of 0 a surface dries: a dry one gives nothing, one whose film ends within the step gives that.
        Vector256<double> drying = Vector256.AndNot(Vector256.GreaterThan(deficitPa, none), endless);
        Vector256<double> ends = drying & Vector256.GreaterThan(mostPerPa * deficitPa * stepS, filmKg), wet = Vector256.GreaterThan(filmKg, none);
        return (Vector256.AndNot(mostPerPa, ends | Vector256.AndNot(drying, wet)), ends & wet & (filmKg * perS));
    }

    // Stanghellini 1987, in the form of Katsoulas and Stanghellini 2019. Dry leaves close as the deficit grows, so what they give is told by its tangent: a slope and a steady part. (With the resistance of
    // the state before, leaves among which fog dries up gave 1.5 % too much.) Where the leaves would give less in drier air the slope is 0.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double Leaves(in Drive d, in HouseForcing f, double deficitPa, double filmKg, out bool endless, out double steadyKgPerS)
    {
        endless = false;
        steadyKgPerS = 0.0;
        if (d.LeafAreaIndex <= 0.0)
        {
            return 0.0;
        }

        double boundary = LeafResistance.BoundarySPerM(d.Moving);
        double leaves = house.FloorAreaM2 * LeafResistance.CanopyFactorAtPascal(d.LeafAreaIndex, d.BelowDensity) * d.PerPa;
        if (deficitPa <= 0.0 || filmKg > 1e-6 * house.FloorAreaM2)
        {
            return leaves / boundary;
        }

        endless = true;
        double lightW = (Sun(f.SunCanopyW) + Clamp(f.LampW, 0.0, 1e9) * Clamp(f.LampRadiantFraction, 0.0, 1.0) * canopyCover)
            * perLeafM2;
        (double stomata, double over, double bySquare) = LeafResistance.Stomatal(house.LeastStomatalResistanceSPerM, lightW, Clamp(f.Co2Ppm, 200.0, 2000.0), deficitPa);
        double both = boundary * over + stomata, perBoth = 1.0 / both, chord = leaves * over * perBoth;
        double tangent = chord * double.MaxNative(both - 2.0 * bySquare, 0.0) * perBoth;
        steadyKgPerS = (chord - tangent) * deficitPa;
        return tangent;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double Ground(double filmKg, double deficitPa, double filmFactor, out bool endless)
    {
        double wholeFloor = filmFactor * floorFilm * house.FloorAreaM2;
        endless = false;
        if (deficitPa <= 0.0)
        {
            return wholeFloor;
        }

        double holds = house.FloorHoldsKgPerM2 * house.FloorAreaM2;
        // The last thousandth dries at a steady rate: a film that only ever shrank by a share would never end.
        double wet = holds > 0.0 && filmKg > 0.0 ? Math.Clamp(filmKg / holds, 1e-3, 1.0) : 0.0;
        if (house.WetFloorFraction > wet)
        {
            endless = true;
            return wholeFloor * house.WetFloorFraction;
        }

        return wholeFloor * wet;
    }

    private void SolveHumidity(HouseState state, in Drive d, in HouseForcing f, double stepS, double perS)
    {
        double oldBelow = state.WaterBelow, oldAbove = state.WaterAbove;
        if (d.FogEvaporated > 0.0)
        {
            FilmsAfterFog(state, in d);
        }

        double intake = d.Intake * d.WaterEndOverMean, vapour = Clamp(f.VapourKgPerS, 0.0, 1e3);
        AirPair airs = new(
            in airKg, perS, stepS, d.OutsideBelow + intake + perPaBelow * d.KappaBelow, d.OutsideAbove + perPaAbove * d.KappaAbove, d.Downward, d.Upward, d.Exchange);
        double below, above, belowAfter, aboveAfter;
        bool again;
        do
        {
            double exchange = d.Exchange + airs.Link, apart = airs.Link * (oldBelow - oldAbove);
            double fixedBelow = airs.BelowStores + d.OutsideBelow + intake + exchange + d.Downward;
            double fixedAbove = airs.AboveStores + d.OutsideAbove + exchange + d.Upward;
            double knownBelow = airs.BelowStores * oldBelow + apart + d.OutsideBelow * d.OutsideHumidity + intake * d.IntakeHumidity + d.FogEvaporated + vapour - d.Dried;
            double knownAbove = airs.AboveStores * oldAbove - apart + d.OutsideAbove * d.OutsideHumidity;
            double fromAbove = exchange + d.Downward, fromBelow = exchange + d.Upward;
            Vector256<double> shellSource = fixedKgPerS.Shell + perPa.Shell * state.SaturationPa.Shell, insideSource = fixedKgPerS.Inside + perPa.Inside * state.SaturationPa.Inside;
            Vector128<double> source = shellSource.GetLower() + shellSource.GetUpper();
            double rightBelow = knownBelow + source.GetElement(1) + Vector256.Sum(insideSource), rightAbove = knownAbove + source.GetElement(0);
            double diagonalBelow = fixedBelow + perPaBelow * d.KappaBelow, diagonalAbove = fixedAbove + perPaAbove * d.KappaAbove;
            double determinant = 1.0 / (diagonalBelow * diagonalAbove - fromAbove * fromBelow);
            below = (rightBelow * diagonalAbove + fromAbove * rightAbove) * determinant;
            above = (rightAbove * diagonalBelow + fromBelow * rightBelow) * determinant;
            double belowPa = d.KappaBelow * below, abovePa = d.KappaAbove * above;
            Vector256<double> shell = shellSource - perPa.Shell * Vector256.Create(abovePa, belowPa, abovePa, belowPa), inside = insideSource - perPa.Inside * belowPa;
            evaporatedKgPerS.Shell = shell;
            evaporatedKgPerS.Inside = inside;
            again = Vector256.GreaterThanAny(shell * stepS, state.Film.Shell) || Vector256.GreaterThanAny(Vector256.AndNot(inside, Endless()) * stepS, state.Film.Inside);
            again = again && EndFilms(state, stepS, perS);
            (belowAfter, aboveAfter) = airs.Ends(oldBelow, oldAbove, below, above);
            if ((belowAfter < 0.0 || aboveAfter < 0.0) && !again && !airs.IsPlain)
            {
                // Bone-dry air blown through moist air all but replaces it: the curve's last digits must not leave less than nothing.
                airs = AirPair.Plain(in airKg, perS);
                again = true;
            }
        }
        while (again);

        fluxes.AirWaterLossKgPerS = d.OutsideBelow * (below - d.OutsideHumidity) + intake * (below - d.IntakeHumidity)
            + d.OutsideAbove * (above - d.OutsideHumidity) + (d.Upward - d.Downward) * (above - below);
        fluxes.VapourKgPerS = vapour;
        fluxes.DriedKgPerS = d.Dried;
        fluxes.FanEndHumidityRatio = d.Intake > 0.0 ? d.IntakeHumidity + d.WaterEndOverMean * (below - d.IntakeHumidity) : below;
        (below, above) = (belowAfter, aboveAfter);
        double mistBelowKg = Mist(ref below, airKg.Below, state.SaturationBelowPa, state.SlopeBelow, d.PressurePa, airJPerK.Below);
        double mistAboveKg = Mist(ref above, airKg.Above, state.SaturationAbovePa, state.SlopeAbove, d.PressurePa, airJPerK.Above);
        state.WaterBelow = below;
        state.WaterAbove = above;
        double storedKg = airKg.Below * (below - oldBelow) + airKg.Above * (above - oldAbove);
        BookLatent(state, in d, mistBelowKg * perS, mistAboveKg * perS);
        BookFilms(state, in d, mistBelowKg + mistAboveKg, storedKg, stepS, perS);
    }

    // Fog cools the air within the step by more than it stands over the cover: the shell's films are taken again at the new temperatures for the water (heat keeps those of the state before; the difference is carried).
    private void FilmsAfterFog(HouseState state, in Drive d)
    {
        ref PerNode t = ref state.Temperature;
        double forced = double.MaxNative(d.ForcedFilm, LeastFilm);
        double above = t.AirAbove, below = t.AirBelow;
        for (int p = 0; p < HouseNodes.PartCount; p++)
        {
            double film = double.MaxNative(InnerFilm(in parts[p], (parts[p].IsAbove ? above : below) - t.Inner[p]), forced);
            double more = perPa[p] * (film * parts[p].AreaM2 - rates.InnerAir[p]) / double.MaxNative(rates.InnerAir[p], 1e-9);
            perPa[p] += more;
            perPaAbove += parts[p].IsAbove ? more : 0.0;
            perPaBelow += parts[p].IsAbove ? 0.0 : more;
        }
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
        Vector256<double> shell = rates.Latent.Shell * (t.Inner.Four - was.Inner.Four) + toldW.Shell, inside = rates.Latent.Inside * (t.Inside - was.Inside) + toldW.Inside;
        double booked = LatentJPerKg * (d.FogEvaporated - d.Dried) - state.CarriedBelowW - state.CarriedAboveW
            + Vector256.Sum((shell - state.CarriedW.Shell) + (inside - state.CarriedW.Inside));
        state.CarriedW.Shell = shell - latentJPerKg.Shell * evaporatedKgPerS.Shell;
        state.CarriedW.Inside = inside - latentJPerKg.Inside * evaporatedKgPerS.Inside;
        bookedLatentW = booked;
        state.CarriedBelowW = house.CondensationHeats ? LatentJPerKg * mistBelowKgPerS : 0.0;
        state.CarriedAboveW = house.CondensationHeats ? LatentJPerKg * mistAboveKgPerS : 0.0;
    }

    // A film would go below nothing: it gives what there is, and the airs are solved once more. False when it is rounding only.
    private bool EndFilms(HouseState state, double stepS, double perS)
    {
        bool any = false;
        for (int s = 0; s < HouseNodes.SurfaceCount; s++)
        {
            bool endless = s == (int)WetSurface.Canopy ? leavesEndless : s == (int)WetSurface.Floor && floorEndless;
            if (!endless && perPa[s] > 0.0 && evaporatedKgPerS[s] * stepS > state.Film[s])
            {
                any = true;
                perPaAbove -= s is (int)WetSurface.UpperClear or (int)WetSurface.UpperOpaque ? perPa[s] : 0.0;
                perPaBelow -= s is (int)WetSurface.UpperClear or (int)WetSurface.UpperOpaque ? 0.0 : perPa[s];
                fixedKgPerS[s] = state.Film[s] * perS;
                perPa[s] = 0.0;
            }
        }

        return any;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void BookFilms(HouseState state, in Drive d, double mistKg, double airStoredKg, double stepS, double perS)
    {
        Vector256<double> none = Vector256<double>.Zero;
        // What gives the rest of its film at a steady rate ends at nothing, to the rounding.
        Vector256<double> before = state.Film.Shell, given = evaporatedKgPerS.Shell, holds = holdsKg.Shell, film, over;
        film = Vector256.MaxNative(before - given * stepS, none);
        film = Vector256.AndNot(film, Vector256.GreaterThan(fixedKgPerS.Shell, none));
        over = Vector256.MaxNative(film - holds, none);
        film -= over;
        state.Film.Shell = film;
        double storedKg = airStoredKg + Vector256.Sum(film - before), toFloorKg = mistKg + d.FogFallen * (1.0 - canopyCover) * stepS + Vector256.Sum(over);
        double condensed = -Vector256.Sum(given);

        before = state.Film.Inside;
        given = evaporatedKgPerS.Inside;
        Vector256<double> source = Endless() & Vector256.GreaterThan(given, none) & given, fromFilm = given - source;
        film = Vector256.MaxNative(before - fromFilm * stepS, none);
        film = Vector256.AndNot(film, Vector256.AndNot(Vector256.GreaterThan(fixedKgPerS.Inside, none), Endless()));
        double clothKg = film.GetElement(0), leavesKg = film.GetElement(1) + d.FogFallen * canopyCover * stepS;
        double clothOverKg = double.MaxNative(clothKg - holdsKg[(int)WetSurface.Curtain], 0.0), leavesOverKg = double.MaxNative(leavesKg - holdsKg[(int)WetSurface.Canopy], 0.0);
        double floorKg = film.GetElement(2) + toFloorKg + clothOverKg + leavesOverKg, drainedKg = double.MaxNative(floorKg - holdsKg[(int)WetSurface.Floor], 0.0);
        film = Vector256.Create(clothKg - clothOverKg, leavesKg - leavesOverKg, floorKg - drainedKg, 0.0);
        state.Film.Inside = film;
        fluxes.DrainedKgPerS = drainedKg * perS;
        fluxes.TranspirationKgPerS = source.GetElement(1);
        fluxes.IrrigatedFloorKgPerS = source.GetElement(2);
        fluxes.CondensedKgPerS = condensed - fromFilm.GetElement(0) - fromFilm.GetElement(1);
        fluxes.FogEvaporatedKgPerS = d.FogEvaporated;
        fluxes.FogFallenKgPerS = d.FogFallen;
        fluxes.WaterStoredKgPerS = (storedKg + Vector256.Sum(film - before)) * perS;
    }
}
