using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Extra = Glazewright.Design.Program.CompiledProgram.Extra;

namespace Glazewright.Design.Program;

/// <summary>
/// From wishes to commands. Order of rank: stops by sensors (louver not proved, near saturation), then interlocks between actuators, then least times on and off, then the wishes.
/// Only a stop by a sensor cuts a least time on. An interlock never does: the one that may not join waits until the other has stopped.
/// </summary>
internal ref partial struct StepRun
{
    /// <summary>A motor counts as there for what needs it from a quarter of its way.</summary>
    private const int EnoughLevel = 2500;

    private const int LongRuntime = 2_000_000_000;

    private void Settle()
    {
        _on = _p.ReadMask(_s, Extra.OnMask);
        _pulse = -1;
        StopBySensors();
        if ((_wanted & (_p.OwnerMask | _p.WinnerMask)) != 0)
        {
            Forbid();
        }

        if (_p.Limits.Length > 0)
        {
            ForbidSurplus();
        }

        // A stopped motor is not shut at once: until it is, it counts as open.
        _nextOn = _on & ~(_stopped & ~_p.MovingMask);
        if ((_nextOn & ~_wanted) != 0)
        {
            foreach (int i in Reversed())
            {
                SwitchOff(i);
            }
        }

        if ((_wanted & ~_nextOn & ~_stopped) != 0)
        {
            foreach (int i in _p.Order)
            {
                SwitchOn(i);
            }
        }

        for (ulong rest = _nextOn & _p.LeastMask; rest != 0; rest &= rest - 1)
        {
            int i = BitOperations.TrailingZeroCount(rest);
            _want[i] = Math.Max(_want[i], _p.LeastLevel[i]);
        }

        Conclude();
    }

    private readonly int At(int actuator, int part) => _s[_column * part + actuator];

    private readonly bool Has(ulong mask, int i) => (mask >> i & 1) != 0;

    private readonly Backwards Reversed() => new(_p.Order);

    /// <summary>Among wishes alone: what lacks its need, and what loses, is not wished for.</summary>
    private void Forbid()
    {
        ulong bound = _p.OwnerMask | _p.WinnerMask;
        foreach (int i in _p.Order)
        {
            if (!Has(_wanted & bound, i))
            {
                continue;
            }

            for (int c = _p.NeedStart[i]; c < _p.NeedStart[i + 1]; c++)
            {
                if ((_p.NeedMask[c] & _wanted) == 0)
                {
                    int need = BitOperations.TrailingZeroCount(_p.NeedMask[c]);
                    Deny(i, ReasonCode.Needs, need, At(need, CompiledProgram.Level), 0);
                    break;
                }
            }

            if (_want[i] <= 0)
            {
                continue;
            }

            for (ulong rest = _p.Losers[i] & _wanted; rest != 0; rest &= rest - 1)
            {
                Deny(BitOperations.TrailingZeroCount(rest), ReasonCode.NotWith, i, 0, 0);
            }
        }
    }

    /// <summary>What needs others is settled before them, so they know whether they are still needed.</summary>
    private void SwitchOff(int i)
    {
        if (!Has(_nextOn, i) || _want[i] > 0)
        {
            return;
        }

        int needer = StillNeeding(i);
        if (needer >= 0)
        {
            Why(i, ReasonCode.NeededBy, needer, 0, 0);
        }
        else if (At(i, CompiledProgram.Since) < _p.MinOnMs[i] && !Has(_p.MovingMask, i))
        {
            Why(i, ReasonCode.LeastTimeOn, At(i, CompiledProgram.Since) / 1000, _p.MinOnMs[i] / 1000, 0);
            Due(_p.MinOnMs[i] - At(i, CompiledProgram.Since));
        }
        else if (!Has(_p.MovingMask, i))
        {
            _nextOn &= ~(1UL << i);
        }
    }

    /// <summary>An actuator that stays on and has no other need surely staying; −1 for none.</summary>
    private readonly int StillNeeding(int i)
    {
        if (!Has(_p.NeededMask, i))
        {
            return -1;
        }

        for (int c = 0; c < _p.NeedOwner.Length; c++)
        {
            if (Has(_p.NeedMask[c], i) && Has(_nextOn, _p.NeedOwner[c]) && (_p.NeedMask[c] & ~(1UL << i) & _nextOn & _wanted) == 0)
            {
                return _p.NeedOwner[c];
            }
        }

        return -1;
    }

    private void SwitchOn(int i)
    {
        if (_want[i] <= 0 || Has(_nextOn, i) || Has(_stopped, i))
        {
            return;
        }

        if (Has(_p.ProofMask, i) && BitOperations.PopCount(_nextOn & _p.ProofMask) >= _proofAllowed)
        {
            int locked = X(Extra.GuardLockedMs);
            Command why = locked > 0
                ? new Command(0, (int)ReasonCode.LouverFault, Read(Reading.StaticPressure, -5000, 5000), _p.GuardLimit, locked / 1000)
                : new Command(0, (int)ReasonCode.NoLouverProof, _proofAllowed, 0, 0);
            _commands[i] = why;
            return;
        }

        if (At(i, CompiledProgram.Since) < _p.MinOffMs[i])
        {
            Why(i, ReasonCode.LeastTimeOff, At(i, CompiledProgram.Since) / 1000, _p.MinOffMs[i] / 1000, 0);
            Due(_p.MinOffMs[i] - At(i, CompiledProgram.Since));
            return;
        }

        ulong inTheWay = _p.Partners[i] & _nextOn;
        if (inTheWay != 0)
        {
            Why(i, ReasonCode.WaitsFor, BitOperations.TrailingZeroCount(inTheWay), 0, 0);
            return;
        }

        if (_p.Limits.Length > 0 && !LeavesRoom(i))
        {
            return;
        }

        for (int c = _p.NeedStart[i]; c < _p.NeedStart[i + 1]; c++)
        {
            if (!NeedIsThere(_p.NeedMask[c]))
            {
                int need = BitOperations.TrailingZeroCount(_p.NeedMask[c]);
                Why(i, ReasonCode.Needs, need, At(need, CompiledProgram.Level), 0);
                return;
            }
        }

        _nextOn |= 1UL << i;
    }

    /// <summary>A motor must already stand far enough and not be on its way shut; a machine must run.</summary>
    private readonly bool NeedIsThere(ulong mask)
    {
        for (ulong rest = mask & _nextOn; rest != 0; rest &= rest - 1)
        {
            int n = BitOperations.TrailingZeroCount(rest);
            if (!Has(_p.MovingMask, n) || (At(n, CompiledProgram.Level) >= EnoughLevel && _want[n] >= EnoughLevel))
            {
                return true;
            }
        }

        return false;
    }

    private readonly void Why(int i, ReasonCode reason, int a, int b, int c) => _commands[i] = new Command(0, (int)reason, a, b, c);

    // Eight actuators at a time; motors have driven before, their new level stands in their wish.
    private void Conclude()
    {
        ulong on = 0, moving = _p.MovingMask, next = _nextOn;
        for (ulong rest = moving; rest != 0; rest &= rest - 1)
        {
            int i = BitOperations.TrailingZeroCount(rest);
            _want[i] = Moved(i, At(i, CompiledProgram.Level));
        }

        int column = _column;
        ref int levels = ref MemoryMarshal.GetReference(_s), wants = ref MemoryMarshal.GetReference(_want);
        ref int sinces = ref Unsafe.Add(ref levels, column * CompiledProgram.Since), runtimes = ref Unsafe.Add(ref levels, column * CompiledProgram.Runtime);
        Vector256<int> none = Vector256<int>.Zero, one = Vector256<int>.One, dt = Vector256.Create(_dt), longest = Vector256.Create(ProgramInterpreter.LongAgoMs - _dt);
        Vector256<int> tenths = Vector256.Create(Math.Max(1, _dt / 100)), full = Vector256.Create(LongRuntime), lanes = Vector256.Create(1, 2, 4, 8, 16, 32, 64, 128), moved = none;
        for (int at = 0; at < column; at += Vector256<int>.Count)
        {
            Vector256<int> level = Vector256.LoadUnsafe(ref levels, (nuint)at), want = Vector256.LoadUnsafe(ref wants, (nuint)at);
            Vector256<int> since = Vector256.LoadUnsafe(ref sinces, (nuint)at), ran = Vector256.LoadUnsafe(ref runtimes, (nuint)at);
            Vector256<int> stays = Vector256.Equals(Vector256.Create((int)(next >> at)) & lanes, lanes), motor = Vector256.Equals(Vector256.Create((int)(moving >> at)) & lanes, lanes);
            Vector256<int> switched = stays & Vector256.Max(Vector256.ConditionalSelect(Vector256.GreaterThan(want, none), want, level), one);
            Vector256<int> was = Vector256.GreaterThan(level, none), stood = level;
            level = Vector256.ConditionalSelect(motor, want, switched);
            moved |= level ^ stood;
            Vector256<int> now = Vector256.GreaterThan(level, none);
            level.StoreUnsafe(ref levels, (nuint)at);
            (dt + (Vector256.Min(since, longest) & Vector256.Equals(was, now))).StoreUnsafe(ref sinces, (nuint)at);
            (ran + (tenths & now & Vector256.LessThan(ran, full))).StoreUnsafe(ref runtimes, (nuint)at);
            on |= (ulong)now.ExtractMostSignificantBits() << at;
        }

        _soon.Switched = moved != none;
        _soon.Running = on;
        _moved = moved != none || (on & _p.FogMask) != 0;
        for (ulong rest = on; rest != 0; rest &= rest - 1)
        {
            int i = BitOperations.TrailingZeroCount(rest), level = At(i, CompiledProgram.Level);
            // The level alone: its reason is written.
            Unsafe.As<Command, int>(ref _commands[i]) = Has(_p.FogMask, i) ? Pulse(level) : level;
        }

        _p.WriteMask(_s, Extra.OnMask, on);
        if ((_nextOn & _p.FogMask) == 0)
        {
            SetX(Extra.FogPhaseMs, 0);
        }
    }

    /// <summary>A motor drives towards its wish; it does not leave what is needed of it, nor join what it must not.</summary>
    private int Moved(int i, int level)
    {
        int goal = Has(_nextOn, i) || level > 0 ? _want[i] : 0;
        int held = Math.Min(EnoughLevel, level);
        int needer = goal < held && !Has(_stopped, i) ? StillNeeding(i) : -1;
        if (needer >= 0)
        {
            goal = held;
            Why(i, ReasonCode.NeededBy, needer, 0, 0);
        }

        if (goal == level)
        {
            return level;
        }

        if (_p.TravelMs[i] > 0 && (Has(_p.NeededMask, i) || _p.Partners[i] != 0))
        {
            // Others wait for it to stand far enough, to be proved open, or to be shut.
            int way = level < EnoughLevel && goal >= EnoughLevel ? EnoughLevel - level : Math.Abs(goal - level);
            Due((int)Math.Min(way * (long)_p.TravelMs[i] / 10_000, ProgramInterpreter.LongAgoMs));
        }

        long reach = _p.TravelMs[i] <= 0 ? 10_000 : Math.Max(1, 10_000L * _dt / _p.TravelMs[i]);
        return goal > level ? (int)Math.Min(goal, level + reach) : (int)Math.Max(goal, level - reach);
    }

    /// <summary>Share of this step in which pulsing fog is on, 0 to 10 000, exact for any step length.</summary>
    private int Pulse(int level)
    {
        if (_pulse >= 0)
        {
            return (int)((long)_pulse * level / 10_000);
        }

        ref readonly CompiledProgram.HumidityPart h = ref _p.HumidityRef;
        int cycle = h.FogOnMs + h.FogOffMs;
        if (h.FogOnMs <= 0 || h.FogOffMs <= 0)
        {
            _pulse = 10_000;
            return level;
        }

        int phase = X(Extra.FogPhaseMs) % cycle;
        _soon.Sprays = phase < h.FogOnMs;
        Due(_soon.Sprays ? h.FogOnMs - phase : cycle - phase);
        long end = (long)phase + _dt;
        long on = end / cycle * h.FogOnMs + Math.Min(end % cycle, h.FogOnMs) - Math.Min(phase, h.FogOnMs);
        SetX(Extra.FogPhaseMs, (int)(end % cycle));
        _pulse = (int)(on * 10_000 / _dt);
        return (int)((long)_pulse * level / 10_000);
    }

    /// <summary>An array from its end, without allocation.</summary>
    private struct Backwards(int[] items)
    {
        private int _at = items.Length;

        public readonly int Current => items[_at];

        public readonly Backwards GetEnumerator() => this;

        public bool MoveNext() => --_at >= 0;
    }
}
