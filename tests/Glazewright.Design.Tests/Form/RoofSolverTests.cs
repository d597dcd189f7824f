using CsCheck;
using Glazewright.Design.Form;

namespace Glazewright.Design.Tests.Form;

public class RoofSolverTests
{
    private const double Foot = 0.3048;

    [Fact]
    public void Four_numbers_give_the_fifth_for_unequal_sides()
    {
        // 20 ft wide, eaves 7'-6" and 8'-6", ridge 12'-6" from the left, 6:12 on the left:
        // ridge 13'-9", so the right slope rises 5'-3" over 7'-6": 8.4:12 by hand.
        RoofSolution solution = RoofSolver.Solve(new RoofWish(7.5 * Foot, 8.5 * Foot, 12.5 * Foot, 0.5, null), 20 * Foot);
        RoofProfile roof = Assert.IsType<RoofSolution.Closed>(solution).Profile;
        Assert.Equal(8.4 / 12, roof.RightPitch, 12);
        Assert.Equal(13.75 * Foot, roof.RidgeM, 12);
        Assert.Equal(SolvedRoofPart.RightPitch, roof.Solved);
    }

    [Fact]
    public void Five_numbers_that_miss_each_other_offer_the_value_that_closes()
    {
        RoofSolution solution = RoofSolver.Solve(new RoofWish(2, 2.5, 4, 0.5, 0.8), 6);
        RoofSolution.Open open = Assert.IsType<RoofSolution.Open>(solution);
        Assert.Equal(4 - 4.1, open.GapM, 12);
        Assert.IsType<RoofSolution.Closed>(RoofSolver.Solve(new RoofWish(2, 2.5, 4, 0.5, open.RightPitch), 6));
        Assert.IsType<RoofSolution.Closed>(RoofSolver.Solve(new RoofWish(2, open.RightEaveM, 4, 0.5, 0.8), 6));
    }

    [Fact]
    public void Three_numbers_are_too_few_and_a_ridge_outside_is_no_roof()
    {
        Assert.Equal(3, Assert.IsType<RoofSolution.TooFew>(RoofSolver.Solve(new RoofWish(2, 2, null, 0.5, null), 6)).Given);
        Assert.Equal(
            SolvedRoofPart.RidgeOffset,
            Assert.IsType<RoofSolution.NoRoof>(RoofSolver.Solve(new RoofWish(1, 9, null, 0.2, 0.2), 6)).Part);
    }

    [Fact]
    public void Leaving_out_any_number_of_a_closed_roof_brings_it_back() =>
        Gen.Select(Gen.Double[0.5, 4], Gen.Double[3, 20], Gen.Double[0.2, 0.8], Gen.Double[0.1, 1.5], Gen.Double[0.1, 1.5], Gen.Int[0, 4])
            .Sample((leftEaveM, widthM, share, leftPitch, rightPitch, leftOut) =>
            {
                double offsetM = share * widthM;
                double rightEaveM = leftEaveM + offsetM * leftPitch - (widthM - offsetM) * rightPitch;
                if (rightEaveM < 0.1)
                {
                    return;
                }

                RoofWish wish = new(
                    leftOut == 0 ? null : leftEaveM,
                    leftOut == 1 ? null : rightEaveM,
                    leftOut == 2 ? null : offsetM,
                    leftOut == 3 ? null : leftPitch,
                    leftOut == 4 ? null : rightPitch);
                RoofProfile roof = Assert.IsType<RoofSolution.Closed>(RoofSolver.Solve(wish, widthM)).Profile;
                Assert.Equal(leftEaveM, roof.LeftEaveM, 9);
                Assert.Equal(rightEaveM, roof.RightEaveM, 9);
                Assert.Equal(offsetM, roof.RidgeOffsetM, 8);
                Assert.Equal(leftPitch, roof.LeftPitch, 8);
                Assert.Equal(rightPitch, roof.RightPitch, 8);
            });
}
