namespace Glazewright.Mechanics.Frames;

/// <summary>Builds a member's diagram from its end forces, its loads and the offsets of its ends.</summary>
internal static class DiagramBuilder
{
    /// <summary>Parts of one element.</summary>
    /// <param name="originM">Where the element starts on its member, m.</param>
    /// <param name="lengthM">Its length, m.</param>
    /// <param name="rigidityNM2">E·I, N·m².</param>
    /// <param name="ends">Its six end forces.</param>
    /// <param name="loads">Its loads.</param>
    /// <param name="startOffsetM">Normal movement of its start, m.</param>
    /// <param name="endOffsetM">Normal movement of its end, m.</param>
    internal static List<DiagramPart> Parts(
        double originM, double lengthM, double rigidityNM2, double[] ends, LocalLoads loads, double startOffsetM, double endOffsetM)
    {
        List<double> edges = Edges(loads, lengthM);
        // The shear at the start is the one that closes the moment at the end: with axial force in a bent element that is
        // the shear across the moved chord, without it the end force itself.
        var straight = Walk(originM, rigidityNM2, edges, loads, -ends[0], 0, -ends[2], 0, 0);
        double shearN = (ends[5] - straight[^1].MomentNm(straight[^1].LengthM)) / lengthM;
        var loose = Walk(originM, rigidityNM2, edges, loads, -ends[0], shearN, -ends[2], 0, startOffsetM);
        double slopeRad = (endOffsetM - loose[^1].OffsetM(loose[^1].LengthM)) / lengthM;
        return Walk(originM, rigidityNM2, edges, loads, -ends[0], shearN, -ends[2], slopeRad, startOffsetM);
    }

    private static List<double> Edges(LocalLoads loads, double lengthM)
    {
        var edges = new SortedSet<double> { 0, lengthM };
        foreach (LocalLoads.SpreadPart s in loads.Spreads)
        {
            edges.Add(s.FromM);
            edges.Add(s.ToM);
        }

        foreach (LocalLoads.PointPart p in loads.Points)
        {
            edges.Add(p.AtM);
        }

        var kept = new List<double> { 0 };
        foreach (double edge in edges)
        {
            if (edge - kept[^1] > 1e-9 * lengthM)
            {
                kept.Add(edge);
            }
        }

        kept[^1] = lengthM;
        return kept;
    }

    private static List<DiagramPart> Walk(
        double originM, double rigidityNM2, List<double> edges, LocalLoads loads,
        double tensionN, double shearN, double momentNm, double slopeRad, double offsetM)
    {
        var parts = new List<DiagramPart>(edges.Count - 1);
        double near = 1e-9 * edges[^1];
        for (int i = 0; i + 1 < edges.Count; i++)
        {
            foreach (LocalLoads.PointPart p in loads.Points)
            {
                if (Math.Abs(p.AtM - edges[i]) <= near)
                {
                    tensionN -= p.AlongN;
                    shearN += p.NormalN;
                    momentNm -= p.MomentNm;
                }
            }

            DiagramPart part = Part(originM, edges[i], edges[i + 1], rigidityNM2, loads, tensionN, shearN, momentNm, slopeRad, offsetM);
            parts.Add(part);
            double s = part.LengthM;
            (tensionN, shearN, momentNm) = (part.TensionN(s), part.ShearN(s), part.MomentNm(s));
            (slopeRad, offsetM) = (part.SlopeRad(s), part.OffsetM(s));
        }

        return parts;
    }

    private static DiagramPart Part(
        double originM, double fromM, double toM, double rigidityNM2, LocalLoads loads,
        double tensionN, double shearN, double momentNm, double slopeRad, double offsetM)
    {
        double along = 0, alongChange = 0, normal = 0, normalChange = 0;
        double middle = (fromM + toM) / 2;
        foreach (LocalLoads.SpreadPart s in loads.Spreads)
        {
            if (middle <= s.FromM || middle >= s.ToM)
            {
                continue;
            }

            double spanM = s.ToM - s.FromM;
            double alongRate = (s.AlongTo - s.AlongFrom) / spanM;
            double normalRate = (s.NormalTo - s.NormalFrom) / spanM;
            along += s.AlongFrom + alongRate * (fromM - s.FromM);
            alongChange += alongRate;
            normal += s.NormalFrom + normalRate * (fromM - s.FromM);
            normalChange += normalRate;
        }

        return new DiagramPart(
            originM + fromM, toM - fromM, tensionN, shearN, momentNm, slopeRad, offsetM, along, alongChange, normal, normalChange,
            rigidityNM2);
    }
}
