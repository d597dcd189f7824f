using Glazewright.Design.Catalogues;
using Glazewright.Design.Pipeline;

namespace Glazewright.Design.Tests.Catalogues;

public class CatalogueReaderTests
{
    [Fact]
    public void The_generic_catalogue_reads_and_has_each_kind()
    {
        Catalogue c = CatalogueReader.Generic;
        Assert.Equal(9400 * 0.00047194745, c.Fans.Single(f => f.Id == "exhaust-36").Points[2].FlowM3PerS, 1e-6);
        Assert.Equal(1.0, c.Fogs.Single(f => f.Id == "fog-1000").NozzleKgPerS / (3.785411784e-3 * 998 / 3600), 1e-9);
        Assert.Equal(125_000 * 0.29307107, c.Heaters.Single(h => h.Id == "sealed-125").OutputW, 0.5);
        Assert.NotEmpty(c.Louvers);
        Assert.NotEmpty(c.Pads);
        Assert.NotEmpty(c.Curtains);
        Assert.NotEmpty(c.Circulation);
        Assert.NotEmpty(c.PressureFans);
        Assert.NotEmpty(c.Lamps);
        Assert.NotEmpty(c.Pipes);
        Assert.Equal(64, c.Sha256.Length);
        Assert.Equal(c.Ids.Count(), c.Ids.Distinct().Count());
    }

    [Fact]
    public void Its_hash_is_that_of_its_text_and_stage_keys_can_take_it()
    {
        Assert.True(CatalogueReader.TryRead("{\"fans\": []}", out Catalogue? a, out _));
        Assert.True(CatalogueReader.TryRead("{\"fans\": [] }", out Catalogue? b, out _));
        Assert.NotEqual(a.Sha256, b.Sha256);
        Assert.NotEqual(Canonical.Hash(a), Canonical.Hash(b));
    }

    [Theory]
    [InlineData("not json", "")]
    [InlineData("""{"louvers":[{"id":"a","name":"b","size":24,"freeFraction":0.7,"dischargeCoefficient":0.6,"travel":"60 s","power":"9 W","mass":"9 lb"}]}""", "size")]
    [InlineData("""{"louvers":[{"id":"a","name":"b","size":"24 cfm","freeFraction":0.7,"dischargeCoefficient":0.6,"travel":"60 s","power":"9 W","mass":"9 lb"}]}""", "size")]
    [InlineData("""{"louvers":[{"id":"a","name":"b","size":"24 in","freeFraction":7,"dischargeCoefficient":0.6,"travel":"60 s","power":"9 W","mass":"9 lb"}]}""", "freeFraction")]
    [InlineData("""{"louvers":[{"name":"b"}]}""", "id")]
    public void A_wrong_entry_is_told(string json, string about)
    {
        Assert.False(CatalogueReader.TryRead(json, out _, out string? fault));
        Assert.Contains(about, fault, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fan_whose_flow_rises_with_pressure_is_refused_by_name()
    {
        Assert.False(CatalogueReader.TryRead(
            """{"pressureFans":[{"id":"odd-fan","name":"f","diameter":"14 in","volts":"115 V","filterLoss":"0.1 inwg","filterAt":"900 cfm","mass":"9 lb","at":["0 inwg","0.1 inwg"],"flow":["900 cfm","950 cfm"],"power":["90 W","95 W"]}]}""",
            out _, out string? fault));
        Assert.StartsWith("odd-fan: its tested points are no fan curve", fault, StringComparison.Ordinal);
    }
}
