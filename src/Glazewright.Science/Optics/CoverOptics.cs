using Glazewright.Science.Guards;

namespace Glazewright.Science.Optics;

/// <summary>A cover as the light computation needs it: three shares for each whole degree of incidence, and for diffuse light.</summary>
/// <remarks>The table is the same from both sides. Equality is by content.</remarks>
public sealed class CoverOptics : IEquatable<CoverOptics>
{
    /// <summary>Entries of the table: 0° to 90°.</summary>
    public const int Entries = 91;

    private readonly double[] transmittance;
    private readonly double[] reflectance;

    private CoverOptics(double[] transmittance, double[] reflectance, double hazeFraction)
    {
        this.transmittance = transmittance;
        this.reflectance = reflectance;
        HazeFraction = hazeFraction;
        Diffuse = Hemisphere();
    }

    /// <summary>Share of the transmitted beam that leaves the cover scattered in all directions.</summary>
    public double HazeFraction { get; }

    /// <summary>Shares of evenly diffuse light; equal to the integral of the table.</summary>
    public LightShares Diffuse { get; }

    /// <summary>True when no light at all passes.</summary>
    public bool IsOpaque => Diffuse.TransmittanceFraction <= 0;

    /// <summary>A cover from its table.</summary>
    /// <param name="shares">91 rows for 0° to 90°, each three fractions of at least 0 that sum to 1 within 1e-9.</param>
    /// <param name="hazeFraction">Scattered share of what passes, 0 to 1.</param>
    /// <returns>The cover.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Wrong count, range or sum.</exception>
    public static CoverOptics FromTable(ReadOnlySpan<LightShares> shares, double hazeFraction)
    {
        Within.Require(shares.Length, Entries, Entries);
        Within.Require(hazeFraction, 0, 1);
        var t = new double[Entries];
        var r = new double[Entries];
        for (int i = 0; i < Entries; i++)
        {
            LightShares row = shares[i];
            Within.Require(row.TransmittanceFraction, 0, 1);
            Within.Require(row.ReflectanceFraction, 0, 1);
            Within.Require(row.AbsorptanceFraction, 0, 1);
            Within.Require(row.TransmittanceFraction + row.ReflectanceFraction + row.AbsorptanceFraction, 1 - 1e-9, 1 + 1e-9);
            t[i] = row.TransmittanceFraction;
            r[i] = row.ReflectanceFraction;
        }

        return new CoverOptics(t, r, hazeFraction);
    }

    /// <summary>Shares at an angle, linear between whole degrees.</summary>
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
        && reflectance.AsSpan().SequenceEqual(other.reflectance);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as CoverOptics);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(HazeFraction, transmittance[0], transmittance[60], reflectance[60]);

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
