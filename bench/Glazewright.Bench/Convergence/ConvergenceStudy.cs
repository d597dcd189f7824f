using System.Diagnostics;
using System.Text;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Svg;

namespace Glazewright.Bench.Convergence;

/// <summary>
/// How the light's error falls with directions, rays and cells, on one house: a picture and its table for each, into docs/methods/pictures. Same bytes every time.
/// </summary>
internal static class ConvergenceStudy
{
    /// <summary>Name on the command line.</summary>
    internal const string Word = "convergence";

    /// <summary>Runs all sweeps.</summary>
    /// <param name="folder">Where to, or null for docs/methods/pictures.</param>
    internal static void Run(string? folder)
    {
        string into = folder ?? Path.Combine(StudyYear.RepoRoot(), "docs", "methods", "pictures");
        Directory.CreateDirectory(into);
        Sweeps sweeps = new(new StudyLight(StudyYear.Example()));
        foreach (Func<Sweep> make in (Func<Sweep>[])[sweeps.SunDirections, sweeps.SkyDirections, sweeps.Rays, sweeps.Cells, sweeps.ViewFactorRays])
        {
            long start = Stopwatch.GetTimestamp();
            Sweep sweep = make();
            Sheet sheet = LogLogPlot.Draw(sweep);
            foreach (TextClash clash in TextClashes.On(Plot.Of(sheet)))
            {
                Console.WriteLine($"  lettering: '{clash.First}' and '{clash.Second}'");
            }

            File.WriteAllBytes(Path.Combine(into, sweep.Id + ".svg"), SvgWriter.Bytes(sheet));
            File.WriteAllText(Path.Combine(into, sweep.Id + ".csv"), sweep.Csv(), new UTF8Encoding(false));
            Console.WriteLine(FormattableString.Invariant($"{sweep.Id}: {Stopwatch.GetElapsedTime(start).TotalSeconds:0.0} s"));
            Console.Write(sweep.Csv());
        }
    }
}
