namespace Glazewright.Science.Weather;

/// <summary>From gathered rows to a complete year: each hole is filled by a stated rule and listed, or it is a problem.</summary>
internal sealed partial class YearAssembly(
    WeatherStation station,
    WeatherProvenance provenance,
    HeaderConditions conditions,
    RawYear raw,
    List<WeatherNote> notes,
    GapRule rule,
    ProblemList problems)
{
    private readonly List<WeatherGap> _gaps = [];

    public WeatherReading Build()
    {
        UnitSlips.Mend(raw, station, notes);
        DropImpossible();
        CompleteMoisture();
        FillRuns(RawYear.DryBulb, "Dry bulb");
        FillRuns(RawYear.DewPoint, "Dew point");
        CompletePressure();
        FillRuns(RawYear.Wind, "Wind speed");
        HoldDirection();
        CompleteSun();
        if (problems.Any)
        {
            return problems.ToRefused();
        }

        ClampDewPoint();
        CompleteHumidity();
        CompleteInfrared();
        TurnSnow();
        return new WeatherReading.Read(new WeatherYear
        {
            Station = station,
            Provenance = provenance,
            Conditions = conditions,
            DryBulbC = Column(RawYear.DryBulb),
            DewPointC = Column(RawYear.DewPoint),
            RhPercent = Column(RawYear.Rh),
            PressurePa = Column(RawYear.Pressure),
            GhiWhm2 = Column(RawYear.Ghi),
            DniWhm2 = Column(RawYear.Dni),
            DhiWhm2 = Column(RawYear.Dhi),
            HorizontalInfraredWhm2 = Column(RawYear.Infrared),
            WindMs = Column(RawYear.Wind),
            WindFromDeg = Column(RawYear.WindFrom),
            OpaqueCoverTenths = Column(RawYear.Opaque),
            SnowDepthM = Column(RawYear.Snow),
            RainFraction = new HourlyColumn(raw.Rain.ByHour()),
            Gaps = _gaps,
            Rejected = _rejected,
            Notes = notes,
        });
    }

    private HourlyColumn Column(int at) => new(raw.Columns[at]);

    private void Record(string field, int hours, int first, string how)
    {
        if (hours > 0)
        {
            _gaps.Add(new WeatherGap(field, hours, first, how, raw.Line[first]));
        }
    }

    private void CompleteMoisture()
    {
        double[] dry = raw.Columns[RawYear.DryBulb];
        double[] dew = raw.Columns[RawYear.DewPoint];
        double[] rh = raw.Columns[RawYear.Rh];
        int made = 0;
        int first = -1;
        for (int h = 0; h < dew.Length; h++)
        {
            if (double.IsNaN(dew[h]) && !double.IsNaN(dry[h]) && rh[h] > 0)
            {
                dew[h] = Math.Min(dry[h], WeatherMoisture.DewPointC(rh[h] / 100 * WeatherMoisture.SaturationPa(dry[h])));
                first = made++ == 0 ? h : first;
            }
        }

        Record("Dew point", made, first, "computed from dry bulb and relative humidity");
    }

    private void CompletePressure()
    {
        double[] pressure = raw.Columns[RawYear.Pressure];
        if (pressure.All(double.IsNaN))
        {
            Array.Fill(pressure, WeatherMoisture.StandardPressurePa(station.ElevationM));
            Record("Station pressure", pressure.Length, 0, "standard atmosphere at the station's elevation");
            return;
        }

        FillRuns(RawYear.Pressure, "Station pressure");
    }

    /// <summary>Straight line over each run no longer than the rule allows; the year is a ring, so 31 December joins 1 January.</summary>
    private void FillRuns(int column, string name)
    {
        int field = raw.FileColumn[column];
        double[] x = raw.Columns[column];
        int n = x.Length;
        int start = Array.FindIndex(x, v => !double.IsNaN(v));
        if (start < 0)
        {
            problems.Add(WeatherWords.MissingRun(raw.Line[0], field, name, n, rule.LongestFilledHours));
            return;
        }

        int filled = 0;
        int first = -1;
        for (int i = 1; i <= n; i++)
        {
            int at = (start + i) % n;
            if (!double.IsNaN(x[at]))
            {
                continue;
            }

            int length = 1;
            while (double.IsNaN(x[(at + length) % n]))
            {
                length++;
            }

            if (length > rule.LongestFilledHours)
            {
                problems.Add(WeatherWords.MissingRun(raw.Line[at], field, name, length, rule.LongestFilledHours));
            }

            double before = x[(at + n - 1) % n];
            double after = x[(at + length) % n];
            for (int k = 0; k < length; k++)
            {
                x[(at + k) % n] = before + (after - before) * (k + 1) / (length + 1);
            }

            first = filled == 0 ? at : first;
            filled += length;
            i += length - 1;
        }

        Record(name, filled, first, "straight line between the hours before and after");
    }

    private void HoldDirection()
    {
        double[] x = raw.Columns[RawYear.WindFrom];
        int first = Array.FindIndex(x, double.IsNaN);
        if (first < 0)
        {
            return;
        }

        int start = Array.FindIndex(x, v => !double.IsNaN(v));
        double held = start < 0 ? 0 : x[start];
        int made = 0;
        for (int i = 0; i < x.Length; i++)
        {
            int at = (Math.Max(start, 0) + i) % x.Length;
            if (double.IsNaN(x[at]))
            {
                x[at] = held;
                made++;
            }

            held = x[at];
        }

        Record("Wind direction", made, first, start < 0 ? "not in the file; north throughout" : "the last direction before held on");
    }

    private void ClampDewPoint()
    {
        double[] dry = raw.Columns[RawYear.DryBulb];
        double[] dew = raw.Columns[RawYear.DewPoint];
        int count = 0;
        double worst = 0;
        for (int h = 0; h < dew.Length; h++)
        {
            if (dew[h] > dry[h])
            {
                worst = Math.Max(worst, dew[h] - dry[h]);
                count++;
                dew[h] = dry[h];
            }
        }

        if (count > 0)
        {
            notes.Add(new WeatherNote(FormattableString.Invariant(
                $"In {WeatherWords.Hours(count)} the dew point lies above the dry bulb, by up to {worst:0.0} K; it is set to the dry bulb there.")));
        }
    }

    private void CompleteHumidity()
    {
        double[] rh = raw.Columns[RawYear.Rh];
        int made = 0;
        int first = -1;
        for (int h = 0; h < rh.Length; h++)
        {
            if (double.IsNaN(rh[h]))
            {
                rh[h] = 100 * WeatherMoisture.SaturationPa(raw.Columns[RawYear.DewPoint][h]) / WeatherMoisture.SaturationPa(raw.Columns[RawYear.DryBulb][h]);
                first = made++ == 0 ? h : first;
            }
        }

        Record("Relative humidity", made, first, "computed from dry bulb and dew point");
    }

    private void CompleteInfrared()
    {
        double[] infrared = raw.Columns[RawYear.Infrared];
        if (!infrared.Any(double.IsNaN))
        {
            return;
        }

        double[] opaque = raw.Columns[RawYear.Opaque];
        double[] cover = opaque.Any(double.IsNaN) ? CoverGuess.From(station, raw.Columns[RawYear.Ghi], opaque) : opaque;
        int withCover = 0, guessed = 0, firstCover = -1, firstGuess = -1;
        for (int h = 0; h < infrared.Length; h++)
        {
            if (!double.IsNaN(infrared[h]))
            {
                continue;
            }

            infrared[h] = SkyInfrared.ClarkAllenWm2(raw.Columns[RawYear.DryBulb][h], raw.Columns[RawYear.DewPoint][h], cover[h]);
            if (double.IsNaN(opaque[h]))
            {
                firstGuess = guessed++ == 0 ? h : firstGuess;
            }
            else
            {
                firstCover = withCover++ == 0 ? h : firstCover;
            }
        }

        Record("Horizontal infrared", withCover, firstCover, "from dry bulb, dew point and opaque cover (Clark and Allen)");
        Record("Horizontal infrared", guessed, firstGuess, "from dry bulb and dew point (Clark and Allen) with cloud guessed from daytime clearness, held over the night");
    }

    private void TurnSnow()
    {
        double[] snow = raw.Columns[RawYear.Snow];
        double[] dry = raw.Columns[RawYear.DryBulb];
        bool allZero = snow.All(x => x == 0);
        bool cold = dry.Count(t => t < -2) > 200;
        for (int h = 0; h < snow.Length; h++)
        {
            snow[h] = allZero && cold ? double.NaN : snow[h] / 100;
        }

        if (allZero && cold)
        {
            notes.Add(new WeatherNote("Snow depth is 0 in every hour of a year with hard frost: taken as not recorded. Give the snow cover yourself if it matters."));
        }
    }
}
