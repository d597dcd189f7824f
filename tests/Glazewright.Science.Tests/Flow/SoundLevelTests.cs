using CsCheck;
using Glazewright.Science.Flow;

namespace Glazewright.Science.Tests.Flow;

/// <summary>The textbooks' round numbers: two equal sources 3 dB more, ten 10 dB; twice the distance 6 dB less, ten times 20 dB.</summary>
public class SoundLevelTests
{
    [Theory]
    [InlineData(2, 3.01)]
    [InlineData(10, 10)]
    public void Equal_sources(int count, double moreDb) =>
        Assert.Equal(70 + moreDb, SoundLevel.TogetherDb([.. Enumerable.Repeat(70.0, count)]), 0.005);

    [Theory]
    [InlineData(3, 6.02)]
    [InlineData(15, 20)]
    public void Distance(double toM, double lessDb) => Assert.Equal(70 - lessDb, SoundLevel.AtDistanceDb(70, 1.5, toM), 0.005);

    [Fact]
    public void A_quiet_one_beside_a_loud_one_adds_next_to_nothing_and_never_takes_away() => Gen.Double[60, 90].Sample(db =>
    {
        double both = SoundLevel.TogetherDb([db, db - 20]);
        return both > db && both < db + 0.05;
    });

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SoundLevel.TogetherDb([double.NaN]));
        Assert.Throws<ArgumentOutOfRangeException>(() => SoundLevel.AtDistanceDb(70, 0, 10));
    }
}
