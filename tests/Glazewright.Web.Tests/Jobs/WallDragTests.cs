using CsCheck;
using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Papers.Sets;
using Glazewright.Store.Jobs;
using Glazewright.Web.Jobs;

namespace Glazewright.Web.Tests.Jobs;

/// <summary>Doors, fans, louvers and wet walls, dragged on a picture of their wall.</summary>
public sealed class WallDragTests(Desk desk) : IClassFixture<Desk>
{
    private const double InchM = 0.0254;

    private static readonly IEqualityComparer<(double, double)> Near = EqualityComparer<(double, double)>.Create((a, b) => Math.Abs(a.Item1 - b.Item1) < 2e-3 && Math.Abs(a.Item2 - b.Item2) < 2e-3);

    [Fact]
    public async Task A_door_of_the_job_goes_along_its_wall_by_the_inch_and_keeps_its_sill()
    {
        (JobSession window, HouseLook house) = await HouseAsync("two-ridge-herb-yard.json", 1);
        IReadOnlyList<WallThing> things = WallThing.On(window.View!.Document, 1, house, FaceName.Left);
        WallThing door = Assert.Single(things, t => t.Kind == OpeningKind.Door);
        (double u, double v) = WallDrag.Moved(things, door, house.Form, FaceName.Left, 3.011, 2, UnitSystem.Us);
        Assert.Equal(119 * InchM, u, 1e-9);
        Assert.Equal(0, v);
        Edit edit = Assert.Single(WallDrag.Edits(window.View.Document, 1, house.House, things, door, FaceName.Left, u, v, UnitSystem.Us));
        Assert.Equal(new Edit("/houses/1/openings/1/offset", "\"9'-11\\\"\""), edit);
    }

    [Fact]
    public async Task A_roof_vent_goes_along_and_up_its_slope_and_stops_at_ridge_corner_and_the_next_vent()
    {
        const string Vents = "\"length\": \"96 ft\", \"openings\": [{ \"id\": \"door-1\", \"kind\": \"door\", \"face\": \"end-1\" }, "
            + "{ \"id\": \"vent-1\", \"kind\": \"vent\", \"face\": \"roof-right\", \"offset\": \"10 ft\", \"sill\": \"2 ft\" }, { \"id\": \"vent-2\", \"kind\": \"vent\", \"face\": \"roof-right\", \"offset\": \"30 ft\", \"sill\": \"2 ft\" }]";
        StoredJob job = await desk.JobAsync(Desk.Example("three-lines.json").Replace("\"length\": \"96 ft\"", Vents, StringComparison.Ordinal));
        JobSession window = await desk.WindowAsync(job.Id);
        HouseLook house = window.View!.Light!.Houses[0].Look;
        IReadOnlyList<WallThing> things = WallThing.On(window.Document, 0, house, FaceName.RoofRight);
        Assert.Equal(["vent-1", "vent-2"], things.Select(t => t.Id));
        Assert.Empty(WallThing.On(window.Document, 0, house, FaceName.RoofLeft));
        double slopeM = house.Form.Face(FaceName.RoofRight).Outline.Max(p => p.VM);
        WallThing vent = things[0];
        (double, double) At(double u, double v) => WallDrag.Moved(things, vent, house.Form, FaceName.RoofRight, u, v, UnitSystem.Us);

        // Past the ridge and end 1 it stops there, within an inch; on the other vent it goes beside it.
        (double u, double v) = At(-5, 50);
        Assert.Equal(0, u);
        Assert.InRange(v, slopeM - vent.HeightM - InchM, slopeM - vent.HeightM + 1e-9);
        (u, v) = At(things[1].OffsetM, vent.SillM);
        Assert.False(things[1].Meets(u, v, vent.WidthM, vent.HeightM));
        (u, v) = At(5.004, 1);
        Edit[] edits = [.. WallDrag.Edits(window.Document, 0, house.House, things, vent, FaceName.RoofRight, u, v, UnitSystem.Us)];
        Assert.Equal(["/houses/0/openings/1/offset", "/houses/0/openings/1/sill"], edits.Select(e => e.Pointer));
        Assert.True(await window.EditAsync(edits, "moved"));
        await window.Settled;
        Assert.Empty(window.View!.Faults);
        Assert.Equal((u, v), (window.View.Light!.Houses[0].Look.House.Openings[1].OffsetM, window.View.Light.Houses[0].Look.House.Openings[1].SillM), Near);
    }

