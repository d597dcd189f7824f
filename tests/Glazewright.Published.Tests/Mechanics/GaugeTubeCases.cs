using Glazewright.Mechanics.Checks;
using Glazewright.Mechanics.Guards;
using Glazewright.Mechanics.Loads;
using Glazewright.Mechanics.Sections;
using static Glazewright.Published.Tests.Mechanics.FrameBuild;

namespace Glazewright.Published.Tests.Mechanics;

/// <summary>
/// Tube of gauge sheet. Properties and AISI S100 compression: computed by an independent program from formulae read in a public
/// design guide; bending of round tube: AISI Manual 2013 example II-8, read at second hand. Units inch and kip.
/// </summary>
public class GaugeTubeCases
{
    private static TubeSection Tube(double h, double b, double t, double outerRadiusIn) => Tubes.Gauge(
        "x", h * UsUnits.MPerIn, b * UsUnits.MPerIn, t * UsUnits.MPerIn, outerRadiusIn * UsUnits.MPerIn);

    private static Steel Of(double yieldKsi) => Steel.A653Grade50 with { YieldPa = yieldKsi * UsUnits.PaPerKsi };

    // Half of the last digit.
    [Theory]
    [InlineData(1.5, 1.5, .0747, .4115, .1368, .1824, .577, .1368)]
    [InlineData(2, 2, .0747, .5609, .3420, .3420, .781, .3420)]
    [InlineData(2, 2, .1046, .7649, .4492, .4492, .766, .4492)]
    [InlineData(3, 2, .0747, .7103, .8960, .5974, 1.123, .4805)]
    [InlineData(4, 2, .0747, .8597, 1.8053, .9026, 1.449, .6190)]
    [InlineData(4, 2, .1046, 1.1833, 2.4268, 1.2134, 1.432, .8254)]
    public void Properties(double h, double b, double t, double area, double ix, double sx, double rx, double iy)
    {
        TubeSection s = Tube(h, b, t, 2 * t);
        Near(area, s.AreaM2 / Math.Pow(UsUnits.MPerIn, 2), 0.00006);
        Near(ix, s.StrongInertiaM4 / Math.Pow(UsUnits.MPerIn, 4), 0.00006);
        Near(sx, s.StrongElasticModulusM3 / Math.Pow(UsUnits.MPerIn, 3), 0.00006);
        Near(rx, s.StrongGyrationM / UsUnits.MPerIn, 0.0006);
        Near(iy, s.WeakInertiaM4 / Math.Pow(UsUnits.MPerIn, 4), 0.00006);
    }

    // Inside radius 1.5 t (3/16 in for the last); half of the last digit, doubled where the source rounded the area first.
    [Theory]
    [InlineData(4, 2, .0747, .18675, 50, 72, 23.81, .01)]
    [InlineData(3, 2, .1046, .2615, 50, 84, 22.13, .01)]
    [InlineData(2, 2, .0747, .18675, 50, 96, 9.34, .005)]
    [InlineData(8, 8, .105, .2925, 40, 120, 78.7, .05)]
    public void Compression(double h, double b, double t, double outerRadiusIn, double yieldKsi, double lengthIn, double nominalK, double tolerance)
    {
        double lengthM = lengthIn * UsUnits.MPerIn;
        Strength s = GaugeTube.CompressionN(Tube(h, b, t, outerRadiusIn), Of(yieldKsi), lengthM, lengthM);
        Near(nominalK, s.NominalValue / UsUnits.NPerKip, tolerance);
    }

    [Fact]
    public void Compression_asd()
    {
        double lengthM = 72 * UsUnits.MPerIn;
        Strength s = GaugeTube.CompressionN(Tube(4, 2, .0747, .18675), Of(50), lengthM, lengthM);
        Near(13.23, s.Available(DesignMethod.Asd) / UsUnits.NPerKip, 0.005);
    }

    [Fact]
    public void Round_tube_in_bending()
    {
        TubeSection s = Tubes.Round("x", TubeStandard.Gauge, 8 * UsUnits.MPerIn, 0.100 * UsUnits.MPerIn);
        Near(2.482, s.AreaM2 / Math.Pow(UsUnits.MPerIn, 2), 0.0005);
        Near(4.841, s.StrongElasticModulusM3 / Math.Pow(UsUnits.MPerIn, 3), 0.0005);
        Strength m = GaugeTube.BendingNM(s, Of(42), strong: true);
        Near(139.5, m.Available(DesignMethod.Asd) / UsUnits.NMPerKipIn, 0.5);
        Near(221, m.Available(DesignMethod.Lrfd) / UsUnits.NMPerKipIn, 0.5);
    }
}
