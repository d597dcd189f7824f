using Glazewright.Design.Body;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.GainTables;
using Glazewright.Design.Layout;
using Glazewright.Science.Light;
using Glazewright.Science.Weather;

namespace Glazewright.Design.LightMaps;

/// <summary>LightMaps: daily light on a grid over the benches (or the floor), month by month, with the curtain open.</summary>
public static class LightMapStage
{
    /// <summary>Raise when results change.</summary>
    public const int Version = 3;

    private const double CellAcrossM = 0.5;
    private const double CellAlongM = 1.2;

    /// <summary>Maps one house.</summary>
    /// <param name="input">What the job says.</param>
    /// <param name="form">Shapes.</param>
    /// <param name="body">Members.</param>
    /// <param name="layout">Equipment overhead.</param>
    /// <param name="weather">Hourly year.</param>
    /// <param name="cancel">Looked at while the sun directions are traced.</param>
    /// <returns>The map.</returns>
    /// <exception cref="ArgumentException">No such house, or an unknown cover kind.</exception>
    public static LightMap Run(
        LightInput input, FormResult form, BodyResult body, LayoutResult layout, WeatherYear weather, CancellationToken cancel)
    {
        BuildingForm house = form.Building(input.House);
        Enclosure enclosure = HouseEnclosure.Of(
            house, form.Shared, body.Members, input.GlazingBarFraction, input.FrameReflectance, input.CropReflectance);
        Surroundings around = HouseSurroundings.Of(
            house, form, body.Members, input.GlazingBarFraction, input.RangeBearingDeg, input.Neighbours, input.Horizon);
        SunGrid grid = SunGrid.Even(72, 36);
        SkyMonths sky = SkyMonths.Of(weather, input.RangeBearingDeg, input.AlbedoFraction, grid);
        EnclosureGainTable gains = EnclosureGains.Compute(enclosure, null, grid, around);
        cancel.ThrowIfCancellationRequested();

        double heightM = input.Benches.Count == 0 ? 0 : input.Benches.Average(b => b.HeightM);
        int countX = Math.Clamp((int)Math.Round(house.LengthM / CellAlongM), 4, 60);
        int countY = Math.Clamp((int)Math.Round(house.WidthM / CellAcrossM), 4, 60);
        Vector3d[] points = Points(house, countX, countY, heightM);
        double[][] energy = Direct(new PointLight(enclosure, around), points, sky, grid, cancel);
        double overheadFraction = OverheadFraction(layout, house, heightM);
        EqList<LightMonth> months = Enumerable.Range(0, 12).Select(m =>
        {
            double evenWh = Even(gains, sky, m, house.FloorAreaM2, input.CropReflectance);
            double perDay = (1 - overheadFraction) / CommonYear.DaysIn(m + 1);
            double[] molPerM2Day = [.. energy[m].Select(e => PlantLight.DailyMolM2((e + evenWh) * perDay, input.UmolPerJ))];
            double mean = molPerM2Day.Average();
            double least = molPerM2Day.Min();
            return new LightMonth(mean, least, mean > 0 ? least / mean : 1, EqList.Own(molPerM2Day));
        }).ToEqList();
        EqList<double> outside = Enumerable.Range(0, 12)
            .Select(m => PlantLight.DailyMolM2(sky.Global[m] / CommonYear.DaysIn(m + 1), input.UmolPerJ)).ToEqList();
        LightMap map = new(input.House, countX, countY, heightM, months, outside, StageReport.Empty);
        return map with { Report = LightMapWorkings.Report(input, house, map, overheadFraction, weather.Provenance.Label) };
    }

    private static Vector3d[] Points(BuildingForm house, int countX, int countY, double heightM)
    {
        Vector3d[] points = new Vector3d[countX * countY];
        for (int j = 0; j < countY; j++)
        {
            for (int i = 0; i < countX; i++)
            {
                points[j * countX + i] = new Vector3d((i + 0.5) * house.LengthM / countX, (j + 0.5) * house.WidthM / countY, heightM);
            }
        }

        return points;
    }

    // Unscattered light, Wh/m² a month at each point: the sun's directions one by one, then the even sky.
    private static double[][] Direct(PointLight light, Vector3d[] points, SkyMonths sky, SunGrid grid, CancellationToken cancel)
    {
        double[][] energy = [.. Enumerable.Range(0, 12).Select(_ => new double[points.Length])];
        double[] factor = new double[points.Length];
        for (int node = 0; node < grid.Count; node++)
        {
            if (sky.Beam.All(b => b[node] <= 0))
            {
                continue;
            }

            cancel.ThrowIfCancellationRequested();
            light.FromBeam(points, node % grid.Azimuths * 360.0 / grid.Azimuths, grid.ElevationsDeg[node / grid.Azimuths], factor);
            for (int m = 0; m < 12; m++)
            {
                AddTo(energy[m], factor, sky.Beam[m][node]);
            }
        }

        light.FromEvenSky(points, factor);
        for (int m = 0; m < 12; m++)
        {
            AddTo(energy[m], factor, sky.Dome[m]);
        }

        return energy;
    }

    private static void AddTo(double[] energy, double[] factor, double strength)
    {
        for (int k = 0; k < energy.Length; k++)
        {
            energy[k] += strength * factor[k];
        }
    }

    // Scattered by covers and reflected inside: what reaches the crop plane beyond its direct part, spread evenly, Wh/m² a month.
    private static double Even(EnclosureGainTable gains, SkyMonths sky, int month, double floorM2, double cropReflectance)
    {
        double sum = sky.Dome[month] * (Arrives(gains.Dome) - gains.DomeDirectOnCropM2)
            + sky.Horizon[month] * Arrives(gains.Horizon)
            + sky.Ground[month] * Arrives(gains.Ground);
        for (int node = 0; node < gains.Grid.Count; node++)
        {
            double energy = sky.Beam[month][node];
            if (energy > 0)
            {
                sum += energy * (Arrives(gains.Beam[node]) - gains.BeamDirectOnCropM2[node]);
            }
        }

        return Math.Max(0, sum) / floorM2;

        double Arrives(Science.Light.GainRow row) => row.CropPlaneM2 / (1 - cropReflectance);
    }

    private static double OverheadFraction(LayoutResult layout, BuildingForm house, double heightM)
    {
        double areaM2 = layout.Placed
            .Where(p => p.Kind is PlacedKind.LampRow or PlacedKind.Heater or PlacedKind.CirculationFan && p.Corner.ZM > heightM)
            .Sum(p => p.Size.XM * p.Size.YM);
        return Math.Min(0.3, areaM2 / house.FloorAreaM2);
    }
}
