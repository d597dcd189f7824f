using Glazewright.Design.Program;

namespace Glazewright.Design.Rehearsals;

/// <summary>The thermometer at the crop tells wrong, and nothing tells the box so.</summary>
/// <param name="supposed">Wind and curtain from the failure on.</param>
/// <param name="curtains">The curtains' places among the actuators.</param>
/// <param name="fromMinute">Minute of the day it goes wrong.</param>
/// <param name="how">What it shows in place of the truth.</param>
internal sealed class WrongSensor(Supposed supposed, int[] curtains, int fromMinute, WrongReading how) : Failure(supposed, curtains)
{
    private const int MinutesInDay = 1440;
    public override void Read(int minute, Span<int> readings)
    {
        ref int shown = ref readings[(int)Reading.InsideTemperature];
        int of = minute % MinutesInDay;
        if (shown == int.MinValue || !IsOn)
        {
            return;
        }

        shown = how switch
        {
            WrongReading.Sticks sticks => (int)Math.Round(sticks.AtC * 10) * 10,
            WrongReading.Drifts drifts => shown + (int)(Math.Sign(drifts.MostK) * Math.Min(Math.Abs(drifts.MostK), drifts.KPerHour * (of - fromMinute) / 60.0) * 100),
            WrongReading.Off off => shown + (int)(off.ByK * 100),
            _ => shown,
        };
    }
}

/// <summary>How a thermometer tells wrong. A closed case.</summary>
internal abstract record WrongReading
{
    private WrongReading()
    {
    }

    /// <summary>It stays at one value.</summary>
    /// <param name="AtC">That value, °C.</param>
    public sealed record Sticks(double AtC) : WrongReading;

    /// <summary>It goes away from the truth.</summary>
    /// <param name="KPerHour">How fast, K/h, positive.</param>
    /// <param name="MostK">How far at the most, K; negative for low.</param>
    public sealed record Drifts(double KPerHour, double MostK) : WrongReading;

    /// <summary>It is off by so much at once.</summary>
    /// <param name="ByK">K; negative for low.</param>
    public sealed record Off(double ByK) : WrongReading;
}
