using CsCheck;
using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;

namespace Glazewright.Design.Tests.Program;

/// <summary>Under any readings, any step lengths and any hands: no command breaks an interlock or a least time; only a stop by a sensor cuts a least time on.</summary>
public class InterlockPropertyTests
{
    private static readonly Gen<int> s_any = Gen.Frequency(
        (6, Gen.Int[-4000, 4500]), (2, Gen.Int[0, 1200]), (1, Gen.Const(int.MinValue)), (1, Gen.Int), (2, Gen.Int[0, 1]));

    private static readonly Gen<int[]> s_readings = s_any.Array[(int)Reading.Sunset + 1];

    private static readonly Gen<(int[] Readings, int DtMs, int Hold, int HandAt, int Hand)[]> s_run =
        Gen.Select(s_readings, Gen.Int[0, 4].Select(i => new[] { 1000, 5000, 7300, 60_000, 600_000 }[i]), Gen.Int[1, 12], Gen.Int[0, 40], Gen.Int[-1, 10_000]).Array[1, 40];

    [Theory]
    [InlineData(true, false)]
    [InlineData(false, true)]
    [InlineData(true, true)]
    public void No_command_breaks_an_interlock_or_a_least_time(bool wetWall, bool vents)
    {
        PlantResult plant = SampleProgram.Plant(wetWall, vents) with { Upper = new UpperFanPlant("fan-24", 2, 0.61, 0.8, 1.5, 330, 2.5, "louver-24", 0.61, 12) };
        ProgramDocument document = ProgramStage.Run(SampleProgram.Input(), plant);
        s_run.Sample(run => Walk(document, run), iter: 400, print: r => $"{r.Length} steps");
    }

    [Fact]
    public void Nor_does_a_program_made_at_random()
    {
        Gen.Select(Gen.Int[0, int.MaxValue], s_run).Sample((seed, run) => Walk(Scrambled(seed), run), iter: 300);
    }

    private static void Walk(ProgramDocument document, (int[] Readings, int DtMs, int Hold, int HandAt, int Hand)[] run)
    {
        CompiledProgram program = SampleProgram.Ready(document);
        var state = new int[program.StateLength];
        var before = new Command[program.Actuators.Count];
        var after = new Command[program.Actuators.Count];
        var onForMs = new long[program.Actuators.Count];
        var offForMs = new long[program.Actuators.Count];
        Array.Fill(offForMs, long.MaxValue / 2);
        program.Rest(state);
        foreach ((int[] readings, int dtMs, int hold, int handAt, int hand) in run)
        {
            if (handAt < program.Actuators.Count)
            {
                program.SetHand(state, handAt, hand);
            }

            for (int k = 0; k < hold; k++)
            {
                ProgramInterpreter.Step(program, state, readings, dtMs, state, after);
                HoldsInterlocks(document, before, after, readings);
                for (int i = 0; i < after.Length; i++)
                {
                    Assert.InRange(after[i].Level, 0, 10_000);
                    HoldsTimes(document.Actuators[i], before[i], after[i], dtMs, ref onForMs[i], ref offForMs[i]);
                }

                (before, after) = (after, before);
            }
        }
    }

    private static void HoldsInterlocks(ProgramDocument d, Command[] was, Command[] now, int[] readings)
    {
        int Place(string id) => d.Actuators.Select((a, i) => (a, i)).First(x => x.a.Id == id).i;
        int At(string id) => now[Place(id)].Level;

        // A motor that moves and has lost its need to a sensor's stop cannot be shut at once: it must be on its way.
        bool Gone(string id) => At(id) == 0 || (d.Actuators[Place(id)].TravelS > 0 && At(id) < was[Place(id)].Level);
        foreach (Interlock interlock in d.Interlocks)
        {
            switch (interlock)
            {
                case Interlock.NotBoth both:
                    Assert.False(At(both.Winner) > 0 && At(both.Loser) > 0, $"{both.Winner} with {both.Loser}");
                    break;
                case Interlock.OnlyWith with:
                    Assert.True(Gone(with.Actuator) || At(with.Needs) > 0, $"{with.Actuator} without {with.Needs}");
                    break;
                case Interlock.OnlySoMany few:
                    Assert.True(At(few.Actuator) == 0 || few.Counted.Count(x => At(x) > 0) <= few.Most, $"{few.Actuator} with more than {few.Most}");
                    break;
                case Interlock.OnlyWithAny any:
                    Assert.True(Gone(any.Actuator) || any.NeedsAny.Any(n => At(n) > 0), $"{any.Actuator} with none of its needs");
                    break;
            }
        }

        int proofed = d.Interlocks.OfType<Interlock.NeedsLouverProof>().Count(p => At(p.Actuator) > 0);
        Assert.True(readings[(int)Reading.LouverOpenProof] == 1 || proofed <= (d.Guard?.FansWithoutProof ?? 64), "fans without louver proof");
        int outside = readings[(int)Reading.OutsideTemperature];
        bool frost = d.ColdAir is { } rule && outside >= -7000 && outside < rule.NoWaterBelowC * 100;
        Assert.True(!frost || d.Actuators.Where(a => a.Kind == ActuatorKind.WetWallPump).All(a => At(a.Id) == 0), "water on the pad in the cold");
        int damp = readings[(int)Reading.OutsideHumidity];
        bool wet = d.ColdAir?.NoWaterAbovePercent is double limit && damp is >= 0 and <= 1300 && damp > limit * 10;
        Assert.True(!wet || d.Actuators.Where(a => a.Kind == ActuatorKind.WetWallPump).All(a => At(a.Id) == 0), "water on the pad in damp air");
        int humidity = readings[(int)Reading.InsideHumidity];
        bool dry = humidity >= 0 && humidity < (int)(d.Humidity.FogCeilingPercent * 10);
        Assert.True(dry || d.Actuators.Where(a => a.Kind == ActuatorKind.Fog).All(a => At(a.Id) == 0), "fog near saturation");
    }

