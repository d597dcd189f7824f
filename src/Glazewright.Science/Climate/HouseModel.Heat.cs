using Glazewright.Science.Maths;
using Glazewright.Science.Network;

namespace Glazewright.Science.Climate;

public sealed partial class HouseModel
{
    private const double StefanBoltzmann = 5.670374e-8;
    private const double LeastFilm = 0.5; // W/(m² K): no surface is ever cut off from its air

    private readonly double[] innerFilm = new double[HouseNodes.PartCount];
    private double floorFilm, curtainFilmBelow;

    // Long-wave exchange between two temperatures, W/(m² K), exact at the temperatures given.
    private static double Radiation(double aC, double bC)
    {
        double a = aC + 273.15, b = bC + 273.15;
        return StefanBoltzmann * (a * a + b * b) * (a + b);
    }

    private static double Pair(double emissivityA, double emissivityB) =>
        emissivityA * emissivityB / Math.Max(emissivityA + emissivityB - emissivityA * emissivityB, 1e-6);

    private static void SetBoundaries(NetworkState net, in Drive d, in HouseForcing f)
    {
        net.TemperatureC[HouseNodes.Outside] = d.OutsideC;
        net.TemperatureC[HouseNodes.Sky] = d.SkyC;
        net.TemperatureC[HouseNodes.Deep] = Clamp(f.DeepGroundC, -60.0, 60.0, 10.0);
    }

    private void SetShell(NetworkState net, in Drive d, in HouseForcing f)
    {
        double windFilm = HouseFilms.OuterWPerM2K(house.WindLaw, d.WindMPerS);
        double forced = Math.Max(4.0 * d.Circulation, Math.Min(0.06 * d.ExhaustAirChangesPerHour, 6.0));
        double[] t = net.TemperatureC, rate = net.LinkWPerK;
        for (int p = 0; p < HouseNodes.PartCount; p++)
        {
            ShellPart part = parts[p];
            if (part.AreaM2 <= 0.0)
            {
                continue;
            }

            double outerC = t[HouseNodes.Outer + p], innerC = t[HouseNodes.Inner + p];
            double airC = p is 0 or 2 ? d.AboveC : d.BelowC;
            rate[link.OuterAir + p] = windFilm * part.AreaM2;
            rate[link.OuterSky + p] = part.OuterEmissivity * part.SkyViewFraction * part.AreaM2 * Radiation(outerC, d.SkyC);
            rate[link.OuterGround + p] = part.OuterEmissivity * (1.0 - part.SkyViewFraction) * part.AreaM2 * Radiation(outerC, d.OutsideC);
            double film = part.SlopeCosine < 0.2 ? HouseFilms.WallWPerM2K(airC - innerC) : HouseFilms.UnderRoofWPerM2K(airC - innerC, part.SlopeCosine);
            innerFilm[p] = Math.Max(Math.Max(film, forced), LeastFilm);
            rate[link.InnerAir + p] = innerFilm[p] * part.AreaM2;
        }
    }

