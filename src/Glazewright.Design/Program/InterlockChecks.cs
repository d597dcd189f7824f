using Glazewright.Design.Contracts;

namespace Glazewright.Design.Program;

/// <summary>What can be wrong with interlocks and the louver's guard, and the order in which interlocks are settled.</summary>
internal static class InterlockChecks
{
    /// <summary>Actuator ids with winners before losers and needs before what needs them; null when they run in a ring.</summary>
    public static List<string>? Order(ProgramDocument d)
    {
        List<(string First, string Then)> edges = Edges(d);
        var order = new List<string>();
        var left = new List<string>(d.Actuators.Select(a => a.Id));
        while (left.Count > 0)
        {
            string? free = left.FirstOrDefault(id => !edges.Any(e => e.Then == id && left.Contains(e.First)));
            if (free is null)
            {
                return null;
            }

            order.Add(free);
            left.Remove(free);
        }

        return order;
    }

    private static List<(string First, string Then)> Edges(ProgramDocument d) =>
    [
        .. d.Interlocks.SelectMany(i => i switch
        {
            Interlock.NotBoth both => [(both.Winner, both.Loser)],
            Interlock.OnlyWith with => [(with.Needs, with.Actuator)],
            Interlock.OnlyWithAny any => any.NeedsAny.Select(n => (n, any.Actuator)),
            _ => Enumerable.Empty<(string, string)>(),
        }),
    ];

    public static void Add(ProgramDocument d, HashSet<string> known, List<Fault> faults)
    {
        int before = faults.Count;
        for (int i = 0; i < d.Interlocks.Count; i++)
        {
            string at = $"/interlocks/{i}";
            foreach (string id in Named(d.Interlocks[i]))
            {
                ProgramChecks.Known(faults, known, at, id);
            }

            foreach (string need in Needed(d.Interlocks[i]))
            {
                if (d.Actuators.FirstOrDefault(a => a.Id == need)?.Kind == ActuatorKind.Fog)
                {
                    ProgramChecks.Add(faults, FaultKind.Contradiction, at, $"'{need}' is fog, which comes in pulses: nothing can run only with it", "the pump or the fan that fog needs");
                }
            }

            if (d.Interlocks[i] is Interlock.OnlySoMany few)
            {
                ProgramChecks.Range(faults, at + "/most", few.Most, 1, ProgramCompiler.MostActuators, "how many may run with it");
                if (few.Counted.Contains(few.Actuator))
                {
                    ProgramChecks.Add(faults, FaultKind.Contradiction, at + "/counted", $"'{few.Actuator}' is counted among those that run with it", "the others only");
                }

                if (few.Counted.Append(few.Actuator).FirstOrDefault(id => d.Actuators.Any(a => a.Id == id && ProgramCompiler.Moves(a.Kind))) is { } motor)
                {
                    ProgramChecks.Add(faults, FaultKind.Contradiction, at, $"'{motor}' moves and cannot be counted as on or off", "machines that are on or off");
                }
            }

            if (d.Interlocks[i] is Interlock.NeedsLouverProof && d.Guard is null)
            {
                ProgramChecks.Add(faults, FaultKind.Missing, "/guard", "an interlock needs the louver's proof and there is no louver guard", "a louver guard");
            }
        }

        if (d.Guard is { } g)
        {
            ProgramChecks.Known(faults, known, "/guard/louver", g.Louver);
            ProgramChecks.Kind(d, faults, "/guard/louver", g.Louver, ActuatorKind.Louver);
            ProgramChecks.Range(faults, "/guard/fansWithoutProof", g.FansWithoutProof, 0, 1, "fans without proof");
            ProgramChecks.Range(faults, "/guard/graceS", g.GraceS, 0, 3600, "grace, s,");
            ProgramChecks.Range(faults, "/guard/limitPa", g.LimitPa, 1, 500, "pressure limit, Pa,");
            ProgramChecks.Range(faults, "/guard/lockS", g.LockS, 1, 86_400, "lock, s,");
        }

        if (faults.Count == before && Order(d) is null)
        {
            ProgramChecks.Add(faults, FaultKind.Contradiction, "/interlocks", "interlocks run in a ring: " + Ring(d), "take one of them out");
        }
    }

    internal static IEnumerable<string> Needed(Interlock interlock) => interlock switch
    {
        Interlock.OnlyWith with => [with.Needs],
        Interlock.OnlyWithAny any => any.NeedsAny,
        _ => [],
    };

    private static IEnumerable<string> Named(Interlock interlock) => interlock switch
    {
        Interlock.NotBoth both => [both.Winner, both.Loser],
        Interlock.OnlyWith with => [with.Actuator, with.Needs],
        Interlock.OnlyWithAny any => [any.Actuator, .. any.NeedsAny],
        Interlock.OnlySoMany few => [few.Actuator, .. few.Counted],
        Interlock.NeedsLouverProof proof => [proof.Actuator],
        _ => [],
    };

    /// <summary>One ring in words, by walking back along edges among those that can never be settled.</summary>
    private static string Ring(ProgramDocument d)
    {
        List<(string First, string Then)> edges = Edges(d);
        bool shrunk = true;
        while (shrunk)
        {
            shrunk = edges.RemoveAll(e => !edges.Any(x => x.Then == e.First) || !edges.Any(x => x.First == e.Then)) > 0;
        }

        var walk = new List<string> { edges[0].First };
        while (walk.Count == walk.Distinct().Count())
        {
            walk.Add(edges.First(e => e.First == walk[^1]).Then);
        }

        return string.Join(" → ", walk.Skip(walk.IndexOf(walk[^1])));
    }
}