    private static void HoldsTimes(Actuator a, Command was, Command now, int dtMs, ref long onForMs, ref long offForMs)
    {
        if (a.Kind == ActuatorKind.Fog)
        {
            return;
        }

        if (was.Level > 0 && now.Level == 0)
        {
            bool stopped = (ReasonCode)now.Reason is ReasonCode.LouverFault or ReasonCode.NoLouverProof or ReasonCode.Needs or ReasonCode.NearSaturation or ReasonCode.TooColdForWater or ReasonCode.TooDampForWater;
            Assert.True(stopped || onForMs >= a.MinOnS * 1000L, $"{a.Id} off after {onForMs} ms, reason {(ReasonCode)now.Reason}");
            offForMs = 0;
        }
        else if (was.Level == 0 && now.Level > 0)
        {
            Assert.True(offForMs >= a.MinOffS * 1000L, $"{a.Id} on after {offForMs} ms off");
            onForMs = 0;
        }

        if (now.Level > 0)
        {
            onForMs += dtMs;
        }
        else
        {
            offForMs = Math.Min(long.MaxValue / 2, offForMs + dtMs);
        }

        if (ProgramCompiler.MostActuators > 0 && a.TravelS > 0)
        {
            long reach = 10_000L * dtMs / (a.TravelS * 1000L) + 1;
            Assert.True(Math.Abs(now.Level - was.Level) <= reach, $"{a.Id} moved from {was.Level} to {now.Level} in {dtMs} ms");
        }
    }

    /// <summary>The sample with interlocks drawn at random (kept only while they have no ring) and other times.</summary>
    private static ProgramDocument Scrambled(int seed)
    {
        ProgramDocument d = SampleProgram.Document(true, true);
        uint x = (uint)seed | 1;
        int Next(int below)
        {
            x ^= x << 13;
            x ^= x >> 17;
            x ^= x << 5;
            return (int)(x % (uint)below);
        }

        d = d with
        {
            Actuators = d.Actuators.Select(a => a.TravelS > 0 ? a with { TravelS = 10 + Next(400) } : a with { MinOnS = Next(400), MinOffS = Next(400) }).ToEqList(),
        };
        List<Interlock> kept = [.. d.Interlocks.OfType<Interlock.NeedsLouverProof>()];
        for (int k = 0; k < 14; k++)
        {
            string a = d.Actuators[Next(d.Actuators.Count)].Id;
            string b = d.Actuators[Next(d.Actuators.Count)].Id;
            string c = d.Actuators[Next(d.Actuators.Count)].Id;
            Interlock drawn = Next(4) switch
            {
                3 => new Interlock.OnlySoMany(a, [.. d.Actuators.Where(x => x.TravelS == 0 && x.Id != a).Select(x => x.Id).Where((_, i) => i % 3 != k % 3)], 1 + Next(3)),
                0 => new Interlock.NotBoth(a, b),
                1 => new Interlock.OnlyWith(a, b),
                _ => new Interlock.OnlyWithAny(a, [b, c]),
            };
            ProgramDocument tried = d with { Interlocks = [.. kept, drawn] };
            if (ProgramCompiler.Compile(tried) is ProgramCompilation.Ready)
            {
                kept.Add(drawn);
            }
        }

        return d with { Interlocks = kept.ToEqList() };
    }
}
