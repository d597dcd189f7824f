using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Science.Light;
using Glazewright.Science.Optics;

namespace Glazewright.Design.GainTables;

/// <summary>What stands around a house: the range's other buildings, the job's boxes, its skyline; in the house's own axes.</summary>
internal static class HouseSurroundings
{
    /// <summary>Sheet joints of a neighbour: 30 mm in each metre (common practice).</summary>
    private const double JointFraction = 0.03;

    public static Surroundings Of(
        BuildingForm house,
        FormResult form,
        EqList<MemberSolid> members,
        double rangeBearingDeg,
        EqList<NeighbourBox> boxes,
        EqList<HorizonPoint> horizon)
    {
        IEnumerable<ShadeBody> buildings = form.Buildings
            .Where(b => b.Id != house.Id)
            .Select(b => new ShadeBody(
                b.Id,
                [.. b.Faces.Select(f => HouseEnclosure.Corners(house, f, f.Outline))],
                Through(house, b, members)));
        return Surroundings.Of(
            [.. buildings, .. boxes.Select(n => Box(house, n))],
            [.. horizon.Select(h => new SkylinePoint(rangeBearingDeg - h.AzimuthDeg, h.ElevationDeg))]);
    }

    /// <summary>
    /// Light through a neighbour from side to side: its faces' mean transmittance, twice. A first estimate: benches, crop and which faces the light meets
    /// are not followed.
    /// </summary>
    private static double Through(BuildingForm house, BuildingForm building, EqList<MemberSolid> members)
    {
        double passedM2 = 0;
        double areaM2 = 0;
        foreach (FaceForm face in building.Faces.Where(f => f.Name != FaceName.Floor))
        {
            IReadOnlyList<BarFamily> bars = HouseEnclosure.Bars(house, building, face, members);
            Vector3d normal = HouseEnclosure.Own(house, house.Origin + face.Plane.Normal);
            foreach (CoverZone zone in face.Zones)
            {
                CoverOptics optics = Optics(zone.Cover);
                double open = optics.IsOpaque
                    ? 0
                    : 1 - new Science.Light.FaceCovering.Clear(optics, JointFraction, 0, bars).CaughtDiffuseFraction(normal);
                areaM2 += zone.GrossM2;
                passedM2 += zone.GrossM2 * open * optics.Diffuse.TransmittanceFraction;
            }
        }

        double mean = areaM2 > 0 ? passedM2 / areaM2 : 0;
        return mean * mean;
    }

    private static CoverOptics Optics(CoverChoice choice) =>
        GenericCovers.TryFind(choice.Kind, out GenericCover? kind)
            ? kind.Optics(new CoverCondition(1 - choice.DirtFactor, 1 - choice.AgeingFactor, 1 - choice.CondensationFactor))
            : throw new ArgumentException($"No cover kind '{choice.Kind}'.", nameof(choice));

    private static ShadeBody Box(BuildingForm house, NeighbourBox n)
    {
        Vector3d P(double x, double y, double z) =>
            HouseEnclosure.Own(house, new Point3(n.OriginXM + (x * n.SizeXM), n.OriginYM + (y * n.SizeYM), z * n.HeightM));
        return new ShadeBody(
            n.Id,
            [
                [P(0, 0, 0), P(1, 0, 0), P(1, 0, 1), P(0, 0, 1)],
                [P(1, 1, 0), P(0, 1, 0), P(0, 1, 1), P(1, 1, 1)],
                [P(0, 1, 0), P(0, 0, 0), P(0, 0, 1), P(0, 1, 1)],
                [P(1, 0, 0), P(1, 1, 0), P(1, 1, 1), P(1, 0, 1)],
                [P(0, 0, 1), P(1, 0, 1), P(1, 1, 1), P(0, 1, 1)],
                [P(0, 0, 0), P(0, 1, 0), P(1, 1, 0), P(1, 0, 0)],
            ],
            0);
    }
}
