using System.Text;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;

namespace Glazewright.Store.Jobs;

/// <summary>Job files in and out of the store: the document as typed, byte for byte. A file from a stranger is data: it is measured, decoded and parsed, nothing else.</summary>
public static class JobFile
{
    /// <summary>Most bytes read: the longest document in the widest letters, and one more to know it is longer.</summary>
    private const int MostBytes = 16_000_000;

    /// <summary>Reads a job file; never throws for what it holds.</summary>
    /// <param name="stream">The file; read no further than a job can be long.</param>
    /// <param name="cancel">Cancels.</param>
    /// <returns>Its text, or what keeps it from being a job document. Faults of fields are the job's own and come when it is opened.</returns>
    public static async Task<JobFileReading> ReadAsync(Stream stream, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(stream);
        using MemoryStream content = new();
        byte[] part = new byte[65536];
        int got;
        while ((got = await stream.ReadAsync(part, cancel)) > 0)
        {
            content.Write(part, 0, got);
            if (content.Length > MostBytes)
            {
                return Refused("the file is far too large for a job document", "a JSON file of some kilobytes");
            }
        }

        ReadOnlySpan<byte> bytes = content.GetBuffer().AsSpan(0, (int)content.Length);
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0x1F, 0x8B]) || bytes.StartsWith("PK"u8))
        {
            return Refused("the file is packed", "the job document itself, unpacked");
        }

        string text;
        try
        {
            text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            return Refused("the file is not UTF-8 text", "a JSON file in UTF-8");
        }

        if (text.Contains('\0', StringComparison.Ordinal))
        {
            return Refused("the file is not text: it holds a zero character", "a JSON file in UTF-8");
        }

        JobDocument document = JobDocument.Read(text);
        return document.Faults.Any(f => f.Kind == FaultKind.NotJson) ? new JobFileReading.Refused(document.Faults)
            : document.Root is ObjectNode { Members.Count: > 0 } ? new JobFileReading.Read(text)
            : Refused("the file holds no job", "a JSON object as { \"glazewright\": 1, ... }");
    }

    /// <summary>A job as a file.</summary>
    /// <param name="job">The job.</param>
    /// <returns>A name that every file system takes, and the document as typed.</returns>
    public static (string Name, byte[] Content) Write(StoredJob job)
    {
        ArgumentNullException.ThrowIfNull(job);
        StringBuilder name = new();
        foreach (char c in job.Name.ToLowerInvariant())
        {
            if (c is (>= 'a' and <= 'z') or (>= '0' and <= '9'))
            {
                name.Append(c);
            }
            else if (name.Length > 0 && name[^1] != '-')
            {
                name.Append('-');
            }

            if (name.Length == 60)
            {
                break;
            }
        }

        string bare = name.ToString().Trim('-');
        return ((bare.Length > 0 ? bare : "job") + ".json", Encoding.UTF8.GetBytes(job.Text));
    }

    private static JobFileReading.Refused Refused(string wrong, string right) => new([new Fault(FaultKind.NotJson, "", "", 0, 0, wrong, right)]);
}

/// <summary>What a job file holds. A closed case.</summary>
public abstract record JobFileReading
{
    private JobFileReading()
    {
    }

    /// <summary>A job document.</summary>
    /// <param name="Text">As typed.</param>
    public sealed record Read(string Text) : JobFileReading;

    /// <summary>Something else.</summary>
    /// <param name="Faults">What it is not, and what would be right.</param>
    public sealed record Refused(EqList<Fault> Faults) : JobFileReading;
}
