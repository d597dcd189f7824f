using Glazewright.Science.Optics;

namespace Glazewright.Science.Light;

/// <summary>Where absorbed light ends.</summary>
internal enum Sink
{
    Cover,
    Curtain,
    CropPlane,
    Opaque,
    Frame,
    Escapes,
}

/// <summary>One uniform part of the inside of a cell (the house, or its part above or below a drawn curtain).</summary>
internal sealed class Piece
{
    internal Piece(
        int cell, FaceCovering? covering, CurtainPlane? curtain, bool upperSide, Vector3d normal,
        Vector3d[] outline, IReadOnlyList<Vector3d[]> holes)
    {
        Cell = cell;
        Covering = covering;
        Normal = normal;
        Outline = outline;
        Holes = [.. holes];
        AreaM2 = Polygons.AreaVector(outline).LengthM - Holes.Sum(h => Polygons.AreaVector(h).LengthM);
        switch (covering)
        {
            case FaceCovering.Clear:
                OwnSink = Sink.Cover;
                MeetBars(0);
                break;
            case FaceCovering.Opaque opaque:
                Reflectance = opaque.InsideReflectanceFraction;
                OwnShare = 1 - Reflectance;
                OwnSink = Sink.Opaque;
                break;
            case FaceCovering.CropPlane crop:
                Reflectance = crop.ReflectanceFraction;
                OwnShare = 1 - Reflectance;
                OwnSink = Sink.CropPlane;
                break;
            default:
                Reflectance = upperSide ? curtain!.ReflectanceAboveFraction : curtain!.ReflectanceBelowFraction;
                PassShare = curtain.TransmittanceFraction;
                ScatterFraction = curtain.ScatterFraction;
                OwnShare = 1 - Reflectance - PassShare;
                OwnSink = Sink.Curtain;
                break;
        }
    }

    /// <summary>Settles a clear piece's diffuse shares: bars one by one catch this share of diffuse light on its way to the piece, gratings theirs.</summary>
    internal void MeetBars(double caughtFraction)
    {
        var clear = (FaceCovering.Clear)Covering!;
        double f = 1 - ((1 - clear.CaughtDiffuseFraction(Normal)) * (1 - caughtFraction));
        LightShares d = clear.Optics.Diffuse;
        Reflectance = (f * clear.FrameReflectanceFraction) + ((1 - f) * d.ReflectanceFraction);
        FrameShare = f * (1 - clear.FrameReflectanceFraction);
        EscapeShare = (1 - f) * d.TransmittanceFraction;
        OwnShare = (1 - f) * d.AbsorptanceFraction;
    }

    internal int Cell { get; }

    /// <summary>Null for a side of the curtain.</summary>
    internal FaceCovering? Covering { get; }

    internal bool IsCurtain => Covering is null;

    /// <summary>Out of the cell.</summary>
    internal Vector3d Normal { get; }

    internal Vector3d[] Outline { get; }

    internal Vector3d[][] Holes { get; }

    /// <summary>Net of holes, m².</summary>
    internal double AreaM2 { get; }

    /// <summary>Diffuse shares of light from inside: they sum to 1.</summary>
    internal double Reflectance { get; private set; }

    internal double OwnShare { get; private set; }

    internal double FrameShare { get; private set; }

    internal double EscapeShare { get; private set; }

    /// <summary>Share passed to the curtain's other side.</summary>
    internal double PassShare { get; }

    internal double ScatterFraction { get; }

    internal Sink OwnSink { get; }
}

/// <summary>The pieces of a house with or without a drawn curtain.</summary>
internal static class Pieces
{
    internal const int Below = 0;
    internal const int Above = 1;

    internal static List<Piece> Of(Enclosure enclosure, CurtainPlane? curtain)
    {
        var pieces = new List<Piece>();
        for (int cell = Below; cell <= (curtain is null ? Below : Above); cell++)
        {
            foreach (EnclosureFace face in enclosure.Faces)
            {
                Vector3d normal = Polygons.AreaVector(face.Polygon).Unit();
                Vector3d[] outline = Cut(face.Polygon, curtain, cell);
                List<Vector3d[]> holes = [.. face.Patches.Select(p => Cut(p.Polygon, curtain, cell))];
                Add(pieces, cell, face.Covering, normal, outline, [.. holes.Where(h => h.Length > 0)]);
                for (int i = 0; i < face.Patches.Count; i++)
                {
                    Add(pieces, cell, face.Patches[i].Covering, normal, holes[i], []);
                }
            }
        }

        if (curtain is not null)
        {
            Vector3d[] section = Polygons.Section(enclosure.Faces.Select(f => f.Polygon), curtain.HeightM);
            if (section.Length < 3)
            {
                throw new ArgumentException("The curtain's height misses the house.", nameof(curtain));
            }

            pieces.Add(new Piece(Below, null, curtain, false, new Vector3d(0, 0, 1), section, []));
            pieces.Add(new Piece(Above, null, curtain, true, new Vector3d(0, 0, -1), [.. section.Reverse()], []));
        }

        return pieces;
    }

    private static Vector3d[] Cut(IReadOnlyList<Vector3d> polygon, CurtainPlane? curtain, int cell) =>
        curtain is null ? [.. polygon] : Polygons.CutByLevel(polygon, curtain.HeightM, cell == Above);

    private static void Add(
        List<Piece> pieces, int cell, FaceCovering covering, Vector3d normal, Vector3d[] outline, Vector3d[][] holes)
    {
        if (outline.Length == 0)
        {
            return;
        }

        var piece = new Piece(cell, covering, null, false, normal, outline, holes);
        if (piece.AreaM2 > 1e-6)
        {
            pieces.Add(piece);
        }
    }
}
