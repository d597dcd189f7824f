using System.Runtime.CompilerServices;
using Glazewright.Design.Contracts;
using Glazewright.Design.Program;
using Glazewright.Science.Climate;
using Glazewright.Science.Maths;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Year;

/// <summary>What the control box sees: the program's sensors lag what they measure, have their errors and print in steps. The box acts on the minute before.</summary>
internal sealed class YearSensors
{
    /// <summary>Length of a saved state.</summary>
    public const int SavedLength = 14;

    /// <summary>Looked ahead in steps of so many seconds, as long as the year's shortest.</summary>
    private const double QuantumS = YearRun.QuantumS;

    private readonly int[] missing; // readings without a sensor
    private readonly bool outsideLags;
    private readonly bool feelsSun;
    private readonly EqList<Sensor>? drifting; // none where no sensor drifts
    private int driftDay = -1;
    private Probe crop, humidity, second, upper, outside, outsideHumidity, wind, light, co2, pressure;
    private double stepOfSharesS = double.NaN;

    /// <summary>Sensors of a program.</summary>
    /// <param name="sensors">Null for the usual ones.</param>
    public YearSensors(EqList<Sensor>? sensors)
    {
        Probe For(Reading reading) => SensorPoints.For(sensors, reading) is { } s
            ? new Probe(s.LagS) { Error = s.ErrorValue, FeelsSun = !s.Aspirated && s.Quantity is (SensorQuantity.Temperature or SensorQuantity.Humidity) }
            : new Probe(0);
        crop = For(Reading.InsideTemperature);
        humidity = For(Reading.InsideHumidity);
        second = For(Reading.SecondTemperature);
        upper = For(Reading.UpperTemperature);
        outside = For(Reading.OutsideTemperature);
        outsideHumidity = For(Reading.OutsideHumidity);
        wind = For(Reading.Wind);
        light = For(Reading.Light);
        co2 = For(Reading.Co2);
        pressure = For(Reading.StaticPressure);
        missing = [.. Enum.GetValues<Reading>().Where(r => !SensorPoints.IsClock(r) && SensorPoints.For(sensors, r) is null).Select(r => (int)r)];
        outsideLags = new[] { outside, outsideHumidity, wind, light, co2, pressure }.Any(p => p.LagS > 0 || p.FeelsSun);
        drifting = (sensors ?? []).Any(s => (s.DriftPerYearValue ?? 0) != 0) ? sensors : null;
        feelsSun = new[] { crop, humidity, second, upper, outside, outsideHumidity }.Any(p => p.FeelsSun);
    }

    /// <summary>Number of readings.</summary>
    public static int Count { get; } = Enum.GetValues<Reading>().Length;

    /// <summary>Some sensor stands in the sun without a fan: what falls on it must be told.</summary>
    public bool FeelsSun => feelsSun;

    /// <summary>That sensor, or one of them, hangs above the curtain.</summary>
    public bool FeelsSunAbove => upper.FeelsSun;

    /// <summary>They have just been compared and do not drift yet: the days before the year.</summary>
    public bool AreNew
    {
        get;
        set => (field, driftDay) = (value, -1);
    }

    /// <summary>Snow falls or lies on the roof.</summary>
    public bool Snow { get; set; }

    /// <summary>It rains.</summary>
    public bool Rain { get; set; }

    /// <summary>Carbon dioxide in the air, ppm.</summary>
    public double Co2Ppm { get; set; }

    /// <summary>Starts in balance with the house and its weather.</summary>
    public void Settle(HouseState state, MinuteWeather weather)
    {
        crop.Was = second.Was = crop.Shown = second.Shown = state.AirBelowC;
        humidity.Was = humidity.Shown = state.RelativeHumidityBelowPercent(weather.PressurePa[0]);
        upper.Was = upper.Shown = state.AirAboveC;
        outside.Shown = weather.DryBulbC[0];
        outsideHumidity.Shown = weather.RelativeHumidityPercent[0];
        (wind.Shown, light.Shown, co2.Shown) = (weather.WindMs[0], weather.GhiWm2[0], Co2Ppm);
    }

