using Glazewright.Mechanics.Guards;

namespace Glazewright.Mechanics.Sections;

/// <summary>Bare metal thickness of the sheet gauges that tube is rolled of (manufacturers' standard gauge; from memory).</summary>
public static class SheetGauge
{
    /// <summary>16 gauge, m.</summary>
    public const double SixteenGaugeM = 0.0598 * UsUnits.MPerIn;

    /// <summary>14 gauge, m.</summary>
    public const double FourteenGaugeM = 0.0747 * UsUnits.MPerIn;

    /// <summary>12 gauge, m.</summary>
    public const double TwelveGaugeM = 0.1046 * UsUnits.MPerIn;
}
