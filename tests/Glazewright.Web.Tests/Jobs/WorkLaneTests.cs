using System.Collections.Concurrent;
using Glazewright.Web.Jobs;

namespace Glazewright.Web.Tests.Jobs;

public class WorkLaneTests
{
    [Fact]
    public async Task Loops_inside_the_work_stay_on_its_threads_and_what_follows_does_not()
    {
        using BehindLane lane = new();
        ConcurrentBag<string?> names = [];
        await lane.RunAsync(
            () =>
            {
                Parallel.For(0, 200, new ParallelOptions { TaskScheduler = TaskScheduler.Current }, _ => names.Add(Thread.CurrentThread.Name));
                return true;
            },
            CancellationToken.None);
        Assert.Equal(200, names.Count);
        Assert.All(names, name => Assert.Equal("behind", name));
        Assert.NotEqual("behind", Thread.CurrentThread.Name);
    }

    [Fact]
    public async Task What_is_cancelled_before_its_turn_is_not_begun_and_a_failure_does_not_stop_the_lane()
    {
        using BehindLane lane = new();
        using ManualResetEventSlim hold = new();
        using CancellationTokenSource cancel = new();
        Task<bool>[] busy = [.. Enumerable.Range(0, lane.MaximumConcurrencyLevel).Select(_ => lane.RunAsync(() => hold.Wait(20_000), CancellationToken.None))];
        bool isBegun = false;
        Task<bool> late = lane.RunAsync(() => isBegun = true, cancel.Token);
        await cancel.CancelAsync();
        hold.Set();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => late);
        Assert.False(isBegun);
        Assert.All(await Task.WhenAll(busy), Assert.True);
        await Assert.ThrowsAsync<InvalidOperationException>(() => lane.RunAsync<bool>(() => throw new InvalidOperationException(), CancellationToken.None));
        Assert.Equal(7, await lane.RunAsync(() => 7, CancellationToken.None));
    }
}
