using System.Globalization;
using Glazewright.Design.Year;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Days;

/// <summary>What each piece of equipment did over a day, a row each: the bar's height is how far it was on, open or drawn.</summary>
internal static class CommandBars
{
    private const double RowMm = 5.2;

    /// <summary>The picture.</summary>
    /// <param name="id">Short name.</param>
    /// <param name="title">What it shows.</param>
    /// <param name="day">The day.</param>
    /// <param name="widthMm">Width on paper, mm.</param>
    public static Sheet Draw(string id, string title, DayReplay day, double widthMm)
    {
        string[] names = [.. day.Actuators.Select(a => a[(a.IndexOf('/', StringComparison.Ordinal) + 1)..])];
        double namesMm = names.Select(n => Lettering.WidthMm(Lettering.Drawable(n), Face.Regular, Lettered.SmallestMm)).DefaultIfEmpty(0).Max() + 3;
        double plotMm = widthMm - namesMm - 2;
        double height = (names.Length * RowMm) + 7;
        List<Entity> all = [];
        List<string> said = [];
        for (int i = 0; i < names.Length; i++)
        {
            double foot = (i + 1) * RowMm;
            all.Add(new Entity.Label(new(namesMm - 2, foot - 1.4), names[i]) { Role = Role.Text, Along = Along.End });
            all.Add(new Entity.Polyline([new(namesMm, foot), new(namesMm + plotMm, foot)]) { Role = Role.Grid });
            double on = 0;
            foreach (CommandSpell spell in day.Spells.Where(s => s.Actuator == i && s.LevelFraction > 0))
            {
                double left = namesMm + (plotMm * spell.FromMinute / 1440);
                double wide = Math.Max(0.12, plotMm * (spell.ToMinute - spell.FromMinute) / 1440);
                double high = (RowMm - 1.2) * spell.LevelFraction;
                all.Add(new Entity.Fill([new Box(left, foot - high, wide, high).Corners()], Paint.Of(Tones.Series(i % 6))) { Role = Role.Fill });
                on += (spell.ToMinute - spell.FromMinute) * spell.LevelFraction;
            }

            said.Add(string.Create(CultureInfo.InvariantCulture, $"{names[i]} {on / 60:0.0} h"));
        }

        for (int hour = 0; hour <= 24; hour += 3)
        {
            double x = namesMm + (plotMm * hour / 24);
            all.Add(new Entity.Polyline([new(x, 0), new(x, names.Length * RowMm)]) { Role = Role.Grid });
            all.Add(new Entity.Label(new(x, (names.Length * RowMm) + 5), hour.ToString("00", CultureInfo.InvariantCulture))
            {
                Role = Role.Text,
                Paint = Paint.Of(Tone.Ink2),
                Along = hour == 0 ? Along.Start : hour == 24 ? Along.End : Along.Middle,
            });
        }

        return new Sheet(id, title, $"{title}, standard time. {string.Join("; ", said)}.", widthMm, height, [], all)
        {
            Readings = names.Length == 0 ? [] : [Reasons(day, names, new Box(namesMm, 0, plotMm, names.Length * RowMm))],
        };
    }

    // What each was told in the middle of a minute, and why; the numbers of a reason are those of its beginning.
    private static ReadingGrid Reasons(DayReplay day, string[] names, Box plot)
    {
        CommandSpell?[,] at = new CommandSpell?[1440, names.Length];
        foreach (CommandSpell spell in day.Spells)
        {
            for (int minute = (int)Math.Ceiling(spell.FromMinute - 0.5); minute + 0.5 < spell.ToMinute && minute < 1440; minute++)
            {
                at[minute, spell.Actuator] = spell;
            }
        }

        Dictionary<CommandSpell, string> said = day.Spells.Distinct().ToDictionary(s => s, s => $"{Bare(s.Because, day.Actuators[s.Actuator])} ({DayReport.ToTheSecond(s.FromMinute)} to {DayReport.ToTheSecond(s.ToMinute)})");
        // Rows are counted from the bottom, the equipment from the top.
        int Of(int row) => names.Length - 1 - row;
        return new ReadingGrid("", plot, 1440, names.Length, (minute, row) => at[minute, Of(row)]?.LevelFraction ?? double.NaN, DayReport.Clock, row => names[Of(row)], "", 2)
        {
            Words = (minute, row) => at[minute, Of(row)] is { } spell ? said[spell] : "none",
        };
    }

    private static string Bare(string because, string actuator) => because.StartsWith(actuator + " ", StringComparison.Ordinal) ? because[(actuator.Length + 1)..] : because;
}
