using Glazewright.Science.Guards;

namespace Glazewright.Design.Form;

/// <summary>The five numbers of a roof as the user gives them: null is "not given". Lengths m, pitches rise over run.</summary>
/// <param name="LeftEaveM">Left eave height.</param>
/// <param name="RightEaveM">Right eave height.</param>
/// <param name="RidgeOffsetM">Ridge from the left wall.</param>
/// <param name="LeftPitch">Left pitch.</param>
/// <param name="RightPitch">Right pitch.</param>
public sealed record RoofWish(double? LeftEaveM, double? RightEaveM, double? RidgeOffsetM, double? LeftPitch, double? RightPitch);

/// <summary>What came of solving a roof. A closed case.</summary>
public abstract record RoofSolution
{
    private RoofSolution()
    {
    }

    /// <summary>It closes.</summary>
    /// <param name="Profile">The roof.</param>
    public sealed record Closed(RoofProfile Profile) : RoofSolution;

    /// <summary>All five were given and miss each other at the ridge.</summary>
    /// <param name="GapM">Left slope's ridge height less the right slope's, m.</param>
    /// <param name="RightPitch">Right pitch that would close it, the other four kept.</param>
    /// <param name="RightEaveM">Right eave that would close it, the other four kept, m.</param>
    public sealed record Open(double GapM, double RightPitch, double RightEaveM) : RoofSolution;

    /// <summary>Fewer than four were given.</summary>
    /// <param name="Given">How many were.</param>
    public sealed record TooFew(int Given) : RoofSolution;

    /// <summary>The four given lead to no roof: a ridge outside the house, or a pitch or eave below zero.</summary>
    /// <param name="Part">The number that was solved.</param>
    /// <param name="Value">The value it would have to take.</param>
    public sealed record NoRoof(SolvedRoofPart Part, double Value) : RoofSolution;
}

/// <summary>Solves a gable roof with unequal sides: left eave + offset · left pitch = right eave + (width − offset) · right pitch.</summary>
public static class RoofSolver
{
    /// <summary>How far five given numbers may miss each other at the ridge, m.</summary>
    public const double ToleranceM = 0.005;

    /// <summary>Solves the number that was not given, or checks that five agree.</summary>
    /// <param name="wish">Four or five numbers.</param>
    /// <param name="widthM">Width of the house, m, above 0 to 200.</param>
    /// <returns>The case.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Width out of range.</exception>
    public static RoofSolution Solve(RoofWish wish, double widthM)
    {
        Within.Require(widthM, 1e-3, 200);
        int given = new[] { wish.LeftEaveM, wish.RightEaveM, wish.RidgeOffsetM, wish.LeftPitch, wish.RightPitch }.Count(v => v is not null);
        if (given < 4)
        {
            return new RoofSolution.TooFew(given);
        }

        double le = wish.LeftEaveM ?? 0;
        double re = wish.RightEaveM ?? 0;
        double offset = wish.RidgeOffsetM ?? 0;
        double lp = wish.LeftPitch ?? 0;
        double rp = wish.RightPitch ?? 0;
        if (given == 5)
        {
            double gapM = le + offset * lp - re - (widthM - offset) * rp;
            return Math.Abs(gapM) <= ToleranceM
                ? Check(new RoofProfile(le, re, offset, lp, rp, SolvedRoofPart.None), widthM)
                : new RoofSolution.Open(gapM, (le + offset * lp - re) / (widthM - offset), le + offset * lp - (widthM - offset) * rp);
        }

        RoofProfile profile =
            wish.LeftEaveM is null ? new(re + (widthM - offset) * rp - offset * lp, re, offset, lp, rp, SolvedRoofPart.LeftEave)
            : wish.RightEaveM is null ? new(le, le + offset * lp - (widthM - offset) * rp, offset, lp, rp, SolvedRoofPart.RightEave)
            : wish.RidgeOffsetM is null ? new(le, re, (re - le + widthM * rp) / (lp + rp), lp, rp, SolvedRoofPart.RidgeOffset)
            : wish.LeftPitch is null ? new(le, re, offset, (re + (widthM - offset) * rp - le) / offset, rp, SolvedRoofPart.LeftPitch)
            : new(le, re, offset, lp, (le + offset * lp - re) / (widthM - offset), SolvedRoofPart.RightPitch);
        return Check(profile, widthM);
    }

    private static RoofSolution Check(RoofProfile p, double widthM)
    {
        static bool Bad(double value, double above) => !(double.IsFinite(value) && value >= above);
        return Bad(p.RidgeOffsetM, 1e-6) || p.RidgeOffsetM > widthM - 1e-6 ? new RoofSolution.NoRoof(SolvedRoofPart.RidgeOffset, p.RidgeOffsetM)
            : Bad(p.LeftEaveM, 0) ? new RoofSolution.NoRoof(SolvedRoofPart.LeftEave, p.LeftEaveM)
            : Bad(p.RightEaveM, 0) ? new RoofSolution.NoRoof(SolvedRoofPart.RightEave, p.RightEaveM)
            : Bad(p.LeftPitch, 0) ? new RoofSolution.NoRoof(SolvedRoofPart.LeftPitch, p.LeftPitch)
            : Bad(p.RightPitch, 0) ? new RoofSolution.NoRoof(SolvedRoofPart.RightPitch, p.RightPitch)
            : new RoofSolution.Closed(p);
    }
}
