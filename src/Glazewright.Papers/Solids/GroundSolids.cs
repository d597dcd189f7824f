using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Framing;
using Glazewright.Design.Takeoff;

namespace Glazewright.Papers.Solids;

/// <summary>Floors and piers: a gravel floor in houses, a slab in link buildings, a pier under each column, post and jamb that stands on the ground. Their tops are at the finished floor.</summary>
internal static class GroundSolids
{
    private const double SlabM = 0.1016;

    public static IEnumerable<SolidPart> Of(BuildingForm building, FrameChoice? frame, IReadOnlyList<SolidPart> members)
    {
        bool concrete = !building.IsHouse;
        double thickM = concrete ? SlabM : TakeoffRules.GravelM;
        yield return new SolidPart(
            $"{building.Id}/floor/solid", concrete ? "Concrete slab" : "Gravel floor", "", new SolidKind.Floor(concrete), SolidFrame.Upright(new(0, 0, -thickM)),
            new SolidShape([Prism.Square(Profile.Rectangle(0, 0, building.LengthM, building.WidthM), 0, thickM)]));
        if (frame is not { PierDiameterM: > 0, PierDepthM: > 0 })
        {
            yield break;
        }

        SolidShape pier = new([Prism.Square(new Profile.Disc(Prism.Round(frame.PierDiameterM / 2)), 0, frame.PierDepthM)]);
        HashSet<string> over = [.. PierPlan.Of(building.Id, members.Select(m => m.Kind).OfType<SolidKind.Member>().Select(m => m.Solid).ToEqList(), frame.PierDiameterM).Select(p => p.Member)];
        foreach (SolidPart standing in members.Where(m => over.Contains(m.Id)))
        {
            Point3 foot = standing.Frame.Origin;
            yield return new SolidPart(
                standing.Id + "/pier", "Pier (foundation not checked)", "", new SolidKind.Pier(), SolidFrame.Upright(foot with { ZM = -frame.PierDepthM }), pier);
        }
    }
}
