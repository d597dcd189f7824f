using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Tests.Sets;

public class SiWordsTests
{
    [Theory]
    [InlineData("leaves at 84 °F (29.1 °C); \"never over 80 °F (26.7 °C)\"", "leaves at 29.1 °C; \"never over 26.7 °C\"")]
    [InlineData("within ±3 F° (±1.7 K) and ±10 %", "within ±1.7 K and ±10 %")]
    [InlineData("lifts with 1,272 lb (5.7 kN); the gap is 14'-0\" (4.27 m)", "lifts with 5.7 kN; the gap is 4.27 m")]
    [InlineData("sections are tube (A500) and 4 ft high", "sections are tube (A500) and 4 ft high")]
    public void A_metric_job_hears_the_SI_alone(string said, string heard) => Assert.Equal(heard, SiWords.Of(said));
}
