using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;

namespace Glazewright.Design.Program;

/// <summary>Writes the control program of a house from its plant and the grower's wish, and lays the technician's changes over it.</summary>
public static class ProgramStage
{
    /// <summary>Raised when results change.</summary>
    public const int Version = 18;

    /// <summary>Most exhaust fans of a house: with <see cref="MostHeaters"/> and one of every other actuator a program is full.</summary>
    public const int MostFans = 28;

    /// <summary>Most unit heaters of a house.</summary>
    public const int MostHeaters = 22;

    /// <summary>Writes the program and lays the technician's changes over it.</summary>
    /// <param name="input">The wish.</param>
    /// <param name="plant">The equipment.</param>
    /// <returns>A document that compiles without faults: where the changes make one that does not, it is the one without them.</returns>
    public static ProgramDocument Run(ProgramInput input, PlantResult plant) => Laid(input, plant).Document;

    /// <summary>The program as written, as changed, and what is wrong with the changes.</summary>
    /// <param name="input">The wish.</param>
    /// <param name="plant">The equipment.</param>
    public static LaidProgram Laid(ProgramInput input, PlantResult plant)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(plant);
        return LaidProgram.Of(Written(input, plant), input.Changes);
    }

    private static ProgramDocument Written(ProgramInput input, PlantResult plant)
    {
        var stages = new DefaultStages(plant);
        EqList<ProgramPeriod> periods = DefaultPeriods.Of(input.Schedule, input.Band);
        string? lamps = stages.OfKind(ActuatorKind.Lamps).FirstOrDefault();
        return new ProgramDocument(
            plant.House,
            periods,
            stages.Actuators,
            stages.Cooling(),
            stages.Heating(),
            stages.Humidity(),
            stages.Curtain(),
            lamps is null ? null : new LampControl(lamps, periods.Select(p => LampHours(input.Schedule, p)).ToEqList(), 250),
            stages.Interlocks(),
            Alarms(periods, stages),
            ProgramWorkings.Of(input, plant, periods, stages),
            stages.Guard(),
            stages.Background(),
            stages.ColdAir(),
            stages.Co2(),
            stages.SecondCurtain(),
            stages.UpperAir(),
            stages.Weather(),
            DefaultSensors.Of(plant.House, stages));
    }

    private static double LampHours(EqList<CropPeriod> schedule, ProgramPeriod period) =>
        schedule.FirstOrDefault(c => period.Id == c.Id || period.Id.StartsWith(c.Id + "-", StringComparison.Ordinal))?.LampHours ?? 0;

    private static EqList<Alarm> Alarms(EqList<ProgramPeriod> periods, DefaultStages stages)
    {
        double coldest = periods.Min(p => Math.Min(p.Day.TemperatureC, p.Night.TemperatureC));
        double warmest = periods.Max(p => Math.Max(p.Day.TemperatureC, p.Night.TemperatureC));
        var alarms = new List<Alarm>
        {
            new("too-cold", Reading.InsideTemperature, Math.Max(1.5, coldest - 5), null, 600),
            new("too-hot", Reading.InsideTemperature, null, Math.Max(36, warmest + 8), 900),
            new("too-wet", Reading.InsideHumidity, null, 97, 7200),
        };
        if (stages.OfKind(ActuatorKind.Fan).Any())
        {
            alarms.Add(new Alarm("suction-too-strong", Reading.StaticPressure, null, stages.SuctionLimitPa, 30));
        }

        return alarms.ToEqList();
    }
}
