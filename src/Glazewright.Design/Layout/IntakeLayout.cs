using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;

namespace Glazewright.Design.Layout;

/// <summary>Wet wall and louvers on the wall the air comes in by, and round the corner where the end wall has no room.</summary>
internal static class IntakeLayout
{
    internal const double LouverDepthM = 0.15;

    /// <summary>Where a wet wall of this size stands: in the middle, or as near as doors let it. Plant and Layout ask the same.</summary>
    public static WallPlace? PadPlace(WallPlan wall, double widthM, double heightM) =>
        wall.Near(widthM, heightM, wall.LengthM / 2, [WallPacking.Sill(wall, heightM)], clear: false);

    public static WallPlace? WetWall(
        BuildingForm house, WetWallPlant wetWall, ExhaustPlant exhaust, WallPlan wall, List<PlacedItem> placed, List<Finding> findings)
    {
        string id = $"{house.Id}/wet-wall";
        WallPlace? found;
        if (wall.Typed(OpeningKind.WetWall) is [WallPlace typed, ..])
        {
            LayoutFindings.Typed(wall.Copy().Take(typed), id, "The wet wall", findings);
            found = typed;
        }
        else
        {
            found = PadPlace(wall, wetWall.WidthM, wetWall.HeightM);
        }

        if (found is not { } pad)
        {
            findings.Add(new Finding(
                "layout/wall-crowded", Severity.Miss, id,
                LayoutFindings.Text($"A wet wall of {wetWall.WidthM / 0.3048:0.0} × {wetWall.HeightM / 0.3048:0.0} ft finds no free place on its wall of {wall.LengthM / 0.3048:0.0} ft: {wall.WidestRunM(WallPacking.Sill(wall, wetWall.HeightM), wetWall.HeightM) / 0.3048:0.0} ft are free side by side at that height. It is not drawn, bought or priced, nor are louvers before it drawn; what is told of its cooling, water and power holds only once it has a place."),
                "Move the door to another wall, or a lower and longer pad on a side wall.", LayoutFindings.Practice));
            return null;
        }

        WallLayout.Add(placed, id, PlacedKind.WetWall, "Wet wall", wall, pad, Math.Max(wetWall.ThicknessM, 0.1));
        List<WallPlace> louverOpenings = wall.Typed(OpeningKind.Louver);
        if (louverOpenings.Count > 0)
        {
            wall.Add(pad);
            TypedLouvers(house, louverOpenings, wall, placed, findings);
            return pad;
        }

        Before(house, exhaust, pad, Math.Max(wetWall.ThicknessM, 0.1), wall, placed, findings);
        return pad;
    }

    public static void Louvers(
        BuildingForm house, ExhaustPlant exhaust, WallPlan wall, Func<FaceName, WallPlan> wallOf, List<PlacedItem> placed, List<Finding> findings)
    {
        List<WallPlace> typed = wall.Typed(OpeningKind.Louver);
        if (typed.Count > 0)
        {
            TypedLouvers(house, typed, wall, placed, findings);
            return;
        }

        (int count, double sizeM) = Pieces(exhaust);
        int done = 0;
        foreach (WallPlan on in (WallPlan[])[wall, .. Corner(wall.Name).Select(wallOf)])
        {
            // What the end wall cannot take goes round the corner, as near to it as it can.
            int most = done < count ? WallPacking.Most(on, sizeM, count - done) : 0;
            List<WallPlace> places = on == wall
                ? [.. (WallPacking.TryAll(on, [.. Enumerable.Repeat(sizeM, most)]) ?? []).OrderBy(p => p.Place.UM).ThenBy(p => p.Place.VM).Select(p => p.Place)]
                : Beside(on, sizeM, count - done, wall.Name == FaceName.End2 ? on.LengthM : 0);
            foreach (WallPlace place in places)
            {
                done++;
                WallLayout.Add(placed, LayoutFindings.Text($"{house.Id}/louver-{done}"), PlacedKind.Louver, "Louver", on, place, LouverDepthM);
            }
        }

        if (done < count)
        {
            LayoutFindings.LouversShort(house.Id, exhaust, count, done, sizeM, "the wall, nor round its corners", findings);
        }
    }

    /// <summary>The side walls that the air can come in by when the end wall is full.</summary>
    public static FaceName[] Corner(FaceName intake) => intake is FaceName.End1 or FaceName.End2 ? [FaceName.Right, FaceName.Left] : [];

    /// <summary>Places for louvers one beside the other from one end of a side wall.</summary>
    public static List<WallPlace> Beside(WallPlan wall, double sizeM, int count, double nearM)
    {
        // The third of the house nearest the intake: further on, air would pass the crop by.
        List<WallPlace> places = [];
        for (int i = 0; i < count; i++)
        {
            if (wall.Near(sizeM, sizeM, nearM, [WallPacking.Sill(wall, sizeM)]) is not { } place || Math.Abs(place.MiddleM - nearM) > wall.LengthM / 3)
            {
                break;
            }

            wall.Add(place);
            places.Add(place);
        }

        return places;
    }

    private static void Before(
        BuildingForm house, ExhaustPlant exhaust, WallPlace pad, double padDepthM, WallPlan wall, List<PlacedItem> placed, List<Finding> findings)
    {
        (int count, double sizeM) = Pieces(exhaust);
        int most = count == 0 ? 0 : LouverBlock.Most(wall, pad, sizeM, count);
        if (most > 0 && LouverBlock.TryFind(wall, pad, sizeM, most) is { } block)
        {
            double outM = block.Flush ? padDepthM : padDepthM + LouverBlock.BoxDepthM;
            if (!block.Flush)
            {
                WallLayout.Add(placed, $"{house.Id}/intake-box", PlacedKind.IntakeBox, "Intake box", wall, block.Box, outM);
            }

            for (int i = 0; i < block.Louvers.Count; i++)
            {
                WallLayout.Add(placed, LayoutFindings.Text($"{house.Id}/louver-{i + 1}"), PlacedKind.Louver, "Louver before the wet wall", wall, block.Louvers[i], LouverDepthM, outM);
            }

            wall.Add(block.Box);
        }
        else
        {
            wall.Add(pad);
        }

        if (most < count)
        {
            LayoutFindings.LouversShort(house.Id, exhaust, count, most, sizeM, "the wall before the wet wall", findings);
        }
    }

    // Older plants name an area only: pieces of 4 ft, then.
    private static (int Count, double SizeM) Pieces(ExhaustPlant exhaust)
    {
        if (exhaust.LouverCount > 0)
        {
            return (exhaust.LouverCount, exhaust.LouverSizeM);
        }

        int count = (int)Math.Ceiling(exhaust.LouverGrossM2 / (1.2192 * 1.2192) - 1e-9);
        return (count, count > 0 ? Math.Sqrt(exhaust.LouverGrossM2 / count) : 0);
    }

    private static void TypedLouvers(BuildingForm house, List<WallPlace> typed, WallPlan wall, List<PlacedItem> placed, List<Finding> findings)
    {
        for (int i = 0; i < typed.Count; i++)
        {
            string id = LayoutFindings.Text($"{house.Id}/louver-{i + 1}");
            LayoutFindings.Typed(wall.Take(typed[i]), id, "The louver", findings);
            WallLayout.Add(placed, id, PlacedKind.Louver, "Louver", wall, typed[i], LouverDepthM);
        }
    }
}
