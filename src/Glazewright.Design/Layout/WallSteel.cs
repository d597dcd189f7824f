using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Framing;
using Glazewright.Design.Takeoff;

namespace Glazewright.Design.Layout;

/// <summary>
/// What a pipe through a wall may not meet: posts, columns, girts, jambs, headers and sills, each taken as 4 in wide since Layout comes before their sizes;
/// and the joints of its sheets and panels. Ribs and flutes are the supplier's: a sheet's flutes may be cut, its joint may not.
/// </summary>
internal sealed class WallSteel
{
    private const double WideM = 0.1016;
    private const double CollarM = 0.0254;

    /// <summary>Half of a joint profile.</summary>
    private const double JointM = 0.0381;

    private readonly List<WallPlace> _steel = [];
    private readonly List<WallPlace> _joints = [];

    /// <summary>Reads a wall.</summary>
    /// <param name="house">The house.</param>
    /// <param name="placed">What is placed so far: holes it stands in are framed.</param>
    /// <param name="face">The wall.</param>
    /// <param name="units">Which sheets are bought.</param>
    /// <param name="girtSpacingM">Widest spacing of girts, m.</param>
    public WallSteel(BuildingForm house, IReadOnlyList<PlacedItem> placed, FaceName face, UnitSystem units, double girtSpacingM = 0)
    {
        FaceForm form = house.Face(face);
        WallFace wall = HoleList.Of(house, new LayoutResult(house.Id, placed.ToEqList(), 0, StageReport.Empty), face, _ => (WideM, WideM));
        IReadOnlyList<Stick> sticks = WallGrid.Of(wall, form.Id, WideM).Sticks;

        // Rows as Framing lays them; in whole rows, since where a header serves hangs on its true size.
        foreach (double v in EndGirts.Of(house, face, wall with { Holes = [] }, [.. sticks.Where(s => s.Hole < 0)], _ => 0, girtSpacingM, WideM, 0).Select(g => g.VM).Distinct())
        {
            _steel.Add(new WallPlace(0, v - WideM / 2, wall.LengthM, WideM));
        }

        foreach (Stick s in sticks)
        {
            _steel.Add(s.IsUpright
                ? new WallPlace(s.AtM - WideM / 2, s.FromM, WideM, s.ToM - s.FromM)
                : new WallPlace(s.FromM, s.Kind == StickKind.Header ? s.AtM : s.AtM - WideM, s.ToM - s.FromM, WideM));
        }

        foreach (MemberLine girt in house.Members.Where(m => m.Role == MemberRole.Girt && In(form.Plane, m.A) && In(form.Plane, m.B)))
        {
            (double a, double b) = (form.Plane.On(girt.A).UM, form.Plane.On(girt.B).UM);
            _steel.Add(new WallPlace(Math.Min(a, b), form.Plane.On(girt.A).VM - WideM / 2, Math.Abs(b - a), WideM));
        }

        foreach (CoverZone zone in form.Zones)
        {
            CoverBuying buying = CoverBuying.Of(zone.Cover.Kind, units);
            (double from, double to) = (zone.Outline.Min(p => p.UM), zone.Outline.Max(p => p.UM));
            (double low, double high) = (zone.Outline.Min(p => p.VM), zone.Outline.Max(p => p.VM));
            if (low > 0.01)
            {
                _joints.Add(new WallPlace(from, low - JointM, to - from, 2 * JointM));
            }

            for (int i = 1; buying.Form is CoverForm.Sheet or CoverForm.Panel && from + i * buying.ModuleM < to - 0.01; i++)
            {
                _joints.Add(new WallPlace(from + i * buying.ModuleM - JointM, low, 2 * JointM, high - low));
            }
        }
    }

    /// <summary>Whether a pipe and its collar meet steel.</summary>
    public bool Meets(WallPlace pipe) => _steel.Exists(pipe.Wider(CollarM).Meets);

    /// <summary>Whether a pipe and its collar meet a joint of the covering.</summary>
    public bool AtJoint(WallPlace pipe) => _joints.Exists(pipe.Wider(CollarM).Meets);

    private static bool In(FacePlane plane, Point3 at) => Math.Abs((at - plane.Origin).Dot(plane.Normal)) < 0.05;
}
