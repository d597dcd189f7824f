using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;

namespace Glazewright.Design.Tests.Brief;

/// <summary>The example jobs of the repository.</summary>
internal static class Examples
{
    public const string Demo = "two-ridge-herb-yard.json";

    public static string Folder { get; } = Find();

    public static string Text(string name) => File.ReadAllText(Path.Combine(Folder, name)).ReplaceLineEndings("\n");

    public static Job Job(string name)
    {
        ReadOutcome<Job> outcome = JobReader.Read(JobDocument.Read(Text(name)));
        Assert.True(outcome.Faults.Count == 0, string.Join("\n", outcome.Faults));
        return outcome.Value!;
    }

    public static EqList<Fault> Faults(params Edit[] edits) => JobReader.Read(Edited(edits)).Faults;

    public static JobDocument Edited(params Edit[] edits)
    {
        Assert.True(JobDocument.Read(Text(Demo)).TryEdit(edits, out JobDocument edited, out Fault? fault), fault?.ToString());
        return edited;
    }

    private static string Find()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "Glazewright.slnx")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        return Path.Combine(folder ?? throw new InvalidOperationException("The repository's root was not found."), "examples");
    }
}
