using System.Globalization;
using System.Text.RegularExpressions;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Design.Shape;
using Glazewright.Design.Tests.GainTables;
using Glazewright.Science.Shape;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Tests.Shape;

public partial class ShapeStageTests
{
    private static readonly ShapeResult Usual = Find(TestJobs.OneHouse());

    // The hard limits hold for every shape told, and each closes as a roof of the job.
    [Fact]
    public void Shapes_keep_to_the_limits_and_close()
    {
        RoofProfile drawn = TestJobs.OneHouse().Houses[0].Roof;
        Assert.True(Usual.Looked > 5000);
        Assert.True(Usual.Meeting > 0);
        foreach (ShapeScore s in Usual.Front.Concat(Usual.Checked.Select(c => c.Score)))
        {
            GableSection g = s.Shape.Section;
            Assert.True(g.RidgeM <= drawn.RidgeM + 1e-9);
            Assert.InRange(Math.Min(g.NearEaveM, g.FarEaveM), Math.Min(drawn.LeftEaveM, drawn.RightEaveM) - 1e-9, 10);
            Assert.InRange(Math.Min(g.NearPitchRatio, g.FarPitchRatio), (2 / 12.0) - 1e-9, 1);
            Assert.True(!s.Shape.Clear.NearSlope || g.NearPitchRatio >= 0.5 - 1e-9);
            RoofProfile r = s.Shape.Roof;
            Assert.IsType<RoofSolution.Closed>(RoofSolver.Solve(new RoofWish(r.LeftEaveM, r.RightEaveM, r.RidgeOffsetM, r.LeftPitch, r.RightPitch), 7.9));
        }
    }

    // Nothing looked at beats a shape of the front; more winter light is bought with summer light or glazing.
    [Fact]
    public void No_shape_of_the_front_beats_another()
    {
        foreach (ShapeScore a in Usual.Front)
        {
            Assert.DoesNotContain(Usual.Front, b => b != a && b.WinterMolPerM2Day > a.WinterMolPerM2Day && b.SummerMolPerM2Day <= a.SummerMolPerM2Day && b.GlazingM2 <= a.GlazingM2);
        }

        Assert.True(Usual.Front[0].GlazingM2 > Usual.Front[^1].GlazingM2);
    }

    // The rule: within the light given up of the best, the least glazing.
    [Fact]
    public void The_choice_gives_up_no_more_winter_light_than_said()
    {
        double most = Usual.Checked.Max(c => c.Score.WinterMolPerM2Day);
        Assert.True(Usual.Best.Score.WinterMolPerM2Day >= 0.97 * most);
        Assert.DoesNotContain(Usual.Checked, c => c.Score.WinterMolPerM2Day >= 0.97 * most && c.Score.GlazingM2 < Usual.Best.Score.GlazingM2 - 1e-6);
        ShapeResult dear = Find(With(w => w with { LightGivenUpFraction = 0.25 }));
        Assert.True(dear.Best.Score.GlazingM2 < Usual.Best.Score.GlazingM2);
    }

    [Fact]
    public void One_thread_and_several_find_the_same()
    {
        ShapeInput input = ShapeInput.From(TestJobs.OneHouse(), "A");
        ShapeResult other = ShapeStage.Run(input, LightJobs.Weather, null, 4, null, CancellationToken.None);
        Assert.Equal(Usual.Best, other.Best);
        Assert.Equal(Usual.Front, other.Front);
        Assert.Equal(Usual.Checked, other.Checked);
    }

