using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Design.Takeoff;

namespace Glazewright.Design.Tests.Takeoff;

/// <summary>
/// One small house counted by hand with pencil and rule: 4.8 m wide, 12 m long in 4 bays of 3 m, both eaves 2.4 m, ridge in the middle, pitch 1 in 2, all in one
/// kind of sheet 1.2 m wide, purlins at most 1.2 m apart. The numbers are arithmetic on the rules that docs/methods states, not output.
/// </summary>
public class CountedByHand
{
    private static readonly CoverChoice Cover = new("polycarbonate-10-twin", 1, 1, 0);

    private static readonly HouseShape Shape = new(
        "A", "A", 0, 0, 4.8, 12, Assert.IsType<RoofSolution.Closed>(RoofSolver.Solve(new RoofWish(2.4, 2.4, 2.4, 0.5, null), 4.8)).Profile, 4, 0,
        Enum.GetValues<FaceName>().Select(f => new FaceCovering(f, Cover)).ToEqList(), Cover, [], 0, 1.2, 6);

    private static readonly TakeoffResult Takeoff = Run();

    private static TakeoffResult Run()
    {
        FormResult form = FormStage.Run(new FormInput([Shape], [], 90, 52, new Lot(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, "")));
        SectionChoice section = new(MemberRole.Column, "tube-50", 0.05, 0.05, 0.003, 4.4, true, new Answer<double>.Met(1, 0));
        BodyResult body = BodyStage.Run(form, [new FrameResult(
            "A", [section, section with { Role = MemberRole.Rafter }, section with { Role = MemberRole.Purlin }], 0, 0, 1, 0, [], [], [], StageReport.Empty)]);
        return TakeoffStage.Run(
            new TakeoffInput(UnitSystem.Metric, [new TakeoffHouse("A", 0.4, 1.0, 1.2, true, [new Bench("b", 1, 1.5, 1, 10, 0.8)])], [], [], FuelKind.None, 30), form, body, [], [], Design.Services.ServicesResult.None);
    }

    private static double Of(string item) => Takeoff.Lines.Where(l => l.Item == item).Sum(l => l.Quantity);

    [Theory]
    // 5 frames: 10 columns; end walls 4.8 m wide have 1 post each (2 spaces of 2.4 m): 12 piers of π/4 · 0.4² · 1 = 0.12566 m³.
    [InlineData("concrete/pier", 12)]
    [InlineData("concrete/pier-concrete", 12 * 0.125664 * 1.08)]
    // Floor 57.6 m² less a bench of 15 m².
    [InlineData("concrete/slab", 42.6)]
    // Perimeter 33.6 m, 0.6096 m deep.
    [InlineData("concrete/edge-insulation", 33.6 * 0.6096)]
    [InlineData("site/gravel", 57.6 * 0.1016)]
    // 12 + 2 · 3.048 by 4.8 + 2 · 3.048.
    [InlineData("site/strip-grade", 18.096 * 10.896)]
    [InlineData("site/drain", 2 * (18.096 + 10.896))]
    // 5 frames: two eaves and a ridge each.
    [InlineData("frame/knee", 15)]
    // Lines along: ridge, 2 eaves, slopes √(2.4² + 1.2²) = 2.683 m in 3 spaces: 2 purlins each, walls 2.4 m in 2 spaces: 1 girt each = 9 lines on 5 frames.
    [InlineData("frame/clip", 45)]
    [InlineData("frame/base", 12)]
    [InlineData("panels/ridge-cap", 24)]
    [InlineData("panels/gutter", 24)]
    [InlineData("panels/downspout", 2)]
    [InlineData("benches/top", 15)]
    [InlineData("electrical/feeder", 30)]
    // Joints: side walls 9 of 2.4 m, roofs 9 of 2.68328 m, ends 3 joints over a pentagon that fills 14.4 / 17.28 of its box 3.6 m high; 8 % lost.
    [InlineData("glazing/joint-profile", 1.08 * ((2 * 9 * 2.4) + (2 * 9 * 2.683282) + (2 * 3 * 3.6 * 14.4 / 17.28)))]
    // Around: sides 2 · (12 + 2.4), roofs 2 · (12 + 2.68328), ends 4.8 + 2 · 2.4 + 2 · 2.68328; 8 % lost.
    [InlineData("glazing/edge-profile", 1.08 * ((2 * 28.8) + (2 * 29.366564) + (2 * 14.966564)))]
    [InlineData("glazing/tape", 2 * ((2 * 12) + (2 * 12) + (2 * 4.8)))]
    // Screws, each zone rounded up, 8 % lost. Sides: 3 lines: 12 / 0.3048 + 2 · 12 / 0.2032 = 157.48 → 171. Roofs: 4 lines: 2 · 39.37 + 118.11 = 196.85 → 213.
    // Ends: 4 lines: (2 · 4.8 / 0.3048 + 2 · 4.8 / 0.2032) · 0.83333 = 65.617 → 71.
    [InlineData("glazing/screw", 2 * (171 + 213 + 71))]
    [InlineData("glazing/lay", (2 * 28.8) + (2 * 32.199379) + (2 * 14.4))]
    public void Quantity_is_what_the_rule_and_the_pencil_give(string item, double expected) => Assert.Equal(expected, Of(item), tolerance: 1e-3);

    /// <summary>10 sheets a side and slope; ends: 4 strips that span up to their higher edge. Each 25.4 mm longer than the face, to the whole millimetre.</summary>
    [Fact]
    public void Sheets_by_length()
    {
        (string Zone, double LengthM, int Count)[] pieces = [.. Takeoff.Sheets.Select(s => (s.Zone, Math.Round(s.LengthM, 4), s.Count))];
        Assert.Contains(("A/left/cover", 2.425, 10), pieces);
        Assert.Contains(("A/roof-left/cover", 2.708, 10), pieces);
        Assert.Contains(("A/end1/cover", 3.025, 2), pieces);
        Assert.Contains(("A/end1/cover", 3.625, 2), pieces);
        Assert.Equal(48, pieces.Sum(p => p.Count));
    }

    /// <summary>Members by mark: columns and rafters are alike left and right; 9 lines of two 6 m lengths each; 2 posts.</summary>
    [Fact]
    public void Marks_by_count() => Assert.Equal([10, 2, 10, 18], Takeoff.Marks.Select(m => m.Count));
}
