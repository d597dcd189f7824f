using System.Runtime.InteropServices;
using System.Text;
using Glazewright.Cli;
using Glazewright.Cli.Running;

using CancellationTokenSource cancel = new();
void Stop(PosixSignalContext context)
{
    context.Cancel = true;
    cancel.Cancel();
}

using PosixSignalRegistration interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, Stop);
using PosixSignalRegistration terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Stop);
using StreamWriter output = new(new StandardStream(Console.OpenStandardOutput(), tells: true), new UTF8Encoding(false), 4096) { NewLine = "\n" };
using StreamWriter errors = new(new StandardStream(Console.OpenStandardError(), tells: false), new UTF8Encoding(false), 256) { NewLine = "\n", AutoFlush = true };
return CommandLine.Run(args, new Desk(output, errors, !Console.IsErrorRedirected && !Console.IsOutputRedirected, AppContext.BaseDirectory, cancel.Token));
