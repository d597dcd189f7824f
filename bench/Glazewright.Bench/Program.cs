using BenchmarkDotNet.Running;
using Glazewright.Bench.Convergence;
using Glazewright.Bench.Years;

// "convergence [folder]" draws how the light's error falls; "year [repeats]" times the demo's years; all else goes to the benchmarks.
if (args is [ConvergenceStudy.Word, ..])
{
    ConvergenceStudy.Run(args.ElementAtOrDefault(1));
}
else if (args is [YearTimes.Word, ..])
{
    YearTimes.Run(int.TryParse(args.ElementAtOrDefault(1), out int repeats) ? repeats : 7);
}
else
{
    BenchmarkSwitcher.FromAssembly(typeof(ConvergenceStudy).Assembly).Run(args);
}
