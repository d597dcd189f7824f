using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.GainTables;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;
using Glazewright.Science.Climate;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Year;

/// <summary>One day of a house looked at closely: cells along its length and steps of seconds, the same program, equipment and weather as the year's.</summary>
/// <param name="House">House id.</param>
/// <param name="Day">Day of the common year, 0 to 364.</param>
/// <param name="StepS">Length of a step, s.</param>
/// <param name="CellLengthM">Length of a cell, m.</param>
/// <param name="IntakeAtEnd2">Cells are counted from the intake: whether that is end 2.</param>
/// <param name="SensorCell">The cell that the program's sensor hangs in.</param>
/// <param name="Cells">Each cell's air at the crop, the intake's first.</param>
/// <param name="Spells">What each actuator did; times in steps of the day.</param>
/// <param name="Whole">The year's own day in one cell and minutes, for comparison.</param>
public sealed record DetailDay(
    string House, int Day, double StepS, double CellLengthM, bool IntakeAtEnd2, int SensorCell, EqList<DetailCell> Cells, EqList<DetailSpell> Spells, DayReplay Whole)
{
    /// <summary>Step of a close look, s: pulses of fog, ignition and the travel of motors are seen one by one.</summary>
    public const double UsualStepS = 5;

    /// <summary>Runs a day again from its midnight; all cells start as the year's house was.</summary>
    /// <param name="input">The year's own input.</param>
    /// <param name="form">Shape of the house.</param>
    /// <param name="gains">Where the sun goes.</param>
    /// <param name="plant">Equipment.</param>
    /// <param name="layout">Where it sits.</param>
    /// <param name="program">Control program.</param>
    /// <param name="weather">The year by the minute.</param>
    /// <param name="year">The year's result from the same inputs.</param>
    /// <param name="day">0 to 364.</param>
    /// <param name="cells">Cells along the house, 1 to 60; 0 for one about every 5 m.</param>
    /// <param name="stepS">1 to 60 s, a whole part of a minute.</param>
    /// <returns>The day.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No such day, count or step.</exception>
    public static DetailDay Of(
        YearInput input, BuildingForm form, GainTable gains, PlantResult plant, LayoutResult layout, ProgramDocument program, MinuteWeather weather, YearResult year, int day,
        int cells = 0, double stepS = UsualStepS)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentOutOfRangeException.ThrowIfNegative(cells);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(cells, 60);
        int steps = (int)Math.Round(60 / Math.Clamp(stepS, 1, 60));
        ArgumentOutOfRangeException.ThrowIfNotEqual(steps * stepS, 60);
        DayReplay whole = DayReplay.Of(input, form, gains, plant, program, weather, year, day);
        ProgramControl box = ProgramControl.Of(program);
        DetailCells row = new(YearHouse.Build(input, form, plant), form, layout, program, plant.Heat?.Choice.Heaters ?? [], cells > 0 ? cells : DetailCells.CountFor(form.LengthM));
        YearRun run = new(input, form, gains, plant, program, weather, box) { Cells = row };
        run.Load(year.Midnights[day]);
        double[][] airC = [.. Enumerable.Range(0, row.Count).Select(_ => new double[1440])];
        double[][] percent = [.. Enumerable.Range(0, row.Count).Select(_ => new double[1440])];
        SpellBook spells = new(box.Compiled);
        for (int m = 0; m < 1440; m++)
        {
            for (int s = 0; s < steps; s++)
            {
                run.Step((day * 1440) + m, out HouseForcing forcing, stepS);
                spells.Note((m * steps) + s, run.Commands);
                for (int c = 0; c < row.Count; c++)
                {
                    airC[c][m] += row.State(c).AirBelowC / steps;
                    percent[c][m] += row.State(c).RelativeHumidityBelowPercent(forcing.PressurePa) / steps;
                }
            }
        }

        return new DetailDay(
            input.House, day, stepS, row.CellLengthM, row.FromEnd2, row.SensorCell,
            airC.Zip(percent, (t, h) => new DetailCell(EqList.Own(t), EqList.Own(h))).ToEqList(),
            spells.Close(1440 * steps).Select(s => new DetailSpell(s.Actuator, s.FromMinute * stepS, s.ToMinute * stepS, s.LevelFraction, s.Because)).ToEqList(),
            whole);
    }
}

/// <summary>A cell's day.</summary>
/// <param name="AirC">Air at the crop, mean of each minute, °C.</param>
/// <param name="RhPercent">Its humidity.</param>
public sealed record DetailCell(EqList<double> AirC, EqList<double> RhPercent);

/// <summary>A stretch in which an actuator was told one thing for one kind of reason.</summary>
/// <param name="Actuator">Its place in the program's order.</param>
/// <param name="FromS">Second of the day.</param>
/// <param name="ToS">The second after the last.</param>
/// <param name="LevelFraction">0 off, shut or open curtain, to 1.</param>
/// <param name="Because">The command in a sentence.</param>
public sealed record DetailSpell(int Actuator, double FromS, double ToS, double LevelFraction, string Because);
