using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.LightMaps;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Light;

/// <summary>The light report: where the light goes, month by month, for the grower and whoever places crops and lamps.</summary>
public static class LightReport
{
    /// <summary>The report.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <returns>Sun and site first, then a chapter a house; null when no house has light.</returns>
    public static Report? Of(PaperSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        HouseResults[] houses = [.. source.Houses.Where(h => h.Light.Months.Count == 12 && h.Light.Fates.Count == 12 && h.Light.Framings.Count > 0)];
        if (houses.Length == 0)
        {
            return null;
        }

        string name = source.Job.Name.Length > 0 ? source.Job.Name : "Unnamed job";
        List<Block> blocks =
        [
            new Block.Opening(name, "Where the light goes", [$"Weather: {houses[0].Year.Weather}", "Predicted for a typical year, not the darkest; not warranted"]),
            new Block.Picture(
                SunPath.Draw(source.Job.Site.LatitudeDeg, source.Job.Site.RangeBearingDeg, source.Job.Site.Horizon, 82),
                "Sun paths in solar hours: horizon outside, zenith in the middle, north up. The dash-dotted line is the ridge's bearing; what the skyline hides is grey."),
            new Block.TableOf(SunTable.Of(source.Job.Site)),
            new Block.Paragraph(SunTable.Note(source.Job.Site), Quiet: true),
        ];
        foreach (HouseResults house in houses)
        {
            blocks.AddRange(Chapter(source, house));
        }

        return new Report(
            name + ": light", "Light inside the houses by month, place and cause", name + " · light", PaperDate.Of(source.Job), PaperDate.Size(source.Job), blocks);
    }

