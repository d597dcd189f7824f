using System.CommandLine;
using Glazewright.Cli.Running;
using Glazewright.Design.Brief.Reading;

namespace Glazewright.Cli.Commands;

/// <summary>Prints the job document's JSON Schema.</summary>
internal static class JobSchemaCommand
{
    public static Command Make(Desk desk)
    {
        Option<bool> json = CommonOptions.Json();
        Command command = new("job-schema", "Prints the JSON Schema of a job document, with what each field is for, its range, examples and default.\n\nExample: glazewright job-schema > job.schema.json") { json };
        command.SetAction(_ =>
        {
            desk.Out.Write(JobReader.Schema());
            return Exit.Done;
        });
        return command;
    }
}
