using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Drawing;

/// <summary>Draws leaders and level marks.</summary>
internal static class PlotNotes
{
    public static void Leader(Entity.Leader leader, Spot tip, List<Mark> marks)
    {
        string layer = leader.Layer ?? Pens.LayerOf(Role.Dimension);
        Pen pen = Pens.Of(Role.Dimension);
        Spot elbow = tip + leader.ToMm;
        double side = leader.ToMm.X < 0 ? -1 : 1;
        Spot shelf = elbow + new Spot(side * 3, 0);
        marks.Add(new Mark.Lines([tip, elbow, shelf], false, pen, Role.Dimension, layer, leader.Source));
        marks.Add(new Mark.Area([Dot(tip, 0.5)], pen.Paint, 1, Role.Dimension, layer, leader.Source));
        string[] lines = leader.Text.Split('\n');
        double pitch = 1.65 * leader.CapHeightMm;
        double top = elbow.Y + leader.CapHeightMm / 2 - pitch * (lines.Length - 1) / 2;
        for (int i = 0; i < lines.Length; i++)
        {
            Entity.Label label = new(new(0, 0), lines[i], leader.CapHeightMm)
            {
                Along = side < 0 ? Along.End : Along.Start,
                Masked = true,
                Source = leader.Source,
            };
            PlotLabel.Draw(label, new Spot(shelf.X + side, top + i * pitch), layer, marks);
        }
    }

    public static void Level(Entity.Level level, Spot at, List<Mark> marks)
    {
        string layer = level.Layer ?? Pens.LayerOf(Role.Dimension);
        Pen pen = Pens.Of(Role.Dimension);
        const double cap = Lettered.SmallestMm;
        double side = level.TextOnLeft ? -1 : 1;
        double widthMm = Lettering.WidthMm(level.Text, Face.Regular, cap);
        marks.Add(new Mark.Lines(
            [at, at + new Spot(-1.4, -2.4), at + new Spot(1.4, -2.4)], true, pen, Role.Dimension, layer, level.Source));
        marks.Add(new Mark.Lines(
            [at + new Spot(-side * 3, 0), at + new Spot(side * (widthMm + 3.5), 0)], false, pen, Role.Dimension, layer, level.Source));
        Entity.Label label = new(new(0, 0), level.Text, cap)
        {
            Along = level.TextOnLeft ? Along.End : Along.Start,
            Source = level.Source,
        };
        PlotLabel.Draw(label, at + new Spot(side * 2.4, -0.9), layer, marks);
    }

    private static Spot[] Dot(Spot centre, double radiusMm)
    {
        Spot[] ring = new Spot[12];
        for (int i = 0; i < ring.Length; i++)
        {
            double angle = 2 * Math.PI * i / ring.Length;
            ring[i] = centre + new Spot(radiusMm * Math.Cos(angle), radiusMm * Math.Sin(angle));
        }

        return ring;
    }
}
