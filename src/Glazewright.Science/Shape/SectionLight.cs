using Glazewright.Science.Guards;

namespace Glazewright.Science.Shape;

/// <summary>
/// Light across a long house, by month: sun and sky straight to points at bench height through the part each direction enters by, and what covers scatter and
/// the inside reflects by radiosity between the parts of the section.
/// </summary>
/// <remarks>
/// Strips without end: view factors between parts by Hottel's crossed strings, from a point to a part ½(cos ψ₁ − cos ψ₂) (Hottel and Sarofim, Radiative
/// Transfer, 1967; from memory). Each part is taken evenly bright. End walls, members, neighbours and skyline are not here: the full map has them.
/// </remarks>
public sealed partial class SectionLight
{
    private const int Faces = 6;
    private const int Sides = Faces + 1;
    private const int Floor = Faces;
    private const int Months = SectionYear.Months;

    private readonly SectionYear year;
    private readonly int points;
    private readonly double heightM;
    private readonly double floorReflectance;

    /// <summary>Prepares.</summary>
    /// <param name="year">The binned year.</param>
    /// <param name="points">Points across, 2 to 400.</param>
    /// <param name="heightM">Their height, 0 to 10 m.</param>
    /// <param name="floorReflectanceFraction">Crop and floor, 0 to 0.95.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public SectionLight(SectionYear year, int points, double heightM, double floorReflectanceFraction)
    {
        ArgumentNullException.ThrowIfNull(year);
        Within.Require(points, 2, 400);
        Within.Require(heightM, 0, 10);
        Within.Require(floorReflectanceFraction, 0, 0.95);
        this.year = year;
        this.points = points;
        this.heightM = heightM;
        floorReflectance = floorReflectanceFraction;
    }

    /// <summary>Points across.</summary>
    public int Points => points;

    /// <summary>The binned year.</summary>
    public SectionYear Year => year;

    /// <summary>Room for one thread.</summary>
    /// <returns>The bench.</returns>
    public Bench Room() => new(points, year.Bins);

    /// <summary>Lights a section; total for any convex gable.</summary>
    /// <param name="section">The section.</param>
    /// <param name="ponyM">Top of the pony walls, at most both eaves.</param>
    /// <param name="covers">Covers.</param>
    /// <param name="bench">Where the results go.</param>
    public void Run(GableSection section, double ponyM, SectionCovers covers, Bench bench)
    {
        ArgumentNullException.ThrowIfNull(covers);
        ArgumentNullException.ThrowIfNull(bench);
        ponyM = Math.Clamp(ponyM, 0, Math.Min(section.NearEaveM, section.FarEaveM));
        ReadOnlySpan<double> y = [0, 0, 0, section.RidgeOffsetM, section.WidthM, section.WidthM, section.WidthM];
        ReadOnlySpan<double> z = [0, ponyM, section.NearEaveM, section.RidgeM, section.FarEaveM, ponyM, 0];
        Span<double> length = stackalloc double[Sides];
        Span<double> normalY = stackalloc double[Sides];
        Span<double> normalZ = stackalloc double[Sides];
        for (int f = 0; f < Sides; f++)
        {
            int next = f + 1 == Sides ? 0 : f + 1;
            double dy = y[next] - y[f];
            double dz = z[next] - z[f];
            length[f] = Math.Sqrt((dy * dy) + (dz * dz));
            normalY[f] = length[f] > 0 ? -dz / length[f] : 0;
            normalZ[f] = length[f] > 0 ? dy / length[f] : 0;
        }

        bench.Enters.AsSpan().Clear();
        bench.Strikes.AsSpan().Clear();
        Straight(covers, bench, y, z, length, normalY, normalZ);
        Ground(covers, bench, y, z, length, normalY, normalZ);
        Spread(covers, bench, y, z, length);
        Gather(bench, y, z);
    }

    // Sun and sky through each clear part: what reaches a level plane (running sums over the bins), and which parts inside it strikes.
    private void Straight(
        SectionCovers covers, Bench bench, ReadOnlySpan<double> y, ReadOnlySpan<double> z,
        ReadOnlySpan<double> length, ReadOnlySpan<double> normalY, ReadOnlySpan<double> normalZ)
    {
        double[] reached = bench.Reached;
        Span<double> passes = stackalloc double[Months];
        Span<double> across = stackalloc double[Sides];
        reached.AsSpan(0, Faces * Months).Clear();
        for (int bin = 0; bin < year.Bins; bin++)
        {
            (double sine, double cosine) = Math.SinCos((bin + 0.5) * Math.PI / year.Bins);
            Across(y, z, sine, cosine, across);
            int before = bin * Faces * Months;
            int after = before + (Faces * Months);
            reached.AsSpan(before, Faces * Months).CopyTo(reached.AsSpan(after));
            for (int f = 0; f < Faces; f++)
            {
                double facing = (normalZ[f] * sine) - (normalY[f] * cosine);
                if (facing <= 1e-9 || length[f] <= 0 || covers.At(f) is not SectionCover.Clear clear)
                {
                    continue;
                }

                CoverYear cover = clear.Year;
                double place = Math.Min(facing, 1) * CoverYear.Steps;
                int low = Math.Min((int)place, CoverYear.Steps - 1);
                double part = place - low;
                ReadOnlySpan<double> table = cover.Table.AsSpan(((bin * (CoverYear.Steps + 1)) + low) * Months, 2 * Months);
                Span<double> enters = bench.Enters.AsSpan(f * Months, Months);
                Span<double> sum = reached.AsSpan(after + (f * Months), Months);
                double straight = 1 - cover.Optics.HazeFraction;
                for (int m = 0; m < Months; m++)
                {
                    double pass = table[m] + (part * (table[Months + m] - table[m]));
                    enters[m] += length[f] * facing * pass;
                    passes[m] = straight * pass;
                    sum[m] += sine * passes[m];
                }

                Strike(bench, f, passes, sine, cosine, across, normalY, normalZ);
            }
        }
    }

