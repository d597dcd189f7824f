using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>Room on paper kept free round what a view shows, mm.</summary>
internal readonly record struct Pad(double Left, double Top, double Right, double Bottom);

/// <summary>A sheet while it is being put together: its room, its style, and what stands on it so far.</summary>
internal sealed class SheetDraft
{
    /// <summary>Height of a view's title under its window, mm.</summary>
    public const double TitleMm = 13;

    private readonly PaperSource _source;
    private readonly string _id;
    private readonly string _title;
    private readonly string _number;

    public SheetDraft(PaperSource source, string id, string title, string number)
    {
        (_source, _id, _title, _number) = (source, id, title, number);
        Style = SheetStyle.Lengths(source.Job);
        Size = SheetStyle.Size(source.Job);
        Room = Furniture.RoomMm(Size);
    }

    public LengthStyle Style { get; }

    public SheetSize Size { get; }

    public Box Room { get; }

    public List<View> Views { get; } = [];

    public List<Entity> Paper { get; } = [];

    public List<Inset> Insets { get; } = [];

    /// <summary>The largest scale at which what is shown and its margins fit, and the window with it in the middle of the free room.</summary>
    public static (DrawingScale Scale, Box Window) Fit(Box roomMm, Box shownM, Pad pad, LengthStyle style)
    {
        DrawingScale scale = DrawingScale.Choose(shownM.Width, shownM.Height, roomMm.Width - pad.Left - pad.Right, roomMm.Height - pad.Top - pad.Bottom, style);
        return (scale, Window(roomMm, shownM, pad, scale));
    }

    /// <summary>The window at a scale that is settled.</summary>
    public static Box Window(Box roomMm, Box shownM, Pad pad, DrawingScale scale)
    {
        double mm = scale.MmPerM;
        double besideMm = (roomMm.Width - pad.Left - pad.Right - shownM.Width * mm) / 2;
        double belowMm = (roomMm.Height - pad.Top - pad.Bottom - shownM.Height * mm) / 2;
        return new Box(shownM.Left - (pad.Left + besideMm) / mm, shownM.Top - (pad.Bottom + belowMm) / mm, roomMm.Width / mm, roomMm.Height / mm);
    }

    /// <summary>Adds a view in a box of paper, its title and scale in the lowest strip of the box.</summary>
    public View Add(string id, string title, Box boxMm, Box shownM, Pad pad, Func<DrawingScale, Box, IEnumerable<Entity>> draw, bool withBar = true)
    {
        Box view = boxMm with { Height = boxMm.Height - TitleMm };
        (DrawingScale scale, Box window) = Fit(view, shownM, pad, Style);
        return Add(id, title, boxMm, window, scale, draw, withBar);
    }

    /// <summary>Adds a view whose window and scale are settled.</summary>
    public View Add(string id, string title, Box boxMm, Box window, DrawingScale scale, Func<DrawingScale, Box, IEnumerable<Entity>> draw, bool withBar = true)
    {
        View made = new(id, title, scale, window, new(boxMm.Left, boxMm.Top), [.. draw(scale, window)]);
        Views.Add(made);
        withBar &= boxMm.Width > 150;
        Paper.AddRange(Furniture.ViewTitle(new(boxMm.Left, boxMm.Bottom - 7), title, scale.Text, Math.Min(withBar ? boxMm.Width - 90 : boxMm.Width - 4, 150)));
        if (withBar)
        {
            Paper.AddRange(Furniture.ScaleBar(new(boxMm.Right - 80, boxMm.Bottom - 9), scale, Style));
        }

        return made;
    }

    /// <summary>A table with a heading over it; gives the place below.</summary>
    public double Table(string heading, Table table, Spot atMm)
    {
        if (heading.Length > 0)
        {
            Heading(heading, atMm, table.WidthMm);
            atMm = atMm with { Y = atMm.Y + 5.5 };
        }

        Paper.AddRange(TableSetting.DrawAll(table, atMm));
        return atMm.Y + TableSetting.HeightMm(table);
    }

    public void Heading(string text, Spot atMm, double widthMm) => Paper.Add(
        new Entity.Label(atMm with { Y = atMm.Y + 3 }, TextWrap.Fit(text, Face.SemiBold, 3, widthMm), 3) { Role = Role.Text, Face = Face.SemiBold });

    /// <summary>Paragraphs one under the other; gives the place below.</summary>
    public double Notes(IEnumerable<string> notes, Spot atMm, double widthMm)
    {
        double y = atMm.Y;
        foreach (string note in notes.Where(n => n.Length > 0))
        {
            foreach (string line in TextWrap.Lines(note, Face.Regular, Lettered.SmallestMm, widthMm))
            {
                y += 4.2;
                Paper.Add(new Entity.Label(new(atMm.X, y), line) { Role = Role.Text, Paint = Paint.Of(Tone.Ink2) });
            }

            y += 1.4;
        }

        return y;
    }

    /// <summary>Height that notes take, mm.</summary>
    public static double NotesMm(IEnumerable<string> notes, double widthMm) =>
        notes.Where(n => n.Length > 0).Sum(n => 4.2 * TextWrap.Lines(n, Face.Regular, Lettered.SmallestMm, widthMm).Count + 1.4);

    public void North(Spot centreMm, double radiusMm = 7) =>
        Paper.AddRange(Furniture.North(centreMm, _source.Job.Site.RangeBearingDeg - 90, radiusMm));

    /// <summary>The sheet with its border.</summary>
    public Sheet Done(string words, params string[] notes)
    {
        string[] scales = [.. Views.Select(v => v.Scale.Text).Distinct()];
        string scale = scales.Length > 2 ? "scales as noted" : string.Join("; ", scales);
        return new Sheet(
            _id, _title, words, Size.WidthMm, Size.HeightMm, Views,
            [.. SheetStyle.Border(_source.Job, _title, _number, scale.Length > 0 ? scale : "not to scale", notes), .. Paper])
        {
            Insets = Insets,
        };
    }
}
