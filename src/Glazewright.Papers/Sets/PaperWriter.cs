using System.Globalization;
using System.Text;
using Glazewright.Design.Contracts;
using Glazewright.Design.Program;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Dxf;
using Glazewright.Papers.Exchange;
using Glazewright.Papers.Gltf;
using Glazewright.Papers.Ifc;
using Glazewright.Papers.Light;
using Glazewright.Papers.Pdf;
using Glazewright.Papers.Plant;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sheets;
using Glazewright.Papers.Solids;
using Glazewright.Papers.Svg;
using Glazewright.Papers.Workbooks;

namespace Glazewright.Papers.Sets;

/// <summary>Makes every file of a job's package. Cost, margin and labour rates stand only in files whose reader is the contractor.</summary>
public static class PaperWriter
{
    /// <summary>Raise when the papers change for the same results.</summary>
    public const int Version = 5;

    /// <summary>The files in the order of the contents page, that page first.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="cancel">Looked at between files.</param>
    /// <returns>Paths are unique; the same source gives the same bytes.</returns>
    public static IReadOnlyList<PaperFile> Write(PaperSource source, CancellationToken cancel)
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
        Add("basis.pdf", PaperReader.Grower, "What the answers rest on: findings, defaults, limits", ReportSetting.Pdf(BasisReport.Of(source)));
        if (LightReport.Of(source) is { } light)
        {
            Add("light.pdf", PaperReader.Grower, "Light by month, place and cause", ReportSetting.Pdf(light));
            foreach (Block.Picture picture in light.Blocks.OfType<Block.Picture>())
            {
                Add($"light/{FileName(picture.Drawing.Id)}.svg", PaperReader.Grower, picture.Drawing.Title, SvgWriter.Bytes(picture.Drawing));
            }

            foreach (HouseResults house in source.Houses)
            {
                Add($"light/cells-{FileName(house.House.Id)}.csv", PaperReader.Grower, $"Light of {house.House.Name} by place and month", Utf8(LightCsv.Cells(house, source.Job.Units)));
                Add($"light/hours-{FileName(house.House.Id)}.csv", PaperReader.Grower, $"Light of {house.House.Name} by hour", Utf8(LightCsv.Hours(house)));
            }
        }

        if (PlantReport.Of(source) is { } plant)
        {
            Add("plant.pdf", PaperReader.Everyone, "Climate plant: design days, air, equipment and services", ReportSetting.Pdf(plant));
        }

        IReadOnlyList<Sheet> sheets = Sheets(source);
        Add("drawings.pdf", PaperReader.Everyone, "Drawing sheets", PdfBookWriter.Bytes(PdfBook.OfSheets(name + ": drawings", "Drawing sheets, preliminary", answers.Date, sheets)));
        (byte[] Svg, byte[]? Dxf)[] drawn = [.. sheets.AsParallel().AsOrdered().Select(s => (SvgWriter.Bytes(s), s.Views.Count > 0 ? DxfWriter.Bytes(s, source.Job.Units) : null))];
        foreach ((Sheet sheet, (byte[] svg, byte[]? dxf)) in sheets.Zip(drawn))
        {
            Add($"drawings/{FileName(sheet.Id)}.svg", PaperReader.Everyone, sheet.Title, svg);
            if (dxf is not null)
            {
                Add($"drawings/{FileName(sheet.Id)}.dxf", PaperReader.Everyone, sheet.Title + ", true size for other drawing programs", dxf);
            }
        }

