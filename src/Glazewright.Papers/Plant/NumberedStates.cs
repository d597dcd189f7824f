using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Papers.Drawing;
using Glazewright.Science.Air;

namespace Glazewright.Papers.Plant;

/// <summary>A state on a chart with its number.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Where">Where the air is then.</param>
/// <param name="State">The state.</param>
internal sealed record NumberedState(int Number, string Where, AirState State);

/// <summary>Numbers the states of ways of air, and tells all their properties.</summary>
internal static class NumberedStates
{
    /// <summary>The ends of a way's steps, numbered on.</summary>
    public static IReadOnlyList<NumberedState> Of(AirWay way, int before)
    {
        List<NumberedState> states = [new(before + 1, "outside", way.Steps[0].States[0])];
        foreach (AirStep step in way.Steps)
        {
            states.Add(new(before + states.Count + 1, After(step.Act), step.States[^1]));
        }

        return states;
    }

    /// <summary>What a step is called in the key.</summary>
    public static string Word(AirAct act) => act switch
    {
        AirAct.WetWall => "wet wall",
        AirAct.Fog => "fog at the intake",
        AirAct.ThroughHouse => "through the house",
        AirAct.ThroughFog => "through the house, fog on",
        AirAct.Heated => "heaters",
        AirAct.Moistened => "crop",
        _ => throw new ArgumentOutOfRangeException(nameof(act), act, "No such act."),
    };

    /// <summary>All properties of the states.</summary>
    public static Table Table(IReadOnlyList<AirWay> ways, UnitSystem units)
    {
        AirScale scale = new(units);
        List<IReadOnlyList<string>> rows = [];
        int number = 0;
        foreach (AirWay way in ways)
        {
            foreach (NumberedState s in Of(way, number))
            {
                AirState a = s.State;
                rows.Add(
                [
                    FormattableString.Invariant($"{s.Number}"), $"{(s.Where == "outside" ? way.Title + ": " : "")}{s.Where}", scale.Degrees(a.DryBulbC), scale.Degrees(a.WetBulbC), scale.Degrees(a.DewPointC),
                    AirScale.Number(100 * a.RelativeHumidityFraction, 0), AirScale.Number(scale.Ratio(a.HumidityRatio), 1),
                    AirScale.Number(a.VapourDeficitPa / 1000, 2), scale.Enthalpy(a), scale.Volume(a),
                ]);
                number = s.Number;
            }
        }

        return new Table(
            [
                new Column("", 6, Along.End), new Column("State", 43), new Column($"Dry bulb {scale.TemperatureUnit}", 13, Along.End), new Column($"Wet bulb {scale.TemperatureUnit}", 13, Along.End),
                new Column($"Dew point {scale.TemperatureUnit}", 14, Along.End), new Column("RH %", 10, Along.End), new Column($"Water {scale.RatioUnit}", 14, Along.End),
                new Column("VPD kPa", 12, Along.End), new Column("Enthalpy", 24, Along.End), new Column("Volume", 23, Along.End),
            ],
            rows);
    }

    private static string After(AirAct act) => act switch
    {
        AirAct.WetWall => "behind the wet wall",
        AirAct.Fog => "behind the intake's fog",
        AirAct.ThroughHouse or AirAct.ThroughFog => "at the exhaust",
        AirAct.Heated => "warmed",
        AirAct.Moistened => "in the house",
        _ => throw new ArgumentOutOfRangeException(nameof(act), act, "No such act."),
    };
}
