using System.Globalization;

namespace Glazewright.Bench.Package;

/// <summary>"package-ten [repeats]": a range of ten equal houses of 26 by 96 ft, 18 ft between them, which is to be made in 20 s on two cores.</summary>
internal static class TenHouses
{
    internal const string Word = "package-ten";

    internal static string Job { get; } = $$"""
        { "glazewright": 1, "name": "Ten houses", "site": { "weather": { "file": "demo-continental-42N.epw.gz" } },
          "houses": [{{string.Join(", ", Enumerable.Range(0, 10).Select(House))}}] }
        """;

    private static string House(int k) => string.Create(
        CultureInfo.InvariantCulture, $$"""{ "id": "{{(char)('A' + k)}}", "width": "26 ft", "length": "96 ft", "x": "0 ft", "y": "{{44 * k}} ft" }""");
}
