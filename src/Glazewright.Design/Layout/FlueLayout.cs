using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;
using Glazewright.Design.Services;
using Glazewright.Mechanics.Loads;
using Glazewright.Science.Air;

namespace Glazewright.Design.Layout;

/// <summary>
/// Where the vent of each fuel-burning heater leaves the house. Sealed ones: the shortest way through a wall to a terminal clear of doors, louvers, wet
/// wall, filter intake, neighbours, the wall's steel, joints of its covering and snow. Open ones: straight up through the roof. A boiler's pipe is sized only: where it stands is not in the job.
/// </summary>
internal static class FlueLayout
{
    private const double CondensingFraction = 0.9;
    private const double TouchingM = 2 * FlueRules.FootM;
    private const double ApartM = FlueRules.FootM;

    private const double UnderRoofM = 0.1;

    // Rank of a place that is roomy and off the covering's joints.
    private const int Best = 3;

    public static List<FlueLine> Place(
        LayoutInput input, FormResult form, BuildingForm house, PlantResult plant, List<PlacedItem> placed, List<Finding> findings)
    {
        List<HeaterUnit> burners = [.. (plant.Heat?.Choice.Heaters ?? []).Where(h => !h.Electric)];
        bool boiler = input.Fuel != FuelKind.None && plant.BenchPipeW > 0;
        if (burners.Count == 0 && !boiler)
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

        Dictionary<FaceName, WallSteel> steel = walls.ToDictionary(w => w.Name, w => new WallSteel(house, placed, w.Name, input.Metric ? UnitSystem.Metric : UnitSystem.Us, input.GirtSpacingM));
        double leastM = SnowDepthM(input.GroundSnowPa) + FlueRules.AboveSnowM;
        List<FlueLine> lines = [];
        foreach (HeaterUnit burner in burners)
        {
            if (placed.Find(p => p.Id == burner.Id) is not { } box)
            {
                continue;
            }

            FlueLine line = burner.SealedCombustion
                ? One(burner, box, leastM, house, form, walls, steel, openings, input.Metric ? 0.01 : 0.0254)
                : GravityLayout.One(burner, box, house, form, plant, openings, StandardAtmosphere.PressurePa(input.ElevationM));
            lines.Add(line);
            if (line.Gravity is null)
            {
                FlueFindings.Of(line, form, house, openings, findings);
            }
            else
            {
                FlueFindings.OfGravity(line, house, plant, openings, findings);
            }

            placed.AddRange(Pipes(line, box, house));
        }

        if (boiler)
        {
            FlueLine line = Boiler(house.Id, plant.BenchPipeW, leastM);
            lines.Add(line);
            FlueFindings.OfBoiler(line, findings);
        }

        return lines;
    }

    private static FlueLine Boiler(string house, double outputW, double leastM)
    {
        double inputW = outputW / FluidServices.BoilerEfficiency;
        (double ventM, double mostM) = FlueRules.Pipe(inputW);
        return new FlueLine(
            $"{house}/boiler", inputW, true, false, ventM, ventM, null, 0, 0, 0, 0, 0, mostM, 0, leastM, FlueRules.DirectVentM(inputW), "", 0)
        { Unplaced = true };
    }

    // What of a vent is seen: both pipes outside the wall, or the pipe from the heater to its cap.
    private static IEnumerable<PlacedItem> Pipes(FlueLine line, PlacedItem box, BuildingForm house)
    {
        double pipeM = line.VentM > 0 ? line.VentM : 6 * 0.0254;
        string id = line.Heater + "/vent";
        if (line.Gravity is { } g)
        {
            double fromM = box.Corner.ZM + box.Size.ZM;
            yield return new PlacedItem(
                id, PlacedKind.Vent, "Gravity vent", new Point3(line.AlongM - pipeM / 2, g.AcrossM - pipeM / 2, fromM), new Point3(pipeM, pipeM, line.HeightM - fromM), line.Face!.Value);
            yield break;
        }

        if (line.Face is not { } face)
        {
            yield break;
        }

        const double OutM = FlueRules.FootM;
        double z = line.HeightM - pipeM / 2;
        foreach ((string part, string label, double offM) in ((string, string, double)[])[("", "Vent terminal", -ApartM / 2), ("-air", "Combustion-air pipe", ApartM / 2)])
        {
            double along = line.AlongM + offM - pipeM / 2;
            (Point3 corner, Point3 size) = face switch
            {
                FaceName.Left => (new Point3(along, -OutM, z), new Point3(pipeM, OutM, pipeM)),
                FaceName.Right => (new Point3(along, house.WidthM, z), new Point3(pipeM, OutM, pipeM)),
                FaceName.End1 => (new Point3(-OutM, along, z), new Point3(OutM, pipeM, pipeM)),
                _ => (new Point3(house.LengthM, along, z), new Point3(OutM, pipeM, pipeM)),
            };
            yield return new PlacedItem(id + part, PlacedKind.Vent, label, corner, size, face);
        }
    }

    /// <summary>Depth of the ground snow by its density, m.</summary>
    public static double SnowDepthM(double groundPa) => groundPa > 0 ? groundPa / SnowDensity.NPerM3(groundPa) : 0;

