using Glazewright.Design.Brief;
using Glazewright.Design.Form;

namespace Glazewright.Design.Layout;

/// <summary>A rectangle on a wall.</summary>
/// <param name="UM">Nearer edge along the wall, m.</param>
/// <param name="VM">Lower edge, m.</param>
/// <param name="WidthM">Along the wall, m.</param>
/// <param name="HeightM">Up the wall, m.</param>
internal readonly record struct WallPlace(double UM, double VM, double WidthM, double HeightM)
{
    public bool Meets(WallPlace other) =>
        UM < other.UM + other.WidthM - 1e-6 && other.UM < UM + WidthM - 1e-6
        && VM < other.VM + other.HeightM - 1e-6 && other.VM < VM + HeightM - 1e-6;
}

/// <summary>What hangs on one wall, and where the next thing fits between doors and buildings that stand against it, under the roof.</summary>
internal sealed class WallPlan
{
    private const double EdgeM = 0.3;
    private const double GapM = 0.15;
    private const double StepM = 0.05;

    private readonly BuildingForm _form;
    private readonly FaceForm _face;
    private readonly List<WallPlace> _taken = [];

    public WallPlan(BuildingForm form, FaceName face, FormResult range)
    {
        _form = form;
        _face = form.Face(face);
        _taken.AddRange(_face.Openings
            .Where(o => o.Opening.Kind is OpeningKind.Door or OpeningKind.DoubleDoor or OpeningKind.Window or OpeningKind.Vent)
            .Select(o => Of(o.Opening)));
        _taken.AddRange(range.Shared.Where(p => p.FaceId == _face.Id).Select(p =>
        {
            double u = p.Outline.Min(q => q.UM);
            double v = p.Outline.Min(q => q.VM);
            return new WallPlace(u, v, p.Outline.Max(q => q.UM) - u, p.Outline.Max(q => q.VM) - v);
        }));
    }

    public FaceName Name => _face.Name;

    public double LengthM => _face.Name is FaceName.End1 or FaceName.End2 ? _form.WidthM : _form.LengthM;

    public static WallPlace Of(Opening opening) => new(opening.OffsetM, opening.SillM, opening.WidthM, opening.HeightM);

    /// <summary>Openings of one kind typed for this wall, nearest first.</summary>
    public List<WallPlace> Typed(OpeningKind kind) =>
        [.. _face.Openings.Where(o => o.Opening.Kind == kind).Select(o => Of(o.Opening)).OrderBy(p => p.UM)];

    /// <summary>Takes a typed place; says what door or window it meets.</summary>
    public bool Take(WallPlace place)
    {
        bool free = !_taken.Any(t => t.Meets(place)) && Under(place);
        _taken.Add(place);
        return free;
    }

    /// <summary>Whether a place runs past the wall's ends or across a door, window or building against it; the wall's own equipment does not count.</summary>
    public bool Overruns(WallPlace place) =>
        place.UM < -1e-6 || place.UM + place.WidthM > LengthM + 1e-6
        || _face.Openings.Any(o => o.Opening.Kind is OpeningKind.Door or OpeningKind.DoubleDoor or OpeningKind.Window && Of(o.Opening).Meets(place));

    /// <summary>The free place of this size nearest a wanted middle; the middle itself, and false, when nothing is free.</summary>
    public bool TryPlace(double widthM, double heightM, double sillM, double middleM, out WallPlace place)
    {
        double lowest = Math.Max(Math.Min(sillM, LowestRoofM() - heightM - 0.1), 0.1);
        WallPlace? best = null;
        for (double u = EdgeM; u <= LengthM - EdgeM - widthM + 1e-9; u += StepM)
        {
            var here = new WallPlace(u, lowest, widthM, heightM);
            var roomy = new WallPlace(u - GapM, lowest, widthM + 2 * GapM, heightM);
            if (_taken.Any(t => t.Meets(roomy)) || !Under(here))
            {
                continue;
            }

            if (best is null || Math.Abs(u + widthM / 2 - middleM) < Math.Abs(best.Value.UM + widthM / 2 - middleM) - 1e-9)
            {
                best = here;
            }
        }

        place = best ?? new WallPlace(Math.Max((LengthM - widthM) / 2, 0), lowest, widthM, heightM);
        _taken.Add(place);
        return best is not null;
    }

    /// <summary>The box of a place in the house's own axes, a little deep.</summary>
    public (Point3 Corner, Point3 Size) Box(WallPlace place, double depthM) => _face.Name switch
    {
        FaceName.End1 => (new(-depthM, place.UM, place.VM), new(depthM, place.WidthM, place.HeightM)),
        FaceName.End2 => (new(_form.LengthM, place.UM, place.VM), new(depthM, place.WidthM, place.HeightM)),
        FaceName.Left => (new(place.UM, -depthM, place.VM), new(place.WidthM, depthM, place.HeightM)),
        _ => (new(place.UM, _form.WidthM, place.VM), new(place.WidthM, depthM, place.HeightM)),
    };

    private bool Under(WallPlace place)
    {
        double RoofM(double u) => _face.Name switch
        {
            FaceName.End1 or FaceName.End2 => _form.Roof.HeightM(Math.Clamp(u, 0, _form.WidthM), _form.WidthM),
            FaceName.Left => _form.Roof.LeftEaveM,
            _ => _form.Roof.RightEaveM,
        };
        return place.UM >= -1e-6 && place.UM + place.WidthM <= LengthM + 1e-6
            && place.VM + place.HeightM <= Math.Min(RoofM(place.UM), RoofM(place.UM + place.WidthM)) + 1e-6;
    }

    private double LowestRoofM() => Math.Min(_form.Roof.LeftEaveM, _form.Roof.RightEaveM);
}
