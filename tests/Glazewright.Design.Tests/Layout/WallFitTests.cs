using CsCheck;
using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;
using Glazewright.Design.Tests.Duty;
using Glazewright.Science.Air;
using Glazewright.Science.Flow;

namespace Glazewright.Design.Tests.Layout;

/// <summary>What hangs on walls: nothing overlaps, nothing leaves its wall, and what is left out is told.</summary>
public class WallFitTests
{
    private static readonly Lazy<DutyResult> s_duty = new(() => DesignDay.Duty(TestJobs.OneHouse()));

    private static readonly Gen<(House House, double FlowM3PerS)> AnyWall =
        from widthM in Gen.Double[3, 14]
        from lengthM in Gen.Double[5, 60]
        from bays in Gen.Int[2, 12]
        from eaveM in Gen.Double[1.9, 4.5]
        from face in One(FaceName.End1, FaceName.End2, FaceName.Left, FaceName.Right)
        from wet in Gen.Bool
        from pad in One((0.0, 0.0), (3.0, 1.22), (4.27, 1.83), (9.0, 1.52))
        from fans in One("", "exhaust-24", "exhaust-36", "exhaust-54")
        from count in Gen.Int[1, 8]
        from pressure in Gen.Bool
        from doorAt in Gen.Double[0, 1]
        from door in One(FaceName.End1, FaceName.End2, FaceName.Left, FaceName.Right)
        from flow in Gen.Double[0.5, 30]
        select (Make(widthM, lengthM, bays, eaveM, doorAt, door) with
        {
            Equipment = TestJobs.House("A", 0, 0).Equipment with
            {
                FanFace = face,
                WetWall = wet,
                WetWallWidthM = pad.Item1,
                WetWallHeightM = pad.Item2,
                ExhaustFixed = fans.Length == 0 ? [] : [new FixedItem(fans, count)],
                PositivePressurePa = pressure ? 3 : 0,
            },
        }, flow);

    [Fact]
    public void Nothing_on_a_wall_overlaps_or_leaves_it_and_what_is_missing_is_told() => AnyWall.Sample(
        w =>
        {
            (House house, PlantResult plant, LayoutResult layout, BuildingForm form) = Run(w.House, w.FlowM3PerS);
            PlacedItem[] hung = [.. layout.Placed.Where(p => p.Face != FaceName.Floor)];
            for (int i = 0; i < hung.Length; i++)
            {
                Assert.True(OnWall(form, hung[i]), $"{hung[i]} leaves its wall");
                foreach (OpeningForm o in form.Face(hung[i].Face).Openings)
                {
                    (double u, double v, double wide, double high) = Rectangle(hung[i]);
                    Assert.False(
                        u < o.Opening.OffsetM + o.Opening.WidthM && o.Opening.OffsetM < u + wide && v < o.Opening.SillM + o.Opening.HeightM && o.Opening.SillM < v + high,
                        $"{hung[i]} stands in {o.Id}");
                }

                for (int j = i + 1; j < hung.Length; j++)
                {
                    bool boxed = hung[i].Kind == PlacedKind.WetWall && hung[j].Kind == PlacedKind.IntakeBox;
                    Assert.True(boxed || !Overlap(hung[i], hung[j]), $"{hung[i]} in {hung[j]}");
                }
            }

            string[] codes = [.. layout.Report.Findings.Select(f => f.Code)];
            ExhaustPlant exhaust = plant.Exhaust!.Choice;
            Assert.True(hung.Count(p => p.Kind == PlacedKind.Fan) == exhaust.Fans.Count || codes.Contains("layout/wall-crowded"));
            Assert.True(
                hung.Count(p => p.Kind == PlacedKind.Louver) == exhaust.LouverCount || codes.Contains("layout/louvers-short") || codes.Contains("layout/wall-crowded"));
            Assert.True(hung.Any(p => p.Kind == PlacedKind.WetWall) == house.Equipment.WetWall || codes.Contains("layout/wall-crowded"));
            Assert.True(hung.Any(p => p.Kind == PlacedKind.PressureFan) == (plant.Pressure is not null) || codes.Contains("layout/wall-crowded"));
            return true;
        },
        iter: 300,
        threads: 1);

