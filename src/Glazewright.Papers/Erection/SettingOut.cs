using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Sheets;

namespace Glazewright.Papers.Erection;

/// <summary>Corners, diagonals, bases and levels of a house.</summary>
internal static class SettingOut
{
    public static IEnumerable<Block> Of(PaperSource source, HouseResults house)
    {
        BuildingForm b = house.Form;
        LengthStyle style = SheetStyle.Lengths(source.Job);
        string L(double m) => LengthText.Of(m, style);
        IReadOnlyList<double> lines = b.FrameLinesXM;
        int bays = Math.Max(1, lines.Count - 1);
        string tolerance = source.Job.Units == UnitSystem.Us ? "± 1/8 in" : "± 3 mm";
        List<IReadOnlyList<string>> rows =
        [
            ["Length, out to out of steel", L(b.LengthM), ""],
            ["Width, out to out of steel", L(b.WidthM), ""],
            ["Both diagonals", L(DiagonalM(b)), ""],
            ["Frames", FormattableString.Invariant($"{lines.Count} at {L(b.LengthM / bays)}"), ""],
            ["Bases F1 under columns", FormattableString.Invariant($"{FoundationPlan.Count(source, house, "F1")}"), ""],
            ["Bases F2 under end posts", FormattableString.Invariant($"{FoundationPlan.Count(source, house, "F2")}"), ""],
            ["Bases F3 under jambs", FormattableString.Invariant($"{FoundationPlan.Count(source, house, "F3")}"), ""],
            ["Pier", house.House.Frame is { PierDiameterM: > 0, PierDepthM: > 0 } f ? $"Ø {L(f.PierDiameterM)}, {L(f.PierDepthM)} deep" : "not in the job", ""],
            ["Eaves over the floor", L(b.Roof.LeftEaveM) == L(b.Roof.RightEaveM) ? L(b.Roof.LeftEaveM) : $"{L(b.Roof.LeftEaveM)} left, {L(b.Roof.RightEaveM)} right", ""],
            ["Ridge over the floor", L(b.Roof.RidgeM), ""],
            ["Ridge line from the left wall", L(b.Roof.RidgeOffsetM), ""],
        ];
        return
        [
            .. CrewReport.Page(house, "set out"),
            new Block.TableOf(new Table([new("What", 70), new("Drawn", 60), new("Measured", 44)], rows)),
            new Block.Paragraph($"Left and right as seen looking from end 2 to end 1. Each base within {tolerance} of its place, tops within {tolerance} of one level (common practice; the engineer's note rules). Measure both diagonals before the first hole and again before concrete.", Quiet: true),
            CrewReport.Steps(["Corners staked, diagonals equal", "Frame lines and bases marked", "Holes: depth below frost, bottom undisturbed, inspected", "Anchors or columns set, level, square; checked before concrete sets", "Hold: concrete reaches the strength the engineer asks for before frames stand on it"]),
        ];
    }

    /// <summary>Corner to opposite corner, out to out, m.</summary>
    internal static double DiagonalM(BuildingForm b) => Math.Sqrt(b.LengthM * b.LengthM + b.WidthM * b.WidthM);
}
