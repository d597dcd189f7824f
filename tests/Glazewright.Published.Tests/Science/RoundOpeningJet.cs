using Glazewright.Science.Flow;

namespace Glazewright.Published.Tests.Science;

/// <summary>
/// Jets from circular openings (a Japanese fire-research paper's abstract, J-STAGE, Kasai vol. 7 no. 1; read at second hand): beyond ten radii the axis has v/v₀ = 10 r₀/x.
/// Its 5.64 in our form stands 1 % under the handbook's 5.7.
/// </summary>
public sealed class RoundOpeningJet
{
    [Theory]
    [InlineData(20)]
    [InlineData(60)]
    public void The_axis_slows_as_ten_radii_over_the_distance(double radii)
    {
        double u0 = 0.7 / (Math.PI / 4 * 0.45 * 0.45);
        Assert.Equal(10 / radii, SweptJet.AxisMPerS(0.7, 0.45, radii * 0.225) / u0, 0.015 * 10 / radii);
    }
}
