using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Science.Air;
using Glazewright.Science.Flow;

namespace Glazewright.Design.Plant;

/// <summary>What is done to the air in one step of its way.</summary>
public enum AirAct
{
    /// <summary>Cooled along its wet-bulb line by a wet wall.</summary>
    WetWall,

    /// <summary>Fog evaporates in it as it enters.</summary>
    Fog,

    /// <summary>Sun, crop and walls act on it from intake to fans.</summary>
    ThroughHouse,

    /// <summary>The same while fog evaporates in it.</summary>
    ThroughFog,

    /// <summary>Heaters warm it.</summary>
    Heated,

    /// <summary>The crop moistens it while the heaters hold its temperature.</summary>
    Moistened,
}

/// <summary>One step: from the first state to the last, with those between where the way is not straight.</summary>
/// <param name="Act">What is done.</param>
/// <param name="States">States on the way, at least two.</param>
/// <param name="WaterKgPerS">Water the air takes up, kg/s.</param>
/// <param name="HeatW">Heat it takes up that warms it, W; negative where it is cooled.</param>
public sealed record AirStep(AirAct Act, EqList<AirState> States, double WaterKgPerS, double HeatW);

/// <summary>The air's way from outside through the house.</summary>
/// <param name="Title">The day.</param>
/// <param name="FlowM3PerS">Outside air, m³/s at its own state.</param>
/// <param name="Steps">Steps in order.</param>
public sealed record AirWay(string Title, double FlowM3PerS, EqList<AirStep> Steps);

/// <summary>The ways that air takes on the design days, with the equipment chosen.</summary>
public static class AirStory
{
    /// <summary>Hottest day: outside, wet wall, through the house with fog or without, exhaust.</summary>
    /// <param name="duty">What the design days ask.</param>
    /// <param name="plant">The equipment.</param>
    /// <returns>The way at the flow of all fans, or of those that run with fog that cools; without fans, at the flow asked for.</returns>
    public static AirWay Summer(DutyResult duty, PlantResult plant)
    {
        ArgumentNullException.ThrowIfNull(duty);
        return Day("Hottest design day", duty.Air.Summer, duty, plant);
    }

    /// <summary>Wettest day: the same way from the 0.4 % wet bulb, with the hottest day's sun.</summary>
    /// <param name="duty">What the design days ask.</param>
    /// <param name="plant">The equipment.</param>
    /// <returns>The way.</returns>
    public static AirWay WetDay(DutyResult duty, PlantResult plant)
    {
        ArgumentNullException.ThrowIfNull(duty);
        return Day("Wettest design day", duty.Air.WetDay, duty, plant);
    }

    private static AirWay Day(string title, AirState at, DutyResult duty, PlantResult plant)
    {
        ArgumentNullException.ThrowIfNull(plant);
        DesignDayRun day = DesignDayAir.Of(at, duty, plant.Exhaust?.Choice.Wet ?? [], plant.WetWall?.Choice, plant.Fog?.Choice);
        double dryKgPerS = day.FlowM3PerS / at.VolumeM3PerKg;
        List<AirStep> steps = [];
        if (day.Inlet != at)
        {
            steps.Add(Step(AirAct.WetWall, [at, day.Inlet], dryKgPerS));
        }

        if (day.Fog is { IntakeKgPerS: > 0 })
        {
            steps.Add(Step(AirAct.Fog, [day.Inlet, day.Run.Stations[0]], dryKgPerS));
        }

        steps.Add(Step(day.Fog is { AlongKgPerS: > 0 } ? AirAct.ThroughFog : AirAct.ThroughHouse, [.. day.Run.Stations], dryKgPerS));
        return new AirWay(title, day.FlowM3PerS, steps.ToEqList());
    }

    /// <summary>Design night, house closed: what leaks in is warmed and moistened by the crop.</summary>
    /// <param name="duty">What the design days ask.</param>
    /// <returns>The way at the leakage flow.</returns>
    public static AirWay WinterNight(DutyResult duty)
    {
        ArgumentNullException.ThrowIfNull(duty);
        DesignAir air = duty.Air;
        double rise = air.Balance.House.HumidityRatio - air.WinterNight.HumidityRatio;
        double dryKgPerS = rise > 1e-9 ? air.Balance.LeakedKgPerS / rise : 0;
        return Warmed("Design night, house closed", dryKgPerS, air.WinterNight, air.Balance.House);
    }

    /// <summary>Damp mild night: outside air is warmed and takes the crop's moisture away at the night target.</summary>
    /// <param name="duty">What the design days ask.</param>
    /// <returns>The way; null when outside air is too damp to dry the house.</returns>
    public static AirWay? DampNight(DutyResult duty)
    {
        ArgumentNullException.ThrowIfNull(duty);
        DesignAir air = duty.Air;
        double rise = air.NightTarget.HumidityRatio - air.DampNight.HumidityRatio;
        return rise <= 1e-4 || duty.NightMoistureKgPerS <= 0
            ? null
            : Warmed("Damp mild night, aired", duty.NightMoistureKgPerS / rise, air.DampNight, air.NightTarget);
    }

    private static AirWay Warmed(string title, double dryKgPerS, AirState outside, AirState house)
    {
        double heat = (house.DryBulbC - outside.DryBulbC) * outside.HeatJPerKgK;
        AirState warm = Math.Abs(heat) <= 100_000 ? AirProcess.Heat(outside, heat).State : outside with { DryBulbC = house.DryBulbC };
        return new AirWay(
            title, dryKgPerS * outside.VolumeM3PerKg,
            [Step(AirAct.Heated, [outside, warm], dryKgPerS), Step(AirAct.Moistened, [warm, house], dryKgPerS)]);
    }

    private static AirStep Step(AirAct act, IReadOnlyList<AirState> states, double dryKgPerS) => new(
        act,
        states.ToEqList(),
        dryKgPerS * (states[^1].HumidityRatio - states[0].HumidityRatio),
        dryKgPerS * states[0].HeatJPerKgK * (states[^1].DryBulbC - states[0].DryBulbC));
}
