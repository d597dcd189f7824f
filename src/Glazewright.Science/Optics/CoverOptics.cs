using Glazewright.Science.Guards;

namespace Glazewright.Science.Optics;

/// <summary>
/// A cover as the light computation needs it: three shares for each whole degree of incidence, for a ribbed sheet also for each five degrees between its ribs and the
/// light's trace; and for diffuse light.
/// </summary>
/// <remarks>The table is the same from both sides. Equality is by content.</remarks>
public sealed class CoverOptics : IEquatable<CoverOptics>
{
    /// <summary>Entries of the table: 0° to 90°.</summary>
    public const int Entries = 91;

    /// <summary>Entries of a ribbed sheet at each angle of incidence: 0° (along the ribs) to 90° (across).</summary>
    public const int RibEntries = 19;

    /// <summary>Degrees from one of these to the next.</summary>
    public const double RibStepDeg = 5;

    // Means over all turns about the normal; a plain cover's only values.
    private readonly double[] transmittance;
    private readonly double[] reflectance;

    // Incidence slowest; empty for a plain cover.
    private readonly double[] ribTransmittance;
    private readonly double[] ribReflectance;

    private CoverOptics(double[] transmittance, double[] reflectance, double[] ribTransmittance, double[] ribReflectance, double hazeFraction)
    {
        this.transmittance = transmittance;
        this.reflectance = reflectance;
        this.ribTransmittance = ribTransmittance;
        this.ribReflectance = ribReflectance;
        HazeFraction = hazeFraction;
        Diffuse = Hemisphere();
    }

    /// <summary>Share of the transmitted beam that leaves the cover scattered in all directions.</summary>
    public double HazeFraction { get; }

    /// <summary>Shares of evenly diffuse light; equal to the integral of the table.</summary>
    public LightShares Diffuse { get; }

    /// <summary>True when it matters how the sheet is turned.</summary>
    public bool HasRibs => ribTransmittance.Length > 0;

    /// <summary>True when no light at all passes.</summary>
    public bool IsOpaque => Diffuse.TransmittanceFraction <= 0;

    /// <summary>A cover from its table.</summary>
    /// <param name="shares">
    /// Each three fractions of at least 0 that sum to 1 within 1e-9: 91 for 0° to 90° of incidence, or 91 times 19 for 0° to 90° between ribs and trace at each of them.
    /// </param>
    /// <param name="hazeFraction">Scattered share of what passes, 0 to 1.</param>
    /// <returns>The cover.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Wrong count, range or sum.</exception>
    public static CoverOptics FromTable(ReadOnlySpan<LightShares> shares, double hazeFraction)
    {
        int columns = shares.Length == Entries ? 1 : RibEntries;
        Within.Require(shares.Length, Entries * columns, Entries * columns);
        Within.Require(hazeFraction, 0, 1);
        var t = new double[shares.Length];
        var r = new double[shares.Length];
        for (int i = 0; i < shares.Length; i++)
        {
            LightShares row = shares[i];
            Within.Require(row.TransmittanceFraction, 0, 1);
            Within.Require(row.ReflectanceFraction, 0, 1);
            Within.Require(row.AbsorptanceFraction, 0, 1);
            Within.Require(row.TransmittanceFraction + row.ReflectanceFraction + row.AbsorptanceFraction, 1 - 1e-9, 1 + 1e-9);
            t[i] = row.TransmittanceFraction;
            r[i] = row.ReflectanceFraction;
        }

        return columns == 1 ? new CoverOptics(t, r, [], [], hazeFraction) : new CoverOptics(Means(t), Means(r), t, r, hazeFraction);
    }

