using Glazewright.Design.Body;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Framing;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Sheets;
using Glazewright.Papers.Tests.Sets;
using Glazewright.Papers.Tests.Solids;

namespace Glazewright.Papers.Tests.Sheets;

public class DetailSheetTests
{
    private static PaperSource Source { get; } = SolidSamples.Yard();

    private static View Detail(PaperSource source, string id) => DetailSheet.Draw(source, source.Houses[0], "S-4").Views.Single(v => v.Id == id);

    private static MemberSolid Member(PaperSource source, MemberRole role) => source.Body.Members.First(m => m.House == "A" && m.Line.Role == role);

    private static double Extent(Entity entity, Func<Spot, double> of) => entity is Entity.Polyline p ? p.Points.Max(of) - p.Points.Min(of) : 0;

    // The purlin is cut square: its outline is its section, its wall the tube's; on the drawing's own paper it is that at the scale written under it.
    [Theory]
    [InlineData(UnitSystem.Us), InlineData(UnitSystem.Metric)]
    public void A_purlin_is_drawn_as_large_as_its_section(UnitSystem units)
    {
        PaperSource source = SolidSamples.Yard(units);
        MemberSolid purlin = Member(source, MemberRole.Purlin);
        View view = Detail(source, "purlin");
        Entity outline = view.Entities.Single(e => e is Entity.Polyline { Closed: true } && e.Source == purlin.Line.Id && e.Role == Role.Cut);
        Assert.Equal((purlin.WidthM, purlin.DepthM), (Math.Round(Extent(outline, s => s.X), 9), Math.Round(Extent(outline, s => s.Y), 9)));
        Entity.Fill wall = view.Entities.OfType<Entity.Fill>().Single(f => f.Source == purlin.Line.Id && f.Rings.Count == 2);
        Assert.Equal(purlin.WallM, wall.Rings[1].Min(s => s.X) - wall.Rings[0].Min(s => s.X), 1e-9);
        Mark.Lines[] onPaper = [.. Plot.Of(DetailSheet.Draw(source, source.Houses[0], "S-4")).Groups.Single(g => g.Id == "purlin").Marks.OfType<Mark.Lines>().Where(m => m.Source == purlin.Line.Id)];
        double wideMm = onPaper.SelectMany(m => m.Points).Max(p => p.X) - onPaper.SelectMany(m => m.Points).Min(p => p.X);
        Assert.Equal(1000 * purlin.WidthM / view.Scale.Denominator, wideMm, 1e-6);
    }

    // A plumb cut of a tube d deep on a slope p is d √(1 + p²) high; the column meets its underside.
    [Fact]
    public void Rafters_meet_the_ridge_on_a_plumb_cut_and_the_column_ends_under_them()
    {
        MemberSolid rafter = Member(Source, MemberRole.Rafter);
        RoofProfile roof = Source.Houses[0].Form.Roof;
        double plumbM = rafter.DepthM * Math.Sqrt(1 + roof.LeftPitch * roof.LeftPitch);
        Entity.Polyline left = Detail(Source, "ridge").Entities.OfType<Entity.Polyline>().First(e => e.Closed && e.Source == rafter.Line.Id && e.Points.Min(p => p.X) < -0.1);
        Spot[] cut = [.. left.Points.Where(p => Math.Abs(p.X) < 1e-9)];
        Assert.Equal(plumbM, cut.Max(p => p.Y) - cut.Min(p => p.Y), 1e-9);
        Spot[] far = [.. left.Points.Where(p => Math.Abs(p.X) > 1e-9)];
        Assert.Equal(roof.LeftPitch, (cut.Max(p => p.Y) - far.Max(p => p.Y)) / -far[0].X, 1e-9);
        MemberSolid column = Member(Source, MemberRole.Column);
        Entity.Polyline post = Detail(Source, "eave").Entities.OfType<Entity.Polyline>().First(e => e.Closed && e.Source == column.Line.Id);
        Assert.Equal(column.DepthM, post.Points.Max(p => p.X), 1e-9);
        Assert.Equal(-plumbM, post.Points.Where(p => p.X < 1e-9).Max(p => p.Y), 1e-9);
    }

    // Change a section and the drawing changes with it: nothing is a typed picture.
    [Fact]
    public void A_deeper_rafter_is_drawn_deeper_and_named()
    {
        PaperSource deeper = Source with
        {
            Body = Source.Body with { Members = Source.Body.Members.Select(m => m.Line.Role == MemberRole.Rafter ? m with { DepthM = m.DepthM + 0.05, Section = "tube-of-a-test" } : m).ToEqList() },
        };
        double Deep(PaperSource s) => Extent(Detail(s, "purlin").Entities.Single(e => e is Entity.Polyline && e.Source == Member(s, MemberRole.Rafter).Line.Id), p => p.Y);
        Assert.Equal(0.05, Deep(deeper) - Deep(Source), 1e-9);
        string[] told = [.. DetailSheet.Draw(deeper, deeper.Houses[0], "S-4").OnPaper.OfType<Entity.Label>().Select(l => l.Text)];
        Assert.Contains(told, t => t.StartsWith("Rafter tube-of-a-test", StringComparison.Ordinal));
    }

