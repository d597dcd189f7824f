using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Sheets;
using Glazewright.Papers.Tests.Sets;

namespace Glazewright.Papers.Tests.Sheets;

/// <summary>The lot's small picture as page Brief shows it.</summary>
public class LotPictureTests
{
    // North stands 13 mm from the corner, with a circle of 6 mm and its letter 11 mm above the middle.
    [Theory]
    [InlineData(1), InlineData(0.8), InlineData(1.3), InlineData(2.2), InlineData(0.5)]
    public void North_stands_beside_the_lot(double stretch)
    {
        PaperSource source = SampleSource.Make(UnitSystem.Us, 2);
        Lot lot = source.Job.Lot with { SizeYM = stretch * source.Job.Lot.SizeYM };
        Sheet sheet = LotPicture.Draw(source.Job with { Lot = lot }, source.Form, 128, 112);
        View view = Assert.Single(sheet.Views);
        double rightMm = (lot.OriginXM + lot.SizeXM - view.WindowM.Left) * view.Scale.MmPerM;
        double bottomMm = sheet.HeightMm - (lot.OriginYM - view.WindowM.Top) * view.Scale.MmPerM;
        double topMm = sheet.HeightMm - (lot.OriginYM + lot.SizeYM - view.WindowM.Top) * view.Scale.MmPerM;
        Assert.True(topMm >= 11.9 && rightMm <= 128 - 11.9 && bottomMm <= sheet.HeightMm - 11.9, $"{topMm} {rightMm} {bottomMm} of {sheet.HeightMm}");
        Assert.True(rightMm < 128 - 13 - 6 || bottomMm < sheet.HeightMm - 13 - 10, $"north lies on the lot: {rightMm} {bottomMm} of {sheet.HeightMm}");
    }
}
