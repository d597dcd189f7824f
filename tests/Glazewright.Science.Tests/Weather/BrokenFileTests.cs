using CsCheck;
using Glazewright.Science.Weather;

namespace Glazewright.Science.Tests.Weather;

/// <summary>Whatever happened to a file on its way, the reader answers: a year that is complete, or a list of problems that is not empty. It never throws.</summary>
public class BrokenFileTests
{
    private static readonly byte[] s_plain = WeatherText.Lines().Bytes();

    [Fact]
    public void Cut_anywhere() =>
        Gen.Int[0, s_plain.Length].Sample(length => Answers(s_plain[..length]), iter: 60);

    [Fact]
    public void With_bytes_changed_in_the_headers_or_the_rows() =>
        Gen.Select(Gen.Bool, Gen.Int, Gen.Byte).Array[1, 30].Sample(
            changes =>
            {
                byte[] bytes = [.. s_plain];
                foreach ((bool inHeader, int at, byte value) in changes)
                {
                    bytes[(int)((uint)at % (uint)(inHeader ? 300 : bytes.Length))] = value;
                }

                Answers(bytes);
            },
            iter: 60);

    [Fact]
    public void Packed_and_then_damaged()
    {
        byte[] packed = WeatherText.Gzip(s_plain);
        Gen.Select(Gen.Int[2, packed.Length - 1], Gen.Byte, Gen.Int[0, packed.Length]).Sample(
            (at, value, length) =>
            {
                byte[] bytes = [.. packed];
                bytes[at] = value;
                Answers(bytes[..length]);
                Answers(bytes);
            },
            iter: 40);
    }

    [Fact]
    public void Noise() => Gen.Byte.Array[0, 3000].Sample(noise => Answers(noise), iter: 300);

    private static void Answers(byte[] bytes)
    {
        switch (WeatherFile.Read(bytes))
        {
            case WeatherReading.Read { Year: WeatherYear year }:
                Assert.True(year.DryBulbC.IsComplete && year.DewPointC.IsComplete && year.PressurePa.IsComplete && year.GhiWhm2.IsComplete
                    && year.DniWhm2.IsComplete && year.DhiWhm2.IsComplete && year.WindMs.IsComplete && year.HorizontalInfraredWhm2.IsComplete);
                break;
            case WeatherReading.Refused refused:
                Assert.NotEmpty(refused.Problems);
                Assert.All(refused.Problems, p => Assert.False(string.IsNullOrWhiteSpace(p.What) || string.IsNullOrWhiteSpace(p.Right)));
                break;
        }
    }
}
