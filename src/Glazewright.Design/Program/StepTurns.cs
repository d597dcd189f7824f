using System.Numerics;
using Extra = Glazewright.Design.Program.CompiledProgram.Extra;

namespace Glazewright.Design.Program;

/// <summary>Equal machines taking turns, and the hands.</summary>
internal ref partial struct StepRun
{
    /// <summary>Equal machines take turns: as many as are asked for, those already running first, then the least used.</summary>
    private void Rotate()
    {
        ulong hands = _p.ReadMask(_s, Extra.HandMask);
        foreach (ulong group in _p.RotationMasks)
        {
            if ((group & _wanted) == 0)
            {
                continue;
            }

            if ((group & (~_wanted | hands)) == 0)
            {
                AskAlike(group);
                continue;
            }

            ulong free = 0;
            int asked = 0;
            int level = 0;
            Command why = default;
            for (ulong rest = group; rest != 0; rest &= rest - 1)
            {
                int i = BitOperations.TrailingZeroCount(rest);
                if (At(i, CompiledProgram.Hand) >= 0)
                {
                    continue;
                }

                free |= 1UL << i;
                if (_want[i] > 0)
                {
                    asked++;
                    level = Math.Max(level, _want[i]);
                    why = asked == 1 ? _commands[i] : why;
                    _want[i] = 0;
                    _wanted &= ~(1UL << i);
                    _commands[i] = default;
                }
            }

            for (; asked > 0; asked--)
            {
                int best = BestOf(free);
                if (best < 0)
                {
                    break;
                }

                free &= ~(1UL << best);
                _want[best] = level;
                _wanted |= 1UL << best;
                _commands[best] = why;
            }
        }
    }

    /// <summary>All of them are asked for: nobody's turn is another's.</summary>
    private void AskAlike(ulong group)
    {
        Command why = _commands[BitOperations.TrailingZeroCount(group)];
        int level = 0;
        for (ulong rest = group; rest != 0; rest &= rest - 1)
        {
            level = Math.Max(level, _want[BitOperations.TrailingZeroCount(rest)]);
        }

        for (ulong rest = group; rest != 0; rest &= rest - 1)
        {
            int i = BitOperations.TrailingZeroCount(rest);
            _want[i] = level;
            _commands[i] = why;
        }
    }

    /// <summary>A running one before a resting one, a startable one before one that must rest; then the least used.</summary>
    private readonly int BestOf(ulong free)
    {
        int best = -1;
        long bestRank = long.MaxValue;
        for (ulong rest = free; rest != 0; rest &= rest - 1)
        {
            int i = BitOperations.TrailingZeroCount(rest);
            bool on = At(i, CompiledProgram.Level) > 0;
            bool ready = At(i, CompiledProgram.Since) >= _p.MinOffMs[i];
            long rank = (on ? 0L : ready ? 1L : 2L) << 40 | (uint)At(i, CompiledProgram.Runtime);
            if (rank < bestRank)
            {
                bestRank = rank;
                best = i;
            }
        }

        return best;
    }

    private void TakeHands()
    {
        for (ulong rest = _p.ReadMask(_s, Extra.HandMask); rest != 0; rest &= rest - 1)
        {
            int i = BitOperations.TrailingZeroCount(rest);
            int hand = At(i, CompiledProgram.Hand);
            _want[i] = hand;
            _wanted = hand > 0 ? _wanted | 1UL << i : _wanted & ~(1UL << i);
            _commands[i] = new Command(0, (int)ReasonCode.Hand, hand, 0, 0);
        }
    }
}