    private void SetInside(NetworkState net, in Drive d, in HouseForcing f)
    {
        double[] t = net.TemperatureC, rate = net.LinkWPerK;
        double area = house.FloorAreaM2, closed = d.Closed;
        double curtainC = t[HouseNodes.Curtain], floorC = t[HouseNodes.Floor], canopyC = t[HouseNodes.Canopy];
        double forced = Math.Max(4.0 * d.Circulation, Math.Min(0.06 * d.ExhaustAirChangesPerHour, 6.0));

        floorFilm = HouseFilms.FloorWPerM2K(floorC - d.BelowC);
        floorFilm = Math.Max(Math.Max(floorFilm, forced), LeastFilm);
        rate[link.FloorAir] = floorFilm * area;
        double leafFilm = d.Circulation > 0.0 || d.ExhaustAirChangesPerHour > 10.0 ? 8.0 : 5.0;
        rate[link.CanopyAir] = Math.Max(2.0 * leafFilm * d.LeafAreaIndex * area, 0.1 * area);
        net.CapacityJPerK[HouseNodes.Canopy] = (1200.0 * d.LeafAreaIndex + 200.0) * area;

        curtainFilmBelow = Math.Max(Math.Max(HouseFilms.UnderRoofWPerM2K(d.BelowC - curtainC, 1.0), forced), LeastFilm);
        double filmAbove = Math.Max(HouseFilms.UnderRoofWPerM2K(curtainC - d.AboveC, 1.0), LeastFilm);
        rate[link.CurtainBelow] = curtainFilmBelow * area * Math.Max(closed, 0.02);
        rate[link.CurtainAbove] = filmAbove * area * closed;

        double ceiling = house.FloorToCurtainViewFraction, cover = d.CanopyCover;
        double clothLets = 1.0 - closed + closed * house.Curtain.LongWaveTransmittance;
        double lowerArea = house.LowerClear.AreaM2 + house.LowerOpaque.AreaM2, upperArea = house.UpperClear.AreaM2 + house.UpperOpaque.AreaM2;
        double betweenWalls = Math.Max(0.0, lowerArea - 2.0 * area * (1.0 - ceiling)), betweenRoofs = Math.Max(0.0, upperArea - area);
        double wallsToRoof = area * (1.0 - ceiling) * clothLets;
        for (int p = 0; p < HouseNodes.PartCount; p++)
        {
            bool upper = p is 0 or 2;
            double share = (p is 0 ? upperShare : p is 1 ? lowerShare : p is 2 ? 1.0 - upperShare : 1.0 - lowerShare)
                * ((upper ? upperArea : lowerArea) > 0.0 ? 1.0 : 0.0);
            double seen = area * share * (upper ? ceiling * clothLets : 1.0 - ceiling), emissivity = parts[p].InnerEmissivity;
            double innerC = t[HouseNodes.Inner + p];
            rate[link.FloorParts + p] = seen * (1.0 - cover) * Pair(house.FloorEmissivity, emissivity) * Radiation(floorC, innerC);
            rate[link.CanopyParts + p] = seen * cover * emissivity * Radiation(canopyC, innerC);
            double clothSees = area * closed * share * (upper ? 1.0 : 1.0 - ceiling);
            rate[link.CurtainParts + p] = clothSees * Pair(upper ? house.Curtain.UpperEmissivity : house.Curtain.LowerEmissivity, emissivity)
                * Radiation(curtainC, innerC);
        }

        double roofC = t[HouseNodes.Inner], wallC = t[HouseNodes.Inner + 1], roofOpaqueC = t[HouseNodes.Inner + 2], wallOpaqueC = t[HouseNodes.Inner + 3];
        rate[link.FloorCurtain] = area * ceiling * closed * (1.0 - cover) * Pair(house.FloorEmissivity, house.Curtain.LowerEmissivity) * Radiation(floorC, curtainC);
        rate[link.CanopyCurtain] = area * ceiling * closed * cover * house.Curtain.LowerEmissivity * Radiation(canopyC, curtainC);
        rate[link.CanopyFloor] = area * cover * house.FloorEmissivity * Radiation(canopyC, floorC);
        double lowerOpaqueShare = lowerArea > 0.0 ? 1.0 - lowerShare : 0.0, upperOpaqueShare = upperArea > 0.0 ? 1.0 - upperShare : 0.0;
        rate[link.LowerPair] = betweenWalls * lowerShare * lowerOpaqueShare * 0.8 * Radiation(wallC, wallOpaqueC);
        rate[link.UpperPair] = betweenRoofs * upperShare * upperOpaqueShare * 0.8 * Radiation(roofC, roofOpaqueC);
        bool both = lowerArea > 0.0 && upperArea > 0.0;
        double open = both ? wallsToRoof * 0.8 : 0.0;
        rate[link.WallRoof] = open * lowerShare * upperShare * Radiation(wallC, roofC);
        rate[link.WallRoof + 1] = open * lowerShare * upperOpaqueShare * Radiation(wallC, roofOpaqueC);
        rate[link.WallRoof + 2] = open * lowerOpaqueShare * upperShare * Radiation(wallOpaqueC, roofC);
        rate[link.WallRoof + 3] = open * lowerOpaqueShare * upperOpaqueShare * Radiation(wallOpaqueC, roofOpaqueC);

        double through = house.UpperClear.LongWaveTransmittance * (upperArea > 0.0 ? upperShare : 0.0) * area;
        rate[link.FloorSky] = through * ceiling * clothLets * (1.0 - cover) * house.FloorEmissivity * Radiation(floorC, d.SkyC);
        rate[link.CanopySky] = through * ceiling * clothLets * cover * Radiation(canopyC, d.SkyC);
        rate[link.CurtainSky] = through * closed * house.Curtain.UpperEmissivity * Radiation(curtainC, d.SkyC);
    }

