using System.Diagnostics;
using System.Globalization;
using Glazewright.Bench.Convergence;
using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Form;
using Glazewright.Design.GainTables;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Plant;
using Glazewright.Design.Price;
using Glazewright.Design.Program;
using Glazewright.Design.Year;
using Glazewright.Science.Climate;
using Glazewright.Science.Weather;

namespace Glazewright.Bench.Years;

/// <summary>
/// "year [repeats]": how long the demo's years take on one core, cold and warm, and what of: the loop whole, then each part of a step alone, fed with what a year recorded.
/// Also the shared stages (weather by the minute, gain tables), bytes allocated, and eight variants side by side.
/// </summary>
internal static class YearTimes
{
    internal const string Word = "year";

    private const int SampleDays = 60;

    internal static void Run(int repeats)
    {
        (Evaluation all, MinuteWeather weather) = Open();
        double expandS = Best(3, () => MinuteWeather.Expand(all.Weather));
        Say($"weather by the minute {expandS:0.000} s");
        List<Scene> scenes = [];
        foreach (House house in all.Job.Houses)
        {
            string id = house.Id;
            BuildingForm form = all.Form.Value.Building(id);
            PlantResult plant = all.Plant(id).Value;
            ProgramDocument program = all.Program(id).Value;
            long start = Stopwatch.GetTimestamp();
            GainTable gains = all.GainTable(id).Value;
            Say($"{id}: gain table, first {Seconds(start):0.000} s");
            scenes.Add(new Scene(id, YearInput.From(all.Job, id), form, gains, plant, program, weather));
        }

        foreach (Scene scene in scenes)
        {
            long start = Stopwatch.GetTimestamp();
            YearRun cold = scene.Start();
            cold.Go(null, CancellationToken.None);
            Say($"{scene.Id}: year cold {Seconds(start):0.000} s");
        }

        foreach (Scene scene in scenes)
        {
            double best = Best(repeats, () => scene.Start().Go(null, CancellationToken.None)), quiet = Quiet(scene, repeats);
            YearRun run = scene.Start();
            long before = GC.GetAllocatedBytesForCurrentThread();
            run.Go(null, CancellationToken.None);
            long bytes = GC.GetAllocatedBytesForCurrentThread() - before;
            Say($"{scene.Id}: year warm {best:0.000} s (each day at its best {quiet:0.000}), {bytes / 1024:N0} KiB allocated (midnights); ends at {run.State.AirBelowC:R} °C, held {run.Held.Year().Hours().HeldJointlyH:R} h");
            Parts(scene, repeats);
        }

        double eight = Best(2, () => Parallel.For(0, 8, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i => scenes[i % scenes.Count].Start().Go(null, CancellationToken.None)));
        Say($"8 years on 2 threads {eight:0.000} s");
    }

    /// <summary>A year made of each day's best time: what it takes on a machine that others use too.</summary>
    private static double Quiet(Scene scene, int repeats)
    {
        DayClock clock = new();
        for (int i = 0; i < repeats; i++)
        {
            clock.Restart();
            scene.Start().Go(clock, CancellationToken.None);
        }

        return clock.Seconds;
    }

    /// <summary>The pieces of the steps of some days, a step a minute, each alone on recorded inputs, as time of a whole year.</summary>
    private static void Parts(Scene scene, int repeats)
    {
        const int Minutes = SampleDays * 1440;
        Recording record = Record(scene, Minutes);
        double perYear = YearRun.Minutes / (double)Minutes;
        double control = perYear * Daily(repeats, record.Control()), plant = perYear * Daily(repeats, record.Plant());
        double sun = perYear * Daily(repeats, record.Sun()), house = perYear * Daily(repeats, record.House());
        Say($"   its pieces alone, a step a minute: program {control:0.000}, equipment {plant:0.000}, sun {sun:0.000}, house {house:0.000} s");
    }

    private static double Daily(int repeats, Action<int> step)
    {
        long[] best = [.. Enumerable.Repeat(long.MaxValue, SampleDays)];
        for (int i = 0; i < repeats; i++)
        {
            for (int day = 0; day < SampleDays; day++)
            {
                long start = Stopwatch.GetTimestamp();
                for (int at = day * 1440; at < (day + 1) * 1440; at++)
                {
                    step(at);
                }

                best[day] = Math.Min(best[day], Stopwatch.GetTimestamp() - start);
            }
        }

        return best.Sum() / (double)Stopwatch.Frequency;
    }

