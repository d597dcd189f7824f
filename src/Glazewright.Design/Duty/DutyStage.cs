using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.GainTables;
using Glazewright.Science.Air;
using Glazewright.Science.Crop;
using Glazewright.Science.Flow;
using Glazewright.Science.Heat;
using Glazewright.Science.Weather;
using DesignConditions = Glazewright.Design.Brief.DesignConditions;

namespace Glazewright.Design.Duty;

/// <summary>Duty: what the design days ask of one house.</summary>
public static class DutyStage
{
    /// <summary>Raise when results change.</summary>
    public const int Version = 12;

    /// <summary>Pad effectiveness taken until Plant has chosen the pad.</summary>
    internal const double AssumedPadEffectiveness = 0.80;

    /// <summary>A and B of the quick transpiration form: middle of the published species (from memory).</summary>
    internal const double CropSolarFactor = 0.35;

    /// <summary>B by day, W/(m² kPa).</summary>
    internal const double CropDayWPerM2KPa = 18;

    /// <summary>B by night, W/(m² kPa).</summary>
    internal const double CropNightWPerM2KPa = 10;

    /// <summary>Daylight, lux for each W/m² of global radiation (common practice).</summary>
    internal const double LuxPerWm2 = 110;

    /// <summary>A crop that names no temperature never to be exceeded has this or more.</summary>
    internal const double NoLimitC = 90;

    private const double FrostSafeC = 2;

    /// <summary>Computes the duty of one house.</summary>
    /// <param name="input">What Duty reads of the job.</param>
    /// <param name="form">The house's shape.</param>
    /// <param name="gains">Its gain table.</param>
    /// <param name="year">Weather.</param>
    /// <returns>Losses, gains, ventilation, moisture.</returns>
    /// <exception cref="ArgumentException">A covering that is not in the generic list, or a gap in the schedule.</exception>
    public static DutyResult Run(DutyInput input, BuildingForm form, GainTable gains, WeatherYear year)
    {
        double pressurePa = StandardAtmosphere.PressurePa(input.ElevationM);
        DesignConditions conditions = DesignWeather.Of(input.Design, year);
        List<LossLine> lines = HeatPaths.Lines(input, form, pressurePa);
        double loss = lines.Sum(l => l.WPerK);
        double curtainM = input.CurtainHeightM;
        double above = Above(lines, form, curtainM);
        double drawn = input.Curtains > 0 ? loss - above + CurtainedWPerK(above, form.FloorAreaM2, input.Layers, input.SecondOpennessFraction) : loss;
        CropPeriod coldCrop = CropWeeks.WarmestInTheCold(input.Schedule, year, 8);
        double nightC = coldCrop.Night.TemperatureC;
        double inward = InwardFraction(form);
        CoolingHour hour = CoolingHour.Find(input, gains, year, inward);
        CropPeriod hotCrop = CropWeeks.In(input.Schedule, CropWeeks.OfDay(hour.Day));
        double kept = 1 - input.ShadeFraction;
        double solarW = kept * (hour.InsideW + inward * hour.Sun.CoverW);
        double cropWm2 = kept * hour.Sun.CropPlaneW / form.FloorAreaM2;
        double storedW = StoredFraction(hotCrop.PlantedFraction) * kept * hour.Sun.CropPlaneW;
        double throughFaces = lines.Where(l => !l.Id.EndsWith("/infiltration", StringComparison.Ordinal)).Sum(l => l.WPerK);
        var load = new AirLoad(
            solarW - storedW, throughFaces, conditions.Cooling04C, hotCrop.PlantedFraction * form.FloorAreaM2, Math.Min(cropWm2, 1200),
            hotCrop.LeafAreaIndex, CropSolarFactor, CropDayWPerM2KPa);
        AirState outside = DesignWeather.Outside(conditions, pressurePa);
        AirState inlet = Inlet(outside, input.WetWall);
        FlowNeed need = AlongHouse.RequiredFlow(
            _ => inlet, load, Math.Min(inlet.DryBulbC + input.TemperatureRiseK, 60), Math.Max(0.25 * form.FloorAreaM2, 1));
        FactoredVentilation rule = VentilationRules.Factored(
            Math.Max(form.FloorAreaM2, 1),
            pressurePa,
            Math.Clamp(kept * InsideLux(hour, form), 1000, 150_000),
            Math.Clamp(input.TemperatureRiseK, 1, 15),
            Math.Max(form.LengthM, 1));
        double ventilation = Math.Max(rule.FlowM3PerS, need.FlowM3PerS);
        AirRun run = AlongHouse.March(inlet, Math.Max(ventilation, 0.01), load);
        AirState night = AirState.FromRelativeHumidity(
            nightC, Math.Clamp(coldCrop.Night.HumidityAtTargetPercent > 0 ? coldCrop.Night.HumidityAtTargetPercent / 100 : 0.85, 0.3, 0.98), pressurePa);
        double nightLatentWm2 = Transpiration.QuickWPerM2(
            0, night.VapourDeficitPa, Math.Min(coldCrop.LeafAreaIndex, 10), CropSolarFactor, CropNightWPerM2KPa);
        double moisture = nightLatentWm2 * coldCrop.PlantedFraction * form.FloorAreaM2 / Transpiration.LatentJPerKg;
        AirState dampNight = DesignWeather.DryingNight(year, nightC, pressurePa);
        AirState winterNight = DesignDayList.WinterNight(conditions, year, pressurePa);
        EqList<DesignCase> days = DesignDayList.Of(conditions, year, winterNight, outside, dampNight, pressurePa);
        var air = new DesignAir(
            days,
            outside,
            DesignDayList.WetDay(days, pressurePa),
            load,
            winterNight,
            night,
            dampNight,
            NightMoisture.Of(
                form, winterNight, nightC, form.VolumeM3 * input.AirtightnessPerHour / 3600, coldCrop.PlantedFraction * form.FloorAreaM2, coldCrop.LeafAreaIndex),
            NightLosses.Of(input, form, lines, nightC, conditions.Heating996C, winterNight.DewPointC, NightLosses.WindMs(year), pressurePa),
            VentilationTerms.Of(inlet, load, solarW, storedW, form.FloorAreaM2, need, rule, input.TemperatureRiseK))
        {
            HottestWishC = Math.Min(hotCrop.NeverAboveC < NoLimitC ? hotCrop.NeverAboveC : hotCrop.Day.TemperatureC + input.TemperatureRiseK, NoLimitC),
            NeverAboveC = hotCrop.NeverAboveC,
        };
        var result = new DutyResult(
            input.House,
            conditions,
            pressurePa,
            lines.ToEqList(),
            loss,
            drawn,
            nightC,
            loss * Math.Max(nightC - conditions.Heating996C, 0),
            drawn * Math.Max(nightC - conditions.Heating996C, 0),
            loss * Math.Max(FrostSafeC - conditions.ExtremeMinC, 0),
            solarW,
            run.TranspirationKgPerS,
            solarW - storedW - run.CropLatentW,
            rule.FlowM3PerS,
            need.FlowM3PerS,
            ventilation,
            moisture,
            air,
            StageReport.Empty);
        return result with
        {
            Report = DutyWorkings.Report(new DutyFacts(
                input, form, result, coldCrop, hotCrop, hour, inward, cropWm2, load, outside, inlet, need, rule, run, night, nightLatentWm2,
                dampNight, above, storedW, year)),
        };
    }

