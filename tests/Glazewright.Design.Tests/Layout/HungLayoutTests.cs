using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;
using Glazewright.Design.Tests.Duty;

namespace Glazewright.Design.Tests.Layout;

/// <summary>Two things cannot hang in one place, and a crew measures whole inches.</summary>
public class HungLayoutTests
{
    private static readonly PlacedKind[] s_hung =
        [PlacedKind.Heater, PlacedKind.CirculationFan, PlacedKind.OscillatingFan, PlacedKind.FogLine, PlacedKind.LampRow, PlacedKind.Sensor];

    private static readonly Lazy<PlantResult> s_plant = new(() =>
    {
        Job job = DesignDay.With(TestJobs.OneHouse(), e => e with { Fog = true, LampW = 4000, OscillatingFans = 2 });
        return PlantStage.Run(PlantInput.From(job, "A"), FormStage.Run(FormInput.From(job)).Building("A"), DesignDay.Duty(job), CatalogueReader.Generic);
    });

    private static Job House(double lengthM, double widthM, double eaveM, EqList<Bench> benches)
    {
        Job job = TestJobs.OneHouse();
        RoofProfile roof = ((RoofSolution.Closed)RoofSolver.Solve(new RoofWish(eaveM, null, widthM / 2, 0.5, 0.5), widthM)).Profile;
        return job with { Houses = [job.Houses[0] with { LengthM = lengthM, WidthM = widthM, Roof = roof, Openings = [], Benches = benches }] };
    }

    private static LayoutResult Run(Job job, int heaters, bool isSealed, int fans, int oscillating, bool lines)
    {
        PlantResult plant = s_plant.Value;
        HeaterUnit one = plant.Heat!.Choice.Heaters[0] with { SealedCombustion = isSealed, Electric = false, EfficiencyFraction = 0.82 };
        plant = plant with
        {
            Heat = new Answer<HeatPlant>.Met(plant.Heat.Choice with { Heaters = [.. Enumerable.Range(1, heaters).Select(i => one with { Id = FormattableString.Invariant($"A/heater-{i}") })] }, 0),
            Circulation = plant.Circulation! with { Count = fans },
            Oscillating = plant.Oscillating! with { Count = oscillating },
            Curtain = null,
            Fog = lines ? plant.Fog : null,
            LampW = lines ? plant.LampW : 0,
        };
        return LayoutStage.Run(LayoutInput.From(job, "A"), FormStage.Run(FormInput.From(job)), plant);
    }

    // By the corners themselves, not by the code under test.
    private static List<(string A, string B)> Meetings(LayoutResult layout)
    {
        static bool Share(double a, double aSize, double b, double bSize) => Math.Min(a + aSize, b + bSize) - Math.Max(a, b) > 1e-9 || (Math.Min(aSize, bSize) == 0 && Math.Max(a, b) > Math.Min(a, b) + 1e-9 && Math.Min(a + aSize, b + bSize) - Math.Max(a, b) >= 0);
        PlacedItem[] hung = [.. layout.Placed.Where(p => s_hung.Contains(p.Kind) || p is { Kind: PlacedKind.Vent, Face: FaceName.RoofLeft or FaceName.RoofRight })];
        List<(string A, string B)> met = [];
        for (int i = 0; i < hung.Length; i++)
        {
            for (int j = i + 1; j < hung.Length; j++)
            {
                (PlacedItem a, PlacedItem b) = (hung[i], hung[j]);
                if (Share(a.Corner.XM, a.Size.XM, b.Corner.XM, b.Size.XM) && Share(a.Corner.YM, a.Size.YM, b.Corner.YM, b.Size.YM) && Share(a.Corner.ZM, a.Size.ZM, b.Corner.ZM, b.Size.ZM))
                {
                    met.Add((a.Id, b.Id));
                }
            }
        }

        return met;
    }

    [Fact]
    public void A_third_heater_and_a_circulation_fan_of_a_house_of_30_by_96_feet_keep_apart()
    {
        Job job = House(96 * 0.3048, 30 * 0.3048, 9 * 0.3048, [new Bench("bench-1", 0.62, 1.5, 1.2, 26.8, 0.8), new Bench("bench-2", 7.02, 1.5, 1.2, 26.8, 0.8)]);
        LayoutResult layout = Run(job, 3, true, 4, 0, false);
        Assert.Equal(3, layout.Placed.Count(p => p.Kind == PlacedKind.Heater));
        Assert.Equal(4, layout.Placed.Count(p => p.Kind == PlacedKind.CirculationFan));
        Assert.Empty(Meetings(layout));
        Assert.DoesNotContain(layout.Report.Findings, f => f.Code == "layout/hung-overlap");
        // The third heater stands beside the first, on its own side of the house: neither blows into the other.
        PlacedItem first = layout.Placed.Single(p => p.Label == "Heater 1");
        PlacedItem third = layout.Placed.Single(p => p.Label == "Heater 3");
        Assert.Equal(first.Corner.XM, third.Corner.XM, 0.06);
        Assert.InRange(third.Corner.YM, first.Corner.YM + first.Size.YM + 0.15, 15 * 0.3048 - 0.7);
        Assert.DoesNotContain(layout.Report.Findings, f => f.Code == "layout/heater-jets");
    }

