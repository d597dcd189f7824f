using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Takeoff;

namespace Glazewright.Design.Tests.Takeoff;

public class TakeoffTests
{
    private const double Ft = 0.3048;

    [Fact]
    public void Every_member_is_in_exactly_one_mark()
    {
        Assert.Equal(TwoHouses.Body.Members.Count, TwoHouses.Takeoff.Marks.Sum(mark => mark.Count));
        Assert.Equal(TwoHouses.Takeoff.Marks.Count, TwoHouses.Takeoff.Marks.Select(mark => mark.Mark).Distinct().Count());
        Assert.Equal(
            TwoHouses.Body.Members.Sum(m => m.CutLengthM * m.MassPerM), TwoHouses.Takeoff.Marks.Sum(m => m.Count * m.MassEachKg), tolerance: 1.0);
    }

    [Fact]
    public void Equal_left_eaves_give_one_column_mark_for_both_houses()
    {
        ShopMark shared = Assert.Single(TwoHouses.Takeoff.Marks, mark => mark.Where.Contains("A column-left × 14", StringComparison.Ordinal));
        Assert.Equal(24, shared.Count);
        Assert.Contains("B column-left × 10", shared.Where, StringComparison.Ordinal);
    }

    [Fact]
    public void Cut_lengths_are_whole_sixteenths() => Assert.All(TwoHouses.Takeoff.Marks, mark =>
        Assert.Equal(Math.Round(mark.LengthM / 0.0254 * 16), mark.LengthM / 0.0254 * 16, tolerance: 1e-6));

    /// <summary>Counted by hand on the drawing: 104 ft of roof at 4 ft are 26 sheets; slope √(17² + 8.5²) = 19.007 ft up to the next 1/16 in, and 1 in to trim.</summary>
    [Fact]
    public void South_roof_of_the_first_house_takes_26_sheets()
    {
        SheetPiece roof = Assert.Single(TwoHouses.Takeoff.Sheets, sheet => sheet.Zone == "A/roof-left/cover");
        Assert.Equal(26, roof.Count);
        Assert.Equal((Math.Sqrt((17 * 17) + (8.5 * 8.5)) * Ft) + 0.0254, roof.LengthM, tolerance: 0.0016);
        Assert.Equal(4 * Ft, roof.TrimmedWidthM, tolerance: 1e-9);
    }

    /// <summary>By hand: 28 columns and 3 posts at each end of A, 20 and 2 of B; each π/4 · 1.5² · 4.5 ft³ = 7.952 ft³, and 8 % more to buy.</summary>
    [Fact]
    public void Piers_are_one_a_column_and_end_post()
    {
        Assert.Equal(58, Quantity("concrete/pier"), tolerance: 1e-9);
        Assert.Equal(58 * 7.952 * 0.0283168 * 1.08, Quantity("concrete/pier-concrete"), tolerance: 0.01);
        Assert.All(
            TwoHouses.Takeoff.Lines.Where(l => l.Item.StartsWith("concrete/pier", StringComparison.Ordinal)),
            line => Assert.Contains("foundation not checked", line.Label, StringComparison.Ordinal));
    }

    [Fact]
    public void Covering_of_each_zone_is_at_least_its_net_area()
    {
        foreach (BuildingForm building in TwoHouses.Form.Buildings)
        {
            foreach (CoverZone zone in building.Faces.SelectMany(f => f.Zones))
            {
                double placedM2 = TwoHouses.Takeoff.Sheets.Where(s => s.Zone == zone.Id).Sum(s => s.Count * s.LengthM * s.TrimmedWidthM);
                Assert.True(placedM2 >= zone.NetM2 - 0.02, $"{zone.Id}: {placedM2} m² placed, {zone.NetM2} m² net");
            }
        }
    }

