using Glazewright.Design.Contracts;
using Glazewright.Science.Flow;

namespace Glazewright.Design.Plant;

/// <summary>Catalogue look-ups and small sums that several systems share.</summary>
internal static class Pick
{
    public static T ById<T>(EqList<T> entries, string id, Func<T, string> idOf, string pointer)
        where T : class =>
        entries.FirstOrDefault(e => idOf(e) == id) ?? throw new ArgumentException($"{pointer}: the catalogue has no '{id}'.", nameof(id));

    public static FanCurve Curve(EqList<FanPoint> points, double densityKgPerM3) =>
        FanCurve.Through(points).AtDensity(densityKgPerM3);

    /// <summary>Power factor of motors; of resistance heat it is 1, of lamps with their drivers 0.95 (common practice).</summary>
    public const double MotorPowerFactor = 0.8;

    /// <summary>Running current.</summary>
    public static double FullLoadA(double powerW, double voltageV, bool threePhase, double powerFactor = MotorPowerFactor) =>
        powerW / (powerFactor * voltageV * (threePhase ? Math.Sqrt(3) : 1));

    public static Answer<T> Judge<T>(T choice, double margin, string limit) =>
        margin >= 0 ? new Answer<T>.Met(choice, margin) : new Answer<T>.Missed(choice, margin, limit);
}
