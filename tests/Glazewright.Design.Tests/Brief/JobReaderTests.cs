using CsCheck;
using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Form;
using Json.Schema;

namespace Glazewright.Design.Tests.Brief;

/// <summary>The whole job from its document: values, defaults, faults.</summary>
public class JobReaderTests
{
    private const double FootM = 0.3048;

    [Fact]
    public void The_demo_says_what_its_scenario_says()
    {
        Job job = Examples.Job(Examples.Demo);
        House a = job.Houses[0];
        House b = job.Houses[1];
        Assert.Equal((26 * FootM, 104 * FootM, 13), (Round(a.WidthM), Round(a.LengthM), a.BayCount));
        Assert.Equal(16 * FootM, a.Roof.RidgeM, 1e-9);
        Assert.Equal(SolvedRoofPart.None, a.Roof.Solved);
        Assert.Equal(SolvedRoofPart.RightPitch, b.Roof.Solved);
        Assert.Equal(8.4 / 12, b.Roof.RightPitch, 1e-9);
        Assert.Equal(13.75 * FootM, b.Roof.RidgeM, 1e-9);
        Assert.Equal(14 * FootM, a.OriginYM - b.OriginYM - b.WidthM, 1e-9);
        Assert.Equal(35 * 47.88026, job.Site.Snow.GroundPa, 0.01);
        Assert.Equal(2, job.Occupancy.RiskCategory);
        Assert.Equal((2, "exhaust-36"), (a.Equipment.ExhaustFixed[0].Count, a.Equipment.ExhaustFixed[0].Entry));
        Assert.Equal(0.45, b.Equipment.BenchPipeW / 100_000 / 0.29307107, 1e-6);
        Assert.Equal(0, b.Equipment.WetWallWidthM);
        // 26'-0" less benches 5'-6", 6'-0", 5'-6" and two aisles of 2'-6": the aisle along the north wall is 4'-0".
        Assert.Equal(4 * FootM, a.WidthM - a.Benches[2].OffsetYM - a.Benches[2].WidthM, 1e-9);
        // 2.10 $/gal at 92 500 Btu/gal.
        Assert.Equal(2.10 / (92_500 * 1055.05585262), job.Tariffs.FuelPerJoule, 1e-15);
        Assert.Equal("2.1 $/gal propane", job.Tariffs.FuelShown);
        Assert.Equal(0.009, job.Tariffs.DemandPerWattMonth, 1e-12);
        Assert.Equal(-6, job.Site.ZoneHours);
        Assert.Equal((51, 1), (a.Schedule[4].FromWeek, a.Schedule[4].ToWeek));
    }

    [Theory]
    [InlineData("bayou-seedling-house.json"), InlineData("polder-salad-house.json")]
    public void The_other_examples_have_no_faults(string name) => Assert.NotEmpty(Examples.Job(name).Houses);

    [Fact]
    public void Three_lines_are_a_job_when_the_weather_file_says_where()
    {
        ReadOutcome<Job> outcome = JobReader.Read(JobDocument.Read(Examples.Text("three-lines.json")), new SiteHint("Demo site", 41.98, -87.92, 201, -6));
        Assert.True(outcome.Faults.Count == 0, string.Join("\n", outcome.Faults));
        Assert.Equal((41.98, -87.92, 201, -6.0), (outcome.Value!.Site.LatitudeDeg, outcome.Value.Site.LongitudeDeg, outcome.Value.Site.ElevationM, outcome.Value.Site.ZoneHours));
        Assert.Equal(8 * FootM, outcome.Value.Houses[0].Roof.RightEaveM, 1e-9);
        Assert.Equal(12, outcome.Value.Houses[0].BayCount);
    }

    [Fact]
    public void A_job_that_says_nothing_is_told_what_it_needs()
    {
        string[] missing = [.. JobReader.Read(JobDocument.Read("{ \"glazewright\": 1 }")).Faults.Select(f => $"{f.Kind} {f.Pointer}")];
        Assert.Equal(["Missing /site/latitude", "Missing /site/weather/file", "Missing /houses"], missing);
    }

