using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Mechanics.Checks;
using Glazewright.Mechanics.Loads;

namespace Glazewright.Design.Framing;

/// <summary>Figures of Openings: the hardest-worked header, sill, jamb and post of a house from wind to use, and what the framing weighs.</summary>
internal static class FramingWorkings
{
    internal static readonly Source Aisc = new Source.Standard("ANSI/AISC 360-16", "E3, F7, G4, H1, appendix 8", Source.Mark.FromMemory);

    private static readonly Source Practice = new Source.CommonPractice("weights of doors");
    private static readonly Source Statics = new Source.FirstPrinciples("statics of a simple span");
    private static readonly Source Limit = new Source.Standard("IBC", "table 1604.3 (wind: 0.42 of strength level); sag of heads and sills: common practice", Source.Mark.FromMemory);

    internal static StageReport Report(
        FramingInput input, BuildingForm house, FrameResult frame, IReadOnlyList<MemberSolid> before, IReadOnlyList<MemberSolid> after, IReadOnlyList<(FaceName Face, FramedWall Wall)> walls,
        IReadOnlyList<OpeningCheck> checks, IReadOnlyList<Finding> weak)
    {
        List<Figure> figures = [];
        foreach (OpeningCheck girt in checks.Where(c => c.Role == MemberRole.Girt))
        {
            figures.Add(Figure.Observe(
                $"{house.Id}/framing/{(girt.Face == FaceName.End1 ? "end1" : "end2")}-girt-use", $"Use of the girts of {(girt.Face == FaceName.End1 ? "end 1" : "end 2")}", Unit.Fraction, girt.UseFraction,
                FormattableString.Invariant($"Simple span of {girt.SpanM:0.00} m, {girt.Section}, {girt.WindPa:0} Pa of components and cladding in the corner zone, {girt.Combination}"), [],
                "The longest piece of the wall at the spacing asked for; deflection counted", Aisc, FrameWords.Preliminary));
        }

        (Stick Stick, StickUse Use)[] all =
            [.. walls.SelectMany(w => w.Wall.Grid.Sticks.Select((s, i) => (Stick: s, Use: w.Wall.Uses[i]))).Where(p => p.Use is not null).Select(p => (p.Stick, p.Use!))];
        foreach ((string word, StickKind[] kinds) in new[]
            { ("header", (StickKind[])[StickKind.Header]), ("sill", [StickKind.Sill]), ("jamb", [StickKind.Jamb]), ("post", [StickKind.Post, StickKind.Stub]) })
        {
            (Stick Stick, StickUse Use)[] of = [.. all.Where(p => kinds.Contains(p.Stick.Kind))];
            if (of.Length > 0)
            {
                (Stick stick, StickUse use) = of.MaxBy(p => p.Use.Use);
                figures.AddRange(Hardest(input.Frame, $"{house.Id}/framing/{word}", word, stick, use));
            }
        }

        figures.AddRange(house.Faces.SelectMany(f => f.Openings).Select(o => o.Opening).Where(o => o.Kind is OpeningKind.RollUpDoor or OpeningKind.SlidingDoor).Select(o => Hung(input, house.Id, o)));
        if (walls.Count > 0)
        {
            figures.Add(Figure.Observe(
                $"{house.Id}/framing/roof-force", "Largest wind force of a post or jamb head on roof or eave", Unit.Newton, walls.Max(w => w.Wall.RoofN),
                "Reaction at the head of a simple span, strength level", [], "What holds the heads there is not designed", Statics, FrameWords.Preliminary));
        }

        double addedKg = after.Sum(m => m.CutLengthM * m.MassPerM) - before.Sum(m => m.CutLengthM * m.MassPerM);
        if (Math.Abs(addedKg) > 1e-9)
        {
            figures.Add(Figure.Observe(
                $"{house.Id}/framing/steel-mass", "Tube added by girts of end walls and the framing of openings, less what was cut out", Unit.Kilogram, addedKg,
                "Sum over members of cut length times mass per length, after less before", [], "Tube only", new Source.FirstPrinciples("mass of the sections"), FrameWords.Preliminary));
        }

        return new StageReport(
            figures.ToEqList(), FramingFindings.Of(input.Frame, house, frame, walls).Concat(weak).ToEqList(),
            [
                "Girts of end walls and the framing of openings are made of simple spans: joints, welds and screws, what holds the heads of posts and jambs at rafter and eave, anchors and piers under jambs, door guides and tracks are not designed. Doors and louvers are shut in the storm. The light these members take is not counted; posts they cut still shade.",
            ]);
    }