    // A wall with a door leaves two runs; in one row each holds floor((run + gap) / (size + gap)) pieces: no arrangement holds more.
    [Fact]
    public void A_row_holds_what_its_runs_hold() => Gen.Select(Gen.Double[4, 20], Gen.Double[0, 1], Gen.Double[0.4, 1.3]).Sample((lengthM, doorAt, sizeM) =>
    {
        House house = Make(lengthM, 20, 4, 2.2, doorAt, FaceName.End1);
        BuildingForm form = FormStage.Run(FormInput.From(TestJobs.OneHouse() with { Houses = [house] })).Building("A");
        WallModule m = WallModule.Inches;
        Opening door = house.Openings[0];
        double[] runs = [door.OffsetM - m.GapM - m.EdgeM, lengthM - m.EdgeM - door.OffsetM - door.WidthM - m.GapM];
        int model = runs.Sum(r => Math.Max((int)Math.Floor((r + m.GapM) / (sizeM + m.GapM) + 1e-6), 0));
        var wall = new WallPlan(form, FaceName.End1, m);
        int packed = WallPacking.Most(wall, sizeM, 40);
        bool twoRows = m.LeastSillM + 2 * sizeM + m.GapM + 0.1 <= form.Roof.RidgeM;
        Assert.True(twoRows ? packed >= model : packed == model || sizeM > 1.2, $"{packed} of {model}");
    }, iter: 200, threads: 1);

    // Six louvers of 48 in before a pad 14 ft wide and 6 ft high: one row of six is 24 ft and does not go on 26 ft beside a door of 6 ft; two rows of three do.
    [Fact]
    public void Louvers_stand_in_two_rows_where_one_would_cross_the_door()
    {
        House house = Make(7.9248, 30, 6, 2.6, 0, FaceName.End1);
        BuildingForm form = FormStage.Run(FormInput.From(TestJobs.OneHouse() with { Houses = [house] })).Building("A");
        var wall = new WallPlan(form, FaceName.End1, WallModule.Inches);
        LouverBlock block = LouverBlock.TryFind(wall, new WallPlace(3.2, 0.762, 4.2672, 1.8288), 1.2192, 6)!;
        Assert.Equal(2, block.Rows);
        Assert.False(block.Flush);
        Assert.All(block.Louvers, l => Assert.True(wall.On(l) && l.UM > house.Openings[0].OffsetM + house.Openings[0].WidthM));
    }

    [Fact]
    public void Fans_that_find_no_place_are_left_out_and_what_the_others_move_is_told()
    {
        House house = Make(6, 20, 4, 2.2, 0.5, FaceName.End2);
        house = house with { Equipment = house.Equipment with { WetWall = false, ExhaustFixed = [new FixedItem("exhaust-54", 5)] } };
        (_, PlantResult plant, LayoutResult layout, _) = Run(house, 30);
        int drawn = layout.Placed.Count(p => p.Kind == PlacedKind.Fan);
        Finding told = layout.Report.Findings.Single(f => f.Code == "layout/wall-crowded");
        Assert.InRange(drawn, 1, 4);
        Assert.Contains($"{drawn} of 5 fans fit", told.What, StringComparison.Ordinal);
        string moved = ((FormattableString)$"{plant.Exhaust!.Choice.Wet[drawn - 1].FlowM3PerS / 0.00047194745:N0} cfm").ToString(System.Globalization.CultureInfo.InvariantCulture);
        Assert.Contains(moved, told.What, StringComparison.Ordinal);
    }

    // By hand: orifice of what fits in series with the section's velocity heads, against the fan's own table at the air's density.
    [Fact]
    public void Louvers_that_find_no_place_leave_the_fans_an_operating_point_of_its_own()
    {
        House house = Make(8, 30, 6, 2.6, 0, FaceName.End2);
        house = house with { Equipment = house.Equipment with { WetWall = false, InsectScreenPorosityFraction = 0, ExhaustFixed = [new FixedItem("exhaust-36", 4)] } };
        (_, PlantResult plant, _, BuildingForm form) = Run(house, 12);
        ExhaustPlant exhaust = plant.Exhaust!.Choice;
        LouverEntry louver = CatalogueReader.Generic.Louvers.Single(l => l.SizeM == exhaust.LouverSizeM);
        FanEntry fan = CatalogueReader.Generic.Fans.Single(f => f.Id == "exhaust-36");
        double density = AirState.FromWetBulb(33.3, 23.7, s_duty.Value.PressurePa).DensityKgPerM3;
        Assert.True(exhaust.LouverCount > 1);
        Assert.Equal(exhaust.LouverCount, exhaust.ByLouvers!.Count);
        Assert.Equal(exhaust.Wet[^1].FlowM3PerS, exhaust.ByLouvers[^1].FlowM3PerS, 6);
        for (int n = 1; n <= exhaust.LouverCount; n++)
        {
            Design.Plant.OperatingPoint p = exhaust.ByLouvers[n - 1];
            double freeM2 = n * louver.SizeM * louver.SizeM * louver.FreeFraction;
            double orificePa = 0.5 * density * Math.Pow(p.FlowM3PerS / (louver.DischargeCoefficient * freeM2), 2);
            double housePa = Intake.HouseHeads * 0.5 * density * Math.Pow(p.FlowM3PerS / form.SectionAreaM2, 2);
            Assert.Equal(p.StaticPa, orificePa + housePa, 0.01);
            double at = p.StaticPa / (density / 1.2);
            int k = Math.Clamp(fan.Points.TakeWhile(x => x.StaticPa <= at).Count(), 1, fan.Points.Count - 1);
            (FanPoint a, FanPoint b) = (fan.Points[k - 1], fan.Points[k]);
            double flow = a.FlowM3PerS + ((at - a.StaticPa) / (b.StaticPa - a.StaticPa) * (b.FlowM3PerS - a.FlowM3PerS));
            Assert.Equal(p.FlowM3PerS, 4 * flow, 0.005);
        }
    }

