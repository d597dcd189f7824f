using Glazewright.Design.Document;
using Glazewright.Store.Jobs;

namespace Glazewright.Store.Tests.Databases;

/// <summary>Another process that saves edits without end and says each on standard output once the store has acknowledged it.</summary>
internal static class Writer
{
    public const string Flag = "--write-until-killed";

    public static async Task<int> RunAsync(string setting, string job)
    {
        JobStore store = new(StoreDoor.Of(setting), TimeProvider.System);
        StoredJob now = (await store.FindAsync(job))!;
        for (int i = 0; ; i++)
        {
            SaveAnswer answer = await store.SaveAsync(job, now.Version, [Edit.Typed("/notes", Note(i))], $"note {i}", "writer");
            now = ((SaveAnswer.Saved)answer).Job;
            Console.WriteLine(FormattableString.Invariant($"{now.Version} {i}"));
        }
    }

    public static string Note(int i) => FormattableString.Invariant($"edit number {i}");
}
