using System.Collections.Concurrent;
using Glazewright.Design.Behaviour;
using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Choices;
using Glazewright.Design.Contracts;
using Glazewright.Design.Cuts;
using Glazewright.Design.Document;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Design.Framing;
using Glazewright.Design.GainTables;
using Glazewright.Design.Layout;
using Glazewright.Design.LightMaps;
using Glazewright.Design.Plant;
using Glazewright.Design.Price;
using Glazewright.Design.Program;
using Glazewright.Design.Rehearsals;
using Glazewright.Design.Services;
using Glazewright.Design.Takeoff;
using Glazewright.Design.Year;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Pipeline;

/// <summary>What an evaluation stands on besides the job: values read once, each with the hash of its content.</summary>
/// <param name="Weather">The hourly year.</param>
/// <param name="Catalogue">Equipment.</param>
/// <param name="PriceBook">Unit prices.</param>
/// <param name="Programs">Edited control programs that take the place of the written ones, by their house; each fits its house's equipment.</param>
public sealed record Ground(
    Keyed<WeatherYear> Weather, Keyed<Catalogue> Catalogue, Keyed<PriceBook> PriceBook, EqList<ProgramDocument> Programs)
{
    /// <summary>The hourly year; the minutes are this one's, so that another year is another ground.</summary>
    public Keyed<WeatherYear> Weather { get; } = Weather;

    /// <summary>The year by the minute, made when it is first asked for: all evaluations on this ground share it.</summary>
    internal Lazy<MinuteWeather> Minutes { get; } = new(() => MinuteWeather.Expand(Weather.Value));

    /// <summary>Keys the values by the hash of the bytes they were read from.</summary>
    /// <param name="weather">The hourly year; keyed by its own content hash and what reading made of it.</param>
    /// <param name="catalogue">Equipment.</param>
    /// <param name="priceBook">Unit prices.</param>
    /// <returns>The ground.</returns>
    public static Ground Of(WeatherYear weather, Catalogue catalogue, PriceBook priceBook) => new(
        new(weather, Canonical.Hash(weather.Provenance.Label + weather.Provenance.ContentSha256 + weather.Station + weather.RadiationOffsetH)),
        new(catalogue, Canonical.Hash(catalogue)),
        new(priceBook, Canonical.Hash(priceBook)),
        []);
}

/// <summary>
/// One job's answers. Asks the runner for a stage; it and what it needs is computed once. Command line, pages and studies all come through here.
/// </summary>
public sealed class Evaluation
{
    private readonly StageRunner _runner;
    private readonly Ground _ground;
    private readonly CancellationToken _cancel;

    // What the runner gave, by stage and house: the runner would have it too, but finding its key means hashing every earlier input again, and a range of ten houses asks thousands of times.
    private readonly ConcurrentDictionary<(string Stage, string House), object> _given = new();

    /// <summary>An evaluation; nothing is computed yet.</summary>
    /// <param name="job">The job.</param>
    /// <param name="ground">Weather, catalogue, price book.</param>
    /// <param name="runner">Runs and keeps stages.</param>
    /// <param name="cancel">Cancels whatever is asked for.</param>
    public Evaluation(Job job, Ground ground, StageRunner runner, CancellationToken cancel = default)
    {
        Job = job;
        _ground = ground;
        _runner = runner;
        _cancel = cancel;
    }

    /// <summary>The job.</summary>
    public Job Job { get; }

    /// <summary>The hourly year it stands on.</summary>
    public WeatherYear Weather => _ground.Weather.Value;

    /// <summary>The equipment catalogue it stands on.</summary>
    public Catalogue Catalogue => _ground.Catalogue.Value;

    /// <summary>The price book it stands on.</summary>
    public PriceBook PriceBook => _ground.PriceBook.Value;

    /// <summary>Shapes.</summary>
    public Keyed<FormResult> Form => Known("form", "", () => Run("form", FormStage.Version, "", FormInput.From(Job), [], (i, _) => FormStage.Run(i)));

    /// <summary>Members.</summary>
    public Keyed<BodyResult> Body => Known("body", "", () =>
    {
        Keyed<FormResult> form = Form;
        Keyed<FrameResult>[] frames = [.. Job.Houses.Select(h => Frame(h.Id))];
        return Run(
            "body",
            BodyStage.Version,
            "",
            0,
            [form.Hash, .. frames.Select(f => f.Hash)],
            (_, _) => BodyStage.Run(form.Value, frames.Select(f => f.Value).ToEqList()));
    });

