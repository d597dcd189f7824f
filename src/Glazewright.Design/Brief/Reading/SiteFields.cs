using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Quantities;
using Glazewright.Science.Weather;
using NodaTime;
using NodaTime.TimeZones;

namespace Glazewright.Design.Brief.Reading;

/// <summary>Fields of the site.</summary>
internal static class SiteFields
{
    // What a synthetic year can be made of (MonthlyNormals); the mean daily range of a desert month stays within it.
    private const double LeastDailyRangeK = 1;
    private const double MostDailyRangeK = 30;

    public static Site Read(FieldReader f, SiteHint? hint)
    {
        string place = f.Words("place", hint?.Place ?? "Unnamed place", "Name of the place as printed.", "Herb Yard", 80);
        double latitudeDeg = f.AngleDeg("latitude", "-90 deg", "90 deg", Degrees(hint?.LatitudeDeg), "Latitude, north positive.");
        double longitudeDeg = f.AngleDeg("longitude", "-180 deg", "180 deg", Degrees(hint?.LongitudeDeg) ?? "0 deg", "Longitude, east positive: America is negative.");
        double elevationM = f.LengthM("elevation", "-1400 ft", "16400 ft", hint is null ? "600 ft" : string.Create(CultureInfo.InvariantCulture, $"{hint.ElevationM:0.#} m"), "Above sea level.");
        NearStation(f, latitudeDeg, longitudeDeg, hint);
        LevelWithStation(f, elevationM, hint);
        (string zone, double zoneHours) = Zone(f, longitudeDeg, hint);
        double bearingDeg = f.AngleDeg("bearing", "0 deg", "360 deg", "90 deg", "Bearing of the ridges from end 1 to end 2, clockwise from true north; at 90 deg the left wall faces south.");
        WeatherChoice weather = f.Group("weather", "Where the hourly year comes from: a file beside the job, or monthly normals.", Weather);
        SunOfNormals(f, weather, latitudeDeg, longitudeDeg, elevationM, zoneHours);
        DesignConditions? design = f.GroupOrBlank("design", "computed from the weather year, which leaves the extremes out", "Design conditions, as published for the place.", Design);
        LoadEdition edition = LoadEdition.Asce716;
        SnowSite snow = f.Group("snow", "Ground snow with the edition its number belongs to.", s =>
        {
            edition = Edition(s, LoadEdition.Asce716, "Edition that the snow number belongs to: 7-22 numbers are strength-level, 7-16 numbers are not. Left out: 7-16, which asks for more of the same number.");
            double groundPa = s.AreaLoadPa("ground", "0 psf", "300 psf", "30 psf", "Ground snow load. The default is a placeholder: ask the authority.");
            double windFraction = s.Ratio("winterWind", "0.25", "0.65", "0.45", "Winter wind parameter of 7-22 drifts.");
            return new SnowSite(groundPa, edition, windFraction);
        });
        WindSite wind = f.Group("wind", "Wind.", w => Wind(w, edition));
        GroundSite ground = f.Group("ground", "The ground.", Ground);
        EqList<HorizonPoint> horizon = f.Several("horizon", 0, 72, "a flat horizon", "Skyline points by azimuth.", h => new HorizonPoint(
            h.AngleDeg("azimuth", "0 deg", "360 deg", null, "Clockwise from true north."),
            h.AngleDeg("elevation", "0 deg", "80 deg", null, "Height of the skyline there.")));
        EqList<NeighbourBox> neighbours = f.Several("neighbours", 0, 40, "nothing shades the range", "Buildings and trees that shade, as boxes in range axes.", n => new NeighbourBox(
            n.IdText("neighbour-" + (n.Index + 1).ToString(CultureInfo.InvariantCulture), "Id."),
            n.LengthM("x", "-3000 ft", "3000 ft", null, "Its corner nearest end 1 and the left side, along the ridges from the range's zero point."),
            n.LengthM("y", "-3000 ft", "3000 ft", null, "That corner across the ridges."),
            n.LengthM("sizeX", "1 ft", "3000 ft", null, "Size along x."),
            n.LengthM("sizeY", "1 ft", "3000 ft", null, "Size along y."),
            n.LengthM("height", "1 ft", "500 ft", null, "Height.")));
        return new Site(place, latitudeDeg, longitudeDeg, elevationM, zone, zoneHours, bearingDeg % 360, weather, design, snow, wind, ground, horizon, neighbours);
    }

