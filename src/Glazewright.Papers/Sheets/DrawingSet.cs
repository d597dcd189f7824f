using System.Collections.Concurrent;
using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Sets;
using static Glazewright.Papers.Sets.PaperReader;

namespace Glazewright.Papers.Sheets;

/// <summary>A sheet with its white list.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Readers">Whose sets it is in; the contractor has all.</param>
public sealed record DrawnSheet(Sheet Sheet, EqList<PaperReader> Readers);

/// <summary>The drawing set: which sheets there are, in which order, under which numbers.</summary>
/// <remarks>
/// A number is the letter of the discipline and a running number: G general, A architecture, S structure, M climate plant, E electric and controls, P piping.
/// Letters as is usual in US practice (National CAD Standard, from memory); the sequence is our own.
/// </remarks>
public static class DrawingSet
{
    private const int General = 3;

    /// <summary>All sheets.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <returns>The cover, the range, the site, the list of drawings, then house by house.</returns>
    public static IReadOnlyList<DrawnSheet> Of(PaperSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        List<Planned> plan =
        [
            new('G', PaperReaders.All, n => CoverSheet.Draw(source, n)),
            new('G', PaperReaders.All, n => RangePlan.Draw(source, n)),
            new('G', [Grower, Reviewer, Crew, Trades], n => SitePlan.Draw(source, n)),
        ];
        if (source.Services.Electric.Count > 0)
        {
            plan.Add(new('E', [Reviewer, Controls, Trades], n => ServiceSheets.Power(source, n)));
        }

        if (source.Services.Plan.Pieces.Count > 0)
        {
            plan.Add(new('P', [Reviewer, Crew, Trades], n => PipeSheet.Draw(source, n)));
        }

        foreach (HouseResults house in source.Houses)
        {
            plan.AddRange(OfHouse(source, house));
        }

        Dictionary<char, int> last = new() { ['G'] = -1 };
        string[] numbers = [.. plan.Select(p => Next(last, p.Letter))];

        // Sheets know nothing of each other: they are drawn side by side, and lie in their order.
        Sheet[] sheets = new Sheet[plan.Count];
        Parallel.ForEach(
            Partitioner.Create(Enumerable.Range(0, sheets.Length), EnumerablePartitionerOptions.NoBuffering),
            new ParallelOptions { TaskScheduler = TaskScheduler.Current },
            i => sheets[i] = plan[i].Draw(numbers[i]));
        DrawnSheet[] drawn = [.. plan.Zip(sheets, (p, s) => new DrawnSheet(s, p.Readers))];

        // The list is drawn last, as it must know all the others, and closes the general sheets.
        IReadOnlyList<Sheet> lists = DrawingList.Draw(source, [.. numbers.Zip(drawn)], () => Next(last, 'G'));
        return [.. drawn.Take(General), .. lists.Select(s => new DrawnSheet(s, PaperReaders.All)), .. drawn.Skip(General)];
    }

    private static IEnumerable<Planned> OfHouse(PaperSource source, HouseResults house)
    {
        yield return new('A', [Grower, Reviewer, Crew, Controls, Trades], n => HousePlan.Draw(source, house, n, Following(n)));
        yield return new('A', [Grower, Reviewer, Crew], n => HouseSection.Draw(source, house, n));
        yield return new('A', [Grower, Reviewer, Crew], n => ElevationSheet.Draw(source, house, n));
        yield return new('A', [Reviewer, Shop, Crew], n => CoverSheets.Roof(source, house, n));
        yield return new('A', [Reviewer, Shop, Crew], n => CoverSheets.Sides(source, house, n));
        yield return new('A', [Reviewer, Shop, Crew], n => CoverSheets.Ends(source, house, n));
        yield return new('A', [Grower, Reviewer, Shop, Crew], n => OpeningSchedule.Draw(source, house, n));
        yield return new('S', [Reviewer, Crew, Trades], n => FoundationPlan.Draw(source, house, n));
        yield return new('S', [Reviewer, Shop, Crew], n => FramingPlan.Draw(source, house, n));
        yield return new('S', [Reviewer, Shop, Crew], n => TypicalFrame.Draw(source, house, n));
        yield return new('S', [Reviewer, Shop, Crew], n => DetailSheet.Draw(source, house, n));
        yield return new('S', [Reviewer, Shop, Crew], n => WallSheet.Others(source, house, n));
        if (house.Layout.Placed.Any(p => p.Face != FaceName.Floor))
        {
            yield return new('M', [Reviewer, Shop, Crew, Controls, Trades], n => WallSheet.Air(source, house, n));
        }

        yield return new('M', [Grower, Crew, Controls, Trades], n => PlantPlan.Draw(source, house, n));
        yield return new('M', [Reviewer, Controls, Trades], n => DesignDaySheet.Draw(source, house, n));
        yield return new('M', [Grower, Controls], n => YearSheet.Draw(source, house, n));
        if (source.Services.Electric.Any(l => l.House == house.Form.Id))
        {
            yield return new('E', [Reviewer, Controls, Trades], n => ServiceSheets.Electric(source, house, n));
            yield return new('P', [Reviewer, Controls, Trades], n => ServiceSheets.Piping(source, house, n));
        }
    }

    private static string Next(Dictionary<char, int> last, char letter)
    {
        last[letter] = last.GetValueOrDefault(letter) + 1;
        return string.Create(CultureInfo.InvariantCulture, $"{letter}-{last[letter]}");
    }

    // The section follows its floor plan.
    private static string Following(string number) => string.Create(CultureInfo.InvariantCulture, $"{number[..2]}{int.Parse(number[2..], CultureInfo.InvariantCulture) + 1}");

    private readonly record struct Planned(char Letter, EqList<PaperReader> Readers, Func<string, Sheet> Draw);
}
