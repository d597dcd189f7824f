using CsCheck;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Tests.Charts;

public class ChartTests
{
    [Theory]
    [InlineData(0, 0x1A1F48), InlineData(0.125, 0x023B69), InlineData(0.5, 0x069787), InlineData(1, 0xFFF0BA), InlineData(7, 0xFFF0BA)]
    public void The_ramp_passes_through_its_stops(double fraction, int rgb) => Assert.Equal(rgb, Ramp.Sequential.At(fraction));

    [Fact]
    public void The_middle_of_a_departure_is_the_page() => Assert.Equal(0xF0F0F0, Ramp.Diverging.At(0.5));

    [Fact]
    public void Ticks_hold_the_values_in_round_steps() => Gen.Select(Gen.Double[-500, 500], Gen.Double[0.001, 5000]).Sample((low, span) =>
    {
        AxisTicks ticks = AxisTicks.Over(low, low + span);
        Assert.True(ticks.Low <= low + 1e-6 * span && ticks.High >= low + span - 1e-6 * span);
        Assert.InRange(ticks.Values().Count, 3, 9);
        Assert.Equal(ticks.Values().Count, ticks.Values().Select(ticks.Text).Distinct().Count());
    });

    // A carpet's outlines, filled even-odd, give back each cell: a brute-force look at every cell's middle.
    [Fact]
    public void Outlines_hold_exactly_the_marked_cells() =>
        Gen.Bool.Array2D[7, 5].Sample(cells =>
        {
            IReadOnlyList<IReadOnlyList<Spot>> rings = GridOutline.Of(7, 5, (c, r) => cells[c, r]);
            for (int c = 0; c < 7; c++)
            {
                for (int r = 0; r < 5; r++)
                {
                    Assert.Equal(cells[c, r], Inside(rings, new(c + 0.5, r + 0.5)));
                }
            }
        });

    [Fact]
    public void A_year_s_hours_are_counted_in_the_description()
    {
        double[] hours = [.. Enumerable.Range(0, 8760).Select(h => h % 24 is >= 8 and < 18 ? 30.0 : 10)];
        Sheet carpet = CarpetPlot.Draw("c", "Air", "°C", hours, [new(20, "cold", Paint.Of(Tone.Series1)), new(99, "warm", Paint.Of(Tone.Miss), true)], 180, 60);
        Assert.Contains("cold: 5110 h, warm: 3650 h", carpet.Description);
        Assert.Empty(TextClashes.On(Plot.Of(carpet)));
        Assert.Throws<ArgumentException>(() => CarpetPlot.Draw("c", "Air", "°C", new double[25], [], 180, 60));
    }

    [Fact]
    public void Charts_have_no_clashing_texts_at_extremes()
    {
        double[] nothing = new double[12];
        Sheet[] charts =
        [
            MonthBars.Draw("a", "None", "kWh", [new("one", nothing)], null, 170, 50),
            MonthBars.Draw("b", "Much", "kWh", [new("a", [.. nothing.Select((_, i) => i * 1e6)]), new("b", nothing), new("c", nothing)], (2e6, "limit"), 170, 50),
            StripChart.Draw("c", "Flat", "°F", [new("one", [5, 5, 5]), new("two", [5, double.NaN, 5]), new("three", [5, 5, 5])], (4, 6, "wanted"), [(0, "Mon"), (1, "Tue")], 170, 50),
            StripChart.Draw("d", "Empty", "°F", [], null, [], 170, 50),
            CarpetPlot.Draw("e", "Ramp", "°F", new double[8760], CarpetPlot.Even(Ramp.Sequential, -10, 10, 10), 170, 50),
        ];
        Assert.All(charts, c => Assert.Empty(TextClashes.On(Plot.Of(c))));
    }

    private static bool Inside(IReadOnlyList<IReadOnlyList<Spot>> rings, Spot p)
    {
        bool inside = false;
        foreach (IReadOnlyList<Spot> ring in rings)
        {
            for (int i = 0; i < ring.Count; i++)
            {
                Spot a = ring[i];
                Spot b = ring[(i + 1) % ring.Count];
                if ((a.Y > p.Y) != (b.Y > p.Y) && p.X < a.X + (p.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X))
                {
                    inside = !inside;
                }
            }
        }

        return inside;
    }
}
