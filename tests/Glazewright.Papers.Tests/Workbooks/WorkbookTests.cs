using System.Diagnostics;
using System.Globalization;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Validation;
using Glazewright.Design.Contracts;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Tests.Sets;
using Glazewright.Papers.Workbooks;

namespace Glazewright.Papers.Tests.Workbooks;

/// <summary>
/// Workbooks: valid by the Open XML SDK's validator (ECMA-376), the same bytes twice, and calculated by another program (Debian's gnumeric, ssconvert) from the formulas alone to the values
/// that we store beside them.
/// </summary>
public class WorkbookTests
{
    private static readonly PaperSource Source = SampleSource.Make();

    private static byte[] Shop => ShopBook.Bytes(Source.Takeoff, Source.Cuts, UnitSystem.Us);

    [Fact]
    public async Task They_are_valid_and_the_same_twice()
    {
        foreach (Func<byte[]> make in new[] { () => EstimateBook.Bytes(Source), () => Shop })
        {
            byte[] bytes = make();
            using SpreadsheetDocument book = SpreadsheetDocument.Open(new MemoryStream(bytes), isEditable: false);
            Assert.Empty(new OpenXmlValidator().Validate(book, TestContext.Current.CancellationToken).Select(e => e.Description));
            await Task.Delay(2100, TestContext.Current.CancellationToken); // zip times tick by two seconds
            Assert.Equal(bytes, make());
        }
    }

    // The shop's book tells no cost: its records hold none, and no word of it stands in it.
    [Fact]
    public void The_shop_s_workbook_has_no_money_in_it()
    {
        using SpreadsheetDocument book = SpreadsheetDocument.Open(new MemoryStream(Shop), isEditable: false);
        string all = string.Concat(book.WorkbookPart!.WorksheetParts.Select(p => p.Worksheet!.InnerText)) + book.WorkbookPart.SharedStringTablePart?.SharedStringTable?.InnerText;
        Assert.DoesNotContain("cost", all, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("margin", all, StringComparison.OrdinalIgnoreCase);
    }

    // Another program forgets our values, calculates all formulas, and comes to the same price; a dearer unit price makes it dearer by what the sum says.
    [Fact]
    public void Another_program_calculates_the_same_price()
    {
        byte[] bytes = EstimateBook.Bytes(Source);
        string[] rows = Recalculated(bytes, "Price");
        double ours = Stored(bytes, "Price");
        double theirs = Number(rows.Single(r => r.StartsWith("Price,", StringComparison.Ordinal)));
        Assert.True(theirs > 0);
        Assert.Equal(ours, theirs, 0.01);

        // Double the first line's unit cost: the price grows by that line's cost with its tax, overhead, contingency and margin.
        byte[] dearer = Edited(bytes, "Lines", "F3", cost => 2 * cost);
        double now = Number(Recalculated(dearer, "Price").Single(r => r.StartsWith("Price,", StringComparison.Ordinal)));
        Glazewright.Design.Price.PricedLine line = Source.Price.Lines[0];
        Glazewright.Design.Brief.Pricing p = Source.Job.Pricing;
        double grown = line.Quantity * line.UnitCost * (1 + p.SalesTaxFraction) * (1 + p.OverheadFraction + p.ContingencyFraction) / (1 - p.MarginOfPriceFraction);
        Assert.Equal(theirs + grown, now, 0.01);
    }

    private static double Stored(byte[] bytes, string sheet)
    {
        using SpreadsheetDocument book = SpreadsheetDocument.Open(new MemoryStream(bytes), isEditable: false);
        DocumentFormat.OpenXml.Spreadsheet.Row row = Sheet(book, sheet).Descendants<DocumentFormat.OpenXml.Spreadsheet.Row>()
            .Single(r => r.Elements<DocumentFormat.OpenXml.Spreadsheet.Cell>().FirstOrDefault()?.InnerText == "Price");
        return double.Parse(row.Elements<DocumentFormat.OpenXml.Spreadsheet.Cell>().ElementAt(1).CellValue!.Text, CultureInfo.InvariantCulture);
    }

    private static DocumentFormat.OpenXml.Spreadsheet.Worksheet Sheet(SpreadsheetDocument book, string name)
    {
        DocumentFormat.OpenXml.Spreadsheet.Sheet sheet = book.WorkbookPart!.Workbook!.Descendants<DocumentFormat.OpenXml.Spreadsheet.Sheet>().Single(s => s.Name == name);
        return ((WorksheetPart)book.WorkbookPart.GetPartById(sheet.Id!)).Worksheet!;
    }

    private static byte[] Edited(byte[] bytes, string sheet, string cell, Func<double, double> change)
    {
        MemoryStream stream = new();
        stream.Write(bytes);
        using (SpreadsheetDocument book = SpreadsheetDocument.Open(stream, isEditable: true))
        {
            DocumentFormat.OpenXml.Spreadsheet.CellValue value = Sheet(book, sheet).Descendants<DocumentFormat.OpenXml.Spreadsheet.Cell>().Single(c => c.CellReference == cell).CellValue!;
            value.Text = change(double.Parse(value.Text, CultureInfo.InvariantCulture)).ToString("R", CultureInfo.InvariantCulture);
        }

        return stream.ToArray();
    }

    private static string[] Recalculated(byte[] bytes, string sheet)
    {
        string folder = Directory.CreateTempSubdirectory("glazewright-book-").FullName;
        try
        {
            string from = Path.Combine(folder, "book.xlsx");
            string to = Path.Combine(folder, "book.csv");
            File.WriteAllBytes(from, bytes);
            using Process? run = Start(["--recalc", "-O", $"sheet={sheet} quoting-mode=never format=raw", "-T", "Gnumeric_stf:stf_assistant", from, to]);
            Assert.SkipWhen(run is null, "ssconvert (Debian package gnumeric) is not on this machine: nobody else has calculated the workbook");
            string said = run!.StandardError.ReadToEnd();
            run.WaitForExit();
            Assert.True(File.Exists(to), said);
            return File.ReadAllLines(to);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static Process? Start(string[] arguments)
    {
        try
        {
            return Process.Start(new ProcessStartInfo("ssconvert", arguments) { RedirectStandardError = true, RedirectStandardOutput = true });
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return null;
        }
    }

    private static double Number(string row) => double.Parse(row.Split(',')[1], CultureInfo.InvariantCulture);
}
