using BenchmarkDotNet.Attributes;
using Glazewright.Science.Weather;

namespace Glazewright.Bench.Weather;

/// <summary>Reading a year, looking it over, and making 525,600 minutes of it (budget 0.3 s).</summary>
[MemoryDiagnoser]
public class WeatherBench
{
    private byte[] _file = [];
    private WeatherYear? _year;

    [GlobalSetup]
    public void Setup()
    {
        DirectoryInfo? at = new(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "examples", "weather", "demo-continental-42N.epw.gz")))
        {
            at = at.Parent;
        }

        _file = File.ReadAllBytes(Path.Combine(at!.FullName, "examples", "weather", "demo-continental-42N.epw.gz"));
        _year = Read();
    }

    [Benchmark]
    public WeatherYear Read() => ((WeatherReading.Read)WeatherFile.Read(_file)).Year;

    [Benchmark]
    public WeatherReport Report() => WeatherReport.Of(_year!);

    [Benchmark]
    public MinuteWeather Expand() => MinuteWeather.Expand(_year!);
}
