using Glazewright.Science.Light;
using Glazewright.Science.Light.Shadows;

namespace Glazewright.Bench.Convergence;

/// <summary>The three parts of the light on a plane, Wh/m² by period and cell: straight from the sun, straight from the sky, scattered or thrown back.</summary>
internal sealed class StudyLight(StudyYear year)
{
    /// <summary>The grid of sun directions that the light map uses.</summary>
    internal static readonly SunGrid UsualGrid = SunGrid.Even(72, 36);

    /// <summary>Directions in one table: a hundred thousand at once would not fit.</summary>
    private const int MostDirections = 5000;

    private readonly HouseLight house = new(StudyHouse.Enclosure, null, Surroundings.None);

    internal StudyYear Year => year;

    /// <summary>Nodes of a grid that carry energy.</summary>
    internal int[] Lit(SunGrid grid)
    {
        double[] beam = year.On(grid)[0];
        return [.. Enumerable.Range(0, grid.Count).Where(i => beam[i] > 0)];
    }

    internal double[][] Sun(ReceivingPlane plane, ScanFineness fineness, SunGrid grid)
    {
        int[] lit = Lit(grid);
        double[][] beam = year.On(grid);
        return Sum(plane, fineness, [.. lit.Select(grid.Direction)], [.. beam.Select(b => lit.Select(i => b[i]).ToArray())]);
    }

    /// <summary>Every quarter hour's own sun in so many steps: no grid at all.</summary>
    internal double[][] SunWithoutGrid(ReceivingPlane plane, ScanFineness fineness, int stepsInQuarter) => Sum(
        plane, fineness, year.Steps(stepsInQuarter),
        [.. year.Energy.Select(e => e.SelectMany(wh => Enumerable.Repeat(wh / stepsInQuarter, stepsInQuarter)).ToArray())]);

    internal double[][] Sky(ReceivingPlane plane, ScanFineness fineness, SkyRule rule) =>
        Sum(plane, fineness, rule.Towards, [.. year.Sky.Select(s => rule.Factors.Select(f => s.Dome * f).ToArray())]);

    internal double[][] Scattered(ReceivingPlane plane, SunGrid grid)
    {
        RoomLight room = house.On(plane);
        return [.. SetFree(grid).Select(free =>
        {
            double[] cells = new double[plane.Count];
            room.Irradiance(free, cells);
            return cells;
        })];
    }

    /// <summary>Diffuse light first set free on each piece, Wh by period.</summary>
    internal double[][] SetFree(SunGrid grid)
    {
        double[][] beam = year.On(grid);
        LightSetFree free = house.Gains(grid, [.. beam[0].Select(b => b > 0)]).SetFree;
        int pieces = free.DomeM2.Count;
        return [.. year.Sky.Select((s, p) => Enumerable.Range(0, pieces).Select(i =>
            Math.Max(0, (s.Dome * free.DomeM2[i]) + (s.Horizon * free.HorizonM2[i]) + (s.Ground * free.GroundM2[i])
                + Enumerable.Range(0, grid.Count).Sum(node => beam[p][node] * free.BeamM2[(node * pieces) + i]))).ToArray())];
    }

    internal static double[][] Add(params double[][][] parts) =>
        [.. Enumerable.Range(0, parts[0].Length).Select(p => Enumerable.Range(0, parts[0][p].Length).Select(k => parts.Sum(x => x[p][k])).ToArray())];

    private static double[][] Sum(ReceivingPlane plane, ScanFineness fineness, Vector3d[] towards, double[][] weights)
    {
        double[][] cells = [.. weights.Select(_ => new double[plane.Count])];
        for (int first = 0; first < towards.Length; first += MostDirections)
        {
            Range part = first..Math.Min(first + MostDirections, towards.Length);
            LightTable table = LightTable.Build(StudyHouse.Enclosure, Surroundings.None, plane, fineness, towards[part], CancellationToken.None);
            for (int p = 0; p < weights.Length; p++)
            {
                table.AddTo(weights[p].AsSpan(part), cells[p]);
            }
        }

        return cells;
    }
}
