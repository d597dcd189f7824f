using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Design.Framing;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;
using Glazewright.Design.Takeoff;
using Glazewright.Design.Tests.Duty;

namespace Glazewright.Design.Tests.Layout;

/// <summary>Pipes of vents against the steel and the sheets that later stages put into the walls: by their own sizes, not by what Layout supposes of them.</summary>
public class VentPlacesTests
{
    private const double InchM = 0.0254;

    private static readonly Lazy<PlantResult> s_plant = new(() =>
    {
        Job job = TestJobs.OneHouse();
        return PlantStage.Run(PlantInput.From(job, "A"), FormStage.Run(FormInput.From(job)).Building("A"), DesignDay.Duty(job), CatalogueReader.Generic);
    });

    internal static PlantResult Plant(int heaters, bool isSealed, double efficiency, int fans, double throwM)
    {
        PlantResult plant = s_plant.Value;
        HeaterUnit one = plant.Heat!.Choice.Heaters[0] with { SealedCombustion = isSealed, Electric = false, EfficiencyFraction = efficiency, ThrowM = throwM };
        return plant with
        {
            Heat = new Answer<HeatPlant>.Met(plant.Heat.Choice with { Heaters = [.. Enumerable.Range(1, heaters).Select(i => one with { Id = FormattableString.Invariant($"A/heater-{i}") })] }, 0),
            Circulation = plant.Circulation! with { Count = fans },
            Curtain = null,
        };
    }

    internal static Job Diced(Random dice)
    {
        double widthM = 4 + 8 * dice.NextDouble(), eaveM = 2.4 + 2 * dice.NextDouble();
        int bays = dice.Next(3, 16);
        double bayM = 1 + 1.2 * dice.NextDouble();
        Job job = TestJobs.OneHouse();
        double pitch = 0.4 + 0.2 * dice.NextDouble();
        RoofProfile roof = ((RoofSolution.Closed)RoofSolver.Solve(new RoofWish(eaveM, null, widthM / 2, pitch, pitch), widthM)).Profile;
        FaceName[] walls = [FaceName.End1, FaceName.End2, FaceName.Left, FaceName.Right];
        FaceName wall = walls[dice.Next(4)];
        double lengthM = bays * bayM, longM = wall is FaceName.End1 or FaceName.End2 ? widthM : lengthM;
        return job with
        {
            Units = dice.Next(2) == 0 ? UnitSystem.Us : UnitSystem.Metric,
            Houses =
            [
                job.Houses[0] with
                {
                    LengthM = lengthM,
                    WidthM = widthM,
                    BayCount = bays,
                    Roof = roof,
                    Frame = job.Houses[0].Frame with { PurlinSpacingM = 0.8 + 0.5 * dice.NextDouble() },
                    Openings = [new Opening("door-1", OpeningKind.Door, wall, 0.5 + (longM - 2) * dice.NextDouble(), 0, 0.9, 2, true)],
                    Benches = [],
                },
            ],
        };
    }

    private static (double U, double V, double Wide, double High) OnWall(PlacedItem p) => p.Face is FaceName.End1 or FaceName.End2
        ? (p.Corner.YM, p.Corner.ZM, p.Size.YM, p.Size.ZM)
        : (p.Corner.XM, p.Corner.ZM, p.Size.XM, p.Size.ZM);

    // What a member fills of a wall; null when it stands elsewhere.
    private static (double U, double V, double Wide, double High)? Fills(MemberSolid m, FaceName face, BuildingForm house)
    {
        bool end = face is FaceName.End1 or FaceName.End2;
        double off = face switch { FaceName.End1 => 0, FaceName.End2 => house.LengthM, FaceName.Left => 0, _ => house.WidthM };
        double Off(Point3 p) => Math.Abs((end ? p.XM : p.YM) - off);
        double U(Point3 p) => end ? p.YM : p.XM;
        if (Off(m.Line.A) > 0.06 || Off(m.Line.B) > 0.06 || m.Line.Role is MemberRole.Rafter or MemberRole.CollarTie)
        {
            return null;
        }

        double sizeM = end && m.Line.Role == MemberRole.Column ? m.DepthM : m.WidthM;
        double u = Math.Min(U(m.Line.A), U(m.Line.B)), v = Math.Min(m.Line.A.ZM, m.Line.B.ZM);
        double longM = Math.Abs(U(m.Line.A) - U(m.Line.B)), highM = Math.Abs(m.Line.A.ZM - m.Line.B.ZM);
        return highM > longM ? (u - sizeM / 2, v, sizeM, highM) : (u, v - sizeM / 2, longM, sizeM);
    }

    private static bool Meet((double U, double V, double Wide, double High) a, (double U, double V, double Wide, double High) b) =>
        a.U < b.U + b.Wide - 1e-6 && b.U < a.U + a.Wide - 1e-6 && a.V < b.V + b.High - 1e-6 && b.V < a.V + a.High - 1e-6;

