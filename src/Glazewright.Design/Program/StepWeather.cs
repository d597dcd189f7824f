using System.Numerics;

namespace Glazewright.Design.Program;

/// <summary>Vents in wind and rain: how far they may open, and no farther until it has been calmer for a while.</summary>
internal ref partial struct StepRun
{
    private void HoldInWeather()
    {
        for (int k = 0; k < _p.Weather.Length; k++)
        {
            ref readonly CompiledProgram.WeatherPart limit = ref _p.Weather[k];
            int wind = Read(Reading.Wind, 0, 10_000);
            bool rain = Read(Reading.Rain, 0, 1) == 1;
            int byWind = wind == Missing ? limit.InWind : wind >= limit.Storm ? 0 : wind >= limit.Wind ? limit.InWind : 10_000;
            int now = 10_000 - Math.Min(byWind, rain ? limit.InRain : 10_000);
            ref int held = ref _s[_p.WeatherAt + k * CompiledProgram.PerWeather];
            ref int since = ref _s[_p.WeatherAt + k * CompiledProgram.PerWeather + 1];
            ref int byRain = ref _s[_p.WeatherAt + k * CompiledProgram.PerWeather + 2];
            if (now >= held || since >= limit.CalmMs)
            {
                held = now;
                since = 0;
                byRain = rain && limit.InRain < byWind ? 1 : 0;
            }
            else
            {
                since = ProgramInterpreter.Later(since, _dt);
            }

            if (held > 0)
            {
                HoldBack(limit, 10_000 - held, byRain != 0 ? ReasonCode.Rain : ReasonCode.Wind, byRain != 0 ? 0 : wind, (limit.CalmMs - since) / 1000);
            }
        }
    }

    private void HoldBack(in CompiledProgram.WeatherPart limit, int most, ReasonCode why, int wind, int toGoS)
    {
        for (ulong rest = limit.Motors; rest != 0; rest &= rest - 1)
        {
            int i = BitOperations.TrailingZeroCount(rest);
            if (most == 0 && (_want[i] > 0 || Has(_on, i)))
            {
                Stop(i, why, wind, most, toGoS);
            }
            else if (_want[i] > most)
            {
                _want[i] = most;
                Why(i, why, wind, most, toGoS);
            }
        }
    }
}
