using Glazewright.Science.Weather;

namespace Glazewright.Design.Brief.Reading;

/// <summary>The end of the houses that lies in the lee when fans are wanted.</summary>
/// <param name="IsEnd1">End 1; else end 2.</param>
/// <param name="Why">In words.</param>
internal sealed record LeeEnd(bool IsEnd1, string Why)
{
    /// <summary>By the wind of the warm hours.</summary>
    /// <param name="wind">That wind; null where it is not known.</param>
    /// <param name="rangeBearingDeg">Where end 2 looks, degrees from north.</param>
    public static LeeEnd Of(WindRose? wind, double rangeBearingDeg) => wind is null
        ? new LeeEnd(false, "end 2 is taken for the lee end: no wind directions are known")
        : wind.PushM2PerS2(rangeBearingDeg) > 0
            ? new LeeEnd(true, "end 1 is the lee end in the weather file's warm daylight hours")
            : new LeeEnd(false, "end 2 is the lee end in the weather file's warm daylight hours");
}
