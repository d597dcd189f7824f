using Glazewright.Science.Light;

namespace Glazewright.Bench.Convergence;

/// <summary>The even sky by the product's rule in any size: Gauss–Legendre in elevation, even steps in azimuth.</summary>
internal sealed class SkyRule
{
    private SkyRule(Vector3d[] towards, double[] factors)
    {
        Towards = towards;
        Factors = factors;
    }

    internal Vector3d[] Towards { get; }

    /// <summary>Normal irradiance from each direction in a sky of unit horizontal irradiance.</summary>
    internal double[] Factors { get; }

    internal static SkyRule Of(int elevations, int azimuths)
    {
        var towards = new Vector3d[elevations * azimuths];
        double[] factors = new double[towards.Length];
        for (int e = 0; e < elevations; e++)
        {
            (double node, double weight) = Legendre(e, elevations);
            double factor = weight * Math.PI / 2 * Math.Cos(node * Math.PI / 2) * 2 / azimuths;
            for (int a = 0; a < azimuths; a++)
            {
                towards[(e * azimuths) + a] = Vector3d.Towards((a + 0.5) * 360 / azimuths, 90 * node);
                factors[(e * azimuths) + a] = factor;
            }
        }

        return new SkyRule(towards, factors);
    }

    /// <summary>Stops when the product's own sky is no longer this rule with 8 by 36.</summary>
    internal static SkyRule Usual()
    {
        SkyRule rule = Of(8, 36);
        bool same = rule.Towards.Length == SkyDome.Usual.Directions.Count
            && Enumerable.Range(0, rule.Towards.Length).All(i =>
                (rule.Towards[i] - SkyDome.Usual.Directions[i]).LengthM < 1e-12 && Math.Abs(rule.Factors[i] - SkyDome.Usual.IrradianceFactors[i]) < 1e-12);
        return same ? rule : throw new InvalidOperationException("The product's sky is no longer 8 by 36 Gauss–Legendre directions: mend the study.");
    }

    // Node and weight on 0..1 by Newton's method on the recurrence (Abramowitz & Stegun 25.4.29 and 22.7.10).
    private static (double Node, double Weight) Legendre(int index, int count)
    {
        double x = Math.Cos(Math.PI * (count - index - 0.25) / (count + 0.5));
        double slope = 1;
        for (int step = 0; step < 50; step++)
        {
            double before = 1;
            double value = x;
            for (int k = 2; k <= count; k++)
            {
                (before, value) = (value, (((2 * k) - 1) * x * value - ((k - 1) * before)) / k);
            }

            slope = count * ((x * value) - before) / ((x * x) - 1);
            x -= value / slope;
        }

        return ((x + 1) / 2, 1 / ((1 - (x * x)) * slope * slope));
    }
}
