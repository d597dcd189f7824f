using System.Runtime.CompilerServices;
using Glazewright.Science.Maths;

namespace Glazewright.Science.Climate;

public sealed partial class HouseModel
{
    private const double StefanBoltzmann = 5.670374e-8;
    private const double LeastFilm = 0.5; // W/(m² K): no surface is ever cut off from its air

    // σ × emissivities × views × areas by curtain and leaves: they change with the curtain and the season, not with the minute.
    private double viewClosed = double.NaN, viewLeaves = double.NaN, canopyCover;
    private PerPart floorView, canopyView, curtainView;
    private double lowerPairView, upperPairView, wallRoofView, wallRoofOpaqueView, wallOpaqueRoofView, wallOpaqueRoofOpaqueView;
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
            surfaces[(int)WetSurface.Canopy].HoldsKg = house.FilmHoldsKgPerM2 * viewLeaves * area;
        }

        viewClosed = closed;
        double ceiling = house.FloorToCurtainViewFraction, cover = canopyCover, floorE = house.FloorEmissivity, lowerE = house.Curtain.LowerEmissivity;
        double clothLets = 1.0 - closed + closed * house.Curtain.LongWaveTransmittance;
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
            curtainView[p] = StefanBoltzmann * area * closed * share * (upper ? 1.0 : 1.0 - ceiling) * Pair(upper ? house.Curtain.UpperEmissivity : lowerE, emissivity);
        }

        double sigmaArea = StefanBoltzmann * area;
        floorCurtainView = sigmaArea * ceiling * closed * (1.0 - cover) * Pair(floorE, lowerE);
        canopyCurtainView = sigmaArea * ceiling * closed * cover * lowerE;
        canopyFloorView = sigmaArea * cover * floorE;
        lowerPairView = 0.8 * StefanBoltzmann * Math.Max(0.0, lowerM2 - 2.0 * area * (1.0 - ceiling)) * lowerClear * lowerOpaque;
        upperPairView = 0.8 * StefanBoltzmann * Math.Max(0.0, upperM2 - area) * upperClear * upperOpaque;
        double walls = 0.8 * sigmaArea * (1.0 - ceiling) * clothLets;
        wallRoofView = walls * lowerClear * upperClear;
        wallRoofOpaqueView = walls * lowerClear * upperOpaque;
        wallOpaqueRoofView = walls * lowerOpaque * upperClear;
        wallOpaqueRoofOpaqueView = walls * lowerOpaque * upperOpaque;
        double through = house.UpperClear.LongWaveTransmittance * upperClear * sigmaArea;
        floorSkyView = through * ceiling * clothLets * (1.0 - cover) * floorE;
        canopySkyView = through * ceiling * clothLets * cover;
        curtainSkyView = through * closed * house.Curtain.UpperEmissivity;
        if (closed <= 0.0)
        {
            rates.CurtainParts = default;
            rates.CurtainAbove = rates.FloorCurtain = rates.CanopyCurtain = rates.CurtainSky = 0.0;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double WindFilm(double windMPerS) => house.WindLaw == OuterWindLaw.Tunnel ? 0.95 + 6.76 * TunnelWind.Of(windMPerS)
        : windMPerS < 4.0 ? 2.8 + 1.2 * windMPerS : 2.5 * GableWind.Of(windMPerS);

    // HouseFilms.UnderRoofWPerM2K and its kin by tables: within 8e-6 of themselves.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double UnderRoof(double airAboveSurfaceK, double roofFactor) =>
        airAboveSurfaceK > 0.0 ? roofFactor * ThirdRoot.Of(airAboveSurfaceK) : 0.6 * FourthRoot.Of(-airAboveSurfaceK);

    private void SetShell(HouseState state, in Drive d)
    {
        ref PerNode t = ref state.Temperature;
        double windFilm = WindFilm(d.WindMPerS), skyK = d.SkyC + 273.15, sky2 = skyK * skyK, outsideK = d.OutsideC + 273.15, outside2 = outsideK * outsideK;
        for (int p = 0; p < HouseNodes.PartCount; p++)
        {
            ref Part part = ref parts[p];
            if (part.AreaM2 <= 0.0)
            {
                continue;
            }

            double outerK = t.Outer[p] + 273.15, outer2 = outerK * outerK;
            rates.OuterAir[p] = windFilm * part.AreaM2;
            rates.OuterSky[p] = part.SkyWPerK4 * (outer2 + sky2) * (outerK + skyK);
            rates.OuterGround[p] = part.GroundWPerK4 * (outer2 + outside2) * (outerK + outsideK);
            double differenceK = (part.IsAbove ? d.AboveC : d.BelowC) - t.Inner[p];
            double film = part.IsWall ? 1.31 * ThirdRoot.Of(Math.Abs(differenceK)) : UnderRoof(differenceK, part.RoofFactor);
            part.FilmWPerM2K = double.MaxNative(double.MaxNative(film, d.ForcedFilm), LeastFilm);
            rates.InnerAir[p] = part.FilmWPerM2K * part.AreaM2;
        }
    }

    private void SetInside(HouseState state, in Drive d)
    {
        ref PerNode t = ref state.Temperature;
        double area = house.FloorAreaM2, closed = d.Closed;
        double floorWarmerK = t.Floor - d.BelowC;
        floorFilm = floorWarmerK > 0.0 ? 1.7 * ThirdRoot.Of(floorWarmerK) : 1.3 * FourthRoot.Of(-floorWarmerK);
        floorFilm = double.MaxNative(double.MaxNative(floorFilm, d.ForcedFilm), LeastFilm);
        rates.FloorAir = floorFilm * area;
        rates.CanopyAir = double.MaxNative(2.0 * (d.Moving ? 8.0 : 5.0) * d.LeafAreaIndex * area, 0.1 * area);
        curtainFilmBelow = double.MaxNative(double.MaxNative(UnderRoof(d.BelowC - t.Curtain, 1.7), d.ForcedFilm), LeastFilm);
        rates.CurtainBelow = curtainFilmBelow * area * double.MaxNative(closed, 0.02);

        // Long wave, exact at the old temperatures: σ (a² + b²) (a + b) times the view.
        double f = t.Floor + 273.15, k = t.Canopy + 273.15, p0 = t.Inner[0] + 273.15, p1 = t.Inner[1] + 273.15, p2 = t.Inner[2] + 273.15, p3 = t.Inner[3] + 273.15;
        double f2 = f * f, k2 = k * k, p02 = p0 * p0, p12 = p1 * p1, p22 = p2 * p2, p32 = p3 * p3;
        rates.FloorParts[0] = floorView[0] * (f2 + p02) * (f + p0);
        rates.FloorParts[1] = floorView[1] * (f2 + p12) * (f + p1);
        rates.FloorParts[2] = floorView[2] * (f2 + p22) * (f + p2);
        rates.FloorParts[3] = floorView[3] * (f2 + p32) * (f + p3);
        rates.CanopyParts[0] = canopyView[0] * (k2 + p02) * (k + p0);
        rates.CanopyParts[1] = canopyView[1] * (k2 + p12) * (k + p1);
        rates.CanopyParts[2] = canopyView[2] * (k2 + p22) * (k + p2);
        rates.CanopyParts[3] = canopyView[3] * (k2 + p32) * (k + p3);
        rates.CanopyFloor = canopyFloorView * (k2 + f2) * (k + f);
        rates.LowerPair = lowerPairView * (p12 + p32) * (p1 + p3);
        rates.UpperPair = upperPairView * (p02 + p22) * (p0 + p2);
        rates.WallRoof = wallRoofView * (p12 + p02) * (p1 + p0);
        rates.WallRoofOpaque = wallRoofOpaqueView * (p12 + p22) * (p1 + p2);
        rates.WallOpaqueRoof = wallOpaqueRoofView * (p32 + p02) * (p3 + p0);
        rates.WallOpaqueRoofOpaque = wallOpaqueRoofOpaqueView * (p32 + p22) * (p3 + p2);
        double sky = d.SkyC + 273.15, sky2 = sky * sky;
        if (house.UpperClear.LongWaveTransmittance > 0.0)
        {
            rates.FloorSky = floorSkyView * (f2 + sky2) * (f + sky);
            rates.CanopySky = canopySkyView * (k2 + sky2) * (k + sky);
        }

        if (closed > 0.0)
        {
            double c = t.Curtain + 273.15, c2 = c * c;
            rates.CurtainAbove = double.MaxNative(UnderRoof(t.Curtain - d.AboveC, 1.7), LeastFilm) * area * closed;
            rates.CurtainParts[0] = curtainView[0] * (c2 + p02) * (c + p0);
            rates.CurtainParts[1] = curtainView[1] * (c2 + p12) * (c + p1);
            rates.CurtainParts[2] = curtainView[2] * (c2 + p22) * (c + p2);
            rates.CurtainParts[3] = curtainView[3] * (c2 + p32) * (c + p3);
            rates.FloorCurtain = floorCurtainView * (f2 + c2) * (f + c);
            rates.CanopyCurtain = canopyCurtainView * (k2 + c2) * (k + c);
            rates.CurtainSky = curtainSkyView * (c2 + sky2) * (c + sky);
        }
    }

    private void SetGains(HouseState state, in Drive d, in HouseForcing f)
    {
        double heatW = Clamp(f.HeatW, -1e9, 1e9, 0.0), lampW = Clamp(f.LampW, 0.0, 1e9, 0.0);
        double heatRadiant = Clamp(f.HeatRadiantFraction, 0.0, 1.0, 0.0), heatAbove = Clamp(f.HeatAboveFraction, 0.0, 1.0, 0.0);
        double lampRadiant = Clamp(f.LampRadiantFraction, 0.0, 1.0, 0.0);
        double radiantW = heatW * heatRadiant + lampW * lampRadiant, freeW = heatW - heatW * heatRadiant;
        double airBelowW = Sun(f.SunAirBelowW), airAboveW = Sun(f.SunAirAboveW), curtainW = Sun(f.SunCurtainW), canopyW = Sun(f.SunCanopyW), floorW = Sun(f.SunFloorW);
        double upperClearW = Sun(f.SunUpperClearW), lowerClearW = Sun(f.SunLowerClearW), massW = Sun(f.SunMassW);
        double upperInnerW = Sun(f.SunUpperOpaqueInnerW), lowerInnerW = Sun(f.SunLowerOpaqueInnerW);
        double upperOuterW = Sun(f.SunUpperOpaqueOuterW), lowerOuterW = Sun(f.SunLowerOpaqueOuterW);
        ref PerSurface carriedW = ref state.CarriedW;
        gain.AirBelow = airBelowW + freeW * (1.0 - heatAbove) + lampW * (1.0 - lampRadiant) + LatentJPerKg * (d.Dried - d.FogEvaporated) + state.CarriedBelowW;
        gain.AirAbove = airAboveW + freeW * heatAbove + state.CarriedAboveW;
        gain.Inner[0] = 0.5 * upperClearW + carriedW[0];
        gain.Outer[0] = 0.5 * upperClearW;
        gain.Inner[1] = 0.5 * lowerClearW + carriedW[1];
        gain.Outer[1] = 0.5 * lowerClearW;
        gain.Inner[2] = upperInnerW + carriedW[2];
        gain.Outer[2] = upperOuterW;
        gain.Inner[3] = lowerInnerW + carriedW[3];
        gain.Outer[3] = lowerOuterW;
        gain.Curtain = curtainW + carriedW[4];
        bool leaves = d.LeafAreaIndex > 0.0; // without leaves the floor takes what was meant for them
        gain.Canopy = (leaves ? canopyW : 0.0) + radiantW * canopyCover + carriedW[5];
        gain.Floor = floorW + (leaves ? 0.0 : canopyW) + radiantW * (1.0 - canopyCover) + carriedW[6];
        gain.Mass = massW;
        fluxes.SunW = airBelowW + airAboveW + curtainW + upperClearW + lowerClearW + upperInnerW + lowerInnerW + upperOuterW + lowerOuterW + canopyW + floorW + massW;
        fluxes.HeatW = heatW;
        fluxes.LampW = lampW;
    }

    // Not-a-number counts as none.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Sun(double w) => w > 0.0 ? double.MinNative(w, 1e9) : 0.0;

    private void BookHeat(HouseState state, in Drive d, double stepS)
    {
        ref PerNode t = ref state.Temperature;
        double shellW = 0.0, storedJ = 0.0;
        for (int p = 0; p < HouseNodes.PartCount; p++)
        {
            if (parts[p].AreaM2 > 0.0)
            {
                double outerC = t.Outer[p];
                shellW += (rates.OuterAir[p] + rates.OuterGround[p]) * (outerC - d.OutsideC) + rates.OuterSky[p] * (outerC - d.SkyC);
                storedJ += capacity.Inner[p] * (t.Inner[p] - was.Inner[p]) + capacity.Outer[p] * (outerC - was.Outer[p]);
            }
        }

        for (int layer = 0; layer < HouseParameters.GroundLayerCount; layer++)
        {
            storedJ += capacity.Ground[layer] * (t.Ground[layer] - was.Ground[layer]);
        }

        storedJ += capacity.AirBelow * (t.AirBelow - was.AirBelow) + capacity.AirAbove * (t.AirAbove - was.AirAbove) + capacity.Curtain * (t.Curtain - was.Curtain)
            + capacity.Canopy * (t.Canopy - was.Canopy) + capacity.Floor * (t.Floor - was.Floor) + capacity.Mass * (t.Mass - was.Mass);
        fluxes.ShellLossW = shellW;
        fluxes.ThroughCoverLossW = rates.FloorSky * (t.Floor - d.SkyC) + rates.CanopySky * (t.Canopy - d.SkyC) + rates.CurtainSky * (t.Curtain - d.SkyC);
        // A stream between the two airs moves heat inside the house: what it brings one, the outgoing air of the other lacks.
        fluxes.AirLossW = rates.OutsideBelow * (t.AirBelow - d.OutsideC) + rates.OutsideAbove * (t.AirAbove - d.OutsideC) + rates.IntakeBelow * (t.AirBelow - d.IntakeC)
            + (rates.Upward - rates.Downward) * (t.AirAbove - t.AirBelow);
        fluxes.GroundLossW = rates.Deep * (t.Ground[HouseParameters.GroundLayerCount - 1] - d.DeepC) + rates.Edge * (t.Ground[2] - d.OutsideC);
        fluxes.LatentW = bookedLatentW;
        fluxes.StoredW = storedJ / stepS;
        fluxes.IntakeC = d.IntakeC;
        fluxes.FanEndC = d.Intake > 0.0 ? d.IntakeC + d.HeatEndOverMean * (t.AirBelow - d.IntakeC) : t.AirBelow;
        fluxes.PadWaterKgPerS = d.IntakeFromOutside * (d.IntakeHumidity - d.OutsideHumidity);
        fluxes.OutsideAirKgPerS = d.IntakeFromOutside + d.OutsideBelow + d.OutsideAbove;
        fluxes.VentM3PerS = d.VentM3PerS;
        fluxes.LeakM3PerS = d.LeakM3PerS;
        fluxes.CurtainExchangeM3PerS = d.Exchange * d.OutsideDensityInverse;
    }
}
