using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Form;

/// <summary>The shape of the whole range: exact planes and areas.</summary>
/// <param name="Buildings">Houses first, in the job's order, then link buildings.</param>
/// <param name="Shared">Pieces of wall where two buildings meet.</param>
/// <param name="Report">Figures and findings.</param>
public sealed record FormResult(EqList<BuildingForm> Buildings, EqList<SharedPiece> Shared, StageReport Report)
{
    /// <summary>A building by id.</summary>
    /// <param name="id">House or link id.</param>
    /// <returns>Its form.</returns>
    /// <exception cref="ArgumentException">No such building.</exception>
    public BuildingForm Building(string id) =>
        Buildings.FirstOrDefault(b => b.Id == id) ?? throw new ArgumentException($"No building '{id}'.", nameof(id));
}

/// <summary>One building's shape. Points are in range axes unless said otherwise.</summary>
/// <param name="Id">House or link id.</param>
/// <param name="Name">As printed.</param>
/// <param name="IsHouse">A greenhouse (true) or a link building.</param>
/// <param name="Origin">Corner at the building's own x = y = z = 0.</param>
/// <param name="AlongX">Unit vector of the building's x (ridge) in range axes.</param>
/// <param name="AlongY">Unit vector of the building's y (across).</param>
/// <param name="LengthM">Along the ridge, m.</param>
/// <param name="WidthM">Across, m.</param>
/// <param name="Roof">Roof profile.</param>
/// <param name="Faces">Six faces and the floor.</param>
/// <param name="FrameLinesXM">x of each frame, own axes, m.</param>
/// <param name="Members">Centre lines of the frame; empty for link buildings.</param>
/// <param name="FloorAreaM2">Floor, m².</param>
/// <param name="VolumeM3">Enclosed volume, m³.</param>
/// <param name="SectionAreaM2">Cross-section, m².</param>
/// <param name="PerimeterM">Perimeter against outdoor air, m.</param>
public sealed record BuildingForm(
    string Id,
    string Name,
    bool IsHouse,
    Point3 Origin,
    Point3 AlongX,
    Point3 AlongY,
    double LengthM,
    double WidthM,
    RoofProfile Roof,
    EqList<FaceForm> Faces,
    EqList<double> FrameLinesXM,
    EqList<MemberLine> Members,
    double FloorAreaM2,
    double VolumeM3,
    double SectionAreaM2,
    double PerimeterM)
{
    /// <summary>A face by name.</summary>
    /// <param name="name">The face.</param>
    /// <returns>Its form.</returns>
    public FaceForm Face(FaceName name) => Faces.First(f => f.Name == name);
}

/// <summary>One face.</summary>
/// <param name="Id">Path id (<c>A/roof-left</c>).</param>
/// <param name="Name">Which face.</param>
/// <param name="Plane">Its plane; v runs up the wall or slope.</param>
/// <param name="Outline">Corner points on the face, counter-clockwise in (u, v).</param>
/// <param name="Zones">What covers it: pony wall below, covering above; one zone for roofs and floor.</param>
/// <param name="Openings">Openings in it.</param>
/// <param name="AreaM2">Gross area, m².</param>
/// <param name="ExposedM2">Gross area against outdoor air, m².</param>
/// <param name="SharedM2">Gross area against other buildings, m².</param>
/// <param name="TiltDeg">Tilt of the outward normal from the zenith, °: 0 flat roof, 90 wall.</param>
/// <param name="AzimuthDeg">Compass direction of the outward normal, clockwise from true north, °.</param>
/// <param name="LeanedOn">Pieces of the face that another building stands against, on the face.</param>
public sealed record FaceForm(
    string Id,
    FaceName Name,
    FacePlane Plane,
    EqList<Point2> Outline,
    EqList<CoverZone> Zones,
    EqList<OpeningForm> Openings,
    double AreaM2,
    double ExposedM2,
    double SharedM2,
    double TiltDeg,
    double AzimuthDeg,
    EqList<EqList<Point2>> LeanedOn);

/// <summary>A part of a face with one covering.</summary>
/// <param name="Id">Path id (<c>A/left/pony</c>, <c>A/left/cover</c>).</param>
/// <param name="Cover">Covering.</param>
/// <param name="Outline">Corner points on the face, counter-clockwise.</param>
/// <param name="GrossM2">Area with openings, m².</param>
/// <param name="NetM2">Exposed area without openings, m².</param>
/// <param name="SharedM2">Part of the gross area that meets another building, m².</param>
public sealed record CoverZone(
    string Id, CoverChoice Cover, EqList<Point2> Outline, double GrossM2, double NetM2, double SharedM2);

/// <summary>An opening placed on its face.</summary>
/// <param name="Id">Path id (<c>A/end2/fan-1</c>).</param>
/// <param name="Opening">The opening as typed.</param>
/// <param name="AreaM2">Area, m².</param>
public sealed record OpeningForm(string Id, Opening Opening, double AreaM2);

/// <summary>Where two buildings meet.</summary>
/// <param name="FaceId">Face of the first building.</param>
/// <param name="OtherFaceId">Face of the second.</param>
/// <param name="Outline">The common piece on the first face.</param>
/// <param name="AreaM2">Its area, m².</param>
public sealed record SharedPiece(string FaceId, string OtherFaceId, EqList<Point2> Outline, double AreaM2);

/// <summary>What a frame member does.</summary>
public enum MemberRole
{
    /// <summary>Side-wall column.</summary>
    Column,

    /// <summary>Rafter.</summary>
    Rafter,

    /// <summary>Collar tie between the rafters of a frame.</summary>
    CollarTie,

    /// <summary>Ridge member.</summary>
    Ridge,

    /// <summary>Eave member.</summary>
    Eave,

    /// <summary>Purlin on the roof.</summary>
    Purlin,

    /// <summary>Girt on a side wall.</summary>
    Girt,

    /// <summary>Post in an end wall, or what holes have left of it.</summary>
    EndPost,

    /// <summary>Upright beside a hole in a wall.</summary>
    Jamb,

    /// <summary>Over a hole in a wall.</summary>
    Header,

    /// <summary>Under a hole in a wall.</summary>
    Sill,
}

/// <summary>The centre line of a frame member, range axes.</summary>
/// <param name="Id">Path id (<c>A/frame-07/rafter-left</c>).</param>
/// <param name="Role">What it does.</param>
/// <param name="A">One end.</param>
/// <param name="B">Other end.</param>
public sealed record MemberLine(string Id, MemberRole Role, Point3 A, Point3 B)
{
    /// <summary>Length between the ends, m.</summary>
    public double LengthM => (B - A).LengthM;
}