    /// <summary>Members with the holes of the walls framed: what is bought, cut and drawn. Light and heat, which the holes' equipment rests on, read those before.</summary>
    public Keyed<BodyResult> FramedBody => Known("framed-body", "", () =>
    {
        Keyed<BodyResult> body = Body;
        Keyed<FramingResult>[] framed = [.. Job.Houses.Select(h => Framing(h.Id))];
        return Run(
            "framed-body",
            FramingStage.Version,
            "",
            0,
            [body.Hash, .. framed.Select(f => f.Hash)],
            (_, _) => body.Value with { Members = framed.SelectMany(f => f.Value.Members).ToEqList() });
    });

    /// <summary>Quantities.</summary>
    public Keyed<TakeoffResult> Takeoff => Known("takeoff", "", () =>
    {
        Keyed<FormResult> form = Form;
        Keyed<BodyResult> body = FramedBody;
        Keyed<PlantResult>[] plants = [.. Job.Houses.Select(h => Plant(h.Id))];
        Keyed<LayoutResult>[] layouts = [.. Job.Houses.Select(h => Layout(h.Id))];
        Keyed<ServicesResult> services = Services;
        return Run(
            "takeoff",
            TakeoffStage.Version,
            "",
            TakeoffInput.From(Job),
            [form.Hash, body.Hash, .. plants.Select(p => p.Hash), .. layouts.Select(l => l.Hash), services.Hash, _ground.Catalogue.Hash],
            (i, _) => TakeoffStage.Run(
                i,
                form.Value,
                body.Value,
                plants.Select(p => p.Value).ToEqList(),
                layouts.Select(l => l.Value).ToEqList(),
                services.Value));
    });

    /// <summary>Cut lists.</summary>
    public Keyed<CutsResult> Cuts => Known("cuts", "", () =>
    {
        Keyed<TakeoffResult> takeoff = Takeoff;
        return Run("cuts", CutsStage.Version, "", CutsInput.From(Job), [takeoff.Hash], (i, c) => CutsStage.Run(i, takeoff.Value, c));
    });

    /// <summary>Price.</summary>
    public Keyed<PriceResult> Price => Known("price", "", () =>
    {
        Keyed<TakeoffResult> takeoff = Takeoff;
        Keyed<CutsResult> cuts = Cuts;
        return Run(
            "price",
            PriceStage.Version,
            "",
            PriceInput.From(Job),
            [takeoff.Hash, cuts.Hash, _ground.PriceBook.Hash],
            (i, _) => PriceStage.Run(i, takeoff.Value, cuts.Value, _ground.PriceBook.Value));
    });

    /// <summary>What alternatives of the plants would move the price by.</summary>
    public Keyed<AlternatesResult> Alternates => Known("alternates", "", () =>
    {
        Keyed<FormResult> form = Form;
        Keyed<BodyResult> body = Body, framed = FramedBody;
        Keyed<FrameResult>[] frames = [.. Job.Houses.Select(h => Frame(h.Id))];
        Keyed<DutyResult>[] duties = [.. Job.Houses.Select(h => Duty(h.Id))];
        Keyed<PlantResult>[] plants = [.. Job.Houses.Select(h => Plant(h.Id))];
        Keyed<ProgramDocument>[] programs = [.. Job.Houses.Select(h => Program(h.Id))];
        Keyed<LayoutResult>[] layouts = [.. Job.Houses.Select(h => Layout(h.Id))];
        Keyed<TakeoffResult> takeoff = Takeoff;
        Keyed<CutsResult> cuts = Cuts;
        Keyed<PriceResult> price = Price;
        return Run(
            "alternates",
            AlternatesStage.Version,
            "",
            AlternatesInput.From(Job),
            [
                form.Hash, framed.Hash, .. duties.Select(d => d.Hash), .. programs.Select(p => p.Hash), takeoff.Hash, cuts.Hash, price.Hash,
                _ground.Catalogue.Hash, _ground.PriceBook.Hash, .. plants.Select(p => p.Hash), .. layouts.Select(l => l.Hash), .. frames.Select(f => f.Hash),
            ],
            (i, c) => AlternatesStage.Run(
                i,
                new QuotedJob(
                    form.Value, body.Value, framed.Value, frames.Select(f => f.Value).ToEqList(), duties.Select(d => d.Value).ToEqList(), plants.Select(p => p.Value).ToEqList(),
                    programs.Select(p => p.Value).ToEqList(), layouts.Select(l => l.Value).ToEqList(), takeoff.Value, cuts.Value, price.Value),
                Catalogue, _ground.PriceBook.Value, c));
    });

