using System.Numerics;
using Extra = Glazewright.Design.Program.CompiledProgram.Extra;

namespace Glazewright.Design.Program;

/// <summary>What sensors stop at once: fans without an open louver, fog near saturation, water on the pad in the cold and the damp; and what needs a stopped one.</summary>
internal ref partial struct StepRun
{
    private void StopBySensors()
    {
        GuardLouver();
        HoldInWeather();
        bool unknown = _humidity == Missing;
        if (unknown || _humidity >= _p.HumidityRef.FogCeiling)
        {
            for (ulong rest = _p.FogMask; rest != 0; rest &= rest - 1)
            {
                int i = BitOperations.TrailingZeroCount(rest);
                if (_want[i] > 0 || Has(_on, i))
                {
                    Stop(i, unknown ? ReasonCode.HumidityUnknown : ReasonCode.NearSaturation, unknown ? 0 : _humidity, _p.HumidityRef.FogCeiling, 0);
                }
            }
        }

        if (_outside != Missing && _outside < _p.Cold.NoWaterBelow)
        {
            for (ulong rest = _p.PumpMask & (_on | _wanted); rest != 0; rest &= rest - 1)
            {
                Stop(BitOperations.TrailingZeroCount(rest), ReasonCode.TooColdForWater, _outside, _p.Cold.NoWaterBelow, 0);
            }
        }
        else if ((_p.PumpMask & (_on | _wanted)) != 0 && Read(Reading.OutsideHumidity, 0, 1300) is int damp && damp != Missing && damp > _p.Cold.NoWaterAbove)
        {
            for (ulong rest = _p.PumpMask & (_on | _wanted); rest != 0; rest &= rest - 1)
            {
                Stop(BitOperations.TrailingZeroCount(rest), ReasonCode.TooDampForWater, damp, _p.Cold.NoWaterAbove, 0);
            }
        }

        if ((_on & _p.OwnerMask) == 0)
        {
            return;
        }

        // What needs a stopped one stops with it.
        foreach (int i in _p.Order)
        {
            if (!Has(_on & _p.OwnerMask, i))
            {
                continue;
            }

            for (int c = _p.NeedStart[i]; c < _p.NeedStart[i + 1]; c++)
            {
                if (Has(_on, i) && !Has(_stopped, i) && (_p.NeedMask[c] & _on & ~_stopped) == 0)
                {
                    Stop(i, ReasonCode.Needs, BitOperations.TrailingZeroCount(_p.NeedMask[c]), 0, 0);
                }
            }
        }
    }

    private void Stop(int i, ReasonCode reason, int a, int b, int c)
    {
        _stopped |= 1UL << i;
        Deny(i, reason, a, b, c);
    }

    /// <summary>
    /// Without proof of the open louver only so many fans run. If the proof stays away after the louver's travel and a grace, and the static pressure is high or
    /// unknown, all of them stop for the lock time.
    /// </summary>
    private void GuardLouver()
    {
        if (_p.ProofMask == 0)
        {
            return;
        }

        bool proved = _readings[(int)Reading.LouverOpenProof] == 1;
        int locked = X(Extra.GuardLockedMs);
        int pressure = Read(Reading.StaticPressure, -5000, 5000);
        bool running = (_on & _p.ProofMask) != 0;
        int missing = proved || !running ? 0 : ProgramInterpreter.Later(X(Extra.ProofMissingMs), _dt);
        bool high = pressure == Missing || pressure > _p.GuardLimit;
        if (locked == 0 && !proved && running && high && X(Extra.ProofMissingMs) >= _p.GuardGraceMs)
        {
            locked = Math.Max(1, _p.GuardLockMs);
            missing = 0;
        }

        SetX(Extra.ProofMissingMs, missing);
        SetX(Extra.GuardLockedMs, Math.Max(0, locked - _dt));
        int allowed = locked > 0 ? 0 : proved ? 64 : _p.FansWithoutProof;
        _proofAllowed = allowed;
        if (!running || allowed >= 64)
        {
            return;
        }

        int kept = 0;
        foreach (int i in _p.Order)
        {
            if (!Has(_p.ProofMask, i) || !Has(_on, i))
            {
                continue;
            }

            if (kept < allowed)
            {
                kept++;
            }
            else if (locked > 0)
            {
                Stop(i, ReasonCode.LouverFault, pressure, _p.GuardLimit, locked / 1000);
            }
            else
            {
                Stop(i, ReasonCode.NoLouverProof, allowed, 0, 0);
            }
        }
    }
}
