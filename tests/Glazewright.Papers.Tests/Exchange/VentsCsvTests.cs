using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Papers.Exchange;

namespace Glazewright.Papers.Tests.Exchange;

public class VentsCsvTests
{
    private static readonly FlueLine Line = new(
        "A/heater-1", 29_307.107, true, false, 0.1016, 0.1016, FaceName.Left, 3.048, 1.8288, 3.048, 2, 6.096, 9.144, 0.0635, 0.9144, 0.3048, "door", 1.524);

    private static string[] Rows(FlueLine line, UnitSystem units) =>
        ServicesCsv.Vents([new LayoutResult("A", [], 0, StageReport.Empty) { Flues = [line] }], units).Split('\n', StringSplitOptions.RemoveEmptyEntries);

    [Fact]
    public void A_row_a_heater_in_feet_and_inches() =>
        Assert.Equal("A,A/heater-1,100.0,direct vent,4,4,left,10.00,6.00,3.00,10.0,2,20.0,30,to the terminal,2.5,1.00,door,5.0,,,", Rows(Line, UnitSystem.Us)[1]);

    [Fact]
    public void And_in_metres() =>
        Assert.Equal("A,A/heater-1,29.3,direct vent,102,102,left,3.05,1.83,0.91,3.0,2,6.1,9,to the terminal,63.5,0.30,door,1.5,,,", Rows(Line, UnitSystem.Metric)[1]);

    [Fact]
    public void Without_a_place_or_beyond_the_table_cells_stay_empty()
    {
        string[] rows = Rows(Line with { Face = null, VentM = 0, IntakeM = 0, MostM = 0, Nearest = "" }, UnitSystem.Us);
        Assert.Equal("A,A/heater-1,100.0,direct vent,,,no place found,,,3.00,,,,,to the terminal,,1.00,,,,,", rows[1]);
        Assert.Equal(rows[0].Count(c => c == ','), rows[1].Count(c => c == ','));
    }

    [Fact]
    public void A_gravity_vent_tells_what_its_pipe_carries_and_what_pulls_against_it()
    {
        FlueLine gravity = Line with { Sealed = false, IntakeM = 0, Face = FaceName.RoofLeft, MostM = 0, FallM = 0, Gravity = new GravityVent(1, 2, 0.5, 3, 35_168.528, 7.41, 25.2, 101_325) };
        Assert.EndsWith(",upright,0.0,1.00,door,5.0,120.0,0.030,0.101", Rows(gravity, UnitSystem.Us)[1], StringComparison.Ordinal);
        Assert.Contains("gravity vent, air from the house\",4,,\"roof, left\"", Rows(gravity, UnitSystem.Us)[1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_boiler_has_no_place_in_the_job() =>
        Assert.Contains(",4,4,not in the job,", Rows(Line with { Face = null, Unplaced = true }, UnitSystem.Us)[1], StringComparison.Ordinal);
}
