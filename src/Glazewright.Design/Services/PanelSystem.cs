using Glazewright.Design.Brief;

namespace Glazewright.Design.Services;

/// <summary>The legs a panel has.</summary>
/// <param name="Legs">Hot legs, 1 to 3.</param>
/// <param name="HighLeg">A corner-fed delta: no 120 V from the second leg.</param>
/// <param name="StepDown">Branch circuits stand behind a transformer.</param>
/// <param name="PairV">Voltage between two legs, V; 0 with one leg.</param>
/// <param name="Words">As printed.</param>
/// <param name="NeutralV">Voltage from a leg to neutral, V.</param>
internal sealed record PanelSystem(int Legs, bool HighLeg, bool StepDown, double PairV, string Words, double NeutralV = 120)
{
    // A one-pole circuit's equipment may be rated so far from the neutral's voltage (115 and 120 V, 220 and 240 V).
    private const double SameVoltageFraction = 0.1;

    /// <summary>The legs of a lot's service: North American systems, and 230/400 V where three phases or metric units say so.</summary>
    public static PanelSystem Of(Phase phase, double serviceV, bool metric) => (phase, serviceV) switch
    {
        (Phase.Three, >= 380 and <= 420) => new PanelSystem(3, false, false, 400, "400Y/230 V, three-phase", 230),
        (Phase.Single, >= 215 and < 238) when metric => new PanelSystem(1, false, false, 0, "230 V, one leg", 230),
        (Phase.Three, >= 200 and < 215) => new PanelSystem(3, false, false, 208, "208Y/120 V, three-phase"),
        (Phase.Three, >= 215 and <= 250) => new PanelSystem(3, true, false, 240, "240/120 V delta, three-phase, leg B high: no 120 V from it"),
        (Phase.Three, _) => new PanelSystem(3, false, true, 208, "208Y/120 V, three-phase, behind a transformer"),
        (_, < 130) => new PanelSystem(1, false, false, 0, "120 V, one leg"),
        (_, >= 200 and < 215) => new PanelSystem(2, false, false, 208, "120/208 V, two legs of a three-phase supply"),
        (_, >= 215 and <= 250) => new PanelSystem(2, false, false, 240, "120/240 V, single-phase"),
        _ => new PanelSystem(2, false, true, 240, "120/240 V, single-phase, behind a transformer"),
    };

    /// <summary>Nominal voltage of a circuit for equipment rated so.</summary>
    public double CircuitV(double ratedV) => Math.Abs(ratedV - NeutralV) <= SameVoltageFraction * NeutralV ? NeutralV : NominalV(ratedV);

    private static double NominalV(double ratedV) => ratedV switch
    {
        >= 110 and <= 125 => 120,
        >= 200 and <= 208 => 208,
        >= 215 and <= 250 => 240,
        >= 440 and <= 480 => 480,
        _ => ratedV,
    };

    /// <summary>Voltage by which a balanced load is turned into current, V.</summary>
    public double LineV => Legs == 1 ? NeutralV : PairV;

    /// <summary>√3 on three legs.</summary>
    public double RootRatio => Legs == 3 ? Math.Sqrt(3) : 1;

    /// <summary>Legs a circuit takes.</summary>
    public int Poles(bool threePhase, double ratedV) => Math.Min(threePhase ? 3 : ratedV <= (1 + SameVoltageFraction) * NeutralV ? 1 : 2, Legs);

    /// <summary>Whether a one-pole circuit may stand on a leg.</summary>
    public bool TakesOnePole(int leg) => !(HighLeg && leg == 1);

    /// <summary>Whether the system gives what equipment is rated for.</summary>
    public bool Suits(bool threePhase, double ratedV) =>
        threePhase ? Legs == 3 && Math.Abs(NominalV(ratedV) - PairV) < 1
        : Math.Abs(ratedV - NeutralV) <= SameVoltageFraction * NeutralV || Math.Abs(NominalV(ratedV) - PairV) < 1;
}
