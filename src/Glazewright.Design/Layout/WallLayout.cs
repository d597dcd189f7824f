using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;

namespace Glazewright.Design.Layout;

/// <summary>Fans on their wall, wet wall and louvers opposite, filter fan beside them. What does not fit is left out and told, never drawn over something.</summary>
internal static class WallLayout
{
    private const double FilterFanM = 0.508;
    private const double FilterSillM = 1.8288;
    private const double HeaderM = 0.2;

    public static void Place(
        LayoutInput input, FormResult form, BuildingForm house, PlantResult plant, List<PlacedItem> placed, List<Finding> findings)
    {
        WallModule module = input.Metric ? WallModule.Metric : WallModule.Inches;
        FaceName intakeFace = LayoutInput.Opposite(input.FanFace);
        var walls = new Dictionary<FaceName, WallPlan>();
        WallPlan Wall(FaceName face) => walls.TryGetValue(face, out WallPlan? known) ? known : walls[face] = new WallPlan(house, face, module);
        if (plant.Exhaust?.Choice is { } exhaust)
        {
            Fans(exhaust, Wall(input.FanFace), placed, findings);
            LayoutFindings.FanOutlet(house, form, input.FanFace, exhaust, findings);
            WallPlace? pad = plant.WetWall?.Choice is { } wetWall ? IntakeLayout.WetWall(house, wetWall, exhaust, Wall(intakeFace), placed, findings) : null;
            if (plant.WetWall is null)
            {
                IntakeLayout.Louvers(house, exhaust, Wall(intakeFace), Wall, placed, findings);
            }

            ClothBox.Place(form, house, plant, intakeFace, Wall(intakeFace), placed, findings);
            LayoutFindings.Alley(house, form, intakeFace, pad, plant.WetWall is not null, exhaust, findings);
        }

        if (plant is { Upper: { } upper, Curtain: { } curtain })
        {
            Upper(house, upper, curtain, Wall(input.FanFace), Wall(intakeFace), placed, findings);
        }

        if (plant.Pressure is not null)
        {
            FilterFans(house, plant.Pressure.Fans, [intakeFace, FaceName.Right, FaceName.Left, input.FanFace], Wall, placed, findings);
        }
    }

    public static void Add(List<PlacedItem> placed, string id, PlacedKind kind, string label, WallPlan wall, WallPlace place, double depthM, double outM = 0)
    {
        (Point3 corner, Point3 size) = wall.Box(place, depthM, outM);
        placed.Add(new PlacedItem(id, kind, label, corner, size, wall.Name));
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

        // The largest fans take the widest openings the job types.
        List<WallPlace> byWidth = [.. typed.OrderByDescending(t => t.WidthM)];
        List<FanUnit> inTyped = [.. exhaust.Fans.OrderByDescending(f => f.SizeM).ThenBy(f => f.Id, StringComparer.Ordinal).Take(byWidth.Count)];
        for (int i = 0; i < inTyped.Count; i++)
        {
            WallPlace place = byWidth[i];
            FanUnit fan = inTyped[i];
            if (place.WidthM < fan.SizeM - 0.01 || place.HeightM < fan.SizeM - 0.01)
            {
                findings.Add(new Finding(
                    "layout/opening-too-small", Severity.Miss, fan.Id,
                    LayoutFindings.Text($"The opening is {place.WidthM / 0.0254:0} × {place.HeightM / 0.0254:0} in; the fan's frame is {fan.SizeM / 0.0254:0} in."),
                    "Enlarge the opening.", LayoutFindings.Practice));
            }

            LayoutFindings.Typed(wall.Take(place), fan.Id, "The fan", findings);
            Add(placed, fan.Id, PlacedKind.Fan, Label(fan), wall, place, 0.4);
        }

        // The rest in the order they come on: the last stages are left out when the wall has no room.
        List<FanUnit> rest = [.. exhaust.Fans.Where(f => !inTyped.Contains(f))];
        int fits = rest.Count;
        List<Put>? puts = null;
        bool clear = true;
        for (; fits > 0 && puts is null; fits -= puts is null ? 1 : 0)
        {
            double[] sizes = [.. rest.Take(fits).Select(f => f.SizeM)];
            puts = WallPacking.TryAll(wall, sizes);
            if (puts is null && wall.Name is FaceName.Left or FaceName.Right)
            {
                puts = WallPacking.TryAll(wall, sizes, clear: false);
                clear = puts is null;
            }
        }

        foreach (Put put in (puts ?? []).OrderBy(p => p.Index))
        {
            Add(placed, rest[put.Index].Id, PlacedKind.Fan, Label(rest[put.Index]), wall, put.Place, 0.4);
        }

        LayoutFindings.AcrossFrames(clear, exhaust.Fans[0].Id, "fans", wall, findings);
        if (fits < rest.Count)
        {
            LayoutFindings.FansShort(exhaust, rest, fits, wall, findings);
        }
    }

