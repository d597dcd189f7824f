using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Design.Framing;
using Glazewright.Design.Layout;
using Glazewright.Design.Tests.Layout;

namespace Glazewright.Design.Tests.Framing;

/// <summary>Girts of end walls in diced houses: sheets are held as closely as asked, girts run free of holes and uprights, and all are proved.</summary>
public class EndGirtsTests
{
    private static (Job Job, BuildingForm House, FramingResult Framing, FrameResult Frame) Run(Job job, LayoutResult? layout = null)
    {
        FormResult form = FormStage.Run(FormInput.From(job));
        BuildingForm house = form.Building("A");
        FrameResult frame = FrameStage.Run(FrameInput.From(job, "A"), house, TestContext.Current.CancellationToken);
        layout ??= LayoutStage.Run(LayoutInput.From(job, "A"), form, VentPlacesTests.Plant(2, true, 0.82, 2, 8));
        return (job, house, FramingStage.Run(FramingInput.From(job, "A"), house, frame, BodyStage.Run(form, [frame]), layout), frame);
    }

    private static MemberSolid[] On(FramingResult framing, double xM) => [.. framing.Members.Where(m => Math.Abs(m.Line.A.XM - xM) < 0.01 && Math.Abs(m.Line.B.XM - xM) < 0.01)];

    [Fact]
    public void Every_strip_of_an_end_wall_is_held_at_the_spacing_asked_for()
    {
        Random dice = new(715);
        int strips = 0;
        for (int i = 0; i < 40; i++)
        {
            (Job job, BuildingForm house, FramingResult framing, FrameResult frame) = Run(VentPlacesTests.Diced(dice));
            double spacingM = job.Houses[0].Frame.PurlinSpacingM, underM = 2.2 * frame.Section(MemberRole.Rafter)!.DepthM;
            foreach (double xM in (double[])[0, house.LengthM])
            {
                MemberSolid[] wall = On(framing, xM);
                MemberSolid[] uprights = [.. wall.Where(m => m.Line.Role is MemberRole.EndPost or MemberRole.Jamb or MemberRole.Column)];
                MemberSolid[] across = [.. wall.Where(m => m.Line.Role is MemberRole.Girt or MemberRole.Header or MemberRole.Sill)];
                for (double u = 0.25; u < house.WidthM; u += 0.1)
                {
                    // Beside an upright within a foot of another the sheet is held by them.
                    double topM = house.Roof.HeightM(u, house.WidthM) - underM;
                    double[] levels = [.. across.Where(m => Math.Min(m.Line.A.YM, m.Line.B.YM) <= u && Math.Max(m.Line.A.YM, m.Line.B.YM) >= u).Select(m => m.Line.A.ZM).Append(0).Append(topM).Order()];
                    if (uprights.Count(m => Math.Abs(m.Line.A.YM - u) < 0.45) > 1 || levels.Length < 3)
                    {
                        continue;
                    }

                    for (int k = 1; k < levels.Length; k++)
                    {
                        bool inHole = framing.Openings.Where(o => house.Face(o.Face).Plane.Origin.XM - xM is < 0.01 and > -0.01).Any(o =>
                        {
                            double left = wall.FirstOrDefault(m => m.Line.Id == o.LeftJamb)?.Line.A.YM ?? -1, right = wall.FirstOrDefault(m => m.Line.Id == o.RightJamb)?.Line.A.YM ?? -1;
                            return u > left - 0.3 && u < right + 0.3;
                        });
                        strips++;
                        Assert.True(inHole || levels[k] - levels[k - 1] < spacingM + 0.35, FormattableString.Invariant($"{i}: at {u:0.00} m of the wall at {xM:0.0} m nothing between {levels[k - 1]:0.00} and {levels[k]:0.00} m, {spacingM:0.00} m asked"));
                    }
                }
            }
        }

        Assert.True(strips > 2000, $"{strips} strips");
    }

    [Fact]
    public void No_girt_crosses_an_upright_or_lies_in_a_hole_and_each_wall_is_proved()
    {
        Random dice = new(716);
        int girts = 0;
        for (int i = 0; i < 40; i++)
        {
            (Job _, BuildingForm house, FramingResult framing, FrameResult _) = Run(VentPlacesTests.Diced(dice));
            foreach (double xM in (double[])[0, house.LengthM])
            {
                MemberSolid[] wall = On(framing, xM);
                foreach (MemberSolid g in wall.Where(m => m.Line.Role == MemberRole.Girt))
                {
                    girts++;
                    (double from, double to) = (Math.Min(g.Line.A.YM, g.Line.B.YM), Math.Max(g.Line.A.YM, g.Line.B.YM));
                    Assert.DoesNotContain(wall, m => m.Line.Role is MemberRole.EndPost or MemberRole.Jamb
                        && m.Line.A.YM > from + 0.01 && m.Line.A.YM < to - 0.01 && Math.Min(m.Line.A.ZM, m.Line.B.ZM) < g.Line.A.ZM && Math.Max(m.Line.A.ZM, m.Line.B.ZM) > g.Line.A.ZM);
                    Assert.True(g.Line.A.ZM < Math.Min(house.Roof.HeightM(from, house.WidthM), house.Roof.HeightM(to, house.WidthM)), g.Line.Id + " stands out of the roof");
                }

                if (wall.Any(m => m.Line.Role == MemberRole.Girt))
                {
                    OpeningCheck check = Assert.Single(framing.Checks, c => c.Role == MemberRole.Girt && c.Face == (xM < 0.01 ? FaceName.End1 : FaceName.End2));
                    Assert.Equal(wall.Where(m => m.Line.Role == MemberRole.Girt).Max(m => m.CutLengthM), check.SpanM, 1e-9);
                    Assert.True(check.UseFraction <= 1 || framing.Report.Findings.Any(f => f.Code == "framing/girt-overworked"));
                }
            }
        }

        Assert.True(girts > 200, $"{girts} girts");
    }

    [Fact]
    public void Wider_between_posts_works_harder_or_takes_a_heavier_tube()
    {
        Random dice = new(717);
        Job job = VentPlacesTests.Diced(dice);
        job = job with { Houses = [job.Houses[0] with { Openings = [] }] };
        var empty = new LayoutResult("A", [], 0, StageReport.Empty);
        FramingResult wide = Run(job with { Houses = [job.Houses[0] with { WidthM = 9.6, Roof = Ridge(9.6) }] }, empty).Framing;
        FramingResult narrow = Run(job with { Houses = [job.Houses[0] with { WidthM = 4.9, Roof = Ridge(4.9) }] }, empty).Framing;
        OpeningCheck a = wide.Checks.First(c => c.Role == MemberRole.Girt), b = narrow.Checks.First(c => c.Role == MemberRole.Girt);
        Assert.True(a.SpanM > b.SpanM * 1.3);
        Assert.True(a.Section != b.Section || a.UseFraction > b.UseFraction);

        static RoofProfile Ridge(double widthM) => ((RoofSolution.Closed)RoofSolver.Solve(new RoofWish(3, null, widthM / 2, 0.5, 0.5), widthM)).Profile;
    }
}