    // Whatever is dragged wherever on a slope: what is written fits it, so the reader takes it.
    [Fact]
    public async Task A_vent_dragged_anywhere_makes_no_fault()
    {
        const string Vents = "\"length\": \"96 ft\", \"roof\": { \"leftEave\": \"8 ft\", \"rightEave\": \"6 ft\", \"ridgeOffset\": \"10 ft\", \"leftPitch\": \"9:12\" }, \"openings\": [{ \"id\": \"vent-1\", \"kind\": \"vent\", \"face\": \"roof-left\" }, { \"id\": \"vent-2\", \"kind\": \"vent\", \"face\": \"roof-left\", \"offset\": \"6 ft\" }]";
        StoredJob job = await desk.JobAsync(Desk.Example("three-lines.json").Replace("\"length\": \"96 ft\"", Vents, StringComparison.Ordinal));
        JobSession window = await desk.WindowAsync(job.Id);
        HouseLook house = window.View!.Light!.Houses[0].Look;
        IReadOnlyList<WallThing> things = WallThing.On(window.Document, 0, house, FaceName.RoofLeft);
        SiteHint hint = new("", 42, -88, 200, -6);
        Gen.Select(Gen.Double[-5, 40], Gen.Double[-3, 8], Gen.Bool).Sample(
            (along, up, metric) =>
            {
                UnitSystem units = metric ? UnitSystem.Metric : UnitSystem.Us;
                (double u, double v) = WallDrag.Moved(things, things[0], house.Form, FaceName.RoofLeft, along, up, units);
                Assert.True(window.Document.TryEdit(WallDrag.Edits(window.Document, 0, house.House, things, things[0], FaceName.RoofLeft, u, v, units), out JobDocument edited, out _));
                Assert.Empty(JobReader.Read(edited, hint).Faults);
            },
            iter: 200);
    }

    [Fact]
    public async Task A_placed_fan_is_written_with_all_fans_and_the_layout_puts_them_where_they_were_let_go()
    {
        (JobSession window, HouseLook house) = await HouseAsync("two-ridge-herb-yard.json", 0);
        IReadOnlyList<WallThing> things = WallThing.On(window.View!.Document, 0, house, FaceName.End2);
        WallThing[] fans = [.. things.Where(t => t.Kind == OpeningKind.Fan)];
        Assert.True(fans.Length > 1);
        Assert.All(fans, f => Assert.Equal((-1, true), (f.Index, f.CanMove)));
        WallThing fan = fans[0];
        (double u, double v) = WallDrag.Moved(things, fan, house.Form, FaceName.End2, fan.OffsetM, fan.SillM + 0.5, UnitSystem.Us);
        Assert.Equal(fan.SillM + 0.5, v, InchM / 2 + 1e-9);
        Assert.True(await window.EditAsync(WallDrag.Edits(window.View.Document, 0, house.House, things, fan, FaceName.End2, u, v, UnitSystem.Us), "moved"));
        await window.Settled;
        Assert.Empty(window.View.Faults);
        HouseLook after = window.View.Light!.Houses[0].Look;
        Assert.DoesNotContain(after.Layout.Report.Findings, f => f.Code.StartsWith("layout/", StringComparison.Ordinal) && f.Code is "layout/fan-openings" or "layout/opening-too-small" or "layout/wall-crowded");

        // Now the job lists them, under the ids that the picture gave them, each where it was.
        WallThing[] listed = [.. WallThing.On(window.View.Document, 0, after, FaceName.End2).Where(t => t.Kind == OpeningKind.Fan)];
        Assert.Equal(fans.Select(f => f.Id), listed.Select(f => f.Id));
        Assert.All(listed, f => Assert.True(f.Index >= 3));
        Assert.Equal(u, listed[0].OffsetM, 1e-9);
        Assert.Equal(v, listed[0].SillM, 1e-9);
        foreach ((WallThing before, WallThing now) in fans.Zip(listed).Skip(1))
        {
            Assert.Equal(before.OffsetM, now.OffsetM, 1e-3);
        }

        // One step back takes all of it out again.
        Assert.True(await window.UndoAsync());
        Assert.Equal(Desk.Example("two-ridge-herb-yard.json"), window.View.Document.Text);
    }

