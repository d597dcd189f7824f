namespace Glazewright.Design.Year;

/// <summary>What the equipment did in a minute, means over its parts.</summary>
internal struct MinuteMeans
{
    public double HeatW, FlowM3PerS, PowerW, CurtainFraction, SecondCurtainFraction, CoolingFraction;

    /// <summary>Adds a part.</summary>
    /// <param name="plant">As it ran in the part.</param>
    /// <param name="shareFraction">Of the minute.</param>
    public void Add(YearPlant plant, double shareFraction)
    {
        HeatW += plant.HeatW * shareFraction;
        FlowM3PerS += plant.FlowM3PerS * shareFraction;
        PowerW += plant.PowerW * shareFraction;
        CurtainFraction += plant.CurtainFraction * shareFraction;
        SecondCurtainFraction += plant.SecondCurtainFraction * shareFraction;
        CoolingFraction += plant.CoolingFraction * shareFraction;
    }
}
