using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;

namespace Glazewright.Design.Behaviour;

/// <summary>What Behaviour reads of the job for one house.</summary>
/// <param name="Plant">What Plant reads.</param>
/// <param name="Duty">What Duty reads.</param>
/// <param name="HumidityBandFraction">Half width of the humidity band that counts as held, 0 to 1.</param>
public sealed record BehaviourInput(PlantInput Plant, DutyInput Duty, double HumidityBandFraction);

/// <summary>Behaviour: the chosen and placed plant away from its one sizing point.</summary>
public static class BehaviourStage
{
    /// <summary>Raise when results change.</summary>
    public const int Version = 13;

    /// <summary>Works it through.</summary>
    /// <param name="input">What Plant reads of the job.</param>
    /// <param name="form">The house's shape.</param>
    /// <param name="duty">What the design days ask.</param>
    /// <param name="plant">The plant.</param>
    /// <param name="layout">Where it sits.</param>
    /// <param name="catalogue">Equipment.</param>
    /// <param name="ground">What the count by month stands on; none leaves it out.</param>
    /// <returns>How it behaves.</returns>
    public static BehaviourResult Run(
        PlantInput input, BuildingForm form, DutyResult duty, PlantResult plant, LayoutResult layout, Catalogue catalogue, SeasonGround? ground = null)
    {
        ArgumentNullException.ThrowIfNull(input);
        return new BehaviourResult(
            input.House,
            AirBehaviour.Exhaust(input, form, duty, plant, layout, catalogue),
            AirBehaviour.Fog(form, duty, plant, layout),
            HeatBehaviour.Mixing(form, duty, plant, catalogue),
            HeatBehaviour.Curtain(form, duty, plant, input.Metric),
            HeatBehaviour.Pressure(input, form, duty, plant),
            KindsSized.Of(input, form, duty, plant, catalogue).ToEqList())
        {
            Season = ground is null ? null : SeasonBehaviour.Of(form, duty, plant, ground),
            Combustion = CombustionAir.Of(form, plant),
        };
    }
}
