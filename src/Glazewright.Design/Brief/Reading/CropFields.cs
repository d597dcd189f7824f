using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Quantities;
using Glazewright.Science.Crop;

namespace Glazewright.Design.Brief.Reading;

/// <summary>Fields of the crop schedule, its climate, and the benches.</summary>
internal static class CropFields
{
    private const double FootM = 0.3048;
    private const double AisleM = 2 * FootM;
    private const int WeeksInYear = 52;

    public static HeldBand Band(FieldReader f) => new(
        f.DifferenceK("temperature", "0.5 F°", "15 F°", "2.7 F°", "Half width of the temperature band that counts as held."),
        100 * f.Fraction("humidity", "1 %", "40 %", "7 %", "Half width of the humidity band that counts as held."),
        f.Quantity("vpd", QuantityKind.VapourDeficit, "0.05 kPa", "2 kPa", "0.18 kPa", "Half width of the band where a vapour pressure deficit is asked."));

    public static EqList<CropPeriod> Schedule(FieldReader house)
    {
        int before = house.FaultCount;
        EqList<CropPeriod> periods = house.Several("schedule", 1, 60, "one crop of potted herbs all year, 72 F day and 62 F night", "Crops and their climate by weeks; together they cover the year.", Period);
        if (!house.IsGiven("schedule"))
        {
            return [new CropPeriod("all-year", "potted herbs", 1, WeeksInYear, new ClimateTarget(Celsius(72), 65), new ClimateTarget(Celsius(62), 75), new DayMark.Sunrise(0), new DayMark.Sunset(0), 60, Celsius(80), 2, 0.65, 0, 0, false)];
        }

        if (house.FaultCount == before)
        {
            CoverTheYear(house, periods);
        }

        return periods;
    }

    public static EqList<Bench> Benches(FieldReader house, double widthM, double lengthM, double mainAisleM, bool sized)
    {
        int before = house.FaultCount;
        double nextM = AisleM;
        WordOrList<Bench> given = house.WordOrSeveral(
            "benches", ["usual", "none"], "usual", 60,
            "Bench runs along the house: usual is runs of about 5 ft with aisles of 2 ft, the whole length behind the main aisle; none is beds on the ground.",
            f =>
            {
                Bench bench = Bench(f, nextM, lengthM, mainAisleM);
                nextM = bench.OffsetYM + bench.WidthM + AisleM;
                return bench;
            },
            fewest: 0);
        EqList<Bench> benches = given.Items;
        if (given.Word.Length > 0)
        {
            return sized && given.Word == "usual" ? Usual(widthM, lengthM, mainAisleM) : [];
        }

        for (int i = 0; sized && house.FaultCount == before && i < benches.Count; i++)
        {
            Bench b = benches[i];
            if (b.OffsetYM + b.WidthM > widthM + 1e-6 || b.StartXM + b.LengthM > lengthM + 1e-6)
            {
                house.AddBelow(FaultKind.DoesNotFit, "benches/" + HouseFields.Text(i), $"{b.Id} reaches out of the house of {FeetInches.Format(widthM)} x {FeetInches.Format(lengthM)}", "a bench inside the walls");
            }

            for (int j = 0; j < i; j++)
            {
                Bench other = benches[j];
                bool apart = b.OffsetYM >= other.OffsetYM + other.WidthM - 1e-6 || other.OffsetYM >= b.OffsetYM + b.WidthM - 1e-6
                    || b.StartXM >= other.StartXM + other.LengthM - 1e-6 || other.StartXM >= b.StartXM + b.LengthM - 1e-6;
                if (!apart)
                {
                    house.AddBelow(FaultKind.DoesNotFit, "benches/" + HouseFields.Text(i), $"{b.Id} and {other.Id} overlap", "benches beside each other with an aisle between");
                }
            }
        }

        return benches;
    }

    private static CropPeriod Period(FieldReader f)
    {
        string id = f.IdText("period-" + HouseFields.Text(f.Index + 1), "Short id.");
        string crop = f.Words("crop", "potted herbs", "What grows, as printed; parked or empty for none.", "plugs", 60);
        (int fromWeek, int toWeek) = f.Weeks("weeks", "all year", "Weeks, months or dates, first to last; they may run over new year. Months and dates are taken to the nearest whole weeks.");
        ClimateTarget day = f.Group("day", "Climate by day.", g => Target(g, "72 F", "65 %"));
        ClimateTarget night = f.Group("night", "Climate by night.", g => Target(g, "62 F", "75 %"));
        double neverAboveC = f.QuantityOrBlank("neverAbove", QuantityKind.Temperature, "40 F", "130 F", "not asked", "Temperature that should never be exceeded.") ?? 99;
        if (neverAboveC <= Math.Max(day.TemperatureC, night.TemperatureC))
        {
            f.Add(FaultKind.Contradiction, "neverAbove", "the temperature never to be exceeded is not above the target", "some degrees above the day's temperature, or leave it out");
        }

        DayMark starts = Mark(f.Time("dayStarts", "sunrise", "When the day's target begins."));
        DayMark ends = Mark(f.Time("dayEnds", "sunset", "When it ends."));
        if (starts.Equals(ends))
        {
            f.Add(FaultKind.Contradiction, "dayEnds", "the day ends when it starts, so it has no length", "another time than dayStarts; for one climate round the clock give day and night the same targets");
        }

        return new CropPeriod(
            id,
            crop,
            fromWeek,
            toWeek,
            day,
            night,
            starts,
            ends,
            (int)Math.Round(f.DurationS("ramp", "0 min", "6 h", "60 min", "Straight ramp between the targets.") / 60),
            neverAboveC,
            f.Ratio("leafArea", "0", "8", "2", "Leaf area per planted area."),
            f.Fraction("planted", "0 %", "100 %", "65 %", "Share of the floor that is crop."),
            f.DurationS("lamps", "0 h", "24 h", "0 h", "Hours of light a day, made up by lamps.") / 3600,
            f.Quantity("light", QuantityKind.DailyLight, "0 mol/m2d", "60 mol/m2d", "0 mol/m2d", "Daily light that the crop lives on; 0 when not asked."),
            f.Flag("doorsOpen", false, "Doors stand open in opening hours."));
    }

