using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Design.Framing;
using Glazewright.Design.Layout;
using Glazewright.Design.Tests.Contracts;
using Glazewright.Mechanics.Checks;

namespace Glazewright.Design.Tests.Framing;

public class FramingStageTests
{
    private static FramingResult Run(Opening[] openings, Func<Job, Job>? change = null)
    {
        Job job = TestJobs.OneHouse();
        job = (change ?? (j => j))(job with { Houses = [job.Houses[0] with { Openings = openings.ToEqList() }] });
        FormResult form = FormStage.Run(FormInput.From(job));
        BuildingForm house = form.Building("A");
        FrameInput input = FrameInput.From(job, "A");
        FrameResult frame = FrameStage.Run(input, house, default);
        return FramingStage.Run(FramingInput.From(job, "A"), house, frame, BodyStage.Run(form, [frame]), new LayoutResult("A", [], 0, StageReport.Empty));
    }

    private static Opening Door(double offsetM, double wideM, double highM = 2.1, FaceName face = FaceName.End1) =>
        new("door-1", OpeningKind.DoubleDoor, face, offsetM, 0, wideM, highM, true);

    [Fact]
    public void Post_in_a_door_is_cut_and_stands_on_the_header()
    {
        FramingResult r = Run([Door(1.2, 1.8)]);
        MemberSolid stub = Assert.Single(r.Members, m => m.Line.Id.StartsWith("A/end1/post-1", StringComparison.Ordinal));
        Assert.Equal("A/end1/post-1/stub-1", stub.Line.Id);
        MemberSolid header = Assert.Single(r.Members, m => m.Line.Role == MemberRole.Header);

        // On the top of the header, whose underside is 1 in over the door.
        Assert.Equal(2.1 + 0.0254 + header.WidthM, stub.Line.A.ZM, 1e-9);
        Assert.Equal(1.8 + 0.0508, header.CutLengthM, 1e-9);
        Assert.Equal(2, r.Members.Count(m => m.Line.Role == MemberRole.Jamb));
        FramedOpening framed = Assert.Single(r.Openings);
        Assert.Equal((header.Line.Id, ""), (framed.Header, framed.Sill));
        Assert.All(r.Checks, c => Assert.InRange(c.UseFraction, 1e-4, 1));
    }

    [Fact]
    public void Girt_ends_at_the_jambs_of_a_door_in_its_way()
    {
        FramingResult before = Run([]);
        FramingResult after = Run([Door(10.0, 0.9, 2.0, FaceName.Left)]);
        double Girts(FramingResult r) => r.Members.Where(m => m.Line.Role == MemberRole.Girt && m.Line.Id.Contains("girt-left", StringComparison.Ordinal)).Sum(m => m.CutLengthM);
        int lines = before.Members.Where(m => m.Line.Id.Contains("girt-left", StringComparison.Ordinal)).Select(m => m.Line.Id.Split('/')[1]).Distinct().Count();
        double jambM = after.Members.First(m => m.Line.Role == MemberRole.Jamb).WidthM;
        Assert.True(lines > 0);
        Assert.Equal(Girts(before) - lines * (0.9 + 0.0508 + 2 * jambM), Girts(after), 1e-6);
        Assert.Equal(Girts(after), after.Members.Where(m => m.Line.Role == MemberRole.Girt && m.Line.Id.Contains("girt-left", StringComparison.Ordinal)).Sum(m => m.Line.LengthM), 1e-9);
    }

    [Fact]
    public void Wider_door_and_stronger_wind_take_heavier_tubes()
    {
        double Header(FramingResult r) => r.Members.Single(m => m.Line.Role == MemberRole.Header).MassPerM;
        FramingResult small = Run([Door(0.6, 1.2)]);
        FramingResult wide = Run([Door(1.0, 4.6)]);
        FramingResult storm = Run([Door(1.0, 4.6)], j => j with { Site = j.Site with { Wind = j.Site.Wind with { SpeedMs = 85 } } });
        Assert.True(Header(wide) > Header(small));

        // The header is as heavy as its sag asks in any wind; the jambs follow the wind.
        Assert.True(Header(storm) >= Header(wide));
        double Jamb(FramingResult r) => r.Members.First(m => m.Line.Role == MemberRole.Jamb).MassPerM;
        Assert.True(Jamb(storm) > Jamb(wide));
        Assert.All(storm.Checks.Where(c => c.Role == MemberRole.Header).Zip(wide.Checks.Where(c => c.Role == MemberRole.Header)), p => Assert.True(p.First.WindPa > p.Second.WindPa));
    }

