using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Reports;

/// <summary>Sets blocks as pieces of a given width.</summary>
internal static class BlockSetting
{
    /// <summary>A block as pieces.</summary>
    /// <param name="block">The block.</param>
    /// <param name="widthMm">Width of a line.</param>
    /// <param name="contents">Headings of the report and, once it is laid out, their pages.</param>
    public static IEnumerable<Piece> Set(Block block, double widthMm, ContentsLines contents) => block switch
    {
        Block.Opening opening => [Opening(opening, widthMm)],
        Block.Heading heading => [Heading(heading, widthMm)],
        Block.Paragraph paragraph => Lines(
            TextWrap.Lines(paragraph.Text, Face.Regular, ReportType.BodyMm, widthMm),
            0,
            2.2,
            ReportType.BodyMm,
            ReportType.BodyLineMm,
            Face.Regular,
            paragraph.Quiet ? Tone.Ink2 : Tone.Ink),
        Block.Lead lead => Lines(
            TextWrap.Lines(lead.Text, Face.Regular, ReportType.LeadMm, widthMm), 0, 2, ReportType.LeadMm, ReportType.LeadLineMm, Face.Regular, Tone.Ink)
            .Select(line => line with { KeepWithNext = true }),
        Block.Bullets bullets => bullets.Items.SelectMany(i => Bullet(i, widthMm)),
        Block.Figures figures => FigureSetting.Rows(figures, widthMm),
        Block.TableOf table => TableRows(Fitted(table.Table, widthMm), table.Whole),
        Block.Picture picture => [Picture(picture, widthMm)],
        Block.Caution caution => [Caution(caution, widthMm)],
        Block.Contents => contents.Set(widthMm),
        Block.NewPage page => [new Piece(0, 0, _ => []) { OpensPage = true, OpensAlways = page.Always }],
        _ => throw new InvalidOperationException("Blocks are a closed set."),
    };

    private static Entity.Label Words(double x, double y, string text, double capMm, Face face, Tone tone) =>
        new(new(x, y), text, capMm) { Role = Role.Text, Face = face, Paint = Paint.Of(tone) };

    private static Piece Opening(Block.Opening opening, double widthMm)
    {
        List<Entity> all = [];
        double y = 0;
        foreach (string line in TextWrap.Lines(opening.Title, Face.SemiBold, 7, widthMm).Take(3))
        {
            y += 10.5;
            all.Add(Words(0, y - 2, line, 7, Face.SemiBold, Tone.Ink));
        }

        foreach (string line in TextWrap.Lines(opening.Under, Face.Regular, ReportType.LeadMm, widthMm))
        {
            y += ReportType.LeadLineMm;
            all.Add(Words(0, y - 1, line, ReportType.LeadMm, Face.Regular, Tone.Ink2));
        }

        y += 3;
        all.Add(new Entity.Polyline([new(0, y), new(widthMm, y)]) { Role = Role.Frame, Pen = new Pen(0.5, [], Paint.Of(Tone.Ink)) });
        y += 1.5;
        foreach (string line in opening.Facts.SelectMany(f => TextWrap.Lines(f, Face.Regular, ReportType.BodyMm, widthMm)))
        {
            y += ReportType.BodyLineMm;
            all.Add(Words(0, y - 1, line, ReportType.BodyMm, Face.Regular, Tone.Ink2));
        }

        return Piece.Of(y + 2, 0, all, Spoken.Heading1);
    }

