using Glazewright.Design.Brief;

namespace Glazewright.Design.Form;

/// <summary>Outlines of a building's faces in their own (u, v), m.</summary>
public static class FaceOutlines
{
    /// <summary>Corner points of a face.</summary>
    /// <param name="face">Which face.</param>
    /// <param name="roof">Roof profile.</param>
    /// <param name="widthM">Across the ridge, m.</param>
    /// <param name="lengthM">Along the ridge, m.</param>
    /// <returns>Corner points, counter-clockwise in (u, v).</returns>
    public static Point2[] Of(FaceName face, RoofProfile roof, double widthM, double lengthM) => face switch
    {
        FaceName.Left => Polygons.Rectangle(0, 0, lengthM, roof.LeftEaveM),
        FaceName.Right => Polygons.Rectangle(0, 0, lengthM, roof.RightEaveM),
        FaceName.RoofLeft => Polygons.Rectangle(0, 0, lengthM, LeftSlopeM(roof)),
        FaceName.RoofRight => Polygons.Rectangle(0, 0, lengthM, RightSlopeM(roof, widthM)),
        FaceName.Floor => Polygons.Rectangle(0, 0, lengthM, widthM),
        _ =>
        [
            new(0, 0), new(widthM, 0), new(widthM, roof.RightEaveM), new(roof.RidgeOffsetM, roof.RidgeM), new(0, roof.LeftEaveM),
        ],
    };

    /// <summary>Length of the left slope from eave to ridge.</summary>
    /// <param name="roof">Roof profile.</param>
    /// <returns>Length, m.</returns>
    public static double LeftSlopeM(RoofProfile roof) => roof.RidgeOffsetM * Math.Sqrt(1 + roof.LeftPitch * roof.LeftPitch);

    /// <summary>Length of the right slope from eave to ridge.</summary>
    /// <param name="roof">Roof profile.</param>
    /// <param name="widthM">Across the ridge, m.</param>
    /// <returns>Length, m.</returns>
    public static double RightSlopeM(RoofProfile roof, double widthM) =>
        (widthM - roof.RidgeOffsetM) * Math.Sqrt(1 + roof.RightPitch * roof.RightPitch);

    /// <summary>Openings that are off their face or in each other's way.</summary>
    /// <param name="openings">Openings of one building.</param>
    /// <param name="roof">Roof profile.</param>
    /// <param name="widthM">Across the ridge, m.</param>
    /// <param name="lengthM">Along the ridge, m.</param>
    /// <returns>One entry for each thing that does not fit, in the openings' order.</returns>
    public static IReadOnlyList<OpeningMisfit> Misfits(
        IReadOnlyList<Opening> openings, RoofProfile roof, double widthM, double lengthM)
    {
        List<OpeningMisfit> misfits = [];
        for (int i = 0; i < openings.Count; i++)
        {
            Opening a = openings[i];
            Point2[] box = Polygons.Rectangle(a.OffsetM, a.SillM, a.WidthM, a.HeightM);
            double areaM2 = a.WidthM * a.HeightM;
            double onFaceM2 = Polygons.AreaM2([.. Polygons.Common(box, Of(a.Face, roof, widthM, lengthM))]);
            if (onFaceM2 < areaM2 - 1e-6)
            {
                misfits.Add(new OpeningMisfit(i, -1, areaM2 - onFaceM2));
            }

            for (int j = 0; j < i; j++)
            {
                Opening b = openings[j];
                if (b.Face == a.Face)
                {
                    double commonM2 = Polygons.AreaM2(
                        [.. Polygons.Common(box, Polygons.Rectangle(b.OffsetM, b.SillM, b.WidthM, b.HeightM))]);
                    if (commonM2 > 1e-6)
                    {
                        misfits.Add(new OpeningMisfit(i, j, commonM2));
                    }
                }
            }
        }

        return misfits;
    }
}

/// <summary>An opening that does not fit.</summary>
/// <param name="Index">Index of the opening.</param>
/// <param name="OtherIndex">Index of the one it overlaps, or −1 when it is off its face.</param>
/// <param name="AreaM2">Area off the face, or in common, m².</param>
public sealed record OpeningMisfit(int Index, int OtherIndex, double AreaM2);
