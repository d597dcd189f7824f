using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Dxf;

/// <summary>One mark as an entity of a drawing file.</summary>
internal static class DxfEntities
{
    public static void Add(DxfPairs pairs, Mark mark, double unitsPerMm, int owner)
    {
        switch (mark)
        {
            case Mark.Lines line when line.Points.Count >= 2:
                Begin("LWPOLYLINE", line.Pen).Add(100, "AcDbPolyline").Add(90, line.Points.Count).Add(70, line.Closed ? 1 : 0).Add(43, 0.0);
                foreach (Spot p in line.Points)
                {
                    pairs.Add(10, p.X).Add(20, p.Y);
                }

                break;
            case Mark.Curve curve when Math.Abs(curve.SweepDeg) >= 360:
                Begin("CIRCLE", curve.Pen).Add(100, "AcDbCircle").Point(10, curve.Centre.X, curve.Centre.Y).Add(40, curve.RadiusMm);
                break;
            case Mark.Curve curve:
                double from = curve.SweepDeg >= 0 ? curve.StartDeg : curve.StartDeg + curve.SweepDeg;
                Begin("ARC", curve.Pen).Add(100, "AcDbCircle").Point(10, curve.Centre.X, curve.Centre.Y).Add(40, curve.RadiusMm)
                    .Add(100, "AcDbArc").Add(50, Turned(from)).Add(51, Turned(from + Math.Abs(curve.SweepDeg)));
                break;
            case Mark.Words words:
                Begin("TEXT", null).Add(100, "AcDbText").Point(10, words.Start.X, words.Start.Y).Add(40, words.CapHeightMm).Words(1, words.Text)
                    .Add(50, words.AngleDeg).Add(7, "Standard").Add(100, "AcDbText");
                break;

            // A patch of paper colour under a text is a matter of paper.
            case Mark.Area area when area.Paint is not Paint.Named { Tone: Tone.Sheet }:
                Filled(area);
                break;
        }

        DxfPairs Begin(string type, Pen? pen)
        {
            pairs.Add(0, type).Add(5, DxfPairs.Hex(pairs.Handle())).Add(330, DxfPairs.Hex(owner)).Add(100, "AcDbEntity").Words(8, mark.Layer);
            if (pen is { DashesMm.Count: > 0 } && Pens.Of(mark.Role).DashesMm.SequenceEqual(pen.DashesMm))
            {
                pairs.Add(6, DxfTables.LineTypeOf(mark.Role)).Add(48, unitsPerMm);
            }

            return pen is null ? pairs : pairs.Add(370, DxfTables.WeightOf(pen.WidthMm));
        }

        void Filled(Mark.Area area)
        {
            IReadOnlyList<Spot>[] rings = [.. area.Rings.Where(r => r.Count >= 3)];
            if (rings.Length == 0)
            {
                return;
            }

            Begin("HATCH", null).Add(100, "AcDbHatch").Point(10, 0, 0).Add(210, 0.0).Add(220, 0.0).Add(230, 1.0).Add(2, "SOLID").Add(70, 1).Add(71, 0).Add(91, rings.Length);
            for (int i = 0; i < rings.Length; i++)
            {
                // 1 outermost, 2 a polyline, 16 a ring inside it.
                pairs.Add(92, i == 0 ? 3 : 18).Add(72, 0).Add(73, 1).Add(93, rings[i].Count);
                foreach (Spot p in rings[i])
                {
                    pairs.Add(10, p.X).Add(20, p.Y);
                }

                pairs.Add(97, 0);
            }

            pairs.Add(75, 0).Add(76, 1).Add(98, 0);
        }
    }

    private static double Turned(double deg) => deg - (360 * Math.Floor(deg / 360));
}
