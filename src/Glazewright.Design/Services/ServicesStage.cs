using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;

namespace Glazewright.Design.Services;

/// <summary>Services: what the plants of all houses ask of electrician, gas fitter, plumber and controls technician.</summary>
public static class ServicesStage
{
    /// <summary>Raise when results change.</summary>
    public const int Version = 2;

    /// <summary>Adds up the services of the range.</summary>
    /// <param name="input">What Services reads of the job.</param>
    /// <param name="plants">Plants of the houses, in the job's order.</param>
    /// <param name="programs">Their control programs.</param>
    /// <returns>Load list, gas, water, drain, points.</returns>
    public static ServicesResult Run(ServicesInput input, EqList<PlantResult> plants, EqList<ProgramDocument> programs)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (plants.Count == 0)
        {
            return ServicesResult.None;
        }

        EqList<LoadLine> electric = PowerServices.Lines(plants);
        EqList<GasLine> gas = FluidServices.Burners(input, plants);
        EqList<WaterLine> water = FluidServices.Users(input, plants);
        var result = new ServicesResult(
            electric,
            electric.Count == 0 ? null : PowerServices.Need(electric, input.Utilities),
            gas,
            gas.Count == 0 ? null : FluidServices.Main(input, gas),
            water,
            water.Count == 0 ? null : FluidServices.Supply(input, water),
            FluidServices.Drains(input, plants),
            ControlPoints.Of(plants, programs),
            StageReport.Empty);
        return result with { Report = ServicesWorkings.Report(input, result) };
    }
}
