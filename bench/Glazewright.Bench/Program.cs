using BenchmarkDotNet.Running;
using Glazewright.Bench.Convergence;

// "convergence [folder]" draws how the light's error falls; all else goes to the benchmarks.
if (args is [ConvergenceStudy.Word, ..])
{
    ConvergenceStudy.Run(args.ElementAtOrDefault(1));
}
else
{
    BenchmarkSwitcher.FromAssembly(typeof(ConvergenceStudy).Assembly).Run(args);
}
