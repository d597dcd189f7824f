using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;

namespace Glazewright.Design.Layout;

/// <summary>A gravity vent straight up from its heater: as high as roof, draft, openings and neighbours ask, then the smallest pipe that carries the input.</summary>
internal static class GravityLayout
{
    private const double AboveNeighbourM = 2 * FlueRules.FootM;

    public static FlueLine One(HeaterUnit burner, PlacedItem box, BuildingForm house, FormResult form, PlantResult plant, List<AirOpening> openings, double airPa)
    {
        double inputW = burner.OutputW / burner.EfficiencyFraction;
        double x = box.Corner.XM + box.Size.XM / 2;
        double y = box.Corner.YM + box.Size.YM / 2;
        double collarM = box.Corner.ZM + box.Size.ZM;
        bool left = y <= house.Roof.RidgeOffsetM;
        double roofM = house.Roof.HeightM(y, house.WidthM);
        var foot = new Point3(x, y, roofM);
        // The table begins at a rise of 6 ft, so that no vent is lower.
        double capM = new[]
        {
            roofM + GravityRules.AboveRoofM(left ? house.Roof.LeftPitch : house.Roof.RightPitch),
            collarM + Math.Max(GravityRules.LeastRiseM, 6 * FlueRules.FootM),
            openings.Select(o => FlueRules.LeastCapM(foot, o)).DefaultIfEmpty(0).Max(),
            Neighbours(house, form, foot),
        }.Max();
        double riseM = capM - collarM;
        (double ventM, double capacityW) = GravityRules.Pipe(inputW, riseM);
        var cap = new Point3(x, y, capM);
        AirOpening? nearest = openings.MinBy(o => o.DistanceM(cap));
        double pullPa = plant.Exhaust?.Choice is { } e ? e.Dry.Concat(e.Wet).Select(p => p.StaticPa).DefaultIfEmpty(0).Max() : 0;
        return new FlueLine(
            burner.Id, inputW, false, false, ventM, 0, left ? FaceName.RoofLeft : FaceName.RoofRight, x, capM, riseM, 0, riseM, 0, 0,
            collarM + GravityRules.LeastRiseM, 4 * FlueRules.FootM, nearest?.Name ?? "", nearest?.DistanceM(cap) ?? 0)
        {
            Gravity = new GravityVent(
                y, roofM, capM - roofM, riseM, capacityW,
                GravityRules.DraftPa(riseM, airPa, GravityRules.OutsideK, GravityRules.GasK), pullPa, airPa),
        };
    }

    // Buildings within 8 ft whose ridge stands above the roof here: 2 ft above them.
    private static double Neighbours(BuildingForm house, FormResult form, Point3 foot)
    {
        Point3 at = house.Origin + foot.XM * house.AlongX + foot.YM * house.AlongY;
        return form.Buildings
            .Where(b => b.Id != house.Id && AwayM(b, at) < GravityRules.WallM && b.Roof.RidgeM > foot.ZM)
            .Select(b => b.Roof.RidgeM + AboveNeighbourM).DefaultIfEmpty(0).Max();
    }

    private static double AwayM(BuildingForm b, Point3 at)
    {
        double u = (at - b.Origin).Dot(b.AlongX);
        double v = (at - b.Origin).Dot(b.AlongY);
        return double.Hypot(Math.Max(Math.Max(-u, u - b.LengthM), 0), Math.Max(Math.Max(-v, v - b.WidthM), 0));
    }
}