    // Each row: an edit of the demo, the fault's kind and place, and a word of its cure.
    [Theory]
    [InlineData("/houses/1/roof/rightPitch", "\"6:12\"", FaultKind.Contradiction, "/houses/1/roof/rightPitch", "8.4:12")]
    [InlineData("/houses/0/roof/rightEave", "\"9'-0\\\"\"", FaultKind.Contradiction, "/houses/0/roof/rightPitch", "9'-3\"")]
    [InlineData("/houses/0/roof/ridgeOffset", "\"30 ft\"", FaultKind.DoesNotFit, "/houses/0/roof/ridgeOffset", "less than 26'-0\"")]
    [InlineData("/houses/0/equipment/curtainHeight", "\"8'-6\\\"\"", FaultKind.DoesNotFit, "/houses/0/equipment/curtainHeight", "7'-0\"")]
    [InlineData("/houses/0/equipment/exhaust/0/entry", "\"exhaust-54-three-phase\"", FaultKind.Contradiction, "/houses/0/equipment/exhaust/0/entry", "single-phase fan")]
    [InlineData("/houses/0/openings/0/offset", "\"22 ft\"", FaultKind.DoesNotFit, "/houses/0/openings/0", "inside the end wall at end 1")]
    [InlineData("/houses/0/openings/1", "{ \"id\": \"door-9\", \"kind\": \"door\", \"face\": \"end-1\", \"offset\": \"6 ft\" }", FaultKind.DoesNotFit, "/houses/0/openings/1", "beside each other")]
    [InlineData("/houses/0/openings/0/face", "\"south\"", FaultKind.UnknownChoice, "/houses/0/openings/0/face", "left, right, end-1, end-2")]
    [InlineData("/houses/0/openings/0/face", "\"floor\"", FaultKind.UnknownChoice, "/houses/0/openings/0/face", "left, right, end-1")]
    [InlineData("/houses/0/schedule", "[]", FaultKind.OutOfRange, "/houses/0/schedule", "1 to 60 items")]
    [InlineData("/houses/0/schedule/1/weeks", "\"wk 17-22\"", FaultKind.Contradiction, "/houses/0/schedule/1/weeks", "follow each other")]
    [InlineData("/houses/0/schedule/1/weeks", "\"wk 18-20\"", FaultKind.Missing, "/houses/0/schedule", "parked")]
    [InlineData("/houses/0/schedule/1/weeks", "\"May 5\"", FaultKind.Unit, "/houses/0/schedule/1/weeks", "wk 18")]
    [InlineData("/houses/0/width", "26", FaultKind.Unit, "/houses/0/width", "26 ft or 26 m")]
    [InlineData("/houses/0/width", "\"-26 ft\"", FaultKind.OutOfRange, "/houses/0/width", "6'-0\"")]
    [InlineData("/houses/0/ponyWall", "\"8 ft\"", FaultKind.DoesNotFit, "/houses/0/ponyWall", "below both eaves")]
    [InlineData("/houses/0/benches/1/offset", "\"5'-0\\\"\"", FaultKind.DoesNotFit, "/houses/0/benches/1", "aisle between")]
    [InlineData("/houses/0/benches/2/offset", "\"21 ft\"", FaultKind.DoesNotFit, "/houses/0/benches/2", "inside the walls")]
    [InlineData("/houses/0/frame/rafter", "\"tube-4x2\"", FaultKind.UnknownChoice, "/houses/0/frame/rafter", "tube-4x2x0.120")]
    [InlineData("/houses/0/frame/collarTie", "\"5 ft\"", FaultKind.DoesNotFit, "/houses/0/frame/collarTie", "above 9'-3\"")]
    [InlineData("/houses/1/id", "\"H\"", FaultKind.Duplicate, "/links/0/id", "of its own")]
    [InlineData("/houses/1/id", "\"A\"", FaultKind.Duplicate, "/houses/1/id", "of its own")]
    [InlineData("/site/longitude", "\"87.92 deg\"", FaultKind.Contradiction, "/site/zone", "America is negative")]
    [InlineData("/site/zone", "\"America/Chicag\"", FaultKind.UnknownChoice, "/site/zone", "America/Chicago")]
    [InlineData("/site/wind/edition", "\"ASCE 7-22\"", FaultKind.Contradiction, "/site/wind/edition", "one edition")]
    [InlineData("/site/weather/file", "\"../demo.epw\"", FaultKind.NotFound, "/site/weather/file", "beside the job")]
    [InlineData("/site/weather/normals", "[]", FaultKind.OutOfRange, "/site/weather/normals", "12 items")]
    [InlineData("/site/design/extremeMin", "\"10 F\"", FaultKind.Contradiction, "/site/design/extremeMin", "heating996")]
    [InlineData("/site/design/coincidentWetBulb", "\"95 F\"", FaultKind.Contradiction, "/site/design/coincidentWetBulb", "91 °F")]
    [InlineData("/pricing/draws", "[\"50 %\", \"40 %\"]", FaultKind.Contradiction, "/pricing/draws", "100 %")]
    [InlineData("/tariffs/power", "\"0.14 €/kWh\"", FaultKind.Contradiction, "/tariffs/power", "one currency")]
    [InlineData("/tariffs/fuel", "\"2.10\"", FaultKind.Unit, "/tariffs/fuel", "$/gal")]
    [InlineData("/date", "\"2 March\"", FaultKind.Unit, "/date", "2027-05-18")]
    [InlineData("/houses/0/covering/right", "\"pannel-76\"", FaultKind.UnknownChoice, "/houses/0/covering/right", "panel-76")]
    [InlineData("/houses/0/equipmnt", "{}", FaultKind.UnknownKey, "/houses/0/equipmnt", "known here")]
    [InlineData("/glazewright", "2", FaultKind.OutOfRange, "/glazewright", "newer program")]
    public void A_wrong_value_is_told_with_its_cure(string pointer, string json, FaultKind kind, string place, string cure)
    {
        EqList<Fault> faults = Examples.Faults(new Edit(pointer, json));
        Fault fault = Assert.Single(faults, f => f.Kind == kind && f.Pointer == place);
        Assert.Contains(cure, fault.Right, StringComparison.Ordinal);
        Assert.True(fault.Line > 0);
    }

