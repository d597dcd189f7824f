using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Tests.Contracts;

namespace Glazewright.Design.Tests.Price;

/// <summary>When the payments of a quote are due.</summary>
public class DrawsDueTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(9)]
    public void The_first_is_due_at_the_signature_and_the_last_at_the_hand_over(int draws)
    {
        EqList<string> due = Pricing.UsualDue(draws);
        Assert.Equal(draws, due.Count);
        Assert.StartsWith("signing", due[0], StringComparison.Ordinal);
        Assert.True(draws == 1 || due[^1] == "start-up and hand-over");
        Assert.True(draws > 5 || due.Distinct().Count() == draws);
    }

    [Fact]
    public void The_job_may_say_its_own_and_as_many_as_its_draws()
    {
        const string Usual = "\"draws\": [\"20 %\", \"25 %\", \"25 %\", \"20 %\", \"10 %\"]";
        string text = File.ReadAllText(Example("two-ridge-herb-yard.json"));
        Assert.Contains(Usual, text, StringComparison.Ordinal);
        ReadOutcome<Job> With(string due) => JobReader.Read(JobDocument.Read(text.Replace(Usual, $"\"draws\": [\"40 %\", \"60 %\"], \"due\": \"{due}\"", StringComparison.Ordinal)));
        Assert.Equal(["order", "keys"], With("order; keys").Value!.Pricing.DrawsDue);
        Assert.Equal("/pricing/due", Assert.Single(With("order; frame; keys").Faults).Pointer);
    }

    private static string Example(string name)
    {
        DirectoryInfo at = new(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(at.FullName, "Glazewright.slnx")))
        {
            at = at.Parent!;
        }

        return Path.Combine(at.FullName, "examples", name);
    }
}
