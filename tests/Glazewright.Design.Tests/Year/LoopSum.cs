using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Year;

namespace Glazewright.Design.Tests.Year;

/// <summary>What some days of a house came to, counted step by step.</summary>
internal sealed class LoopSum
{
    public double TemperatureH { get; private set; }

    public double HumidityH { get; private set; }

    public double JointlyH { get; private set; }

    public double HeatJ { get; private set; }

    public double FuelJ { get; private set; }

    public double PowerJ { get; private set; }

    /// <summary>Starts by motor.</summary>
    public Dictionary<string, int> Starts { get; } = [];

    /// <summary>Hours run by motor.</summary>
    public Dictionary<string, double> RuntimeH { get; } = [];

    public void Add(YearRun run, int minute, HeldBand band, double percent, double stepS)
    {
        AddHeld(run, minute, band, run.State.AirBelowC, percent, stepS);
        HeatJ += run.Plant.HeatW * stepS;
        FuelJ += run.Plant.FuelW * stepS;
        PowerJ += run.Plant.PowerW * stepS;
    }

    public void AddHeld(YearRun run, int minute, HeldBand band, double airC, double percent, double stepS)
    {
        Asked ask = run.Targets.At(minute);
        MinuteSeen seen = new(airC, percent, run.State.SaturationBelowPa, false, false, false, false);
        HeldTally held = default;
        held.Add(in ask, in seen, band, double.MaxValue);
        HeldCounters one = held.Hours();
        TemperatureH += one.HeldTemperatureH * stepS / 60;
        HumidityH += one.HeldHumidityH * stepS / 60;
        JointlyH += one.HeldJointlyH * stepS / 60;
    }

    public void Add(MonthTally booked)
    {
        HeatJ += booked.HeatJ;
        FuelJ += booked.FuelJ;
        PowerJ += booked.PowerJ;
    }

    public void Add(IReadOnlyList<MotorCounters> motors)
    {
        foreach (MotorCounters motor in motors)
        {
            Starts[motor.Actuator] = Starts.GetValueOrDefault(motor.Actuator) + motor.Starts;
            RuntimeH[motor.Actuator] = RuntimeH.GetValueOrDefault(motor.Actuator) + motor.RuntimeH;
        }
    }
}
