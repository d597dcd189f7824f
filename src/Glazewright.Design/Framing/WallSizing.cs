using Glazewright.Design.Frame;
using Glazewright.Mechanics.Checks;
using Glazewright.Mechanics.Loads;
using Glazewright.Mechanics.Sections;

namespace Glazewright.Design.Framing;

/// <summary>A wall framed: its sticks and what each turned out to be. Columns have no use of their own here.</summary>
/// <param name="Wall">The wall.</param>
/// <param name="Grid">Its sticks.</param>
/// <param name="Uses">Use of each stick; null for columns.</param>
/// <param name="RoofN">Wind that the heads of the uprights bring to roof or eave, the largest, N, unfactored.</param>
internal sealed record FramedWall(WallFace Wall, WallGrid Grid, IReadOnlyList<StickUse?> Uses, double RoofN);

/// <summary>
/// Sizes the framing of a wall: headers and sills each get the lightest tube that is enough, jambs of a wall one tube together, posts and stubs keep theirs.
/// Their own weight follows their tubes, so a few rounds are run.
/// </summary>
internal static class WallSizing
{
    private const double Gravity = 9.80665;
    private const int Rounds = 4;

    internal static FramedWall Of(FrameInput input, FrameLoadSite site, WallFace wall, string name, TubeSection post, double wallPa, double leastSizeM)
    {
        TubeSection jamb = StickCheck.List[0];
        FramedWall? framed = null;
        for (int round = 0; round < Rounds; round++)
        {
            WallGrid grid = WallGrid.Of(wall, name, ((TubeShape.Rectangular)jamb.Shape).WidthM);
            framed = Sized(input, site, wall, grid, post, jamb, wallPa, leastSizeM);
            TubeSection? chosen = framed.Uses.Where((u, i) => u is not null && grid.Sticks[i].Kind == StickKind.Jamb).Select(u => u!.Section).FirstOrDefault();
            if (chosen is null || ((TubeShape.Rectangular)chosen.Shape).WidthM <= ((TubeShape.Rectangular)jamb.Shape).WidthM)
            {
                break;
            }

            jamb = chosen;
        }

        return framed!;
    }

    private static FramedWall Sized(
        FrameInput input, FrameLoadSite site, WallFace wall, WallGrid grid, TubeSection post, TubeSection leastJamb, double wallPa, double leastSizeM)
    {
        LoadEdition edition = site.Snow.Edition;
        IReadOnlyList<Stick> sticks = grid.Sticks;
        StickLoad[] wind = WallLoads.OnePascal(wall, grid);
        double zoneM = StickCheck.EndZoneM(leastSizeM, site.Section.MeanRoofHeightM);
        TubeSection[] tubes = [.. sticks.Select(s => s.Kind switch { StickKind.Jamb => leastJamb, StickKind.Header or StickKind.Sill => StickCheck.List[0], _ => post })];
        StickUse?[] uses = new StickUse?[sticks.Count];
        TubeSection[] jambs = [.. StickCheck.List.Where(t => t.MassKgPerM >= leastJamb.MassKgPerM - 1e-9)];
        for (int round = 0; round < Rounds; round++)
        {
            (double[] axial, StickLoad[] weights, double[] weightSpans) = Weights(wall, grid, tubes, wallPa);
            StickDemand[] demands =
            [
                .. sticks.Select((s, i) =>
                {
                    bool corner = IsNearCorner(wall, s, zoneM);
                    (double windPa, double areaM2) = StickCheck.Wind(site, Math.Max(s.SpanM, 0.01), wind[i].TotalN, corner);
                    return new StickDemand(windPa, areaM2, corner, wind[i].Times(windPa), weights[i], weightSpans[i], axial[i]);
                }),
            ];
            StickUse Try(int i, TubeSection t) => StickCheck.Of(input, edition, sticks[i], t, demands[i]);
            for (int i = 0; i < sticks.Count; i++)
            {
                uses[i] = sticks[i].Kind switch
                {
                    StickKind.Column or StickKind.Jamb => null,
                    StickKind.Header or StickKind.Sill => Lightest(StickCheck.List, t => [Try(i, t)])[0],
                    _ => Try(i, post),
                };
            }

            int[] of = [.. Enumerable.Range(0, sticks.Count).Where(i => sticks[i].Kind == StickKind.Jamb)];
            if (of.Length > 0)
            {
                StickUse[] best = Lightest(jambs, t => [.. of.Select(i => Try(i, t))]);
                for (int k = 0; k < of.Length; k++)
                {
                    uses[of[k]] = best[k];
                }
            }

            for (int i = 0; i < sticks.Count; i++)
            {
                tubes[i] = uses[i]?.Section ?? tubes[i];
            }
        }

        double roofN = Enumerable.Range(0, sticks.Count).Where(i => sticks[i].EndOn < 0 && sticks[i].IsUpright && uses[i] is not null)
            .Select(i => WallLoads.Ends(sticks[i].SpanM, uses[i]!.Demand.Wind).EndN).DefaultIfEmpty(0).Max();
        return new FramedWall(wall, grid, uses, roofN);
    }

