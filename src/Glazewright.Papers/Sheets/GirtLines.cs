using Glazewright.Design.Body;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Solids;

namespace Glazewright.Papers.Sheets;

/// <summary>Girts of a wall seen square on: the pieces at their depth with their shop marks, and the heights they stand at.</summary>
internal static class GirtLines
{
    /// <summary>The girts of a wall: pieces in the wall's plane.</summary>
    public static IReadOnlyList<MemberSolid> On(PaperSource source, BuildingForm b, FaceName face)
    {
        FacePlane plane = b.Face(face).Plane;
        bool Near(Point3 p) => Math.Abs((p - plane.Origin).Dot(plane.Normal)) < 0.05;
        return [.. source.Body.Members.Where(m => m.House == b.Id && m.Line.Role == MemberRole.Girt && Near(m.Line.A) && Near(m.Line.B))];
    }

    /// <summary>Heights of the girts' lines above the floor, m.</summary>
    public static IEnumerable<double> LevelsM(BuildingForm b, FaceName face, IReadOnlyList<MemberSolid> girts) =>
        girts.Select(g => b.Face(face).Plane.On(g.Line.A).VM);

    /// <summary>The pieces.</summary>
    public static IEnumerable<Entity> Pieces(BuildingForm b, FaceName face, IReadOnlyList<MemberSolid> girts) =>
        girts.Select(g => new Entity.Polyline(BoxOf(b, face, g).Corners(), true) { Role = Role.Beyond, Source = g.Line.Id });

    /// <summary>A mark on each piece, in the bay nearest to its middle that no opening, post, rod or other mark stands in; pieces too short go without.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="b">The house.</param>
    /// <param name="face">The wall.</param>
    /// <param name="girts">Its girts.</param>
    /// <param name="taken">What stands on the wall: holes, posts.</param>
    /// <param name="mmPerM">Scale.</param>
    public static IEnumerable<Entity> Marks(PaperSource source, BuildingForm b, FaceName face, IReadOnlyList<MemberSolid> girts, IReadOnlyList<Box> taken, double mmPerM)
    {
        MarkFinder finder = new(source.Takeoff.Marks);
        List<Box> used = [.. taken];
        double tallM = (Lettered.SmallestMm + 0.6) / mmPerM;
        foreach (MemberSolid girt in girts)
        {
            string mark = finder.Of(girt);
            Box piece = BoxOf(b, face, girt);
            double wideM = (Lettering.WidthMm(mark, Face.Regular, Lettered.SmallestMm) + 0.6) / mmPerM;
            if (mark.Length == 0 || wideM > piece.Width)
            {
                continue;
            }

            double y = piece.Top + piece.Height / 2;
            // Where the rods of a braced bay cross the girt.
            Box[] rods =
            [
                .. BracedBays.On(b, face).SelectMany(bay =>
                {
                    double run = (bay.ToM - bay.FromM) / WallView.HeightM(b, face);
                    return ((double[])[bay.FromM + y * run, bay.ToM - y * run]).Select(x => new Box(x - tallM / 2 * run, y - tallM / 2, tallM * run, tallM));
                }),
            ];
            const int Tries = 60;
            IEnumerable<double> middles = Enumerable.Range(0, Tries + 1)
                .Select(i => piece.Left + wideM / 2 + i * (piece.Width - wideM) / Tries)
                .OrderBy(x => Math.Abs(x - piece.Left - piece.Width / 2));
            Box At(double x) => new(x - wideM / 2, y - tallM / 2, wideM, tallM);
            bool Clear(double x, IEnumerable<Box> of) => !of.Any(u => u.Left < At(x).Right && At(x).Left < u.Right && u.Top < At(x).Bottom && At(x).Top < u.Bottom);
            double[] free = [.. middles.Where(x => Clear(x, used))];

            // A piece of one braced bay alone: the mark covers a dash of a rod.
            double[] best = [.. free.Where(x => Clear(x, rods)).Concat(free).Take(1)];
            foreach (double x in best)
            {
                used.Add(At(x));
                yield return new Entity.Label(new(x, y), mark) { Role = Role.Text, Along = Along.Middle, Across = Across.Middle, Masked = true, Source = girt.Line.Id };
            }
        }
    }

    private static Box BoxOf(BuildingForm b, FaceName face, MemberSolid girt)
    {
        FacePlane plane = b.Face(face).Plane;
        Point2 from = plane.On(girt.Line.A);
        Point2 to = plane.On(girt.Line.B);
        return new Box(Math.Min(from.UM, to.UM), from.VM - girt.WidthM / 2, Math.Abs(to.UM - from.UM), girt.WidthM);
    }
}
