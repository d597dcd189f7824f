using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Drawing;

/// <summary>Draws a dimension chain: extension lines, slanted ticks, and texts that step back when they have no room.</summary>
internal static class PlotDimensions
{
    private const double GapMm = 1.5;
    private const double PastMm = 1.5;
    private const double TickMm = 1.2;
    private const double ClearMm = 0.9;
    private const double BesideMm = 1.2;

    public static void Draw(Entity.Dimensions chain, Placement placement, List<Mark> marks)
    {
        if (chain.StationsM.Count < 2)
        {
            return;
        }

        string layer = chain.Layer ?? Pens.LayerOf(Role.Dimension);
        Spot unit = chain.Direction.Unit();
        Spot along = placement.Turn(unit).Unit();
        Spot left = new(along.Y, -along.X);
        double side = chain.OffsetMm < 0 ? -1 : 1;
        Spot out_ = side * left;
        double offset = Math.Abs(chain.OffsetMm);
        Pen pen = Pens.Of(Role.Dimension);

        List<Spot> feet = [];
        foreach (double station in chain.StationsM)
        {
            feet.Add(placement.At(chain.From + station * unit));
        }

        void Line(Spot a, Spot b) =>
            marks.Add(new Mark.Lines([a, b], false, pen, Role.Dimension, layer, chain.Source));

        foreach (Spot foot in feet)
        {
            Line(foot + Math.Min(GapMm, offset / 2) * out_, foot + (offset + PastMm) * out_);
            Spot on = foot + offset * out_;
            Spot tick = TickMm * (along + left).Unit();
            marks.Add(new Mark.Lines(
                [on - tick, on + tick], false, new Pen(0.35, [], pen.Paint), Role.Dimension, layer, chain.Source));
        }

        Line(feet[0] + offset * out_, feet[^1] + offset * out_);
        Texts(chain, feet, along, offset * out_, layer, marks, Line);
    }

    private static void Texts(
        Entity.Dimensions chain,
        List<Spot> feet,
        Spot along,
        Spot toLine,
        string layer,
        List<Mark> marks,
        Action<Spot, Spot> line)
    {
        const double cap = Lettered.SmallestMm;
        double angleDeg = Readable(Math.Atan2(-along.Y, along.X) * 180 / Math.PI);
        double angle = angleDeg * Math.PI / 180;
        Spot run = new(Math.Cos(angle), -Math.Sin(angle));
        Spot up = new(-Math.Sin(angle), -Math.Cos(angle));
        double forward = along.Dot(run) < 0 ? -1 : 1;
        bool outward = toLine.Length() < 1e-9 || toLine.Dot(up) >= 0;
        List<double> rowEnds = [];
        int[] order = [.. Enumerable.Range(0, feet.Count - 1)];
        if (forward < 0)
        {
            Array.Reverse(order);
        }

        foreach (int i in order)
        {
            string text = LengthText.Of(chain.StationsM[i + 1] - chain.StationsM[i], chain.Style);
            double widthMm = Lettering.WidthMm(text, Face.Regular, cap);
            Spot middle = 0.5 * (feet[i] + feet[i + 1]) + toLine;
            double room = (feet[i + 1] - feet[i]).Length();
            double startAt = middle.Dot(run) - widthMm / 2;
            bool fits = widthMm + BesideMm <= room;
            int row = 0;
            while (row < rowEnds.Count && (rowEnds[row] > startAt - BesideMm || (row == 0 && !fits)))
            {
                row++;
            }

            if (row == 0 && !fits)
            {
                rowEnds.Add(double.NegativeInfinity);
                row = 1;
            }

            while (rowEnds.Count <= row)
            {
                rowEnds.Add(double.NegativeInfinity);
            }

            rowEnds[row] = startAt + widthMm;
            // Texts that step back go away from what is measured: on its side stand the extension lines.
            double riseMm = row == 0 || outward ? ClearMm + row * (cap + 1.3) : -(PastMm + 0.7 + cap + (row - 1) * (cap + 1.3));
            Spot start = middle + -widthMm / 2 * run + riseMm * up;
            marks.Add(new Mark.Words(
                start, text, Face.Regular, cap, angleDeg, Paint.Of(Tone.Ink), Role.Dimension, layer, chain.Source));
            if (row > 0)
            {
                line(middle, middle + (outward ? riseMm - 0.6 : riseMm + cap + 0.6) * up);
            }
        }
    }

    /// <summary>Turns a direction so that its text reads from below or from the right.</summary>
    private static double Readable(double angleDeg)
    {
        while (angleDeg > 90.01)
        {
            angleDeg -= 180;
        }

        while (angleDeg <= -89.99)
        {
            angleDeg += 180;
        }

        return Math.Abs(angleDeg) < 1e-9 ? 0 : angleDeg;
    }
}
