using Glazewright.Design.Document;
using Glazewright.Design.Quantities;

namespace Glazewright.Design.Calibration.Reading;

/// <summary>Fields of a house that is told by its sizes.</summary>
internal static class PlainHouseFields
{
    public static PlainHouse Read(FieldReader f) => new(
        f.Quantity("floor", QuantityKind.Area, "5 m2", "200000 m2", null, "Floor area."),
        f.LengthM("heightBelow", "1 m", "15 m", "3 m", "Mean height of the air below the curtain's level."),
        f.LengthM("heightAbove", "0.1 m", "10 m", "1 m", "Mean height of the air above it."),
        f.Ratio("roofShare", "0.3", "3", "1.1", "Clear roof area over floor area."),
        f.Ratio("wallShare", "0", "4", "0.3", "Clear wall area that meets the outside, over floor area."),
        f.Quantity("coverU", QuantityKind.Transmittance, "0.8 W/m2K", "7 W/m2K", "5.8 W/m2K", "U of the covering at the centre of a sheet, standard films."),
        1000 * f.Ratio("coverCapacity", "0.1", "40", "8.4", "Heat capacity of the covering, kJ/m²K: glass of 4 mm 8.4, film 0.4."),
        f.Fraction("sun", "5 %", "95 %", "55 %", "Share of the outside sun that reaches crop and floor, screens open."),
        f.LengthM("curtainTravel", "0.5 m", "60 m", "4 m", "Distance over which the curtain's gap opens."),
        f.Group("curtain", "The curtain.", c => Curtain(c, "75 %", "0.5")),
        f.Group("secondCurtain", "A second curtain.", c => Curtain(c, "2 %", "0.5")),
        f.Fraction("roofVents", "0 %", "60 %", "3 %", "Roof vents' largest effective opening over floor area."),
        f.Fraction("sideVents", "0 %", "60 %", "0 %", "Side vents' largest opening over floor area."),
        f.LengthM("ventHeight", "0.1 m", "5 m", "0.8 m", "Height of one roof opening."),
        f.Quantity("leaks", QuantityKind.AirChanges, "0.02 ACH", "10 ACH", "0.7 ACH", "Air changes by leakage at a wind of 4 m/s."),
        f.Ratio("edgeLoss", "0", "3", "0.7", "Loss at the floor's edge, W/mK."),
        f.TemperatureC("deepGround", "-5 C", "35 C", "15 C", "Ground at a depth of 1.6 m."),
        f.Ratio("windShare", "0.2", "1.5", "0.7", "Wind at the house over wind at the mast."),
        f.Ratio("leafAreaFirst", "0", "8", "2", "Leaf area over floor area on the first day of the log."),
        f.Ratio("leafAreaGrown", "0", "8", "2", "Leaf area over floor area when grown."),
        f.Whole("leafDays", 1, 1000, 1, "Days from the first to the grown."),
        f.Quantity("lamps", QuantityKind.PowerDensity, "0 W/m2", "600 W/m2", "0 W/m2", "Electric power of the lamps on the floor area."),
        f.Quantity("heaters", QuantityKind.PowerDensity, "0 W/m2", "1500 W/m2", "0 W/m2", "Heat of all heaters on the floor area."),
        f.Quantity("railPipe", QuantityKind.Transmittance, "0 W/m2K", "20 W/m2K", "2.1 W/m2K", "Heat of the lower pipes for each K above the air."),
        f.Quantity("growPipe", QuantityKind.Transmittance, "0 W/m2K", "20 W/m2K", "0.6 W/m2K", "Heat of the upper pipes for each K above the air."),
        f.Ratio("fans", "0", "200", "0", "Air changes an hour with all exhaust fans."),
        f.Fraction("pad", "0 %", "95 %", "0 %", "Effectiveness of the wet wall at full flow."),
        f.Ratio("fog", "0", "3", "0", "Full spray of fog on the floor area, kg/m²h."),
        f.AngleDeg("latitude", "-90 deg", "90 deg", "50 deg", "Latitude, north positive; used where light is not logged."),
        f.AngleDeg("longitude", "-180 deg", "180 deg", "0 deg", "Longitude, east positive."),
        f.LengthM("elevation", "-450 m", "5000 m", "0 m", "Height above the sea."),
        f.Fraction("clearness", "10 %", "80 %", "50 %", "Light outside over that above the atmosphere, where no light is logged."));

    private static PlainCurtain Curtain(FieldReader f, string sun, string emissivity) => new(
        f.Fraction("sun", "0 %", "100 %", sun, "Sun that passes when it is closed."),
        f.Ratio("emissivity", "0.03", "1", emissivity, "Emissivity of both faces."),
        f.Ratio("longWave", "0", "0.9", "0.1", "Long wave that passes."),
        1e-3 * f.Ratio("permeability", "0.01", "5", "0.1", "Air through the closed cloth, mm/s at 1 K."));
}
