using Glazewright.Science.Light;
using Glazewright.Science.Light.Shadows;

namespace Glazewright.Bench.Convergence;

/// <summary>What is varied, one thing at a time; all else stays as the light map has it.</summary>
internal sealed class Sweeps(StudyLight light)
{
    private static readonly ScanFineness Many = new(16, 4);

    private static readonly SunGrid Finest = SunGrid.Even(360, 180);

    private readonly ReceivingPlane plane = StudyHouse.Plane(StudyHouse.CellsAlong, StudyHouse.CellsAcross);

    /// <summary>Sun directions against the sun's own place every three minutes; once more with 16 times the rays, to tell the two errors apart.</summary>
    internal Sweep SunDirections()
    {
        Errors usual = Of(ScanFineness.Usual);
        Errors fine = Of(Many);
        Level[] levels = [.. ((int[])[6, 9, 13, 18, 25, 36, 51, 72, 102, 144]).Select(e =>
        {
            SunGrid grid = SunGrid.Even(2 * e, e);
            double[] errors = usual.At(s => light.Sun(plane, s, grid), grid);
            return new Level($"{2 * e} x {e}", light.Lit(grid).Length, [.. errors, .. fine.At(s => light.Sun(plane, s, grid), grid)[2..]]);
        })];
        return new Sweep(
            "light-sun-directions", "Light on the benches: how many sun directions?", "sun directions that carry energy in the year", Errors.Name,
            [.. Errors.Curves, .. Errors.Curves[2..].Select(c => c + ", 16 × rays")], levels, light.Lit(StudyLight.UsualGrid).Length, [(1, "as 1/N"), (0.5, "as 1/√N")])
        {
            Beside =
            [
                new Level("no grid: each quarter hour's own sun", light.Year.Towards.Length,
                    [.. usual.At(s => light.SunWithoutGrid(plane, s, 1), Finest), .. fine.At(s => light.SunWithoutGrid(plane, s, 1), Finest)[2..]]),
            ],
        };

        Errors Of(ScanFineness fineness)
        {
            double[][] sky = light.Sky(plane, fineness, SkyRule.Usual());
            double[][] reference = StudyLight.Add(light.SunWithoutGrid(plane, fineness, 5), sky, light.Scattered(plane, Finest));
            return new Errors(fineness, reference, grid => StudyLight.Add(sky, light.Scattered(plane, grid)));
        }
    }

    /// <summary>Sky directions against 32 by 144 of them; once more with 16 times the rays.</summary>
    internal Sweep SkyDirections()
    {
        Errors usual = Of(ScanFineness.Usual);
        Errors fine = Of(Many);
        Level[] levels = [.. (((int, int)[])[(2, 9), (3, 13), (4, 18), (6, 25), (8, 36), (11, 50), (16, 72)]).Select(n =>
        {
            SkyRule rule = n == (8, 36) ? SkyRule.Usual() : SkyRule.Of(n.Item1, n.Item2);
            return new Level($"{n.Item1} x {n.Item2}", rule.Towards.Length,
                [.. usual.At(s => light.Sky(plane, s, rule), StudyLight.UsualGrid), fine.At(s => light.Sky(plane, s, rule), StudyLight.UsualGrid)[^1]]);
        })];
        return new Sweep(
            "light-sky-directions", "Light on the benches: how many sky directions?", "sky directions", Errors.Name,
            [.. Errors.Curves, Errors.Curves[^1] + ", 16 × rays"], levels, SkyDome.Usual.Directions.Count, [(1, "as 1/N"), (0.5, "as 1/√N")]);

        Errors Of(ScanFineness fineness)
        {
            double[][] rest = StudyLight.Add(light.Sun(plane, fineness, StudyLight.UsualGrid), light.Scattered(plane, StudyLight.UsualGrid));
            return new Errors(fineness, StudyLight.Add(rest, light.Sky(plane, fineness, SkyRule.Of(32, 144))), _ => rest);
        }
    }

    /// <summary>Lines of 64 rays a cell against 64 lines of 256.</summary>
    internal Sweep Rays()
    {
        double[][] scattered = light.Scattered(plane, StudyLight.UsualGrid);
        double[][] reference = With(new ScanFineness(64, 4));
        Level[] levels = [.. ((int[])[1, 2, 4, 8, 16, 32]).Select(lines => new Level($"{lines} x 64", 64 * lines,
            [.. Errors.Between(With(new ScanFineness(lines, 1)), reference), Errors.Between(With(new ScanFineness(lines, 4)), reference)[^1]]))];
        return new Sweep(
            "light-rays", "Light on the benches: how many rays?", "rays a cell and direction, in lines of 64", Errors.Name,
            [.. Errors.Curves, Errors.Curves[^1] + ", lines of 256"], levels,
            64 * ScanFineness.Usual.LinesPerCell * ScanFineness.Usual.WordsPerCell, [(1, "as 1/N"), (0.5, "as 1/√N")]);

        double[][] With(ScanFineness fineness) => StudyLight.Add(
            light.Sun(plane, fineness, StudyLight.UsualGrid), light.Sky(plane, fineness, SkyRule.Usual()), scattered);
    }

