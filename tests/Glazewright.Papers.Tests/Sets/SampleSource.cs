using Glazewright.Design.Behaviour;
using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Choices;
using Glazewright.Design.Contracts;
using Glazewright.Design.Cuts;
using Glazewright.Design.Document;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Design.GainTables;
using Glazewright.Design.Layout;
using Glazewright.Design.LightMaps;
using Glazewright.Design.Plant;
using Glazewright.Design.Price;
using Glazewright.Design.Program;
using Glazewright.Design.Rehearsals;
using Glazewright.Design.Services;
using Glazewright.Design.Takeoff;
using Glazewright.Design.Year;
using Glazewright.Papers.Sets;
using Glazewright.Science.Air;
using AirLoad = Glazewright.Science.Flow.AirLoad;

namespace Glazewright.Papers.Tests.Sets;

/// <summary>
/// A job of two houses with a head house whose shapes are computed and whose other results are made up for layout tests: the
/// numbers are chosen to be told apart in a file, and mean nothing.
/// </summary>
internal static class SampleSource
{
    private const double Ft = 0.3048;

    /// <summary>The contractor's own numbers, each of a kind that no other number of the job resembles.</summary>
    public static readonly double[] Secrets = [71_345.67, 8_123.45, 3_987.65, 12_777.89, 58.37, 613_579.31];

    public static PaperSource Make(UnitSystem units = UnitSystem.Us, int houses = 2, string name = "Two-Ridge Herb Yard", string date = "", double lengthM = 104 * Ft, int bays = 13)
    {
        Job job = JobOf(units, houses, name, date, lengthM, bays);
        FormResult form = FormStage.Run(FormInput.From(job));
        EqList<FrameResult> frames = job.Houses.Select(h => Frame(h.Id)).ToEqList();
        BodyResult body = BodyStage.Run(form, frames);
        EqList<HouseResults> results = job.Houses.Select((h, i) => Results(h, form.Building(h.Id), frames[i])).ToEqList();
        TakeoffResult takeoff = new(
            [new ShopMark("R-01", "tube-4x2x0.120", 5.79, 26.6, 0, 14, 31.2, "left rafters of A")],
            [new SheetPiece("S-01", "polycarbonate-16-triple", "A/roof-left", 1.05, 5.9, 30, 0.6)],
            [new TakeoffLine("tube-4x2x0.120", "Tube 4 × 2 × 0.120", ScopeSystem.Frame, 412.5, "m", "cut lengths of all members", ScopeBy.Us)],
            StageReport.Empty);
        CutsResult cuts = new([new SectionCuts("tube-4x2x0.120", [new BarPattern(7.315, 7, [new CutPiece("R-01", 5.79)], 1.5)], 7, 7, 7, "bars", true, 0.03)], StageReport.Empty);
        return new PaperSource(job, form, body, results, takeoff, cuts, Price(job), [new DefaultUsed("/tariffs/water", "6.00 $/1,000 gal", "a usual rural rate")], "0.0.0-test")
        {
            Services = ServicesStage.Run(
                ServicesInput.From(job), form, results.Select(r => r.Plant).ToEqList(), results.Select(r => r.Program).ToEqList(), results.Select(r => r.Layout).ToEqList()),
            WarmWind = Glazewright.Science.Weather.WindRose.Of([.. Enumerable.Range(0, 360).Select(i => (double)i)], [.. Enumerable.Range(0, 360).Select(i => 4 + 3 * Math.Cos((i - 230) * Math.PI / 180))]),
        };
    }

    private static PriceResult Price(Job job) => new(
        [new PricedLine("tube-4x2x0.120", "Tube", ScopeSystem.Frame, 412.5, "m", 19.41, Secrets[2], 118, ScopeBy.Us, PriceClass.Material, 118 / 412.5)],
        [new SystemCost(ScopeSystem.Frame, Secrets[2], 118)],
        1780,
        Secrets[0],
        Secrets[5],
        Secrets[1],
        4_444.44,
        Secrets[3],
        685_000,
        new QuoteResult(698_000, 660_000, 736_000, 1386, 2400, [139_600, 174_500, 174_500, 139_600, 69_800], 30, job.Scope),
        new StageReport(
            [
                Figure.State("price/labour-rate", "Labour rate", Unit.DollarPerHour, Secrets[4], new Source.Given("/pricing/labour"), confidential: true),
                Figure.Derive("price/margin", "Margin", Unit.Dollar, Term.Of("margin_secret", "Margin", Secrets[3], Unit.Dollar, new Source.Given("/pricing/margin")) * 1, new Source.FirstPrinciples("arithmetic"), confidential: true),
            ],
            [],
            []));