    // Places of the corners on a line across the beam.
    private static void Across(ReadOnlySpan<double> y, ReadOnlySpan<double> z, double sine, double cosine, Span<double> across)
    {
        for (int i = 0; i < Sides; i++)
        {
            across[i] = (y[i] * sine) + (z[i] * cosine);
        }
    }

    // A beam through part f meets those parts that look away from the sun: common widths across the beam.
    private static void Strike(
        Bench bench, int from, ReadOnlySpan<double> passes, double sine, double cosine,
        ReadOnlySpan<double> across, ReadOnlySpan<double> normalY, ReadOnlySpan<double> normalZ)
    {
        for (int g = 0; g < Sides; g++)
        {
            double common = (normalZ[g] * sine) - (normalY[g] * cosine) < 0 ? Common(across, from, g) : 0;
            if (common > 0)
            {
                Span<double> strikes = bench.Strikes.AsSpan(g * Months, Months);
                for (int m = 0; m < Months; m++)
                {
                    strikes[m] += common * passes[m];
                }
            }
        }
    }

    private static double Common(ReadOnlySpan<double> across, int f, int g)
    {
        double a = across[f];
        double b = across[f + 1];
        double c = across[g];
        double d = across[g + 1 == Sides ? 0 : g + 1];
        return Math.Min(Math.Max(a, b), Math.Max(c, d)) - Math.Max(Math.Min(a, b), Math.Min(c, d));
    }

    // Light thrown up by the ground: evenly bright below the horizon. It strikes roofs and walls inside and reaches the bench only from them.
    private void Ground(
        SectionCovers covers, Bench bench, ReadOnlySpan<double> y, ReadOnlySpan<double> z,
        ReadOnlySpan<double> length, ReadOnlySpan<double> normalY, ReadOnlySpan<double> normalZ)
    {
        ReadOnlySpan<double> ground = year.Samples.GroundWhPerM2;
        Span<double> across = stackalloc double[Sides];
        Span<double> passes = stackalloc double[Months];
        const int coarse = 3;
        int bins = year.Bins / coarse;
        double widen = (double)year.Bins / bins;
        for (int bin = 0; bin < bins; bin++)
        {
            (double sine, double cosine) = Math.SinCos(-(bin + 0.5) * Math.PI / bins);
            Across(y, z, sine, cosine, across);
            for (int f = 0; f < Faces; f++)
            {
                double facing = (normalZ[f] * sine) - (normalY[f] * cosine);
                if (facing <= 1e-9 || length[f] <= 0 || covers.At(f) is not SectionCover.Clear clear)
                {
                    continue;
                }

                double[] even = clear.Year.EvenBin;
                double place = Math.Min(facing, 1) * CoverYear.Steps;
                int low = Math.Min((int)place, CoverYear.Steps - 1);
                double pass = widen * (even[low] + ((place - low) * (even[low + 1] - even[low])));
                double straight = 1 - clear.Year.Optics.HazeFraction;
                for (int m = 0; m < Months; m++)
                {
                    bench.Enters[(f * Months) + m] += length[f] * facing * pass * ground[m];
                    passes[m] = straight * pass * ground[m];
                }

                Strike(bench, f, passes, sine, cosine, across, normalY, normalZ);
            }
        }
    }

