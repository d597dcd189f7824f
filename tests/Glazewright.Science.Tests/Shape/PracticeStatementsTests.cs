using Glazewright.Science.Shape;
using Glazewright.Science.Sun;

namespace Glazewright.Science.Tests.Shape;

public class PracticeStatementsTests
{
    private const double FootM = 0.3048;

    // What the page prints is what the program computes.
    [Fact]
    public void The_page_holds_the_tables()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "Glazewright.slnx")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        string page = File.ReadAllText(Path.Combine(folder!, "docs", "methods", "shape.md")).ReplaceLineEndings("\n");
        TestContext.Current.TestOutputHelper?.WriteLine(PracticeStatements.Tables());
        Assert.Contains(PracticeStatements.Tables(), page, StringComparison.Ordinal);
    }

    // Model: the full solar algorithm at noon of 21 June and rays traced by brute force, an inch apart.
    [Theory]
    [InlineData(30, 8, 6)]
    [InlineData(42, 8, 6)]
    [InlineData(42, 12, 10)]
    [InlineData(55, 6, 4)]
    public void Strip_against_rays_and_the_full_sun(double latitudeDeg, double eaveFt, double pitch)
    {
        GableSection s = GableSection.Closed(30 * FootM, eaveFt * FootM, eaveFt * FootM, 15 * FootM, pitch / 12);
        double noonDeg = NoonDeg(latitudeDeg);
        int dark = Enumerable.Range(0, 360).Count(i => SectionRayTrace.PartSeen(s, 0, (i + 0.5) / 12 * FootM, 1e-9, noonDeg) >= 3);
        Assert.Equal(dark / 12.0, PracticeStatements.MiddleRidgeStripM(latitudeDeg, eaveFt * FootM, pitch / 12) / FootM, 0.1);
    }

    [Theory]
    [InlineData(50, 12)]
    [InlineData(54, 8)]
    [InlineData(60, 8)]
    public void Reach_against_rays_and_the_full_sun(double latitudeDeg, double eaveFt)
    {
        GableSection s = PracticeStatements.LongSlope(eaveFt * FootM);
        double noonDeg = NoonDeg(latitudeDeg);
        int lit = Enumerable.Range(0, 400).Count(i => SectionRayTrace.PartSeen(s, 0, s.WidthM - 1e-7, (i + 0.5) / 12 * FootM, noonDeg) is 1 or 2);
        Assert.Equal(lit / 12.0, PracticeStatements.LongSlopeReachM(latitudeDeg, eaveFt * FootM) / FootM, 0.1);
    }

    private static double NoonDeg(double latitudeDeg) => Enumerable.Range(0, 61).Max(minute =>
        SolarPosition.At(JulianDay.Of(2011, 6, 21, 11.5 + (minute / 60.0), 0), latitudeDeg, 0, 0, 101_325, 15, SolarPosition.DeltaTSeconds).ElevationDeg);
}