    /// <summary>Electric, gas, water, drain and controls of the range.</summary>
    public Keyed<ServicesResult> Services => Known("services", "", () =>
    {
        Keyed<FormResult> form = Form;
        Keyed<PlantResult>[] plants = [.. Job.Houses.Select(h => Plant(h.Id))];
        Keyed<ProgramDocument>[] programs = [.. Job.Houses.Select(h => Program(h.Id))];
        Keyed<LayoutResult>[] layouts = [.. Job.Houses.Select(h => Layout(h.Id))];
        return Run(
            "services",
            ServicesStage.Version,
            "",
            ServicesInput.From(Job),
            [form.Hash, .. plants.Select(p => p.Hash), .. programs.Select(p => p.Hash), .. layouts.Select(l => l.Hash)],
            (i, _) => ServicesStage.Run(
                i,
                form.Value,
                plants.Select(p => p.Value).ToEqList(),
                programs.Select(p => p.Value).ToEqList(),
                layouts.Select(l => l.Value).ToEqList()));
    });

    /// <summary>Structure of a house.</summary>
    /// <param name="house">House id.</param>
    /// <returns>The result.</returns>
    public Keyed<FrameResult> Frame(string house) => Known("frame", house, () =>
    {
        Keyed<FormResult> form = Form;
        return Run(
            "frame",
            FrameStage.Version,
            house,
            FrameInput.From(Job, house),
            [form.Hash],
            (i, c) => FrameStage.Run(i, form.Value.Building(house), c));
    });

    /// <summary>What the faces of a house see of each other from inside.</summary>
    /// <param name="house">House id.</param>
    /// <returns>The result.</returns>
    public Keyed<HouseViews> InsideViews(string house) => Known("inside-views", house, () =>
    {
        Keyed<FormResult> form = Form;
        GainInput gain = GainInput.From(Job, house, Catalogue);
        return Run(
            "inside-views",
            HouseViews.Version,
            house,
            new HouseViewsInput(house, gain.Curtain, gain.SecondCurtain),
            [form.Hash],
            (i, _) => HouseViews.Of(i, form.Value));
    });

    /// <summary>Gain table of a house before its equipment is chosen: what the equipment is sized by.</summary>
    /// <param name="house">House id.</param>
    /// <returns>The result.</returns>
    public Keyed<GainTable> BareGainTable(string house) => Known("gain-table", house, () =>
    {
        Keyed<FormResult> form = Form;
        Keyed<BodyResult> body = Body;
        Keyed<HouseViews> views = InsideViews(house);
        return Run(
            "gain-table",
            GainTableStage.Version,
            house,
            GainInput.From(Job, house, Catalogue),
            [form.Hash, body.Hash, views.Hash],
            (i, c) => GainTableStage.Run(i, form.Value, body.Value, views.Value, c));
    });

    /// <summary>Gain table of a house with its equipment in the light, as the light map sees it: what the year runs by.</summary>
    /// <param name="house">House id.</param>
    /// <returns>The result.</returns>
    public Keyed<GainTable> GainTable(string house) => Known("gain-table-fitted", house, () =>
    {
        Keyed<FittedGains> fitted = Fitted(house);
        return Run("gain-table-fitted", GainTableStage.Version, house, 0, [fitted.Hash], (_, _) => fitted.Value.Table);
    });

    private Keyed<FittedGains> Fitted(string house) => Known("fitted-light", house, () =>
    {
        Keyed<FormResult> form = Form;
        Keyed<BodyResult> body = Body;
        Keyed<HouseViews> views = InsideViews(house);
        Keyed<GainTable> bare = BareGainTable(house);
        Keyed<LayoutResult> layout = Layout(house);
        return Run(
            "fitted-light",
            GainTableStage.Version,
            house,
            GainInput.From(Job, house, Catalogue),
            [form.Hash, body.Hash, views.Hash, bare.Hash, layout.Hash],
            (i, c) => GainTableStage.Fitted(i, form.Value, body.Value, layout.Value, views.Value, bare.Value, c));
    });

