using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Services;

/// <summary>Loads the climate plant does not bring: lights, receptacles, head house and control room. Allowances by rule, each said so.</summary>
internal static class AllowanceLoads
{
    /// <summary>Fixture taken: 40 W, sealed against water (common practice).</summary>
    public const double FixtureW = 40;

    /// <summary>Floor for a fixture in a house, m²: light to walk and work by.</summary>
    public const double HouseFixtureM2 = 20;

    /// <summary>Floor for a fixture in a head house, corridor or control room, m².</summary>
    public const double RoomFixtureM2 = 5;

    /// <summary>A receptacle along each long wall of a house and in corridors, m.</summary>
    public const double HouseReceptacleM = 12;

    /// <summary>A receptacle along the walls of head house and control room, m.</summary>
    public const double RoomReceptacleM = 4;

    /// <summary>A receptacle counts so, VA (NEC 220.14(I), from memory).</summary>
    public const double ReceptacleVa = 180;

    /// <summary>Heat pump of head house and control room, electric input, W a square metre.</summary>
    public const double ComfortWPerM2 = 30;

    /// <summary>Smallest such unit, W.</summary>
    public const double ComfortLeastW = 1000;

    /// <summary>Water heater of a wash or toilet room, W.</summary>
    public const double WaterHeaterW = 1440;

    private const double LightsPowerFactor = 0.9;

    public static IEnumerable<LoadLine> Lines(ServicesInput input)
    {
        PanelSystem system = PanelSystem.Of(input.Utilities.Phase, input.Utilities.ServiceV, input.Metric);
        double neutralV = system.NeutralV;
        foreach (ServedHouse house in input.Houses)
        {
            yield return Lights(house.Id, neutralV, house.WidthM * house.LengthM, HouseFixtureM2);
            yield return Receptacles(house.Id, neutralV, 2 * Steps(house.LengthM, HouseReceptacleM));
        }

        double comfortV = system.PairV > 0 && neutralV < 200 ? system.PairV : neutralV;
        foreach (ServedLink link in input.Links)
        {
            bool rooms = link.Kind != LinkKind.Corridor;
            double areaM2 = link.SizeXM * link.SizeYM;
            yield return Lights(link.Id, neutralV, areaM2, RoomFixtureM2);
            yield return Receptacles(link.Id, neutralV, rooms ? Steps(2 * (link.SizeXM + link.SizeYM), RoomReceptacleM) : Steps(Math.Max(link.SizeXM, link.SizeYM), HouseReceptacleM));
            if (rooms)
            {
                double watts = Math.Max(ComfortWPerM2 * areaM2, ComfortLeastW);
                yield return Line(link.Id, "comfort", "Heat pump, allowance", 1, watts, comfortV, 0.9, LoadKind.Appliance);
            }

            if (link.WetRooms)
            {
                yield return Line(link.Id, "water-heater", "Water heater at the wash room, allowance", 1, WaterHeaterW, neutralV, 1, LoadKind.Appliance);
            }
        }
    }

    private static int Steps(double lengthM, double stepM) => Math.Max(1, (int)Math.Ceiling(lengthM / stepM - 1e-9));

    private static LoadLine Lights(string building, double volts, double areaM2, double eachM2) =>
        Line(building, "lights", "Work lights, allowance", Steps(areaM2, eachM2), FixtureW, volts, LightsPowerFactor, LoadKind.Lights);

    private static LoadLine Receptacles(string building, double volts, int count) =>
        Line(building, "receptacles", "Receptacles, allowance", count, ReceptacleVa, volts, 1, LoadKind.Receptacles);

    private static LoadLine Line(string building, string id, string label, int count, double watts, double volts, double powerFactor, LoadKind kind)
    {
        double currentA = watts / (volts * powerFactor);
        double ratio = kind == LoadKind.Receptacles ? 1 : PowerServices.ContinuousRatio;
        return new LoadLine(
            building, $"{building}/{id}", label, count, watts, 0, volts, false, currentA, false, currentA, "no inrush counted", LoadSeason.Always, 1, ratio * currentA, false, kind);
    }
}