    // Every sixth day, so that all seasons are in it.
    private static Recording Record(Scene scene, int minutes)
    {
        YearRun run = scene.Start();
        run.Go(null, CancellationToken.None);
        Recording record = new(scene, minutes);
        for (int day = 0; day < SampleDays; day++)
        {
            int from = day * (YearTargets.Days / SampleDays);
            run.Load(run.Midnights[from]);
            for (int of = 0; of < 1440; of++)
            {
                int minute = (from * 1440) + of, at = (day * 1440) + of;
                run.Step(minute, out record.Forcings[at]);
                record.Minutes[at] = minute;
                run.Commands.CopyTo(record.Commands.AsSpan(at * run.Commands.Length));
                run.Readings.CopyTo(record.Readings.AsSpan(at * run.Readings.Length));
            }
        }

        return record;
    }

    private static (Evaluation, MinuteWeather) Open()
    {
        string examples = Path.Combine(StudyYear.RepoRoot(), "examples");
        JobDocument document = JobDocument.Read(File.ReadAllText(Path.Combine(examples, "two-ridge-herb-yard.json")));
        WeatherYear year = ((WeatherReading.Read)WeatherFile.Read(File.ReadAllBytes(Path.Combine(examples, "weather", "demo-continental-42N.epw.gz")))).Year;
        Job job = JobReader.Read(document, SiteWeather.HintOf(year)).Value ?? throw new InvalidOperationException("The demo's job has faults.");
        Evaluation all = new(job, Ground.Of(year, CatalogueReader.Generic, PriceBook.Generic()), new StageRunner());
        return (all, MinuteWeather.Expand(year));
    }

    private static double Best(int repeats, Action act)
    {
        double best = double.MaxValue;
        for (int i = 0; i < repeats; i++)
        {
            long start = Stopwatch.GetTimestamp();
            act();
            best = Math.Min(best, Seconds(start));
        }

        return best;
    }

    private static double Seconds(long since) => Stopwatch.GetElapsedTime(since).TotalSeconds;

    private static void Say(FormattableString text) => Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));

    private sealed record Scene(
        string Id, YearInput Input, BuildingForm Form, GainTable Gains, PlantResult Plant, ProgramDocument Program, MinuteWeather Weather)
    {
        public YearRun Start() => new(Input, Form, Gains, Plant, Program, Weather, ProgramControl.Of(Program));
    }

    /// <summary>What went into each part of the steps.</summary>
    private sealed class Recording(Scene scene, int minutes)
    {
        private readonly ProgramControl control = ProgramControl.Of(scene.Program);
        private readonly YearHouse house = YearHouse.Build(scene.Input, scene.Form, scene.Plant);
        private readonly Command[] told = new Command[scene.Program.Actuators.Count];

        public HouseForcing[] Forcings { get; } = new HouseForcing[minutes];

        public int[] Minutes { get; } = new int[minutes];

        public Command[] Commands { get; } = new Command[minutes * scene.Program.Actuators.Count];

        public int[] Readings { get; } = new int[minutes * YearSensors.Count];

        public Action<int> Control() => at => control.Step(Readings.AsSpan(at * YearSensors.Count, YearSensors.Count), 60_000, told);

        public Action<int> Plant()
        {
            YearPlant plant = new(scene.Program, scene.Plant, house);
            HouseForcing f = default;
            bool[] moved = [.. Enumerable.Range(0, Minutes.Length).Select(Moved)];
            return at => plant.Act(Commands.AsSpan(at * told.Length, told.Length), moved[at], 60, false, ref f);

            bool Moved(int at) => at % 1440 == 0
                || Enumerable.Range(0, told.Length).Any(i => Commands[(at * told.Length) + i].Level != Commands[((at - 1) * told.Length) + i].Level);
        }

        public Action<int> Sun()
        {
            Design.Year.YearSun sun = new(scene.Input, scene.Gains, house, scene.Weather);
            HouseForcing f = default;
            return at =>
            {
                ref readonly HouseForcing was = ref Forcings[at];
                sun.Into(Minutes[at], was.CurtainClosedFraction, was.SecondCurtainClosedFraction, 0.7, was.LeafAreaIndex, ref f);
            };
        }

        public Action<int> House()
        {
            HouseModel model = new(house.Parameters);
            HouseState state = model.NewState(15, 0.7, 10, 101_325);
            return at => model.Step(state, in Forcings[at], 60);
        }
    }

    /// <summary>Stops the time of each day, and keeps its best.</summary>
    private sealed class DayClock : IProgress<double>
    {
        private readonly long[] best = [.. Enumerable.Repeat(long.MaxValue, YearTargets.Days)];
        private int day;
        private long since;

        public double Seconds => best.Sum() / (double)Stopwatch.Frequency;

        public void Restart() => (day, since) = (0, Stopwatch.GetTimestamp());

        public void Report(double value)
        {
            long now = Stopwatch.GetTimestamp();
            best[day] = Math.Min(best[day], now - since);
            (day, since) = (day + 1, now);
        }
    }
}
