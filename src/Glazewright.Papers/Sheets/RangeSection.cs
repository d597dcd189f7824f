using Glazewright.Design.Form;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>The section across the whole range, with the shade that each house casts on the next at noon of the shortest day.</summary>
public static class RangeSection
{
    /// <summary>The shade a house casts on what stands behind it.</summary>
    /// <param name="From">The corner that casts it, m (y across the range, z up).</param>
    /// <param name="To">Where its edge ends: on the wall behind, or on the ground.</param>
    /// <param name="FromHouse">Id of the house that casts it.</param>
    /// <param name="OnHouse">Id of the house it falls on, or empty.</param>
    public sealed record Shade(Spot From, Spot To, string FromHouse, string OnHouse);

    /// <summary>The picture of the two houses between which the shade reaches highest; or none when fewer than two houses stand behind each other, or no low sun shines across the range.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="widthMm">Width of the picture, mm.</param>
    /// <param name="heightMm">Height of the picture, mm.</param>
    public static Sheet? Picture(PaperSource source, double widthMm, double heightMm)
    {
        ArgumentNullException.ThrowIfNull(source);
        NoonSun? sun = NoonSun.Solstices(source.Job.Site.LatitudeDeg, source.Job.Site.RangeBearingDeg)
            .FirstOrDefault(s => s.Name == (source.Job.Site.LatitudeDeg >= 0 ? "21 Dec" : "21 Jun"));
        IReadOnlyList<Shade> shades = sun is null ? [] : Shades(source.Form, sun);
        if (sun is null || shades.MaxBy(s => s.To.Y) is not Shade shade)
        {
            return null;
        }

        LengthStyle style = SheetStyle.Lengths(source.Job);
        BuildingForm[] byWay = [.. source.Form.Buildings.Where(b => b.IsHouse).OrderBy(b => (sun.FromLeft ? 1 : -1) * b.Origin.YM)];
        int front = Array.FindIndex(byWay, b => b.Id == shade.FromHouse);
        BuildingForm[] houses = [.. byWay.Skip(front).Take(2).OrderBy(b => b.Origin.YM)];
        double low = houses.Min(b => b.Origin.YM);
        double high = houses.Max(b => b.Origin.YM + b.WidthM);
        double top = houses.Max(b => b.Roof.RidgeM);
        DrawingScale scale = DrawingScale.Choose(high - low, top, widthMm - 34, heightMm - 30, style);
        double mm = 1 / scale.MmPerM;
        Box window = new((low + high) / 2 - widthMm * mm / 2, -22 * mm, widthMm * mm, heightMm * mm);
        List<Entity> all = [];
        all.Add(new Entity.Fill([[shade.From, shade.To, new(shade.To.X, 0), new(shade.From.X, 0)]], Paint.Of(Tone.Ink3), 0.14) { Role = Role.Fill, Source = "shade" });
        all.Add(new Entity.Polyline([new(window.Left, 0), new(window.Right, 0)]) { Role = Role.Cut, Source = "ground" });
        foreach (BuildingForm b in houses)
        {
            IReadOnlyList<Spot> ring = [.. Profile.Points(b).Select(p => new Spot(p.X + b.Origin.YM, p.Y + b.Origin.ZM))];
            all.Add(new Entity.Fill([ring], Paint.Of(Tone.Sheet)) { Role = Role.Fill, Source = b.Id });
            all.Add(new Entity.Polyline(ring, true) { Role = Role.Visible, Source = b.Id });
            all.Add(new Entity.Label(new(b.Origin.YM + b.Roof.RidgeOffsetM, Math.Min(b.Roof.LeftEaveM, b.Roof.RightEaveM)), b.Id, 4) { Role = Role.Text, Face = Face.SemiBold, Along = Along.Middle, Source = b.Id });
        }

        Spot back = new((sun.FromLeft ? -1 : 1) * Math.Cos(sun.ProfileDeg * Math.PI / 180), Math.Sin(sun.ProfileDeg * Math.PI / 180));
        all.Add(new Entity.Polyline([shade.From + 14 * mm * back, shade.To]) { Role = Role.Light, Source = "sun" });
        if (shade.OnHouse.Length > 0 && shade.To.Y > 0.05)
        {
            string reach = style == LengthStyle.FeetInches ? LengthText.Of(shade.To.Y, style, parts: 1) : LengthText.Of(shade.To.Y, style);
            all.Add(new Entity.Leader(shade.To, new(sun.FromLeft ? 5 : -5, Math.Min(3, shade.To.Y * scale.MmPerM - 2.4)), $"shade to {reach}") { Source = "shade" });
        }

        double[] walls = [.. houses.SelectMany(b => (double[])[b.Origin.YM, b.Origin.YM + b.WidthM]).Order()];
        all.Add(new Entity.Dimensions(new(0, 0), new(1, 0), walls, -8, style) { Source = "range" });
        string note = FormattableString.Invariant($"noon {sun.Name}: sun {sun.AltitudeDeg:0.0}° high, {sun.ProfileDeg:0.0}° in this plane");
        Entity.Label label = new(new(3, 4.5), note) { Role = Role.Text, Paint = Paint.Of(Tone.Sun) };
        Entity.Label scaleLabel = new(new(3, heightMm - 2), scale.Text) { Role = Role.Text, Paint = Paint.Of(Tone.Ink2) };
        View view = new("range-section", "Section across the range", scale, window, new(0, 0), all);
        return new Sheet("range-section", "Section across the range", note + ".", widthMm, heightMm, [view], [label, scaleLabel]);
    }

    /// <summary>The shade each house casts on the next behind it.</summary>
    /// <param name="form">Shapes.</param>
    /// <param name="sun">The sun, in the plane of the section.</param>
    public static IReadOnlyList<Shade> Shades(FormResult form, NoonSun sun)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(sun);
        double slope = Math.Tan(sun.ProfileDeg * Math.PI / 180);
        double way = sun.FromLeft ? 1 : -1;
        BuildingForm[] houses = [.. form.Buildings.Where(b => b.IsHouse).OrderBy(b => way * b.Origin.YM)];
        List<Shade> shades = [];
        for (int i = 0; i + 1 < houses.Length; i++)
        {
            BuildingForm front = houses[i];
            BuildingForm behind = houses[i + 1];
            bool besides = Math.Min(front.Origin.XM + front.LengthM, behind.Origin.XM + behind.LengthM) <= Math.Max(front.Origin.XM, behind.Origin.XM);
            if (besides)
            {
                continue;
            }

            // The corner whose ray comes down furthest behind casts the shade.
            Spot corner = Profile.Points(front).Select(p => new Spot(p.X + front.Origin.YM, p.Y)).MaxBy(p => way * p.X + p.Y / slope);
            double wall = sun.FromLeft ? behind.Origin.YM : behind.Origin.YM + behind.WidthM;
            double onWall = corner.Y - way * (wall - corner.X) * slope;
            shades.Add(onWall > 0
                ? new Shade(corner, new(wall, onWall), front.Id, behind.Id)
                : new Shade(corner, new(corner.X + way * corner.Y / slope, 0), front.Id, ""));
        }

        return shades;
    }
}
