using System.Runtime.Intrinsics;
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
internal sealed partial class YearRun
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
    private readonly double floorM2, airM3, lampUmolPerJ, lightMolPerJ, extinction, sectionM2, stirredMs;
    private readonly YearSnapshot[] midnights = new YearSnapshot[YearTargets.Days];
    private readonly int[] readings = new int[YearSensors.Count];
    private readonly Command[] commands;
    private readonly double[] deepC = new double[YearTargets.Days];
    private readonly float[][] hours;
    private Vector256<double> hourState, hourPlant, hourMore; // sums of the hour so far, in the order of the columns
    private readonly MonthTally[] months = new MonthTally[12];
    private readonly double wetCoverKg, wetLeafKg;
    private double quarterJ, percentNow, sinceFansS;
    private double ahead; // see MinuteWeather.ReachAhead
    private HeatBalance balance;
    private int coldAfterFansMinutes, frostAfterFansMinutes, frostAfterCurtainMinutes, minutesSinceOpening = 1440;
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
        lightMolPerJ = PlantLight.MicromolPerJoule * 1e-6 / floorM2;
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
        double[] equipment = new double[YearSensors.SavedLength + Plant.SavedLength + 4];
        sensors.Save(equipment);
        Plant.Save(equipment.AsSpan(YearSensors.SavedLength, Plant.SavedLength));
        (equipment[^4], equipment[^3], equipment[^2]) = (percentNow, snow.RoofKgPerM2, snow.IsTold ? 1 : 0);
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
        percentNow = equipment[^4];
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
                if (stride > 1)
                {
                    Step(minute, out _, stride * StepS);
                }
                else
                {
                    Minute(minute, counts: false);
                }
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
                Minute(minute, counts: true);
                Count(minute);
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
