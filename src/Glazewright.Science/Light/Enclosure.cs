using Glazewright.Science.Guards;
using Glazewright.Science.Light.Shadows;
using Glazewright.Science.Optics;

namespace Glazewright.Science.Light;

/// <summary>What a face is to light, seen from inside.</summary>
public abstract record FaceCovering
{
    private FaceCovering()
    {
    }

    /// <summary>Lets light in and out.</summary>
    /// <param name="Optics">Table of the cover.</param>
    /// <param name="FrameFraction">Share of the face that flat bars take at every angle, 0 to 0.9.</param>
    /// <param name="FrameReflectanceFraction">Of all bars, 0 to 1.</param>
    /// <param name="Bars">Gratings, for a body whose bars are not given one by one; none when not given.</param>
    /// <param name="StateFactor">What dirt and ageing leave of the clean transmittance; it is in the table already.</param>
    public sealed record Clear(
        CoverOptics Optics,
        double FrameFraction,
        double FrameReflectanceFraction,
        IReadOnlyList<BarFamily>? Bars = null,
        double StateFactor = 1) : FaceCovering
    {
        /// <summary>Shares of a beam. Ribs run up the face's steepest line: rafters carry them, and water runs out of them.</summary>
        /// <param name="normal">Of the face, unit, z upwards.</param>
        /// <param name="direction">Along the light, either sense, unit.</param>
        /// <returns>Three fractions that sum to 1.</returns>
        public LightShares At(Vector3d normal, Vector3d direction) => Optics.HasRibs
            ? Optics.AtCosines(Math.Abs(normal.Dot(direction)), Ribs(normal).Dot(direction))
            : Optics.AtCosine(Math.Abs(normal.Dot(direction)));

        // A level face has no steepest line; its ribs run across the house as a roof's do.
        private static Vector3d Ribs(Vector3d normal)
        {
            double level = (normal.X * normal.X) + (normal.Y * normal.Y);
            if (level < 1e-12)
            {
                return new Vector3d(0, 1, 0);
            }

            double scale = normal.Z / Math.Sqrt(level);
            return new Vector3d(-normal.X * scale, -normal.Y * scale, Math.Sqrt(level));
        }

        /// <summary>Share of a beam that bars take; kinds that cross are not counted twice.</summary>
        /// <param name="normal">Of the face, unit.</param>
        /// <param name="direction">Along the light, either sense, unit.</param>
        /// <returns>0 to 1.</returns>
        public double CaughtFraction(Vector3d normal, Vector3d direction)
        {
            double open = 1 - FrameFraction;
            foreach (BarFamily bars in Bars ?? [])
            {
                open *= 1 - bars.CaughtFraction(normal, direction);
            }

            return 1 - open;
        }

        /// <summary>Share of evenly diffuse light that bars take.</summary>
        /// <param name="normal">Of the face, unit.</param>
        /// <returns>0 to 1.</returns>
        public double CaughtDiffuseFraction(Vector3d normal)
        {
            if (Bars is null || Bars.Count == 0)
            {
                return FrameFraction;
            }

            // The even sky's patches, turned on to the face: they carry flux with the cosine.
            Vector3d u = (Math.Abs(normal.Z) < 0.9 ? new Vector3d(0, 0, 1) : new Vector3d(1, 0, 0)).Cross(normal).Unit();
            Vector3d v = normal.Cross(u);
            double caught = 0;
            double flux = 0;
            foreach (SkyPatch patch in SkyPatches.UpperHalf)
            {
                Vector3d direction = (patch.Towards.X * u) + (patch.Towards.Y * v) + (patch.Towards.Z * normal);
                double weight = patch.IrradianceFactor * patch.Towards.Z;
                caught += weight * CaughtFraction(normal, direction);
                flux += weight;
            }

            return caught / flux;
        }
    }

    /// <summary>Lets nothing through.</summary>
    /// <param name="InsideReflectanceFraction">Diffuse, 0 to 1.</param>
    public sealed record Opaque(double InsideReflectanceFraction) : FaceCovering;

