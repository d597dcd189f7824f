using Glazewright.Science.Guards;

namespace Glazewright.Science.Climate;

/// <summary>
/// A house cut into equal cells along its length, each a <see cref="HouseModel"/> of its own: fans draw the air from cell to cell, still and stirred air mixes between neighbours, heat is given
/// where the heaters hang. For looking at single days; the year carries one cell.
/// </summary>
/// <remarks>
/// Cells stand in the order of the fans' air, the intake's first, and are solved in that order, so that a cell draws what the one before it gives in the same step. Mixing follows each step:
/// an implicit exchange between neighbours of both airs, which conserves heat and water. Limits: shell, floor, sun, leaks, vents and fog are spread evenly along the house, its end walls too;
/// radiation between cells is left out; a cell's leaks are pressed by the fans as the whole house's are, so fewer leak while fans run.
/// </remarks>
public sealed class HouseCells
{
    private const double StillMPerS = 0.05; // free convection along a house (choice)
    private const double StirredMPerS = 0.3; // air speed that circulation fans keep up over the section (common practice: 0.25 to 0.5)

    private readonly HouseModel[] models;
    private readonly HouseState[] states;
    private readonly double sectionBelowM2, sectionAboveM2, airKgBelow, airKgAbove;
    private readonly double[] diagonal, right;

    /// <summary>Cuts a house.</summary>
    /// <param name="house">The whole house.</param>
    /// <param name="count">Cells, 1 to 60.</param>
    /// <param name="lengthM">Length of the house, m, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size out of range.</exception>
    public HouseCells(HouseParameters house, int count, double lengthM)
    {
        ArgumentNullException.ThrowIfNull(house);
        Within.Require(count, 1, 60);
        Within.Require(lengthM, 0.5, 1e5);
        double share = 1.0 / count;
        HouseParameters cell = house with
        {
            PartsAlong = count,
            FloorAreaM2 = house.FloorAreaM2 * share,
            AirBelowM3 = house.AirBelowM3 * share,
            AirAboveM3 = house.AirAboveM3 * share,
            UpperClear = Part(house.UpperClear, share),
            LowerClear = Part(house.LowerClear, share),
            UpperOpaque = Part(house.UpperOpaque, share),
            LowerOpaque = Part(house.LowerOpaque, share),
            EdgeLossWPerK = house.EdgeLossWPerK * share,
            MassJPerK = house.MassJPerK * share,
            MassSurfaceM2 = house.MassSurfaceM2 * share,
            LeakageStackM3PerSRootK = house.LeakageStackM3PerSRootK * share,
            LeakageWindM2 = house.LeakageWindM2 * share,
            LeakageBaseM3PerS = house.LeakageBaseM3PerS * share,
        };
        models = [.. Enumerable.Range(0, count).Select(_ => new HouseModel(cell))];
        states = new HouseState[count];
        sectionBelowM2 = house.AirBelowM3 / lengthM;
        sectionAboveM2 = house.AirAboveM3 / lengthM;
        CellLengthM = lengthM * share;
        airKgBelow = HouseModel.StoredAirKg(cell.AirBelowM3);
        airKgAbove = HouseModel.StoredAirKg(cell.AirAboveM3);
        diagonal = new double[count];
        right = new double[count];
    }

    /// <summary>Number of cells.</summary>
    public int Count => models.Length;

    /// <summary>Length of a cell, m.</summary>
    public double CellLengthM { get; }

    /// <summary>Dry air that came in from outside over the last step, kg/s: fans' air once, leaks of every cell.</summary>
    public double OutsideAirKgPerS { get; private set; }

    /// <summary>State of a cell.</summary>
    /// <param name="cell">0 at the intake.</param>
    public HouseState State(int cell) => states[cell];

    /// <summary>What moved in a cell over the last step, before mixing.</summary>
    /// <param name="cell">0 at the intake.</param>
    public ref readonly HouseFluxes LastFluxes(int cell) => ref models[cell].LastFluxes;

    /// <summary>Starts with every cell as the whole house is.</summary>
    /// <param name="whole">State of the house as one.</param>
    public void Start(HouseState whole)
    {
        ArgumentNullException.ThrowIfNull(whole);
        for (int i = 0; i < states.Length; i++)
        {
            states[i] = whole.Part(1.0 / states.Length);
        }
    }

