using Glazewright.Science.Maths;

namespace Glazewright.Science.Weather;

/// <summary>
/// The sun by the minute. The clearness of the beam and of the diffuse part is joined by straight lines between the centres of the hours, multiplied with
/// the extraterrestrial radiation of the minute and scaled so that each hour keeps its energy (methods page: rms 30.6 W/m² against measured 5-minute values,
/// 40 for plain steps).
/// </summary>
internal static class SunExpansion
{
    /// <summary>Below this hourly extraterrestrial mean, W/m², a clearness says nothing.</summary>
    private const double LeastExtraterrestrialWm2 = 20;

    /// <summary>Cosine of 85°: below it a beam on the horizontal is not turned into a normal one.</summary>
    private const double LeastCosine = 0.0872;

    public static void Fill(WeatherYear year, MinuteWeather to)
    {
        double[] extraterrestrial = Positions(year, to);
        int shift = 30 + (int)Math.Round(year.RadiationOffsetH * 60);
        HourPlan[] plans = Plan(year, extraterrestrial, shift, to.Log);
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            FillHour(plans, h, extraterrestrial, shift, to);
        }

        Normal(plans, extraterrestrial, shift, to);
    }

    /// <summary>Sun's place each minute; gives the extraterrestrial horizontal, W/m², each minute (zero below the horizon).</summary>
    private static double[] Positions(WeatherYear year, MinuteWeather to)
    {
        var sun = new YearSun(year.Station);
        var extraterrestrial = new double[CommonYear.Minutes];
        double sinStep = Elementary.Sin(Math.PI / 720);
        double cosStep = Elementary.Cos(Math.PI / 720);
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            SunElements at = sun.ElementsAt(h + 0.5);
            double sinHour = Elementary.Sin(at.HourAngleRad - 29.5 * (Math.PI / 720));
            double cosHour = Elementary.Cos(at.HourAngleRad - 29.5 * (Math.PI / 720));
            for (int k = 0; k < 60; k++)
            {
                int m = h * 60 + k;
                double cosZenith = sun.CosZenith(at, cosHour);
                to.Up.Set(m, cosZenith);
                extraterrestrial[m] = at.ExtraterrestrialNormalWm2 * Math.Max(0, cosZenith);
                to.East.Set(m, sun.East(at, sinHour));
                to.North.Set(m, sun.North(at, cosHour));
                to.Azimuth.Set(m, cosZenith > -0.0523 ? sun.AzimuthDeg(at, sinHour, cosHour) : 0);
                double next = sinHour * cosStep + cosHour * sinStep;
                cosHour = cosHour * cosStep - sinHour * sinStep;
                sinHour = next;
            }
        }

        return extraterrestrial;
    }

    private static HourPlan[] Plan(WeatherYear year, double[] extraterrestrial, int shift, MinuteExpansionLog log)
    {
        var plans = new HourPlan[CommonYear.Hours];
        for (int h = 0; h < plans.Length; h++)
        {
            double sum = 0;
            int start = h * 60 + shift;
            for (int k = 0; k < 60; k++)
            {
                sum += extraterrestrial[Ring(start + k)];
            }

            double e0 = sum / 60;
            double ghi = year.GhiWhm2[h];
            double dhi = Math.Min(year.DhiWhm2[h], ghi);
            log.HoursWithDiffuseAboveGlobal += year.DhiWhm2[h] > ghi + 1 ? 1 : 0;
            bool defined = e0 >= LeastExtraterrestrialWm2;
            log.HoursSpreadAsDiffuse += !defined && ghi > 0 ? 1 : 0;
            plans[h] = defined
                ? new HourPlan(true, dhi, ghi - dhi, Math.Min(1.2, dhi / e0), Math.Min(1.2, (ghi - dhi) / e0), year.DniWhm2[h])
                : new HourPlan(false, ghi, 0, 0, 0, 0);
        }

        return plans;
    }

    private static void FillHour(HourPlan[] plans, int h, double[] extraterrestrial, int shift, MinuteWeather to)
    {
        HourPlan plan = plans[h];
        int start = h * 60 + shift;
        if (plan.DiffuseWm2 + plan.BeamWm2 <= 0)
        {
            return;
        }

        if (!plan.Defined)
        {
            SpreadDiffuse(plan.DiffuseWm2, extraterrestrial, start, to);
            return;
        }

        HourPlan before = plans[(h + plans.Length - 1) % plans.Length];
        HourPlan after = plans[(h + 1) % plans.Length];
        Join(plan.DiffuseKt, before.Defined ? before.DiffuseKt : plan.DiffuseKt, after.Defined ? after.DiffuseKt : plan.DiffuseKt, plan.DiffuseWm2, extraterrestrial, start, to.Dhi);
        Join(plan.BeamKt, before.Defined ? before.BeamKt : plan.BeamKt, after.Defined ? after.BeamKt : plan.BeamKt, plan.BeamWm2, extraterrestrial, start, to.Dni);
    }

    /// <summary>One part of the radiation over one hour. The beam on the horizontal is kept in the column of the normal beam until the end.</summary>
    private static void Join(double kt, double ktBefore, double ktAfter, double meanWm2, double[] extraterrestrial, int start, double[] to)
    {
        if (meanWm2 <= 0)
        {
            return;
        }

        double sum = 0;
        for (int k = 0; k < 60; k++)
        {
            double fromCentre = (k + 0.5 - 30) / 60;
            double joined = fromCentre < 0 ? kt + (kt - ktBefore) * fromCentre : kt + (ktAfter - kt) * fromCentre;
            int m = Ring(start + k);
            double value = joined * extraterrestrial[m];
            to[m] = value;
            sum += value;
        }

        double scale = meanWm2 * 60 / sum;
        for (int k = 0; k < 60; k++)
        {
            to[Ring(start + k)] *= scale;
        }
    }

    private static void SpreadDiffuse(double meanWm2, double[] extraterrestrial, int start, MinuteWeather to)
    {
        int lit = 0;
        for (int k = 0; k < 60; k++)
        {
            lit += extraterrestrial[Ring(start + k)] > 0 ? 1 : 0;
        }

        for (int k = 0; k < 60; k++)
        {
            int m = Ring(start + k);
            to.Dhi[m] = lit == 0 ? meanWm2 : extraterrestrial[m] > 0 ? meanWm2 * 60 / lit : 0;
        }
    }

    /// <summary>Beam on the horizontal to normal beam, capped by the sky and by 1.1 times the hour and its neighbours; what is capped becomes diffuse, so global stays.</summary>
    private static void Normal(HourPlan[] plans, double[] extraterrestrial, int shift, MinuteWeather to)
    {
        for (int h = 0; h < plans.Length; h++)
        {
            HourPlan before = plans[(h + plans.Length - 1) % plans.Length];
            HourPlan after = plans[(h + 1) % plans.Length];
            double most = 1.1 * Math.Max(plans[h].NormalWm2, Math.Max(before.NormalWm2, after.NormalWm2));
            int start = h * 60 + shift;
            double turned = 0;
            for (int k = 0; k < 60; k++)
            {
                int m = Ring(start + k);
                double horizontal = to.Dni[m];
                double normal = 0;
                if (horizontal > 0)
                {
                    double cosZenith = to.Up[m];
                    normal = Math.Min(horizontal / Math.Max(cosZenith, LeastCosine), Math.Min(most, extraterrestrial[m] / cosZenith));
                    double kept = normal * cosZenith;
                    turned += horizontal - kept;
                    to.Dhi[m] += horizontal - kept;
                }

                to.Dni[m] = normal;
                to.Ghi.Set(m, to.Dhi[m] + normal * Math.Max(0, to.Up[m]));
            }

            if (turned > 0.06)
            {
                to.Log.HoursWithBeamCapped++;
                to.Log.BeamTurnedToDiffuseWhm2 += turned / 60;
            }
        }
    }

    private static int Ring(int minute) =>
        minute < 0 ? minute + CommonYear.Minutes : minute >= CommonYear.Minutes ? minute - CommonYear.Minutes : minute;

    private readonly record struct HourPlan(
        bool Defined, double DiffuseWm2, double BeamWm2, double DiffuseKt, double BeamKt, double NormalWm2);
}
