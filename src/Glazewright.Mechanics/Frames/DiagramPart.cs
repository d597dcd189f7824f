namespace Glazewright.Mechanics.Frames;

/// <summary>
/// A stretch of a member with no load edge inside: spread load varies evenly, so shear, moment, slope and offset are
/// polynomials of the distance s from its start, kept by their start values.
/// </summary>
internal sealed record DiagramPart(
    double StartM,
    double LengthM,
    double StartTensionN,
    double StartShearN,
    double StartMomentNm,
    double StartSlopeRad,
    double StartOffsetM,
    double AlongNPerM,
    double AlongChange,
    double NormalNPerM,
    double NormalChange,
    double RigidityNM2)
{
    internal double TensionN(double s) => StartTensionN - AlongNPerM * s - AlongChange * s * s / 2;

    internal double ShearN(double s) => StartShearN + NormalNPerM * s + NormalChange * s * s / 2;

    internal double MomentNm(double s) =>
        StartMomentNm + s * (StartShearN + s * (NormalNPerM / 2 + s * NormalChange / 6));

    internal double SlopeRad(double s) =>
        StartSlopeRad + s * (StartMomentNm + s * (StartShearN / 2 + s * (NormalNPerM / 6 + s * NormalChange / 24))) / RigidityNM2;

    internal double OffsetM(double s) =>
        StartOffsetM + s * (StartSlopeRad
            + s * (StartMomentNm / 2 + s * (StartShearN / 6 + s * (NormalNPerM / 24 + s * NormalChange / 120))) / RigidityNM2);

    internal IEnumerable<double> ZeroShear()
    {
        double a = NormalChange / 2;
        double b = NormalNPerM;
        double c = StartShearN;
        if (Math.Abs(a) * LengthM * LengthM <= 1e-12 * (Math.Abs(b) * LengthM + Math.Abs(c)))
        {
            if (b != 0 && Inside(-c / b))
            {
                yield return -c / b;
            }

            yield break;
        }

        double discriminant = b * b - 4 * a * c;
        if (discriminant < 0)
        {
            yield break;
        }

        double q = -0.5 * (b + (b >= 0 ? 1 : -1) * Math.Sqrt(discriminant));
        if (Inside(q / a))
        {
            yield return q / a;
        }

        if (q != 0 && Inside(c / q))
        {
            yield return c / q;
        }
    }

    private bool Inside(double s) => s > 0 && s < LengthM;
}
