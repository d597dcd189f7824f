using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Form;
using Glazewright.Design.Shape;
using Glazewright.Science.Shape;
using Glazewright.Web.Jobs;

namespace Glazewright.Web.Tests.Jobs;

/// <summary>The shape finder behind a window, and what putting a shape into the job writes.</summary>
public sealed class ShapeHuntTests(Desk desk) : IClassFixture<Desk>
{
    [Fact]
    public async Task A_shape_put_into_the_job_is_the_houses_roof_covering_and_bearing_and_one_undo_takes_it_out()
    {
        JobSession window = await desk.WindowAsync((await desk.JobAsync(Desk.Example("two-ridge-herb-yard.json"))).Id);
        Job job = window.View!.Light!.Loaded.Job;
        House house = job.Houses[1];
        RoofProfile roof = new(2.54, 2.286, 2.4384, (4.7244 - 2.54) / 2.4384, (4.7244 - 2.286) / (house.WidthM - 2.4384), SolvedRoofPart.None);
        CoverChoice clear = house.Coverings.First(c => c.Face == FaceName.RoofRight).Cover;
        ShapeCandidate shape = new(
            roof, new GableSection(house.WidthM, roof.RightEaveM, roof.LeftEaveM, house.WidthM - roof.RidgeOffsetM, roof.RidgeM), new ClearFaces(true, true, true, true),
            [new(FaceName.Left, clear), new(FaceName.RoofLeft, clear), new(FaceName.RoofRight, clear), new(FaceName.Right, clear)], false, job.Site.RangeBearingDeg - 15);
        IReadOnlyList<Edit> edits = ShapeEdits.Of(window.View.Document, 1, job, shape, UnitSystem.Us);
        // What is as it was is not written.
        Assert.Equal(house.Coverings.Count(c => c.Face is FaceName.Left or FaceName.RoofLeft or FaceName.Right or FaceName.RoofRight && c.Cover.Kind != clear.Kind), edits.Count(e => e.Pointer.Contains("/covering/", StringComparison.Ordinal)));
        Assert.True(await window.EditAsync(edits, "shape"));
        await window.Settled;
        Assert.Empty(window.View.Faults);
        House now = window.View.Light!.Loaded.Job.Houses[1];
        Assert.Equal(roof.LeftEaveM, now.Roof.LeftEaveM, 1e-3);
        Assert.Equal(roof.RightEaveM, now.Roof.RightEaveM, 1e-3);
        Assert.Equal(roof.RidgeOffsetM, now.Roof.RidgeOffsetM, 1e-3);
        Assert.Equal(roof.RidgeM, now.Roof.RidgeM, 1e-3);
        Assert.All(now.Coverings.Where(c => c.Face is FaceName.Left or FaceName.RoofLeft or FaceName.Right or FaceName.RoofRight), c => Assert.Equal(clear.Kind, c.Cover.Kind));
        Assert.Equal(shape.RangeBearingDeg, window.View.Light.Loaded.Job.Site.RangeBearingDeg, 1e-3);
        Assert.True(await window.UndoAsync());
        Assert.Equal(Desk.Example("two-ridge-herb-yard.json"), window.View.Document.Text);
    }

    [Fact]
    public async Task An_edit_stops_the_search_and_what_was_begun_is_not_shown()
    {
        JobSession window = await desk.WindowAsync((await desk.JobAsync()).Id);
        using ShapeHunt hunt = new(window, desk.Behind);
        Assert.Empty(hunt.Begin(window.View!.Light!, 0));
        Assert.True(hunt.View.IsRunning);
        Assert.True(await window.EditAsync([Edit.Typed("/houses/0/width", "28 ft")], "wider"));
        hunt.Follow();
        Assert.False(hunt.View.IsRunning);
        Assert.Null(hunt.Find(window.View.Job.Id, window.View.Light!.Loaded.Job.Houses[0].Id));
    }

    [Fact]
    public async Task What_keeps_the_finder_from_an_answer_is_told()
    {
        JobSession window = await desk.WindowAsync((await desk.JobAsync()).Id);
        Assert.True(await window.EditAsync([Edit.Typed("/site/bearing", "0 deg"), Edit.Typed("/houses/0/shapeWishes/noonReach", "3 ft")], "north and south"));
        await window.Settled;
        using ShapeHunt hunt = new(window, desk.Behind);
        Assert.Contains("north and south", Assert.Single(hunt.Begin(window.View!.Light!, 0)).Wrong, StringComparison.Ordinal);
        Assert.False(hunt.View.IsRunning);
    }
}
