using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Tests.Form;

public class FormStageTests
{
    private static readonly CoverChoice Clear = new("glass-4", 0.95, 1, 0);

    [Fact]
    public void An_uneven_gable_has_the_areas_of_the_hand_calculation()
    {
        // The uneven 24 x 48 ft house of the published case GH-3: slopes 10.4137 and 17.3333 ft, ends 496 ft2, volume 11 904 ft3.
        const double foot = 0.3048;
        FormResult form = FormStage.Run(Input([House("A", 0, 0, 24 * foot, 48 * foot, 7 * foot, 8 * foot, 10.0 / 12, 5.0 / 12)]));
        BuildingForm house = form.Building("A");
        double squareFoot = foot * foot;
        Assert.Equal(10.4137 * 48, house.Face(FaceName.RoofLeft).AreaM2 / squareFoot, 0.01);
        Assert.Equal(17.3333 * 48, house.Face(FaceName.RoofRight).AreaM2 / squareFoot, 0.01);
        Assert.Equal(496.0, (house.Face(FaceName.End1).AreaM2 + house.Face(FaceName.End2).AreaM2) / squareFoot, 0.01);
        Assert.Equal(11_904, house.VolumeM3 / (squareFoot * foot), 0.1);
    }

    [Fact]
    public void A_corridor_takes_its_end_off_both_walls_and_their_sum()
    {
        HouseShape a = House("A", 0, 10, 8, 30, 2.5, 4, 0.5, 0.5);
        HouseShape b = House("B", 0, 0, 8, 30, 2.5, 4, 0.5, 0.5);
        LinkBuilding corridor = new("C", LinkKind.Corridor, "corridor", 5, 8, 3, 2, 2.2, 0, Clear, []);
        FormResult form = FormStage.Run(Input([a, b], [corridor]));
        Assert.Equal(3 * 2.2, form.Building("A").Face(FaceName.Left).SharedM2, 9);
        Assert.Equal(3 * 2.2, form.Building("B").Face(FaceName.Right).SharedM2, 9);
        Assert.Equal(4, form.Shared.Count);
        Assert.Equal(2 * 3 * 2.2, form.Building("C").Faces.Sum(f => f.SharedM2), 9);
        Assert.Equal(2 * (30 + 8) - 3, form.Building("A").PerimeterM, 9);
    }

    [Fact]
    public void The_gutter_wall_of_two_joined_houses_is_wholly_shared()
    {
        FormResult form = FormStage.Run(Input([House("A", 0, 0, 8, 30, 2.5, 4, 0.5, 0.5), House("B", 0, 8, 8, 30, 2.5, 4, 0.5, 0.5)]));
        Assert.Equal(0, form.Building("A").Face(FaceName.Right).ExposedM2, 9);
        Assert.Equal(0, form.Building("B").Face(FaceName.Left).Zones.Sum(z => z.NetM2), 9);
    }

    [Fact]
    public void Openings_come_off_the_zone_they_lie_in_and_not_twice_where_it_is_shared()
    {
        Opening door = new("door", OpeningKind.Door, FaceName.Left, 5.5, 0, 1, 2, true);
        Opening window = new("window", OpeningKind.Window, FaceName.Left, 15, 1, 2, 1, false);
        HouseShape a = House("A", 0, 10, 8, 30, 2.5, 4, 0.5, 0.5) with { Openings = [door, window], PonyWallM = 1.2 };
        LinkBuilding corridor = new("C", LinkKind.Corridor, "corridor", 5, 8, 3, 2, 2.2, 0, Clear, []);
        FaceForm wall = FormStage.Run(Input([a], [corridor])).Building("A").Face(FaceName.Left);
        // The door lies wholly in the shared piece; the window straddles the pony wall at 1.2 m.
        Assert.Equal(30 * 1.2 - 3 * 1.2 - 2 * 0.2, wall.Zones[0].NetM2, 9);
        Assert.Equal(30 * 1.3 - 3 * 1.0 - 2 * 0.8, wall.Zones[1].NetM2, 9);
    }

    [Theory]
    [InlineData(90, 180), InlineData(97, 187), InlineData(0, 90), InlineData(270, 0)]
    public void The_left_wall_faces_where_the_bearing_turns_it(double bearingDeg, double azimuthDeg)
    {
        FormResult form = FormStage.Run(Input([House("A", 0, 0, 8, 30, 2.5, 4, 0.5, 0.5)]) with { RangeBearingDeg = bearingDeg });
        Assert.Equal(azimuthDeg, form.Building("A").Face(FaceName.Left).AzimuthDeg, 9);
        Assert.Equal(azimuthDeg, form.Building("A").Face(FaceName.RoofLeft).AzimuthDeg, 9);
        Assert.Equal(bearingDeg % 360, form.Building("A").Face(FaceName.End2).AzimuthDeg % 360, 9);
    }