    private static Job JobOf(UnitSystem units, int houses, string name, string date, double lengthM, int bays)
    {
        CoverChoice clear = new("polycarbonate-16-triple", 0.95, 0.95, 0);
        CoverChoice panel = new("panel-76", 1, 1, 0.7);
        CropPeriod crop = new("herbs", "potted herbs", 1, 52, new ClimateTarget(22.2, 65), new ClimateTarget(16.7, 75), new DayMark.Sunrise(0), new DayMark.Sunset(0), 30, 26.7, 2.5, 0.7, 0, 12, false);
        House One(string id, string called, double y, double widthFt, double length, double leftFt, double rightFt, double ridgeFt, double leftPitch, double rightPitch) => new(
            id,
            called,
            0,
            y,
            widthFt * Ft,
            length,
            new RoofProfile(leftFt * Ft, rightFt * Ft, ridgeFt * Ft, leftPitch, rightPitch, SolvedRoofPart.None),
            bays,
            2.5 * Ft,
            [
                new(FaceName.Left, clear), new(FaceName.Right, panel), new(FaceName.End1, panel), new(FaceName.End2, clear),
                new(FaceName.RoofLeft, clear), new(FaceName.RoofRight, id == "A" ? panel : clear), new(FaceName.Floor, panel),
            ],
            panel,
            [
                new Opening("fan-1", OpeningKind.Fan, FaceName.End2, 4 * Ft, 3 * Ft, 3.5 * Ft, 3.5 * Ft, false),
                new Opening("fan-2", OpeningKind.Fan, FaceName.End2, 14 * Ft, 3 * Ft, 3.5 * Ft, 3.5 * Ft, false),
                new Opening("pad", OpeningKind.WetWall, FaceName.End1, 5 * Ft, 2.5 * Ft, 12 * Ft, 5 * Ft, false),
                new Opening("door-1", OpeningKind.Door, FaceName.End2, 9 * Ft, 0, 3 * Ft, 7 * Ft, true),
                new Opening("door-2", OpeningKind.DoubleDoor, FaceName.Left, 10 * Ft, 0, 6 * Ft, 7 * Ft, true),
            ],
            new FrameChoice("", "", "", 0, true, 1.2, 345e6, 144, 0, [7.315], 0.003, 18 * 0.0254, 4.5 * Ft),
            new EquipmentChoice(true, [], FaceName.End2, new Source.Default("/x", "lee end"), 0, 4, true, "", 0, 0, false, "", 0, true, [], 0, 1, "", 7 * Ft, true, [], 0, 0, "none", 0, 0, 0, true),
            [
                new Bench("1", 2.5 * Ft, 5.5 * Ft, 3 * Ft, length - 6 * Ft, 0.8), new Bench("2", 10.5 * Ft, 5.5 * Ft, 3 * Ft, length - 6 * Ft, 0.8),
            ],
            4 * Ft,
            [crop],
            1,
            true);
        List<House> all = [];
        if (houses > 0)
        {
            all.Add(One("A", "House A", (20 + 14) * Ft, 26, lengthM, 7.5, 9.25, 17, 0.5, 0.75));
        }

        if (houses > 1)
        {
            all.Add(One("B", "House B", 0, 20, Math.Min(lengthM, 72 * Ft), 7.5, 8.5, 12.5, 0.5, 0.7));
        }

        for (int i = 2; i < houses; i++)
        {
            all.Add(One("H" + i.ToString(System.Globalization.CultureInfo.InvariantCulture), "House", (74 + 40 * (i - 2)) * Ft, 26, lengthM, 7.5, 9.25, 17, 0.5, 0.75));
        }

        LinkBuilding head = new("head", LinkKind.HeadHouse, "Head house", -32 * Ft, 6 * Ft, 24 * Ft, 48 * Ft, 9 * Ft, 0.25, panel, [new Room("control", 8 * Ft, 12 * Ft)]);
        LinkBuilding link = new("link", LinkKind.Corridor, "Link", -8 * Ft, 38 * Ft, 8 * Ft, 8 * Ft, 8 * Ft, 0, panel, []);
        Site site = new(
            "a level plain", 42, -90, 201, "Etc/GMT+6", -6, 97, new WeatherChoice.File("demo.epw", ""), null, new SnowSite(1676, LoadEdition.Asce716, 0.35), new WindSite(47, WindExposure.C, 1, LoadEdition.Asce716), new GroundSite("silty clay", 71_800, 1.07, 0.2), [], []);
        return new Job(
            name,
            "",
            date,
            units,
            new Datum(PlanDatum.OutToOutOfSteel, HeightDatum.FinishedFloor, EaveDatum.TopOfSteel),
            site,
            new Lot(240 * Ft, 116.5 * Ft, -60 * Ft, -20 * Ft, 25 * Ft, 25 * Ft, 15 * Ft, 15 * Ft, 0.015, 7.3, ""),
            new Utilities(Phase.Single, 240, 200, 73, FuelKind.Propane, 2740, 5.7e-4, 276_000, 260, 200, "swale"),
            new Occupancy(Visitors.Customers, 2, new Source.Default("/occupancy", "customers come in"), "county", "as adopted", true, true),
            new HeldBand(1.5, 10),
            all.ToEqList(),
            houses > 0 ? [head, link] : [],
            [new ScopeLine(ScopeSystem.Frame, ScopeBy.Us, ""), new ScopeLine(ScopeSystem.Electrical, ScopeBy.OtherTrade, "licensed electrician"), new ScopeLine(ScopeSystem.Benches, ScopeBy.Owner, ""), new ScopeLine(ScopeSystem.Permits, ScopeBy.Excluded, "")],
            new Tariffs(2e-8, "2.10 $/gal propane", 3.9e-8, 0.009, 1.58, 0.15, ""),
            new Pricing("", Secrets[4], 0.0913, 0.0417, 0.1437, 0, 30, [0.2, 0.25, 0.25, 0.2, 0.1], []));
    }

