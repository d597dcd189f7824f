using Glazewright.Design.Form;
using Glazewright.Science.Flow;

namespace Glazewright.Design.Plant;

/// <summary>Oscillating fans over the crop: one generic size, what one covers, how many it takes.</summary>
internal static class OscillatingFans
{
    public const string Entry = "oscillating-18";
    public const double DiameterM = 0.45;
    public const double FlowM3PerS = 0.7;
    public const double PowerW = 85;
    public const double SweepDeg = 90;

    /// <summary>Least and wished air speed at the crop, m/s (common practice: 0.2 to 0.5).</summary>
    public const double LeastMs = 0.2;
    public const double WishedMs = 0.5;

    public static double RadiusM(BuildingForm form) => Math.Min(SweptJet.ThrowM(FlowM3PerS, DiameterM, WishedMs), Math.Min(form.LengthM, 1000));

    public static double CoveredM2(BuildingForm form) => SweptJet.CoveredM2(RadiusM(form), SweepDeg, Math.Clamp(form.WidthM, 0.1, 1000));

    public static int Needed(BuildingForm form) => Math.Max((int)Math.Ceiling(form.FloorAreaM2 / CoveredM2(form) - 1e-9), 1);

    public static OscillatingPlant? Of(int count, BuildingForm form)
    {
        if (count <= 0)
        {
            return null;
        }

        double radiusM = RadiusM(form);
        double edgeMs = SweptJet.AxisMPerS(FlowM3PerS, DiameterM, radiusM);
        return new OscillatingPlant(
            Entry, count, Needed(form), FlowM3PerS, PowerW, radiusM, CoveredM2(form), edgeMs, edgeMs * SweptJet.MeanToPeakRatio(SweepDeg));
    }
}
