using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Layout;

/// <summary>A post or column of a wall.</summary>
/// <param name="Id">Path id of the member.</param>
/// <param name="UM">Its centre along the wall, m.</param>
/// <param name="TopM">Its head, m.</param>
public readonly record struct WallPost(string Id, double UM, double TopM);

/// <summary>A hole to be framed in a wall.</summary>
/// <param name="Id">Id of the opening or the equipment.</param>
/// <param name="Label">What it is.</param>
/// <param name="IsDoor">A door, window or vent of the job; otherwise equipment.</param>
/// <param name="UM">Nearer edge along the wall, m.</param>
/// <param name="VM">Sill, m.</param>
/// <param name="WidthM">Width of what goes in, m.</param>
/// <param name="HeightM">Its height, m.</param>
/// <param name="RoughWidthM">Width between jambs, m.</param>
/// <param name="RoughHeightM">Height between floor or sill and header, m.</param>
/// <param name="PostsCut">Posts headed off by it.</param>
/// <param name="Framed">Framed in the wall; otherwise it stands before it, on the face of an intake box.</param>
public sealed record WallOpening(
    string Id,
    string Label,
    bool IsDoor,
    double UM,
    double VM,
    double WidthM,
    double HeightM,
    double RoughWidthM,
    double RoughHeightM,
    EqList<string> PostsCut,
    bool Framed);

/// <summary>
/// Posts of a wall and the holes between them: each hole wants a jamb on both sides, a header, and a sill unless it is a door; a post in its way ends on
/// header and sill. Rough openings: doors 2 in wider and 1 in higher than the leaf's frame, equipment 1/2 in more than its own frame (common practice;
/// the supplier's drawing governs).
/// </summary>
public static class WallFraming
{
    private const double PostM = 0.1016;
    private const double DoorWidthM = 0.0508;
    private const double DoorHeightM = 0.0254;
    private const double FrameM = 0.0127;

    /// <summary>Posts of an end wall, or the columns of a side wall, from the wall's start.</summary>
    /// <param name="house">The house.</param>
    /// <param name="face">A wall.</param>
    /// <returns>The posts; the corner columns are not among an end wall's.</returns>
    public static IReadOnlyList<WallPost> Posts(BuildingForm house, FaceName face)
    {
        ArgumentNullException.ThrowIfNull(house);
        bool end = face is FaceName.End1 or FaceName.End2;
        FacePlane plane = house.Face(face).Plane;
        return
        [
            .. house.Members
                .Where(m => m.Role == (end ? MemberRole.EndPost : MemberRole.Column) && Math.Abs((m.A - plane.Origin).Dot(plane.Normal)) < 0.05)
                .Select(m => new WallPost(m.Id, plane.On(m.A).UM, m.B.ZM))
                .OrderBy(p => p.UM),
        ];
    }

    /// <summary>What is to be framed in a wall: the job's doors and windows, then the placed equipment, from the wall's start.</summary>
    /// <param name="house">The house.</param>
    /// <param name="layout">Its layout.</param>
    /// <param name="face">A wall.</param>
    /// <returns>The holes.</returns>
    public static IReadOnlyList<WallOpening> Openings(BuildingForm house, LayoutResult layout, FaceName face)
    {
        ArgumentNullException.ThrowIfNull(house);
        ArgumentNullException.ThrowIfNull(layout);
        bool end = face is FaceName.End1 or FaceName.End2;
        IReadOnlyList<WallPost> posts = end ? Posts(house, face) : [];
        WallOpening Hole(string id, string label, bool isDoor, WallPlace p, double wideM, double highM, bool framed) => new(
            id, label, isDoor, p.UM, p.VM, p.WidthM, p.HeightM, p.WidthM + wideM, p.HeightM + highM,
            framed ? posts.Where(q => Cuts(q, p)).Select(q => q.Id).ToEqList() : [], framed);
        IEnumerable<WallOpening> doors = house.Face(face).Openings
            .Where(o => o.Opening.Kind.IsTyped())
            .Select(o => Hole(o.Opening.Id, Word(o.Opening.Kind), true, WallPlan.Of(o.Opening), DoorWidthM, DoorHeightM, true));
        bool boxed = layout.Placed.Any(p => p.Face == face && p.Kind == PlacedKind.IntakeBox);
        IEnumerable<WallOpening> equipment = layout.Placed
            .Where(p => p.Face == face && (p.CutsCover || p.Kind == PlacedKind.PressureFan))
            .Select(p => Hole(
                p.Id, p.Label, false,
                end ? new(p.Corner.YM, p.Corner.ZM, p.Size.YM, p.Size.ZM) : new(p.Corner.XM, p.Corner.ZM, p.Size.XM, p.Size.ZM),
                FrameM, FrameM, !(boxed && p.Kind == PlacedKind.Louver)));
        return [.. doors.OrderBy(o => o.UM), .. equipment.OrderBy(o => o.UM)];
    }

    private static bool Cuts(WallPost post, WallPlace place) =>
        post.UM + PostM / 2 > place.UM && post.UM - PostM / 2 < place.UM + place.WidthM && place.VM < post.TopM;

    private static string Word(OpeningKind kind) => kind switch
    {
        OpeningKind.Door => "Door",
        OpeningKind.DoubleDoor => "Double door",
        OpeningKind.RollUpDoor => "Roll-up door",
        OpeningKind.SlidingDoor => "Sliding door",
        OpeningKind.Window => "Window",
        _ => "Vent",
    };
}
