using System.Globalization;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Pdf;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sheets;
using Glazewright.Papers.Svg;

namespace Glazewright.Papers.Sets;

/// <summary>Makes every file of a job's package. Cost, margin and labour rates stand only in files whose reader is the contractor.</summary>
public static class PaperWriter
{
    /// <summary>Raise when the papers change for the same results.</summary>
    public const int Version = 1;

    /// <summary>The files in the order of the contents page, that page first.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="cancel">Looked at between files.</param>
    /// <returns>Paths are unique; the same source gives the same bytes.</returns>
    public static IReadOnlyList<PaperFile> Write(PaperSource source, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(source);
        List<PaperFile> files = [];
        void Add(string path, PaperReader reader, string title, byte[] bytes)
        {
            cancel.ThrowIfCancellationRequested();
            files.Add(new PaperFile(path, reader, title, bytes));
        }

        string name = source.Job.Name.Length > 0 ? source.Job.Name : "Unnamed job";
        Report answers = AnswersReport.Of(source);
        Add("answers.pdf", PaperReader.Grower, "Answers: what the greenhouse will do", ReportSetting.Pdf(answers));
        IReadOnlyList<Sheet> sheets = Sheets(source);
        Add("drawings.pdf", PaperReader.Everyone, "Drawing sheets", PdfBookWriter.Bytes(PdfBook.OfSheets(name + ": drawings", "Drawing sheets, preliminary", answers.Date, sheets)));
        foreach (Sheet sheet in sheets)
        {
            Add($"drawings/{FileName(sheet.Id)}.svg", PaperReader.Everyone, sheet.Title, SvgWriter.Bytes(sheet));
        }

        Add("review.pdf", PaperReader.Reviewer, "Design criteria and preliminary structure", ReportSetting.Pdf(ReviewReport.Of(source)));
        Add("shop/materials.csv", PaperReader.Shop, "Materials", ShopLists.Materials(source.Takeoff));
        Add("shop/members.csv", PaperReader.Shop, "Frame members by mark", ShopLists.Members(source.Takeoff, source.Job.Units));
        Add("shop/cuts.csv", PaperReader.Shop, "Cut list of the tube", ShopLists.Cuts(source.Cuts, source.Job.Units));
        Add("shop/sheets.csv", PaperReader.Shop, "Sheets and panels", ShopLists.Sheets(source.Takeoff, source.Job.Units));
        Add("contractor/result.json", PaperReader.Contractor, "Every figure with its working", ResultFile.Bytes(source));
        Add("contractor/price.csv", PaperReader.Contractor, "Price by line", ShopLists.Price(source.Price));
        string date = source.Job.Date.Length > 0 ? source.Job.Date : "undated draft";
        return [new PaperFile("contents.html", PaperReader.Everyone, "Contents", ContentsPage.Bytes(name, date, files)), .. files];
    }

    private static IReadOnlyList<Sheet> Sheets(PaperSource source)
    {
        List<Sheet> sheets = [RangePlan.Draw(source, "G-1")];
        for (int i = 0; i < source.Houses.Count; i++)
        {
            sheets.Add(HouseSection.Draw(source, source.Houses[i], string.Create(CultureInfo.InvariantCulture, $"A-{i + 1}")));
        }

        return sheets;
    }

    private static string FileName(string id) => string.Concat(id.Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' ? c : '-'));
}
