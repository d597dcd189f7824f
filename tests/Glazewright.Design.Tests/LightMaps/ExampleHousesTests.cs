using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Form;
using Glazewright.Design.GainTables;
using Glazewright.Design.Layout;
using Glazewright.Design.LightMaps;
using Glazewright.Design.Tests.Brief;
using Glazewright.Design.Tests.GainTables;

namespace Glazewright.Design.Tests.LightMaps;

/// <summary>Every house of the example jobs goes through both light stages, with its doors, pads, links and neighbours.</summary>
public class ExampleHousesTests
{
    [Theory]
    [InlineData(Examples.Demo)]
    [InlineData("bayou-seedling-house.json")]
    [InlineData("polder-salad-house.json")]
    public void Houses_of_an_example(string file)
    {
        Job job = Examples.Job(file);
        FormResult form = LightJobs.Form(job);
        foreach (House house in job.Houses)
        {
            GainTable gains = LightJobs.Gains(GainInput.From(job, house.Id, CatalogueReader.Generic), form, LightJobs.Body(form));
            Assert.All(gains.CurtainOpen.Beam.Concat(gains.CurtainDrawn.Beam), r => Assert.Equal(1, r.ShareSum, 1e-9));
            LightMap map = LightMapStage.Run(
                LightInput.From(job, house.Id), form, LightJobs.Body(form),
                new LayoutResult(house.Id, [], 0, Design.Contracts.StageReport.Empty), LightJobs.Weather, CancellationToken.None);
            for (int m = 0; m < 12; m++)
            {
                Assert.InRange(map.Months[m].MeanMolPerM2Day, 0.15 * map.OutsideMolPerM2Day[m], map.OutsideMolPerM2Day[m]);
            }

            TestContext.Current.TestOutputHelper?.WriteLine($"{house.Id}: "
                + string.Join(" ", map.Months.Select((x, i) => FormattableString.Invariant($"{x.MeanMolPerM2Day:0.0}/{map.OutsideMolPerM2Day[i]:0.0}")))
                + " | " + string.Join("; ", gains.Report.Figures.Select(f => FormattableString.Invariant($"{f.Id} {f.Value:0.000}"))));
        }
    }
}