    // Joints told on the sheets of all houses are those the takeoff buys, by its own names.
    [Fact]
    public void Counts_and_names_are_the_takeoffs()
    {
        foreach ((string item, JointKind[] kinds) in ((string, JointKind[])[])[
            ("frame/knee", [JointKind.Ridge, JointKind.Eave, JointKind.Tie]), ("frame/clip", [JointKind.Clip]), ("frame/base", [JointKind.Base]), ("frame/opening-joint", [JointKind.Opening])])
        {
            double counted = Source.Form.Buildings.Where(b => b.IsHouse).Sum(b => FrameJoints.Of(b, Source.Body.Members).Count(j => kinds.Contains(j.Kind)));
            Assert.Equal(Source.Takeoff.Lines.Where(l => l.Item == item).Sum(l => l.Quantity), counted);
        }

        JointPicture purlin = DetailSheet.Pictures(new JointParts(Source, Source.Houses[0])).Single(p => p.Id == "purlin");
        string clip = Source.Takeoff.Lines.Single(l => l.Item == "frame/clip").Label;
        int own = FrameJoints.Of(Source.Houses[0].Form, Source.Body.Members).Count(j => j.Kind == JointKind.Clip);
        Assert.Contains(purlin.Parts, p => p.Text == FormattableString.Invariant($"{clip}: {own} in this house"));
    }

    // By hand, house without openings: 14 frames have 14 ridges, 28 eaves; each line along is clipped at each frame; joints join what meets there.
    [Fact]
    public void Joints_lie_where_their_members_meet()
    {
        BuildingForm house = Source.Houses[0].Form;
        EqList<FrameJoint> joints = FrameJoints.Of(house, Source.Body.Members);
        Assert.Equal(joints.Count, joints.Select(j => j.Id).Distinct().Count());
        Assert.Equal((house.FrameLinesXM.Count, 2 * house.FrameLinesXM.Count), (joints.Count(j => j.Kind == JointKind.Ridge), joints.Count(j => j.Kind == JointKind.Eave)));
        Dictionary<string, MemberSolid> byId = Source.Body.Members.ToDictionary(m => m.Line.Id);
        foreach (FrameJoint j in joints)
        {
            Assert.True(Away(byId[j.Member].Line, j.At) < 1e-6, j.Id);
            Assert.True(j.Kind == JointKind.Base ? j.To.Length == 0 : byId[j.To].Line.Id != j.Member, j.Id);
            if (j.Kind is JointKind.Ridge or JointKind.Eave or JointKind.Tie or JointKind.Clip)
            {
                Assert.True(Away(byId[j.To].Line, j.At) < 1e-6, j.Id);
            }
        }

        static double Away(MemberLine line, Point3 p)
        {
            Point3 along = line.B - line.A;
            double t = Math.Clamp((p - line.A).Dot(along) / along.Dot(along), 0, 1);
            return (p - (line.A + t * along)).LengthM;
        }
    }

    // Rods cross a whole bay: by Pythagoras, of wall and roof.
    [Fact]
    public void Rods_are_as_long_as_their_bays_diagonals()
    {
        BuildingForm house = Source.Houses[0].Form;
        double bayM = house.FrameLinesXM[1] - house.FrameLinesXM[0];
        EqList<BracedBay> bays = FrameJoints.Braced(house);
        Assert.NotEmpty(bays);
        double rise = house.Roof.RidgeM - house.Roof.LeftEaveM;
        double slopeM = Math.Sqrt(house.Roof.RidgeOffsetM * house.Roof.RidgeOffsetM + rise * rise);
        Assert.All(bays.Where(b => b.Face == FaceName.Left).SelectMany(b => b.Rods), r => Assert.Equal(Math.Sqrt(bayM * bayM + house.Roof.LeftEaveM * house.Roof.LeftEaveM), r.LengthM, 1e-9));
        Assert.All(bays.Where(b => b.Face == FaceName.RoofLeft).SelectMany(b => b.Rods), r => Assert.Equal(Math.Sqrt(bayM * bayM + slopeM * slopeM), r.LengthM, 1e-9));
        Assert.Equal(Source.Takeoff.Lines.Single(l => l.Item == "frame/bracing").Quantity, Source.Form.Buildings.Where(b => b.IsHouse).Sum(b => FrameJoints.Braced(b).Count));
    }
}
