using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Design.Tests.Contracts;

namespace Glazewright.Design.Tests.Body;

/// <summary>What the shop saws a collar tie to.</summary>
public class CollarTieCutTests
{
    // The long points touch the rafters' undersides: walked along each roof line, a rafter's depth inwards, to the height of the tie's lower face.
    [Fact]
    public void Reaches_from_underside_to_underside()
    {
        const double TieM = 3.9;
        Job job = TestJobs.OneHouse();
        job = job with
        {
            Houses = [job.Houses[0] with { Frame = job.Houses[0].Frame with { RafterSection = "tube-4x2x0.120", ColumnSection = "tube-4x4x3/16", PurlinSection = "tube-2x2x0.120", CollarTieHeightM = TieM } }],
        };
        FormResult form = FormStage.Run(FormInput.From(job));
        BuildingForm house = form.Building("A");
        FrameResult frame = FrameStage.Run(FrameInput.From(job, "A"), house, TestContext.Current.CancellationToken);
        MemberSolid[] members = [.. BodyStage.Run(form, [frame]).Members];
        MemberSolid tie = members.First(m => m.Line.Role == MemberRole.CollarTie);
        double rafterDepthM = members.First(m => m.Line.Role == MemberRole.Rafter).DepthM;
        double lowM = TieM - (tie.DepthM / 2);
        double left = Underside(house.Roof.LeftEaveM, house.Roof.LeftPitch, rafterDepthM, lowM);
        double right = Underside(house.Roof.RightEaveM, house.Roof.RightPitch, rafterDepthM, lowM);
        Assert.Equal(house.WidthM - left - right, tie.CutLengthM, 1e-9);
        Assert.True(tie.CutLengthM < tie.Line.LengthM);
    }

    private static double Underside(double eaveM, double pitch, double depthM, double heightM)
    {
        double angleRad = Math.Atan(pitch);
        (double y, double z) = (depthM * Math.Sin(angleRad), eaveM - (depthM * Math.Cos(angleRad)));
        double runM = (heightM - z) / Math.Sin(angleRad);
        return y + (runM * Math.Cos(angleRad));
    }
}
