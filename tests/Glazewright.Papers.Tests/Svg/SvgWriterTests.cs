using System.Text;
using System.Xml.Linq;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Svg;
using Glazewright.Papers.Tests.Drawing;

namespace Glazewright.Papers.Tests.Svg;

public class SvgWriterTests
{
    private static readonly XNamespace Ns = "http://www.w3.org/2000/svg";

    [Fact]
    public void Is_xml_with_title_description_and_true_size()
    {
        XElement svg = XDocument.Parse(SvgWriter.Text(Samples.Section())).Root!;
        Assert.Equal("420mm", svg.Attribute("width")!.Value);
        Assert.Equal("0 0 420 297", svg.Attribute("viewBox")!.Value);
        Assert.Equal("Section of Yard \"A\" & <B>", svg.Element(Ns + "title")!.Value);
        Assert.Equal("A lopsided house.", svg.Element(Ns + "desc")!.Value);
    }

    [Fact]
    public void The_profile_is_one_path_with_its_part_at_true_scale()
    {
        XElement svg = XDocument.Parse(SvgWriter.Text(Samples.Section())).Root!;
        XElement profile = svg.Descendants(Ns + "path").Single(p => p.Attribute("data-part")?.Value == "A/profile");
        Assert.Equal("cut", profile.Attribute("class")!.Value);
        Assert.Equal("M50 150L50 110L150 50L210 90L210 150", profile.Attribute("d")!.Value);
    }

    [Fact]
    public void Every_class_used_is_defined_and_no_machine_dependent_text_is_in()
    {
        string text = SvgWriter.Text(Samples.Section());
        XElement svg = XDocument.Parse(text).Root!;
        string style = svg.Element(Ns + "style")!.Value;
        Assert.All(svg.Descendants().Attributes("class").Select(a => a.Value).Distinct(), c => Assert.Contains($".{c}{{", style));
        Assert.DoesNotContain("\r", text);
        Assert.DoesNotContain("NaN", text);
        Assert.Equal(Encoding.UTF8.GetBytes(text), SvgWriter.Bytes(Samples.Section()));
    }

    [Fact]
    public void Names_with_control_marks_and_emoji_still_make_xml() =>
        XDocument.Parse(SvgWriter.Text(Samples.Section("\u0000🌱 ]]> \uFFFE ירק " + new string('x', 500))));

    [Fact]
    public void In_a_page_the_drawing_needs_no_style_of_its_own_and_draws_the_same()
    {
        string text = SvgWriter.InPage(Samples.Section());
        XElement svg = XDocument.Parse(text).Root!;
        XElement file = XDocument.Parse(SvgWriter.Text(Samples.Section())).Root!;
        // A page's policy lets no style stand in it: neither an element nor an attribute.
        Assert.DoesNotContain("style", text);
        Assert.Null(svg.Attribute("width"));
        string[] tones = [.. Enum.GetNames<Tone>().Select(t => t.ToLowerInvariant())];
        Assert.All(svg.Elements().Descendants().Attributes("class").Select(a => a.Value).Distinct(), c => Assert.Contains(c.Split('-')[1], tones));
        Assert.Equal(file.Descendants(Ns + "path").Select(p => p.Attribute("d")!.Value), svg.Descendants().Where(e => e.Name.LocalName == "path").Select(p => p.Attribute("d")!.Value));
    }
}
