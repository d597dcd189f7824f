using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Year;
using Glazewright.Papers.Exchange;
using Glazewright.Papers.Tests.Sets;

namespace Glazewright.Papers.Tests.Exchange;

public class YearCsvTests
{
    [Fact]
    public void The_year_is_a_row_an_hour_and_each_column_says_what_the_year_holds()
    {
        YearResult year = SampleSource.Make().Houses[0].Year;
        string[][] rows = Rows(year);
        Assert.Equal(8761, rows.Length);
        Assert.Equal(["1", "1", "1"], rows[1][..3]);
        Assert.Equal(["12", "31", "24"], rows[^1][..3]);
        foreach (int h in (int[])[0, 4444, 8759])
        {
            Assert.Equal(year.Hours.OutsideC[h], Value(rows, h, "outside_c"), 0.051);
            Assert.Equal(year.Hours.InsideC[h], Value(rows, h, "inside_c"), 0.051);
            Assert.Equal(year.Hours.TargetC[h], Value(rows, h, "target_c"), 0.051);
            Assert.Equal(year.Hours.DepartureK[h], Value(rows, h, "inside_less_target_k"), 0.051);
        }
    }

    [Fact]
    public void A_second_curtain_has_a_column_of_its_own_only_where_there_is_one()
    {
        YearResult year = SampleSource.Make().Houses[0].Year;
        Assert.DoesNotContain("second_curtain_drawn_fraction", Rows(year)[0]);
        YearResult two = year with { Hours = year.Hours with { SecondCurtainFraction = Enumerable.Repeat(0.25f, 8760).ToEqList() } };
        Assert.Equal(0.25, Value(Rows(two), 77, "second_curtain_drawn_fraction"));
    }

    private static string[][] Rows(YearResult year) => [.. YearCsv.Hours(year).TrimEnd('\n').Split('\n').Select(r => r.Split(','))];

    private static double Value(string[][] rows, int hour, string column) => double.Parse(rows[hour + 1][Array.IndexOf(rows[0], column)], CultureInfo.InvariantCulture);
}
