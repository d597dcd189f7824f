using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Science.Light;
using Glazewright.Science.Shape;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Shape;

/// <summary>The shape finder: a two-dimensional section ranks thousands of shapes, the full map looks at the best twenty again.</summary>
public static class ShapeStage
{
    /// <summary>How many shapes the full map looks at again.</summary>
    public const int Recheck = 20;

    /// <summary>Ranks of fewer shapes say nothing.</summary>
    private const int FewestRanked = 5;

    /// <summary>Less light outdoors than this is no month to rank by, mol/m²d.</summary>
    private const double DarkMol = 0.5;

    private static readonly double[] s_turnsDeg = [0, -30, -15, 15, 30];

    /// <summary>What keeps the finder from an answer, to be mended in the job.</summary>
    /// <param name="input">What the job says.</param>
    /// <param name="weather">Hourly year.</param>
    /// <returns>Faults; none when it can run.</returns>
    public static IReadOnlyList<Fault> Faults(ShapeInput input, WeatherYear weather)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(weather);
        List<Fault> faults = [];
        if (Enumerable.Range(0, CommonYear.Hours).Sum(h => Math.Max(0, weather.GhiWhm2[h])) < 1)
        {
            faults.Add(new Fault(FaultKind.DoesNotFit, "/site/weather", "", 0, 0, "the weather year holds no radiation", "a year with global radiation"));
        }

        ShapeField.Nearest(input.LatitudeDeg, input.RangeBearingDeg, out double nearDeg);
        if (input.Wishes.NoonReachM is not null && Math.Cos((nearDeg - NoonSunAngle.EquatorAzimuthDeg(input.LatitudeDeg)) * Math.PI / 180) < 0.2)
        {
            faults.Add(new Fault(
                FaultKind.DoesNotFit, "/houses", input.House, 0, 0,
                "the noon sun shines along a ridge that runs north and south: there is no wall away from the equator for noonReach", "no noonReach, or a ridge within 78° of east and west"));
        }

