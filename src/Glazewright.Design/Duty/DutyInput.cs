using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Duty;

/// <summary>What Duty reads of the job for one house.</summary>
/// <param name="House">House id.</param>
/// <param name="Pointer">JSON pointer of the house.</param>
/// <param name="LatitudeDeg">North positive.</param>
/// <param name="LongitudeDeg">East positive.</param>
/// <param name="ElevationM">Above sea level, m.</param>
/// <param name="RangeBearingDeg">Bearing of +x.</param>
/// <param name="AlbedoFraction">Ground reflectance.</param>
/// <param name="Design">Design conditions typed; null when not.</param>
/// <param name="AirtightnessPerHour">Air changes by leakage, 1/h.</param>
/// <param name="EdgeInsulated">Slab edge insulated.</param>
/// <param name="Curtains">Number of curtains.</param>
/// <param name="CurtainHeightM">Height of the first, m.</param>
/// <param name="ShadeFraction">Shade counted when fans are sized.</param>
/// <param name="TemperatureRiseK">Rise allowed from intake to fans, K.</param>
/// <param name="WetWall">A wet wall is wanted.</param>
/// <param name="Exhaust">Exhaust fans are wanted.</param>
/// <param name="FanFace">End wall with the fans.</param>
/// <param name="Schedule">Crop schedule.</param>
/// <param name="SecondOpennessFraction">Open area of the second curtain's weave where it moves by itself; null otherwise.</param>
public sealed record DutyInput(
    string House,
    string Pointer,
    double LatitudeDeg,
    double LongitudeDeg,
    double ElevationM,
    double RangeBearingDeg,
    double AlbedoFraction,
    DesignConditions? Design,
    double AirtightnessPerHour,
    bool EdgeInsulated,
    int Curtains,
    double CurtainHeightM,
    double ShadeFraction,
    double TemperatureRiseK,
    bool WetWall,
    bool Exhaust,
    FaceName FanFace,
    EqList<CropPeriod> Schedule,
    double? SecondOpennessFraction = null)
{
    /// <summary>Cloths of the first curtain that move together.</summary>
    public int Layers => SecondOpennessFraction is null ? Curtains : 1;

    /// <summary>Projects the job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="house">House id.</param>
    /// <returns>Duty's input.</returns>
    /// <exception cref="ArgumentException">No such house.</exception>
    public static DutyInput From(Job job, string house)
    {
        int index = job.Houses.ToList().FindIndex(h => h.Id == house);
        if (index < 0)
        {
            throw new ArgumentException($"No house '{house}'.", nameof(house));
        }

        Brief.House h = job.Houses[index];
        return new DutyInput(
            h.Id,
            $"/houses/{index}",
            job.Site.LatitudeDeg,
            job.Site.LongitudeDeg,
            job.Site.ElevationM,
            job.Site.RangeBearingDeg,
            job.Site.Ground.AlbedoFraction,
            job.Site.Design,
            h.AirtightnessPerHour,
            h.EdgeInsulated,
            h.Equipment.Curtains,
            h.Equipment.CurtainM(Math.Min(h.Roof.LeftEaveM, h.Roof.RightEaveM)),
            h.Equipment.ShadeFraction,
            h.Equipment.TemperatureRiseK,
            h.Equipment.WetWall,
            h.Equipment.Exhaust,
            h.Equipment.FanFace,
            h.Schedule,
            h.Equipment.SecondCurtain?.OpennessFraction);
    }
}
