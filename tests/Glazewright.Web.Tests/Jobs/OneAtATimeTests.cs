using Glazewright.Web.Jobs;

namespace Glazewright.Web.Tests.Jobs;

/// <summary>The newest piece of work wins; one that was stopped or overtaken says nothing more.</summary>
public class OneAtATimeTests
{
    [Fact]
    public async Task The_newest_wins_and_the_one_before_is_cancelled()
    {
        OneAtATime piece = new();
        Task<OneAtATime.Turn> first = Begin(piece, 1, async turn => await Task.Delay(Timeout.Infinite, turn.Cancel));
        OneAtATime.Turn old = await first;
        Task ended = Ended(piece);
        OneAtATime.Turn now = await Begin(piece, 2, _ => Task.CompletedTask);
        await ended;
        Assert.True(old.Cancel.IsCancellationRequested);
        Assert.False(old.IfNewest(() => Assert.Fail("it was overtaken")));
        Assert.False(now.Cancel.IsCancellationRequested);
        Assert.Equal(2, piece.Version);
        Assert.Equal("", piece.View.Failure);
    }

    [Fact]
    public async Task What_is_stopped_says_nothing_more()
    {
        OneAtATime piece = new();
        OneAtATime.Turn turn = await Begin(piece, 7, async t => await Task.Delay(Timeout.Infinite, t.Cancel));
        turn.Say("Frames");
        Assert.Equal("Frames", piece.View.Words);
        Assert.False(piece.IsStale(7));
        Assert.True(piece.IsStale(8));
        piece.Stop();
        turn.Say("More frames");
        Assert.False(piece.View.IsRunning);
        Assert.False(piece.IsStale(8));
    }

    [Fact]
    public async Task A_mistake_is_told_and_ends_it()
    {
        OneAtATime piece = new();
        Task ended = Ended(piece);
        await Begin(piece, 1, _ => throw new InvalidOperationException("no such thing"));
        await ended;
        Assert.False(piece.View.IsRunning);
        Assert.Contains("no such thing", piece.View.Failure, StringComparison.Ordinal);
    }

    private static async Task<OneAtATime.Turn> Begin(OneAtATime piece, int version, Func<OneAtATime.Turn, Task> work)
    {
        TaskCompletionSource<OneAtATime.Turn> begun = new(TaskCreationOptions.RunContinuationsAsynchronously);
        piece.Begin(version, papers: false, turn =>
        {
            begun.SetResult(turn);
            return work(turn);
        });
        return await begun.Task;
    }

    private static Task Ended(OneAtATime piece)
    {
        TaskCompletionSource ended = new(TaskCreationOptions.RunContinuationsAsynchronously);
        piece.Changed += () =>
        {
            if (!piece.View.IsRunning)
            {
                ended.TrySetResult();
            }
        };
        return ended.Task;
    }
}
