namespace Glazewright.Design.Calibration;

/// <summary>Heat of hot-water pipes by how far they are above the air.</summary>
internal static class HousePipes
{
    /// <summary>Stands for a pipe whose pump stands still: colder than any air, so it gives nothing.</summary>
    public const double Off = -1000;

    /// <summary>Heat of lower and upper pipes, W, each never below nothing; the lower pump off means both are.</summary>
    public static double HeatW(double railWPerK, double growWPerK, double railC, double growC, double airC) =>
        railC <= Off ? 0 : railWPerK * Math.Max(0, railC - airC) + growWPerK * Math.Max(0, growC - airC);
}
