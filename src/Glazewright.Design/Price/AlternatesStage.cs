using System.Collections.Concurrent;
using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Choices;
using Glazewright.Design.Contracts;
using Glazewright.Design.Cuts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Design.Framing;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;
using Glazewright.Design.Services;
using Glazewright.Design.Takeoff;

namespace Glazewright.Design.Price;

/// <summary>What Alternates reads of the job.</summary>
/// <param name="Choices">What each house's choices read, in the houses' order.</param>
/// <param name="Layouts">What each house's layout reads.</param>
/// <param name="Programs">What each house's program reads.</param>
/// <param name="Framings">What the framing of each house's openings reads.</param>
/// <param name="Services">What the services read.</param>
/// <param name="Takeoff">What the takeoff reads.</param>
/// <param name="Price">What the price reads.</param>
public sealed record AlternatesInput(
    EqList<ChoicesInput> Choices, EqList<LayoutInput> Layouts, EqList<ProgramInput> Programs, EqList<FramingInput> Framings, ServicesInput Services, TakeoffInput Takeoff, PriceInput Price)
{
    /// <summary>Projects the job.</summary>
    /// <param name="job">The job.</param>
    /// <returns>Alternates' input.</returns>
    public static AlternatesInput From(Job job) => new(
        job.Houses.Select(h => ChoicesInput.From(job, h.Id)).ToEqList(),
        job.Houses.Select(h => LayoutInput.From(job, h.Id)).ToEqList(),
        job.Houses.Select(h => ProgramInput.From(job, h.Id)).ToEqList(),
        job.Houses.Select(h => FramingInput.From(job, h.Id)).ToEqList(),
        ServicesInput.From(job),
        TakeoffInput.From(job),
        PriceInput.From(job));
}

/// <summary>What an alternative of one house's plant would move the price by.</summary>
/// <param name="House">House id.</param>
/// <param name="Label">The one thing changed, as Choices says it.</param>
/// <param name="DifferencePrice">Price with it less the price quoted, money.</param>
/// <param name="IsWhole">False when the price book lacks something it takes: no difference can be told.</param>
public sealed record PricedAlternate(string House, string Label, double DifferencePrice, bool IsWhole);

/// <summary>The quote's alternates; the customer may read them: prices, no costs.</summary>
/// <param name="All">Each alternative but the chosen one, by house.</param>
public sealed record AlternatesResult(EqList<PricedAlternate> All);

/// <summary>The job as quoted, stage by stage: what an alternative is held against.</summary>
/// <param name="Form">Shapes.</param>
/// <param name="Body">Members before holes are framed.</param>
/// <param name="FramedBody">Members, holes of walls framed.</param>
/// <param name="Frames">Sections of the houses.</param>
/// <param name="Duties">What the houses' design days ask.</param>
/// <param name="Plants">Plants as chosen.</param>
/// <param name="Programs">Programs.</param>
/// <param name="Layouts">Layouts.</param>
/// <param name="Takeoff">Quantities.</param>
/// <param name="Cuts">Cut lists.</param>
/// <param name="Price">The price quoted.</param>
public sealed record QuotedJob(
    FormResult Form, BodyResult Body, BodyResult FramedBody, EqList<FrameResult> Frames, EqList<DutyResult> Duties, EqList<PlantResult> Plants, EqList<ProgramDocument> Programs,
    EqList<LayoutResult> Layouts, TakeoffResult Takeoff, CutsResult Cuts, PriceResult Price);

/// <summary>
/// Prices each alternative as the job itself is priced: its plant is laid out, programmed, wired, piped, its openings are framed and all is taken off anew, and goes through
/// the same sums with the same price book. Tube and sheet are not cut anew: as much more is bought for each net metre as in the quote.
/// </summary>
public static class AlternatesStage
{
    /// <summary>Raise when results change.</summary>
    public const int Version = 1;