    // Scattered and reflected light: each part's brightness B = sent + reflectance · Σ view · B.
    private void Spread(SectionCovers covers, Bench bench, ReadOnlySpan<double> y, ReadOnlySpan<double> z, ReadOnlySpan<double> length)
    {
        Span<double> reflectance = stackalloc double[Sides];
        Span<double> system = stackalloc double[Sides * Sides];
        for (int f = 0; f < Sides; f++)
        {
            SectionCover? cover = f == Floor ? null : covers.At(f);
            double haze = cover is SectionCover.Clear clear ? clear.Year.Optics.HazeFraction : 0;
            reflectance[f] = cover switch
            {
                null => floorReflectance,
                SectionCover.Clear c => c.Year.Optics.Diffuse.ReflectanceFraction,
                SectionCover.Opaque o => o.InsideReflectanceFraction,
                _ => 0,
            };
            for (int m = 0; m < Months; m++)
            {
                int at = (f * Months) + m;
                double scattered = f == Floor ? 0 : haze * bench.Enters[at];
                bench.Sent[at] = length[f] > 0 ? ((reflectance[f] * bench.Strikes[at]) + scattered) / length[f] : 0;
                bench.Bright[at] = bench.Sent[at];
            }

            for (int g = 0; g < Sides; g++)
            {
                double view = f == g || length[f] <= 0 ? 0 : CrossedStrings(y, z, f, g) / length[f];
                bench.View[(f * Sides) + g] = view;
                system[(f * Sides) + g] = (f == g ? 1 : 0) - (reflectance[f] * view);
            }
        }

        Solve(system, bench.Bright);
        for (int m = 0; m < Months; m++)
        {
            double entered = 0;
            double stayed = 0;
            for (int f = 0; f < Sides; f++)
            {
                double meets = bench.Strikes[(f * Months) + m];
                for (int g = 0; g < Sides; g++)
                {
                    meets += length[f] * bench.View[(f * Sides) + g] * bench.Bright[(g * Months) + m];
                }

                stayed += (1 - reflectance[f]) * meets;
                entered += f == Floor ? 0 : bench.Enters[(f * Months) + m];
            }

            bench.Entered[m] = entered;
            bench.Stayed[m] = stayed;
        }
    }

    // Half of the crossed less the uncrossed strings between two parts: length times view factor.
    private static double CrossedStrings(ReadOnlySpan<double> y, ReadOnlySpan<double> z, int f, int g)
    {
        int f1 = f + 1 == Sides ? 0 : f + 1;
        int g1 = g + 1 == Sides ? 0 : g + 1;
        double strings = Distance(y, z, f, g) + Distance(y, z, f1, g1) - Distance(y, z, f, g1) - Distance(y, z, f1, g);
        return Math.Max(0, strings / 2);
    }

    private static double Distance(ReadOnlySpan<double> y, ReadOnlySpan<double> z, int i, int j)
    {
        double dy = y[i] - y[j];
        double dz = z[i] - z[j];
        return Math.Sqrt((dy * dy) + (dz * dz));
    }

    // Gauss without pivots: rows are diagonally dominant, as every reflectance is below 1.
    private static void Solve(Span<double> system, Span<double> bright)
    {
        for (int p = 0; p < Sides; p++)
        {
            for (int r = p + 1; r < Sides; r++)
            {
                double factor = system[(r * Sides) + p] / system[(p * Sides) + p];
                if (factor == 0)
                {
                    continue;
                }

                for (int c = p + 1; c < Sides; c++)
                {
                    system[(r * Sides) + c] -= factor * system[(p * Sides) + c];
                }

                for (int m = 0; m < Months; m++)
                {
                    bright[(r * Months) + m] -= factor * bright[(p * Months) + m];
                }
            }
        }

        for (int p = Sides - 1; p >= 0; p--)
        {
            double pivot = system[(p * Sides) + p];
            for (int m = 0; m < Months; m++)
            {
                double value = bright[(p * Months) + m];
                for (int c = p + 1; c < Sides; c++)
                {
                    value -= system[(p * Sides) + c] * bright[(c * Months) + m];
                }

                bright[(p * Months) + m] = value / pivot;
            }
        }
    }

    private void Gather(Bench bench, ReadOnlySpan<double> y, ReadOnlySpan<double> z)
    {
        Span<double> edges = stackalloc double[Sides];
        for (int k = 0; k < points; k++)
        {
            SectionView.Edges(y, z, (k + 0.5) * y[4] / points, heightM, edges);
            Span<double> light = bench.PointWhPerM2.AsSpan(k * Months, Months);
            light.Clear();
            for (int f = 0; f < Faces; f++)
            {
                if (edges[f + 1] <= edges[f])
                {
                    continue;
                }

                double view = (Math.Cos(edges[f]) - Math.Cos(edges[f + 1])) / 2;
                (int low, double lowPart) = Bin(edges[f]);
                (int high, double highPart) = Bin(edges[f + 1]);
                ReadOnlySpan<double> from = bench.Reached.AsSpan(((low * Faces) + f) * Months);
                ReadOnlySpan<double> to = bench.Reached.AsSpan(((high * Faces) + f) * Months);
                ReadOnlySpan<double> bright = bench.Bright.AsSpan(f * Months, Months);
                for (int m = 0; m < Months; m++)
                {
                    double start = from[m] + (lowPart * (from[(Faces * Months) + m] - from[m]));
                    double end = to[m] + (highPart * (to[(Faces * Months) + m] - to[m]));
                    light[m] += end - start + (view * bright[m]);
                }
            }
        }
    }

    private (int Bin, double Part) Bin(double profileRad)
    {
        double place = profileRad / Math.PI * year.Bins;
        int low = Math.Clamp((int)place, 0, year.Bins - 1);
        return (low, place - low);
    }
}
