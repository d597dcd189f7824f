using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;
using Glazewright.Design.Services;
using Glazewright.Design.Takeoff;

namespace Glazewright.Design.Tests.Takeoff;

/// <summary>Two houses and a head house of the tests' own, with sections and a plant typed in: no stage but Form, Body and Takeoff is asked.</summary>
internal static class TwoHouses
{
    private const double Ft = 0.3048;

    private static readonly CoverChoice Clear = new("polycarbonate-16-triple", 0.95, 0.95, 0.2);
    private static readonly CoverChoice Panel = new("panel-76", 1, 1, 0.6);

    public static HouseShape A { get; } = Shape("A", 34 * Ft, 26, 104, new RoofWish(7.5 * Ft, 9.25 * Ft, 17 * Ft, 0.5, 0.75), 13,
        [FaceName.Right, FaceName.RoofRight, FaceName.End1],
        [
            new("door-1", OpeningKind.DoubleDoor, FaceName.End1, 4 * Ft, 0, 6 * Ft, 7 * Ft, true),
            new("door-2", OpeningKind.Door, FaceName.End2, 12 * Ft, 0, 3 * Ft, 7 * Ft, true),
        ]);

    public static HouseShape B { get; } = Shape("B", 0, 20, 72, new RoofWish(7.5 * Ft, 8.5 * Ft, 12.5 * Ft, 0.5, null), 9,
        [FaceName.Right, FaceName.End1],
        [
            new("door-1", OpeningKind.DoubleDoor, FaceName.End1, 4 * Ft, 0, 6 * Ft, 7 * Ft, true),
            new("door-2", OpeningKind.Door, FaceName.End2, 9 * Ft, 0, 3 * Ft, 7 * Ft, true),
        ]);

    public static EqList<LinkBuilding> Links { get; } = EqList.Create<LinkBuilding>(
    [
        new("H", LinkKind.HeadHouse, "Head house", -32 * Ft, 6 * Ft, 24 * Ft, 48 * Ft, 9 * Ft, 0.25, Panel,
            EqList.Create<Room>([new("control room", 8 * Ft, 12 * Ft), new("pump and boiler room", 10 * Ft, 12 * Ft), new("wash", 8 * Ft, 8 * Ft), new("toilet", 6 * Ft, 8 * Ft)])),
        new("L1", LinkKind.Corridor, "Link A", -8 * Ft, 38 * Ft, 8 * Ft, 8 * Ft, 8 * Ft, 0.25, Panel, EqList<Room>.Empty),
        new("L2", LinkKind.Corridor, "Link B", -8 * Ft, 8 * Ft, 8 * Ft, 8 * Ft, 7.5 * Ft, 0.25, Panel, EqList<Room>.Empty),
    ]);

    public static FormResult Form { get; } = FormStage.Run(new FormInput(
        EqList.Create<HouseShape>([A, B]), Links, 97, 42, new Lot(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, "")));

    public static BodyResult Body { get; } = BodyStage.Run(Form, EqList.Create<FrameResult>([Sections("A"), Sections("B")]));

    public static TakeoffInput Input { get; } = new(
        UnitSystem.Us,
        EqList.Create<TakeoffHouse>(
        [
            new("A", 1.5 * Ft, 4.5 * Ft, 4 * Ft, true, EqList.Create<Bench>(
                [new("a1", 1 * Ft, 5.5 * Ft, 2 * Ft, 98 * Ft, 0.8), new("a2", 9 * Ft, 5.5 * Ft, 2 * Ft, 98 * Ft, 0.8), new("a3", 17 * Ft, 6 * Ft, 2 * Ft, 98 * Ft, 0.8)])),
            new("B", 1.5 * Ft, 4.5 * Ft, 4 * Ft, true, EqList.Create<Bench>(
                [new("b1", 1 * Ft, 4.5 * Ft, 2 * Ft, 66 * Ft, 0.8), new("b2", 8 * Ft, 4.5 * Ft, 2 * Ft, 66 * Ft, 0.8), new("b3", 15 * Ft, 4.5 * Ft, 2 * Ft, 66 * Ft, 0.8)])),
        ]),
        Links,
        EqList<ScopeLine>.Empty,
        FuelKind.Propane,
        240 * Ft);

    public static EqList<PlantResult> Plants { get; } = EqList.Create<PlantResult>(
    [
        Plant("A", 2, 2, wetWallM: (14 * Ft, 6 * Ft), nozzles: 0, heaterKw: 36.6, heaters: 2, curtainM2: 26 * 104 * Ft * Ft, circulation: 6, lampW: 0, benchPipeW: 0),
        Plant("B", 1, 1, wetWallM: (0, 0), nozzles: 24, heaterKw: 22, heaters: 1, curtainM2: 0, circulation: 4, lampW: 4500, benchPipeW: 13_200),
    ]);

    public static ServicesResult Services { get; } = Served(FuelKind.Propane);

