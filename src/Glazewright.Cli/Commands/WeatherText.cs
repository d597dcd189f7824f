using System.Globalization;
using System.Text;
using Glazewright.Design.Document;
using Glazewright.Science.Weather;

namespace Glazewright.Cli.Commands;

/// <summary>A weather year as a page of text and as JSON.</summary>
internal static class WeatherText
{
    private static readonly string[] s_months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

    public static string Page(WeatherYear year, WeatherReport report)
    {
        WeatherStation s = year.Station;
        RadiationClosure c = report.Closure;
        ComputedConditions d = report.Computed;
        StringBuilder page = new();
        Line(page, $"{s.Name}   {Math.Abs(s.LatitudeDeg):0.00}° {(s.LatitudeDeg < 0 ? 'S' : 'N')}  {Math.Abs(s.LongitudeDeg):0.00}° {(s.LongitudeDeg < 0 ? 'W' : 'E')}  {s.ElevationM:0} m  UTC{s.ZoneH:+0.##;-0.##;+0}");
        Line(page, $"{year.Provenance.Label}");
        Line(page, $"sha256 {year.Provenance.ContentSha256}");
        Line(page, $"");
        Line(page, $"Completeness   8760 hours; {Completeness(year)}");
        Line(page, $"Radiation      {Closes(c)}");
        Line(page, $"Cold           99.6 % {d.Heating996DryBulbC:0.0} °C, lowest {d.LowestDryBulbC:0.0} °C  ({ComputedConditions.Label})");
        Line(page, $"Hot            0.4 % {d.Cooling04DryBulbC:0.0} °C with wet bulb {d.Cooling04WetBulbC:0.0} °C, highest {d.HighestDryBulbC:0.0} °C; 0.4 % wet bulb {d.Evaporation04WetBulbC:0.0} °C");
        if (year.Conditions is HeaderConditions.Printed { Values: DesignConditions h })
        {
            Line(page, $"Printed        99.6 % {h.Heating996DryBulbC:0.0} °C, 0.4 % {h.Cooling04DryBulbC:0.0} °C with wet bulb {h.Cooling04WetBulbC:0.0} °C  ({h.Edition})");
        }

        Line(page, $"Year           {report.Months.Sum(m => m.GhiWhm2Day * CommonYear.DaysIn(m.Month)) / 1000:0} kWh/m² global, {d.HeatingDegreeDays18:0} K·d below 18 °C");
        int known = CommonYear.Hours - year.RainFraction.MissingCount, wet = Wet(year);
        Line(page, $"Rain           {(known == 0 ? "not recorded" : known == CommonYear.Hours ? FormattableString.Invariant($"in {wet} hours") : FormattableString.Invariant($"in {wet} of the {known} hours that the file tells of"))}");
        Line(page, $"");
        Months(page, report.Months);
        if (report.Findings.Count > 0)
        {
            Line(page, $"");
            foreach (WeatherFinding finding in report.Findings)
            {
                Line(page, $"{(finding.Gravity == WeatherGravity.Warning ? "▲" : "·")} {finding.Text}");
            }
        }

        return page.ToString();
    }

    private static int Wet(WeatherYear year)
    {
        int wet = 0;
        foreach (double rain in year.RainFraction.Span)
        {
            wet += rain > 0 ? 1 : 0;
        }

        return wet;
    }

    public static string Json(WeatherYear year, WeatherReport report)
    {
        WeatherStation s = year.Station;
        RadiationClosure c = report.Closure;
        ComputedConditions d = report.Computed;
        StringBuilder json = new();
        Line(json, $"{{");
        Line(json, $"  \"station\": {JsonText.Quote(s.Name)}, \"latitudeDeg\": {s.LatitudeDeg}, \"longitudeDeg\": {s.LongitudeDeg}, \"elevationM\": {s.ElevationM}, \"zoneHours\": {s.ZoneH},");
        Line(json, $"  \"label\": {JsonText.Quote(year.Provenance.Label)}, \"sha256\": \"{year.Provenance.ContentSha256}\",");
        Line(json, $"  \"hours\": 8760, \"valuesMadeUp\": {year.Gaps.Sum(g => g.Hours)}, \"rainKnownH\": {CommonYear.Hours - year.RainFraction.MissingCount}, \"rainH\": {Wet(year)},");
        json.Append("  \"rejected\": [").AppendJoin(", ", year.Rejected.Select(r => FormattableString.Invariant($"{{ \"field\": {JsonText.Quote(r.Field)}, \"hours\": {r.Hours}, \"firstHour\": {r.FirstHour}, \"firstLine\": {r.FirstLine}, \"firstValue\": {r.FirstValue}, \"least\": {r.LeastValue}, \"most\": {r.MostValue}, \"unit\": {JsonText.Quote(r.Unit)}, \"how\": {JsonText.Quote(r.How)} }}"))).Append("],\n");
        json.Append("  \"gaps\": [").AppendJoin(", ", year.Gaps.Select(g => FormattableString.Invariant($"{{ \"field\": {JsonText.Quote(g.Field)}, \"hours\": {g.Hours}, \"firstHour\": {g.FirstHour}, \"firstLine\": {g.FirstLine}, \"how\": {JsonText.Quote(g.How)} }}"))).Append("],\n");
        Line(json, $"  \"closure\": {{ \"verdict\": \"{c.Verdict}\", \"rmsWm2\": {c.StatedRmsWm2:0.###}, \"offsetH\": {c.StatedOffsetH}, \"bestOffsetH\": {c.BestOffsetH:0.####}, \"bestRmsWm2\": {c.BestRmsWm2:0.###} }},");
        Line(json, $"  \"computed\": {{ \"label\": {JsonText.Quote(ComputedConditions.Label)}, \"heating996C\": {d.Heating996DryBulbC:0.##}, \"lowestC\": {d.LowestDryBulbC:0.##}, \"cooling04C\": {d.Cooling04DryBulbC:0.##}, \"coincidentWetBulbC\": {d.Cooling04WetBulbC:0.##}, \"evaporation04C\": {d.Evaporation04WetBulbC:0.##}, \"highestC\": {d.HighestDryBulbC:0.##} }},");
        Line(json, $"  \"months\": [");
        for (int i = 0; i < report.Months.Count; i++)
        {
            MonthStatistics m = report.Months[i];
            Line(json, $"    {{ \"month\": {m.Month}, \"meanC\": {m.MeanC:0.##}, \"lowestC\": {m.LowestC:0.##}, \"highestC\": {m.HighestC:0.##}, \"dewPointC\": {m.MeanDewPointC:0.##}, \"globalWhPerM2Day\": {m.GhiWhm2Day:0}, \"windMs\": {m.MeanWindMs:0.##} }}{(i < 11 ? "," : "")}");
        }

        Line(json, $"  ],");
        json.Append("  \"findings\": [").AppendJoin(", ", report.Findings.Select(f => $"{{ \"gravity\": \"{f.Gravity}\", \"text\": {JsonText.Quote(f.Text)} }}")).Append("]\n}\n");
        return json.ToString();
    }

