using CsCheck;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;

namespace Glazewright.Design.Tests.Program;

/// <summary>A second curtain's stages, waits and hours; and what no readings may bring about.</summary>
public class SecondCurtainTests
{
    private const string First = "A/curtain", Second = "A/second-curtain";

    private static readonly CurtainPlant Cloth = new(
        "cloth-60", 2.0, 240, 0.4, 0.4, 0.5, 0.3, 240, 250, 1, CurtainPurpose.Shade);

    private static ProgramDocument With(CurtainPurpose purpose) => ProgramStage.Run(
        SampleProgram.Input(),
        SampleProgram.Plant(false) with
        {
            SecondCurtain = Cloth with
            {
                Purpose = purpose,
                DarkFrom = purpose == CurtainPurpose.Blackout ? new DayMark.Clock(17 * 60) : null,
                DarkTo = purpose == CurtainPurpose.Blackout ? new DayMark.Clock(8 * 60) : null,
            },
        });

    private static Bench Night(ProgramDocument document, int outsideC) => new Bench(document)
        .Set(Reading.Light, 0).Set(Reading.OutsideTemperature, 100 * outsideC).Set(Reading.TimeOfDay, 3_600_000).Set(Reading.InsideTemperature, 1700).Set(Reading.InsideHumidity, 700);

    [Fact]
    public void A_cool_night_draws_the_first_a_cold_one_both()
    {
        Bench bench = Night(With(CurtainPurpose.Shade), 8).Run(1200);
        Assert.Equal((10_000, 0), (bench[First], bench[Second]));
        bench.Set(Reading.OutsideTemperature, 200).Run(1200);
        Assert.Equal((10_000, 10_000), (bench[First], bench[Second]));
        Assert.StartsWith("A/second-curtain 100 % drawn: drawn for warmth", bench.Say(Second));
    }

    [Fact]
    public void A_bright_day_draws_the_shade_cloth_and_leaves_the_energy_cloth_open()
    {
        Bench bench = new Bench(With(CurtainPurpose.Shade)).Set(Reading.Light, 800).Set(Reading.InsideTemperature, 2600).Run(1200);
        Assert.Equal((0, 9_500), (bench[First], bench[Second]));
        Assert.Equal(ReasonCode.CurtainForShade, bench.Why(Second));
        Assert.Equal(ReasonCode.Idle, bench.Why(First));
        bench = new Bench(With(CurtainPurpose.Energy)).Set(Reading.Light, 800).Set(Reading.InsideTemperature, 2600).Run(1200);
        Assert.Equal((6_000, 0), (bench[First], bench[Second]));
    }

    [Fact]
    public void At_dawn_the_lower_waits_until_the_upper_has_opened()
    {
        Bench bench = Night(With(CurtainPurpose.Shade), 0).Run(1200).Set(Reading.Light, 100).Set(Reading.TimeOfDay, 8 * 3_600_000);
        bool waited = false;
        for (int s = 0; s < 7200; s += 5)
        {
            int before = bench[Second];
            bench.Run(5);
            Assert.True(bench[Second] >= before || bench[First] == 0, $"both open at {s} s");
            waited |= bench.Why(Second) == ReasonCode.WaitsFor;
        }

        Assert.True(waited);
        Assert.Equal((0, 0), (bench[First], bench[Second]));
    }

    [Fact]
    public void A_blackout_keeps_its_hours_whatever_the_air()
    {
        Bench bench = new Bench(With(CurtainPurpose.Blackout)).Set(Reading.TimeOfDay, 16 * 3_600_000).Set(Reading.Light, 300).Run(3000);
        Assert.Equal(0, bench[Second]);
        bench.Run(1500);
        Assert.Equal(10_000, bench[Second]);
        Assert.Equal("A/second-curtain 100 % drawn: drawn to darken until 08:00", bench.Say(Second));

        // Damp: no gap while it is light outside, one in the dark.
        bench.Set(Reading.InsideHumidity, 900).Run(900);
        Assert.Equal(10_000, bench[Second]);
        bench.Set(Reading.Light, 0).Run(900);
        Assert.Equal(9_600, bench[Second]);
    }