    /// <summary>Crop and floor together, as the plane that light is wanted on.</summary>
    /// <param name="ReflectanceFraction">Diffuse, 0 to 1.</param>
    public sealed record CropPlane(double ReflectanceFraction) : FaceCovering;
}

/// <summary>A part of a face with a covering of its own, such as a door in a wall.</summary>
/// <param name="Id">Name.</param>
/// <param name="Polygon">Convex, in the face's plane, inside its outline, same sense of turning.</param>
/// <param name="Covering">What it is.</param>
public sealed record EnclosurePatch(string Id, IReadOnlyList<Vector3d> Polygon, FaceCovering Covering)
{
    /// <summary>Area, m².</summary>
    public double AreaM2 => Polygons.AreaVector(Polygon).LengthM;
}

/// <summary>A plane face of a closed convex body. Several faces may lie in one plane (a pony wall below a clear wall).</summary>
/// <param name="Id">Name.</param>
/// <param name="Polygon">Convex outline, anticlockwise seen from outside, m.</param>
/// <param name="Covering">What it is outside its patches.</param>
/// <param name="Patches">Parts with another covering; they must not overlap.</param>
public sealed record EnclosureFace(
    string Id, IReadOnlyList<Vector3d> Polygon, FaceCovering Covering, IReadOnlyList<EnclosurePatch> Patches)
{
    /// <summary>Area with its patches, m².</summary>
    public double AreaM2 => Polygons.AreaVector(Polygon).LengthM;

    /// <summary>Outward unit normal.</summary>
    public Vector3d Normal => Polygons.AreaVector(Polygon).Unit();
}

/// <summary>A curtain drawn level through the whole house.</summary>
/// <param name="HeightM">Above z = 0, m.</param>
/// <param name="TransmittanceFraction">Of the cloth, 0 to 1.</param>
/// <param name="ReflectanceAboveFraction">Upper side, diffuse.</param>
/// <param name="ReflectanceBelowFraction">Lower side, diffuse.</param>
/// <param name="ScatterFraction">Share of what passes that is scattered, 0 to 1.</param>
public sealed record CurtainPlane(
    double HeightM,
    double TransmittanceFraction,
    double ReflectanceAboveFraction,
    double ReflectanceBelowFraction,
    double ScatterFraction);

/// <summary>A closed convex body of plane faces, checked.</summary>
public sealed class Enclosure
{
    private const double ToleranceM = 1e-4;
    private const double LeastAreaM2 = 1e-9;

    private Enclosure(IReadOnlyList<EnclosureFace> faces, IReadOnlyList<ShadeBar> bars)
    {
        Faces = faces;
        Bars = bars;
    }

    /// <summary>The faces.</summary>
    public IReadOnlyList<EnclosureFace> Faces { get; }

    /// <summary>Opaque bars inside: members, glazing bars, equipment.</summary>
    public IReadOnlyList<ShadeBar> Bars { get; }

    /// <summary>Checks and keeps the faces.</summary>
    /// <param name="faces">At least four.</param>
    /// <returns>The body, without bars.</returns>
    /// <exception cref="ArgumentException">Not closed, not convex, a face not plane or a patch outside its face; the message names it.</exception>
    public static Enclosure Of(IReadOnlyList<EnclosureFace> faces) => Of(faces, []);

