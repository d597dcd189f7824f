using Glazewright.Design.Body;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Framing;

namespace Glazewright.Design.Takeoff;

/// <summary>Figures and findings of Takeoff.</summary>
internal static class TakeoffWorkings
{
    private const string FoundationCaution = "Foundation not checked: quantity only.";

    private static readonly Source Counting = new Source.FirstPrinciples("counting and measuring the model");

    public static StageReport Report(
        TakeoffInput input, FormResult form, BodyResult body, EqList<ShopMark> marks, EqList<SheetPiece> sheets, EqList<TakeoffLine> lines)
    {
        List<Figure> figures = [];
        foreach (var section in marks.GroupBy(mark => mark.Section))
        {
            figures.Add(Figure.Observe(
                $"takeoff/tube/{section.Key}", $"Tube {section.Key}, net", Unit.Kilogram, section.Sum(m => m.Count * m.MassEachKg),
                "Sum over shop marks of count times mass each", Inputs(section.Select(m => (m.Mark, m.Count * m.MassEachKg, Unit.Kilogram))),
                "Net of cutting; plates, bolts and bracing are lines of their own", Counting));
        }

        foreach (var kind in sheets.GroupBy(s => s.CoverKind))
        {
            figures.Add(Figure.Observe(
                $"takeoff/cover/{kind.Key}", $"Covering {kind.Key}, pieces", Unit.SquareMetre, kind.Sum(s => s.Count * s.LengthM * s.TrimmedWidthM),
                "Sum over pieces of length times width", Inputs(kind.GroupBy(s => s.Mark).Select(m => (m.Key, m.Sum(s => s.Count * s.LengthM * s.TrimmedWidthM), Unit.SquareMetre))),
                "Raked ends are cut from square pieces; an opening saves length only where it crosses a whole piece", Counting));
        }

        for (int i = 0; i < input.Houses.Count; i++)
        {
            Piers(figures, input.Houses[i], body, i);
            if (input.Houses[i].Benches.Count > 0)
            {
                figures.Add(Figure.Derive(
                    $"{input.Houses[i].Id}/takeoff/benches", "Bench area", Unit.SquareMetre,
                    Term.Total(input.Houses[i].Benches.Select((b, k) => BenchTerm(b, i, k))), Counting));
            }
        }

        List<Finding> findings = [.. Findings(input, form, lines)];
        return new StageReport(figures.ToEqList(), findings.ToEqList(), EqList.Create<string>(
        [
            "Connections, base plates and bracing are counted, not designed; frames of link buildings are taken by floor area.",
            "Pipe follows ways by rule: along walls, the aisle and the ends of houses; wire the runs of the panel schedules; ducts are by rule.",
            "Screw, profile, concrete and trim quantities follow common spacings and wastes (docs/methods/takeoff-cuts-price.md).",
            "Foundation quantities stand on the pier size in the job: foundation not checked.",
        ]));
    }

    private static void Piers(List<Figure> figures, TakeoffHouse house, BodyResult body, int index)
    {
        int count = PierPlan.Of(house.Id, body.Members, house.PierDiameterM).Count;
        Term term = Term.Of("count", "Piers under columns, end posts and jambs", count, Unit.Count, Counting)
            * (Math.PI / 4)
            * Term.Pow(Term.Of("diameter", "Pier diameter", house.PierDiameterM, Unit.Metre, new Source.Given($"/houses/{index}/frame/pierDiameter")), 2)
            * Term.Of("depth", "Pier depth", house.PierDepthM, Unit.Metre, new Source.Given($"/houses/{index}/frame/pierDepth"));
        figures.Add(Figure.Derive(
            $"{house.Id}/takeoff/pier-concrete", "Pier concrete, in place", Unit.CubicMetre, term, new Source.FirstPrinciples("volume of cylinders"), FoundationCaution));
    }

    private static Term BenchTerm(Brief.Bench bench, int house, int k) =>
        Term.Of($"width_{k + 1}", $"Width of {bench.Id}", bench.WidthM, Unit.Metre, new Source.Given($"/houses/{house}/benches/{k}/width"))
        * Term.Of($"length_{k + 1}", $"Length of {bench.Id}", bench.LengthM, Unit.Metre, new Source.Given($"/houses/{house}/benches/{k}/length"));

    private static EqList<WorkingInput> Inputs(IEnumerable<(string Mark, double Value, Unit Unit)> parts) =>
        parts.Select(p => new WorkingInput(p.Mark.Replace('-', '_'), p.Mark, "", p.Value, p.Unit, Counting)).ToEqList();

    private static IEnumerable<Finding> Findings(TakeoffInput input, FormResult form, EqList<TakeoffLine> lines)
    {
        foreach (string kind in form.Buildings.SelectMany(b => b.Faces).SelectMany(f => f.Zones).Select(z => z.Cover.Kind).Distinct()
            .Where(kind => !CoverBuying.Of(kind, input.Units).IsKnown))
        {
            yield return new Finding(
                "takeoff/unknown-cover", Severity.Near, "", $"How '{kind}' is bought is not known: it is taken by area, without a cut list.",
                "Name a polycarbonate, acrylic, panel, glass or film kind.", new Source.CommonPractice("buying rules by family of covering"));
        }

        foreach (string system in lines.Where(l => l.By is Brief.ScopeBy.Excluded or Brief.ScopeBy.Owner or Brief.ScopeBy.OtherTrade).Select(l => $"{l.System}: {l.By}").Distinct())
        {
            yield return new Finding("takeoff/not-ours", Severity.Note, "", $"Measured but not in our price: {system}.", "", new Source.Given("/scope"));
        }
    }
}