        RangeSolids solids = RangeSolids.Of(source);
        Add("model/range.ifc", PaperReader.Trades, "The range as a building model (IFC4): members, covering, openings, equipment", IfcWriter.Bytes(solids, source.Job, source.Version));
        Add("model/range.glb", PaperReader.Trades, "The range in three dimensions (glTF), to look at", GlbWriter.Bytes(solids, source.Version));
        Add("review.pdf", PaperReader.Reviewer, "Design criteria and preliminary structure", ReportSetting.Pdf(ReviewReport.Of(source)));
        UnitSystem units = source.Job.Units;
        Add("shop/materials.csv", PaperReader.Shop, "Materials", Utf8(ShopCsv.Materials(source.Takeoff, source.Cuts, units)));
        Add("shop/marks.csv", PaperReader.Shop, "Frame members, sheets and panels by mark", Utf8(ShopCsv.Marks(source.Takeoff, units)));
        Add("shop/cuts.csv", PaperReader.Shop, "Cut list of the tube", Utf8(ShopCsv.Cuts(source.Cuts, units)));
        Add("shop/cut-summary.csv", PaperReader.Shop, "What the cut list buys, and what no list could beat", Utf8(ShopCsv.CutSummary(source.Cuts, units)));
        Add("shop/materials-and-cuts.xlsx", PaperReader.Shop, "Materials, marks and cuts as a workbook", ShopBook.Bytes(source.Takeoff, source.Cuts, units));
        if (source.Houses.Count > 0)
        {
            Add("control.pdf", PaperReader.Controls, "The control program in plain words", ReportSetting.Pdf(ControlReport.Of(source)));
        }

        foreach (HouseResults house in source.Houses)
        {
            Add($"control/program-{FileName(house.House.Id)}.json", PaperReader.Controls, $"Control program of {house.House.Name}", Utf8(ProgramJson.Write(house.Program)));
        }

        if (source.Services.Electric.Count > 0)
        {
            Add("services/electric.csv", PaperReader.Everyone, "Electric load list", Utf8(ServicesCsv.Electric(source.Services)));
            Add("services/panel.csv", PaperReader.Everyone, "Panel schedules: circuits, breakers, conductors, runs", Utf8(ServicesCsv.Panel(source.Services, units)));
            Add("services/gas.csv", PaperReader.Everyone, "Burners", Utf8(ServicesCsv.Gas(source.Services, units)));
            if (source.Houses.Any(h => h.Layout.Flues.Count > 0))
            {
                Add("services/vents.csv", PaperReader.Everyone, "Vent and combustion-air pipes of heaters", Utf8(ServicesCsv.Vents([.. source.Houses.Select(h => h.Layout)], units)));
            }

            Add("services/water.csv", PaperReader.Everyone, "Water users and drains", Utf8(ServicesCsv.Water(source.Services, units)));
            Add("services/points.csv", PaperReader.Controls, "Controls points", Utf8(ServicesCsv.Points(source.Services)));
        }

        Add("contractor/result.json", PaperReader.Contractor, "Every figure with its working", ResultFile.Bytes(source));
        Add("contractor/price-lines.csv", PaperReader.Contractor, "Price by line", Utf8(ContractorCsv.Lines(source.Price, units)));
        Add("contractor/price-summary.csv", PaperReader.Contractor, "From direct cost to price", Utf8(ContractorCsv.Summary(source.Price)));
        Add("contractor/estimate.xlsx", PaperReader.Contractor, "The estimate as a workbook that goes on calculating", EstimateBook.Bytes(source));
        if (source.Houses.Any(h => h.FirstCosts.Count > 0))
        {
            Add("contractor/alternatives.csv", PaperReader.Contractor, "Alternatives of the climate plant with their first cost", Utf8(AlternativesCsv.Table(source)));
        }

        string date = source.Job.Date.Length > 0 ? source.Job.Date : "undated draft";
        return [new PaperFile("contents.html", PaperReader.Everyone, "Contents", ContentsPage.Bytes(name, date, Weather(source), files)), .. files];
    }

    /// <summary>The drawing sheets in their order.</summary>
    /// <param name="source">What the papers are made from.</param>
    public static IReadOnlyList<Sheet> Sheets(PaperSource source) => DrawingSet.Of(source);

    private static string Weather(PaperSource source) => source.Houses.Count == 0
        ? "none used"
        : string.Join("; ", source.Houses.Select(h => (h.Year.Synthetic ? "synthetic, not measured: " : "") + h.Year.Weather).Distinct());

    private static byte[] Utf8(string text) => new UTF8Encoding(false).GetBytes(text);

    private static string FileName(string id) => string.Concat(id.Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' ? c : '-'));
}
