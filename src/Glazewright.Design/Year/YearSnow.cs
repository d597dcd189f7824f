using System.Runtime.CompilerServices;
using Glazewright.Design.Program;
using Glazewright.Science.Climate;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Year;

/// <summary>
/// New snow on the roof, as far as the snow contact tells it: it falls as the file's cover grows, and melts from below by the heat of the air under the roof and from above in thaw. What it does to light
/// and heat is left out, as are sliding, wind and sun on it.
/// </summary>
/// <param name="fallenByHourM">Snow of each hour; empty where the file records none.</param>
/// <param name="roof">The clear roof.</param>
/// <param name="program">Whose curtains open for snow.</param>
internal sealed class YearSnow(double[] fallenByHourM, ShellPart roof, ProgramDocument program)
{
    private const double FreshKgPerM3 = 100; // common practice: ten to one
    private const double FusionJPerKg = 334_000;
    private const double InnerFilmM2KPerW = 0.125;
    private const double ThawWPerM2K = 10; // to a melting surface at the usual wind (common practice)
    private const double TellsFromKgPerM2 = 0.5; // half a centimetre
    private const double TellsNoMoreKgPerM2 = 0.05;

    private readonly CurtainControl[] curtains = [.. new[] { program.Curtain, program.SecondCurtain }.OfType<CurtainControl>().Where(c => c.HoldOpenOnSnow)];
    private readonly double meltWPerM2K = 1 / ((1 / Math.Max(roof.CoreWPerM2K, 0.01)) + InnerFilmM2KPerW);
    private int minutes, heldMinutes;

    /// <summary>The file records snow, if only that none fell.</summary>
    public bool IsRecorded { get; } = fallenByHourM.Length > 0;

    /// <summary>Snow on the roof, kg/m².</summary>
    public double RoofKgPerM2 { get; private set; }

    /// <summary>The contact is closed: snow falls or lies.</summary>
    public bool IsTold { get; private set; }

    /// <summary>Whether some curtain opens for snow.</summary>
    public bool OpensCurtains => curtains.Length > 0;

    /// <summary>Hours counted with new snow on the roof.</summary>
    public double LainH => minutes / 60.0;

    /// <summary>Of them, dark and cold enough that a curtain held open by it would have been drawn for warmth.</summary>
    public double HeldOpenH => heldMinutes / 60.0;

    /// <summary>Most new snow at once in what was counted, kg/m².</summary>
    public double MostKgPerM2 { get; private set; }

    /// <summary>Counts a minute with snow.</summary>
    public void Count(double outsideC, double lightWm2)
    {
        minutes++;
        MostKgPerM2 = Math.Max(MostKgPerM2, RoofKgPerM2);
        foreach (CurtainControl c in curtains)
        {
            if (lightWm2 < c.DrawBelowLightWm2 && outsideC < c.DrawBelowOutsideC)
            {
                heldMinutes++;
                break;
            }
        }
    }

    /// <summary>Puts back what was saved.</summary>
    public void Load(double kgPerM2, bool told) => (RoofKgPerM2, IsTold) = (kgPerM2, told);

    /// <summary>One step.</summary>
    /// <param name="minute">Minute of the year.</param>
    /// <param name="outsideC">Air outside.</param>
    /// <param name="underRoofC">Air under the roof.</param>
    /// <param name="stepS">Step, s.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Step(int minute, double outsideC, double underRoofC, double stepS)
    {
        if (IsRecorded)
        {
            double fallenM = fallenByHourM[minute / 60];
            if (fallenM > 0 || RoofKgPerM2 > 0)
            {
                Lie(fallenM * stepS / 3600, outsideC, underRoofC, stepS);
            }
        }
    }

    private void Lie(double fallenM, double outsideC, double underRoofC, double stepS)
    {
        double meltW = (meltWPerM2K * Math.Max(underRoofC, 0)) + (ThawWPerM2K * Math.Max(outsideC, 0));
        RoofKgPerM2 = Math.Max(RoofKgPerM2 + (fallenM * FreshKgPerM3) - (meltW * stepS / FusionJPerKg), 0);
        IsTold = RoofKgPerM2 >= (IsTold ? TellsNoMoreKgPerM2 : TellsFromKgPerM2);
    }
}
