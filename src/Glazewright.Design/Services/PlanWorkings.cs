using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Services;

/// <summary>Figures and findings of taps and ways.</summary>
internal static class PlanWorkings
{
    private static readonly Source Practice = new Source.CommonPractice("ways along walls, under floors and in trenches between buildings; the trades lay them out");

    // Deeper than this a drain wants a lower outlet or a pump (common practice).
    private const double DeepM = 1.2;

    /// <summary>Adds them.</summary>
    public static void Add(ServicesInput input, FormResult form, ServicesResult r, List<Figure> figures, List<Finding> findings)
    {
        foreach (UtilityKind utility in r.Plan.Pieces.Select(p => p.Utility).Distinct())
        {
            PipePiece[] pieces = [.. r.Plan.Pieces.Where(p => p.Utility == utility)];
            figures.Add(Figure.Derive(
                $"services/{utility.ToString().ToLowerInvariant()}-pipe", $"Pipe for {Word(utility)}, all ways", Unit.Metre,
                Term.Total([.. pieces.GroupBy(p => p.House).Select((g, i) => Term.Of($"p{i + 1}", g.Key.Length > 0 ? $"House {g.Key}" : "Outside the houses", g.Sum(p => p.LengthM), Unit.Metre, Practice))]), Practice));
        }

        UtilityEntry[] supposed = [.. r.Plan.Entries.Where(e => e.IsDefault)];
        if (supposed.Length > 0)
        {
            findings.Add(new Finding(
                "services/entries", Severity.Note, "",
                $"The job does not say where these enter or leave; their runs are measured from: {string.Join("; ", supposed.Select(e => $"{Word(e.Utility)} {e.Words}"))}.",
                "Say so under utilities (powerAt, fuelAt, waterAt, drainAt) once the lot has been walked.", Practice));
        }

        List<(string House, int Bibs, double FarthestM)> hoses = [];
        foreach (ServedHouse house in input.Houses)
        {
            BuildingForm b = form.Building(house.Id);
            Point2[] bibs = [.. r.Plan.Points.Where(p => p.House == house.Id && p.Kind == TapKind.HoseBib).Select(p => new Point2((p.At - b.Origin).Dot(b.AlongX), (p.At - b.Origin).Dot(b.AlongY)))];
            if (bibs.Length > 0)
            {
                hoses.Add((house.Id, bibs.Length, TapPlaces.FarthestM(b, bibs)));
            }
        }

        if (hoses.Count > 0)
        {
            figures.Add(Figure.Observe(
                "services/hose-reach", "Farthest corner of a floor from its hose bib", Unit.Metre, hoses.Max(h => h.FarthestM), "Along and across the house, under benches",
                [.. hoses.Select(h => new WorkingInput($"bibs-{h.House}", $"{h.House}: hose bibs", "", h.Bibs, Unit.None, Practice)), new WorkingInput("hose", "Hose", "", TapPlaces.HoseM, Unit.Metre, Practice)],
                "Over the bench a hose reaches less far; bibs keep clear of doors", Practice));
        }

        UtilityPoint? far = r.Plan.Points.Where(p => p.Utility == UtilityKind.Drain).MaxBy(p => p.RunM);
        if (far is not null)
        {
            Figure fall = Figure.Derive(
                "services/drain-fall", "Fall of the longest drain", Unit.Metre,
                Term.Of("run", $"Pipe from {far.Id} to the outlet", far.RunM, Unit.Metre, Practice) * Term.Of("fall", "Fall, 1/4 in a foot", PipeSizes.DrainFallRatio, Unit.None, Practice), Practice);
            figures.Add(fall);
            bool deep = fall.Value > DeepM;
            findings.Add(new Finding(
                "services/drain-fall", deep ? Severity.Near : Severity.Note, far.Id,
                string.Create(CultureInfo.InvariantCulture, $"The longest drain runs {far.RunM / 0.3048:0} ft ({far.RunM:0} m) and falls {fall.Value / 0.3048:0.0} ft ({fall.Value:0.00} m) at 2 % (1/4 in a foot): its outlet lies that far below the floor drain."),
                deep ? "See that the outlet lies so low; else 1 % from 3 in pipe up where the code allows it, an outlet nearer by, or a pumped sump." : "See that the outlet lies so low.", Practice));
        }
    }

    /// <summary>What is led, in words.</summary>
    public static string Word(UtilityKind utility) => utility switch { UtilityKind.Power => "power", UtilityKind.Fuel => "fuel", UtilityKind.Water => "water", _ => "drains" };
}