    private static StickUse[] Lightest(TubeSection[] list, Func<TubeSection, StickUse[]> use)
    {
        StickUse[]? best = null;
        foreach (TubeSection t in list)
        {
            StickUse[] here = use(t);
            if (here.Max(u => u.Use) <= 1)
            {
                return here;
            }

            best = best is null || here.Max(u => u.Use) < best.Max(u => u.Use) ? here : best;
        }

        return best!;
    }

    // Half of it or more in the end zone.
    private static bool IsNearCorner(WallFace wall, Stick s, double zoneM)
    {
        double middle = s.IsUpright ? s.AtM : (s.FromM + s.ToM) / 2;
        return middle < zoneM || middle > wall.LengthM - zoneM;
    }

    /// <summary>Weights: the covering over a header hangs on it, things stand on sills, uprights bring their own down to what they stand on.</summary>
    private static (double[] AxialN, StickLoad[] OnAcross, double[] SpansM) Weights(WallFace wall, WallGrid grid, TubeSection[] tubes, double wallPa)
    {
        IReadOnlyList<Stick> sticks = grid.Sticks;
        double[] axial = [.. sticks.Select((s, i) => s.IsUpright ? tubes[i].MassKgPerM * Gravity * s.SpanM : 0)];
        StickLoad[] loads = [.. sticks.Select(_ => new StickLoad([], []))];
        double[] spans = [.. sticks.Select(s => Math.Max(s.SpanM, 0.01))];
        for (int h = 0; h < wall.Holes.Count; h++)
        {
            axial[grid.Beside[h].Left] += wall.Holes[h].OnJambN;
            axial[grid.Beside[h].Right] += wall.Holes[h].OnJambN;
        }

        // Uprights of upper holes bear on lower headers, so it goes from the top down.
        foreach (int i in Enumerable.Range(0, sticks.Count).Where(i => !sticks[i].IsUpright).OrderByDescending(i => sticks[i].AtM))
        {
            Stick s = sticks[i];
            WallHole hole = wall.Holes[s.Hole];
            List<SpanStrip> strips = [new(0, s.SpanM, tubes[i].MassKgPerM * Gravity)];
            double onN = s.Kind == StickKind.Header ? hole.OnHeaderN : hole.OnSillN;
            double from = Math.Clamp(hole.FromUM - s.FromM, 0, s.SpanM);
            double to = Math.Clamp(hole.ToUM - s.FromM, from + 1e-6, s.SpanM);
            strips.Add(new SpanStrip(from, to, onN / (to - from)));
            if (s.Kind == StickKind.Header)
            {
                strips.AddRange(WallLoads.Beyond(wall, grid, i).Select(b => new SpanStrip(b.FromM, b.ToM, wallPa * b.HighM)));
            }

            SpanPoint[] points =
            [
                .. Enumerable.Range(0, sticks.Count).Where(k => sticks[k].IsUpright && sticks[k].StartOn == i)
                    .Select(k => new SpanPoint(Math.Clamp(sticks[k].AtM - s.FromM, 0, s.SpanM), axial[k])),
            ];
            StickLoad load = new(strips, points);

            // Stubs below carry a sill between its jambs.
            double[] props = [0, .. sticks.Where(o => o.Kind == StickKind.Stub && o.EndOn == i).Select(o => o.AtM - s.FromM).Order(), s.SpanM];
            if (props.Length == 2)
            {
                loads[i] = load;
                (double startN, double endN) = WallLoads.Ends(s.SpanM, load);
                axial[s.StartOn] += startN;
                axial[s.EndOn] += endN;
                continue;
            }

            spans[i] = props.Zip(props.Skip(1)).Max(p => p.Second - p.First);
            double lineNPerM = strips.Sum(p => p.LineNPerM);
            loads[i] = new StickLoad([new SpanStrip(0, spans[i], lineNPerM)], []);
            axial[s.StartOn] += lineNPerM * spans[i] / 2;
            axial[s.EndOn] += lineNPerM * spans[i] / 2;
        }

        return (axial, loads, spans);
    }
}
