using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Program;

namespace Glazewright.Design.Tests.Brief;

/// <summary>Jobs that job-check passed and that a stage then broke on: each is now a fault at its place, or simply works.</summary>
public class EdgeTests
{
    [Theory]
    [InlineData("06:00", "06:00"), InlineData("sunrise", "sunrise"), InlineData("0:00", "24:00")]
    public void A_day_that_ends_when_it_starts_is_a_fault_at_its_end(string starts, string ends)
    {
        EqList<Fault> faults = Examples.Faults(Edit.Typed("/houses/0/schedule/2/dayStarts", starts), Edit.Typed("/houses/0/schedule/2/dayEnds", ends));
        Fault fault = Assert.Single(faults);
        Assert.Equal((FaultKind.Contradiction, "/houses/0/schedule/2/dayEnds"), (fault.Kind, fault.Pointer));
        Assert.True(fault.Line > 0);
    }

    [Theory]
    [InlineData("exhaust", "exhaust-36", ProgramStage.MostFans), InlineData("heaters", "sealed-125", ProgramStage.MostHeaters)]
    public void More_units_than_the_program_can_switch_are_a_fault_with_the_true_limit(string key, string entry, int most)
    {
        string One(int count) => $"{{ \"entry\": \"{entry}\", \"count\": {count} }}";
        string at = "/houses/0/equipment/" + key;
        Fault single = Assert.Single(Examples.Faults(new Edit(at, $"[{One(most + 1)}]")));
        Assert.Equal((FaultKind.OutOfRange, at + "/0/count"), (single.Kind, single.Pointer));
        Fault together = Assert.Single(Examples.Faults(new Edit(at, $"[{One(most)}, {One(1)}]")));
        Assert.Equal((FaultKind.OutOfRange, at), (together.Kind, together.Pointer));
        Assert.Contains($"at most {most}", together.Right, StringComparison.Ordinal);
        Assert.Empty(Examples.Faults(new Edit(at, $"[{One(most - 1)}, {One(1)}]")));
    }

    [Theory]
    [InlineData("1000 ft", 1, "34 to 200"), InlineData("104 ft", 3, "4 to 52"), InlineData("104 ft", 60, "4 to 52")]
    public void Frames_too_far_apart_or_too_close_are_a_fault_at_the_bays(string length, int bays, string right)
    {
        EqList<Fault> faults = Examples.Faults(
            Edit.Typed("/houses/1/length", length), new Edit("/houses/1/bays", bays.ToString(System.Globalization.CultureInfo.InvariantCulture)),
            Edit.Typed("/houses/1/x", "-3000 ft"), new Edit("/houses/1/openings", "[]"));
        Fault fault = Assert.Single(faults);
        Assert.Equal((FaultKind.OutOfRange, "/houses/1/bays"), (fault.Kind, fault.Pointer));
        Assert.StartsWith(right, fault.Right, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(""), InlineData(" ")]
    public void A_weather_file_without_a_name_is_a_fault(string file)
    {
        Fault fault = Assert.Single(Examples.Faults(Edit.Typed("/site/weather/file", file)));
        Assert.Equal((FaultKind.NotFound, "/site/weather/file"), (fault.Kind, fault.Pointer));
    }

    [Theory]
    [InlineData("30 C"), InlineData("0.9 C")]
    public void Normals_with_a_daily_range_that_no_place_has_are_a_fault(string meanMax)
    {
        JobDocument polder = JobDocument.Read(Examples.Text("polder-salad-house.json"));
        string mean = meanMax == "0.9 C" ? "0.85 C" : "3.4 C";
        Assert.True(polder.TryEdit(
            [Edit.Typed("/site/weather/normals/0/meanMax", meanMax), Edit.Typed("/site/weather/normals/0/mean", mean), Edit.Typed("/site/weather/normals/0/meanMin", meanMax == "0.9 C" ? "0.8 C" : "-0.5 C"), Edit.Typed("/site/weather/normals/0/dewPoint", "-1 C")],
            out JobDocument edited, out _));
        Fault fault = Assert.Single(JobReader.Read(edited).Faults);
        Assert.Equal((FaultKind.OutOfRange, "/site/weather/normals/0/meanMax"), (fault.Kind, fault.Pointer));
    }
}
