using CsCheck;
using Glazewright.Design.Form;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Solids;

namespace Glazewright.Papers.Tests.Solids;

public class SolidsTests
{
    // Rectangles apart from each other in a gable: what is left has the area that is left, in cells and in the closed mesh.
    [Fact]
    public void Cells_and_meshes_of_a_wall_with_holes_have_the_area_that_is_left() =>
        Gen.Select(Gen.Double[3, 12], Gen.Double[0.1, 0.9], Gen.Double[1, 3], Gen.Double[0, 1], Gen.Select(Gen.Double[0, 0.9], Gen.Double[0.05, 1], Gen.Double[0, 0.9], Gen.Double[0.05, 1]).Array[0, 5])
            .Sample((widthM, ridge, eaveM, sideRise, holes) =>
            {
                Point2[] gable = [new(0, 0), new(widthM, 0), new(widthM, eaveM + sideRise), new(widthM * ridge, eaveM + 1 + sideRise), new(0, eaveM)];
                double slot = widthM / Math.Max(1, holes.Length);
                Point2[][] cut = [.. holes.Select((h, i) => Polygons.Common(gable, Polygons.Rectangle(slot * (i + h.Item1 * 0.9), h.Item3 * 4, Math.Max(0.01, slot * (0.99 - 0.9 * h.Item1) * h.Item2), h.Item4 * 2)).ToArray()).Where(p => p.Length >= 3)];
                double leftM2 = Polygons.AreaM2(gable) - cut.Sum(c => Polygons.AreaM2(c));
                double cellsM2 = AreaCells.Of(gable, cut).Sum(s => s.Cells.Sum(c => (s.ToM - s.FromM) * (c.HighFromM + c.HighToM - c.LowFromM - c.LowToM) / 2));
                Profile.Area area = new(Profile.Rounded(gable), [.. cut.Select(c => Profile.Rounded(c))]);
                double meshM3 = VolumeM3(SolidMesh.Of(new SolidShape([Prism.Square(area, 0, 0.5)])));
                return Math.Abs(cellsM2 - leftM2) < 1e-6 && Math.Abs(meshM3 - area.AreaM2 / 2) < 1e-5;
            });

    // By hand: a 4 × 2 in tube of 1/8 in wall, sharp, 1 m on its axis, ends sloped against each other.
    [Fact]
    public void A_tube_with_sloped_ends_has_area_times_axis()
    {
        Profile.Tube tube = new(0.0508, 0.1016, 0.003175, 0);
        Prism prism = new(tube, new EndCut(0, 0, 0.5), new EndCut(1, 0.2, -0.75));
        Assert.Equal(2 * (0.0508 + 0.1016 - 2 * 0.003175) * 0.003175, tube.AreaM2, 1e-12);
        Assert.Equal(tube.AreaM2, VolumeM3(SolidMesh.Of(new SolidShape([prism]))), 1e-9);
    }

    [Fact]
    public void The_same_results_give_equal_solids_with_unique_paths()
    {
        RangeSolids solids = RangeSolids.Of(SolidSamples.Yard());
        Assert.Equal(solids.Buildings, RangeSolids.Of(SolidSamples.Yard()).Buildings);
        string[] ids = [.. solids.Buildings.SelectMany(b => b.Parts).Select(p => p.Id)];
        Assert.Equal(ids.Length, ids.Distinct().Count());
    }

    [Theory]
    [InlineData("polycarbonate-16-triple", 0.016, "Polycarbonate", true), InlineData("polycarbonate-6-twin", 0.006, "Polycarbonate", true), InlineData("glass-4", 0.004, "Glass", true)]
    [InlineData("glass-4-double", 0.020, "Glass", true), InlineData("panel-102", 0.102, "Insulated metal panel", false), InlineData("film-double", 0.0004, "Polyethylene film", true)]
    [InlineData("something-7-else", 0.05, "Covering", false)]
    public void A_covering_is_as_thick_as_its_name_says(string kind, double thicknessM, string material, bool clear)
    {
        CoverStuff stuff = CoverStuff.Of(kind);
        Assert.Equal(thicknessM, stuff.ThicknessM, 1e-12);
        Assert.Equal((material, clear), (stuff.Material, stuff.Clear));
    }

    // No steel outside the faces: the covering lies on them.
    [Fact]
    public void Steel_stays_inside_every_face()
    {
        PaperSource source = SolidSamples.Yard();
        foreach (BuildingSolids building in RangeSolids.Of(source).Buildings)
        {
            foreach (SolidPart part in building.Parts.Where(p => p.Kind is SolidKind.Member))
            {
                foreach (Point3 corner in SolidMesh.Of(part.Shape).Points)
                {
                    Point3 at = part.Frame.At(corner.XM, corner.YM, corner.ZM);
                    Point3 placed = building.Form.Origin + at.XM * building.Form.AlongX + at.YM * building.Form.AlongY + new Point3(0, 0, at.ZM);
                    Assert.All(building.Form.Faces, f => Assert.True((placed - f.Plane.Origin).Dot(f.Plane.Normal) < 1e-3, $"{part.Id} is outside {f.Id}"));
                }
            }
        }
    }

    private static double VolumeM3(SolidMesh mesh)
    {
        double six = 0;
        for (int i = 0; i < mesh.Triangles.Count; i += 3)
        {
            six += mesh.Points[mesh.Triangles[i]].Dot(mesh.Points[mesh.Triangles[i + 1]].Cross(mesh.Points[mesh.Triangles[i + 2]]));
        }

        return six / 6;
    }
}
