using System.Text;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Program;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Dxf;
using Glazewright.Papers.Erection;
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
using static Glazewright.Papers.Sets.PaperReader;

namespace Glazewright.Papers.Sets;

/// <summary>A file that is yet to be made.</summary>
/// <param name="Path">Path in the package, with forward slashes.</param>
/// <param name="Title">What it is.</param>
/// <param name="Readers">Its white list.</param>
/// <param name="Make">Makes its content; the same each time, whatever else is being made beside it.</param>
internal sealed record PlannedPaper(string Path, string Title, EqList<PaperReader> Readers, Func<byte[]> Make);

/// <summary>Which files a job's package has, for whom each is, and how it is made. The one place where white lists are written.</summary>
internal static class PaperPlan
{
    /// <summary>The files in the order of the contents page, without that page.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="only">The reader whose set is made, or null for the whole package.</param>
    public static IReadOnlyList<PlannedPaper> Of(PaperSource source, PaperReader? only)
    {
        // Sheets are drawn for the plan already, as their list must know them all; some reports are composed for it too: side by side.
        IReadOnlyList<PlannedPaper> reports = [], drawings = [];
        Parallel.Invoke(new ParallelOptions { TaskScheduler = TaskScheduler.Current }, () => drawings = [.. Drawings(source, only)], () => reports = [.. Reports(source)]);
        IEnumerable<PlannedPaper> all = [.. reports, .. drawings, .. Models(source), .. Lists(source), .. Own(source)];
        return [.. all.Where(p => only is not { } reader || p.Readers.Contains(reader))];
    }

    private static IEnumerable<PlannedPaper> Reports(PaperSource source)
    {
        byte[] Pdf(Report report) => ReportSetting.Pdf(SiWords.Heard(report, source.Job.Units));
        yield return new("grower.pdf", "Your greenhouse: what it will do, in pictures", [Grower], () => Pdf(GrowerReport.Of(source)));
        if (QuoteReport.Of(source) is { } quote)
        {
            yield return new("quote.pdf", "Quote, a draft until signed", [Grower], () => Pdf(quote));
        }

        yield return new("answers.pdf", "Answers: each question with its numbers", [Grower], () => Pdf(AnswersReport.Of(source)));
        yield return new("basis.pdf", "What the answers rest on: findings, defaults, limits", [Grower, Reviewer], () => Pdf(BasisReport.Of(source)));
        if (LightReport.Of(source) is { } light)
        {
            yield return new("light.pdf", "Light by month, place and cause", [Grower], () => Pdf(light));
            foreach (Block.Picture picture in light.Blocks.OfType<Block.Picture>())
            {
                yield return new($"light/{FileName(picture.Drawing.Id)}.svg", picture.Drawing.Title, [Grower], () => SvgWriter.Bytes(picture.Drawing));
            }

            foreach (HouseResults house in source.Houses)
            {
                yield return new($"light/cells-{FileName(house.House.Id)}.csv", $"Light of {house.House.Name} by place and month", [Grower], () => Utf8(LightCsv.Cells(house, source.Job.Units)));
                yield return new($"light/hours-{FileName(house.House.Id)}.csv", $"Light of {house.House.Name} by hour", [Grower], () => Utf8(LightCsv.Hours(house)));
            }
        }

        if (PlantReport.Of(source) is { } plant)
        {
            yield return new("plant.pdf", "Climate plant: design days, air, equipment and services", [Grower, Reviewer, Controls, Trades], () => Pdf(plant));
        }

        yield return new("review.pdf", "Design criteria and preliminary structure", [Reviewer], () => Pdf(ReviewReport.Of(source)));
        yield return new("calculation.pdf", "Calculations: every figure with its working, source and caution", [Grower, Reviewer], () => Pdf(CalculationReport.Of(source)));
        yield return new("crew.pdf", "For the crew: set out, stand, cover, hang, with room to sign", [Crew], () => Pdf(CrewReport.Of(source)));
        if (source.Houses.Count > 0)
        {
            yield return new("control.pdf", "The control program in plain words", [Controls, Grower], () => Pdf(ControlReport.Of(source)));
        }

        foreach (HouseResults house in source.Houses)
        {
            yield return new($"control/program-{FileName(house.House.Id)}.json", $"Control program of {house.House.Name}", [Controls], () => Utf8(ProgramJson.Write(house.Program)));
            yield return new($"control/year-{FileName(house.House.Id)}.csv", $"Simulated year of {house.House.Name} by hour", [Grower, Controls], () => Utf8(YearCsv.Hours(house.Year)));
        }
    }

