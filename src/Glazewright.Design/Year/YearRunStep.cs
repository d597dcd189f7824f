using System.Runtime.CompilerServices;
using Glazewright.Design.Brief;
using Glazewright.Design.GainTables;
using Glazewright.Design.Program;
using Glazewright.Science.Climate;
using Glazewright.Science.Crop;
using Glazewright.Science.Maths;

namespace Glazewright.Design.Year;

/// <summary>A house's minute: readings, program, equipment, sun, house.</summary>
internal sealed partial class YearRun
{
    /// <summary>So many of the shortest parts make a minute.</summary>
    public const int PartsAMinute = (int)(StepS / QuantumS);

    /// <summary>Parts of a minute are whole multiples of it, s.</summary>
    internal const double QuantumS = 5;

    /// <summary>How long the first part after a switch lasts at most, s: the air then goes another way than it went.</summary>
    private const double SwitchedS = 30;

    /// <summary>How long a part lasts at most while fog sprays, s: the air then changes faster than ever.</summary>
    private const double SpraysS = 20;

    private readonly AirSlopes slopes = new();
    private MinuteMeans means;
    private HouseForcing acted;

    /// <summary>Means of what the equipment did in the last minute.</summary>
    public ref readonly MinuteMeans Means => ref means;

    /// <summary>What acted in the last part of the last minute.</summary>
    public ref readonly HouseForcing Acted => ref acted;

    /// <summary>
    /// One minute, in one step or in parts. A part ends where the program would change its mind, because a time runs out or a reading gets past a threshold, and soon after equipment was switched, so that
    /// what is decided lasts no longer than a box that looks all the time would let it.
    /// </summary>
    /// <param name="minute">Minute of the year, whose weather and sun hold.</param>
    /// <param name="counts">Whether energy, water and light are booked.</param>
    /// <param name="spells">Where what was told is noted, by parts of the day; none when nobody looks.</param>
    internal void Minute(int minute, bool counts, SpellBook? spells = null)
    {
        Asked ask = counts ? Targets.At(minute) : default;
        means = default;
        double leftS = StepS;
        if (minute % 1440 == 0)
        {
            slopes.Forget(); // so that a day goes again from its midnight
        }

        do
        {
            double partS = Part(minute, leftS);
            spells?.Note((minute % 1440 * PartsAMinute) + (int)((StepS - leftS) / QuantumS), commands);
            if (counts)
            {
                Book(in ask, partS);
            }

            leftS -= partS;
        }
        while (leftS > 0);
    }

    /// <summary>One part of a minute.</summary>
    /// <param name="minute">Minute of the year.</param>
    /// <param name="leftS">What is left of it, s.</param>
    /// <returns>How long the part lasted, s.</returns>
    internal double Part(int minute, double leftS)
    {
        Sense(minute, leftS == StepS ? StepS : 0);
        double stepS = leftS;
        bool moved = control.Try(readings, (int)(stepS * 1000), commands, out Outlook soon);
        if (leftS > QuantumS)
        {
            double untilS = Math.Min(soon.DueMs / 1000.0, soon.Sprays ? SpraysS : soon.Switched ? SwitchedS : leftS);
            (double airKPerS, double percentPerS) = slopes.With(in soon);
            untilS = Math.Min(untilS, sensors.CrossesAfterS(in soon, readings, state, percentNow, airKPerS, percentPerS, leftS));
            if (untilS < leftS)
            {
                stepS = Math.Clamp(Math.Ceiling(untilS / QuantumS) * QuantumS, QuantumS, leftS);
                moved = control.Try(readings, (int)(stepS * 1000), commands, out _);
            }
        }

        control.Accept();
        double airBeforeC = state.AirBelowC, percentBefore = percentNow;
        Act(minute, moved, out acted, stepS);
        means.Add(Plant, stepS / StepS);
        slopes.With(in soon) = ((state.AirBelowC - airBeforeC) / stepS, (percentNow - percentBefore) / stepS);
        return stepS;
    }

    /// <summary>One step of any length.</summary>
    /// <param name="minute">Minute of the year, whose weather and sun hold.</param>
    /// <param name="forcing">What acted.</param>
    /// <param name="stepS">Length of the step, s.</param>
    internal void Step(int minute, out HouseForcing forcing, double stepS = StepS)
    {
        Sense(minute, stepS);
        bool moved = control.Step(readings, (int)(stepS * 1000), commands);
        Act(minute, moved, out forcing, stepS);
    }

