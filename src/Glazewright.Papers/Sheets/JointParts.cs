using System.Globalization;
using Glazewright.Design.Body;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Framing;
using Glazewright.Design.Takeoff;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>A part told in a detail.</summary>
/// <param name="Tip">Where it lies in the picture, m.</param>
/// <param name="Text">What it is, as the takeoff names it.</param>
internal readonly record struct PartTold(Spot Tip, string Text);

/// <summary>A detail: what is drawn at its size, and what the parts are.</summary>
/// <param name="Id">Id of its view.</param>
/// <param name="Title">Title.</param>
/// <param name="Shown">What it shows, m.</param>
/// <param name="Entities">Its lines.</param>
/// <param name="Parts">Its parts.</param>
internal sealed record JointPicture(string Id, string Title, Box Shown, IReadOnlyList<Entity> Entities, IReadOnlyList<PartTold> Parts);

/// <summary>What the details of a house are made of: its members, coverings, counts, and the takeoff's words.</summary>
internal sealed class JointParts
{
    private readonly PaperSource _source;
    private readonly EqList<FrameJoint> _joints;

    public JointParts(PaperSource source, HouseResults house)
    {
        (_source, House) = (source, house);
        _joints = FrameJoints.Of(house.Form, source.Body.Members);
        Braced = FrameJoints.Braced(house.Form);
        Style = SheetStyle.Lengths(source.Job);
    }

    public HouseResults House { get; }

    public LengthStyle Style { get; }

    public EqList<BracedBay> Braced { get; }

    public Answers.Said Said => new(_source.Job.Units);

    public double FrostM => _source.Job.Site.Ground.FrostDepthM;

    /// <summary>The first member of a role.</summary>
    public MemberSolid? Member(MemberRole role) => _source.Body.Members.FirstOrDefault(m => m.House == House.Form.Id && m.Line.Role == role);

    /// <summary>How many joints of a kind the house has.</summary>
    public int Count(JointKind kind) => _joints.Count(j => j.Kind == kind);

    /// <summary>A line of the takeoff by its item, as it is named there; the fallback where the takeoff has none.</summary>
    public string Named(string item, string otherwise) => _source.Takeoff.Lines.FirstOrDefault(l => l.Item == item)?.Label ?? otherwise;

    public string Length(double lengthM) => SheetStyle.Length(lengthM, Style);

    public CoverBuying Buying(string kind) => CoverBuying.Of(kind, _source.Job.Units);

    /// <summary>Covering of a face above its pony wall.</summary>
    public string Cover(FaceName face) => House.Form.Face(face).Zones[^1].Cover.Kind;

    public static string Whole(int count) => count.ToString(CultureInfo.InvariantCulture);

    /// <summary>A member's section and role, as the cut list has it.</summary>
    public static string Words(MemberSolid m) => $"{Capital(MemberSchedule.Word(m.Line.Role))} {m.Section}";

    private static string Capital(string word) => word.Length == 0 ? word : char.ToUpperInvariant(word[0]) + word[1..];

    /// <summary>An outline in view, on white.</summary>
    public static IEnumerable<Entity> Plain(IReadOnlyList<Spot> ring, string source, Role role = Role.Visible)
    {
        yield return new Entity.Fill([ring], Paint.Of(Tone.Sheet)) { Role = Role.Fill, Source = source };
        yield return new Entity.Polyline(ring, true) { Role = role, Source = source };
    }

    /// <summary>A tube cut square, its wall at true thickness; the box is its outside.</summary>
    public static IEnumerable<Entity> Tube(Box outside, double wallM, string source)
    {
        IReadOnlyList<Spot> ring = outside.Corners();
        Box bore = new(outside.Left + wallM, outside.Top + wallM, outside.Width - 2 * wallM, outside.Height - 2 * wallM);
        yield return new Entity.Fill([ring], Paint.Of(Tone.Sheet)) { Role = Role.Fill, Source = source };
        yield return new Entity.Fill(bore.Width > 0 && bore.Height > 0 ? [ring, bore.Corners()] : [ring], Paint.Of(Tone.Ink2)) { Role = Role.Fill, Source = source };
        yield return new Entity.Polyline(ring, true) { Role = Role.Cut, Pen = new Pen(0.35, [], Paint.Of(Tone.Ink)), Source = source };
    }

    /// <summary>A covering cut: panels are hatched as insulation, all else is tinted.</summary>
    public static IEnumerable<Entity> Sheet(IReadOnlyList<Spot> ring, bool panel, string source)
    {
        yield return new Entity.Fill([ring], Paint.Of(panel ? Tone.Sheet : Tone.Water), panel ? 1 : 0.25) { Role = Role.Fill, Source = source };
        if (panel)
        {
            yield return new Entity.Hatch([ring], HatchPattern.Crossed, 1.6) { Source = source };
        }

        yield return new Entity.Polyline(ring, true) { Role = Role.Cut, Pen = new Pen(0.35, [], Paint.Of(Tone.Ink)), Source = source };
    }

    /// <summary>A screw through a covering, its washer at true size, the way given being outward.</summary>
    public static IEnumerable<Entity> Screw(Spot surface, Spot outward, double throughM, double washerM, string source)
    {
        Spot side = new(-outward.Y, outward.X);
        IReadOnlyList<Spot> Block(double from, double to, double half) =>
            [surface + from * outward + -half * side, surface + from * outward + half * side, surface + to * outward + half * side, surface + to * outward + -half * side];
        yield return new Entity.Fill([Block(-throughM, 0, 0.003)], Paint.Of(Tone.Ink)) { Role = Role.Fill, Source = source };
        yield return new Entity.Fill([Block(0, 0.003, washerM / 2)], Paint.Of(Tone.Ink)) { Role = Role.Fill, Source = source };
        yield return new Entity.Fill([Block(0.003, 0.009, 0.005)], Paint.Of(Tone.Ink)) { Role = Role.Fill, Source = source };
    }

    /// <summary>Round what is not designed.</summary>
    public static Entity Open(Spot at, double radiusM, string source) => new Entity.Arc(at, radiusM) { Role = Role.Centre, Source = source };
}
