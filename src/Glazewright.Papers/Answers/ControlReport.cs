using System.Globalization;
using Glazewright.Design.Program;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Answers;

/// <summary>The control program of every house in plain words, for technician and grower.</summary>
public static class ControlReport
{
    /// <summary>The report.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <returns>One chapter a house.</returns>
    public static Report Of(PaperSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        string name = source.Job.Name.Length > 0 ? source.Job.Name : "Unnamed job";
        List<Block> blocks =
        [
            new Block.Opening(name, "How the houses are controlled", []),
            new Block.Caution(
                "Not a safety function",
                "This program must pass commissioning with all hard-wired limits in place. High limits, flame safeguards, low-water cut-offs and emergency stops are wired outside it, by licensed trades; lock out before reaching into fans or opening a fog line."),
            new Block.Paragraph(source.Job.Units == Design.Contracts.UnitSystem.Us
                ? "The control box counts in °C, m/s and Pa; here its numbers stand in °F, mph and inches of water. The program's file keeps the box's own."
                : "Temperatures are in °C and speeds in m/s, as the control box counts them.", Quiet: true),
        ];
        foreach (HouseResults house in source.Houses)
        {
            blocks.Add(new Block.Heading(1, source.Houses.Count > 1 ? $"{house.House.Name} ({house.House.Id})" : house.House.Name));
            foreach (NarrativePart part in ControlNarrative.Of(house.Program, source.Job.Units))
            {
                blocks.Add(new Block.Heading(2, part.Heading));
                blocks.Add(new Block.Bullets([.. part.Lines]));
            }

            blocks.Add(new Block.Heading(2, "What each machine did in the simulated year"));
            blocks.Add(new Block.TableOf(new Table(
                [new("Machine", 60), new("Hours", 25, Along.End), new("Starts", 25, Along.End)],
                [.. house.Year.Motors.Select(m => (IReadOnlyList<string>)[m.Actuator, Count(m.RuntimeH), Count(m.Starts)])])));
            blocks.Add(new Block.Paragraph("Hours on; of louver, vents and curtain the hours their motors travel. The program was run minute by minute through the job's weather year; real clouds start motors more often.", Quiet: true));
            blocks.AddRange(YearCarpets.Of(house.Year, source.Job.Units));
        }

        return new Report(
            name + ": control",
            "The control program in plain words",
            name + " · control program, to be commissioned",
            PaperDate.Of(source.Job),
            PaperDate.Size(source.Job),
            blocks);
    }

    private static string Count(double value) => Math.Round(value).ToString("N0", CultureInfo.InvariantCulture);
}
