using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;
using Glazewright.Science.Climate;
using Glazewright.Science.Maths;
using Glazewright.Science.Optics;

namespace Glazewright.Design.Year;

/// <summary>A house of the job as the climate model sees it, and its opaque faces as the sun outside sees them.</summary>
/// <param name="Parameters">The model's sizes.</param>
/// <param name="LevelM">Height that parts the two air spaces, m.</param>
/// <param name="ClearAboveFraction">Share of the clear shell that meets the air above.</param>
/// <param name="OpaqueAboveFraction">Share of the opaque shell that meets the air above.</param>
/// <param name="OpaqueFaces">Opaque faces with their outward normals (house axes).</param>
/// <param name="CurtainCovers">Share of the floor that the drawn curtain covers, edges left open.</param>
/// <param name="DoorM2">Doors that stand open in sales weeks, m².</param>
/// <param name="WindFactor">Wind at the house over wind at the station.</param>
/// <param name="SecondCovers">Share of the floor that the second curtain covers when it is drawn.</param>
internal sealed record YearHouse(
    HouseParameters Parameters,
    double LevelM,
    double ClearAboveFraction,
    double OpaqueAboveFraction,
    EqList<OpaqueFace> OpaqueFaces,
    double CurtainCovers,
    double DoorM2,
    double WindFactor,
    double SecondCovers)
{
    private const double FilmsM2KPerW = 0.168; // 1/8 + 1/23: the standard films that a stated U contains
    private const double DoorU = 2.5; // insulated metal door in its frame, W/m²K (common practice)
    private const double PotMassJPerM2K = 60_000; // about 3 cm of wet substrate over the planted floor

    public static YearHouse Build(YearInput input, BuildingForm form, PlantResult plant)
    {
        double lowestEaveM = Math.Min(form.Roof.LeftEaveM, form.Roof.RightEaveM);
        double levelM = plant.Curtain is { HeightM: > 0 } curtain ? curtain.HeightM : lowestEaveM;
        PartSum clearAbove = new(), clearBelow = new(), opaqueAbove = new(), opaqueBelow = new();
        List<OpaqueFace> faces = [];
        double doorM2 = 0;
        foreach (FaceForm face in form.Faces.Where(f => f.Name != FaceName.Floor))
        {
            bool roof = face.Name is FaceName.RoofLeft or FaceName.RoofRight;
            double cosine = Cosine(face.TiltDeg);
            foreach (CoverZone zone in face.Zones.Where(z => z.NetM2 > 0))
            {
                GenericCover cover = GenericCovers.TryFind(zone.Cover.Kind, out GenericCover? found)
                    ? found
                    : throw new ArgumentException($"No covering '{zone.Cover.Kind}'.", nameof(form));
                double above = roof ? 1 : ShareAbove(zone.Outline, levelM);
                bool opaque = cover.Make is CoverMake.Opaque;
                (opaque ? opaqueAbove : clearAbove).Add(zone.NetM2 * above, cosine, Core(cover.CentreUWm2K), HeatPerM2K(cover), cover.LongWaveTransmittanceFraction);
                (opaque ? opaqueBelow : clearBelow).Add(zone.NetM2 * (1 - above), cosine, Core(cover.CentreUWm2K), HeatPerM2K(cover), cover.LongWaveTransmittanceFraction);
                if (opaque)
                {
                    faces.Add(new OpaqueFace(face.Plane.Normal.XM, face.Plane.Normal.YM, face.Plane.Normal.ZM, zone.NetM2 * above, zone.NetM2 * (1 - above)));
                }
            }

            foreach (OpeningForm opening in face.Openings)
            {
                bool door = opening.Opening.Kind.IsDoor();
                opaqueBelow.Add(opening.AreaM2, cosine, Core(door && opening.Opening.Kind != OpeningKind.RollUpDoor ? DoorU : 5.5), 8000, 0);
                doorM2 += door ? opening.AreaM2 : 0;
            }
        }

        double below = SectionBelow(form.Roof, form.WidthM, levelM);
        double floorM2 = form.FloorAreaM2, leakM2 = input.AirtightnessPerHour * form.VolumeM3 / 3600 / 4;
        HouseParameters parameters = new()
        {
            FloorAreaM2 = floorM2,
            AirBelowM3 = below * form.LengthM,
            AirAboveM3 = Math.Max(form.VolumeM3 - below * form.LengthM, 0.02 * form.VolumeM3),
            UpperClear = clearAbove.Part(),
            LowerClear = clearBelow.Part(),
            UpperOpaque = opaqueAbove.Part(),
            LowerOpaque = opaqueBelow.Part(),
            Curtain = Cloth(plant.Curtain),
            SecondCurtain = plant.SecondCurtain is null ? null : Cloth(plant.SecondCurtain),
            CurtainTravelM = form.WidthM,
            FloorToCurtainViewFraction = View(form.WidthM, form.LengthM, levelM),
            EdgeLossWPerK = form.PerimeterM * (input.EdgeInsulated ? 0.7 : 1.4),
            MassJPerK = PotMassJPerM2K * floorM2 * input.Schedule.Select(p => p.PlantedFraction).DefaultIfEmpty(0).Max(),
            MassSurfaceM2 = floorM2 * input.Schedule.Select(p => p.PlantedFraction).DefaultIfEmpty(0).Max(),
            LeakageWindM2 = leakM2,
            LeakageStackM3PerSRootK = 1.18 * leakM2, // √(0.000145/0.000104): stack over wind coefficient of the handbook's one-storey basic model
        };
        return new YearHouse(
            parameters,
            levelM,
            Share(clearAbove.AreaM2, clearBelow.AreaM2),
            Share(opaqueAbove.AreaM2, opaqueBelow.AreaM2),
            faces.ToEqList(),
            plant.Curtain is null ? 0 : Math.Min(plant.Curtain.AreaM2 / floorM2, 1),
            doorM2,
            WindAt(input.Exposure, Math.Max(form.Roof.RidgeM, 2)),
            plant.SecondCurtain is null ? 0 : Math.Min(plant.SecondCurtain.AreaM2 / floorM2, 1));
    }

    private static double Share(double aboveM2, double belowM2) => aboveM2 + belowM2 > 0 ? aboveM2 / (aboveM2 + belowM2) : 1;

    private static double Core(double centreU) => 1 / Math.Max(1 / centreU - FilmsM2KPerW, 0.004);

    private static double HeatPerM2K(GenericCover cover) =>
        cover.MassKgPerM2 * (cover.Make is CoverMake.Opaque ? 700 : cover.Id.StartsWith("glass", StringComparison.Ordinal) ? 840 : 1250);

    private static double Cosine(double angleDeg) => Math.Max(Elementary.Cos(angleDeg * (Math.PI / 180)), 0);

    private static CurtainCloth Cloth(CurtainPlant? plant)
    {
        if (plant is null)
        {
            return new CurtainCloth();
        }

        CurtainCloth one = new()
        {
            UpperEmissivity = plant.EmissivityFraction,
            LowerEmissivity = plant.EmissivityFraction,
            LongWaveTransmittance = Math.Min(0.02 + plant.OpennessFraction, 1),
            CapacityJPerM2K = 300,
            PermeabilityMPerSK = 0.05e-3 + 1e-3 * plant.OpennessFraction,
            PorosityFraction = Math.Max(plant.OpennessFraction, 0.002),
        };
        return plant.Layers > 1 ? CurtainPair.Both(one, one) : one;
    }

    /// <summary>Share of a wall zone's area above a height.</summary>
    internal static double ShareAbove(EqList<Point2> outline, double heightM)
    {
        double total = Area(outline, double.NegativeInfinity);
        return total > 0 ? Math.Clamp(Area(outline, heightM) / total, 0, 1) : 0;
    }

    // Area of a convex outline above v = height: each edge cut where it crosses.
    private static double Area(EqList<Point2> outline, double heightM)
    {
        List<Point2> kept = [];
        for (int i = 0; i < outline.Count; i++)
        {
            Point2 a = outline[i], b = outline[(i + 1) % outline.Count];
            if (a.VM >= heightM)
            {
                kept.Add(a);
            }

            if ((a.VM - heightM) * (b.VM - heightM) < 0)
            {
                kept.Add(new Point2(a.UM + (b.UM - a.UM) * (heightM - a.VM) / (b.VM - a.VM), heightM));
            }
        }

        double twice = 0;
        for (int i = 0; i < kept.Count; i++)
        {
            Point2 a = kept[i], b = kept[(i + 1) % kept.Count];
            twice += a.UM * b.VM - b.UM * a.VM;
        }

        return Math.Abs(twice) / 2;
    }

    /// <summary>Area of the cross-section below a height, m².</summary>
    internal static double SectionBelow(RoofProfile roof, double widthM, double heightM)
    {
        EqList<Point2> section = [new(0, 0), new(widthM, 0), new(widthM, roof.RightEaveM), new(roof.RidgeOffsetM, roof.RidgeM), new(0, roof.LeftEaveM)];
        return Area(section, double.NegativeInfinity) - Area(section, heightM);
    }

    /// <summary>View factor of two equal parallel rectangles facing each other (any radiation textbook).</summary>
    internal static double View(double widthM, double lengthM, double apartM)
    {
        double x = widthM / apartM, y = lengthM / apartM, xx = 1 + x * x, yy = 1 + y * y;
        double logs = 0.5 * Elementary.Log(xx * yy / (xx + y * y));
        double arcs = x * Math.Sqrt(yy) * Elementary.Atan(x / Math.Sqrt(yy)) + y * Math.Sqrt(xx) * Elementary.Atan(y / Math.Sqrt(xx))
            - x * Elementary.Atan(x) - y * Elementary.Atan(y);
        return Math.Clamp(2 / (Math.PI * x * y) * (logs + arcs), 0, 1);
    }

    // ASHRAE Fundamentals, airflow around buildings (from memory): station in open country at 10 m.
    private static double WindAt(WindExposure exposure, double heightM)
    {
        (double exponent, double layerM) = exposure switch
        {
            WindExposure.B => (0.22, 370.0),
            WindExposure.C => (0.14, 270.0),
            _ => (0.10, 210.0),
        };
        return Elementary.Pow(27, 0.14) * Elementary.Pow(heightM / layerM, exponent);
    }

    private sealed class PartSum
    {
        private double coreWPerK, capacityJPerK, cosineM2, transmitM2;

        public double AreaM2 { get; private set; }

        public void Add(double areaM2, double slopeCosine, double coreWPerM2K, double capacityJPerM2K, double transmittance)
        {
            AreaM2 += areaM2;
            coreWPerK += areaM2 * coreWPerM2K;
            capacityJPerK += areaM2 * capacityJPerM2K;
            cosineM2 += areaM2 * slopeCosine;
            transmitM2 += areaM2 * transmittance;
        }

        public ShellPart Part() => AreaM2 <= 1e-9 ? ShellPart.None : new ShellPart
        {
            AreaM2 = AreaM2,
            CoreWPerM2K = coreWPerK / AreaM2,
            CapacityJPerM2K = capacityJPerK / AreaM2,
            SlopeCosine = Math.Min(cosineM2 / AreaM2, 1),
            SkyViewFraction = Math.Min(0.5 + 0.5 * cosineM2 / AreaM2, 1),
            LongWaveTransmittance = transmitM2 / AreaM2,
        };
    }
}

/// <summary>An opaque face in the sun.</summary>
/// <param name="NormalX">Outward normal along the ridge.</param>
/// <param name="NormalY">Across.</param>
/// <param name="NormalZ">Up.</param>
/// <param name="AboveM2">Area that meets the air above the curtain, m².</param>
/// <param name="BelowM2">Area that meets the air below, m².</param>
internal readonly record struct OpaqueFace(double NormalX, double NormalY, double NormalZ, double AboveM2, double BelowM2);
