using System.Globalization;
using System.Text;

namespace Glazewright.Papers.Sets;

/// <summary>The package's first page: what is in it, for whom, and the cautions.</summary>
internal static class ContentsPage
{
    /// <summary>The page.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="only">The reader whose set this is, or null for the whole package.</param>
    /// <param name="files">The files beside it.</param>
    public static byte[] Bytes(PaperSource source, PaperReader? only, IReadOnlyList<PaperFile> files)
    {
        string job = source.Job.Name.Length > 0 ? source.Job.Name : "Unnamed job";
        string date = source.Job.Date.Length > 0 ? source.Job.Date : "undated draft";
        StringBuilder html = new();
        html.Append("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
        html.Append(CultureInfo.InvariantCulture, $"<title>{Escape(job)}: contents</title>\n");
        html.Append("<meta name=\"viewport\" content=\"width=device-width\">\n<meta name=\"color-scheme\" content=\"light dark\">\n<style>\n");
        html.Append("body{font:16px/1.5 system-ui,sans-serif;max-width:44rem;margin:2rem auto;padding:0 1rem;background:#FAF7F0;color:#1C262B}\n");
        html.Append("a{color:#0B5A7A}h1{font-size:1.75rem}h2{font-size:1.19rem;margin-top:1.5rem}summary{cursor:pointer;padding:.35rem 0}h3{font-size:1rem;margin:.75rem 0 .25rem}ul{margin:.25rem 0;padding-left:1.25rem}li{padding:.15rem 0}p.caution{border-left:4px solid #874E00;padding:.5rem 1rem;background:#F0ECE1}\n");
        html.Append(".file{color:#555F64;overflow-wrap:anywhere}h2,h3{break-after:avoid}li{break-inside:avoid}\n");
        html.Append("@media (prefers-color-scheme:dark){body{background:#12181C;color:#EBE7DC}a{color:#7CC4E0}p.caution{background:#222C32;border-color:#D6BD5C}.file{color:#A9B3B7}}\n");
        html.Append("@media print{body{font-size:11pt;margin:0;max-width:none;background:#fff;color:#000}a{color:#000}p.caution{background:#fff;border-color:#000;color:#000}.file{color:#333}}\n");
        html.Append("</style>\n</head>\n<body>\n");
        html.Append(CultureInfo.InvariantCulture, $"<h1>{Escape(job)}</h1>\n<p>{Escape(date)}</p>\n<p>Weather: {Escape(Weather(source))}</p>\n");
        html.Append("<p class=\"caution\">Predicted under the conditions of the job, not a warranty. A typical weather year leaves the extremes out. ");
        html.Append("Structural results are preliminary, for review and sealing by a licensed engineer under the code adopted locally.</p>\n");
        if (only is null)
        {
            html.Append("<p>This is the whole package, the contractor's. A reader's own set has the files listed under that reader and no others: <code>glazewright design</code> with <code>--for grower</code> (or another reader) writes it into a folder of its own.</p>\n");
        }

        foreach (PaperReader reader in only is { } one ? [one] : PaperReaders.All)
        {
            Section(html, PaperReaders.Heading(reader), [.. files.Where(f => f.Readers.Contains(reader))]);
        }

        Section(html, "The contractor's own, not to be passed on", [.. files.Where(f => f.Readers.Count == 0)]);
        html.Append("</body>\n</html>\n");
        return new UTF8Encoding(false).GetBytes(html.ToString());
    }

    // Papers to be read and workbooks to be worked in stand open; pictures, lists and models for other programs are folded behind them.
    private static void Section(StringBuilder html, string head, PaperFile[] files)
    {
        if (files.Length == 0)
        {
            return;
        }

        PaperFile[] read = [.. files.Where(f => f.Path.EndsWith(".pdf", StringComparison.Ordinal) || f.Path.EndsWith(".xlsx", StringComparison.Ordinal))];
        PaperFile[] rest = [.. files.Except(read)];
        html.Append(CultureInfo.InvariantCulture, $"<h2>{Escape(head)}</h2>\n");
        Items(html, read);
        if (rest.Length > 0)
        {
            html.Append(CultureInfo.InvariantCulture, $"<details{(read.Length == 0 ? " open" : "")}><summary>{rest.Length} {(rest.Length == 1 ? "file" : "files")} {(read.Length == 0 ? "" : "more ")}as pictures, tables and data</summary>\n");
            foreach (IGrouping<string, PaperFile> folder in rest.GroupBy(f => f.Path.Contains('/', StringComparison.Ordinal) ? f.Path[..f.Path.IndexOf('/', StringComparison.Ordinal)] : ""))
            {
                html.Append(folder.Key.Length > 0 ? $"<h3>{Escape(Folder(folder.Key))}</h3>\n" : "");
                Items(html, [.. folder]);
            }

            html.Append("</details>\n");
        }
    }

    private static void Items(StringBuilder html, PaperFile[] files)
    {
        if (files.Length == 0)
        {
            return;
        }

        html.Append("<ul>\n");
        foreach (PaperFile file in files)
        {
            string href = string.Join('/', file.Path.Split('/').Select(Uri.EscapeDataString));
            html.Append(CultureInfo.InvariantCulture, $"<li><a href=\"{href}\">{Escape(file.Title)}</a> <span class=\"file\">({Escape(file.Path)})</span></li>\n");
        }

        html.Append("</ul>\n");
    }

    private static string Folder(string name) => char.ToUpperInvariant(name[0]) + name[1..];

    private static string Weather(PaperSource source) => source.Houses.Count == 0
        ? "none used"
        : string.Join("; ", source.Houses.Select(h => (h.Year.Synthetic ? "synthetic, not measured: " : "") + h.Year.Weather).Distinct());

    private static string Escape(string text) => text
        .Replace("&", "&amp;", StringComparison.Ordinal)
        .Replace("<", "&lt;", StringComparison.Ordinal)
        .Replace(">", "&gt;", StringComparison.Ordinal)
        .Replace("\"", "&quot;", StringComparison.Ordinal);
}
