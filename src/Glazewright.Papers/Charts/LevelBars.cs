using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Charts;

/// <summary>A bar with its words.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Share">Its length as a share of the longest, 0 to 1.</param>
/// <param name="Text">Its number as it is shown.</param>
public sealed record LevelBar(string Name, double Share, string Text);

/// <summary>Level bars of one thing, each with its name before it and its number behind.</summary>
public static class LevelBars
{
    private const double RowMm = 6;
    private const double BarMm = 3.4;

    /// <summary>The picture.</summary>
    /// <param name="id">Short name.</param>
    /// <param name="title">What it shows, with its unit.</param>
    /// <param name="bars">The bars, from the top.</param>
    /// <param name="widthMm">Width on paper, mm.</param>
    public static Sheet Draw(string id, string title, IReadOnlyList<LevelBar> bars, double widthMm)
    {
        ArgumentNullException.ThrowIfNull(bars);
        double wordsMm = bars.Select(b => Lettering.WidthMm(Lettering.Drawable(b.Name), Face.Regular, Lettered.SmallestMm)).DefaultIfEmpty(0).Max() + 3;
        double numbersMm = bars.Select(b => Lettering.WidthMm(Lettering.Drawable(b.Text), Face.Regular, Lettered.SmallestMm)).DefaultIfEmpty(0).Max() + 3;
        double barsMm = Math.Max(10, widthMm - wordsMm - numbersMm);
        List<Entity> all = [];
        for (int i = 0; i < bars.Count; i++)
        {
            double middleMm = i * RowMm + RowMm / 2 + 1;
            double lengthMm = Math.Max(0.2, barsMm * Math.Clamp(bars[i].Share, 0, 1));
            all.Add(new Entity.Label(new(wordsMm - 2, middleMm), bars[i].Name) { Role = Role.Text, Along = Along.End, Across = Across.Middle });
            all.Add(new Entity.Fill([new Box(wordsMm, middleMm - BarMm / 2, lengthMm, BarMm).Corners()], Paint.Of(Tones.Series(0))) { Role = Role.Fill });
            all.Add(new Entity.Label(new(wordsMm + lengthMm + 1.2, middleMm), bars[i].Text) { Role = Role.Text, Across = Across.Middle, Paint = Paint.Of(Tone.Ink2) });
        }

        return new Sheet(id, title, $"{title}. {string.Join("; ", bars.Select(b => $"{b.Name}: {b.Text}"))}.", widthMm, bars.Count * RowMm + 2, [], all);
    }
}
