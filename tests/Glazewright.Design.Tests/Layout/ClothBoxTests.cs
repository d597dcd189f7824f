using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;
using Glazewright.Design.Takeoff;
using Glazewright.Design.Tests.Duty;

namespace Glazewright.Design.Tests.Layout;

/// <summary>The box of insect cloth before the intake, and a wet wall that finds no place.</summary>
public class ClothBoxTests
{
    private static (PlantResult Plant, LayoutResult Layout, BuildingForm House) Run(Job job)
    {
        FormResult form = FormStage.Run(FormInput.From(job));
        PlantResult plant = PlantStage.Run(PlantInput.From(job, "A"), form.Building("A"), DesignDay.Duty(job), CatalogueReader.Generic);
        return (plant, LayoutStage.Run(LayoutInput.From(job, "A"), form, plant), form.Building("A"));
    }

    [Fact]
    public void Front_sides_and_top_are_the_cloth_that_is_counted()
    {
        Job job = DesignDay.With(TestJobs.OneHouse(), e => e with { InsectScreen = "thrips", InsectScreenPorosityFraction = 0.3 });
        (PlantResult plant, LayoutResult layout, BuildingForm house) = Run(job);
        Assert.True(plant.InsectClothM2 > 0);
        PlacedItem box = layout.Placed.Single(p => p.Kind == PlacedKind.ClothBox);
        (double deepM, double wideM) = box.Face is FaceName.End1 or FaceName.End2 ? (box.Size.XM, box.Size.YM) : (box.Size.YM, box.Size.XM);
        Assert.True(wideM * box.Size.ZM + deepM * (2 * box.Size.ZM + wideM) >= plant.InsectClothM2 - 1e-6);
        foreach (PlacedItem p in layout.Placed.Where(p => p.Face == box.Face && p.Kind is PlacedKind.Louver or PlacedKind.WetWall or PlacedKind.IntakeBox))
        {
            Assert.True(p.Corner.YM >= box.Corner.YM && p.Corner.YM + p.Size.YM <= box.Corner.YM + box.Size.YM, p.Id + " stands out of the box");
            Assert.True(p.Corner.ZM + p.Size.ZM <= box.Corner.ZM + box.Size.ZM, p.Id + " stands out of the box");
        }

        Assert.DoesNotContain(layout.Placed, p => p.Kind == PlacedKind.ClothBox && p.CutsCover);
        Assert.DoesNotContain(Run(TestJobs.OneHouse()).Layout.Placed, p => p.Kind == PlacedKind.ClothBox);
        _ = house;
    }

    [Fact]
    public void A_wet_wall_without_a_place_is_not_bought()
    {
        Job job = DesignDay.With(TestJobs.OneHouse(), e => e with { WetWall = true, WetWallWidthM = 30, WetWallHeightM = 1.8 });
        (PlantResult plant, LayoutResult layout, BuildingForm house) = Run(job);
        Assert.Contains(layout.Report.Findings, f => f.Code == "layout/wall-crowded" && f.Id == "A/wet-wall");
        Assert.DoesNotContain(layout.Placed, p => p.Kind == PlacedKind.WetWall);
        var book = new LineBook([], UnitSystem.Us);
        EquipmentTakeoff.Book(book, plant, house, layout);
        Assert.DoesNotContain(book.Finish(), l => l.Item.StartsWith("cooling/pad", StringComparison.Ordinal));
        var chosen = new LineBook([], UnitSystem.Us);
        EquipmentTakeoff.Book(chosen, plant, house);
        Assert.Contains(chosen.Finish(), l => l.Item == "cooling/pad");
    }
}
