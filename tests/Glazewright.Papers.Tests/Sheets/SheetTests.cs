using Glazewright.Design.Contracts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Sheets;
using Glazewright.Papers.Tests.Sets;

namespace Glazewright.Papers.Tests.Sheets;

public class SheetTests
{
    private const double Ft = 0.3048;

    [Theory]
    [InlineData(UnitSystem.Us, 2, 104 * Ft)]
    [InlineData(UnitSystem.Metric, 2, 104 * Ft)]
    [InlineData(UnitSystem.Us, 1, 30 * Ft)]
    [InlineData(UnitSystem.Us, 10, 600 * Ft)]
    [InlineData(UnitSystem.Metric, 0, 10)]
    public void No_lettering_overlaps_on_any_sheet(UnitSystem units, int houses, double lengthM)
    {
        PaperSource source = SampleSource.Make(units, houses, lengthM: lengthM);
        List<Sheet> sheets = [RangePlan.Draw(source, "G-1"), .. source.Houses.Select(h => HouseSection.Draw(source, h, "A-1"))];
        sheets.Add(CoverSheet.Draw(source, "G-0"));
        sheets.Add(RangePlan.Picture(source, 178, 100));
        sheets.AddRange(source.Houses.Select(h => HouseSection.Picture(source.Job, h, 172, 104)));
        sheets.AddRange(source.Houses.Select(h => HousePlan.Draw(source, h, "A-2")));
        sheets.AddRange(source.Houses.Select(h => WallSheet.Air(source, h, "M-1")));
        sheets.AddRange(source.Houses.Select(h => WallSheet.Others(source, h, "S-1")));
        Assert.All(sheets, s => Assert.Empty(TextClashes.On(Plot.Of(s))));
        Assert.All(sheets.Where(s => s.Id.Contains("walls", StringComparison.Ordinal)), s => Assert.Empty(TextClashes.OnLines(Plot.Of(s))));
    }

    [Fact]
    public void Dimensions_on_the_section_are_the_house_s()
    {
        PaperSource source = SampleSource.Make();
        Page page = Plot.Of(HouseSection.Draw(source, source.Houses[0], "A-1"));
        string[] texts = [.. page.Words().Select(w => w.Text)];
        Assert.All((string[])["26'-0\"", "17'-0\"", "9'-0\"", "2'-6\"", "5'-0\"", "16'-0\"", "9'-3\"", "6:12", "9:12", "undated draft"], t => Assert.Contains(t, texts));
    }

    // The fan of the sample stands 0.6 m from the left and is 1.02 m wide, the door 9 ft from the left and 3 ft wide: both are among the running dimensions of end 2, and so are the corners.
    [Fact]
    public void The_fan_wall_has_its_fans_and_doors_where_they_are()
    {
        PaperSource source = SampleSource.Make(UnitSystem.Metric);
        Sheet sheet = WallSheet.Air(source, source.Houses[0], "M-1");
        string[] texts = [.. sheet.Views[1].Entities.OfType<Entity.Label>().Select(l => l.Text)];
        Assert.All((string[])["0", "600", "1620", "2743", "3658", "4300", "5010", "7925"], t => Assert.Contains(t, texts));
        Assert.Equal(2, sheet.Views[1].Entities.OfType<Entity.Arc>().Count());
        Assert.Contains("seen from inside", sheet.Views[0].Title, StringComparison.Ordinal);
    }

    // Bays of 8 ft; the double door of the left wall stands from 10 to 16 ft, in the second one.
    [Fact]
    public void Rods_cross_the_first_and_the_last_bay_without_an_opening()
    {
        PaperSource source = SampleSource.Make();
        Sheet sheet = WallSheet.Others(source, source.Houses[0], "S-1");
        foreach (View view in sheet.Views)
        {
            double[] ends = [.. view.Entities.OfType<Entity.Polyline>().Where(p => p.Source == "A/bracing").SelectMany(p => p.Points.Select(q => q.X)).Distinct().Order()];
            Assert.Equal(4, ends.Length);
            Assert.All(ends.Zip((double[])[0, 8 * Ft, 96 * Ft, 104 * Ft]), p => Assert.Equal(p.Second, p.First, 1e-9));
        }
    }

