using Glazewright.Science.Guards;

namespace Glazewright.Science.Light.Shadows;

/// <summary>Light of many directions on the cells of a plane: one row a direction. Any month, hour or year is a weighted sum of rows.</summary>
public sealed class LightTable
{
    private readonly float[] factors;
    private readonly BeamShares[] shares;
    private readonly double[] facing;
    private readonly int cells;

    private LightTable(float[] factors, BeamShares[] shares, double[] facing, int cells)
    {
        this.factors = factors;
        this.shares = shares;
        this.facing = facing;
        this.cells = cells;
    }

    /// <summary>Directions in the table.</summary>
    public int Directions => shares.Length;

    /// <summary>Cells of the plane.</summary>
    public int Cells => cells;

    /// <summary>Looks along every direction.</summary>
    /// <param name="enclosure">The house with its bars, its curtain open.</param>
    /// <param name="surroundings">What stands around it.</param>
    /// <param name="plane">The plane.</param>
    /// <param name="fineness">How finely to look.</param>
    /// <param name="towards">Directions, unit, house axes.</param>
    /// <param name="cancel">Looked at before each direction.</param>
    /// <returns>The table; the same whatever the number of threads.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Fineness out of range.</exception>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static LightTable Build(
        Enclosure enclosure,
        Surroundings surroundings,
        ReceivingPlane plane,
        ScanFineness fineness,
        IReadOnlyList<Vector3d> towards,
        CancellationToken cancel) => Build(enclosure, null, surroundings, plane, fineness, towards, cancel);

    /// <summary>Looks along every direction, with a curtain drawn or open.</summary>
    /// <param name="enclosure">The house with its bars.</param>
    /// <param name="curtain">A drawn curtain above the plane, or null.</param>
    /// <param name="surroundings">What stands around it.</param>
    /// <param name="plane">The plane.</param>
    /// <param name="fineness">How finely to look.</param>
    /// <param name="towards">Directions, unit, house axes.</param>
    /// <param name="cancel">Looked at before each direction.</param>
    /// <returns>The table; the same whatever the number of threads.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Fineness out of range, or the plane reaches above the curtain.</exception>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static LightTable Build(
        Enclosure enclosure,
        CurtainPlane? curtain,
        Surroundings surroundings,
        ReceivingPlane plane,
        ScanFineness fineness,
        IReadOnlyList<Vector3d> towards,
        CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(plane);
        ArgumentNullException.ThrowIfNull(towards);
        int cells = plane.Count;
        var factors = new float[towards.Count * cells];
        var shares = new BeamShares[towards.Count];
        double[] facing = [.. towards.Select(t => Math.Max(0, plane.Normal.Dot(t)))];
        Parallel.For(
            0,
            towards.Count,
            new ParallelOptions { CancellationToken = cancel, TaskScheduler = TaskScheduler.Current },
            () => (Scan: new BeamScan(enclosure, surroundings, plane, fineness, curtain), Row: new double[cells]),
            (i, _, own) =>
            {
                shares[i] = own.Scan.Look(towards[i], own.Row);
                for (int k = 0; k < cells; k++)
                {
                    factors[(i * cells) + k] = (float)own.Row[k];
                }

                return own;
            },
            _ => { });
        return new LightTable(factors, shares, facing, cells);
    }

    /// <summary>Mean irradiance of one cell over beam-normal irradiance.</summary>
    /// <param name="direction">0 to Directions − 1.</param>
    /// <param name="cell">0 to Cells − 1.</param>
    /// <returns>At least 0.</returns>
    public double Factor(int direction, int cell) => factors[(direction * cells) + cell];

    /// <summary>Adds the light of weighted directions on each cell.</summary>
    /// <param name="weights">One a direction: beam-normal energy, Wh/m².</param>
    /// <param name="sum">One a cell: grown by Wh/m².</param>
    /// <exception cref="ArgumentOutOfRangeException">Wrong counts.</exception>
    public void AddTo(ReadOnlySpan<double> weights, Span<double> sum)
    {
        Within.Require(weights.Length, Directions, Directions);
        Within.Require(sum.Length, cells, cells);
        for (int i = 0; i < weights.Length; i++)
        {
            double weight = weights[i];
            if (weight == 0)
            {
                continue;
            }

            ReadOnlySpan<float> row = factors.AsSpan(i * cells, cells);
            for (int k = 0; k < sum.Length; k++)
            {
                sum[k] += weight * row[k];
            }
        }
    }

    /// <summary>What became of the light of weighted directions, as energy on the plane.</summary>
    /// <param name="weights">One a direction: beam-normal energy, Wh/m².</param>
    /// <returns>Shares times the energy that would fall on the plane in open country, Wh/m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">Wrong count.</exception>
    public BeamShares Fate(ReadOnlySpan<double> weights)
    {
        Within.Require(weights.Length, Directions, Directions);
        BeamShares sum = default;
        for (int i = 0; i < weights.Length; i++)
        {
            if (weights[i] != 0)
            {
                sum += weights[i] * facing[i] * shares[i];
            }
        }

        return sum;
    }
}
