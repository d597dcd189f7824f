using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Form;
using Glazewright.Papers.Sheets;

namespace Glazewright.Web.Jobs;

/// <summary>
/// What a drag of a door, window, vent, fan, louver or wet wall writes. What the job lists gets its new place. Equipment that the program placed is
/// written into the job with all of its kind on that wall, since the program counts either the places that are typed or its own.
/// </summary>
public static class WallDrag
{
    /// <summary>
    /// The free place nearest to where a thing was let go, by the step of a drag, inside the wall and clear of the job's openings and of its own kind. What the
    /// program places makes way by itself.
    /// </summary>
    /// <param name="things">What stands in the wall.</param>
    /// <param name="thing">What was dragged.</param>
    /// <param name="form">The house's shape.</param>
    /// <param name="face">The wall.</param>
    /// <param name="offsetM">Where its nearer edge was let go, m from the wall's start.</param>
    /// <param name="sillM">Where its lower edge was, m; a door keeps its own.</param>
    /// <param name="units">The step's units.</param>
    /// <returns>The place; where the thing stands if there is none.</returns>
    public static (double OffsetM, double SillM) Moved(
        IReadOnlyList<WallThing> things, WallThing thing, BuildingForm form, FaceName face, double offsetM, double sillM, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(things);
        ArgumentNullException.ThrowIfNull(thing);
        ArgumentNullException.ThrowIfNull(form);
        bool isEnd = face is FaceName.End1 or FaceName.End2;
        double lengthM = isEnd ? form.WidthM : form.LengthM;
        // Up a slope the eave is where it begins and the ridge where it ends.
        double slopeM = form.Face(face).Outline.Max(p => p.VM);
        double RoofM(double u) => WallPicture.IsSlope(face) ? slopeM : isEnd ? form.Roof.HeightM(u, form.WidthM) : face == FaceName.Left ? form.Roof.LeftEaveM : form.Roof.RightEaveM;
        WallThing[] others = [.. things.Where(t => t != thing && t.Kind is { } kind && (t.Index >= 0 || kind.IsTyped() || kind == thing.Kind)), .. thing.AlongOnly ? [] : LeanedOn(form.Face(face))];
        double stepM = RoofDrag.StepM(units);
        double wishM = Math.Clamp(offsetM, 0, Math.Max(0, lengthM - thing.WidthM));
        double wishSillM = thing.AlongOnly ? thing.SillM : Math.Max(0, sillM);
        (double, double) best = (thing.OffsetM, thing.SillM);
        double least = double.PositiveInfinity;
        int middle = (int)Math.Round(wishM / stepM);
        int columns = (int)Math.Floor((lengthM - thing.WidthM) / stepM + 1e-9);
        // From the wish outwards, until what is left is farther than the nearest place found.
        for (int away = 0; away <= Math.Max(middle, columns - middle); away++)
        {
            if (Math.Max(0, away - 0.5) * stepM > least)
            {
                break;
            }

            foreach (int i in away == 0 ? (int[])[middle] : [middle - away, middle + away])
            {
                double u = i * stepM;
                // A roof without valleys is lowest over one of the two corners.
                double mostM = i < 0 || i > columns ? -1 : Math.Min(RoofM(u), RoofM(u + thing.WidthM)) - thing.HeightM;
                foreach (double v in thing.AlongOnly ? Fits(thing.SillM, mostM) : Sills(mostM, stepM))
                {
                    double far = Math.Sqrt(Square(u - wishM) + Square(v - wishSillM));
                    if (far < least - 1e-9 && !others.Any(o => o.Meets(u, v, thing.WidthM, thing.HeightM)))
                    {
                        (best, least) = ((u, v), far);
                    }
                }
            }
        }

        return best;
    }