    [Fact]
    public void Missing_louvers_are_told_with_what_is_left()
    {
        House house = Make(8, 30, 6, 2.6, 0, FaceName.End2);
        house = house with { Equipment = house.Equipment with { WetWall = false, ExhaustFixed = [new FixedItem("exhaust-36", 4)] } };
        (_, PlantResult plant, _, _) = Run(house, 12);
        ExhaustPlant exhaust = plant.Exhaust!.Choice;
        List<Finding> findings = [];
        LayoutFindings.LouversShort("A", exhaust, exhaust.LouverCount, 1, exhaust.LouverSizeM, "the wall", findings);
        string left = ((FormattableString)$"{exhaust.ByLouvers![0].FlowM3PerS / 0.00047194745:N0} cfm").ToString(System.Globalization.CultureInfo.InvariantCulture);
        Assert.Contains(left, findings.Single().What, StringComparison.Ordinal);
    }

    private static (House House, PlantResult Plant, LayoutResult Layout, BuildingForm Form) Run(House house, double flowM3PerS)
    {
        Job job = TestJobs.OneHouse() with { Houses = [house] };
        FormResult form = FormStage.Run(FormInput.From(job));
        PlantResult plant = PlantStage.Run(PlantInput.From(job, "A"), form.Building("A"), s_duty.Value with { VentilationM3PerS = flowM3PerS }, CatalogueReader.Generic);
        return (house, plant, LayoutStage.Run(LayoutInput.From(job, "A"), form, plant), form.Building("A"));
    }

    private static House Make(double widthM, double lengthM, int bays, double eaveM, double doorAt, FaceName door)
    {
        RoofProfile roof = ((RoofSolution.Closed)RoofSolver.Solve(new RoofWish(eaveM, null, 0.6 * widthM, 0.5, 0.75), widthM)).Profile;
        double wallM = door is FaceName.End1 or FaceName.End2 ? widthM : lengthM;
        const double DoorM = 1.8288;
        return TestJobs.House("A", 0, 0) with
        {
            WidthM = widthM,
            LengthM = lengthM,
            BayCount = bays,
            Roof = roof,
            Benches = [],
            Openings = [new Opening("door-1", OpeningKind.DoubleDoor, door, 0.3 + doorAt * Math.Max(wallM - DoorM - 0.6, 0), 0, DoorM, 1.88, true)],
        };
    }

    private static (double UM, double VM, double WidthM, double HeightM) Rectangle(PlacedItem p) => p.Face is FaceName.End1 or FaceName.End2
        ? (p.Corner.YM, p.Corner.ZM, p.Size.YM, p.Size.ZM)
        : (p.Corner.XM, p.Corner.ZM, p.Size.XM, p.Size.ZM);

    private static bool OnWall(BuildingForm b, PlacedItem p)
    {
        (double u, double v, double wide, double high) = Rectangle(p);
        bool end = p.Face is FaceName.End1 or FaceName.End2;
        double eave = p.Face == FaceName.Left ? b.Roof.LeftEaveM : b.Roof.RightEaveM;
        double top = end ? Math.Min(b.Roof.HeightM(u, b.WidthM), b.Roof.HeightM(u + wide, b.WidthM)) : eave;
        return u >= 0 && u + wide <= (end ? b.WidthM : b.LengthM) && v >= 0 && v + high <= top + 1e-6;
    }

    private static bool Overlap(PlacedItem a, PlacedItem b)
    {
        const double Touch = 1e-6;
        return a.Corner.XM < b.Corner.XM + b.Size.XM - Touch && b.Corner.XM < a.Corner.XM + a.Size.XM - Touch
            && a.Corner.YM < b.Corner.YM + b.Size.YM - Touch && b.Corner.YM < a.Corner.YM + a.Size.YM - Touch
            && a.Corner.ZM < b.Corner.ZM + b.Size.ZM - Touch && b.Corner.ZM < a.Corner.ZM + a.Size.ZM - Touch;
    }

    private static Gen<T> One<T>(params T[] choices) => Gen.Int[0, choices.Length - 1].Select(i => choices[i]);
}