    [Fact]
    public void Running_dimensions_keep_their_pitch_and_move_no_more_than_they_must()
    {
        Assert.Equal([1, 10, 20], RunningDimensions.Spread([1, 10, 20], 4));
        Assert.Equal([8, 12, 16, 40], RunningDimensions.Spread([11, 12, 13, 40], 4));
    }

    // By hand for 42.0° N: noon altitude 90 − 42 − 23.44 = 24.56° in December and 71.44° in June; the section plane is 7° off the
    // meridian, so tan p = tan(altitude) / cos 7°.
    [Fact]
    public void Noon_sun_at_42_north()
    {
        IReadOnlyList<NoonSun> suns = NoonSun.Solstices(42, 97);
        Assert.Equal(24.56, suns[0].AltitudeDeg, 1e-9);
        Assert.Equal(71.44, suns[1].AltitudeDeg, 1e-9);
        Assert.Equal(Math.Atan(Math.Tan(24.56 * Math.PI / 180) / Math.Cos(7 * Math.PI / 180)), suns[0].ProfileDeg * Math.PI / 180, 1e-12);
        Assert.All(suns, s => Assert.True(s.FromLeft));
    }

    [Fact]
    public void South_of_the_equator_the_sun_comes_from_the_other_side_and_june_is_low()
    {
        IReadOnlyList<NoonSun> suns = NoonSun.Solstices(-42, 90);
        Assert.Equal(("21 Jun", false), (suns[0].Name, suns[0].FromLeft));
        Assert.Equal(24.56, suns[0].AltitudeDeg, 1e-9);
    }

    [Theory]
    [InlineData(80, 90, 1), InlineData(42, 0, 0), InlineData(0, 90, 2)]
    public void Suns_below_the_horizon_or_along_the_ridge_are_left_out(double latitudeDeg, double bearingDeg, int count) =>
        Assert.Equal(count, NoonSun.Solstices(latitudeDeg, bearingDeg).Count);

    // By hand: B's ridge stands 13'-9" high, 12'-6" from its south wall; A's wall is 20'-0" + 14'-0" from there. With the ridge
    // square to the meridian the ray falls (34 − 12.5) ft × tan 24.56° = 9.82 ft, so the shade reaches 3.93 ft up A's wall: 3'-11".
    [Fact]
    public void The_december_shade_of_the_front_house_reaches_the_height_worked_out_by_hand()
    {
        PaperSource source = SampleSource.Make();
        NoonSun sun = NoonSun.Solstices(42, 90)[0];
        RangeSection.Shade shade = Assert.Single(RangeSection.Shades(source.Form, sun));
        Assert.Equal("A", shade.OnHouse);
        Assert.Equal(3.925 * Ft, shade.To.Y, 0.005);
    }

    [Fact]
    public void Rays_stop_at_opaque_edges_and_cross_clear_ones()
    {
        // A box 4 m wide and 2 m high: clear left wall and roof, opaque right wall and floor. Sun from the left at 45°.
        SectionEdge[] ring =
        [
            new(new(0, 0), new(0, 2), true), new(new(0, 2), new(4, 2), true), new(new(4, 0), new(4, 2), false), new(new(4, 0), new(0, 0), false),
        ];
        foreach ((Spot from, Spot to) in SectionRays.Trace(ring, 45, true, 0.3, 0.5))
        {
            Assert.True(Math.Abs(to.Y) < 1e-9 || Math.Abs(to.X - 4) < 1e-9, $"{to}");
            Assert.Equal(-1, (to - from).Y / (to - from).X, 1e-9);
        }

        // From the right the wall is in the way: rays that meet it end there.
        Assert.Contains(SectionRays.Trace(ring, 20, false, 0.3, 0.5), r => Math.Abs(r.To.X - 4) < 1e-9);
    }

    [Fact]
    public void A_shade_picture_is_drawn_only_where_one_house_stands_behind_another()
    {
        Assert.Null(RangeSection.Picture(SampleSource.Make(houses: 1), 170, 60));
        Sheet picture = RangeSection.Picture(SampleSource.Make(), 170, 60)!;
        Assert.Empty(TextClashes.On(Plot.Of(picture)));
        Assert.Contains(Plot.Of(picture).Words(), w => w.Text == "14'-0\"");
    }
}
