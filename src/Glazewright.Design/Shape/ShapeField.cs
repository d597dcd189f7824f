using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Science.Light;
using Glazewright.Science.Optics;
using Glazewright.Science.Shape;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Shape;

/// <summary>Covers of the long faces, counted from the equator's side.</summary>
internal sealed record CoverSet(ClearFaces Clear, CoverChoice NearWall, CoverChoice NearSlope, CoverChoice FarSlope, CoverChoice FarWall);

/// <summary>What the full map finds for the drawn shape over what the section finds: wishes about light are judged by the section times this.</summary>
internal readonly record struct MapOverSection(double Winter, double Evenness)
{
    public static MapOverSection Same => new(1, 1);
}

/// <summary>A shape in the search: small, by value.</summary>
internal readonly record struct ShapeCell(
    int Field, int Set, GableSection Section, double Winter, double Evenness, double Summer, double GlazingM2, double WPerK, double ReachM, ShapeWish Missed, double Shortfall);

/// <summary>One bearing of the house under the year: scores shapes. Immutable; each thread brings its own room.</summary>
internal sealed class ShapeField
{
    /// <summary>Points across the house.</summary>
    public const int Points = 30;

    private readonly ShapeInput input;
    private readonly SectionCovers[] covers;
    private readonly SectionLight light;
    private readonly int winter;
    private readonly int summer;
    private readonly double noonDeg;
    private readonly MapOverSection map;

    public ShapeField(
        ShapeInput input, SunSamples samples, double bearingDeg, EqList<CoverSet> sets, int winter, int summer, MapOverSection map)
    {
        this.map = map;
        this.input = input;
        this.winter = winter;
        this.summer = summer;
        BearingDeg = bearingDeg;
        IsNearLeft = Nearest(input.LatitudeDeg, bearingDeg, out double nearAzimuthDeg);
        Sets = sets;
        SectionYear year = SectionYear.Of(samples, nearAzimuthDeg);
        Dictionary<CoverChoice, SectionCover> known = [];
        SectionCover Of(CoverChoice choice)
        {
            if (!known.TryGetValue(choice, out SectionCover? cover))
            {
                known[choice] = cover = Cover(choice, year, input.FrameFraction);
            }

            return cover;
        }

        SectionCover pony = Of(input.PonyWallCovering);
        covers = [.. sets.Select(s => new SectionCovers(pony, Of(s.NearWall), Of(s.NearSlope), Of(s.FarSlope), Of(s.FarWall), pony))];
        light = new SectionLight(year, Points, input.BenchHeightM, input.CropReflectance);
        noonDeg = NoonSunAngle.ProfileDeg(input.LatitudeDeg, input.NoonDeclinationDeg, nearAzimuthDeg);
    }

    public double BearingDeg { get; }

    public bool IsNearLeft { get; }

    public EqList<CoverSet> Sets { get; }

    public double NoonProfileDeg => noonDeg;

    /// <summary>Which side faces the equator, and where it looks.</summary>
    public static bool Nearest(double latitudeDeg, double bearingDeg, out double nearAzimuthDeg)
    {
        double leftDeg = bearingDeg + 90;
        bool left = Math.Cos((NoonSunAngle.EquatorAzimuthDeg(latitudeDeg) - leftDeg) * Math.PI / 180) > -1e-9;
        nearAzimuthDeg = left ? leftDeg : bearingDeg - 90;
        return left;
    }

    public SectionLight.Bench Room() => light.Room();

    /// <summary>Scores a section.</summary>
    public ShapeCell Score(int field, int set, GableSection s, SectionLight.Bench room)
    {
        light.Run(s, input.PonyWallM, covers[set], room);
        double mean = room.MeanWhPerM2(winter);
        double evenness = mean > 0 ? room.LeastWhPerM2(winter) / mean : 1;
        CoverSet c = Sets[set];
        double reachM = NoonReach.OnFarWall(s, Clear(s, c.Clear), Math.Clamp(noonDeg, -90, 180)).HighM;
        (double glazingM2, double wPerK) = Areas(s, c);
        ShapeCell cell = new(
            field, set, s, Mol(mean, winter), evenness, Mol(room.MeanWhPerM2(summer), summer), glazingM2, wPerK, reachM, ShapeWish.None, 0);
        return Judged(cell, mean > 0 ? cell.Winter * map.Winter : 0, evenness * map.Evenness);
    }