    // A slipped sign or digit puts sun and clock hours apart; a station farther off than this is another climate.
    private static void NearStation(FieldReader f, double latitudeDeg, double longitudeDeg, SiteHint? hint)
    {
        const double FarthestKm = 300;
        if (hint is null || !(f.IsGiven("latitude") || f.IsGiven("longitude")))
        {
            return;
        }

        double rad = Math.PI / 180;
        double cosine = Math.Sin(latitudeDeg * rad) * Math.Sin(hint.LatitudeDeg * rad)
            + Math.Cos(latitudeDeg * rad) * Math.Cos(hint.LatitudeDeg * rad) * Math.Cos((longitudeDeg - hint.LongitudeDeg) * rad);
        double km = 6371 * Math.Acos(Math.Clamp(cosine, -1, 1));
        if (km > FarthestKm)
        {
            f.Add(
                FaultKind.Contradiction,
                f.IsGiven("longitude") ? "longitude" : "latitude",
                string.Create(CultureInfo.InvariantCulture, $"the place is {km:N0} km from the weather file's station"),
                string.Create(CultureInfo.InvariantCulture, $"a weather file of the place, or the station's \"latitude\": \"{hint.LatitudeDeg:0.##} deg\", \"longitude\": \"{hint.LongitudeDeg:0.##} deg\" (west and south are negative)"));
        }
    }

    // Air pressure and temperature come from the station: a mile of height is another climate, feet typed as metres make one. Smaller steps are Duty's finding.
    private static void LevelWithStation(FieldReader f, double elevationM, SiteHint? hint)
    {
        const double MostM = 1500;
        if (hint is not null && f.IsGiven("elevation") && !f.IsFaulty("elevation") && Math.Abs(elevationM - hint.ElevationM) > MostM)
        {
            f.Add(
                FaultKind.Contradiction,
                "elevation",
                string.Create(CultureInfo.InvariantCulture, $"the place lies {Math.Abs(elevationM - hint.ElevationM):0} m {(elevationM > hint.ElevationM ? "above" : "below")} the weather file's station"),
                string.Create(CultureInfo.InvariantCulture, $"an elevation near the station's {hint.ElevationM:0} m ({hint.ElevationM / 0.3048:0} ft), or a weather file from that height"));
        }
    }

    // More sun than reaches the top of the air, or next to none, is a slipped unit, month or hemisphere; the synthetic year could only bend it silently.
    private static void SunOfNormals(FieldReader f, WeatherChoice weather, double latitudeDeg, double longitudeDeg, double elevationM, double zoneHours)
    {
        const double DoubtWh = 50;
        if (weather is not WeatherChoice.Normals { Months.Count: 12 } normals || f.IsFaulty("latitude") || f.IsFaulty("weather"))
        {
            return;
        }

        WeatherStation place = new("", "", "", "", "", latitudeDeg, longitudeDeg, zoneHours, elevationM);
        for (int m = 0; m < 12; m++)
        {
            double typedWh = normals.Months[m].GlobalWhPerM2Day;
            double skyWh = MonthlyNormals.ExtraterrestrialWhm2Day(place, m + 1);
            (double leastWh, double mostWh) = (MonthlyNormals.LeastClearness * skyWh, MonthlyNormals.MostClearness * skyWh);
            if (f.IsFaulty(string.Create(CultureInfo.InvariantCulture, $"weather/normals/{m}/global")))
            {
                continue;
            }

            if (typedWh < leastWh - DoubtWh || typedWh > mostWh + DoubtWh)
            {
                f.AddBelow(
                    FaultKind.OutOfRange,
                    string.Create(CultureInfo.InvariantCulture, $"weather/normals/{m}/global"),
                    string.Create(CultureInfo.InvariantCulture, $"{typedWh / 1000:0.##} kWh/m² a day, where {skyWh / 1000:0.##} reach the top of the air in {CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(m + 1)}"),
                    string.Create(CultureInfo.InvariantCulture, $"{leastWh / 1000:0.00} to {mostWh / 1000:0.00} kWh/m2; normals run from January, also south of the equator"));
            }
        }
    }

