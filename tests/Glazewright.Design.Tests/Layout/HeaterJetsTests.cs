using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;

namespace Glazewright.Design.Tests.Layout;

/// <summary>
/// Jets of unit heaters, followed step by step: at each inch of the way a jet is a disc of half its heater's width and a tenth of the way (a round free jet's
/// half-speed radius: Pope, Turbulent Flows, section 5.1, from memory).
/// </summary>
public class HeaterJetsTests
{
    private const double InchM = 0.0254;

    private static bool ToEnd2(PlacedItem heater, double lengthM) => heater.Corner.XM + heater.Size.XM / 2 < lengthM / 2;

    private static (double X, double Y, double Z, double Radius)? At(PlacedItem h, double wayM, double throwM, double lengthM) => wayM >= throwM
        ? null
        : (ToEnd2(h, lengthM) ? h.Corner.XM + h.Size.XM + wayM : h.Corner.XM - wayM, h.Corner.YM + h.Size.YM / 2, h.Corner.ZM + h.Size.ZM / 2, h.Size.YM / 2 + wayM / 10);

    // Walks both jets; the discs of jets that blow at each other may not touch at any point that both reach.
    private static bool RunInto(PlacedItem a, PlacedItem b, double throwM, double lengthM)
    {
        for (double wayM = 0; At(a, wayM, throwM, lengthM) is { } disc; wayM += InchM)
        {
            bool inBody = disc.X > b.Corner.XM && disc.X < b.Corner.XM + b.Size.XM;
            double sideM = Math.Abs(disc.Y - b.Corner.YM - b.Size.YM / 2), upM = Math.Abs(disc.Z - b.Corner.ZM - b.Size.ZM / 2);
            if (inBody && sideM < disc.Radius + b.Size.YM / 2 - 0.02 && upM < disc.Radius + b.Size.ZM / 2 - 0.02)
            {
                return true;
            }

            if (ToEnd2(a, lengthM) == ToEnd2(b, lengthM))
            {
                continue;
            }

            double backM = ToEnd2(a, lengthM) ? b.Corner.XM - disc.X : disc.X - b.Corner.XM - b.Size.XM;
            if (backM > 0 && At(b, backM, throwM, lengthM) is { } other && double.Hypot(sideM, upM) < disc.Radius + other.Radius - 0.02)
            {
                return true;
            }
        }

        return false;
    }

    [Fact]
    public void No_jet_meets_a_heater_or_a_jet_against_it_untold()
    {
        Random dice = new(714);
        int pairs = 0, clean = 0;
        for (int i = 0; i < 200; i++)
        {
            Job job = VentPlacesTests.Diced(dice);
            double throwM = 4 + 14 * dice.NextDouble(), lengthM = job.Houses[0].LengthM;
            int count = dice.Next(2, 6);
            FormResult form = FormStage.Run(FormInput.From(job));
            LayoutResult layout = LayoutStage.Run(LayoutInput.From(job, "A"), form, VentPlacesTests.Plant(count, true, 0.82, 4, throwM));
            PlacedItem[] heaters = [.. layout.Placed.Where(p => p.Kind == PlacedKind.Heater)];
            HashSet<string> told = [.. layout.Report.Findings.Where(f => f.Code == "layout/heater-jets").Select(f => f.Id)];
            for (int a = 0; a < heaters.Length; a++)
            {
                for (int b = 0; b < a; b++)
                {
                    pairs++;
                    bool met = RunInto(heaters[a], heaters[b], throwM, lengthM) || RunInto(heaters[b], heaters[a], throwM, lengthM);
                    Assert.True(!met || told.Contains(heaters[a].Id), FormattableString.Invariant($"{i}: {heaters[a].Id} and {heaters[b].Id} of {count}, throw {throwM:0.0} m, house {lengthM:0.0} × {job.Houses[0].WidthM:0.0} m"));
                }
            }

            clean += told.Count == 0 ? 1 : 0;
        }

        Assert.True(pairs > 500);
        Assert.True(clean > 80, $"{clean} of 200 houses only keep their jets apart");
    }

    [Fact]
    public void A_narrow_house_whose_throws_meet_is_told()
    {
        Job job = TestJobs.OneHouse();
        job = job with { Houses = [job.Houses[0] with { LengthM = 9, WidthM = 1.5, Roof = ((RoofSolution.Closed)RoofSolver.Solve(new RoofWish(2.6, null, 0.75, 0.5, 0.5), 1.5)).Profile, Openings = [], Benches = [] }] };
        FormResult form = FormStage.Run(FormInput.From(job));
        LayoutResult far = LayoutStage.Run(LayoutInput.From(job, "A"), form, VentPlacesTests.Plant(3, true, 0.82, 0, 15));
        Assert.Contains(far.Report.Findings, f => f.Code == "layout/heater-jets");
        LayoutResult near = LayoutStage.Run(LayoutInput.From(job, "A"), form, VentPlacesTests.Plant(2, true, 0.82, 0, 2));
        Assert.DoesNotContain(near.Report.Findings, f => f.Code == "layout/heater-jets");
    }
}