    /// <summary>Prices the alternatives of all houses, each for itself: whose turn is first does not matter.</summary>
    /// <param name="input">What Alternates reads of the job.</param>
    /// <param name="quoted">The job as quoted.</param>
    /// <param name="catalogue">Equipment to choose from.</param>
    /// <param name="book">Price book.</param>
    /// <param name="cancel">Stops it.</param>
    /// <returns>Differences to the price.</returns>
    public static AlternatesResult Run(AlternatesInput input, QuotedJob quoted, Catalogue catalogue, PriceBook book, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(quoted);
        HashSet<string> unpriced = [.. Unpriced(quoted.Price)];
        Dictionary<(string, string), double> more = Bought(quoted);
        BuildingForm[] houses = [.. quoted.Plants.Select(p => quoted.Form.Building(p.House))];
        Asked[] asked =
        [
            .. houses.SelectMany((house, i) => ChoicesStage.Plants(input.Choices[i], house, quoted.Duties[i], quoted.Plants[i], catalogue).Skip(1)
                .Select(other => new Asked(i, other.Label, other.Size))),
        ];
        PricedAlternate[] all = new PricedAlternate[asked.Length];
        ConcurrentDictionary<(int House, EqList<EqList<WallOpening>> Holes), Lazy<FramingResult>> framed = new();
        Parallel.For(0, all.Length, new ParallelOptions { CancellationToken = cancel, TaskScheduler = TaskScheduler.Current }, k => all[k] = Priced(asked[k]));
        return new AlternatesResult(EqList.Own(all));

        PricedAlternate Priced(Asked other)
        {
            int i = other.House;
            BuildingForm house = houses[i];
            PlantResult plant = other.Size();
            EqList<PlantResult> plants = Put(quoted.Plants, i, plant);
            LayoutResult layout = LayoutStage.Run(input.Layouts[i], quoted.Form, plant);
            EqList<LayoutResult> layouts = Put(quoted.Layouts, i, layout);
            FramingResult framing = Framed(i, layout);
            BodyResult body = quoted.FramedBody with { Members = [.. quoted.FramedBody.Members.Where(m => m.House != house.Id), .. framing.Members] };
            ServicesResult services = ServicesStage.Run(input.Services, quoted.Form, plants, Put(quoted.Programs, i, ProgramStage.Run(input.Programs[i], plant)), layouts);
            TakeoffResult takeoff = TakeoffStage.Run(input.Takeoff, quoted.Form, body, plants, layouts, services);
            PriceResult price = PriceStage.Run(
                input.Price, takeoff, takeoff.Lines.Select(l => more.TryGetValue((l.Item, l.Label), out double share) ? l with { Quantity = share * l.Quantity } : l).ToEqList(), book);
            return new PricedAlternate(house.Id, other.Label, price.Quote.Price - quoted.Price.Quote.Price, Unpriced(price).All(unpriced.Contains));
        }

        // Alternatives with the same holes in the walls have the same framing, which takes longest.
        FramingResult Framed(int i, LayoutResult layout)
        {
            EqList<EqList<WallOpening>> holes = FramingStage.Walls.Select(face => WallFraming.Openings(houses[i], layout, face).ToEqList()).ToEqList();
            return framed.GetOrAdd((i, holes), _ => new Lazy<FramingResult>(() => FramingStage.Run(input.Framings[i], houses[i], quoted.Frames[i], quoted.Body, layout))).Value;
        }
    }

    private sealed record Asked(int House, string Label, Func<PlantResult> Size);

    // How much more of a line is bought than is net in the takeoff.
    private static Dictionary<(string Item, string Label), double> Bought(QuotedJob quoted)
    {
        Dictionary<(string, string), double> more = [];
        foreach ((TakeoffLine net, TakeoffLine bought) in quoted.Takeoff.Lines.Zip(Purchases.Of(quoted.Takeoff, quoted.Cuts, UnitSystem.Us)))
        {
            if (net.Quantity > 0 && net.Quantity != bought.Quantity)
            {
                more.TryAdd((net.Item, net.Label), bought.Quantity / net.Quantity);
            }
        }

        return more;
    }

    private static EqList<T> Put<T>(EqList<T> list, int at, T item) => list.Select((was, i) => i == at ? item : was).ToEqList();

    private static IEnumerable<string> Unpriced(PriceResult price) => price.Lines.Where(l => Purchases.IsOurs(l.By) && l.UnitCost == 0 && l.UnitHours == 0 && l.Quantity > 0).Select(l => l.Item);
}
