using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Program;

/// <summary>What can be wrong with a program's sensors, and rules that ask for one the program lacks.</summary>
internal static class SensorChecks
{
    private const double LongestLagS = 3600;

    public static void Add(ProgramDocument d, List<Fault> faults)
    {
        if (d.Sensors is not { } sensors)
        {
            return;
        }

        var ids = new HashSet<string>(StringComparer.Ordinal);
        var fed = new Dictionary<Reading, string>();
        for (int i = 0; i < sensors.Count; i++)
        {
            One(sensors[i], $"/sensors/{i}", ids, fed, faults);
        }

        foreach ((string pointer, Reading reading, string why) in Needs(d))
        {
            if (!fed.ContainsKey(reading))
            {
                ProgramChecks.Add(faults, FaultKind.Missing, pointer, $"{why} without a sensor: {SensorPoints.Words(reading)}", $"such a sensor in /sensors, or no {pointer[1..].Split('/')[0]}");
            }
        }
    }

    private static void One(Sensor s, string at, HashSet<string> ids, Dictionary<Reading, string> fed, List<Fault> faults)
    {
        if (s.Id.Length == 0 || !ids.Add(s.Id))
        {
            ProgramChecks.Add(faults, FaultKind.Duplicate, at + "/id", $"sensor id '{s.Id}' is empty or used twice", "one id a sensor");
        }

        if (SensorPoints.ReadingOf(s.Quantity, s.Place) is not { } reading)
        {
            ProgramChecks.Add(
                faults, FaultKind.Contradiction, at + "/place", $"the program reads no {SensorPoints.Words(s.Quantity)} {SensorPoints.Words(s.Place)}",
                string.Join(" or ", SensorPoints.PlacesOf(s.Quantity).Select(p => ProgramShape.Kebab(p.ToString()))));
        }
        else if (!fed.TryAdd(reading, s.Id))
        {
            ProgramChecks.Add(faults, FaultKind.Duplicate, at + "/place", $"'{s.Id}' and '{fed[reading]}' both measure {SensorPoints.Words(reading)}", "one sensor for each quantity and place");
        }

        ProgramChecks.Range(faults, at + "/lagS", s.LagS, 0, LongestLagS, "lag, s,");
        if (s.Quantity is SensorQuantity.Snow or SensorQuantity.Rain or SensorQuantity.LouverOpen)
        {
            if (s.LagS != 0 || s.ErrorValue != 0 || s.CorrectionValue != 0 || (s.DriftPerYearValue ?? 0) != 0)
            {
                ProgramChecks.Add(faults, FaultKind.Contradiction, at, $"'{s.Id}' is a contact: it has no lag, error, correction or drift", "0 for all of them");
            }

            return;
        }

        (double most, string unit) = Most(s.Quantity);
        ProgramChecks.Range(faults, at + "/errorValue", s.ErrorValue, -most, most, $"error, {unit},");
        ProgramChecks.Range(faults, at + "/correctionValue", s.CorrectionValue, -most, most, $"correction, {unit},");
        ProgramChecks.Range(faults, at + "/driftPerYearValue", s.DriftPerYearValue ?? 0, -most, most, $"drift a year, {unit},");
    }

    private static (double Most, string Unit) Most(SensorQuantity quantity) => quantity switch
    {
        SensorQuantity.Temperature => (20, "K"),
        SensorQuantity.Humidity => (50, "% RH"),
        SensorQuantity.Light => (500, "W/m²"),
        SensorQuantity.Wind => (20, "m/s"),
        SensorQuantity.CarbonDioxide => (2000, "ppm"),
        _ => (200, "Pa"),
    };

    /// <summary>What a rule cannot do without. A second or upper temperature, the outside humidity and the suction are a help, not a need.</summary>
    private static IEnumerable<(string Pointer, Reading Reading, string Why)> Needs(ProgramDocument d)
    {
        if (d.Cooling.Count > 0)
        {
            yield return ("/cooling/0", Reading.InsideTemperature, "cooling");
        }

        if (d.Heating.Count > 0)
        {
            yield return ("/heating/0", Reading.InsideTemperature, "heating");
        }

        HumidityControl h = d.Humidity;
        if (h.Drying.Count > 0)
        {
            yield return ("/humidity/drying", Reading.InsideHumidity, "drying");
            if (ProgramCompiler.DriesByOutsideAir(d))
            {
                yield return ("/humidity/drying", Reading.OutsideTemperature, "drying by outside air");
            }
        }

        if (h.Fogging.Count > 0)
        {
            yield return ("/humidity/fogging", Reading.InsideHumidity, "fogging");
        }

        foreach ((string at, CurtainControl c) in new[] { ("/curtain", d.Curtain), ("/secondCurtain", d.SecondCurtain) }.Where(x => x.Item2 is not null).Select(x => (x.Item1, x.Item2!)))
        {
            if (c.ShadeFraction > 0)
            {
                yield return (at + "/shadeFraction", Reading.Light, "shading");
            }

            if (c.HoldOpenOnSnow)
            {
                yield return (at + "/holdOpenOnSnow", Reading.Snow, "opening for snow");
            }
        }

        if (d.Lamps is not null)
        {
            yield return ("/lamps/offAboveLightWm2", Reading.Light, "lamps by light");
        }

        if (d.Co2 is not null)
        {
            yield return ("/co2", Reading.Co2, "dosing");
            yield return ("/co2/onlyAboveLightWm2", Reading.Light, "dosing by light");
        }

        if (d.UpperAir is not null)
        {
            yield return ("/upperAir", Reading.UpperTemperature, "upper fans");
            yield return ("/upperAir", Reading.OutsideTemperature, "upper fans");
        }

        if (d.ColdAir is not null)
        {
            yield return ("/coldAir", Reading.OutsideTemperature, "holding back in the cold");
        }

        EqList<BackgroundRule> background = d.Background ?? [];
        for (int i = 0; i < background.Count; i++)
        {
            if (background[i].RestsAboveWindMs > 0)
            {
                yield return ($"/background/{i}/restsAboveWindMs", Reading.Wind, "resting in wind");
            }
        }

        EqList<WeatherLimit> weather = d.Weather ?? [];
        for (int i = 0; i < weather.Count; i++)
        {
            yield return ($"/weather/{i}/windMs", Reading.Wind, "holding back in wind");
            if (weather[i].InRainFraction < 1)
            {
                yield return ($"/weather/{i}/inRainFraction", Reading.Rain, "holding back in rain");
            }
        }

        for (int i = 0; i < d.Interlocks.Count; i++)
        {
            if (d.Interlocks[i] is Interlock.NeedsLouverProof)
            {
                yield return ($"/interlocks/{i}", Reading.LouverOpenProof, "proof of the louver");
            }
        }

        for (int i = 0; i < d.Alarms.Count; i++)
        {
            if (!SensorPoints.IsClock(d.Alarms[i].Reading))
            {
                yield return ($"/alarms/{i}/reading", d.Alarms[i].Reading, $"alarm '{d.Alarms[i].Id}'");
            }
        }
    }
}
