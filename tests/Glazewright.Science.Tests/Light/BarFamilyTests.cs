using Glazewright.Science.Light;

namespace Glazewright.Science.Tests.Light;

public class BarFamilyTests
{
    private static readonly Vector3d Up = new(0, 0, 1);

    // 50 mm wide, 100 mm deep, 1 m apart, along x in a level face.
    private static readonly BarFamily Bars = new(new Vector3d(1, 0, 0), 0.05, 0.10);

    [Theory]
    [InlineData(0, 0.05)]
    [InlineData(45, 0.15)]
    [InlineData(60, 0.05 + (0.10 * 1.7320508075688772))]
    [InlineData(89, 1)]
    public void Light_across_the_bars_meets_width_and_depth(double acrossDeg, double caught)
    {
        double a = acrossDeg * Math.PI / 180;
        Assert.Equal(caught, Bars.CaughtFraction(Up, new Vector3d(0, Math.Sin(a), Math.Cos(a))), 1e-12);
        Assert.Equal(caught, Bars.CaughtFraction(Up, new Vector3d(0, Math.Sin(a), -Math.Cos(a))), 1e-12);
    }

    [Fact]
    public void Light_along_the_bars_meets_only_their_width() =>
        Assert.Equal(0.05, Bars.CaughtFraction(Up, new Vector3d(Math.Sin(1.2), 0, Math.Cos(1.2))), 1e-12);

    // Even light on a grating that never closes: w + d ∫∫ |tan across| cos dΩ/π = w + d × 2/π × … = w + d for thin bars (mean of |sin φ| tan θ over
    // the cosine-weighted half space is 1). The grating closes at grazing angles, so the sum stays a little below.
    [Fact]
    public void Even_light_meets_width_and_once_the_depth()
    {
        var face = new FaceCovering.Clear(Houses.Open.Optics, 0, 0.5, [new BarFamily(new Vector3d(1, 0, 0), 0.01, 0.01)]);
        Assert.InRange(face.CaughtDiffuseFraction(Up), 0.0190, 0.0201);
    }

    [Fact]
    public void Rows_with_bars_still_sum_to_their_aperture()
    {
        List<EnclosureFace> faces = [.. Houses.HalfOpaque().Faces];
        for (int i = 0; i < faces.Count; i++)
        {
            if (faces[i].Covering is FaceCovering.Clear clear)
            {
                faces[i] = faces[i] with
                {
                    Covering = clear with { Bars = [new BarFamily(new Vector3d(1, 0, 0), 0.04, 0.08), new BarFamily(new Vector3d(0, 0, 1), 0.02, 0.04)] },
                };
            }
        }

        EnclosureGainTable table = EnclosureGains.Compute(Enclosure.Of(faces), Houses.Curtain, SunGrid.Standard);
        foreach (GainRow row in table.Beam.Append(table.Dome).Append(table.Ground))
        {
            Assert.Equal(row.ApertureM2, row.PartsM2, 1e-9 * Math.Max(1, row.ApertureM2));
        }
    }
}