    /// <summary>Checks and keeps the faces and what stands inside.</summary>
    /// <param name="faces">At least four.</param>
    /// <param name="bars">Members, glazing bars, equipment; they may touch and overlap.</param>
    /// <returns>The body.</returns>
    /// <exception cref="ArgumentException">Not closed, not convex, a face not plane, a patch outside its face or a bar without length; the message names it.</exception>
    public static Enclosure Of(IReadOnlyList<EnclosureFace> faces, IReadOnlyList<ShadeBar> bars)
    {
        ArgumentNullException.ThrowIfNull(faces);
        ArgumentNullException.ThrowIfNull(bars);
        if (bars.Any(b => !((b.B - b.A).LengthM > 1e-9)))
        {
            throw new ArgumentException("A bar has no length.", nameof(bars));
        }

        if (faces.Count < 4)
        {
            throw new ArgumentException("A closed body has at least four faces.", nameof(faces));
        }

        var all = faces.SelectMany(f => f.Polygon).ToList();
        var closing = default(Vector3d);
        double area = 0;
        foreach (EnclosureFace face in faces)
        {
            Vector3d vector = Polygons.AreaVector(face.Polygon);
            if (!(vector.LengthM > LeastAreaM2))
            {
                throw new ArgumentException($"Face '{face.Id}' has no area.", nameof(faces));
            }

            closing += vector;
            area += vector.LengthM;
            RequirePlaneConvex(face.Id, face.Polygon, vector.Unit());
            double reach = vector.Unit().Dot(face.Polygon[0]);
            if (all.Any(p => vector.Unit().Dot(p) > reach + ToleranceM))
            {
                throw new ArgumentException($"Face '{face.Id}' leaves part of the body outside: not convex.", nameof(faces));
            }

            RequireCovering(face.Covering);
            foreach (EnclosurePatch patch in face.Patches)
            {
                RequirePatch(face, patch, vector.Unit());
            }
        }

        if (closing.LengthM > 1e-6 * area)
        {
            throw new ArgumentException("The faces do not close.", nameof(faces));
        }

        return new Enclosure(faces, bars);
    }

    /// <summary>The same body without the bars of one cause.</summary>
    /// <param name="cause">Whose bars go.</param>
    /// <returns>The body.</returns>
    public Enclosure Without(ShadeCause cause) => new(Faces, [.. Bars.Where(b => b.Cause != cause)]);

    private static void RequirePlaneConvex(string id, IReadOnlyList<Vector3d> polygon, Vector3d normal)
    {
        if (polygon.Count is < 3 or > FlatClip.MostCorners)
        {
            throw new ArgumentException($"Face '{id}' must have 3 to {FlatClip.MostCorners} corners.");
        }

        for (int i = 0; i < polygon.Count; i++)
        {
            Vector3d a = polygon[i];
            Vector3d b = polygon[(i + 1) % polygon.Count];
            Vector3d inward = normal.Cross(b - a);
            if (Math.Abs(normal.Dot(a - polygon[0])) > ToleranceM
                || polygon.Any(p => inward.Dot(p - a) < -ToleranceM * Math.Max(1, inward.LengthM)))
            {
                throw new ArgumentException($"Face '{id}' is not plane and convex.");
            }
        }
    }

    private static void RequirePatch(EnclosureFace face, EnclosurePatch patch, Vector3d normal)
    {
        RequireCovering(patch.Covering);
        RequirePlaneConvex(patch.Id, patch.Polygon, normal);
        Vector3d[] outline = [.. face.Polygon];
        if (patch.Polygon.Any(p => Math.Abs(normal.Dot(p - face.Polygon[0])) > ToleranceM
            || Polygons.Containment(outline, normal, p) < -ToleranceM)
            || Polygons.AreaVector(patch.Polygon).Dot(normal) <= 0)
        {
            throw new ArgumentException($"Patch '{patch.Id}' does not lie in face '{face.Id}'.");
        }
    }

    private static void RequireCovering(FaceCovering covering)
    {
        switch (covering)
        {
            case FaceCovering.Clear clear:
                Within.Require(clear.FrameFraction, 0, 0.9);
                Within.Require(clear.FrameReflectanceFraction, 0, 1);
                Within.Require(clear.StateFactor, 0.1, 1);
                foreach (BarFamily bars in clear.Bars ?? [])
                {
                    Within.Require(bars.WidthFraction, 0, 0.9);
                    Within.Require(bars.DepthFraction, 0, 10);
                }

                break;
            case FaceCovering.Opaque opaque:
                Within.Require(opaque.InsideReflectanceFraction, 0, 0.99);
                break;
            case FaceCovering.CropPlane crop:
                Within.Require(crop.ReflectanceFraction, 0, 0.99);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(covering));
        }
    }
}
