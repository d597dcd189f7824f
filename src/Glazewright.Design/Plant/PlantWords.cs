using System.Globalization;
using Glazewright.Design.Duty;

namespace Glazewright.Design.Plant;

/// <summary>The words of Plant's answers and findings. Numbers in the trade's units, SI beside them where it helps.</summary>
internal static class PlantWords
{
    // From this share of the pressure on, one piece of the path is what limits the air: our judgement.
    internal const double MostlyFraction = 0.6;

    public static string ExhaustLimit(PlantFacts f, OperatingPoint all, string tightest, double lossPa) => Text(
        $"The fans move {Cfm(all.FlowM3PerS)} cfm at {InWg(all.StaticPa)} in. w.g. of the {Cfm(f.NeededM3PerS)} cfm asked: the air warms about {f.RiseK(all.FlowM3PerS) * 1.8:0} F° on its way, {f.Input.Equipment.TemperatureRiseK * 1.8:0} F° are allowed. Most of the pressure goes into the {tightest} ({InWg(lossPa)} in. w.g.). {(lossPa > MostlyFraction * all.StaticPa ? "A fan more gains little against it." : "More or larger fans, or a freer path, would mend it.")}");

    public static string PadLimit(double face, double most, double padM2, double ratedM3PerS, double ratedFace) => Text(
        $"{Sqft(padM2)} ft² of pad for fans rated {Cfm(ratedM3PerS)} cfm at 0.10 in. w.g.: {Fpm(ratedM3PerS / padM2)} fpm, {ratedM3PerS / padM2 / most:0.0} times the {Fpm(most)} fpm it can take. The pad chokes them to {Cfm(face * padM2)} cfm, still {Fpm(face)} fpm. These fans need {Sqft(ratedM3PerS / ratedFace)} ft².");

    public static string FogLimit(double evaporated, FogAsked asked) => Text(
        $"The nozzles evaporate {Gph(evaporated)} gal/h of the {Gph(asked.NeedKgPerS)} gal/h asked {asked.For}.");

    public static string HeatLimit(double heatW, DutyResult duty, HeatAsked asked) => Text(
        $"{KBtu(heatW)} kBtu/h of {KBtu(asked.NeedW)} kBtu/h asked{(asked.FilterWPerK > 0 ? Text($", {KBtu(asked.NeedW - Math.Max(duty.HeatLossW, duty.FrostLossW))} kBtu/h of it to warm the filter fan's air") : "")}: it holds {FloorF(duty.Conditions.Heating996C + heatW / asked.LossWPerK)} on the 99.6 % night with the curtain open.");

    /// <summary>The fans that run while water runs.</summary>
    public static string Running(WetWallPlant pad, int fans) => pad.MostFans is { } most ? Text($"{most} of {fans} fans on, as many as the pad serves") : "all fans on";

    public static string Cfm(double flowM3PerS) => Text($"{flowM3PerS / 0.00047194745:N0}");

    public static string InWg(double pressurePa) => Text($"{pressurePa / 249.08891:0.000}");

    public static string Fpm(double speedMPerS) => Text($"{speedMPerS / 0.00508:N0}");

    public static string Mph(double speedMPerS) => Text($"{speedMPerS / 0.44704:0.0}");

    public static string Sqft(double areaM2) => Text($"{areaM2 / 0.09290304:0.#}");

    public static string Gph(double kgPerS) => Text($"{kgPerS / 998 / 0.003785411784 * 3600:0.#}");

    public static string KBtu(double powerW) => Text($"{powerW / 293.07107:0}");

    public static string F(double valueC) => Text($"{valueC * 1.8 + 32:0} °F");

    /// <summary>A temperature that is held, never said higher than it is.</summary>
    public static string FloorF(double valueC) => Text($"{Math.Floor(valueC * 1.8 + 32 + 1e-6):0} °F ({Math.Floor(valueC + 1e-6):0} °C)");

    public static string Psi(double pressurePa) => Text($"{pressurePa / 6894.757:N0}");

    public static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
