using Glazewright.Design.Contracts;
using Glazewright.Design.Shape;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using Glazewright.Papers.Sheets;
using Glazewright.Science.Shape;

namespace Glazewright.Papers.Shapes;

/// <summary>The section of a found shape with the noon sun of both solstices.</summary>
public static class ShapeSection
{
    private const double BesideMm = 30;
    private const double BareBesideMm = 22;

    /// <summary>The picture.</summary>
    /// <param name="id">Short name.</param>
    /// <param name="title">What it shows.</param>
    /// <param name="shape">The shape.</param>
    /// <param name="input">What the finder read of the job.</param>
    /// <param name="widthMm">Width on paper, mm.</param>
    /// <param name="heightMm">Height on paper, mm.</param>
    /// <param name="isBare">Without lettering but dimensions, for one small picture among others whose words stand beside it.</param>
    /// <returns>The picture.</returns>
    public static Sheet Draw(string id, string title, ShapeCandidate shape, ShapeInput input, double widthMm, double heightMm, bool isBare = false)
    {
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentNullException.ThrowIfNull(input);
        LengthStyle style = input.Units == UnitSystem.Us ? LengthStyle.FeetInches : LengthStyle.Millimetres;
        IReadOnlyList<NoonSun> suns = NoonSun.Solstices(input.LatitudeDeg, shape.RangeBearingDeg);
        (double foot, double head, double beside) = isBare ? (14, 8, BareBesideMm) : (26.0, 22.0, BesideMm);
        double words = isBare ? 0 : 12;
        double widthM = shape.Section.WidthM;
        double ridgeM = shape.Section.RidgeM;
        DrawingScale scale = DrawingScale.Largest(
            style, s => (widthM * s.MmPerM) + (2 * beside) <= widthMm && (ridgeM * s.MmPerM) + head + foot <= heightMm);
        double mm = 1 / scale.MmPerM;
        double wideM = widthMm * mm;
        double tallM = (heightMm - words) * mm;
        Box window = new((widthM / 2) - (wideM / 2), -(foot - words) * mm, wideM, tallM);
        IReadOnlyList<SectionEdge> ring = Ring(shape, input.PonyWallM);
        List<Entity> model =
        [
            new Entity.Polyline([new(window.Left, 0), new(window.Right, 0)]) { Role = Role.Cut, Source = "ground" },
            .. Rays(ring, suns, scale),
            .. Shell(ring, widthM),
            new Entity.Dimensions(new(0, 0), new(1, 0), [0, shape.Roof.RidgeOffsetM, widthM], -8, style) { Source = "width" },
            new Entity.Dimensions(new(0, 0), new(0, 1), [0, shape.Roof.LeftEaveM], 9, style) { Source = "left" },
            new Entity.Dimensions(new(0, 0), new(0, 1), [0, ridgeM], 18, style) { Source = "ridge" },
            new Entity.Dimensions(new(widthM, 0), new(0, 1), [0, shape.Roof.RightEaveM], -9, style) { Source = "right" },
        ];
        View view = new("section", title, scale, window, new(0, 0), model);
        string[] lines = [.. suns.Select(s => Line(s, shape, input))];
        List<Entity> paper = isBare ? [] :
        [
            new Entity.Label(new(2, 4), title) { Role = Role.Text, Face = Face.SemiBold },
            new Entity.Label(new(widthMm - 2, 4), $"1 : {(1000 / scale.MmPerM).ToString("0.#", System.Globalization.CultureInfo.InvariantCulture)}") { Role = Role.Text, Along = Along.End, Paint = Paint.Of(Tone.Ink2) },
            .. lines.SelectMany((line, i) => SunLine(line, i, suns[i], heightMm)),
        ];
        string said = $"{ShapeWords.Shape(shape, input.Units)}. {(lines.Length == 0 ? "The noon sun shines along the ridge or stays below the horizon." : string.Join(" ", lines))}";
        return new Sheet(id, title, said, widthMm, heightMm, [view], paper);
    }

    private static IEnumerable<Entity> SunLine(string line, int index, NoonSun sun, double heightMm)
    {
        double y = heightMm - 7 + (4.6 * index);
        Pen pen = new(0.35, IsLow(sun, index) ? [] : [2.5, 1.2], Paint.Of(Tone.Sun));
        yield return new Entity.Polyline([new(2, y - 1.25), new(10, y - 1.25)]) { Role = Role.Light, Pen = pen };
        yield return new Entity.Label(new(12, y), line) { Role = Role.Text };
    }

    private static bool IsLow(NoonSun sun, int index) => index == 0 && sun.AltitudeDeg > 0;

    private static string Line(NoonSun sun, ShapeCandidate shape, ShapeInput input)
    {
        (string near, string far) = ShapeWords.Sides(shape);
        string angle = FormattableString.Invariant($"Noon {sun.Name}: sun {sun.AltitudeDeg:0.0}° high");
        if (sun.FromLeft != shape.IsNearLeft || sun.ProfileDeg >= 90)
        {
            return $"{angle}, on the {far} side.";
        }

        GableSection s = shape.Section;
        ClearFaces clear = shape.Clear;
        LitWall lit = NoonReach.OnFarWall(
            s, new ClearParts(clear.NearWall ? Math.Min(input.PonyWallM, s.NearEaveM) : s.NearEaveM, clear.NearSlope, clear.FarSlope), sun.ProfileDeg);
        if (lit.IsLit)
        {
            return $"{angle}; it reaches {ShapeWords.Length(lit.HighM, input.Units)} up the {far} wall.";
        }

        return clear.NearSlope && !clear.FarSlope
            ? $"{angle}; a strip of {ShapeWords.Length(NoonReach.DarkStripM(s, sun.ProfileDeg, 0), input.Units)} of floor along the {far} wall has no direct sun."
            : $"{angle}; none on the {far} wall through the {near} side.";
    }

    private static IReadOnlyList<SectionEdge> Ring(ShapeCandidate shape, double ponyM)
    {
        double w = shape.Section.WidthM;
        (bool left, bool right, bool roofLeft, bool roofRight) = shape.IsNearLeft
            ? (shape.Clear.NearWall, shape.Clear.FarWall, shape.Clear.NearSlope, shape.Clear.FarSlope)
            : (shape.Clear.FarWall, shape.Clear.NearWall, shape.Clear.FarSlope, shape.Clear.NearSlope);
        double leftPony = Math.Min(ponyM, shape.Roof.LeftEaveM);
        double rightPony = Math.Min(ponyM, shape.Roof.RightEaveM);
        Spot ridge = new(shape.Roof.RidgeOffsetM, shape.Section.RidgeM);
        SectionEdge[] edges =
        [
            new(new(0, 0), new(0, leftPony), false),
            new(new(0, leftPony), new(0, shape.Roof.LeftEaveM), left),
            new(new(0, shape.Roof.LeftEaveM), ridge, roofLeft),
            new(ridge, new(w, shape.Roof.RightEaveM), roofRight),
            new(new(w, shape.Roof.RightEaveM), new(w, rightPony), right),
            new(new(w, rightPony), new(w, 0), false),
            new(new(w, 0), new(0, 0), false),
        ];
        return [.. edges.Where(e => (e.B - e.A).Length() > 1e-6)];
    }

    private static IEnumerable<Entity> Shell(IReadOnlyList<SectionEdge> ring, double widthM)
    {
        foreach (SectionEdge edge in ring.Where(e => e.A.Y > 0 || e.B.Y > 0))
        {
            double thickM = edge.Clear ? 0.04 : 0.09;
            Spot along = (edge.B - edge.A).Unit();
            Spot outward = thickM * new Spot(-along.Y, along.X);
            IReadOnlyList<Spot> band = [edge.A, edge.B, edge.B + outward, edge.A + outward];
            yield return edge.Clear
                ? new Entity.Fill([band], Paint.Of(Tone.Water), 0.45) { Role = Role.Fill, Source = "covering" }
                : new Entity.Hatch([band], HatchPattern.Crossed, 0.9) { Source = "covering" };
            yield return new Entity.Polyline(band, true) { Role = edge.Clear ? Role.Beyond : Role.Visible, Source = "covering" };
        }
    }

    private static IEnumerable<Entity> Rays(IReadOnlyList<SectionEdge> ring, IReadOnlyList<NoonSun> suns, DrawingScale scale)
    {
        for (int i = 0; i < suns.Count; i++)
        {
            NoonSun sun = suns[i];
            Pen pen = new(0.25, IsLow(sun, i) ? [] : [2.5, 1.2], Paint.Of(Tone.Sun));
            double spacingM = Math.Max(0.6, 9 / scale.MmPerM);
            foreach ((Spot from, Spot to) in SectionRays.Trace(ring, sun.ProfileDeg, sun.FromLeft, spacingM, 9 / scale.MmPerM))
            {
                yield return new Entity.Polyline([from, to]) { Role = Role.Light, Pen = pen, Source = "sun/" + sun.Name };
            }
        }
    }
}
