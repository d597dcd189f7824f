using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Parsing;
using Glazewright.Cli.Commands;
using Glazewright.Cli.Running;
using Glazewright.Design.Contracts;

namespace Glazewright.Cli;

/// <summary>The command line as a whole.</summary>
public static class CommandLine
{
    /// <summary>Runs one command line.</summary>
    /// <param name="args">Arguments.</param>
    /// <param name="desk">Console, terminal, cancelling.</param>
    /// <returns>0 done, 1 our fault, 2 the user can mend it, 130 stopped.</returns>
    public static int Run(string[] args, Desk desk)
    {
        ArgumentNullException.ThrowIfNull(desk);
        RootCommand root = new("Designs a greenhouse from one job document: shape, light, frame, climate plant, control, a year's run, takeoff, cuts, price and papers, each number with its working.\n\nExample: glazewright demo --out herb-yard")
        {
            DemoCommand.Make(desk),
            DesignCommand.Make(desk),
            ShapeCommand.Make(desk),
            DayCommand.Make(desk),
            CalibrateCommand.Make(desk),
            ColumnsSchemaCommand.Make(desk),
            CompareCommand.Make(desk),
            JobCheckCommand.Make(desk),
            JobSchemaCommand.Make(desk),
            ProgramSchemaCommand.Make(desk),
            WeatherCommand.Make(desk),
            ExplainCommand.Make(desk),
        };
        ParseResult parsed = root.Parse(args.Length == 0 ? ["--help"] : args);
        try
        {
            int exit = parsed.Errors.Count > 0 && parsed.Action is not HelpAction
                ? Misspelt(parsed, desk, args.Contains("--json"))
                : parsed.Invoke(new InvocationConfiguration { Output = desk.Out, Error = desk.Errors, EnableDefaultExceptionHandler = false });
            desk.Out.Flush();
            return exit;
        }
        catch (AnswerLostException e)
        {
            desk.Errors.WriteLine($"The answer could not be written to standard output: {e.Message}.");
            return Exit.Ours;
        }
        catch (OperationCanceledException)
        {
            desk.Errors.WriteLine("Stopped; nothing was changed.");
            return Exit.Stopped;
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            desk.Errors.WriteLine($"This is a mistake of the program, not of the job: {e.GetType().Name}: {e.Message}");
            desk.Errors.WriteLine(e.StackTrace);
            return Exit.Ours;
        }
    }

    private static int Misspelt(ParseResult parsed, Desk desk, bool json)
    {
        string command = parsed.CommandResult.Command is RootCommand ? "" : parsed.CommandResult.Command.Name + " ";
        string right = $"glazewright {command}--help shows how it is used.";
        if (json)
        {
            desk.Out.WriteLine(FaultLines.JsonObject([.. parsed.Errors.Select(e => new Fault(FaultKind.Usage, "", "", 0, 0, e.Message, right))]));
            return Exit.Faults;
        }

        string wrong = string.Join(' ', parsed.Errors.Select(e => e.Message).Distinct());
        desk.Errors.WriteLine($"{wrong} Right: {right}");
        return Exit.Faults;
    }
}
