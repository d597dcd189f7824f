using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.GainTables;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;
using Glazewright.Science.Climate;
using Glazewright.Science.Crop;
using Glazewright.Science.Light;
using Glazewright.Science.Maths;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Year;

/// <summary>One house going through one year, minute by minute.</summary>
internal sealed class YearRun
{
    public const int Minutes = 525_600;
    private const int SpinUpDays = 30;
    private const int SpinUpByMinuteDays = 3;
    private const int SpinUpStride = 10;
    private const double StepS = 60;

    private readonly YearInput input;
    private readonly MinuteWeather weather;
    private readonly YearSun sun;
    private readonly YearSensors sensors;
    private readonly HouseModel model;
    private readonly HouseState state;
    private readonly ProgramControl control;
    private readonly Tamper? tamper;
    private readonly YearSnow snow;
    private readonly YearRain rain;
    private readonly bool tellsMore; // rain is read, or a sensor drifts
    private readonly YearCo2? co2; // none where nothing is dosed: outside air's level is taken
    private readonly double floorM2, airM3, lampUmolPerJ, lightMolPerW, extinction, sectionM2, stirredMs;
    private readonly YearSnapshot[] midnights = new YearSnapshot[YearTargets.Days];
    private readonly int[] readings = new int[YearSensors.Count];
    private readonly Command[] commands;
    private readonly double[] deepC = new double[YearTargets.Days];
    private readonly float[][] hours;
    private Vector256<double> hourState, hourPlant, hourMore; // sums of the hour so far, in the order of the columns
    private readonly MonthTally[] months = new MonthTally[12];
    private readonly double wetCoverKg, wetLeafKg;
    private double quarterJ, percentNow;
    private double ahead; // see MinuteWeather.ReachAhead
    private HeatBalance balance;
    private int coldAfterFansMinutes, frostAfterFansMinutes, minutesSinceFans, frostAfterCurtainMinutes, minutesSinceOpening = 1440;
    private int overWithMoreMinutes;
    private EndsBook ends;
    private double curtainBefore, secondBefore;
    private int month;
    private bool hottestPlanted;

    public YearRun(
        YearInput input, BuildingForm form, GainTable gains, PlantResult plant, ProgramDocument program, MinuteWeather weather, ProgramControl control,
        Tamper? tamper = null)
    {
        this.tamper = tamper;
        this.input = input;
        this.weather = weather;
        this.control = control;
        House = YearHouse.Build(input, form, plant);
        wetCoverKg = 1e-3 * (House.Parameters.UpperClear.AreaM2 + House.Parameters.LowerClear.AreaM2);
        wetLeafKg = 1e-3 * House.Parameters.FloorAreaM2;
        floorM2 = House.Parameters.FloorAreaM2;
        airM3 = House.Parameters.AirBelowM3 + House.Parameters.AirAboveM3;
        lampUmolPerJ = plant.LampUmolPerJ;
        co2 = plant.Co2 is null ? null : new YearCo2();
        Sensors = program.Sensors;
        sensors = new YearSensors(program.Sensors) { Co2Ppm = co2?.Ppm ?? CarbonDioxide.OutsidePpm };
        snow = new YearSnow(weather.SnowFallenByHourM.ToArray(), House.Parameters.UpperClear, program);
        rain = new YearRain(weather.RainByHour, program);
        tellsMore = rain.IsRead || sensors.Drifts;
        extinction = gains.CanopyExtinctionFraction;
        sectionM2 = airM3 / form.LengthM;
        stirredMs = plant.Circulation?.CropSpeedMs ?? 0;
        sun = new YearSun(input, gains, House, weather);
        Targets = new YearTargets(input.Schedule, weather);
        Plant = new YearPlant(program, plant, House);
        Bleed = plant.WetWall?.Choice.BleedFraction ?? 0;
        commands = new Command[program.Actuators.Count];
        model = new HouseModel(House.Parameters);
        Held = new HeldBook(input.Schedule.Count);
        lightMolPerW = PlantLight.MicromolPerJoule * 1e-6 * StepS / floorM2;
        hours = new float[plant.SecondCurtain is null ? 10 : 11][];
        for (int i = 0; i < hours.Length; i++)
        {
            hours[i] = new float[YearTargets.Days * 24];
        }

        GroundWave();
        Asked first = Targets.At(Minutes - SpinUpDays * 1440);
        double startC = first.Period < 0 ? Math.Max(deepC[0], 2) : first.TemperatureC;
        state = model.NewState(startC, 0.7, 0.5 * (startC + deepC[0]), weather.PressurePa[0]);
        sensors.Settle(state, weather);
    }