    private static FlueLine One(
        HeaterUnit burner, PlacedItem box, double leastM, BuildingForm house, FormResult form, List<WallPlan> walls, Dictionary<FaceName, WallSteel> steel, List<AirOpening> openings, double evenM)
    {
        double inputW = burner.OutputW / burner.EfficiencyFraction;
        bool condensing = burner.EfficiencyFraction > CondensingFraction;
        (double ventM, double mostM) = FlueRules.Pipe(inputW);
        double pipeM = ventM > 0 ? ventM : 6 * 0.0254;
        double wideM = pipeM + ApartM;
        FluePath? best = null;
        WallPlan? through = null;
        WallPlace taken = default;
        int rank = -1;
        foreach (WallPlan wall in walls)
        {
            List<(BuildingForm Other, double GapM, double FromM, double ToM)> facing = [.. LayoutFindings.InFront(house, form, wall.Name)];
            foreach (double u in Grid(wideM / 2, wall.LengthM - wideM / 2, 0, evenM))
            {
                double topM = wall.Name is FaceName.Left or FaceName.Right ? wall.LowEaveM : house.Roof.HeightM(Math.Clamp(u, 0, house.WidthM), house.WidthM);
                // Undersides of the pipes are whole inches; the level way is a little steeper for it, never flatter.
                double straightM = FluePath.To(wall, box, house, u, null, condensing).HeightM - pipeM / 2;
                double levelM = (condensing ? Math.Ceiling(straightM / evenM - 1e-6) : Math.Floor(straightM / evenM + 1e-6)) * evenM + pipeM / 2;
                foreach (double v in Grid(leastM, topM - pipeM, pipeM / 2, evenM).Prepend(levelM).Where(v => v >= leastM - 1e-9))
                {
                    var path = FluePath.To(wall, box, house, u, v, condensing, evenM);
                    if (rank == Best && path.EquivalentM >= best!.EquivalentM - 1e-9)
                    {
                        continue;
                    }

                    Point3 at = AtWall(path.Terminal, house);
                    var place = new WallPlace(u - wideM / 2, v - pipeM / 2, wideM, pipeM);
                    WallPlace[] pipes = [place with { WidthM = pipeM }, place with { UM = place.UM + ApartM, WidthM = pipeM }];

                    // Air first, then the covering's joints, then the shortest way.
                    int here = (openings.Exists(o => FlueRules.TooNear(at, o)) || facing.Exists(f => f.GapM < FlueRules.FacingM && u > f.FromM && u < f.ToM) ? 0 : 2)
                        + (pipes.Any(steel[wall.Name].AtJoint) ? 0 : 1);
                    if ((here > rank || (here == rank && path.EquivalentM < best!.EquivalentM - 1e-9))
                        && openings.TrueForAll(o => FlueRules.Keeps(at, o, inputW))
                        && !facing.Exists(f => f.GapM < TouchingM && u > f.FromM && u < f.ToM)
                        && !pipes.Any(steel[wall.Name].Meets)
                        && wall.Free(place with { HeightM = pipeM + UnderRoofM }))
                    {
                        (best, through, taken, rank) = (path, wall, place, here);
                    }
                }
            }
        }

        through?.Add(taken.Wider(ApartM));
        AirOpening? nearest = best is null ? null : openings.MinBy(o => o.DistanceM(AtWall(best.Terminal, house)));
        return new FlueLine(
            burner.Id, inputW, true, condensing, ventM, ventM, through?.Name, taken.MiddleM,
            best?.HeightM ?? 0, best?.RunM ?? 0, best?.Elbows ?? 0, best?.EquivalentM ?? 0, mostM, best?.FallM ?? 0, leastM,
            FlueRules.DirectVentM(inputW), nearest?.Name ?? "", nearest?.DistanceM(AtWall(best!.Terminal, house)) ?? 0)
        { AtJoint = best is not null && rank % 2 == 0 };
    }

    // Distances are measured on the wall, as makers' drawings give them: the foot that a terminal stands out counts for nothing.
    private static Point3 AtWall(Point3 terminal, BuildingForm house) =>
        new(Math.Clamp(terminal.XM, 0, house.LengthM), Math.Clamp(terminal.YM, 0, house.WidthM), terminal.ZM);

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
                PlacedKind.Louver or PlacedKind.UpperLouver => "louver",
                PlacedKind.WetWall or PlacedKind.IntakeBox => "wet wall",
                PlacedKind.ClothBox => "insect cloth",
                PlacedKind.PressureFan => "filter intake",
                PlacedKind.Fan or PlacedKind.UpperFan => AirOpening.ExhaustFan,
                _ => "",
            };
            if (name.Length > 0)
            {
                openings.Add(new AirOpening(name, p.Corner, p.Size, p.Kind == PlacedKind.PressureFan, p.Kind is PlacedKind.Louver or PlacedKind.UpperLouver or PlacedKind.WetWall or PlacedKind.IntakeBox or PlacedKind.ClothBox));
            }
        }

        return openings;
    }

    private static WallPlace OnWall(PlacedItem p) => p.Face is FaceName.End1 or FaceName.End2
        ? new(p.Corner.YM, p.Corner.ZM, p.Size.YM, p.Size.ZM)
        : new(p.Corner.XM, p.Corner.ZM, p.Size.XM, p.Size.ZM);

    // Four inches or ten centimetres apart, each a whole inch or centimetre and an offset.
    private static IEnumerable<double> Grid(double from, double to, double offsetM, double evenM)
    {
        double stepM = evenM < 0.02 ? 10 * evenM : 4 * evenM;
        double firstM = Math.Ceiling((from - offsetM) / evenM - 1e-6) * evenM + offsetM;
        for (int i = 0; firstM + i * stepM <= to; i++)
        {
            yield return firstM + i * stepM;
        }
    }
}
