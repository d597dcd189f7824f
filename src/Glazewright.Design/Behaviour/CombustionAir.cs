using Glazewright.Design.Form;
using Glazewright.Design.Plant;

namespace Glazewright.Design.Behaviour;

/// <summary>Air that heaters with an open flue would take from the house: the US fuel gas code's room test and openings (IFGC 304.5 and 304.6, from memory).</summary>
/// <param name="InputW">Fuel input of the open-flue heaters, W.</param>
/// <param name="RoomNeededM3">Room the standard method asks: 50 ft³ for each 1,000 Btu/h, m³.</param>
/// <param name="RoomM3">The house, m³.</param>
/// <param name="OutdoorM2">Each of two openings straight to the outdoors or through upright ducts: 1 in² for each 4,000 Btu/h free, m².</param>
/// <param name="LevelDuctM2">Each of two openings through level ducts: 1 in² for each 2,000 Btu/h free, m².</param>
/// <param name="IndoorM2">Each of two openings to another room: 1 in² for each 1,000 Btu/h, at least 100 in², m².</param>
public sealed record CombustionAir(double InputW, double RoomNeededM3, double RoomM3, double OutdoorM2, double LevelDuctM2, double IndoorM2)
{
    private const double KiloBtuPerHourW = 293.0711;
    private const double SquareInchM2 = 0.0254 * 0.0254;
    private const double CubicFootM3 = 0.028316847;

    /// <summary>The house holds the room the standard method asks; a tight or mechanically exhausted house needs outdoor air all the same.</summary>
    public bool RoomEnough => RoomM3 >= RoomNeededM3;

    /// <summary>By input and room.</summary>
    /// <param name="inputW">Fuel input, W, from 0.</param>
    /// <param name="roomM3">Volume, m³.</param>
    /// <returns>What the code asks.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative or NaN.</exception>
    public static CombustionAir For(double inputW, double roomM3)
    {
        Science.Guards.Within.Require(inputW, 0, 1e8);
        Science.Guards.Within.Require(roomM3, 0, 1e8);
        double kilo = inputW / KiloBtuPerHourW;
        return new CombustionAir(
            inputW, 50 * kilo * CubicFootM3, roomM3, kilo / 4 * SquareInchM2, kilo / 2 * SquareInchM2, Math.Max(kilo, 100) * SquareInchM2);
    }

    internal static CombustionAir? Of(BuildingForm form, PlantResult plant)
    {
        double inputW = plant.Heat?.Choice.Heaters.Where(h => !h.Electric && !h.SealedCombustion).Sum(h => h.OutputW / h.EfficiencyFraction) ?? 0;
        return inputW > 0 ? For(inputW, form.VolumeM3) : null;
    }
}
