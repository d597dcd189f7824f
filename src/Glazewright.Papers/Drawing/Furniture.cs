using System.Globalization;
using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Drawing;

/// <summary>What a title block says.</summary>
/// <param name="Job">Name of the job.</param>
/// <param name="Place">Place in words, or empty.</param>
/// <param name="Sheet">Title of the sheet.</param>
/// <param name="Number">Sheet number.</param>
/// <param name="Scale">Scale in words.</param>
/// <param name="Date">Date of the draft, or none: it then says "undated draft".</param>
/// <param name="Revision">Revision or status.</param>
/// <param name="Notes">Cautions that stand on the sheet.</param>
public sealed record TitleText(
    string Job, string Place, string Sheet, string Number, string Scale, string? Date, string Revision, IReadOnlyList<string> Notes)
{
    /// <summary>Whose drawing it is; empty where the job does not say.</summary>
    public string By { get; init; } = "";
}


/// <summary>The furniture of a sheet: border, title block, north arrow, scale bar, view titles.</summary>
public static class Furniture
{
    /// <summary>Margin between paper edge and border, mm.</summary>
    public const double MarginMm = 10;

    /// <summary>Height of the title strip along the lower border, mm.</summary>
    public const double TitleHeightMm = 26;

    /// <summary>The room for views: within the border, above the title strip.</summary>
    public static Box RoomMm(SheetSize size) => new(
        MarginMm + 4, MarginMm + 4, size.WidthMm - 2 * MarginMm - 8, size.HeightMm - 2 * MarginMm - TitleHeightMm - 8);

    /// <summary>Border and title strip.</summary>
    public static IReadOnlyList<Entity> Border(SheetSize size, TitleText text)
    {
        ArgumentNullException.ThrowIfNull(size);
        ArgumentNullException.ThrowIfNull(text);
        double left = MarginMm;
        double right = size.WidthMm - MarginMm;
        double bottom = size.HeightMm - MarginMm;
        double top = bottom - TitleHeightMm;
        double[] stops = [left, left + 0.33 * (right - left), left + 0.72 * (right - left), right - 34];
        List<Entity> all =
        [
            Rule([new(left, MarginMm), new(right, MarginMm), new(right, bottom), new(left, bottom)], true, 0.5),
            Rule([new(left, top), new(right, top)], false, 0.35),
        ];
        foreach (double stop in stops[1..])
        {
            all.Add(Rule([new(stop, top), new(stop, bottom)], false, 0.18));
        }

        double[] widths = [stops[1] - stops[0] - 6, stops[2] - stops[1] - 6, stops[3] - stops[2] - 6, right - stops[3] - 6];
        void Put(int cell, double yMm, string words, double capMm, Face face, Tone tone) => all.Add(
            new Entity.Label(new(stops[cell] + 3, top + yMm), TextWrap.Fit(words, face, capMm, widths[cell]), capMm)
            {
                Role = Role.Text,
                Face = face,
                Paint = Paint.Of(tone),
            });

        Put(0, 8, text.Job, 3.5, Face.SemiBold, Tone.Ink);
        Put(0, 14, text.Place, 2.5, Face.Regular, Tone.Ink2);
        Put(0, 22, text.By.Length > 0 ? text.By : "Drawn by Glazewright", 2.5, Face.Regular, Tone.Ink3);
        double y = 6.5;
        foreach (string line in text.Notes.SelectMany(n => TextWrap.Lines(n, Face.Regular, 2.5, widths[1])).Take(4))
        {
            Put(1, y, line, 2.5, Face.Regular, Tone.Ink2);
            y += 5;
        }

        Put(2, 8, text.Sheet, 3.5, Face.SemiBold, Tone.Ink);
        Put(2, 15, text.Scale, 2.5, Face.Regular, Tone.Ink);
        Put(2, 22, text.Date ?? "undated draft", 2.5, Face.Regular, Tone.Ink);
        Put(3, 10, text.Number, 5, Face.SemiBold, Tone.Ink);
        Put(3, 22, text.Revision, 2.5, Face.Regular, Tone.Ink);
        return all;
    }

