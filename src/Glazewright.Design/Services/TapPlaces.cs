using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Services;

/// <summary>Places of hose bibs and floor drains of a house, own axes.</summary>
internal static class TapPlaces
{
    /// <summary>Hose, m: 50 ft, laid along and across the house, under benches (common practice).</summary>
    public const double HoseM = 15.24;

    /// <summary>Floors fall to a drain from so far along the house, m: 20 ft, 2-1/2 in at 1/8 in a foot (common practice; a default of ours).</summary>
    public const double DrainReachM = 6.096;

    // Pipe stands off the wall.
    private const double OffM = 0.1;

    private const int MostMore = 4;
    private const int MostRows = 24;
    private const double LeastSideM = 0.5;

    // Bibs keep clear of doors.
    private const double BesideDoorM = 0.15;

    /// <summary>Hose bibs along one long wall, both, or with rows between in wide houses, whichever takes fewest: every corner of the floor within a hose.</summary>
    /// <param name="house">The house.</param>
    /// <param name="left">The supply runs along the left wall.</param>
    public static IReadOnlyList<Point2> Bibs(BuildingForm house, bool left)
    {
        double AcrossM(int rows) => rows == 1 ? house.WidthM : house.WidthM / (2 * (rows - 1));
        int Each(int rows) => (int)Math.Ceiling(house.LengthM / (2 * (HoseM - AcrossM(rows))) - 1e-9);
        int best = Enumerable.Range(1, MostRows).Where(r => AcrossM(r) < HoseM - LeastSideM).DefaultIfEmpty(MostRows).MinBy(r => r * (long)Math.Max(Each(r), 1));
        int count = Math.Max(Each(best), 1);
        IReadOnlyList<Point2> bibs = Rows(count);

        // A bib moved off a door may leave a corner out: one more, as long as that helps.
        for (int more = 1; more <= MostMore && FarthestM(house, bibs) > HoseM + 1e-6; more++)
        {
            bibs = Rows(count + more);
        }

        return bibs;

        IReadOnlyList<Point2> Rows(int n) => [.. Enumerable.Range(0, best).SelectMany(r => Row(house, left, n, best == 1 ? 0 : r / (double)(best - 1)))];
    }

    /// <summary>Farthest point of the floor from its bib, along and across, m.</summary>
    public static double FarthestM(BuildingForm house, IReadOnlyList<Point2> bibs)
    {
        double worst = 0;
        for (double x = 0; x <= house.LengthM + 1e-9; x += house.LengthM / 200)
        {
            foreach (double y in (double[])[0, house.WidthM / 4, house.WidthM / 2, house.WidthM * 3 / 4, house.WidthM])
            {
                worst = Math.Max(worst, bibs.Min(b => Math.Abs(b.UM - x) + Math.Abs(b.VM - y)));
            }
        }

        return worst;
    }

    /// <summary>Floor drains in a line along the house.</summary>
    /// <param name="house">The house.</param>
    /// <param name="acrossM">Where the line lies across it, m.</param>
    public static IReadOnlyList<Point2> Drains(BuildingForm house, double acrossM)
    {
        int count = Math.Max(1, (int)Math.Ceiling(house.LengthM / (2 * DrainReachM) - 1e-9));
        return [.. Enumerable.Range(0, count).Select(i => new Point2((i + 0.5) / count * house.LengthM, acrossM))];
    }

    /// <summary>y of pipe along a wall, m.</summary>
    public static double WallM(BuildingForm house, bool left) => left ? OffM : house.WidthM - OffM;

    // A row at a share of the width from the supply's wall; at a wall it keeps clear of doors.
    private static IEnumerable<Point2> Row(BuildingForm house, bool left, int count, double shareFraction)
    {
        bool atWall = shareFraction is <= 0 or >= 1;
        bool leftWall = left == shareFraction <= 0;
        double y = atWall ? WallM(house, leftWall) : (left ? shareFraction : 1 - shareFraction) * house.WidthM;
        EqList<OpeningForm> openings = atWall ? house.Face(leftWall ? FaceName.Left : FaceName.Right).Openings : [];
        for (int i = 0; i < count; i++)
        {
            double x = (i + 0.5) / count * house.LengthM;
            foreach (Opening door in openings.Select(o => o.Opening).Where(o => o.SillM < 1))
            {
                if (x > door.OffsetM - BesideDoorM && x < door.OffsetM + door.WidthM + BesideDoorM)
                {
                    // To the side nearer the middle of the house, where there is wall.
                    x = door.OffsetM + door.WidthM / 2 > house.LengthM / 2 ? door.OffsetM - BesideDoorM : door.OffsetM + door.WidthM + BesideDoorM;
                }
            }

            yield return new Point2(Math.Clamp(x, 0, house.LengthM), y);
        }
    }
}