    private static ClimateTarget Target(FieldReader f, string temperature, string humidity)
    {
        const string words = "Relative humidity; 0 % when it does not matter.";
        f.RangeAdvice = "how far it may differ is set under Held";
        double atC = f.TemperatureC("temperature", "28 F", "110 F", temperature, "Air temperature at the crop.");
        double? deficit = f.QuantityOrBlank("vpd", QuantityKind.VapourDeficit, "0.1 kPa", "6 kPa", "not asked", "Vapour pressure deficit of the air, asked in place of a humidity.");
        if (deficit is not double kPa)
        {
            return new ClimateTarget(atC, 100 * f.Fraction("humidity", "0 %", "98 %", humidity, words));
        }

        if (f.QuantityOrBlank("humidity", QuantityKind.Fraction, "0 %", "98 %", "not asked: a deficit is", words) > 0)
        {
            f.Add(FaultKind.Contradiction, "vpd", "a humidity and a vapour pressure deficit are both asked", "one of the two: leave humidity out");
        }

        double mostKPa = Fao56.SaturationKPa(atC);
        if (kPa >= mostKPa)
        {
            f.Add(
                FaultKind.Contradiction, "vpd", FormattableString.Invariant($"air of {atC * 1.8 + 32:0.#} °F ({atC:0.#} °C) without any water has a deficit of {mostKPa:0.00} kPa, and {kPa:0.##} kPa is asked"),
                FormattableString.Invariant($"well below {mostKPa:0.0} kPa; crops are usually held at 0.4 to 1.2 kPa"));
        }

        return new ClimateTarget(atC, 0, kPa);
    }

    internal static DayMark Mark(TimeOfDay time) => time switch
    {
        TimeOfDay.Clock clock => new DayMark.Clock(clock.Minutes % 1440),
        TimeOfDay.Sun { IsSunrise: true } sun => new DayMark.Sunrise(sun.OffsetMinutes),
        TimeOfDay.Sun sun => new DayMark.Sunset(sun.OffsetMinutes),
        _ => new DayMark.Sunrise(0),
    };

    private static void CoverTheYear(FieldReader house, EqList<CropPeriod> periods)
    {
        int[] owner = new int[WeeksInYear + 1];
        Array.Fill(owner, -1);
        for (int i = 0; i < periods.Count; i++)
        {
            int count = (periods[i].ToWeek - periods[i].FromWeek + WeeksInYear) % WeeksInYear + 1;
            for (int k = 0; k < count; k++)
            {
                int week = (periods[i].FromWeek - 1 + k) % WeeksInYear + 1;
                if (owner[week] >= 0)
                {
                    house.AddBelow(FaultKind.Contradiction, $"schedule/{HouseFields.Text(i)}/weeks", $"{periods[i].Id} and {periods[owner[week]].Id} both hold week {HouseFields.Text(week)}", "periods that follow each other");
                    return;
                }

                owner[week] = i;
            }
        }

        int first = Array.IndexOf(owner, -1, 1);
        if (first > 0)
        {
            int last = first;
            while (last < WeeksInYear && owner[last + 1] < 0)
            {
                last++;
            }

            house.Add(FaultKind.Missing, "schedule", first == last ? $"no period holds week {HouseFields.Text(first)}" : $"no period holds weeks {HouseFields.Text(first)} to {HouseFields.Text(last)}", "a period for them; crop \"parked\" or \"empty\" with the temperature that keeps");
        }
    }

    private static Bench Bench(FieldReader f, double nextM, double lengthM, double mainAisleM) => new(
        f.IdText("bench-" + HouseFields.Text(f.Index + 1), "Id."),
        f.LengthMOrBlank("offset", "0 ft", "120 ft", "an aisle of 2 ft from the left wall or from the bench before", "Nearer edge from the left wall.") ?? nextM,
        f.LengthM("width", "1 ft", "20 ft", "5 ft", "Width."),
        f.LengthMOrBlank("start", "0 ft", "1000 ft", "behind the main aisle", "Start from end 1.") ?? mainAisleM,
        f.LengthMOrBlank("length", "1 ft", "1000 ft", "to 4 ft before end 2", "Length.") ?? Math.Max(FootM, lengthM - mainAisleM - 4 * FootM),
        f.LengthM("height", "0 ft", "5 ft", "2'-8\"", "Height of the top."));

    private static EqList<Bench> Usual(double widthM, double lengthM, double mainAisleM)
    {
        double runM = lengthM - mainAisleM - 4 * FootM;
        int runs = Math.Max(1, (int)Math.Round((widthM - AisleM) / (7 * FootM)));
        double benchM = (widthM - (runs + 1) * AisleM) / runs;
        return runM < FootM || benchM < FootM ? [] : Enumerable.Range(0, runs)
            .Select(i => new Bench("bench-" + HouseFields.Text(i + 1), AisleM + i * (benchM + AisleM), benchM, mainAisleM, runM, 32 * FootM / 12)).ToEqList();
    }

    private static double Celsius(double fahrenheit) => (fahrenheit - 32) / 1.8;
}
