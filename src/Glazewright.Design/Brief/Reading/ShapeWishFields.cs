using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Form;
using Glazewright.Design.Quantities;

namespace Glazewright.Design.Brief.Reading;

/// <summary>Fields of a house's shape wishes, for the shape finder.</summary>
internal static class ShapeWishFields
{
    private const string NotAsked = "not asked";

    public static ShapeWishes Read(FieldReader f, RoofProfile roof, bool roofed)
    {
        int before = f.FaultCount;
        double? reachM = f.LengthMOrBlank("noonReach", "0 ft", "30 ft", NotAsked, "Direct light this far up the wall away from the equator, at solar noon.");
        string date = f.DateText("noonDate", "the longest day", "Date of that noon.");
        double? ridgeM = f.LengthMOrBlank("ridgeAtMost", "4 ft", "100 ft", "the drawn ridge", "Ridge no higher than this.");
        double? lowM = f.LengthMOrBlank("eaveAtLeast", "2 ft", "40 ft", "the lower drawn eave", "Eaves no lower than this.");
        double? highM = f.LengthMOrBlank("eaveAtMost", "2 ft", "40 ft", "2 ft over the higher drawn eave", "Eaves no higher than this.");
        double shed = f.PitchRatio("shedFrom", "6:12", "Clear slopes at least this steep, to shed snow and not to drip.");
        double water = f.PitchRatio("tightFrom", "2:12", "Every slope at least this steep, for tight joints.");
        double steepest = f.PitchRatio("steepest", "12:12", "No slope steeper than this.");
        double? glazingM2 = f.QuantityOrBlank("glazingAtMost", QuantityKind.Area, "10 ft2", "1000000 ft2", NotAsked, "Clear area no larger than this.");
        double? winterMol = f.QuantityOrBlank("darkestMonth", QuantityKind.DailyLight, "0.1 mol/m2d", "60 mol/m2d", NotAsked, "Bench light of December (June south of the equator) at least this.");
        double? evenness = f.QuantityOrBlank("evenness", QuantityKind.Ratio, "0", "1", NotAsked, "Darkest place over mean across the house in that month at least this.");
        double givenUp = f.Fraction("lightGivenUp", "0 %", "50 %", "3 %", "Winter light given up, off the best that can be had, for less glazing.");
        SummerLight summer = f.Choice<SummerLight>("summerLight", SummerLight.Less, "What summer light is worth: less is better (a surplus), or more.");
        double shade = f.Quantity("shadeAbove", QuantityKind.PhotonFlux, "100 umol/m2s", "2500 umol/m2s", "800 umol/m2s", "Bench light above which shade is drawn.");
        ShapeFreedom faces = f.Choice<ShapeFreedom>("faces", ShapeFreedom.Search, "Clear and opaque faces: as-drawn, or search.");
        ShapeFreedom bearing = f.Choice<ShapeFreedom>("turn", ShapeFreedom.AsDrawn, "Bearing of the ridge: as-drawn, or search up to 30° either way.");
        ShapeWishes wishes = new(
            reachM, date, ridgeM, lowM, highM, shed, water, steepest, glazingM2, winterMol, evenness, givenUp, summer, shade, faces, bearing);
        if (f.FaultCount == before && roofed && !f.IsDescribing)
        {
            Together(f, wishes, roof);
        }

        return wishes;
    }

    private static void Together(FieldReader f, ShapeWishes w, RoofProfile roof)
    {
        double lowM = w.EaveAtLeastM ?? Math.Min(roof.LeftEaveM, roof.RightEaveM);
        double ridgeM = w.RidgeAtMostM ?? roof.RidgeM;
        if (ridgeM <= lowM)
        {
            f.Add(
                FaultKind.DoesNotFit, w.RidgeAtMostM is null ? "eaveAtLeast" : "ridgeAtMost",
                $"a ridge of at most {FeetInches.Format(ridgeM)} over eaves of at least {FeetInches.Format(lowM)} leaves no roof", "a higher ridge or a lower eave");
        }

        if (w.EaveAtMostM is double highM && highM < lowM)
        {
            f.Add(FaultKind.DoesNotFit, "eaveAtMost", $"eaves of at most {FeetInches.Format(highM)} and at least {FeetInches.Format(lowM)} leave none", $"{FeetInches.Format(lowM)} or more");
        }

        if (w.SteepestPitchRatio < Math.Max(w.ShedPitchRatio, w.WaterPitchRatio))
        {
            f.Add(FaultKind.DoesNotFit, "steepest", "the steepest pitch allowed is flatter than the pitch asked for", "a steepest pitch at or above shedFrom and tightFrom");
        }
    }
}
