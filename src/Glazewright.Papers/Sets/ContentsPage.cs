using System.Globalization;
using System.Text;

namespace Glazewright.Papers.Sets;

/// <summary>The package's first page: what is in it, for whom, and the cautions.</summary>
internal static class ContentsPage
{
    private static readonly (PaperReader Reader, string Head)[] Order =
    [
        (PaperReader.Grower, "For the grower"),
        (PaperReader.Everyone, "Drawings"),
        (PaperReader.Reviewer, "For the plan reviewer and the engineer"),
        (PaperReader.Shop, "For shop and crew"),
        (PaperReader.Controls, "For the controls technician"),
        (PaperReader.Trades, "For other trades"),
        (PaperReader.Contractor, "The contractor's own, not to be passed on"),
    ];

    public static byte[] Bytes(string job, string date, string weather, IReadOnlyList<PaperFile> files)
    {
        StringBuilder html = new();
        html.Append("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
        html.Append(CultureInfo.InvariantCulture, $"<title>{Escape(job)}: contents</title>\n");
        html.Append("<meta name=\"viewport\" content=\"width=device-width\">\n<meta name=\"color-scheme\" content=\"light dark\">\n<style>\n");
        html.Append("body{font:16px/1.5 system-ui,sans-serif;max-width:44rem;margin:2rem auto;padding:0 1rem;background:#FAF7F0;color:#1C262B}\n");
        html.Append("a{color:#0B5A7A}h1{font-size:1.75rem}h2{font-size:1.19rem;margin-top:1.5rem}p.caution{border-left:4px solid #874E00;padding:.5rem 1rem;background:#F0ECE1}\n");
        html.Append("@media (prefers-color-scheme:dark){body{background:#12181C;color:#EBE7DC}a{color:#7CC4E0}p.caution{background:#222C32;border-color:#D6BD5C}}\n");
        html.Append("</style>\n</head>\n<body>\n");
        html.Append(CultureInfo.InvariantCulture, $"<h1>{Escape(job)}</h1>\n<p>{Escape(date)}</p>\n<p>Weather: {Escape(weather)}</p>\n");
        html.Append("<p class=\"caution\">Predicted under the conditions of the job, not a warranty. A typical weather year leaves the extremes out. ");
        html.Append("Structural results are preliminary, for review and sealing by a licensed engineer under the code adopted locally.</p>\n");
        foreach ((PaperReader reader, string head) in Order)
        {
            PaperFile[] own = [.. files.Where(f => f.Reader == reader)];
            if (own.Length == 0)
            {
                continue;
            }

            html.Append(CultureInfo.InvariantCulture, $"<h2>{Escape(head)}</h2>\n<ul>\n");
            foreach (PaperFile file in own)
            {
                string href = string.Join('/', file.Path.Split('/').Select(Uri.EscapeDataString));
                html.Append(CultureInfo.InvariantCulture, $"<li><a href=\"{href}\">{Escape(file.Title)}</a> ({Escape(file.Path)})</li>\n");
            }

            html.Append("</ul>\n");
        }

        html.Append("</body>\n</html>\n");
        return new UTF8Encoding(false).GetBytes(html.ToString());
    }

    private static string Escape(string text) => text
        .Replace("&", "&amp;", StringComparison.Ordinal)
        .Replace("<", "&lt;", StringComparison.Ordinal)
        .Replace(">", "&gt;", StringComparison.Ordinal)
        .Replace("\"", "&quot;", StringComparison.Ordinal);
}
