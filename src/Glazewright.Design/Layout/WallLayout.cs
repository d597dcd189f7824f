using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;

namespace Glazewright.Design.Layout;

/// <summary>Fans on their wall, louvers and wet wall opposite, filter fan beside them.</summary>
internal static class WallLayout
{
    private const double SillM = 0.6;

    public static void Place(
        LayoutInput input, FormResult form, BuildingForm house, PlantResult plant, List<PlacedItem> placed, List<Finding> findings)
    {
        FaceName intakeFace = LayoutInput.Opposite(input.FanFace);
        var fanWall = new WallPlan(house, input.FanFace, form);
        var intakeWall = new WallPlan(house, intakeFace, form);
        if (plant.Exhaust?.Choice is { } exhaust)
        {
            Fans(exhaust, fanWall, placed, findings);
            LayoutFindings.FanOutlet(house, form, fanWall.Name, exhaust, findings);
            WallPlace? pad = plant.WetWall?.Choice is { } wetWall ? WetWall(house, wetWall, intakeWall, placed, findings) : null;
            Louvers(form, house, exhaust, pad, intakeWall, placed, findings);
            LayoutFindings.Alley(house, form, intakeFace, pad, exhaust, findings);
        }

        if (plant.Pressure is not null)
        {
            WallPlan wall = intakeWall;
            bool free = wall.TryPlace(0.5, 0.5, 1.8, wall.LengthM - 0.8, out WallPlace place);
            foreach (FaceName side in (FaceName[])[FaceName.Right, FaceName.Left])
            {
                if (!free)
                {
                    wall = new WallPlan(house, side, form);
                    free = wall.TryPlace(0.5, 0.5, 1.8, 1.5, out place);
                }
            }

            Add(placed, $"{house.Id}/filter-fan", PlacedKind.PressureFan, "Filter fan", wall, place, 0.4);
            LayoutFindings.Crowded(free, $"{house.Id}/filter-fan", "The filter fan", wall, findings);
        }
    }

    private static void Fans(ExhaustPlant exhaust, WallPlan wall, List<PlacedItem> placed, List<Finding> findings)
    {
        List<WallPlace> typed = wall.Typed(OpeningKind.Fan);
        if (typed.Count > 0 && typed.Count != exhaust.Fans.Count)
        {
            findings.Add(new Finding(
                "layout/fan-openings", Severity.Miss, exhaust.Fans[0].Id,
                LayoutFindings.Text($"The job has {typed.Count} fan openings; the plant has {exhaust.Fans.Count} fans."),
                "Give one opening a fan, or leave the openings out and let them be placed.", LayoutFindings.Practice));
        }

        // Largest first: they have the fewest places. Spread evenly along the wall.
        List<FanUnit> order = [.. exhaust.Fans.OrderByDescending(f => f.SizeM).ThenBy(f => f.Id, StringComparer.Ordinal)];
        List<WallPlace> byWidth = [.. typed.OrderByDescending(t => t.WidthM)];
        for (int i = 0; i < order.Count; i++)
        {
            FanUnit fan = order[i];
            bool free;
            WallPlace place;
            if (i < byWidth.Count)
            {
                place = byWidth[i];
                free = wall.Take(place);
                if (place.WidthM < fan.SizeM - 0.01 || place.HeightM < fan.SizeM - 0.01)
                {
                    findings.Add(new Finding(
                        "layout/opening-too-small", Severity.Miss, fan.Id,
                        LayoutFindings.Text($"The opening is {place.WidthM / 0.0254:0} × {place.HeightM / 0.0254:0} in; the fan's frame is {fan.SizeM / 0.0254:0} in."),
                        "Enlarge the opening.", LayoutFindings.Practice));
                }
            }
            else
            {
                double middleM = wall.LengthM * (Slot(i, order.Count) + 0.5) / order.Count;
                free = wall.TryPlace(fan.SizeM, fan.SizeM, SillM, middleM, out place);
            }

            Add(placed, fan.Id, PlacedKind.Fan, LayoutFindings.Text($"Fan {fan.DiameterM / 0.0254:0} in"), wall, place, 0.4);
            LayoutFindings.Crowded(free, fan.Id, "A fan", wall, findings);
        }
    }

    // Big fans towards the middle, small ones outward: the order of slots from the centre.
    private static int Slot(int index, int count)
    {
        int half = index / 2;
        int middle = (count - 1) / 2;
        return index % 2 == 0 ? Math.Max(middle - half, 0) : Math.Min(middle + half + 1, count - 1);
    }