    private void SetGains(NetworkState net, HouseState state, in Drive d, in HouseForcing f)
    {
        double[] gain = net.GainW;
        double heatW = Clamp(f.HeatW, -1e9, 1e9, 0.0), lampW = Clamp(f.LampW, 0.0, 1e9, 0.0);
        double heatRadiant = Clamp(f.HeatRadiantFraction, 0.0, 1.0, 0.0), heatAbove = Clamp(f.HeatAboveFraction, 0.0, 1.0, 0.0);
        double lampRadiant = Clamp(f.LampRadiantFraction, 0.0, 1.0, 0.0);
        double radiantW = heatW * heatRadiant + lampW * lampRadiant;
        ReadOnlySpan<double> carriedW = state.CarriedW;
        gain[HouseNodes.AirBelow] = Sun(f.SunAirBelowW) + heatW * (1.0 - heatRadiant) * (1.0 - heatAbove) + lampW * (1.0 - lampRadiant)
            - AirConstants.LatentHeatJPerKg * d.FogEvaporated + carriedW[HouseNodes.SurfaceCount];
        gain[HouseNodes.AirAbove] = Sun(f.SunAirAboveW) + heatW * (1.0 - heatRadiant) * heatAbove + carriedW[HouseNodes.SurfaceCount + 1];
        gain[HouseNodes.Curtain] = Sun(f.SunCurtainW);
        gain[HouseNodes.Inner] = 0.5 * Sun(f.SunUpperClearW);
        gain[HouseNodes.Outer] = 0.5 * Sun(f.SunUpperClearW);
        gain[HouseNodes.Inner + 1] = 0.5 * Sun(f.SunLowerClearW);
        gain[HouseNodes.Outer + 1] = 0.5 * Sun(f.SunLowerClearW);
        gain[HouseNodes.Inner + 2] = Sun(f.SunUpperOpaqueInnerW);
        gain[HouseNodes.Outer + 2] = Sun(f.SunUpperOpaqueOuterW);
        gain[HouseNodes.Inner + 3] = Sun(f.SunLowerOpaqueInnerW);
        gain[HouseNodes.Outer + 3] = Sun(f.SunLowerOpaqueOuterW);
        bool leaves = d.LeafAreaIndex > 0.0; // without leaves the floor takes what was meant for them
        gain[HouseNodes.Canopy] = (leaves ? Sun(f.SunCanopyW) : 0.0) + radiantW * d.CanopyCover;
        gain[HouseNodes.Floor] = Sun(f.SunFloorW) + (leaves ? 0.0 : Sun(f.SunCanopyW)) + radiantW * (1.0 - d.CanopyCover);
        gain[HouseNodes.Mass] = Sun(f.SunMassW);
        for (int s = 0; s < HouseNodes.SurfaceCount; s++)
        {
            gain[HouseNodes.NodeOfSurface[s]] += carriedW[s];
        }
    }

    private static double Sun(double w) => Clamp(w, 0.0, 1e9, 0.0);

    private void BookHeat(NetworkState net, in Drive d, in HouseForcing f)
    {
        double[] flux = net.FluxW, stored = net.StoredW;
        double shellW = 0.0, storedW = 0.0;
        for (int p = 0; p < HouseNodes.PartCount; p++)
        {
            shellW += flux[link.OuterAir + p] + flux[link.OuterSky + p] + flux[link.OuterGround + p];
        }

        for (int node = 0; node < HouseNodes.SolvedCount; node++)
        {
            storedW += stored[node];
        }

        fluxes.SunW = Sun(f.SunAirBelowW) + Sun(f.SunAirAboveW) + Sun(f.SunCurtainW) + Sun(f.SunUpperClearW) + Sun(f.SunLowerClearW)
            + Sun(f.SunUpperOpaqueInnerW) + Sun(f.SunUpperOpaqueOuterW) + Sun(f.SunLowerOpaqueInnerW) + Sun(f.SunLowerOpaqueOuterW)
            + Sun(f.SunCanopyW) + Sun(f.SunFloorW) + Sun(f.SunMassW);
        fluxes.HeatW = Clamp(f.HeatW, -1e9, 1e9, 0.0);
        fluxes.LampW = Clamp(f.LampW, 0.0, 1e9, 0.0);
        fluxes.ShellLossW = shellW;
        fluxes.ThroughCoverLossW = flux[link.FloorSky] + flux[link.CanopySky] + flux[link.CurtainSky];
        // A stream between the two airs moves heat inside the house: what it brings one, the outgoing air of the other lacks.
        fluxes.AirLossW = -(flux[link.OutsideBelow] + flux[link.OutsideAbove] + flux[link.IntakeBelow] + flux[link.BelowAbove] + flux[link.AboveBelow]);
        fluxes.GroundLossW = flux[link.Ground + HouseParameters.GroundLayerCount] + flux[link.Edge];
        fluxes.LatentW = bookedLatentW;
        fluxes.StoredW = storedW;
        fluxes.IntakeC = d.IntakeC;
        fluxes.FanEndC = d.Intake > 0.0 ? d.IntakeC + d.HeatEndOverMean * (net.TemperatureC[HouseNodes.AirBelow] - d.IntakeC) : net.TemperatureC[HouseNodes.AirBelow];
        fluxes.PadWaterKgPerS = d.Intake * (d.IntakeHumidity - d.OutsideHumidity);
        fluxes.VentM3PerS = d.VentM3PerS;
        fluxes.LeakM3PerS = d.LeakM3PerS;
        fluxes.CurtainExchangeM3PerS = d.Exchange / d.OutsideDensity;
    }
}
