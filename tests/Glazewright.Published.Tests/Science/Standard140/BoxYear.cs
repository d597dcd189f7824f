namespace Glazewright.Published.Tests.Science.Standard140;

/// <summary>What a year of a case comes to: energies, hourly peaks of the plant, hourly air temperatures of each zone.</summary>
internal sealed record BoxYear(double HeatMWh, double CoolMWh, double PeakHeatKw, double PeakCoolKw, ZoneAir[] Zones, double LargestImbalanceW)
{
    private const int StepsInHour = 60 / BoxSky.StepMinutes;
    private const int WarmUpDays = 15;

    /// <summary>Runs the case: December's last days first, then the year. Ideal plant, all convective, on zone 0.</summary>
    public static BoxYear Run(BoxCase box, BoxSky sky) => Run(new BoxModel(box, sky), box);

    /// <summary>The same with any model of the box.</summary>
    public static BoxYear Run(ISteppedBox model, BoxCase box)
    {
        double heatJ = 0, coolJ = 0, hourHeatJ = 0, hourCoolJ = 0, peakHeatJ = 0, peakCoolJ = 0, imbalanceW = 0;
        double[] hourC = new double[box.Zones.Length];
        ZoneAir[] zones = [.. box.Zones.Select(_ => new ZoneAir(double.MaxValue, double.MinValue, 0))];
        const double stepS = BoxSky.StepMinutes * 60;
        for (int run = -WarmUpDays * 24 * StepsInHour; run < BoxSky.Steps; run++)
        {
            int step = (run + BoxSky.Steps) % BoxSky.Steps;
            model.Prepare(step);
            double plantW = Plant(model, box.Control, (step + 1) * BoxSky.StepMinutes / 60.0 % 24);
            if (run < 0)
            {
                continue;
            }

            imbalanceW = step % 997 == 0 ? Math.Max(imbalanceW, model.ImbalanceW(plantW)) : imbalanceW;
            hourHeatJ += Math.Max(plantW, 0) * stepS;
            hourCoolJ += Math.Max(-plantW, 0) * stepS;
            for (int z = 0; z < zones.Length; z++)
            {
                hourC[z] += model.AirC(z) / StepsInHour;
            }

            if ((run + 1) % StepsInHour != 0)
            {
                continue;
            }

            heatJ += hourHeatJ;
            coolJ += hourCoolJ;
            peakHeatJ = Math.Max(peakHeatJ, hourHeatJ);
            peakCoolJ = Math.Max(peakCoolJ, hourCoolJ);
            (hourHeatJ, hourCoolJ) = (0, 0);
            for (int z = 0; z < zones.Length; z++)
            {
                zones[z] = new(Math.Min(zones[z].LeastC, hourC[z]), Math.Max(zones[z].MostC, hourC[z]), zones[z].MeanC + hourC[z] / 8760);
                hourC[z] = 0;
            }
        }

        return new(heatJ / 3.6e9, coolJ / 3.6e9, peakHeatJ / 3.6e6, peakCoolJ / 3.6e6, zones, imbalanceW);
    }

    // Heats below one set point, cools above the other: the likelier of the two is tried first, and the step is taken anew where it was the wrong one.
    private static double Plant(ISteppedBox model, Control control, double hourOfDay)
    {
        double hour = hourOfDay == 0 ? 24 : hourOfDay;
        double heatToC = control.HeatToC(hour), coolToC = control.CoolToC(hour);
        bool heats = double.IsFinite(heatToC), cools = double.IsFinite(coolToC);
        model.Keep();
        bool warm = !heats || (cools && model.AirC(0) > (heatToC + coolToC) / 2);
        double plantW = Take(warm);
        if (warm ? heats && model.AirC(0) < heatToC : cools && model.AirC(0) > coolToC)
        {
            model.GoBack();
            plantW = Take(!warm);
        }

        return plantW;

        double Take(bool cooling) => cooling
            ? model.Step(cools ? coolToC : 0, cools ? -1e6 : 0, 0)
            : model.Step(heats ? heatToC : 0, 0, heats ? 1e6 : 0);
    }
}

/// <summary>A model of the box that is stepped through the year, step by step of <see cref="BoxSky"/>.</summary>
internal interface ISteppedBox
{
    /// <summary>Sets what acts over a step.</summary>
    void Prepare(int step);

    /// <summary>Remembers the state.</summary>
    void Keep();

    /// <summary>Back to what was remembered.</summary>
    void GoBack();

    /// <summary>Takes the step with a plant on the air of zone 0 that tracks a set point within limits; gives its power, W.</summary>
    double Step(double setPointC, double leastW, double mostW);

    double AirC(int zone);

    /// <summary>What the books of the last step miss, W.</summary>
    double ImbalanceW(double plantW);
}

/// <summary>Hourly mean air of a zone over the year.</summary>
internal readonly record struct ZoneAir(double LeastC, double MostC, double MeanC);
