using Glazewright.Design.Contracts;
using Glazewright.Design.Cuts;
using Glazewright.Design.Takeoff;
using Glazewright.Design.Tests.Takeoff;

namespace Glazewright.Design.Tests.Cuts;

public class CutsStageTests
{
    private const double Ft = 0.3048;

    private static readonly CutsInput Input = new(UnitSystem.Us, [20 * Ft, 24 * Ft], 0.0025);

    private static readonly CutsResult Cuts = CutsStage.Run(Input, TwoHouses.Takeoff, CancellationToken.None);

    [Fact]
    public void Every_marked_piece_is_cut_once()
    {
        Dictionary<string, int> cut = [];
        foreach (BarPattern pattern in Cuts.Sections.SelectMany(s => s.Patterns))
        {
            foreach (CutPiece piece in pattern.Pieces)
            {
                cut[piece.Mark] = cut.GetValueOrDefault(piece.Mark) + pattern.Times;
            }
        }

        Assert.All(TwoHouses.Takeoff.Marks, mark => Assert.Equal(mark.Count, cut[mark.Mark]));
    }

    [Fact]
    public void Pieces_and_drop_never_exceed_the_bar() => Assert.All(Cuts.Sections.SelectMany(s => s.Patterns), pattern =>
        Assert.True(pattern.Pieces.Sum(p => p.LengthM) + pattern.DropM <= pattern.StockM + 1e-9));

    [Fact]
    public void What_is_bought_is_pieces_usable_drops_and_waste() => Assert.All(Cuts.Sections, section =>
    {
        double boughtM = section.Patterns.Sum(p => p.Times * p.StockM);
        double piecesM = section.Patterns.Sum(p => p.Times * p.Pieces.Sum(piece => piece.LengthM));
        Assert.Equal(boughtM, piecesM + section.UsableDropM + section.WasteFraction * boughtM, 1e-6);
        Assert.True(section.UsableDropM <= section.Patterns.Sum(p => p.Times * p.DropM) + 1e-9);
    });

    // A job in feet once read "and 0.3 m for each bar".
    [Fact]
    public void A_job_in_feet_reads_no_metres() => Assert.All(
        CutsStage.Run(Input with { Units = UnitSystem.Us }, TwoHouses.Takeoff, TestContext.Current.CancellationToken).Sections,
        section => Assert.DoesNotMatch("metre|[0-9] m\\b", section.ObjectiveIs));

    [Fact]
    public void Objectives_stand_on_or_above_their_bounds_and_figures_agree() => Assert.All(Cuts.Sections, section =>
    {
        Assert.True(section.Bound <= section.Objective + 1e-9);
        Assert.Equal(section.Proven, section.Objective <= section.Bound + 1e-9);
        Assert.Equal(section.Bound, Cuts.Report.Figures.Single(f => f.Id == $"cuts/{section.Section}/bound").Value, tolerance: 1e-12);
        Assert.InRange(section.WasteFraction, 0, 0.2);
    });

    [Fact]
    public void A_piece_of_the_bars_own_length_is_taken_as_delivered_and_a_longer_one_is_a_finding()
    {
        TakeoffResult takeoff = TwoHouses.Takeoff with
        {
            Sheets = [],
            Marks = [new ShopMark("L-01", "tube", 24 * Ft, 0, 0, 3, 50, ""), new ShopMark("L-02", "tube", 30 * Ft, 0, 0, 2, 60, ""), new ShopMark("L-03", "tube", 8 * Ft, 0, 0, 2, 20, "")],
        };
        CutsResult cuts = CutsStage.Run(Input, takeoff, TestContext.Current.CancellationToken);
        SectionCuts section = Assert.Single(cuts.Sections);
        BarPattern whole = Assert.Single(section.Patterns, p => p.Pieces[0].Mark == "L-01");
        Assert.Equal((3, 0.0), (whole.Times, Math.Round(whole.DropM, 9)));
        Assert.Equal(30 * Ft, Assert.Single(section.Patterns, p => p.Pieces[0].Mark == "L-02").StockM, tolerance: 1e-9);
        Assert.Equal("L-02", Assert.Single(cuts.Report.Findings).Id);
        Assert.Equal(3 + 2 + 1, section.Bars);
    }

    /// <summary>By hand: 4 pieces of 30 in and 3 kerfs of 1/8 in (2 steps of 1/16) make a panel of 120 3/8 in, 8 pieces two of them (or one of 8 pieces a little longer).</summary>
    [Fact]
    public void Pony_wall_panels_are_cut_from_panels_the_mill_can_make()
    {
        TakeoffResult takeoff = TwoHouses.Takeoff with { Marks = [], Sheets = [new SheetPiece("P-01", "panel-76", "A/left/pony", 1.0668, 30 * 0.0254, 8, 1.0668)] };
        SectionCuts section = Assert.Single(CutsStage.Run(Input, takeoff, TestContext.Current.CancellationToken).Sections);
        Assert.Equal(CutsStage.ShortPanelSection("panel-76"), section.Section);
        Assert.True(section.Proven);
        Assert.All(section.Patterns, p => Assert.True(p.StockM >= 8 * Ft - 1e-9));
        Assert.Equal(2 * 120.375 * 0.0254, section.Objective, tolerance: 0.0254 / 8);
        Assert.Empty(CutsStage.Run(
            Input, takeoff with { Sheets = [takeoff.Sheets[0] with { LengthM = 9 * Ft }] }, TestContext.Current.CancellationToken).Sections);
    }

    /// <summary>A 13 ft piece from a 20 ft bar leaves 7 ft less kerf and trim: a third of the bar. Two of 11 ft 11 in fill a 24 ft bar.</summary>
    [Theory]
    [InlineData(13, true)]
    [InlineData(11.9167, false)]
    public void Bars_that_end_on_the_rack_are_a_finding(double pieceFt, bool found)
    {
        TakeoffResult takeoff = TwoHouses.Takeoff with { Sheets = [], Marks = [new ShopMark("L-01", "tube", pieceFt * Ft, 0, 0, 10, 50, "")] };
        Assert.Equal(found, CutsStage.Run(Input, takeoff, TestContext.Current.CancellationToken).Report.Findings.Any(f => f.Code == "cuts/many-drops"));
    }

    [Fact]
    public void Nothing_to_cut_gives_no_list() =>
        Assert.Empty(CutsStage.Run(Input, TwoHouses.Takeoff with { Marks = [], Sheets = [] }, TestContext.Current.CancellationToken).Sections);

    [Fact]
    public void The_same_takeoff_gives_the_same_lists() =>
        Assert.Equal(Cuts, CutsStage.Run(Input, TwoHouses.Takeoff, TestContext.Current.CancellationToken));

    [Fact]
    public void A_cancelled_call_stops() => Assert.Throws<OperationCanceledException>(
        () => CutsStage.Run(Input, TwoHouses.Takeoff, new CancellationToken(canceled: true)));
}
