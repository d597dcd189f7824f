using Glazewright.Science.Flow;

namespace Glazewright.Published.Tests.Science;

/// <summary>A saying of the trade about curtains (common practice) against our figure; those about fans, pads and coverings stand in <see cref="CommonPracticeExamined"/>.</summary>
public class CommonPracticeOfCurtain
{
    private const double Inch = 0.0254;
    private const double Cfm = 0.00047194745;

    // "Open the curtain 12 in and the space below gains 5 F°": by warmth alone a foot of slot along 100 ft passes about 350 cfm between 62 and 44 °F, which takes heat
    // from below, some 2 kW. Not agreed at night: below cools; a gain needs a space above that is the warmer one, as in a sunny morning.
    [Fact]
    public void A_foot_of_gap_passes_little_air_and_cools_below_at_night()
    {
        double flow = Openings.SlotExchangeM3PerS(12 * Inch, 104 * 12 * Inch, 16.1, 6.8);
        Assert.InRange(flow / Cfm, 200, 500);
        Assert.InRange(1207 * flow * (16.1 - 6.8), 1000, 3000);
        Assert.Equal(0, Openings.SlotExchangeM3PerS(12 * Inch, 104 * 12 * Inch, 16, 25));
    }
}
