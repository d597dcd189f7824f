using System.Net;
using System.Net.WebSockets;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using System.Text.RegularExpressions;
using Glazewright.Web.Fields;
using Microsoft.Playwright;

namespace Glazewright.Web.Tests.Browser;

/// <summary>A server that others may reach: by its own TLS, and behind a proxy.</summary>
[Collection("browser")]
[Trait("Category", "Slow")]
public sealed partial class SignInTests(OpenBrowser browser) : IAsyncLifetime
{
    private const string Password = "warm benches in May";
    private readonly DirectoryInfo _room = Directory.CreateTempSubdirectory("glazewright-tls-");
    private RunningServer _server = null!;
    private HttpClient _client = null!;
    private string _url = "";

    public async ValueTask InitializeAsync()
    {
        Assert.SkipWhen(OpenBrowser.Chromium is null, "NOT TESTED: no Chromium on this machine. Install Debian's package 'chromium'.");
        using RSA key = RSA.Create(2048);
        CertificateRequest request = new("CN=localhost", key, HashAlgorithmName.SHA256, RSASignaturePadding.Pkcs1);
        using X509Certificate2 certificate = request.CreateSelfSigned(DateTimeOffset.FromUnixTimeSeconds(0), DateTimeOffset.FromUnixTimeSeconds(4_000_000_000));
        string pem = Path.Combine(_room.FullName, "certificate.pem");
        string keyPem = Path.Combine(_room.FullName, "key.pem");
        await File.WriteAllTextAsync(pem, certificate.ExportCertificatePem());
        await File.WriteAllTextAsync(keyPem, key.ExportPkcs8PrivateKeyPem());
        _server = new("--urls", "https://127.0.0.1:{port}", "--public", "https://localhost:{port}", "--certificate", pem, "--key", keyPem);
        _url = $"https://localhost:{_server.Port}";
        _client = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false, SslOptions = new() { RemoteCertificateValidationCallback = (_, _, _, _) => true } });
    }

    [Fact]
    public async Task Nobody_comes_in_until_there_is_an_account_and_then_nothing_but_the_door_is_open()
    {
        (int exit, _, string error) = await RunningServer.CallAsync(
            ["--data", _server.Data, "--urls", $"https://127.0.0.1:{_server.Port}", "--public", _url, "--certificate", Path.Combine(_room.FullName, "certificate.pem"), "--key", Path.Combine(_room.FullName, "key.pem")], "");
        Assert.Equal(2, exit);
        Assert.Contains("--add-account", error, StringComparison.Ordinal);
        (exit, _, error) = await RunningServer.CallAsync(["--data", _server.Data, "--add-account", "ann"], "short\n");
        Assert.Equal(2, exit);
        Assert.Contains("Right: 12", error, StringComparison.Ordinal);
        await StartAsync();

        foreach (string path in (string[])["/", "/jobs/x/brief", "/compare", "/files/x/job.json", "/files/x/contractor.zip", "/sign-out"])
        {
            using HttpResponseMessage answer = await _client.GetAsync(_url + path);
            Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
            Assert.Equal($"/sign-in?then={Uri.EscapeDataString(path)}", answer.Headers.Location!.ToString());
            Assert.True(answer.Headers.Contains("Strict-Transport-Security"));
        }

        using HttpRequestMessage negotiate = new(HttpMethod.Post, _url + "/_blazor/negotiate?negotiateVersion=1");
        negotiate.Headers.Add("Origin", _url);
        using HttpResponseMessage refused = await _client.SendAsync(negotiate);
        Assert.Equal(HttpStatusCode.Unauthorized, refused.StatusCode);
        using ClientWebSocket socket = new();
        socket.Options.SetRequestHeader("Origin", _url);
        socket.Options.RemoteCertificateValidationCallback = (_, _, _, _) => true;
        WebSocketException shut = await Assert.ThrowsAsync<WebSocketException>(() => socket.ConnectAsync(new Uri(_url.Replace("https", "wss", StringComparison.Ordinal) + "/_blazor"), CancellationToken.None));
        Assert.Contains("401", shut.Message, StringComparison.Ordinal);
        Assert.Equal("Healthy", await _client.GetStringAsync(_url + "/health"));
        Assert.Contains("--paper", await _client.GetStringAsync(_url + "/tokens.css"), StringComparison.Ordinal);
        using HttpRequestMessage other = new(HttpMethod.Get, _url + "/sign-in");
        other.Headers.Host = $"yard.example:{_server.Port}";
        using HttpResponseMessage misdirected = await _client.SendAsync(other);
        Assert.Equal(HttpStatusCode.MisdirectedRequest, misdirected.StatusCode);
    }

    [Fact]
    public async Task A_form_of_another_site_a_wrong_password_and_the_sixth_try_are_refused()
    {
        await StartAsync();
        using HttpResponseMessage bare = await PostAsync("", "ann", Password);
        Assert.Equal(HttpStatusCode.BadRequest, bare.StatusCode);
        for (int i = 0; i < 5; i++)
        {
            using HttpResponseMessage wrong = await PostAsync(await TokenAsync(), "ann", "warm benches in April");
            Assert.Equal(HttpStatusCode.Unauthorized, wrong.StatusCode);
            Assert.Contains("do not belong together", await wrong.Content.ReadAsStringAsync(), StringComparison.Ordinal);
            Assert.DoesNotContain(wrong.Headers, h => h.Key == "Set-Cookie" && h.Value.Any(v => v.StartsWith("__Host-glazewright", StringComparison.Ordinal)));
        }

        using HttpResponseMessage late = await PostAsync(await TokenAsync(), "ann", Password);
        Assert.Equal(HttpStatusCode.TooManyRequests, late.StatusCode);
        Assert.NotNull(late.Headers.RetryAfter);
        using HttpResponseMessage ben = await PostAsync(await TokenAsync(), "<script>ben", Password);
        Assert.DoesNotContain("<script>ben", await ben.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.DoesNotContain(_server.Log, l => l.Contains("benches", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("https://elsewhere.example/"), InlineData("//elsewhere.example"), InlineData("/\\elsewhere.example")]
    public async Task Signing_in_leads_to_pages_of_this_server_only(string then)
    {
        await StartAsync();
        using HttpResponseMessage answer = await PostAsync(await TokenAsync(), "ann", Password, then);
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.Equal("/", answer.Headers.Location!.ToString());
        string cookie = answer.Headers.GetValues("Set-Cookie").Single(v => v.StartsWith("__Host-glazewright", StringComparison.Ordinal));
        Assert.Contains("secure", cookie, StringComparison.Ordinal);
        Assert.Contains("httponly", cookie, StringComparison.Ordinal);
        Assert.Contains("samesite=lax", cookie, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_person_signs_in_works_under_their_name_and_signs_out()
    {
        await StartAsync();
        IPage page = await browser.WindowAsync(trustAll: true);
        await page.GotoAsync(_url + "/");
        await page.Locator("#name").FillAsync("ann");
        await page.Locator("#password").FillAsync(Password);
        if (Environment.GetEnvironmentVariable("GLAZEWRIGHT_PICTURES") is { } folder)
        {
            await page.ScreenshotAsync(new() { Path = Path.Combine(folder, "sign-in.png") });
        }

        await page.GetByRole(AriaRole.Button, new() { Name = "Sign in" }).ClickAsync();
        await page.Locator("h1", new() { HasText = "Greenhouse jobs" }).WaitForAsync();
        await page.BringInAsync();
        await page.Locator(".pages a[href$='/shape']").ClickAsync();
        await page.Locator("h1", new() { HasText = "Shape" }).WaitForAsync();
        await page.PutAsync("/houses/0/width", "30 ft");
        await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("version 2");
        await page.Locator(".pages a[href$='/papers']").ClickAsync();
        await Assertions.Expect(page.Locator("tr", new() { HasText = "width: 30 ft" })).ToContainTextAsync("ann");

        // The cookie outlives the server. In a page of its own: one left open loads itself again when the server is back, perhaps after this one has gone on.
        IBrowserContext person = page.Context;
        await page.CloseAsync();
        await _server.KillAsync();
        await _server.StartAsync();
        page = await person.NewPageAsync();
        await page.GotoAsync(_url + "/");
        await page.Locator("h1", new() { HasText = "Greenhouse jobs" }).WaitForAsync();
        // Another window of the same person, and the cookie as a thief would keep it.
        IPage second = await person.NewPageAsync();
        await second.GotoAsync(_url + "/compare");
        await second.Locator("h1", new() { HasText = "side by side" }).WaitForAsync();
        BrowserContextCookiesResult cookie = (await person.CookiesAsync()).Single(c => c.Name == "__Host-glazewright");
        using HttpResponseMessage before = await AsAsync(cookie.Value);
        Assert.Equal(HttpStatusCode.OK, before.StatusCode);
        await page.Locator(".person a").ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign out" }).ClickAsync();
        await page.Locator("#password").WaitForAsync();
        await second.Locator("#password").WaitForAsync();
        Assert.EndsWith("/sign-in?then=%2Fcompare", second.Url, StringComparison.Ordinal);
        using HttpResponseMessage after = await AsAsync(cookie.Value);
        Assert.Equal(HttpStatusCode.Redirect, after.StatusCode);
        await page.GotoAsync(_url + "/");
        await page.Locator("#password").WaitForAsync();

        // A server started anew does not take the thief's cookie either.
        await _server.KillAsync();
        await _server.StartAsync();
        using HttpResponseMessage anew = await AsAsync(cookie.Value);
        Assert.Equal(HttpStatusCode.Redirect, anew.StatusCode);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Behind_a_proxy_only_the_proxy_is_heard_and_the_address_is_the_public_one()
    {
        await using RunningServer near = new("--public", "https://yard.example", "--proxy", "127.0.0.1");
        await RunningServer.CallAsync(["--data", near.Data, "--add-account", "ann"], Password + "\n");
        await near.StartAsync();
        using HttpRequestMessage asked = new(HttpMethod.Get, near.Url + "/jobs/x/brief?house=1");
        asked.Headers.Host = "yard.example";
        using HttpResponseMessage answer = await _client.SendAsync(asked);
        Assert.Equal($"/sign-in?then={Uri.EscapeDataString("/jobs/x/brief?house=1")}", answer.Headers.Location!.ToString());
        using HttpResponseMessage bare = await _client.GetAsync(near.Url + "/");
        Assert.Equal(HttpStatusCode.MisdirectedRequest, bare.StatusCode);

        await using RunningServer far = new("--public", "https://yard.example", "--proxy", "10.9.9.9");
        await RunningServer.CallAsync(["--data", far.Data, "--add-account", "ann"], Password + "\n");
        await far.StartAsync();
        using HttpRequestMessage passedBy = new(HttpMethod.Get, far.Url + "/sign-in");
        passedBy.Headers.Host = "yard.example";
        using HttpResponseMessage shut = await _client.SendAsync(passedBy);
        Assert.Equal(HttpStatusCode.Forbidden, shut.StatusCode);
    }

    public async ValueTask DisposeAsync()
    {
        if (_server is not null)
        {
            await _server.DisposeAsync();
            _client.Dispose();
        }

        _room.Delete(recursive: true);
    }

    private async Task StartAsync()
    {
        (int exit, _, string error) = await RunningServer.CallAsync(["--data", _server.Data, "--add-account", "ann"], Password + "\n");
        Assert.True(exit == 0, error);
        await _server.StartAsync();
    }

    private async Task<HttpResponseMessage> AsAsync(string cookie)
    {
        using HttpRequestMessage get = new(HttpMethod.Get, _url + "/");
        get.Headers.Add("Cookie", "__Host-glazewright=" + cookie);
        return await _client.SendAsync(get);
    }

    private async Task<string> TokenAsync() => TokenField().Match(await _client.GetStringAsync(_url + "/sign-in")).Groups[1].Value;

    private async Task<HttpResponseMessage> PostAsync(string token, string name, string password, string then = "/")
    {
        using HttpRequestMessage post = new(HttpMethod.Post, _url + "/sign-in")
        {
            Content = new FormUrlEncodedContent([new("__RequestVerificationToken", token), new("name", name), new("password", password), new("then", then)]),
        };
        post.Headers.Add("Origin", _url);
        return await _client.SendAsync(post);
    }

    [GeneratedRegex("name=\"__RequestVerificationToken\" value=\"([^\"]+)\"")]
    private static partial Regex TokenField();
}