    private static Piece Heading(Block.Heading heading, double widthMm)
    {
        double cap = ReportType.HeadingMm(heading.Level);
        double pitch = ReportType.HeadingLineMm(heading.Level);
        IReadOnlyList<string> lines = TextWrap.Lines(heading.Text, Face.SemiBold, cap, widthMm);
        IEnumerable<Entity> words = lines.Select((l, i) => Words(0, cap + i * pitch, l, cap, Face.SemiBold, heading.Level == 3 ? Tone.Accent : Tone.Ink));
        return Piece.Of(lines.Count * pitch - (pitch - cap) + 1.5, heading.Level == 1 ? 9 : heading.Level == 2 ? 7 : 5, words, heading.Level switch { 1 => Spoken.Heading1, 2 => Spoken.Heading2, _ => Spoken.Heading3 }) with
        {
            KeepWithNext = true,
            Outline = heading.Level <= 2 ? (heading.Level - 1, heading.Text) : null,
        };
    }

    private static IEnumerable<Piece> Lines(
        IReadOnlyList<string> lines, double indentMm, double beforeMm, double capMm, double pitchMm, Face face, Tone tone)
    {
        for (int i = 0; i < lines.Count; i++)
        {
            // No line stands alone at the foot or the head of a page.
            bool keep = i == 0 && lines.Count > 1 || i == lines.Count - 2 && lines.Count > 2;
            yield return Piece.Of(pitchMm, i == 0 ? beforeMm : 0, [Words(indentMm, pitchMm - 1.4, lines[i], capMm, face, tone)]) with
            {
                KeepWithNext = keep,
            };
        }
    }

    private static IEnumerable<Piece> Bullet(string item, double widthMm)
    {
        const double indent = 5;
        bool first = true;
        foreach (Piece line in Lines(
            TextWrap.Lines(item, Face.Regular, ReportType.BodyMm, widthMm - indent), indent, 1.2, ReportType.BodyMm, ReportType.BodyLineMm, Face.Regular, Tone.Ink))
        {
            if (!first)
            {
                yield return line;
                continue;
            }

            first = false;
            MarkGroup dot = new("text", "", null, Plot.OnPaper([Words(1.4, ReportType.BodyLineMm - 1.4, "•", ReportType.BodyMm, Face.Regular, Tone.Ink)]));
            yield return line with { Draw = at => [dot.Moved(at), .. line.Draw(at)] };
        }
    }

    // Tables are written for a Letter page; a narrower one (A4, larger type) takes the same columns in proportion. No word and no number is broken while
    // the page or other columns have room to give.
    internal static Table Fitted(Table table, double widthMm)
    {
        double[] asked = [.. table.Columns.Select(c => c.WidthMm * Math.Min(1, widthMm / table.WidthMm))];
        double[] least = [.. TableSetting.LeastMm(table).Select((mm, i) => Math.Max(Math.Min(mm, 0.4 * widthMm), 0))];
        double shortMm = asked.Zip(least, (a, l) => Math.Max(l - a, 0)).Sum();
        double pageMm = Math.Max(widthMm - asked.Sum(), 0);
        double spareMm = asked.Zip(least, (a, l) => Math.Max(a - l, 0)).Sum();
        double[] fitted = shortMm < 1e-9 ? asked
            : shortMm > pageMm + spareMm ? [.. least.Select(l => l * (asked.Sum() + pageMm) / least.Sum())]
            : [.. asked.Zip(least, (a, l) => a < l ? l : spareMm > 0 ? a - (a - l) / spareMm * Math.Max(shortMm - pageMm, 0) : a)];
        return table with { Columns = [.. table.Columns.Select((c, i) => c with { WidthMm = fitted[i] })] };
    }

    // A year's months and a sum are read as one; tall rows would leave half a page empty before them.
    private const int ShortTableRows = 14;
    private const double ShortTableMm = 110;

    // Where a long table breaks, so many rows at least stand on either page.
    private const int RowsTogether = 3;