    /// <summary>What the box reads at the beginning of a step.</summary>
    private void Sense(int minute, double snowS)
    {
        ahead = weather.ReachAhead(minute);
        sensors.Co2Ppm = co2?.Ppm ?? CarbonDioxide.OutsidePpm;
        if (snowS > 0)
        {
            snow.Step(minute, weather.DryBulbC[minute], state.AirAboveC, snowS);
        }

        sensors.Snow = snow.IsTold;
        if (tellsMore)
        {
            sensors.Rain = rain.IsTold(minute);
            sensors.Drift(minute / 1440);
        }

        sensors.Read(weather, Targets, Plant, minute, readings);
        tamper?.Read(minute, readings);
    }

    private void Act(int minute, bool moved, out HouseForcing forcing, double stepS)
    {
        if (tamper is not null)
        {
            tamper.Command(minute, commands);
            moved = true;
        }

        int day = minute / 1440;
        int period = Targets.Period(day);
        CropPeriod? crop = period >= 0 ? input.Schedule[period] : null;
        int hour = (minute - day * 1440) / 60;
        forcing = default;
        forcing.OutsideC = weather.DryBulbC[minute];
        forcing.OutsideHumidityRatio = weather.HumidityRatio[minute];
        forcing.PressurePa = weather.PressurePa[minute];
        forcing.WindMPerS = weather.WindMs[minute] * House.WindFactor;
        forcing.SkyC = weather.SkyC[minute];
        forcing.OutsideWetBulbC = weather.WetBulbC[minute];
        forcing.IsWorkedOut = weather.AllNumbers;
        if (tamper is not null)
        {
            tamper.Weather(ref forcing);
            forcing.IsWorkedOut = false;
        }

        forcing.DeepGroundC = deepC[day];
        forcing.Co2Ppm = co2?.Ppm ?? CarbonDioxide.OutsidePpm;
        forcing.LeafAreaIndex = crop is null ? 0 : crop.LeafAreaIndex * crop.PlantedFraction;
        Plant.Act(commands, moved, stepS, crop is { DoorsOpen: true } && hour is >= 9 and < 17, ref forcing);
        HouseState sensed = Cells is null ? state : Cells.Sensed;
        // The coil takes more from damp air, nothing from air drier than itself.
        forcing.DryingKgPerS *= DehumidifierCoil.ShareOfRated(sensed.HumidityRatioBelow);
        if (weather.GhiWm2[minute] > 0)
        {
            sun.Into(minute, Plant.CurtainFraction, Plant.SecondCurtainFraction, crop?.PlantedFraction ?? 0, crop?.LeafAreaIndex ?? 0, ref forcing);
        }

        double outsideKgPerS;
        if (Cells is { } cells)
        {
            cells.Step(in forcing, Plant, stepS);
            outsideKgPerS = cells.OutsideAirKgPerS;
        }
        else
        {
            model.Step(state, in forcing, stepS);
            outsideKgPerS = model.LastFluxes.OutsideAirKgPerS;
        }

        if (co2 is not null)
        {
            Breathe(co2, crop?.PlantedFraction ?? 0, sensed.AirBelowC, outsideKgPerS, in forcing, stepS);
        }

        percentNow = sensed.RelativeHumidityBelowPercent(forcing.PressurePa);
        SensorSun onSensors = sensors.FeelsSun ? OnSensors(minute, in forcing) : default;
        sensors.Follow(sensed, percentNow, minute, weather, Plant.StaticPa, in onSensors, stepS);
    }

    // Light falls off through the leaves; a sensor at the crop hangs half way down (Monsi and Saeki's law).
    [MethodImpl(MethodImplOptions.NoInlining)]
    private SensorSun OnSensors(int minute, in HouseForcing f)
    {
        double perW = 1 / (floorM2 * (1 - GainInput.UsualCropReflectance));
        double over = (f.SunCanopyW + f.SunFloorW) * perW;
        return new SensorSun(
            over * Elementary.Exp(-0.5 * extinction * f.LeafAreaIndex),
            over,
            sensors.FeelsSunAbove ? sun.AboveCurtainW(minute) * perW : over,
            Math.Max(Plant.FlowM3PerS / sectionM2, stirredMs * f.CirculationFraction),
            f.WindMPerS,
            f.PressurePa);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void Breathe(YearCo2 gas, double plantedFraction, double airC, double outsideKgPerS, in HouseForcing f, double stepS)
    {
        double cropM2 = plantedFraction * floorM2;
        double light = cropM2 > 0 ? (f.SunCanopyW + (f.LampW * f.LampRadiantFraction)) / cropM2 : 0;
        gas.Step(
            airM3, outsideKgPerS / AirConstants.DensityKgPerM3(airC, f.PressurePa), YearCo2.KgPerM3Ppm(airC, f.PressurePa), Plant.DoseKgPerS,
            YearCo2.MostUptakeKgPerS(cropM2, light), stepS);
    }
}
