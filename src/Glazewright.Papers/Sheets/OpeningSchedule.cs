using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>Doors, windows, vents and holes for equipment of a house: mark, place, size, rough opening, way out, and each kind drawn once.</summary>
public static class OpeningSchedule
{
    // Below this the pictures would be too small to be of use.
    private const double LeastPicturesMm = 60;

    /// <summary>The sheet.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="house">Which house.</param>
    /// <param name="number">Sheet number.</param>
    public static Sheet Draw(PaperSource source, HouseResults house, string number)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(house);
        SheetDraft draft = new(source, "openings-" + house.Form.Id, $"House {house.Form.Id}: opening schedule", number);
        Box room = draft.Room;
        string[] notes =
        [
            "Marks: D door, W window, V vent, Q hole for equipment. Left edges run from the wall's corner as on the wall sheets: side walls from end 1, end walls from the left wall. Rough openings are first sizes (doors 2\" wider and 1\" higher, equipment 1/2\" more; common practice): the supplier's drawing governs. Headers, sills and jambs: pieces with the wall on its sheet; flashing goes round each. Pictures: dashed outside, the rough opening; dashed in a door, lines that meet at the hinges.",
            "Ways out: width, hardware, swing, landing and signs are for the code adopted locally to settle. Areas are those of the openings as the shape has them.",
        ];
        double notesMm = SheetDraft.NotesMm(notes, room.Width);
        Table table = Rows(source, house, draft.Style);
        double y = draft.Table("Doors, windows, vents and equipment", MemberSchedule.Cut(table, room.Height - notesMm - 12), new(room.Left, room.Top)) + 4;
        y = draft.Notes(draft.Style == LengthStyle.FeetInches ? notes : [.. notes.Select(n => n.Replace("2\" wider and 1\" higher, equipment 1/2\" more", "51 mm wider and 25 mm higher, equipment 13 mm more", StringComparison.Ordinal))], new(room.Left, y), room.Width);
        OpeningType[] types = [.. Types(house)];
        Box pictures = new(room.Left, y + 4, room.Width, room.Bottom - y - 4);
        if (types.Length > 0 && pictures.Height > LeastPicturesMm)
        {
            (DrawingScale scale, IReadOnlyList<OpeningType> shown) = OpeningTypes.Fit(types, pictures with { Height = pictures.Height - SheetDraft.TitleMm }, draft.Style);
            double mm = 1 / scale.MmPerM;
            double below = (pictures.Height - SheetDraft.TitleMm - OpeningTypes.Pad.Top - types.Max(t => t.Hole.VM + t.Hole.HeightM) * scale.MmPerM - OpeningTypes.Pad.Bottom) / 2;
            Box window = new(-OpeningTypes.Pad.Left * mm, -(OpeningTypes.Pad.Bottom + Math.Max(below, 0)) * mm, pictures.Width * mm, (pictures.Height - SheetDraft.TitleMm) * mm);
            draft.Add("opening-types", shown.Count == types.Length ? "Kinds of openings, from outside" : $"Kinds of openings, from outside: the first {shown.Count} of {types.Length}", pictures, window, scale, (at, _) => OpeningTypes.Draw(shown, at, draft.Style));
        }

