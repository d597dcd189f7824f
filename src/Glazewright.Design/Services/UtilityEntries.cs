using Glazewright.Design.Brief;
using Glazewright.Design.Form;

namespace Glazewright.Design.Services;

/// <summary>Where power, fuel and water enter and drains leave: as the job says, else by a default that is told.</summary>
internal static class UtilityEntries
{
    /// <summary>Drains leave so far beyond the far ends of the houses, m (10 ft).</summary>
    public const double DrainBeyondM = 3.048;

    // Fuel and water come up a quarter of the wall to either side of the panel: 3 ft and more between gas and what may spark (common practice).
    private const double BesideFraction = 0.25;

    /// <summary>The entry of a utility.</summary>
    /// <param name="utility">Which.</param>
    /// <param name="input">What Services reads of the job.</param>
    /// <param name="form">Shapes.</param>
    /// <param name="panel">Main panel.</param>
    public static (UtilityEntry Entry, Point3 Inner) Of(UtilityKind utility, ServicesInput input, FormResult form, MainPanelSpot panel)
    {
        UtilityPlaces said = input.Utilities.Places;
        RangeSpot? given = utility switch { UtilityKind.Power => said.Power, UtilityKind.Fuel => said.Fuel, UtilityKind.Water => said.Water, _ => said.Drain };
        if (given is not null)
        {
            Point3 at = new(given.XM, given.YM, 0);
            return (new UtilityEntry(utility, at, "as the job says", false), at);
        }

        if (utility == UtilityKind.Drain)
        {
            Point3 outlet = Outlet(input, form, panel);
            string to = input.Utilities.DrainTo;
            return (new UtilityEntry(utility, outlet, input.Metric ? "3 m beyond the far ends of the houses, a default of ours" + To(to) : "10 ft beyond the far ends of the houses, a default of ours" + To(to), true), outlet);
        }

        Point3 spot = panel.At with { ZM = 0 };
        BuildingForm b = form.Building(panel.Building);
        if (utility == UtilityKind.Power)
        {
            return (new UtilityEntry(utility, spot, "at the main panel, a default of ours", true), spot);
        }

        double side = utility == UtilityKind.Water ? -BesideFraction : BesideFraction;
        if (b.IsHouse)
        {
            // No building but houses: both at the end with the panel, fuel at its other corner.
            Point3 corner = LoadPlaces.Range(b, new Point3(0, utility == UtilityKind.Water ? BesideFraction * b.WidthM : b.WidthM, 0));
            return (new UtilityEntry(utility, corner, $"end 1 of {b.Name}, a default of ours", true), corner);
        }

        Point3 inner = OnWall(b, panel.AcrossFraction, panel.AlongFraction, side);
        Point3 outer = OnWall(b, Other(panel.AcrossFraction), Other(panel.AlongFraction), side);
        return (new UtilityEntry(utility, outer, $"outer wall of {b.Name}, a default of ours", true), inner);
    }

    private static string To(string drainTo) => drainTo.Length > 0 ? $"; on to: {drainTo} (not counted)" : "; where to is not in the job";

    private static double Other(double fraction) => Math.Abs(fraction - 0.5) < 1e-9 ? 0.5 : 1 - fraction;

    private static Point3 OnWall(BuildingForm b, double alongY, double alongX, double side) => LoadPlaces.Range(b, new Point3(
        (Math.Abs(alongX - 0.5) < 1e-9 ? 0.5 + side : alongX) * b.LengthM,
        (Math.Abs(alongY - 0.5) < 1e-9 ? 0.5 + side : alongY) * b.WidthM,
        0));

    // Beyond the end that lies farther from the panel, at the left side of the houses.
    private static Point3 Outlet(ServicesInput input, FormResult form, MainPanelSpot panel)
    {
        BuildingForm[] houses = [.. input.Houses.Select(h => form.Building(h.Id))];
        Point3[] corners = [.. houses.SelectMany(b => new[] { LoadPlaces.Range(b, new Point3(0, 0, 0)), LoadPlaces.Range(b, new Point3(b.LengthM, b.WidthM, 0)) })];
        (double lowX, double highX) = (corners.Min(c => c.XM), corners.Max(c => c.XM));
        double x = Math.Abs(panel.At.XM - lowX) <= Math.Abs(panel.At.XM - highX) ? highX + DrainBeyondM : lowX - DrainBeyondM;
        return new Point3(x, corners.Min(c => c.YM), 0);
    }
}

/// <summary>Where the main panel hangs.</summary>
/// <param name="At">Range axes, m.</param>
/// <param name="Building">Building it hangs in or at.</param>
/// <param name="AlongFraction">Share of that building's length.</param>
/// <param name="AcrossFraction">Share of its width.</param>
/// <param name="Words">In words.</param>
/// <param name="IsDefault">The job has no control room or head house for it.</param>
internal sealed record MainPanelSpot(Point3 At, string Building, double AlongFraction, double AcrossFraction, string Words, bool IsDefault);
