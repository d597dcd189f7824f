using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Quantities;

namespace Glazewright.Design.Brief.Reading;

/// <summary>Fields of the lot, its utilities, who enters, and the datum of dimensions.</summary>
internal static class LotFields
{
    public static Parties Parties(FieldReader f) => new(
        f.Words("contractor", "", "Who designs, builds and quotes, as on title block and quote.", "Hillside Glasshouse Works", 80),
        f.Words("customer", "", "Who it is built for, as on the quote.", "Two-Ridge Herbs", 80),
        f.Words("address", "", "Address of the job.", "12 Ridge Road", 120),
        f.Words("number", "", "Number of the job or quote.", "2027-014", 20));

    public static Datum Datum(FieldReader f) => new(
        f.Choice<PlanDatum>("plan", PlanDatum.OutToOutOfSteel, "What widths and lengths are measured to."),
        f.Choice<HeightDatum>("heights", HeightDatum.FinishedFloor, "What heights start from."),
        f.Choice<EaveDatum>("eave", EaveDatum.TopOfSteel, "What eave heights end at."));

    public static Lot Lot(FieldReader f) => new(
        f.LengthM("sizeX", "10 ft", "10000 ft", null, "Size along the ridges."),
        f.LengthM("sizeY", "10 ft", "10000 ft", null, "Size across the ridges."),
        f.LengthM("x", "-5000 ft", "5000 ft", "0 ft", "From the first house's corner (end 1, left) to the lot's corner on that side, along the ridges: negative where the lot begins before the house."),
        f.LengthM("y", "-5000 ft", "5000 ft", "0 ft", "The same across the ridges: negative where the lot begins left of the house."),
        f.LengthM("setbackEnd1", "0 ft", "500 ft", "0 ft", "Setback from the line before end 1."),
        f.LengthM("setbackEnd2", "0 ft", "500 ft", "0 ft", "Setback from the line behind end 2."),
        f.LengthM("setbackLeft", "0 ft", "500 ft", "0 ft", "Setback from the line on the left."),
        f.LengthM("setbackRight", "0 ft", "500 ft", "0 ft", "Setback from the line on the right, a truck lane included."),
        f.Fraction("fall", "0 %", "25 %", "0 %", "Slope of the ground."),
        f.LengthM("accessWidth", "0 ft", "200 ft", "0 ft", "Width that a truck or lift finds."),
        f.Words("notes", "", "Easements, flood, neighbours' windows.", "drains to the south-east corner"));

    public static Utilities Utilities(FieldReader f) => new(
        f.Choice<Phase>("phase", Phase.Single, "Electric service: single- or three-phase."),
        f.Quantity("voltage", QuantityKind.Voltage, "110 V", "690 V", "240 V", "Line voltage."),
        f.Quantity("service", QuantityKind.Current, "30 A", "4000 A", "200 A", "Service size."),
        f.LengthM("poleDistance", "0 ft", "5000 ft", "150 ft", "Distance to the pole."),
        f.Choice<FuelKind>("fuel", FuelKind.Propane, "Fuel at the lot."),
        f.PressurePa("fuelPressure", "0 inwg", "60 psi", "11 inwg", "Fuel pressure at the building."),
        f.Quantity("well", QuantityKind.WaterFlow, "0.5 gpm", "2000 gpm", "10 gpm", "Water that the well or main gives."),
        f.PressurePa("waterPressure", "5 psi", "200 psi", "45 psi", "Water pressure."),
        f.Quantity("hardness", QuantityKind.Concentration, "0 mg/L", "2000 mg/L", "200 mg/L", "Hardness as calcium carbonate."),
        f.Quantity("alkalinity", QuantityKind.Concentration, "0 mg/L", "2000 mg/L", "150 mg/L", "Alkalinity as calcium carbonate."),
        f.Words("drainTo", "not settled", "Where drain water may go.", "swale on the lot"))
    {
        Places = new UtilityPlaces(
            Spot(f, "powerAt", "at the main panel", "Where the power line reaches the range: meter or first disconnect."),
            Spot(f, "fuelAt", "at the outer wall of the building with the main panel", "Outlet of the regulator at tank or meter."),
            Spot(f, "waterAt", "at the outer wall of the building with the main panel", "Where the water line comes up."),
            Spot(f, "drainAt", "10 ft beyond the far ends of the houses", "Where the drains leave the range.")),
    };

    private static RangeSpot? Spot(FieldReader f, string key, string blank, string doc) => f.GroupOrBlank(key, blank, doc, s => new RangeSpot(
        s.LengthM("x", "-5000 ft", "5000 ft", null, "From the first house's corner (end 1, left), along the ridges."),
        s.LengthM("y", "-5000 ft", "5000 ft", null, "From that corner, across the ridges.")));

    public static Occupancy Occupancy(FieldReader f)
    {
        Visitors visitors = f.Choice<Visitors>("visitors", Visitors.StaffOnly, "Who enters: staff-only, customers or pupils.");
        bool derived = !f.IsGiven("riskCategory");
        int risk = derived ? 0 : f.Whole("riskCategory", 1, 4, 1, "Risk category.");
        if (derived)
        {
            // A minor agricultural building is Category I; where the public comes in it is not (ASCE 7 table 1.5-1, from memory).
            risk = visitors == Visitors.StaffOnly ? 1 : 2;
            f.Whole("riskCategory", 1, 4, risk, "Risk category; left out, 1 for staff only and 2 where customers or pupils come in.");
        }

        return new Occupancy(
            visitors,
            risk,
            f.SourceOf("riskCategory", "minor agricultural building when staff only; Category II when the public comes in"),
            f.Words("authority", "not named", "Authority having jurisdiction.", "county building department", 120),
            f.Words("buildingCode", "not named", "Adopted code and edition.", "IBC 2021", 120),
            f.Flag("heatedAllWinter", true, "The owner keeps it heated every winter day."),
            f.Flag("freezeAlarm", false, "A temperature alarm or an attendant is always there in winter."));
    }
}
