using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Science.Flow;

namespace Glazewright.Papers.Plant;

/// <summary>Tables of the night's loss by face and of summer ventilation by two methods.</summary>
internal static class LossTables
{
    public static Table Paths(DutyResult duty, Said said)
    {
        NightSkies skies = duty.Air.Skies;
        IEnumerable<IReadOnlyList<string>> rows = skies.Paths.Select(p => (IReadOnlyList<string>)
        [
            p.Id, said.Text(p.PracticeW, Unit.Watt), said.Text(p.WindyW, Unit.Watt), said.Text(p.ClearW, Unit.Watt),
            p.InnerFaceC < duty.NightTargetC ? said.Text(p.InnerFaceC, Unit.Celsius) : "",
        ]);
        return new Table(
            [
                new Column("Path", 48), new Column("Trade's U", 31, Along.End), new Column("Overcast and windy", 31, Along.End), new Column("Clear and calm", 31, Along.End),
                new Column("Inner face, clear", 31, Along.End),
            ],
            [
                .. rows,
                [
                    "All, curtain open", said.Text(skies.Paths.Sum(p => p.PracticeW), Unit.Watt), said.Text(skies.Paths.Sum(p => p.WindyW), Unit.Watt),
                    said.Text(skies.Paths.Sum(p => p.ClearW), Unit.Watt), "",
                ],
                ["All, curtain drawn", said.Text(duty.HeatLossDrawnW, Unit.Watt), "", "", ""],
            ]);
    }

    public static string Skies(DutyResult duty, Said said)
    {
        NightSkies s = duty.Air.Skies;
        return $"At {said.Text(duty.Conditions.Heating996C, Unit.Celsius)} outside and {said.Text(duty.NightTargetC, Unit.Celsius)} inside. The trade's U, which the heaters are sized by, holds an ordinary wind and sky. Windy: {said.Text(s.WindMs, Unit.MetrePerSecond)}, air changes {said.Text(s.WindyChangesPerHour, Unit.PerHour)}. Clear and calm: the sky radiates at {said.Text(s.SkyC, Unit.Celsius)}, air changes by warmth alone {said.Text(s.ClearChangesPerHour, Unit.PerHour)}. Ribs, laps and edges of a sheet are what its trade U has over its middle.";
    }

    public static Table Ventilation(DutyResult duty, Design.Brief.EquipmentChoice equipment, double floorM2, Said said)
    {
        VentilationCompared v = duty.Air.Ventilation;
        bool wet = equipment.WetWall || equipment.Fog, screened = equipment.WetWall || equipment.InsectScreenPorosityFraction > 0;
        List<IReadOnlyList<string>> rows =
        [
            .. v.BalanceTerms.Select(t => (IReadOnlyList<string>)["Balance", t.Label, said.Text(t.WPerM2, Unit.WattPerSquareMetre), ""]),
            ["Balance", "flow that takes it off within the rise", said.Text(v.BalanceWPerM2, Unit.WattPerSquareMetre), Flow(duty.VentilationBalanceM3PerS)],
            [
                "Rule", FormattableString.Invariant($"elevation {v.ElevationFactor:0.00} × light {v.LightFactor:0.00} × rise {v.RiseFactor:0.00}, or distance {v.DistanceFactor:0.00} if larger"),
                said.Text(v.RuleWPerM2, Unit.WattPerSquareMetre), Flow(duty.VentilationRuleM3PerS),
            ],
            [
                "Other rule", FormattableString.Invariant($"12 cfm/ft² less {100 * equipment.ShadeFraction:0} % of shade{(wet ? ", half as much again with evaporative cooling" : "")} (a supplier's page)"), "",
                Flow(VentilationRules.ShadeRuleM3PerS(floorM2, equipment.ShadeFraction, wet)),
            ],
            [
                "Other rule", $"{(equipment.Curtains > 0 ? "10 cfm/ft² under a shade curtain" : "12 cfm/ft² without a shade curtain")}{(screened ? ", 4 more for pad or screen" : "")} (a trade paper)", "",
                Flow(VentilationRules.FlatRuleM3PerS(floorM2, equipment.Curtains > 0, screened)),
            ],
        ];
        return new Table(
            [new Column("Method", 20), new Column("Term", 70), new Column("Heat taken off, of floor", 30, Along.End), new Column("Flow", 52, Along.End)], rows);

        string Flow(double m3PerS) => $"{said.Round(m3PerS, Unit.CubicMetrePerSecond)} ({AirScale.Number(m3PerS / floorM2 / 0.00508, 1)} cfm/ft²)";
    }

    public static string WhyTheyDiffer(DutyResult duty, Said said)
    {
        VentilationCompared v = duty.Air.Ventilation;
        double apart = v.BalanceWPerM2 - v.RuleWPerM2;
        string distance = v.DistanceFactor <= v.ElevationFactor * v.LightFactor * v.RiseFactor ? ""
            : v.DistanceFactor > 1 ? " Here the rule is set by the short run from intake to fans, which asks for air speed and not for cooling."
            : " Here the rule is at its base of 8 cfm/ft²: its own factors, light above all, would ask for less.";
        return Math.Abs(apart) < 0.1 * v.RuleWPerM2
            ? "Both methods take off nearly the same heat." + distance
            : $"The balance takes off {said.Text(Math.Abs(apart), Unit.WattPerSquareMetre)} {(apart > 0 ? "more" : "less")} than the rule. The rule stands for {said.Text(190, Unit.WattPerSquareMetre)} at {said.Text(7 / 1.8, Unit.Kelvin)} whatever the covering, the crop and the walls; the balance counts this house's own sun, what floor and benches store, what the crop turns into vapour at the air's own humidity, and what passes the faces." + distance + " The larger flow is used.";
    }
}
