using System.Text.Json;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Document;

namespace Glazewright.Cli.Tests.Commands;

/// <summary>One small job designed twice, with one thread and with eight: what the package holds, and that the bytes are the same.</summary>
public sealed class DesignedOnce : IDisposable
{
    private readonly string _room = Directory.CreateTempSubdirectory("glazewright-design-").FullName;
    private readonly Lazy<Ran> _first;
    private readonly Lazy<Ran> _second;

    public DesignedOnce()
    {
        First = Path.Combine(_room, "with one");
        Second = Path.Combine(_room, "with eight");
        _first = new Lazy<Ran>(() => Shell.Run("design", Shell.Example("three-lines.json"), "--out", First, "--threads", "1"));
        _second = new Lazy<Ran>(() => Shell.Run("design", Shell.Example("three-lines.json"), "--out", Second, "--threads", "8", "--json"));
    }

    public string First { get; }

    public string Second { get; }

    internal Ran Ran => _first.Value;

    internal Ran RanAsJson => _second.Value;

    public void Dispose() => Directory.Delete(_room, recursive: true);
}

/// <summary>The whole way from a job to its package.</summary>
public sealed class DesignCommandTests(DesignedOnce designed) : IClassFixture<DesignedOnce>
{
    [Fact]
    public void A_job_of_three_lines_becomes_a_package()
    {
        Assert.True(designed.Ran.Exit == 0, designed.Ran.Errors);
        Assert.Equal("", designed.Ran.Errors);
        Assert.Matches("\\?  +[^ ]", designed.Ran.Out);
        Assert.Contains("Preliminary", designed.Ran.Out, StringComparison.Ordinal);
        foreach (string file in (string[])["contents.html", "answers.pdf", "drawings.pdf", "review.pdf", "contractor/result.json", "manifest.json"])
        {
            Assert.True(File.Exists(Path.Combine(designed.First, file)), file);
        }
    }

