using Glazewright.Science.Optics;

namespace Glazewright.Published.Tests.Science.Standard140;

/// <summary>
/// The glass of the cases by the sun's angle, out of the product's own sheets, one or two. Index and extinction are those that give both figures the standard states of a pane
/// at normal incidence, transmittance 0.834 and reflectance 0.075; the index it prints beside them, 1.493, gives a reflectance of 0.069.
/// </summary>
internal sealed class ClearGlass
{
    public const double PaneWPerM2K = 328; // conductance of a pane
    public const double GapWPerM2K = 5.208; // convection and radiation between the two panes, as the standard gives it
    public const double Emissivity = 0.84;
    public const double PaneJPerM2K = 2470 * 750 * 0.003048;

    public static readonly Sheet Pane = new(1.52, 0.0958);

    private static readonly ClearGlass One = new(1), Two = new(2);
    private readonly GlassShares[] byDeg = new GlassShares[91];

    private ClearGlass(int panes)
    {
        for (int deg = 0; deg <= 90; deg++)
        {
            byDeg[deg] = Shares(SheetStack.At(deg, Pane, panes), SheetStack.At(deg, Pane, 1), panes);
        }

        Diffuse = Shares(SheetStack.Diffuse(Pane, panes), SheetStack.Diffuse(Pane, 1), panes);
    }

    public GlassShares Diffuse { get; }

    public static ClearGlass Of(int panes) => panes == 1 ? One : Two;

    public GlassShares At(double incidenceCosine)
    {
        double deg = Math.Acos(Math.Clamp(incidenceCosine, 0, 1)) * 180 / Math.PI;
        int below = Math.Min((int)deg, 89);
        double part = deg - below;
        GlassShares a = byDeg[below], b = byDeg[below + 1];
        return new(
            a.ThroughFraction + (b.ThroughFraction - a.ThroughFraction) * part,
            a.OuterFraction + (b.OuterFraction - a.OuterFraction) * part,
            a.InnerFraction + (b.InnerFraction - a.InnerFraction) * part);
    }

    // What the inner of two panes keeps: passed by the outer, kept by the inner, the light thrown to and fro between them counted.
    private static GlassShares Shares(LightShares all, LightShares single, int panes)
    {
        double inner = panes == 1
            ? 0
            : single.TransmittanceFraction * single.AbsorptanceFraction / Math.Max(1 - single.ReflectanceFraction * single.ReflectanceFraction, 1e-9);
        return new(all.TransmittanceFraction, Math.Max(all.AbsorptanceFraction - inner, 0), inner);
    }
}

/// <summary>What becomes of light on the glass: passed, kept by the outer pane, kept by the inner one.</summary>
internal readonly record struct GlassShares(double ThroughFraction, double OuterFraction, double InnerFraction);
