using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Store.Jobs;
using Glazewright.Web.Jobs;

namespace Glazewright.Web.Tests.Jobs;

public sealed class JobSessionTests(Desk desk) : IClassFixture<Desk>
{
    private const string Width = "/houses/0/width";

    [Fact]
    public async Task An_edit_is_on_the_disk_when_it_is_acknowledged_and_is_answered()
    {
        StoredJob job = await desk.JobAsync();
        JobSession window = await desk.WindowAsync(job.Id);
        double before = window.View!.Light!.Houses[0].Look.Form.FloorAreaM2;
        Assert.True(await window.EditAsync([Edit.Typed(Width, "30 ft")], "width"));
        Assert.Equal("30 ft", Typed(await desk.Store.TextAtAsync(job.Id, 2), Width));
        await window.Settled;
        Assert.Equal(before * 30 / 26, window.View!.Light!.Houses[0].Look.Form.FloorAreaM2, 6);
        Assert.False(window.View!.IsStale || window.View.IsWorking);
    }

    [Fact]
    public async Task The_newest_of_many_edits_wins_and_all_are_in_the_history()
    {
        StoredJob job = await desk.JobAsync();
        JobSession window = await desk.WindowAsync(job.Id);
        foreach (int feet in (int[])[20, 22, 24, 28, 32])
        {
            Assert.True(await window.EditAsync([Edit.Typed(Width, FormattableString.Invariant($"{feet} ft"))], "width"));
        }

        await window.Settled;
        Assert.Equal(32 * 0.3048, window.View!.Light!.Houses[0].Look.Form.WidthM, 9);
        Assert.Equal(6, (await desk.Store.HistoryAsync(job.Id)).Count);
    }

    [Fact]
    public async Task A_fault_stands_at_its_field_and_the_last_good_answers_stay()
    {
        StoredJob job = await desk.JobAsync();
        JobSession window = await desk.WindowAsync(job.Id);
        LightResults good = window.View!.Light!;
        Assert.True(await window.EditAsync([Edit.Typed(Width, "wide")], "width"));
        await window.Settled;
        Assert.Equal(Width, Assert.Single(window.Faults).Pointer);
        Assert.Same(good, window.View!.Light);
        Assert.True(window.View!.IsStale);
        Assert.False(window.View.IsWorking);
        Assert.True(await window.UndoAsync());
        await window.Settled;
        Assert.Empty(window.Faults);
        Assert.False(window.View!.IsStale);
    }

    [Fact]
    public async Task Undo_and_redo_go_through_the_whole_job()
    {
        string text = Desk.Example("two-ridge-herb-yard.json");
        StoredJob job = await desk.JobAsync(text);
        JobSession window = await desk.WindowAsync(job.Id);
        (Edit[] Edits, string What)[] steps =
        [
            ([Edit.Typed("/houses/1/roof/leftPitch", "7:12")], "pitch"), ([Edit.Removed("/houses/0/openings/1")], "opening"), ([new Edit("/houses/0/benches/-", "{ \"offset\": \"1 ft\" }")], "bench"),
            ([Edit.Typed("/site/weather/sha256", "")], "hash"), ([new Edit("/houses/0/shapeWishes/x", "1")], "wish"), ([Edit.Removed("/lot")], "lot"),
        ];
        foreach ((Edit[] edits, string what) in steps)
        {
            Assert.True(await window.EditAsync(edits, what));
        }

        string after = window.Document.Text;
        while (window.View!.Undo.Length > 0)
        {
            Assert.True(await window.UndoAsync(), window.View!.Notice);
        }

        // Where a thing stood in its line is not kept when it is taken out and comes back: what it says is.
        Assert.Equal(Plain(text), Plain(window.Document.Text));
        for (int i = 0; i < steps.Length; i++)
        {
            Assert.Equal(steps[i].What, window.View!.Redo);
            Assert.True(await window.RedoAsync());
        }

        Assert.Equal(Plain(after), Plain(window.Document.Text));
        Assert.False(await window.RedoAsync());
    }

    [Theory]
    [InlineData(false), InlineData(true)]
    public async Task Two_windows_on_one_field_lose_neither_edit(bool useOurs)
    {
        StoredJob job = await desk.JobAsync();
        JobSession first = await desk.WindowAsync(job.Id, alone: true);
        JobSession second = await desk.WindowAsync(job.Id, alone: true);
        Assert.True(await first.EditAsync([Edit.Typed(Width, "30 ft")], "width: 30 ft"));
        Assert.False(await second.EditAsync([Edit.Typed(Width, "20 ft")], "width: 20 ft"));
        Assert.Equal("30 ft", Typed(second.Document.Text, Width));
        Assert.Equal(("width: 20 ft", "width: 30 ft"), (second.View!.Clash!.What, second.View.Clash.Theirs));
        Assert.True(await second.SettleAsync(useOurs));
        Assert.Null(second.View!.Clash);
        Assert.Equal(useOurs ? "20 ft" : "30 ft", Typed((await desk.Store.FindAsync(job.Id))!.Text, Width));
        Assert.Contains(await desk.Store.HistoryAsync(job.Id), e => e.What == "width: 30 ft");
    }