    /// <summary>The edits that write a thing's new place.</summary>
    /// <param name="document">The job as it is.</param>
    /// <param name="index">Place of the house in the job, from 0.</param>
    /// <param name="house">The house.</param>
    /// <param name="things">What stands in the wall.</param>
    /// <param name="thing">What moved.</param>
    /// <param name="face">The wall.</param>
    /// <param name="offsetM">Its nearer edge, m.</param>
    /// <param name="sillM">Its lower edge, m.</param>
    /// <param name="units">Units to write in.</param>
    public static IReadOnlyList<Edit> Edits(
        JobDocument document, int index, House house, IReadOnlyList<WallThing> things, WallThing thing, FaceName face, double offsetM, double sillM, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(house);
        ArgumentNullException.ThrowIfNull(things);
        ArgumentNullException.ThrowIfNull(thing);
        string at = string.Create(CultureInfo.InvariantCulture, $"/houses/{index}/");
        if (thing.Index >= 0)
        {
            string opening = string.Create(CultureInfo.InvariantCulture, $"{at}openings/{thing.Index}/");
            return
            [
                .. Math.Abs(offsetM - thing.OffsetM) > 1e-6 ? (Edit[])[Edit.Typed(opening + "offset", RoofDrag.Length(offsetM, units))] : [],
                .. Math.Abs(sillM - thing.SillM) > 1e-6 ? (Edit[])[Edit.Typed(opening + "sill", RoofDrag.Length(sillM, units))] : [],
            ];
        }

        // A list takes the place of the door that holds when nothing is typed: the door is written with it.
        List<string> added = [];
        if (document.Find(at + "openings") is not ListNode)
        {
            added.AddRange(house.Openings.Where(o => o.Id != thing.Id).Select(o => Item(o.Id, o.Kind, o.Face, o.OffsetM, o.SillM, o.WidthM, o.HeightM, units)));
        }

        foreach (WallThing each in things.Where(t => t == thing || (t.Index < 0 && t.CanMove && t.Kind == thing.Kind && house.Openings.All(o => o.Id != t.Id))))
        {
            (double u, double v) = each == thing ? (offsetM, sillM) : (each.OffsetM, each.SillM);
            added.Add(Item(each.Id, thing.Kind!.Value, face, u, v, each.WidthM, each.HeightM, units));
        }

        // The end with the fans is ours until it is typed; a place on it would be left behind if it changed.
        bool isOfAir = thing.Kind is OpeningKind.Fan or OpeningKind.Louver or OpeningKind.WetWall && document.Find(at + "equipment/fanEnd") is null;
        return
        [
            new Edit(at + "openings", List(document, at + "openings", added)),
            .. isOfAir ? (Edit[])[Edit.Typed(at + "equipment/fanEnd", house.Equipment.FanFace == FaceName.End1 ? "end-1" : "end-2")] : [],
        ];
    }

    // One edit of the whole list, with what stood in it as it was typed: it is taken back in one step.
    private static string List(JobDocument document, string pointer, IReadOnlyList<string> added)
    {
        JobDocument edited = document;
        if (document.Find(pointer) is not ListNode)
        {
            document.TryEdit([new Edit(pointer, "[]")], out edited, out _);
        }

        edited.TryEdit(added.Select(a => new Edit(pointer + "/-", a)), out edited, out _);
        Node list = edited.Find(pointer)!;
        return edited.Text[list.Place.Start..list.Place.End];
    }

    private static string Item(string id, OpeningKind kind, FaceName face, double offsetM, double sillM, double widthM, double heightM, UnitSystem units)
    {
        string Length(double lengthM) => JsonText.Quote(RoofDrag.Length(lengthM, units));
        string faceWord = face switch { FaceName.Left => "left", FaceName.Right => "right", FaceName.End1 => "end-1", FaceName.End2 => "end-2", FaceName.RoofLeft => "roof-left", _ => "roof-right" };
        return $$"""{ "id": {{JsonText.Quote(id)}}, "kind": "{{WallThing.KindWord(kind)}}", "face": "{{faceWord}}", "offset": {{Length(offsetM)}}, "sill": {{Length(sillM)}}, "width": {{Length(widthM)}}, "height": {{Length(heightM)}} }""";
    }

    private static IEnumerable<double> Fits(double sillM, double mostM) => sillM <= mostM + 1e-6 ? [sillM] : [];

    private static IEnumerable<double> Sills(double mostM, double stepM)
    {
        for (int i = 0; i * stepM <= mostM + 1e-9; i++)
        {
            yield return i * stepM;
        }
    }

    // Another building stands there: no air goes through.
    private static IEnumerable<WallThing> LeanedOn(FaceForm face) => face.LeanedOn.Select(piece =>
    {
        (double u, double v) = (piece.Min(p => p.UM), piece.Min(p => p.VM));
        return new WallThing("", "", null, -1, u, v, piece.Max(p => p.UM) - u, piece.Max(p => p.VM) - v, "a building");
    });

    private static double Square(double value) => value * value;
}
