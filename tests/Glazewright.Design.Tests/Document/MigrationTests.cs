using Glazewright.Design.Contracts;
using Glazewright.Design.Document;

namespace Glazewright.Design.Tests.Document;

/// <summary>Documents of older versions are brought up; others are refused with words.</summary>
public class MigrationTests
{
    private static readonly Func<ObjectNode, ObjectNode>[] s_renames =
    [
        tree => tree with { Members = tree.Members.Select(m => m.Key == "one" ? m with { Key = "two" } : m).ToEqList() },
        tree => tree with { Members = tree.Members.Select(m => m.Key == "two" ? m with { Key = "three" } : m).ToEqList() },
    ];

    [Theory]
    [InlineData(1, "one"), InlineData(2, "two"), InlineData(3, "three")]
    public void Steps_run_from_the_documents_version_on(int version, string key)
    {
        Node root = JobDocument.Read($"{{ \"glazewright\": {version},\n \"{key}\": 5 }}").Root;
        ObjectNode tree = Migrations.Upgrade(root, s_renames, out EqList<Fault> faults);
        Assert.Empty(faults);
        Assert.Equal(2, tree.Find("three")!.Place.Line);
    }

    [Theory]
    [InlineData("{ }", FaultKind.Missing), InlineData("{ \"glazewright\": 4 }", FaultKind.OutOfRange), InlineData("{ \"glazewright\": \"1\" }", FaultKind.WrongType)]
    [InlineData("{ \"glazewright\": 0 }", FaultKind.WrongType), InlineData("[]", FaultKind.WrongType), InlineData("{ \"glazewright\": 1.5 }", FaultKind.WrongType)]
    public void Other_versions_are_refused(string text, FaultKind kind)
    {
        Migrations.Upgrade(JobDocument.Read(text).Root, s_renames, out EqList<Fault> faults);
        Assert.Equal(kind, Assert.Single(faults).Kind);
    }

    [Fact]
    public void This_program_reads_version_one() => Assert.Equal(1, Migrations.CurrentVersion);
}
