using Glazewright.Papers.Exchange;

namespace Glazewright.Bench.Convergence;

/// <summary>One setting of a sweep.</summary>
/// <param name="Setting">Its words, for the table.</param>
/// <param name="Count">What it is counted in.</param>
/// <param name="Values">Errors, %, one a curve; not below 0.</param>
internal sealed record Level(string Setting, double Count, IReadOnlyList<double> Values);

/// <summary>How an error falls as a count grows.</summary>
/// <param name="Id">File name.</param>
/// <param name="Title">What it shows.</param>
/// <param name="CountName">What is counted.</param>
/// <param name="ErrorName">What the error is, with its unit.</param>
/// <param name="Curves">Names of the curves.</param>
/// <param name="Levels">Settings, counts rising.</param>
/// <param name="UsedCount">What the product uses.</param>
/// <param name="Guides">Slopes that theory speaks of, with their words: error ∝ count^−slope.</param>
internal sealed record Sweep(
    string Id,
    string Title,
    string CountName,
    string ErrorName,
    IReadOnlyList<string> Curves,
    IReadOnlyList<Level> Levels,
    double UsedCount,
    IReadOnlyList<(double Slope, string Words)> Guides)
{
    /// <summary>Written below the table, not drawn.</summary>
    internal IReadOnlyList<Level> Beside { get; init; } = [];

    /// <summary>Fitted slope of a curve over all its levels: error ∝ count^−slope, least squares in logarithms.</summary>
    internal double Slope(int curve)
    {
        double[] x = [.. Levels.Select(l => Math.Log(l.Count))];
        double[] y = [.. Levels.Select(l => Math.Log(Math.Max(1e-9, l.Values[curve])))];
        double meanX = x.Average();
        double meanY = y.Average();
        return -x.Zip(y, (a, b) => (a - meanX) * (b - meanY)).Sum() / x.Sum(a => (a - meanX) * (a - meanX));
    }

    internal string Csv()
    {
        CsvText csv = new(["setting", CountName, .. Curves.Select(c => $"{c}, %"), "used by the program"]);
        foreach (Level level in Levels.Concat(Beside))
        {
            csv.Cell(level.Setting).Cell((int)level.Count);
            foreach (double value in level.Values)
            {
                csv.Cell(value, 6);
            }

            csv.Cell(level.Count == UsedCount ? "yes" : "").End();
        }

        csv.Cell("fitted slope").Cell("");
        foreach (int c in Enumerable.Range(0, Curves.Count))
        {
            csv.Cell(Slope(c), 2);
        }

        return csv.Cell("").End().ToString();
    }
}
