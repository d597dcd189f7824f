using Spectre.Console;

namespace Glazewright.Cli.Running;

/// <summary>Work that someone may watch. Progress is drawn on a terminal only, on standard error, and its package is loaded only then.</summary>
internal static class Watching
{
    public static int Run(Desk desk, bool json, Func<Action<string>, int> work) =>
        desk.IsTerminal && !json ? OnTerminal.Run(work) : work(_ => { });

    private static class OnTerminal
    {
        public static int Run(Func<Action<string>, int> work)
        {
            IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Console.Error) });
            return console.Status().Start("Starting", context => work(words => context.Status(Markup.Escape(words))));
        }
    }
}
