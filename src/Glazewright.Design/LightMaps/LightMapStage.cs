using Glazewright.Design.Body;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.GainTables;
using Glazewright.Design.Layout;
using Glazewright.Science.Light;
using Glazewright.Science.Light.Shadows;
using Glazewright.Science.Weather;

namespace Glazewright.Design.LightMaps;

/// <summary>LightMaps: daily light at bench height (or on the floor), below the benches and on the far wall, month by month, past every member.</summary>
public static class LightMapStage
{
    /// <summary>Raise when results change.</summary>
    public const int Version = 9;

    /// <summary>Maps one house on its own.</summary>
    /// <param name="input">What the job says.</param>
    /// <param name="form">Shapes.</param>
    /// <param name="body">Members.</param>
    /// <param name="layout">Equipment overhead and benches.</param>
    /// <param name="weather">Hourly year.</param>
    /// <param name="cancel">Looked at while the sun directions are traced.</param>
    /// <returns>The map.</returns>
    /// <exception cref="ArgumentException">No such house, or an unknown cover kind.</exception>
    public static LightMap Run(
        LightInput input, FormResult form, BodyResult body, LayoutResult layout, WeatherYear weather, CancellationToken cancel) =>
        Of(input, form, body, layout, null, weather, cancel);

    /// <summary>Maps one house by the beams that its gain table was made of.</summary>
    /// <param name="input">What the job says.</param>
    /// <param name="form">Shapes.</param>
    /// <param name="body">Members.</param>
    /// <param name="layout">Equipment overhead and benches.</param>
    /// <param name="views">What its faces see of each other.</param>
    /// <param name="fitted">Traced with the same body and layout, and the same curtain.</param>
    /// <param name="weather">Hourly year.</param>
    /// <param name="cancel">Looked at while the sun directions are traced.</param>
    /// <returns>The map.</returns>
    /// <exception cref="ArgumentException">No such house, or an unknown cover kind.</exception>
    public static LightMap Run(
        LightInput input, FormResult form, BodyResult body, LayoutResult layout, HouseViews views, FittedGains fitted, WeatherYear weather, CancellationToken cancel) =>
        Of(input, form, body, layout, (views, fitted), weather, cancel);

    private static LightMap Of(
        LightInput input, FormResult form, BodyResult body, LayoutResult layout, (HouseViews Views, FittedGains Fitted)? known, WeatherYear weather, CancellationToken cancel)
    {
        SunGrid grid = GainTableStage.Grid;
        SkyMonths sky = SkyMonths.Of(weather, input.RangeBearingDeg, input.AlbedoFraction, grid);
        LightScene scene = LightScene.Of(input, form, body, layout);
        HouseSources sources = Sources(scene, known, sky, grid);
        cancel.ThrowIfCancellationRequested();

        PlaneLight level = PlaneLight.Of(scene, sources, scene.Level(scene.HeightM), ScanFineness.Usual, cancel);
        EqList<LightMonth> months = Months(level, sky, input);
        EqList<double> outside = Enumerable.Range(0, 12)
            .Select(m => PlantLight.DailyMolM2(sky.Global[m] / CommonYear.DaysIn(m + 1), input.UmolPerJ)).ToEqList();

        // The month that is darkest outside and the one half a year away: December and June in the north.
        int dark = LightMap.DarkestMonth(outside);
        int bright = (dark + 6) % 12;
        int darkest = Enumerable.Range(0, level.Cells).MinBy(k => months[dark].PointMolPerM2Day[k]);
        LightMap map = new(
            input.House, scene.CountX, scene.CountY, scene.HeightM, months, outside,
            Others(scene, sources, sky, layout, cancel),
            Enumerable.Range(0, 12).Select(m => level.Fate(sky, m)).ToEqList(),
            CarpetOfYear.Of(input, weather, grid, level, darkest),
            ShadowDays.Of(scene),
            NoonPictures.Of(scene),
            OtherFramings.Compare(
                scene, sources.Light, form, body, layout, sky, grid, OtherFramings.Row("As designed: slender tube", scene, level, sky, dark, bright), dark, bright, cancel),
            Drawn(scene, known, sky, grid, cancel),
            StageReport.Empty);
        // Every sun direction of the even sky's year is in the tables: both skies have the same beams.
        SkyMonths even = SkyMonths.Of(weather, input.RangeBearingDeg, input.AlbedoFraction, grid, evenSky: true);
        return map with
        {
            Report = LightMapWorkings.Report(
                input, map, dark, bright, scene.Bars.Count, Enumerable.Range(0, CommonYear.Hours).Any(h => weather.SnowDepthM[h] > 0), weather.Provenance.Label,
                level.Month(even, dark, input.UmolPerJ).MeanMolPerM2Day, form.Building(input.House).FloorAreaM2),
        };
    }

    // Below a cloth most light is scattered, so fewer rays and sky directions do.
    private static DrawnLight? Drawn(
        LightScene scene, (HouseViews Views, FittedGains Fitted)? known, SkyMonths sky, SunGrid grid, CancellationToken cancel)
    {
        if (scene.WithCurtainDrawn() is not { } drawn)
        {
            return null;
        }

        HouseSources sources = Sources(drawn, known, sky, grid);
        cancel.ThrowIfCancellationRequested();
        PlaneLight level = PlaneLight.Of(drawn, sources, drawn.Level(drawn.HeightM), new ScanFineness(1, 1), SkyDome.Coarse, cancel);
        return new DrawnLight(Months(level, sky, scene.Input), Enumerable.Range(0, 12).Select(m => level.Fate(sky, m)).ToEqList());
    }

    private static HouseSources Sources(LightScene scene, (HouseViews Views, FittedGains Fitted)? known, SkyMonths sky, SunGrid grid) => known is var (views, fitted)
        ? HouseSources.Of(
            scene, scene.Drawn is null ? fitted.Traced[0].With(views.Open) : fitted.Traced[1].With(views.Drawn), fitted.CropReflectance, sky, grid)
        : HouseSources.Of(new HouseLight(scene.Enclosure, scene.Drawn, scene.Around), sky, grid, [.. Enumerable.Range(0, 12)]);

    private static EqList<LightPlane> Others(
        LightScene scene, HouseSources sources, SkyMonths sky, LayoutResult layout, CancellationToken cancel)
    {
        List<LightPlane> others = [];
        NamedBar[] benches = [.. HouseBars.Benches(layout)];
        if (scene.HeightM > 0 && benches.Length > 0)
        {
            Enclosure withBenches = Enclosure.Of(scene.Enclosure.Faces, [.. scene.Enclosure.Bars, .. benches.Select(b => b.Bar)]);
            Add("Floor, below and between the benches", FaceName.Floor, scene.Level(0), plane =>
                PlaneLight.Below(scene, withBenches, sources, plane, ScanFineness.Usual, cancel));
        }

        (FaceName face, ReceivingPlane wall) = scene.FarWall();
        Add("Wall away from the equator, seen from inside", face, wall, plane => PlaneLight.Of(scene, sources, plane, ScanFineness.Usual, cancel));
        return others.ToEqList();

        void Add(string name, FaceName on, ReceivingPlane plane, Func<ReceivingPlane, PlaneLight> light) => others.Add(new LightPlane(
            name, on, plane.CellsU, plane.CellsV, plane.LengthUM, plane.LengthVM, Months(light(plane), sky, scene.Input)));
    }

    private static EqList<LightMonth> Months(PlaneLight plane, SkyMonths sky, LightInput input) =>
        Enumerable.Range(0, 12).Select(m => plane.Month(sky, m, input.UmolPerJ)).ToEqList();
}
