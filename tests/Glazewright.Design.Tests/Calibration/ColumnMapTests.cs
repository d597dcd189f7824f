using Glazewright.Design.Calibration.Reading;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Tests.Calibration;

public class ColumnMapTests
{
    [Theory]
    [InlineData("\"unit\": \"m/s\"", "\"unit\": \"C\"", "/tables/0/columns/6/unit", FaultKind.Unit)]
    [InlineData("\"is\": \"wind\"", "\"is\": \"gale\"", "/tables/0/columns/6/is", FaultKind.UnknownChoice)]
    [InlineData("\"is\": \"wind\", \"unit\": \"m/s\"", "\"is\": \"inside-temperature\", \"unit\": \"C\"", "/tables/0/columns/6/is", FaultKind.Duplicate)]
    [InlineData("\"clock\": \"+01:00\"", "\"clock\": \"Mars/Olympus\"", "/clock", FaultKind.UnknownChoice)]
    [InlineData("\"column\": \"time\"", "\"form\": \"same-rows\"", "/tables/0/time/form", FaultKind.Contradiction)]
    [InlineData("\"house\":", "\"constants\": [{ \"is\": \"wind\", \"value\": \"2\", \"unit\": \"m/s\" }], \"house\":", "/constants/0/is", FaultKind.Contradiction)]
    [InlineData("\"house\":", "\"constants\": [{ \"is\": \"pressure\", \"value\": \"1015\", \"unit\": \"Pa\" }], \"house\":", "/constants/0/value", FaultKind.OutOfRange)]
    [InlineData("\"house\":", "\"fit\": [{ \"size\": \"sun\" }, { \"size\": \"sun\" }], \"house\":", "/fit", FaultKind.Duplicate)]
    [InlineData("\"house\":", "\"thermostats\": [{ \"drives\": \"co2\", \"noneAt\": \"20 C\", \"fullAt\": \"22 C\" }], \"house\":", "/thermostats/0/drives", FaultKind.UnknownChoice)]
    [InlineData("\"floor\": \"500 m2\"", "\"floor\": 500", "/house/floor", FaultKind.Unit)]
    [InlineData("\"glazewrightColumns\": 1,", "", "/glazewrightColumns", FaultKind.Missing)]
    public void A_fault_has_its_place(string from, string to, string pointer, FaultKind kind)
    {
        Fault fault = Assert.Single(ColumnMapReader.Read(SyntheticLog.Map.Replace(from, to, StringComparison.Ordinal)).Faults);
        Assert.Equal((pointer, kind), (fault.Pointer, fault.Kind));
        Assert.True(fault.Line > 0);
    }

    [Fact]
    public void All_faults_come_at_once() =>
        Assert.Equal(3, ColumnMapReader.Read(SyntheticLog.Map.Replace("m/s", "C", StringComparison.Ordinal).Replace("+01:00", "Nowhere", StringComparison.Ordinal).Replace("\"roofVents\"", "\"roofVentz\"", StringComparison.Ordinal)).Faults.Count);

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{ nonsense")]
    public void What_is_no_map_is_refused(string text) => Assert.NotEmpty(ColumnMapReader.Read(text).Faults);

    [Fact]
    public void The_schema_names_every_quantity()
    {
        string schema = ColumnMapReader.Schema();
        Assert.All(Glazewright.Design.Calibration.QuantityTraits.All, t => Assert.Contains($"\"{t.Word}\"", schema, StringComparison.Ordinal));
    }

    [Fact]
    public void Traits_stand_in_the_order_of_the_enumeration() =>
        Assert.All(Glazewright.Design.Calibration.QuantityTraits.All.Select((t, i) => (t, i)), p => Assert.Equal(p.i, (int)p.t.Quantity));
}