    /// <summary>Shares of a beam on a sheet whose ribs are known, linear between the entries in both angles; a plain cover's do not depend on the ribs.</summary>
    /// <param name="incidenceCosine">Clamped to 0..1.</param>
    /// <param name="alongCosine">Of the angle between beam and ribs, either sense.</param>
    /// <returns>Three fractions that sum to 1.</returns>
    public LightShares AtCosines(double incidenceCosine, double alongCosine)
    {
        if (ribTransmittance.Length == 0)
        {
            return AtCosine(incidenceCosine);
        }

        double cosine = Math.Clamp(incidenceCosine, 0, 1);
        double sine = Math.Sqrt(1 - (cosine * cosine));
        double incidence = Math.Acos(cosine) * 180 / Math.PI;
        double across = sine < 1e-9 ? 0 : Math.Acos(Math.Min(1, Math.Abs(alongCosine) / sine)) * 180 / Math.PI / RibStepDeg;
        int row = Math.Min((int)incidence, Entries - 2);
        int column = Math.Min((int)across, RibEntries - 2);
        double down = incidence - row;
        double over = across - column;
        double t = Bilinear(ribTransmittance, row, column, down, over);
        double r = Bilinear(ribReflectance, row, column, down, over);
        return new LightShares(t, r, Math.Max(0, 1 - t - r));
    }

    /// <summary>Shares at an angle, linear between whole degrees; of a ribbed sheet the mean over all turns about its normal.</summary>
    /// <param name="incidenceDeg">0 to 90, clamped.</param>
    /// <returns>Three fractions that sum to 1.</returns>
    public LightShares At(double incidenceDeg)
    {
        double place = Math.Clamp(incidenceDeg, 0, 90);
        int low = Math.Min((int)place, Entries - 2);
        double part = place - low;
        double t = transmittance[low] + (part * (transmittance[low + 1] - transmittance[low]));
        double r = reflectance[low] + (part * (reflectance[low + 1] - reflectance[low]));
        return new LightShares(t, r, Math.Max(0, 1 - t - r));
    }

    /// <summary>Shares at an angle given by its cosine.</summary>
    /// <param name="incidenceCosine">Clamped to 0..1.</param>
    /// <returns>Three fractions that sum to 1.</returns>
    public LightShares AtCosine(double incidenceCosine) =>
        At(Math.Acos(Math.Clamp(incidenceCosine, 0, 1)) * 180 / Math.PI);

    /// <inheritdoc/>
    public bool Equals(CoverOptics? other) =>
        other is not null
        && HazeFraction == other.HazeFraction
        && transmittance.AsSpan().SequenceEqual(other.transmittance)
        && reflectance.AsSpan().SequenceEqual(other.reflectance)
        && ribTransmittance.AsSpan().SequenceEqual(other.ribTransmittance)
        && ribReflectance.AsSpan().SequenceEqual(other.ribReflectance);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as CoverOptics);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(HazeFraction, transmittance[0], transmittance[60], reflectance[60]);

    private static double Bilinear(double[] values, int row, int column, double down, double over)
    {
        int at = (row * RibEntries) + column;
        double upper = values[at] + (over * (values[at + 1] - values[at]));
        double lower = values[at + RibEntries] + (over * (values[at + RibEntries + 1] - values[at + RibEntries]));
        return upper + (down * (lower - upper));
    }

    // Exact for the table as it is read: straight lines between its entries.
    private static double[] Means(double[] values)
    {
        var means = new double[Entries];
        for (int row = 0; row < Entries; row++)
        {
            ReadOnlySpan<double> of = values.AsSpan(row * RibEntries, RibEntries);
            double sum = -0.5 * (of[0] + of[^1]);
            foreach (double value in of)
            {
                sum += value;
            }

            means[row] = sum / (RibEntries - 1);
        }

        return means;
    }

    // The mean over all turns carries the whole hemisphere's integral: both angles are in it.
    private LightShares Hemisphere()
    {
        const int steps = 360;
        double t = 0;
        double r = 0;
        for (int i = 0; i < steps; i++)
        {
            LightShares row = At(Math.Asin(Math.Sqrt((i + 0.5) / steps)) * 180 / Math.PI);
            t += row.TransmittanceFraction / steps;
            r += row.ReflectanceFraction / steps;
        }

        return new LightShares(t, r, Math.Max(0, 1 - t - r));
    }
}
