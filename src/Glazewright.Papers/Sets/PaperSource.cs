using Glazewright.Design.Behaviour;
using Glazewright.Design.Body;
using Glazewright.Design.Brief;
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
using Glazewright.Design.Pipeline;
using Glazewright.Design.Plant;
using Glazewright.Design.Price;
using Glazewright.Design.Program;
using Glazewright.Design.Rehearsals;
using Glazewright.Design.Services;
using Glazewright.Design.Takeoff;
using Glazewright.Design.Year;
using Glazewright.Science.Optics;
using Glazewright.Science.Weather;

namespace Glazewright.Papers.Sets;

/// <summary>Everything the papers are made from: the job and what every stage said.</summary>
/// <param name="Job">The job.</param>
/// <param name="Form">Shapes of all buildings.</param>
/// <param name="Body">Members with their sizes, holes of walls framed.</param>
/// <param name="Houses">What the stages said of each house, in the job's order.</param>
/// <param name="Takeoff">What must be bought or made.</param>
/// <param name="Cuts">How bars are cut.</param>
/// <param name="Price">The price, with the contractor's own numbers.</param>
/// <param name="Defaults">Every default the job relies on.</param>
/// <param name="Version">Version of the program that computed it.</param>
public sealed record PaperSource(
    Job Job,
    FormResult Form,
    BodyResult Body,
    EqList<HouseResults> Houses,
    TakeoffResult Takeoff,
    CutsResult Cuts,
    PriceResult Price,
    EqList<DefaultUsed> Defaults,
    string Version)
{
    /// <summary>Electric, gas, water, drain and controls of the range.</summary>
    public ServicesResult Services { get; init; } = ServicesResult.None;

    /// <summary>What other choices of plant would move the price by.</summary>
    public AlternatesResult Alternates { get; init; } = new([]);

    /// <summary>Wind of the weather year's warmest daylight hours; null where its directions are not known.</summary>
    public WindRose? WarmWind { get; init; }

    /// <summary>What an evaluation says, stage by stage; whatever is not yet computed is computed here.</summary>
    /// <param name="evaluation">The job's evaluation.</param>
    /// <param name="defaults">Defaults that held when the job was read.</param>
    /// <param name="version">Version of the program.</param>
    public static PaperSource From(Evaluation evaluation, EqList<DefaultUsed> defaults, string version)
    {
        ArgumentNullException.ThrowIfNull(evaluation);
        EqList<HouseResults> houses = evaluation.Job.Houses.Select(h => new HouseResults(
            h,
            evaluation.Form.Value.Building(h.Id),
            evaluation.Frame(h.Id).Value,
            evaluation.GainTable(h.Id).Value,
            evaluation.Duty(h.Id).Value,
            evaluation.Plant(h.Id).Value,
            evaluation.Layout(h.Id).Value,
            evaluation.LightMap(h.Id).Value,
            evaluation.Program(h.Id).Value,
            evaluation.Year(h.Id).Value)
        {
            Framing = evaluation.Framing(h.Id).Value,
            Rehearsals = evaluation.Rehearsals(h.Id).Value.All,
            Behaviour = evaluation.Behaviour(h.Id).Value,
            Choices = evaluation.Choices(h.Id).Value,
            FirstCosts = evaluation.Choices(h.Id).Value.Alternatives.Select(a => ChoiceCosts.Of(a, evaluation.Job.Pricing, evaluation.PriceBook)).ToEqList(),
        }).ToEqList();
        return MetricSource.Of(new PaperSource(
            evaluation.Job,
            evaluation.Form.Value,
            evaluation.FramedBody.Value,
            houses,
            evaluation.Takeoff.Value,
            evaluation.Cuts.Value,
            evaluation.Price.Value,
            defaults,
            version)
        {
            Services = evaluation.Services.Value,
            Alternates = evaluation.Alternates.Value,
            WarmWind = WindRose.WarmDaylight(evaluation.Weather),
        });
    }

    /// <summary>Reports of all stages, in the order of the pipeline; what rests on a default says so.</summary>
    public IEnumerable<StageReport> Reports() => ReportsByStage().Select(r => r.Report);

    /// <summary>The reports with the stage each comes from: whom a report may reach hangs on its stage.</summary>
    internal IEnumerable<(PaperStage Stage, StageReport Report)> ReportsByStage()
    {
        DefaultsTold told = new(Defaults);
        bool metric = Job.Units == UnitSystem.Metric;
        return StageReports().Select(r => (r.Stage, told.Of(metric ? SiWords.Of(r.Report) : r.Report)));
    }

    private IEnumerable<(PaperStage Stage, StageReport Report)> StageReports()
    {
        yield return (PaperStage.Design, LetteringFindings.Of(Job));
        yield return (PaperStage.Design, Form.Report);
        foreach (HouseResults house in Houses)
        {
            yield return (PaperStage.Design, house.Frame.Report);
        }

        yield return (PaperStage.Design, Body.Report);
        foreach (HouseResults house in Houses)
        {
            yield return (PaperStage.Design, house.Gains.Report);
            yield return (PaperStage.Design, house.Duty.Report);
            yield return (PaperStage.Design, house.Plant.Report);
            yield return (PaperStage.Design, house.Layout.Report);
            yield return (PaperStage.Design, house.Framing.Report);
            yield return (PaperStage.Design, house.Light.Report);
            yield return (PaperStage.Design, house.Program.Report);
            yield return (PaperStage.Design, house.Year.Report);
            yield return (PaperStage.Design, StageReport.Empty with { Findings = CrossChecks.Snow(Job, house.Frame, house.Year).ToEqList() });
        }

        yield return (PaperStage.Design, Services.Report);
        yield return (PaperStage.Buying, Takeoff.Report);
        yield return (PaperStage.Buying, Cuts.Report);
        yield return (PaperStage.Buying, Price.Report);
    }
}