    /// <summary>Hours of the bright month above the shade level.</summary>
    public double ShadeHours(int set, GableSection s, SectionLight.Bench room)
    {
        light.Run(s, input.PonyWallM, covers[set], room);
        return SectionHours.Above(
            light, s, input.PonyWallM, covers[set], room, summer, input.BenchHeightM, input.Wishes.ShadeAboveUmolPerM2S / input.UmolPerJ);
    }

    /// <summary>The clear parts of a section, for the closed forms.</summary>
    public ClearParts Clear(GableSection s, ClearFaces faces) =>
        new(faces.NearWall ? Math.Min(input.PonyWallM, s.NearEaveM) : s.NearEaveM, faces.NearSlope, faces.FarSlope);

    /// <summary>The wishes of a shape with light as the full map has it, or as it would.</summary>
    public ShapeCell Judged(ShapeCell cell, double winterMol, double evenness)
    {
        ShapeWishes w = input.Wishes;
        ShapeWish missed = ShapeWish.None;
        double shortfall = 0;
        ClearFaces clear = Sets[cell.Set].Clear;
        Least(ShapeWish.NoonReach, w.NoonReachM, cell.ReachM);
        Least(ShapeWish.Shed, clear.NearSlope ? w.ShedPitchRatio : null, cell.Section.NearPitchRatio);
        Least(ShapeWish.Shed, clear.FarSlope ? w.ShedPitchRatio : null, cell.Section.FarPitchRatio);
        Least(ShapeWish.DarkMonth, w.DarkestMonthMolPerM2Day, winterMol);
        Least(ShapeWish.Evenness, w.EvennessAtLeastRatio, evenness);
        if (w.GlazingAtMostM2 is double most && cell.GlazingM2 > most * (1 + 1e-9))
        {
            missed |= ShapeWish.Glazing;
            shortfall += (cell.GlazingM2 / most) - 1;
        }

        return cell with { Missed = missed, Shortfall = shortfall };

        void Least(ShapeWish wish, double? asked, double got)
        {
            if (asked is double least && got < least * (1 - 1e-9))
            {
                missed |= wish;
                shortfall += (least - got) / least;
            }
        }
    }

    private double Mol(double monthWh, int month) => PlantLight.DailyMolM2(monthWh / CommonYear.DaysIn(month + 1), input.UmolPerJ);

    private (double GlazingM2, double WPerK) Areas(GableSection s, CoverSet c)
    {
        double glazing = 0;
        double wPerK = 0;
        double ponyM = Math.Min(input.PonyWallM, Math.Min(s.NearEaveM, s.FarEaveM));
        Add(c.NearWall, input.LengthM * (s.NearEaveM - ponyM));
        Add(c.NearSlope, input.LengthM * s.NearSlopeM);
        Add(c.FarSlope, input.LengthM * s.FarSlopeM);
        Add(c.FarWall, input.LengthM * (s.FarEaveM - ponyM));
        foreach (FaceName end in (ReadOnlySpan<FaceName>)[FaceName.End1, FaceName.End2])
        {
            Add(Covering(input, end), s.AreaM2 - (s.WidthM * ponyM));
        }

        Add(input.PonyWallCovering, 2 * ponyM * (input.LengthM + s.WidthM));
        return (glazing, wPerK);

        void Add(CoverChoice choice, double areaM2)
        {
            GenericCover kind = Kind(choice);
            glazing += kind.Make is CoverMake.Opaque ? 0 : areaM2;
            wPerK += areaM2 * kind.PracticeUWm2K;
        }
    }

    public static CoverChoice Covering(ShapeInput input, FaceName face) => input.Coverings.First(c => c.Face == face).Cover;

    public static GenericCover Kind(CoverChoice choice) =>
        GenericCovers.TryFind(choice.Kind, out GenericCover? kind) ? kind : throw new ArgumentException($"No cover kind '{choice.Kind}'.", nameof(choice));

    private static SectionCover Cover(CoverChoice choice, SectionYear year, double frameFraction)
    {
        GenericCover kind = Kind(choice);
        return kind.Make is CoverMake.Opaque
            ? new SectionCover.Opaque(Math.Min(0.95, choice.InsideReflectanceFraction))
            : new SectionCover.Clear(year.Through(kind.Optics(new CoverCondition(1 - choice.DirtFactor, 1 - choice.AgeingFactor)), frameFraction));
    }
}
