using CsCheck;
using Glazewright.Cutting.Bars;
using Glazewright.Cutting.Sheets;

namespace Glazewright.Cutting.Tests.Sheets;

public class SheetLayoutTests
{
    private static readonly SheetRules Sheet = new(48, TrimPlace.Last, 6, 0, MayRip: true, RipKerfTicks: 0);

    private static SheetFace Rectangle(int width, int length, params FaceOpening[] openings) =>
        new("r", [new(0, 0), new(width, 0), new(width, length), new(0, length)], openings);

    [Fact]
    public void A_slope_of_twenty_six_modules_takes_twenty_six_whole_sheets()
    {
        IReadOnlyList<SheetPiece> pieces = SheetLayout.Place(Rectangle(26 * 48, 228), Sheet);
        Assert.Equal(26, pieces.Count);
        Assert.All(pieces, piece => Assert.Equal((48, 228, false, false), (piece.WidthTicks, piece.LengthTicks, piece.IsTrimmed, piece.IsShaped)));
    }

    [Theory]
    [InlineData(TrimPlace.Last, 100, new[] { 48, 26, 26 })]
    [InlineData(TrimPlace.Last, 110, new[] { 48, 48, 14 })]
    [InlineData(TrimPlace.Last, 20, new[] { 20 })]
    [InlineData(TrimPlace.Last, 3, new[] { 3 })]
    [InlineData(TrimPlace.BothEdges, 110, new[] { 7, 48, 48, 7 })]
    [InlineData(TrimPlace.BothEdges, 101, new[] { 27, 48, 26 })]
    [InlineData(TrimPlace.BothEdges, 96, new[] { 48, 48 })]
    public void The_trim_sheet_goes_to_the_edge_and_is_never_a_sliver(TrimPlace trim, int span, int[] widths) =>
        Assert.Equal(widths, SheetLayout.Place(Rectangle(span, 100), Sheet with { Trim = trim }).Select(piece => piece.WidthTicks));

    [Fact]
    public void A_gable_steps_up_to_the_ridge_and_down_again()
    {
        // Ridge off centre over the joint at 96; both rakes 1 in 2 and 1 in 1: lengths are read off the triangle.
        SheetFace gable = new("g", [new(0, 90), new(0, 0), new(144, 0), new(144, 90), new(96, 138)], []);
        Assert.Equal([114, 138, 138], SheetLayout.Place(gable, Sheet).Select(piece => piece.LengthTicks));
        Assert.All(SheetLayout.Place(gable, Sheet), piece => Assert.True(piece.IsShaped));
    }

    [Fact]
    public void An_opening_saves_length_only_where_it_crosses_the_whole_sheet()
    {
        IReadOnlyList<SheetPiece> pieces = SheetLayout.Place(Rectangle(144, 120, new FaceOpening(40, 100, 30, 80)), Sheet);
        Assert.Equal([(0L, 120, true), (0L, 30, false), (80L, 40, false), (0L, 120, true)], pieces.Select(p => (p.FromAlongTicks, p.LengthTicks, p.IsShaped)));
    }

    [Fact]
    public void An_opening_over_the_whole_face_leaves_nothing() =>
        Assert.Empty(SheetLayout.Place(Rectangle(96, 50, new FaceOpening(0, 96, 0, 50)), Sheet));

    [Fact]
    public void Trims_of_one_length_come_out_of_one_sheet_but_not_out_of_one_panel()
    {
        SheetPiece[] trims = [.. Enumerable.Range(0, 4).Select(i => new SheetPiece("t" + i, 0, 22, 0, 100, true, false))];
        Assert.Equal(2, Assert.Single(SheetOrder.Lengths(trims, Sheet)).Count);
        Assert.Equal(4, Assert.Single(SheetOrder.Lengths(trims, Sheet with { RipKerfTicks = 5 })).Count);
        Assert.Equal(4, Assert.Single(SheetOrder.Lengths(trims, Sheet with { MayRip = false })).Count);
    }

    [Fact]
    public void Sheets_of_a_slope_are_cut_by_the_same_engine_as_bars()
    {
        IReadOnlyList<CutDemand> lengths = SheetOrder.Lengths(SheetLayout.Place(Rectangle(5 * 48, 228), Sheet), Sheet);
        CutPlan plan = BarCutter.Cut(new CutProblem(
            lengths, [new("20 ft", 240, 900), new("40 ft", 480, 1700)], new(KerfRule.BetweenPieces, 0, 0, 24), CutCosts.MetalOnly)).Plan;
        Assert.Equal(2 * 1700 + 900, plan.StockCents);
        Assert.True(plan.IsProvedBest);
    }

    // A single tick left over can't be halved: a random test had found a sheet without width.
    [Fact]
    public void A_rest_of_one_tick_on_both_edges_leaves_no_empty_sheet()
    {
        IReadOnlyList<SheetPiece> pieces = SheetLayout.Place(Rectangle(738, 56), Sheet with { CoverTicks = 11, MinTrimTicks = 0, Trim = TrimPlace.BothEdges });
        Assert.All(pieces, p => Assert.InRange(p.WidthTicks, 1, 11));
        Assert.Equal(738, pieces.Sum(p => p.WidthTicks));
    }

    [Fact]
    public void Placed_sheets_tile_any_rectangle_without_openings() =>
        Gen.Select(Gen.Int[1, 3000], Gen.Int[1, 500], Gen.Int[1, 60], Gen.Int[0, 60], Gen.Bool).Sample((span, length, cover, least, both) =>
        {
            SheetRules rules = Sheet with { CoverTicks = cover, MinTrimTicks = Math.Min(least, cover), Trim = both ? TrimPlace.BothEdges : TrimPlace.Last };
            IReadOnlyList<SheetPiece> pieces = SheetLayout.Place(Rectangle(span, length), rules);
            long at = 0;
            foreach (SheetPiece piece in pieces)
            {
                Assert.Equal(at, piece.FromAcrossTicks);
                Assert.InRange(piece.WidthTicks, 1, cover);
                Assert.Equal(length, piece.LengthTicks);
                at += piece.WidthTicks;
            }

            Assert.Equal(span, at);
            Assert.Equal((span + cover - 1) / cover, pieces.Count(piece => !piece.IsTrimmed) + Ceiling(pieces.Where(piece => piece.IsTrimmed).Sum(piece => piece.WidthTicks), cover));
        });

    private static int Ceiling(int a, int b) => (a + b - 1) / b;
}
