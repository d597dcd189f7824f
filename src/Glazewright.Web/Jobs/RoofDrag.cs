using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Form;
using Glazewright.Design.Quantities;

namespace Glazewright.Web.Jobs;

/// <summary>A corner of the roof that can be dragged in the section.</summary>
public enum RoofCorner
{
    /// <summary>The eave at the left wall: up and down.</summary>
    LeftEave,

    /// <summary>The ridge: any way.</summary>
    Ridge,

    /// <summary>The eave at the right wall: up and down.</summary>
    RightEave,
}

/// <summary>What a drag of a roof's corner writes: four of the roof's five numbers, the right pitch follows.</summary>
public static class RoofDrag
{
    /// <summary>Least height of an eave, m (2 ft, as the field has it).</summary>
    private const double LeastEaveM = 0.6096;

    /// <summary>Greatest height of an eave, m (40 ft).</summary>
    private const double MostEaveM = 12.192;

    /// <summary>Nearest the ridge may come to a wall, m.</summary>
    private const double LeastRunM = 0.3048;

    /// <summary>Steepest pitch a drag makes, rise over run (60°, the most a roof may have).</summary>
    private const double MostPitch = 1.7;

    /// <summary>Step of a drag, m: an inch, or 2 cm.</summary>
    /// <param name="units">The reader's units.</param>
    public static double StepM(UnitSystem units) => units == UnitSystem.Us ? 0.0254 : 0.02;

    /// <summary>The roof with a corner elsewhere: the nearest that stands.</summary>
    /// <param name="roof">As it is.</param>
    /// <param name="widthM">Width of the house, m.</param>
    /// <param name="corner">Which corner.</param>
    /// <param name="acrossM">Where it was dragged, m from the left wall; eaves keep theirs.</param>
    /// <param name="heightM">Its height, m.</param>
    /// <param name="units">The step's units.</param>
    public static RoofProfile Moved(RoofProfile roof, double widthM, RoofCorner corner, double acrossM, double heightM, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(roof);
        double ridgeM = roof.RidgeM;
        (double left, double right, double offset) = (roof.LeftEaveM, roof.RightEaveM, roof.RidgeOffsetM);
        switch (corner)
        {
            case RoofCorner.LeftEave:
                left = Snapped(heightM, Math.Max(LeastEaveM, ridgeM - offset * MostPitch), Math.Min(MostEaveM, ridgeM), units);
                break;
            case RoofCorner.RightEave:
                right = Snapped(heightM, Math.Max(LeastEaveM, ridgeM - (widthM - offset) * MostPitch), Math.Min(MostEaveM, ridgeM), units);
                break;
            default:
                offset = Snapped(acrossM, Math.Max(LeastRunM, (right - left) / MostPitch), widthM - Math.Max(LeastRunM, (left - right) / MostPitch), units);
                ridgeM = heightM;
                break;
        }

        ridgeM = Snapped(ridgeM, Math.Max(left, right), Math.Min(left + offset * MostPitch, right + (widthM - offset) * MostPitch), units);
        return new RoofProfile(left, right, offset, (ridgeM - left) / offset, (ridgeM - right) / (widthM - offset), SolvedRoofPart.RightPitch);
    }

    /// <summary>The edits that write a roof: both eaves, the ridge's place and the left pitch; the right pitch is left to follow.</summary>
    /// <param name="document">The job as it is.</param>
    /// <param name="house">Place of the house in the job, from 0.</param>
    /// <param name="roof">The roof.</param>
    /// <param name="units">Units to write in.</param>
    public static IReadOnlyList<Edit> Edits(JobDocument document, int house, RoofProfile roof, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(roof);
        string at = string.Create(CultureInfo.InvariantCulture, $"/houses/{house}/roof/");
        return
        [
            Edit.Typed(at + "leftEave", Length(roof.LeftEaveM, units)),
            Edit.Typed(at + "rightEave", Length(roof.RightEaveM, units)),
            Edit.Typed(at + "ridgeOffset", Length(roof.RidgeOffsetM, units)),
            Edit.Typed(at + "leftPitch", string.Create(CultureInfo.InvariantCulture, $"{roof.LeftPitch * 12:0.####}:12")),
            .. document.Find(at + "rightPitch") is null ? (Edit[])[] : [Edit.Removed(at + "rightPitch")],
        ];
    }

    /// <summary>A length as it is typed.</summary>
    /// <param name="lengthM">Metres.</param>
    /// <param name="units">The reader's units.</param>
    public static string Length(double lengthM, UnitSystem units) =>
        units == UnitSystem.Us ? FeetInches.Format(lengthM) : string.Create(CultureInfo.InvariantCulture, $"{lengthM:0.###} m");

    private static double Snapped(double valueM, double leastM, double mostM, UnitSystem units)
    {
        double stepM = StepM(units);
        double snappedM = Math.Round(valueM / stepM) * stepM;
        return Math.Clamp(snappedM, leastM, Math.Max(leastM, mostM));
    }
}
