using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Science.Optics;
using Glazewright.Science.Shape;

namespace Glazewright.Design.Shape;

/// <summary>The shapes that may be built: what the hard limits (ridge, eaves, tight and steepest pitch) leave, on a grid of whole inches or 2 cm.</summary>
internal sealed class ShapeSpace
{
    private const int NearEaves = 5;
    private const int FarEaves = 6;
    private const int Offsets = 20;
    private const int Ridges = 14;
    private readonly ShapeInput input;
    private readonly double unitM;

    public ShapeSpace(ShapeInput input)
    {
        this.input = input;
        unitM = input.Units == UnitSystem.Us ? 0.0254 : 0.02;
    }

    /// <summary>Steps of the grid, m: near eave, far eave, ridge offset, ridge.</summary>
    public double[] StepsM =>
    [
        (input.EaveAtMostM - input.EaveAtLeastM) / (NearEaves - 1),
        (input.EaveAtMostM - input.EaveAtLeastM) / (FarEaves - 1),
        0.8 * input.WidthM / (Offsets - 1),
        (input.RidgeAtMostM - input.EaveAtLeastM) / Ridges,
    ];

    /// <summary>Every shape of the grid that is allowed, in a fixed order.</summary>
    public List<GableSection> Grid()
    {
        List<GableSection> all = [];
        HashSet<GableSection> taken = [];
        double[] steps = StepsM;
        for (int a = 0; a < NearEaves; a++)
        {
            for (int b = 0; b < FarEaves; b++)
            {
                for (int c = 0; c < Offsets; c++)
                {
                    for (int d = 1; d <= Ridges; d++)
                    {
                        GableSection s = Snapped(
                            input.EaveAtLeastM + (a * steps[0]),
                            input.EaveAtLeastM + (b * steps[1]),
                            (0.12 * input.WidthM) + (c * steps[2]),
                            input.EaveAtLeastM + (d * steps[3]));
                        if (IsAllowed(s) && taken.Add(s))
                        {
                            all.Add(s);
                        }
                    }
                }
            }
        }

        return all;
    }

    /// <summary>The eight neighbours of a shape at a fraction of the grid's steps.</summary>
    public IEnumerable<GableSection> Around(GableSection s, double fraction)
    {
        double[] steps = StepsM;
        for (int axis = 0; axis < 4; axis++)
        {
            for (int sign = -1; sign <= 1; sign += 2)
            {
                double move = sign * Math.Max(unitM, fraction * steps[axis]);
                GableSection moved = Snapped(
                    s.NearEaveM + (axis == 0 ? move : 0),
                    s.FarEaveM + (axis == 1 ? move : 0),
                    s.RidgeOffsetM + (axis == 2 ? move : 0),
                    s.RidgeM + (axis == 3 ? move : 0));
                if (IsAllowed(moved) && moved != s)
                {
                    yield return moved;
                }
            }
        }
    }

    /// <summary>Whether the hard limits allow a shape.</summary>
    public bool IsAllowed(GableSection s)
    {
        const double slackM = 1e-9;
        ShapeWishes w = input.Wishes;
        return s.RidgeOffsetM > 0.02 * s.WidthM && s.RidgeOffsetM < 0.98 * s.WidthM
            && s.RidgeM <= input.RidgeAtMostM + slackM
            && s.NearEaveM >= input.EaveAtLeastM - slackM && s.NearEaveM <= input.EaveAtMostM + slackM
            && s.FarEaveM >= input.EaveAtLeastM - slackM && s.FarEaveM <= input.EaveAtMostM + slackM
            && IsBetween(s.NearPitchRatio, w) && IsBetween(s.FarPitchRatio, w);
    }

    /// <summary>The covers to try on a side that faces the equator: as drawn, and clear near faces with the far ones clear or opaque.</summary>
    public EqList<CoverSet> Covers(bool isNearLeft)
    {
        CoverChoice Drawn(FaceName left, FaceName right) => ShapeField.Covering(input, isNearLeft ? left : right);
        CoverChoice nearWall = Drawn(FaceName.Left, FaceName.Right);
        CoverChoice nearSlope = Drawn(FaceName.RoofLeft, FaceName.RoofRight);
        CoverChoice farSlope = Drawn(FaceName.RoofRight, FaceName.RoofLeft);
        CoverChoice farWall = Drawn(FaceName.Right, FaceName.Left);
        List<CoverSet> sets = [Of(nearWall, nearSlope, farSlope, farWall)];
        if (input.Wishes.Faces == ShapeFreedom.Search)
        {
            CoverChoice[] drawn = [nearSlope, nearWall, farSlope, farWall];
            CoverChoice clear = drawn.FirstOrDefault(IsClear) ?? new CoverChoice("polycarbonate-16-triple", 0.93, 0.97, 0);
            CoverChoice opaque = drawn.Reverse().FirstOrDefault(c => !IsClear(c)) ?? new CoverChoice("panel-76", 1, 1, 0.7);
            foreach (CoverChoice slope in (CoverChoice[])[opaque, clear])
            {
                foreach (CoverChoice wall in (CoverChoice[])[opaque, clear])
                {
                    CoverSet set = Of(clear, clear, slope, wall);
                    if (!sets.Contains(set))
                    {
                        sets.Add(set);
                    }
                }
            }
        }

        return sets.ToEqList();

        static CoverSet Of(CoverChoice nw, CoverChoice ns, CoverChoice fs, CoverChoice fw) =>
            new(new ClearFaces(IsClear(nw), IsClear(ns), IsClear(fs), IsClear(fw)), nw, ns, fs, fw);
    }

    /// <summary>The contractor's own section, counted from the equator's side.</summary>
    public GableSection Drawn(bool isNearLeft)
    {
        RoofProfile r = input.Roof;
        return isNearLeft
            ? new GableSection(input.WidthM, r.LeftEaveM, r.RightEaveM, r.RidgeOffsetM, r.RidgeM)
            : new GableSection(input.WidthM, r.RightEaveM, r.LeftEaveM, input.WidthM - r.RidgeOffsetM, r.RidgeM);
    }

    private GableSection Snapped(double nearM, double farM, double offsetM, double ridgeM) => new(
        input.WidthM,
        Math.Clamp(Whole(nearM), input.EaveAtLeastM, input.EaveAtMostM),
        Math.Clamp(Whole(farM), input.EaveAtLeastM, input.EaveAtMostM),
        Whole(offsetM),
        Math.Min(Whole(ridgeM), input.RidgeAtMostM));

    private double Whole(double lengthM) => Math.Round(lengthM / unitM) * unitM;

    private static bool IsBetween(double pitch, ShapeWishes w) => pitch >= w.WaterPitchRatio - 1e-9 && pitch <= w.SteepestPitchRatio + 1e-9;

    private static bool IsClear(CoverChoice choice) => ShapeField.Kind(choice).Make is not CoverMake.Opaque;
}
