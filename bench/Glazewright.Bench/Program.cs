using BenchmarkDotNet.Running;
using Glazewright.Bench.Convergence;
using Glazewright.Bench.Package;
using Glazewright.Bench.Years;

// "convergence [folder]" draws how the light's error falls; "year [repeats]" times the demo's years; "package [repeats] [job] [weather]" a package by stage and paper, "package-ten [repeats]" that of ten houses; all else goes to the benchmarks.
if (args is [ConvergenceStudy.Word, ..])
{
    ConvergenceStudy.Run(args.ElementAtOrDefault(1));
}
else if (args is [YearTimes.Word, ..])
{
    YearTimes.Run(int.TryParse(args.ElementAtOrDefault(1), out int repeats) ? repeats : 7);
}
else if (args is [PackageTimes.Word, ..])
{
    PackageTimes.Run(int.TryParse(args.ElementAtOrDefault(1), out int rounds) ? rounds : 2, args.ElementAtOrDefault(2), args.ElementAtOrDefault(3));
}
else if (args is [TenHouses.Word, ..])
{
    PackageTimes.RunText(int.TryParse(args.ElementAtOrDefault(1), out int times) ? times : 1, TenHouses.Job, null);
}
else
{
    BenchmarkSwitcher.FromAssembly(typeof(ConvergenceStudy).Assembly).Run(args);
}