    private static IEnumerable<PlannedPaper> Drawings(PaperSource source, PaperReader? only)
    {
        DrawnSheet[] sheets = [.. DrawingSet.Of(source).Where(s => only is not { } reader || s.Readers.Contains(reader))];
        string name = source.Job.Name.Length > 0 ? source.Job.Name : "Unnamed job";
        yield return new("drawings.pdf", only is null ? "Drawing sheets" : "Drawing sheets of this set", PaperReaders.All, () => PdfBookWriter.Bytes(
            PdfBook.OfSheets(name + ": drawings", "Drawing sheets, preliminary", PaperDate.Of(source.Job), [.. sheets.Select(s => s.Sheet)])));
        foreach (DrawnSheet drawn in sheets)
        {
            Sheet sheet = drawn.Sheet;
            yield return new($"drawings/{FileName(sheet.Id)}.svg", sheet.Title, drawn.Readers, () => SvgWriter.Bytes(sheet));
            if (sheet.Views.Count > 0)
            {
                yield return new($"drawings/{FileName(sheet.Id)}.dxf", sheet.Title + ", true size for other drawing programs", drawn.Readers, () => DxfWriter.Bytes(sheet, source.Job.Units));
            }
        }
    }

    private static IEnumerable<PlannedPaper> Models(PaperSource source)
    {
        Lazy<RangeSolids> solids = new(() => RangeSolids.Of(source));
        yield return new("model/range.ifc", "The range as a building model (IFC4): members, covering, openings, equipment", [Shop, Trades], () => IfcWriter.Bytes(solids.Value, source.Job, source.Version));
        yield return new("model/range.glb", "The range in three dimensions (glTF), to look at", [Grower, Shop, Crew, Trades], () => GlbWriter.Bytes(solids.Value, source.Version));
    }

    private static IEnumerable<PlannedPaper> Lists(PaperSource source)
    {
        UnitSystem units = source.Job.Units;
        yield return new("shop/orders.csv", "What to order first, with usual lead times", [Shop], () => Utf8(ShopCsv.Orders(source.Takeoff, source.Cuts, units)));
        yield return new("shop/materials.csv", "Materials", [Shop, Crew], () => Utf8(ShopCsv.Materials(source.Takeoff, source.Cuts, units)));
        yield return new("shop/marks.csv", "Frame members, sheets and panels by mark", [Shop, Crew], () => Utf8(ShopCsv.Marks(source.Takeoff, units)));
        yield return new("shop/cuts.csv", "Cut list of the tube", [Shop], () => Utf8(ShopCsv.Cuts(source.Cuts, units)));
        yield return new("shop/cut-summary.csv", "What the cut list buys, and what no list could beat", [Shop], () => Utf8(ShopCsv.CutSummary(source.Cuts, units)));
        yield return new("shop/materials-and-cuts.xlsx", "Materials, marks and cuts as a workbook", [Shop], () => ShopBook.Bytes(source.Takeoff, source.Cuts, units));
        if (source.Services.Electric.Count == 0)
        {
            yield break;
        }

        yield return new("services/electric.csv", "Electric load list", [Controls, Trades], () => Utf8(ServicesCsv.Electric(source.Services)));
        yield return new("services/panel.csv", "Panel schedules: circuits, breakers, conductors, runs", [Reviewer, Trades], () => Utf8(ServicesCsv.Panel(source.Services, units)));
        yield return new("services/gas.csv", "Burners", [Reviewer, Trades], () => Utf8(ServicesCsv.Gas(source.Services, units)));
        if (source.Houses.Any(h => h.Layout.Flues.Count > 0))
        {
            yield return new("services/vents.csv", "Vent and combustion-air pipes of heaters", [Reviewer, Crew, Trades], () => Utf8(ServicesCsv.Vents([.. source.Houses.Select(h => h.Layout)], units)));
        }

        yield return new("services/water.csv", "Water users and drains", [Trades], () => Utf8(ServicesCsv.Water(source.Services, units)));
        yield return new("services/ways.csv", "Taps, drains and the ways of pipe to them", [Crew, Trades], () => Utf8(ServicesCsv.Ways(source.Services, units)));
        yield return new("services/points.csv", "Controls points", [Controls, Trades], () => Utf8(ServicesCsv.Points(source.Services)));
    }

    private static IEnumerable<PlannedPaper> Own(PaperSource source)
    {
        UnitSystem units = source.Job.Units;
        EqList<PaperReader> alone = PaperReaders.ContractorAlone;
        yield return new("contractor/result.json", "Every figure with its working", alone, () => ResultFile.Bytes(source));
        yield return new("contractor/price-lines.csv", "Price by line", alone, () => Utf8(ContractorCsv.Lines(source.Price, units)));
        yield return new("contractor/price-summary.csv", "From direct cost to price", alone, () => Utf8(ContractorCsv.Summary(source.Price)));
        yield return new("contractor/estimate.xlsx", "The estimate as a workbook that goes on calculating", alone, () => EstimateBook.Bytes(source));
        if (source.Houses.Any(h => h.FirstCosts.Count > 0))
        {
            yield return new("contractor/alternatives.csv", "Alternatives of the climate plant with their first cost", alone, () => Utf8(AlternativesCsv.Table(source)));
        }
    }

    private static byte[] Utf8(string text) => new UTF8Encoding(false).GetBytes(text);

    private static string FileName(string id) => string.Concat(id.Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' ? c : '-'));
}
