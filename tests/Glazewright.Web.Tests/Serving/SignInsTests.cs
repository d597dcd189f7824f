using System.Security.Claims;
using Glazewright.Store;
using Glazewright.Store.People;
using Glazewright.Web.Serving;

namespace Glazewright.Web.Tests.Serving;

/// <summary>Which sign-ins have ended.</summary>
public sealed class SignInsTests : IDisposable
{
    private readonly DirectoryInfo _room = Directory.CreateTempSubdirectory("glazewright-signins-");

    [Fact]
    public async Task An_ended_sign_in_is_told_once_and_another_of_the_same_person_goes_on()
    {
        SignIns signIns = Server();
        List<string> told = [];
        signIns.Ended += told.Add;
        (ClaimsPrincipal yard, ClaimsPrincipal office) = (Ann("1"), Ann("2"));
        await signIns.EndAsync(yard);
        Assert.True(signIns.HasEnded(yard));
        Assert.True(await signIns.HasEndedAsync(yard));
        Assert.False(signIns.HasEnded(office));
        Assert.False(await signIns.HasEndedAsync(office));
        Assert.Equal(["1"], told);

        // On this machine alone nobody signs in, and nobody out.
        await signIns.EndAsync(new ClaimsPrincipal());
        Assert.False(signIns.HasEnded(new ClaimsPrincipal()));
        Assert.False(await signIns.HasEndedAsync(null));
        Assert.Equal(["1"], told);
    }

    [Fact]
    public async Task A_server_started_anew_and_one_beside_it_know_who_signed_out()
    {
        SignIns beside = Server();
        await Server().EndAsync(Ann("1"));
        Assert.True(await Server().HasEndedAsync(Ann("1")));
        Assert.False(beside.HasEnded(Ann("1")));
        Assert.True(await beside.HasEndedAsync(Ann("1")));
        // Once its cookie was shown, its windows are known there too.
        Assert.True(beside.HasEnded(Ann("1")));
        Assert.False(await Server(SignIns.CookieLife).HasEndedAsync(Ann("1")));
    }

    public void Dispose()
    {
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        _room.Delete(recursive: true);
    }

    private SignIns Server(TimeSpan later = default)
    {
        Clock clock = new(new DateTimeOffset(2026, 6, 1, 12, 0, 0, TimeSpan.Zero) + later);
        return new SignIns(new EndedSignIns(StoreDoor.Sqlite(Path.Combine(_room.FullName, "jobs.db")), clock), clock);
    }

    private static ClaimsPrincipal Ann(string signIn) => new(new ClaimsIdentity([new Claim(ClaimTypes.Name, "ann"), new Claim(SignIns.ClaimType, signIn)], "cookie"));

    private sealed class Clock(DateTimeOffset now) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => now;
    }
}
