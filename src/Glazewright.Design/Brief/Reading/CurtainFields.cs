using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Quantities;

namespace Glazewright.Design.Brief.Reading;

/// <summary>Fields of a second curtain.</summary>
internal static class CurtainFields
{
    private const double LeastHeightM = 0.9144; // 3 ft, as for the first

    /// <summary>Reads it where the house has two curtains, or where it is described though there are not.</summary>
    public static SecondCurtain? Second(FieldReader f, int curtains, double firstM, Catalogue c)
    {
        if (!f.IsDescribing && curtains < 2 && !f.IsGiven("secondCurtain"))
        {
            return null;
        }

        SecondCurtain? second = f.GroupOrBlank(
            "secondCurtain", "of the first's cloth and moved with it", "The second of two curtains, where it has a cloth, a drive and a command of its own.", s => Read(s, c));
        if (second is not null && curtains < 2)
        {
            f.Add(FaultKind.Contradiction, "secondCurtain", $"a second curtain is described, and curtains is {HouseFields.Text(curtains)}", "curtains 2, or no secondCurtain");
            return null;
        }

        if (second is not null && firstM > 0 && firstM - second.BelowM < LeastHeightM)
        {
            f.AddBelow(FaultKind.DoesNotFit, "secondCurtain/below", $"it would hang at {FeetInches.Format(Math.Max(firstM - second.BelowM, 0))}", $"{FeetInches.Format(Math.Max(firstM - LeastHeightM, 0))} or less under the first");
        }

        return second;
    }

    private static SecondCurtain Read(FieldReader f, Catalogue c)
    {
        CurtainPurpose purpose = f.Choice<CurtainPurpose>("purpose", CurtainPurpose.Energy, "What it is for: the control program and the choice of cloth go by it.");
        string named = f.Word("cloth", [.. c.Curtains.Select(e => e.Id)], "", "Its cloth.");
        CurtainEntry entry = c.Curtains.FirstOrDefault(e => e.Id == named) ?? For(purpose, c);
        double belowM = f.LengthM("below", "2 in", "6 ft", "8 in", "How far under the first it hangs.");
        double Own(string key, double cloths, string doc) => f.QuantityOrBlank(key, QuantityKind.Fraction, "0 %", "98 %", "the cloth's", doc) ?? cloths;
        double transmittance = Own("transmittance", entry.SolarTransmittanceFraction, "Sun it lets through.");
        double reflectance = Own("reflectance", entry.SolarReflectanceFraction, "Sun it turns back.");
        double emissivity = Own("emissivity", entry.EmissivityFraction, "Long-wave emissivity of both faces.");
        double openness = Own("openness", entry.OpennessFraction, "Open area of the weave.");
        if (transmittance + reflectance > 1 + 1e-9)
        {
            f.Add(FaultKind.Contradiction, "reflectance", "the cloth lets through and turns back more sun than there is", "transmittance and reflectance 100 % at most together");
        }

        if (openness > transmittance + 1e-9)
        {
            f.Add(FaultKind.Contradiction, "openness", "more sun goes through the openings than through the cloth", "openness no larger than transmittance");
        }

        DayMark from = CropFields.Mark(f.Time("darkFrom", "18:00", "A blackout darkens from here.")), to = CropFields.Mark(f.Time("darkTo", "8:00", "Until here."));
        if (purpose == CurtainPurpose.Blackout && from.Equals(to))
        {
            f.Add(FaultKind.Contradiction, "darkTo", "the dark ends when it begins", "a later time");
        }

        return new SecondCurtain(purpose, entry.Id, belowM, transmittance, reflectance, emissivity, openness, from, to);
    }

    // Shade: the most open weave; blackout: what lets the least light through.
    private static CurtainEntry For(CurtainPurpose purpose, Catalogue c) => purpose switch
    {
        CurtainPurpose.Shade => c.Curtains.MaxBy(e => e.OpennessFraction)!,
        CurtainPurpose.Blackout => c.Curtains.MinBy(e => e.SolarTransmittanceFraction)!,
        _ => c.Curtains[0],
    };
}
