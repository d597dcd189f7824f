namespace Glazewright.Store;

// Rows as the database keeps them: set by EF Core, never seen outside this room.

internal sealed class JobRow
{
    public required string Id { get; init; }

    public required string Name { get; set; }

    /// <summary>Compared when the row is replaced, as the version is: no edit slips in behind a sale.</summary>
    public required string Status { get; set; }

    /// <summary>Number of the last saved edit; the row is only ever replaced by whoever has read this one.</summary>
    public required int Version { get; set; }

    public required string Text { get; set; }

    public required long ChangedMs { get; set; }
}

internal sealed class EditRow
{
    public required string JobId { get; init; }

    public required int Version { get; init; }

    public required string What { get; init; }

    public required string Pointers { get; init; }

    public required string EditedBy { get; init; }

    public required long AtMs { get; init; }

    public required string Text { get; init; }
}

internal sealed class RevisionRow
{
    public required string JobId { get; init; }

    public required int Version { get; init; }

    /// <summary>Empty where only a note stands: it can still be marked.</summary>
    public required string Mark { get; set; }

    public required string Note { get; set; }

    public required long AtMs { get; init; }
}

internal sealed class MadePapersRow
{
    public required string JobId { get; init; }

    public required int Version { get; init; }

    public required string Sha256 { get; init; }

    public required long AtMs { get; init; }
}

internal sealed class LibraryRow
{
    public required string Kind { get; init; }

    public required string Sha256 { get; init; }

    public required string Name { get; init; }

    public required long AtMs { get; init; }

    public required byte[] Content { get; init; }
}

internal sealed class LibraryYearRow
{
    public required string Sha256 { get; init; }

    /// <summary>How it was read: a row of another form is read anew from the file.</summary>
    public required int Form { get; init; }

    public required string Name { get; init; }

    public required string Region { get; init; }

    public required string Country { get; init; }

    public required string Source { get; init; }

    public required string StationId { get; init; }

    public required double LatitudeDeg { get; init; }

    public required double LongitudeDeg { get; init; }

    public required double ZoneH { get; init; }

    public required double ElevationM { get; init; }

    public required string Origin { get; init; }

    public required string RowYears { get; init; }
}

internal sealed class EndedSignInRow
{
    public required string Id { get; init; }

    public required long UntilMs { get; init; }
}