        return draft.Done($"Schedule of {table.Rows.Count} kinds of openings.", SheetStyle.Preliminary, "Headers, sills and jambs: first sizes on the wall sheets.");
    }

    // Openings of a roof stand on no floor: drawn flat, as seen square on.
    private static IEnumerable<OpeningType> Types(HouseResults house)
    {
        Dictionary<string, OpeningForm> formed = Formed(house);
        foreach (Line line in Lines(house))
        {
            WallOpening first = line.Holes[0];
            yield return new OpeningType(line.Mark, line.Face is FaceName.RoofLeft or FaceName.RoofRight ? first with { VM = 0 } : first, line.Holes.Count, formed.GetValueOrDefault(first.Id)?.Opening);
        }
    }

    private static Dictionary<string, OpeningForm> Formed(HouseResults house)
    {
        Dictionary<string, OpeningForm> formed = [];
        foreach (OpeningForm o in house.Form.Faces.SelectMany(f => f.Openings))
        {
            formed.TryAdd(o.Opening.Id, o);
            formed.TryAdd(o.Id, o);
        }

        return formed;
    }

    /// <summary>Mark of each door, window and vent by the id that <see cref="WallFraming"/> or the shape gives it.</summary>
    internal static IReadOnlyDictionary<string, string> Marks(HouseResults house)
    {
        Dictionary<string, string> marks = [];
        foreach (Line line in Lines(house))
        {
            foreach (WallOpening hole in line.Holes)
            {
                marks.TryAdd(hole.Id, line.Mark);
            }
        }

        return marks;
    }

    private readonly record struct Line(string Mark, FaceName Face, IReadOnlyList<WallOpening> Holes);

    // Alike in one wall share a mark; numbers run on through the walls.
    private static IEnumerable<Line> Lines(HouseResults house)
    {
        Dictionary<char, int> last = [];
        foreach (FaceName name in (FaceName[])[FaceName.End1, FaceName.End2, FaceName.Left, FaceName.Right, FaceName.RoofLeft, FaceName.RoofRight])
        {
            FaceView view = new(house.Form, name);
            foreach (var alike in view.Holes(house).Select(h => h.Hole).GroupBy(h => (h.Label, h.IsDoor, Wide: Math.Round(h.WidthM, 4), High: Math.Round(h.HeightM, 4), Sill: Math.Round(h.VM, 4))))
            {
                char letter = !alike.Key.IsDoor ? 'Q' : alike.Key.Label.EndsWith("oor", StringComparison.Ordinal) ? 'D' : alike.Key.Label.EndsWith("ent", StringComparison.Ordinal) ? 'V' : 'W';
                last[letter] = last.GetValueOrDefault(letter) + 1;
                yield return new Line(string.Create(CultureInfo.InvariantCulture, $"{letter}{last[letter]}"), name, [.. alike]);
            }
        }
    }

    private static Table Rows(PaperSource source, HouseResults house, LengthStyle style)
    {
        Said said = new(source.Job.Units);
        Dictionary<string, OpeningForm> formed = Formed(house);
        string Size(double wideM, double highM) => $"{LengthText.Of(wideM, style)} × {LengthText.Of(highM, style)}";
        return new Table(
            [
                new("Mark", 16), new("What", 52), new("In", 40), new("No.", 12, Along.End), new("Size", 40), new("Rough opening", 44), new("Left edges", 66), new("Sill", 24, Along.End),
                new("Area each", 26, Along.End), new("Way out", 22), new("Posts cut", 20),
            ],
            [
                .. Lines(house).Select(line =>
                {
                    WallOpening first = line.Holes[0];
                    OpeningForm? form = formed.GetValueOrDefault(first.Id);
                    int cut = line.Holes.SelectMany(h => h.PostsCut).Distinct().Count();
                    return (IReadOnlyList<string>)
                    [
                        line.Mark, first.Label, $"{ElevationSheet.Title(line.Face)}, {SheetStyle.Facing(house.Form, line.Face)}", line.Holes.Count.ToString(CultureInfo.InvariantCulture), Size(first.WidthM, first.HeightM),
                        first.Framed ? Size(first.RoughWidthM, first.RoughHeightM) : "on the intake box", Edges(line.Holes, style), LengthText.Of(first.VM, style),
                        said.Text(form?.AreaM2 ?? first.WidthM * first.HeightM, Unit.SquareMetre),
                        form is null || !first.IsDoor || !form.Opening.Kind.IsDoor() ? "" : form.Opening.Exit ? "yes" : "no", cut == 0 ? "" : cut.ToString(CultureInfo.InvariantCulture),
                    ];
                }),
            ]);
    }

    private static string Edges(IReadOnlyList<WallOpening> holes, LengthStyle style) => holes.Count <= 4
        ? string.Join(", ", holes.Select(h => LengthText.Of(h.UM, style)))
        : $"{LengthText.Of(holes.Min(h => h.UM), style)} to {LengthText.Of(holes.Max(h => h.UM), style)}";
}
