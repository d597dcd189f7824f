using System.Runtime.CompilerServices;
using Extra = Glazewright.Design.Program.CompiledProgram.Extra;

namespace Glazewright.Design.Program;

/// <summary>The alarms.</summary>
internal ref partial struct StepRun
{
    /// <summary>Alarms of the document (a missing reading counts as out of range), then no temperature inside, then one that does not move for 12 h.</summary>
    private void Sound()
    {
        for (int k = 0; k < _p.Alarms.Length; k++)
        {
            CompiledProgram.AlarmPart alarm = _p.Alarms[k];
            int raw = _readings[alarm.Reading];
            Time(k, raw == Missing || raw < alarm.Low || raw > alarm.High, alarm.DelayMs);
        }

        int inside = Read(Reading.InsideTemperature, -5000, 8000);
        Time(_p.Alarms.Length, inside == Missing, 60_000);
        bool same = inside != Missing && inside == X(Extra.LastInside);
        SetX(Extra.SameInsideMs, same ? ProgramInterpreter.Later(X(Extra.SameInsideMs), _dt) : 0);
        SetX(Extra.LastInside, inside);
        Time(_p.Alarms.Length + 1, X(Extra.SameInsideMs) >= DayMs / 2, 0);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly void Time(int alarm, bool bad, int delayMs)
    {
        int at = _p.AlarmAt + alarm * CompiledProgram.PerAlarm;
        _s[at] = bad && _s[at + 1] >= delayMs ? 1 : 0;
        _s[at + 1] = bad ? ProgramInterpreter.Later(_s[at + 1], _dt) : 0;
    }
}
