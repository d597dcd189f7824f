using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>All four sides of a house from outside, with levels, openings and what they are covered with.</summary>
public static class ElevationSheet
{
    private const double KeyMm = 6;

    private static readonly Pad Round = new(8, 4, 30, 7);

    /// <summary>The sheet.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="house">Which house.</param>
    /// <param name="number">Sheet number.</param>
    public static Sheet Draw(PaperSource source, HouseResults house, string number)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(house);
        BuildingForm b = house.Form;
        SheetDraft draft = new(source, "elevations-" + b.Id, $"House {b.Id}: elevations", number);
        Box room = draft.Room with { Height = draft.Room.Height - KeyMm };
        FaceName[] faces = [FaceName.End1, FaceName.End2, FaceName.Left, FaceName.Right];
        Box Extent(FaceName face) => new(0, 0, WallView.LengthM(b, face), b.Roof.RidgeM);
        (DrawingScale scale, IReadOnlyList<Box> boxes) = FourFaces.Lay(room, [Extent(faces[0]), Extent(faces[1])], [Extent(faces[2]), Extent(faces[3])], Round, draft.Style);
        CoverLetters letters = new(b);
        for (int i = 0; i < faces.Length; i++)
        {
            FaceName face = faces[i];
            Box view = boxes[i] with { Height = boxes[i].Height - SheetDraft.TitleMm };
            Box window = SheetDraft.Window(view, Extent(face), Round, scale);
            draft.Add(
                $"elevation-{i + 1}", $"{Title(face)}, faces {SheetStyle.Facing(b, face)}", boxes[i], window, scale,
                (s, w) => Elevation(house, face, letters, s.MmPerM, draft.Style, w), withBar: i == 3);
        }

