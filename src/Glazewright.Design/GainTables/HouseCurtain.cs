using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Science.Light;

namespace Glazewright.Design.GainTables;

/// <summary>What a house's curtain does to sunlight when it is drawn; two cloths are counted in series.</summary>
/// <param name="HeightM">Above the floor, m.</param>
/// <param name="TransmittanceFraction">Sun through the cloth.</param>
/// <param name="ReflectanceFraction">Sun turned back by it.</param>
/// <param name="OpennessFraction">Open share of the weave: passes unscattered.</param>
/// <param name="ReflectanceBelowFraction">Sun turned back downward, where it is another.</param>
public sealed record HouseCurtain(double HeightM, double TransmittanceFraction, double ReflectanceFraction, double OpennessFraction, double? ReflectanceBelowFraction = null)
{
    /// <summary>Curtain under the lower eave when the job gives no height, m.</summary>
    /// <summary>Projects the job.</summary>
    /// <param name="house">The house.</param>
    /// <param name="catalogue">For the cloth.</param>
    /// <returns>The curtain; null when the house has none.</returns>
    public static HouseCurtain? From(House house, Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(house);
        ArgumentNullException.ThrowIfNull(catalogue);
        EquipmentChoice equipment = house.Equipment;
        CurtainEntry? cloth = equipment.Curtains == 0
            ? null
            : catalogue.Curtains.FirstOrDefault(c => c.Id == equipment.CurtainEntry) ?? catalogue.Curtains.FirstOrDefault();
        if (cloth is null)
        {
            return null;
        }

        double transmittance = cloth.SolarTransmittanceFraction;
        double reflectance = cloth.SolarReflectanceFraction;
        double openness = cloth.OpennessFraction;
        if (equipment.Layers > 1)
        {
            double between = 1 - reflectance * reflectance;
            reflectance += transmittance * transmittance * reflectance / between;
            transmittance = transmittance * transmittance / between;
            openness *= openness;
        }

        double heightM = HeightOf(house);
        return heightM > 0 ? new HouseCurtain(heightM, transmittance, reflectance, Math.Min(openness, transmittance)) : null;
    }

    private static double HeightOf(House house) => house.Equipment.CurtainM(Math.Min(house.Roof.LeftEaveM, house.Roof.RightEaveM));

    /// <summary>The second curtain, where it moves by itself.</summary>
    /// <param name="house">The house.</param>
    /// <returns>Null where there is none.</returns>
    public static HouseCurtain? SecondOf(House house)
    {
        ArgumentNullException.ThrowIfNull(house);
        return house.Equipment.SecondCurtain is { } c && HeightOf(house) - c.BelowM > 0
            ? new HouseCurtain(HeightOf(house) - c.BelowM, c.SolarTransmittanceFraction, c.SolarReflectanceFraction, Math.Min(c.OpennessFraction, c.SolarTransmittanceFraction))
            : null;
    }

    /// <summary>Two drawn cloths as one at the upper's height: light goes to and fro between them.</summary>
    /// <param name="upper">Upper cloth.</param>
    /// <param name="lower">Lower cloth.</param>
    /// <returns>The pair.</returns>
    public static HouseCurtain Over(HouseCurtain upper, HouseCurtain lower)
    {
        ArgumentNullException.ThrowIfNull(upper);
        ArgumentNullException.ThrowIfNull(lower);
        double between = Math.Max(1 - upper.ReflectanceFraction * lower.ReflectanceFraction, 1e-6);
        double transmittance = upper.TransmittanceFraction * lower.TransmittanceFraction / between;
        return new HouseCurtain(
            upper.HeightM,
            transmittance,
            upper.ReflectanceFraction + upper.TransmittanceFraction * upper.TransmittanceFraction * lower.ReflectanceFraction / between,
            Math.Min(upper.OpennessFraction * lower.OpennessFraction, transmittance),
            lower.ReflectanceFraction + lower.TransmittanceFraction * lower.TransmittanceFraction * upper.ReflectanceFraction / between);
    }

    /// <summary>The drawn cloth in a house.</summary>
    /// <param name="house">Its form.</param>
    /// <returns>Null when the curtain would hang above the ridge.</returns>
    public CurtainPlane? In(BuildingForm house)
    {
        ArgumentNullException.ThrowIfNull(house);
        return HeightM < house.Roof.RidgeM
            ? new CurtainPlane(
                HeightM, TransmittanceFraction, ReflectanceFraction, ReflectanceBelowFraction ?? ReflectanceFraction,
                TransmittanceFraction > 0 ? 1 - OpennessFraction / TransmittanceFraction : 1)
            : null;
    }
}
