using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.GainTables;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;
using Glazewright.Science.Climate;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Year;

/// <summary>One day of a house's year, minute by minute, with every command and its reason.</summary>
/// <param name="House">House id.</param>
/// <param name="Day">Day of the common year, 0 to 364.</param>
/// <param name="Minutes">1,440 minutes.</param>
/// <param name="Actuators">Ids in the program's order.</param>
/// <param name="Spells">What each actuator did, in order of time, then of the program.</param>
public sealed record DayReplay(
    string House, int Day, EqList<ReplayMinute> Minutes, EqList<string> Actuators, EqList<CommandSpell> Spells)
{
    /// <summary>Runs a day of a year again from its midnight.</summary>
    /// <param name="input">The year's own input.</param>
    /// <param name="form">Shape of the house.</param>
    /// <param name="gains">Where the sun goes.</param>
    /// <param name="plant">Equipment.</param>
    /// <param name="program">Control program.</param>
    /// <param name="weather">The year by the minute.</param>
    /// <param name="year">The year's result from the same inputs: it holds the midnights.</param>
    /// <param name="day">0 to 364.</param>
    /// <returns>The day; its hourly means are the year's, bit for bit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No such day.</exception>
    public static DayReplay Of(
        YearInput input, BuildingForm form, GainTable gains, PlantResult plant, ProgramDocument program, MinuteWeather weather, YearResult year, int day)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(year);
        ArgumentOutOfRangeException.ThrowIfNegative(day);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(day, year.Midnights.Count);
        ProgramControl box = ProgramControl.Of(program);
        YearRun run = new(input, form, gains, plant, program, weather, box);
        run.Load(year.Midnights[day]);
        ReplayMinute[] minutes = new ReplayMinute[1440];
        SpellBook spells = new(box.Compiled, YearRun.PartsAMinute);
        for (int m = 0; m < minutes.Length; m++)
        {
            int minute = (day * 1440) + m;
            run.Minute(minute, counts: false, spells);
            ref readonly HouseForcing forcing = ref run.Acted;
            ref readonly MinuteMeans means = ref run.Means;
            Asked ask = run.Targets.At(minute);
            minutes[m] = new ReplayMinute(
                run.State.AirBelowC, run.State.RelativeHumidityBelowPercent(forcing.PressurePa), run.State.AirAboveC, forcing.OutsideC,
                weather.GhiWm2[minute], ask.Period < 0 ? double.NaN : ask.TemperatureC, HumidityAsked(in ask, run.State.SaturationBelowPa),
                ask.Empty, means.HeatW, means.FlowM3PerS, means.CurtainFraction, means.CoolingFraction, means.PowerW,
                means.SecondCurtainFraction);
        }

        return new DayReplay(input.House, day, EqList.Own(minutes), program.Actuators.Select(a => a.Id).ToEqList(), spells.Close(minutes.Length * YearRun.PartsAMinute));
    }

    // A deficit as the humidity it means at the moment's temperature.
    private static double HumidityAsked(in Asked ask, double saturationPa) =>
        ask.VpdKPa > 0 ? Math.Max(0, 100 - (1e5 * ask.VpdKPa / saturationPa)) : ask.HumidityPercent > 0 ? ask.HumidityPercent : double.NaN;
}

/// <summary>One minute of a replayed day.</summary>
/// <param name="InsideC">Air at the crop.</param>
/// <param name="InsideRhPercent">Humidity at the crop.</param>
/// <param name="UpperC">Air above the curtain.</param>
/// <param name="OutsideC">Outside air.</param>
/// <param name="SunWm2">Global light outside.</param>
/// <param name="TargetC">Temperature asked for; not-a-number in a gap of the schedule.</param>
/// <param name="TargetRhPercent">Humidity asked for, or what the deficit asked for means at the moment's temperature; not-a-number where none is.</param>
/// <param name="Empty">Nothing grows: the target is a floor.</param>
/// <param name="HeatW">Heat delivered.</param>
/// <param name="FlowM3PerS">Exhaust flow.</param>
/// <param name="CurtainFraction">Curtain drawn.</param>
/// <param name="CoolingFraction">Wet wall or fog, share of the minute on.</param>
/// <param name="PowerW">Electric power.</param>
/// <param name="SecondCurtainFraction">Second curtain drawn; 0 without one that moves by itself.</param>
public readonly record struct ReplayMinute(
    double InsideC,
    double InsideRhPercent,
    double UpperC,
    double OutsideC,
    double SunWm2,
    double TargetC,
    double TargetRhPercent,
    bool Empty,
    double HeatW,
    double FlowM3PerS,
    double CurtainFraction,
    double CoolingFraction,
    double PowerW,
    double SecondCurtainFraction = 0);

/// <summary>A stretch of a day in which an actuator was told one thing for one kind of reason.</summary>
/// <param name="Actuator">Its place in the program's order.</param>
/// <param name="FromMinute">Minutes of the day at which it began, to 5 s.</param>
/// <param name="ToMinute">And ended.</param>
/// <param name="LevelFraction">0 off, shut or open curtain, to 1.</param>
/// <param name="Because">The command in a sentence, with the numbers of its beginning.</param>
public sealed record CommandSpell(int Actuator, double FromMinute, double ToMinute, double LevelFraction, string Because);