    private static FrameResult Frame(string id) => new(
        id,
        [
            new SectionChoice(MemberRole.Rafter, "tube-4x2x0.120", 0.1016, 0.0508, 0.003, 8.3, false, new Answer<double>.Met(0.71, 0.41)),
            new SectionChoice(MemberRole.Column, "tube-4x4x0.1875", 0.1016, 0.1016, 0.0048, 14, false, new Answer<double>.Met(0.62, 0.6)),
            new SectionChoice(MemberRole.Purlin, "tube-2x2x0.083", 0.0508, 0.0508, 0.002, 3, false, new Answer<double>.Met(0.5, 1)),
        ],
        1676,
        1290,
        1.0,
        950,
        [new MemberCheck($"{id}/frame/rafter-left", MemberRole.Rafter, "D + S", 0.71, "combined bending and axial", 0.012, 310)],
        [new BaseReaction(FaceName.Left, 21_000, 4_100, 3_200, 0)],
        ["connections", "uplift at the anchors", "bracing along the house", "end walls", "foundation"],
        new StageReport([], [], ["Members only."]));

    private static DesignAir Air(BuildingForm form)
    {
        AirState summer = AirState.FromWetBulb(32.6, 23.2, 99_000);
        AirState winter = AirState.FromRelativeHumidity(-19.4, 0.78, 99_000);
        AirState night = AirState.FromRelativeHumidity(16.7, 0.8, 99_000);
        AirState damp = AirState.FromRelativeHumidity(6.5, 0.93, 99_000);
        Source typed = new Source.Given("/site/design");
        return new DesignAir(
            [
                new DesignCase("Coldest design night, 99.6 %", -19.4, winter.WetBulbC, 4.6, typed, -17.1, "heaters, to the night target"),
                new DesignCase("Hottest design day, 0.4 %", 32.6, 23.2, -1, typed, 31.9, "fans, wet wall"),
            ],
            summer,
            AirState.FromWetBulb(30, 25, 99_000),
            new AirLoad(120_000, 900, 32.6, 0.6 * form.FloorAreaM2, 420, 2.5, 0.35, 18),
            winter,
            night,
            damp,
            new NightBalance(AirState.FromRelativeHumidity(16.7, 0.71, 99_000), 5.3, form.Id + "/roof-left/cover", 0.0011, 0.0007, 0.0018),
            new NightSkies(6.7, -38, 1.4, 0.6, [new PathNight(form.Id + "/roof-left/cover", 13_600, 14_100, 15_200, 3.2), new PathNight(form.Id + "/infiltration", 3_100, 5_200, 1_900, 16.7)]),
            new VentilationCompared([new VentilationTerm("Sun kept inside, shade counted", 430), new VentilationTerm("carried away by the air", 221)], 190, 221, 1.02, 1.1, 0.9, 1));
    }

