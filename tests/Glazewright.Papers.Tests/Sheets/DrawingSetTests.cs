using Glazewright.Design.Contracts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Sheets;
using Glazewright.Papers.Tests.Sets;

namespace Glazewright.Papers.Tests.Sheets;

public class DrawingSetTests
{
    private const double Ft = 0.3048;

    [Theory]
    [InlineData(UnitSystem.Us, 2, 104 * Ft)]
    [InlineData(UnitSystem.Metric, 2, 104 * Ft)]
    [InlineData(UnitSystem.Us, 1, 17 * Ft)]
    [InlineData(UnitSystem.Metric, 1, 900)]
    [InlineData(UnitSystem.Us, 10, 600 * Ft)]
    [InlineData(UnitSystem.Metric, 0, 10)]
    public void All_lettering_of_every_sheet_can_be_read(UnitSystem units, int houses, double lengthM)
    {
        PaperSource source = SampleSource.Make(units, houses, lengthM: lengthM);

        // The sample's lot holds two houses of its own length.
        source = lengthM > 104 * Ft || houses > 2 ? source with { Job = source.Job with { Lot = source.Job.Lot with { SizeXM = 0, SizeYM = 0 } } } : source;
        foreach (Sheet sheet in DrawingSet.Of(source))
        {
            Page page = Plot.Of(sheet);
            TextClash[] clashes = [.. TextClashes.On(page), .. sheet.Id == "cover" ? [] : TextClashes.OnLines(page)];
            Assert.True(clashes is [], $"{sheet.Id}: {string.Join("; ", clashes.Take(8))}");
            Assert.All(sheet.Views, v => Assert.True(v.OnSheetMm().Bottom <= sheet.HeightMm - Furniture.MarginMm - Furniture.TitleHeightMm, sheet.Id));
        }
    }

    // The list names every other sheet once, by its number and title as its title block has them.
    [Theory]
    [InlineData(1), InlineData(2), InlineData(10)]
    public void The_list_of_drawings_is_true(int houses)
    {
        IReadOnlyList<Sheet> sheets = DrawingSet.Of(SampleSource.Make(houses: houses));
        Assert.Equal(sheets.Count, sheets.Select(s => s.Id).Distinct().Count());
        Sheet[] lists = [.. sheets.Where(s => s.Id == "list" || s.Id.StartsWith("list-", StringComparison.Ordinal))];
        string[] listed = [.. lists.SelectMany(l => l.OnPaper.OfType<Entity.Label>()).Select(l => l.Text)];
        foreach (Sheet sheet in sheets.Except(lists))
        {
            string number = Assert.Single(sheet.OnPaper.OfType<Entity.Label>(), l => l.CapHeightMm > 4.9).Text;
            Assert.Equal(1, listed.Count(t => t == number));
            Assert.Contains(sheet.Title, lists[0].Description, StringComparison.Ordinal);
        }
    }

    // By hand for 42° N, the sun's upper edge on the horizon: cos A = (sin 23.44° + sin 42° sin 0.8333°) / (cos 42° cos 0.8333°) = 0.5485, A = 56.7°; at the
    // equinox cos A = tan 42° tan 0.8333° = 0.01310, A = 89.2°.
    [Theory]
    [InlineData(42, 23.44, 56.7), InlineData(42, 0, 89.2), InlineData(0, 0, 90)]
    public void The_sun_rises_where_it_was_worked_out_by_hand(double latitudeDeg, double declinationDeg, double azimuthDeg) =>
        Assert.Equal(azimuthDeg, SunOnSite.RiseAzimuthDeg(latitudeDeg, declinationDeg)!.Value, 0.05);

    [Fact]
    public void In_the_polar_night_the_sun_does_not_rise() => Assert.Null(SunOnSite.RiseAzimuthDeg(75, -23.44));

    // Ridges bear 90°: plan-up is north. At noon with the sun 45° high in the south the ridge's shadow lies its own height north of it.
    [Fact]
    public void A_shadow_is_as_long_as_the_body_is_high_with_the_sun_at_45_degrees()
    {
        PaperSource source = SampleSource.Make();
        Glazewright.Design.Form.BuildingForm b = source.Form.Building("A");
        IReadOnlyList<Spot> ring = SunOnSite.Shadow(b, new Glazewright.Science.Sun.SunAngles(45, 180), 90);
        double eave = b.Origin.YM + b.WidthM + b.Roof.RightEaveM;
        double ridge = b.Origin.YM + b.Roof.RidgeOffsetM + b.Roof.RidgeM;
        Assert.Equal(Math.Max(eave, ridge), ring.Max(p => p.Y), 1e-9);
        Assert.Equal(b.Origin.YM, ring.Min(p => p.Y), 1e-9);
    }

    [Fact]
    public void Distances_on_the_site_are_those_of_the_houses()
    {
        View plan = SitePlan.Draw(SampleSource.Make(), "G-2").Views[0];
        double[] gaps = [.. plan.Entities.OfType<Entity.Dimensions>().Select(d => d.StationsM[1])];
        Assert.Contains(gaps, g => Math.Abs(g - 14 * Ft) < 1e-9);
        Assert.Contains(gaps, g => Math.Abs(g - (116.5 - 20 - 60) * Ft) < 1e-9);
    }
}
