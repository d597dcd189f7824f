using Glazewright.Design.Contracts;

namespace Glazewright.Design.Takeoff;

/// <summary>The step in which the shop measures: 1/16 in, or 1 mm. Cut lengths are whole steps, so "identical" and "fits" are exact.</summary>
/// <param name="StepM">Length of one step, m.</param>
public readonly record struct ShopTick(double StepM)
{
    /// <summary>The step of a unit system.</summary>
    /// <param name="units">What people read.</param>
    /// <returns>1/16 in or 1 mm.</returns>
    public static ShopTick For(UnitSystem units) => new(units == UnitSystem.Us ? 0.0254 / 16 : 0.001);

    /// <summary>Nearest whole step.</summary>
    /// <param name="lengthM">Length, m.</param>
    /// <returns>Steps.</returns>
    public int Nearest(double lengthM) => (int)Math.Round(lengthM / StepM, MidpointRounding.AwayFromZero);

    /// <summary>Whole steps that hold a length.</summary>
    /// <param name="lengthM">Length, m.</param>
    /// <returns>Steps; within a thousandth of a step counts as whole.</returns>
    public int Up(double lengthM) => (int)Math.Ceiling((lengthM / StepM) - 1e-3);

    /// <summary>A length of tube in words: feet or metres, as it is bought.</summary>
    /// <param name="lengthM">Length, m.</param>
    /// <returns>0.98 ft, or 0.30 m.</returns>
    public string Said(double lengthM) => StepM < 0.0254 / 16 - 1e-9 ? FormattableString.Invariant($"{lengthM:0.00} m") : FormattableString.Invariant($"{lengthM / 0.3048:0.00} ft");

    /// <summary>Length of some steps.</summary>
    /// <param name="steps">Steps.</param>
    /// <returns>Length, m.</returns>
    public double Metres(long steps) => steps * StepM;
}
