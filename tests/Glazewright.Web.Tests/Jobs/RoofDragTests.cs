using CsCheck;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Form;
using Glazewright.Web.Jobs;

namespace Glazewright.Web.Tests.Jobs;

/// <summary>Corners of the roof, dragged.</summary>
public class RoofDragTests
{
    private const double WidthM = 7.9248;
    private static readonly RoofProfile s_roof = new(2.286, 2.8194, 5.1816, 0.5, (2.286 + 0.5 * 5.1816 - 2.8194) / (WidthM - 5.1816), SolvedRoofPart.RightPitch);

    [Fact]
    public void The_ridge_goes_where_it_is_let_go_by_the_inch_and_the_eaves_stay()
    {
        RoofProfile moved = RoofDrag.Moved(s_roof, WidthM, RoofCorner.Ridge, 4.571, 5.009, UnitSystem.Us);
        Assert.Equal((2.286, 2.8194), (moved.LeftEaveM, moved.RightEaveM));
        Assert.Equal(180 * 0.0254, moved.RidgeOffsetM, 1e-9);
        Assert.Equal(197 * 0.0254, moved.RidgeM, 1e-9);
    }

    [Fact]
    public void An_eave_goes_up_and_down_and_the_ridge_stays()
    {
        RoofProfile moved = RoofDrag.Moved(s_roof, WidthM, RoofCorner.RightEave, 99, 3.3, UnitSystem.Metric);
        Assert.Equal(3.3, moved.RightEaveM, 1e-9);
        Assert.Equal((s_roof.RidgeOffsetM, s_roof.LeftEaveM), (moved.RidgeOffsetM, moved.LeftEaveM));
        Assert.Equal(s_roof.RidgeM, moved.RidgeM, RoofDrag.StepM(UnitSystem.Metric) / 2 + 1e-9);
    }

    // Wherever a hand lets go, what is written closes again as the roof it was meant to be.
    [Fact]
    public void Any_drag_gives_a_roof_that_the_fields_close()
    {
        Gen.Select(Gen.Int[0, 2], Gen.Double[-20, 30], Gen.Double[-20, 30], Gen.Bool).Sample((corner, across, height, us) =>
        {
            UnitSystem units = us ? UnitSystem.Us : UnitSystem.Metric;
            RoofProfile moved = RoofDrag.Moved(s_roof, WidthM, (RoofCorner)corner, across, height, units);
            RoofSolution solved = RoofSolver.Solve(new RoofWish(moved.LeftEaveM, moved.RightEaveM, moved.RidgeOffsetM, moved.LeftPitch, null), WidthM);
            RoofProfile profile = Assert.IsType<RoofSolution.Closed>(solved).Profile;
            return Math.Abs(profile.RidgeM - moved.RidgeM) < 1e-9 && moved.LeftPitch is >= 0 and <= 1.7001 && moved.RightPitch is >= -1e-12 and <= 1.7001;
        });
    }

    [Fact]
    public void Four_numbers_are_written_and_the_right_pitch_follows()
    {
        JobDocument document = JobDocument.Read("""{ "houses": [{}, { "roof": { "rightPitch": "9:12" } }] }""");
        IReadOnlyList<Edit> edits = RoofDrag.Edits(document, 1, RoofDrag.Moved(s_roof, WidthM, RoofCorner.Ridge, 4.572, 5.0038, UnitSystem.Us), UnitSystem.Us);
        Assert.Equal(["/houses/1/roof/leftEave", "/houses/1/roof/rightEave", "/houses/1/roof/ridgeOffset", "/houses/1/roof/leftPitch", "/houses/1/roof/rightPitch"], edits.Select(e => e.Pointer));
        Assert.Equal(["\"7'-6\\\"\"", "\"9'-3\\\"\"", "\"15'-0\\\"\"", "\"7.1333:12\"", null], edits.Select(e => e.Json));
        Assert.True(document.TryEdit(edits, out JobDocument edited, out _));

        // The second drag finds no right pitch to take out.
        IReadOnlyList<Edit> again = RoofDrag.Edits(edited, 1, s_roof, UnitSystem.Metric);
        Assert.Equal(4, again.Count);
        Assert.True(edited.TryEdit(again, out _, out _));
    }
}
