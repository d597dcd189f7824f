using System.Globalization;
using Glazewright.Store.People;
using Glazewright.Store.Tests.Databases;

namespace Glazewright.Store.Tests.People;

/// <summary>Ended sign-ins outlive the program that ended them, and no longer than their cookies.</summary>
public sealed class EndedSignInsTests(PostgresServer server)
{
    private static readonly DateTimeOffset s_noon = new(2026, 6, 1, 12, 0, 0, TimeSpan.Zero);

    [Theory]
    [MemberData(nameof(Shelf.Both), MemberType = typeof(Shelf))]
    public async Task An_ended_sign_in_is_known_to_a_program_started_anew_until_its_cookies_are_out_of_date(Kind kind)
    {
        using Shelf shelf = new(kind, server);
        CancellationToken cancel = TestContext.Current.CancellationToken;
        await new EndedSignIns(shelf.Open(), new Clock(s_noon)).AddAsync("A1", s_noon.AddHours(12), cancel);

        EndedSignIns later = new(shelf.Open(), new Clock(s_noon.AddHours(12).AddMilliseconds(-1)));
        Assert.True(await later.HoldsAsync("A1", cancel));
        Assert.False(await later.HoldsAsync("a1", cancel));
        Assert.False(await later.HoldsAsync("B2", cancel));
        EndedSignIns over = new(shelf.Open(), new Clock(s_noon.AddHours(12)));
        Assert.False(await over.HoldsAsync("A1", cancel));

        // The next one that ends sweeps out what is over.
        await over.AddAsync("B2", s_noon.AddHours(24), cancel);
        Assert.Equal("B2", shelf.Sql("SELECT id FROM ended_sign_ins"));
        Assert.Equal(1, Convert.ToInt32(shelf.Sql("SELECT COUNT(*) FROM ended_sign_ins"), CultureInfo.InvariantCulture));
    }

    [Theory]
    [MemberData(nameof(Shelf.Both), MemberType = typeof(Shelf))]
    public async Task Many_end_at_once_and_one_ends_twice(Kind kind)
    {
        using Shelf shelf = new(kind, server);
        CancellationToken cancel = TestContext.Current.CancellationToken;
        StoreDoor door = shelf.Open();
        EndedSignIns ended = new(door, new Clock(s_noon));
        await Task.WhenAll(Enumerable.Range(0, 24).Select(i => Task.Run(() => ended.AddAsync($"S{i / 2}", s_noon.AddHours(12), cancel), cancel)));
        Assert.All(Enumerable.Range(0, 12), i => Assert.True(ended.HoldsAsync($"S{i}", cancel).GetAwaiter().GetResult()));
        Assert.Equal(12, Convert.ToInt32(shelf.Sql("SELECT COUNT(*) FROM ended_sign_ins"), CultureInfo.InvariantCulture));
    }

    private sealed class Clock(DateTimeOffset now) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => now;
    }
}
