namespace Glazewright.Papers.Reports;

/// <summary>Sizes of a report's lettering and spacing, mm (heights are of capitals).</summary>
internal static class ReportType
{
    public const double MarginMm = 19;
    public const double FootMm = 14;
    public const double BodyMm = 2.5;
    public const double BodyLineMm = 5.2;
    public const double LeadMm = 3.2;
    public const double LeadLineMm = 6.6;
    public const double BigMm = 5.6;

    public static double HeadingMm(int level) => level switch { 1 => 4.6, 2 => 3.5, _ => 2.8 };

    public static double HeadingLineMm(int level) => level switch { 1 => 8.4, 2 => 6.6, _ => 5.6 };
}
