using Glazewright.Design.Brief;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.GainTables;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Tests.Duty;

/// <summary>The demo weather and a plain gain table, for stages that stand on both.</summary>
public static class DesignDay
{
    private static readonly Lazy<WeatherYear> s_year = new(Read);

    public static WeatherYear Year => s_year.Value;

    /// <summary>A gain table by projected area alone: the left roof and wall let 60 % to the crop plane; each row sums to 1.</summary>
    public static GainTable Gains(BuildingForm form)
    {
        const double Step = 15;
        List<GainRow> beam = [];
        for (double azimuthDeg = 0; azimuthDeg < 360; azimuthDeg += Step)
        {
            for (double elevationDeg = 0; elevationDeg <= 90; elevationDeg += Step)
            {
                double a = azimuthDeg * Math.PI / 180;
                double e = elevationDeg * Math.PI / 180;
                // House axes: azimuth runs clockwise from +x seen from above, so towards −y.
                Point3 sun = new(Math.Cos(e) * Math.Cos(a), -Math.Cos(e) * Math.Sin(a), Math.Sin(e));
                double aperture = form.Faces.Where(f => f.Name is FaceName.Left or FaceName.RoofLeft)
                    .Sum(f => f.AreaM2 * Math.Max(f.Plane.Normal.Dot(sun), 0));
                beam.Add(Row(aperture));
            }
        }

        GainSet set = new([.. beam], Row(0.5 * form.FloorAreaM2), Row(0.2 * form.FloorAreaM2), Row(0.2 * form.FloorAreaM2));
        return new GainTable(form.Id, Step, Step, set, set, 0.5, Design.Contracts.StageReport.Empty);
    }

    public static DutyResult Duty(Job job, string house = "A")
    {
        BuildingForm form = FormStage.Run(FormInput.From(job)).Building(house);
        return DutyStage.Run(DutyInput.From(job, house), form, Gains(form), Year);
    }

    public static Job With(Job job, Func<EquipmentChoice, EquipmentChoice> change) =>
        job with { Houses = [.. job.Houses.Select(h => h with { Equipment = change(h.Equipment) })] };

    private static GainRow Row(double apertureM2) => new(apertureM2, 0.08, 0, 0.60, 0.06, 0.04, 0.22);

    private static WeatherYear Read()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            string path = Path.Combine(at.FullName, "examples", "weather", "demo-continental-42N.epw.gz");
            if (File.Exists(path))
            {
                return ((WeatherReading.Read)WeatherFile.Read(File.ReadAllBytes(path))).Year;
            }
        }

        throw new FileNotFoundException("examples/weather/demo-continental-42N.epw.gz");
    }
}
