using Glazewright.Design.Body;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Design.Takeoff;
using Glazewright.Mechanics.Sections;

namespace Glazewright.Design.Framing;

/// <summary>A girt of an end wall between two uprights, or between one and the roof.</summary>
/// <param name="Id">Path id.</param>
/// <param name="VM">Its middle above the floor, m.</param>
/// <param name="FromUM">Where it begins along the wall, m.</param>
/// <param name="ToUM">Where it ends, m.</param>
internal readonly record struct EndGirt(string Id, double VM, double FromUM, double ToUM)
{
    internal double SpanM => ToUM - FromUM;
}

/// <summary>
/// Girts of the end walls: rigid sheets stand upright there from pony wall to rafter as on the side walls, so they are held at the same spacing. Each piece is a
/// simple span from upright to upright; headers and sills serve where a girt would lie in them, and none crosses a hole.
/// </summary>
internal static class EndGirts
{
    /// <summary>Shortest piece worth hanging, m.</summary>
    private const double LeastM = 0.3;

    /// <summary>The pieces of an end wall, from its lowest row; none where the covering is film.</summary>
    /// <param name="house">The house.</param>
    /// <param name="face">End wall.</param>
    /// <param name="wall">The wall with its holes.</param>
    /// <param name="sticks">Its sticks.</param>
    /// <param name="acrossM">Size of a header or sill up the wall, by its index, m.</param>
    /// <param name="spacingM">Widest spacing, m.</param>
    /// <param name="wideM">Size of a girt up the wall, m.</param>
    /// <param name="underM">Upright depth of the rafter, m.</param>
    internal static List<EndGirt> Of(
        BuildingForm house, FaceName face, WallFace wall, IReadOnlyList<Stick> sticks, Func<int, double> acrossM, double spacingM, double wideM, double underM)
    {
        List<EndGirt> girts = [];
        if (face is not (FaceName.End1 or FaceName.End2) || house.Face(face).Zones.Count == 0 || spacingM < LeastM
            || CoverBuying.Of(house.Face(face).Zones[^1].Cover.Kind, UnitSystem.Us).Form == CoverForm.Film)
        {
            return girts;
        }

        double topM = wall.LineVM.Max(p => p.VM);
        double ponyM = house.Face(face).Zones.Count > 1 ? house.Face(face).Zones[^1].Outline.Min(p => p.VM) : 0;
        int rows = Math.Max(1, (int)Math.Ceiling((topM - ponyM) / spacingM - 1e-9));
        string name = house.Face(face).Id;
        for (int row = ponyM > 0 ? 0 : 1; row < rows; row++)
        {
            double v = ponyM + row * (topM - ponyM) / rows;
            if (Roof(wall, v + wideM / 2 + underM) is not ({ } fromM, { } toM))
            {
                continue;
            }

            int piece = 0;
            double at = fromM;
            foreach (Stick up in sticks.Where(s => s.IsUpright && s.FromM < v - 1e-6 && s.ToM > v + 1e-6).OrderBy(s => s.AtM))
            {
                Put(at, up.AtM - up.WidthM / 2);
                at = Math.Max(at, up.AtM + up.WidthM / 2);
            }

            Put(at, toM);

            void Put(double from, double to)
            {
                if (to - from < LeastM || wall.Holes.Any(h => h.Spans(from, to) && h.FootVM < v + wideM / 2 && h.HeadVM > v - wideM / 2))
                {
                    return;
                }

                for (int i = 0; i < sticks.Count; i++)
                {
                    Stick s = sticks[i];
                    double low = s.Kind == StickKind.Sill ? s.AtM - acrossM(i) : s.AtM;
                    if (!s.IsUpright && s.FromM < to - 0.001 && s.ToM > from + 0.001 && low < v + wideM && low + acrossM(i) > v - wideM)
                    {
                        return;
                    }
                }

                girts.Add(new EndGirt(FormattableString.Invariant($"{name}/girt-{row + 1}-{++piece}"), v, from, to));
            }
        }

        return girts;
    }

    /// <summary>Members of the girts, each of the section chosen for its wall.</summary>
    internal static IEnumerable<MemberSolid> Members(BuildingForm house, FrameResult frame, FaceName face, IReadOnlyList<EndGirt> girts, TubeSection section, SpanUse use)
    {
        FacePlane plane = house.Face(face).Plane;
        var shape = (TubeShape.Rectangular)section.Shape;
        SectionChoice choice = new(
            MemberRole.Girt, section.Name, shape.DepthM, shape.WidthM, TubeNames.OrderedWallM(section), section.MassKgPerM, false, new Answer<double>.Met(Math.Max(use.UseFraction, use.DeflectionUse), 0));
        return girts.Select(g => BodyStage.Solid(new MemberLine(g.Id, MemberRole.Girt, plane.At(new(g.FromUM, g.VM)), plane.At(new(g.ToUM, g.VM))), house, frame, choice));
    }

    // How far the wall is as high as this.
    private static (double? FromM, double? ToM) Roof(WallFace wall, double vM)
    {
        double? from = null, to = null;
        for (int i = 1; i < wall.LineVM.Count; i++)
        {
            (Point2 a, Point2 b) = (wall.LineVM[i - 1], wall.LineVM[i]);
            double Cross() => a.UM + (b.UM - a.UM) * (vM - a.VM) / (b.VM - a.VM);
            if (a.VM >= vM)
            {
                from ??= a.UM;
                to = a.UM;
            }
            else if (b.VM > vM)
            {
                from ??= Cross();
            }

            to = b.VM >= vM ? b.UM : a.VM > vM ? Cross() : to;
        }

        return (from, to);
    }
}
