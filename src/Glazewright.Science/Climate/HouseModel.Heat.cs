using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Glazewright.Science.Maths;

namespace Glazewright.Science.Climate;

public sealed partial class HouseModel
{
    private const double StefanBoltzmann = 5.670374e-8;
    private const double LeastFilm = 0.5; // W/(m² K): no surface is ever cut off from its air

    // σ × emissivities × views × areas by curtain and leaves: they change with the curtain and the season, not with the minute.
    private double viewClosed = double.NaN, viewLeaves = double.NaN, canopyCover, perLeafM2;
    private PerPart floorView, canopyView, curtainView;
    private PerPart ringView;
    private double lowerPairView, upperPairView;
    private double floorCurtainView, canopyCurtainView, canopyFloorView, floorSkyView, canopySkyView, curtainSkyView;
    private double floorFilm, curtainFilmBelow;

    private static double Pair(double emissivityA, double emissivityB) =>
        emissivityA * emissivityB / Math.Max(emissivityA + emissivityB - emissivityA * emissivityB, 1e-6);

    private void SetViews(in Drive d)
    {
        double closed = d.Closed, area = house.FloorAreaM2;
        if (d.LeafAreaIndex != viewLeaves)
        {
            viewLeaves = d.LeafAreaIndex;
            canopyCover = viewLeaves > 0.0 ? 1.0 - Elementary.Exp(-0.94 * viewLeaves) : 0.0;
            capacity.Canopy = (1200.0 * viewLeaves + 200.0) * area;
            perLeafM2 = viewLeaves > 0.0 ? 1.0 / (viewLeaves * area) : 0.0;
            holdsKg[(int)WetSurface.Canopy] = house.FilmHoldsKgPerM2 * viewLeaves * area;
        }

        viewClosed = closed;
        double ceiling = house.FloorToCurtainViewFraction, cover = canopyCover, floorE = house.FloorEmissivity, lowerE = cloth.LowerEmissivity;
        double clothLets = 1.0 - closed + closed * cloth.LongWaveTransmittance;
        double lowerM2 = house.LowerClear.AreaM2 + house.LowerOpaque.AreaM2, upperM2 = house.UpperClear.AreaM2 + house.UpperOpaque.AreaM2;
        double lowerClear = lowerM2 > 0.0 ? lowerShare : 0.0, lowerOpaque = lowerM2 > 0.0 ? 1.0 - lowerShare : 0.0;
        double upperClear = upperM2 > 0.0 ? upperShare : 0.0, upperOpaque = upperM2 > 0.0 ? 1.0 - upperShare : 0.0;
        for (int p = 0; p < HouseNodes.PartCount; p++)
        {
            bool upper = parts[p].IsAbove;
            double share = p switch { 0 => upperClear, 1 => lowerClear, 2 => upperOpaque, _ => lowerOpaque };
            double seen = StefanBoltzmann * area * share * (upper ? ceiling * clothLets : 1.0 - ceiling), emissivity = parts[p].InnerEmissivity;
            floorView[p] = seen * (1.0 - cover) * Pair(floorE, emissivity);
            canopyView[p] = seen * cover * emissivity;
            curtainView[p] = StefanBoltzmann * area * closed * share * (upper ? 1.0 : 1.0 - ceiling) * Pair(upper ? cloth.UpperEmissivity : lowerE, emissivity);
        }

        double sigmaArea = StefanBoltzmann * area;
        floorCurtainView = sigmaArea * ceiling * closed * (1.0 - cover) * Pair(floorE, lowerE);
        canopyCurtainView = sigmaArea * ceiling * closed * cover * lowerE;
        canopyFloorView = sigmaArea * cover * floorE;
        lowerPairView = 0.8 * StefanBoltzmann * Math.Max(0.0, lowerM2 - 2.0 * area * (1.0 - ceiling)) * lowerClear * lowerOpaque;
        upperPairView = 0.8 * StefanBoltzmann * Math.Max(0.0, upperM2 - area) * upperClear * upperOpaque;
        double walls = 0.8 * sigmaArea * (1.0 - ceiling) * clothLets;
        ringView.Four = walls * Vector256.Create(lowerClear * upperClear, lowerClear * upperOpaque, lowerOpaque * upperOpaque, lowerOpaque * upperClear);
        double through = house.UpperClear.LongWaveTransmittance * upperClear * sigmaArea;
        floorSkyView = through * ceiling * clothLets * (1.0 - cover) * floorE;
        canopySkyView = through * ceiling * clothLets * cover;
        curtainSkyView = through * closed * cloth.UpperEmissivity;
        if (closed <= 0.0)
        {
            rates.CurtainParts = default;
            rates.CurtainAbove = rates.FloorCurtain = rates.CanopyCurtain = rates.CurtainSky = 0.0;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double WindFilm(double windMPerS) => house.WindLaw == OuterWindLaw.Tunnel ? 0.95 + 6.76 * TunnelWind.Of(windMPerS)
        : windMPerS < 4.0 ? 2.8 + 1.2 * windMPerS : 2.5 * GableWind.Of(windMPerS);

    // HouseFilms.OpaqueOuterWPerM2K by tables.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double OpaqueFilm(in Part part, double faceAboveAirK, double windMPerS)
    {
        double still = (faceAboveAirK > 0.0 ? part.StillWarmFactor : part.StillColdFactor) * ThirdRoot.Of(Math.Abs(faceAboveAirK));
        return HouseFilms.OpaqueOuterWPerM2K(still, part.OpaqueWind.Of(windMPerS), part.RoughnessFactor);
    }

    // HouseFilms.UnderRoofWPerM2K and its kin by tables: within 8e-6 of themselves.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double UnderRoof(double airAboveSurfaceK, double roofFactor) =>
        airAboveSurfaceK > 0.0 ? roofFactor * ThirdRoot.Of(airAboveSurfaceK) : 0.6 * FourthRoot.Of(-airAboveSurfaceK);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double InnerFilm(in Part part, double airAboveSurfaceK) =>
        airAboveSurfaceK > 0.0 || part.IsWall ? part.WarmFactor * ThirdRoot.Of(Math.Abs(airAboveSurfaceK)) : 0.6 * FourthRoot.Of(-airAboveSurfaceK);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void SetShell(HouseState state, in Drive d)
    {
        ref PerNode t = ref state.Temperature;
        double skyK = d.SkyC + 273.15, outsideK = d.OutsideC + 273.15;
        Vector256<double> area = areaM2.Four, outerK = t.Outer.Four + Vector256.Create(273.15), outer2 = outerK * outerK;
        rates.OuterSky.Four = skyWPerK4.Four * (outer2 + Vector256.Create(skyK * skyK)) * (outerK + Vector256.Create(skyK));
        rates.OuterGround.Four = groundWPerK4.Four * (outer2 + Vector256.Create(outsideK * outsideK)) * (outerK + Vector256.Create(outsideK));
        Part[] all = parts;
        if (all.Length == HouseNodes.PartCount)
        {
            double wind = WindFilm(d.WindMPerS);
            double opaqueAbove = all[2].AreaM2 > 0.0 ? OpaqueFilm(in all[2], t.Outer[2] - d.OutsideC, d.WindMPerS) : wind;
            double opaqueBelow = all[3].AreaM2 > 0.0 ? OpaqueFilm(in all[3], t.Outer[3] - d.OutsideC, d.WindMPerS) : wind;
            Vector256<double> outerFilm = Vector256.Create(wind, wind, opaqueAbove, opaqueBelow);
            rates.OuterAir.Four = Vector256.MaxNative(outerFilm, Vector256.Create(LeastFilm)) * area;
            Vector256<double> film = Vector256.Create(
                InnerFilm(in all[0], d.AboveC - t.Inner[0]), InnerFilm(in all[1], d.BelowC - t.Inner[1]),
                InnerFilm(in all[2], d.AboveC - t.Inner[2]), InnerFilm(in all[3], d.BelowC - t.Inner[3]));
            rates.InnerAir.Four = Vector256.MaxNative(film, Vector256.Create(double.MaxNative(d.ForcedFilm, LeastFilm))) * area;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void SetInside(HouseState state, in Drive d)
    {
        ref PerNode t = ref state.Temperature;
        double area = house.FloorAreaM2, closed = d.Closed;
        double floorWarmerK = t.Floor - d.BelowC, least = double.MaxNative(d.ForcedFilm, LeastFilm);
        floorFilm = double.MaxNative(floorWarmerK > 0.0 ? 1.7 * ThirdRoot.Of(floorWarmerK) : 1.3 * FourthRoot.Of(-floorWarmerK), least);
        rates.FloorAir = floorFilm * area;
        rates.CanopyAir = double.MaxNative(2.0 * (d.Moving ? 8.0 : 5.0) * d.LeafAreaIndex * area, 0.1 * area);
        curtainFilmBelow = double.MaxNative(UnderRoof(d.BelowC - t.Curtain, 1.7), least);
        rates.CurtainBelow = curtainFilmBelow * area * double.MaxNative(closed, 0.02) * cloth.FilmFraction;

        // Long wave, exact at the old temperatures: σ (a² + b²) (a + b) times the view.
        double f = t.Floor + 273.15, k = t.Canopy + 273.15, f2 = f * f, k2 = k * k;
        Vector256<double> p = t.Inner.Four + Vector256.Create(273.15), p2 = p * p;
        rates.FloorParts.Four = floorView.Four * (Vector256.Create(f2) + p2) * (Vector256.Create(f) + p);
        rates.CanopyParts.Four = canopyView.Four * (Vector256.Create(k2) + p2) * (Vector256.Create(k) + p);
        rates.CanopyFloor = canopyFloorView * (k2 + f2) * (k + f);
        Vector256<double> next = Next(p), next2 = next * next;
        rates.Ring.Four = ringView.Four * (next2 + p2) * (next + p);
        Vector128<double> above = p.GetLower(), below = p.GetUpper(), pairs = (above * above + below * below) * (above + below); // clear and opaque of one space
        rates.UpperPair = upperPairView * pairs.GetElement(0);
        rates.LowerPair = lowerPairView * pairs.GetElement(1);
        double sky = d.SkyC + 273.15, sky2 = sky * sky;
        if (house.UpperClear.LongWaveTransmittance > 0.0)
        {
            rates.FloorSky = floorSkyView * (f2 + sky2) * (f + sky);
            rates.CanopySky = canopySkyView * (k2 + sky2) * (k + sky);
        }

        if (closed > 0.0)
        {
            double c = t.Curtain + 273.15, c2 = c * c;
            rates.CurtainAbove = double.MaxNative(UnderRoof(t.Curtain - d.AboveC, 1.7), LeastFilm) * area * closed * cloth.FilmFraction;
            rates.CurtainParts.Four = curtainView.Four * (Vector256.Create(c2) + p2) * (Vector256.Create(c) + p);
            rates.FloorCurtain = floorCurtainView * (f2 + c2) * (f + c);
            rates.CanopyCurtain = canopyCurtainView * (k2 + c2) * (k + c);
            rates.CurtainSky = curtainSkyView * (c2 + sky2) * (c + sky);
        }
    }

    /// <summary>Each part's neighbour in the ring of parts.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Next(Vector256<double> parts) => Vector256.Shuffle(parts, Vector256.Create(1L, 2, 3, 0));

    private void SetGains(HouseState state, in Drive d, in HouseForcing f)
    {
        double heatW = Clamp(f.HeatW, -1e9, 1e9), lampW = Clamp(f.LampW, 0.0, 1e9);
        double heatRadiant = Clamp(f.HeatRadiantFraction, 0.0, 1.0), heatAbove = Clamp(f.HeatAboveFraction, 0.0, 1.0);
        double lampRadiant = Clamp(f.LampRadiantFraction, 0.0, 1.0);
        double radiantW = heatW * heatRadiant + lampW * lampRadiant, freeW = heatW - heatW * heatRadiant;
        double airBelowW = Sun(f.SunAirBelowW), airAboveW = Sun(f.SunAirAboveW), curtainW = Sun(f.SunCurtainW), canopyW = Sun(f.SunCanopyW), floorW = Sun(f.SunFloorW);
        double massW = Sun(f.SunMassW), upperClearW = Sun(f.SunUpperClearW), lowerClearW = Sun(f.SunLowerClearW);
        Vector256<double> innerW = Vector256.Create(0.5 * upperClearW, 0.5 * lowerClearW, Sun(f.SunUpperOpaqueInnerW), Sun(f.SunLowerOpaqueInnerW));
        Vector256<double> outerW = Vector256.Create(0.5 * upperClearW, 0.5 * lowerClearW, Sun(f.SunUpperOpaqueOuterW), Sun(f.SunLowerOpaqueOuterW));
        gain.Inner.Four = innerW + state.CarriedW.Shell;
        gain.Outer.Four = outerW;
        gain.AirBelow = airBelowW + freeW * (1.0 - heatAbove) + lampW * (1.0 - lampRadiant) + LatentJPerKg * (d.Dried - d.FogEvaporated) + state.CarriedBelowW;
        gain.AirAbove = airAboveW + freeW * heatAbove + state.CarriedAboveW;
        gain.Curtain = curtainW + state.CarriedW[4];
        bool leaves = d.LeafAreaIndex > 0.0; // without leaves the floor takes what was meant for them
        gain.Canopy = (leaves ? canopyW : 0.0) + radiantW * canopyCover + state.CarriedW[5];
        gain.Floor = floorW + (leaves ? 0.0 : canopyW) + radiantW * (1.0 - canopyCover) + state.CarriedW[6];
        gain.Mass = massW;
        fluxes.SunW = airBelowW + airAboveW + curtainW + canopyW + floorW + massW + Vector256.Sum(innerW + outerW);
        fluxes.HeatW = heatW;
        fluxes.LampW = lampW;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Sun(double w) => Clamp(w, 0.0, 1e9);

    private void BookHeat(HouseState state, in Drive d, double belowC, double aboveC, double perS)
    {
        ref PerNode t = ref state.Temperature;
        Vector256<double> outer = t.Outer.Four;
        Vector256<double> shell = (rates.OuterAir.Four + rates.OuterGround.Four) * (outer - Vector256.Create(d.OutsideC)) + rates.OuterSky.Four * (outer - Vector256.Create(d.SkyC));
        Vector256<double> stored = capacity.Inner.Four * (t.Inner.Four - was.Inner.Four) + capacity.Outer.Four * (outer - was.Outer.Four)
            + Vector256.Create(capacity.Curtain, capacity.Canopy, capacity.Floor, airJPerK.Below) * (t.Inside - was.Inside) + capacity.Ground.Upper * (t.Ground.Upper - was.Ground.Upper);
        Vector128<double> deepest = capacity.Ground.Deepest * (t.Ground.Deepest - was.Ground.Deepest);
        double storedJ = Vector256.Sum(stored) + Vector128.Sum(deepest) + airJPerK.Above * (t.AirAbove - was.AirAbove) + capacity.Mass * (t.Mass - was.Mass);
        fluxes.ShellLossW = Vector256.Sum(shell);
        fluxes.ThroughCoverLossW = rates.FloorSky * (t.Floor - d.SkyC) + rates.CanopySky * (t.Canopy - d.SkyC) + rates.CurtainSky * (t.Curtain - d.SkyC);
        // A stream between the two airs moves heat inside the house: what it brings one, the outgoing air of the other lacks.
        fluxes.AirLossW = rates.OutsideBelow * (belowC - d.OutsideC) + rates.OutsideAbove * (aboveC - d.OutsideC) + rates.IntakeBelow * (belowC - d.IntakeC)
            + (rates.Upward - rates.Downward) * (aboveC - belowC);
        fluxes.GroundLossW = rates.Deep * (t.Ground[HouseParameters.GroundLayerCount - 1] - d.DeepC) + rates.Edge * (t.Ground[2] - d.OutsideC);
        fluxes.LatentW = bookedLatentW;
        fluxes.StoredW = storedJ * perS;
        fluxes.IntakeC = d.IntakeC;
        fluxes.FanEndC = d.Intake > 0.0 ? d.IntakeC + d.HeatEndOverMean * (belowC - d.IntakeC) : t.AirBelow;
        fluxes.PadWaterKgPerS = d.IntakeFromOutside * (d.IntakeHumidity - d.OutsideHumidity);
        fluxes.OutsideAirKgPerS = d.IntakeFromOutside + d.OutsideBelow + d.OutsideAbove;
        fluxes.VentM3PerS = d.VentM3PerS;
        fluxes.LeakM3PerS = d.LeakM3PerS;
        fluxes.CurtainExchangeM3PerS = d.Exchange * d.OutsideDensityInverse;
    }
}