    /// <summary>A north arrow.</summary>
    /// <param name="centreMm">Its centre on paper, mm.</param>
    /// <param name="upBearingDeg">True bearing that points straight up the paper, degrees.</param>
    /// <param name="radiusMm">Its radius, mm.</param>
    public static IReadOnlyList<Entity> North(Spot centreMm, double upBearingDeg, double radiusMm = 9)
    {
        double angle = upBearingDeg * Math.PI / 180;
        Spot north = new(-Math.Sin(angle), -Math.Cos(angle));
        Spot east = new(-north.Y, north.X);
        Spot tip = centreMm + radiusMm * north;
        Spot tail = centreMm - radiusMm * north;
        return
        [
            new Entity.Arc(centreMm, radiusMm) { Role = Role.Dimension },
            new Entity.Fill([[tip, centreMm + -0.32 * radiusMm * east, centreMm]], Paint.Of(Tone.Ink)) { Role = Role.Frame },
            new Entity.Polyline([tip, centreMm + 0.32 * radiusMm * east, centreMm], true) { Role = Role.Dimension },
            new Entity.Polyline([centreMm, tail]) { Role = Role.Dimension },
            new Entity.Label(centreMm + (radiusMm + 3) * north, "N", 3.5)
            {
                Role = Role.Text, Face = Face.SemiBold, Along = Along.Middle, Across = Across.Middle,
            },
        ];
    }

    /// <summary>A scale bar of a round length near 50 mm of paper.</summary>
    public static IReadOnlyList<Entity> ScaleBar(Spot atMm, DrawingScale scale, LengthStyle style)
    {
        ArgumentNullException.ThrowIfNull(scale);
        double unitM = style == LengthStyle.FeetInches ? 0.3048 : 1;
        double stepUnits = RoundDown(12.5 / (scale.MmPerM * unitM));
        double stepMm = stepUnits * unitM * scale.MmPerM;
        List<Entity> all = [];
        for (int i = 0; i < 4; i++)
        {
            Box cell = new(atMm.X + i * stepMm, atMm.Y, stepMm, 1.6);
            if (i % 2 == 0)
            {
                all.Add(new Entity.Fill([cell.Corners()], Paint.Of(Tone.Ink)) { Role = Role.Frame });
            }

            all.Add(new Entity.Polyline(cell.Corners(), true) { Role = Role.Dimension });
        }

        string unit = style == LengthStyle.FeetInches ? " ft" : " m";
        foreach (int i in (int[])[0, 2, 4])
        {
            string text = (i * stepUnits).ToString("0.##", CultureInfo.InvariantCulture) + (i == 4 ? unit : "");
            all.Add(new Entity.Label(new(atMm.X + i * stepMm, atMm.Y + 5.2), text) { Role = Role.Text, Along = i == 4 ? Along.Start : Along.Middle, ShiftMm = i == 4 ? new(-1.2, 0) : new(0, 0) });
        }

        return all;
    }

    /// <summary>The title under a view, with its scale.</summary>
    public static IReadOnlyList<Entity> ViewTitle(Spot atMm, string title, string scale, double widthMm) =>
    [
        new Entity.Polyline([new(atMm.X, atMm.Y + 1.6), new(atMm.X + widthMm, atMm.Y + 1.6)]) { Role = Role.Frame },
        new Entity.Label(atMm, TextWrap.Fit(title, Face.SemiBold, 3.5, widthMm), 3.5) { Role = Role.Text, Face = Face.SemiBold },
        new Entity.Label(new(atMm.X, atMm.Y + 6), scale) { Role = Role.Text, Paint = Paint.Of(Tone.Ink2) },
    ];

    private static Entity.Polyline Rule(IReadOnlyList<Spot> points, bool closed, double widthMm) =>
        new(points, closed) { Role = Role.Frame, Pen = new Pen(widthMm, [], Paint.Of(Tone.Ink)) };

    private static double RoundDown(double value)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(value)));
        double lead = value / power;
        return power * (lead >= 5 ? 5 : lead >= 2.5 ? 2.5 : lead >= 2 ? 2 : 1);
    }
}