    /// <summary>Writes what the sensors show.</summary>
    public void Save(Span<double> into)
    {
        (into[0], into[1], into[2], into[3], into[4]) = (crop.Shown, humidity.Shown, upper.Shown, second.Shown, outside.Shown);
        (into[5], into[6], into[7], into[8], into[9]) = (outsideHumidity.Shown, wind.Shown, light.Shown, co2.Shown, pressure.Shown);
        (into[10], into[11], into[12], into[13]) = (crop.Was, humidity.Was, upper.Was, second.Was);
    }

    /// <summary>Reads what was written.</summary>
    public void Load(ReadOnlySpan<double> saved)
    {
        (crop.Shown, humidity.Shown, upper.Shown, second.Shown, outside.Shown) = (saved[0], saved[1], saved[2], saved[3], saved[4]);
        (outsideHumidity.Shown, wind.Shown, light.Shown, co2.Shown, pressure.Shown) = (saved[5], saved[6], saved[7], saved[8], saved[9]);
        (crop.Was, humidity.Was, upper.Was, second.Was) = (saved[10], saved[11], saved[12], saved[13]);
    }

    /// <summary>Follows the house for one step.</summary>
    /// <param name="state">The house where the sensors hang.</param>
    /// <param name="percent">Its humidity below.</param>
    /// <param name="minute">Minute of the year, whose weather holds.</param>
    /// <param name="weather">Weather.</param>
    /// <param name="staticPa">Static pressure across the fans.</param>
    /// <param name="sun">What falls on the sensors; read only when <see cref="FeelsSun"/>.</param>
    /// <param name="stepS">Step, s.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Follow(HouseState state, double percent, int minute, MinuteWeather weather, double staticPa, in SensorSun sun, double stepS)
    {
        if (stepS != stepOfSharesS)
        {
            SetShares(stepS);
        }

        if (feelsSun)
        {
            FollowInSun(state, percent, in sun);
        }
        else
        {
            crop.FollowRamp(state.AirBelowC);
            humidity.FollowRamp(percent);
            second.FollowRamp(state.AirBelowC);
            upper.FollowRamp(state.AirAboveC);
        }

        if (outsideLags)
        {
            FollowOutside(minute, weather, staticPa, in sun);
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void FollowInSun(HouseState state, double percent, in SensorSun sun)
    {
        double airC = state.AirBelowC, upperC = state.AirAboveC;
        double among = RadiationError.OfK(sun.CropWm2, airC, sun.InsideMs, sun.PressurePa);
        crop.FollowRamp(crop.FeelsSun ? airC + among : airC);
        humidity.FollowRamp(humidity.FeelsSun ? RadiationError.Percent(percent, airC, among) : percent);
        second.FollowRamp(second.FeelsSun ? airC + RadiationError.OfK(sun.OverCropWm2, airC, sun.InsideMs, sun.PressurePa) : airC);
        upper.FollowRamp(upper.FeelsSun ? upperC + RadiationError.OfK(sun.AboveWm2, upperC, sun.InsideMs, sun.PressurePa) : upperC);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void FollowOutside(int minute, MinuteWeather weather, double staticPa, in SensorSun sun)
    {
        double airC = weather.DryBulbC[minute], percent = weather.RelativeHumidityPercent[minute];
        double warmK = outside.FeelsSun || outsideHumidity.FeelsSun ? RadiationError.OfK(weather.GhiWm2[minute], airC, sun.OutsideMs, weather.PressurePa[minute]) : 0;
        outside.Follow(outside.FeelsSun ? airC + warmK : airC);
        outsideHumidity.Follow(outsideHumidity.FeelsSun ? RadiationError.Percent(percent, airC, warmK) : percent);
        wind.Follow(weather.WindMs[minute]);
        light.Follow(weather.GhiWm2[minute]);
        co2.Follow(Co2Ppm);
        pressure.Follow(staticPa);
    }

    /// <summary>How long until the box, as it looks out, would see the air past a threshold, s; what is left where it would not.</summary>
    public double CrossesAfterS(in Program.Outlook soon, ReadOnlySpan<int> readings, HouseState state, double percent, double airKPerS, double percentPerS, double leftS) =>
        Math.Min(
            crop.CrossesAfterS(state.AirBelowC, airKPerS, readings[(int)Reading.InsideTemperature], soon.Warmer, soon.Colder, 100, 10, leftS),
            humidity.CrossesAfterS(percent, percentPerS, readings[(int)Reading.InsideHumidity], soon.Damper, soon.Drier, 10, 10, leftS));

    private void SetShares(double stepS)
    {
        stepOfSharesS = stepS;
        crop.SetShare(stepS);
        humidity.SetShare(stepS);
        second.SetShare(stepS);
        upper.SetShare(stepS);
        if (!outsideLags)
        {
            return;
        }

        outside.SetShare(stepS);
        outsideHumidity.SetShare(stepS);
        wind.SetShare(stepS);
        light.SetShare(stepS);
        co2.SetShare(stepS);
        pressure.SetShare(stepS);
    }

    /// <summary>Fills the readings at the beginning of a minute.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Read(MinuteWeather weather, YearTargets targets, YearPlant plant, int minute, Span<int> readings)
    {
        int before = minute > 0 ? minute - 1 : MinuteWeather.Count - 1, day = minute / 1440;
        readings = readings[..Count];
        readings[(int)Reading.InsideTemperature] = Step(crop.Value, 10) * 10;
        readings[(int)Reading.InsideHumidity] = Step(humidity.Value, 1) * 10;
        readings[(int)Reading.SecondTemperature] = Step(second.Value, 10) * 10;
        readings[(int)Reading.UpperTemperature] = Step(upper.Value, 10) * 10;
        if (!outsideLags)
        {
            outside.Shown = weather.DryBulbC[before];
            outsideHumidity.Shown = weather.RelativeHumidityPercent[before];
            wind.Shown = weather.WindMs[before];
            light.Shown = weather.GhiWm2[before];
            co2.Shown = Co2Ppm;
            pressure.Shown = plant.StaticPa;
        }

        readings[(int)Reading.OutsideTemperature] = Step(outside.Value, 10) * 10;
        readings[(int)Reading.OutsideHumidity] = Step(outsideHumidity.Value, 1) * 10;
        readings[(int)Reading.Wind] = Step(wind.Value, 10) * 10;
        readings[(int)Reading.Light] = Step(light.Value, 1);
        readings[(int)Reading.Snow] = Snow ? 1 : 0;
        readings[(int)Reading.LouverOpenProof] = plant.LouverOpen ? 1 : 0;
        readings[(int)Reading.StaticPressure] = Step(pressure.Value, 10);
        readings[(int)Reading.DayOfYear] = day + 1;
        readings[(int)Reading.TimeOfDay] = (minute - day * 1440) * 60_000;
        readings[(int)Reading.Sunrise] = targets.SunriseMinute[day] * 60_000;
        readings[(int)Reading.Rain] = Rain ? 1 : 0;
        readings[(int)Reading.Co2] = Step(co2.Value, 0.1) * 10;
        readings[(int)Reading.Sunset] = targets.SunsetMinute[day] * 60_000;
        foreach (int reading in missing)
        {
            readings[reading] = int.MinValue;
        }
    }

    /// <summary>Some sensor drifts.</summary>
    public bool Drifts => drifting is not null;

    /// <summary>Brings drifting sensors to a day: evenly over the year, a step each midnight.</summary>
    /// <param name="day">Day of the year, 0 to 364.</param>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public void Drift(int day)
    {
        if (drifting is null || day == driftDay)
        {
            return;
        }

        driftDay = day;
        double share = AreNew ? 0 : (double)day / YearTargets.Days;
        void To(ref Probe probe, Reading reading)
        {
            if (SensorPoints.For(drifting, reading) is { } s)
            {
                probe.Error = s.ErrorValue + (share * (s.DriftPerYearValue ?? 0));
            }
        }

        To(ref crop, Reading.InsideTemperature);
        To(ref humidity, Reading.InsideHumidity);
        To(ref second, Reading.SecondTemperature);
        To(ref upper, Reading.UpperTemperature);
        To(ref outside, Reading.OutsideTemperature);
        To(ref outsideHumidity, Reading.OutsideHumidity);
        To(ref wind, Reading.Wind);
        To(ref light, Reading.Light);
        To(ref co2, Reading.Co2);
        To(ref pressure, Reading.StaticPressure);
    }

    // The next whole step, halves upward; whole numbers shifted so that cutting off rounds down.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static int Step(double value, double perUnit) => double.ConvertToIntegerNative<int>(value * perUnit + 100_000.5) - 100_000;

    /// <summary>A sensor at work.</summary>
    private struct Probe
    {
        public bool FeelsSun;
        public double Error, Shown, Share;
        public readonly double LagS;
        public double Was; // what it measured at the end of the last step
        private double shareOfChange;
        private readonly double[] goneShare; // of the way to what it measures, after so many times 5 s

        /// <summary>A sensor that follows with a lag.</summary>
        /// <param name="lagS">Its time constant, s; none for one that follows at once.</param>
        public Probe(double lagS)
        {
            LagS = lagS;
            goneShare = new double[YearRun.PartsAMinute + 1];
            for (int k = 0; k < goneShare.Length; k++)
            {
                goneShare[k] = Gone(k * QuantumS);
            }
        }

        /// <summary>What it tells.</summary>
        public readonly double Value
        {
            [MethodImpl(MethodImplOptions.AggressiveInlining)]
            get => Shown + Error;
        }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public void Follow(double truth) => Shown += Share * (truth - Shown);

        /// <summary>When what it shows gets past a threshold, s.</summary>
        /// <param name="truth">What it measures now.</param>
        /// <param name="perS">How fast that changes.</param>
        /// <param name="reading">What was read.</param>
        /// <param name="up">How far the reading must rise.</param>
        /// <param name="down">How far it must fall.</param>
        /// <param name="perUnit">Reading's units in one of the truth's.</param>
        /// <param name="print">It prints in steps of so many.</param>
        /// <param name="leftS">Looked ahead so far.</param>
        public readonly double CrossesAfterS(double truth, double perS, int reading, int up, int down, double perUnit, int print, double leftS)
        {
            double off = truth - Shown, reach = Math.Abs(off) + (Math.Abs(perS) * leftS);
            // Most often it cannot come so far; what it prints stands within half a print of what it shows.
            if (up > (reach * perUnit) + print && down > (reach * perUnit) + print)
            {
                return leftS;
            }

            double least = Math.Max(reading - (double)down, -1e9), most = Math.Min(reading + (double)up, 1e9);
            // The print that is past it, and where printing goes over to it.
            double above = (((Math.Ceiling(most / print) - 0.5) * print) / perUnit) - Value, below = (((Math.Floor(least / print) + 0.5) * print) / perUnit) - Value;
            if (reach < above && -reach > below)
            {
                return leftS;
            }

            ReadOnlySpan<double> gone = goneShare;
            int steps = (int)(leftS / QuantumS);
            for (int k = 1; k < steps; k++)
            {
                double goes = (off * gone[k]) + (perS * ((k * QuantumS) - (LagS * gone[k])));
                if (goes >= above || goes <= below)
                {
                    return k * QuantumS;
                }
            }

            return leftS;
        }

        /// <summary>Follows what goes evenly from what it was to what it is: the first-order lag's own answer to a ramp, the same in steps of any length.</summary>
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public void FollowRamp(double truth)
        {
            Shown += (Share * (Was - Shown)) + (shareOfChange * (truth - Was));
            Was = truth;
        }

        public void SetShare(double stepS)
        {
            int k = (int)(stepS / QuantumS);
            Share = k < goneShare.Length && k * QuantumS == stepS ? goneShare[k] : Gone(stepS);
            shareOfChange = LagS > 0 ? 1 - (LagS / stepS * Share) : 1;
        }

        private readonly double Gone(double s) => LagS > 0 ? 1 - Elementary.Exp(-s / LagS) : 1;
    }
}

/// <summary>Sun and air on the sensors.</summary>
/// <param name="CropWm2">Sunlight among the plants.</param>
/// <param name="OverCropWm2">Over them.</param>
/// <param name="AboveWm2">Above the curtain.</param>
/// <param name="InsideMs">Air past sensors inside.</param>
/// <param name="OutsideMs">Outside.</param>
/// <param name="PressurePa">Pressure.</param>
internal readonly record struct SensorSun(double CropWm2, double OverCropWm2, double AboveWm2, double InsideMs, double OutsideMs, double PressurePa);