    [Fact]
    public void Over_many_houses_no_two_hung_pieces_share_room_or_it_is_told()
    {
        Random dice = new(2611);
        int roomy = 0;
        for (int i = 0; i < 250; i++)
        {
            double lengthM = 4 + 50 * dice.NextDouble(), widthM = 3 + 9 * dice.NextDouble(), eaveM = 2.2 + 2.5 * dice.NextDouble();
            EqList<Bench> benches = dice.Next(3) switch
            {
                0 => [],
                1 => [new Bench("bench-1", 0.3 * widthM, 0.3 * widthM, 1, Math.Max(lengthM - 2, 1), 0.8)],
                _ => [new Bench("bench-1", 0.1 * widthM, 0.3 * widthM, 1, Math.Max(lengthM - 2, 1), 0.8), new Bench("bench-2", 0.6 * widthM, 0.3 * widthM, 1, Math.Max(lengthM - 2, 1), 0.8)],
            };
            int heaters = dice.Next(11), fans = dice.Next(9), oscillating = dice.Next(5);
            bool isSealed = dice.Next(2) == 0, lines = dice.Next(2) == 0;
            string house = FormattableString.Invariant($"{i}: {lengthM:0.00} × {widthM:0.00} × {eaveM:0.00} m, {heaters} heaters (sealed {isSealed}), {fans} + {oscillating} fans, lines {lines}");
            LayoutResult layout = Run(House(lengthM, widthM, eaveM, benches), heaters, isSealed, fans, oscillating, lines);
            HashSet<string> news = [.. layout.Report.Findings.Where(f => f.Code == "layout/hung-overlap").Select(f => f.Id)];
            foreach ((string a, string b) in Meetings(layout))
            {
                Assert.True(news.Contains(a) || news.Contains(b) || news.Any(n => a.StartsWith(n, StringComparison.Ordinal) || b.StartsWith(n, StringComparison.Ordinal)), $"{house}: {a} and {b} share room and nobody is told");
            }

            // A house of some size has room for a plant of usual size.
            if (lengthM > 15 && widthM > 6 && eaveM > 3 && heaters <= 4)
            {
                roomy++;
                Assert.True(news.Count == 0, house + ": " + string.Join("; ", news));
            }
        }

        Assert.True(roomy > 20, "the dice made few roomy houses");
    }

    [Fact]
    public void A_house_too_small_for_its_heaters_is_told_piece_by_piece()
    {
        LayoutResult layout = Run(House(3, 2.4, 2.2, []), 12, true, 0, 0, false);
        List<(string A, string B)> met = Meetings(layout);
        Assert.NotEmpty(met);
        Finding[] news = [.. layout.Report.Findings.Where(f => f.Code == "layout/hung-overlap")];
        Assert.All(news, f => Assert.Equal(Severity.Miss, f.Severity));
        Assert.All(met, m => Assert.Contains(news, f => f.Id == m.A || f.Id == m.B));
    }

    [Theory]
    [InlineData(UnitSystem.Us, 0.0254)]
    [InlineData(UnitSystem.Metric, 0.01)]
    public void What_hangs_is_measured_in_whole_inches_or_centimetres(UnitSystem units, double evenM)
    {
        LayoutResult layout = Run(House(29.26, 9.144, 2.9, []) with { Units = units }, 3, true, 4, 2, true);
        foreach (PlacedItem p in layout.Placed.Where(p => s_hung.Contains(p.Kind)))
        {
            Assert.Equal(0, Off(p.Corner.ZM), 1e-6);
            if (p.Kind is not (PlacedKind.FogLine or PlacedKind.LampRow))
            {
                Assert.Equal(0, Off(p.Corner.XM + p.Size.XM / 2), 1e-6);
            }

            Assert.Equal(0, Off(p.Corner.YM + p.Size.YM / 2), 1e-6);
        }

        double Off(double m) => m / evenM - Math.Round(m / evenM);
    }
}
