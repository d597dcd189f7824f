using Glazewright.Design.Contracts;

namespace Glazewright.Design.Calibration;

/// <summary>A value for every size, fitted or not.</summary>
internal readonly struct SizeValues
{
    private readonly double[] values;

    private SizeValues(double[] values) => this.values = values;

    public double this[FittedSize size] => values[(int)size];

    /// <summary>The stated sizes, with some replaced.</summary>
    public static SizeValues Of(ReplayHouse house, bool plain, EqList<FittedSize> sizes, ReadOnlySpan<double> fitted)
    {
        double[] all = [.. SizeRange.All.Select(s => s.StartValue)];
        if (!plain)
        {
            all[(int)FittedSize.Mass] = house.Parameters.MassJPerK / house.Parameters.FloorAreaM2 / 1000;
            all[(int)FittedSize.WetFloor] = house.Parameters.WetFloorFraction;
            all[(int)FittedSize.Stomata] = house.Parameters.LeastStomatalResistanceSPerM;
        }

        for (int i = 0; i < sizes.Count; i++)
        {
            all[(int)sizes[i]] = fitted[i];
        }

        return new SizeValues(all);
    }
}
