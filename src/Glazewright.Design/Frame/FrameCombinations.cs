using Glazewright.Mechanics.Frames;
using Glazewright.Mechanics.Loads;

namespace Glazewright.Design.Frame;

/// <summary>Factored loadings of a frame: each combination of the edition with each of its snow and wind cases.</summary>
internal static class FrameCombinations
{
    /// <summary>All strength (LRFD) loadings. Combinations without wind get notional loads, each way.</summary>
    internal static IEnumerable<(string Name, FrameLoading Loading)> Strength(FrameLoadSite site, TypicalFrame frame, FrameLoadCases cases)
    {
        FrameLoading Notional(double sign) => new(
            [
                new NodeLoad(frame.LeftEave, sign * FrameTrial.NotionalFraction * cases.GravityN, 0),
                new NodeLoad(frame.RightEave, sign * FrameTrial.NotionalFraction * cases.GravityN, 0),
            ],
            []);
        foreach (LoadCombination c in LoadCombinations.Of(site.Snow.Edition, DesignMethod.Lrfd))
        {
            foreach ((string name, FrameLoading loading) in Of(c, site, cases))
            {
                if (c.WindFactor != 0)
                {
                    yield return (name, loading);
                    continue;
                }

                yield return (name, loading.And(Notional(1)));
                yield return (name, loading.And(Notional(-1)));
            }
        }
    }

    private static IEnumerable<(string Name, FrameLoading Loading)> Of(LoadCombination c, FrameLoadSite site, FrameLoadCases cases)
    {
        double snowFactor = c.FactorFor(site.Snow);
        FrameLoading fixedLoads = cases.Dead.Times(c.DeadFactor).And(cases.Collateral.Times(c.CollateralFactor))
            .And(cases.RoofLive.Times(c.RoofLiveFactor));
        IEnumerable<(SnowCase? Case, FrameLoading Loading)> snows = snowFactor == 0
            ? [(null, FrameLoading.None)]
            : cases.Snow.Where(s => Combines(s.Case, c)).Select(s => ((SnowCase?)s.Case, s.Loading.Times(snowFactor)));
        foreach ((SnowCase? snow, FrameLoading snowLoading) in snows)
        {
            IEnumerable<(WindCase? Case, FrameLoading Loading)> winds = c.WindFactor == 0
                ? [(null, FrameLoading.None)]
                : cases.Wind.Where(w => c.SnowFactor + c.RoofLiveFactor == 0 || w.Case is WindCase.Pressures)
                    .Select(w => ((WindCase?)w.Case, w.Loading.Times(c.WindFactor)));
            foreach ((WindCase? wind, FrameLoading windLoading) in winds)
            {
                yield return (FrameWords.Combination(c, snow, wind), fixedLoads.And(snowLoading).And(windLoading));
            }
        }
    }

    // The low-slope least and rain-on-snow stand alone: not with wind.
    private static bool Combines(SnowCase snow, LoadCombination c) =>
        c.WindFactor == 0 || snow.Kind is not (SnowCaseKind.LowSlopeLeast or SnowCaseKind.RainOnSnow);
}