    public static TakeoffResult Takeoff { get; } = TakeoffStage.Run(Input, Form, Body, Plants, EqList<LayoutResult>.Empty, Services);

    /// <summary>What Services says of the two houses with this fuel on the lot; nothing is laid out in them.</summary>
    public static ServicesResult Served(FuelKind fuel) => ServicesStage.Run(
        new ServicesInput(
            new Utilities(Phase.Single, 240, 200, 240 * Ft, fuel, 2740, 1e-3, 3e5, 100, 100, "swale"),
            [new ServedHouse("A", 26 * Ft, 104 * Ft, 0.6, 0), new ServedHouse("B", 20 * Ft, 72 * Ft, 0.6, 13_200)],
            Links.Select(l => new ServedLink(l.Id, l.Kind, l.Name, l.SizeXM, l.SizeYM, l.Id == "H", l.Id == "H")).ToEqList(),
            false),
        Form, Plants, [], Plants.Select(p => new LayoutResult(p.House, [], 0, StageReport.Empty)).ToEqList());

    private static HouseShape Shape(string id, double originYM, double widthFt, double lengthFt, RoofWish wish, int bays, FaceName[] panels, Opening[] openings)
    {
        RoofProfile roof = Assert.IsType<RoofSolution.Closed>(RoofSolver.Solve(wish, widthFt * Ft)).Profile;
        return new HouseShape(
            id, id, 0, originYM, widthFt * Ft, lengthFt * Ft, roof, bays, 2.5 * Ft,
            Enum.GetValues<FaceName>().Select(face => new FaceCovering(face, panels.Contains(face) ? Panel : Clear)).ToEqList(),
            Panel, openings.ToEqList(), 0, 4 * Ft, 24 * Ft);
    }

    private static FrameResult Sections(string house) => new(
        house,
        EqList.Create<SectionChoice>(
        [
            new(MemberRole.Column, "tube-4x4x0.188", 0.1016, 0.1016, 0.00478, 14.1, true, new Answer<double>.Met(0.7, 0.3)),
            new(MemberRole.Rafter, "tube-4x2x0.120", 0.1016, 0.0508, 0.00305, 7.0, true, new Answer<double>.Met(0.8, 0.2)),
            new(MemberRole.Purlin, "tube-2x2x0.120", 0.0508, 0.0508, 0.00305, 4.6, true, new Answer<double>.Met(0.8, 0.2)),
        ]),
        1676, 1200, 1.0, 900, EqList<MemberCheck>.Empty, EqList<BaseReaction>.Empty, EqList<string>.Empty, StageReport.Empty);

    private static PlantResult Plant(
        string house, int large, int small, (double WidthM, double HeightM) wetWallM, int nozzles, double heaterKw, int heaters, double curtainM2, int circulation, double lampW, double benchPipeW)
    {
        FanUnit[] fans =
        [
            .. Enumerable.Range(1, large).Select(i => new FanUnit($"{house}/fan-{i}", "fan-large", 0.9144, 1.0)),
            .. Enumerable.Range(1, small).Select(i => new FanUnit($"{house}/fan-{large + i}", "fan-small", 0.6096, 0.7)),
        ];
        HeaterUnit[] units = [.. Enumerable.Range(1, heaters).Select(i => new HeaterUnit($"{house}/heater-{i}", "heater", heaterKw * 1000, 0.93, 200, false, true, 15, 60))];
        int loads = fans.Length + heaters + circulation + 4;
        return new PlantResult(
            house,
            new Answer<ExhaustPlant>.Met(new ExhaustPlant(fans.ToEqList(), [], [], 1.5, 2.2 * large, 30, 0.4, 7), 0.1),
            wetWallM.WidthM > 0 ? new Answer<WetWallPlant>.Met(new WetWallPlant("pad-150", wetWallM.WidthM, wetWallM.HeightM, 0.15, 1.7, 0.85, 0.001, 400, 0.5, 0.1, 0.2), 0.1) : null,
            nozzles > 0 ? new Answer<FogPlant>.Met(new FogPlant("fog-1000", nozzles, 0.025, 0.9, 6.9e6, 1500), 0.1) : null,
            new Answer<HeatPlant>.Met(new HeatPlant(units.ToEqList(), heaterKw * 1000, 16, 12), 0.1),
            curtainM2 > 0 ? new CurtainPlant("curtain-energy", 2.1, curtainM2, 0.4, 0.4, 0.5, 0.02, 180, 370, 1) : null,
            new CirculationPlant("circulation-18", circulation, 0.8, 120, 9, 0.4),
            house == "B" ? new PressurePlant("filter-fan", 0.5, 10, 250, 4) : null,
            null,
            lampW,
            benchPipeW,
            Enumerable.Range(1, loads).Select(i => new ElectricLoad($"{house}/load-{i}", "load", 1, 400, 230, false, 3, 15, false)).ToEqList(),
            StageReport.Empty);
    }
}
