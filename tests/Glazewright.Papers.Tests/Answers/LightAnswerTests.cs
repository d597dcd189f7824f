using Glazewright.Design.Contracts;
using Glazewright.Design.LightMaps;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Tests.Sets;

namespace Glazewright.Papers.Tests.Answers;

/// <summary>Light of the sun and light of lamps.</summary>
public class LightAnswerTests
{
    // A wish that the sun leaves short by some mol is held when the year's lamps gave them.
    [Theory]
    [InlineData(0, Standing.Miss), InlineData(20, Standing.Held)]
    public void Lamps_count_where_the_sun_falls_short(double lampMol, Standing expected)
    {
        PaperSource source = SampleSource.Make(houses: 1);
        HouseResults house = source.Houses[0];
        double darkest = house.Light.Months.Min(m => m.MeanMolPerM2Day);
        house = house with
        {
            House = house.House with { Schedule = house.House.Schedule.Select(p => p with { FromWeek = 1, ToWeek = 52, LightWishMolPerM2Day = darkest + 10 }).Take(1).ToEqList() },
            Year = house.Year with { Months = house.Year.Months.Select(m => m with { LampMolPerM2Day = lampMol }).ToEqList() },
        };
        QuestionAnswered answer = LightAnswer.Of(source with { Houses = [house] })!;
        Assert.Equal(expected, answer.Blocks.OfType<Block.Figures>().Single().Items.Single().Standing);
        Assert.Equal(lampMol > 0, answer.Short.Contains("the lamps add 20.0", StringComparison.Ordinal));
    }
}
