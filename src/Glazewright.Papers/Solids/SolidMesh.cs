using Glazewright.Design.Form;

namespace Glazewright.Papers.Solids;

/// <summary>Triangles of a shape in the part's own axes: flat faces, each with its own corners and normal, counter-clockwise seen from outside.</summary>
/// <param name="Points">Corners.</param>
/// <param name="Normals">A normal for each.</param>
/// <param name="Triangles">Three indices a triangle.</param>
internal sealed record SolidMesh(IReadOnlyList<Point3> Points, IReadOnlyList<Point3> Normals, IReadOnlyList<int> Triangles)
{
    private const int Sides = 24;

    /// <summary>The mesh of a shape. Tubes have sharp corners here, discs are polygons of 24 sides.</summary>
    public static SolidMesh Of(SolidShape shape)
    {
        Maker maker = new();
        foreach (Prism prism in shape.Prisms)
        {
            switch (prism.Profile)
            {
                case Profile.Tube tube:
                    Tube(maker, prism, tube);
                    break;
                case Profile.Disc disc:
                    Point2[] round = [.. Enumerable.Range(0, Sides).Select(i => new Point2(disc.RadiusM * Math.Cos(2 * Math.PI * i / Sides), disc.RadiusM * Math.Sin(2 * Math.PI * i / Sides)))];
                    Area(maker, prism, AreaCells.Of(round, []));
                    break;
                case Profile.Area area:
                    Area(maker, prism, AreaCells.Of(area.Outline, area.Holes));
                    break;
            }
        }

        return new SolidMesh(maker.Points, maker.Normals, maker.Triangles);
    }

    private static void Tube(Maker maker, Prism prism, Profile.Tube tube)
    {
        Point2[] outer = Corners(tube.WidthM / 2, tube.DepthM / 2);
        Point2[] inner = Corners(tube.WidthM / 2 - tube.WallM, tube.DepthM / 2 - tube.WallM);
        Point3 Low(Point2 p) => new(p.UM, p.VM, prism.Start.HeightM(p.UM, p.VM));
        Point3 High(Point2 p) => new(p.UM, p.VM, prism.End.HeightM(p.UM, p.VM));
        for (int i = 0; i < 4; i++)
        {
            (Point2 a, Point2 b) = (outer[i], outer[(i + 1) % 4]);
            (Point2 c, Point2 d) = (inner[i], inner[(i + 1) % 4]);
            maker.Quad(Low(a), Low(b), High(b), High(a));
            maker.Quad(Low(d), Low(c), High(c), High(d));
            maker.Quad(High(a), High(b), High(d), High(c));
            maker.Quad(Low(b), Low(a), Low(c), Low(d));
        }
    }

    private static Point2[] Corners(double x, double y) => [new(-x, -y), new(x, -y), new(x, y), new(-x, y)];

    // Square ends only: each cell has a lid, a bottom and the walls under its lower and upper edges; upright walls stand where one strip is open beside the next.
    private static void Area(Maker maker, Prism prism, IReadOnlyList<AreaCells.Strip> strips)
    {
        (double low, double high) = (prism.Start.AtM, prism.End.AtM);
        for (int i = 0; i < strips.Count; i++)
        {
            AreaCells.Strip strip = strips[i];
            foreach (AreaCells.Cell c in strip.Cells)
            {
                Point2 a = new(strip.FromM, c.LowFromM);
                Point2 b = new(strip.ToM, c.LowToM);
                Point2 d = new(strip.ToM, c.HighToM);
                Point2 e = new(strip.FromM, c.HighFromM);
                maker.Quad(At(a, high), At(b, high), At(d, high), At(e, high));
                maker.Quad(At(b, low), At(a, low), At(e, low), At(d, low));
                maker.Quad(At(a, low), At(b, low), At(b, high), At(a, high));
                maker.Quad(At(d, low), At(e, low), At(e, high), At(d, high));
            }

            IReadOnlyList<(double, double)> before = i == 0 ? [] : [.. strips[i - 1].Cells.Select(c => (c.LowToM, c.HighToM))];
            IReadOnlyList<(double, double)> here = [.. strip.Cells.Select(c => (c.LowFromM, c.HighFromM))];
            Upright(strip.FromM, AreaCells.Less(here, before), rising: false);
            Upright(strip.FromM, AreaCells.Less(before, here), rising: true);
        }

        if (strips.Count > 0)
        {
            Upright(strips[^1].ToM, [.. strips[^1].Cells.Select(c => (c.LowToM, c.HighToM))], rising: true);
        }

        void Upright(double u, IEnumerable<(double From, double To)> pieces, bool rising)
        {
            foreach ((double from, double to) in pieces)
            {
                (Point2 p, Point2 q) = rising ? (new Point2(u, from), new Point2(u, to)) : (new Point2(u, to), new Point2(u, from));
                maker.Quad(At(p, low), At(q, low), At(q, high), At(p, high));
            }
        }
    }

    private static Point3 At(Point2 p, double z) => new(p.UM, p.VM, z);

    private sealed class Maker
    {
        public List<Point3> Points { get; } = [];

        public List<Point3> Normals { get; } = [];

        public List<int> Triangles { get; } = [];

        public void Quad(Point3 a, Point3 b, Point3 c, Point3 d)
        {
            // Of a quad with one short side the diagonals still span the plane.
            Point3 normal = (c - a).Cross(d - b);
            double length = normal.LengthM;
            if (length < 1e-12)
            {
                return;
            }

            int first = Points.Count;
            Points.AddRange([a, b, c, d]);
            for (int i = 0; i < 4; i++)
            {
                Normals.Add(1 / length * normal);
            }

            Triangle(first, first + 1, first + 2);
            Triangle(first, first + 2, first + 3);
        }

        private void Triangle(int i, int j, int k)
        {
            if ((Points[j] - Points[i]).Cross(Points[k] - Points[i]).LengthM > 1e-12)
            {
                Triangles.AddRange([i, j, k]);
            }
        }
    }
}
