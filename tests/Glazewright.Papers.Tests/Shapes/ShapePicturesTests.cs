using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Shape;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Shapes;
using Glazewright.Science.Shape;

namespace Glazewright.Papers.Tests.Shapes;

public class ShapePicturesTests
{
    private static readonly CoverChoice Clear = new("polycarbonate-16-triple", 0.93, 0.97, 0);
    private static readonly CoverChoice Panel = new("panel-76", 1, 1, 0.7);

    [Fact]
    public void A_trade_off_marks_the_choice_and_the_drawn_shape()
    {
        Sheet sheet = TradeOffPlot.Draw(Result(40), UnitSystem.Us, 180, 110);
        Assert.Empty(TextClashes.On(Plot.Of(sheet)));
        string[] words = [.. Plot.Of(sheet).Words().Select(w => w.Text)];
        Assert.Contains("chosen", words);
        Assert.Contains("as drawn", words);
        Assert.Contains("40 shapes that no other beats, light by the section: December", sheet.Description, StringComparison.Ordinal);
        Assert.Equal(40 + 3, sheet.OnPaper.OfType<Entity.Fill>().Count());
    }

    // One shape, all alike: no axis to speak of, and still a picture.
    [Fact]
    public void A_trade_off_of_one_shape_is_drawn()
    {
        ShapeResult one = Result(1);
        Sheet sheet = TradeOffPlot.Draw(one with { Best = one.Drawn }, UnitSystem.Metric, 180, 110);
        Assert.All(Plot.Of(sheet).Words(), w => Assert.True(double.IsFinite(w.Start.X) && double.IsFinite(w.Start.Y)));
    }

    // Closed form: 21 June, 42° N, ridge along east and west: 71.44°; the strip is 3 − 4.9/tan 71.44°, the reach with a clear far slope the whole wall.
    [Fact]
    public void A_section_says_what_the_noon_sun_does()
    {
        Sheet opaque = ShapeSection.Draw("s", "House A", Score(0, farSlope: false).Shape, Input(), 200, 128);
        Assert.Contains("Noon 21 Jun: sun 71.4° high; a strip of 1.35 m of floor along the north wall", opaque.Description, StringComparison.Ordinal);
        Sheet clear = ShapeSection.Draw("s", "House A", Score(0, farSlope: true).Shape, Input(), 200, 128);
        Assert.Contains("Noon 21 Jun: sun 71.4° high; it reaches 2.80 m up the north wall", clear.Description, StringComparison.Ordinal);
        Assert.Empty(TextClashes.On(Plot.Of(clear)));
        Sheet tropics = ShapeSection.Draw("s", "House A", Score(0, farSlope: true).Shape, Input() with { LatitudeDeg = 10 }, 200, 128);
        Assert.Contains("Noon 21 Jun: sun 76.6° high, on the north side", tropics.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void The_table_has_a_row_for_each_shape_once()
    {
        string[] rows = ShapeFiles.Csv(Result(12)).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(1 + 1 + 2 + 10, rows.Length);
        Assert.All(rows, r => Assert.Equal(rows[0].Count(c => c == ','), Quoted(r).Count(c => c == ',')));
    }

    // Commas inside quoted cells do not part cells.
    private static string Quoted(string row) => string.Concat(row.Split('"').Where((_, i) => i % 2 == 0));

    private static ShapeInput Input() => new(
        "A", UnitSystem.Metric, 42, 90, 0.2, 8, 30, new RoofProfile(2.3, 2.8, 5, 0.52, 0.7, SolvedRoofPart.None), 0.76,
        [new(FaceName.Left, Clear), new(FaceName.Right, Panel), new(FaceName.RoofLeft, Clear), new(FaceName.RoofRight, Panel), new(FaceName.End1, Clear), new(FaceName.End2, Clear)],
        Panel, 0.8, 2.018, 0.1, 0.08, 23.44, "21 June", ShapeWishes.Unsaid, 4.9, 2.3, 3);

    private static ShapeScore Score(int i, bool farSlope)
    {
        GableSection s = new(8, 2.3, 2.8, 5, 4.9 - (0.01 * i));
        return new ShapeScore(
            new ShapeCandidate(
                new RoofProfile(s.NearEaveM, s.FarEaveM, s.RidgeOffsetM, s.NearPitchRatio, s.FarPitchRatio, SolvedRoofPart.None), s,
                new ClearFaces(true, true, farSlope, false),
                [new(FaceName.Left, Clear), new(FaceName.Right, Panel), new(FaceName.RoofLeft, Clear), new(FaceName.RoofRight, farSlope ? Clear : Panel)],
                true, 90),
            8 - (0.05 * i), 0.8, 25 - (0.3 * i), 300 - (4 * i), 700, 0, ShapeWish.None, 0);
    }

    private static ShapeResult Result(int count)
    {
        ShapeCheck drawn = new(Score(count + 2, false) with { SummerMolPerM2Day = 24, WinterMolPerM2Day = 7 }, 40, null);
        EqList<ShapeScore> front = Enumerable.Range(0, count).Select(i => Score(i, true)).ToEqList();
        EqList<ShapeCheck> again = front.Take(2).Select(s => new ShapeCheck(s, 50, null)).ToEqList();
        return new ShapeResult("A", 11, 5, 11, 45, count, count, drawn, again[0], again, front, null, null, [], StageReport.Empty);
    }
}
