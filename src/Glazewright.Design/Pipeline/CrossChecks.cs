using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Frame;
using Glazewright.Design.Year;
using Glazewright.Mechanics.Loads;

namespace Glazewright.Design.Pipeline;

/// <summary>What one stage counts on and another stage of the same job contradicts.</summary>
public static class CrossChecks
{
    /// <summary>Whether the year keeps a house as warm in the snow season as its snow load counts on.</summary>
    /// <param name="job">The job.</param>
    /// <param name="frame">Frame of a house.</param>
    /// <param name="year">Year of the same house.</param>
    /// <returns>One finding, or none.</returns>
    /// <remarks>ASCE/SEI 7 table 7.3-2 (read at second hand; the 50 °F of its footnote from memory). Hourly means are read: a shorter dip is not a roof's temperature.</remarks>
    public static IEnumerable<Finding> Snow(Job job, FrameResult frame, YearResult year)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(year);
        FrameInput input = FrameInput.From(job, frame.House);
        if (frame.GroundSnowPa <= 0 || input.Winter.HeatOff || input.Winter.ColdestC <= 0)
        {
            yield break;
        }

        bool warm = input.Winter.ColdestC >= Mechanics.Loads.ThermalFactor.GreenhouseLeastC;
        double reliedC = warm ? Mechanics.Loads.ThermalFactor.GreenhouseLeastC : 0;
        int below = 0, coldest = -1;
        for (int hour = 0; hour < year.Hours.InsideC.Count; hour++)
        {
            double insideC = year.Hours.InsideC[hour];
            if (!WinterHeat.InSnowSeason(Math.Min(hour / 168 + 1, 52), job.Site.LatitudeDeg >= 0) || (warm ? insideC >= reliedC : insideC > reliedC))
            {
                continue;
            }

            below++;
            coldest = coldest < 0 || insideC < year.Hours.InsideC[coldest] ? hour : coldest;
        }

        if (coldest < 0)
        {
            yield break;
        }

        double coldestC = year.Hours.InsideC[coldest];
        var ground = new GroundSnow(frame.GroundSnowPa, FrameLoadSite.EditionOf(input.Snow.Edition));
        // Below what a warm roof asks for, neither resistance nor alarm has a say.
        double factor = Mechanics.Loads.ThermalFactor.Of(ground, new RoofThermal(0, coldestC, input.FreezeAlarm)).Factor;
        double more = factor / frame.ThermalFactor - 1;
        if (more < 0.005)
        {
            yield break;
        }

        yield return new Finding(
            "frame/snow-warmth-not-held", Severity.Danger, frame.House,
            string.Create(
                CultureInfo.InvariantCulture,
                $"The snow load relies on {(warm ? "50 °F (10 °C) or more" : "air above freezing")} all winter (Ct {frame.ThermalFactor:0.00}), but in the simulated year the hourly mean falls to {FrameWords.Fahrenheit(coldestC)} on {YearWords.When(coldest * 60)} and is too cold for that in {below:N0} h of the snow season: Ct would be {factor:0.00}, at least {100 * more:0} % more snow."),
            "Take the higher Ct and size the frame for it, or mend the heat until the year holds; a typical year leaves the worst cold out.",
            new Source.Standard(FrameWords.Edition(ground.Edition), "table 7.3-2", Source.Mark.FromMemory));
    }
}