    private static (string Zone, double Hours) Zone(FieldReader f, double longitudeDeg, SiteHint? hint)
    {
        double sunHours = hint?.ZoneHours ?? Math.Round(longitudeDeg / 15, MidpointRounding.AwayFromZero);
        string named = Math.Abs(sunHours % 1) > 1e-9 ? "Etc/UTC" : sunHours == 0 ? "Etc/UTC" : string.Create(CultureInfo.InvariantCulture, $"Etc/GMT{(sunHours < 0 ? '+' : '-')}{Math.Abs(sunHours):0}");
        if (!f.IsGiven("zone"))
        {
            f.Words("zone", f.IsDescribing ? "Etc/UTC" : named, "IANA time zone; left out, the zone of the weather file or of the longitude. Standard time is used all year.", "America/Chicago", 60);
            return (named, sunHours);
        }

        string zone = f.Words("zone", "Etc/UTC", "IANA time zone.", "America/Chicago", 60);
        DateTimeZone? found = DateTimeZoneProviders.Tzdb.GetZoneOrNull(zone);
        if (found is null)
        {
            string? nearest = NearestWord.Find(zone, DateTimeZoneProviders.Tzdb.Ids);
            f.Add(FaultKind.UnknownChoice, "zone", $"\"{zone}\" is not a time zone", nearest is null ? "an IANA zone, as in America/Chicago" : $"did you mean \"{nearest}\"?");
            return (zone, sunHours);
        }

        ZoneInterval winter = found.GetZoneInterval(Instant.FromUtc(2026, 1, 15, 12, 0));
        double hours = winter.StandardOffset.Seconds / 3600.0;
        double off = Math.IEEERemainder(hours - longitudeDeg / 15, 24);
        if (Math.Abs(off) > 3.6)
        {
            f.Add(FaultKind.Contradiction, "zone", string.Create(CultureInfo.InvariantCulture, $"{zone} keeps {hours:0.##} h from UTC, but the sun at longitude {longitudeDeg:0.##} keeps {longitudeDeg / 15:0.#} h"), "a longitude east positive (America is negative), or the zone of the place");
        }

        return (zone, hours);
    }

    private static WeatherChoice Weather(FieldReader f)
    {
        string file = f.Words("file", f.IsGiven("normals") || f.IsDescribing ? "" : null, "Weather file (EPW or TMY3, plain or .gz) beside the job, or in the library.", "herb-yard.epw", 120);
        string sha = f.Words("sha256", "", "SHA-256 of the file, when it must be that very one.", "", 64);
        OfYear(f, "designDays", "Design-day file (.ddy) whose design conditions hold, beside the job or in the library. Left out: for the command line the one of the weather file's name beside it, in the library none.", "herb-yard.ddy");
        OfYear(f, "statistics", "Statistics file (.stat), likewise; where both are named it lends the design-day file its extremes.", "herb-yard.stat");
        EqList<MonthNormal> normals = f.Several("normals", 12, 12, "the weather file is used", "Twelve months of climate normals, January first: a synthetic year is made from them.", Normal);
        int seed = f.Whole("seed", 1, 1_000_000, 1, "Seed of the synthetic year.");
        if (f.IsGiven("file") && f.IsGiven("normals"))
        {
            f.Add(FaultKind.Contradiction, "normals", "a weather file and normals are both given", "one of them");
        }

        if (f.IsGiven("file") && !f.IsGiven("normals") && string.IsNullOrWhiteSpace(file))
        {
            f.Add(FaultKind.NotFound, "file", "the name of the weather file is empty", "the name of a weather file beside the job, as in \"herb-yard.epw\", or twelve months of normals");
        }

        NoPath(f, "file", file);
        if (sha.Length > 0 && (sha.Length != 64 || !sha.All(char.IsAsciiHexDigit)))
        {
            f.Add(FaultKind.OutOfRange, "sha256", "the hash does not have 64 hex digits", "the output of sha256sum");
        }

        return f.IsGiven("normals") ? new WeatherChoice.Normals(normals, seed) : new WeatherChoice.File(file, sha.ToLowerInvariant());
    }

    // Whoever loads the job finds the file; here only its name is looked at.
    private static void OfYear(FieldReader f, string key, string doc, string example) => NoPath(f, key, f.Words(key, "", doc, example, 120));

    private static void NoPath(FieldReader f, string key, string name)
    {
        if (name.AsSpan().IndexOfAny('/', '\\') >= 0 || name.StartsWith('.'))
        {
            f.Add(FaultKind.NotFound, key, $"\"{name}\" is a path", "the name of a file beside the job, without folders");
        }
    }

    private static MonthNormal Normal(FieldReader f)
    {
        int before = f.FaultCount;
        MonthNormal month = new(
            f.TemperatureC("mean", "-60 C", "45 C", null, "Mean temperature of the month."),
            f.TemperatureC("meanMax", "-60 C", "50 C", null, "Mean daily maximum."),
            f.TemperatureC("meanMin", "-65 C", "40 C", null, "Mean daily minimum."),
            f.DifferenceK("dailyDeviation", "0 K", "15 K", "3 K", "Standard deviation of daily means."),
            f.Ratio("dailyLag1", "0", "0.95", "0.65", "Correlation of one day's mean with the next."),
            f.TemperatureC("dewPoint", "-65 C", "30 C", null, "Mean dew point."),
            f.Quantity("global", QuantityKind.EnergyDensity, "0 kWh/m2", "12 kWh/m2", null, "Mean global radiation on the level, a day.") / 3600,
            f.Ratio("clearnessDeviation", "0", "0.3", "0.18", "Standard deviation of the daily clearness index."),
            f.SpeedMs("wind", "0.2 m/s", "15 m/s", null, "Mean wind at 10 m."));
        if (f.FaultCount == before && !(month.MeanMinC < month.MeanC && month.MeanC < month.MeanMaxC))
        {
            f.Add(FaultKind.Contradiction, "mean", "the mean does not lie between the mean minimum and the mean maximum", "meanMin below mean below meanMax");
        }

        double rangeK = month.MeanMaxC - month.MeanMinC;
        if (f.FaultCount == before && rangeK is < LeastDailyRangeK or > MostDailyRangeK)
        {
            f.Add(FaultKind.OutOfRange, "meanMax", string.Create(CultureInfo.InvariantCulture, $"mean minimum and mean maximum lie {rangeK:0.#} K apart"), "1 to 30 K apart (2 to 54 F°)");
        }

        if (f.FaultCount == before && month.DewPointC > month.MeanC)
        {
            f.Add(FaultKind.Contradiction, "dewPoint", "the dew point lies above the mean temperature", "a dew point at or below the mean");
        }

        return month;
    }