    [Fact]
    public void A_wet_wall_as_high_as_the_sheets_takes_them_away()
    {
        PlacedItem pad = new("A/wet-wall", PlacedKind.WetWall, "wet wall", new Point3(0, 0, 0.762), new Point3(4 * 4 * Ft, 0, 5 * Ft), FaceName.Left);
        TakeoffResult with = TakeoffStage.Run(
            TwoHouses.Input, TwoHouses.Form, TwoHouses.Body, TwoHouses.Plants, [new LayoutResult("A", [pad], 0, StageReport.Empty)], TwoHouses.Services);
        Assert.Equal(Sheets(TwoHouses.Takeoff) - 4, Sheets(with));

        static int Sheets(TakeoffResult takeoff) => takeoff.Sheets.Where(s => s.Zone == "A/left/cover").Sum(s => s.Count);
    }

    [Fact]
    public void Scope_is_stamped_on_every_line_of_the_system()
    {
        TakeoffResult owner = TakeoffStage.Run(
            TwoHouses.Input with { Scope = [new ScopeLine(ScopeSystem.Benches, ScopeBy.Owner, "")] }, TwoHouses.Form, TwoHouses.Body, TwoHouses.Plants, [], TwoHouses.Services);
        Assert.All(owner.Lines, line => Assert.Equal(line.System == ScopeSystem.Benches ? ScopeBy.Owner : ScopeBy.Us, line.By));
        Assert.Contains(owner.Report.Findings, finding => finding.Code == "takeoff/not-ours");
    }

    [Fact]
    public void Turning_the_panel_slope_to_sheet_moves_its_area_from_panels_to_sheets()
    {
        HouseShape clear = TwoHouses.A with
        {
            Coverings = TwoHouses.A.Coverings.Select(c => c.Face == FaceName.RoofRight ? c with { Cover = TwoHouses.A.Coverings.First(o => o.Face == FaceName.RoofLeft).Cover } : c).ToEqList(),
        };
        FormResult form = FormStage.Run(new FormInput([clear, TwoHouses.B], TwoHouses.Links, 97, 42, new Lot(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, "")));
        TakeoffResult takeoff = TakeoffStage.Run(TwoHouses.Input, form, TwoHouses.Body, TwoHouses.Plants, [], TwoHouses.Services);
        double roofM2 = form.Building("A").Face(FaceName.RoofRight).AreaM2;
        Assert.Equal(roofM2, Sheet(takeoff) - Sheet(TwoHouses.Takeoff), tolerance: 1.0);

        static double Sheet(TakeoffResult t) => t.Lines.Single(l => l.Item == LineItems.Sheet("polycarbonate-16-triple")).Quantity;
    }

    [Fact]
    public void Nothing_built_needs_nothing()
    {
        FormResult empty = FormStage.Run(new FormInput([], [], 90, 42, new Lot(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, "")));
        TakeoffResult takeoff = TakeoffStage.Run(
            new TakeoffInput(UnitSystem.Us, [], [], [], FuelKind.None, 0), empty, new Design.Body.BodyResult([], StageReport.Empty), [], [], Design.Services.ServicesResult.None);
        Assert.Empty(takeoff.Marks);
        Assert.Empty(takeoff.Sheets);
        Assert.DoesNotContain(takeoff.Lines, line => line.System is ScopeSystem.Frame or ScopeSystem.Glazing or ScopeSystem.General);
    }

    [Fact]
    public void A_metric_job_is_measured_in_millimetres_and_covered_by_metric_modules()
    {
        TakeoffResult metric = TakeoffStage.Run(TwoHouses.Input with { Units = UnitSystem.Metric }, TwoHouses.Form, TwoHouses.Body, TwoHouses.Plants, [], TwoHouses.Services);
        Assert.All(metric.Marks, mark => Assert.Equal(Math.Round(mark.LengthM * 1000), mark.LengthM * 1000, tolerance: 1e-6));
        Assert.All(metric.Sheets.Where(s => s.CoverKind.StartsWith("poly", StringComparison.Ordinal)), sheet => Assert.Equal(1.2, sheet.ModuleM));
    }

    private static double Quantity(string item) => TwoHouses.Takeoff.Lines.Where(line => line.Item == item).Sum(line => line.Quantity);
}
