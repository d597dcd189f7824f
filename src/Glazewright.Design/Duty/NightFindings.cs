using Glazewright.Design.Contracts;

namespace Glazewright.Design.Duty;

/// <summary>What wind, sky and moisture make of the design night.</summary>
internal static class NightFindings
{
    // What heaters are chosen with above the loss.
    private const double ReserveFactor = 1.10;

    public static IEnumerable<Finding> Of(DutyFacts f)
    {
        NightSkies skies = f.Result.Air.Skies;
        double practiceW = skies.Paths.Sum(p => p.PracticeW);
        double windyW = skies.Paths.Sum(p => p.WindyW);
        double clearW = skies.Paths.Sum(p => p.ClearW);
        double mostW = Math.Max(windyW, clearW);
        if (practiceW > 0 && mostW > ReserveFactor * practiceW)
        {
            yield return new Finding(
                "duty/night-sky", Severity.Near, f.Input.House,
                DutyFindings.Text($"By the trade's U values the house loses {DutyFindings.Heat(practiceW)} on the design night{(f.Input.Curtains > 0 ? ", curtain open" : "")}; in a wind of {skies.WindMs * 2.23694:0} mph {DutyFindings.Heat(windyW)}, under a clear calm sky {DutyFindings.Heat(clearW)}: {100 * (mostW / practiceW - 1):0} % more, where heaters sized here have 10 % in reserve; those the job fixes have what they have."),
                f.Input.Curtains > 0 ? "Draw the curtain on such nights, tighten the house, or see that the heaters give the larger number." : "Tighten the house, hang a curtain, or see that the heaters give the larger number.",
                new Source.FirstPrinciples("night balance of each outer face; air changes by wind and stack"));
        }

        NightBalance b = f.Result.Air.Balance;
        if (b.CondensationKgPerS * 3600 >= 0.1)
        {
            yield return new Finding(
                "duty/night-condensation", Severity.Note, f.Input.House,
                DutyFindings.Text($"Closed on the design night the house settles near {100 * b.House.RelativeHumidityFraction:0} % relative humidity; its dew point {DutyFindings.C(b.House.DewPointC)} lies above the coldest inner face, {b.ColdestZone} at {DutyFindings.C(b.CoverC)}: some {b.CondensationKgPerS * 3600 / 3.785:0.0} gal ({b.CondensationKgPerS * 3600:0.0} L) an hour condense and must run off to a gutter, not onto the crop."),
                "Steep slopes, condensate gutters at eave and purlins, or air and heat before dawn.",
                new Source.FirstPrinciples("moisture balance of the closed house"));
        }
    }
}
