using System.Runtime.CompilerServices;
using Glazewright.Design.Program;
using Glazewright.Science.Climate;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Year;

/// <summary>What the control box sees: sensors in an aspirated box lag the air and print in steps. The box acts on the minute before.</summary>
internal sealed class YearSensors
{
    private const double LagS = 90;

    private double insideC, insidePercent, upperC;

    /// <summary>Carbon dioxide shown, ppm; below 0 where there is no such sensor.</summary>
    public double Co2Ppm { get; set; } = -1;

    /// <summary>Number of readings.</summary>
    public static int Count { get; } = Enum.GetValues<Reading>().Length;

    /// <summary>Starts in balance with the house.</summary>
    public void Settle(HouseState state, double pressurePa)
    {
        insideC = state.AirBelowC;
        insidePercent = state.RelativeHumidityBelowPercent(pressurePa);
        upperC = state.AirAboveC;
    }

    /// <summary>Length of a saved state.</summary>
    public const int SavedLength = 3;

    /// <summary>Writes what the sensors show.</summary>
    public void Save(Span<double> into) => (into[0], into[1], into[2]) = (insideC, insidePercent, upperC);

    /// <summary>Reads what was written.</summary>
    public void Load(ReadOnlySpan<double> saved) => (insideC, insidePercent, upperC) = (saved[0], saved[1], saved[2]);

    /// <summary>Follows the house for one step.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Follow(HouseState state, double percent, double stepS)
    {
        double share = stepS / (LagS + stepS);
        insideC += share * (state.AirBelowC - insideC);
        insidePercent += share * (percent - insidePercent);
        upperC += share * (state.AirAboveC - upperC);
    }

    /// <summary>Fills the readings at the beginning of a minute.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Read(MinuteWeather weather, YearTargets targets, YearPlant plant, int minute, Span<int> readings)
    {
        int before = minute > 0 ? minute - 1 : MinuteWeather.Count - 1, day = minute / 1440;
        readings = readings[..Count];
        readings[(int)Reading.InsideTemperature] = Step(insideC, 10) * 10;
        readings[(int)Reading.InsideHumidity] = Step(insidePercent, 1) * 10;
        readings[(int)Reading.UpperTemperature] = Step(upperC, 10) * 10;
        readings[(int)Reading.OutsideTemperature] = Step(weather.DryBulbC[before], 10) * 10;
        readings[(int)Reading.OutsideHumidity] = Step(weather.RelativeHumidityPercent[before], 1) * 10;
        readings[(int)Reading.Wind] = Step(weather.WindMs[before], 10) * 10;
        readings[(int)Reading.Light] = Step(weather.GhiWm2[before], 1);
        readings[(int)Reading.Snow] = 0;
        readings[(int)Reading.LouverOpenProof] = plant.LouverOpen ? 1 : 0;
        readings[(int)Reading.StaticPressure] = Step(plant.StaticPa, 10);
        readings[(int)Reading.DayOfYear] = day + 1;
        readings[(int)Reading.TimeOfDay] = (minute - day * 1440) * 60_000;
        readings[(int)Reading.Sunrise] = targets.SunriseMinute[day] * 60_000;
        readings[(int)Reading.Rain] = 0;
        readings[(int)Reading.Co2] = Co2Ppm < 0 ? int.MinValue : Step(Co2Ppm, 0.1) * 10;
        readings[(int)Reading.Sunset] = targets.SunsetMinute[day] * 60_000;
    }

    // The next whole step, halves upward; whole numbers shifted so that cutting off rounds down.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static int Step(double value, double perUnit) => (int)(value * perUnit + 100_000.5) - 100_000;
}
