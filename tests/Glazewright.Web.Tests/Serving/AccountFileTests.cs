using Glazewright.Web.Serving;

namespace Glazewright.Web.Tests.Serving;

public sealed class AccountFileTests : IDisposable
{
    private readonly DirectoryInfo _room = Directory.CreateTempSubdirectory("glazewright-accounts-");

    [Fact]
    public void A_password_opens_its_own_name_and_no_other_and_stands_nowhere()
    {
        AccountFile accounts = new(_room.FullName);
        Assert.False(accounts.IsAny);
        Assert.Equal("", accounts.Put("ann", "warm benches in May"));
        Assert.Equal("", accounts.Put("ben", "cold benches in May"));
        Assert.True(accounts.IsAny);
        Assert.True(accounts.Holds("ann", "warm benches in May"));
        Assert.False(accounts.Holds("ben", "warm benches in May"));
        Assert.False(accounts.Holds("Ann", "warm benches in May"));
        Assert.False(accounts.Holds("ann", "warm benches in may"));
        Assert.False(accounts.Holds("nobody", "nobody has this password"));
        Assert.False(accounts.Holds("", ""));
        Assert.False(accounts.Holds("ann", new string('x', 1_000_000)));
        Assert.DoesNotContain("benches", File.ReadAllText(accounts.Path), StringComparison.Ordinal);
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(accounts.Path));
        }

        Assert.Equal("", accounts.Put("ann", "another one for ann"));
        Assert.False(accounts.Holds("ann", "warm benches in May"));
        Assert.True(accounts.Holds("ann", "another one for ann"));
        Assert.True(accounts.Holds("ben", "cold benches in May"));
    }

    [Theory]
    [InlineData("", "long enough a password"), InlineData(" ann", "long enough a password"), InlineData("a\nb", "long enough a password"), InlineData("ann", "short"), InlineData("ann", "")]
    public void What_cannot_be_used_is_told_and_nothing_is_kept(string name, string password)
    {
        AccountFile accounts = new(_room.FullName);
        Assert.Contains("Right:", accounts.Put(name, password), StringComparison.Ordinal);
        Assert.False(accounts.IsAny);
    }

    [Fact]
    public void A_broken_file_lets_nobody_in_and_is_not_overwritten()
    {
        AccountFile accounts = new(_room.FullName);
        File.WriteAllText(accounts.Path, "[ { ");
        Assert.Throws<FormatException>(() => accounts.IsAny);
        Assert.Throws<FormatException>(() => accounts.Put("ann", "warm benches in May"));
        Assert.Equal("[ { ", File.ReadAllText(accounts.Path));
    }

    [Fact]
    public void The_sixth_try_of_a_name_from_an_address_waits_and_another_address_does_not()
    {
        using Tries tries = new(5, TimeSpan.FromMinutes(5));
        for (int i = 0; i < 5; i++)
        {
            Assert.True(tries.May("ann", "10.0.0.9", out _));
        }

        Assert.False(tries.May("ann", "10.0.0.9", out TimeSpan wait));
        Assert.InRange(wait, TimeSpan.FromSeconds(1), TimeSpan.FromMinutes(5));
        Assert.True(tries.May("ann", "10.0.0.10", out _));
        int others = Enumerable.Range(0, 100).Count(i => tries.May($"name-{i}", "10.0.0.9", out _));
        Assert.InRange(others, 30, 50);
    }

    public void Dispose() => _room.Delete(recursive: true);
}
