using Glazewright.Science.Network;

namespace Glazewright.Published.Tests.Science.Standard140;

/// <summary>What a year of a case comes to: energies, hourly peaks of the plant, hourly air temperatures of each zone.</summary>
internal sealed record BoxYear(double HeatMWh, double CoolMWh, double PeakHeatKw, double PeakCoolKw, ZoneAir[] Zones, double LargestImbalanceW)
{
    private const int StepsInHour = 60 / BoxSky.StepMinutes;
    private const int WarmUpDays = 15;

    /// <summary>Runs the case: December's last days first, then the year. Ideal plant, all convective, on zone 0.</summary>
    public static BoxYear Run(BoxCase box, BoxSky sky)
    {
        BoxModel model = new(box, sky);
        NetworkState before = model.Network.NewState();
        double heatJ = 0, coolJ = 0, hourHeatJ = 0, hourCoolJ = 0, peakHeatJ = 0, peakCoolJ = 0, imbalanceW = 0;
        double[] hourC = new double[box.Zones.Length];
        ZoneAir[] zones = [.. box.Zones.Select(_ => new ZoneAir(double.MaxValue, double.MinValue, 0))];
        const double stepS = BoxSky.StepMinutes * 60;
        for (int run = -WarmUpDays * 24 * StepsInHour; run < BoxSky.Steps; run++)
        {
            int step = (run + BoxSky.Steps) % BoxSky.Steps;
            model.Prepare(step);
            double plantW = Plant(model, before, box.Control, (step + 1) * BoxSky.StepMinutes / 60.0 % 24);
            if (run < 0)
            {
                continue;
            }

            imbalanceW = step % 997 == 0 ? Math.Max(imbalanceW, model.Network.LargestImbalanceW(model.State, plantW, model.Air[0])) : imbalanceW;
            hourHeatJ += Math.Max(plantW, 0) * stepS;
            hourCoolJ += Math.Max(-plantW, 0) * stepS;
            for (int z = 0; z < zones.Length; z++)
            {
                hourC[z] += model.State.TemperatureC[model.Air[z].Index] / StepsInHour;
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
    private static double Plant(BoxModel model, NetworkState before, Control control, double hourOfDay)
    {
        double hour = hourOfDay == 0 ? 24 : hourOfDay;
        double heatToC = control.HeatToC(hour), coolToC = control.CoolToC(hour);
        bool heats = double.IsFinite(heatToC), cools = double.IsFinite(coolToC);
        NodeId air = model.Air[0];
        before.CopyFrom(model.State);
        bool warm = !heats || (cools && before.TemperatureC[air.Index] > (heatToC + coolToC) / 2);
        double plantW = Take(warm);
        double nowC = model.State.TemperatureC[air.Index];
        if (warm ? heats && nowC < heatToC : cools && nowC > coolToC)
        {
            model.State.CopyFrom(before);
            plantW = Take(!warm);
        }

        return plantW;

        double Take(bool cooling) => model.Network.Step(model.State, BoxSky.StepMinutes * 60, cooling
            ? new TrackingPlant(air, air, cools ? coolToC : 0, cools ? -1e6 : 0, 0)
            : new TrackingPlant(air, air, heats ? heatToC : 0, 0, heats ? 1e6 : 0));
    }
}

/// <summary>Hourly mean air of a zone over the year.</summary>
internal readonly record struct ZoneAir(double LeastC, double MostC, double MeanC);
