using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Layout;

/// <summary>What Layout reads of the job for one house.</summary>
/// <param name="House">House id.</param>
/// <param name="Pointer">JSON pointer of the house.</param>
/// <param name="FanFace">Wall with the fans; the intake is opposite.</param>
/// <param name="Benches">Bench runs.</param>
/// <param name="MainAisleM">Width of the main aisle wanted, m.</param>
/// <param name="Metric">Places on a grid of 5 cm instead of 2 in.</param>
/// <param name="GroundSnowPa">Ground snow, Pa: vent terminals stand above it.</param>
/// <param name="Fuel">Fuel on the lot: a boiler burns it.</param>
/// <param name="ElevationM">Above the sea, m: thin air draws less.</param>
public sealed record LayoutInput(string House, string Pointer, FaceName FanFace, EqList<Bench> Benches, double MainAisleM, bool Metric, double GroundSnowPa, FuelKind Fuel, double ElevationM)
{
    /// <summary>Widest spacing of girts, m; 0 for none in end walls.</summary>
    public double GirtSpacingM { get; init; }

    /// <summary>Projects the job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="house">House id.</param>
    /// <returns>Layout's input.</returns>
    /// <exception cref="ArgumentException">No such house.</exception>
    public static LayoutInput From(Job job, string house)
    {
        int index = job.Houses.ToList().FindIndex(h => h.Id == house);
        if (index < 0)
        {
            throw new ArgumentException($"No house '{house}'.", nameof(house));
        }

        Brief.House h = job.Houses[index];
        return new LayoutInput(h.Id, $"/houses/{index}", h.Equipment.FanFace, h.Benches, h.MainAisleM, job.Units == UnitSystem.Metric, job.Site.Snow.GroundPa,
            job.Utilities.Fuel, job.Site.ElevationM)
        {
            GirtSpacingM = h.Frame.PurlinSpacingM,
        };
    }

    /// <summary>The wall opposite a wall; other faces give themselves.</summary>
    /// <param name="face">A face.</param>
    /// <returns>The opposite wall.</returns>
    public static FaceName Opposite(FaceName face) => face switch
    {
        FaceName.End1 => FaceName.End2,
        FaceName.End2 => FaceName.End1,
        FaceName.Left => FaceName.Right,
        FaceName.Right => FaceName.Left,
        _ => face,
    };
}
