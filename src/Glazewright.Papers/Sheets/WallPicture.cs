using Glazewright.Design.Brief;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>One wall or slope of a house square on from outside, as a picture: covering, posts or rafters, what stands in it by name, its length and levels.</summary>
public static class WallPicture
{
    private static readonly Pad Round = new(12, 4, 30, 12);

    /// <summary>The picture.</summary>
    /// <param name="job">The job.</param>
    /// <param name="house">Which house.</param>
    /// <param name="face">A wall or a slope.</param>
    /// <param name="widthMm">Width of the picture, mm.</param>
    /// <param name="heightMm">Most of its height, mm; a long low wall takes less.</param>
    public static Sheet Draw(Job job, HouseLook house, FaceName face, double widthMm, double heightMm)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(house);
        BuildingForm b = house.Form;
        LengthStyle style = SheetStyle.Lengths(job);
        bool isSlope = IsSlope(face);
        Box shown = isSlope ? new FaceView(b, face).Extent : new(0, 0, WallView.LengthM(b, face), WallView.HeightM(b, face));
        DrawingScale scale = SheetDraft.Fit(new(0, 0, widthMm, heightMm), shown, Round, style).Scale;
        double tallMm = Math.Min(heightMm, shown.Height * scale.MmPerM + Round.Top + Round.Bottom);
        Box window = SheetDraft.Window(new(0, 0, widthMm, tallMm), shown, Round, scale);
        string title = $"{ElevationSheet.Title(face)} of house {b.Id} {(isSlope ? "in its own plane, the eave below" : "from outside")}, faces {SheetStyle.Facing(b, face)}";
        View view = new("wall", title, scale, window, new(0, 0), [.. isSlope ? Slope(house, face, scale.MmPerM, style) : Entities(house, face, scale.MmPerM, style, window)]);
        return new Sheet($"wall-picture-{b.Id}-{face}", title, title + ".", widthMm, tallMm, [view], []);
    }

    /// <summary>Whether a face is a slope of the roof.</summary>
    /// <param name="face">A face.</param>
    public static bool IsSlope(FaceName face) => face is FaceName.RoofLeft or FaceName.RoofRight;

    /// <summary>Whether the wall's start, end 1 or the left, lies to the right as it is seen.</summary>
    /// <param name="face">A wall.</param>
    public static bool IsTurned(FaceName face) => FaceView.Turned(face);

    private static IEnumerable<Entity> Slope(HouseLook house, FaceName face, double mmPerM, LengthStyle style)
    {
        BuildingForm b = house.Form;
        FaceView view = new(b, face);
        foreach (Entity covering in view.Coverings())
        {
            yield return covering;
        }

        string side = face == FaceName.RoofLeft ? "left" : "right";
        foreach (MemberLine rafter in b.Members.Where(m => m.Role == MemberRole.Rafter && m.Id.EndsWith(side, StringComparison.Ordinal)))
        {
            (Point2 eave, Point2 ridge) = (view.Face.Plane.On(rafter.A), view.Face.Plane.On(rafter.B));
            yield return new Entity.Polyline([view.At(eave.UM, eave.VM), view.At(ridge.UM, ridge.VM)]) { Role = Role.Beyond, Source = rafter.Id };
        }

        yield return new Entity.Polyline(view.Ring(view.Face.Outline), true) { Role = Role.Visible, Source = $"{b.Id}/{face}" };
        foreach (Entity opening in view.Openings(house, Role.Visible, Role.Equipment))
        {
            yield return opening;
        }

        foreach (Entity name in Names(house, view, mmPerM))
        {
            yield return name;
        }

        yield return new Entity.Dimensions(new(0, 0), new(1, 0), [0, view.Extent.Width], -9, style) { Source = $"{b.Id}/{face}" };
        foreach (Entity level in RunningDimensions.Beside([0, view.Extent.Height], view.Extent.Width, mmPerM, style, $"{b.Id}/{face}"))
        {
            yield return level;
        }
    }

    private static IEnumerable<Entity> Names(HouseLook house, FaceView view, double mmPerM)
    {
        foreach ((Box box, WallOpening hole) in view.Holes(house))
        {
            string name = hole.IsDoor ? hole.Id.Split('/')[^1] : hole.Label;
            if (Lettering.WidthMm(name, Face.SemiBold, Lettered.SmallestMm) + 1 <= box.Width * mmPerM && Lettered.SmallestMm + 1 <= box.Height * mmPerM)
            {
                yield return new Entity.Label(new(box.Left + box.Width / 2, box.Top + box.Height / 2), name) { Role = Role.Text, Face = Face.SemiBold, Along = Along.Middle, Across = Across.Middle, Masked = true, Source = hole.Id };
            }
        }
    }

    private static IEnumerable<Entity> Entities(HouseLook house, FaceName face, double mmPerM, LengthStyle style, Box window)
    {
        BuildingForm b = house.Form;
        FaceView view = new(b, face);
        double mm = 1 / mmPerM;
        double lengthM = WallView.LengthM(b, face);
        yield return new Entity.Hatch([[new(window.Left, 0), new(lengthM + 6 * mm, 0), new(lengthM + 6 * mm, -3 * mm), new(window.Left, -3 * mm)]], HatchPattern.Ground, 1.5) { Source = "ground" };
        foreach (Entity covering in view.Coverings())
        {
            yield return covering;
        }

        foreach (WallPost post in WallFraming.Posts(b, face))
        {
            yield return new Entity.Polyline([view.At(post.UM, 0), view.At(post.UM, post.TopM)]) { Role = Role.Beyond, Source = post.Id };
        }

        yield return new Entity.Polyline(view.Ring(view.Face.Outline), true) { Role = Role.Visible, Source = $"{b.Id}/{face}" };
        foreach (Entity opening in view.Openings(house, Role.Visible, Role.Equipment))
        {
            yield return opening;
        }

        foreach (Entity vent in view.VentEnds(house))
        {
            yield return vent;
        }

        foreach (Entity name in Names(house, view, mmPerM))
        {
            yield return name;
        }

        yield return new Entity.Polyline([new(window.Left, 0), new(lengthM + 0.8 * mm, 0)]) { Role = Role.Cut, Source = "ground" };
        yield return new Entity.Dimensions(new(0, 0), new(1, 0), [0, lengthM], -9, style) { Source = $"{b.Id}/{face}" };
        double[] levels = view.IsEnd ? [0, b.Roof.LeftEaveM, b.Roof.RightEaveM, b.Roof.RidgeM] : [0, WallView.HeightM(b, face)];
        foreach (Entity level in RunningDimensions.Beside(levels, lengthM, mmPerM, style, $"{b.Id}/{face}"))
        {
            yield return level;
        }
    }
}
