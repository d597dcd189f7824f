using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Science.Flow;
using static Glazewright.Design.Plant.PlantWords;

namespace Glazewright.Design.Plant;

/// <summary>The hottest design day with the plant as chosen, against what the crop may never exceed.</summary>
internal static class HotDay
{
    public static IEnumerable<Finding> Of(PlantFacts f)
    {
        double neverC = f.Duty.Air.NeverAboveC;
        if (f.Run is null || neverC >= DutyStage.NoLimitC)
        {
            yield break;
        }

        DesignDayRun day = DesignDayAir.Of(f.Outside, f.Duty, f.Run.Wet, f.WetWall, f.Fog);
        // A tenth of a kelvin is less than any of this is known to.
        if (day.Run.HottestC <= neverC + 0.1)
        {
            yield break;
        }

        yield return new Finding(
            "plant/never-above-missed", Severity.Miss, f.Input.House,
            Text($"On the design day the air enters at {C(day.Inlet.DryBulbC)}{(f.WetWall is { } pad ? Text($" behind a pad of {100 * pad.Effectiveness:0} %") : "")}{Fogged(day, f)} and reaches {C(day.Run.HottestC)}; \"never over {C(neverC)}\" does not hold at the fan end."),
            Advice(f, day, neverC),
            new Source.Given($"{f.Input.Pointer}/schedule"));
    }

    private static string Fogged(DesignDayRun day, PlantFacts f) => day.FogKgPerS > 0
        ? Text($", takes up {Gph(day.FogKgPerS)} gal/h of fog with {day.FansOn} of {f.Run!.Fans.Count} fans on")
        : "";

    private static string Advice(PlantFacts f, DesignDayRun day, double neverC)
    {
        if (f.Fog?.Cooling is not null && day.FogKgPerS > 0)
        {
            return day.Run.DampestFraction < FogSizing.DampestFraction - 1e-3 && f.FogAsked.Cooling is { } more && more.HottestC < day.Run.HottestC - 0.1
                ? Text($"More nozzles: {Gph(more.WaterKgPerS)} gal/h with {more.FansOn} fans would bring it to {C(more.HottestC)}{(more.Reached ? "" : Text($", where the air is at {100 * more.DampestFraction:0} % and takes no more"))}.")
                : Text($"The air is at {100 * day.Run.DampestFraction:0} % there: it takes up no more fog. More shade or flow brings it a little nearer; a chiller or a later crop would settle it.");
        }

        if (day.Inlet.DryBulbC <= neverC)
        {
            FlowNeed more = AlongHouse.RequiredFlow(_ => day.Inlet, f.Duty.Air.Load, neverC, Math.Max(0.25 * f.Form.FloorAreaM2, 1));
            return (more.Reached ? Text($"{Cfm(more.FlowM3PerS)} cfm in place of {Cfm(day.FlowM3PerS)} cfm would hold it at the fan end with air as cool at the intake; ") : "No flow alone holds it; ")
                + "more shade, or fog behind the intake, brings the fan end nearer.";
        }

        return f.WetWall is not null
            ? "Even behind the wet wall the air comes in warmer than that: no fan cools below its intake. A chiller or a later crop would."
            : Text($"No fan cools below its intake. A wet wall would bring the intake to about {C(DutyStage.Inlet(f.Outside, true).DryBulbC)}; fog with fewer fans reaches about as far.");
    }

    private static string C(double valueC) => DutyFindings.C(valueC);
}
