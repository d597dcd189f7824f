using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Frame;

/// <summary>What Frame reads of the job for one house.</summary>
/// <param name="House">House id.</param>
/// <param name="Pointer">JSON pointer of the house.</param>
/// <param name="Choice">Frame choices.</param>
/// <param name="PonyWallM">Pony wall, m.</param>
/// <param name="Curtains">Number of curtains.</param>
/// <param name="Snow">Ground snow with its edition.</param>
/// <param name="Wind">Wind with its edition.</param>
/// <param name="ElevationM">Ground above sea level, m.</param>
/// <param name="RiskCategory">1 to 4.</param>
/// <param name="RiskSource">Typed, or read from who enters.</param>
/// <param name="FreezeAlarm">Alarm or attendant at all hours in winter.</param>
/// <param name="Winter">What the schedule keeps in the snow season.</param>
/// <param name="BearingPa">Presumed bearing of the soil, Pa.</param>
/// <param name="Neighbours">The other buildings, for snow that falls or drifts between them.</param>
public sealed record FrameInput(
    string House,
    string Pointer,
    FrameChoice Choice,
    double PonyWallM,
    int Curtains,
    SnowSite Snow,
    WindSite Wind,
    double ElevationM,
    int RiskCategory,
    Source RiskSource,
    bool FreezeAlarm,
    WinterHeat Winter,
    double BearingPa,
    EqList<NeighbourRoof> Neighbours)
{
    /// <summary>Projects the job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="houseId">House id.</param>
    /// <returns>Frame's input.</returns>
    /// <exception cref="ArgumentException">No such house.</exception>
    public static FrameInput From(Job job, string houseId)
    {
        int index = job.Houses.ToList().FindIndex(h => h.Id == houseId);
        if (index < 0)
        {
            throw new ArgumentException($"No house '{houseId}'.", nameof(houseId));
        }

        House house = job.Houses[index];
        return new FrameInput(
            house.Id,
            $"/houses/{index}",
            house.Frame,
            house.PonyWallM,
            house.Equipment.Curtains,
            job.Site.Snow,
            job.Site.Wind,
            job.Site.ElevationM,
            job.Occupancy.RiskCategory,
            job.Occupancy.RiskSource,
            job.Occupancy.FreezeAlarm,
            WinterHeat.Of(house, job.Occupancy.HeatedAllWinter, job.Site.LatitudeDeg >= 0),
            job.Site.Ground.BearingPa,
            NeighbourRoof.Of(job, house));
    }
}

/// <summary>What a house's schedule keeps in the snow season, weeks 44 to 16 in the northern half of the world and half a year later in the southern.</summary>
/// <param name="HeatOff">True when there is no heat at some time of it, or the owner does not keep it heated.</param>
/// <param name="ColdestC">Lowest target of the schedule in it, °C.</param>
/// <param name="Period">Crop period that asks for it, as printed.</param>
/// <param name="FromWeek">Its first week.</param>
/// <param name="ToWeek">Its last week.</param>
public sealed record WinterHeat(bool HeatOff, double ColdestC, string Period, int FromWeek, int ToWeek)
{
    private const int FirstSnowWeek = 44;
    private const int LastSnowWeek = 16;

    /// <summary>Reads a house's schedule.</summary>
    /// <param name="house">The house.</param>
    /// <param name="heatedAllWinter">Whether the owner keeps it heated every winter day.</param>
    /// <param name="northern">True north of the equator.</param>
    /// <returns>The coldest that is kept.</returns>
    public static WinterHeat Of(House house, bool heatedAllWinter, bool northern)
    {
        bool hasHeat = house.Equipment.Heaters || house.Equipment.BenchPipeW > 0;
        CropPeriod? coldest = house.Schedule
            .Where(p => Weeks(p).Any(w => InSnowSeason(w, northern)))
            .MinBy(p => Math.Min(p.Day.TemperatureC, p.Night.TemperatureC));
        return coldest is null
            ? new WinterHeat(true, 0, "nothing in the snow season", 0, 0)
            : new WinterHeat(
                !hasHeat || !heatedAllWinter, Math.Min(coldest.Day.TemperatureC, coldest.Night.TemperatureC), coldest.Crop, coldest.FromWeek, coldest.ToWeek);
    }

    private static IEnumerable<int> Weeks(CropPeriod p)
    {
        int count = p.ToWeek >= p.FromWeek ? p.ToWeek - p.FromWeek + 1 : p.ToWeek + 52 - p.FromWeek + 1;
        return Enumerable.Range(0, count).Select(i => (p.FromWeek - 1 + i) % 52 + 1);
    }

    internal static bool InSnowSeason(int week, bool northern)
    {
        int here = northern ? week : (week + 25) % 52 + 1;
        return here is >= FirstSnowWeek or <= LastSnowWeek;
    }
}

/// <summary>A roof beside this house.</summary>
/// <param name="Id">Building id.</param>
/// <param name="Name">As printed.</param>
/// <param name="OnLeft">True when it stands beyond this house's left wall.</param>
/// <param name="GapM">Clear gap, m.</param>
/// <param name="EaveM">Its eave on this side, m.</param>
/// <param name="RidgeM">Its ridge, m.</param>
/// <param name="FacingRunM">Run of its slope that faces this house, m.</param>
/// <param name="WidthM">Its width across the gap, m.</param>
public sealed record NeighbourRoof(
    string Id, string Name, bool OnLeft, double GapM, double EaveM, double RidgeM, double FacingRunM, double WidthM)
{
    /// <summary>Buildings that stand beside a house within 15 m, overlapping it along the ridge.</summary>
    /// <param name="job">The job.</param>
    /// <param name="house">The house.</param>
    /// <returns>Houses, then link buildings.</returns>
    public static EqList<NeighbourRoof> Of(Job job, House house)
    {
        List<NeighbourRoof> roofs = [];
        foreach (House other in job.Houses.Where(h => h.Id != house.Id))
        {
            Add(
                roofs, house, other.Id, other.Name, other.OriginXM, other.LengthM, other.OriginYM, other.WidthM, other.Roof.LeftEaveM, other.Roof.RightEaveM,
                other.Roof.RidgeM, other.Roof.RidgeOffsetM);
        }

        foreach (LinkBuilding link in job.Links)
        {
            double ridgeM = link.EaveM + Math.Min(link.SizeXM, link.SizeYM) / 2 * link.RiseOverRun;
            Add(
                roofs, house, link.Id, link.Name, link.OriginXM, link.SizeXM, link.OriginYM, link.SizeYM, link.EaveM, link.EaveM, ridgeM, link.SizeYM / 2);
        }

        return roofs.ToEqList();
    }

    private static void Add(
        List<NeighbourRoof> roofs, House house, string id, string name, double xM, double lengthM, double yM, double widthM, double leftEaveM, double rightEaveM,
        double ridgeM, double ridgeOffsetM)
    {
        bool beside = Math.Min(xM + lengthM, house.OriginXM + house.LengthM) - Math.Max(xM, house.OriginXM) > 0.01;
        bool onLeft = yM + widthM / 2 < house.OriginYM + house.WidthM / 2;
        double gapM = onLeft ? house.OriginYM - (yM + widthM) : yM - (house.OriginYM + house.WidthM);
        if (!beside || gapM is < -0.02 or > 15)
        {
            return;
        }

        roofs.Add(new NeighbourRoof(
            id, name, onLeft, Math.Max(0, gapM), onLeft ? rightEaveM : leftEaveM, ridgeM, onLeft ? widthM - ridgeOffsetM : ridgeOffsetM, widthM));
    }
}
