using Glazewright.Design.Body;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Sheets;
using Glazewright.Papers.Solids;
using Glazewright.Papers.Tests.Sets;

namespace Glazewright.Papers.Tests.Sheets;

/// <summary>What a first reader missed on the sheets: girts, ends as cut, setbacks, a whole north arrow.</summary>
public class CrewCanBuildTests
{
    private static string[] Texts(Sheet sheet) => [.. Plot.Of(sheet).Words().Select(w => w.Text)];

    [Theory]
    [InlineData(UnitSystem.Us), InlineData(UnitSystem.Metric)]
    public void Every_girt_of_a_side_wall_is_drawn_at_its_height_with_its_mark(UnitSystem units)
    {
        PaperSource source = SampleSource.Make(units);
        HouseResults house = source.Houses[0];
        MemberSolid[] girts = [.. source.Body.Members.Where(m => m.House == "A" && m.Line.Role == MemberRole.Girt)];
        Assert.NotEmpty(girts);
        source = source with { Takeoff = source.Takeoff with { Marks = [.. source.Takeoff.Marks, .. girts.GroupBy(g => Math.Round(g.CutLengthM, 3)).Select((g, i) => new Glazewright.Design.Takeoff.ShopMark(FormattableString.Invariant($"L-{40 + i}"), g.First().Section, g.First().CutLengthM, 0, 0, g.Count(), 1, "girts"))] } };
        Sheet sheet = WallSheet.Others(source, house, "S-4");
        LengthStyle style = units == UnitSystem.Us ? LengthStyle.FeetInches : LengthStyle.Millimetres;
        Entity[] drawn = [.. sheet.Views.SelectMany(v => v.Entities)];
        string[] texts = Texts(sheet);
        MarkFinder finder = new(source.Takeoff.Marks);
        foreach (MemberSolid girt in girts)
        {
            Entity.Polyline piece = Assert.Single(drawn.OfType<Entity.Polyline>(), e => e.Source == girt.Line.Id);
            double heightM = girt.Line.A.ZM - house.Form.Origin.ZM;
            Assert.Equal(heightM, (piece.Points.Min(p => p.Y) + piece.Points.Max(p => p.Y)) / 2, 1e-9);
            Assert.Equal(girt.CutLengthM, piece.Points.Max(p => p.X) - piece.Points.Min(p => p.X), 1e-6);
            Assert.Contains(LengthText.Level(heightM, style), texts);
            Assert.NotEmpty(finder.Of(girt));
            Assert.Contains(drawn.OfType<Entity.Label>(), l => l.Source.StartsWith(girt.Line.Id[..^3], StringComparison.Ordinal) && l.Text == finder.Of(girt) && Math.Abs(l.At.Y - heightM) < 1e-9);
        }

        Assert.Empty(TextClashes.On(Plot.Of(sheet)));
    }

