using System.CommandLine;
using Glazewright.Cli.Running;

namespace Glazewright.Cli.Commands;

/// <summary>Prints the control program's JSON Schema.</summary>
internal static class ProgramSchemaCommand
{
    public static Command Make(Desk desk)
    {
        Option<bool> json = CommonOptions.Json();
        Command command = new("program-schema", "Prints the JSON Schema of a house's control program (control/program-A.json of a package), by which an editor offers keys and words.\n\nExample: glazewright program-schema > program.schema.json") { json };
        command.SetAction(_ =>
        {
            desk.Out.Write(Design.Program.ProgramSchema.Write());
            return Exit.Done;
        });
        return command;
    }
}
