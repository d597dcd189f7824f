using Glazewright.Science.Air;
using Jint;

namespace Glazewright.Published.Tests.Science;

/// <summary>
/// Our moist air against psychrolib 1.1.1 (npm; MIT) run in this process, over a sweep of states from frost to heat and from sea level to 2000 m.
/// The library is not committed: `eng/fetch-references` brings it; without it the test skips.
/// </summary>
public class PsychrometricLibraryLive
{
    private static string? Library()
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            string path = Path.Combine(folder.FullName, "artifacts", "references", "psychrolib", "package", "psychrolib.js");
            if (File.Exists(path))
            {
                return path;
            }
        }

        return null;
    }

    // The library stops its wet-bulb bisection at 0.001 K and its dew-point Newton at 0.001 K.
    [Fact]
    public void Agrees_over_the_whole_sweep()
    {
        string? path = Library();
        Assert.SkipWhen(path is null, "psychrolib is not fetched: run eng/fetch-references.");
        using var engine = new Engine();
        engine.Execute("var module={exports:{}},exports=module.exports;");
        engine.Execute(File.ReadAllText(path!));
        engine.Execute("var ps=module.exports;ps.SetUnitSystem(ps.SI);function state(t,r,p){var a=ps.CalcPsychrometricsFromRelHum(t,r,p);return [a[0],a[1],a[2],a[3],a[4]];}");
        int compared = 0;
        foreach (double pressurePa in (double[])[101_325, 95_000, 79_500])
        {
            for (double dryBulbC = -30; dryBulbC <= 50; dryBulbC += 4)
            {
                foreach (double humidity in (double[])[0.08, 0.3, 0.62, 0.91])
                {
                    double[] theirs = [.. engine.Invoke("state", dryBulbC, humidity, pressurePa).AsArray().Select(v => v.AsNumber())];
                    AirState ours = AirState.FromRelativeHumidity(dryBulbC, humidity, pressurePa);
                    Assert.Equal(theirs[0], ours.HumidityRatio, 2e-5 * theirs[0] + 1e-7);
                    Assert.Equal(theirs[2], ours.DewPointC, 0.005);
                    Assert.Equal(theirs[3], ours.VapourPressurePa, 2e-5 * theirs[3] + 0.02);
                    Assert.Equal(theirs[4], ours.EnthalpyJPerKg, 2e-5 * Math.Abs(theirs[4]) + 0.5);

                    // Where the water and the ice line both answer, the two programs may pick different ones: leave that band out.
                    bool oneAnswer = dryBulbC < 0
                        || ours.HumidityRatio > MoistAir.HumidityRatio(dryBulbC, -1e-9, pressurePa)
                        || ours.HumidityRatio < MoistAir.HumidityRatio(dryBulbC, 0, pressurePa);
                    if (oneAnswer)
                    {
                        Assert.Equal(theirs[1], ours.WetBulbC, 0.002);
                        compared++;
                    }
                }
            }
        }

        Assert.True(compared > 150, $"Only {compared} wet bulbs compared.");
    }

    // 41 temperatures × 25 humidities × 10 barometers, 10 250 states, each property; the library's wet bulb stops at 0.001 K. It runs in an interpreter: ten seconds are common.
    [Fact]
    public void Agrees_over_a_grid_of_ten_thousand_states()
    {
        string? path = Library();
        Assert.SkipWhen(path is null, "psychrolib is not fetched: run eng/fetch-references.");
        using var engine = new Engine();
        engine.Execute("var module={exports:{}},exports=module.exports;");
        engine.Execute(File.ReadAllText(path!));
        engine.Execute("""
            var ps=module.exports;ps.SetUnitSystem(ps.SI);
            function row(t,p){var all=[];for(var i=0;i<25;i++){var r=0.02+0.04*i;var w=ps.GetHumRatioFromRelHum(t,r,p);
            all.push(w,ps.GetTWetBulbFromHumRatio(t,w,p),ps.GetTDewPointFromHumRatio(t,w,p),ps.GetVapPresFromHumRatio(w,p),ps.GetMoistAirEnthalpy(t,w),ps.GetMoistAirVolume(t,w,p),ps.GetMoistAirDensity(t,w,p),ps.GetVaporPressureDeficit(t,w,p));}return all;}
            """);
        int states = 0;
        int wetBulbs = 0;
        for (int k = 0; k < 10; k++)
        {
            double pressurePa = 70_000 + 3_500 * k;
            for (double dryBulbC = -30; dryBulbC <= 50; dryBulbC += 2)
            {
                double[] theirs = [.. engine.Invoke("row", dryBulbC, pressurePa).AsArray().Select(v => v.AsNumber())];
                for (int i = 0; i < 25; i++)
                {
                    ReadOnlySpan<double> they = theirs.AsSpan(8 * i, 8);
                    AirState ours = AirState.FromRelativeHumidity(dryBulbC, 0.02 + 0.04 * i, pressurePa);
                    AirProperties fast = AirProperties.Of(dryBulbC, ours.HumidityRatio, pressurePa);
                    Assert.Equal(they[0], ours.HumidityRatio, 2e-5 * they[0] + 1e-8);
                    Assert.Equal(they[2], ours.DewPointC, 0.005);
                    Assert.Equal(they[3], ours.VapourPressurePa, 2e-5 * they[3] + 0.02);
                    Assert.Equal(they[4], ours.EnthalpyJPerKg, 2e-5 * Math.Abs(they[4]) + 0.5);
                    Assert.Equal(they[5], ours.VolumeM3PerKg, 2e-5 * they[5]);
                    Assert.Equal(they[6], ours.DensityKgPerM3, 2e-5 * they[6]);
                    Assert.Equal(they[7], ours.VapourDeficitPa, 2e-5 * (they[7] + they[3]) + 0.02);
                    Assert.Equal(they[2], fast.DewPointC, 0.005);
                    states++;
                    bool oneAnswer = dryBulbC < 0
                        || ours.HumidityRatio > MoistAir.HumidityRatio(dryBulbC, -1e-9, pressurePa)
                        || ours.HumidityRatio < MoistAir.HumidityRatio(dryBulbC, 0, pressurePa);
                    if (oneAnswer)
                    {
                        Assert.Equal(they[1], ours.WetBulbC, 0.002);
                        Assert.Equal(they[1], fast.WetBulbC, 0.002);
                        wetBulbs++;
                    }
                }
            }
        }

        Assert.Equal(10_250, states);
        Assert.True(wetBulbs > 9_000, $"Only {wetBulbs} wet bulbs compared.");
    }
}
