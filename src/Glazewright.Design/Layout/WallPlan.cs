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
    public double MiddleM => UM + WidthM / 2;

    public bool Meets(WallPlace other) =>
        UM < other.UM + other.WidthM - 1e-6 && other.UM < UM + WidthM - 1e-6
        && VM < other.VM + other.HeightM - 1e-6 && other.VM < VM + HeightM - 1e-6;

    public WallPlace Wider(double gapM) => new(UM - gapM, VM - gapM, WidthM + 2 * gapM, HeightM + 2 * gapM);

    public WallPlace With(WallPlace other)
    {
        double u = Math.Min(UM, other.UM);
        double v = Math.Min(VM, other.VM);
        return new(u, v, Math.Max(UM + WidthM, other.UM + other.WidthM) - u, Math.Max(VM + HeightM, other.VM + other.HeightM) - v);
    }
}

/// <summary>Distances kept on walls, in whole inches or in whole five centimetres (common practice).</summary>
/// <param name="EdgeM">From the wall's corner to an opening: column, jamb and flashing.</param>
/// <param name="GapM">Between openings: a jamb on each side.</param>
/// <param name="StepM">Grid that free places are looked for on.</param>
/// <param name="SillM">Usual sill above the floor.</param>
/// <param name="LeastSillM">Least sill: above splash and the first snow.</param>
internal sealed record WallModule(double EdgeM, double GapM, double StepM, double SillM, double LeastSillM)
{
    public static WallModule Inches { get; } = new(0.2032, 0.1524, 0.0508, 0.6096, 0.3048);

    // Never larger than the inches: what Plant found room for has room here.
    public static WallModule Metric { get; } = new(0.2, 0.15, 0.05, 0.6, 0.3);
}

/// <summary>What hangs on one wall, and where the next thing fits between doors, braced bays and buildings that stand against it, under the roof.</summary>
internal sealed class WallPlan
{
    private const double RoofClearM = 0.1;
    private const double ColumnM = 0.1;
    private const double PostClearM = 0.11;
    private const double AnyHeightM = 100;

    private readonly BuildingForm _form;
    private readonly FaceForm _face;
    private readonly List<WallPlace> _taken = [];
    private readonly List<WallPlace> _kept = [];
    private readonly List<double> _postsUM = [];

    public WallPlan(BuildingForm form, FaceName face, WallModule module)
    {
        _form = form;
        _face = form.Face(face);
        Module = module;
        LengthM = face is FaceName.End1 or FaceName.End2 ? form.WidthM : form.LengthM;
        _taken.AddRange(_face.Openings
            .Where(o => o.Opening.Kind.IsTyped())
            .Select(o => Of(o.Opening)));
        _taken.AddRange(_face.LeanedOn.Select(piece =>
        {
            double u = piece.Min(q => q.UM);
            double v = piece.Min(q => q.VM);
            return new WallPlace(u, v, piece.Max(q => q.UM) - u, piece.Max(q => q.VM) - v);
        }));
        _kept.AddRange(BracedBays.On(form, face).Select(b => new WallPlace(b.FromM, 0, b.ToM - b.FromM, AnyHeightM)));
        foreach (WallPost post in WallFraming.Posts(form, face))
        {
            // End posts can be headed off; the columns of a side wall are the frames themselves.
            _postsUM.Add(post.UM);
            if (face is FaceName.Left or FaceName.Right)
            {
                _kept.Add(new WallPlace(post.UM - ColumnM / 2, 0, ColumnM, AnyHeightM));
            }
        }
    }

    private WallPlan(WallPlan other)
    {
        _form = other._form;
        _face = other._face;
        Module = other.Module;
        LengthM = other.LengthM;
        _taken.AddRange(other._taken);
        _kept.AddRange(other._kept);
        _postsUM.AddRange(other._postsUM);
    }

    public WallModule Module { get; }

    public FaceName Name => _face.Name;

    public double LengthM { get; }

    public double LowEaveM => _face.Name switch
    {
        FaceName.Left => _form.Roof.LeftEaveM,
        FaceName.Right => _form.Roof.RightEaveM,
        _ => Math.Min(_form.Roof.LeftEaveM, _form.Roof.RightEaveM),
    };

    public static WallPlace Of(Opening opening) => new(opening.OffsetM, opening.SillM, opening.WidthM, opening.HeightM);

    /// <summary>The same wall and what is on it, to try things out.</summary>
    public WallPlan Copy() => new(this);

    /// <summary>Openings of one kind typed for this wall, nearest first.</summary>
    public List<WallPlace> Typed(OpeningKind kind) =>
        [.. _face.Openings.Where(o => o.Opening.Kind == kind).Select(o => Of(o.Opening)).OrderBy(p => p.UM)];

    /// <summary>Takes a typed place; says whether it was free.</summary>
    public bool Take(WallPlace place)
    {
        bool free = !_taken.Any(t => t.Meets(place)) && On(place);
        _taken.Add(place);
        return free;
    }

    // "Clear" below: kept out of braced bays and off the frames' columns too.

    /// <summary>Whether a place lies on the wall under the roof, clear of all that is there and of corners by the module's distances.</summary>
    public bool Free(WallPlace place, bool clear = true)
    {
        (double from, double to) = Between(place.VM + place.HeightM);
        return place.VM >= 0 && place.UM >= from - 1e-9 && place.UM + place.WidthM <= to + 1e-9 && Blocker(place, clear) is null;
    }