    [Fact]
    public async Task Two_windows_on_other_fields_both_hold_and_the_second_is_told()
    {
        StoredJob job = await desk.JobAsync();
        JobSession first = await desk.WindowAsync(job.Id, alone: true);
        JobSession second = await desk.WindowAsync(job.Id, alone: true);
        Assert.True(await first.EditAsync([Edit.Typed(Width, "30 ft")], "width: 30 ft"));
        Assert.True(await second.EditAsync([Edit.Typed("/houses/0/length", "80 ft")], "length"));
        Assert.Contains("width: 30 ft", second.View!.Notice);
        Assert.Equal(("30 ft", "80 ft"), (Typed(second.Document.Text, Width), Typed(second.Document.Text, "/houses/0/length")));
        Assert.True(await second.UndoAsync());
        Assert.Equal(("30 ft", "96 ft"), (Typed(second.Document.Text, Width), Typed(second.Document.Text, "/houses/0/length")));
    }

    [Fact]
    public async Task An_undone_bench_is_the_own_one_when_another_window_added_one_too()
    {
        StoredJob job = await desk.JobAsync("""{ "glazewright": 1, "houses": [{ "benches": [] }] }""");
        JobSession first = await desk.WindowAsync(job.Id, alone: true);
        JobSession second = await desk.WindowAsync(job.Id, alone: true);
        Assert.True(await first.EditAsync([new Edit("/houses/0/benches/-", "{ \"id\": \"theirs\" }")], "bench"));
        Assert.False(await second.EditAsync([new Edit("/houses/0/benches/-", "{ \"id\": \"ours\" }")], "bench"));
        Assert.True(await second.SettleAsync(useOurs: true));
        Assert.Equal(2, Assert.IsType<ListNode>(second.Document.Find("/houses/0/benches")).Items.Count);
        Assert.True(await second.UndoAsync());
        ListNode benches = Assert.IsType<ListNode>(second.Document.Find("/houses/0/benches"));
        Assert.Equal("theirs", Assert.IsType<TextNode>(Assert.IsType<ObjectNode>(Assert.Single(benches.Items)).Find("id")).Text);
    }

    [Fact]
    public async Task A_window_of_the_same_server_follows_at_once()
    {
        StoredJob job = await desk.JobAsync();
        JobSession first = await desk.WindowAsync(job.Id);
        JobSession second = await desk.WindowAsync(job.Id);
        TaskCompletionSource heard = new();
        second.Changed += () =>
        {
            if (second.View!.Notice.Length > 0)
            {
                heard.TrySetResult();
            }
        };
        Assert.True(await first.EditAsync([Edit.Typed(Width, "30 ft")], "the width"));
        await heard.Task.WaitAsync(TimeSpan.FromSeconds(20), TestContext.Current.CancellationToken);
        Assert.Equal("30 ft", Typed(second.Document.Text, Width));
        Assert.Contains("the width", second.View!.Notice);
    }

    [Fact]
    public async Task Windows_that_edit_and_follow_each_other_do_not_wait_for_each_other_for_ever()
    {
        StoredJob job = await desk.JobAsync();
        JobSession[] windows = [await desk.WindowAsync(job.Id), await desk.WindowAsync(job.Id), await desk.WindowAsync(job.Id)];
        Task all = Task.WhenAll(windows.Select((w, n) => Task.Run(async () =>
        {
            for (int i = 0; i < 10; i++)
            {
                await w.EditAsync([Edit.Typed($"/houses/0/{(string[])["width", "length", "ponyWall"] switch { var keys => keys[n] }}", FormattableString.Invariant($"{(n == 2 ? 2 : 40) + i % 5} ft"))], "size");
            }
        })));
        await all.WaitAsync(TimeSpan.FromSeconds(60), TestContext.Current.CancellationToken);
        Assert.Equal(31, (await desk.Store.FindAsync(job.Id))!.Version);
    }

