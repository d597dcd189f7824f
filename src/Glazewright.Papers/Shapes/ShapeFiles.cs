using System.Globalization;
using System.Text;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Shape;
using Glazewright.Papers.Exchange;
using Glazewright.Papers.Svg;

namespace Glazewright.Papers.Shapes;

/// <summary>A file of the shape finder.</summary>
/// <param name="Path">Name.</param>
/// <param name="Bytes">Content.</param>
public sealed record ShapeFile(string Path, ReadOnlyMemory<byte> Bytes);

/// <summary>What the shape finder writes: the trade-off as a table and a picture, two sections, and all of it as data.</summary>
public static class ShapeFiles
{
    private static readonly UTF8Encoding s_utf8 = new(false);

    /// <summary>The files of one house.</summary>
    /// <param name="input">What the finder read of the job.</param>
    /// <param name="result">What it found.</param>
    /// <returns>Files in a fixed order.</returns>
    public static IReadOnlyList<ShapeFile> Of(ShapeInput input, ShapeResult result)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(result);
        string h = result.House;
        return
        [
            new($"shape-{h}-trade-off.csv", s_utf8.GetBytes(Csv(result))),
            new($"shape-{h}-trade-off.svg", SvgWriter.Bytes(TradeOffPlot.Draw(result, input.Units, 180, 110))),
            new($"shape-{h}-section-chosen.svg", SvgWriter.Bytes(ShapeSection.Draw($"shape-section-chosen-{h}", $"House {h}, chosen shape", result.Best.Score.Shape, input, 200, 128))),
            new($"shape-{h}-section-drawn.svg", SvgWriter.Bytes(ShapeSection.Draw($"shape-section-drawn-{h}", $"House {h}, as drawn", result.Drawn.Score.Shape, input, 200, 128))),
            new($"shape-{h}.json", s_utf8.GetBytes(Json(result))),
        ];
    }

    /// <summary>The trade-off as a table, SI: the drawn shape, those the full map looked at, the front.</summary>
    /// <param name="result">What the finder found.</param>
    /// <returns>CSV.</returns>
    public static string Csv(ShapeResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        string winter = ShapeWords.Month(result.WinterMonth).ToLowerInvariant();
        string summer = ShapeWords.Month(result.SummerMonth).ToLowerInvariant();
        CsvText table = new(
            "shape", "bearing_deg", "left_eave_m", "right_eave_m", "ridge_offset_m", "ridge_m", "left_pitch", "right_pitch", "clear",
            winter + "_mol_m2d", winter + "_evenness", summer + "_mol_m2d", "glazing_m2", "cover_w_k", "noon_reach_m", "wishes_missed",
            summer + "_shade_h", winter + "_full_map_mol_m2d", summer + "_full_map_mol_m2d");
        Row("drawn", result.Drawn.Score, result.Drawn);
        for (int i = 0; i < result.Checked.Count; i++)
        {
            Row(i == 0 ? "chosen" : "again", result.Checked[i].Score, result.Checked[i]);
        }

        HashSet<ShapeCandidate> again = [.. result.Checked.Select(c => c.Score.Shape)];
        foreach (ShapeScore s in result.Front.Where(s => !again.Contains(s.Shape)))
        {
            Row("front", s, null);
        }

        return table.ToString();

        void Row(string name, ShapeScore s, ShapeCheck? check)
        {
            table.Cell(name).Cell(s.Shape.RangeBearingDeg, 1).Cell(s.Shape.Roof.LeftEaveM, 4).Cell(s.Shape.Roof.RightEaveM, 4).Cell(s.Shape.Roof.RidgeOffsetM, 4)
                .Cell(s.Shape.Section.RidgeM, 4).Cell(s.Shape.Roof.LeftPitch, 4).Cell(s.Shape.Roof.RightPitch, 4).Cell(ShapeWords.Clear(s.Shape))
                .Cell(s.WinterMolPerM2Day, 3).Cell(s.WinterEvennessRatio, 3).Cell(s.SummerMolPerM2Day, 3).Cell(s.GlazingM2, 1).Cell(s.CoverWPerK, 1)
                .Cell(s.NoonReachM, 3).Cell(MissedWords(s.Missed));
            if (check is null)
            {
                table.Cell("");
            }
            else
            {
                table.Cell(check.SummerShadeHours, 2);
            }

            if (check?.Full is ShapeFullLight full)
            {
                table.Cell(full.MonthMolPerM2Day[result.WinterMonth], 3).Cell(full.MonthMolPerM2Day[result.SummerMonth], 3);
            }
            else
            {
                table.Cell("").Cell("");
            }

            table.End();
        }
    }

    /// <summary>All of it as data, SI.</summary>
    /// <param name="result">What the finder found.</param>
    /// <returns>JSON.</returns>
    public static string Json(ShapeResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        StringBuilder json = new();
        json.Append("{\n  \"house\": ").Append(JsonText.Quote(result.House));
        Text("winterMonth", ShapeWords.Month(result.WinterMonth));
        Text("summerMonth", ShapeWords.Month(result.SummerMonth));
        Number("outsideWinterMolPerM2Day", result.OutsideWinterMolPerM2Day);
        Number("outsideSummerMolPerM2Day", result.OutsideSummerMolPerM2Day);
        json.Append(CultureInfo.InvariantCulture, $",\n  \"looked\": {result.Looked},\n  \"meetingEveryWish\": {result.Meeting}");
        json.Append(",\n  \"drawn\": ").Append(Check(result.Drawn)).Append(",\n  \"chosen\": ").Append(Check(result.Best));
        json.Append(",\n  \"again\": [\n    ").AppendJoin(",\n    ", result.Checked.Select(Check)).Append("\n  ]");
        json.Append(",\n  \"rankAgreement\": { \"winter\": ").Append(Agreement(result.Winter)).Append(", \"summer\": ").Append(Agreement(result.Summer)).Append(" }");
        json.Append(",\n  \"wishes\": [").AppendJoin(",", result.Wishes.Select(w => string.Create(
            CultureInfo.InvariantCulture,
            $"\n    {{ \"wish\": \"{w.Wish}\", \"asked\": {JsonText.Quote(w.Asked)}, \"met\": {(w.IsMet ? "true" : "false")}, \"got\": {JsonText.Quote(w.Got)}, \"shapesThatMeetIt\": {w.MetAlone}, \"shapesThatMeetTheRest\": {w.MetByRest}, \"wouldTake\": {JsonText.Quote(w.WouldTake)} }}")))
            .Append(result.Wishes.Count == 0 ? "]" : "\n  ]");
        json.Append(",\n  \"findings\": [").AppendJoin(",", result.Report.Findings.Select(f =>
            $"\n    {{ \"code\": {JsonText.Quote(f.Code)}, \"severity\": \"{f.Severity}\", \"part\": {JsonText.Quote(f.Id)}, \"what\": {JsonText.Quote(f.What)}, \"mend\": {JsonText.Quote(f.Mend)} }}"))
            .Append(result.Report.Findings.Count == 0 ? "]" : "\n  ]");
        json.Append(",\n  \"leftOut\": [\n    ").AppendJoin(",\n    ", result.Report.LeftOut.Select(JsonText.Quote)).Append("\n  ]");
        json.Append(",\n  \"front\": [\n    ").AppendJoin(",\n    ", result.Front.Select(s => "{ " + Score(s) + " }")).Append("\n  ]\n}\n");
        return json.ToString();

        void Text(string key, string value) => json.Append(",\n  ").Append(JsonText.Quote(key)).Append(": ").Append(JsonText.Quote(value));

        void Number(string key, double value) => json.Append(",\n  ").Append(JsonText.Quote(key)).Append(": ").Append(Of(value));
    }

    private static string Check(ShapeCheck c)
    {
        string full = c.Full is null
            ? "null"
            : $"{{ \"monthMolPerM2Day\": [{string.Join(", ", c.Full.MonthMolPerM2Day.Select(Of))}], \"monthEvennessRatio\": [{string.Join(", ", c.Full.MonthEvennessRatio.Select(Of))}] }}";
        return $"{{ {Score(c.Score)}, \"summerShadeHours\": {Of(c.SummerShadeHours)}, \"fullMap\": {full} }}";
    }

    private static string Score(ShapeScore s) =>
        $"\"rangeBearingDeg\": {Of(s.Shape.RangeBearingDeg)}, \"leftEaveM\": {Of(s.Shape.Roof.LeftEaveM)}, \"rightEaveM\": {Of(s.Shape.Roof.RightEaveM)}, \"ridgeOffsetM\": {Of(s.Shape.Roof.RidgeOffsetM)}, "
        + $"\"ridgeM\": {Of(s.Shape.Section.RidgeM)}, \"leftPitch\": {Of(s.Shape.Roof.LeftPitch)}, \"rightPitch\": {Of(s.Shape.Roof.RightPitch)}, \"clear\": {JsonText.Quote(ShapeWords.Clear(s.Shape))}, "
        + $"\"winterMolPerM2Day\": {Of(s.WinterMolPerM2Day)}, \"winterEvennessRatio\": {Of(s.WinterEvennessRatio)}, \"summerMolPerM2Day\": {Of(s.SummerMolPerM2Day)}, \"glazingM2\": {Of(s.GlazingM2)}, "
        + $"\"coverWPerK\": {Of(s.CoverWPerK)}, \"noonReachM\": {Of(s.NoonReachM)}, \"wishesMissed\": {JsonText.Quote(MissedWords(s.Missed))}";

    private static string Agreement(Glazewright.Science.Shape.RankAgreement? a) =>
        a is null ? "null" : string.Create(CultureInfo.InvariantCulture, $"{{ \"kendallTau\": {Of(a.KendallTauRatio)}, \"spearmanRho\": {Of(a.SpearmanRhoRatio)}, \"shapes\": {a.Count} }}");

    private static string MissedWords(ShapeWish missed) => missed == ShapeWish.None ? "" : missed.ToString();

    private static string Of(double value) => (Math.Round(value, 4) + 0.0).ToString("0.####", CultureInfo.InvariantCulture);
}