    [Fact]
    public void Snow_opens_both_and_a_hand_moves_one()
    {
        Bench bench = Night(With(CurtainPurpose.Shade), -3).Run(1200).Set(Reading.Snow, 1).Run(7200);
        Assert.Equal((0, 0), (bench[First], bench[Second]));
        bench.Set(Reading.Snow, 0);
        bench.Program.SetHand(bench.State, bench.Index(Second), 3_000);
        bench.Run(1800);
        Assert.Equal((10_000, 3_000), (bench[First], bench[Second]));
        Assert.Equal(ReasonCode.Hand, bench.Why(Second));
    }

    // Light, air and clock as they come, each held some minutes: never faster than the motor, never to and fro within the five minutes a wish must last, never both opening.
    [Fact]
    public void No_weather_makes_them_hunt_or_open_together()
    {
        ProgramDocument document = With(CurtainPurpose.Shade);
        Gen.Select(Gen.Int[0, 900], Gen.Int[-1500, 3000], Gen.Int[500, 3200], Gen.Int[0, 23], Gen.Int[1, 30]).Array[1, 30].Sample(run =>
        {
            Bench bench = new(document);
            int turnedAt = -3600, clock = 0, was = 0; // of the first: it waits for nobody
            bool opening = false;
            foreach ((int light, int outside, int inside, int hour, int minutes) in run)
            {
                bench.Set(Reading.Light, light).Set(Reading.OutsideTemperature, outside).Set(Reading.InsideTemperature, inside).Set(Reading.TimeOfDay, hour * 3_600_000);
                for (int s = 0; s < 60 * minutes; s += 30)
                {
                    (int first, int second) = (bench[First], bench[Second]);
                    bench.Run(30, 30_000);
                    clock += 30;
                    Assert.True(bench[Second] - second <= 10_000 * 30 / 240 + 1);
                    // When the first starts to open, the second may still finish its own last step.
                    Assert.False(opening && bench[First] < first && bench[Second] < second, "both open at once");
                    opening = bench[First] < first;
                    int now = Math.Sign(bench[First] - first);
                    if (now != 0 && now != was)
                    {
                        Assert.True(was == 0 || clock - turnedAt >= 300, "to and fro");
                        (was, turnedAt) = (now, clock);
                    }
                }
            }
        }, iter: 100);
    }

    [Fact]
    public void Its_file_comes_back_and_a_house_without_one_writes_none()
    {
        foreach (CurtainPurpose purpose in Enum.GetValues<CurtainPurpose>())
        {
            ProgramDocument document = With(purpose);
            ProgramDocument read = Assert.IsType<ProgramReading.Read>(ProgramJson.Read(ProgramJson.Write(document))).Document;
            Assert.Equal(document.SecondCurtain, read.SecondCurtain);
            Assert.Contains(document.Actuators, a => a is { Id: Second, Kind: ActuatorKind.SecondCurtain, TravelS: 240 });
        }

        Assert.DoesNotContain("secondCurtain", ProgramJson.Write(SampleProgram.Document()));
        Assert.DoesNotContain("dark", ProgramJson.Write(SampleProgram.Document()));
        Assert.Contains("secondCurtain", ProgramSchema.Write());
    }

    [Fact]
    public void What_is_wrong_with_it_is_told_at_its_place()
    {
        ProgramDocument sound = With(CurtainPurpose.Blackout);
        CurtainControl second = sound.SecondCurtain! with { Actuator = First, ShadeFraction = 2, Dark = new DarkHours(new DayMark.Clock(480), new DayMark.Clock(480)) };
        string[] at = [.. Assert.IsType<ProgramCompilation.Faulty>(ProgramCompiler.Compile(sound with { SecondCurtain = second })).Faults.Select(f => f.Pointer)];
        Assert.Equal(["/secondCurtain/actuator", "/secondCurtain/shadeFraction", "/secondCurtain/dark/to"], at);
    }

    [Fact]
    public void The_narrative_tells_both_and_the_wait()
    {
        string[] lines = [.. ControlNarrative.Of(With(CurtainPurpose.Shade), UnitSystem.Us).SelectMany(p => p.Lines)];
        Assert.Contains(lines, l => l.StartsWith("A/curtain: drawn for warmth", StringComparison.Ordinal) && l.Contains("never for shade"));
        Assert.Contains(lines, l => l.StartsWith("A/second-curtain: drawn for warmth below 15 W/m² and 41 °F outside", StringComparison.Ordinal) && l.Contains("drawn 95 % for shade above 600 W/m² when 0.9 F° past"));
        Assert.Contains("A/second-curtain waits with opening while A/curtain opens.", lines);
    }
}
