using Glazewright.Science.Weather;

namespace Glazewright.Published.Tests.Weather;

/// <summary>The weather files that stay outside the repository: looked for upward from the test, skipped loudly when absent.</summary>
internal static class WeatherCases
{
    public static string? Folder { get; } = Find();

    public static string FileOrSkip(string name)
    {
        string path = Path.Combine(Folder ?? string.Empty, name);
        Assert.SkipWhen(Folder is null || !File.Exists(path), $"shared/cases/weather/{name} is not here: this check against real weather was NOT made.");
        return path;
    }

    public static WeatherYear ReadOrSkip(string name)
    {
        WeatherReading reading = WeatherFile.Read(File.ReadAllBytes(FileOrSkip(name)));
        if (reading is WeatherReading.Refused refused)
        {
            Assert.Fail(string.Join("; ", refused.Problems.Select(p => $"{p.Line}:{p.Column} {p.What}")));
        }

        return ((WeatherReading.Read)reading).Year;
    }

    private static string? Find()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            string candidate = Path.Combine(at.FullName, "shared", "cases", "weather");
            if (Directory.Exists(candidate))
            {
                return candidate;
            }
        }

        return null;
    }
}
