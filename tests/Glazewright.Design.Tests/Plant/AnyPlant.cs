using CsCheck;
using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.GainTables;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;
using Glazewright.Design.Tests.Duty;

namespace Glazewright.Design.Tests.Plant;

/// <summary>Whatever a job may ask for, Duty, Plant and Layout answer with finite numbers, and what nature forbids does not happen.</summary>
public class AnyPlant
{
    private static readonly Gen<EquipmentChoice> AnyEquipment =
        from flags in Gen.Bool.Array[6]
        from shade in Gen.Double[0, 1]
        from rise in Gen.Double[0.5, 12]
        from face in One(FaceName.End1, FaceName.End2, FaceName.Left, FaceName.Right)
        from pad in One((0.0, 0.0), (0.1, 0.3), (4.0, 1.5), (30.0, 2.0))
        from fans in One("", "exhaust-24", "exhaust-54", "exhaust-54-three-phase")
        from count in Gen.Int[1, 9]
        from porosity in One(0.0, 0.05, 0.36, 1.0)
        from pressurePa in One(0.0, 2.0, 400.0)
        from curtainM in One(0.0, 1.0, 2.3, 4.4)
        from curtains in Gen.Int[0, 2]
        from nozzles in One(0, 1, 500)
        select TestJobs.House("A", 0, 0).Equipment with
        {
            Exhaust = flags[0],
            WetWall = flags[1],
            Fog = flags[2],
            Heaters = flags[3],
            Circulation = flags[4],
            SealedCombustion = flags[5],
            ShadeFraction = shade,
            TemperatureRiseK = rise,
            FanFace = face,
            WetWallWidthM = pad.Item1,
            WetWallHeightM = pad.Item2,
            ExhaustFixed = fans.Length == 0 ? [] : [new FixedItem(fans, count)],
            InsectScreenPorosityFraction = porosity,
            PositivePressurePa = pressurePa,
            CurtainHeightM = curtainM,
            Curtains = curtains,
            FogNozzles = nozzles,
            BenchPipeW = count * 1000,
            UpperFans = count % 2 == 0 ? new FixedItem(fans, count / 2) : null,
        };

    private static readonly Gen<(DesignConditions Conditions, double ElevationM, FuelKind Fuel, double LeafArea, double NightC)> AnySite =
        from winter in Gen.Double[-45, 15]
        from summer in Gen.Double[16, 48]
        from depression in Gen.Double[0, 30]
        from elevationM in Gen.Double[-400, 5000]
        from fuel in One(FuelKind.Propane, FuelKind.None)
        from leafArea in Gen.Double[0, 10]
        from nightC in Gen.Double[-2, 28]
        select (new DesignConditions(winter, winter - 3, summer, summer - depression, summer - depression + 1, new Source.Given("/site/design")), elevationM, fuel, leafArea, nightC);

    [Fact]
    public void Answers_are_finite_and_within_nature() => Gen.Select(AnyEquipment, AnySite, Gen.Double[3, 20], Gen.Double[5, 120]).Sample(
        (equipment, site, widthM, lengthM) =>
        {
            House house = Small(widthM, lengthM) with { Equipment = equipment };
            house = house with { Schedule = [house.Schedule[0] with { LeafAreaIndex = site.LeafArea, Night = new ClimateTarget(site.NightC, 80) }] };
            Job job = TestJobs.OneHouse();
            job = job with
            {
                Houses = [house],
                Site = job.Site with { Design = site.Conditions, ElevationM = site.ElevationM },
                Utilities = job.Utilities with { Fuel = site.Fuel },
            };
            FormResult form = FormStage.Run(FormInput.From(job));
            BuildingForm building = form.Building("A");
            DutyResult duty = DutyStage.Run(DutyInput.From(job, "A"), building, DesignDay.Gains(building), DesignDay.Year);
            PlantResult plant = PlantStage.Run(PlantInput.From(job, "A"), building, duty, CatalogueReader.Generic);
            LayoutResult layout = LayoutStage.Run(LayoutInput.From(job, "A"), form, plant);
            Assert.True(duty.LossDrawnWPerK <= duty.LossWPerK + 1e-9 && duty.LossDrawnWPerK > 0);
            Assert.True(duty.VentilationM3PerS > 0 && duty.SolarGainW >= 0 && duty.NightMoistureKgPerS >= 0);
            if (plant.Exhaust is { } exhaust)
            {
                Assert.All(exhaust.Choice.Wet, p => Assert.True(p.FlowM3PerS > 0 && p.StaticPa >= 0));
                Assert.Equal(exhaust is Answer<ExhaustPlant>.Met, exhaust.Margin >= 0);
            }

            if (plant.WetWall is { } pad)
            {
                Assert.InRange(pad.Choice.Effectiveness, 0, 1);
                Assert.True(pad.Choice.EvaporationKgPerS >= 0);
            }

            int boilers = site.Fuel != FuelKind.None && plant.BenchPipeW > 0 ? 1 : 0;
            Assert.Equal((plant.Heat?.Choice.Heaters.Count(h => !h.Electric) ?? 0) + boilers, layout.Flues.Count);
            Assert.All(layout.Flues, f => Assert.True(
                f.Face is null
                    ? layout.Report.Findings.Any(g => g.Code == (f.Unplaced ? "layout/boiler-place" : "layout/flue-blocked") && g.Id == f.Heater)
                    : f.HeightM >= f.LeastHeightM - 1e-9 && f.EquivalentM > 0 && (!f.Sealed || f.Nearest.Length == 0 || f.NearestM >= f.ClearM - 1e-6)));
            Assert.All(layout.Placed, p => Assert.True(double.IsFinite(p.Corner.XM + p.Corner.YM + p.Corner.ZM + p.Size.XM + p.Size.YM + p.Size.ZM)));
            return true;
        },
        iter: 40,
        threads: 1);

    private static Gen<T> One<T>(params T[] choices) => Gen.Int[0, choices.Length - 1].Select(i => choices[i]);

    private static House Small(double widthM, double lengthM)
    {
        RoofProfile roof = ((RoofSolution.Closed)RoofSolver.Solve(new RoofWish(2.3, null, 0.6 * widthM, 0.5, 0.75), widthM)).Profile;
        return TestJobs.House("A", 0, 0) with { WidthM = widthM, LengthM = lengthM, Roof = roof, Openings = [], Benches = [] };
    }
}
