using System.IO.Compression;
using SpreadCheetah;
using SpreadCheetah.Styling;
using SpreadCheetah.Worksheets;

namespace Glazewright.Papers.Workbooks;

/// <summary>Writes workbooks (Office Open XML, ECMA-376): formulas live, their present values stored beside them.</summary>
internal static class BookWriter
{
    private static readonly DateTimeOffset NoDate = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The file's bytes: the same for the same sheets.</summary>
    /// <param name="sheets">Sheets in order.</param>
    public static byte[] Bytes(IReadOnlyList<BookSheet> sheets)
    {
        using MemoryStream written = new();

        // Into memory nothing waits: the task is done when it comes back.
        Write(written, sheets).GetAwaiter().GetResult();
        return Undated(written);
    }

    private static async Task Write(Stream into, IReadOnlyList<BookSheet> sheets)
    {
        // Properties of the document would carry the clock's time.
        SpreadCheetahOptions options = new() { DocumentProperties = null, WriteCellReferenceAttributes = true };
        await using Spreadsheet book = await Spreadsheet.CreateNewAsync(into, options).ConfigureAwait(false);
        StyleId[] styles = [.. Enum.GetValues<CellLook>().Select(look => book.AddStyle(StyleOf(look)))];
        foreach (BookSheet sheet in sheets)
        {
            WorksheetOptions look = new() { FrozenRows = sheet.FrozenRows > 0 ? sheet.FrozenRows : null };
            for (int i = 0; i < sheet.ColumnChars.Count; i++)
            {
                look.Column(i + 1).Width = sheet.ColumnChars[i];
            }

            await book.StartWorksheetAsync(sheet.Name, look).ConfigureAwait(false);
            foreach (IReadOnlyList<BookCell> row in sheet.Rows)
            {
                await book.AddRowAsync([.. row.Select(c => CellOf(c, styles[(int)c.Look]))]).ConfigureAwait(false);
            }
        }

        await book.FinishAsync().ConfigureAwait(false);
    }

    private static Cell CellOf(BookCell cell, StyleId style) => cell switch
    {
        { Formula: { } formula } => new Cell(new Formula(formula), cell.Value, style),
        { Words: { } words } => new Cell(words, style),
        _ => new Cell(cell.Value, style),
    };

    private static Style StyleOf(CellLook look)
    {
        Style style = new();
        string? format = look switch
        {
            CellLook.Count => "#,##0",
            CellLook.Number or CellLook.Given or CellLook.Total => "#,##0.00",
            CellLook.Hours => "#,##0.0",
            CellLook.Money or CellLook.GivenMoney or CellLook.TotalMoney => "#,##0.00",
            CellLook.Share or CellLook.GivenShare => "0.0%",
            _ => null,
        };
        if (format is not null)
        {
            style.Format = NumberFormat.Custom(format);
        }

        switch (look)
        {
            case CellLook.Title:
                style.Font.Bold = true;
                style.Font.Size = 14;
                break;
            case CellLook.Note:
                style.Font.Italic = true;
                break;
            case CellLook.Head:
                style.Font.Bold = true;
                style.Fill.Color = System.Drawing.Color.FromArgb(230, 236, 240);
                break;
            case CellLook.Given or CellLook.GivenMoney or CellLook.GivenShare:
                style.Font.Color = System.Drawing.Color.FromArgb(20, 70, 160);
                style.Fill.Color = System.Drawing.Color.FromArgb(255, 250, 225);
                break;
            case CellLook.Total or CellLook.TotalMoney:
                style.Font.Bold = true;
                break;
        }

        return style;
    }

    // The archive's entries carry the clock's time: they are written again without it.
    private static byte[] Undated(MemoryStream written)
    {
        written.Position = 0;
        using ZipArchive from = new(written, ZipArchiveMode.Read, leaveOpen: true);
        using MemoryStream undated = new();
        using (ZipArchive to = new(undated, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (ZipArchiveEntry entry in from.Entries)
            {
                ZipArchiveEntry copy = to.CreateEntry(entry.FullName, CompressionLevel.Optimal);
                copy.LastWriteTime = NoDate;
                using Stream source = entry.Open();
                using Stream target = copy.Open();
                source.CopyTo(target);
            }
        }

        return undated.ToArray();
    }
}
