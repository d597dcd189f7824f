using System.IO.Compression;
using System.Net;
using System.Net.WebSockets;
using Glazewright.Web.Serving;

namespace Glazewright.Web.Tests.Browser;

/// <summary>The running server's door, without a browser: who is let in, and what an answer carries.</summary>
[Collection("browser")]
[Trait("Category", "Slow")]
public sealed class DoorTests(OpenBrowser browser)
{
    private static readonly HttpClient s_client = new(new SocketsHttpHandler { AllowAutoRedirect = false });

    [Fact]
    public async Task An_answer_keeps_the_page_to_itself()
    {
        using HttpResponseMessage answer = await s_client.GetAsync(Url() + "/");
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal(SafeHeaders.Policy, Assert.Single(answer.Headers.GetValues("Content-Security-Policy")));
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        Assert.Equal("DENY", Assert.Single(answer.Headers.GetValues("X-Frame-Options")));
        Assert.False(answer.Headers.Contains("Server"));
        Assert.Equal("Healthy", await s_client.GetStringAsync(Url() + "/health"));
    }

    [Theory]
    [InlineData("yard.example"), InlineData("169.254.169.254"), InlineData("127.0.0.1.example")]
    public async Task Another_name_for_this_machine_is_not_answered(string host)
    {
        using HttpRequestMessage request = new(HttpMethod.Get, Url() + "/");
        request.Headers.Host = host;
        using HttpResponseMessage answer = await s_client.SendAsync(request);
        Assert.Equal(HttpStatusCode.MisdirectedRequest, answer.StatusCode);
    }

    [Theory]
    [InlineData("https://elsewhere.example"), InlineData("null"), InlineData("http://127.0.0.1:1"), InlineData("")]
    public async Task Another_sites_page_opens_no_socket_and_posts_nothing(string origin)
    {
        using ClientWebSocket socket = new();
        using HttpRequestMessage post = new(HttpMethod.Post, Url() + "/_blazor/negotiate?negotiateVersion=1");
        if (origin.Length > 0)
        {
            socket.Options.SetRequestHeader("Origin", origin);
            post.Headers.Add("Origin", origin);
        }

        WebSocketException refused = await Assert.ThrowsAsync<WebSocketException>(() => socket.ConnectAsync(new Uri(Url().Replace("http", "ws", StringComparison.Ordinal) + "/_blazor"), CancellationToken.None));
        Assert.Contains("403", refused.Message);
        using HttpResponseMessage answer = await s_client.SendAsync(post);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    [Theory]
    [InlineData("/files/..%2F..%2Fjobs.db/job.json"), InlineData("/files/x/job.json"), InlineData("/files/x/contractor.zip"), InlineData("/files/x/..%2Fjobs.db.zip"), InlineData("/jobs.db"), InlineData("/examples/three-lines.json"), InlineData("/../glazewright-web.dll")]
    public async Task No_address_leads_into_the_disk(string path)
    {
        using HttpResponseMessage answer = await s_client.GetAsync(Url() + path);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Fact]
    public async Task A_weather_file_that_unpacks_to_gigabytes_is_refused_before_it_fills_the_memory()
    {
        using MemoryStream packed = new();
        using (GZipStream gzip = new(packed, CompressionLevel.SmallestSize, leaveOpen: true))
        {
            byte[] zeros = new byte[1_000_000];
            for (int i = 0; i < 1500; i++)
            {
                gzip.Write(zeros);
            }
        }

        long before = GC.GetTotalAllocatedBytes(precise: true);
        Assert.IsType<Science.Weather.WeatherReading.Refused>(Science.Weather.WeatherFile.Read(packed.ToArray()));
        Assert.InRange(GC.GetTotalAllocatedBytes(precise: true) - before, 0, 600_000_000);
        await Task.CompletedTask;
    }

    private string Url()
    {
        Assert.SkipWhen(OpenBrowser.Chromium is null, "NOT TESTED: the server is started beside the browser, and there is no Chromium on this machine.");
        return browser.Server.Url;
    }
}
