using Glazewright.Design.Contracts;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Year;

namespace Glazewright.Papers.Days;

/// <summary>One house's year, twice.</summary>
/// <param name="House">House id.</param>
/// <param name="Before">The first year.</param>
/// <param name="After">The second.</param>
/// <param name="Rows">What they come to.</param>
/// <param name="Notes">What else is otherwise, so that the table is not misread.</param>
public sealed record ComparedHouse(string House, YearResult Before, YearResult After, EqList<ComparedValue> Rows, EqList<string> Notes)
{
    /// <summary>Runs both years.</summary>
    /// <param name="house">House id.</param>
    /// <param name="before">The first job.</param>
    /// <param name="after">The second, on the same weather year.</param>
    /// <param name="plants">The jobs are two: what their houses lose, hold and cost is compared too.</param>
    public static ComparedHouse Of(string house, Evaluation before, Evaluation after, bool plants)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        YearResult one = before.Year(house).Value, two = after.Year(house).Value;
        EqList<ComparedValue> years = YearComparison.Of(one, two);
        if (!plants)
        {
            return new ComparedHouse(house, one, two, years, []);
        }

        Design.Brief.House here = before.Job.Houses.First(h => h.Id == house), there = after.Job.Houses.First(h => h.Id == house);
        double HeatW(Evaluation e) => e.Plant(house).Value is var p ? (p.Heat?.Choice.Heaters.Sum(h => h.OutputW) ?? 0) + p.BenchPipeW : 0;
        double FansM3PerS(Evaluation e) => e.Plant(house).Value.FansOnDesignDay?.FlowM3PerS ?? 0;
        double floorM2 = before.Form.Value.Building(house).FloorAreaM2, otherM2 = after.Form.Value.Building(house).FloorAreaM2;
        EqList<ComparedValue> rows =
        [
            new("floor", "Floor", Unit.SquareMetre, floorM2, otherM2, null),
            new("heat-loss", "Heat lost on the 99.6 % night, curtain open", Unit.Watt, before.Duty(house).Value.HeatLossW, after.Duty(house).Value.HeatLossW, false),
            new("heat-output", "Heat of all heaters and pipe", Unit.Watt, HeatW(before), HeatW(after), null),
            new("fan-flow", "Air of the fans on the design day", Unit.CubicMetrePerSecond, FansM3PerS(before), FansM3PerS(after), null),
            new("direct-cost", "Direct cost of the whole job", Unit.Dollar, before.Price.Value.DirectCost, after.Price.Value.DirectCost, false),
            .. years,
        ];
        List<string> notes = [];
        if (!here.Schedule.Equals(there.Schedule))
        {
            notes.Add("The crop schedules differ: each year is held against its own wish.");
        }

        if (before.Job.Band != after.Job.Band)
        {
            notes.Add("The bands of what counts as held differ.");
        }

        if (Math.Abs(floorM2 - otherM2) > 0.005 * floorM2)
        {
            notes.Add("The floors differ: energy, water and cost are of the whole house, not of a square metre.");
        }

        if (before.Job.Tariffs != after.Job.Tariffs)
        {
            notes.Add("The tariffs differ: cost is counted at each job's own.");
        }

        return new ComparedHouse(house, one, two, rows, [.. notes]);
    }
}

/// <summary>A compared value as it is read.</summary>
/// <param name="Before">The first, with its unit.</param>
/// <param name="After">The second.</param>
/// <param name="Change">The second less the first; empty where they read alike.</param>
/// <param name="Verdict">better, worse, or empty.</param>
public sealed record ComparedWords(string Before, string After, string Change, string Verdict)
{
    /// <summary>Words it.</summary>
    /// <param name="row">The value.</param>
    /// <param name="units">Units of the reader.</param>
    public static ComparedWords Of(ComparedValue row, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(row);
        Shown before = Shown.Of(row.BeforeValue, row.Unit, units), after = Shown.Of(row.AfterValue, row.Unit, units);
        if (row.OnlyIn > 0)
        {
            return new ComparedWords(row.OnlyIn == 1 ? before.Text : "not there", row.OnlyIn == 2 ? after.Text : "not there", "", "");
        }

        bool same = before.Text == after.Text;
        string sign = row.AfterValue > row.BeforeValue ? "+" : "";
        string change = same ? "" : sign + Shown.Of(row.AfterValue - row.BeforeValue, row.Unit == Unit.Celsius ? Unit.Kelvin : row.Unit, units).Text;
        return new ComparedWords(before.Text, after.Text, change, same || row.MoreIsBetter is not { } more ? "" : more == row.AfterValue > row.BeforeValue ? "better" : "worse");
    }
}
