using Glazewright.Design.Form;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>The outline of a house in cross-section: y to the right, z up, with what covers each edge.</summary>
internal static class Profile
{
    /// <summary>Left wall foot, left eave, ridge, right eave, right wall foot.</summary>
    public static IReadOnlyList<Spot> Points(BuildingForm b) =>
    [
        new(0, 0), new(0, b.Roof.LeftEaveM), new(b.Roof.RidgeOffsetM, b.Roof.RidgeM), new(b.WidthM, b.Roof.RightEaveM), new(b.WidthM, 0),
    ];

    /// <summary>The edges light meets: walls parted at the pony wall, roofs, floor.</summary>
    public static IReadOnlyList<SectionEdge> Edges(HouseLook house)
    {
        IReadOnlyList<Spot> p = Points(house.Form);
        double pony = house.House.PonyWallM;
        List<SectionEdge> edges = [];
        Wall(p[0], p[1], FaceName.Left);
        edges.Add(new(p[1], p[2], Clear(FaceName.RoofLeft)));
        edges.Add(new(p[2], p[3], Clear(FaceName.RoofRight)));
        Wall(p[4], p[3], FaceName.Right);
        edges.Add(new(p[4], p[0], false));
        return edges;

        bool Clear(FaceName face) => house.House.Coverings.Any(c => c.Face == face && CoverLook.Of(c.Cover).Clear);

        void Wall(Spot foot, Spot eave, FaceName face)
        {
            double split = Math.Clamp(pony, 0, eave.Y);
            if (split > 0)
            {
                edges.Add(new(foot, foot with { Y = split }, CoverLook.Of(house.House.PonyWallCovering).Clear));
            }

            if (split < eave.Y)
            {
                edges.Add(new(foot with { Y = split }, eave, Clear(face)));
            }
        }
    }

    /// <summary>A band of a thickness laid along an edge; positive to the left of the way from a to b.</summary>
    public static IReadOnlyList<Spot> Band(Spot a, Spot b, double thicknessM)
    {
        Spot along = (b - a).Unit();
        Spot left = thicknessM * new Spot(-along.Y, along.X);
        return [a, b, b + left, a + left];
    }
}