    [Fact]
    public void Header_that_would_meet_the_rafter_is_told()
    {
        Finding told = Assert.Single(Run([Door(0.3, 1.5, 2.3)]).Report.Findings, f => f.Code == "framing/header-in-roof");
        Assert.Equal(Severity.Miss, told.Severity);
    }

    [Fact]
    public void Column_in_a_side_door_is_told()
    {
        Assert.Contains(Run([Door(7.0, 3.5, 2.0, FaceName.Left)]).Report.Findings, f => f.Code == "framing/column-in-opening");
        Assert.DoesNotContain(Run([Door(10.0, 0.9, 2.0, FaceName.Left)]).Report.Findings, f => f.Code == "framing/column-in-opening");
    }

    [Fact]
    public void Openings_without_room_for_jambs_are_told()
    {
        Opening[] close = [Door(1.2, 1.2) with { Id = "a" }, Door(2.43, 1.2) with { Id = "b" }];
        Assert.Contains(Run(close).Report.Findings, f => f.Code == "framing/no-room");
        Opening[] apart = [Door(1.2, 1.2) with { Id = "a" }, Door(2.7, 1.2) with { Id = "b" }];
        Assert.DoesNotContain(Run(apart).Report.Findings, f => f.Code == "framing/no-room");
    }

    [Fact]
    public void What_no_tube_can_carry_is_a_miss_with_its_use()
    {
        FramingResult r = Run([Door(0.8, 6.2)], j => j with { Site = j.Site with { Wind = j.Site.Wind with { SpeedMs = 95, TopographicFactor = 3, Exposure = WindExposure.D } } });
        Assert.Contains(r.Checks, c => c.UseFraction > 1);
        Assert.Contains(r.Report.Findings, f => f.Code is "framing/overworked" or "framing/post-overworked" && f.Severity == Severity.Miss);
    }

    [Fact]
    public void Derived_figures_come_out_again()
    {
        FramingResult r = Run([Door(1.2, 1.8), Door(4.2, 1.2, 1.0, FaceName.End2) with { Id = "w", Kind = OpeningKind.Window, SillM = 0.9 }]);
        Figure[] figures = [.. r.Report.Figures.Where(f => f.Working is Working.Derived)];
        Assert.True(figures.Length >= 8);
        Assert.All(figures, f => Assert.Equal(f.Value, Again((Working.Derived)f.Working), 1e-9 * Math.Max(1, f.Value)));
        Assert.Equal(r.Checks.Where(c => c.Role == MemberRole.Header).Max(c => c.UseFraction), Math.Max(
            r.Report.Figures.Single(f => f.Id == "A/framing/header-strength-use").Value, r.Report.Figures.Single(f => f.Id == "A/framing/header-deflection-use").Value), 1e-9);
    }

    private static double Again(Working.Derived d) => FormulaReader.Evaluate(d.Formula, d.Inputs);

    /// <summary>
    /// HSS4×2×3/16 of the AISC Manual (15th ed., table 1-11, from memory): Zx 2.34 in³, Ix 3.66 in⁴. Ours has the wall 0.188 in × 0.93, the Manual 0.174 in: 1 % more metal.
    /// </summary>
    [Fact]
    public void Header_of_a_manual_section_uses_its_share_of_the_manual_moment()
    {
        const double M3 = 0.0254 * 0.0254 * 0.0254;
        const double SpanM = 3;
        const double LineNPerM = 2000;
        FrameInput input = FrameInput.From(TestJobs.OneHouse(), "A");
        Stick stick = new(StickKind.Header, "h", 2, 0, SpanM, 0, 0, 0, 1);
        StickDemand demand = new(1000, 1, false, new StickLoad([new SpanStrip(0, SpanM, LineNPerM)], []), new StickLoad([], []), SpanM, 0);
        StickUse use = StickCheck.Of(input, Mechanics.Loads.LoadEdition.Asce716, stick, TubeNames.Of("tube-4x2x0.188"), demand);
        double moment = LineNPerM * SpanM * SpanM / 8;
        double manualNm = 0.9 * input.Choice.YieldPa * 2.34 * M3;
        Assert.Equal(moment / manualNm, use.StrengthUse, 0.015 * moment / manualNm);
        double sag = 0.42 * 5 * LineNPerM * Math.Pow(SpanM, 4) / (384 * 200e9 * 3.66 * M3 * 0.0254);
        Assert.Equal(sag * 120 / SpanM, use.DeflectionUse, 0.015 * sag * 120 / SpanM);
    }

