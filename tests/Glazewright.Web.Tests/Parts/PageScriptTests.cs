using Glazewright.Web.Parts;
using Microsoft.JSInterop;

namespace Glazewright.Web.Tests.Parts;

/// <summary>A part of a page that is left while it draws closes nothing but itself; a mistake of a script that is still there is not hidden.</summary>
public class PageScriptTests
{
    [Fact]
    public async Task A_part_left_while_its_script_loads_is_not_called_any_more()
    {
        SlowBrowser browser = new();
        PageScript script = new(browser);
        Task<bool> loading = script.LoadAsync("scene.js");
        await script.DisposeAsync();
        browser.Loaded.SetResult(browser.Module);
        Assert.False(await loading);
        Assert.True(browser.Module.IsDisposed);
        Assert.False(await script.CallAsync("show"));
        Assert.Null(await script.AskAsync("begin"));
        Assert.Empty(browser.Module.Called);
    }

    [Fact]
    public async Task A_part_left_between_two_calls_does_nothing_more()
    {
        (PageScript script, SlowBrowser browser) = await OpenAsync();
        Assert.True(await script.CallAsync("sun", 1, 2));
        await script.DisposeAsync();
        Assert.False(await script.CallAsync("lay"));
        Assert.Equal(["sun"], browser.Module.Called);
    }

    public static TheoryData<Exception> Late => [new JSException("the element is gone"), new ObjectDisposedException("module"), new TaskCanceledException(), new JSDisconnectedException("closed")];

    [Theory]
    [MemberData(nameof(Late))]
    public async Task What_fails_as_the_part_was_left_fails_without_a_word(Exception why)
    {
        (PageScript script, SlowBrowser browser) = await OpenAsync();
        browser.Module.Held = new TaskCompletionSource();
        Task<bool> drawing = script.CallAsync("show");
        await script.DisposeAsync();
        browser.Module.Held.SetException(why);
        Assert.False(await drawing);
    }

    [Fact]
    public async Task A_mistake_of_a_script_that_is_there_is_told()
    {
        (PageScript script, SlowBrowser browser) = await OpenAsync();
        browser.Module.Held = new TaskCompletionSource();
        Task<bool> drawing = script.CallAsync("show");
        browser.Module.Held.SetException(new JSException("show is no function"));
        await Assert.ThrowsAsync<JSException>(() => drawing);
    }

    [Fact]
    public async Task A_question_is_answered()
    {
        (PageScript script, SlowBrowser browser) = await OpenAsync();
        browser.Module.Answer = true;
        Assert.True(await script.AskAsync("begin"));
        browser.Module.Answer = false;
        Assert.False(await script.AskAsync("begin"));
    }

    private static async Task<(PageScript Script, SlowBrowser Browser)> OpenAsync()
    {
        SlowBrowser browser = new();
        browser.Loaded.SetResult(browser.Module);
        PageScript script = new(browser);
        Assert.True(await script.LoadAsync("touch.js"));
        return (script, browser);
    }

    private sealed class SlowBrowser : IJSRuntime
    {
        public TaskCompletionSource<IJSObjectReference> Loaded { get; } = new();

        public Module Module { get; } = new();

        public async ValueTask<TValue> InvokeAsync<TValue>(string identifier, object?[]? args) => (TValue)await Loaded.Task;

        public ValueTask<TValue> InvokeAsync<TValue>(string identifier, CancellationToken cancellationToken, object?[]? args) => InvokeAsync<TValue>(identifier, args);
    }

    private sealed class Module : IJSObjectReference
    {
        public List<string> Called { get; } = [];

        public bool IsDisposed { get; private set; }

        public bool Answer { get; set; }

        public TaskCompletionSource? Held { get; set; }

        public async ValueTask<TValue> InvokeAsync<TValue>(string identifier, object?[]? args)
        {
            ObjectDisposedException.ThrowIf(IsDisposed, this);
            Called.Add(identifier);
            await (Held?.Task ?? Task.CompletedTask);
            return Answer is TValue answer ? answer : default!;
        }

        public ValueTask<TValue> InvokeAsync<TValue>(string identifier, CancellationToken cancellationToken, object?[]? args) => InvokeAsync<TValue>(identifier, args);

        public ValueTask DisposeAsync()
        {
            IsDisposed = true;
            return ValueTask.CompletedTask;
        }
    }
}