        draft.Paper.Add(new Entity.Label(new(draft.Room.Left, draft.Room.Bottom - 0.5), TextWrap.Fit(letters.Key, Face.Regular, Lettered.SmallestMm, draft.Room.Width)) { Role = Role.Text });
        return draft.Done($"Elevations of {b.Name}: ridge {LengthText.Of(b.Roof.RidgeM, draft.Style)} high. {letters.Key}.", SheetStyle.Preliminary, "Marks of openings as on their schedule. Ground drawn level; flashings, gutters and downspouts are not drawn. Circles and pipes above the roof: vents of heaters.");
    }

    internal static string Title(FaceName face) => face switch
    {
        FaceName.End1 => "End 1",
        FaceName.End2 => "End 2",
        FaceName.Left => "Left side",
        FaceName.Right => "Right side",
        FaceName.RoofLeft => "Left roof",
        _ => "Right roof",
    };

    private static List<Entity> Elevation(HouseResults house, FaceName name, CoverLetters letters, double mmPerM, LengthStyle style, Box window)
    {
        BuildingForm b = house.Form;
        FaceView view = new(b, name);
        double mm = 1 / mmPerM;
        double length = WallView.LengthM(b, name);
        List<Entity> all = [new Entity.Hatch([[new(window.Left, 0), new(length + 6 * mm, 0), new(length + 6 * mm, -3 * mm), new(window.Left, -3 * mm)]], HatchPattern.Ground, 1.5) { Source = "ground" }];
        if (!view.IsEnd)
        {
            // The roof behind the wall, as high as the ridge stands.
            FaceName roof = name == FaceName.Left ? FaceName.RoofLeft : FaceName.RoofRight;
            double eave = name == FaceName.Left ? b.Roof.LeftEaveM : b.Roof.RightEaveM;
            bool clear = b.Face(roof).Zones.Any(z => CoverLook.Of(z.Cover).Clear);
            IReadOnlyList<Spot> slope = new Box(0, eave, length, b.Roof.RidgeM - eave).Corners();
            all.Add(new Entity.Fill([slope], Paint.Of(clear ? Tone.Water : Tone.Wash), clear ? 0.12 : 0.7) { Role = Role.Fill, Source = $"{b.Id}/{roof}" });
            all.Add(new Entity.Polyline(slope, true) { Role = Role.Visible, Source = $"{b.Id}/{roof}" });
            FaceView over = new(b, roof);
            double rise = (b.Roof.RidgeM - eave) / Math.Max(over.Extent.Height, 1e-9);
            foreach ((Box box, WallOpening hole) in over.Holes(house))
            {
                Box seen = box with { Top = eave + box.Top * rise, Height = box.Height * rise };
                all.Add(new Entity.Fill([seen.Corners()], Paint.Of(Tone.Sheet)) { Role = Role.Fill, Source = hole.Id });
                all.Add(new Entity.Polyline(seen.Corners(), true) { Role = Role.Beyond, Source = hole.Id });
            }

            all.AddRange(letters.Marks(over, [.. over.Holes(house).Select(h => h.Box with { Top = eave + h.Box.Top * rise, Height = h.Box.Height * rise })], mmPerM, v => eave + v * rise));
        }

        all.AddRange(view.Coverings());
        all.Add(new Entity.Polyline(view.Ring(view.Face.Outline), true) { Role = Role.Visible, Source = $"{b.Id}/{name}" });
        all.AddRange(view.Openings(house, Role.Visible, Role.Equipment));
        all.AddRange(Pipes(house, view));
        all.AddRange(Names(house, view, mmPerM));
        all.AddRange(letters.Marks(view, [.. view.Holes(house).Select(h => h.Box)], mmPerM, v => v));
        all.Add(new Entity.Polyline([new(window.Left, 0), new(length + 0.8 * mm, 0)]) { Role = Role.Cut, Source = "ground" });
        double[] levels = view.IsEnd ? [0, b.Roof.LeftEaveM, b.Roof.RightEaveM, b.Roof.RidgeM] : [0, name == FaceName.Left ? b.Roof.LeftEaveM : b.Roof.RightEaveM, b.Roof.RidgeM];
        double pony = house.House.PonyWallM;
        all.AddRange(RunningDimensions.Beside(pony > 0.01 ? [.. levels, pony] : levels, length, mmPerM, style, $"{b.Id}/{name}"));
        return all;
    }

    /// <summary>Vents of heaters: pipes end on in their wall, gravity vents where they stand above the roof.</summary>
    private static IEnumerable<Entity> Pipes(HouseResults house, FaceView view)
    {
        foreach (Entity vent in view.VentEnds(house))
        {
            yield return vent;
        }

        FaceName slope = view.Name == FaceName.Left ? FaceName.RoofLeft : FaceName.RoofRight;
        foreach (FlueLine flue in house.Layout.Flues.Where(f => f.Gravity is not null && (view.IsEnd || f.Face == slope)))
        {
            double wide = flue.VentM > 0 ? flue.VentM : 0.2;
            double u = view.IsEnd ? flue.Gravity!.AcrossM : flue.AlongM;
            yield return new Entity.Polyline(view.Rectangle(u - wide / 2, flue.Gravity!.RoofM, wide, flue.HeightM - flue.Gravity.RoofM), true)
            {
                Role = Role.Equipment,
                Source = flue.Heater + "/vent",
            };
        }
    }

    /// <summary>Marks of doors, windows and vents in their middle.</summary>
    private static IEnumerable<Entity> Names(HouseResults house, FaceView view, double mmPerM)
    {
        TakenRoom taken = new();
        IReadOnlyDictionary<string, string> marks = OpeningSchedule.Marks(house);
        foreach ((Box box, WallOpening hole) in view.Holes(house))
        {
            if (!marks.TryGetValue(hole.Id, out string? mark))
            {
                continue;
            }

            double wide = Lettering.WidthMm(mark, Face.SemiBold, Lettered.SmallestMm);
            Spot at = new(box.Left + box.Width * (hole.Label == "Double door" ? 0.25 : 0.5), box.Top + 0.5 * box.Height);
            bool fits = wide + 0.6 <= box.Width * mmPerM * (hole.Label == "Double door" ? 0.5 : 1) && Lettered.SmallestMm + 1 <= box.Height * mmPerM;
            if (fits && taken.Take(TakenRoom.Round(mmPerM * new Spot(at.X, -at.Y), wide, Lettered.SmallestMm)))
            {
                yield return new Entity.Label(at, mark) { Role = Role.Text, Face = Face.SemiBold, Along = Along.Middle, Across = Across.Middle, Masked = true, Source = hole.Id };
            }
        }
    }
}
