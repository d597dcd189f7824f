using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Form;
using Glazewright.Design.Quantities;

namespace Glazewright.Design.Brief.Reading;

/// <summary>Fields of the frame.</summary>
internal static class FrameFields
{
    private const double LeastPierM = 3 * 0.3048;

    private enum Base
    {
        Pinned,
        Fixed,
    }

    public static FrameChoice Read(FieldReader f, GroundSite ground, RoofProfile roof, bool roofed)
    {
        string rafter = Section(f, "rafter", "Rafter tube.");
        string column = Section(f, "column", "Column tube.");
        string purlin = Section(f, "purlin", "Purlin and girt tube.");
        double tieM = f.LengthMOrBlank("collarTie", "0 ft", "60 ft", "no collar tie", "Height of a collar tie.") ?? 0;
        if (roofed && tieM > 0 && !(tieM > Math.Max(roof.LeftEaveM, roof.RightEaveM) && tieM < roof.RidgeM))
        {
            f.Add(FaultKind.DoesNotFit, "collarTie", $"a collar tie at {FeetInches.Format(tieM)} is not between the eaves and the ridge", $"above {FeetInches.Format(Math.Max(roof.LeftEaveM, roof.RightEaveM))} and below {FeetInches.Format(roof.RidgeM)}");
        }

        bool fixedBase = f.Choice<Base>("base", Base.Pinned, "Columns on pinned bases, or cast in piers and taken as fixed.") == Base.Fixed;
        return new FrameChoice(
            rafter,
            column,
            purlin,
            tieM,
            fixedBase,
            f.LengthM("purlinSpacing", "1 ft", "10 ft", "4 ft", "Greatest purlin spacing along the slope."),
            f.Quantity("yield", QuantityKind.Stress, "30 ksi", "70 ksi", "46 ksi", "Yield strength of the tube."),
            f.AreaLoadPa("collateral", "0 psf", "20 psf", "2 psf", "Allowance for hung equipment, on plan."),
            f.AreaLoadPa("cropLoad", "0 psf", "20 psf", "0 psf", "Hung crop, on plan."),
            f.Quantities("stock", QuantityKind.Length, "6 ft", "60 ft", 1, 6, ["20 ft", "24 ft"], "Lengths that tube is bought in."),
            f.LengthM("kerf", "0 in", "1/2 in", "1/8 in", "Saw kerf."),
            f.LengthM("pierDiameter", "6 in", "6 ft", "1'-6\"", "Pier diameter."),
            f.LengthMOrBlank("pierDepth", "1 ft", "20 ft", "6 in below frost, at least 3 ft", "Pier depth.") ?? Math.Max(LeastPierM, ground.FrostDepthM + 0.1524));
    }

    // tube-4x2x0.120: depth, width and wall in inches.
    private static string Section(FieldReader f, string key, string doc)
    {
        string name = f.Words(key, "size", doc + " A name, or size to have it sized.", "tube-4x2x0.120", 30);
        if (name == "size")
        {
            return "";
        }

        if (!IsSection(name) && f.IsGiven(key))
        {
            f.Add(FaultKind.UnknownChoice, key, $"\"{name}\" does not name a tube", "depth x width x wall in inches, as in tube-4x2x0.120, or size");
        }

        return name;
    }

    private static bool IsSection(string name)
    {
        string[] sizes = name.StartsWith("tube-", StringComparison.Ordinal) ? name[5..].Split('x') : [];
        double[] inches = [.. sizes.Select(s => double.TryParse(s, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value) ? value : 0)];
        return inches.Length == 3 && inches[0] is >= 1 and <= 16 && inches[1] is >= 1 and <= 16 && inches[2] >= 0.03 && inches[2] <= Math.Min(inches[0], inches[1]) / 5;
    }
}
