using Glazewright.Design.Contracts;
using Glazewright.Science.Crop;

namespace Glazewright.Design.Brief;

/// <summary>When day begins or ends. A closed case.</summary>
public abstract record DayMark
{
    private DayMark()
    {
    }

    /// <summary>By the clock, standard time.</summary>
    /// <param name="Minute">Minute of the day, 0 to 1439.</param>
    public sealed record Clock(int Minute) : DayMark;

    /// <summary>From sunrise.</summary>
    /// <param name="OffsetMinutes">Minutes after (negative: before).</param>
    public sealed record Sunrise(int OffsetMinutes) : DayMark;

    /// <summary>From sunset.</summary>
    /// <param name="OffsetMinutes">Minutes after (negative: before).</param>
    public sealed record Sunset(int OffsetMinutes) : DayMark;
}

/// <summary>The climate asked for in one part of the day.</summary>
/// <param name="TemperatureC">Air temperature at the crop, °C.</param>
/// <param name="HumidityPercent">Relative humidity, %; 0 when the grower does not care.</param>
/// <param name="VpdKPa">Vapour pressure deficit of the air in place of a humidity, kPa, at whatever temperature the air has; none when it is not asked.</param>
public sealed record ClimateTarget(double TemperatureC, double HumidityPercent, [property: LeftOutWhenNone] double? VpdKPa = null)
{
    /// <summary>Whether humidity or deficit is asked.</summary>
    public bool AsksHumidity => HumidityPercent > 0 || VpdKPa > 0;

    /// <summary>The humidity asked, or what the deficit means at the target's own temperature (saturation by FAO-56 eq. 11), %; 0 when neither is.</summary>
    public double HumidityAtTargetPercent => VpdKPa is double deficit and > 0
        ? Math.Clamp(100 * (1 - (deficit / Fao56.SaturationKPa(TemperatureC))), 0, 100)
        : HumidityPercent;
}

/// <summary>A crop and its climate for some weeks of the year.</summary>
/// <param name="Id">Short id.</param>
/// <param name="Crop">What grows, as printed; "parked" or "empty" for none.</param>
/// <param name="FromWeek">First week, 1 to 52.</param>
/// <param name="ToWeek">Last week, 1 to 52; less than the first wraps over the year's end.</param>
/// <param name="Day">Target from day start to day end.</param>
/// <param name="Night">Target for the rest.</param>
/// <param name="DayStarts">When the day target begins.</param>
/// <param name="DayEnds">When it ends.</param>
/// <param name="RampMinutes">Minutes of a straight ramp between the targets.</param>
/// <param name="NeverAboveC">Temperature the grower wants never exceeded, °C; NaN-free: 99 when not asked.</param>
/// <param name="LeafAreaIndex">Leaf area per planted area.</param>
/// <param name="PlantedFraction">Share of the floor that is crop.</param>
/// <param name="LampHours">Photoperiod made up by lamps, h a day; 0 for none.</param>
/// <param name="LightWishMolPerM2Day">Daily light the crop lives on, mol/m²d; 0 when not asked.</param>
/// <param name="DoorsOpen">True when doors stand open in opening hours (sales weeks).</param>
public sealed record CropPeriod(
    string Id,
    string Crop,
    int FromWeek,
    int ToWeek,
    ClimateTarget Day,
    ClimateTarget Night,
    DayMark DayStarts,
    DayMark DayEnds,
    int RampMinutes,
    double NeverAboveC,
    double LeafAreaIndex,
    double PlantedFraction,
    double LampHours,
    double LightWishMolPerM2Day,
    bool DoorsOpen);
