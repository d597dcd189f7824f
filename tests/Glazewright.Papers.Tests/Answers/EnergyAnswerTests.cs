using Glazewright.Design.Contracts;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Tests.Sets;

namespace Glazewright.Papers.Tests.Answers;

/// <summary>What running costs, and what of it is the demand charge.</summary>
public class EnergyAnswerTests
{
    private static QuestionAnswered Asked(double dollarsPerKilowatt)
    {
        PaperSource source = SampleSource.Make(houses: 2);
        source = source with
        {
            Job = source.Job with { Tariffs = source.Job.Tariffs with { DemandPerWattMonth = dollarsPerKilowatt / 1000 } },
            Houses = [.. source.Houses.Select((h, i) => h with { Year = h.Year with { Months = h.Year.Months.Select((m, at) => m with { PeakPowerW = i == 0 ? 10_000 : at == 6 ? 5_000 : 0 }).ToEqList() } })],
        };
        return Assert.IsType<QuestionAnswered>(EnergyAnswer.Of(source));
    }

    // By hand: twelve months of 10 kW and one of 5 kW more, at 8 $/kW: 125 kW months, $1,000; July 15 kW, $120.
    [Fact]
    public void The_demand_charge_is_each_month_s_peak_at_its_price()
    {
        QuestionAnswered answer = Asked(8);
        Assert.Contains("demand charge is $1,000 of it", answer.Short, StringComparison.Ordinal);
        BigFigure figure = answer.Blocks.OfType<Block.Figures>().Single().Items.Single(f => f.Label == "Demand charge a year");
        Assert.Equal("$1,000", figure.Value);
        Assert.Contains("July", figure.Limit, StringComparison.Ordinal);
        Assert.Contains("$120", figure.Limit, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tariff_without_one_says_nothing_of_it()
    {
        QuestionAnswered answer = Asked(0);
        Assert.DoesNotContain("demand charge", answer.Short, StringComparison.Ordinal);
        Assert.DoesNotContain(answer.Blocks.OfType<Block.Figures>().Single().Items, f => f.Label == "Demand charge a year");
    }
}
