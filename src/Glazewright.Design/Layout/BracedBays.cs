using Glazewright.Design.Brief;
using Glazewright.Design.Form;

namespace Glazewright.Design.Layout;

/// <summary>
/// The bays of a side wall that rod bracing is supposed to cross: on each wall the first and the last bay that no opening of the job stands in, the
/// two bays a side that the takeoff counts. Supposed, not designed.
/// </summary>
public static class BracedBays
{
    /// <summary>Braced bays of a wall, from end 1; none on an end wall, whose frame is a portal like the others.</summary>
    /// <param name="house">The house.</param>
    /// <param name="face">A wall.</param>
    /// <returns>From and to along the wall, m.</returns>
    public static IReadOnlyList<Bay> On(BuildingForm house, FaceName face)
    {
        ArgumentNullException.ThrowIfNull(house);
        if (face is not (FaceName.Left or FaceName.Right) || house.FrameLinesXM.Count < 2)
        {
            return [];
        }

        List<Bay> free = [];
        for (int i = 0; i + 1 < house.FrameLinesXM.Count; i++)
        {
            var bay = new Bay(house.FrameLinesXM[i], house.FrameLinesXM[i + 1]);
            if (!house.Face(face).Openings.Any(o => o.Opening.OffsetM < bay.ToM - 1e-6 && o.Opening.OffsetM + o.Opening.WidthM > bay.FromM + 1e-6))
            {
                free.Add(bay);
            }
        }

        return free.Count < 2 ? free : [free[0], free[^1]];
    }
}

/// <summary>A bay between two frames.</summary>
/// <param name="FromM">Frame nearer end 1, m along the house.</param>
/// <param name="ToM">The next frame, m.</param>
public readonly record struct Bay(double FromM, double ToM);