    /// <summary>A jamb under axial force: AISC 360 appendix 8, B1 = 1/(1 − P/Pe) with Pe = π²EI/L².</summary>
    [Fact]
    public void Weight_on_a_jamb_amplifies_its_bending()
    {
        FrameInput input = FrameInput.From(TestJobs.OneHouse(), "A");
        Stick stick = new(StickKind.Jamb, "j", 2, 0, 4, 0.05, 0, -1, -1);
        StickDemand demand = new(1000, 1, false, new StickLoad([new SpanStrip(0, 4, 300)], []), new StickLoad([], []), 4, 9000);
        var tube = TubeNames.Of("tube-3x2x0.120");
        StickUse use = StickCheck.Of(input, Mechanics.Loads.LoadEdition.Asce716, stick, tube, demand);
        double pe = Math.PI * Math.PI * 200e9 * tube.StrongInertiaM4 / 16;
        Assert.Equal(300 * 16 / 8.0 / (1 - use.AxialN / pe), use.WindMomentNm, 1e-3 * use.WindMomentNm);
    }

    private static Opening Large(OpeningKind kind, double offsetM, double wideM, double highM, double? hungKg = null) =>
        new("big", kind, FaceName.End1, offsetM, 0, wideM, highM, false) { HungKg = hungKg };

    [Fact]
    public void Heavier_door_makes_its_header_heavier_and_is_cited()
    {
        double Header(FramingResult r) => r.Members.Single(m => m.Line.Role == MemberRole.Header).MassPerM;
        FramingResult usual = Run([Large(OpeningKind.SlidingDoor, 2.2, 3.4, 2.4)]);
        FramingResult heavy = Run([Large(OpeningKind.SlidingDoor, 2.2, 3.4, 2.4, 900)]);
        Assert.True(Header(heavy) > Header(usual));
        Figure said = usual.Report.Figures.Single(f => f.Id == "A/framing/big-hung");
        Assert.Equal(25 * 3.4 * 2.4, said.Value, 1e-9);
        Figure given = heavy.Report.Figures.Single(f => f.Id == "A/framing/big-hung");
        Assert.Equal(new Source.Given("/houses/0/openings/0/hung"), given.Source);
    }

    [Fact]
    public void Weight_hung_on_a_header_bends_it_as_an_even_load_and_half_of_it_reaches_each_jamb()
    {
        WallFace Wall(double hungN) => new(
            8, [new("l", 0.05, 0.1, true), new("p", 4, 0.05, false), new("r", 7.95, 0.1, true)],
            [new WallHole("big", "big", 2.5, 5.5, 0, 2.4, HoleFill.HeadAndSill, hungN, 0, 0, ["p"])], [new(0, 3.5), new(8, 3.5)]);
        FrameInput input = FrameInput.From(TestJobs.OneHouse(), "A");
        FrameLoadSite site = FrameLoadSite.Of(input, FormStage.Run(FormInput.From(TestJobs.OneHouse())).Building("A"));
        StickDemand[] Demands(double hungN)
        {
            FramedWall w = WallSizing.Of(input, site, Wall(hungN), "w", TubeNames.Of("tube-4x4x0.188"), 0, 7.9);
            return [.. w.Uses.Select((u, i) => (u, w.Grid.Sticks[i].Kind)).Where(p => p.Kind is StickKind.Jamb).Select(p => p.u!.Demand)];
        }

        // A light door and a lighter one: the same tubes, so jambs differ by half of what hangs.
        StickDemand[] with = Demands(60);
        StickDemand[] without = Demands(0);
        Assert.Equal(2, with.Length);
        Assert.All(with.Zip(without), p => Assert.Equal(30, p.First.AxialN - p.Second.AxialN, 0.01));
    }

    [Fact]
    public void Roll_up_door_gives_its_wind_to_the_jambs_and_wants_room_for_its_coil()
    {
        FramingResult roll = Run([Large(OpeningKind.RollUpDoor, 2.2, 3.4, 2.0)]);
        FramingResult slide = Run([Large(OpeningKind.SlidingDoor, 2.2, 3.4, 2.0)]);
        double Strength(FramingResult r, MemberRole role) => r.Checks.Where(c => c.Role == role).Max(c => c.StrengthFraction);
        Assert.True(roll.Report.Figures.Single(f => f.Id == "A/framing/header-force").Value < slide.Report.Figures.Single(f => f.Id == "A/framing/header-force").Value);
        Assert.True(Strength(roll, MemberRole.Jamb) > 0);
        Assert.DoesNotContain(roll.Report.Findings, f => f.Code == "framing/no-room-for-coil");
        Assert.Contains(Run([Large(OpeningKind.RollUpDoor, 0.4, 2.0, 2.1)]).Report.Findings, f => f.Code == "framing/no-room-for-coil");
    }