    // Asked before anything is computed: a set has a reader we know and a folder of its own.
    [Fact]
    public void A_set_for_nobody_or_over_the_contractors_package_is_refused()
    {
        Ran nobody = Shell.Run("design", Shell.Example("three-lines.json"), "--out", designed.First + "-set", "--for", "banker");
        Assert.Equal(2, nobody.Exit);
        Assert.Contains("grower, reviewer, shop, crew, controls, trades", nobody.Errors, StringComparison.Ordinal);
        Assert.Equal(0, designed.Ran.Exit);
        Ran over = Shell.Run("design", Shell.Example("three-lines.json"), "--out", designed.First, "--for", "grower");
        Assert.Equal(2, over.Exit);
        Assert.Contains("must not mix", over.Errors, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(designed.First, "contractor", "result.json")));
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void One_thread_and_eight_give_the_same_bytes()
    {
        Assert.Equal((0, 0), (designed.Ran.Exit, designed.RanAsJson.Exit));
        Assert.Equal(Files(designed.First), Files(designed.Second));
        foreach (string file in Files(designed.First))
        {
            Assert.True(File.ReadAllBytes(Path.Combine(designed.First, file)).AsSpan().SequenceEqual(File.ReadAllBytes(Path.Combine(designed.Second, file))), file);
        }
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void The_answer_as_JSON_names_files_findings_and_defaults()
    {
        Assert.True(designed.RanAsJson.Exit == 0, designed.RanAsJson.Errors);
        using JsonDocument json = JsonDocument.Parse(designed.RanAsJson.Out);
        Assert.Equal(Files(designed.Second).Length - 1, json.RootElement.GetProperty("files").GetArrayLength());
        Assert.True(json.RootElement.GetProperty("findings").GetArrayLength() > 0);
        Assert.True(json.RootElement.GetProperty("defaults").GetArrayLength() > 100);
    }

    [Fact]
    public void A_default_is_not_passed_off_as_typed()
    {
        Assert.Equal(0, designed.Ran.Exit);
        Ran ran = Shell.Run("explain", designed.First, "A/duty/heat-loss");
        Assert.Equal(0, ran.Exit);
        Assert.Contains("default: 0.7 ACH", ran.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("typed at /houses/0/airtightness", ran.Out, StringComparison.Ordinal);
    }

    // Every field that a figure or a finding cites is a field of the job document, and what this short job did not type is called a default.
    [Fact]
    public void Cited_fields_exist_and_only_typed_ones_are_called_typed()
    {
        Assert.Equal(0, designed.Ran.Exit);
        HashSet<string> fields = [];
        List(JobReader.Describe(), "", fields);
        JobDocument typed = JobDocument.Read(File.ReadAllText(Shell.Example("three-lines.json")));
        using JsonDocument json = JsonDocument.Parse(File.ReadAllText(Path.Combine(designed.First, "contractor", "result.json")));
        List<string> wrong = [];
        int seen = 0;
        Walk(json.RootElement, source =>
        {
            if (source.TryGetProperty("field", out JsonElement cited) && source.TryGetProperty("kind", out JsonElement kind))
            {
                seen++;
                string pointer = cited.GetString()!;
                string field = string.Join('/', pointer.Split('/').Select(k => k.All(char.IsAsciiDigit) && k.Length > 0 ? "*" : k));
                if (!fields.Contains(field) && !(field.EndsWith("/*", StringComparison.Ordinal) && fields.Contains(field[..^2])))
                {
                    wrong.Add($"no such field: {pointer}");
                }
                else if (kind.GetString() == "given" && typed.Find(pointer) is null)
                {
                    wrong.Add($"not typed: {pointer}");
                }
            }
        });
        Assert.True(seen > 50);
        Assert.Equal([], wrong.Distinct());
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void A_package_whose_answer_cannot_be_printed_is_whole_and_told_so()
    {
        string target = Path.Combine(designed.First, "..", "untold");
        Ran ran = Shell.RunWithoutAnswer("design", Shell.Example("three-lines.json"), "--out", target);
        Assert.Equal(1, ran.Exit);
        Assert.Equal($"The package in '{target}' is complete, but the answer could not be written to standard output: No space left on device.\n", ran.Errors);
        Assert.True(File.Exists(Path.Combine(target, "manifest.json")));
    }

    [Fact]
    public void Faults_leave_the_folder_alone()
    {
        string target = Path.Combine(designed.First, "..", "never");
        Ran ran = Shell.Run("design", Shell.Example("variants/fault-many-at-once.json"), "--out", target);
        Assert.Equal(2, ran.Exit);
        Assert.EndsWith("5 faults.\n", ran.Errors, StringComparison.Ordinal);
        Assert.Equal("", ran.Out);
        Assert.False(Directory.Exists(target));
        using JsonDocument json = JsonDocument.Parse(Shell.Run("design", Shell.Example("variants/fault-many-at-once.json"), "--out", target, "--json").Out);
        Assert.Equal(5, json.RootElement.GetProperty("faults").GetArrayLength());
    }

    [Fact]
    public void A_folder_of_others_is_refused_before_anything_is_computed()
    {
        string other = Path.Combine(designed.First, "..", "other");
        Directory.CreateDirectory(other);
        File.WriteAllText(Path.Combine(other, "thesis.doc"), "years of work");
        Ran ran = Shell.Run("design", Shell.Example("three-lines.json"), "--out", other);
        Assert.Equal(2, ran.Exit);
        Assert.Contains("none of our packages", ran.Errors, StringComparison.Ordinal);
        Assert.Equal(["thesis.doc"], Files(other));
    }

    [Fact]
    public void A_run_that_is_stopped_changes_nothing()
    {
        using CancellationTokenSource cancel = new();
        cancel.Cancel();
        Assert.Equal(0, designed.Ran.Exit);
        string[] before = Files(designed.First);
        Ran ran = Shell.Run(cancel.Token, "design", Shell.Example("three-lines.json"), "--out", designed.First);
        Assert.Equal(130, ran.Exit);
        Assert.Equal(before, Files(designed.First));
        Assert.DoesNotContain(Directory.GetFileSystemEntries(Path.GetDirectoryName(designed.First)!), e => Path.GetFileName(e).StartsWith('.'));
    }

    [Theory]
    [InlineData("--date", "tomorrow"), InlineData("--threads", "0"), InlineData("--threads", "many"), InlineData("--weather", "nowhere.epw")]
    public void A_wrong_option_is_the_users_to_mend(string option, string value) =>
        Assert.Equal(2, Shell.Run("design", Shell.Example("three-lines.json"), "--out", Path.Combine(designed.First, "..", "never"), option, value).Exit);

    private static string[] Files(string folder) =>
        [.. Directory.GetFiles(folder, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(folder, f)).Order(StringComparer.Ordinal)];

    private static void Walk(JsonElement element, Action<JsonElement> see)
    {
        if (element.ValueKind == JsonValueKind.Object)
        {
            see(element);
            foreach (JsonProperty property in element.EnumerateObject())
            {
                Walk(property.Value, see);
            }
        }
        else if (element.ValueKind == JsonValueKind.Array)
        {
            foreach (JsonElement item in element.EnumerateArray())
            {
                Walk(item, see);
            }
        }
    }

    private static void List(FieldShape shape, string pointer, HashSet<string> fields)
    {
        fields.Add(pointer);
        switch (shape)
        {
            case FieldShape.Group group:
                foreach (FieldDescription field in group.Fields)
                {
                    List(field.Shape, $"{pointer}/{field.Key}", fields);
                }

                break;
            case FieldShape.Several several:
                List(several.Item, pointer + "/*", fields);
                break;
            case FieldShape.Either either:
                List(either.First, pointer, fields);
                List(either.Second, pointer, fields);
                break;
        }
    }
}