    // Turned end for end the left side is the right one: the same house.
    [Fact]
    public void A_house_turned_end_for_end_gets_the_same_shape()
    {
        Job job = TestJobs.OneHouse();
        House h = job.Houses[0];
        RoofProfile r = h.Roof;
        CoverChoice Of(FaceName face) => h.Coverings.First(c => c.Face == face).Cover;
        House turned = h with
        {
            Roof = new RoofProfile(r.RightEaveM, r.LeftEaveM, h.WidthM - r.RidgeOffsetM, r.RightPitch, r.LeftPitch, r.Solved),
            Coverings =
            [
                new(FaceName.Left, Of(FaceName.Right)), new(FaceName.Right, Of(FaceName.Left)), new(FaceName.End1, Of(FaceName.End2)),
                new(FaceName.End2, Of(FaceName.End1)), new(FaceName.RoofLeft, Of(FaceName.RoofRight)), new(FaceName.RoofRight, Of(FaceName.RoofLeft)),
            ],
        };
        ShapeResult other = Find(job with { Site = job.Site with { RangeBearingDeg = job.Site.RangeBearingDeg + 180 }, Houses = [turned] });
        Assert.True(Usual.Best.Score.Shape.IsNearLeft);
        Assert.False(other.Best.Score.Shape.IsNearLeft);
        Assert.Equal(Usual.Drawn.Score.WinterMolPerM2Day, other.Drawn.Score.WinterMolPerM2Day, 1e-9);
        Assert.Equal(Usual.Drawn.Score.GlazingM2, other.Drawn.Score.GlazingM2, 1e-9);
        Assert.Equal(Usual.Best.Score.Shape.Section, other.Best.Score.Shape.Section);
        Assert.Equal(Usual.Best.Score.Shape.Roof.LeftEaveM, other.Best.Score.Shape.Roof.RightEaveM);
    }

    // South of the equator the near side faces north and the dark month is June; with the year turned by half it is much the same house.
    [Fact]
    public void South_of_the_equator_the_house_turns_round()
    {
        WeatherYear north = LightJobs.Weather;
        WeatherYear south = north with
        {
            Station = north.Station with { LatitudeDeg = -north.Station.LatitudeDeg },
            GhiWhm2 = HalfAYearOn(north.GhiWhm2),
            DhiWhm2 = HalfAYearOn(north.DhiWhm2),
            DniWhm2 = HalfAYearOn(north.DniWhm2),
            SnowDepthM = HalfAYearOn(north.SnowDepthM),
        };
        Job job = TestJobs.OneHouse();
        Job there = job with { Site = job.Site with { LatitudeDeg = -42, RangeBearingDeg = job.Site.RangeBearingDeg + 180 } };
        ShapeResult r = ShapeStage.Run(ShapeInput.From(there, "A"), south, null, 2, null, CancellationToken.None);
        Assert.Equal((5, 11), (r.WinterMonth, r.SummerMonth));
        Assert.Equal("north", ShapeWords.Sides(r.Best.Score.Shape).Near);
        Assert.Equal(Usual.Drawn.Score.WinterMolPerM2Day, r.Drawn.Score.WinterMolPerM2Day, 0.04 * Usual.Drawn.Score.WinterMolPerM2Day);
        Assert.Equal(Usual.Best.Score.Shape.Clear, r.Best.Score.Shape.Clear);
        Assert.Equal(Usual.Drawn.Score.NoonReachM, r.Drawn.Score.NoonReachM, 1e-9);
    }

    // A wish that a low ridge cannot meet says what it would take; with that ridge it is met, with a little less it is not.
    [Fact]
    public void A_missed_noon_wish_tells_the_ridge_that_meets_it()
    {
        Job metric = With(w => w with { NoonReachM = 1.2, Faces = ShapeFreedom.AsDrawn, EaveAtMostM = 5 }) with { Units = UnitSystem.Metric };
        ShapeResult low = Find(metric);
        ShapeWishResult wish = Assert.Single(low.Wishes, w => w.Wish == ShapeWish.NoonReach);
        Assert.False(wish.IsMet);
        Assert.True(wish.MetByRest > 0);
        Assert.Contains(low.Report.Findings, f => f.Code == "shape/wish-missed" && f.Severity == Severity.Miss && f.Mend.Contains("N", StringComparison.Ordinal));
        double told = double.Parse(LowestRidge().Match(wish.WouldTake).Groups[1].Value, CultureInfo.InvariantCulture);
        Assert.True(told > metric.Houses[0].Roof.RidgeM);
        Assert.True(Find(WithRidge(metric, told + 0.35)).Meeting > 0);
        Assert.Equal(0, Find(WithRidge(metric, told - 0.02)).Meeting);
    }

    // With low eaves and pitches of at most 12:12 no ridge does it: it says how high the far eave would have to be.
    [Fact]
    public void A_noon_wish_that_no_ridge_meets_tells_the_eave()
    {
        ShapeResult r = Find(With(w => w with { NoonReachM = 1.2, RidgeAtMostM = 9, Faces = ShapeFreedom.AsDrawn, EaveAtMostM = 2.7 }));
        Assert.Contains("higher than the wishes allow", Assert.Single(r.Wishes, w => !w.IsMet).WouldTake, StringComparison.Ordinal);
    }

