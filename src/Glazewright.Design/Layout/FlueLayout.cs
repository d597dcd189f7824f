using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;
using Glazewright.Mechanics.Loads;

namespace Glazewright.Design.Layout;

/// <summary>
/// Where the vent of each fuel-burning heater leaves the house: the shortest way through a wall to a terminal clear of doors, louvers, wet wall, filter
/// intake, neighbours, columns and snow.
/// </summary>
internal static class FlueLayout
{
    private const double CondensingFraction = 0.9;
    private const double StepM = 0.1;
    private const double TouchingM = 2 * FlueRules.FootM;
    private const double ApartM = FlueRules.FootM;

    public static List<FlueLine> Place(
        LayoutInput input, FormResult form, BuildingForm house, PlantResult plant, List<PlacedItem> placed, List<Finding> findings)
    {
        List<HeaterUnit> burners = [.. (plant.Heat?.Choice.Heaters ?? []).Where(h => !h.Electric)];
        if (burners.Count == 0)
        {
            return [];
        }

        WallModule module = input.Metric ? WallModule.Metric : WallModule.Inches;
        List<WallPlan> walls = [.. ((FaceName[])[FaceName.Left, FaceName.Right, FaceName.End1, FaceName.End2]).Select(f => new WallPlan(house, f, module))];
        List<AirOpening> openings = Openings(walls, house, placed);
        foreach (PlacedItem item in placed)
        {
            walls.Find(w => w.Name == item.Face)?.Add(OnWall(item));
        }

        double leastM = SnowDepthM(input.GroundSnowPa) + FlueRules.AboveSnowM;
        List<FlueLine> lines = [];
        foreach (HeaterUnit burner in burners)
        {
            if (placed.Find(p => p.Id == burner.Id) is not { } box)
            {
                continue;
            }

            FlueLine line = One(burner, box, leastM, house, form, walls, openings);
            lines.Add(line);
            FlueFindings.Of(line, form, house, openings, findings);
        }

        return lines;
    }

    /// <summary>Depth of the ground snow by its density, m.</summary>
    public static double SnowDepthM(double groundPa) => groundPa > 0 ? groundPa / SnowDensity.NPerM3(groundPa) : 0;

    private static FlueLine One(
        HeaterUnit burner, PlacedItem box, double leastM, BuildingForm house, FormResult form, List<WallPlan> walls, List<AirOpening> openings)
    {
        double inputW = burner.OutputW / burner.EfficiencyFraction;
        bool condensing = burner.EfficiencyFraction > CondensingFraction;
        (double ventM, double mostM) = FlueRules.Pipe(inputW);
        double pipeM = ventM > 0 ? ventM : 6 * 0.0254;
        double wideM = burner.SealedCombustion ? pipeM + ApartM : pipeM;
        FluePath? best = null;
        WallPlan? through = null;
        WallPlace taken = default;
        bool bestRoomy = false;
        foreach (WallPlan wall in walls)
        {
            List<(BuildingForm Other, double GapM, double FromM, double ToM)> facing = [.. LayoutFindings.InFront(house, form, wall.Name)];
            foreach (double u in Grid(wideM / 2, wall.LengthM - wideM / 2))
            {
                double topM = wall.Name is FaceName.Left or FaceName.Right ? wall.LowEaveM : house.Roof.HeightM(Math.Clamp(u, 0, house.WidthM), house.WidthM);
                double levelM = FluePath.To(wall, box, house, u, null, condensing).HeightM;
                foreach (double v in Grid(leastM, topM - pipeM).Prepend(levelM).Where(v => v >= leastM - 1e-9))
                {
                    var path = FluePath.To(wall, box, house, u, v, condensing);
                    if (bestRoomy && path.EquivalentM >= best!.EquivalentM - 1e-9)
                    {
                        continue;
                    }

                    bool roomy = !openings.Exists(o => FlueRules.TooNear(path.Terminal, o))
                        && !facing.Exists(f => f.GapM < FlueRules.FacingM && u > f.FromM && u < f.ToM);
                    bool better = best is null || (roomy && !bestRoomy) || (roomy == bestRoomy && path.EquivalentM < best.EquivalentM - 1e-9);
                    var place = new WallPlace(u - wideM / 2, v - pipeM / 2, wideM, pipeM);
                    if (better
                        && openings.TrueForAll(o => FlueRules.Keeps(path.Terminal, o, burner.SealedCombustion, inputW))
                        && !facing.Exists(f => f.GapM < TouchingM && u > f.FromM && u < f.ToM)
                        && wall.Free(place))
                    {
                        (best, through, taken, bestRoomy) = (path, wall, place, roomy);
                    }
                }
            }
        }

        through?.Add(taken.Wider(ApartM));
        AirOpening? nearest = best is null ? null : openings.MinBy(o => o.DistanceM(best.Terminal));
        return new FlueLine(
            burner.Id, inputW, burner.SealedCombustion, condensing, ventM, burner.SealedCombustion ? ventM : 0, through?.Name, taken.MiddleM,
            best?.HeightM ?? 0, best?.RunM ?? 0, best?.Elbows ?? 0, best?.EquivalentM ?? 0, mostM, best?.FallM ?? 0, leastM,
            burner.SealedCombustion ? FlueRules.DirectVentM(inputW) : 4 * FlueRules.FootM, nearest?.Name ?? "", nearest?.DistanceM(best!.Terminal) ?? 0);
    }

    private static List<AirOpening> Openings(List<WallPlan> walls, BuildingForm house, List<PlacedItem> placed)
    {
        List<AirOpening> openings = [];
        foreach (WallPlan wall in walls)
        {
            foreach (OpeningForm o in house.Face(wall.Name).Openings
                .Where(o => o.Opening.Kind.IsTyped()))
            {
                (Point3 corner, Point3 size) = wall.Box(WallPlan.Of(o.Opening), 0);
                openings.Add(new AirOpening(o.Opening.Kind is OpeningKind.Vent ? "vent" : o.Opening.Kind is OpeningKind.Window ? "window" : "door", corner, size, false, false));
            }
        }

        foreach (PlacedItem p in placed)
        {
            string name = p.Kind switch
            {
                PlacedKind.Louver => "louver",
                PlacedKind.WetWall or PlacedKind.IntakeBox => "wet wall",
                PlacedKind.PressureFan => "filter intake",
                PlacedKind.Fan => AirOpening.ExhaustFan,
                _ => "",
            };
            if (name.Length > 0)
            {
                openings.Add(new AirOpening(name, p.Corner, p.Size, p.Kind == PlacedKind.PressureFan, p.Kind is PlacedKind.Louver or PlacedKind.WetWall or PlacedKind.IntakeBox));
            }
        }

        return openings;
    }

    private static WallPlace OnWall(PlacedItem p) => p.Face is FaceName.End1 or FaceName.End2
        ? new(p.Corner.YM, p.Corner.ZM, p.Size.YM, p.Size.ZM)
        : new(p.Corner.XM, p.Corner.ZM, p.Size.XM, p.Size.ZM);

    private static IEnumerable<double> Grid(double from, double to)
    {
        for (int i = 0; from + i * StepM <= to; i++)
        {
            yield return from + i * StepM;
        }
    }
}
