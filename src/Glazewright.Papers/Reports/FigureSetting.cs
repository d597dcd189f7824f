using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Reports;

/// <summary>Sets numbers made large: label over the number, unit small beside it, limit and standing under it.</summary>
internal static class FigureSetting
{
    private const double GutterMm = 4;
    private const double PadMm = 3;

    public static IEnumerable<Piece> Rows(Block.Figures figures, double widthMm)
    {
        int perRow = figures.Items.Count switch { <= 3 => Math.Max(1, figures.Items.Count), 5 or 6 or 9 => 3, _ => 4 };
        double cardMm = (widthMm - (perRow - 1) * GutterMm) / perRow;
        for (int first = 0; first < figures.Items.Count; first += perRow)
        {
            BigFigure[] row = [.. figures.Items.Skip(first).Take(perRow)];
            Card[] cards = [.. row.Select(f => new Card(f, cardMm))];
            double height = cards.Max(c => c.HeightMm);
            List<Entity> all = [];
            for (int i = 0; i < cards.Length; i++)
            {
                all.AddRange(cards[i].Draw(i * (cardMm + GutterMm), height));
            }

            yield return Piece.Of(height, first == 0 ? 3 : GutterMm, all);
        }
    }

    private sealed class Card
    {
        private readonly BigFigure figure;
        private readonly double widthMm;
        private readonly IReadOnlyList<string> label;
        private readonly IReadOnlyList<string> limit;

        public Card(BigFigure figure, double widthMm)
        {
            this.figure = figure;
            this.widthMm = widthMm;
            double room = widthMm - 2 * PadMm;
            label = TextWrap.Lines(figure.Label, Face.Regular, ReportType.BodyMm, room, 3);
            limit = figure.Limit.Length == 0 ? [] : TextWrap.Lines(figure.Limit, Face.Regular, ReportType.BodyMm, room, 4);
            HeightMm = PadMm + label.Count * 4.4 + 9.6 + limit.Count * 4.4 + (figure.Standing == Standing.None ? 0 : 4.8) + 1.4;
        }

        public double HeightMm { get; }

        public IEnumerable<Entity> Draw(double left, double heightMm)
        {
            yield return new Entity.Polyline([new(left, 0), new(left + widthMm, 0)]) { Role = Role.Frame, Pen = new Pen(0.5, [], Paint.Of(Tone.Ink)) };
            yield return new Entity.Polyline([new(left, heightMm), new(left + widthMm, heightMm)]) { Role = Role.Frame, Pen = new Pen(0.13, [], Paint.Of(Tone.Edge)) };
            double x = left + 0.5;
            double y = PadMm + 1.8;
            foreach (string line in label)
            {
                yield return Words(x, y, line, ReportType.BodyMm, Face.Regular, Tone.Ink2);
                y += 4.4;
            }

            double room = widthMm - PadMm - 0.5;
            double unitMm = figure.Unit.Length == 0 ? 0 : Lettering.WidthMm(Lettering.Drawable(figure.Unit), Face.Regular, ReportType.LeadMm) + 1.5;
            string value = Lettering.Drawable(figure.Value);
            double wide = Lettering.WidthMm(value, Face.SemiBold, ReportType.BigMm);
            double cap = wide + unitMm <= room ? ReportType.BigMm : Math.Max(ReportType.BodyMm, ReportType.BigMm * (room - unitMm) / wide);
            y += 4;
            yield return Words(x, y, TextWrap.Fit(value, Face.SemiBold, cap, room - unitMm + 0.1), cap, Face.SemiBold, Tone.Ink);
            if (figure.Unit.Length > 0)
            {
                double end = x + Math.Min(room - unitMm, Lettering.WidthMm(value, Face.SemiBold, cap)) + 1.5;
                yield return Words(end, y, figure.Unit, ReportType.LeadMm, Face.Regular, Tone.Ink2);
            }

            y += 1.2;
            foreach (string line in limit)
            {
                y += 4.4;
                yield return Words(x, y, line, ReportType.BodyMm, Face.Regular, Tone.Ink2);
            }

            if (figure.Standing != Standing.None)
            {
                foreach (Entity shape in StandingMark.Draw(figure.Standing, new(x, y + 4.8)))
                {
                    yield return shape;
                }
            }
        }

        private static Entity.Label Words(double x, double y, string text, double capMm, Face face, Tone tone) =>
            new(new(x, y), text, capMm) { Role = Role.Text, Face = face, Paint = Paint.Of(tone) };
    }
}

/// <summary>The word and shape of a standing.</summary>
internal static class StandingMark
{
    /// <summary>Shape and word on a baseline that starts at a point, mm.</summary>
    public static IEnumerable<Entity> Draw(Standing standing, Spot at)
    {
        Tone tone = standing switch { Standing.Held => Tone.Held, Standing.Near => Tone.Near, _ => Tone.Miss };
        Paint paint = Paint.Of(tone);
        yield return standing switch
        {
            Standing.Held => new Entity.Fill([Round(at + new Spot(1.25, -1.25), 1.25)], paint) { Role = Role.Fill },
            Standing.Near => new Entity.Fill([[at, at + new Spot(1.4, -2.5), at + new Spot(2.8, 0)]], paint) { Role = Role.Fill },
            _ => new Entity.Fill([new Box(at.X, at.Y - 2.5, 2.5, 2.5).Corners()], paint) { Role = Role.Fill },
        };
        yield return new Entity.Label(at + new Spot(3.8, 0), Word(standing)) { Role = Role.Text, Face = Face.SemiBold, Paint = paint };
    }

    /// <summary>The word.</summary>
    public static string Word(Standing standing) => standing switch
    {
        Standing.Held => "held",
        Standing.Near => "near the limit",
        Standing.Miss => "missed",
        _ => "",
    };

    private static Spot[] Round(Spot centre, double radiusMm)
    {
        Spot[] ring = new Spot[24];
        for (int i = 0; i < ring.Length; i++)
        {
            double angle = 2 * Math.PI * i / ring.Length;
            ring[i] = centre + radiusMm * new Spot(Math.Cos(angle), Math.Sin(angle));
        }

        return ring;
    }
}
