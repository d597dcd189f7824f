using System.Globalization;
using Glazewright.Design.Body;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Sheets;

namespace Glazewright.Papers.Erection;

/// <summary>Pieces by mark, what is lifted, and the order in which a frame stands.</summary>
internal static class FrameStanding
{
    public static IEnumerable<Block> Of(PaperSource source, HouseResults house)
    {
        LengthStyle style = SheetStyle.Lengths(source.Job);
        Said said = new(source.Job.Units);
        MemberSolid[] own = [.. source.Body.Members.Where(m => m.House == house.Form.Id)];
        List<Block> blocks = [.. CrewReport.Page(house, "stand the frame")];
        if (own.Length == 0)
        {
            return [.. blocks, new Block.Paragraph("The frame has no members yet.")];
        }

        (double frameKg, int frames) = HeaviestFrame(own);
        MemberSolid heaviest = own.MaxBy(MassKg)!;
        blocks.Add(new Block.Figures(
        [
            said.Big("Heaviest frame, tube alone", frameKg, Unit.Kilogram, "columns, rafters, tie; plates and rigging come on top"),
            said.Big("Heaviest piece", MassKg(heaviest), Unit.Kilogram, $"{heaviest.Section}, {LengthText.Of(heaviest.CutLengthM, style)}"),
            said.Big("All tube", own.Sum(MassKg), Unit.Kilogram, FormattableString.Invariant($"{own.Length} pieces, {frames} frames")),
        ]));
        blocks.Add(CrewReport.Steps(
        [
            "Pieces counted and laid out by mark; damaged zinc touched up",
            "First end frame up, plumb, guyed both ways",
            "Second frame up, tied to the first by eave and ridge pieces, bay braced as drawn",
            "Hold: the braced bay is checked (plumb, bolts tight) before the next frame is lifted",
            "Frame by frame, purlins and girts as you go; no frame stands on guys alone overnight",
            "End posts and framing of openings",
            "Hold: all bolts to the engineer's torque, bracing complete, before the first sheet",
        ]));
        blocks.Add(new Block.Heading(2, "Pieces"));
        blocks.Add(new Block.TableOf(MemberSchedule.Lines(source, house, style, [.. MemberSchedule.Frame, .. MemberSchedule.Along, .. MemberSchedule.Around])));
        return blocks;
    }

    /// <summary>The heaviest of the house's frames and how many there are: columns, rafters and tie of one frame line share the second part of their path.</summary>
    internal static (double MassKg, int Count) HeaviestFrame(IReadOnlyList<MemberSolid> members)
    {
        double[] frames =
        [
            .. members.Where(m => m.Line.Role is MemberRole.Column or MemberRole.Rafter or MemberRole.CollarTie)
                .GroupBy(m => m.Line.Id.Split('/') is { Length: > 2 } parts ? parts[1] : m.Line.Id)
                .Select(g => g.Sum(MassKg)),
        ];
        return frames.Length == 0 ? (0, 0) : (frames.Max(), frames.Length);
    }

    private static double MassKg(MemberSolid member) => member.MassPerM * member.CutLengthM;
}