    private static DesignConditions Design(FieldReader f)
    {
        DesignConditions design = new(
            f.TemperatureC("heating996", "-50 C", "30 C", null, "99.6 % heating dry bulb."),
            f.TemperatureC("extremeMin", "-60 C", "30 C", null, "Mean annual extreme minimum."),
            f.TemperatureC("cooling04", "0 C", "55 C", null, "0.4 % cooling dry bulb."),
            f.TemperatureC("coincidentWetBulb", "-10 C", "40 C", null, "Mean wet bulb at that dry bulb."),
            f.TemperatureC("evaporation04", "-10 C", "40 C", null, "0.4 % evaporation wet bulb."),
            new Source.Given(f.Pointer));
        InOrder(f, "extremeMin", design.ExtremeMinC, "heating996", design.Heating996C, "the extreme minimum is above the 99.6 % temperature");
        InOrder(f, "heating996", design.Heating996C, "cooling04", design.Cooling04C, "the heating temperature is above the cooling temperature");
        InOrder(f, "coincidentWetBulb", design.CoincidentWetBulbC, "cooling04", design.Cooling04C, "a wet bulb is never above its dry bulb");
        InOrder(f, "evaporation04", design.Evaporation04C, "cooling04", design.Cooling04C, "the 0.4 % wet bulb lies above the 0.4 % dry bulb");
        InOrder(f, "coincidentWetBulb", design.CoincidentWetBulbC, "evaporation04", design.Evaporation04C, "the mean wet bulb of the hottest hours lies above the 0.4 % wet bulb");
        return design;
    }

    private static void InOrder(FieldReader f, string lowKey, double lowC, string highKey, double highC, string wrong)
    {
        if (lowC > highC && !f.IsFaulty(lowKey) && !f.IsFaulty(highKey))
        {
            f.Add(FaultKind.Contradiction, lowKey, wrong, string.Create(CultureInfo.InvariantCulture, $"at most {highKey}, {highC:0.#} °C ({highC * 1.8 + 32:0.#} °F)"));
        }
    }

    private static WindSite Wind(FieldReader f, LoadEdition snowEdition)
    {
        WindSite wind = new(
            f.SpeedMs("speed", "60 mph", "220 mph", "105 mph", "Basic wind speed, three-second gust. The default is a placeholder: ask the authority."),
            f.Choice<WindExposure>("exposure", WindExposure.C, "Terrain: B suburban or wooded, C open country, D flat shore.", (WindExposure.B, "B"), (WindExposure.C, "C"), (WindExposure.D, "D")),
            f.Ratio("topography", "1", "3", "1", "Topographic factor Kzt; 1 on flat ground."),
            Edition(f, snowEdition, "Edition that the wind number belongs to; the same as the snow's."));
        if (wind.Edition != snowEdition)
        {
            f.Add(FaultKind.Contradiction, "edition", "snow and wind belong to different editions of the load standard", "both numbers from one edition");
        }

        return wind;
    }

    private static GroundSite Ground(FieldReader f) => new(
        f.Words("soil", "not known", "Soil, in words.", "silty clay", 80),
        f.AreaLoadPa("bearing", "500 psf", "20000 psf", "1500 psf", "Presumed bearing pressure, to be confirmed on site."),
        f.LengthM("frost", "0 in", "120 in", "36 in", "Frost depth. The default is a placeholder: ask the authority."),
        f.Ratio("albedo", "0.05", "0.6", "0.2", "Reflectance of the ground without snow."));

    private static LoadEdition Edition(FieldReader f, LoadEdition @default, string doc) =>
        f.Choice("edition", @default, doc, (LoadEdition.Asce716, "ASCE 7-16"), (LoadEdition.Asce722, "ASCE 7-22"));

    private static string? Degrees(double? deg) => deg is double d ? string.Create(CultureInfo.InvariantCulture, $"{d:0.####} deg") : null;
}
