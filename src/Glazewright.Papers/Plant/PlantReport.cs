using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Plant;

/// <summary>The climate plant in one report, for the grower and for the trades who price and connect it.</summary>
public static class PlantReport
{
    /// <summary>The report: a chapter a house.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <returns>The report; null for a job without houses.</returns>
    public static Report? Of(PaperSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        if (source.Houses.Count == 0)
        {
            return null;
        }

        string name = source.Job.Name.Length > 0 ? source.Job.Name : "Unnamed job";
        List<Block> blocks =
        [
            new Block.Opening(name, "The climate plant", ["Design days, the air's way through the house, equipment and services", "Predicted under the stated conditions; not warranted"]),
        ];
        foreach (HouseResults house in source.Houses)
        {
            if (house != source.Houses[0])
            {
                blocks.Add(new Block.NewPage());
            }

            blocks.Add(new Block.Heading(1, $"House {house.Form.Id}"));
            blocks.AddRange(AirChapter.Of(source, house));
            blocks.AddRange(BehaviourChapter.Of(source, house));
            blocks.AddRange(ChoicesChapter.Of(source, house));
        }

        blocks.AddRange(ServicesChapter.Of(source));

        return new Report(
            name + ": climate plant", "Design days, air, equipment and services of the climate plant", name + " · climate plant", PaperDate.Of(source.Job), PaperDate.Size(source.Job), blocks);
    }
}