    private static IEnumerable<Piece> TableRows(Table table, bool whole)
    {
        TableSetting.SetRow headRow = TableSetting.Head(table);
        Piece head = Row(table, headRow, "head", 3) with { KeepWithNext = true };
        yield return head;
        TableSetting.SetRow[] body = [.. TableSetting.Body(table)];
        bool isShort = body.Length <= ShortTableRows && body.Sum(r => r.HeightMm) <= ShortTableMm;
        for (int i = 0; i < body.Length; i++)
        {
            bool keep = i < body.Length - 1 && (isShort || whole || i < RowsTogether - 1 || i >= body.Length - RowsTogether);
            yield return Row(table, body[i], FormattableString.Invariant($"row {i}"), 0) with { Head = head, KeepWithNext = keep };
        }
    }

    private static Piece Row(Table table, TableSetting.SetRow row, string name, double beforeMm)
    {
        bool isHead = name == "head";
        MarkGroup[] cells = [.. TableSetting.Cells(table, row, isHead, new(0, 0)).Select(c => new MarkGroup("text", "", null, Plot.OnPaper(c)) { Spoken = isHead ? Spoken.HeadCell : Spoken.Cell, Words = name })];
        return new Piece(row.HeightMm, beforeMm, at => [.. cells.Select(c => c.Moved(at))]);
    }

    private static Piece Picture(Block.Picture picture, double widthMm)
    {
        Page page = Plot.Of(picture.Drawing);
        IReadOnlyList<string> lines = picture.Caption.Length == 0 ? [] : TextWrap.Lines(picture.Caption, Face.Regular, ReportType.BodyMm, widthMm);
        MarkGroup caption = new("text", "", null, Plot.OnPaper(
            lines.Select((l, i) => Words(0, page.HeightMm + (i + 1) * ReportType.BodyLineMm - 0.8, l, ReportType.BodyMm, Face.Regular, Tone.Ink2))));
        double indent = Math.Max(0, (widthMm - page.WidthMm) / 2);
        return new Piece(
            page.HeightMm + lines.Count * ReportType.BodyLineMm + 1,
            4,
            at => [.. page.Groups.Select(g => g.Moved(at + new Spot(indent, 0)) with { Spoken = Spoken.Picture, Words = Plot.Said(picture.Drawing) }), caption.Moved(at)]);
    }

    private static Piece Caution(Block.Caution caution, double widthMm)
    {
        const double indent = 9;
        IReadOnlyList<string> lines = TextWrap.Lines(caution.Text, Face.Regular, ReportType.BodyMm, widthMm - indent - 3);
        double height = 3 + (lines.Count + (caution.Title.Length > 0 ? 1 : 0)) * ReportType.BodyLineMm + 1.2;
        List<Entity> all =
        [
            new Entity.Fill([new Box(0, 0, widthMm, height).Corners()], Paint.Of(Tone.Wash)) { Role = Role.Fill },
            new Entity.Fill([new Box(0, 0, 1.2, height).Corners()], Paint.Of(Tone.Near)) { Role = Role.Fill },
            new Entity.Polyline([new(5, 2.9), new(7.3, 6.9), new(2.7, 6.9)], true) { Role = Role.Frame, Pen = new Pen(0.35, [], Paint.Of(Tone.Near)) },
            new Entity.Polyline([new(5, 4.3), new(5, 5.6)]) { Role = Role.Frame, Pen = new Pen(0.35, [], Paint.Of(Tone.Near)) },
            new Entity.Polyline([new(5, 6.05), new(5, 6.35)]) { Role = Role.Frame, Pen = new Pen(0.35, [], Paint.Of(Tone.Near)) },
        ];
        double y = 3 - 1.4;
        if (caution.Title.Length > 0)
        {
            y += ReportType.BodyLineMm;
            all.Add(Words(indent, y, TextWrap.Fit(caution.Title, Face.SemiBold, ReportType.BodyMm, widthMm - indent - 3), ReportType.BodyMm, Face.SemiBold, Tone.Near));
        }

        foreach (string line in lines)
        {
            y += ReportType.BodyLineMm;
            all.Add(Words(indent, y, line, ReportType.BodyMm, Face.Regular, Tone.Ink));
        }

        return Piece.Of(height, 3, all);
    }
}
