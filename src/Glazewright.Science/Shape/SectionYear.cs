using Glazewright.Science.Guards;

namespace Glazewright.Science.Shape;

/// <summary>
/// A weather year as a long house sees it: energy by month in bins of profile angle (from the near horizon over the zenith to the far one) and of the sun's
/// angle along the ridge. The even sky lies in the same bins, so one computation serves sun and sky.
/// </summary>
/// <remarks>
/// A direction is (u, ψ): u its cosine with the ridge, ψ the profile angle; its solid angle is du dψ, its projection on the section s = √(1 − u²). An
/// even sky of horizontal irradiance D has radiance D/π, so that D·s·sin ψ/π du dψ sums to D.
/// </remarks>
public sealed class SectionYear
{
    /// <summary>Steps of s.</summary>
    internal const int Alongs = 24;

    internal const int Months = 12;
    private readonly double[] normalWh;

    private SectionYear(int bins, double nearAzimuthDeg, SunSamples samples)
    {
        Bins = bins;
        NearAzimuthDeg = nearAzimuthDeg;
        Samples = samples;
        normalWh = new double[bins * (Alongs + 1) * Months];
    }

    /// <summary>Bins of profile angle over 180°.</summary>
    public int Bins { get; }

    /// <summary>Bearing that the near wall faces, degrees.</summary>
    public double NearAzimuthDeg { get; }

    /// <summary>The year's quarter hours.</summary>
    public SunSamples Samples { get; }

    /// <summary>Sorts a year into bins.</summary>
    /// <param name="samples">The year.</param>
    /// <param name="nearAzimuthDeg">Bearing that the near wall faces, any finite value.</param>
    /// <param name="bins">Bins of profile angle, 18 to 720; 120 keep the winter mean within 0.1 % (tests).</param>
    /// <returns>The binned year.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static SectionYear Of(SunSamples samples, double nearAzimuthDeg, int bins = 120)
    {
        ArgumentNullException.ThrowIfNull(samples);
        Within.RequireFinite(nearAzimuthDeg);
        Within.Require(bins, 18, 720);
        SectionYear year = new(bins, nearAzimuthDeg, samples);
        double east = Math.Sin(nearAzimuthDeg * Math.PI / 180);
        double north = Math.Cos(nearAzimuthDeg * Math.PI / 180);
        foreach (SunSample s in samples.Lit)
        {
            double near = (s.EastCosine * east) + (s.NorthCosine * north);
            year.Add(Math.Atan2(s.UpCosine, near), Math.Sqrt((near * near) + (s.UpCosine * s.UpCosine)), s.Month, s.FromSunWm2 * SunSamples.SampleH);
        }

        year.AddSky();
        return year;
    }

    /// <summary>
    /// What passes a cover: for each bin, each of <see cref="CoverYear.Steps"/> + 1 cosines between sun and face in the section's plane, and each month,
    /// Σ energy · s · transmittance at the true angle of incidence.
    /// </summary>
    /// <param name="cover">The cover.</param>
    /// <param name="frameFraction">Share of the face that bars and frame take, 0 to 0.9.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public CoverYear Through(Optics.CoverOptics cover, double frameFraction)
    {
        ArgumentNullException.ThrowIfNull(cover);
        Within.Require(frameFraction, 0, 0.9);
        const int steps = CoverYear.Steps;
        double[] passes = new double[(steps + 1) * (Alongs + 1)];
        for (int k = 0; k <= steps; k++)
        {
            for (int j = 0; j <= Alongs; j++)
            {
                double s = (double)j / Alongs;
                passes[(k * (Alongs + 1)) + j] = s * (1 - frameFraction) * cover.AtCosine(s * k / steps).TransmittanceFraction;
            }
        }

        double[] table = new double[Bins * (steps + 1) * Months];
        for (int bin = 0; bin < Bins; bin++)
        {
            for (int k = 1; k <= steps; k++)
            {
                Span<double> row = table.AsSpan(((bin * (steps + 1)) + k) * Months, Months);
                for (int j = 0; j <= Alongs; j++)
                {
                    double pass = passes[(k * (Alongs + 1)) + j];
                    ReadOnlySpan<double> energy = normalWh.AsSpan(((bin * (Alongs + 1)) + j) * Months, Months);
                    for (int m = 0; m < Months; m++)
                    {
                        row[m] += pass * energy[m];
                    }
                }
            }
        }

        return new CoverYear(cover, frameFraction, table, Even(passes));
    }