    // A clear far slope lets the noon sun in whatever the ridge.
    [Fact]
    public void A_clear_far_slope_meets_the_noon_wish()
    {
        ShapeResult r = Find(With(w => w with { NoonReachM = 1.2 }));
        Assert.True(r.Meeting > 0);
        Assert.True(r.Best.Score.Shape.Clear.FarSlope);
        Assert.True(r.Best.Score.NoonReachM >= 1.2);
    }

    [Fact]
    public void In_the_tropics_the_noon_wish_says_where_the_sun_stands()
    {
        Job job = With(w => w with { NoonReachM = 1.2, Faces = ShapeFreedom.AsDrawn });
        ShapeResult r = Find(job with { Site = job.Site with { LatitudeDeg = 10, RangeBearingDeg = 90 } });
        ShapeWishResult wish = Assert.Single(r.Wishes, w => w.Wish == ShapeWish.NoonReach);
        Assert.False(wish.IsMet);
        Assert.Contains("north side", wish.WouldTake, StringComparison.Ordinal);
        Assert.Contains(r.Report.Findings, f => f.Code == "shape/tropics");
    }

    // Polar night: no December to rank by, so the darkest month with light, and it is said.
    [Fact]
    public void In_polar_night_the_darkest_lit_month_ranks()
    {
        WeatherYear dark = LightJobs.Weather with { GhiWhm2 = WithoutWinter(LightJobs.Weather.GhiWhm2) };
        Job job = TestJobs.OneHouse();
        ShapeResult r = ShapeStage.Run(
            ShapeInput.From(job with { Site = job.Site with { LatitudeDeg = 70 } }, "A"), dark, null, 2, null, CancellationToken.None);
        Assert.Contains(r.WinterMonth, new[] { 1, 9 });
        Assert.Contains(r.Report.Findings, f => f.Code == "shape/polar-night");
        Assert.True(r.Best.Score.WinterMolPerM2Day > 0);
    }

    [Fact]
    public void What_cannot_be_answered_is_a_fault()
    {
        WeatherYear none = LightJobs.Weather with { GhiWhm2 = new HourlyColumn(new double[8760]) };
        ShapeInput input = ShapeInput.From(TestJobs.OneHouse(), "A");
        Assert.Equal("/site/weather", Assert.Single(ShapeStage.Faults(input, none)).Pointer);
        Assert.Throws<ArgumentException>(() => ShapeStage.Run(input, none, null, 1, null, CancellationToken.None));
        ShapeInput along = ShapeInput.From(LightJobs.Turned(With(w => w with { NoonReachM = 1 }), 0), "A");
        Assert.Contains("noonReach", Assert.Single(ShapeStage.Faults(along, LightJobs.Weather)).Wrong, StringComparison.Ordinal);
        Assert.Empty(ShapeStage.Faults(ShapeInput.From(LightJobs.Turned(TestJobs.OneHouse(), 0), "A"), LightJobs.Weather));
    }

    // Limits that leave no roof at all: the drawn shape stands, and it is said.
    [Fact]
    public void Without_any_roof_the_drawn_one_stands()
    {
        ShapeResult r = Find(With(w => w with { RidgeAtMostM = 2.4 }));
        Assert.Equal(0, r.Looked);
        Assert.Equal(r.Drawn.Score, r.Best.Score);
        Assert.Contains(r.Report.Findings, f => f.Code == "shape/none");
    }

    // The full map decides among the twenty, and its ranks are compared: a map that turns the order round gives −1.
    [Fact]
    public void The_full_map_has_the_last_word()
    {
        EqList<double> even = Enumerable.Repeat(0.8, 12).ToEqList();
        ShapeInput input = ShapeInput.From(TestJobs.OneHouse(), "A");
        Dictionary<ShapeCandidate, double> winter = Usual.Checked.Append(Usual.Drawn).ToDictionary(c => c.Score.Shape, c => c.Score.WinterMolPerM2Day);
        ShapeResult r = ShapeStage.Run(
            input, LightJobs.Weather, (shape, _) => new ShapeFullLight(Enumerable.Repeat(100 - winter[shape], 12).ToEqList(), even), 2, null, CancellationToken.None);
        Assert.Equal(-1, r.Winter!.KendallTauRatio, 1e-9);
        Assert.Equal(-1, r.Winter.SpearmanRhoRatio, 1e-9);
        Assert.Equal(ShapeStage.Recheck, r.Checked.Count);
        Assert.NotEqual(Usual.Best.Score, r.Best.Score);
    }

