using System.Runtime.CompilerServices;
using Extra = Glazewright.Design.Program.CompiledProgram.Extra;

namespace Glazewright.Design.Program;

/// <summary>The alarms.</summary>
internal ref partial struct StepRun
{
    /// <summary>Two thermometers in the same air that are 2 K apart for a quarter of an hour: one of them is wrong (our choice; good ones differ by a few tenths, places in a house by a kelvin).</summary>
    internal const int ApartCentiK = 200;

    internal const int ApartMs = 900_000;

    /// <summary>Alarms of the document (a missing reading counts as out of range), then no temperature inside, then one that does not move for 12 h, then two that disagree.</summary>
    private void Sound()
    {
        CompiledProgram.AlarmPart[] alarms = _p.Alarms;
        ulong bad = 0;
        for (int k = 0; k < alarms.Length; k++)
        {
            ref readonly CompiledProgram.AlarmPart alarm = ref alarms[k];
            int raw = _readings[alarm.Reading];
            bad |= raw >= alarm.Low && raw <= alarm.High && raw != Missing ? 0 : 1UL << k;
        }

        int inside = Read(Reading.InsideTemperature, -5000, 8000);
        bool same = inside != Missing && inside == X(Extra.LastInside);
        int sameMs = same ? ProgramInterpreter.Later(X(Extra.SameInsideMs), _dt) : 0;
        SetX(Extra.SameInsideMs, sameMs);
        SetX(Extra.LastInside, inside);
        bad |= inside == Missing ? 1UL << alarms.Length : 0;
        bad |= sameMs >= DayMs / 2 ? 2UL << alarms.Length : 0;
        int second = Read(Reading.SecondTemperature, -5000, 8000);
        bad |= inside != Missing && second != Missing && Math.Abs(inside - second) >= ApartCentiK ? 4UL << alarms.Length : 0;
        if ((bad | (uint)X(Extra.AlarmBusy)) == 0)
        {
            return;
        }

        for (int k = 0; k < alarms.Length; k++)
        {
            Time(k, Has(bad, k), alarms[k].DelayMs);
        }

        Time(alarms.Length, Has(bad, alarms.Length), 60_000);
        Time(alarms.Length + 1, Has(bad, alarms.Length + 1), 0);
        Time(alarms.Length + 2, Has(bad, alarms.Length + 2), ApartMs);
        SetX(Extra.AlarmBusy, bad == 0 ? 0 : 1);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly void Time(int alarm, bool bad, int delayMs)
    {
        int at = _p.AlarmAt + alarm * CompiledProgram.PerAlarm;
        _s[at] = bad && _s[at + 1] >= delayMs ? 1 : 0;
        _s[at + 1] = bad ? ProgramInterpreter.Later(_s[at + 1], _dt) : 0;
    }
}
