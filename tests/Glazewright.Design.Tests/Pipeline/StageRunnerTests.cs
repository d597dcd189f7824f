using Glazewright.Design.Contracts;
using Glazewright.Design.Pipeline;

namespace Glazewright.Design.Tests.Pipeline;

public class StageRunnerTests
{
    private sealed record Input(double WidthM, string Name);

    private sealed record Output(EqList<double> ValuesM);

    [Fact]
    public void Equal_input_runs_once_and_another_runs_again()
    {
        StageRunner runner = new();
        Run(runner, new Input(1, "a"));
        Run(runner, new Input(1, "a"));
        Assert.Equal(1, runner.Runs["double"]);
        Run(runner, new Input(1.0000000001, "a"));
        Assert.Equal(2, runner.Runs["double"]);
    }

    [Fact]
    public void Many_callers_of_one_key_wait_for_one_run()
    {
        StageRunner runner = new();
        Parallel.For(0, 32, _ => Run(runner, new Input(2, "b")));
        Assert.Equal(1, runner.Runs["double"]);
    }

    [Fact]
    public void A_failure_is_not_kept()
    {
        StageRunner runner = new();
        bool fail = true;
        Output Compute(Input i, CancellationToken _) => fail ? throw new OperationCanceledException() : new Output([i.WidthM]);
        Input input = new(3, "c");
        Assert.Throws<OperationCanceledException>(() => runner.Run("x", 1, "", input, [], Compute, CancellationToken.None));
        fail = false;
        Assert.Equal([3.0], runner.Run("x", 1, "", input, [], Compute, CancellationToken.None).Value.ValuesM);
    }

    // A page that is left stops what it began; another page that waits for the same result must still get it.
    [Fact]
    public async Task Who_waits_for_a_run_that_its_starter_stops_gets_the_result_by_a_run_of_its_own()
    {
        StageRunner runner = new();
        using CancellationTokenSource starter = new();
        using ManualResetEventSlim begun = new();
        Output Compute(Input i, CancellationToken cancel)
        {
            if (cancel == starter.Token)
            {
                begun.Set();
                cancel.WaitHandle.WaitOne();
                cancel.ThrowIfCancellationRequested();
            }

            return new Output([i.WidthM]);
        }

        Input input = new(4, "d");
        Task stopped = Task.Run(() => runner.Run("x", 1, "", input, [], Compute, starter.Token));
        begun.Wait(TestContext.Current.CancellationToken);
        Task<Keyed<Output>> waits = Task.Run(() => runner.Run("x", 1, "", input, [], Compute, CancellationToken.None));
        await starter.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => stopped);
        Assert.Equal([4.0], (await waits).Value.ValuesM);
    }

    [Fact]
    public void The_memory_is_bounded_and_forgetting_changes_nothing()
    {
        StageRunner small = new(capacity: 1);
        StageHash first = Run(small, new Input(1, "a")).Hash;
        Run(small, new Input(2, "a"));
        Run(small, new Input(3, "a"));
        Assert.Equal(first, Run(small, new Input(1, "a")).Hash);
        Assert.Equal(4, small.Runs["double"]);
    }

    private static Keyed<Output> Run(StageRunner runner, Input input) =>
        runner.Run("double", 1, "", input, [], (i, _) => new Output([i.WidthM, 2 * i.WidthM]), CancellationToken.None);
}