    /// <summary>The house cut along its length, for looking at single days; null for one piece.</summary>
    public DetailCells? Cells { get; init; }

    public YearHouse House { get; }

    public HouseState State => state;

    public YearTargets Targets { get; }

    /// <summary>Sensors of the program.</summary>
    public EqList<Sensor>? Sensors { get; }

    public YearPlant Plant { get; }

    public double Bleed { get; }

    public HeldBook Held { get; }

    public MonthTally[] Months => months;

    public double TranspiredKg { get; private set; }

    public double CondensedKg { get; private set; }

    public double DriedKg { get; private set; }

    public double HeatTurnedJ { get; private set; }

    public double HeatMissedJ { get; private set; }

    public double WaterTurnedKg { get; private set; }

    public double WaterMissedKg { get; private set; }

    public HeatBalance Balance => balance;

    public double WinterFanAirJ { get; private set; }

    public double FilterFanJ { get; private set; }

    /// <summary>Snow on the roof, and what it did to the curtains.</summary>
    public YearSnow Snow => snow;

    /// <summary>Rain, and what it did to the vents.</summary>
    public YearRain Rain => rain;

    public double FrostAfterFansH => frostAfterFansMinutes / 60.0;

    public double FrostAfterCurtainH => frostAfterCurtainMinutes / 60.0;

    public double ColdAfterFansH => coldAfterFansMinutes / 60.0;

    public double LowestC { get; private set; } = double.MaxValue;

    public double HighestC { get; private set; } = double.MinValue;

    /// <summary>Hottest of the minutes that broke their own limit, °C.</summary>
    public double HighestOverC { get; private set; } = double.MinValue;

    /// <summary>Outside air then, °C.</summary>
    public double OutsideAtHighestOverC { get; private set; }

    /// <summary>Cooling had something left in that minute.</summary>
    public bool HighestOverHadMore { get; private set; }

    /// <summary>Hours above their own limit in which cooling had something left.</summary>
    public double OverWithMoreH => overWithMoreMinutes / 60.0;

    /// <summary>What the ends of the house missed.</summary>
    public EndsBook Ends => ends;

    public int LowestMinute { get; private set; }

    public int HighestMinute { get; private set; }

    public float[] Column(int index) => hours[index];

    public float[]? SecondCurtain => hours.Length > 10 ? hours[10] : null;

    /// <summary>State at the start of each day of the year.</summary>
    public IReadOnlyList<YearSnapshot> Midnights => midnights;

    /// <summary>What was told to the equipment in the last step.</summary>
    public ReadOnlySpan<Command> Commands => commands;

    /// <summary>What the control box read in the last step.</summary>
    public ReadOnlySpan<int> Readings => readings;

    /// <summary>The state now.</summary>
    public YearSnapshot Save()
    {
        double[] house = new double[HouseState.SavedLength];
        state.Save(house);
        double[] equipment = new double[YearSensors.SavedLength + Plant.SavedLength + 3];
        sensors.Save(equipment);
        Plant.Save(equipment.AsSpan(YearSensors.SavedLength, Plant.SavedLength));
        (equipment[^3], equipment[^2]) = (snow.RoofKgPerM2, snow.IsTold ? 1 : 0);
        equipment[^1] = co2?.Ppm ?? CarbonDioxide.OutsidePpm;
        return new YearSnapshot(EqList.Own(house), EqList.Own(equipment), EqList.Own((int[])control.State.Clone()));
    }

