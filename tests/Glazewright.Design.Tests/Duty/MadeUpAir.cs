using Glazewright.Design.Duty;
using Glazewright.Science.Air;
using Glazewright.Science.Flow;

namespace Glazewright.Design.Tests.Duty;

/// <summary>Air of made-up design days, for tests that need a Duty result and not its air.</summary>
internal static class MadeUpAir
{
    private static readonly AirState s_winter = AirState.FromRelativeHumidity(-20, 0.8, 99_000);
    private static readonly AirState s_night = AirState.FromRelativeHumidity(17, 0.8, 99_000);

    public static DesignAir Of { get; } = new(
        [], AirState.FromWetBulb(33, 23, 99_000), AirState.FromWetBulb(30, 25, 99_000), new AirLoad(100_000, 900, 33, 100, 400, 2, 0.35, 18), s_winter, s_night,
        AirState.FromRelativeHumidity(5, 0.9, 99_000), new NightBalance(s_night, 6, "A/roof-left/cover", 0.001, 0.001, 0.002), new NightSkies(6.7, -35, 1, 0.5, []), new VentilationCompared([], 190, 200, 1, 1, 1, 1));
}