    [Fact]
    public void Sliding_door_wants_free_wall_on_one_side()
    {
        Assert.DoesNotContain(Run([Large(OpeningKind.SlidingDoor, 0.6, 3.4, 2.0)]).Report.Findings, f => f.Code == "framing/no-room-to-slide");
        Finding told = Assert.Single(Run([Large(OpeningKind.SlidingDoor, 2.2, 4.2, 2.0)]).Report.Findings, f => f.Code == "framing/no-room-to-slide");
        Assert.Equal("A/end1/big", told.Id);
    }

    [Fact]
    public void Wet_wall_along_a_side_wall_is_framed_from_column_to_column()
    {
        FramingResult r = Run([new Opening("pad", OpeningKind.Vent, FaceName.Left, 5, 0.6, 18, 1.2, false)]);
        MemberSolid[] headers = [.. r.Members.Where(m => m.Line.Role == MemberRole.Header)];
        double bayM = TestJobs.House("A", 0, 0).LengthM / TestJobs.House("A", 0, 0).BayCount;
        Assert.True(headers.Length > 4);
        Assert.All(headers, h => Assert.InRange(h.CutLengthM, 0.1, bayM));
        Assert.Equal(headers.Length, r.Openings.Count(o => o.Id == "pad"));
        Assert.DoesNotContain(r.Report.Findings, f => f.Code == "framing/overworked");
    }

    /// <summary>Whatever is typed into the walls: numbers stay finite, ids are one of a kind, and each hole names members that are there.</summary>
    [Fact]
    public void Any_openings_are_framed()
    {
        Job job = TestJobs.OneHouse();
        FrameInput input = FrameInput.From(job, "A");
        FormResult plain = FormStage.Run(FormInput.From(job with { Houses = [job.Houses[0] with { Openings = [] }] }));
        FrameResult frame = FrameStage.Run(input, plain.Building("A"), TestContext.Current.CancellationToken);
        Random random = new(7);
        for (int trial = 0; trial < 150; trial++)
        {
            List<Opening> openings = [];
            for (int k = 0; k < 7; k++)
            {
                FaceName face = FramingStage.Walls[random.Next(4)];
                double lengthM = face is FaceName.End1 or FaceName.End2 ? 7.9 : 31.7;
                double wide = 0.3 + random.NextDouble() * (random.Next(4) == 0 ? lengthM - 0.5 : 2);
                double u = random.NextDouble() * (lengthM - wide);
                double v = random.Next(2) * random.NextDouble() * 1.2;
                double high = 0.3 + random.NextDouble() * (2.2 - v - 0.3);
                bool clear = openings.TrueForAll(o => o.Face != face || u > o.OffsetM + o.WidthM || u + wide < o.OffsetM || v > o.SillM + o.HeightM || v + high < o.SillM);
                OpeningKind kind = v == 0 ? new[] { OpeningKind.Door, OpeningKind.RollUpDoor, OpeningKind.SlidingDoor }[random.Next(3)] : OpeningKind.Vent;
                if (clear)
                {
                    openings.Add(new Opening($"o{k}", kind, face, u, v, wide, high, false));
                }
            }

            Job with = job with { Houses = [job.Houses[0] with { Openings = openings.ToEqList() }] };
            FormResult form = FormStage.Run(FormInput.From(with));
            FramingResult r = FramingStage.Run(FramingInput.From(with, "A"), form.Building("A"), frame, BodyStage.Run(form, [frame]), new LayoutResult("A", [], 0, StageReport.Empty));
            Assert.All(r.Checks, c => Assert.True(double.IsFinite(c.UseFraction) && c.UseFraction >= 0, c.Id));
            Assert.All(r.Members, m => Assert.True(double.IsFinite(m.CutLengthM), m.Line.Id));
            HashSet<string> ids = [.. r.Members.Select(m => m.Line.Id)];
            Assert.Equal(r.Members.Count, ids.Count);
            Assert.All(r.Openings, o => Assert.True(ids.Contains(o.Header) && ids.Contains(o.LeftJamb) && ids.Contains(o.RightJamb), o.Id));
            Assert.Equal(openings.Count, r.Openings.Select(o => (o.Face, o.Id)).Distinct().Count());
        }
    }
}
