using Glazewright.Design.Brief;
using Glazewright.Design.Form;
using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Sheets;

/// <summary>The lot as it is typed: its lines, setbacks, houses with the distances between and to the lines, what stands about, north. It rests on shapes alone, so a page draws it at once.</summary>
public static class LotPicture
{
    private const double MarginMm = 12;

    // North with its letter, in the lower right corner.
    private const double NorthMm = 24;

    /// <summary>The picture.</summary>
    /// <param name="job">The job.</param>
    /// <param name="form">Shapes of all its buildings.</param>
    /// <param name="widthMm">Width of the picture, mm.</param>
    /// <param name="heightMm">Most height of the picture, mm, without a strip for north where the land leaves it no corner.</param>
    public static Sheet Draw(Job job, FormResult form, double widthMm, double heightMm)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(form);
        LengthStyle style = SheetStyle.Lengths(job);
        IReadOnlyList<Spot>? lot = RangePlan.LotRing(job.Lot);
        Spot[] corners = [.. form.Buildings.SelectMany(PlanSymbols.Footprint), .. lot ?? []];
        Box land = SitePlan.Bounds(corners.Length > 0 ? corners : [new(0, 0), new(10, 10)]);
        DrawingScale scale = DrawingScale.Choose(land.Width, land.Height, widthMm - 2 * MarginMm, heightMm - 2 * MarginMm, style);
        double tallMm = Math.Min(heightMm, land.Height * scale.MmPerM + 2 * MarginMm);
        double wideM = widthMm / scale.MmPerM;
        double lowM = land.Top + (land.Height - tallMm / scale.MmPerM) / 2;
        // Land that reaches into north's corner leaves it a strip below.
        if ((widthMm + land.Width * scale.MmPerM) / 2 > widthMm - NorthMm && (tallMm + land.Height * scale.MmPerM) / 2 > tallMm - NorthMm)
        {
            tallMm += NorthMm - MarginMm;
            lowM -= (NorthMm - MarginMm) / scale.MmPerM;
        }

        Box window = new(land.Left + (land.Width - wideM) / 2, lowM, wideM, tallMm / scale.MmPerM);
        return new Sheet(
            "lot-picture", "The lot", Words(job, form, style), widthMm, tallMm,
            [new View("lot", "The lot", scale, window, new(0, 0), [.. Entities(job, form, lot, scale, style)])],
            [.. Furniture.North(new(widthMm - 13, tallMm - 13), job.Site.RangeBearingDeg - 90, 6)]);
    }

    private static IEnumerable<Entity> Entities(Job job, FormResult form, IReadOnlyList<Spot>? lot, DrawingScale scale, LengthStyle style)
    {
        Entity[] distances = [.. SitePlan.Distances(job.Lot, form, scale, style)];
        if (lot is not null)
        {
            double roomM = 5 / scale.MmPerM;
            Box[] taken = [.. distances.OfType<Entity.Dimensions>().Select(d => SitePlan.Bounds([d.From, d.From + d.StationsM[^1] * d.Direction])).Select(d => new Box(d.Left - roomM, d.Top - roomM, d.Width + 2 * roomM, d.Height + 2 * roomM))];
            yield return new Entity.Polyline(lot, true) { Role = Role.Lot, Source = "lot" };
            foreach (Entity line in SetbackLines.Of(job.Lot, style, scale.MmPerM, taken: taken))
            {
                yield return line;
            }
        }

        foreach (NeighbourBox n in job.Site.Neighbours)
        {
            yield return new Entity.Fill([SunOnSite.Foot(n)], Paint.Of(Tone.Wash)) { Role = Role.Fill, Source = "neighbour/" + n.Id };
            yield return new Entity.Polyline(SunOnSite.Foot(n), true) { Role = Role.Beyond, Source = "neighbour/" + n.Id };
        }

        List<Entity> names = [];
        foreach (BuildingForm b in form.Buildings.Reverse())
        {
            IReadOnlyList<Spot> ring = PlanSymbols.Footprint(b);
            yield return new Entity.Fill([ring], Paint.Of(b.IsHouse ? Tone.Sheet : Tone.Wash)) { Role = Role.Fill, Source = b.Id };
            if (b.IsHouse)
            {
                Spot ridge = SheetStyle.Flat(b.Origin + b.Roof.RidgeOffsetM * b.AlongY);
                yield return new Entity.Polyline([ridge, ridge + b.LengthM * new Spot(b.AlongX.XM, b.AlongX.YM)]) { Role = Role.Centre, Source = b.Id + "/ridge" };
            }

            yield return new Entity.Polyline(ring, true) { Role = Role.Cut, Source = b.Id };
            RangePlan.Name(names, b, style, scale);
        }

        foreach (Entity entity in names.Concat(distances))
        {
            yield return entity;
        }
    }

    private static string Words(Job job, FormResult form, LengthStyle style)
    {
        string lot = job.Lot.SizeXM > 0 ? $"Lot of {LengthText.Of(job.Lot.SizeXM, style)} along the ridges by {LengthText.Of(job.Lot.SizeYM, style)} across. {SetbackLines.Words(job.Lot, style)}".TrimEnd() : "No lot is given.";
        return $"{lot} {string.Join(" ", form.Buildings.Select(b => $"{b.Name}: {LengthText.Of(b.WidthM, style)} by {LengthText.Of(b.LengthM, style)}."))}";
    }
}