    private static HouseResults Results(House house, BuildingForm form, FrameResult frame)
    {
        string id = house.Id;
        DutyResult duty = new(
            id, new DesignConditions(-19.4, -26, 32.6, 23.2, 25, new Source.Given("/site/design")), 99_000, [new LossLine(id + "/roof-left/cover", FaceName.RoofLeft, 180, 2.1, 378)], 900, 700, 16.7, 33_700, 27_000, 25_000, 120_000, 0.01, 95_000, 12, 13.3, 13.3, 0.004, Air(form), StageReport.Empty);
        ExhaustPlant exhaust = new(
            [new FanUnit(id + "/fan-1", "fan-36", 0.914, 1.07), new FanUnit(id + "/fan-2", "fan-36", 0.914, 1.07), new FanUnit(id + "/fan-3", "fan-24", 0.61, 0.76)],
            [new OperatingPoint(1, 4.4, 20, 500), new OperatingPoint(2, 8.8, 22, 1000), new OperatingPoint(3, 13.3, 24.9, 1400)],
            [new OperatingPoint(3, 12.9, 31, 1450)],
            3,
            4,
            90,
            0.45,
            6.7);
        PlantResult plant = new(
            id,
            new Answer<ExhaustPlant>.Met(exhaust, 0.02),
            new Answer<WetWallPlant>.Missed(new WetWallPlant("pad-150", 3.66, 1.52, 0.15, 2.4, 0.78, 0.001, 250, 0.3, 0.01, 0.3), -0.2, "the opening is too small: the air runs 30 % too fast"),
            null,
            new Answer<HeatPlant>.Met(new HeatPlant([new HeaterUnit(id + "/heater-1", "heater-125", 36_600, 0.93, 250, false, true, 15, 60), new HeaterUnit(id + "/heater-2", "heater-125", 36_600, 0.93, 250, false, true, 15, 60)], 36_600, 16.9, 12.4), 1.1),
            new CurtainPlant("cloth", 7 * Ft, 200, 0.5, 0.4, 0.5, 0.1, 180, 370, 1),
            new CirculationPlant("haf-20", 6, 1.1, 90, 10, 0.3),
            null,
            null,
            0,
            0,
            [new ElectricLoad(id + "/fan-1", "exhaust fan", 3, 470, 240, false, 4, 20, true)],
            StageReport.Empty);
        List<PlacedItem> placed =
        [
            new(id + "/curtain", PlacedKind.Curtain, "curtain", new Point3(0.5, 0.15, 7 * Ft), new Point3(form.LengthM - 1, form.WidthM - 0.3, 0), FaceName.Floor),
            new(id + "/heater-1", PlacedKind.Heater, "heater", new Point3(2, 0.8, 2.2), new Point3(0.9, 0.7, 0.7), FaceName.Floor),
            new(id + "/heater-2", PlacedKind.Heater, "heater", new Point3(form.LengthM - 3, form.WidthM - 1.5, 2.2), new Point3(0.9, 0.7, 0.7), FaceName.Floor),
            new(id + "/fan-1", PlacedKind.Fan, "Fan 36 in", new Point3(form.LengthM, 0.6, 0.6), new Point3(0.4, 1.02, 1.02), FaceName.End2),
            new(id + "/fan-2", PlacedKind.Fan, "Fan 24 in", new Point3(form.LengthM, 4.3, 0.6), new Point3(0.4, 0.71, 0.71), FaceName.End2),
            new(id + "/wet-wall", PlacedKind.WetWall, "Wet wall", new Point3(-0.15, 1, 0.6), new Point3(0.15, 3.66, 1.52), FaceName.End1),
            new(id + "/louver-1", PlacedKind.Louver, "Louvers before the wet wall", new Point3(-0.35, 1.4, 0.6), new Point3(0.35, 2.9, 1.52), FaceName.End1),
            new(id + "/sensor", PlacedKind.Sensor, "sensor", new Point3(form.LengthM / 2, form.WidthM / 2, 1.2), new Point3(0.2, 0.2, 0.3), FaceName.Floor),
        ];
        for (int i = 0; i < 6; i++)
        {
            placed.Add(new($"{id}/circulation-{i}", PlacedKind.CirculationFan, "circulation fan", new Point3(3 + i % 3 * (form.LengthM - 6) / 2, i < 3 ? 1.5 : form.WidthM - 2, 2.3), new Point3(0.5, 0.5, 0.5), FaceName.Floor));
        }

        foreach (Bench b in house.Benches)
        {
            placed.Add(new($"{id}/bench-{b.Id}", PlacedKind.Bench, "bench", new Point3(b.StartXM, b.OffsetYM, 0), new Point3(b.LengthM, b.WidthM, b.HeightM), FaceName.Floor));
        }

        double[] sun = [5.1, 8, 13, 19, 24, 27, 26, 22, 16, 10, 6, 4.2];
        LightMap light = new(
            id, 20, 6, 0.8, sun.Select(m => new LightMonth(m, 0.8 * m, 0.8, Enumerable.Range(0, 120).Select(i => m * (0.8 + 0.4 * (i / 20) / 5)).ToEqList())).ToEqList(), sun.Select(m => 1.8 * m).ToEqList(),
            [new LightPlane("Wall away from the equator, seen from inside", FaceName.Right, 20, 4, form.LengthM, form.Roof.RightEaveM, sun.Select(m => new LightMonth(m, m, 1, Enumerable.Repeat(m, 80).ToEqList())).ToEqList())],
            sun.Select(_ => new LightFate(0.02, 0.1, 0.05, 0.1, 0.01, 0.03, 0.15, 0.04, 0.06, 0.44, 0.2)).ToEqList(),
            new LightCarpet(3, Hourly(500), Hourly(300), Hourly(200)),
            [new ShadowTrack("21 December", $"{id}/eave-left/01", [new ShadowMoment(9, 0.3, 7, 2, 2), new ShadowMoment(12, 0.2, 7, 5, 2)])],
            [new LightMoment("21 December", 12, 24.6, 180, 40, 12, Enumerable.Range(0, 480).Select(i => i % 7 == 0 ? 0f : 0.6f).ToEqList(), 0.5)],
            [new FramingLight("As designed: slender tube", 4.2, 27, 0.8, 0.1, 0.2), new FramingLight("Timber", 3.8, 25, 0.7, 0.2, 0.4)],
            new DrawnLight(
                sun.Select(m => new LightMonth(0.4 * m, 0.36 * m, 0.9, Enumerable.Range(0, 120).Select(i => 0.4 * m * (0.9 + 0.2 * (i / 20) / 5)).ToEqList())).ToEqList(),
                sun.Select(_ => new LightFate(0.02, 0.1, 0.05, 0.1, 0.01, 0.33, 0.15, 0.04, 0.06, 0.14, 0.2)).ToEqList()),
            new StageReport([], [], ["Bracing throws no shadow here."]));
        GainRow row = new(1, 0.2, 0, 0.5, 0.1, 0.05, 0.15);
        GainSet set = new([row], row, row, row);
        ProgramDocument program = new(id, [], [], [], [], new HumidityControl(0, 0, [], 0, 0, 0, 0, [], 0, 0), null, null, [], [], StageReport.Empty);
        return new HouseResults(house, form, frame, new GainTable(id, 360, 90, set, set, 0.6, StageReport.Empty), duty, plant, new LayoutResult(id, placed.ToEqList(), 150, StageReport.Empty), light, program, Year(id))
        {
            Rehearsals =
            [
                new Rehearsal(
                    "heater-dead", $"{id}/heater-1 does not light on the coldest night", 7, 0, 0, true, 8,
                    [
                        new RehearsalRun("as in the file", 133, -4, [18f, 9f, 1f]), new RehearsalRun("windy, dry, curtain open", 92, -7, [18f, 6f, -2f]),
                        new RehearsalRun("calm, damp, curtain shut", null, 1, [18f, 10f, 4f]),
                    ]),
            ],
            Behaviour = new BehaviourResult(
                id,
                new ExhaustBehaviour(
                    [new FlowAt(30, 0, 7.1, 54, true), new FlowAt(90, 0, 13.3, 24.9, false)], [new FlowAt(90, 0, 12.9, 31, false), new FlowAt(90, 6.7, 10.1, 40, true), new FlowAt(90, 11.2, 3.6, 72, true)], 52,
                    [new AirAt(0, 24.7, 0.89), new AirAt(8, 25.9, 0.84), new AirAt(16, 27, 0.79), new AirAt(24, 28.1, 0.74), new AirAt(31.7, 29.2, 0.7)], 27.5, 12.9, 2.03, 1),
                new FogBehaviour(30e-6, 2.1, 0.03, 7.7, 0.1, 1.1, 2, 1.4, 0, 0.05, 0.84),
                new MixingBehaviour(51, 76, 228, 4.6, 15.2, 8.6, 231),
                new CurtainBehaviour(0.15, [new GapAt(0, 0, 16.7, 6.3), new GapAt(0.3048, 0.166, 16.1, 6.8)], 11.2, 0.66, 0.08),
                new PressureBehaviour([new PressureAt(0, 5, 5, 0), new PressureAt(11.2, -2, -54, 0.31)], 0.2, 2.4),
                [new KindSized("Dehumidifier", false, "2.3 kg/h, about 1.1 kW", "the crop's moisture on the drying night", "Condensate to the drain; coils ice up in cold air.")]),
            Choices = new ChoicesResult(
                id,
                [new FixedChoice("Fans: 2 × fan-36, 1 × fan-24", "28,200 cfm", "27,300 cfm at 0.125 in. w.g.", -0.03, "3 × fan-36: 29,500 cfm")],
                [Choice(ChoiceKind.Chosen, "As chosen"), Choice(ChoiceKind.Fans, "One fan fewer of the largest"), Choice(ChoiceKind.Heat, "One heater more, for when one is dead"), Choice(ChoiceKind.Curtain, "Two curtains")]),
            FirstCosts = [new FirstCost(Secrets[1], []), new FirstCost(Secrets[2], []), new FirstCost(Secrets[3], []), new FirstCost(Secrets[0], [])],
        };

        static Alternative Choice(ChoiceKind kind, string label) => new(kind, label, 13.3, 29.4, 0.83, 27.2, 1450, 0.02, 73_200, 16.7, 12.4, 27_000, 32_900, 12_345, []);
    }