    [Fact]
    public void Every_point_of_a_face_lies_in_its_plane_and_normals_point_out()
    {
        FormResult form = FormStage.Run(Input([House("A", 3, 4, 8, 30, 2.5, 3, 0.5, 0.3)]));
        BuildingForm house = form.Building("A");
        Point3 middle = house.Origin + new Point3(15, 4, 1.5);
        foreach (FaceForm face in house.Faces)
        {
            Assert.True((face.Plane.Origin - middle).Dot(face.Plane.Normal) > 0, face.Id);
            Assert.All(face.Outline, p => Assert.Equal(0, (face.Plane.At(p) - face.Plane.Origin).Dot(face.Plane.Normal), 9));
        }

        // Divergence theorem: area vectors of a closed solid sum to nothing.
        Point3 sum = house.Faces.Aggregate(new Point3(0, 0, 0), (s, f) => s + f.AreaM2 * f.Plane.Normal);
        Assert.Equal(0, sum.LengthM, 9);
    }

    [Fact]
    public void Frames_stand_at_the_bay_lines_and_purlins_run_over_whole_bays()
    {
        HouseShape house = House("A", 0, 0, 8, 30, 2.5, 4, 0.5, 0.5);
        BuildingForm form = FormStage.Run(Input([house])).Building("A");
        Assert.Equal(11 * 2, form.Members.Count(m => m.Role == MemberRole.Column));
        Assert.Equal(11 * 2, form.Members.Count(m => m.Role == MemberRole.Rafter));
        Assert.Equal(30, form.Members.Where(m => m.Role == MemberRole.Ridge).Sum(m => m.LengthM), 9);
        Assert.All(form.Members.Where(m => m.Role == MemberRole.Purlin), m => Assert.True(m.LengthM <= house.LongestStockM + 1e-9));
        Assert.All(form.Members.Where(m => m.Role == MemberRole.EndPost), m => Assert.Equal(
            house.Roof.HeightM(m.B.YM, 8), m.B.ZM, 9));
    }

    [Fact]
    public void Openings_off_the_gable_or_over_each_other_are_found()
    {
        RoofProfile roof = Roof(2.5, 4, 0.5, 0.5, 8);
        Opening high = new("high", OpeningKind.Window, FaceName.End1, 0, 2, 1, 2, false);
        Opening a = new("a", OpeningKind.Door, FaceName.End1, 3, 0, 1, 2, false);
        Opening b = new("b", OpeningKind.Door, FaceName.End1, 3.9, 0, 1, 2, false);
        IReadOnlyList<OpeningMisfit> misfits = FaceOutlines.Misfits([high, a, b], roof, 8, 30);
        Assert.Equal([(0, -1), (2, 1)], misfits.Select(m => (m.Index, m.OtherIndex)));
        Assert.Equal(0.2, misfits[1].AreaM2, 9);
    }

    [Fact]
    public void A_house_in_front_shades_the_wall_to_the_height_of_the_hand_calculation()
    {
        // Due-south walls at latitude 40: noon altitude on the winter solstice 26.56 deg, tangent 0.49987.
        // Ridge 4.5 m high, 9 m before the wall: 4.5 - 9 * 0.49987 = 0.0012; eave 2.5 m, 5 m before: 2.5 - 2.49935 = 0.0007.
        HouseShape front = House("B", 0, 0, 8, 30, 2.5, 4, 0.5, 0.5);
        FormInput near = Input([House("A", 0, 12, 8, 30, 2.5, 4, 0.5, 0.5), front]) with { LatitudeDeg = 40 };
        Finding finding = Assert.Single(FormStage.Run(near).Report.Findings, f => f.Code == "form/noon-shadow");
        Assert.Contains("1'-8\"", finding.What, StringComparison.Ordinal); // 4.5 - 8 * 0.49987 = 0.501 m; eave 2.5 - 4 * 0.49987 = 0.5005 m
        FormInput far = Input([House("A", 0, 13.1, 8, 30, 2.5, 4, 0.5, 0.5), front]) with { LatitudeDeg = 40 };
        Assert.DoesNotContain(FormStage.Run(far).Report.Findings, f => f.Code == "form/noon-shadow");
    }

    private static RoofProfile Roof(double eaveM, double offsetM, double left, double right, double widthM) =>
        Assert.IsType<RoofSolution.Closed>(RoofSolver.Solve(new RoofWish(eaveM, null, offsetM, left, right), widthM)).Profile;

    private static HouseShape House(
        string id, double xM, double yM, double widthM, double lengthM, double eaveM, double offsetM, double left, double right) =>
        new(
            id, id, xM, yM, widthM, lengthM, Roof(eaveM, offsetM, left, right, widthM), 10, 0,
            [.. Enum.GetValues<FaceName>().Where(f => f != FaceName.Floor).Select(f => new FaceCovering(f, Clear))],
            Clear, [], 0, 1.2, 7.3);

    private static FormInput Input(EqList<HouseShape> houses, EqList<LinkBuilding>? links = null) =>
        new(houses, links ?? [], 90, 42, new Lot(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, ""));
}
