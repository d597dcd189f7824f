using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;

namespace Glazewright.Design.Tests.Brief;

public class ShapeWishFieldsTests
{
    [Fact]
    public void Wishes_are_read_with_their_units()
    {
        ShapeWishes w = Read("""{ "noonReach": "4 ft", "ridgeAtMost": "18 ft", "shedFrom": "7:12", "glazingAtMost": "2500 ft2", "darkestMonth": "6 mol/m2d", "lightGivenUp": "5 %", "summerLight": "more", "faces": "as-drawn", "turn": "search", "noonDate": "2027-05-01" }""");
        Assert.Equal(4 * 0.3048, w.NoonReachM!.Value, 1e-9);
        Assert.Equal(18 * 0.3048, w.RidgeAtMostM!.Value, 1e-9);
        Assert.Equal(7 / 12.0, w.ShedPitchRatio, 1e-9);
        Assert.Equal(2500 * 0.3048 * 0.3048, w.GlazingAtMostM2!.Value, 1e-6);
        Assert.Equal(6, w.DarkestMonthMolPerM2Day);
        Assert.Equal(0.05, w.LightGivenUpFraction, 1e-9);
        Assert.Equal((SummerLight.More, ShapeFreedom.AsDrawn, ShapeFreedom.Search), (w.SummerLight, w.Faces, w.Bearing));
        Assert.Equal("2027-05-01", w.NoonDate);
    }

    // A bare block and no block at all are the same wishes: the defaults stand once, in the reader and in the record.
    [Fact]
    public void An_empty_block_is_what_holds_without_one()
    {
        Assert.Equal(ShapeWishes.Unsaid, Read("{ }"));
        Assert.Null(Examples.Job(Examples.Demo).Houses[1].ShapeWishes);
    }

    [Theory]
    [InlineData("""{ "ridgeAtMost": "7 ft" }""", "ridgeAtMost")]
    [InlineData("""{ "eaveAtMost": "6 ft" }""", "eaveAtMost")]
    [InlineData("""{ "steepest": "4:12" }""", "steepest")]
    [InlineData("""{ "noonReach": "4" }""", "noonReach")]
    [InlineData("""{ "noonDate": "21 June" }""", "noonDate")]
    [InlineData("""{ "nonReach": "4 ft" }""", "nonReach")]
    public void What_cannot_be_is_a_fault_at_its_place(string block, string key)
    {
        EqList<Fault> faults = Examples.Faults(new Edit("/houses/0/shapeWishes", block));
        Assert.Equal("/houses/0/shapeWishes/" + key, Assert.Single(faults).Pointer);
    }

    private static ShapeWishes Read(string block)
    {
        ReadOutcome<Job> outcome = JobReader.Read(Examples.Edited(new Edit("/houses/0/shapeWishes", block)));
        Assert.True(outcome.Faults.Count == 0, string.Join("\n", outcome.Faults));
        return outcome.Value!.Houses[0].ShapeWishes!;
    }
}
