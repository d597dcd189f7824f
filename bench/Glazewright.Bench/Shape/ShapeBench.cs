using BenchmarkDotNet.Attributes;
using Glazewright.Science.Optics;
using Glazewright.Science.Shape;
using Glazewright.Science.Weather;

namespace Glazewright.Bench.Shape;

/// <summary>One shape through the section (budget 1 ms a core: 10,000 shapes in 10 s on 2 cores leave 2 ms), and the year before it.</summary>
[MemoryDiagnoser]
public class ShapeBench
{
    private SunSamples? _samples;
    private SectionLight? _light;
    private SectionLight.Bench? _room;
    private SectionCovers? _covers;
    private WeatherYear? _weather;

    [GlobalSetup]
    public void Setup()
    {
        _weather = ((WeatherReading.Read)WeatherFile.Read(File.ReadAllBytes(Demo()))).Year;
        _samples = SunSamples.Of(_weather, 0.2);
        SectionYear year = SectionYear.Of(_samples, 187);
        GenericCovers.TryFind("polycarbonate-16-triple", out GenericCover? cover);
        SectionCover clear = new SectionCover.Clear(year.Through(cover!.Optics(CoverCondition.InUse), 0.08));
        SectionCover panel = new SectionCover.Opaque(0.7);
        _covers = new SectionCovers(panel, clear, clear, clear, panel, panel);
        _light = new SectionLight(year, 30, 0.8, 0.1);
        _room = _light.Room();
    }

    [Benchmark]
    public double Shape()
    {
        _light!.Run(new GableSection(8, 2.3, 2.8, 5.2, 4.9), 0.76, _covers!, _room!);
        return _room!.MeanWhPerM2(11);
    }

    [Benchmark]
    public SunSamples Samples() => SunSamples.Of(_weather!, 0.2);

    [Benchmark]
    public SectionYear Year() => SectionYear.Of(_samples!, 187);

    private static string Demo()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            string path = Path.Combine(at.FullName, "examples", "weather", "demo-continental-42N.epw.gz");
            if (File.Exists(path))
            {
                return path;
            }
        }

        throw new FileNotFoundException("examples/weather/demo-continental-42N.epw.gz");
    }
}
