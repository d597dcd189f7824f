using Glazewright.Design.Contracts;
using Glazewright.Science.Weather;

namespace Glazewright.Design.LightMaps;

/// <summary>Figures and findings of LightMaps.</summary>
internal static class LightMapWorkings
{
    private static readonly string[] Names =
        ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];

    private static readonly Source Photons = new Source.Paper("Faust and Logan 2018, HortScience 53:1250", "abstract: 0.007265 mol/Wh", Source.Mark.Read);

    private static readonly Source Geometry = new Source.FirstPrinciples("straight lines from the sky to the cell");

    private static readonly Source Sky = new Source.Paper(
        "Perez, Ineichen, Seals, Michalsky and Stewart 1990, Solar Energy 44:271", "all-sites coefficients", Source.Mark.ReadSecondHand);

    public static StageReport Report(LightInput input, LightMap map, int dark, int bright, int bars, bool hasSnow, string weather,
        double evenSkyMolPerM2Day, double floorM2)
    {
        string id = input.House + "/light";
        EqList<WorkingInput> inputs =
        [
            new WorkingInput("photons", "Photons per joule of sunlight, µmol/J", "", input.UmolPerJ, Unit.None, Photons),
            new WorkingInput("bars", "Members, sheet joints, equipment and curtain bundles in the light", "", bars, Unit.Count, Geometry),
            new WorkingInput("height", "Height of the map", "", map.HeightM, Unit.Metre, new Source.FirstPrinciples("mean bench height; floor without benches")),
        ];
        const string limits = "Bars opaque, the sun a point; neighbours dark themselves; curtain parked where nothing else is said; typical or synthetic year, not the darkest.";
        string method = $"Quarter-hour sun of the weather year ({weather}) and the sky's parts laid through covers and past every bar on to {map.CountX} × {map.CountY} cells, "
            + "256 rays a cell and direction; scattered and reflected light from every face by its form factor";
        List<Figure> figures = [];
        foreach (int m in new[] { dark, bright })
        {
            string word = Names[m].ToLowerInvariant();
            LightMonth month = map.Months[m];
            Observe($"{word}-mean", $"{Names[m]} daily light at the crop, mean of the map, without lamps", Unit.MolPerSquareMetreDay, month.MeanMolPerM2Day);
            Observe($"{word}-least", $"{Names[m]} daily light at the crop's darkest point, without lamps", Unit.MolPerSquareMetreDay, month.LeastMolPerM2Day);
            Observe($"{word}-evenness", $"{Names[m]} evenness, darkest over mean", Unit.None, month.EvennessRatio);
            Observe($"{word}-outside", $"{Names[m]} daily light outdoors", Unit.MolPerSquareMetreDay, map.OutsideMolPerM2Day[m]);
            if (map.OutsideMolPerM2Day[m] > 0)
            {
                figures.Add(Figure.Derive(
                    $"{id}/{word}-share", $"{Names[m]} daily light at the crop over outdoors", Unit.Fraction,
                    Term.Of("inside", figures[^4]) / Term.Of("outside", figures[^1]), new Source.FirstPrinciples("ratio")));
            }
        }

        Observe($"{Names[dark].ToLowerInvariant()}-mean-even-sky", $"The same in {Names[dark]} if all diffuse light came from an evenly bright sky (Liu and Jordan), for comparison", Unit.MolPerSquareMetreDay, evenSkyMolPerM2Day);
        double yearMol = map.Months.Select((m, i) => m.MeanMolPerM2Day * CommonYear.DaysIn(i + 1)).Sum();
        double outsideMol = map.OutsideMolPerM2Day.Select((m, i) => m * CommonYear.DaysIn(i + 1)).Sum();
        Observe("year-share", "Daily light at the crop over outdoors, whole year", Unit.Fraction, outsideMol > 0 ? yearMol / outsideMol : 0);
        Observe("strong-hours", $"Hours with the map's mean above {LightMap.StrongUmolPerM2S:0} µmol/m²s", Unit.Hour, map.Carpet.Mean.Count(v => v > LightMap.StrongUmolPerM2S));
        LightFate fate = map.Fates[dark];
        foreach ((string name, string label, double value) in new[]
        {
            ("around", "skyline and neighbours", fate.AroundFraction),
            ("opaque-roof", "opaque roof", fate.OpaqueRoofFraction),
            ("opaque-wall", "opaque walls, doors and placed openings", fate.OpaqueWallFraction),
            ("frame", "frame members and sheet joints", fate.FrameFraction),
            ("equipment", "hung equipment, chosen fans, louvers and wet wall", fate.EquipmentFraction),
            ("curtain", "the parked curtain", fate.CurtainFraction),
            ("cover", "the clean covering", fate.CoverFraction),
            ("dirt", "dirt, ageing and drops", fate.StateFraction),
            ("scattered", "scattering in the covering (part of it returns)", fate.ScatteredFraction),
        })
        {
            Observe("lost-" + name, $"{Names[dark]} light outdoors taken by {label}", Unit.Fraction, value);
        }

        Observe("direct", $"{Names[dark]} light outdoors that arrives straight", Unit.Fraction, fate.DirectFraction);
        Observe("returned", $"{Names[dark]} light outdoors that arrives scattered or thrown back", Unit.Fraction, fate.ReturnedFraction);
        foreach (LightPlane plane in map.Others)
        {
            string name = plane.Face == Form.FaceName.Floor ? "floor" : "far-wall";
            Observe($"{name}-mean", $"{plane.Name}: {Names[dark]} daily light, mean", Unit.MolPerSquareMetreDay, plane.Months[dark].MeanMolPerM2Day);
            Observe($"{name}-bright-mean", $"{plane.Name}: {Names[bright]} daily light, mean", Unit.MolPerSquareMetreDay, plane.Months[bright].MeanMolPerM2Day);
        }

        if (map.Drawn is { } drawn)
        {
            foreach (int m in new[] { dark, bright })
            {
                string word = Names[m].ToLowerInvariant();
                Observe($"{word}-drawn-mean", $"{Names[m]} daily light at the crop, mean of the map, with the curtain drawn all day", Unit.MolPerSquareMetreDay, drawn.Months[m].MeanMolPerM2Day);
                if (map.Months[m].MeanMolPerM2Day > 0)
                {
                    figures.Add(Figure.Derive(
                        $"{id}/{word}-drawn-share", $"{Names[m]} light with the curtain drawn over light with it open", Unit.Fraction,
                        Term.Of("drawn", figures[^1]) / Term.Of("open", $"{Names[m]} daily light with the curtain open", map.Months[m].MeanMolPerM2Day, Unit.MolPerSquareMetreDay, Geometry),
                        new Source.FirstPrinciples("ratio")));
                }
            }
        }

        foreach (ShadowTrack track in map.Shadows)
        {
            ShadowMoment noon = track.Moments.First(m => m.SolarHour == 12);
            Observe(
                $"shadow-{(track.Day.Contains("June", StringComparison.Ordinal) ? "june" : "december")}",
                $"Width of the largest member shadow at noon of {track.Day} ({track.MemberId})", Unit.Metre, noon.WidthM);
        }

        return new StageReport(
            figures.ToEqList(),
            Wishes(input, map, floorM2).ToEqList(),
            [
                "The frame's members, sheet joints, hung equipment and parked curtain are followed one by one; bracing, gutters, pipes and wires are not.",
                "Neighbours and skyline shade the map but throw no light back; a clear neighbour passes the square of its faces' mean transmittance.",
                "Light scattered or thrown back leaves each face evenly over its area; the crop has no height.",
                hasSnow
                    ? "Snow on the ground brightens the light that comes from below; snow lying on the covering is not counted."
                    : "The weather has no snow depth: bright snow on the ground is not counted, nor snow lying on the covering.",
                map.Drawn is null
                    ? "Lamps give no light in the maps, only shade; the curtain, where there is one, is parked all day."
                    : "Lamps give no light in the maps, only shade; the curtain is parked all day but in the map that has it drawn, which looks along 64 rays a cell and 96 sky directions; its cloth scatters evenly.",
                "Other framings keep the frame's lines and take usual sizes; they are not designed for the site's loads.",
            ]);

        void Observe(string name, string label, Unit unit, double value) =>
            figures.Add(Figure.Observe($"{id}/{name}", label, unit, value, method, inputs, limits, Sky));
    }

    // One finding a crop period that wishes for light: its darkest month.
    private static IEnumerable<Finding> Wishes(LightInput input, LightMap map, double floorM2)
    {
        foreach (LightWish wish in LightWish.Of(input.Schedule, map.Months))
        {
            Brief.CropPeriod period = wish.Period;
            int darkest = wish.DarkestMonth;
            double mean = wish.DarkestMolPerM2Day;
            double shortMol = period.LightWishMolPerM2Day - mean;
            if (shortMol <= 0)
            {
                continue;
            }

            // The job's lamps for all their hours: at most, since they rest in sun.
            double lampsMol = period.LampHours > 0 ? input.LampUmolPerS / Math.Max(period.PlantedFraction * floorM2, 1) * period.LampHours * 3600e-6 : 0;
            double leftMol = shortMol - lampsMol;
            double hours = period.LampHours > 0 ? period.LampHours : 18;
            double flux = leftMol * 1e6 / (hours * 3600);
            yield return new Finding(
                "light/below-wish",
                leftMol <= 0 ? Severity.Note : leftMol > 0.1 * period.LightWishMolPerM2Day ? Severity.Miss : Severity.Near,
                $"{input.House}/{period.Id}",
                FormattableString.Invariant(
                    $"{Names[darkest]} gives {period.Crop} {mean:0.0} of the {period.LightWishMolPerM2Day:0.0} mol/m² a day it is to have.")
                    + (lampsMol > 0.05 ? FormattableString.Invariant($" The job's lamps add at most {lampsMol:0.0} in {period.LampHours:0.#} h, less while they rest in sun.") : ""),
                leftMol <= 0
                    ? "The year's run tells what sun and lamps give together."
                    : FormattableString.Invariant(
                        $"{(lampsMol > 0.05 ? "Further lamps" : "Lamps")} of {flux:0} µmol/m²s for {hours:0.#} h a day would make up the {leftMol:0.0} mol; or a clearer roof, or another crop then."),
                Photons);
        }
    }
}
