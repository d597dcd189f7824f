using System.Text;
using Glazewright.Design.Calibration;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Exchange;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Svg;

namespace Glazewright.Papers.Calibration;

/// <summary>What a calibration writes: report, data, hours, pictures.</summary>
public static class CalibrationFiles
{
    private static readonly UTF8Encoding s_utf8 = new(false);

    /// <summary>The files.</summary>
    /// <param name="r">The calibration.</param>
    /// <param name="size">Paper of the report.</param>
    /// <returns>Name and content, in a fixed order.</returns>
    public static IReadOnlyList<(string Path, ReadOnlyMemory<byte> Bytes)> Of(CalibrationResult r, SheetSize size)
    {
        ArgumentNullException.ThrowIfNull(r);
        List<(string, ReadOnlyMemory<byte>)> files =
        [
            ("calibration.pdf", ReportSetting.Pdf(CalibrationReport.Of(r, size))),
            ("calibration.txt", s_utf8.GetBytes(CalibrationText.Of(r))),
            ("calibration.json", s_utf8.GetBytes(CalibrationJson.Of(r))),
            ("hours.csv", s_utf8.GetBytes(Hours(r))),
            ("scatter.svg", SvgWriter.Bytes(CalibrationPictures.Scatter(r))),
            ("by-hour.svg", SvgWriter.Bytes(CalibrationPictures.ByHour(r))),
        ];
        foreach ((string name, ScoreLine week) in CalibrationPictures.Chosen(r))
        {
            files.Add(($"week-{name}-air.svg", SvgWriter.Bytes(CalibrationPictures.Air(r, week, name))));
            files.Add(($"week-{name}-humidity.svg", SvgWriter.Bytes(CalibrationPictures.Humidity(r, week, name))));
        }

        return files;
    }

    /// <summary>Every hour, measured and computed.</summary>
    /// <param name="r">The calibration.</param>
    /// <returns>CSV, SI.</returns>
    public static string Hours(CalibrationResult r)
    {
        ArgumentNullException.ThrowIfNull(r);
        CsvText table = new("start", "week", "fitted_on", "measured_c", "computed_c", "measured_rh_percent", "computed_rh_percent", "outside_c", "sun_w_m2");
        foreach (LogHour h in r.Hours)
        {
            table.Cell(h.Start).Cell(h.Week).Cell(h.Trained ? "yes" : "no");
            Maybe(h.MeasuredC, 2);
            Maybe(h.ComputedC, 2);
            Maybe(h.MeasuredPercent, 1);
            Maybe(h.ComputedPercent, 1);
            Maybe(h.OutsideC, 2);
            Maybe(h.GlobalWm2, 0);
            table.End();
        }

        return table.ToString();

        void Maybe(double value, int decimals) => _ = double.IsNaN(value) ? table.Cell("") : table.Cell(value, decimals);
    }
}
