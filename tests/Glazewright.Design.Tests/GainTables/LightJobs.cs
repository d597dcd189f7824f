using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.GainTables;
using Glazewright.Design.Layout;
using Glazewright.Design.LightMaps;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Tests.GainTables;

/// <summary>Runs the light stages on test jobs, with 100 × 50 mm tube for every member.</summary>
internal static class LightJobs
{
    private static readonly Lazy<WeatherYear> DemoYear = new(ReadDemo);

    public static WeatherYear Weather => DemoYear.Value;

    public static FormResult Form(Job job) => FormStage.Run(FormInput.From(job));

    public static BodyResult Body(FormResult form, double widthM = 0.05) => new(
        form.Buildings.SelectMany(b => b.Members.Select(m => new MemberSolid(m, b.Id, "tube", 0.1, widthM, 0.003, 5, m.LengthM, 0, 0))).ToEqList(),
        StageReport.Empty);

    public static GainTable Gains(Job job, double widthM = 0.05)
    {
        FormResult form = Form(job);
        return Gains(GainInput.From(job, "A", CatalogueReader.Generic), form, Body(form, widthM));
    }

    public static GainTable Gains(GainInput input, FormResult form, BodyResult body) =>
        GainTableStage.Run(input, form, body, Views(input, form), CancellationToken.None);

    /// <summary>With the curtain drawn too, which the bare table leaves out.</summary>
    public static GainTable BothWays(Job job)
    {
        FormResult form = Form(job);
        GainInput input = GainInput.From(job, "A", CatalogueReader.Generic);
        return GainTableStage.Fitted(
            input, form, Body(form), new LayoutResult("A", [], 0, StageReport.Empty), Views(input, form), Gains(input, form, Body(form)), CancellationToken.None).Table;
    }

    public static HouseViews Views(GainInput input, FormResult form) => HouseViews.Of(new HouseViewsInput(input.House, input.Curtain, input.SecondCurtain), form);

    public static LightMap Map(Job job, double lampUmolPerS = 0)
    {
        FormResult form = Form(job);
        return LightMapStage.Run(
            LightInput.From(job, "A") with { LampUmolPerS = lampUmolPerS }, form, Body(form), new LayoutResult("A", [], 0, StageReport.Empty), Weather, CancellationToken.None);
    }

    public static Job Turned(Job job, double bearingDeg) => job with { Site = job.Site with { RangeBearingDeg = bearingDeg } };

    public static Job Covered(Job job, params (FaceName Face, CoverChoice Cover)[] covers) => job with
    {
        Houses = job.Houses.Select(h => h with
        {
            Coverings = h.Coverings.Select(c =>
                covers.Any(x => x.Face == c.Face) ? c with { Cover = covers.First(x => x.Face == c.Face).Cover } : c).ToEqList(),
        }).ToEqList(),
    };

    private static WeatherYear ReadDemo()
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