    /// <summary>What enters the house: outside air, or air behind a wet wall of the assumed effectiveness.</summary>
    internal static AirState Inlet(AirState outside, bool wetWall)
    {
        if (!wetWall || outside.DryBulbC < 0)
        {
            return outside;
        }

        LeavingAir pad = WetWall.Leaving(outside.DryBulbC, outside.WetBulbC, outside.PressurePa, AssumedPadEffectiveness);
        return new AirState(pad.DryBulbC, pad.HumidityRatio, outside.PressurePa);
    }

    /// <summary>The shell above the curtain, in series with cloth and still air.</summary>
    internal static double CurtainedWPerK(double aboveWPerK, double clothM2, int layers) =>
        aboveWPerK <= 0 ? 0 : 1 / (1 / aboveWPerK + layers * HeatPaths.CurtainM2KPerW / clothM2);

    /// <summary>The same with a second curtain of its own cloth under it: a weave's openings let pass as if there were no cloth.</summary>
    internal static double CurtainedWPerK(double aboveWPerK, double clothM2, int layers, double? secondOpennessFraction)
    {
        double first = CurtainedWPerK(aboveWPerK, clothM2, layers);
        return secondOpennessFraction is { } open ? open * first + (1 - open) * CurtainedWPerK(first, clothM2, 1) : first;
    }

    internal static double Above(IReadOnlyList<LossLine> lines, BuildingForm form, double curtainM) =>
        lines.Where(l => l.Face != FaceName.Floor)
            .Sum(l => l.WPerK * HeatPaths.AboveShare(form.Face(l.Face), form, curtainM));

    /// <summary>Share of the sun at the crop plane that floor and benches store around noon: a tenth under leaves, three tenths where bare.</summary>
    internal static double StoredFraction(double plantedFraction) => 0.1 * plantedFraction + 0.3 * (1 - plantedFraction);

    // What the covering absorbs halfway through its thickness flows in by U × the resistance between there and outside.
    internal static double InwardFraction(BuildingForm form)
    {
        double area = 0;
        double weighted = 0;
        foreach (CoverZone zone in form.Faces.SelectMany(f => f.Zones))
        {
            var cover = HeatPaths.Cover(zone.Cover);
            if (cover.NominalTransmittanceFraction <= 0)
            {
                continue;
            }

            double u = cover.CentreUWm2K;
            double core = BuildUp.CoreM2KPerW(u, indoorFilmWPerM2K: 8.3, outdoorFilmWPerM2K: 23);
            area += zone.NetM2;
            weighted += zone.NetM2 * u * (1 / 23.0 + core / 2);
        }

        return area > 0 ? weighted / area : 0;
    }

    private static double InsideLux(CoolingHour hour, BuildingForm form) =>
        LuxPerWm2 * hour.Sun.CropPlaneW / form.FloorAreaM2;
}