    private static EqList<double> Hourly(double most) =>
        Enumerable.Range(0, 8760).Select(h => Math.Max(0, most * Math.Sin(((h % 24) - 6) * Math.PI / 12))).ToEqList();

    private static YearResult Year(string id)
    {
        float[] inside = new float[8760];
        float[] outside = new float[8760];
        float[] target = new float[8760];
        for (int h = 0; h < 8760; h++)
        {
            double season = Math.Sin(2 * Math.PI * (h / 24.0 - 100) / 365);
            double day = Math.Sin(2 * Math.PI * (h % 24 - 9) / 24.0);
            outside[h] = (float)(9 + 14 * season + 6 * day + 3 * Math.Sin(h * 0.013));
            target[h] = h % 24 is >= 7 and < 18 ? 22.2f : 16.7f;
            inside[h] = (float)Math.Max(target[h] - 0.8, outside[h] + 3 * day + 1);
        }

        EqList<float> zero = new float[8760].ToEqList();
        HeldCounters held = new(8760, 7900, 7000, 8760, 6800, 620, 240, 900, 300, 900, 200, 310, 0, 420, 120, 500, 40);
        YearMonth month = new(2e10, 2.2e10, 3e9, 3200, 9000, 610, 0.8);
        return new YearResult(
            id,
            "demo.epw, a typical year",
            false,
            held,
            [new PeriodCounters("herbs", held, held)],
            new YearExtremes(15.6, 20_000, 31.7, 280_000, -21, 34, -24, 35),
            Enumerable.Range(0, 12).Select(m => month with { Cost = 400 + 60 * Math.Abs(6 - m), PeakPowerW = 2500 + 300 * (6 - Math.Abs(6 - m)) }).ToEqList(),
            [new MotorCounters(id + "/fan-1", 2100, 3100)],
            new HourColumns(inside.ToEqList(), zero, inside.ToEqList(), outside.ToEqList(), target.ToEqList(), zero, zero, zero, zero, inside.Zip(target, (i, t) => i - t).ToEqList()),
            2.4e11,
            2.6e11,
            4e10,
            4300,
            110_000,
            90_000,
            12_000,
            7300,
            6200,
            8400,
            1,
            1e-9,
            1e-9,
            [],
            StageReport.Empty);
    }
}
