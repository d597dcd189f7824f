using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Tests.Drawing;

public class HatchLinesTests
{
    // Lines a spacing apart: their summed length times the spacing is the area, as spacing goes to nothing.
    [Fact]
    public void Length_times_spacing_is_the_area_without_its_hole()
    {
        Spot[] outer = [new(3, 2), new(43, 7), new(38, 31), new(9, 25)];
        Spot[] hole = [new(15, 12), new(25, 12), new(25, 20), new(15, 20)];
        double length = HatchLines.Of([outer, hole], HatchPattern.Slanted, 0.2).Sum(p => (p.B - p.A).Length());
        double area = Math.Abs(Area(outer)) - Math.Abs(Area(hole));
        Assert.Equal(area, 0.2 * length, 0.002 * area);
    }

    [Fact]
    public void An_empty_area_has_no_lines() => Assert.Empty(HatchLines.Of([], HatchPattern.Crossed, 2));

    private static double Area(Spot[] ring)
    {
        double twice = 0;
        for (int i = 0; i < ring.Length; i++)
        {
            Spot a = ring[i];
            Spot b = ring[(i + 1) % ring.Length];
            twice += a.X * b.Y - b.X * a.Y;
        }

        return twice / 2;
    }
}
