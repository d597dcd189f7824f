using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Science.Flow;
using static Glazewright.Design.Plant.PlantWords;

namespace Glazewright.Design.Plant;

/// <summary>How loud the exhaust and upper fans are beside one and outside, from the catalogue's levels.</summary>
internal static class FanSound
{
    /// <summary>Distance the catalogue's levels are given at, m (5 ft).</summary>
    public const double CatalogueM = 1.5;

    /// <summary>Distance told for neighbours, m (50 ft).</summary>
    public const double OutsideM = 15;

    // Over a working day hearing protection is due from here (NIOSH recommended limit; action level of 29 CFR 1910.95; from memory).
    private const double HarmDb = 85;

    private static readonly Source Energies = new Source.FirstPrinciples("sound energies add, and fall with the square of the distance in the open");

    private static List<FanEntry> Fans(PlantFacts f) =>
        [.. f.Run?.Fans ?? [], .. f.Upper is { } u ? Enumerable.Repeat(f.Catalogue.Fans.First(e => e.Id == u.Entry), u.Count) : []];

    /// <summary>The loudest fan at its catalogue distance; all fans at <see cref="OutsideM"/>, as if they stood together in the open, dB(A).</summary>
    public static (double LoudestDb, double OutsideDb)? Levels(PlantFacts f)
    {
        List<FanEntry> fans = Fans(f);
        return fans.Count == 0
            ? null
            : (fans.Max(e => e.SoundDb), SoundLevel.AtDistanceDb(SoundLevel.TogetherDb([.. fans.Select(e => e.SoundDb)]), CatalogueM, OutsideM));
    }

    public static IEnumerable<Figure> Figures(PlantFacts f)
    {
        if (Levels(f) is not { } level)
        {
            yield break;
        }

        List<FanEntry> fans = Fans(f);
        string house = f.Input.House;
        EqList<WorkingInput> each = fans.GroupBy(e => e.Id)
            .SelectMany(g => (WorkingInput[])[PlantWorkings.Input(g.Key, $"{g.First().Name}, dB(A) at 1.5 m (5 ft)", g.First().SoundDb, Unit.None), PlantWorkings.Input("n-" + g.Key, "How many", g.Count(), Unit.Count)]).ToEqList();
        Source entries = new Source.Catalogue(string.Join(", ", fans.Select(e => e.Id).Distinct()));
        yield return Figure.Observe(
            $"{house}/plant/fan-sound", "Loudest fan at 1.5 m (5 ft), dB(A)", Unit.None, level.LoudestDb, "Largest of the catalogue's levels", each, "As the catalogue has it", entries);
        yield return Figure.Observe(
            $"{house}/plant/fan-sound-outside", "All fans on at 15 m (50 ft) in the open, dB(A)", Unit.None, level.OutsideDb,
            "10 lg Σ 10^(L/10) − 20 lg(15 / 1.5)", each, "No ground, wall or hood counted; fans as if in one place", Energies);
    }

    public static IEnumerable<Finding> Of(PlantFacts f)
    {
        if (Levels(f) is not { } level)
        {
            yield break;
        }

        int count = Fans(f).Count;
        yield return new Finding(
            "plant/fan-sound", level.LoudestDb >= HarmDb ? Severity.Near : Severity.Note, $"{f.Input.House}/fan-1",
            Text($"The loudest fan makes {level.LoudestDb:0} dB(A) at 5 ft (1.5 m); {(count == 1 ? "in the open that is" : Text($"all {count} fans on make"))} some {level.OutsideDb:0} dB(A) at 50 ft (15 m), 6 less at twice that distance. From {HarmDb:0} dB(A) over a working day hearing protection is due; many places limit nights at the lot line to 45 to 55 dB(A)."),
            level.LoudestDb >= HarmDb ? "Slower, larger fans, and hearing protection where people work beside them." : "Ask the authority for the limit at the lot line; slower, larger fans or a hood turned away are quieter.",
            new Source.CommonPractice("catalogue levels, inverse square in the open; limits differ by place"));
    }
}