    /// <summary>Duty of a house.</summary>
    /// <param name="house">House id.</param>
    /// <returns>The result.</returns>
    public Keyed<DutyResult> Duty(string house) => Known("duty", house, () =>
    {
        Keyed<FormResult> form = Form;
        Keyed<GainTable> gains = BareGainTable(house);
        return Run(
            "duty",
            DutyStage.Version,
            house,
            DutyInput.From(Job, house),
            [form.Hash, gains.Hash, _ground.Weather.Hash],
            (i, _) => DutyStage.Run(i, form.Value.Building(house), gains.Value, Weather));
    });

    /// <summary>Equipment of a house.</summary>
    /// <param name="house">House id.</param>
    /// <returns>The result.</returns>
    public Keyed<PlantResult> Plant(string house) => Known("plant", house, () =>
    {
        Keyed<FormResult> form = Form;
        Keyed<DutyResult> duty = Duty(house);
        return Run(
            "plant",
            PlantStage.Version,
            house,
            PlantInput.From(Job, house),
            [form.Hash, duty.Hash, _ground.Catalogue.Hash],
            (i, _) => PlantStage.Run(i, form.Value.Building(house), duty.Value, Catalogue));
    });

    /// <summary>What the fixed choices of a house hold, and what others would.</summary>
    /// <param name="house">House id.</param>
    /// <returns>The result.</returns>
    public Keyed<ChoicesResult> Choices(string house) => Known("choices", house, () =>
    {
        Keyed<FormResult> form = Form;
        Keyed<DutyResult> duty = Duty(house);
        Keyed<PlantResult> plant = Plant(house);
        return Run(
            "choices",
            ChoicesStage.Version,
            house,
            ChoicesInput.From(Job, house),
            [form.Hash, duty.Hash, plant.Hash, _ground.Catalogue.Hash],
            (i, _) => ChoicesStage.Run(i, form.Value.Building(house), duty.Value, plant.Value, Catalogue));
    });

    /// <summary>Where the equipment of a house sits.</summary>
    /// <param name="house">House id.</param>
    /// <returns>The result.</returns>
    public Keyed<LayoutResult> Layout(string house) => Known("layout", house, () =>
    {
        Keyed<FormResult> form = Form;
        Keyed<PlantResult> plant = Plant(house);
        return Run(
            "layout",
            LayoutStage.Version,
            house,
            LayoutInput.From(Job, house),
            [form.Hash, plant.Hash],
            (i, _) => LayoutStage.Run(i, form.Value, plant.Value));
    });

    /// <summary>Framing around the holes in the walls of a house.</summary>
    /// <param name="house">House id.</param>
    /// <returns>The result.</returns>
    public Keyed<FramingResult> Framing(string house) => Known("framing", house, () =>
    {
        Keyed<FormResult> form = Form;
        Keyed<FrameResult> frame = Frame(house);
        Keyed<BodyResult> body = Body;
        Keyed<LayoutResult> layout = Layout(house);
        return Run(
            "framing",
            FramingStage.Version,
            house,
            FramingInput.From(Job, house),
            [form.Hash, frame.Hash, body.Hash, layout.Hash],
            (i, _) => FramingStage.Run(i, form.Value.Building(house), frame.Value, body.Value, layout.Value));
    });

    /// <summary>How the plant of a house behaves away from its sizing point.</summary>
    /// <param name="house">House id.</param>
    /// <returns>The result.</returns>
    public Keyed<BehaviourResult> Behaviour(string house) => Known("behaviour", house, () =>
    {
        Keyed<FormResult> form = Form;
        Keyed<DutyResult> duty = Duty(house);
        Keyed<PlantResult> plant = Plant(house);
        Keyed<LayoutResult> layout = Layout(house);
        Keyed<GainTable> gains = BareGainTable(house);
        return Run(
            "behaviour",
            BehaviourStage.Version,
            house,
            new BehaviourInput(PlantInput.From(Job, house), DutyInput.From(Job, house), Job.Band.HumidityPercent / 100),
            [form.Hash, duty.Hash, plant.Hash, layout.Hash, gains.Hash, _ground.Weather.Hash, _ground.Catalogue.Hash],
            (i, _) => BehaviourStage.Run(
                i.Plant, form.Value.Building(house), duty.Value, plant.Value, layout.Value, Catalogue, new SeasonGround(i.Duty, gains.Value, Weather, i.HumidityBandFraction)));
    });

