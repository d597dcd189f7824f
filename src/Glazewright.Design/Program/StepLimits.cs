using System.Numerics;

namespace Glazewright.Design.Program;

/// <summary>Only so many of some while one is on: among wishes the one comes first; among machines that run, who came first.</summary>
internal ref partial struct StepRun
{
    /// <summary>Among wishes: more than may run with a wished one are not wished for; those that run already are kept, then the first in order.</summary>
    private void ForbidSurplus()
    {
        foreach (CompiledProgram.LimitPart limit in _p.Limits)
        {
            if (!Has(_wanted, limit.Owner))
            {
                continue;
            }

            int surplus = BitOperations.PopCount(_wanted & limit.Counted) - limit.Most;
            for (int round = 0; round < 2 && surplus > 0; round++)
            {
                foreach (int i in Reversed())
                {
                    if (surplus > 0 && Has(_wanted & limit.Counted, i) && (round > 0 || !Has(_on, i)))
                    {
                        Deny(i, ReasonCode.OnlySoMany, limit.Owner, limit.Most, 0);
                        surplus--;
                    }
                }
            }
        }
    }

    /// <summary>Whether switching this one on breaks no limit; the reason is written where it does.</summary>
    private readonly bool LeavesRoom(int i)
    {
        foreach (CompiledProgram.LimitPart limit in _p.Limits)
        {
            ulong running = _nextOn & limit.Counted;
            if (limit.Owner == i && BitOperations.PopCount(running) > limit.Most)
            {
                // The last in order is the first to go.
                foreach (int last in Reversed())
                {
                    if (Has(running, last))
                    {
                        Why(i, ReasonCode.WaitsFor, last, 0, 0);
                        return false;
                    }
                }
            }

            if (Has(limit.Counted, i) && Has(_nextOn, limit.Owner) && BitOperations.PopCount(running) >= limit.Most)
            {
                Why(i, ReasonCode.OnlySoMany, limit.Owner, limit.Most, 0);
                return false;
            }
        }

        return true;
    }
}
