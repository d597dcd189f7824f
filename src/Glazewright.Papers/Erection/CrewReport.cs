using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Sheets;

namespace Glazewright.Papers.Erection;

/// <summary>What the crew takes along: safety first, then house by house a page for setting out, standing the frame, covering and hanging, in large type with room to tick and sign.</summary>
public static class CrewReport
{
    /// <summary>The report.</summary>
    /// <param name="source">What the papers are made from.</param>
    public static Report Of(PaperSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        string name = source.Job.Name.Length > 0 ? source.Job.Name : "Unnamed job";
        List<Block> blocks = [new Block.Opening(name, "For the crew", [source.Job.Site.Place]), .. Safety(source)];
        foreach (HouseResults house in source.Houses)
        {
            blocks.AddRange(SettingOut.Of(source, house));
            blocks.AddRange(FrameStanding.Of(source, house));
            blocks.AddRange(Covering.Of(source, house));
            blocks.AddRange(Hanging.Of(source, house));
        }

        blocks.AddRange(
        [
            new Block.NewPage { Always = true },
            new Block.Heading(1, "Left to do"),
            new Block.TableOf(Blank("What", "Who", "Done", 16)),
        ]);
        return new Report(name + ": for the crew", "Erection pages", name + " · preliminary, for the crew", PaperDate.Of(source.Job), PaperDate.Size(source.Job), blocks) { TypeFactor = 1.2 };
    }

    /// <summary>A heading that opens a page of a house.</summary>
    internal static IEnumerable<Block> Page(HouseResults house, string what) => [new Block.NewPage { Always = true }, new Block.Heading(1, $"House {house.Form.Id}: {what}")];

    /// <summary>Steps with room to sign.</summary>
    internal static Block Steps(IEnumerable<string> steps) => new Block.TableOf(new Table(
        [new("", 8), new("Step", 118), new("By", 24), new("Date", 24)],
        [.. steps.Select((s, i) => (IReadOnlyList<string>)[FormattableString.Invariant($"{i + 1}"), s, "", ""])]));

    private static Table Blank(string what, string who, string done, int rows) => new(
        [new("", 12), new(what, 106), new(who, 30), new(done, 26)],
        [.. Enumerable.Range(1, rows).Select(i => (IReadOnlyList<string>)[FormattableString.Invariant($"{i}"), "", "", ""])]);

    private static IEnumerable<Block> Safety(PaperSource source)
    {
        yield return new Block.Heading(1, "If someone is hurt");
        yield return new Block.TableOf(new Table(
            [new("", 60), new("Write in before work starts", 114)],
            [["Emergency number", ""], ["This address, gate to meet at", ""], ["Nearest hospital", ""], ["First-aider on site", ""], ["Utilities located, ticket", ""]]));
        yield return new Block.TableOf(new Table(
            [new("What happened", 60), new("Do at once", 114)],
            [
                ["Fall", "Do not move them unless in danger. Call. Hanging in a harness: get them down within minutes."],
                ["Shock", "Power off before touching. Call."],
                .. source.Houses.Any(h => h.Plant.Fog is not null) ? (IReadOnlyList<string>[])[["Jet of a fog line", "Hospital at once, however small the wound looks; say \"high-pressure injection\"."]] : [],
                ["Headache, dizzy near burners", "Everyone out, air in, burners off at the gas cock. Call: carbon monoxide."],
            ]));
        yield return new Block.Heading(1, "Before anyone climbs");
        yield return new Block.Bullets(
        [
            "Utilities located before digging; trenches shored or sloped.",
            "Nobody stands or kneels on sheet: it does not carry. Boards across purlins, harness tied to the frame once it is braced.",
            "Fall protection from the height the local rule sets (6 ft in US construction work, 29 CFR 1926.501, from memory).",
            "Wind: the competent person on site sets the limit and writes it here: ________. Sheets act as sails; common practice stops handling them at about 20 mph (9 m/s) and lifting of frames before that.",
            "Braced before sheeted, always. No bay is left for the night without bracing.",
            "Cutting zinc-coated tube: eyes, ears, lungs. No abrasive wheel on panels. Swarf out of the flutes.",
            "Power tools on ground-fault protection; no work on live equipment.",
        ]);
        yield return new Block.Caution("Preliminary", SheetStyle.Preliminary);
    }
}
