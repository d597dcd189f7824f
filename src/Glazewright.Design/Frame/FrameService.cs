using Glazewright.Mechanics.Frames;
using Glazewright.Mechanics.Loads;

namespace Glazewright.Design.Frame;

/// <summary>
/// Service deflections and base reactions of a frame: first order, full stiffness, basic cases solved once and added. Service snow of 7-22 is 0.7 of its
/// strength-level load; service wind is 0.42 of the strength-level wind (IBC table 1604.3 note f; from memory).
/// </summary>
internal static class FrameService
{
    internal const double ServiceWindFactor = 0.42;

    internal static ServiceResult Of(FrameLoadSite site, TypicalFrame frame, FrameLoadCases cases)
    {
        FrameLoading[] basics = [cases.Dead, cases.Collateral, cases.RoofLive, .. cases.Snow.Select(s => s.Loading), .. cases.Wind.Select(w => w.Loading)];
        FrameSolution[] solved = [.. FrameAnalysis.FirstOrder(frame.Model, basics).Select(o => o.OrThrow())];
        int firstWind = 3 + cases.Snow.Count;
        double snowFactor = site.Snow.Edition == LoadEdition.Asce722 ? 0.7 : 1.0;
        double drop = 0, spread = 0, sway = 0, thrust = 0;
        var bow = frame.Parts.ToDictionary(p => p.Name, _ => 0.0);
        FrameLoading gravity = cases.Dead.And(cases.Collateral);
        FrameLoading[] services =
        [
            gravity.And(cases.RoofLive), .. cases.Snow.Select(s => gravity.And(s.Loading.Times(snowFactor))),
            .. cases.Wind.Select(w => w.Loading.Times(ServiceWindFactor)),
        ];
        FrameSolution[] results = [.. FrameAnalysis.FirstOrder(frame.Model, services).Select(o => o.OrThrow())];
        for (int i = 0; i < results.Length; i++)
        {
            FrameSolution r = results[i];
            bool wind = i > cases.Snow.Count;
            double left = r.Movements[frame.LeftEave].AcrossM;
            double right = r.Movements[frame.RightEave].AcrossM;
            if (wind)
            {
                sway = Math.Max(sway, Math.Max(Math.Abs(left), Math.Abs(right)));
            }
            else
            {
                drop = Math.Max(drop, -r.Movements[frame.Ridge].UpM);
                spread = Math.Max(spread, right - left);
                thrust = Math.Max(thrust, Math.Abs(r.Reactions[0].AcrossN));
            }

            foreach (FramePart part in frame.Parts)
            {
                foreach (FramePiece piece in part.Pieces)
                {
                    bow[part.Name] = Math.Max(bow[part.Name], Math.Abs(r.Members[piece.Member].LargestBow().BowM));
                }
            }
        }

        return new ServiceResult(drop, spread, sway, thrust, Base(site, cases, solved, firstWind, 0), Base(site, cases, solved, firstWind, 1), ByLoad(cases, solved), bow);
    }

    private static BasicReaction[] ByLoad(FrameLoadCases cases, FrameSolution[] solved)
    {
        (string Load, string Sort)[] names =
        [
            ("own weight and covering", "D"), ("collateral and crop", "C"), ("roof live", "Lr"),
            .. cases.Snow.Select(s => (FrameWords.Snow(s.Case.Kind), "S")), .. cases.Wind.Select(w => (FrameWords.Wind(w.Case), "W")),
        ];
        return [.. names.Select((n, i) => new BasicReaction(n.Load, n.Sort, On(solved[i].Reactions[0]), On(solved[i].Reactions[1])))];

        // The base gets the opposite of what it gives; a clean zero where there is none.
        static BaseForce On(JointReaction r) => new(r.UpN + 0.0, 0.0 - r.AcrossN, r.MomentNm + 0.0);
    }

    private static BaseExtremes Base(FrameLoadSite site, FrameLoadCases cases, FrameSolution[] solved, int firstWind, int support)
    {
        double down = 0, up = 0, across = 0, moment = 0;
        foreach (LoadCombination c in LoadCombinations.Of(site.Snow.Edition, DesignMethod.Asd))
        {
            int snows = c.FactorFor(site.Snow) == 0 ? 1 : cases.Snow.Count;
            int winds = c.WindFactor == 0 ? 1 : cases.Wind.Count;
            for (int s = 0; s < snows; s++)
            {
                for (int w = 0; w < winds; w++)
                {
                    double x = 0, y = 0, m = 0;
                    void Add(int index, double factor)
                    {
                        JointReaction r = solved[index].Reactions[support];
                        x += factor * r.AcrossN;
                        y += factor * r.UpN;
                        m += factor * r.MomentNm;
                    }

                    Add(0, c.DeadFactor);
                    Add(1, c.CollateralFactor);
                    Add(2, c.RoofLiveFactor);
                    if (c.SnowFactor != 0)
                    {
                        Add(3 + s, c.SnowFactor);
                    }

                    if (c.WindFactor != 0)
                    {
                        Add(firstWind + w, c.WindFactor);
                    }

                    down = Math.Max(down, y);
                    up = Math.Max(up, -y);
                    across = Math.Max(across, Math.Abs(x));
                    moment = Math.Max(moment, Math.Abs(m));
                }
            }
        }

        return new BaseExtremes(down, up, across, moment);
    }
}
