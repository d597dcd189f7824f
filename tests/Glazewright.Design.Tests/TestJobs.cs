using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Tests;

/// <summary>An invented job for tests: one uneven house, everything to be sized. Tests change what they need with "with".</summary>
public static class TestJobs
{
    private static readonly Source Typed = new Source.Given("/test");

    public static CoverChoice TripleWall { get; } = new("polycarbonate-16-triple", 0.93, 0.97, 0);

    public static CoverChoice Panel { get; } = new("panel-76", 1, 1, 0.8);

    public static Job OneHouse() => new(
        "Test yard",
        "",
        "",
        UnitSystem.Us,
        new Datum(PlanDatum.OutToOutOfSteel, HeightDatum.FinishedFloor, EaveDatum.TopOfSteel),
        new Site(
            "Test place",
            42,
            -88,
            200,
            "America/Chicago",
            -6,
            95,
            new WeatherChoice.File("demo-continental-42N.epw.gz", ""),
            new DesignConditions(-20, -24, 33.3, 23.7, 25.5, Typed),
            new SnowSite(1600, LoadEdition.Asce716, 0.45),
            new WindSite(47, WindExposure.C, 1, LoadEdition.Asce716),
            new GroundSite("silty clay", 72_000, 1.07, 0.2),
            [],
            []),
        new Lot(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, ""),
        new Utilities(Phase.Single, 240, 200, 60, FuelKind.Propane, 2740, 0.0006, 300_000, 200, 180, "swale"),
        new Occupancy(Visitors.StaffOnly, 1, Typed, "county", "adopted code", true, true),
        new HeldBand(1.5, 7),
        [House("A", 0, 0)],
        [],
        [],
        new Tariffs(2.10 / 96.5e6, "2.10 $/gal propane", 0.14 / 3.6e6, 0.009, 1.6, 0.2, ""),
        new Pricing("", 58, 0.09, 0.04, 0.14, 0, 30, [0.25, 0.25, 0.25, 0.25], []));

    public static House House(string id, double xM, double yM)
    {
        RoofProfile roof = ((RoofSolution.Closed)RoofSolver.Solve(new RoofWish(2.3, null, 5, 0.5, 0.75), 7.9)).Profile;
        return new House(
            id,
            "House " + id,
            xM,
            yM,
            7.9,
            31.7,
            roof,
            13,
            0.75,
            [
                new(FaceName.Left, TripleWall), new(FaceName.Right, Panel), new(FaceName.End1, Panel), new(FaceName.End2, TripleWall),
                new(FaceName.RoofLeft, TripleWall), new(FaceName.RoofRight, Panel),
            ],
            Panel,
            [new Opening("door-1", OpeningKind.DoubleDoor, FaceName.End1, 0.3, 0, 1.8, 2.1, true)],
            new FrameChoice("", "", "", 0, true, 1.3, 317e6, 100, 0, [6.1, 7.3], 0.003, 0.45, 1.35),
            new EquipmentChoice(
                true, [], FaceName.End2, Typed, 0.3, 4, true, "", 0, 0, false, "", 0, true, [], 0, 1, "", 0, true, [], 0, 0, "none", 0, 0, 0, true),
            [new Bench("bench-1", 0.9, 1.7, 1, 29, 0.8), new Bench("bench-2", 3.4, 1.8, 1, 29, 0.8)],
            1.2,
            [
                new CropPeriod(
                    "herbs", "potted herbs", 1, 52, new ClimateTarget(22, 65), new ClimateTarget(17, 75),
                    new DayMark.Sunrise(0), new DayMark.Sunset(0), 30, 27, 2, 0.6, 0, 12, false),
            ],
            0.7,
            true);
    }

    /// <summary>Two houses with a corridor between them.</summary>
    /// <returns>The job.</returns>
    public static Job TwoHouses() => OneHouse() with
    {
        Houses = [House("A", 0, 10.5), House("B", 0, 0)],
        Links = [new LinkBuilding("C", LinkKind.Corridor, "Corridor", 3, 7.9, 2.5, 2.6, 2.2, 0, Panel, [])],
    };
}