    [Theory]
    [InlineData("Nov-May", "June to October"), InlineData("November through May", "Jun 1 - Oct 31"), InlineData("wk 44-22", "wk 23-43")]
    public void Periods_in_months_or_dates_fill_the_year_in_whole_weeks_and_tell_it(string winter, string summer)
    {
        ReadOutcome<Job> outcome = JobReader.Read(Examples.Edited(new Edit("/houses/0/schedule", $$"""[{ "id": "winter", "weeks": "{{winter}}" }, { "id": "summer", "weeks": "{{summer}}" }]""")));
        Assert.Empty(outcome.Faults);
        Assert.Equal([(44, 22), (23, 43)], outcome.Value!.Houses[0].Schedule.Select(p => (p.FromWeek, p.ToWeek)));
        Assert.Equal(winter[0] != 'w', outcome.Defaults.Any(d => d.Pointer == "/houses/0/schedule/0/weeks" && d.Value == "wk 44-22"));
    }

    // One design value that cannot be read does not hide that two others contradict each other.
    [Fact]
    public void Every_pair_of_design_conditions_is_looked_at()
    {
        EqList<Fault> faults = Examples.Faults(new Edit("/site/design/heating996", "\"-500 F\""), new Edit("/site/design/coincidentWetBulb", "\"95 F\""));
        Assert.Equal(["/site/design/coincidentWetBulb", "/site/design/heating996"], faults.Select(f => f.Pointer).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Snow_without_its_edition_takes_the_one_that_asks_for_more_and_tells_it()
    {
        ReadOutcome<Job> outcome = JobReader.Read(Examples.Edited(Edit.Removed("/site/snow/edition")));
        Assert.Empty(outcome.Faults);
        Assert.Equal(LoadEdition.Asce716, outcome.Value!.Site.Snow.Edition);
        Assert.Contains(outcome.Defaults, d => d.Pointer == "/site/snow/edition" && d.Value == "ASCE 7-16");
    }

    [Fact]
    public void Beds_on_the_ground_are_said_in_a_word_and_benches_without_an_offset_stand_an_aisle_apart()
    {
        Job none = JobReader.Read(Examples.Edited(Edit.Typed("/houses/0/benches", "none"))).Value!;
        Assert.Empty(none.Houses[0].Benches);
        Assert.NotEmpty(JobReader.Read(Examples.Edited(Edit.Typed("/houses/0/benches", "usual"))).Value!.Houses[0].Benches);
        Job two = JobReader.Read(Examples.Edited(new Edit("/houses/0/benches", "[{}, { \"width\": \"4 ft\" }]"))).Value!;
        Assert.Equal([2, 9], two.Houses[0].Benches.Select(b => Math.Round(b.OffsetYM / FootM, 9)));
    }

    [Theory]
    [InlineData("65-70"), InlineData("65 to 70 F"), InlineData("60-75%")]
    public void A_range_typed_as_a_wish_is_told_where_the_band_is_set(string typed)
    {
        string field = typed.EndsWith('%') ? "humidity" : "temperature";
        Fault fault = Assert.Single(Examples.Faults(Edit.Typed($"/houses/0/schedule/0/day/{field}", typed)));
        Assert.Equal($"'{typed}' is a range", fault.Wrong);
        Assert.EndsWith(": how far it may differ is set under Held", fault.Right, StringComparison.Ordinal);
    }

    // A pier of 24 in, typed bare in a job of feet.
    [Fact]
    public void A_likely_slip_stays_in_the_units_that_were_typed()
    {
        Fault fault = Assert.Single(Examples.Faults(Edit.Typed("/houses/0/frame/pierDiameter", "24 ft")));
        Assert.EndsWith("did you mean 24 in?", fault.Right, StringComparison.Ordinal);
    }

    [Fact]
    public void Faults_in_many_places_come_together_and_carry_ids()
    {
        EqList<Fault> faults = Examples.Faults(
            new Edit("/houses/0/width", "26"), new Edit("/houses/1/openings/0/width", "\"wide\""), Edit.Typed("/site/snow/ground", "35"), new Edit("/pricing/margin", "\"14\""));
        Assert.Equal(["/site/snow/ground", "/houses/0/width", "/houses/1/openings/0/width", "/pricing/margin"], faults.Select(f => f.Pointer).ToArray());
        Assert.Equal(["", "A", "B/door-1", ""], faults.Select(f => f.Id).ToArray());
    }

    [Fact]
    public void The_schema_takes_the_examples_and_refuses_what_the_reader_refuses()
    {
        JsonSchema schema = JsonSchema.FromText(JobReader.Schema());
        foreach (string name in (string[])[Examples.Demo, "bayou-seedling-house.json", "polder-salad-house.json"])
        {
            Assert.Equal("", Invalid(schema, Examples.Text(name)));
        }

        Assert.False(Valid(schema, "{ \"glazewright\": 1, \"houses\": [ { \"width\": 26, \"length\": \"96 ft\" } ], \"site\": { \"latitude\": \"42 deg\", \"weather\": { \"file\": \"a\" } } }"));
        Assert.False(Valid(schema, "{ \"glazewright\": 1, \"hoses\": [] }"));
    }

    [Fact]
    public void Damaged_demos_never_throw()
    {
        string demo = Examples.Text(Examples.Demo);
        string[] puts = ["\"", "null", "{}", "[]", "-1", "1e9", "\"0 ft\"", ",", "}", "\"\"", "true", "\"wk 52\"", "\"none\""];
        Gen.Select(Gen.Int[0, demo.Length - 1], Gen.Int[0, 12], Gen.Int[0, puts.Length - 1]).Sample((at, take, put) =>
        {
            string damaged = demo.Remove(at, Math.Min(take, demo.Length - at)).Insert(at, puts[put]);
            ReadOutcome<Job> outcome = JobReader.Read(JobDocument.Read(damaged));
            Assert.True(outcome.Faults.Count > 0 || outcome.Value is not null);
        }, iter: 400);
    }

    // Any value of the demo put in any other place: types are right more often than random text has them.
    [Fact]
    public void Values_in_wrong_places_never_throw()
    {
        JobDocument demo = JobDocument.Read(Examples.Text(Examples.Demo));
        List<string> pointers = [];
        Collect(demo.Root, "", pointers);
        Gen.Select(Gen.Int[0, pointers.Count - 1], Gen.Int[0, pointers.Count - 1]).Sample((from, to) =>
        {
            Node value = demo.Find(pointers[from])!;
            if (!demo.TryEdit([new Edit(pointers[to], demo.Text[value.Place.Start..value.Place.End])], out JobDocument edited, out _))
            {
                return;
            }

            ReadOutcome<Job> outcome = JobReader.Read(edited);
            Assert.True(outcome.Faults.Count > 0 || outcome.Value is not null);
        }, iter: 600);
    }

    // A value that is left blank holds its default: whatever is taken out of the demo ends in a job or in words.
    [Fact]
    public void Any_field_may_be_taken_out()
    {
        JobDocument demo = JobDocument.Read(Examples.Text(Examples.Demo));
        List<string> pointers = [];
        Collect(demo.Root, "", pointers);
        foreach (string pointer in pointers)
        {
            Assert.True(demo.TryEdit([Edit.Removed(pointer)], out JobDocument edited, out _), pointer);
            ReadOutcome<Job> outcome = JobReader.Read(edited);
            Assert.True(outcome.Value is not null || outcome.Faults.All(f => f.Right.Length > 0), pointer);
        }
    }

    private static void Collect(Node node, string pointer, List<string> pointers)
    {
        if (pointer.Length > 0)
        {
            pointers.Add(pointer);
        }

        switch (node)
        {
            case ObjectNode o:
                foreach (Member member in o.Members)
                {
                    Collect(member.Value, JsonPointer.Append(pointer, member.Key), pointers);
                }

                break;
            case ListNode list:
                for (int i = 0; i < list.Items.Count; i++)
                {
                    Collect(list.Items[i], $"{pointer}/{i}", pointers);
                }

                break;
        }
    }

    private static double Round(double value) => Math.Round(value, 9);

    private static bool Valid(JsonSchema schema, string json) => Invalid(schema, json).Length == 0;

    private static string Invalid(JsonSchema schema, string json)
    {
        using System.Text.Json.JsonDocument document = System.Text.Json.JsonDocument.Parse(json, new System.Text.Json.JsonDocumentOptions { CommentHandling = System.Text.Json.JsonCommentHandling.Skip });
        EvaluationResults results = schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        return results.IsValid ? "" : string.Join("\n", (results.Details ?? []).Where(d => d.Errors is not null).Select(d => $"{d.InstanceLocation}: {string.Join("; ", d.Errors!.Values)}").Append("not valid"));
    }
}