/// <summary>Kinds of stages, by who may read what they say.</summary>
internal enum PaperStage
{
    /// <summary>What the house is and does: open to all.</summary>
    Design,

    /// <summary>What is bought and what it costs: the contractor's.</summary>
    Buying,
}

/// <summary>What a house looks like: enough to draw it before light maps and the year are run.</summary>
/// <param name="House">The house as asked for.</param>
/// <param name="Form">Its shape.</param>
/// <param name="Frame">First structural look.</param>
/// <param name="Layout">Where its equipment sits.</param>
public record HouseLook(House House, BuildingForm Form, FrameResult Frame, LayoutResult Layout);

/// <summary>What the stages said of one house.</summary>
/// <param name="House">The house as asked for.</param>
/// <param name="Form">Its shape.</param>
/// <param name="Frame">First structural look.</param>
/// <param name="Gains">Where sunlight goes.</param>
/// <param name="Duty">Design days.</param>
/// <param name="Plant">Equipment.</param>
/// <param name="Layout">Where it sits.</param>
/// <param name="Light">Light maps.</param>
/// <param name="Program">Control program.</param>
/// <param name="Year">The year run.</param>
public sealed record HouseResults(
    House House,
    BuildingForm Form,
    FrameResult Frame,
    GainTable Gains,
    DutyResult Duty,
    PlantResult Plant,
    LayoutResult Layout,
    LightMap Light,
    ProgramDocument Program,
    YearResult Year) : HouseLook(House, Form, Frame, Layout)
{
    /// <summary>Headers, sills and jambs around holes in the walls.</summary>
    public FramingResult Framing { get; init; } = new("", [], [], [], StageReport.Empty);

    /// <summary>How the plant behaves away from its sizing point.</summary>
    public BehaviourResult Behaviour { get; init; } = new("", null, null, null, null, null, []);

    /// <summary>Failures tried on the hardest days.</summary>
    public EqList<Rehearsal> Rehearsals { get; init; } = [];

    /// <summary>What the fixed choices hold, and what others would.</summary>
    public ChoicesResult Choices { get; init; } = new("", [], []);

    /// <summary>Direct first cost of each alternative: contractor only.</summary>
    public EqList<FirstCost> FirstCosts { get; init; } = [];
}

/// <summary>How a covering is named and drawn.</summary>
/// <param name="Name">As printed.</param>
/// <param name="Clear">Whether light passes.</param>
public sealed record CoverLook(string Name, bool Clear)
{
    /// <summary>The look of a chosen covering; an unknown kind is drawn as opaque and called by its id.</summary>
    /// <param name="cover">The choice.</param>
    public static CoverLook Of(CoverChoice cover)
    {
        ArgumentNullException.ThrowIfNull(cover);
        return GenericCovers.TryFind(cover.Kind, out GenericCover? known)
            ? new CoverLook(known.Name, known.Make is not CoverMake.Opaque)
            : new CoverLook(cover.Kind, false);
    }
}