    // About the ridge, as low above the cloth as there is room: the tops of the gables are narrow.
    private static void Upper(BuildingForm house, UpperFanPlant upper, CurtainPlant curtain, WallPlan fanWall, WallPlan inletWall, List<PlacedItem> placed, List<Finding> findings)
    {
        if (!Row(house, curtain, fanWall, upper.Count, upper.SizeM, (i, place) => Add(placed, $"{house.Id}/upper-fan-{i}", PlacedKind.UpperFan, LayoutFindings.Text($"Upper fan {upper.DiameterM / 0.0254:0} in"), fanWall, place, 0.4))
            | !Row(house, curtain, inletWall, upper.Count, upper.InletSizeM, (i, place) => Add(placed, $"{house.Id}/upper-louver-{i}", PlacedKind.UpperLouver, "Upper inlet", inletWall, place, IntakeLayout.LouverDepthM)))
        {
            findings.Add(new Finding(
                "layout/upper-fan-room", Severity.Miss, $"{house.Id}/upper-fan-1",
                LayoutFindings.Text($"The gables above the curtain have no room for {upper.Count} upper fan{(upper.Count == 1 ? "" : "s")} of {upper.SizeM / 0.0254:0} in and as many inlets of {upper.InletSizeM / 0.0254:0} in, clear of roof, cloth and what hangs there; those without a place are not drawn."),
                "Smaller fans, a lower curtain, or a roof vent.", LayoutFindings.Practice));
        }
    }

    private static bool Row(BuildingForm house, CurtainPlant curtain, WallPlan wall, int count, double sizeM, Action<int, WallPlace> put)
    {
        double step = wall.Module.StepM;
        // The cloth's drive line and a hand's breadth.
        double lowestM = step * Math.Ceiling((curtain.HeightM + 0.15) / step - 1e-9);
        double[] sills = [.. Enumerable.Range(0, 60).Select(i => lowestM + step * i)];
        for (int i = 1; i <= count; i++)
        {
            // Looked for with its header over it, under the rafter.
            if (wall.Near(sizeM, sizeM + HeaderM, wall.Name is FaceName.End1 or FaceName.End2 ? house.Roof.RidgeOffsetM : wall.LengthM * (i - 0.5) / count, sills) is not { } place)
            {
                return false;
            }

            wall.Add(place);
            put(i, place with { HeightM = sizeM });
        }

        return true;
    }

    private static string Label(FanUnit fan) => LayoutFindings.Text($"Fan {fan.DiameterM / 0.0254:0} in");

    private static void FilterFans(BuildingForm house, int count, FaceName[] faces, Func<FaceName, WallPlan> wallOf, List<PlacedItem> placed, List<Finding> findings)
    {
        int found = 0;
        foreach (FaceName face in faces.Distinct())
        {
            WallPlan wall = wallOf(face);
            double step = wall.Module.StepM;
            double highest = Math.Max(step * Math.Floor((Math.Min(FilterSillM, wall.LowEaveM - 0.1 - FilterFanM) + 1e-9) / step), wall.Module.LeastSillM);
            double[] sills = [highest, .. Enumerable.Range(4, 8).Select(i => 6 * step * i)];
            double wantedM = face is FaceName.End1 or FaceName.End2 ? wall.LengthM - 0.8 : 1.5;
            while (found < count && wall.Near(FilterFanM, FilterFanM, wantedM, sills) is { } place)
            {
                wall.Add(place);
                found++;
                Add(placed, found == 1 ? $"{house.Id}/filter-fan" : FormattableString.Invariant($"{house.Id}/filter-fan-{found}"), PlacedKind.PressureFan, "Filter fan", wall, place, 0.4);
            }

            if (found == count)
            {
                return;
            }
        }

        findings.Add(new Finding(
            "layout/wall-crowded", Severity.Miss, $"{house.Id}/filter-fan",
            LayoutFindings.Text($"{(count == 1 ? "The filter fan finds" : $"{count - found} of {count} filter fans find")} no free place on any wall beside doors, louvers, wet wall, fans and braced bays; {(count - found == 1 ? "it is" : "they are")} not drawn."),
            "Fewer or smaller louvers, or a door on another wall.", LayoutFindings.Practice));
    }
}