    [Fact]
    public void No_pipe_meets_a_post_girt_jamb_header_or_sill_nor_a_joint_untold()
    {
        Random dice = new(712);
        int pipes = 0, offLevel = 0;
        for (int i = 0; i < 60; i++)
        {
            Job job = Diced(dice);
            FormResult form = FormStage.Run(FormInput.From(job));
            BuildingForm house = form.Building("A");
            LayoutResult layout = LayoutStage.Run(LayoutInput.From(job, "A"), form, Plant(dice.Next(1, 5), true, dice.Next(2) == 0 ? 0.82 : 0.95, 2, 8));
            FrameResult frame = FrameStage.Run(FrameInput.From(job, "A"), house, TestContext.Current.CancellationToken);
            FramingResult framing = FramingStage.Run(FramingInput.From(job, "A"), house, frame, BodyStage.Run(form, [frame]), layout);
            EqList<CoverPiece> covers = CoverPlaces.Of(house, form, [layout], job.Units);
            foreach (PlacedItem pipe in layout.Placed.Where(p => p.Kind == PlacedKind.Vent))
            {
                pipes++;
                var hole = OnWall(pipe);
                foreach (MemberSolid m in framing.Members)
                {
                    Assert.False(Fills(m, pipe.Face, house) is { } steel && Meet(hole, steel), $"{i}: {pipe} meets {m.Line.Id} {m.Section}");
                }

                double roofM = Math.Min(Top(hole.U), Top(hole.U + hole.Wide));
                Assert.True(hole.V + hole.High < roofM, $"{i}: {pipe} stands in the roof");
                string heater = pipe.Id[..pipe.Id.LastIndexOf("/vent", StringComparison.Ordinal)];
                bool told = layout.Report.Findings.Any(f => f.Code == "layout/flue-at-joint" && f.Id == heater);
                CoverZone[] zones = [.. house.Face(pipe.Face).Zones];
                CoverPiece[] crossed = [.. covers.Where(c => zones.Any(z => z.Id == c.Zone) && Meet(hole, (c.FromUM, c.FromVM, c.WidthM, c.ReachM)))];
                Assert.True(crossed.Length <= 1 || told, $"{i}: {pipe} goes through a joint and nobody is told");
                offLevel += layout.Flues.Single(f => f.Heater == heater).Elbows > 1 ? 1 : 0;
                foreach (Opening o in job.Houses[0].Openings.Where(o => o.Face == pipe.Face && pipe.Id.EndsWith("vent", StringComparison.Ordinal)))
                {
                    Assert.False(Meet(hole, (o.OffsetM - 6 * InchM, 0, o.WidthM + 12 * InchM, o.HeightM + 6 * InchM)), $"{i}: {pipe} near the door");
                }

                double Top(double u) => pipe.Face is FaceName.End1 or FaceName.End2
                    ? house.Roof.HeightM(Math.Clamp(u, 0, house.WidthM), house.WidthM) - frame.Section(MemberRole.Rafter)!.DepthM
                    : (pipe.Face == FaceName.Left ? house.Roof.LeftEaveM : house.Roof.RightEaveM) - 0.05;
            }

            int blocked = layout.Report.Findings.Count(f => f.Code == "layout/flue-blocked");
            Assert.Equal(layout.Flues.Count(f => f.Face is null), blocked);
        }

        Assert.True(pipes > 150, $"{pipes} pipes only");
        Assert.True(offLevel > 0, "none made way");
    }

    [Fact]
    public void A_post_or_girt_in_the_straight_way_moves_the_terminal()
    {
        Job job = TestJobs.OneHouse();
        job = job with { Houses = [job.Houses[0] with { Openings = [] }] };
        FormResult form = FormStage.Run(FormInput.From(job));
        BuildingForm house = form.Building("A");
        foreach (FaceName face in (FaceName[])[FaceName.End1, FaceName.Left])
        {
            var steel = new WallSteel(house, [], face, UnitSystem.Us);
            MemberLine m = house.Members.First(m => face == FaceName.End1 ? m.Role == MemberRole.EndPost && m.A.XM < 0.1 : m.Role == MemberRole.Girt && m.A.YM < 0.1);
            Point2 at = house.Face(face).Plane.On(m.A);
            (double u, double v) = face == FaceName.End1 ? (at.UM, 1.5) : (0.9, at.VM);
            Assert.True(steel.Meets(new WallPlace(u - 0.05, v - 0.05, 0.1, 0.1)));
            // 4 in of tube, an inch of collar and half of the pipe away: free.
            Assert.False(steel.Meets(face == FaceName.End1 ? new WallPlace(u + 0.0508 + InchM, v, 0.1, 0.1) : new WallPlace(u, v + 0.0508 + InchM, 0.1, 0.1)));
        }
    }

    [Fact]
    public void A_gravity_vent_goes_up_between_rafters_and_purlins_or_that_is_told()
    {
        Random dice = new(713);
        int pipes = 0;
        for (int i = 0; i < 60; i++)
        {
            Job job = Diced(dice);
            FormResult form = FormStage.Run(FormInput.From(job));
            BuildingForm house = form.Building("A");
            LayoutResult layout = LayoutStage.Run(LayoutInput.From(job, "A"), form, Plant(dice.Next(1, 4), false, 0.8, 2, 8));
            foreach (PlacedItem pipe in layout.Placed.Where(p => p.Kind == PlacedKind.Vent))
            {
                pipes++;
                string heater = pipe.Id[..pipe.Id.LastIndexOf("/vent", StringComparison.Ordinal)];
                bool told = layout.Report.Findings.Any(f => f.Code is "layout/flue-meets-frame" or "layout/hung-overlap" && f.Id == heater);
                foreach (MemberLine m in house.Members.Where(m => m.Role is MemberRole.Rafter or MemberRole.Purlin or MemberRole.CollarTie or MemberRole.Ridge))
                {
                    double x0 = Math.Min(m.A.XM, m.B.XM) - 0.05, x1 = Math.Max(m.A.XM, m.B.XM) + 0.05, y0 = Math.Min(m.A.YM, m.B.YM) - 0.05, y1 = Math.Max(m.A.YM, m.B.YM) + 0.05;
                    bool meets = pipe.Corner.XM < x1 && x0 < pipe.Corner.XM + pipe.Size.XM && pipe.Corner.YM < y1 && y0 < pipe.Corner.YM + pipe.Size.YM;
                    Assert.False(meets && !told, $"{i}: {pipe} meets {m.Id}");
                }
            }
        }

        Assert.True(pipes > 60);
    }
}
