using Glazewright.Mechanics.Guards;
using Glazewright.Mechanics.Sections;
using static Glazewright.Published.Tests.Mechanics.FrameBuild;

namespace Glazewright.Published.Tests.Mechanics;

/// <summary>AISC Shapes Database v15, square and rectangular HSS. Read. Units inch, lb/ft; tolerance half of the last printed digit.</summary>
public class AiscShapesTable
{
    private static TubeSection Hss(double depthIn, double widthIn, double nominalIn) => Tubes.Structural(
        "x", depthIn * UsUnits.MPerIn, widthIn * UsUnits.MPerIn, nominalIn * UsUnits.MPerIn);

    // The table's own design walls (.116, .174) are rounded from 0.93 of nominal, so the wall is given as printed.
    private static TubeSection Listed(double depthIn, double widthIn, double designIn) => Tubes.StructuralOfDesignWall(
        "x", depthIn * UsUnits.MPerIn, widthIn * UsUnits.MPerIn, designIn * UsUnits.MPerIn);

    [Theory]
    [InlineData(2, 2, .116, .840, .486, .486, .761, .584, .486, .486, .761, .584, .796)]
    [InlineData(3, 2, .116, 1.07, 1.30, .867, 1.10, 1.06, .692, .692, .804, .803, 1.47)]
    [InlineData(4, 2, .116, 1.30, 2.65, 1.32, 1.43, 1.66, .898, .898, .830, 1.02, 2.20)]
    public void Properties(
        double h, double b, double t, double area, double ix, double sx, double rx, double zx, double iy, double sy, double ry, double zy,
        double j)
    {
        TubeSection s = Listed(h, b, t);
        double In(int power) => Math.Pow(UsUnits.MPerIn, power);
        Digits(area, s.AreaM2 / In(2));
        Digits(ix, s.StrongInertiaM4 / In(4));
        // The table makes S of its rounded I: 1.30/1.5 is 0.867, where the exact value is 0.8665.
        Near(sx, s.StrongElasticModulusM3 / In(3), HalfDigit(sx) + HalfDigit(ix) / (h / 2));
        Digits(rx, s.StrongGyrationM / In(1));
        Digits(zx, s.StrongPlasticModulusM3 / In(3));
        Digits(iy, s.WeakInertiaM4 / In(4));
        Digits(sy, s.WeakElasticModulusM3 / In(3));
        Digits(ry, s.WeakGyrationM / In(1));
        Digits(zy, s.WeakPlasticModulusM3 / In(3));
        // The thin-wall formula is stated good to 0.1 % of the table.
        Near(j, s.TorsionConstantM4 / In(4), 0.001 * j + HalfDigit(j));
    }

    [Fact]
    public void Heavier_square()
    {
        TubeSection s = Listed(3, 3, .174);
        Digits(1.89, s.AreaM2 / Math.Pow(UsUnits.MPerIn, 2));
        Digits(2.46, s.StrongInertiaM4 / Math.Pow(UsUnits.MPerIn, 4));
        Digits(1.64, s.StrongElasticModulusM3 / Math.Pow(UsUnits.MPerIn, 3));
        Digits(1.14, s.StrongGyrationM / UsUnits.MPerIn);
        Digits(1.97, s.StrongPlasticModulusM3 / Math.Pow(UsUnits.MPerIn, 3));
    }

    [Theory]
    [InlineData(2, 2, .116, 14.2, 14.2), InlineData(3, 2, .116, 14.2, 22.9), InlineData(4, 2, .116, 14.2, 31.5), InlineData(3, 3, .174, 14.2, 14.2)]
    public void Wall_slenderness(double h, double b, double t, double flange, double web)
    {
        TubeSection s = Listed(h, b, t);
        Near(flange, s.FlangeSlendernessRatio, 0.05);
        Near(web, s.WebSlendernessRatio, 0.05);
    }

    // Nominal weight is that of the wall as ordered.
    [Theory]
    [InlineData(2, 2, 3.05), InlineData(3, 2, 3.90), InlineData(4, 2, 4.75)]
    public void Nominal_weight(double h, double b, double lbPerFt) =>
        Near(lbPerFt, Hss(h, b, 0.125).MassKgPerM / UsUnits.KgPerMPerLbPerFt, 0.005);

    [Fact]
    public void Design_wall_is_93_percent() =>
        Near(0.93 * 0.125 * UsUnits.MPerIn, Hss(4, 2, 0.125).Shape.WallM, 1e-12);

    private static void Digits(double printed, double ours) => Near(printed, ours, HalfDigit(printed));

    // Three significant figures as printed.
    private static double HalfDigit(double printed) => printed < 1 ? 0.0005 : 0.005;
}
