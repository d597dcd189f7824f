using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Papers.Package;

namespace Glazewright.Cli.Running;

/// <summary>How every run says that it cannot be done: lines on standard error, or one JSON object on standard output.</summary>
internal static class Refusal
{
    /// <summary>Faults of the job or of the command.</summary>
    public static int Of(Desk desk, bool json, string jobPath, IReadOnlyList<Fault> faults)
    {
        if (json)
        {
            desk.Out.WriteLine(FaultLines.JsonObject(faults));
        }
        else
        {
            FaultLines.Write(desk.Errors, jobPath, faults);
        }

        return Exit.Faults;
    }

    /// <summary>A target that cannot be written.</summary>
    public static int Of(Desk desk, bool json, OutputProblem problem)
    {
        if (json)
        {
            desk.Out.WriteLine($"{{\n  \"faults\": [\n    {{ \"kind\": \"{problem.Kind}\", \"pointer\": \"\", \"id\": \"\", \"line\": 0, \"column\": 0, \"wrong\": {JsonText.Quote(problem.Wrong)}, \"right\": {JsonText.Quote(problem.Right)} }}\n  ]\n}}");
        }
        else
        {
            desk.Errors.WriteLine($"{problem.Wrong}. Right: {problem.Right}.");
        }

        return problem.Kind is OutputProblemKind.DiskFull or OutputProblemKind.CannotSwap ? Exit.Ours : Exit.Faults;
    }
}