    /// <summary>Goes on from a state saved before by a run of the same house.</summary>
    public void Load(YearSnapshot snapshot)
    {
        state.Load([.. snapshot.House]);
        Cells?.Start(state);
        double[] equipment = [.. snapshot.Equipment];
        sensors.Load(equipment);
        Plant.Load(equipment.AsSpan(YearSensors.SavedLength, Plant.SavedLength));
        snow.Load(equipment[^3], equipment[^2] > 0);
        if (co2 is not null)
        {
            co2.Ppm = equipment[^1];
        }

        for (int i = 0; i < control.State.Length; i++)
        {
            control.State[i] = snapshot.Program[i];
        }
    }

    /// <summary>Sets the house damp or dry as it stands.</summary>
    /// <param name="relativeHumidityPercent">Of both airs.</param>
    /// <param name="filmShare">Of the water each surface can hold.</param>
    public void Dampen(double relativeHumidityPercent, double filmShare) => model.Dampen(state, relativeHumidityPercent, filmShare, weather.PressurePa[0]);

    /// <summary>Runs December's end to warm the ground up, then the year.</summary>
    public void Go(IProgress<double>? progress, CancellationToken cancel)
    {
        int all = SpinUpDays + YearTargets.Days;
        sensors.AreNew = true;
        for (int day = YearTargets.Days - SpinUpDays; day < YearTargets.Days; day++)
        {
            cancel.ThrowIfCancellationRequested();
            // Only the ground remembers more than a few days: it is warmed up in long steps, the last days by the minute.
            int stride = day < YearTargets.Days - SpinUpByMinuteDays ? SpinUpStride : 1;
            for (int minute = day * 1440; minute < (day + 1) * 1440; minute += stride)
            {
                Step(minute, out _, stride * StepS);
            }
        }

        Plant.StartCounting();
        sensors.AreNew = false;
        for (int day = 0; day < YearTargets.Days; day++)
        {
            cancel.ThrowIfCancellationRequested();
            month = CommonYearMonth(day);
            midnights[day] = Save();
            for (int minute = day * 1440; minute < (day + 1) * 1440; minute++)
            {
                Step(minute, out HouseForcing forcing);
                Count(minute, in forcing);
            }

            progress?.Report((SpinUpDays + day + 1.0) / all);
        }
    }

    /// <summary>Month, 0 to 11, of a day of a common year.</summary>
    internal static int CommonYearMonth(int day)
    {
        ReadOnlySpan<int> ends = [31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365];
        int m = 0;
        while (day >= ends[m])
        {
            m++;
        }

        return m;
    }

