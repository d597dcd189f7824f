using System.Text.Json;
using System.Text.Json.Nodes;
using Glazewright.Cli.Running;
using Glazewright.Cli.Tests.Commands;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Price;
using Glazewright.Design.Program;
using Glazewright.Papers.Sets;

namespace Glazewright.Cli.Tests.Pipeline;

/// <summary>
/// Example jobs with some fields set to the ends of what the job document says they may hold: the job has faults, or every stage answers. An exception is
/// always ours.
/// </summary>
public sealed class MutatedJobsTests : IDisposable
{
    private static readonly string[] Jobs = ["three-lines.json", "polder-salad-house.json", "bayou-seedling-house.json"];
    private static readonly JsonDocumentOptions Lenient = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };
    private readonly DirectoryInfo _room = Directory.CreateTempSubdirectory("glazewright-mutated-");
    private readonly List<(string[] Path, FieldShape Shape)> _fields = [];

    public MutatedJobsTests()
    {
        List(JobReader.Describe(), []);
        File.CreateSymbolicLink(Path.Combine(_room.FullName, "demo-continental-42N.epw.gz"), Shell.Example("weather/demo-continental-42N.epw.gz"));
    }

    public void Dispose() => _room.Delete(recursive: true);

    [Fact]
    [Trait("Category", "Slow")]
    public void A_mutated_job_has_faults_or_answers() => Assert.True(Sound(seed: 3, jobs: 24, whole: false) > 5);

    [Fact]
    [Trait("Category", "Slow")]
    public void A_mutated_job_has_faults_or_a_whole_package() => Assert.True(Sound(seed: 4, jobs: 24, whole: true, enough: 3) > 1);

    // How many of the jobs had no faults: a test of faults alone would prove little.
    private int Sound(int seed, int jobs, bool whole, int enough = int.MaxValue)
    {
        Random chance = new(seed);
        int sound = 0;
        for (int i = 0; i < jobs && sound < enough; i++)
        {
            JsonNode root = JsonNode.Parse(File.ReadAllText(Shell.Example(Jobs[i % Jobs.Length])), null, Lenient)!;
            List<string> done = [];
            for (int k = chance.Next(1, 4); k > 0; k--)
            {
                (string[] path, FieldShape shape) = _fields[chance.Next(_fields.Count)];
                JsonNode value = End(shape, chance);
                if (Set(root, path, value))
                {
                    done.Add($"/{string.Join('/', path)} = {value.ToJsonString()}");
                }
            }

            string file = Path.Combine(_room.FullName, "job.json");
            File.WriteAllText(file, root.ToJsonString());
            try
            {
                IReadOnlyList<Fault> faults = JobLoading.Load(file, null, null, out LoadedJob? loaded);
                Assert.Equal(loaded is null, faults.Count > 0);
                if (loaded is not null)
                {
                    sound++;
                    Answer(loaded, whole);
                }
            }
            catch (Exception e) when (e is not Xunit.Sdk.IAssertionException)
            {
                Assert.Fail($"{Jobs[i % Jobs.Length]} with {string.Join(", ", done)}: {e}");
            }
        }

        return sound;
    }

    private static void Answer(LoadedJob loaded, bool whole)
    {
        Evaluation all = new(loaded.Job, Ground.Of(loaded.Weather, CatalogueReader.Generic, PriceBook.Generic()), new StageRunner());
        foreach (string house in loaded.Job.Houses.Select(h => h.Id))
        {
            Assert.IsType<ProgramCompilation.Ready>(ProgramCompiler.Compile(all.Program(house).Value));
        }

        _ = all.Price;
        if (whole)
        {
            all.Everything(2);
            Assert.NotEmpty(PaperWriter.Write(PaperSource.From(all, loaded.Defaults, "0"), CancellationToken.None));
        }
    }

    private void List(FieldShape shape, string[] path)
    {
        switch (shape)
        {
            case FieldShape.Group group:
                foreach (FieldDescription field in group.Fields)
                {
                    List(field.Shape, [.. path, field.Key]);
                }

                break;
            case FieldShape.Several several:
                List(several.Item, [.. path, "0"]);
                break;
            case FieldShape.Either either:
                List(either.First, path);
                List(either.Second, path);
                break;
            case FieldShape.Measure or FieldShape.Whole or FieldShape.Choice or FieldShape.Flag:
                _fields.Add((path, shape));
                break;
        }
    }

    private static JsonNode End(FieldShape shape, Random chance) => shape switch
    {
        FieldShape.Measure m => JsonValue.Create(chance.Next(2) == 0 ? m.Least : m.Most),
        FieldShape.Whole w => JsonValue.Create(chance.Next(2) == 0 ? w.Least : w.Most),
        FieldShape.Choice c => JsonValue.Create(c.Words[chance.Next(c.Words.Count)].Word),
        _ => JsonValue.Create(chance.Next(2) == 0),
    };

    private static bool Set(JsonNode root, string[] path, JsonNode value)
    {
        JsonNode at = root;
        for (int i = 0; i + 1 < path.Length; i++)
        {
            bool listNext = path[i + 1] == "0";
            JsonNode? next = at is JsonArray list ? list.FirstOrDefault() : at[path[i]];
            if (next is not (JsonObject or JsonArray) || next is JsonArray != listNext)
            {
                next = listNext ? new JsonArray() : new JsonObject();
                Put(at, path[i], next);
            }

            at = next;
        }

        return Put(at, path[^1], value);
    }

    private static bool Put(JsonNode at, string key, JsonNode value)
    {
        switch (at)
        {
            case JsonObject group:
                group[key] = value;
                return true;
            case JsonArray { Count: 0 } list:
                list.Add(value);
                return true;
            case JsonArray list:
                list[0] = value;
                return true;
            default:
                return false;
        }
    }
}
