using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.Document;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Sheets;

namespace Glazewright.Web.Jobs;

/// <summary>What stands in a wall: an opening of the job, or equipment that the program placed.</summary>
/// <param name="Id">Id of its opening; for what has none yet the one it would get.</param>
/// <param name="Name">What it is, for people.</param>
/// <param name="Kind">Kind of its opening; null for what the job has no such opening for.</param>
/// <param name="Index">Place among the openings the document lists; −1 when it lists none for it.</param>
/// <param name="OffsetM">Nearer edge from the wall's start, m.</param>
/// <param name="SillM">Lower edge, m.</param>
/// <param name="WidthM">Along the wall, m.</param>
/// <param name="HeightM">Up the wall, m.</param>
/// <param name="Stays">Why it cannot be moved; empty for what can.</param>
public sealed record WallThing(string Id, string Name, OpeningKind? Kind, int Index, double OffsetM, double SillM, double WidthM, double HeightM, string Stays = "")
{
    /// <summary>Doors keep their sill.</summary>
    public bool AlongOnly => Kind is { } kind && kind.IsDoor();

    /// <summary>Whether it can be moved.</summary>
    public bool CanMove => Stays.Length == 0;

    /// <summary>Whether it covers a piece of a place.</summary>
    /// <param name="offsetM">Nearer edge of the place, m.</param>
    /// <param name="sillM">Its lower edge, m.</param>
    /// <param name="widthM">Its width, m.</param>
    /// <param name="heightM">Its height, m.</param>
    public bool Meets(double offsetM, double sillM, double widthM, double heightM) =>
        OffsetM < offsetM + widthM - 1e-6 && offsetM < OffsetM + WidthM - 1e-6 && SillM < sillM + heightM - 1e-6 && sillM < SillM + HeightM - 1e-6;

    /// <summary>What stands in a wall: first the job's openings in their order, then what the program placed.</summary>
    /// <param name="document">The job's document.</param>
    /// <param name="index">Place of the house in the job, from 0.</param>
    /// <param name="house">The house.</param>
    /// <param name="face">A wall or a slope.</param>
    public static IReadOnlyList<WallThing> On(JobDocument document, int index, HouseLook house, FaceName face)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(house);
        bool isListed = document.Find(string.Create(CultureInfo.InvariantCulture, $"/houses/{index}/openings")) is ListNode;
        List<WallThing> all = [];
        for (int i = 0; i < house.House.Openings.Count; i++)
        {
            Opening o = house.House.Openings[i];
            if (o.Face == face)
            {
                all.Add(new WallThing(o.Id, $"{Word(o.Kind)} {o.Id}", o.Kind, isListed ? i : -1, o.OffsetM, o.SillM, o.WidthM, o.HeightM));
            }
        }

        HashSet<string> taken = [.. house.House.Openings.Select(o => o.Id)];
        WallThing[] typed = [.. all];
        if (WallPicture.IsSlope(face))
        {
            // What the program puts through a slope is pipes, and they make way.
            return all;
        }

        foreach (PlacedItem item in house.Layout.Placed.Where(p => p.Face == face && (p.CutsCover || p.Kind is PlacedKind.PressureFan or PlacedKind.Vent)))
        {
            WallThing placed = Placed(house, face, item);
            if (!typed.Any(t => t.Kind == placed.Kind && Same(t, placed)))
            {
                all.Add(placed.Kind is { } kind && placed.CanMove ? placed with { Id = Free(taken, KindWord(kind)) } : placed);
            }
        }

        return all;
    }

    /// <summary>A kind as the document writes it.</summary>
    /// <param name="kind">Kind.</param>
    public static string KindWord(OpeningKind kind) => kind switch
    {
        OpeningKind.DoubleDoor => "double-door",
        OpeningKind.WetWall => "wet-wall",
        OpeningKind.RollUpDoor => "roll-up-door",
        OpeningKind.SlidingDoor => "sliding-door",
        _ => kind.ToString().ToLowerInvariant(),
    };

    private static WallThing Placed(HouseLook house, FaceName face, PlacedItem item)
    {
        (double u, double wide) = face is FaceName.End1 or FaceName.End2 ? (item.Corner.YM, item.Size.YM) : (item.Corner.XM, item.Size.XM);
        OpeningKind? kind = item.Kind switch { PlacedKind.Fan => OpeningKind.Fan, PlacedKind.Louver => OpeningKind.Louver, PlacedKind.WetWall => OpeningKind.WetWall, _ => null };
        PlacedItem[] alike = [.. house.Layout.Placed.Where(p => p.Kind == item.Kind)];
        string stays = kind is null ? "the job has no field for its place"
            : kind != OpeningKind.Louver ? ""
            : house.Layout.Placed.Any(p => p.Kind == PlacedKind.WetWall) ? "louvers before a wet wall stand with it"
            : alike.Any(p => p.Face != face) ? "the louvers stand in more than one wall: the job fixes those of one"
            : "";
        return new WallThing(item.Id, stays.Length > 0 ? item.Label : $"{item.Label}, {item.Id.Split('/')[^1]}", kind, -1, u, item.Corner.ZM, wide, item.Size.ZM, stays);
    }

    private static bool Same(WallThing a, WallThing b) =>
        Math.Abs(a.OffsetM - b.OffsetM) < 1e-3 && Math.Abs(a.SillM - b.SillM) < 1e-3 && Math.Abs(a.WidthM - b.WidthM) < 1e-3 && Math.Abs(a.HeightM - b.HeightM) < 1e-3;

    private static string Free(HashSet<string> taken, string word)
    {
        int n = 1;
        while (!taken.Add(string.Create(CultureInfo.InvariantCulture, $"{word}-{n}")))
        {
            n++;
        }

        return string.Create(CultureInfo.InvariantCulture, $"{word}-{n}");
    }

    private static string Word(OpeningKind kind) => kind switch
    {
        OpeningKind.DoubleDoor => "Double door",
        OpeningKind.WetWall => "Wet wall",
        OpeningKind.RollUpDoor => "Roll-up door",
        OpeningKind.SlidingDoor => "Sliding door",
        _ => kind.ToString(),
    };
}
