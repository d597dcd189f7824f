using System.Globalization;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Light;

/// <summary>A cause and its shares of the light outdoors.</summary>
/// <param name="Cause">In plain words.</param>
/// <param name="Dark">In the dark month, 0 to 1.</param>
/// <param name="Bright">In the bright month, 0 to 1.</param>
/// <param name="Arrives">Light that arrives rather than a loss.</param>
internal sealed record LossRow(string Cause, double Dark, double Bright, bool Arrives = false);

/// <summary>Where the light goes, as level bars a cause: the dark month above, the bright one below.</summary>
internal static class LossBars
{
    private const double RowMm = 8.2;
    private const double BarMm = 2.9;

    /// <summary>The picture.</summary>
    /// <param name="id">Short name.</param>
    /// <param name="title">What it shows.</param>
    /// <param name="rows">Causes in order.</param>
    /// <param name="darkName">The dark month's name.</param>
    /// <param name="brightName">The bright month's name.</param>
    /// <param name="widthMm">Width on paper, mm.</param>
    public static Sheet Draw(string id, string title, IReadOnlyList<LossRow> rows, string darkName, string brightName, double widthMm)
    {
        double wordsMm = rows.Max(r => Lettering.WidthMm(Lettering.Drawable(r.Cause), Face.Regular, Lettered.SmallestMm)) + 3;
        double most = Math.Max(0.05, rows.Max(r => Math.Max(r.Dark, r.Bright)));
        double barsMm = widthMm - wordsMm - 14;
        List<Entity> all = [.. ChartKey.Row([(darkName, Tones.Series(0)), (brightName, Tones.Series(1))], new(widthMm - 1, 3.2))];
        double y = 6;
        foreach (LossRow row in rows)
        {
            all.Add(new Entity.Label(new(wordsMm - 2, y + (RowMm / 2) - 1), row.Cause)
            {
                Role = Role.Text,
                Along = Along.End,
                Across = Across.Middle,
                Face = row.Arrives ? Face.SemiBold : Face.Regular,
            });
            Bar(row.Dark, y, 0);
            Bar(row.Bright, y + BarMm + 0.6, 1);
            y += RowMm;
        }

        string said = string.Join("; ", rows.Select(r => string.Create(
            CultureInfo.InvariantCulture, $"{r.Cause}: {darkName} {100 * r.Dark:0.0} %, {brightName} {100 * r.Bright:0.0} %")));
        return new Sheet(id, title, $"{title}. {said}.", widthMm, y, [], all);

        void Bar(double share, double top, int series)
        {
            double lengthMm = Math.Max(0.2, barsMm * share / most);
            all.Add(new Entity.Fill([new Box(wordsMm, top, lengthMm, BarMm).Corners()], Paint.Of(Tones.Series(series))) { Role = Role.Fill });
            all.Add(new Entity.Label(
                new(wordsMm + lengthMm + 1.2, top + (BarMm / 2)), string.Create(CultureInfo.InvariantCulture, $"{100 * share:0.0} %"))
            {
                Role = Role.Text,
                Across = Across.Middle,
                Paint = Paint.Of(Tone.Ink2),
            });
        }
    }
}
