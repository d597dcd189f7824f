using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;
using Glazewright.Design.Services;

namespace Glazewright.Design.Takeoff;

/// <summary>Takeoff: counts and measures everything that must be bought or made.</summary>
public static class TakeoffStage
{
    /// <summary>Raise when results change.</summary>
    public const int Version = 9;

    /// <summary>Takes off the range.</summary>
    /// <param name="input">What the job says of scope, piers, benches, links and services.</param>
    /// <param name="form">Shapes.</param>
    /// <param name="body">Members, holes of walls framed.</param>
    /// <param name="plants">Plants of the houses.</param>
    /// <param name="layouts">Layouts of the houses: openings for fans, louvers and wet walls, vents of heaters.</param>
    /// <param name="services">Panel schedules, controls points and ways of pipe.</param>
    /// <returns>Marks, sheets and lines.</returns>
    public static TakeoffResult Run(
        TakeoffInput input, FormResult form, BodyResult body, EqList<PlantResult> plants, EqList<LayoutResult> layouts, ServicesResult services)
    {
        LineBook book = new(input.Scope, input.Units);
        EqList<ShopMark> marks = ShopMarks.Of(body.Members, ShopTick.For(input.Units));
        StructureTakeoff.Ground(book, form);
        StructureTakeoff.Concrete(book, input, form, body);
        StructureTakeoff.Frame(book, input, form, body, marks);
        EqList<SheetPiece> sheets = CoverTakeoff.Book(book, input, form, layouts);
        foreach (var kind in sheets.Where(s => CoverBuying.Of(s.CoverKind, input.Units).Form == CoverForm.Sheet).GroupBy(s => s.CoverKind))
        {
            book.Add(ScopeSystem.Glazing, LineItems.Sheet(kind.Key), kind.Key, kind.Sum(s => s.Count * s.LengthM * s.TrimmedWidthM), "m²",
                FormattableString.Invariant($"{kind.Sum(s => s.Count)} pieces, net of cutting"));
        }

        StructureTakeoff.Doors(book, input, form);
        foreach (PlantResult plant in plants)
        {
            EquipmentTakeoff.Book(book, plant, form.Building(plant.House), layouts.FirstOrDefault(l => l.House == plant.House));
        }

        foreach (LayoutResult layout in layouts)
        {
            EquipmentTakeoff.Vents(book, layout);
        }

        ServicesTakeoff.Controls(book, plants, services.Points);
        ServicesTakeoff.Electrical(book, input, form, plants, services.Panels);
        ServicesTakeoff.Plumbing(book, input, form, services.Plan);
        StructureTakeoff.Benches(book, input);
        ServicesTakeoff.Whole(book, form, body);
        EqList<TakeoffLine> lines = book.Finish();
        return new TakeoffResult(marks, sheets, lines, TakeoffWorkings.Report(input, form, body, marks, sheets, lines));
    }
}
