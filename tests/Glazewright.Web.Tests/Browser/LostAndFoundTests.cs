using Glazewright.Design.Document;
using Glazewright.Web.Fields;
using Microsoft.Playwright;

namespace Glazewright.Web.Tests.Browser;

/// <summary>Two windows, a killed server, and whatever people type or bring in: told in words, nothing lost.</summary>
[Collection("browser")]
[Trait("Category", "Slow")]
public sealed class LostAndFoundTests(OpenBrowser browser)
{
    [Fact]
    public async Task The_second_window_follows_the_first_and_is_told()
    {
        IPage first = await browser.WindowAsync();
        await JobAsync(first);
        IPage second = await first.Context.NewPageAsync();
        await second.OpenAsync(first.Url);
        await second.AnsweredAsync();
        await first.PutAsync("/houses/0/width", "30 ft");
        await Assertions.Expect(second.Locator(Field("/houses/0/width"))).ToHaveValueAsync("30 ft");
        await Assertions.Expect(second.Locator(".news")).ToContainTextAsync("Another window changed House A, width: 30 ft");
        await first.Context.CloseAsync();
    }

    [Fact]
    public async Task A_server_killed_and_started_again_has_everything_and_the_page_comes_back_by_itself()
    {
        Assert.SkipWhen(OpenBrowser.Chromium is null, "NOT TESTED: no Chromium on this machine. Install Debian's package 'chromium'.");
        await using RunningServer server = new();
        await server.StartAsync();
        IPage page = await browser.WindowAsync();
        await page.GotoAsync(server.Url);
        await page.Locator("h1").WaitForAsync();
        await JobAsync(page, opened: true);
        await page.PutAsync("/houses/0/width", "30 ft");
        await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("version 2");
        await server.KillAsync();
        await Assertions.Expect(page.Locator("#components-reconnect-modal")).ToBeVisibleAsync(new() { Timeout = 30_000 });
        await page.EvaluateAsync("() => { window.wasHere = true; }");
        await server.StartAsync();
        await page.WaitForFunctionAsync("() => !window.wasHere", null, new() { Timeout = 40_000 });
        await Assertions.Expect(page.Locator(Field("/houses/0/width"))).ToHaveValueAsync("30 ft");
        await page.PutAsync("/houses/0/width", "32 ft");
        await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("version 3");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Whatever_is_typed_is_told_beside_the_field_and_the_last_picture_stays()
    {
        IPage page = await browser.WindowAsync();
        await JobAsync(page);
        ILocator field = page.Locator(Field("/houses/0/width"));
        string fault = Field("/houses/0/width") + "-fault";
        foreach (string typed in (string[])["wide", "-26 ft", "1e300 ft", "26 kg", "26 ft 3 kg", "<img src=x onerror=alert(1)>", new string('9', 1900), "12'6\" m"])
        {
            await page.PutAsync("/houses/0/width", typed);
            await Assertions.Expect(page.Locator(fault)).ToBeVisibleAsync();
            Assert.Contains("Right:", await page.Locator(fault).InnerTextAsync());
            Assert.Equal("true", await field.GetAttributeAsync("aria-invalid"));
            Assert.Contains(fault[1..], await field.GetAttributeAsync("aria-describedby"));
            Assert.Equal(1, await page.Locator(".picture.dim svg.drawing").First.CountAsync());
        }

        await page.PutAsync("/houses/0/bays", "many");
        await Assertions.Expect(page.Locator(Field("/houses/0/bays") + "-fault")).ToBeVisibleAsync();
        await page.PutAsync("/houses/0/bays", "");
        await page.PutAsync("/houses/0/width", "");
        await Assertions.Expect(page.Locator(fault)).ToContainTextAsync("not given yet");
        await page.PutAsync("/houses/0/width", "26");
        await Assertions.Expect(field).ToHaveValueAsync("26 ft");
        await Assertions.Expect(page.Locator(".faults")).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator(".picture.dim")).ToHaveCountAsync(0);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_sold_job_is_locked_and_an_earlier_version_can_be_gone_back_to()
    {
        IPage page = await browser.WindowAsync();
        await JobAsync(page);
        await page.PutAsync("/houses/0/width", "30 ft");
        await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("version 2");
        await page.Locator(".pages a[href$='/papers']").ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Back to version 1" }).ClickAsync();
        await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("version 3");
        await page.Locator("#status").SelectOptionAsync("Sold");
        // Asked about first where something is open, as when the answers are still being computed.
        ILocator goOn = page.Locator("[data-go-on]");
        await Assertions.Expect(goOn.Or(page.Locator(".jobname").Filter(new() { HasText = "sold, locked" })).First).ToBeVisibleAsync();
        if (await goOn.CountAsync() > 0)
        {
            await goOn.ClickAsync();
        }

        await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("sold, locked");
        await page.Locator(".pages a[href$='/shape']").ClickAsync();
        await Assertions.Expect(page.Locator(Field("/houses/0/width"))).ToHaveValueAsync("26 ft");
        await Assertions.Expect(page.Locator(Field("/houses/0/width"))).ToBeDisabledAsync();
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_job_begun_with_nothing_typed_says_what_is_wanted_beside_each_field()
    {
        IPage page = await browser.WindowAsync();
        await page.OpenAsync("/");
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin the job" }).ClickAsync();
        await Assertions.Expect(page.Locator(Field("/houses/0/width") + "-fault")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("cannot be begun yet");
        await page.PutAsync("/site/latitude", "-33.9");
        await page.PutAsync("/site/longitude", "18.4");
        await Assertions.Expect(page.Locator(".begin")).ToContainTextAsync("no weather year from within 300 km");
        await page.PutAsync("/site/latitude", "42");
        await page.PutAsync("/site/longitude", "-88");
        await Assertions.Expect(page.Locator("#station")).ToHaveValueAsync("demo-continental-42N.epw.gz");
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("House A, width: This is not given yet. Right: 12'6\"");
        // With the last of it mended the notice goes: it stood empty.
        await page.PutAsync("/houses/0/width", "26");
        await page.PutAsync("/houses/0/length", "96");
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToHaveCountAsync(0);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Files_that_are_no_jobs_and_no_weather_are_refused_in_words()
    {
        IPage page = await browser.WindowAsync();
        await page.OpenAsync("/");
        await page.Locator("#station").WaitForAsync();
        ILocator news = page.Locator("#import-news");
        await page.Locator("#import").SetInputFilesAsync(new FilePayload { Name = "page.json", MimeType = "text/html", Buffer = "<!doctype html><script>alert(1)</script>"u8.ToArray() });
        await Assertions.Expect(news).ToContainTextAsync("page.json:");
        await page.Locator("#import").SetInputFilesAsync(new FilePayload { Name = "null.json", MimeType = "application/json", Buffer = "null"u8.ToArray() });
        await Assertions.Expect(news).ToContainTextAsync("null.json: the file holds no job");
        await page.Locator("#weather").SetInputFilesAsync(new FilePayload { Name = "rain.stat", MimeType = "text/plain", Buffer = "it rains"u8.ToArray() });
        await Assertions.Expect(page.Locator("#import-news .fault")).ToHaveTextAsync("rain.stat: there are no design conditions in it. Right: a whole statistics file (.stat)");
        await page.Locator("#weather").SetInputFilesAsync(new FilePayload
        {
            Name = "elsewhere.stat",
            MimeType = "text/plain",
            Buffer = System.Text.Encoding.UTF8.GetBytes(
                "\tDesign Stat\tColdestMonth\tDB996\tDB990\tWS010c\tWS_DB996\n\tHeating\t1\t-18.5\t-15\t11\t3\n"
                + "\tDesign Stat\tHottestMonth\tDBR\tDB004\tWB_DB004\tDB010\tWB_DB010\tDB020\tWB_DB020\tWB004\tDB_WB004\tWS_DB004\n\tCooling\t7\t12\t33\t22\t31\t21.5\t30\t21\t24\t30\t4\n"
                + "\tDesign Stat\tWS010\tDBmin_mean\tDBmax_mean\tDBmin20years\tDBmax20years\n\tExtremes\t12\t-23\t36\t-28\t39\n"),
        });
        await Assertions.Expect(page.Locator("#import-news .held")).ToContainTextAsync("A job takes its design conditions once it names it");
        await page.Locator("#weather").SetInputFilesAsync(new FilePayload { Name = "rain.epw", MimeType = "text/plain", Buffer = "it rains"u8.ToArray() });
        await Assertions.Expect(news).ToContainTextAsync("rain.epw:");
        DirectoryInfo room = Directory.CreateTempSubdirectory("glazewright-large-");
        string large = Path.Combine(room.FullName, "large.json");
        using (FileStream hole = File.Create(large))
        {
            hole.SetLength(200_000_000);
        }

        await page.Locator("#import").SetInputFilesAsync(large);
        await Assertions.Expect(news).ToContainTextAsync("large.json has 200 MB");
        room.Delete(recursive: true);
        await page.Locator("#import").SetInputFilesAsync(new FilePayload { Name = "yard.json", MimeType = "application/json", Buffer = System.Text.Encoding.UTF8.GetBytes(Jobs.Desk.Example("three-lines.json")) });
        await page.Locator("h1", new() { HasText = "Brief" }).WaitForAsync();
        await page.Context.CloseAsync();
    }

    // Out of one page and into the next: the zip that is handed out is taken in again, and one that leads elsewhere is not.
    [Fact]
    public async Task A_job_goes_out_packed_with_its_weather_and_comes_in_again()
    {
        IPage page = await browser.WindowAsync();
        await JobAsync(page);
        await page.PutAsync("/houses/0/width", "30 ft");
        await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("version 2");
        IDownload download = await page.RunAndWaitForDownloadAsync(() => page.Locator("a[href$='/job.zip']").ClickAsync());
        Assert.Equal("yard.zip", download.SuggestedFilename);
        byte[] zip = await File.ReadAllBytesAsync(await download.PathAsync());
        PackedJobReading.Read read = Assert.IsType<PackedJobReading.Read>(PackedJob.Read(zip));
        Assert.Equal("demo-continental-42N.epw.gz", Assert.Single(read.Files).Name);

        await page.OpenAsync("/");
        await page.Locator("#station").WaitForAsync();
        byte[] hostile = [.. zip];
        byte[] weather = "weather/demo"u8.ToArray();
        for (int at = hostile.AsSpan().IndexOf(weather); at >= 0; at = hostile.AsSpan().IndexOf(weather))
        {
            "../../../dem"u8.ToArray().CopyTo(hostile, at);
        }

        await page.Locator("#import").SetInputFilesAsync(new FilePayload { Name = "hostile.zip", MimeType = "application/zip", Buffer = hostile });
        await Assertions.Expect(page.Locator("#import-news")).ToContainTextAsync("belongs to no job");
        await page.Locator("#import").SetInputFilesAsync(new FilePayload { Name = "yard.zip", MimeType = "application/zip", Buffer = zip });
        await page.Locator("h1", new() { HasText = "Brief" }).WaitForAsync();
        await page.AnsweredAsync();
        await page.Locator(".pages a[href*='/shape']").ClickAsync();
        await Assertions.Expect(page.Locator(Field("/houses/0/width"))).ToHaveValueAsync("30 ft");
        await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("version 1");
        await page.Context.CloseAsync();
    }

    // 1.5 GB of zeros in 1.5 MB: as a job and as weather. The server stays answerable and says why.
    [Fact]
    public async Task Packed_files_that_unpack_to_gigabytes_are_refused_in_words_and_the_job_at_hand_stays()
    {
        IPage page = await browser.WindowAsync();
        await JobAsync(page);
        await page.PutAsync("/houses/0/width", "30 ft");
        await Assertions.Expect(page.Locator(".jobname")).ToContainTextAsync("version 2");
        string job = page.Url;
        byte[] bomb = Bomb();
        Assert.InRange(bomb.Length, 1_000_000, 3_000_000);

        IPage start = await page.Context.NewPageAsync();
        await start.OpenAsync("/");
        await start.Locator("#station").WaitForAsync();
        ILocator news = start.Locator("#import-news");
        await start.Locator("#weather").SetInputFilesAsync(new FilePayload { Name = "year.epw.gz", MimeType = "application/gzip", Buffer = bomb });
        await Assertions.Expect(news).ToContainTextAsync("year.epw.gz:", new() { Timeout = Steps.BehindMs });
        await Assertions.Expect(news).ToContainTextAsync("Right:");
        await start.Locator("#import").SetInputFilesAsync(new FilePayload { Name = "yard.json", MimeType = "application/json", Buffer = bomb });
        await Assertions.Expect(news).ToContainTextAsync("yard.json: the file is packed", new() { Timeout = Steps.BehindMs });
        await start.Locator("#weather").SetInputFilesAsync(new FilePayload { Name = "cut.epw.gz", MimeType = "application/gzip", Buffer = bomb[..5000] });
        await Assertions.Expect(news).ToContainTextAsync("cut.epw.gz:", new() { Timeout = Steps.BehindMs });

        await page.GotoAsync(job);
        await Assertions.Expect(page.Locator(Field("/houses/0/width"))).ToHaveValueAsync("30 ft");
        await page.Context.CloseAsync();
    }

    // One field of each kind, and a whole job pasted into each.
    [Theory]
    [InlineData("brief", "/site/latitude"), InlineData("brief", "/houses/0/schedule/0/day/temperature"), InlineData("shape", "/houses/0/roof/leftPitch"), InlineData("shape", "/houses/0/bays"), InlineData("plant", "/houses/0/equipment/temperatureRise")]
    [InlineData("year", "/tariffs/power")]
    public async Task A_field_of_each_kind_takes_whatever_is_pasted_and_undo_takes_it_back(string at, string pointer)
    {
        IPage page = await browser.WindowAsync();
        await JobAsync(page);
        await page.Locator($".pages a[href$='/{at}']").ClickAsync();
        await page.Locator($".pages a[href$='/{at}'][aria-current=page]").WaitForAsync();
        if (pointer.Contains("/schedule/0/", StringComparison.Ordinal))
        {
            await page.Locator("details", new() { HasText = "Schedule" }).First.Locator("> summary").ClickAsync();
            await page.GetByRole(AriaRole.Button, new() { Name = "Add to schedule" }).ClickAsync();
        }

        // What is folded is unfolded, once the field is there; it stays so when a fault in it is mended.
        ILocator field = page.Locator(Field(pointer));
        await field.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await page.EvaluateAsync("() => document.querySelectorAll('.inputs details').forEach(d => { d.open = true; })");
        string before = await field.InputValueAsync();
        foreach (string typed in (string[])["many", "-9999999", "26 ft 3 kg", Jobs.Desk.Example("two-ridge-herb-yard.json")])
        {
            await page.PutAsync(pointer, typed);
            await Assertions.Expect(page.Locator(Field(pointer) + "-fault")).ToContainTextAsync("Right:");
            await Assertions.Expect(page.Locator("#blazor-error-ui")).Not.ToBeVisibleAsync();
            await page.Locator("[data-undo]").ClickAsync();
            await Assertions.Expect(field).ToHaveValueAsync(before);
        }

        await page.Context.CloseAsync();
    }

    private static byte[] Bomb()
    {
        using MemoryStream packed = new();
        using (System.IO.Compression.GZipStream gzip = new(packed, System.IO.Compression.CompressionLevel.SmallestSize, leaveOpen: true))
        {
            byte[] zeros = new byte[1_000_000];
            for (int i = 0; i < 1500; i++)
            {
                gzip.Write(zeros);
            }
        }

        return packed.ToArray();
    }

    private static string Field(string pointer) => "#" + FieldMap.ElementId(pointer);

    private static async Task JobAsync(IPage page, bool opened = false)
    {
        if (!opened)
        {
            await page.OpenAsync("/");
        }

        await page.BringInAsync();
        await page.Locator(".pages a[href$='/shape']").ClickAsync();
        await page.Locator("h1", new() { HasText = "Shape" }).WaitForAsync();
        await page.AnsweredAsync();
        await page.Locator("svg.drawing").First.WaitForAsync();
    }
}
