using System.Globalization;
using System.Text;
using Glazewright.Design.Year;
using Glazewright.Science.Climate;

namespace Glazewright.Design.Tests.Year;

/// <summary>
/// The model takes its laws straight within a step (coefficients of the state before). Booked fluxes of real days of a year, against the same laws written once more without linearising and taken at the state a step ends
/// at (<see cref="HouseAgain"/>): sums within 1 % (mark set before).
/// </summary>
public class FluxesAgainTests
{
    private static readonly int[] Days = [14, 50, 80, 110, 141, 171, 195, 227, 258, 289, 319, 350];

    private enum Kind
    {
        Shell,
        InnerAir,
        FloorAir,
        InnerLongWave,
        Leaks,
        Vents,
        Transpiration,
        Condensation,
        Fog,
    }

    // House A: curtain, fans, wet wall; B: fog, pipe, lamps. The third runs A's own hours with vents open in place of its fans. Steps of 0 s: the parts of minutes in which the year runs.
    [Theory]
    [InlineData("A", false, 0), InlineData("A", true, 0), InlineData("B", false, 0)]
    [InlineData("A", false, 60), InlineData("A", true, 60), InlineData("B", false, 60)]
    [InlineData("A", true, 10), InlineData("B", false, 10)]
    public void Booked_fluxes_are_those_of_the_laws_within_a_hundredth(string house, bool vents, int stepOrPartsS)
    {
        LoopScene scene = LoopScene.Of(house);
        IReadOnlyList<YearSnapshot> midnights = scene.Midnights();
        Tally[] all = new Tally[Enum.GetValues<Kind>().Length];
        foreach (int day in Days)
        {
            Tally[] one = Day(scene, midnights[day], day, vents, stepOrPartsS);
            for (int k = 0; k < all.Length; k++)
            {
                all[k].Add(one[k]);
            }
        }

        StringBuilder said = new(house + (vents ? " with vents" : "") + $", {stepOrPartsS} s\n");
        foreach (Kind kind in Enum.GetValues<Kind>())
        {
            Tally t = all[(int)kind];
            said.AppendLine(CultureInfo.InvariantCulture, $"{kind}: sum {t.Booked:0.####} booked, {t.Again:0.####} again ({100 * t.OffShare:0.00} %), step by step {100 * t.RmsShare:0.00} % rms, {t.Count} steps");
        }

        foreach (Kind kind in Enum.GetValues<Kind>())
        {
            Assert.True(all[(int)kind].OffShare <= 0.01, said.ToString());
        }

        Assert.True(all[(int)Kind.Transpiration].Booked > 0 && all[(int)Kind.Condensation].Turned > 0, said.ToString());
        Assert.Equal(house == "B", all[(int)Kind.Fog].Booked > 0);
        Assert.True(all[(int)Kind.Vents].Booked > 0); // without vents the louver lets air in while the fans rest
    }