    internal static IEnumerable<Block> Chapter(PaperSource source, HouseResults house)
    {
        Said said = new(source.Job.Units);
        LightMap light = house.Light;
        int dark = LightMap.DarkestMonth(light.OutsideMolPerM2Day);
        int bright = (dark + 6) % 12;
        string darkName = Said.Month(dark + 1);
        string brightName = Said.Month(bright + 1);
        LightMonth darkMonth = light.Months[dark];
        yield return new Block.NewPage();
        yield return new Block.Heading(1, $"House {house.Form.Id}");
        yield return new Block.Lead(light.OutsideMolPerM2Day[dark] <= 0 ? $"In {darkName} the sun stays down; all the light there is comes in the brighter months." : FormattableString.Invariant(
            $"In {darkName} {darkMonth.MeanMolPerM2Day:0.0} of the {light.OutsideMolPerM2Day[dark]:0.0} mol/m² a day outdoors reach {(light.HeightM > 0 ? "the benches" : "the floor")}; the darkest place has {100 * darkMonth.EvennessRatio:0} % of the mean."));
        yield return new Block.Paragraph(FormattableString.Invariant(
            $"In {brightName} it is {light.Months[bright].MeanMolPerM2Day:0.0} mol/m² a day; the mean of the map is above {LightMap.StrongUmolPerM2S:0} µmol/m²s, more than most crops use, in {light.Carpet.Mean.Count(v => v > LightMap.StrongUmolPerM2S):#,0} hours of the year: hours for shade."));
        yield return new Block.Picture(
            MonthMaps.Draw($"light-months-{house.Form.Id}", $"House {house.Form.Id}: light by month", light.CountX, light.CountY, MonthMaps.WithYear(light.Months), [.. Enumerable.Range(0, 13)], house.Form.LengthM / house.Form.WidthM, Said.WidthMm),
            $"Daily light {(light.HeightM > 0 ? "at bench height" : "on the floor")}, plan as on the range plan, one scale for the year. A cell is {said.Text(house.Form.LengthM / light.CountX, Unit.Metre)} by {said.Text(house.Form.WidthM / light.CountY, Unit.Metre)}: smaller cells would find darker spots, so compare the darkest place only between maps of such cells.");
        if (light.Drawn is { } drawn)
        {
            yield return new Block.Heading(2, "With the curtain drawn");
            yield return new Block.Paragraph(FormattableString.Invariant(
                $"If the curtain stayed drawn all day, {drawn.Months[bright].MeanMolPerM2Day:0.0} mol/m² a day would be left in {brightName} and {drawn.Months[dark].MeanMolPerM2Day:0.0} in {darkName}: {Share(drawn.Months[bright], light.Months[bright])} and {Share(drawn.Months[dark], light.Months[dark])} % of what an open curtain lets through. The darkest place has {100 * drawn.Months[bright].EvennessRatio:0} % of the mean in {brightName}, against {100 * light.Months[bright].EvennessRatio:0} % with it open: what cloth scatters, it also evens out."));
            yield return new Block.Picture(
                MonthMaps.Draw(
                    $"light-drawn-{house.Form.Id}", $"House {house.Form.Id}: light by month with the curtain drawn", light.CountX, light.CountY, drawn.Months, [dark, (dark + 3) % 12, bright, (dark + 9) % 12],
                    house.Form.LengthM / house.Form.WidthM, Said.WidthMm),
                "The same plan with the curtain drawn from wall to wall, on a scale of its own.");
        }

        yield return new Block.Heading(2, "Where it goes");
        yield return new Block.Picture(
            LossBars.Draw($"light-causes-{house.Form.Id}", $"House {house.Form.Id}: where the light outdoors goes", Rows(light.Fates[dark], light.Fates[bright]), darkName, brightName, Said.WidthMm),
            "Shares of the light that would fall on the same spot outdoors. Losses, scattering and straight arrival make 100 %; what returns after scattering or reflection comes on top of the straight light.");
        if (light.Moments.Count > 0)
        {
            yield return new Block.Picture(
                MomentMaps.Draw($"light-moments-{house.Form.Id}", $"House {house.Form.Id}: direct sun at single moments", light.Moments, house.Form.LengthM / house.Form.WidthM, Said.WidthMm),
                $"Share of the direct sun outdoors that falls {(light.HeightM > 0 ? "at bench height" : "on the floor")} on a clear day, solar time: the shadows of members, joints, doors and equipment.");
        }

        yield return new Block.Heading(2, "Sun in the section");
        yield return new Block.Picture(
            SectionHours.Draw(house, source.Job.Site.LatitudeDeg, source.Job.Site.RangeBearingDeg, Said.WidthMm),
            "Solar time, rays in the plane of the section, seen from end 2; thick lines are opaque.");
        yield return new Block.Heading(2, "The year hour by hour");
        yield return new Block.Picture(
            CarpetPlot.Draw($"light-year-{house.Form.Id}", $"House {house.Form.Id}: mean of the map", "µmol/m²s", light.Carpet.Mean, CarpetPlot.Even(Ramp.Sequential, 100, 100, 8), Said.WidthMm, 40),
            "Photosynthetic light, mean of the whole map.");
        yield return new Block.Picture(
            CarpetPlot.Draw($"light-darkest-{house.Form.Id}", $"House {house.Form.Id}: the darkest place", "µmol/m²s", light.Carpet.Darkest, CarpetPlot.Even(Ramp.Sequential, 100, 100, 8), Said.WidthMm, 40),
            $"The same at the place that is darkest in {darkName}, {Place(light, house, said)}.");
        yield return new Block.Heading(2, "Shadows and framings");
        if (light.Shadows.Count > 0)
        {
            yield return new Block.TableOf(Shadows(light, said));
            yield return new Block.Paragraph("The member whose shadow is largest at noon, through the day in solar time; places are measured from end 1 and from the left wall.", Quiet: true);
        }

        yield return new Block.Paragraph("The same house and frame lines with other members, sheet joints and equipment unchanged. Sizes are common for such widths, not designed for this site's loads.", Quiet: true);
        yield return new Block.TableOf(Framings(light, said, darkName, brightName));

        foreach (LightPlane plane in light.Others)
        {
            yield return new Block.Heading(2, plane.Name);
            yield return new Block.Picture(
                MonthMaps.Draw(
                    $"light-{(plane.Face == FaceName.Floor ? "floor" : "wall")}-{house.Form.Id}", $"House {house.Form.Id}: {Lower(plane.Name)}", plane.CountU, plane.CountV, plane.Months, [dark, (dark + 3) % 12, bright, (dark + 9) % 12],
                    plane.LengthUM / plane.LengthVM, Said.WidthMm),
                plane.Face == FaceName.Floor ? "Daily light on the floor; below benches the light is what comes in from the sides." : $"Daily light on the {FaceWord(plane.Face)}, seen from inside, floor at the bottom.");
        }
    }