    [Fact]
    public async Task A_sold_job_is_locked_and_opens_again_when_it_is_no_longer_sold()
    {
        StoredJob job = await desk.JobAsync();
        JobSession window = await desk.WindowAsync(job.Id);
        Assert.True(await window.SetStatusAsync(JobStatus.Sold));
        Assert.True(window.IsLocked);
        Assert.False(await window.EditAsync([Edit.Typed(Width, "30 ft")], "width"));
        Assert.Contains("locked", window.View!.Notice);
        Assert.Equal("26 ft", Typed(window.Document.Text, Width));
        Assert.True(await window.SetStatusAsync(JobStatus.Quoted));
        Assert.True(await window.EditAsync([Edit.Typed(Width, "30 ft")], "width"));
    }

    [Fact]
    public async Task An_earlier_version_comes_back_and_what_came_after_stays_in_the_history()
    {
        StoredJob job = await desk.JobAsync();
        JobSession window = await desk.WindowAsync(job.Id);
        Assert.True(await window.EditAsync([Edit.Typed(Width, "30 ft")], "width"));
        Assert.True(await window.RestoreAsync(1));
        Assert.Equal(job.Text, window.Document.Text);
        Assert.Equal(3, window.View!.Job.Version);
        Assert.Equal("30 ft", Typed(await desk.Store.TextAtAsync(job.Id, 2), Width));
    }

    [Theory]
    [InlineData(""), InlineData("<script>alert(1)</script>"), InlineData("1e309 ft"), InlineData("-26 ft"), InlineData("26"), InlineData("26 kg"), InlineData("12'6\" m"), InlineData("ω\"\\\u0001{}[]")]
    public async Task Whatever_is_typed_is_kept_as_typed_and_told_in_words(string typed)
    {
        StoredJob job = await desk.JobAsync();
        JobSession window = await desk.WindowAsync(job.Id);
        Assert.True(await window.EditAsync([Edit.Typed(Width, typed)], "width"));
        await window.Settled;
        Assert.Equal(typed, Typed(window.Document.Text, Width));
        Fault fault = Assert.Single(window.Faults);
        Assert.Equal(Width, fault.Pointer);
        Assert.NotEmpty(fault.Right);
    }

    [Fact]
    public async Task A_job_whose_weather_is_not_in_the_library_says_so_at_its_field()
    {
        StoredJob job = await desk.JobAsync("""{ "glazewright": 1, "site": { "weather": { "file": "../../etc/passwd" } }, "houses": [{ "width": "26 ft", "length": "96 ft" }] }""");
        JobSession window = await desk.WindowAsync(job.Id);
        Assert.All(window.Faults, f => Assert.Equal("/site/weather/file", f.Pointer));
        Assert.Null(window.View!.Light);
    }

    [Fact]
    public async Task There_is_no_window_on_a_job_that_is_not_there()
    {
        using JobSession window = desk.Window();
        Assert.False(await window.OpenAsync("../jobs.db"));
        Assert.Null(window.View);
        Assert.False(await window.EditAsync([Edit.Typed(Width, "30 ft")], "width"));
    }

    // The second window's memory was its own: a day opened in it ran the whole year again, though the first had run it.
    [Fact]
    public async Task What_one_window_computed_the_next_on_the_same_job_has_and_it_goes_with_the_last()
    {
        StoredJob job = await desk.JobAsync();
        JobSession first = await desk.WindowAsync(job.Id);
        List<string> computed = [];
        JobSession second = desk.Window();
        second.Told += stage => computed.Add(stage.Stage);
        Assert.True(await second.OpenAsync(job.Id));
        await second.Settled;
        Assert.NotNull(second.View!.Light);
        Assert.Empty(computed);
        first.Dispose();
        second.Dispose();

        JobSession third = desk.Window();
        third.Told += stage => computed.Add(stage.Stage);
        Assert.True(await third.OpenAsync(job.Id));
        await third.Settled;
        third.Dispose();
        Assert.Contains("duty", computed);
    }

    private static string Typed(string? text, string pointer) => Assert.IsType<TextNode>(JobDocument.Read(text!).Find(pointer)).Text;

    // Members in the order of their names, without comments and space.
    private static string Plain(string text) => Of(JobDocument.Read(text).Root);

    private static string Of(Node node) => node switch
    {
        ObjectNode o => "{" + string.Join(",", o.Members.OrderBy(m => m.Key, StringComparer.Ordinal).Select(m => m.Key + ":" + Of(m.Value))) + "}",
        ListNode list => "[" + string.Join(",", list.Items.Select(Of)) + "]",
        TextNode t => "'" + t.Text,
        NumberNode n => n.Typed,
        FlagNode f => f.IsTrue ? "true" : "false",
        _ => "null",
    };
}