    /// <summary>One step: readings, program, equipment, sun, house.</summary>
    /// <param name="minute">Minute of the year, whose weather and sun hold.</param>
    /// <param name="forcing">What acted.</param>
    /// <param name="stepS">Length of the step, s: a minute in the year.</param>
    internal void Step(int minute, out HouseForcing forcing, double stepS = StepS)
    {
        ahead = weather.ReachAhead(minute);
        int day = minute / 1440;
        sensors.Co2Ppm = co2?.Ppm ?? CarbonDioxide.OutsidePpm;
        snow.Step(minute, weather.DryBulbC[minute], state.AirAboveC, stepS);
        sensors.Snow = snow.IsTold;
        if (tellsMore)
        {
            sensors.Rain = rain.IsTold(minute);
            sensors.Drift(day);
        }

        sensors.Read(weather, Targets, Plant, minute, readings);
        tamper?.Read(minute, readings);
        bool moved = control.Step(readings, (int)(stepS * 1000), commands);
        if (tamper is not null)
        {
            tamper.Command(minute, commands);
            moved = true;
        }

        int period = Targets.Period(day);
        CropPeriod? crop = period >= 0 ? input.Schedule[period] : null;
        int hour = (minute - day * 1440) / 60;
        forcing = default;
        forcing.OutsideC = weather.DryBulbC[minute];
        forcing.OutsideHumidityRatio = weather.HumidityRatio[minute];
        forcing.PressurePa = weather.PressurePa[minute];
        forcing.WindMPerS = weather.WindMs[minute] * House.WindFactor;
        forcing.SkyC = weather.SkyC[minute];
        forcing.OutsideWetBulbC = weather.WetBulbC[minute];
        forcing.IsWorkedOut = weather.AllNumbers;
        if (tamper is not null)
        {
            tamper.Weather(ref forcing);
            forcing.IsWorkedOut = false;
        }

        forcing.DeepGroundC = deepC[day];
        forcing.Co2Ppm = co2?.Ppm ?? CarbonDioxide.OutsidePpm;
        forcing.LeafAreaIndex = crop is null ? 0 : crop.LeafAreaIndex * crop.PlantedFraction;
        Plant.Act(commands, moved, stepS, crop is { DoorsOpen: true } && hour is >= 9 and < 17, ref forcing);
        HouseState sensed = Cells is null ? state : Cells.Sensed;
        // The coil takes more from damp air, nothing from air drier than itself.
        forcing.DryingKgPerS *= DehumidifierCoil.ShareOfRated(sensed.HumidityRatioBelow);
        if (weather.GhiWm2[minute] > 0)
        {
            sun.Into(minute, Plant.CurtainFraction, Plant.SecondCurtainFraction, crop?.PlantedFraction ?? 0, crop?.LeafAreaIndex ?? 0, ref forcing);
        }

        double outsideKgPerS;
        if (Cells is { } cells)
        {
            cells.Step(in forcing, Plant, stepS);
            outsideKgPerS = cells.OutsideAirKgPerS;
        }
        else
        {
            model.Step(state, in forcing, stepS);
            outsideKgPerS = model.LastFluxes.OutsideAirKgPerS;
        }

        if (co2 is not null)
        {
            Breathe(co2, crop?.PlantedFraction ?? 0, sensed.AirBelowC, outsideKgPerS, in forcing, stepS);
        }

        percentNow = sensed.RelativeHumidityBelowPercent(forcing.PressurePa);
        SensorSun onSensors = sensors.FeelsSun ? OnSensors(minute, in forcing) : default;
        sensors.Follow(sensed, percentNow, minute, weather, Plant.StaticPa, in onSensors, stepS);
    }