    // The angle between a drawn end and the square cut is the saw angle of the cut list, and the long points are a cut length apart.
    [Fact]
    public void The_typical_frame_has_its_ends_as_the_saw_cuts_them()
    {
        PaperSource source = SampleSource.Make();
        HouseResults house = source.Houses[0];
        BuildingForm b = house.Form;
        Entity.Polyline[] drawn = [.. TypicalFrame.Draw(source, house, "S-3").Views.SelectMany(v => v.Entities).OfType<Entity.Polyline>()];
        string frame = FormattableString.Invariant($"A/frame-{TypicalFrame.Typical(b) + 1:00}/");
        MemberSolid[] members = [.. source.Body.Members.Where(m => m.Line.Id.StartsWith(frame, StringComparison.Ordinal))];
        Assert.Contains(members, m => m.Line.Role == MemberRole.Rafter);
        foreach (MemberSolid m in members)
        {
            IReadOnlyList<Spot> ring = Assert.Single(drawn, e => e.Source == m.Line.Id).Points;
            Spot axis = (ring[1] - ring[0]).Unit();
            if (m.Line.Role == MemberRole.CollarTie)
            {
                axis = new(1, 0);
            }

            Spot[] ends = m.Line.Role == MemberRole.CollarTie ? [ring[1] - ring[0], ring[3] - ring[2]] : [ring[3] - ring[0], ring[2] - ring[1]];
            Assert.Equal([m.AngleADeg, m.AngleBDeg], ends.Select(e => Math.Asin(Math.Abs(e.Unit().Dot(axis))) * 180 / Math.PI).Select(a => Math.Round(a, 6)), (x, y) => Math.Abs(x - y) < 1e-3);
            Assert.Equal(m.CutLengthM, ring.Max(p => p.Dot(axis)) - ring.Min(p => p.Dot(axis)) - (m.Line.Role == MemberRole.Rafter ? m.DepthM * Math.Tan(m.AngleADeg * Math.PI / 180) : 0), 1e-6);
        }

        // At the ridge both rafters end on one plumb line.
        foreach (MemberSolid m in members.Where(m => m.Line.Role == MemberRole.Rafter))
        {
            IReadOnlyList<Spot> ring = Assert.Single(drawn, e => e.Source == m.Line.Id).Points;
            bool right = m.Line.Id.EndsWith("right", StringComparison.Ordinal);
            Assert.All(ring, p => Assert.True(right ? p.X >= b.Roof.RidgeOffsetM - 1e-9 : p.X <= b.Roof.RidgeOffsetM + 1e-9));
        }
    }

    [Fact]
    public void Setbacks_are_dashed_on_the_site_plan_with_their_distance()
    {
        PaperSource source = SampleSource.Make();
        source = source with { Job = source.Job with { Lot = source.Job.Lot with { SetbackLeftM = 7.62, SetbackEnd1M = 6.096, SetbackRightM = 0, SetbackEnd2M = 0 } } };
        Sheet sheet = SitePlan.Draw(source, "G-2");
        Entity.Polyline[] lines = [.. sheet.Views.SelectMany(v => v.Entities).OfType<Entity.Polyline>().Where(e => e.Role == Role.Setback)];
        Assert.Equal(["lot/setback/end1", "lot/setback/left"], lines.Select(l => l.Source).Order(StringComparer.Ordinal));
        Assert.All(lines.Single(l => l.Source.EndsWith("left", StringComparison.Ordinal)).Points, p => Assert.Equal(source.Job.Lot.OriginYM + 7.62, p.Y, 1e-9));
        Assert.All(lines.Single(l => l.Source.EndsWith("end1", StringComparison.Ordinal)).Points, p => Assert.Equal(source.Job.Lot.OriginXM + 6.096, p.X, 1e-9));
        Assert.NotEmpty(Pens.Of(Role.Setback).DashesMm);
        Assert.All((string[])["setback 25'-0\"", "setback 20'-0\""], t => Assert.Contains(t, Texts(sheet)));
        Assert.Empty(TextClashes.On(Plot.Of(sheet)));
    }

    [Theory]
    [InlineData(0), InlineData(45), InlineData(90), InlineData(180), InlineData(270), InlineData(350)]
    public void The_whole_north_arrow_is_in_the_picture(double bearingDeg)
    {
        PaperSource source = SampleSource.Make();
        source = source with { Job = source.Job with { Site = source.Job.Site with { RangeBearingDeg = bearingDeg } } };
        Sheet sheet = RangePlan.Picture(source, 178, 100);
        Mark.Words north = Assert.Single(Plot.Of(sheet).Words(), w => w.Text == "N");
        Assert.InRange(north.Start.X, 0, 178 - north.WidthMm());
        Assert.InRange(north.Start.Y, north.CapHeightMm, 100);
    }

    // Ridges along the meridian at 42° N: no noon ray falls into the section, and no caption may promise one.
    [Fact]
    public void A_caption_promises_no_sun_that_is_not_drawn()
    {
        Assert.Contains("no noon sun is drawn", NoonSun.Caption(NoonSun.Solstices(42, 0)), StringComparison.Ordinal);
        Assert.Equal("the noon sun of the shortest and the longest day", NoonSun.Caption(NoonSun.Solstices(42, 90)));
    }
}
