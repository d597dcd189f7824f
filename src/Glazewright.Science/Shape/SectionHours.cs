namespace Glazewright.Science.Shape;

/// <summary>Hours in which the benches get more light than wanted, so that shade is drawn.</summary>
public static class SectionHours
{
    /// <summary>Hours of a month whose mean light across the house is above a level.</summary>
    /// <param name="light">The section light that filled the bench.</param>
    /// <param name="section">The section it was filled for.</param>
    /// <param name="ponyM">Top of the pony walls.</param>
    /// <param name="covers">Covers.</param>
    /// <param name="bench">Its results: scattered and reflected light are taken from them, in proportion to the global of the moment.</param>
    /// <param name="month">0 January.</param>
    /// <param name="heightM">Height of the points, m.</param>
    /// <param name="aboveWm2">Level, W/m² of all sunlight.</param>
    /// <returns>Hours in the month.</returns>
    /// <remarks>Sun and even sky by their own moment; what is scattered and reflected follows the global by the month's mean share.</remarks>
    public static double Above(
        SectionLight light, GableSection section, double ponyM, SectionCovers covers, SectionLight.Bench bench, int month, double heightM, double aboveWm2)
    {
        ArgumentNullException.ThrowIfNull(light);
        ArgumentNullException.ThrowIfNull(covers);
        ArgumentNullException.ThrowIfNull(bench);
        ReadOnlySpan<double> y = [0, 0, 0, section.RidgeOffsetM, section.WidthM, section.WidthM, section.WidthM];
        ReadOnlySpan<double> z = [0, ponyM, section.NearEaveM, section.RidgeM, section.FarEaveM, ponyM, 0];
        double[] edges = new double[7 * light.Points];
        for (int k = 0; k < light.Points; k++)
        {
            SectionView.Edges(y, z, (k + 0.5) * section.WidthM / light.Points, heightM, edges.AsSpan(7 * k, 7));
        }

        double domeShare = DomeShare(section, covers, edges, light.Points);
        SunSamples samples = light.Year.Samples;
        double nearRad = light.Year.NearAzimuthDeg * Math.PI / 180;
        (double east, double north) = Math.SinCos(nearRad);
        List<(double Straight, double Global)> moments = [];
        double straightWh = 0;
        foreach (SunSample s in samples.Lit)
        {
            if (s.Month == month)
            {
                double near = (s.EastCosine * east) + (s.NorthCosine * north);
                double straight = (s.FromSunWm2 * SunShare(section, covers, edges, light.Points, near, s.UpCosine)) + (s.DomeWm2 * domeShare);
                moments.Add((straight, s.GlobalWm2));
                straightWh += straight * SunSamples.SampleH;
            }
        }

        double globalWh = samples.GlobalWhPerM2[month];
        double evenFactor = globalWh > 0 ? Math.Max(0, bench.MeanWhPerM2(month) - straightWh) / globalWh : 0;
        return moments.Count(t => t.Straight + (evenFactor * t.Global) > aboveWm2) * SunSamples.SampleH;
    }

    // Share of the even sky that lies straight on the level at the points, on the mean.
    private static double DomeShare(GableSection section, SectionCovers covers, double[] edges, int points)
    {
        const int profiles = 90;
        const int slices = 12;
        double sum = 0;
        for (int i = 0; i < profiles; i++)
        {
            (double sine, double cosine) = Math.SinCos((i + 0.5) * Math.PI / profiles);
            for (int j = 0; j < slices; j++)
            {
                double u = (j + 0.5) / slices;
                double s = Math.Sqrt(1 - (u * u));
                sum += SunShare(section, covers, edges, points, s * cosine, s * sine) * 2 / (profiles * slices);
            }
        }

        return sum;
    }

    // Share of a unit beam that lies straight on the level at the points, on the mean.
    private static double SunShare(GableSection section, SectionCovers covers, double[] edges, int points, double near, double up)
    {
        double s = Math.Sqrt((near * near) + (up * up));
        double profile = Math.Atan2(up, near);
        (double sine, double cosine) = s > 0 ? (up / s, near / s) : (0, 1);
        double nearLength = section.NearSlopeM;
        double farLength = section.FarSlopeM;
        Span<double> passes = stackalloc double[6];
        for (int f = 0; f < 6; f++)
        {
            double facing = f switch
            {
                0 or 1 => cosine,
                2 => ((section.RidgeOffsetM * sine) + ((section.RidgeM - section.NearEaveM) * cosine)) / nearLength,
                3 => (((section.WidthM - section.RidgeOffsetM) * sine) - ((section.RidgeM - section.FarEaveM) * cosine)) / farLength,
                _ => -cosine,
            };
            passes[f] = facing > 0 && covers.At(f) is SectionCover.Clear clear
                ? clear.Year.Optics.AtCosine(facing * s).TransmittanceFraction * (1 - clear.Year.FrameFraction) * (1 - clear.Year.Optics.HazeFraction)
                : 0;
        }

        double sum = 0;
        for (int k = 0; k < points; k++)
        {
            int f = 0;
            while (f < 5 && profile > edges[(7 * k) + f + 1])
            {
                f++;
            }

            sum += passes[f];
        }

        return up * sum / points;
    }
}
