using Glazewright.Design.Catalogues;
using Glazewright.Design.Form;
using Glazewright.Science.Flow;

namespace Glazewright.Design.Plant;

/// <summary>
/// Oscillating fans over the crop: what one covers and how many the floor takes, by two wishes: the passing jet's peak, and the mean over a sweep.
/// The wish that asks for more fans governs.
/// </summary>
internal static class OscillatingFans
{
    public static OscillatingEntry Entry(Catalogue catalogue) => catalogue.Oscillating[0];

    /// <summary>Speed on the jet's axis that leaves the least mean over a sweep, m/s.</summary>
    public static double AxisForMeanMs(OscillatingEntry fan) => OscillatingPlant.MeanMs / SweptJet.MeanToPeakRatio(fan.SweepDeg);

    /// <summary>What a count of them does; zero fans too, for what the floor would need.</summary>
    public static OscillatingPlant Of(int count, BuildingForm form, Catalogue catalogue)
    {
        OscillatingEntry fan = Entry(catalogue);
        double widthM = Math.Clamp(form.WidthM, 0.1, 1000);
        double Reach(double axisMs) => Math.Min(SweptJet.ThrowM(fan.FlowM3PerS, fan.DiameterM, axisMs), Math.Min(form.LengthM, 1000));
        double Covered(double radiusM) => SweptJet.CoveredM2(radiusM, fan.SweepDeg, widthM);
        int For(double coveredM2) => coveredM2 > 0 ? Math.Max((int)Math.Ceiling(form.FloorAreaM2 / coveredM2 - 1e-9), 1) : int.MaxValue;
        double peakM = Reach(OscillatingPlant.PeakMs);
        double meanM = Reach(AxisForMeanMs(fan));
        int byPeak = For(Covered(peakM));
        int byMean = For(Covered(meanM));
        double edgeMs = SweptJet.AxisMPerS(fan.FlowM3PerS, fan.DiameterM, peakM);
        return new OscillatingPlant(
            fan.Id, count, Math.Max(byPeak, byMean), fan.FlowM3PerS, fan.PowerW, peakM, Covered(peakM), edgeMs,
            edgeMs * SweptJet.MeanToPeakRatio(fan.SweepDeg), byPeak, byMean, meanM, Covered(meanM));
    }
}
