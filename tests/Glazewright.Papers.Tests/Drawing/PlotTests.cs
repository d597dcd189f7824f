using CsCheck;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Tests.Drawing;

public class PlotTests
{
    [Fact]
    public void A_metre_at_one_to_fifty_is_twenty_millimetres_with_y_up()
    {
        View view = new("v", "v", new DrawingScale(50, "1:50"), new Box(-1, -2, 10, 6), new(30, 40), [
            new Entity.Polyline([new(0, 0), new(3, 1)]),
        ]);
        Page page = Plot.Of(new Sheet("s", "s", "s", 300, 200, [view], []));
        Mark.Lines line = Assert.IsType<Mark.Lines>(Assert.Single(page.Groups[0].Marks));
        Assert.Equal(new Spot(50, 120), line.Points[0]);
        Assert.Equal(new Spot(110, 100), line.Points[1]);
        Assert.Equal(new Box(30, 40, 200, 120), page.Groups[0].ClipMm);
    }

    [Fact]
    public void Dimension_texts_are_the_distances()
    {
        Page page = Plot.Of(Samples.Section());
        string[] texts = [.. page.Groups[0].Marks.OfType<Mark.Words>().Select(w => w.Text)];
        Assert.All((string[])["5000", "3000", "2000"], t => Assert.Contains(t, texts));
    }

    // Whatever the stations, a chain's texts stay apart from each other and say what they measure.
    [Fact]
    public void Texts_of_a_chain_never_overlap() =>
        Gen.Select(Gen.Double[0.05, 3].List[1, 12], Gen.Int[0, 3], Gen.Bool).Sample((steps, quarter, flipped) =>
        {
            List<double> stations = [0];
            foreach (double step in steps)
            {
                stations.Add(stations[^1] + step);
            }

            Spot direction = quarter switch { 0 => new(1, 0), 1 => new(0, 1), 2 => new(-1, 0), _ => new(0.6, 0.8) };
            Entity chain = new Entity.Dimensions(new(0, 0), direction, stations, flipped ? -10 : 10, LengthStyle.FeetInches);
            View view = new("v", "v", new DrawingScale(48, ""), new Box(-60, -60, 120, 120), new(0, 0), [chain]);
            Page page = Plot.Of(new Sheet("s", "s", "s", 3000, 3000, [view], []));
            Assert.Empty(TextClashes.On(page));
            Assert.Equal(steps.Count, page.Words().Count());
            Assert.All(page.Words(), w => Assert.InRange(w.AngleDeg, -90, 90.01));
        });

    [Fact]
    public void The_sample_sheet_has_no_clashes() => Assert.Empty(TextClashes.On(Plot.Of(Samples.Section())));

    [Fact]
    public void Overlapping_and_stray_texts_are_found()
    {
        Entity.Label at(double x, double y, string text) => new(new(x, y), text);
        Sheet sheet = new("s", "s", "s", 100, 100, [], [at(10, 10, "first"), at(12, 11, "second"), at(95, 50, "runs off"), at(10, 30, "apart")]);
        IReadOnlyList<TextClash> clashes = TextClashes.On(Plot.Of(sheet));
        Assert.Equal([new("runs off", ""), new("first", "second")], clashes);
    }

    [Fact]
    public void Turned_texts_that_only_share_their_upright_boxes_do_not_clash()
    {
        Entity.Label turned(double x, double y) => new(new(x, y), "a slanted text") { AngleDeg = 45 };
        Assert.Empty(TextClashes.On(Plot.Of(new Sheet("s", "s", "s", 100, 100, [], [turned(10, 60), turned(15, 60)]))));
        Assert.Single(TextClashes.On(Plot.Of(new Sheet("s", "s", "s", 100, 100, [], [turned(10, 60), turned(12, 60)]))));
    }

    [Fact]
    public void Small_lettering_and_strange_numbers_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Plot.Of(new Sheet("s", "s", "s", 9, 9, [], [new Entity.Label(new(1, 1), "x", 2.4)])));
        Assert.Throws<ArgumentException>(() => Plot.Of(new Sheet("s", "s", "s", 9, 9, [], [new Entity.Polyline([new(1, double.NaN), new(0, 0)])])));
    }

    [Fact]
    public void Undated_says_so_and_a_date_replaces_it()
    {
        TitleText title = new("Job", "", "Sheet", "1", "", null, "", []);
        Assert.Contains("undated draft", Texts(title));
        Assert.DoesNotContain("undated draft", Texts(title with { Date = "2031-02-03" }));
        static IEnumerable<string> Texts(TitleText t) => Furniture.Border(SheetSize.A3, t).OfType<Entity.Label>().Select(l => l.Text);
    }

    [Fact]
    public void The_largest_scale_that_fits_is_chosen()
    {
        Assert.Equal(48, DrawingScale.Choose(8, 5, 200, 150, LengthStyle.FeetInches).Denominator);
        Assert.Equal(50, DrawingScale.Choose(8, 5, 200, 150, LengthStyle.Millimetres).Denominator);
        Assert.Equal(10_000, DrawingScale.Choose(1e6, 5, 200, 150, LengthStyle.Millimetres).Denominator);
    }

    // A line through a text is a clash; a patch of paper clears it, but not when it hides equipment; a number may stand on equipment.
    [Fact]
    public void Lines_through_lettering_are_found_and_patches_told_apart()
    {
        IReadOnlyList<TextClash> On(Role role, bool masked, string text, double yMm = 49)
        {
            Entity line = new Entity.Polyline([new(10, yMm), new(90, yMm)]) { Role = role, Source = "thing" };
            Entity label = new Entity.Label(new(30, 50), text) { Masked = masked };
            return TextClashes.OnLines(Plot.Of(new Sheet("s", "s", "s", 100, 100, [], [line, label])));
        }

        Assert.Single(On(Role.Dimension, false, "6'-0\""));
        Assert.Empty(On(Role.Dimension, true, "6'-0\""));
        Assert.Empty(On(Role.Dimension, false, "6'-0\"", 55));
        Assert.Single(On(Role.Equipment, true, "triple-wall"));
        Assert.Empty(On(Role.Equipment, true, "12"));
        Assert.Single(On(Role.Equipment, false, "12"));
    }
}
