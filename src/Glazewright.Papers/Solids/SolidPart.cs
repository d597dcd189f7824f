using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Framing;
using Glazewright.Design.Layout;

namespace Glazewright.Papers.Solids;

/// <summary>Right-handed axes of a part in its building's own axes (x along the ridge, y across, z up).</summary>
/// <param name="Origin">Origin, building axes.</param>
/// <param name="AlongX">Unit vector of the part's x.</param>
/// <param name="AlongZ">Unit vector of the part's z, square to it.</param>
public sealed record SolidFrame(Point3 Origin, Point3 AlongX, Point3 AlongZ)
{
    /// <summary>Unit vector of the part's y.</summary>
    public Point3 AlongY => AlongZ.Cross(AlongX);

    /// <summary>A point of the part in building axes.</summary>
    /// <param name="xM">x, m.</param>
    /// <param name="yM">y, m.</param>
    /// <param name="zM">z, m.</param>
    /// <returns>The point.</returns>
    public Point3 At(double xM, double yM, double zM) => Origin + xM * AlongX + yM * AlongY + zM * AlongZ;

    /// <summary>Axes that run with the building's.</summary>
    /// <param name="origin">Origin.</param>
    /// <returns>The axes.</returns>
    public static SolidFrame Upright(Point3 origin) => new(origin, new Point3(1, 0, 0), new Point3(0, 0, 1));
}

/// <summary>What a part is. A closed case.</summary>
public abstract record SolidKind
{
    private SolidKind()
    {
    }

    /// <summary>A frame member.</summary>
    /// <param name="Solid">The member as built.</param>
    public sealed record Member(MemberSolid Solid) : SolidKind;

    /// <summary>The covering of one zone of a face.</summary>
    /// <param name="Zone">The zone.</param>
    /// <param name="Stuff">What it is made of.</param>
    /// <param name="Roof">On a roof, otherwise on a wall.</param>
    public sealed record Cover(CoverZone Zone, CoverStuff Stuff, bool Roof) : SolidKind;

    /// <summary>A door, window or vent.</summary>
    /// <param name="Opening">The opening it closes.</param>
    public sealed record Leaf(Opening Opening) : SolidKind;

    /// <summary>A piece of equipment or a bench.</summary>
    /// <param name="Item">Where it sits.</param>
    public sealed record Equipment(PlacedItem Item) : SolidKind;

    /// <summary>The floor of a building.</summary>
    /// <param name="Concrete">A slab; otherwise gravel.</param>
    public sealed record Floor(bool Concrete) : SolidKind;

    /// <summary>A pier under a column or post.</summary>
    public sealed record Pier : SolidKind;
}

/// <summary>A hole through a covering.</summary>
/// <param name="Id">Path id, unique: an opening over two zones has a hole in each.</param>
/// <param name="Opening">Id of the opening or the equipment in it; empty where another building leans on.</param>
/// <param name="Outline">Corner points in the part's x and y, counter-clockwise.</param>
public sealed record SolidHole(string Id, string Opening, EqList<Point2> Outline);

/// <summary>One thing that is built.</summary>
/// <param name="Id">Path id, unique in the range.</param>
/// <param name="Label">Words for a reader.</param>
/// <param name="Mark">Shop mark; empty for none.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Frame">Its axes.</param>
/// <param name="Shape">Its shape in them, holes left out.</param>
public sealed record SolidPart(string Id, string Label, string Mark, SolidKind Kind, SolidFrame Frame, SolidShape Shape)
{
    /// <summary>Holes through it, in the order of its profile's.</summary>
    public EqList<SolidHole> Holes { get; init; } = [];

    /// <summary>Id of the opening that it fills; empty for none.</summary>
    public string Fills { get; init; } = "";
}

/// <summary>A house or link building as solids.</summary>
/// <param name="Form">Its shape.</param>
/// <param name="Parts">Its parts.</param>
public sealed record BuildingSolids(BuildingForm Form, EqList<SolidPart> Parts)
{
    /// <summary>Joints of its frame; points in range axes.</summary>
    public EqList<FrameJoint> Joints { get; init; } = [];

    /// <summary>Its rod-braced bays; points in range axes.</summary>
    public EqList<BracedBay> Braced { get; init; } = [];
}