    // What the section calls bright enough and the map does not is a miss: wishes about light go by the full map.
    [Fact]
    public void Wishes_about_light_go_by_the_full_map()
    {
        double drawn = Usual.Drawn.Score.WinterMolPerM2Day;
        ShapeInput input = ShapeInput.From(With(w => w with { DarkestMonthMolPerM2Day = 0.95 * drawn, EvennessAtLeastRatio = 0.7 }), "A");
        Assert.All(ShapeStage.Run(input, LightJobs.Weather, null, 2, null, CancellationToken.None).Wishes, w => Assert.True(w.IsMet));
        ShapeResult dark = ShapeStage.Run(
            input, LightJobs.Weather, (_, _) => new ShapeFullLight(Enumerable.Repeat(0.7 * drawn, 12).ToEqList(), Enumerable.Repeat(0.75, 12).ToEqList()), 2, null, CancellationToken.None);
        ShapeWishResult wish = Assert.Single(dark.Wishes, w => !w.IsMet);
        Assert.Equal(ShapeWish.DarkMonth, wish.Wish);
        Assert.Equal(ShapeWords.Month(11), ShapeWords.Month(dark.WinterMonth));
        Assert.Contains((0.7 * drawn).ToString("0.0", CultureInfo.InvariantCulture), wish.Got, StringComparison.Ordinal);
    }

    // The section against the full map, neighbours, ends, members and all: what the cheap ranking is worth.
    [Fact]
    [Trait("Category", "Slow")]
    public void Section_and_full_map_agree_on_the_order()
    {
        Job job = TestJobs.OneHouse();
        EqList<FrameResult> frames = [FrameStage.Run(FrameInput.From(job, "A"), LightJobs.Form(job).Building("A"), CancellationToken.None)];
        ShapeResult r = ShapeStage.Run(
            ShapeInput.From(job, "A"), LightJobs.Weather, ShapeRechecks.ByLightMap(job, "A", frames, LightJobs.Weather), 2, null, CancellationToken.None);
        TestContext.Current.TestOutputHelper?.WriteLine(FormattableString.Invariant($"winter {r.Winter}, summer {r.Summer}"));
        Assert.True(r.Winter!.KendallTauRatio > 0.6, r.Winter.ToString());
        Assert.True(r.Summer!.SpearmanRhoRatio > 0.6, r.Summer.ToString());
        foreach (ShapeCheck c in r.Checked)
        {
            // Opaque and clear ends, bars and members: within a fifth of each other.
            Assert.InRange(c.Full!.MonthMolPerM2Day[11] / c.Score.WinterMolPerM2Day, 0.75, 1.1);
        }
    }

    private static ShapeResult Find(Job job) =>
        ShapeStage.Run(ShapeInput.From(job, "A"), LightJobs.Weather, null, 2, null, CancellationToken.None);

    private static Job With(Func<ShapeWishes, ShapeWishes> change)
    {
        Job job = TestJobs.OneHouse();
        return job with { Houses = [job.Houses[0] with { ShapeWishes = change(job.Houses[0].ShapeWishes ?? ShapeWishes.Unsaid) }] };
    }

    private static Job WithRidge(Job job, double ridgeM) =>
        job with { Houses = [job.Houses[0] with { ShapeWishes = job.Houses[0].ShapeWishes! with { RidgeAtMostM = ridgeM } }] };

    private static HourlyColumn HalfAYearOn(HourlyColumn column) =>
        new([.. Enumerable.Range(0, 8760).Select(h => column[(h + (182 * 24)) % 8760])]);

    private static HourlyColumn WithoutWinter(HourlyColumn column) =>
        new([.. Enumerable.Range(0, 8760).Select(h => CommonYear.MonthOfDay(h / 24) is 1 or 11 or 12 ? 0 : column[h])]);

    [GeneratedRegex(@"where it is now, ([\d.]+) m at the best place")]
    private static partial Regex LowestRidge();
}
