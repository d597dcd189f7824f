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
    public const int Version = 11;

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

        MainPanelSpot panel = PanelBuilder.MainPlace(input, form);
        ServicesInput lot = WithWayIn(input, form, panel);
        EqList<LoadLine> electric = PowerServices.Lines(lot, plants);
        EqList<GasLine> gas = FluidServices.Burners(lot, plants);
        EqList<WaterLine> water = FluidServices.Users(lot, plants);
        GasNeed? main = gas.Count == 0 ? null : FluidServices.Main(lot, gas);
        PowerNeed? power = electric.Count == 0 ? null : PowerServices.Need(electric, lot.Utilities);
        var result = new ServicesResult(
            electric,
            power,
            gas,
            main,
            water,
            water.Count == 0 ? null : FluidServices.Supply(lot, water),
            FluidServices.Drains(lot, plants),
            ControlPoints.Of(plants, programs),
            power is null ? [] : PanelBuilder.Build(lot, form, new LoadPlaces(form, plants, layouts), electric, power, panel),
            StageReport.Empty);
        ServicePlan plan = ServiceWays.Of(lot, form, plants, layouts, panel, result);
        result = result with { Plan = plan };
        if (main is not null)
        {
            (GasNeed measured, EqList<GasLine> branched) = FluidServices.Measured(main, gas, plan.Points.Where(p => p.Utility == UtilityKind.Fuel).Max(p => p.RunM));
            result = result with { GasMain = measured, Gas = branched };
        }

        return result with { Report = ServicesWorkings.Report(lot, form, result) };
    }

    // From the pole to the place the job gives for the meter, then along the walls to the main panel.
    private static ServicesInput WithWayIn(ServicesInput input, FormResult form, MainPanelSpot panel)
    {
        double wayM = LoadPlaces.Flat(UtilityEntries.Of(UtilityKind.Power, input, form, panel).Entry.At, panel.At);
        return input with { Utilities = input.Utilities with { PoleDistanceM = input.Utilities.PoleDistanceM + wayM } };
    }
}