    /// <summary>Cells of the map against 240 by 150 of them: the mean, the darkest tenth of the cells over the mean, the one darkest cell over the mean.</summary>
    internal Sweep Cells()
    {
        double[] reference = At(240, 150);
        Level[] levels = [.. (((int, int)[])[(5, 3), (7, 4), (10, 6), (14, 9), (20, 12), (28, 18), (40, 25), (57, 35), (80, 50)]).Select(n =>
            new Level($"{n.Item1} x {n.Item2}", n.Item1 * n.Item2, [.. At(n.Item1, n.Item2).Zip(reference, (a, b) => 100 * Math.Abs((a / b) - 1))]))];
        return new Sweep(
            "light-cells", "Mean and evenness on the benches: how many cells?", "cells of the map", "error, % of the finest map's",
            [.. ((string[])["mean", "darkest tenth", "darkest cell"]).SelectMany(what => StudyYear.Periods.Select(p => $"{p}, {what}"))],
            levels, StudyHouse.CellsAlong * StudyHouse.CellsAcross, [(1, "as 1/N"), (0.5, "as 1/√N")]);

        // The same 600 lines and 240 words or a few more on the whole plane for every grid, so that cells alone differ.
        double[] At(int along, int across)
        {
            ReceivingPlane grid = StudyHouse.Plane(along, across);
            ScanFineness fineness = new((int)Math.Ceiling(600.0 / across), (int)Math.Ceiling(240.0 / along));
            double[][] sum = StudyLight.Add(
                light.Sun(grid, fineness, StudyLight.UsualGrid), light.Sky(grid, fineness, SkyRule.Usual()), light.Scattered(grid, StudyLight.UsualGrid));
            double[] means = [.. sum.Select(p => p.Average())];
            double[] tenths = [.. sum.Select((p, i) => DarkestTenth(p) / means[i])];
            double[] leasts = [.. sum.Select((p, i) => p.Min() / means[i])];
            int dark = Array.IndexOf(sum[0], sum[0].Min());
            Console.WriteLine(FormattableString.Invariant(
                $"  {along} x {across}: mean, darkest tenth, darkest cell: year {means[0]:0} Wh/m2, {tenths[0]:0.0000}, {leasts[0]:0.0000}; December {means[1]:0}, {tenths[1]:0.0000}, {leasts[1]:0.0000}; the year's darkest cell at {grid.Middle(dark).X:0.00}, {grid.Middle(dark).Y:0.00} m"));
            return [.. means, .. tenths, .. leasts];
        }
    }

    // Of cells of equal area; a cell that straddles the tenth counts in part.
    private static double DarkestTenth(double[] cells)
    {
        double[] sorted = [.. cells.Order()];
        double wanted = 0.1 * cells.Length;
        return sorted.Select((v, i) => v * Math.Clamp(wanted - i, 0, 1)).Sum() / wanted;
    }

    /// <summary>Rays a piece for the view factors: the study's house against 262,144, a plain box against the closed form, and what is left of it on the benches.</summary>
    internal Sweep ViewFactorRays()
    {
        List<Piece> pieces = Pieces.Of(StudyHouse.Enclosure, null);
        double[,] exact = ViewFactors.ExchangeAreas(pieces, 262_144);
        double[][] free = light.SetFree(StudyLight.UsualGrid);
        double wholeWh = StudyLight.Add(
            light.Sun(plane, ScanFineness.Usual, StudyLight.UsualGrid), light.Sky(plane, ScanFineness.Usual, SkyRule.Usual()),
            light.Scattered(plane, StudyLight.UsualGrid))[0].Average();
        double finest = ScatteredMean(exact);
        Level[] levels = [.. ((int[])[128, 256, 512, 1024, 2048, 4096, 8192, 16_384, 32_768]).Select(rays =>
        {
            double[,] exchange = ViewFactors.ExchangeAreas(pieces, rays);
            return new Level($"{rays}", rays,
                [100 * Rms(exchange), 100 * ClosedBox.RmsError(rays), 100 * Math.Abs(ScatteredMean(exchange) - finest) / wholeWh]);
        })];
        return new Sweep(
            "light-view-factor-rays", "View factors: how many rays?", "rays a piece", "error, % (factors: of 1, root of the mean square)",
            ["factors, this house", "factors, box by closed form", "year's light on the benches"], levels, EnclosureGains.Rays, [(1, "as 1/N"), (0.5, "as 1/√N")]);

        double ScatteredMean(double[,] exchange) => RoomLight.Of(pieces, Radiosity.Solve(pieces, exchange), plane).MeanIrradiance(free[0]);

        double Rms(double[,] exchange)
        {
            double sum = 0;
            for (int i = 0; i < pieces.Count; i++)
            {
                for (int j = 0; j < pieces.Count; j++)
                {
                    double off = (exchange[i, j] - exact[i, j]) / pieces[i].AreaM2;
                    sum += off * off;
                }
            }

            return Math.Sqrt(sum / (pieces.Count * pieces.Count));
        }
    }
}
