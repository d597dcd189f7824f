using BenchmarkDotNet.Attributes;
using Glazewright.Science.Light;
using Glazewright.Science.Light.Shadows;
using Glazewright.Science.Optics;
using Glazewright.Science.Sun;

namespace Glazewright.Bench.Light;

/// <summary>A year of sun by the minute (budget 0.5 s), one house's gain table (budget 0.3 s), and a light table past 300 bars (budget 1 s).</summary>
[MemoryDiagnoser]
public class LightBench
{
    private Enclosure? _house;

    [GlobalSetup]
    public void Setup()
    {
        GenericCovers.TryFind("polycarbonate-16-triple", out GenericCover? cover);
        var clear = new FaceCovering.Clear(cover!.Optics(CoverCondition.InUse), 0.08, 0.5);
        var panel = new FaceCovering.Opaque(0.7);
        _house = Enclosure.Of(
        [
            Face("left", clear, [new(0, 0, 0), new(30, 0, 0), new(30, 0, 2.3), new(0, 0, 2.3)]),
            Face("right", panel, [new(30, 8, 0), new(0, 8, 0), new(0, 8, 2.9), new(30, 8, 2.9)]),
            Face("roof-left", clear, [new(0, 0, 2.3), new(30, 0, 2.3), new(30, 5.2, 4.9), new(0, 5.2, 4.9)]),
            Face("roof-right", panel, [new(30, 8, 2.9), new(0, 8, 2.9), new(0, 5.2, 4.9), new(30, 5.2, 4.9)]),
            Face("end1", clear, [new(0, 8, 0), new(0, 0, 0), new(0, 0, 2.3), new(0, 5.2, 4.9), new(0, 8, 2.9)]),
            Face("end2", clear, [new(30, 0, 0), new(30, 8, 0), new(30, 8, 2.9), new(30, 5.2, 4.9), new(30, 0, 2.3)]),
            Face("floor", new FaceCovering.CropPlane(0.2), [new(0, 0, 0), new(0, 8, 0), new(30, 8, 0), new(30, 0, 0)]),
        ]);
    }

    [Benchmark]
    public SunYear Year() => SunYear.Compute(2023, 42, -90, -6, 200, 98_900, 9);

    [Benchmark]
    public EnclosureGainTable House() => EnclosureGains.Compute(_house!, null, SunGrid.Standard);

    [Benchmark]
    public EnclosureGainTable HouseWithCurtain() =>
        EnclosureGains.Compute(_house!, new CurtainPlane(2.1, 0.45, 0.35, 0.30, 0.7), SunGrid.Standard);

    /// <summary>1,000 cells, 1,000 sun directions.</summary>
    [Benchmark]
    public LightTable Map() => LightTable.Build(
        Enclosure.Of(_house!.Faces, [.. Bars()]), Surroundings.None,
        ReceivingPlane.Of(new(0, 0, 0.8), new(1, 0, 0), new(0, 1, 0), 30, 8, 40, 25), ScanFineness.Usual,
        [.. Enumerable.Range(0, 1000).Select(i => Vector3d.Towards(-170 + (i % 40 * 4), 4 + (i / 40 * 2.6)))], CancellationToken.None);

    private static IEnumerable<ShadeBar> Bars()
    {
        var up = new Vector3d(0, 0, 1);
        for (int i = 0; i < 100; i++)
        {
            double x = 0.15 + (0.3 * i);
            yield return ShadeBar.FourSided(new(x, 0.05, 2.2), new(x, 5.2, 4.8), up, 0.05, 0.1);
            yield return ShadeBar.FourSided(new(x, 7.95, 2.8), new(x, 5.2, 4.8), up, 0.05, 0.1);
            yield return ShadeBar.FourSided(new(x, 0.05, 0), new(x, 0.05, 2.3), new(0, 1, 0), 0.05, 0.1);
        }
    }

    private static EnclosureFace Face(string id, FaceCovering covering, Vector3d[] polygon) => new(id, polygon, covering, []);
}