    private static Figure Hung(FramingInput input, string house, Opening o)
    {
        string id = $"{house}/framing/{o.Id}-hung";
        string label = $"What {o.Id} hangs on its header";
        return o.HungKg is { } kg
            ? Figure.State(id, label, Unit.Kilogram, kg, new Source.Given(FormattableString.Invariant($"{input.Frame.Pointer}/openings/{input.OpeningIds.ToList().IndexOf(o.Id)}/hung")))
            : Figure.Derive(
                id, label, Unit.Kilogram,
                Term.Of("m", "Mass of its area, kg/m²", HoleList.HungKgPerM2, Unit.None, Practice) * Term.Of("w", "Width", o.WidthM, Unit.Metre, Statics) * Term.Of("h", "Height", o.HeightM, Unit.Metre, Statics),
                Practice, "The maker's weight governs: give it as hung.");
    }

    private static IEnumerable<Figure> Hardest(FrameInput input, string id, string word, Stick stick, StickUse u)
    {
        string edition = FrameWords.Edition(FrameLoadSite.EditionOf(input.Wind.Edition));
        Source cladding = new Source.Standard(edition, "figure 30.3-1, walls", Source.Mark.FromMemory);
        string name = $"{stick.Id}, {u.Section.Name}";
        Figure wind = Figure.Observe(
            id + "-wind", $"Wind on the hardest-worked {word} ({name})", Unit.AreaLoad, u.Demand.WindPa,
            $"GCp by the logarithm of its own area, {(u.Demand.IsNearCorner ? "end zone" : "away from the corners")}, inside pressure of an enclosed house, at least 16 psf; the larger way",
            [new("a", "Its own area, at least span² / 3", "", u.Demand.AreaM2, Unit.SquareMetre, Statics)], "Doors and louvers shut", cladding, FrameWords.Preliminary);
        yield return wind;
        double pushN = u.Demand.Wind.TotalN;
        Figure push = Figure.Observe(
            id + "-force", $"Wind force on the {word}", Unit.Newton, pushN, "Pressure times the wall that leans on it, directly and by the ends of others",
            [new("p", wind.Label, wind.Id, wind.Value, Unit.AreaLoad, cladding)], "", Statics, FrameWords.Preliminary);
        yield return push;
        Figure moment = Figure.Observe(
            id + "-moment", $"Largest moment of the wind in the {word} under {u.Combination}", Unit.NewtonMetre, u.WindMomentNm,
            $"Simple span under {u.Demand.Wind.Strips.Count} even loads and {u.Demand.Wind.Points.Count} forces{(u.AxialN > 0 ? ", times 1/(1 − P/Pe)" : "")}",
            [new("f", push.Label, push.Id, pushN, Unit.Newton, Statics), new("l", "Span", "", u.SpanM, Unit.Metre, Statics)], "", Statics, FrameWords.Preliminary);
        yield return moment;
        yield return Strength(id, word, u, moment);
        Term sag = Term.Of("d", u.SagLimitRatio == StickCheck.WeightSpanOverRatio ? "Sag under weight" : "Deflection under service wind", u.SagM, Unit.Metre, Statics);
        yield return Figure.Derive(
            id + "-deflection-use", $"Deflection of the {word} against its limit", Unit.Fraction,
            sag * Term.Of("n", "Limit: span over", u.SagLimitRatio, Unit.None, Limit) / Term.Of("l", "Span", u.SagSpanM, Unit.Metre, Statics), Limit, FrameWords.Preliminary);
    }

    private static Figure Strength(string id, string word, StickUse u, Figure moment)
    {
        double Available(Strength s) => s.Available(DesignMethod.Lrfd);
        MemberCapacity c = u.Capacity;
        Term axial = Term.Of("P", "Compression", u.AxialN, Unit.Newton, Statics) / Term.Of("Pc", "φPn", Available(c.Compression), Unit.Newton, Aisc);
        Term bending = Term.Of("M", moment) / Term.Of("Mc", "φMn, strong way", Available(c.StrongBending), Unit.NewtonMetre, Aisc)
            + Term.Of("Mw", "Moment of the weight", u.WeightMomentNm, Unit.NewtonMetre, Statics) / Term.Of("Mwc", "φMn, weak way", Available(c.WeakBending), Unit.NewtonMetre, Aisc);
        Term interaction = axial.Value >= 0.2 ? axial + 8.0 / 9 * bending : axial / 2 + bending;
        Term shear = Term.Of("V", "Shear", u.ShearN, Unit.Newton, Statics) / Term.Of("Vc", "φVn", Available(c.Shear), Unit.Newton, Aisc);
        return Figure.Derive(
            id + "-strength-use", $"Strength of the {word} used under {u.Combination}", Unit.Fraction, shear.Value > interaction.Value ? shear : interaction, Aisc, FrameWords.Preliminary);
    }
}
