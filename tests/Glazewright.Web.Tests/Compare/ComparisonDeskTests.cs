using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Papers.Subjects;
using Glazewright.Store.Jobs;
using Glazewright.Web.Compare;
using Glazewright.Web.Jobs;
using Glazewright.Web.Tests.Jobs;

namespace Glazewright.Web.Tests.Compare;

[Trait("Category", "Slow")]
public sealed class ComparisonDeskTests(Desk desk) : IClassFixture<Desk>
{
    private const string Small = """{ "glazewright": 1, "name": "Yard", "site": { "weather": { "file": "demo-continental-42N.epw.gz" } }, "houses": [{ "id": "A", "width": "26 ft", "length": "48 ft" }] }""";

    [Fact]
    public async Task Two_versions_are_computed_whole_and_their_differences_are_those_of_their_figures()
    {
        StoredJob job = await desk.JobAsync(Small);
        await desk.Store.SaveAsync(job.Id, 1, [Edit.Typed("/houses/0/width", "30 ft")], "width", "test");
        (ComparisonDesk two, JobSession session) = Two();
        using (session)
        using (two)
        {
            Assert.True(await two.LoadAsync(new SideWish(job.Id, 1), new SideWish(job.Id, null)));
            await two.Settled;
            ComparisonView view = two.View!;
            Assert.Equal(("", ""), (view.Words, view.Failure));
            Assert.Equal((1, 2, false, true), (view.Before.Version, view.After.Version, view.Before.IsNow, view.After.IsNow));

            // 26 ft and 30 ft by 48 ft: 1,248 and 1,440 ft².
            NumberChange[] keys = [.. AnswerChanges.Keys(view.WholeBefore!.Source.Reports(), view.WholeAfter!.Source.Reports(), (view.WholeBefore.Source, view.WholeAfter.Source), "A", UnitSystem.Us)];
            NumberChange floor = keys.Single(k => k.Id == "A/form/floor-area");
            Assert.Equal(("1,248 ft²", "1,440 ft²", "+192 ft²", "+15.4 %"), (floor.Before, floor.After, floor.Difference, floor.Share));
            NumberChange price = keys.Single(k => k.Id == "price/price");
            Assert.StartsWith("+", price.Difference, StringComparison.Ordinal);
            Assert.False(price.IsBetter);
            Assert.Contains(keys, k => k.Id == "held");
            Assert.Contains(keys, k => k.Id == "light/12/mean");

            AnswerChanges changes = AnswerChanges.Of(view.WholeBefore.Source.Reports(), view.WholeAfter.Source.Reports(), UnitSystem.Us);
            Assert.Contains(changes.Pages, p => p.Title == "Shape & sun");
            Assert.Contains(changes.Pages, p => p.Title == "Price");
            Assert.All(changes.Pages.SelectMany(p => p.Numbers), n => Assert.NotEqual(n.Before, n.After));
            PicturePair[] pairs = [.. SideBySide.Wholes(view.WholeBefore.Source, view.WholeBefore.Source.Houses[0], view.WholeAfter.Source, view.WholeAfter.Source.Houses[0])];
            Assert.Equal(3, pairs.Length);
            Assert.Equal(6, pairs.SelectMany(p => new[] { p.Before.Drawing.Id, p.After.Drawing.Id }).Distinct().Count());

            AnswerChanges none = AnswerChanges.Of(view.WholeAfter.Source.Reports(), view.WholeAfter.Source.Reports(), UnitSystem.Us);
            Assert.Empty(none.Pages);
            Assert.Empty(none.Come);
        }
    }

    [Fact]
    public async Task The_job_as_it_is_is_laid_beside_the_newest_earlier_version_without_faults()
    {
        StoredJob job = await desk.JobAsync(Small);
        (ComparisonDesk two, JobSession session) = Two();
        using (session)
        using (two)
        {
            Assert.Null(await two.EarlierAsync(job.Id));
            await desk.Store.SaveAsync(job.Id, 1, [Edit.Typed("/houses/0/width", "28 ft")], "width", "test");
            await desk.Store.SaveAsync(job.Id, 2, [Edit.Typed("/houses/0/width", "wide")], "width", "test");
            await desk.Store.SaveAsync(job.Id, 3, [Edit.Typed("/houses/0/width", "30 ft")], "width", "test");
            Assert.Equal(2, await two.EarlierAsync(job.Id));
        }
    }

    [Fact]
    public async Task A_version_with_faults_is_told_and_the_other_is_answered()
    {
        StoredJob job = await desk.JobAsync(Small);
        await desk.Store.SaveAsync(job.Id, 1, [Edit.Typed("/houses/0/width", "wide")], "width", "test");
        (ComparisonDesk two, JobSession session) = Two();
        using (session)
        using (two)
        {
            Assert.True(await two.LoadAsync(new SideWish(job.Id, 1), new SideWish(job.Id, 2)));
            await two.Settled;
            Assert.NotNull(two.View!.Before.Light);
            Assert.Null(two.View.After.Light);
            Assert.Contains(two.View.After.Faults, f => f.Pointer == "/houses/0/width");
            Assert.Null(two.View.WholeBefore);
            Assert.Equal("", two.View.Words);
        }
    }

    [Fact]
    public async Task No_such_version_and_a_stop_leave_nothing_running()
    {
        StoredJob job = await desk.JobAsync(Small);
        (ComparisonDesk two, JobSession session) = Two();
        using (session)
        using (two)
        {
            Assert.False(await two.LoadAsync(new SideWish(job.Id, 7), new SideWish(job.Id, null)));
            Assert.False(await two.LoadAsync(new SideWish("../jobs.db", null), new SideWish(job.Id, null)));
            Assert.Null(two.View);
            Assert.True(await two.LoadAsync(new SideWish(job.Id, 1), new SideWish(job.Id, null)));
            two.Stop();
            await two.Settled;
            Assert.Equal(("", "Stopped."), (two.View!.Words, two.View.Failure));
        }
    }

    [Fact]
    public void A_number_has_its_sign_and_a_share_only_where_one_means_something()
    {
        NumberChange colder = NumberChange.Of("x", "Coldest", Unit.Celsius, 10, 5, UnitSystem.Us);
        Assert.Equal(("50.0 °F", "41.0 °F", "−9.0 F°", ""), (colder.Before, colder.After, colder.Difference, colder.Share));
        NumberChange less = NumberChange.Of("x", "Fuel", Unit.Watt, 2000, 1500, UnitSystem.Metric, false);
        Assert.Equal(("−0.50 kW", "−25.0 %", true), (less.Difference, less.Share, less.IsBetter));
        Assert.Equal(("", "", null), (NumberChange.Of("x", "Fuel", Unit.Watt, 2000, 2000.1, UnitSystem.Metric, false) is var same ? (same.Difference, same.Share, same.IsBetter) : default));
        Assert.Equal("", NumberChange.Of("x", "Price", Unit.Dollar, 0, 10, UnitSystem.Us).Share);
    }

    private (ComparisonDesk, JobSession) Two()
    {
        JobSession session = desk.Window();
        return (new ComparisonDesk(desk.Store, desk.Weather, session, desk.Quick, desk.Behind, new WholeShelf()), session);
    }
}
