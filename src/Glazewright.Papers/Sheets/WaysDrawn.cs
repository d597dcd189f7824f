using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Services;
using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Sheets;

/// <summary>How pipe and wire look on a plan: a line of its own for each utility, a mark where it enters.</summary>
internal static class WaysDrawn
{
    /// <summary>Line of a branch circuit.</summary>
    public static readonly Pen Circuit = new(0.18, [], Paint.Of(Tone.Accent));

    /// <summary>The line of a utility: told apart by its dashes, not by colour alone.</summary>
    public static Pen PenOf(UtilityKind utility) => utility switch
    {
        UtilityKind.Water => new(0.5, [], Paint.Of(Tone.Water)),
        UtilityKind.Fuel => new(0.5, [5, 1, 1, 1], Paint.Of(Tone.Near)),
        UtilityKind.Drain => new(0.5, [2.4, 1.2], Paint.Of(Tone.Ink2)),
        _ => new(0.6, [], Paint.Of(Tone.Accent)),
    };

    /// <summary>Letter of a utility on plans.</summary>
    public static string Letter(UtilityKind utility) => utility switch { UtilityKind.Water => "W", UtilityKind.Fuel => "G", UtilityKind.Drain => "D", _ => "E" };

    /// <summary>What a pipe is, in a word.</summary>
    public static string Means(UtilityKind utility) => utility switch { UtilityKind.Fuel => "fuel", UtilityKind.Water => "water", UtilityKind.Drain => "drain", _ => "power" };

    /// <summary>How far beside its way a pipe is drawn, model.</summary>
    public static Spot Aside(UtilityKind utility, double mm) => utility == UtilityKind.Fuel ? mm * new Spot(1, 1) : new Spot(0, 0);

    /// <summary>Pipe of some utilities; lines that share a trench lie beside each other on paper.</summary>
    public static IEnumerable<Entity> Pipe(ServicePlan plan, double mm)
    {
        foreach (PipePiece piece in plan.Pieces)
        {
            Spot shift = Aside(piece.Utility, mm);
            yield return new Entity.Polyline([.. piece.Way.Select(p => SheetStyle.Flat(p) + shift)])
            {
                Role = Role.Curve,
                Pen = PenOf(piece.Utility),
                Layer = piece.Utility.ToString().ToLowerInvariant(),
                Source = $"{(piece.House.Length > 0 ? piece.House : "range")}/{piece.Utility.ToString().ToLowerInvariant()}",
            };
        }
    }

    /// <summary>Taps and drains: open rings for bibs, squares for floor drains, spots for machines.</summary>
    public static IEnumerable<Entity> Taps(IEnumerable<UtilityPoint> points, double mm)
    {
        foreach (UtilityPoint p in points)
        {
            Spot at = SheetStyle.Flat(p.At) + Aside(p.Utility, mm);
            if (p.Kind == TapKind.FloorDrain)
            {
                double r = 0.9 * mm;
                IReadOnlyList<Spot> box = [at + new Spot(-r, -r), at + new Spot(r, -r), at + new Spot(r, r), at + new Spot(-r, r)];
                yield return new Entity.Fill([box], Paint.Of(Tone.Sheet)) { Role = Role.Fill, Source = p.Id };
                yield return new Entity.Polyline(box, true) { Role = Role.Beyond, Source = p.Id };
                yield return new Entity.Polyline([box[0], box[2]]) { Role = Role.Beyond, Source = p.Id };
            }
            else if (p.Kind == TapKind.HoseBib)
            {
                yield return new Entity.Fill([SheetMarks.Ring(at, 0.9 * mm)], Paint.Of(Tone.Sheet)) { Role = Role.Fill, Source = p.Id };
                yield return new Entity.Arc(at, 0.9 * mm) { Role = Role.Beyond, Source = p.Id };
            }
            else
            {
                yield return new Entity.Fill([SheetMarks.Ring(at, 0.7 * mm)], PenOf(p.Utility).Paint) { Role = Role.Fill, Source = p.Id };
            }
        }
    }

    /// <summary>Wire from the entry to the panels and from there to what the circuits feed; lights and receptacles, which are priced by floor area, left out.</summary>
    public static IEnumerable<Entity> Wire(ServicesResult services)
    {
        UtilityEntry? entry = services.Plan.Entries.FirstOrDefault(e => e.Utility == UtilityKind.Power);
        foreach (PanelSchedule panel in services.Panels)
        {
            foreach (Circuit c in panel.Circuits.Where(c => c.Way.Count > 1 && c.Kind is not (LoadKind.Lights or LoadKind.Receptacles)))
            {
                yield return new Entity.Polyline([.. c.Way.Select(SheetStyle.Flat)]) { Role = Role.Curve, Pen = Circuit, Layer = "circuit", Source = $"{panel.Id}/{c.Number}" };
            }
        }

        if (services.Panels.FirstOrDefault(p => p.Id == "main") is not { } main)
        {
            yield break;
        }

        foreach (Point3 from in services.Panels.Where(p => p.Id != "main").Select(p => p.At).Concat(entry is null ? [] : [entry.At]))
        {
            Spot a = SheetStyle.Flat(from);
            Spot b = SheetStyle.Flat(main.At);
            if ((a - b).Length() > 0.01)
            {
                yield return new Entity.Polyline([a, new(b.X, a.Y), b]) { Role = Role.Curve, Pen = PenOf(UtilityKind.Power), Layer = "feeder", Source = "feeder" };
            }
        }
    }

    /// <summary>Marks of entries and panels.</summary>
    public static IEnumerable<Tag> Marks(ServicesResult services, params UtilityKind[] of)
    {
        foreach (UtilityEntry entry in services.Plan.Entries.Where(e => of.Contains(e.Utility)))
        {
            yield return new Tag(SheetStyle.Flat(entry.At), Letter(entry.Utility), $"entry/{entry.Utility.ToString().ToLowerInvariant()}");
        }
    }

    /// <summary>Samples of the lines with what they mean, one under the other on paper.</summary>
    public static IEnumerable<Entity> Legend(IEnumerable<(Pen Pen, string Means)> lines, Spot atMm)
    {
        double y = atMm.Y;
        foreach ((Pen pen, string means) in lines)
        {
            y += 4.6;
            yield return new Entity.Polyline([new(atMm.X, y - 1.2), new(atMm.X + 14, y - 1.2)]) { Role = Role.Curve, Pen = pen };
            yield return new Entity.Label(new(atMm.X + 17, y), means) { Role = Role.Text };
        }
    }

    /// <summary>A run in words.</summary>
    public static string Run(double lengthM, UnitSystem units) => units == UnitSystem.Us
        ? string.Create(CultureInfo.InvariantCulture, $"{lengthM / 0.3048:#,0} ft")
        : string.Create(CultureInfo.InvariantCulture, $"{lengthM:#,0.0} m");
}