    // Light falls off through the leaves; a sensor at the crop hangs half way down (Monsi and Saeki's law).
    [MethodImpl(MethodImplOptions.NoInlining)]
    private SensorSun OnSensors(int minute, in HouseForcing f)
    {
        double perW = 1 / (floorM2 * (1 - GainInput.UsualCropReflectance));
        double over = (f.SunCanopyW + f.SunFloorW) * perW;
        return new SensorSun(
            over * Elementary.Exp(-0.5 * extinction * f.LeafAreaIndex),
            over,
            sensors.FeelsSunAbove ? sun.AboveCurtainW(minute) * perW : over,
            Math.Max(Plant.FlowM3PerS / sectionM2, stirredMs * f.CirculationFraction),
            f.WindMPerS,
            f.PressurePa);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void Breathe(YearCo2 gas, double plantedFraction, double airC, double outsideKgPerS, in HouseForcing f, double stepS)
    {
        double cropM2 = plantedFraction * floorM2;
        double light = cropM2 > 0 ? (f.SunCanopyW + (f.LampW * f.LampRadiantFraction)) / cropM2 : 0;
        gas.Step(
            airM3, outsideKgPerS / AirConstants.DensityKgPerM3(airC, f.PressurePa), YearCo2.KgPerM3Ppm(airC, f.PressurePa), Plant.DoseKgPerS,
            YearCo2.MostUptakeKgPerS(cropM2, light), stepS);
    }

    private void Count(int minute, in HouseForcing forcing)
    {
        ref readonly HouseFluxes x = ref model.LastFluxes;
        double airC = state.AirBelowC, percent = percentNow;
        bool wetCover = state.FilmKg(WetSurface.UpperClear) + state.FilmKg(WetSurface.LowerClear) > wetCoverKg;
        bool wetLeaf = state.FilmKg(WetSurface.Canopy) > wetLeafKg;
        MinuteSeen seen = new(airC, percent, state.SaturationBelowPa, wetCover, wetLeaf, Plant.AllCooling, Plant.AllHeating);
        Asked ask = Targets.At(minute);
        double neverAboveC = ask.Period >= 0 ? input.Schedule[ask.Period].NeverAboveC : double.MaxValue;
        ref MonthTally m = ref months[month];
        Held.At(month, ask.Period, ask.Day).Add(in ask, in seen, input.Band, neverAboveC);

        if (airC < LowestC)
        {
            (LowestC, LowestMinute) = (airC, minute);
        }

        // An empty house may bake: once something grows, only minutes with a crop compete for the hottest.
        bool planted = ask.Period >= 0 && !ask.Empty;
        if (planted == hottestPlanted ? airC > HighestC : planted)
        {
            (HighestC, HighestMinute, hottestPlanted) = (airC, minute, planted);
        }

        if (airC > neverAboveC)
        {
            overWithMoreMinutes += seen.AllCooling ? 0 : 1;
            if (airC > HighestOverC)
            {
                (HighestOverC, OutsideAtHighestOverC, HighestOverHadMore) = (airC, forcing.OutsideC, !seen.AllCooling);
            }
        }

        m.HeatJ += Plant.HeatW * StepS;
        m.FuelJ += Plant.FuelW * StepS;
        m.PowerJ += Plant.PowerW * StepS;
        m.WaterKg += (x.PadWaterKgPerS * (1 + Bleed) + x.FogEvaporatedKgPerS + x.FogFallenKgPerS) * StepS;
        m.LightMol += (forcing.SunCanopyW + forcing.SunFloorW) * lightMolPerW;
        if (Plant.LampW > 0)
        {
            double plantedFraction = ask.Period >= 0 ? input.Schedule[ask.Period].PlantedFraction : 0;
            m.LampMol += Plant.LampW * lampUmolPerJ * 1e-6 * StepS / (plantedFraction > 0 ? plantedFraction * floorM2 : floorM2);
        }

        m.Co2Kg += Plant.DoseKgPerS * StepS;
        DriedKg += x.DriedKgPerS * StepS;
        quarterJ += Plant.PowerW * StepS;
        if (minute % 15 == 14)
        {
            m.PeakW = Math.Max(m.PeakW, quarterJ / 900);
            quarterJ = 0;
        }

        balance.Add(in x, Plant.FlowM3PerS > 0, StepS);
        bool fans = Plant.FlowM3PerS > 0;
        if (ask.Period >= 0)
        {
            ends.Add(in ask, fans ? x.IntakeC : airC, fans ? x.FanEndC : airC, input.Band.TemperatureK, neverAboveC);
        }

        minutesSinceFans = fans ? 0 : minutesSinceFans + 1;
        if (fans && ask.Period >= 0 && forcing.OutsideC < ask.TemperatureC - 10)
        {
            WinterFanAirJ += Math.Max(x.AirLossW, 0) * StepS;
        }

        if (minutesSinceFans <= 10)
        {
            coldAfterFansMinutes += ask.Period >= 0 && airC < ask.TemperatureC - input.Band.TemperatureK ? 1 : 0;
            frostAfterFansMinutes += airC <= 0 ? 1 : 0;
        }

        if (rain.HoldsVents)
        {
            rain.Count(minute, commands, ask is { Period: >= 0, Empty: false } && airC > ask.TemperatureC + input.Band.TemperatureK);
        }

        if (snow.IsTold)
        {
            snow.Count(forcing.OutsideC, weather.GhiWm2[minute]);
        }

        TranspiredKg += x.TranspirationKgPerS * StepS;
        CondensedKg += Math.Max(x.CondensedKgPerS, 0) * StepS;
        HeatTurnedJ += (x.SunW + x.HeatW + x.LampW + Math.Abs(x.ShellLossW) + Math.Abs(x.AirLossW) + Math.Abs(x.LatentW)) * StepS;
        HeatMissedJ += Math.Abs(x.HeatResidualW) * StepS;
        WaterTurnedKg += (x.TranspirationKgPerS + x.FogEvaporatedKgPerS + x.FogFallenKgPerS + Math.Abs(x.AirWaterLossKgPerS)) * StepS;
        WaterMissedKg += Math.Abs(x.WaterResidualKgPerS) * StepS;
        minutesSinceOpening = Plant.CurtainFraction < curtainBefore || Plant.SecondCurtainFraction < secondBefore ? 0 : minutesSinceOpening + 1;
        (curtainBefore, secondBefore) = (Plant.CurtainFraction, Plant.SecondCurtainFraction);
        if (airC <= 0 && minutesSinceOpening <= 10)
        {
            frostAfterCurtainMinutes++;
        }

        if (forcing.PositivePressureM3PerS > 0)
        {
            FilterFanJ += forcing.PositivePressureM3PerS * AirConstants.DensityKgPerM3(forcing.OutsideC, forcing.PressurePa)
                * AirConstants.SpecificHeatJPerKgK * Math.Max(airC - forcing.OutsideC, 0) * StepS;
        }

        hourState += Vector256.Create(airC, percent, state.AirAboveC, forcing.OutsideC);
        hourPlant += Vector256.Create(ask.TemperatureC, Plant.HeatW, Plant.FlowM3PerS, Plant.CurtainFraction);
        hourMore += Vector256.Create(Plant.CoolingFraction, ask.DepartureK(airC), Plant.SecondCurtainFraction, 0);
        if (minute % 60 == 59)
        {
            if (!double.IsFinite(airC))
            {
                throw new InvalidOperationException($"The year came to something that is no number in the hour before minute {minute}.");
            }

            for (int i = 0; i < hours.Length; i++)
            {
                Vector256<double> sums = i < 4 ? hourState : i < 8 ? hourPlant : hourMore;
                hours[i][minute / 60] = (float)(sums.GetElement(i % 4) / 60);
            }

            hourState = hourPlant = hourMore = default;
        }
    }

    // Kusuda and Achenbach 1965: undisturbed ground below the model's last layer, from the first harmonic of the year's air.
    private void GroundWave()
    {
        double mean = 0, cosine = 0, sine = 0;
        const double PerDay = 2 * Math.PI / YearTargets.Days;
        for (int day = 0; day < YearTargets.Days; day++)
        {
            double dayC = 0;
            for (int h = 0; h < 24; h++)
            {
                dayC += weather.DryBulbC[day * 1440 + h * 60] / 24;
            }

            mean += dayC / YearTargets.Days;
            cosine += dayC * Elementary.Cos(PerDay * day) * 2 / YearTargets.Days;
            sine += dayC * Elementary.Sin(PerDay * day) * 2 / YearTargets.Days;
        }

        double depthM = House.Parameters.Ground.Sum(g => g.ThicknessM);
        GroundLayer deep = House.Parameters.Ground[^1];
        double damping = Math.Sqrt(Math.PI / (YearTargets.Days * 86400.0 * deep.ConductivityWPerMK / deep.CapacityJPerM3K)) * depthM;
        double left = Elementary.Exp(-damping);
        for (int day = 0; day < deepC.Length; day++)
        {
            double phase = PerDay * day - damping;
            deepC[day] = mean + left * (cosine * Elementary.Cos(phase) + sine * Elementary.Sin(phase));
        }
    }
}