    /// <summary>The first free place at or after a point of the wall; none when the wall ends before.</summary>
    public WallPlace? First(double fromM, double widthM, double heightM, double sillM, bool clear = true)
    {
        (double from, double to) = Between(sillM + heightM);
        var place = new WallPlace(Math.Max(fromM, from), sillM, widthM, heightM);
        while (place.UM + widthM <= to + 1e-9)
        {
            if (Blocker(place, clear) is not { } blocker)
            {
                return place;
            }

            place = place with { UM = Math.Max(blocker.UM + blocker.WidthM + (_kept.Contains(blocker) ? Module.GapM / 2 : Module.GapM), place.UM + 1e-6) };
        }

        return null;
    }

    /// <summary>The free place on the grid nearest a wanted middle that crosses few posts, at the first of the sills that has one.</summary>
    public WallPlace? Near(double widthM, double heightM, double middleM, IEnumerable<double> sillsM, bool clear = true)
    {
        foreach (double sillM in sillsM)
        {
            WallPlace? best = null;
            double least = double.PositiveInfinity;
            (double from, double to) = Between(sillM + heightM);
            int first = Math.Max((int)Math.Ceiling(from / Module.StepM - 1e-9), 0);
            for (int i = first; i * Module.StepM + widthM <= to + 1e-9; i++)
            {
                var here = new WallPlace(i * Module.StepM, sillM, widthM, heightM);
                double cost = Math.Abs(here.MiddleM - middleM) + PostsCut(here);
                if (cost < least - 1e-9 && Blocker(here, clear) is null)
                {
                    (best, least) = (here, cost);
                }
            }

            if (best is not null)
            {
                return best;
            }
        }

        return null;
    }

    public void Add(WallPlace place) => _taken.Add(place);

    /// <summary>Widest free run at a height, m.</summary>
    public double WidestRunM(double sillM, double heightM)
    {
        (double from, double to) = Between(sillM + heightM);
        double widest = 0;
        double at = from;
        foreach (WallPlace t in _taken.Where(t => t.VM < sillM + heightM - 1e-6 && t.VM + t.HeightM > sillM + 1e-6).OrderBy(t => t.UM))
        {
            widest = Math.Max(widest, Math.Min(t.UM - Module.GapM, to) - at);
            at = Math.Max(at, t.UM + t.WidthM + Module.GapM);
        }

        return Math.Max(widest, to - at);
    }

    /// <summary>End posts that a place or its jambs cut.</summary>
    public int PostsCut(WallPlace place) => _postsUM.Count(u => u > place.UM - PostClearM && u < place.UM + place.WidthM + PostClearM);

    /// <summary>The box of a place in the house's own axes: so far out from the wall, so deep.</summary>
    public (Point3 Corner, Point3 Size) Box(WallPlace place, double depthM, double outM = 0) => _face.Name switch
    {
        FaceName.End1 => (new(-outM - depthM, place.UM, place.VM), new(depthM, place.WidthM, place.HeightM)),
        FaceName.End2 => (new(_form.LengthM + outM, place.UM, place.VM), new(depthM, place.WidthM, place.HeightM)),
        FaceName.Left => (new(place.UM, -outM - depthM, place.VM), new(place.WidthM, depthM, place.HeightM)),
        _ => (new(place.UM, _form.WidthM + outM, place.VM), new(place.WidthM, depthM, place.HeightM)),
    };

    /// <summary>Whether a place lies within the wall's outline.</summary>
    public bool On(WallPlace place)
    {
        double RoofM(double u) => _face.Name is FaceName.End1 or FaceName.End2
            ? _form.Roof.HeightM(Math.Clamp(u, 0, _form.WidthM), _form.WidthM)
            : LowEaveM;
        return place.UM >= -1e-6 && place.UM + place.WidthM <= LengthM + 1e-6 && place.VM >= -1e-6
            && place.VM + place.HeightM <= Math.Min(RoofM(place.UM), RoofM(place.UM + place.WidthM)) + 1e-6;
    }

    private WallPlace? Blocker(WallPlace place, bool clear)
    {
        WallPlace roomy = place.Wider(Module.GapM - 1e-7);
        foreach (WallPlace t in _taken)
        {
            if (t.Meets(roomy))
            {
                return t;
            }
        }

        WallPlace beside = place.Wider(Module.GapM / 2 - 1e-7);
        foreach (WallPlace t in _kept)
        {
            if (clear && t.Meets(beside))
            {
                return t;
            }
        }

        return null;
    }

    // How far along the wall something as high as this stands under the roof.
    private (double FromM, double ToM) Between(double topM)
    {
        double top = topM + RoofClearM;
        if (_face.Name is FaceName.Left or FaceName.Right)
        {
            return top <= LowEaveM + 1e-9 ? (Module.EdgeM, LengthM - Module.EdgeM) : (1, 0);
        }

        RoofProfile roof = _form.Roof;
        double from = top <= roof.LeftEaveM ? 0 : top >= roof.RidgeM ? LengthM : (top - roof.LeftEaveM) / roof.LeftPitch;
        double to = top <= roof.RightEaveM ? LengthM : top >= roof.RidgeM ? 0 : LengthM - (top - roof.RightEaveM) / roof.RightPitch;
        return (Math.Max(from, Module.EdgeM), Math.Min(to, LengthM - Module.EdgeM));
    }
}
