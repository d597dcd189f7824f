namespace Glazewright.Science.Climate;

/// <content>A house set damp or dry.</content>
public sealed partial class HouseModel
{
    /// <summary>Sets both airs to a relative humidity and every film to a share of the water it can hold. Not a step: nothing is booked.</summary>
    /// <param name="state">The house; changed in place, temperatures stay.</param>
    /// <param name="relativeHumidityPercent">0 to 100.</param>
    /// <param name="filmShare">0 dry to 1: all a surface holds before it runs off.</param>
    /// <param name="pressurePa">Barometric pressure, Pa.</param>
    /// <exception cref="ArgumentOutOfRangeException">A share or humidity out of range.</exception>
    public void Dampen(HouseState state, double relativeHumidityPercent, double filmShare, double pressurePa)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentOutOfRangeException.ThrowIfLessThan(relativeHumidityPercent, 0.0);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(relativeHumidityPercent, 100.0);
        ArgumentOutOfRangeException.ThrowIfLessThan(filmShare, 0.0);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(filmShare, 1.0);
        double share = relativeHumidityPercent / 100.0;
        state.WaterBelow = Ratio(share * state.SaturationBelowPa);
        state.WaterAbove = Ratio(share * state.SaturationAbovePa);
        for (int s = 0; s < HouseNodes.SurfaceCount; s++)
        {
            state.Film[s] = filmShare * holdsKg[s];
        }

        double Ratio(double vapourPa) => 0.621945 * vapourPa / (pressurePa - vapourPa);
    }
}
