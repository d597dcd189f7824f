using System.Globalization;
using Glazewright.Design.Body;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Design.Takeoff;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Exchange;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Solids;

namespace Glazewright.Papers.Sheets;

/// <summary>Schedules of a house's members: sections by role, pieces by shop mark.</summary>
internal static class MemberSchedule
{
    public static readonly MemberRole[] Along = [MemberRole.Ridge, MemberRole.Eave, MemberRole.Purlin, MemberRole.Girt];
    public static readonly MemberRole[] Frame = [MemberRole.Column, MemberRole.Rafter, MemberRole.CollarTie, MemberRole.EndPost];

    public static readonly MemberRole[] Around = [MemberRole.Jamb, MemberRole.Header, MemberRole.Sill];

    /// <summary>Marks of the house's members of some roles, with their count in this house.</summary>
    public static Table Lines(PaperSource source, HouseResults house, LengthStyle style, IReadOnlyList<MemberRole> roles)
    {
        MarkFinder finder = new(source.Takeoff.Marks);
        Dictionary<string, ShopMark> marks = [];
        foreach (ShopMark mark in source.Takeoff.Marks)
        {
            marks.TryAdd(mark.Mark, mark);
        }

        var counted = source.Body.Members.Where(m => m.House == house.Form.Id && roles.Contains(m.Line.Role))
            .GroupBy(m => (Mark: finder.Of(m), m.Line.Role))
            .OrderBy(g => roles.ToList().IndexOf(g.Key.Role)).ThenBy(g => g.Key.Mark, StringComparer.Ordinal);
        return new Table(
            [new("Mark", 18), new("Member", 26), new("Section", 38), new("Cut length", 32, Drawing.Along.End), new("Saw angles", 28, Drawing.Along.End), new("Count", 16, Drawing.Along.End)],
            [
                .. counted.Select(g =>
                {
                    MemberSolid first = g.First();
                    ShopMark? mark = marks.GetValueOrDefault(g.Key.Mark);
                    return (IReadOnlyList<string>)
                    [
                        g.Key.Mark.Length > 0 ? g.Key.Mark : "–", Word(g.Key.Role), first.Section, LengthText.Of(mark?.LengthM ?? first.CutLengthM, style),
                        string.Create(CultureInfo.InvariantCulture, $"{mark?.AngleADeg ?? first.AngleADeg:0.0}° / {mark?.AngleBDeg ?? first.AngleBDeg:0.0}°"), g.Count().ToString(CultureInfo.InvariantCulture),
                    ];
                }),
            ]);
    }

    /// <summary>Sections by role as the frame stage has them.</summary>
    public static Table Sections(HouseResults house, Design.Contracts.UnitSystem units, LengthStyle style) => new(
        [new("Member", 26), new("Section", 42), new("Depth × width", 36), new("Wall", 18, Drawing.Along.End), new("Mass", 24, Drawing.Along.End), new("Chosen", 26)],
        [
            .. house.Frame.Sections.Select(s =>
            {
                (double perM, string unit) = units == Design.Contracts.UnitSystem.Us ? (Measure.Mass(s.MassPerM, units) * 0.3048, "lb/ft") : (s.MassPerM, "kg/m");
                return (IReadOnlyList<string>)
                [
                    Word(s.Role), s.Section, $"{LengthText.Of(s.DepthM, style)} × {LengthText.Of(s.WidthM, style)}", Wall(s, style), string.Create(CultureInfo.InvariantCulture, $"{perM:0.0} {unit}"), s.Fixed ? "typed" : "sized here",
                ];
            }),
        ]);

    /// <summary>The rows that fit a height, and a last one that tells where the others stand.</summary>
    public static Table Cut(Table table, double heightMm)
    {
        if (TableSetting.HeightMm(table) <= heightMm || table.Rows.Count == 0)
        {
            return table;
        }

        double used = TableSetting.Head(table).HeightMm;
        int keep = 0;
        foreach (TableSetting.SetRow row in TableSetting.Body(table))
        {
            if (used + 2 * row.HeightMm > heightMm)
            {
                break;
            }

            used += row.HeightMm;
            keep++;
        }

        string[] more = [.. Enumerable.Repeat("", table.Columns.Count)];
        int widest = Enumerable.Range(0, table.Columns.Count).MaxBy(c => table.Columns[c].WidthMm);
        more[widest] = string.Create(CultureInfo.InvariantCulture, $"{table.Rows.Count - keep} more: see the lists");
        return table with { Rows = [.. table.Rows.Take(keep), more] };
    }

    public static string Word(MemberRole role) => role switch
    {
        MemberRole.CollarTie => "collar tie",
        MemberRole.EndPost => "end post",
        _ => role.ToString().ToLowerInvariant(),
    };

    private static string Wall(SectionChoice s, LengthStyle style) => style == LengthStyle.FeetInches
        ? string.Create(CultureInfo.InvariantCulture, $"{s.WallM / 0.0254:0.000}\"")
        : string.Create(CultureInfo.InvariantCulture, $"{1000 * s.WallM:0.0}");
}
