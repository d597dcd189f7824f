using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.GainTables;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;
using Glazewright.Design.Year;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Tests.Year;

/// <summary>An invented house, plant, program and year for the tests of the year.</summary>
internal static class YearScenes
{
    private static readonly Source Typed = new Source.Given("/test");

    public static Job Job { get; } = TestJobs.OneHouse();

    public static BuildingForm Form { get; } = FormStage.Run(FormInput.From(Job)).Building("A");

    public static YearInput Input { get; } = YearInput.From(Job, "A");

    /// <summary>A continental year from invented normals.</summary>
    public static MinuteWeather Weather { get; } = MinuteWeather.Expand(MakeWeather(42));

    public static GainTable Gains { get; } = MakeGains(Form);

    public static DutyResult Duty { get; } = new(
        "A", Job.Site.Design!, 98_900, [], 900, 700, 17, 34_000, 26_000, 20_000, 100_000, 0.02, 60_000, 8, 9, 9, 0.003, Glazewright.Design.Tests.Duty.MadeUpAir.Of, StageReport.Empty);

    public static PlantResult Plant { get; } = new(
        "A",
        new Answer<ExhaustPlant>.Met(
            new ExhaustPlant(
                [new("A/fan-1", "fan", 0.9, 1), new("A/fan-2", "fan", 0.9, 1)],
                [new(1, 4.5, 12, 450), new(2, 8.4, 20, 900)],
                [new(1, 4.3, 18, 460), new(2, 7.8, 30, 930)],
                2.4, 3.4, 60, 0.4, 7),
            0.05),
        new Answer<WetWallPlant>.Met(new WetWallPlant("pad", 4, 1.5, 0.15, 1.3, 0.8, 0.001, 370, 0.4, 0.03, 0.3), 0.1),
        null,
        new Answer<HeatPlant>.Met(
            new HeatPlant(
                [
                    new("A/heater-1", "heater", 29_000, 0.82, 150, false, true, 12, 60),
                    new("A/heater-2", "heater", 29_000, 0.82, 150, false, true, 12, 60),
                ],
                29_000, 10, 7),
            0.2),
        new CurtainPlant("cloth", 2.2, 0.96 * Form.FloorAreaM2, 0.5, 0.3, 0.5, 0.02, 180, 250, 1),
        new CirculationPlant("stir", 4, 0.8, 90, 10, 0.4),
        null,
        null,
        0,
        0,
        [],
        StageReport.Empty);

    public static ProgramDocument Program { get; } = MakeProgram();

    public static YearResult Run(ProgramDocument? program = null, PlantResult? plant = null, MinuteWeather? weather = null, YearInput? input = null) =>
        YearStage.Run(input ?? Input, Form, Gains, Duty, plant ?? Plant, program ?? Program, weather ?? Weather, null, TestContext.Current.CancellationToken);

    public static WeatherYear MakeWeather(double latitudeDeg)
    {
        WeatherStation station = new("Invented", "", "", "", "0", latitudeDeg, -88, -6, 200);
        double[] meanC = [-6, -4, 3, 10, 16, 21, 24, 23, 18, 11, 4, -3];
        double[] global = [1700, 2600, 3700, 4900, 5800, 6400, 6300, 5500, 4300, 3000, 1800, 1400];
        MonthlyNormals[] months =
        [
            .. Enumerable.Range(0, 12).Select(m =>
            {
                int at = latitudeDeg > 0 ? m : (m + 6) % 12;
                return MonthlyNormals.FromGlobal(
                    station, m + 1, meanC[at], meanC[at] + 5, meanC[at] - 5, 4, 0.6, meanC[at] - 5, global[at], 0.18, 4);
            }),
        ];
        return SyntheticYear.Make(station, months, 7, 270);
    }