    private static LossRow[] Rows(LightFate dark, LightFate bright)
    {
        (string Cause, Func<LightFate, double> Of, bool Arrives)[] rows =
        [
            ("Skyline and neighbours", f => f.AroundFraction, false),
            ("Opaque roof", f => f.OpaqueRoofFraction, false),
            ("Opaque walls, doors, placed openings", f => f.OpaqueWallFraction, false),
            ("Frame members and sheet joints", f => f.FrameFraction, false),
            ("Equipment, chosen fans, louvers, wet wall", f => f.EquipmentFraction, false),
            ("Parked curtain", f => f.CurtainFraction, false),
            ("Covering, clean", f => f.CoverFraction, false),
            ("Dirt, ageing, drops", f => f.StateFraction, false),
            ("Scattered by the covering", f => f.ScatteredFraction, false),
            ("Arrives straight", f => f.DirectFraction, true),
            ("Returns scattered or reflected", f => f.ReturnedFraction, true),
        ];
        return [.. rows.Where(r => r.Arrives || r.Of(dark) > 0.0005 || r.Of(bright) > 0.0005).Select(r => new LossRow(r.Cause, r.Of(dark), r.Of(bright), r.Arrives))];
    }

    private static Table Shadows(LightMap light, Said said)
    {
        List<IReadOnlyList<string>> rows = [];
        foreach (ShadowTrack track in light.Shadows)
        {
            foreach (ShadowMoment moment in track.Moments.Where(m => m.SolarHour % 3 == 0 || m == track.Moments[0] || m == track.Moments[^1]))
            {
                rows.Add(
                [
                    track.Day, track.MemberId, moment.SolarHour.ToString("0", CultureInfo.InvariantCulture) + " h",
                    said.Text(moment.WidthM, Unit.Metre), said.Text(moment.CentreXM, Unit.Metre), said.Text(moment.CentreYM, Unit.Metre),
                ]);
            }
        }

        return new Table(
            [
                new Column("Day", 26), new Column("Member", 52), new Column("Solar hour", 22, Along.End), new Column("Shadow width", 24, Along.End),
                new Column("Middle from end 1", 24, Along.End), new Column("from left wall", 24, Along.End),
            ],
            rows);
    }

    private static Table Framings(LightMap light, Said said, string darkName, string brightName) => new(
        [
            new Column("Framing", 60), new Column($"{darkName}, mol/m² a day", 24, Along.End), new Column($"{brightName}, mol/m² a day", 24, Along.End),
            new Column("Darkest over mean", 20, Along.End), new Column("Frame takes", 20, Along.End), new Column("Broadest noon shadow", 24, Along.End),
        ],
        [
            .. light.Framings.Select(f => (IReadOnlyList<string>)
            [
                f.Name, Number(f.DecemberMolPerM2Day), Number(f.JuneMolPerM2Day), Said.Percent(f.EvennessRatio) + " %", Said.Percent(f.FrameFraction) + " %",
                said.Text(f.ShadowWidthM, Unit.Metre),
            ]),
        ]);

    private static string Place(LightMap light, HouseResults house, Said said)
    {
        double x = ((light.Carpet.DarkestCell % light.CountX) + 0.5) * house.Form.LengthM / light.CountX;
        double y = ((light.Carpet.DarkestCell / light.CountX) + 0.5) * house.Form.WidthM / light.CountY;
        return $"{said.Text(x, Unit.Metre)} from end 1 and {said.Text(y, Unit.Metre)} from the left wall";
    }

    private static string Lower(string name) => char.ToLowerInvariant(name[0]) + name[1..];

    private static string Share(LightMonth drawn, LightMonth open) =>
        open.MeanMolPerM2Day > 0 ? Said.Percent(drawn.MeanMolPerM2Day / open.MeanMolPerM2Day) : "no";

    private static string FaceWord(FaceName face) => face switch
    {
        FaceName.Left => "left wall",
        FaceName.Right => "right wall",
        FaceName.End1 => "wall of end 1",
        _ => "wall of end 2",
    };

    private static string Number(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);
}