    /// <summary>Horizontal energy that the bins hold, by month, Wh/m²: the global of the year within the bins' width.</summary>
    /// <returns>Twelve values.</returns>
    public double[] HorizontalWhPerM2()
    {
        double[] sum = new double[Months];
        for (int bin = 0; bin < Bins; bin++)
        {
            double sine = Math.Sin((bin + 0.5) * Math.PI / Bins);
            for (int j = 0; j <= Alongs; j++)
            {
                for (int m = 0; m < Months; m++)
                {
                    sum[m] += sine * j / Alongs * normalWh[(((bin * (Alongs + 1)) + j) * Months) + m];
                }
            }
        }

        return sum;
    }

    // Light of unit radiance × π from one bin's width of a sky even in u: the same for every bin, by cosine.
    private double[] Even(double[] passes)
    {
        double[] even = new double[CoverYear.Steps + 1];
        double[] weights = EvenWeights();
        for (int k = 0; k < even.Length; k++)
        {
            for (int j = 0; j <= Alongs; j++)
            {
                even[k] += weights[j] * passes[(k * (Alongs + 1)) + j];
            }
        }

        return even;
    }

    // Solid angle over π of one bin, spread over the steps of s.
    private double[] EvenWeights()
    {
        const int slices = 2000;
        double[] weights = new double[Alongs + 1];
        for (int i = 0; i < slices; i++)
        {
            double u = (i + 0.5) / slices;
            double place = Math.Sqrt(1 - (u * u)) * Alongs;
            int low = Math.Min((int)place, Alongs - 1);
            weights[low] += 1 - (place - low);
            weights[low + 1] += place - low;
        }

        for (int j = 0; j <= Alongs; j++)
        {
            weights[j] *= 2.0 / slices / Bins;
        }

        return weights;
    }

    private void AddSky()
    {
        double[] weights = EvenWeights();
        for (int bin = 0; bin < Bins; bin++)
        {
            for (int j = 0; j <= Alongs; j++)
            {
                for (int m = 0; m < Months; m++)
                {
                    normalWh[(((bin * (Alongs + 1)) + j) * Months) + m] += weights[j] * Samples.DomeWhPerM2[m];
                }
            }
        }

        // The horizon band, a ring level with the house: half of a wall's irradiance comes from each radian of azimuth.
        const int slices = 720;
        for (int i = 0; i < slices; i++)
        {
            double azimuth = 2 * Math.PI * (i + 0.5) / slices;
            for (int m = 0; m < Months; m++)
            {
                Add(Math.Cos(azimuth) > 0 ? 0 : Math.PI, Math.Abs(Math.Cos(azimuth)), m, Samples.HorizonWhPerM2[m] / 2 * (2 * Math.PI / slices));
            }
        }
    }

    private void Add(double profileRad, double s, int month, double energyWh)
    {
        int bin = Math.Clamp((int)(profileRad / Math.PI * Bins), 0, Bins - 1);
        double place = Math.Clamp(s, 0, 1) * Alongs;
        int low = Math.Min((int)place, Alongs - 1);
        int at = ((bin * (Alongs + 1)) + low) * Months;
        normalWh[at + month] += energyWh * (1 - (place - low));
        normalWh[at + Months + month] += energyWh * (place - low);
    }
}

/// <summary>A cover under a binned year.</summary>
public sealed class CoverYear
{
    /// <summary>Steps of the cosine between sun and face in the section's plane.</summary>
    internal const int Steps = 32;

    internal CoverYear(Optics.CoverOptics optics, double frameFraction, double[] table, double[] even)
    {
        Optics = optics;
        FrameFraction = frameFraction;
        Table = table;
        EvenBin = even;
    }

    /// <summary>The cover.</summary>
    public Optics.CoverOptics Optics { get; }

    /// <summary>Share that bars and frame take.</summary>
    public double FrameFraction { get; }

    internal double[] Table { get; }

    internal double[] EvenBin { get; }
}
