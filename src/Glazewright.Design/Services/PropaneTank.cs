using Glazewright.Science.Heat;

namespace Glazewright.Design.Services;

/// <summary>An estimate of the propane supplier's tanks: the supplier sizes and sets them.</summary>
/// <param name="WaterM3">Water capacity of one tank, m³.</param>
/// <param name="Count">How many.</param>
/// <param name="VaporisesW">What all of them vaporise at the coldest, a fifth full, W of gross heat.</param>
/// <param name="ColdestC">The coldest it is reckoned for, °C.</param>
/// <param name="SupplyDays">Days from filled to a fifth with all burners on half of the day.</param>
public sealed record PropaneTank(double WaterM3, int Count, double VaporisesW, double ColdestC, double SupplyDays)
{
    private const double GallonM3 = 0.003785411784;
    private const double InchM = 0.0254;

    /// <summary>Share of a tank between filled (80 %) and to be refilled (20 %).</summary>
    public const double UsableFraction = 0.6;

    /// <summary>Share of the coldest days that all burners are on.</summary>
    public const double OnFraction = 0.5;

    // Above-ground tanks of common sizes: water gallons, diameter and length, in (from memory).
    private static readonly (double Gallons, double DiameterIn, double LengthIn)[] Sizes = [(120, 24, 68), (250, 31.5, 94), (500, 37.5, 119), (1000, 41, 192)];

    /// <summary>
    /// What an above-ground tank vaporises a fifth full, W: 60 × diameter × length in inches gives Btu/h at 0 °F; in proportion to the degrees above −20 °F (rule of thumb of
    /// the trade's handbooks, from memory). Nothing at −20 °F and below.
    /// </summary>
    /// <param name="diameterM">Diameter, m.</param>
    /// <param name="lengthM">Length, m.</param>
    /// <param name="outsideC">Outside, °C.</param>
    public static double VaporisesOneW(double diameterM, double lengthM, double outsideC) =>
        60 * (diameterM / InchM) * (lengthM / InchM) * Math.Max((outsideC * 1.8 + 32 + 20) / 20, 0) * Fuel.BtuJ / 3600;

    /// <summary>The smallest single tank that vaporises a load, or as many of the largest as it takes.</summary>
    /// <param name="inputW">All burners on, W gross.</param>
    /// <param name="coldestC">Coldest outside, °C.</param>
    /// <returns>Null where a tank vaporises next to nothing, or eight do not serve: a vaporiser is the supplier's answer.</returns>
    public static PropaneTank? For(double inputW, double coldestC)
    {
        foreach ((double gallons, double diameterIn, double lengthIn) in Sizes)
        {
            double oneW = VaporisesOneW(diameterIn * InchM, lengthIn * InchM, coldestC);
            int count = gallons < Sizes[^1].Gallons ? 1 : (int)Math.Min(Math.Ceiling(inputW / Math.Max(oneW, 1) - 1e-9), 99);
            if (count <= 8 && count * oneW >= inputW - 1e-6)
            {
                double heatJ = count * gallons * UsableFraction * Fuel.HeatJPerUnit(FuelKind.PropaneGallon);
                return new PropaneTank(gallons * GallonM3, count, count * oneW, coldestC, heatJ / (OnFraction * inputW * 86_400));
            }
        }

        return null;
    }
}
