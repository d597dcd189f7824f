using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Duty;

/// <summary>What Duty finds, in words.</summary>
internal static class DutyFindings
{
    // Two degrees on the design night: as much as published and computed design values differ by.
    private const double MostStepM = 300;

    // Polders reach some 7 m below the sea.
    private const double LowestUsualM = -15;

    public static IEnumerable<Finding> Of(DutyFacts f)
    {
        string house = f.Input.House;
        DutyResult r = f.Result;
        if (r.Conditions.Source is Source.Default)
        {
            yield return new Finding(
                "duty/typical-year-conditions", Severity.Near, house,
                Text($"Design temperatures are computed from one typical year: 99.6 % {C(r.Conditions.Heating996C)}, coldest hour {C(r.Conditions.ExtremeMinC)}. A typical year leaves the extremes out; published values run 5 to 7 F° (3 to 4 K) colder."),
                "Type the published design conditions of the nearest station.",
                r.Conditions.Source);
        }

        foreach (Finding apart in DesignAndYear.Of(f))
        {
            yield return apart;
        }

        foreach (WeatherFinding changed in WeatherReport.Changed(f.Weather))
        {
            yield return new Finding(
                "duty/weather-changed", changed.Gravity == WeatherGravity.Warning ? Severity.Near : Severity.Note, house,
                "Weather file: " + changed.Text, "", new Source.Given("/site/weather"));
        }

        if (f.Input.ElevationM < LowestUsualM)
        {
            yield return new Finding(
                "duty/below-sea-level", Severity.Near, house,
                Text($"The place is typed {-f.Input.ElevationM:0} m ({-f.Input.ElevationM / 0.3048:0} ft) below the sea: only a few dry basins lie so low. Air is taken at {f.Result.PressurePa / 1000:0.0} kPa there, denser than at the sea."),
                "Check the sign of the elevation.",
                new Source.Given("/site/elevation"));
        }

        double stepM = f.Input.ElevationM - f.Weather.Station.ElevationM;
        if (Math.Abs(stepM) > MostStepM)
        {
            yield return new Finding(
                "duty/station-elevation", Severity.Near, house,
                Text($"The place lies {Math.Abs(stepM):0} m ({Math.Abs(stepM) / 0.3048:0} ft) {(stepM > 0 ? "above" : "below")} the weather station: the year's air is the station's, where the place is likely some {0.0065 * Math.Abs(stepM):0.#} K {(stepM > 0 ? "colder" : "warmer")}. Nothing is shifted for it."),
                "Take a station of like height, or type the published design conditions of the place.",
                new Source.Standard("ISO 2533:1975 standard atmosphere", "6.5 K a kilometre", Source.Mark.FromMemory));
        }

        if (r.Conditions.Evaporation04C < r.Conditions.CoincidentWetBulbC - 0.1)
        {
            yield return new Finding(
                "duty/wet-bulbs-out-of-order", Severity.Miss, house,
                Text($"The 0.4 % wet bulb of {C(r.Conditions.Evaporation04C)} is lower than {C(r.Conditions.CoincidentWetBulbC)}, the mean wet bulb of the hottest hours: no place has that, so the wettest day is judged too dry."),
                "Type both wet bulbs of one place and period.",
                r.Conditions.Source);
        }

        if (r.Conditions.CoincidentWetBulbC < f.Outside.WetBulbC - 0.1)
        {
            yield return new Finding(
                "duty/wet-bulb-too-low", Severity.Miss, house,
                Text($"A wet bulb of {C(r.Conditions.CoincidentWetBulbC)} at {C(r.Conditions.Cooling04C)} is lower than bone-dry air has; bone-dry air is taken."),
                "Type the coincident wet bulb of the 0.4 % dry bulb.",
                r.Conditions.Source);
        }

        if (f.Outside.RelativeHumidityFraction > 0.98)
        {
            yield return new Finding(
                "duty/design-air-saturated", Severity.Near, house,
                Text($"The design day's air is {C(f.Outside.DryBulbC)} with a wet bulb of {C(f.Outside.WetBulbC)}: as good as saturated. No wet wall or fog cools such air at all, and hardly any place has it in its hottest hours."),
                "Type the mean wet bulb of the hours at the 0.4 % dry bulb; the 0.4 % wet bulb belongs to another hour.",
                r.Conditions.Source);
        }

        if (PeopleInHeat.Of(f) is { } people)
        {
            yield return people;
        }

        double most = Math.Max(r.VentilationRuleM3PerS, r.VentilationBalanceM3PerS);
        double least = Math.Min(r.VentilationRuleM3PerS, r.VentilationBalanceM3PerS);
        if (most > 1.15 * least)
        {
            bool balance = r.VentilationBalanceM3PerS > r.VentilationRuleM3PerS;
            yield return new Finding(
                "duty/ventilation-methods-differ", Severity.Note, house,
                Text($"The factor rule asks for {Cfm(r.VentilationRuleM3PerS)} cfm, the energy balance for {Cfm(r.VentilationBalanceM3PerS)} cfm. ")
                    + (balance
                        ? Text($"The balance is higher: {OnFloor(f.Load.SolarW / f.Form.FloorAreaM2)} of sun on the floor heat the air and the crop turns only {Share(f.Run.CropLatentW, f.Load.SolarW)} of it into vapour; the rule takes off about {OnFloor(190)}.")
                        : Text($"The rule is higher: it takes off about {OnFloor(190)}, while here {OnFloor((f.Load.SolarW - f.Run.CropLatentW) / f.Form.FloorAreaM2)} are left after the crop has turned {Share(f.Run.CropLatentW, f.Load.SolarW)} of the sun into vapour, or the short run sets the rule.")),
                "The larger one is used.",
                new Source.CommonPractice("both methods side by side"));
        }

        if (!f.Need.Reached)
        {
            yield return new Finding(
                "duty/rise-out-of-reach", Severity.Miss, house,
                Text($"No flow up to {Cfm(0.25 * f.Form.FloorAreaM2)} cfm keeps the fan end within {f.Input.TemperatureRiseK * 1.8:0.#} F° of the intake; the best is {C(f.Need.HottestC)}."),
                "Allow a larger rise, shade more, or shorten the run.",
                new Source.FirstPrinciples("heat balance along the house"));
        }

        if (!f.Input.Exhaust && f.HotCrop.NeverAboveC < f.Outside.DryBulbC)
        {
            yield return new Finding(
                "duty/never-above-below-outside", Severity.Miss, house,
                Text($"On the design day it is {C(f.Outside.DryBulbC)} outside, and the house has no exhaust fans: \"never over {C(f.HotCrop.NeverAboveC)}\" does not hold, since openings alone bring in air no cooler than that."),
                "Exhaust fans with a wet wall or fog, more shade, or a crop that is out of the house by then.",
                new Source.Given($"{f.Input.Pointer}/schedule"));
        }

        if (FansInWind(f) is { } windy)
        {
            yield return windy;
        }

        foreach (Finding more in DayWish.Of(f).Concat(NightFindings.Of(f)))
        {
            yield return more;
        }

        if (f.DryingNight.HumidityRatio >= f.Night.HumidityRatio - 1e-4)
        {
            yield return new Finding(
                "duty/outside-air-cannot-dry", Severity.Near, house,
                Text($"On damp nights outside air holds {f.DryingNight.HumidityRatio * 1000:0.0} g/kg, no less than the night target's {f.Night.HumidityRatio * 1000:0.0}: airing cannot dry the house then."),
                "Heat and air together with a wider humidity band, or a dehumidifier.",
                new Source.FirstPrinciples("moisture balance"));
        }
    }

