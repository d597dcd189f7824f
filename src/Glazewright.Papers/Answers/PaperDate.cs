using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Answers;

/// <summary>Date and paper of a job's reports.</summary>
internal static class PaperDate
{
    /// <summary>The job's date, or none when it has none that is a calendar day.</summary>
    public static DateOnly? Of(Job job) =>
        DateOnly.TryParseExact(job.Date, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) ? day : null;

    /// <summary>Letter or A4.</summary>
    public static SheetSize Size(Job job) => job.Units == UnitSystem.Us ? SheetSize.Letter : SheetSize.A4;
}