    [Fact]
    public async Task The_door_that_holds_when_none_is_typed_is_written_with_the_first_opening_and_the_fans_end_too()
    {
        (JobSession window, HouseLook house) = await HouseAsync("three-lines.json", 0);
        Assert.Null(window.View!.Document.Find("/houses/0/openings"));
        FaceName wall = house.House.Equipment.FanFace;
        IReadOnlyList<WallThing> things = WallThing.On(window.View.Document, 0, house, wall);
        WallThing fan = things.First(t => t.Kind == OpeningKind.Fan);
        JobDocument edited = Done(window.View.Document, WallDrag.Edits(window.View.Document, 0, house.House, things, fan, wall, fan.OffsetM, fan.SillM, UnitSystem.Us));
        Assert.Equal("door-1", ((TextNode)edited.Find("/houses/0/openings/0/id")!).Text);
        Assert.Equal(wall == FaceName.End1 ? "end-1" : "end-2", ((TextNode)edited.Find("/houses/0/equipment/fanEnd")!).Text);
        Assert.Equal(1 + things.Count(t => t.Kind == OpeningKind.Fan), ((ListNode)edited.Find("/houses/0/openings")!).Items.Count);

        // The door itself, dragged, is written alone.
        IReadOnlyList<WallThing> entrance = WallThing.On(window.View.Document, 0, house, FaceName.End1);
        WallThing door = entrance.Single(t => t.Kind == OpeningKind.DoubleDoor);
        IReadOnlyList<Edit> edits = WallDrag.Edits(window.View.Document, 0, house.House, entrance, door, FaceName.End1, 1, 0, UnitSystem.Metric);
        Assert.Equal("1 m", ((TextNode)Done(window.View.Document, edits).Find("/houses/0/openings/0/offset")!).Text);
        Assert.Single(edits);
    }

    [Fact]
    public async Task Louvers_before_a_wet_wall_stay_and_say_why_and_so_does_what_the_job_has_no_field_for()
    {
        (JobSession window, HouseLook house) = await HouseAsync("two-ridge-herb-yard.json", 0);
        IReadOnlyList<WallThing> things = WallThing.On(window.View!.Document, 0, house, FaceName.End1);
        Assert.All(things.Where(t => t.Kind == OpeningKind.Louver), t => Assert.False(t.CanMove));
        Assert.Contains(things, t => t.Kind == OpeningKind.Louver);
        Assert.True(things.Single(t => t.Kind == OpeningKind.WetWall) is { CanMove: true, Index: 1 });

        (window, house) = await HouseAsync("two-ridge-herb-yard.json", 1);
        PlacedItem filter = house.Layout.Placed.Single(p => p.Kind == PlacedKind.PressureFan);
        Assert.Contains(WallThing.On(window.View!.Document, 1, house, filter.Face), t => t is { Kind: null, Stays: "the job has no field for its place" });
    }

    // Wherever a hand lets go, the thing stands in its wall, under the roof, and on nothing else of the job.
    [Fact]
    public async Task Any_drag_ends_inside_the_wall_and_beside_the_others()
    {
        (JobSession window, HouseLook house) = await HouseAsync("two-ridge-herb-yard.json", 0);
        foreach (FaceName face in (FaceName[])[FaceName.End1, FaceName.End2, FaceName.Left])
        {
            IReadOnlyList<WallThing> things = WallThing.On(window.View!.Document, 0, house, face);
            WallThing[] free = [.. things.Where(t => t.CanMove)];
            Assert.NotEmpty(free);
            Gen.Select(Gen.Int[0, free.Length - 1], Gen.Double[-5, 40], Gen.Double[-5, 10], Gen.Bool).Sample((i, u, v, us) =>
            {
                WallThing thing = free[i];
                (double at, double sill) = WallDrag.Moved(things, thing, house.Form, face, u, v, us ? UnitSystem.Us : UnitSystem.Metric);
                Opening[] openings = [.. things.Where(t => t.CanMove && (t == thing || t.Index >= 0 || t.Kind == thing.Kind))
                    .Select(t => new Opening(t.Id, t.Kind!.Value, face, t == thing ? at : t.OffsetM, t == thing ? sill : t.SillM, t.WidthM, t.HeightM, false))];
                return FaceOutlines.Misfits(openings, house.Form.Roof, house.Form.WidthM, house.Form.LengthM).Count == 0;
            }, iter: 60);
        }
    }

    private static JobDocument Done(JobDocument document, IReadOnlyList<Edit> edits)
    {
        Assert.True(document.TryEdit(edits, out JobDocument edited, out _));
        return edited;
    }

    private async Task<(JobSession Window, HouseLook House)> HouseAsync(string example, int house)
    {
        JobSession window = await desk.WindowAsync((await desk.JobAsync(Desk.Example(example))).Id);
        return (window, window.View!.Light!.Houses[house].Look);
    }
}