    /// <summary>Light in a house.</summary>
    /// <param name="house">House id.</param>
    /// <returns>The result.</returns>
    public Keyed<LightMap> LightMap(string house) => Known("light-map", house, () =>
    {
        Keyed<FormResult> form = Form;
        Keyed<BodyResult> body = Body;
        Keyed<LayoutResult> layout = Layout(house);
        Keyed<HouseViews> views = InsideViews(house);
        Keyed<FittedGains> fitted = Fitted(house);
        return Run(
            "light-map",
            LightMapStage.Version,
            house,
            LightInput.From(Job, house, Catalogue),
            [form.Hash, body.Hash, layout.Hash, views.Hash, fitted.Hash, _ground.Weather.Hash],
            (i, c) => LightMapStage.Run(i, form.Value, body.Value, layout.Value, views.Value, fitted.Value, Weather, c));
    });

    /// <summary>Control program of a house.</summary>
    /// <param name="house">House id.</param>
    /// <returns>The result.</returns>
    public Keyed<ProgramDocument> Program(string house) => Known("program", house, () =>
    {
        if (_ground.Programs.FirstOrDefault(p => p.House == house) is { } given)
        {
            return new Keyed<ProgramDocument>(given, Canonical.Hash(given));
        }

        Keyed<PlantResult> plant = Plant(house);
        return Run(
            "program",
            ProgramStage.Version,
            house,
            ProgramInput.From(Job, house),
            [plant.Hash],
            (i, _) => ProgramStage.Run(i, plant.Value));
    });

    /// <summary>Control program of a house as written, with what the job changes in it, and what is wrong with that. A whole program that was given is not asked for here.</summary>
    /// <param name="house">House id.</param>
    public LaidProgram LaidProgram(string house) => ProgramStage.Laid(ProgramInput.From(Job, house), Plant(house).Value);

    /// <summary>What the job's changes of its control programs make wrong; nothing is computed where there are none.</summary>
    /// <param name="document">The document, for the places.</param>
    public EqList<Fault> ProgramFaults(JobDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        return Job.Houses.Where(h => h.ProgramChanges.Count > 0).SelectMany(h => LaidProgram(h.Id).Faults)
            .Select(f => document.Find(f.Pointer) is { } node ? f with { Line = node.Place.Line, Column = node.Place.Column } : f).ToEqList();
    }

    /// <summary>A year of a house under its program.</summary>
    /// <param name="house">House id.</param>
    /// <param name="progress">Told the share done, 0 to 1; may be null.</param>
    /// <returns>The result.</returns>
    public Keyed<YearResult> Year(string house, IProgress<double>? progress = null) => Known("year", house, () =>
    {
        Keyed<FormResult> form = Form;
        Keyed<GainTable> gains = GainTable(house);
        Keyed<DutyResult> duty = Duty(house);
        Keyed<PlantResult> plant = Plant(house);
        Keyed<ProgramDocument> program = Program(house);
        return Run(
            "year",
            YearStage.Version,
            house,
            YearInput.From(Job, house),
            [form.Hash, gains.Hash, duty.Hash, plant.Hash, program.Hash, _ground.Weather.Hash],
            (i, c) => YearStage.Run(
                i, form.Value.Building(house), gains.Value, duty.Value, plant.Value, program.Value, _ground.Minutes.Value, progress, c));
    });

    /// <summary>Failures tried on the hardest days of a house's year.</summary>
    /// <param name="house">House id.</param>
    /// <returns>The result.</returns>
    public Keyed<RehearsalResult> Rehearsals(string house) => Known("rehearsals", house, () =>
    {
        Keyed<YearResult> year = Year(house);
        return Run(
            "rehearsals",
            RehearsalStage.Version,
            house,
            YearInput.From(Job, house),
            [year.Hash],
            (i, c) => RehearsalStage.Run(
                i, Form.Value.Building(house), GainTable(house).Value, Plant(house).Value, Program(house).Value, _ground.Minutes.Value, year.Value, c));
    });

