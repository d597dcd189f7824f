using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.GainTables;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;
using Glazewright.Science.Climate;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Year;

/// <summary>Named failures tried on the coldest night and the hottest noon that have a crop, each in calm, windy and the file's own air.</summary>
internal static class Rehearsals
{
    /// <summary>Leaves of most crops are hurt by frost at once.</summary>
    private const double FrostC = 0;

    /// <summary>Leaves scorch in an hour or two (common practice: 40 to 45 °C).</summary>
    private const double ScorchC = 42;

    private const double CalmMs = 0.5;
    private const double WindyMs = 8;
    private const int Noon = 720;
    private const int OutageMinutes = 240;
    private const int MinutesInDay = 1440;

    public static EqList<Rehearsal> Of(
        YearInput input, BuildingForm form, GainTable gains, PlantResult plant, ProgramDocument program, MinuteWeather weather,
        IReadOnlyList<YearSnapshot> midnights)
    {
        YearTargets targets = new(input.Schedule, weather);
        int cold = DayOf(weather, targets, low: true);
        int hot = DayOf(weather, targets, low: false);
        List<Rehearsal> all = [];
        int largest = Largest(plant, program);
        if (largest >= 0)
        {
            Add("heater-dead", $"{program.Actuators[largest].Id} does not light on the coldest night", cold, 0, MinutesInDay, FrostC, true, wind => new Dead(wind, i => i == largest, 0, MinutesInDay));
        }

        Add("power-out-cold", "power fails at midnight of the coldest night: no heat, no air, curtain and louver stay as they are", cold, 0, MinutesInDay, FrostC, true, wind => new Outage(wind, Travels, 0, MinutesInDay));
        int curtain = IndexOf(program, ActuatorKind.Curtain);
        if (curtain >= 0)
        {
            Add("curtain-stuck", "the curtain stays open on the coldest night", cold, 0, MinutesInDay, FrostC, true, wind => new Dead(wind, i => i == curtain, 0, MinutesInDay));
        }

        Add("sensor-dead-cold", "the temperature sensor fails at midnight of the coldest night", cold, 0, MinutesInDay, FrostC, true, wind => new Deaf(wind, 0));
        Add("power-out-hot", "power fails at noon of the hottest day for four hours: fans and water stop, louver and curtain stay as they are", hot, Noon, OutageMinutes, ScorchC, false, wind => new Outage(wind, Travels, Noon, Noon + OutageMinutes));
        int pump = IndexOf(program, ActuatorKind.WetWallPump);
        if (pump >= 0)
        {
            Add("pump-dead", "the wet wall's pump stops at noon of the hottest day", hot, Noon, OutageMinutes, ScorchC, false, wind => new Dead(wind, i => i == pump, Noon, MinutesInDay));
        }

        return all.ToEqList();

        bool Travels(int i) => ProgramCompiler.Moves(program.Actuators[i].Kind);

        void Add(string id, string what, int day, int from, int minutes, double limitC, bool isCold, Func<double, Windy> tamper)
        {
            RehearsalRun[] runs =
            [
                One("as in the file", tamper(double.NaN)), One("calm", tamper(CalmMs)), One("windy", tamper(WindyMs)),
            ];
            all.Add(new Rehearsal(id, what, day, from, limitC, isCold, EqList.Own(runs)));

            RehearsalRun One(string wind, Windy failure)
            {
                YearRun run = new(input, form, gains, plant, program, weather, ProgramControl.Of(program), failure);
                run.Load(midnights[day]);
                double worst = isCold ? double.MaxValue : double.MinValue;
                int? toLimit = null;
                List<float> trace = [];
                for (int m = 0; m < from + minutes; m++)
                {
                    failure.Blows = m >= from;
                    run.Step((day * MinutesInDay) + m, out _);
                    if (m < from)
                    {
                        continue;
                    }

                    double airC = run.State.AirBelowC;
                    worst = isCold ? Math.Min(worst, airC) : Math.Max(worst, airC);
                    toLimit ??= (isCold ? airC <= limitC : airC >= limitC) ? m - from : null;
                    if ((m - from) % 5 == 0)
                    {
                        trace.Add((float)airC);
                    }
                }

                return new RehearsalRun(wind, toLimit, worst, EqList.Own(trace.ToArray()));
            }
        }
    }

    // The day with a crop whose own minutes hold the coldest or hottest outside air; of all days when nothing ever grows.
    private static int DayOf(MinuteWeather weather, YearTargets targets, bool low)
    {
        int at = -1;
        bool planted = false;
        for (int minute = 0; minute < MinuteWeather.Count; minute++)
        {
            Asked ask = targets.At(minute);
            bool grows = ask.Period >= 0 && !ask.Empty;
            bool further = at < 0 || (low ? weather.DryBulbC[minute] < weather.DryBulbC[at] : weather.DryBulbC[minute] > weather.DryBulbC[at]);
            if (grows == planted ? further : grows)
            {
                (at, planted) = (minute, grows);
            }
        }

        return at / MinutesInDay;
    }

    private static int Largest(PlantResult plant, ProgramDocument program)
    {
        HeaterUnit? unit = (plant.Heat?.Choice.Heaters ?? []).OrderByDescending(h => h.OutputW).FirstOrDefault();
        return unit is null ? -1 : Enumerable.Range(0, program.Actuators.Count).FirstOrDefault(i => program.Actuators[i].Id == unit.Id, -1);
    }

    private static int IndexOf(ProgramDocument program, ActuatorKind kind) =>
        Enumerable.Range(0, program.Actuators.Count).FirstOrDefault(i => program.Actuators[i].Kind == kind, -1);

    /// <summary>Wind of a fixed strength once the failure is there; not-a-number leaves the file's.</summary>
    private class Windy(double windMs) : Tamper
    {
        public bool Blows { get; set; }

        public override void Weather(ref HouseForcing forcing)
        {
            if (Blows && !double.IsNaN(windMs))
            {
                forcing.WindMPerS = windMs;
            }
        }
    }

    /// <summary>An actuator that does not answer: off, shut, or open curtain.</summary>
    private sealed class Dead(double windMs, Func<int, bool> isDead, int from, int to) : Windy(windMs)
    {
        public override void Command(int minute, Span<Command> commands)
        {
            int m = minute % MinutesInDay;
            for (int i = 0; i < commands.Length && m >= from && m < to; i++)
            {
                if (isDead(i))
                {
                    commands[i] = commands[i] with { Level = 0 };
                }
            }
        }
    }

    /// <summary>No power: what is switched is off, what travels stays where it was told last.</summary>
    private sealed class Outage(double windMs, Func<int, bool> travels, int from, int to) : Windy(windMs)
    {
        private int[]? stays;

        public override void Command(int minute, Span<Command> commands)
        {
            int m = minute % MinutesInDay;
            bool isOut = m >= from && m < to;
            if (!isOut || stays is null)
            {
                stays ??= new int[commands.Length];
                for (int i = 0; i < commands.Length; i++)
                {
                    stays[i] = travels(i) ? commands[i].Level : 0;
                }
            }

            for (int i = 0; i < commands.Length && isOut; i++)
            {
                commands[i] = commands[i] with { Level = stays[i] };
            }
        }
    }

    /// <summary>No reading of the air inside.</summary>
    private sealed class Deaf(double windMs, int from) : Windy(windMs)
    {
        public override void Read(int minute, Span<int> readings)
        {
            if (minute % MinutesInDay >= from)
            {
                readings[(int)Reading.InsideTemperature] = int.MinValue;
                readings[(int)Reading.InsideHumidity] = int.MinValue;
            }
        }
    }
}
