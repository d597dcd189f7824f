using Glazewright.Science.Light.Shadows;
using Glazewright.Science.Optics;

namespace Glazewright.Science.Light;

/// <summary>Follows a beam of one direction through the house. Not for use by several threads at once.</summary>
internal sealed class BeamTracer
{
    private readonly List<Piece> pieces;
    private readonly BeamView view;
    private readonly Surroundings surroundings;
    private readonly double[] diffuse;
    private readonly double[] sinks = new double[Radiosity.Sinks];
    private readonly double[] landing;
    private Vector3d towards;

    internal BeamTracer(List<Piece> pieces, BarCatch bars, Surroundings surroundings)
    {
        this.surroundings = surroundings;
        this.pieces = pieces;
        view = new BeamView(pieces, bars, surroundings);
        diffuse = new double[pieces.Count];
        landing = new double[pieces.Count];
    }

    /// <summary>Light on clear faces in the last beam followed, m² per unit of the beam.</summary>
    internal double ApertureM2 { get; private set; }

    /// <summary>Light on the outside of opaque faces.</summary>
    internal double OpaqueOutsideM2 { get; private set; }

    /// <summary>What the beam brought to the crop plane before any reflection or scattering, m².</summary>
    internal double DirectOnCropM2 { get; private set; }

    /// <summary>What of it ended before any light was scattered, by sink, m².</summary>
    internal ReadOnlySpan<double> SinksM2 => sinks;

    /// <summary>Diffuse light that each piece set free, before any further reflection, m².</summary>
    internal ReadOnlySpan<double> SetFreeM2 => diffuse;

    /// <summary>Share of the beam that bars one by one catch behind each clear piece that it enters through; the skyline is no bar to it.</summary>
    internal ReadOnlySpan<double> OnBarsFraction => view.OnBars;

    /// <summary>Follows a beam of unit irradiance normal to it until it ends or is scattered.</summary>
    internal void Follow(Vector3d towardsSun)
    {
        Array.Clear(diffuse);
        Array.Clear(sinks);
        ApertureM2 = 0;
        OpaqueOutsideM2 = 0;
        DirectOnCropM2 = 0;
        view.Turn(towardsSun);
        if (surroundings.Hides(towardsSun))
        {
            return;
        }

        towards = towardsSun;
        for (int i = 0; i < pieces.Count; i++)
        {
            Piece piece = pieces[i];
            if (piece.IsCurtain || !view.Enters(i))
            {
                continue;
            }

            view.Light(i);
            double incident = view.LitArea();
            if (piece.Covering is FaceCovering.Clear clear)
            {
                ApertureM2 += incident;
                Enter(i, clear, incident);
            }
            else
            {
                OpaqueOutsideM2 += incident;
            }
        }
    }

    private void Enter(int i, FaceCovering.Clear clear, double incident)
    {
        LightShares shares = clear.At(pieces[i].Normal, towards);
        LightShares back = clear.Optics.Diffuse;
        sinks[(int)Sink.Escapes] += incident * shares.ReflectanceFraction;
        Keep(i, incident * shares.AbsorptanceFraction);

        // Bars stand inside the cover and throw light back to all sides: half of it meets the cover as diffuse light, half goes on into the house.
        double passed = incident * shares.TransmittanceFraction;
        double onBars = passed * view.Caught(i);
        double fromBars = onBars * clear.FrameReflectanceFraction;
        double outward = fromBars / 2;
        sinks[(int)Sink.Frame] += onBars - fromBars;
        sinks[(int)Sink.Escapes] += outward * back.TransmittanceFraction;
        Keep(i, outward * back.AbsorptanceFraction);
        diffuse[i] += (outward * back.ReflectanceFraction) + (fromBars - outward);

        double inside = passed - onBars;
        diffuse[i] += inside * clear.Optics.HazeFraction;
        Land(i, inside * (1 - clear.Optics.HazeFraction));
    }

    // The beam that entered through one piece, on all pieces of its cell that it can leave through.
    private void Land(int from, double beam)
    {
        if (beam <= 0)
        {
            return;
        }

        double whole = 0;
        for (int j = 0; j < pieces.Count; j++)
        {
            landing[j] = pieces[j].Cell == pieces[from].Cell && view.Leaves(j) ? view.LitOn(j) : 0;
            landing[j] *= landing[j] > 0 ? 1 - view.CaughtBetween(from, j) : 1;
            whole += landing[j];
        }

        // Rounding alone can leave a sliver of a face without a landing place; its light stays with the face.
        if (whole <= 0)
        {
            diffuse[from] += beam;
            return;
        }

        for (int j = 0; j < pieces.Count; j++)
        {
            if (landing[j] > 0)
            {
                Hit(j, beam * landing[j] / whole);
            }
        }

        int curtain = CurtainOf(pieces[from].Cell);
        if (curtain >= 0 && landing[curtain] > 0)
        {
            double passes = beam * landing[curtain] / whole * pieces[curtain].PassShare;
            diffuse[OtherSide(curtain)] += passes * pieces[curtain].ScatterFraction;
            LandThrough(curtain, passes * (1 - pieces[curtain].ScatterFraction));
        }
    }

    private void LandThrough(int curtain, double beam)
    {
        if (beam <= 0)
        {
            return;
        }

        int otherCell = pieces[OtherSide(curtain)].Cell;
        double whole = 0;
        for (int j = 0; j < pieces.Count; j++)
        {
            landing[j] = pieces[j].Cell == otherCell && !pieces[j].IsCurtain && view.Leaves(j)
                ? view.LitThrough(curtain, j)
                : 0;
            whole += landing[j];
        }

        if (whole <= 0)
        {
            diffuse[OtherSide(curtain)] += beam;
            return;
        }

        for (int j = 0; j < pieces.Count; j++)
        {
            if (landing[j] > 0)
            {
                Hit(j, beam * landing[j] / whole);
            }
        }
    }

    private void Hit(int j, double beam)
    {
        Piece piece = pieces[j];
        if (piece.Covering is FaceCovering.Clear clear)
        {
            double onBars = beam * view.Caught(j);
            sinks[(int)Sink.Frame] += onBars * (1 - clear.FrameReflectanceFraction);
            double onCover = beam - onBars;
            LightShares shares = clear.At(piece.Normal, towards);
            sinks[(int)Sink.Escapes] += onCover * shares.TransmittanceFraction;
            Keep(j, onCover * shares.AbsorptanceFraction);
            diffuse[j] += (onBars * clear.FrameReflectanceFraction) + (onCover * shares.ReflectanceFraction);
            return;
        }

        DirectOnCropM2 += piece.Covering is FaceCovering.CropPlane ? beam : 0;
        Keep(j, beam * piece.OwnShare);
        diffuse[j] += beam * piece.Reflectance;
    }

    private void Keep(int i, double absorbed) => sinks[(int)pieces[i].OwnSink] += absorbed;

    private int OtherSide(int curtain) => CurtainOf(pieces[curtain].Cell == Pieces.Below ? Pieces.Above : Pieces.Below);

    private int CurtainOf(int cell)
    {
        for (int i = pieces.Count - 1; i >= 0 && pieces[i].IsCurtain; i--)
        {
            if (pieces[i].Cell == cell)
            {
                return i;
            }
        }

        return -1;
    }
}