    /// <summary>Takes one step.</summary>
    /// <param name="whole">What acts on the whole house.</param>
    /// <param name="heatShares">One a cell: share of the heat delivered there; they sum to 1 while there is heat.</param>
    /// <param name="stepS">Step, s; well below the time that the air takes through a cell.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not one share a cell.</exception>
    public void Step(in HouseForcing whole, ReadOnlySpan<double> heatShares, double stepS)
    {
        Within.Require(heatShares.Length, Count, Count);
        double share = 1.0 / Count;
        HouseForcing f = whole;
        f.SunUpperClearW *= share;
        f.SunLowerClearW *= share;
        f.SunUpperOpaqueInnerW *= share;
        f.SunLowerOpaqueInnerW *= share;
        f.SunUpperOpaqueOuterW *= share;
        f.SunLowerOpaqueOuterW *= share;
        f.SunCurtainW *= share;
        f.SunCanopyW *= share;
        f.SunFloorW *= share;
        f.SunMassW *= share;
        f.SunAirBelowW *= share;
        f.SunAirAboveW *= share;
        f.FanAboveM3PerS *= share;
        f.PositivePressureM3PerS *= share;
        f.UpperAirM3PerS *= share;
        f.RoofVentM2 *= share;
        f.SideVentM2 *= share;
        f.FogKgPerS *= share;
        f.VapourKgPerS *= share;
        f.DryingKgPerS *= share;
        f.LampW *= share;
        OutsideAirKgPerS = 0.0;
        for (int i = 0; i < Count; i++)
        {
            f.HeatW = whole.HeatW * heatShares[i];
            models[i].Step(states[i], in f, stepS);
            ref readonly HouseFluxes x = ref models[i].LastFluxes;
            OutsideAirKgPerS += x.OutsideAirKgPerS;
            f.DrawsUpstream = true;
            f.UpstreamC = x.FanEndC;
            f.UpstreamHumidityRatio = x.FanEndHumidityRatio;
        }

        if (Count > 1)
        {
            Mix(whole.CirculationFraction, whole.PressurePa, stepS);
        }
    }

    private void Mix(double circulation, double pressurePa, double stepS)
    {
        double stirred = circulation > 0.0 ? Math.Min(circulation, 1.0) : 0.0;
        double speed = StillMPerS + stirred * (StirredMPerS - StillMPerS);
        double density = AirConstants.DensityKgPerM3(states[0].AirBelowC, pressurePa > 30_000.0 ? pressurePa : 101_325.0);
        double belowKgPerS = speed * sectionBelowM2 * density;
        double aboveKgPerS = StillMPerS * sectionAboveM2 * density;
        double heatBelow = models[0].AirJPerK.Below, heatAbove = models[0].AirJPerK.Above;
        const double Cp = AirConstants.SpecificHeatJPerKgK;
        Spread(belowKgPerS * Cp * stepS / heatBelow, s => s.Temperature.AirBelow, (s, v) => s.Temperature.AirBelow = v);
        Spread(aboveKgPerS * Cp * stepS / heatAbove, s => s.Temperature.AirAbove, (s, v) => s.Temperature.AirAbove = v);
        Spread(belowKgPerS * stepS / airKgBelow, s => s.WaterBelow, (s, v) => s.WaterBelow = v);
        Spread(aboveKgPerS * stepS / airKgAbove, s => s.WaterAbove, (s, v) => s.WaterAbove = v);
        foreach (HouseState state in states)
        {
            state.KeepAirSaturation();
        }
    }

    // (I + k L) x = b with L the exchange between neighbours in a row: the sum stays, whatever k.
    private void Spread(double k, Func<HouseState, double> read, Action<HouseState, double> write)
    {
        int n = Count;
        for (int i = 0; i < n; i++)
        {
            double own = 1.0 + k * (i == 0 || i == n - 1 ? 1.0 : 2.0);
            double before = i == 0 ? 0.0 : k / diagonal[i - 1];
            diagonal[i] = own - before * k;
            right[i] = read(states[i]) + (i == 0 ? 0.0 : before * right[i - 1]);
        }

        double x = 0.0;
        for (int i = n - 1; i >= 0; i--)
        {
            x = (right[i] + (i == n - 1 ? 0.0 : k * x)) / diagonal[i];
            write(states[i], x);
        }
    }

    private static ShellPart Part(ShellPart part, double share) => part with { AreaM2 = part.AreaM2 * share };
}