    private static WallPlace WetWall(
        BuildingForm house, WetWallPlant wetWall, WallPlan wall, List<PlacedItem> placed, List<Finding> findings)
    {
        List<WallPlace> typed = wall.Typed(OpeningKind.WetWall);
        bool free;
        WallPlace place;
        if (typed.Count > 0)
        {
            place = typed[0];
            free = wall.Take(place);
        }
        else
        {
            free = wall.TryPlace(wetWall.WidthM, wetWall.HeightM, SillM, wall.LengthM / 2, out place);
        }

        Add(placed, $"{house.Id}/wet-wall", PlacedKind.WetWall, "Wet wall", wall, place, Math.Max(wetWall.ThicknessM, 0.1));
        LayoutFindings.Crowded(free, $"{house.Id}/wet-wall", "The wet wall", wall, findings);
        return place;
    }

    private static void Louvers(
        FormResult form,
        BuildingForm house,
        ExhaustPlant exhaust,
        WallPlace? pad,
        WallPlan wall,
        List<PlacedItem> placed,
        List<Finding> findings)
    {
        List<WallPlace> typed = wall.Typed(OpeningKind.Louver);
        if (typed.Count > 0)
        {
            for (int i = 0; i < typed.Count; i++)
            {
                LayoutFindings.Crowded(wall.Take(typed[i]), $"{house.Id}/louver-{i + 1}", "A louver", wall, findings);
                Add(placed, $"{house.Id}/louver-{i + 1}", PlacedKind.Louver, "Louver", wall, typed[i], 0.15);
            }

            return;
        }

        if (pad is { } before)
        {
            // Shutters of the wet wall: they stand in front of it, as wide as their frames need.
            double widthM = Math.Min(Math.Max(exhaust.LouverGrossM2 / before.HeightM, 0.3), wall.LengthM);
            var over = new WallPlace(Math.Max(before.UM + (before.WidthM - widthM) / 2, 0), before.VM, widthM, before.HeightM);
            if (wall.Overruns(over))
            {
                findings.Add(new Finding(
                    "layout/louvers-overrun", Severity.Near, $"{house.Id}/louver-1",
                    LayoutFindings.Text($"The louvers before the wet wall need {widthM / 0.3048:0.0} ft beside each other at its height: they run across a door or past the end of the wall."),
                    "Two rows, a plenum box around the corner, louvers of more free area, or the door on another wall.", LayoutFindings.Practice));
            }

            Add(placed, $"{house.Id}/louver-1", PlacedKind.Louver, "Louvers before the wet wall", wall, over, 0.35);
            return;
        }

        // The same frame area as chosen, in pieces no wider than 4 ft and as tall as the wall lets them be.
        double lowEaveM = Math.Min(house.Roof.LeftEaveM, house.Roof.RightEaveM);
        double tallM = Math.Clamp(lowEaveM - SillM - 0.1, 0.3, 1.524);
        double longM = exhaust.LouverGrossM2 / tallM;
        int count = Math.Max((int)Math.Ceiling(longM / 1.2192 - 1e-9), 1);
        WallPlan[] sides = wall.Name is FaceName.End1 or FaceName.End2
            ? [new WallPlan(house, FaceName.Right, form), new WallPlan(house, FaceName.Left, form)]
            : [];
        for (int i = 0; i < count; i++)
        {
            WallPlan on = wall;
            bool free = on.TryPlace(longM / count, tallM, SillM, wall.LengthM * (i + 0.5) / count, out WallPlace place);
            foreach (WallPlan side in sides)
            {
                // What the end wall cannot take goes round the corner, as near to it as it can.
                if (!free)
                {
                    on = side;
                    free = on.TryPlace(longM / count, tallM, SillM, wall.Name == FaceName.End2 ? side.LengthM : 0, out place);
                }
            }

            Add(placed, $"{house.Id}/louver-{i + 1}", PlacedKind.Louver, "Louver", on, place, 0.15);
            LayoutFindings.Crowded(free, $"{house.Id}/louver-{i + 1}", "A louver", on, findings);
        }
    }

    private static void Add(List<PlacedItem> placed, string id, PlacedKind kind, string label, WallPlan wall, WallPlace place, double depthM)
    {
        (Point3 corner, Point3 size) = wall.Box(place, depthM);
        placed.Add(new PlacedItem(id, kind, label, corner, size, wall.Name));
    }
}
