using Glazewright.Design.Behaviour;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Services;

namespace Glazewright.Papers.Sets;

/// <summary>The names and words of a job's results as a metric reader hears them, before papers are laid out by their width: catalogue names come in inches.</summary>
internal static class MetricSource
{
    /// <summary>The same source; in a metric job with names in SI.</summary>
    public static PaperSource Of(PaperSource source) => source.Job.Units != UnitSystem.Metric ? source : source with
    {
        Services = Of(source.Services),
        Houses = source.Houses.Select(Of).ToEqList(),
    };

    private static HouseResults Of(HouseResults house) => house with
    {
        Layout = house.Layout with { Placed = house.Layout.Placed.Select(p => p with { Label = SiWords.Of(p.Label) }).ToEqList() },
        Plant = house.Plant with { Loads = house.Plant.Loads.Select(l => l with { Label = SiWords.Of(l.Label) }).ToEqList() },
        Behaviour = house.Behaviour with
        {
            Kinds = house.Behaviour.Kinds.Select(k => new KindSized(SiWords.Of(k.Kind), k.InJob, SiWords.Of(k.Size), SiWords.Of(k.Holds), SiWords.Of(k.Caution))).ToEqList(),
        },
    };

    private static ServicesResult Of(ServicesResult services) => services with
    {
        Electric = services.Electric.Select(l => l with { Label = SiWords.Of(l.Label) }).ToEqList(),
        Panels = services.Panels.Select(p => p with { Circuits = p.Circuits.Select(c => c with { Label = SiWords.Of(c.Label) }).ToEqList() }).ToEqList(),
        GasMain = services.GasMain is { PipeName.Length: > 0 } gas ? gas with { PipeName = SiWords.Nominal(gas.PipeName) } : services.GasMain,
        Gas = services.Gas.Select(g => g with { Pipe = SiWords.Nominal(g.Pipe) }).ToEqList(),
        Water = services.Water.Select(w => w with { Label = SiWords.Of(w.Label), Quality = SiWords.Of(w.Quality), Pipe = SiWords.Nominal(w.Pipe) }).ToEqList(),
        Supply = services.Supply is { } supply ? supply with { Pipe = SiWords.Nominal(supply.Pipe) } : null,
        Drains = services.Drains.Select(d => d with { Label = SiWords.Of(d.Label), Carries = SiWords.Of(d.Carries), Pipe = SiWords.Nominal(d.Pipe) }).ToEqList(),
        Plan = services.Plan with
        {
            Points = services.Plan.Points.Select(p => p with { Label = SiWords.Of(p.Label), Pipe = SiWords.Nominal(p.Pipe) }).ToEqList(),
            Pieces = services.Plan.Pieces.Select(p => p with { Pipe = SiWords.Nominal(p.Pipe) }).ToEqList(),
        },
    };
}
