using Glazewright.Design.Brief;
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
    [InlineData(UnitSystem.Us, 1, 17 * Ft, 2)]
    [InlineData(UnitSystem.Metric, 1, 900, 300)]
    [InlineData(UnitSystem.Us, 10, 600 * Ft, 60)]
    [InlineData(UnitSystem.Metric, 0, 10)]
    [InlineData(UnitSystem.Us, 2, 104 * Ft, 13, SheetPaper.Large)]
    [InlineData(UnitSystem.Metric, 2, 104 * Ft, 13, SheetPaper.Large)]
    [InlineData(UnitSystem.Metric, 1, 900, 300, SheetPaper.Large)]
    public void All_lettering_of_every_sheet_can_be_read(UnitSystem units, int houses, double lengthM, int bays = 13, SheetPaper paper = SheetPaper.Small)
    {
        PaperSource source = SampleSource.Make(units, houses, lengthM: lengthM, bays: bays);
        source = source with { Job = source.Job with { Sheets = paper } };

        // The sample's lot holds two houses of its own length.
        source = lengthM > 104 * Ft || houses > 2 ? source with { Job = source.Job with { Lot = source.Job.Lot with { SizeXM = 0, SizeYM = 0 } } } : source;
        foreach (Sheet sheet in DrawingSet.Of(source).Select(d => d.Sheet))
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
        Sheet[] sheets = [.. DrawingSet.Of(SampleSource.Make(houses: houses)).Select(d => d.Sheet)];
        Assert.Equal(sheets.Length, sheets.Select(s => s.Id).Distinct().Count());
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

    // Measured on paper: piers of two neighbouring frames stand a bay apart at the scale the title says, those of one frame the width of the house.
    [Theory]
    [InlineData(UnitSystem.Us), InlineData(UnitSystem.Metric)]
    public void Piers_on_paper_are_as_far_apart_as_the_scale_says(UnitSystem units)
    {
        PaperSource source = SampleSource.Make(units);
        Sheet sheet = FoundationPlan.Draw(source, source.Houses[0], "S-1");
        Mark.Curve[] piers = [.. Plot.Of(sheet).Groups.SelectMany(g => g.Marks).OfType<Mark.Curve>().Where(c => c.Source.EndsWith("column-left/pier", StringComparison.Ordinal)).OrderBy(c => c.Centre.X)];
        double denominator = sheet.Views[0].Scale.Denominator;
        Assert.Equal(14, piers.Length);
        Assert.All(piers.Zip(piers.Skip(1)), p => Assert.Equal(8 * Ft * 1000 / denominator, p.Second.Centre.X - p.First.Centre.X, 1e-6));
        Assert.All(piers, p => Assert.Equal(0.5 * 18 * 25.4 / denominator, p.RadiusMm, 1e-6));
    }

    // 28 columns and 2 × 3 end posts (26 ft in four parts of 6'-6"); each pier holds π/4 × 1.5² × 4.5 ft³ = 0.2945 yd³: 8.25 and 1.77 yd³.
    [Fact]
    public void The_schedule_of_piers_and_reactions_is_the_frame_s()
    {
        PaperSource source = SampleSource.Make();
        string[] texts = Texts(FoundationPlan.Draw(source, source.Houses[0], "S-1"));
        Assert.All((string[])["28", "6", "8.25 yd³", "1.77 yd³", "1'-6\"", "4'-6\""], t => Assert.Contains(t, texts));

        // 21,000 N, 4,100 N and 3,200 N over 4.44822 N/lb.
        Assert.All((string[])["4,721 lb", "922 lb", "719 lb"], t => Assert.Contains(t, texts));
    }

    [Theory]
    [InlineData(UnitSystem.Us), InlineData(UnitSystem.Metric)]
    public void Areas_of_coverings_are_the_form_s(UnitSystem units)
    {
        PaperSource source = SampleSource.Make(units);
        HouseResults house = source.Houses[0];
        string[] texts = [.. ((Sheet[])[CoverSheets.Roof(source, house, "A-4"), CoverSheets.Sides(source, house, "A-5"), CoverSheets.Ends(source, house, "A-6")]).SelectMany(Texts)];
        foreach (Glazewright.Design.Form.CoverZone zone in house.Form.Faces.Where(f => f.Name != Glazewright.Design.Form.FaceName.Floor).SelectMany(f => f.Zones))
        {
            Assert.Contains(Shown.Of(zone.NetM2, Unit.SquareMetre, units).Text, texts);
        }
    }

    // From outside, u of left wall and end 2 runs to the right, that of right wall and end 1 to the left.
    [Fact]
    public void Faces_seen_from_outside_turn_the_right_way()
    {
        Glazewright.Design.Form.BuildingForm b = SampleSource.Make().Form.Building("A");
        Assert.Equal(new Spot(0, 1), new FaceView(b, Glazewright.Design.Form.FaceName.Left).At(0, 1));
        Assert.Equal(b.LengthM, new FaceView(b, Glazewright.Design.Form.FaceName.Right).At(0, 1).X, 1e-9);
        Assert.Equal(b.WidthM, new FaceView(b, Glazewright.Design.Form.FaceName.End1).At(0, 1).X, 1e-9);
        Assert.Equal(new Spot(0, 1), new FaceView(b, Glazewright.Design.Form.FaceName.End2).At(0, 1));
    }

    [Fact]
    public void Every_door_is_on_the_schedule_and_on_an_elevation()
    {
        PaperSource source = SampleSource.Make();
        HouseResults house = source.Houses[0];
        string[] schedule = Texts(OpeningSchedule.Draw(source, house, "A-7"));
        string[] elevations = Texts(ElevationSheet.Draw(source, house, "A-3"));
        IReadOnlyDictionary<string, string> marks = OpeningSchedule.Marks(house);
        Assert.Equal(["D1", "D2"], ((string[])["door-1", "door-2"]).Select(d => marks[d]));
        Assert.All((string[])["D1", "D2"], m => Assert.True(schedule.Contains(m) && elevations.Contains(m), m));
        Assert.All((string[])["3'-0\" × 7'-0\"", "3'-2\" × 7'-1\"", "21 ft²", "9'-0\""], t => Assert.Contains(t, schedule));
    }

    // Each kind stands on the schedule at its true size over the floor, with its mark.
    [Theory]
    [InlineData(UnitSystem.Us), InlineData(UnitSystem.Metric)]
    public void Every_kind_of_opening_is_drawn_at_its_size(UnitSystem units)
    {
        PaperSource source = SampleSource.Make(units);
        HouseResults house = source.Houses[0];
        View pictures = OpeningSchedule.Draw(source, house, "A-7").Views.Single(v => v.Id == "opening-types");
        Entity.Polyline[] frames = [.. pictures.Entities.OfType<Entity.Polyline>().Where(p => p.Closed && p.Role is Role.Visible or Role.Equipment)];
        string[] marks = [.. OpeningSchedule.Marks(house).Values.Distinct()];
        Assert.Equal(marks.Length, frames.Length);
        Assert.All(marks, m => Assert.Contains(pictures.Entities.OfType<Entity.Label>(), l => l.Text.StartsWith(m + " ", StringComparison.Ordinal)));
        Box door = SitePlan.Bounds(frames.Single(f => f.Source == "door-1").Points);
        Glazewright.Design.Brief.Opening typed = house.Form.Faces.SelectMany(f => f.Openings).First(o => o.Opening.Id == "door-1").Opening;
        Assert.Equal(typed.WidthM, door.Width, 1e-9);
        Assert.Equal(typed.HeightM, door.Height, 1e-9);
        Assert.Equal(typed.SillM, door.Top, 1e-9);
    }

    // A throw of 15.2 m from a fan 3.25 m from end 1: the arrow's tip lies 18.45 m from it. The last fan out would blow past end 2: its arrow stops 0.4 m before.
    [Fact]
    public void Arrows_of_circulation_fans_are_as_long_as_their_throw()
    {
        PaperSource source = SampleSource.Make();
        HouseResults house = source.Houses[0];
        Entity.Polyline[] arrows = [.. PlantPlan.Draw(source, house, "M-2").Views[0].Entities.OfType<Entity.Polyline>().Where(p => p.Role == Role.Curve && p.Source.Contains("/circulation-", StringComparison.Ordinal))];
        Assert.Equal(6, arrows.Length);
        Assert.Equal(house.Form.Origin.XM + 3.25 + 15.2, arrows[0].Points[^1].X, 1e-9);
        Assert.Equal(house.Form.Origin.XM + house.Form.LengthM - 0.4, arrows[2].Points[^1].X, 1e-9);
        Assert.True(arrows[3].Points[^1].X < arrows[3].Points[0].X, "the second row blows back");
    }

    [Fact]
    public void Every_load_water_user_drain_and_point_of_a_house_is_on_its_service_sheets()
    {
        PaperSource source = SampleSource.Make();
        string electric = string.Join(' ', Texts(ServiceSheets.Electric(source, source.Houses[0], "E-2")));
        string piping = string.Join(' ', Texts(ServiceSheets.Piping(source, source.Houses[0], "P-1")));
        foreach (Glazewright.Design.Services.LoadLine line in source.Services.Electric.Where(l => l.House == "A"))
        {
            Assert.Contains(line.Label.Split(' ')[0], electric, StringComparison.Ordinal);
            Assert.Contains(line.RunningW.ToString("#,0", System.Globalization.CultureInfo.InvariantCulture), electric, StringComparison.Ordinal);
        }

        int water = source.Services.Water.Count(w => w.House == "A");
        int drains = source.Services.Drains.Count(d => d.House == "A");
        Assert.True(water > 0 && drains > 0);
        Assert.Contains($"W{water} ", piping, StringComparison.Ordinal);
        Assert.Contains($"D{drains} ", piping, StringComparison.Ordinal);
        Assert.All(source.Services.Points.Where(p => p.House == "A"), p => Assert.Contains(p.Label, piping, StringComparison.Ordinal));
    }

    [Fact]
    public void A_pipe_that_runs_off_a_house_s_piping_plan_is_named_where_it_does()
    {
        PaperSource source = SampleSource.Make();
        int named = 0;
        foreach (HouseResults house in source.Houses)
        {
            View plan = ServiceSheets.Piping(source, house, "P-2").Views[0];
            Box room = plan.WindowM;
            bool IsIn(Spot s) => s.X > room.Left && s.X < room.Right && s.Y > room.Top && s.Y < room.Bottom;
            string[] words = ["water", "fuel", "drain"];
            Entity.Label[] said = [.. plan.Entities.OfType<Entity.Label>().Where(l => words.Contains(l.Text))];
            Assert.All(said, l => Assert.True(IsIn(l.At), l.Text));
            Entity.Polyline[] off = [.. plan.Entities.OfType<Entity.Polyline>().Where(p => words.Contains(p.Layer) && p.Points.Any(IsIn) && !p.Points.All(IsIn))];
            Assert.All(off, p => Assert.Contains(said, l => l.Text == p.Layer));
            Assert.Equal(off.Length > 0, said.Length > 0);
            named += said.Length;
        }

        Assert.True(named > 0, "no pipe leaves a plan: the sample tests nothing");
    }

    // Pipe on the plan is as long as the lists say it is, less what rises; in metres of the view, so at any scale.
    [Theory]
    [InlineData(UnitSystem.Us), InlineData(UnitSystem.Metric)]
    public void Pipe_on_the_plan_is_as_long_as_the_lists_say(UnitSystem units)
    {
        PaperSource source = SampleSource.Make(units);
        Glazewright.Design.Services.ServicePlan plan = source.Services.Plan;
        View view = PipeSheet.Draw(source, "P-1").Views.Single();
        foreach ((string layer, Glazewright.Design.Services.UtilityKind kind) in new[] { ("water", Glazewright.Design.Services.UtilityKind.Water), ("fuel", Glazewright.Design.Services.UtilityKind.Fuel), ("drain", Glazewright.Design.Services.UtilityKind.Drain) })
        {
            double drawnM = view.Entities.OfType<Entity.Polyline>().Where(e => e.Layer == layer).Sum(e => e.Points.Zip(e.Points.Skip(1)).Sum(p => (p.Second - p.First).Length()));
            double risesM = plan.Points.Where(p => p.Utility == kind).Sum(p => p.At.ZM);
            Assert.True(drawnM > 5, layer);
            Assert.Equal(plan.Pieces.Where(p => p.Utility == kind).Sum(p => p.LengthM) - risesM, drawnM, 1e-6);
        }

        string csv = Glazewright.Papers.Exchange.ServicesCsv.Ways(source.Services, units);
        Assert.Equal(1 + plan.Entries.Count + plan.Points.Count + plan.Pieces.Count, csv.Trim().Split('\n').Length);
        Assert.All(plan.Points, p => Assert.Contains(p.Id, csv, StringComparison.Ordinal));
    }

    // The year's own numbers, by hand: 7,900 of 8,760 hours are 90 %; 110,000 kg of water over 998 kg/m³ and 3.785 L/gal are 29,117 gal.
    [Fact]
    public void The_year_sheet_says_what_the_year_says()
    {
        PaperSource source = SampleSource.Make();
        Sheet sheet = YearSheet.Draw(source, source.Houses[0], "M-4");
        string[] texts = Texts(sheet);
        Assert.All((string[])["90 %", "620 h", "240 h", "29,117 gal", "$6,200 to $8,400"], t => Assert.Contains(t, texts));
        Assert.Equal(5, sheet.Insets.Count);
    }

    private static string[] Texts(Sheet sheet) => [.. Plot.Of(sheet).Words().Select(w => w.Text)];
}