    private static Tally[] Day(LoopScene scene, YearSnapshot midnight, int day, bool vents, int stepOrPartsS)
    {
        YearRun run = scene.Start();
        run.Load(midnight);
        HouseModel model = new(run.House.Parameters);
        HouseState state = model.NewState(15, 0.7, 10, 100_000);
        state.Load([.. midnight.House]);
        HouseAgain again = new(run.House.Parameters);
        Tally[] tallies = new Tally[Enum.GetValues<Kind>().Length];
        for (double atS = day * 86_400.0, lastedS; atS < (day + 1) * 86_400.0; atS += lastedS)
        {
            int minute = (int)(atS / 60);
            HouseForcing f;
            if (stepOrPartsS > 0)
            {
                lastedS = stepOrPartsS;
                run.Step(minute, out f, lastedS);
            }
            else
            {
                lastedS = run.Part(minute, (60 * (minute + 1)) - atS);
                f = run.Acted;
            }

            double stepS = lastedS;
            if (vents)
            {
                bool open = f.FanBelowM3PerS > 0;
                (f.FanBelowM3PerS, f.PadEffectiveness, f.RoofVentM2, f.SideVentM2) = (0, 0, open ? 5 : 0, open ? 4 : 0);
            }

            double[] films = [.. Enumerable.Range(0, 4).Select(s => state.FilmKg((WetSurface)s))];
            double leavesKg = state.FilmKg(WetSurface.Canopy);
            HouseAgain.Seen before = HouseAgain.Seen.Of(state);
            model.Step(state, in f, stepS);
            ref readonly HouseFluxes x = ref model.LastFluxes;
            ref readonly HouseRates g = ref model.LastRates;
            HouseAgain.Seen s = HouseAgain.Seen.Of(state).WithMeanAirs(in before); // air's flows go by its mean, the model's own not asked
            void Note(Kind kind, double booked, double law) => tallies[(int)kind].Add(booked * stepS, law * stepS); // amounts: parts last differently long
            Note(Kind.Shell, x.ShellLossW, again.ShellW(in s, in f));
            double inner = 0, longWave = 0;
            for (int p = 0; p < 4; p++)
            {
                inner += g.InnerAir[p] * ((p % 2 == 0 ? s.AboveC : s.BelowC) - s.InnerC[p]);
                longWave += (g.FloorParts[p] * (s.FloorC - s.InnerC[p])) + (g.CanopyParts[p] * (s.CanopyC - s.InnerC[p]));
            }

            Note(Kind.InnerAir, inner, again.InnerAirW(s, f));
            Note(Kind.FloorAir, g.FloorAir * (s.FloorC - s.BelowC), again.FloorAirW(s, f));
            Note(Kind.InnerLongWave, longWave, again.InnerLongWaveW(in s, in f));
            Note(Kind.Leaks, x.LeakM3PerS, again.LeakM3PerS(in s, in f));
            Note(Kind.Vents, x.VentM3PerS, again.VentM3PerS(in s, in f));
            Note(Kind.Transpiration, x.TranspirationKgPerS, leavesKg > 1e-6 * run.House.Parameters.FloorAreaM2 ? 0 : again.TranspirationKgPerS(in s, in f));
            // What the faces took: their films, and what ran off them, is all there is to see from outside.
            double law = again.CondensationKgPerS(s, f, films, stepS);
            if (Faces(state, films, stepS) is double took)
            {
                Note(Kind.Condensation, took, law);
            }

            Note(Kind.Fog, x.FogEvaporatedKgPerS, again.FogKgPerS(in before, in f, stepS));
        }

        return tallies;

        // Kilograms a second that the four faces took; unknown where one runs off.
        double? Faces(HouseState now, double[] filmsKg, double overS)
        {
            double sum = 0;
            for (int p = 0; p < 4; p++)
            {
                double film = now.FilmKg((WetSurface)p), holds = 0.999 * 0.07 * new[] { run.House.Parameters.UpperClear, run.House.Parameters.LowerClear, run.House.Parameters.UpperOpaque, run.House.Parameters.LowerOpaque }[p].AreaM2;
                if (film >= holds && holds > 0)
                {
                    return null;
                }

                sum += film - filmsKg[p];
            }

            return sum / overS;
        }
    }

    private struct Tally
    {
        public double Booked, Again, Turned, Square, SquareOff;
        public int Count;

        /// <summary>Difference of the sums over all that moved, either way.</summary>
        public readonly double OffShare => Turned > 0 ? Math.Abs(Booked - Again) / Turned : 0;

        public readonly double RmsShare => Square > 0 ? Math.Sqrt(SquareOff / Square) : 0;

        public void Add(double booked, double law)
        {
            Booked += booked;
            Again += law;
            Turned += Math.Abs(law);
            Square += law * law;
            SquareOff += (booked - law) * (booked - law);
            Count++;
        }

        public void Add(Tally other)
        {
            Booked += other.Booked;
            Again += other.Again;
            Turned += other.Turned;
            Square += other.Square;
            SquareOff += other.SquareOff;
            Count += other.Count;
        }
    }
}
