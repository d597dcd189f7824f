using Glazewright.Design.Catalogues;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;

namespace Glazewright.Design.Plant;

/// <summary>
/// Which louvers, and how many: the least frame area that gives the free area asked and stands on the wall, in at most eight pieces where that can be
/// had; when no size does, the one whose pieces that fit have most free area, less 3 % for each piece past the eighth. What fits is Layout's own answer.
/// </summary>
internal static class LouverChoice
{
    /// <summary>More pieces than this are not tried: each is a motor, a frame and a leak.</summary>
    private const int MostTried = 16;

    public static (LouverEntry Louver, int Count) Of(
        Catalogue catalogue, BuildingForm form, WallPlan wall, (double WidthM, double HeightM)? pad, Func<LouverEntry, double> askedFreeM2)
    {
        WallPlace? before = pad is { } p ? PadOn(wall, p.WidthM, p.HeightM) : null;
        (LouverEntry Louver, int Count)? best = null;
        (int Short, double Over, double GrossM2) least = (int.MaxValue, 0, 0);
        foreach (LouverEntry louver in catalogue.Louvers)
        {
            double freeM2 = louver.SizeM * louver.SizeM * louver.FreeFraction;
            int wanted = Math.Max((int)Math.Ceiling(askedFreeM2(louver) / freeM2 - 1e-9), 1);
            int fits = Fits(form, wall, pad is not null, before, louver.SizeM, Math.Min(wanted, MostTried));
            if (fits == 0)
            {
                continue;
            }

            double grossM2 = fits * louver.SizeM * louver.SizeM;
            (int, double, double) rank = fits < wanted ? (1, -fits * freeM2 * (1 - 0.03 * Math.Max(fits - Intake.MostLouvers, 0)), grossM2) : (0, Math.Max(fits - Intake.MostLouvers, 0), grossM2);
            if (best is null || rank.CompareTo(least) < 0)
            {
                (best, least) = ((louver, fits), rank);
            }
        }

        return best ?? (catalogue.Louvers.MinBy(l => l.SizeM)!, 1);
    }

    /// <summary>How many of the asked louvers would stand if the wall were otherwise.</summary>
    public static int Fits(BuildingForm form, WallPlan wall, bool padWanted, WallPlace? pad, double sizeM, int wanted)
    {
        if (padWanted)
        {
            return pad is { } place ? LouverBlock.Most(wall, place, sizeM, wanted) : 0;
        }

        int fits = WallPacking.Most(wall, sizeM, wanted);
        foreach (FaceName corner in IntakeLayout.Corner(wall.Name))
        {
            if (fits < wanted)
            {
                var side = new WallPlan(form, corner, wall.Module);
                fits += IntakeLayout.Beside(side, sizeM, wanted - fits, wall.Name == FaceName.End2 ? side.LengthM : 0).Count;
            }
        }

        return fits;
    }

    /// <summary>Where the wet wall stands: as typed, or as Layout will place it.</summary>
    public static WallPlace? PadOn(WallPlan wall, double widthM, double heightM) =>
        wall.Typed(Brief.OpeningKind.WetWall) is [WallPlace typed, ..] ? typed : IntakeLayout.PadPlace(wall, widthM, heightM);
}
