using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;
using Glazewright.Design.Takeoff;

namespace Glazewright.Design.Tests.Takeoff;

/// <summary>Equipment and service lines of the two test houses, counted by hand from the plant typed in <see cref="TwoHouses"/> and the rules of docs/methods.</summary>
public class EquipmentCountedByHand
{
    private const double Ft = 0.3048;

    [Theory]
    [InlineData("cooling/fan-36", 3)]
    [InlineData("cooling/fan-24", 3)]
    [InlineData("cooling/louver", 6.6)]
    // 14 ft by 6 ft.
    [InlineData("cooling/pad", 84 * Ft * Ft)]
    [InlineData("cooling/pad-pump", 1)]
    [InlineData("cooling/fog-nozzle", 24)]
    [InlineData("cooling/fog-pump-1000", 1)]
    [InlineData("cooling/filter-fan", 1)]
    [InlineData("heating/unit-heater", 3)]
    [InlineData("heating/kilowatt", (2 * 36.6) + 22)]
    // 13.2 kW over 70 W/m.
    [InlineData("heating/bench-pipe", 13_200.0 / 70)]
    // 26 ft by 104 ft and 8 %.
    [InlineData("curtain/cloth", 1.08 * 26 * 104 * Ft * Ft)]
    // 26 ft over 18 in is 17.3: 18 wires of 104 ft.
    [InlineData("curtain/wire", 18 * 104 * Ft)]
    [InlineData("curtain/drive", 1)]
    [InlineData("air/circulation-fan", 10)]
    // 4.5 kW over 320 W is 14.06.
    [InlineData("air/lamp", 15)]
    [InlineData("controls/box", 2)]
    // A: 4 fans, 2 heaters, 6 circulation fans and 4; B: 2, 1, 4 and 4.
    [InlineData("controls/point", 16 + 11)]
    // Each load a line: a disconnect each.
    [InlineData("electrical/disconnect", 27)]
    [InlineData("electrical/general", 5424 * Ft * Ft)]
    [InlineData("electrical/panel", 3)]
    // A wash room and a toilet.
    [InlineData("plumbing/fixture", 2)]
    // Two doors of two leaves and two of one in the houses; corridors two each and a goods door; head house one out and one for each of four rooms.
    [InlineData("doors/double", 2 + 4 + 1)]
    [InlineData("doors/single", 2 + 5)]
    // Link buildings: 144 and 2 · 32 ft of perimeter less what leans: each corridor 8 ft on both sides, the head house 2 · 8 ft; 1 ft² of edge.
    [InlineData("concrete/slab-edge", (144 - 16 + (2 * 16)) * Ft * Ft * Ft)]
    [InlineData("frame/link", 1280 * Ft * Ft)]
    public void Quantity_is_what_the_plant_and_the_pencil_give(string item, double expected) =>
        Assert.Equal(expected, TwoHouses.Takeoff.Lines.Where(l => l.Item == item).Sum(l => l.Quantity), tolerance: 1e-6 * Math.Max(1, expected));

    [Fact]
    public void Electric_heat_and_no_fuel_need_no_gas_line() => Assert.DoesNotContain(
        TakeoffStage.Run(TwoHouses.Input with { Fuel = FuelKind.None }, TwoHouses.Form, TwoHouses.Body, TwoHouses.Plants, [], TwoHouses.Served(FuelKind.None)).Lines,
        line => line.Item == "plumbing/gas");

    [Theory]
    [InlineData(0.4e6, "cooling/mist-station")]
    [InlineData(6.9e6, "cooling/fog-pump-1000")]
    [InlineData(20.7e6, "cooling/fog-pump-3000")]
    public void The_pump_is_of_the_pressure_class(double pressurePa, string item)
    {
        EqList<PlantResult> plants = TwoHouses.Plants.Select(p => p.Fog is { } fog
            ? p with { Fog = new Answer<FogPlant>.Met(fog.Choice with { PressurePa = pressurePa }, 0) }
            : p).ToEqList();
        Assert.Contains(TakeoffStage.Run(TwoHouses.Input, TwoHouses.Form, TwoHouses.Body, plants, [], TwoHouses.Services).Lines, line => line.Item == item);
    }

    [Fact]
    public void A_second_curtain_layer_doubles_cloth_wire_and_drives()
    {
        EqList<PlantResult> plants = TwoHouses.Plants.Select(p => p with { Curtain = p.Curtain is { } c ? c with { Layers = 2 } : null }).ToEqList();
        TakeoffResult two = TakeoffStage.Run(TwoHouses.Input, TwoHouses.Form, TwoHouses.Body, plants, [], TwoHouses.Services);
        foreach (TakeoffLine line in TwoHouses.Takeoff.Lines.Where(l => l.System == ScopeSystem.Curtain))
        {
            Assert.Equal(2 * line.Quantity, two.Lines.Single(l => l.Item == line.Item).Quantity, tolerance: 1e-9);
        }
    }

    /// <summary>A direct vent of 4 m with one elbow, a gravity vent of 3 m and a boiler of unknown place: 20 ft and two elbows.</summary>
    [Theory]
    [InlineData("heating/vent-pipe-4", 4)]
    [InlineData("heating/vent-pipe-5", 20 * Ft)]
    [InlineData("heating/air-pipe", 4 + (20 * Ft))]
    [InlineData("heating/vent-elbow", 2 + 4)]
    [InlineData("heating/vent-terminal", 2)]
    [InlineData("heating/b-vent-6", 3)]
    [InlineData("heating/vent-cap", 1)]
    public void Vents_are_counted_by_the_pipe(string item, double expected)
    {
        FlueLine Line(string id, bool direct, int inches, FaceName? face, double runM, int elbows) =>
            new(id, 1, direct, false, inches * 0.0254, direct ? inches * 0.0254 : 0, face, 1, 2, runM, elbows, runM, 0, 0, 0, 0, "", 0);
        var layout = new LayoutResult("A", [], 0, StageReport.Empty)
        {
            Flues =
            [
                Line("A/heater-1", true, 4, FaceName.Left, 4, 1),
                Line("A/heater-2", true, 4, null, 0, 0),
                Line("A/heater-3", false, 6, FaceName.RoofLeft, 3, 0) with { Gravity = new GravityVent(1, 3, 1, 3, 2, 5, 0, 101_325) },
                Line("A/boiler", true, 5, null, 0, 0) with { Unplaced = true },
            ],
        };
        TakeoffResult takeoff = TakeoffStage.Run(TwoHouses.Input, TwoHouses.Form, TwoHouses.Body, [], [layout], TwoHouses.Services);
        Assert.Equal(expected, takeoff.Lines.Where(l => l.Item == item).Sum(l => l.Quantity), 9);
    }
}
