using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>The cross-section of a house with members, covering, levels and the noon sun of both solstices.</summary>
public static class HouseSection
{
    /// <summary>The sheet.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="house">Which house.</param>
    /// <param name="number">Sheet number.</param>
    public static Sheet Draw(PaperSource source, HouseResults house, string number)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(house);
        LengthStyle style = SheetStyle.Lengths(source.Job);
        SheetSize size = SheetStyle.Size(source.Job);
        Box room = Furniture.RoomMm(size);
        (View view, string words) = ViewOf(source.Job, house, new Box(room.Left, room.Top, room.Width, room.Height - 14), isPicture: false);
        string title = $"House {house.Form.Id}: cross-section";
        string looking = $"looking {Compass.Word(house.Form.Face(FaceName.End1).AzimuthDeg)}";
        List<Entity> paper =
        [
            .. SheetStyle.Border(source.Job, title, number, view.Scale.Text, SheetStyle.Preliminary, "Not checked here: " + NotChecked(house)),
            .. Furniture.ViewTitle(new(room.Left, room.Bottom - 7), $"{title}, {looking}", view.Scale.Text, 130),
            .. Furniture.ScaleBar(new(room.Right - 80, room.Bottom - 9), view.Scale, style),
        ];
        string description = $"{house.Form.Name}, {looking}: width {LengthText.Of(house.Form.WidthM, style)}, ridge {LengthText.Of(house.Form.Roof.RidgeM, style)} high. {words}";
        return new Sheet("section-" + house.Form.Id, title, description, size.WidthMm, size.HeightMm, [view], paper);
    }

    /// <summary>The section alone, as a picture for a report.</summary>
    /// <param name="job">The job.</param>
    /// <param name="house">Which house.</param>
    /// <param name="widthMm">Width of the picture, mm.</param>
    /// <param name="heightMm">Height of the picture, mm.</param>
    public static Sheet Picture(Job job, HouseLook house, double widthMm, double heightMm)
    {
        (View view, string words) = ViewOf(job, house, new Box(0, 0, widthMm, heightMm), isPicture: true);
        return new Sheet("section-picture-" + house.Form.Id, $"Section of house {house.Form.Id}", words, widthMm, heightMm, [view], []);
    }

    private static string NotChecked(HouseResults house) =>
        house.Frame.NotChecked.Count == 0 ? "nothing is claimed." : string.Join("; ", house.Frame.NotChecked.Select(Head)) + ".";

    // The title block has room for the heads only; the review report prints the particulars.
    private static string Head(string text) => text.Split(':')[0].TrimEnd('.').ToLowerInvariant();

    private static (View View, string Words) ViewOf(Job job, HouseLook house, Box roomMm, bool isPicture)
    {
        BuildingForm b = house.Form;
        LengthStyle style = SheetStyle.Lengths(job);

        // Beside, below and above the house dimensions, levels and the sun's key take room on paper.
        (double sideMm, double aboveMm, double belowMm) = isPicture ? (24.0, 11.0, 15.0) : (42.0, 14.0, 33.0);
        double belowM = isPicture ? 0 : house.House.Frame.PierDepthM + 0.05;
        DrawingScale scale = DrawingScale.Largest(style, s =>
            b.WidthM * s.MmPerM + 2 * sideMm <= roomMm.Width
            && Math.Max(belowM * s.MmPerM, belowMm) + b.Roof.RidgeM * s.MmPerM + aboveMm <= roomMm.Height);
        double lowM = Math.Max(belowM, belowMm / scale.MmPerM);
        double heightM = lowM + b.Roof.RidgeM + aboveMm / scale.MmPerM;
        double wideM = roomMm.Width / scale.MmPerM;
        double tallM = roomMm.Height / scale.MmPerM;
        Box window = new(b.WidthM / 2 - wideM / 2, -lowM - (tallM - heightM) / 2, wideM, tallM);
        List<Entity> all = [];
        Ground(all, b, house.House.Frame, window, scale);
        IReadOnlyList<NoonSun> suns = NoonSun.Solstices(job.Site.LatitudeDeg, job.Site.RangeBearingDeg);
        Inside(all, house);
        all.AddRange(Sun(house, suns, scale));
        Shell(all, house);
        all.AddRange(SectionNotes.Of(job, house, scale, isPicture));
        string rays = suns.Count == 0
            ? "The noon sun shines along the ridge or stays below the horizon."
            : string.Join(" ", suns.Select(s => FormattableString.Invariant($"Noon on {s.Name}: sun {s.AltitudeDeg:0.0}° high, {s.ProfileDeg:0.0}° in this plane.")));
        View view = new("section", $"Section of house {b.Id}", scale, window, new(roomMm.Left, roomMm.Top), all);
        return (view, rays);
    }

    private static void Ground(List<Entity> all, BuildingForm b, FrameChoice frame, Box window, DrawingScale scale)
    {
        double bandM = 4 / scale.MmPerM;
        all.Add(new Entity.Hatch([[new(window.Left, 0), new(window.Right, 0), new(window.Right, -bandM), new(window.Left, -bandM)]], HatchPattern.Ground, 1.6) { Source = "ground" });
        foreach (double y in (double[])[0, b.WidthM])
        {
            double half = frame.PierDiameterM / 2;
            if (half > 0 && frame.PierDepthM > 0)
            {
                all.Add(new Entity.Polyline([new(y - half, 0), new(y - half, -frame.PierDepthM), new(y + half, -frame.PierDepthM), new(y + half, 0)])
                {
                    Role = Role.Hidden,
                    Source = b.Id + "/pier",
                });
            }
        }

        all.Add(new Entity.Polyline([new(window.Left, 0), new(window.Right, 0)]) { Role = Role.Cut, Source = "ground" });
    }

    private static void Inside(List<Entity> all, HouseLook house)
    {
        foreach (Bench bench in house.House.Benches)
        {
            double top = bench.HeightM;
            double right = bench.OffsetYM + bench.WidthM;
            string path = $"{house.Form.Id}/bench-{bench.Id}";
            all.Add(new Entity.Fill([[new(bench.OffsetYM, top), new(right, top), new(right, top - 0.08), new(bench.OffsetYM, top - 0.08)]], Paint.Of(Tone.Held), 0.35) { Role = Role.Fill, Source = path });
            all.Add(new Entity.Polyline([new(bench.OffsetYM, top), new(right, top), new(right, top - 0.08), new(bench.OffsetYM, top - 0.08)], true) { Role = Role.Beyond, Source = path });
            foreach (double leg in (double[])[bench.OffsetYM + 0.15, right - 0.15])
            {
                all.Add(new Entity.Polyline([new(leg, top - 0.08), new(leg, 0)]) { Role = Role.Beyond, Source = path });
            }
        }

        foreach (PlacedItem item in house.Layout.Placed.Where(i => i.Kind is PlacedKind.Curtain or PlacedKind.Heater or PlacedKind.CirculationFan or PlacedKind.OscillatingFan or PlacedKind.FogLine or PlacedKind.LampRow || i is { Kind: PlacedKind.Vent, Face: FaceName.RoofLeft or FaceName.RoofRight }))
        {
            double left = item.Corner.YM;
            double right = item.Corner.YM + item.Size.YM;
            double low = item.Corner.ZM;
            double high = item.Corner.ZM + item.Size.ZM;
            bool isLine = item.Size.YM < 0.02 || item.Size.ZM < 0.02;
            all.Add(isLine && item.Size.YM >= 0.02
                ? new Entity.Polyline([new(left, low), new(right, low)]) { Role = item.Kind == PlacedKind.Curtain ? Role.Hidden : Role.Equipment, Source = item.Id }
                : isLine
                    ? new Entity.Arc(new(left, low), 0.06) { Role = Role.Equipment, Source = item.Id }
                    : new Entity.Polyline([new(left, low), new(right, low), new(right, high), new(left, high)], true) { Role = Role.Equipment, Source = item.Id });
        }
    }

    private static void Shell(List<Entity> all, HouseLook house)
    {
        BuildingForm b = house.Form;
        foreach (SectionEdge edge in Profile.Edges(house).SkipLast(1))
        {
            // The right wall's edges run upwards, so their outside lies to the right of the way.
            bool rightWall = edge.A.X >= b.WidthM - 1e-9 && edge.B.X >= b.WidthM - 1e-9;
            double side = rightWall ? -1 : 1;
            double thickM = edge.Clear ? 0.03 : 0.08;
            IReadOnlyList<Spot> band = Profile.Band(edge.A, edge.B, side * thickM);
            all.Add(edge.Clear
                ? new Entity.Fill([band], Paint.Of(Tone.Water), 0.45) { Role = Role.Fill, Source = b.Id + "/covering" }
                : new Entity.Hatch([band], HatchPattern.Crossed, 0.9) { Source = b.Id + "/covering" });
            all.Add(new Entity.Polyline(band, true) { Role = edge.Clear ? Role.Beyond : Role.Visible, Source = b.Id + "/covering" });
        }

        foreach ((string name, Spot from, Spot to, MemberRole role) in Members(b))
        {
            double depth = house.Frame.Section(role)?.DepthM ?? 0.1;
            bool isRight = name.EndsWith("column-right", StringComparison.Ordinal) || name.EndsWith("rafter-right", StringComparison.Ordinal);
            IReadOnlyList<Spot> band = FrameEnds.Ring(b, role, from, to, depth, house.Frame.Section(MemberRole.Rafter)?.DepthM ?? 0.1, isRight);
            all.Add(new Entity.Fill([band], Paint.Of(Tone.Ink3), 0.25) { Role = Role.Fill, Source = name });
            all.Add(new Entity.Polyline(band, true) { Role = Role.Cut, Source = name, Pen = new Pen(0.35, [], Paint.Of(Tone.Ink)) });
        }
    }

    private static IEnumerable<(string Name, Spot From, Spot To, MemberRole Role)> Members(BuildingForm b)
    {
        // The frame nearest the middle stands for all; its members are drawn in the house's own y and z.
        string? frame = b.Members.Where(m => m.Role is MemberRole.Column).Select(m => m.Id[..m.Id.LastIndexOf('/')]).Distinct().ElementAtOrDefault((b.FrameLinesXM.Count - 1) / 2);
        foreach (MemberLine member in b.Members.Where(m => frame is not null && m.Id.StartsWith(frame + "/", StringComparison.Ordinal)))
        {
            Spot from = InSection(b, member.A);
            Spot to = InSection(b, member.B);
            yield return (member.Id, from, to, member.Role);
        }
    }

    private static Spot InSection(BuildingForm b, Point3 p) => new((p - b.Origin).Dot(b.AlongY), (p - b.Origin).ZM);

    private static IEnumerable<Entity> Sun(HouseLook house, IReadOnlyList<NoonSun> suns, DrawingScale scale)
    {
        IReadOnlyList<SectionEdge> ring = Profile.Edges(house);
        for (int s = 0; s < suns.Count; s++)
        {
            Pen pen = new(0.25, s == 0 ? [] : [2.5, 1.2], Paint.Of(Tone.Sun));
            double leadM = 11 / scale.MmPerM;
            double spacingM = Math.Max(1, 22 / scale.MmPerM);
            IReadOnlyList<(Spot From, Spot To)> rays = SectionRays.Trace(ring, suns[s].ProfileDeg, suns[s].FromLeft, spacingM, leadM);
            foreach ((Spot from, Spot to) in rays)
            {
                yield return new Entity.Polyline([from, to]) { Role = Role.Light, Pen = pen, Source = "sun/" + suns[s].Name };
                Spot back = (from - to).Unit();
                Spot side = new(-back.Y, back.X);
                double headM = 1.6 / scale.MmPerM;
                yield return new Entity.Polyline([to + headM * back + 0.4 * headM * side, to, to + headM * back + -0.4 * headM * side])
                {
                    Role = Role.Light,
                    Pen = new Pen(0.25, [], Paint.Of(Tone.Sun)),
                    Source = "sun/" + suns[s].Name,
                };
            }
        }
    }
}