    // A light table good enough for books and controls: clear faces by their cosine, fixed shares.
    private static GainTable MakeGains(BuildingForm form)
    {
        (double X, double Y, double Z, double AreaM2)[] clear =
        [
            .. form.Faces.Where(f => f.Name != FaceName.Floor)
                .SelectMany(f => f.Zones.Where(z => z.Cover.Kind != "panel-76").Select(z => (f.Plane.Normal.XM, f.Plane.Normal.YM, f.Plane.Normal.ZM, z.NetM2))),
        ];
        GainRow Row(double apertureM2, bool drawn) => drawn
            ? new GainRow(apertureM2, 0.15, 0.16, 0.25, 0.04, 0.05, 0.35)
            : new GainRow(apertureM2, 0.15, 0, 0.50, 0.08, 0.05, 0.22);
        GainSet Set(bool drawn)
        {
            List<GainRow> beam = [];
            for (int i = 0; i < 24; i++)
            {
                for (int j = 0; j <= 9; j++)
                {
                    double a = i * 15 * Math.PI / 180, e = j * 10 * Math.PI / 180;
                    (double x, double y, double z) = (Math.Cos(e) * Math.Cos(a), -Math.Cos(e) * Math.Sin(a), Math.Sin(e));
                    beam.Add(Row(clear.Sum(f => f.AreaM2 * Math.Max(0, f.X * x + f.Y * y + f.Z * z)), drawn));
                }
            }

            return new GainSet(
                beam.ToEqList(),
                Row(clear.Sum(f => f.AreaM2 * (1 + f.Z) / 2), drawn),
                Row(clear.Sum(f => f.AreaM2 * Math.Sqrt(1 - f.Z * f.Z)), drawn),
                Row(clear.Sum(f => f.AreaM2 * (1 - f.Z) / 2), drawn));
        }

        return new GainTable("A", 15, 10, Set(false), Set(true), 0.6, StageReport.Empty);
    }

    private static ProgramDocument MakeProgram()
    {
        CropPeriod crop = Input.Schedule[0];
        return new ProgramDocument(
            "A",
            [new ProgramPeriod("herbs", 1, 365, crop.Day, crop.Night, crop.DayStarts, crop.DayEnds, crop.RampMinutes, 1, 0.5)],
            [
                new("A/fan-1", ActuatorKind.Fan, 120, 120, 0, "fans"),
                new("A/fan-2", ActuatorKind.Fan, 120, 120, 0, "fans"),
                new("A/louver", ActuatorKind.Louver, 0, 0, 60, ""),
                new("A/pump", ActuatorKind.WetWallPump, 120, 120, 0, ""),
                new("A/heater-1", ActuatorKind.Heater, 120, 180, 0, "heaters"),
                new("A/heater-2", ActuatorKind.Heater, 120, 180, 0, "heaters"),
                new("A/curtain", ActuatorKind.Curtain, 0, 0, 180, ""),
                new("A/circulation", ActuatorKind.Circulation, 60, 60, 0, ""),
            ],
            [
                new("cool-1", 0, -0.5, 30, [new("A/louver", 1), new("A/fan-1", 1)]),
                new("cool-2", 1, 0.3, 60, [new("A/louver", 1), new("A/fan-1", 1), new("A/fan-2", 1)]),
                new("cool-3", 1.5, 0.5, 60, [new("A/louver", 1), new("A/fan-1", 1), new("A/fan-2", 1), new("A/pump", 1)]),
            ],
            [
                new("heat-1", 0, -0.5, 30, [new("A/heater-1", 1)]),
                new("heat-2", 1, 0.3, 60, [new("A/heater-1", 1), new("A/heater-2", 1)]),
            ],
            new HumidityControl(8, 4, [], -10, 10, 4, 92, [], 20, 100),
            new CurtainControl("A/curtain", 20, 12, 650, 1, 0.6, 0.03, 0.1, 120, false),
            null,
            [
                new Interlock.NotBoth("A/fan-1", "A/heater-1"), new Interlock.NotBoth("A/fan-1", "A/heater-2"),
                new Interlock.NotBoth("A/fan-2", "A/heater-1"), new Interlock.NotBoth("A/fan-2", "A/heater-2"),
                new Interlock.OnlyWith("A/pump", "A/fan-1"),
            ],
            [],
            StageReport.Empty);
    }
}
