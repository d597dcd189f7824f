using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Takeoff;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Solids;
using Glazewright.Papers.Tests.Sets;

namespace Glazewright.Papers.Tests.Solids;

/// <summary>Ranges to build: the sample yard with its real takeoff, metric, ten houses under an awkward name, 300 bays, one tiny house, none.</summary>
internal static class SolidSamples
{
    public static PaperSource Yard(UnitSystem units = UnitSystem.Us, int houses = 2, string name = "Two-Ridge Herb Yard")
    {
        PaperSource source = SampleSource.Make(units, houses, name);
        return Taken(source with { Houses = source.Houses.Select(h => h with { Layout = h.Layout with { Placed = Placed(h) } }).ToEqList() });
    }

    public static string Awkward { get; } = "It's \"quoted\" \\ / <b> & 🌱 ירק ½ " + new string('n', 500);

    /// <summary>300 bays of 8 ft, with collar ties.</summary>
    public static PaperSource Long() => Changed(SampleSource.Make(houses: 1, lengthM: 300 * 2.4384), h => h with { BayCount = 300, Frame = h.Frame with { CollarTieHeightM = 3.6 } });

    /// <summary>1.8 m by 2.4 m with low eaves.</summary>
    public static PaperSource Tiny()
    {
        PaperSource source = Changed(SampleSource.Make(houses: 1), h => h with
        {
            WidthM = 1.8,
            LengthM = 2.4,
            BayCount = 1,
            PonyWallM = 0,
            Openings = [],
            Benches = [],
            Roof = new RoofProfile(0.6, 0.6, 0.9, 0.5, 0.5, SolvedRoofPart.None),
        });
        return source with { Houses = source.Houses.Select(h => h with { Layout = h.Layout with { Placed = [] } }).ToEqList() };
    }

    public static PaperSource Taken(PaperSource source) => source with
    {
        Takeoff = TakeoffStage.Run(TakeoffInput.From(source.Job), source.Form, source.Body, source.Houses.Select(h => h.Plant).ToEqList(), source.Houses.Select(h => h.Layout).ToEqList(), source.Services),
    };

    // What the sample has inside; in the walls fans and pad in the openings typed for them, a louver and a filter fan where none is typed.
    private static EqList<PlacedItem> Placed(HouseResults house)
    {
        (BuildingForm form, string id) = (house.Form, house.House.Id);
        PlacedItem In(string name, PlacedKind kind, Opening o, double xM, double deepM) =>
            new($"{id}/{name}", kind, name, new Point3(xM, o.OffsetM, o.SillM), new Point3(deepM, o.WidthM, o.HeightM), o.Face);
        Opening Typed(string name) => house.House.Openings.Single(o => o.Id == name);
        return
        [
            .. house.Layout.Placed.Where(p => p.Face == FaceName.Floor),
            In("fan-1", PlacedKind.Fan, Typed("fan-1"), form.LengthM, 0.4),
            In("fan-2", PlacedKind.Fan, Typed("fan-2"), form.LengthM, 0.4),
            In("wet-wall", PlacedKind.WetWall, Typed("pad"), -0.15, 0.15),
            new($"{id}/louver-1", PlacedKind.Louver, "Louver", new Point3(9, form.WidthM, 0.5), new Point3(1.2, 0.15, 1.3), FaceName.Right),
            new($"{id}/filter-fan", PlacedKind.PressureFan, "Filter fan", new Point3(6, -0.4, 1.2), new Point3(0.6, 0.4, 0.6), FaceName.Left),
        ];
    }

    private static PaperSource Changed(PaperSource source, Func<House, House> change)
    {
        Job job = source.Job with { Houses = source.Job.Houses.Select(change).ToEqList(), Links = [] };
        FormResult form = FormStage.Run(FormInput.From(job));
        return Taken(source with
        {
            Job = job,
            Form = form,
            Body = BodyStage.Run(form, source.Houses.Select(h => h.Frame).ToEqList()),
            Houses = source.Houses.Select((h, i) => h with { House = job.Houses[i], Form = form.Building(h.House.Id) }).ToEqList(),
        });
    }
}
