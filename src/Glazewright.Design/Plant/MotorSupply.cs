using Glazewright.Design.Brief;
using Glazewright.Design.Services;

namespace Glazewright.Design.Plant;

/// <summary>
/// The voltage that motors are bought for. Entries of the catalogue name North American ones (115, 208 and 230 V); on a lot of 230 V a leg the same motors are wound for 230 V on one leg
/// and 400 V on three, at as much less current (IEC 60038: 230/400 V).
/// </summary>
/// <param name="ServiceV">Voltage of the service, V.</param>
/// <param name="LegV">Voltage of one leg where it is some 230 V; 0 where small motors are of 115 V.</param>
/// <param name="PairV">Voltage between legs there, V.</param>
internal readonly record struct MotorSupply(double ServiceV, double LegV, double PairV)
{
    // From here a leg carries what is of 115 V elsewhere.
    private const double LeastLegV = 200;

    /// <summary>Of a lot.</summary>
    public static MotorSupply Of(Utilities lot, bool metric)
    {
        PanelSystem system = PanelSystem.Of(lot.Phase, lot.ServiceV, metric);
        return system.NeutralV > LeastLegV ? new(lot.ServiceV, system.NeutralV, system.PairV) : new(lot.ServiceV, 0, 0);
    }

    /// <summary>What a motor rated so in the catalogue is bought for.</summary>
    public double Volts(double ratedV, bool threePhase) => LegV <= 0 ? ratedV : threePhase ? PairV > 0 ? PairV : ratedV : LegV;
}
