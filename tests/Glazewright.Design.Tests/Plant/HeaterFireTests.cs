using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;
using Glazewright.Design.Services;
using Glazewright.Design.Takeoff;
using Glazewright.Design.Tests.Duty;

namespace Glazewright.Design.Tests.Plant;

/// <summary>How heaters that are sized burn.</summary>
public class HeaterFireTests
{
    private static PlantResult Run(HeaterFire fire, FuelKind? fuel = null)
    {
        Job job = DesignDay.With(TestJobs.OneHouse(), e => e with { HeaterFire = fire });
        job = fuel is { } other ? job with { Utilities = job.Utilities with { Fuel = other } } : job;
        return PlantStage.Run(PlantInput.From(job, "A"), FormStage.Run(FormInput.From(job)).Building("A"), DesignDay.Duty(job), CatalogueReader.Generic);
    }

    [Theory]
    [InlineData(HeaterFire.OnOff, 1)]
    [InlineData(HeaterFire.TwoStage, 0.5)]
    [InlineData(HeaterFire.Modulating, 0.25)]
    public void They_are_of_the_kind_that_was_asked_for(HeaterFire fire, double least)
    {
        PlantResult plant = Run(fire), usual = Run(HeaterFire.OnOff);
        Assert.All(plant.Heat!.Choice.Heaters, h => Assert.Equal(least, h.LeastW / h.OutputW, 1e-12));
        // The same sizes: what it burns at does not make more heat.
        Assert.Equal(usual.Heat!.Choice.Heaters.Sum(h => h.OutputW), plant.Heat.Choice.Heaters.Sum(h => h.OutputW), 1e-6);
    }

    [Fact]
    public void Without_fuel_they_are_electric_whatever_was_asked() =>
        Assert.All(Run(HeaterFire.Modulating, FuelKind.None).Heat!.Choice.Heaters, h => Assert.True(h.Electric && h.Part is null));

    [Fact]
    public void Valve_and_signal_are_priced_and_counted()
    {
        PlantResult plant = Run(HeaterFire.Modulating), two = Run(HeaterFire.TwoStage);
        Job job = TestJobs.OneHouse();
        BuildingForm form = FormStage.Run(FormInput.From(job)).Building("A");
        int units = plant.Heat!.Choice.Heaters.Count;
        static double Quantity(PlantResult p, BuildingForm form, string item)
        {
            LineBook book = new([], UnitSystem.Us);
            EquipmentTakeoff.Book(book, p, form);
            return book.Finish().Where(l => l.Item == item).Sum(l => l.Quantity);
        }

        Assert.Equal((units, 0.0), (Quantity(plant, form, "heating/modulating"), Quantity(plant, form, "heating/two-stage")));
        Assert.Equal((0.0, two.Heat!.Choice.Heaters.Count), (Quantity(two, form, "heating/modulating"), Quantity(two, form, "heating/two-stage")));
        // Low fires are stages of their own, and say so.
        EqList<ControlStage> stages = ProgramStage.Run(ProgramInput.From(job, "A"), two).Heating;
        Assert.Equal("heater-1-low", StageNames.Of(stages, "A")[0]);
        PointLine Heaters(PlantResult p) => ControlPoints.Of([p], [ProgramStage.Run(ProgramInput.From(job, "A"), p)]).Single(l => l.Label == "Heater");
        Assert.Equal((units, units), (Heaters(plant).DigitalOut, Heaters(plant).AnalogOut));
        Assert.Equal((2 * units, 0), (Heaters(two).DigitalOut, Heaters(two).AnalogOut));
    }

    [Fact]
    public void No_open_heater_turns_down_and_the_job_is_told()
    {
        string text = """
            { "glazewright": 1, "site": { "latitude": "42 deg", "longitude": "-88 deg", "elevation": "600 ft", "zone": "America/Chicago" },
              "houses": [ { "id": "A", "equipment": { "heaters": "size", "heaterFire": "modulating", "sealedCombustion": false } } ] }
            """;
        Assert.Contains(LoadedJob.Read(JobDocument.Read(text), null, [], out _, out _), f => f.Pointer == "/houses/0/equipment/heaterFire");
    }
}
