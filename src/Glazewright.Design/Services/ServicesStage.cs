using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;

namespace Glazewright.Design.Services;

/// <summary>Services: what the plants of all houses ask of electrician, gas fitter, plumber and controls technician.</summary>
public static class ServicesStage
{
    /// <summary>Raise when results change.</summary>
    public const int Version = 9;

    /// <summary>Adds up the services of the range.</summary>
    /// <param name="input">What Services reads of the job.</param>
    /// <param name="form">Shapes of houses and link buildings.</param>
    /// <param name="plants">Plants of the houses, in the job's order.</param>
    /// <param name="programs">Their control programs.</param>
    /// <param name="layouts">Where the equipment stands.</param>
    /// <returns>Load list, panels, gas, water, drain, points.</returns>
    public static ServicesResult Run(
        ServicesInput input, FormResult form, EqList<PlantResult> plants, EqList<ProgramDocument> programs, EqList<LayoutResult> layouts)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (plants.Count == 0)
        {
            return ServicesResult.None;
        }

        EqList<LoadLine> electric = PowerServices.Lines(input, plants);
        EqList<GasLine> gas = FluidServices.Burners(input, plants);
        EqList<WaterLine> water = FluidServices.Users(input, plants);
        GasNeed? main = gas.Count == 0 ? null : FluidServices.Main(input, gas);
        PowerNeed? power = electric.Count == 0 ? null : PowerServices.Need(electric, input.Utilities);
        var result = new ServicesResult(
            electric,
            power,
            main is null ? gas : FluidServices.Branched(gas, main),
            main,
            water,
            water.Count == 0 ? null : FluidServices.Supply(input, water),
            FluidServices.Drains(input, plants),
            ControlPoints.Of(plants, programs),
            power is null ? [] : PanelBuilder.Build(input, form, new LoadPlaces(form, plants, layouts), electric, power),
            StageReport.Empty);
        return result with { Report = ServicesWorkings.Report(input, result) };
    }
}
