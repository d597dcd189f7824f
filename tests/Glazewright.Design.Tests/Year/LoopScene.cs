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
using Glazewright.Design.Tests.Brief;
using Glazewright.Design.Year;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Tests.Year;

/// <summary>A house with its own program, ready to go through its year or weeks of it in steps of any length.</summary>
internal sealed record LoopScene(string Id, YearInput Input, BuildingForm Form, GainTable Gains, PlantResult Plant, ProgramDocument Program, MinuteWeather Weather)
{
    private static readonly Lazy<LoopScene[]> Demo = new(OpenDemo);

    /// <summary>In place of a step: minutes in parts, as the year runs.</summary>
    public const double AsTheYear = 0;

    private readonly Lock opening = new();
    private IReadOnlyList<YearSnapshot>? midnights;

    /// <summary>The invented house of the year's other tests.</summary>
    public static LoopScene Invented { get; } =
        new("invented", YearScenes.Input, YearScenes.Form, YearScenes.Gains, YearScenes.Plant, YearScenes.Program, YearScenes.Weather);

    /// <summary>One of the demo's houses, or the invented one.</summary>
    public static LoopScene Of(string id) => id == Invented.Id ? Invented : Demo.Value.Single(s => s.Id == id);

    /// <summary>A run of it, not begun.</summary>
    public YearRun Start() => new(Input, Form, Gains, Plant, Program, Weather, ProgramControl.Of(Program));

    /// <summary>Midnights of its year, run once for all tests.</summary>
    public IReadOnlyList<YearSnapshot> Midnights()
    {
        lock (opening)
        {
            if (midnights is null)
            {
                YearRun year = Start();
                year.Go(null, TestContext.Current.CancellationToken);
                midnights = year.Midnights;
            }

            return midnights;
        }
    }

    /// <summary>Some days from a midnight on, a day to settle first.</summary>
    /// <param name="day">The day of the year that it begins with, 0 to 364.</param>
    /// <param name="days">Days that count.</param>
    /// <param name="stepS">A whole part of a minute, s, or <see cref="AsTheYear"/>.</param>
    public LoopSum Go(int day, int days, double stepS)
    {
        YearRun run = Start();
        run.Load(Midnights()[day]);
        int steps = (int)Math.Round(60 / stepS);
        LoopSum sum = new();
        for (int minute = day * 1440; minute < (day + 1 + days) * 1440; minute++)
        {
            bool counts = minute >= (day + 1) * 1440;
            if (minute == (day + 1) * 1440)
            {
                run.Plant.StartCounting();
            }

            if (stepS == AsTheYear)
            {
                run.Minute(minute, counts);
                if (counts)
                {
                    sum.AddHeld(run, minute, Input.Band, run.State.AirBelowC, run.State.RelativeHumidityBelowPercent(run.Acted.PressurePa), 60);
                }

                continue;
            }

            for (int s = 0; s < steps; s++)
            {
                run.Step(minute, out Science.Climate.HouseForcing forcing, stepS);
                if (counts)
                {
                    sum.Add(run, minute, Input.Band, run.State.RelativeHumidityBelowPercent(forcing.PressurePa), stepS);
                }
            }
        }

        sum.Add(run.Months[0]); // nothing where steps were added one by one
        sum.Add(run.Plant.Motors());
        return sum;
    }

    private static LoopScene[] OpenDemo()
    {
        JobDocument document = JobDocument.Read(Examples.Text(Examples.Demo));
        WeatherYear year = ((WeatherReading.Read)WeatherFile.Read(File.ReadAllBytes(Path.Combine(Examples.Folder, "weather", "demo-continental-42N.epw.gz")))).Year;
        Job job = JobReader.Read(document, SiteWeather.HintOf(year)).Value ?? throw new InvalidOperationException("The demo's job has faults.");
        Evaluation all = new(job, Ground.Of(year, CatalogueReader.Generic, PriceBook.Generic()), new StageRunner());
        MinuteWeather weather = MinuteWeather.Expand(year);
        return
        [
            .. job.Houses.Select(h => new LoopScene(
                h.Id, YearInput.From(job, h.Id), all.Form.Value.Building(h.Id), all.GainTable(h.Id).Value, all.Plant(h.Id).Value, all.Program(h.Id).Value, weather)),
        ];
    }
}
