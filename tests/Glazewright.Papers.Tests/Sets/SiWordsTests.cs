using Glazewright.Design.Contracts;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Tests.Sets;

/// <summary>Conversions by hand with the exact factors of NIST SP 811: inch 25.4 mm, foot 0.3048 m, pound 0.45359237 kg, US gallon 3.785411784 L, mile an hour 0.44704 m/s.</summary>
public class SiWordsTests
{
    [Theory]
    [InlineData("leaves at 84 °F (29.1 °C); \"never over 80 °F (26.7 °C)\"", "leaves at 29.1 °C; \"never over 26.7 °C\"")]
    [InlineData("within ±3 F° (±1.7 K) and ±10 %", "within ±1.7 K and ±10 %")]
    [InlineData("lifts with 1,272 lb (5.7 kN); the gap is 14'-0\" (4.27 m)", "lifts with 5.7 kN; the gap is 4.27 m")]
    [InlineData("sections are tube (A500) and 4 ft high", "sections are tube (A500) and 1.2 m high")]
    [InlineData("each 12 m (39 ft) of wall", "each 12 m of wall")]
    [InlineData("in a wind of 15 mph 89.2", "in a wind of 6.7 m/s 89.2")]
    [InlineData("0.4 to 1.1 mph are wanted", "0.2 m/s to 0.5 m/s are wanted")]
    [InlineData("a wet wall of 4.0 × 6.0 ft", "a wet wall of 1.2 m × 1.8 m")]
    [InlineData("0.4 gal a square foot planted", "16 L a square metre planted")]
    [InlineData("a base of 8 cfm/ft²", "a base of 146 m³/h·m²")]
    [InlineData("at 0.10 in. w.g.", "at 25 Pa")]
    [InlineData("36 in exhaust fan, belt drive", "914 mm exhaust fan, belt drive")]
    [InlineData("3 in insulated metal panel", "76 mm insulated metal panel")]
    [InlineData("1-1/2 in steel for 154 ft", "DN 40 steel for 46.9 m")]
    [InlineData("the gap is 14'-6 1/2\" wide", "the gap is 4.43 m wide")]
    [InlineData("values run 5 to 7 F° (3 to 4 K) colder", "values run 3 to 4 K colder")]
    [InlineData("drifts by 0.9 F° (0.5 K) an hour up to 9 F° (5 K)", "drifts by 0.5 K an hour up to 5 K")]
    [InlineData("145 psi", "1.00 MPa")]
    [InlineData("air of 14 °F", "air of −10.0 °C")]
    [InlineData("slope 1/4 in a foot (2 %) to it", "slope 2 % to it")]
    [InlineData("12.7 mol/m² in June and 2.1 in December: 3 in the house, 2 in all", "12.7 mol/m² in June and 2.1 in December: 3 in the house, 2 in all")]
    [InlineData("R 2.0 (h·ft²·F°/Btu), house A, 4 fans", "R 2.0 (h·ft²·F°/Btu), house A, 4 fans")]
    public void A_metric_job_hears_the_SI_alone(string said, string heard) => Assert.Equal(heard, SiWords.Of(said));

    [Fact]
    public void Labels_and_cautions_of_figures_are_heard_too()
    {
        Figure figure = Figure.State("A/year/fans", "Heat lost with air more than 18 F° (10 K) below the target", Unit.Joule, 1, new Source.FirstPrinciples("a test"), "5 to 7 F° (3 to 4 K) too mild is usual");
        Figure heard = SiWords.Of(new StageReport([figure], [], [])).Figures[0];
        Assert.Equal(("Heat lost with air more than 10 K below the target", "3 to 4 K too mild is usual"), (heard.Label, heard.Caution));
        Assert.Equal(figure.Value, heard.Value);
    }
}