    private static Finding? FansInWind(DutyFacts f)
    {
        if (!f.Input.Exhaust || WindRose.WarmDaylight(f.Weather) is not { } wind)
        {
            return null;
        }

        double outwardDeg = f.Input.RangeBearingDeg + (f.Input.FanFace == FaceName.End1 ? 180 : 0);
        double onto = wind.OntoFraction(outwardDeg), away = wind.OntoFraction(outwardDeg + 180);
        if (wind.PushM2PerS2(outwardDeg) <= 0 || onto < away)
        {
            return null;
        }

        string here = f.Input.FanFace == FaceName.End1 ? "end 1" : "end 2", there = f.Input.FanFace == FaceName.End1 ? "end 2" : "end 1";
        return new Finding(
            "duty/fans-face-the-wind", Severity.Near, f.Input.House,
            Text($"The fans at {here} look into the wind: in {100 * onto:0} % of the warmest {WindRose.WarmHours:N0} daylight hours of the weather year it blows onto them, {wind.OntoMs(outwardDeg) / 0.44704:0} mph in the mean, and in {100 * away:0} % onto the intake."),
            $"Fans at {there}, in the lee, unless a neighbour, a door or the crop stands against it; or hoods, and fans chosen with that wind (the climate plant's papers have the table).",
            new Source.CommonPractice("exhaust fans go to the lee end"));
    }

    /// <summary>Heat in the trade's unit, SI behind it.</summary>
    public static string Heat(double powerW) => Text($"{powerW / 293.07107:0.0} kBtu/h ({powerW / 1000:0.0} kW)");

    /// <summary>Sun or heat on an area, both ways.</summary>
    public static string OnFloor(double wm2) => Text($"{wm2:0} W/m² ({wm2 * 0.09290304:0.0} W/ft²)");

    internal static string C(double valueC) => Text($"{valueC * 1.8 + 32:0} °F ({valueC:0.0} °C)");

    internal static string Cfm(double flowM3PerS) => Text($"{flowM3PerS / 0.00047194745:N0}");

    private static string Share(double part, double whole) => whole > 0 ? Text($"{100 * part / whole:0} %") : "none";

    internal static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
