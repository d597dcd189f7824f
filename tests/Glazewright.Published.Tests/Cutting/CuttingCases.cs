namespace Glazewright.Published.Tests.Cutting;

/// <summary>Finds the bin-packing instances that may be read but not committed, and reads their two formats.</summary>
internal static class CuttingCases
{
    /// <summary>The folder, or a loud skip of the calling test.</summary>
    public static string Folder()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            string folder = Path.Combine(at.FullName, "shared", "cases", "cutting");
            if (Directory.Exists(folder))
            {
                return folder;
            }
        }

        Assert.Skip("No folder shared/cases/cutting above the tests: the published cutting instances were NOT checked.");
        return string.Empty;
    }

    /// <summary>Proved optima by instance name.</summary>
    public static Dictionary<string, int> Optima(string folder) =>
        File.ReadLines(Path.Combine(folder, "known_optima.tsv")).Skip(1).Select(line => line.Split('\t'))
            .ToDictionary(cell => cell[0], cell =>
            {
                Assert.Equal(cell[1], cell[2]);
                return Number(cell[1]);
            });

    /// <summary>A Scholl instance: n, capacity, n sizes.</summary>
    public static (int Capacity, int[] Sizes) Scholl(string path)
    {
        int[] numbers = [.. Words(path).Select(Number)];
        Assert.Equal(numbers.Length, numbers[0] + 2);
        return (numbers[1], numbers[2..]);
    }

    /// <summary>An OR-Library file: number of instances; then name, "capacity n best-known", n sizes for each.</summary>
    public static Dictionary<string, (int Capacity, int[] Sizes)> OrLibrary(string path)
    {
        string[] words = [.. Words(path)];
        Dictionary<string, (int, int[])> instances = [];
        int at = 1;
        for (int k = 0; k < Number(words[0]); k++)
        {
            int count = Number(words[at + 2]);
            instances.Add(words[at], (Number(words[at + 1]), [.. words[(at + 4)..(at + 4 + count)].Select(Number)]));
            at += 4 + count;
        }

        return instances;
    }

    private static IEnumerable<string> Words(string path) =>
        File.ReadAllText(path).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);

    private static int Number(string text) => (int)decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
