using Glazewright.Web.Serving;

namespace Glazewright.Web.Tests.Serving;

public class ServeWishTests
{
    [Theory]
    [InlineData("http://0.0.0.0:8140"), InlineData("http://192.168.1.20:8140"), InlineData("http://*:80"), InlineData("http://yard.example:8140"), InlineData("http://[::]:8140"), InlineData("http://127.0.0.1.example:80")]
    public void Nobody_signs_in_so_no_other_machine_is_let_in(string url)
    {
        ServeReading.Refused refused = Assert.IsType<ServeReading.Refused>(ServeWish.Read(["--urls", url], "/data", null));
        Assert.False(refused.IsHelp);
        Assert.Contains(ServeWish.UsualUrl, refused.Words);
    }

    [Theory]
    [InlineData("http://127.0.0.1:8140;http://0.0.0.0:80"), InlineData("nonsense"), InlineData(""), InlineData("https://127.0.0.1:8140"), InlineData("http://127.0.0.1:8140/jobs"), InlineData("file:///etc/passwd")]
    public void What_is_not_one_plain_address_is_refused_with_what_would_be_right(string url) =>
        Assert.Contains("Right:", Assert.IsType<ServeReading.Refused>(ServeWish.Read(["--urls", url], "/data", null)).Words);

    [Theory]
    [InlineData("http://127.0.0.1:9000"), InlineData("http://localhost:9000"), InlineData("http://[::1]:9000")]
    public void Every_name_of_this_machine_is_served(string url) =>
        Assert.Equal(9000, Assert.IsType<ServeReading.Read>(ServeWish.Read(["--urls", url], "/data", null)).Wish.Url.Port);

    [Theory]
    [InlineData("--public is missing", "--urls", "http://0.0.0.0:80", "--proxy", "10.0.0.2")]
    [InlineData("the public address is in the clear", "--urls", "http://0.0.0.0:80", "--public", "http://yard.example", "--proxy", "10.0.0.2")]
    [InlineData("neither certificate nor proxy", "--urls", "http://0.0.0.0:80", "--public", "https://yard.example")]
    [InlineData("in the clear with a certificate", "--urls", "http://0.0.0.0:80", "--public", "https://yard.example", "--certificate", "ServeWish.pem")]
    [InlineData("no certificate", "--urls", "https://0.0.0.0:443", "--public", "https://yard.example")]
    [InlineData("both", "--urls", "https://0.0.0.0:443", "--public", "https://yard.example", "--certificate", "x.pem", "--proxy", "10.0.0.2")]
    [InlineData("no such file", "--urls", "https://0.0.0.0:443", "--public", "https://yard.example", "--certificate", "/nowhere/x.pem")]
    [InlineData("a proxy by name", "--urls", "http://0.0.0.0:80", "--public", "https://yard.example", "--proxy", "proxy.example")]
    [InlineData("a path", "--urls", "http://0.0.0.0:80", "--public", "https://yard.example/jobs", "--proxy", "10.0.0.2")]
    [InlineData("this machine alone with a certificate", "--certificate", "x.pem")]
    public void Half_an_opening_to_others_is_refused_with_what_would_be_right(string what, params string[] args) =>
        Assert.True(ServeWish.Read(args, "/data", null) is ServeReading.Refused { Words: var words } && words.Contains("Right:", StringComparison.Ordinal), what);

    [Fact]
    public void Behind_a_proxy_others_are_let_in()
    {
        Outside outside = Assert.IsType<ServeReading.Read>(ServeWish.Read(["--urls", "http://*:8140", "--public", "https://yard.example", "--proxy", "10.0.0.2"], "/data", null)).Wish.Outside!;
        Assert.Equal(("yard.example", 443, "10.0.0.2"), (outside.PublicUrl.Host, outside.PublicUrl.Port, outside.Proxy!.ToString()));
    }

    [Fact]
    public void The_store_is_a_file_of_the_data_folder_unless_a_setting_names_a_database()
    {
        Assert.Equal("sqlite:" + Path.Combine(Path.GetFullPath("yard"), "jobs.db"), Assert.IsType<ServeReading.Read>(ServeWish.Read(["--data", "yard"], "/data", null)).Wish.Store);
        Assert.Equal("postgres:Host=a", Assert.IsType<ServeReading.Read>(ServeWish.Read([], "/data", "postgres:Host=a")).Wish.Store);
        Assert.Equal("postgres:Host=b", Assert.IsType<ServeReading.Read>(ServeWish.Read(["--store", "postgres:Host=b"], "/data", "postgres:Host=a")).Wish.Store);
    }

    [Theory]
    [InlineData("--dat", "x"), InlineData("--data"), InlineData("yard.json")]
    public void A_slip_is_told(params string[] args) => Assert.Contains(ServeWish.Usage, Assert.IsType<ServeReading.Refused>(ServeWish.Read(args, "/data", null)).Words);
}