    public static string Json(IReadOnlyList<WeatherProblem> problems) =>
        "{\n  \"faults\": [\n" + string.Join(",\n", problems.Select(p => FormattableString.Invariant($"    {{ \"kind\": \"{p.Kind}\", \"pointer\": \"\", \"id\": \"\", \"line\": {p.Line}, \"column\": 0, \"field\": {p.Column}, \"wrong\": {JsonText.Quote(p.What)}, \"right\": {JsonText.Quote(p.Right)} }}"))) + "\n  ]\n}\n";

    private static string Completeness(WeatherYear year)
    {
        int made = year.Gaps.Sum(g => g.Hours);
        int rejected = year.Rejected.Sum(r => r.Hours);
        string filled = made == 0 ? "nothing made up" : FormattableString.Invariant($"{made} {(made == 1 ? "value" : "values")} made up in {year.Gaps.Count} {(year.Gaps.Count == 1 ? "field" : "fields")}");
        return rejected == 0 ? filled : FormattableString.Invariant($"{filled}; {rejected} impossible {(rejected == 1 ? "value" : "values")} taken out");
    }

    private static string Closes(RadiationClosure c) => c.Verdict switch
    {
        ClosureVerdict.Closes => FormattableString.Invariant($"closes to {c.StatedRmsWm2:0.0} W/m² (global against direct and diffuse, {c.HoursUsed} hours)"),
        ClosureVerdict.ClosesElsewhere => FormattableString.Invariant($"closes {c.BestOffsetH:+0.00;-0.00} h from the stamp, not where it should: time zone or stamps are wrong"),
        ClosureVerdict.TooLittleSun => "too little sun to check",
        _ => FormattableString.Invariant($"does not close: {c.StatedRmsWm2:0} W/m²"),
    };

    // Temperature from lowest to highest hour with the mean as a dot; sun as a bar.
    private static void Months(StringBuilder page, IReadOnlyList<MonthStatistics> months)
    {
        const int Cells = 41;
        double low = Math.Floor(months.Min(m => m.LowestC) / 5) * 5;
        double high = Math.Ceiling(months.Max(m => m.HighestC) / 5) * 5;
        double mostSun = Math.Max(1, months.Max(m => m.GhiWhm2Day));
        int Cell(double celsius) => (int)Math.Round((celsius - low) / (high - low) * (Cells - 1));
        Line(page, $"      {low,4:0} °C{"",Cells - 12}{high,4:0} °C   mean   low  high  dew  global kWh/m²d             wind");
        foreach (MonthStatistics m in months)
        {
            char[] row = [.. Enumerable.Repeat(' ', Cells)];
            for (int i = Cell(m.LowestC); i <= Cell(m.HighestC); i++)
            {
                row[i] = i >= Cell(m.MeanDailyMinC) && i <= Cell(m.MeanDailyMaxC) ? '━' : '─';
            }

            row[Cell(m.MeanC)] = '●';
            int sun = (int)Math.Round(m.GhiWhm2Day / mostSun * 20);
            Line(page, $"{s_months[m.Month - 1]}   {new string(row)}  {m.MeanC,5:0.0} {m.LowestC,5:0} {m.HighestC,5:0} {m.MeanDewPointC,4:0}  {m.GhiWhm2Day / 1000,4:0.00} {new string('█', sun),-20}  {m.MeanWindMs,4:0.0} m/s");
        }
    }

    private static void Line(StringBuilder text, FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
}