    /// <summary>One day of a house's year, minute by minute.</summary>
    /// <param name="house">House id.</param>
    /// <param name="day">Picks the day, 0 to 364, from the year's result.</param>
    /// <returns>The day with its commands and their reasons.</returns>
    public DayReplay Day(string house, Func<YearResult, int> day)
    {
        ArgumentNullException.ThrowIfNull(day);
        YearResult year = Year(house).Value;
        return DayReplay.Of(
            YearInput.From(Job, house), Form.Value.Building(house), GainTable(house).Value, Plant(house).Value, Program(house).Value, _ground.Minutes.Value, year, day(year));
    }

    /// <summary>One day of a house looked at closely: cells along it, steps of seconds.</summary>
    /// <param name="house">House id.</param>
    /// <param name="day">Picks the day, 0 to 364, from the year's result.</param>
    /// <returns>The day, beside the year's own.</returns>
    public DetailDay DayInDetail(string house, Func<YearResult, int> day)
    {
        ArgumentNullException.ThrowIfNull(day);
        YearResult year = Year(house).Value;
        return DetailDay.Of(
            YearInput.From(Job, house), Form.Value.Building(house), GainTable(house).Value, Plant(house).Value, Layout(house).Value, Program(house).Value, _ground.Minutes.Value, year, day(year));
    }

    /// <summary>Computes every stage, each as soon as what it needs is there. What comes out does not depend on the number of threads.</summary>
    /// <param name="threads">Most threads, at least 1; the parallel loops of stages keep within them too.</param>
    public void Everything(int threads)
    {
        List<(int[] After, Action Do)> work = [];
        _ = Form;
        string[] houses = [.. Job.Houses.Select(h => h.Id)];
        int[] frames = [.. houses.Select(h => Add([], () => Frame(h)))];
        int minutes = Add([], () => _ = _ground.Minutes.Value);
        int[] layouts = [.. houses.Select(h => Add(frames, () => _ = (Layout(h), Program(h))))];
        int[] gains = [.. houses.Zip(layouts, (h, layout) => Add([layout], () => GainTable(h)))];

        // The cut lists are the longest work that cannot be parted: they begin as early as they can.
        int price = Add(layouts, () => _ = Price);
        Add([price], () => _ = Alternates);
        foreach ((string h, int gain) in houses.Zip(gains))
        {
            Add([gain, minutes], () => Rehearsals(h));
            Add([gain], () => LightMap(h));
            Add([gain], () => _ = (Behaviour(h), Choices(h)));
        }

        try
        {
            Together(work, threads);
        }
        catch (AggregateException several)
        {
            // The first fault tells the story; the others are its companions.
            System.Runtime.ExceptionServices.ExceptionDispatchInfo.Throw(several.Flatten().InnerExceptions[0]);
        }

        int Add(int[] after, Action action)
        {
            work.Add((after, action));
            return work.Count - 1;
        }
    }

    private void Together(List<(int[] After, Action Do)> work, int threads)
    {
        // Who is called in a lane of its own stays in it: whoever waits there would hold up the rest. A stage that is asked for too early makes what it needs itself.
        if (TaskScheduler.Current != TaskScheduler.Default)
        {
            ParallelOptions options = new() { MaxDegreeOfParallelism = threads, CancellationToken = _cancel, TaskScheduler = TaskScheduler.Current };
            Parallel.ForEach(Partitioner.Create(work, loadBalance: true), options, w => w.Do());
            return;
        }

        TaskFactory begin = new(_cancel, TaskCreationOptions.None, TaskContinuationOptions.None, ThreadLimit.Of(threads));
        List<Task> begun = [];
        foreach ((int[] after, Action action) in work)
        {
            begun.Add(after.Length == 0 ? begin.StartNew(action) : begin.ContinueWhenAll([.. after.Select(k => begun[k])], done =>
            {
                Task.WaitAll(done);
                action();
            }));
        }

        Task.WaitAll([.. begun]);
    }

    private Keyed<T> Known<T>(string stage, string house, Func<Keyed<T>> ask)
    {
        _cancel.ThrowIfCancellationRequested();
        if (_given.TryGetValue((stage, house), out object? given))
        {
            return (Keyed<T>)given;
        }

        Keyed<T> asked = ask();
        _given[(stage, house)] = asked;
        return asked;
    }

    private Keyed<TOut> Run<TIn, TOut>(
        string stage, int version, string scope, TIn input, StageHash[] earlier, Func<TIn, CancellationToken, TOut> compute) =>
        _runner.Run(stage, version, scope, input, earlier, compute, _cancel);
}
