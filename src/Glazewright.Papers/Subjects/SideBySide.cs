using Glazewright.Design.LightMaps;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Sheets;

namespace Glazewright.Papers.Subjects;

/// <summary>Pictures of one house in two jobs, each pair on one scale of colours.</summary>
public static class SideBySide
{
    private const double WideMm = 140;

    /// <summary>The sections.</summary>
    /// <param name="before">The first job's quick answers of the house.</param>
    /// <param name="after">The second's.</param>
    public static PicturePair Sections(QuickSource before, QuickSource after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        return new PicturePair("Section", Section(before, "one-"), Section(after, "two-"));
    }

    /// <summary>Light in the darkest and the brightest month, and air at the crop through the year; what either side lacks is left out.</summary>
    /// <param name="before">The first job.</param>
    /// <param name="one">Its house.</param>
    /// <param name="after">The second job.</param>
    /// <param name="other">Its house.</param>
    public static IReadOnlyList<PicturePair> Wholes(PaperSource before, HouseResults one, PaperSource after, HouseResults other)
    {
        ArgumentNullException.ThrowIfNull(after);
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        List<PicturePair> pairs = [];
        if (HasMap(one) && HasMap(other) && other.Light.OutsideMolPerM2Day.Count == 12)
        {
            int dark = LightMap.DarkestMonth(other.Light.OutsideMolPerM2Day);
            foreach (int month in (int[])[dark, (dark + 6) % 12])
            {
                IReadOnlyList<CarpetClass> classes = Classes(one.Light.Months[month], other.Light.Months[month]);
                pairs.Add(new PicturePair($"Light at the crop in {Answers.Said.Month(month + 1)}", Map(one, month, classes, "one-"), Map(other, month, classes, "two-")));
            }
        }

        if (YearSheet.InsideCarpet(one.Year, after.Job.Units, WideMm, 58) is { } carpet && YearSheet.InsideCarpet(other.Year, after.Job.Units, WideMm, 58) is { } carpetAfter)
        {
            string unit = after.Job.Units == Design.Contracts.UnitSystem.Us ? "°F" : "°C";
            string caption = $"Air at the crop, {unit}: days along, hours up.";
            pairs.Add(new PicturePair("Air at the crop through the year", new Block.Picture(carpet with { Id = "one-" + carpet.Id }, caption), new Block.Picture(carpetAfter with { Id = "two-" + carpetAfter.Id }, caption)));
        }

        return pairs;
    }

    private static Block.Picture Section(QuickSource source, string side)
    {
        Sheet sheet = HouseSection.Picture(source.Job, source.Look, WideMm, 96);
        return new Block.Picture(sheet with { Id = side + sheet.Id }, sheet.Description);
    }

    private static bool HasMap(HouseResults house) => house.Light.Months.Count == 12 && house.Light.Months[0].PointMolPerM2Day.Count == house.Light.CountX * house.Light.CountY && house.Light.CountX > 0;

    private static List<CarpetClass> Classes(LightMonth one, LightMonth other)
    {
        AxisTicks ticks = AxisTicks.Over(Math.Min(one.PointMolPerM2Day.Min(), other.PointMolPerM2Day.Min()), Math.Max(one.PointMolPerM2Day.Max(), other.PointMolPerM2Day.Max()) + 1e-6, 6);
        IReadOnlyList<double> limits = ticks.Values();
        List<CarpetClass> classes = [];
        for (int i = 1; i < limits.Count; i++)
        {
            double below = i == limits.Count - 1 ? double.PositiveInfinity : limits[i];
            classes.Add(new CarpetClass(below, $"{ticks.Text(limits[i - 1])}–{ticks.Text(limits[i])}", Ramp.Sequential.Step(i - 1, limits.Count - 1)));
        }

        return classes;
    }

    private static Block.Picture Map(HouseResults house, int month, IReadOnlyList<CarpetClass> classes, string side)
    {
        LightMap light = house.Light;
        Sheet sheet = LightPlan.Draw(
            $"{side}light-{month + 1}-{house.Form.Id}", $"Light in house {house.Form.Id} in {Answers.Said.Month(month + 1)}", "mol/m² a day", light.CountX, light.CountY, light.Months[month].PointMolPerM2Day, classes,
            house.Form.LengthM / house.Form.WidthM, WideMm);
        return new Block.Picture(sheet, sheet.Description);
    }
}

/// <summary>The same picture of two jobs.</summary>
/// <param name="Title">What it shows.</param>
/// <param name="Before">Of the first.</param>
/// <param name="After">Of the second.</param>
public sealed record PicturePair(string Title, Block.Picture Before, Block.Picture After);
