using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Form;
using Glazewright.Design.Quantities;

namespace Glazewright.Design.Brief.Reading;

/// <summary>Fields of a roof: four numbers say the fifth; what more is left out is filled in from a plain gable.</summary>
internal static class RoofFields
{
    private const double EaveM = 8 * 0.3048;
    private const double Pitch = 0.5;

    public static RoofProfile Read(FieldReader f, double widthM, bool sized)
    {
        int before = f.FaultCount;
        double? leftEave = f.LengthMOrBlank("leftEave", "2 ft", "40 ft", Left(f, "leftEave"), "Eave height on the left.");
        double? rightEave = f.LengthMOrBlank("rightEave", "2 ft", "40 ft", Left(f, "rightEave"), "Eave height on the right.");
        double? offset = f.LengthMOrBlank("ridgeOffset", "0 ft", "120 ft", Left(f, "ridgeOffset"), "Ridge from the left wall.");
        double? leftPitch = f.QuantityOrBlank("leftPitch", QuantityKind.Pitch, "0:12", "60 deg", Left(f, "leftPitch"), "Pitch of the left slope.");
        double? rightPitch = f.QuantityOrBlank("rightPitch", QuantityKind.Pitch, "0:12", "60 deg", Left(f, "rightPitch"), "Pitch of the right slope.");
        RoofProfile plain = new(EaveM, EaveM, widthM / 2, Pitch, Pitch, SolvedRoofPart.None);
        if (f.FaultCount > before || !sized)
        {
            return plain;
        }

        if (offset is double typed && !(typed > 0.001 && typed < widthM - 0.001))
        {
            f.Add(FaultKind.DoesNotFit, "ridgeOffset", $"the ridge lies {FeetInches.Format(typed)} from the left wall, outside the house of {FeetInches.Format(widthM)}", $"more than 0 and less than {FeetInches.Format(widthM)}");
            return plain;
        }

        RoofWish wish = Filled(new RoofWish(leftEave, rightEave, offset, leftPitch, rightPitch), widthM);
        RoofSolution solution = RoofSolver.Solve(wish, widthM);
        switch (solution)
        {
            case RoofSolution.Closed closed:
                return closed.Profile;
            case RoofSolution.Open open:
                f.Add(
                    FaultKind.Contradiction,
                    "rightPitch",
                    $"the roof does not close: at the ridge the slopes miss each other by {FeetInches.Format(Math.Abs(open.GapM))}",
                    Closing(open));
                return plain;
            case RoofSolution.NoRoof none:
                f.Add(FaultKind.DoesNotFit, Key(none.Part), $"these numbers make no roof: {Words(none.Part)} would have to be {Value(none)}", "a lower eave on that side, a steeper pitch, or the ridge moved");
                return plain;
            default:
                return plain;
        }
    }

    // In this order plain values are put in until four numbers stand.
    private static RoofWish Filled(RoofWish wish, double widthM)
    {
        int Given() => new[] { wish.LeftEaveM, wish.RightEaveM, wish.RidgeOffsetM, wish.LeftPitch, wish.RightPitch }.Count(v => v is not null);
        Action[] fill =
        [
            () => wish = wish with { LeftEaveM = wish.LeftEaveM ?? wish.RightEaveM ?? EaveM },
            () => wish = wish with { RidgeOffsetM = wish.RidgeOffsetM ?? widthM / 2 },
            () => wish = wish with { LeftPitch = wish.LeftPitch ?? wish.RightPitch ?? Pitch },
            () => wish = wish with { RightPitch = wish.RightPitch ?? wish.LeftPitch },
        ];
        for (int i = 0; i < fill.Length && Given() < 4; i++)
        {
            fill[i]();
        }

        return wish;
    }

    private static string Left(FieldReader f, string key)
    {
        int given = ((string[])["leftEave", "rightEave", "ridgeOffset", "leftPitch", "rightPitch"]).Count(f.IsGiven);
        return given >= 4 ? "solved from the other four"
            : key switch
            {
                "leftEave" => "8 ft, or as the right eave",
                "rightEave" => "solved from the other four",
                "ridgeOffset" => "half the width",
                "leftPitch" => "6:12 (26.6°), or as the right pitch",
                _ => "as the left pitch, or solved",
            };
    }

    private static string Closing(RoofSolution.Open open)
    {
        string pitch = open.RightPitch is >= 0 and < 1.74 ? $"rightPitch {Slope(open.RightPitch, 4)}" : "";
        string eave = open.RightEaveM > 0 ? $"rightEave {FeetInches.Format(open.RightEaveM)}" : "";
        string either = pitch.Length > 0 && eave.Length > 0 ? $"{pitch} or {eave}" : pitch + eave;
        return either.Length > 0 ? either + " closes it; or leave one of the five out" : "leave one of the five out";
    }

    private static string Value(RoofSolution.NoRoof none) =>
        !double.IsFinite(none.Value) || Math.Abs(none.Value) > 1000 ? "out of all measure"
        : none.Part is SolvedRoofPart.LeftPitch or SolvedRoofPart.RightPitch ? Slope(none.Value, 3)
        : FeetInches.Format(none.Value);

    // As the trade writes it and in degrees: either may have been typed.
    private static string Slope(double riseOverRun, int digits) => $"{QuantityFormat.Number(riseOverRun * 12, digits)}:12 ({QuantityFormat.Degrees(riseOverRun)})";

    private static string Key(SolvedRoofPart part) => part switch
    {
        SolvedRoofPart.LeftEave => "leftEave",
        SolvedRoofPart.RightEave => "rightEave",
        SolvedRoofPart.RidgeOffset => "ridgeOffset",
        SolvedRoofPart.LeftPitch => "leftPitch",
        _ => "rightPitch",
    };

    private static string Words(SolvedRoofPart part) => part switch
    {
        SolvedRoofPart.LeftEave => "the left eave",
        SolvedRoofPart.RightEave => "the right eave",
        SolvedRoofPart.RidgeOffset => "the ridge's distance from the left wall",
        SolvedRoofPart.LeftPitch => "the left pitch",
        _ => "the right pitch",
    };
}