        return faults;
    }

    /// <summary>Finds shapes.</summary>
    /// <param name="input">What the job says.</param>
    /// <param name="weather">Hourly year.</param>
    /// <param name="recheck">The full map; null to leave it out.</param>
    /// <param name="threads">Most threads; the result is the same for any number.</param>
    /// <param name="say">Told what is being done; may be null.</param>
    /// <param name="cancel">Looked at while it works.</param>
    /// <returns>The result.</returns>
    /// <exception cref="ArgumentException">The input has <see cref="Faults"/>.</exception>
    public static ShapeResult Run(
        ShapeInput input, WeatherYear weather, ShapeRecheck? recheck, int threads, Action<string>? say, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (Faults(input, weather) is [Fault first, ..])
        {
            throw new ArgumentException(first.Wrong, nameof(input));
        }

        say?.Invoke("Sun and sky of the year");
        SunSamples samples = SunSamples.Of(weather, input.AlbedoFraction);
        double[] outside = [.. Enumerable.Range(0, 12).Select(m => PlantLight.DailyMolM2(samples.GlobalWhPerM2[m] / CommonYear.DaysIn(m + 1), input.UmolPerJ))];
        (int winter, int summer) = Months(outside, input.LatitudeDeg);
        ShapeSpace space = new(input);
        double[] turns = input.Wishes.Bearing == ShapeFreedom.Search ? s_turnsDeg : [0];
        ShapeField asDrawn = Field(0, MapOverSection.Same);
        ShapeCell drawn = asDrawn.Score(0, 0, space.Drawn(asDrawn.IsNearLeft), asDrawn.Room());
        ShapeCheck drawnCheck = Again(input, [asDrawn], [drawn], recheck, 1, say, cancel)[0];
        MapOverSection map = Ratio(drawnCheck, winter);
        EqList<ShapeField> fields = turns.Select(t => Field(t, map)).ToEqList();

        say?.Invoke("Sections");
        List<ShapeCell> cells = ShapeSearch.Run(fields, space, threads, cancel);

        // Where the limits leave no shape at all the drawn one stands for the answer, and the findings say why.
        bool none = cells.Count == 0;
        List<ShapeCell> looked = none ? [drawn] : cells;
        List<ShapeCell> eligible = ShapeRanking.Eligible(looked);
        List<ShapeCell> front = ShapeRanking.Front(eligible, input.Wishes.SummerLight);
        List<ShapeCell> best = ShapeRanking.Best(eligible, front, input.Wishes.LightGivenUpFraction, Recheck);
        ShapeCheck[] again = Again(input, fields, best, recheck, threads, say, cancel);

        // The full map has the last word: on the wishes about light, and on the winter light of the rule.
        ShapeCell[] told = [.. best.Select((c, i) => Told(fields[c.Field], c, again[i], winter))];
        int lightest = told.Min(ShapeRanking.Weight);
        int[] may = [.. Enumerable.Range(0, told.Length).Where(i => ShapeRanking.Weight(told[i]) == lightest)];

        // Where winter light itself falls short none of it is given up.
        double givenUp = told[may[0]].Missed.HasFlag(ShapeWish.DarkMonth) ? 0 : input.Wishes.LightGivenUpFraction;
        int chosen = may[ShapeRanking.Choose([.. may.Select(i => (told[i].Winter, told[i].GlazingM2))], givenUp)];
        ShapeCheck choice = again[chosen];
        EqList<ShapeWishResult> wishes = ShapeWishWords.Of(input, fields[best[chosen].Field], looked, map, told[chosen], choice.Score.Shape);
        ShapeCheck[] ranked = [drawnCheck, .. again];
        ShapeResult result = new(
            input.House, winter, summer, outside[winter], outside[summer], cells.Count, cells.Count(c => c.Missed == ShapeWish.None), drawnCheck, choice,
            again.Where((_, i) => i != chosen).Prepend(choice).ToEqList(),
            front.Select(c => ScoreOf(fields, c)).ToEqList(),
            Agreement(ranked, winter, s => s.WinterMolPerM2Day), Agreement(ranked, summer, s => s.SummerMolPerM2Day), wishes, StageReport.Empty);
        return result with { Report = ShapeFindings.Of(input, result, none, outside) };

        ShapeField Field(double turnDeg, MapOverSection ratio)
        {
            double bearingDeg = input.RangeBearingDeg + turnDeg;
            bool left = ShapeField.Nearest(input.LatitudeDeg, bearingDeg, out _);
            return new ShapeField(input, samples, bearingDeg, space.Covers(left), winter, summer, ratio);
        }
    }

    private static MapOverSection Ratio(ShapeCheck drawn, int winter) =>
        drawn.Full is ShapeFullLight full && drawn.Score.WinterMolPerM2Day > 0 && drawn.Score.WinterEvennessRatio > 0
            ? new MapOverSection(
                full.MonthMolPerM2Day[winter] / drawn.Score.WinterMolPerM2Day, full.MonthEvennessRatio[winter] / drawn.Score.WinterEvennessRatio)
            : MapOverSection.Same;

    private static ShapeCell Told(ShapeField field, ShapeCell cell, ShapeCheck check, int winter) => check.Full is ShapeFullLight full
        ? field.Judged(
            cell with { Winter = full.MonthMolPerM2Day[winter], Evenness = full.MonthEvennessRatio[winter] }, full.MonthMolPerM2Day[winter], full.MonthEvennessRatio[winter])
        : cell;

    // The dark and the bright month of the hemisphere; in polar night the darkest month that has light.
    private static (int Winter, int Summer) Months(double[] outside, double latitudeDeg)
    {
        (int winter, int summer) = latitudeDeg >= 0 ? (11, 5) : (5, 11);
        int[] lit = [.. Enumerable.Range(0, 12).Where(m => outside[m] >= DarkMol)];
        if (outside[winter] < DarkMol && lit.Length > 0)
        {
            winter = lit.MinBy(m => outside[m]);
        }

        if (outside[summer] < DarkMol && lit.Length > 0)
        {
            summer = lit.MaxBy(m => outside[m]);
        }

        return (winter, summer);
    }

    private static ShapeCheck[] Again(
        ShapeInput input, EqList<ShapeField> fields, List<ShapeCell> cells, ShapeRecheck? recheck, int threads, Action<string>? say, CancellationToken cancel)
    {
        ShapeCheck[] checks = new ShapeCheck[cells.Count];
        int done = 0;
        ParallelOptions options = new() { MaxDegreeOfParallelism = Math.Max(1, threads), CancellationToken = cancel };
        Parallel.For(0, cells.Count, options, i =>
        {
            ShapeScore score = ScoreOf(fields, cells[i]);
            ShapeField field = fields[cells[i].Field];
            double hours = field.ShadeHours(cells[i].Set, cells[i].Section, field.Room());
            checks[i] = new ShapeCheck(score, hours, recheck?.Invoke(score.Shape, cancel));
            say?.Invoke(FormattableString.Invariant($"Full map of shape {Interlocked.Increment(ref done)} of {cells.Count}"));
        });
        return checks;
    }

    private static RankAgreement? Agreement(ShapeCheck[] checks, int month, Func<ShapeScore, double> bySection) =>
        checks.All(c => c.Full is not null) && checks.Length >= FewestRanked
            ? RankAgreement.Of([.. checks.Select(c => bySection(c.Score))], [.. checks.Select(c => c.Full!.MonthMolPerM2Day[month])])
            : null;

    private static ShapeScore ScoreOf(EqList<ShapeField> fields, ShapeCell c)
    {
        ShapeField field = fields[c.Field];
        CoverSet set = field.Sets[c.Set];
        GableSection s = c.Section;
        bool left = field.IsNearLeft;
        RoofProfile roof = left
            ? new RoofProfile(s.NearEaveM, s.FarEaveM, s.RidgeOffsetM, s.NearPitchRatio, s.FarPitchRatio, SolvedRoofPart.None)
            : new RoofProfile(s.FarEaveM, s.NearEaveM, s.WidthM - s.RidgeOffsetM, s.FarPitchRatio, s.NearPitchRatio, SolvedRoofPart.None);
        EqList<Brief.FaceCovering> coverings =
        [
            new(FaceName.Left, left ? set.NearWall : set.FarWall),
            new(FaceName.Right, left ? set.FarWall : set.NearWall),
            new(FaceName.RoofLeft, left ? set.NearSlope : set.FarSlope),
            new(FaceName.RoofRight, left ? set.FarSlope : set.NearSlope),
        ];
        return new ShapeScore(
            new ShapeCandidate(roof, s, set.Clear, coverings, left, field.BearingDeg),
            c.Winter, c.Evenness, c.Summer, c.GlazingM2, c.WPerK, c.ReachM, c.Missed, c.Shortfall);
    }
}
