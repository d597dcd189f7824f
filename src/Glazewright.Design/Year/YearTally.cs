using System.Runtime.CompilerServices;
using Glazewright.Design.Brief;
using Glazewright.Science.Climate;

namespace Glazewright.Design.Year;

/// <summary>Minutes counted against the targets.</summary>
internal struct HeldTally
{
    private double total, heldT, heldH, asked, jointly, warm, cold, wet, dry, warmKMin, coldKMin, aboveNever, frost, condensing, leafWet, warmLimit, coldLimit;

    /// <summary>Share of the counted minutes with all targets held.</summary>
    public readonly double JointlyFraction => total > 0 ? jointly / total : 0;

    /// <summary>Counts one minute.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Add(in Asked ask, in MinuteSeen seen, HeldBand band, double neverAboveC)
    {
        total++;
        if (seen.AirC <= 0)
        {
            frost++;
        }

        if (seen.Condensing)
        {
            condensing++;
        }

        if (seen.LeafWet)
        {
            leafWet++;
        }

        if (seen.AirC > neverAboveC)
        {
            aboveNever++;
        }

        if (ask.Period < 0)
        {
            return;
        }

        double offK = ask.DepartureK(seen.AirC), bandK = band.TemperatureK;
        bool t = Math.Abs(offK) <= bandK, h = true;
        heldT += t ? 1 : 0;
        if (offK > bandK)
        {
            warm++;
            warmKMin += offK - bandK;
            warmLimit += seen.AllCooling ? 1 : 0;
        }
        else if (offK < -bandK)
        {
            cold++;
            coldKMin += -offK - bandK;
            coldLimit += seen.AllHeating ? 1 : 0;
        }

        if (ask.HumidityPercent > 0)
        {
            h = Humid(seen.Percent - ask.HumidityPercent, band.HumidityPercent);
        }
        else if (ask.VpdKPa > 0)
        {
            h = Humid(ask.VpdKPa - (1e-3 * seen.SaturationPa * (1 - (0.01 * seen.Percent))), band.VpdKPa);
        }

        jointly += t && h ? 1 : 0;
    }

    // Whether it is held; too much water is more humidity, or less deficit.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private bool Humid(double off, double band)
    {
        asked++;
        wet += off > band ? 1 : 0;
        dry += off < -band ? 1 : 0;
        bool held = Math.Abs(off) <= band;
        heldH += held ? 1 : 0;
        return held;
    }

    /// <summary>Adds what another has counted.</summary>
    public void Add(in HeldTally other)
    {
        total += other.total;
        heldT += other.heldT;
        heldH += other.heldH;
        asked += other.asked;
        jointly += other.jointly;
        warm += other.warm;
        cold += other.cold;
        wet += other.wet;
        dry += other.dry;
        warmKMin += other.warmKMin;
        coldKMin += other.coldKMin;
        aboveNever += other.aboveNever;
        frost += other.frost;
        condensing += other.condensing;
        leafWet += other.leafWet;
        warmLimit += other.warmLimit;
        coldLimit += other.coldLimit;
    }

    /// <summary>In hours.</summary>
    public readonly HeldCounters Hours() => new(
        total / 60, heldT / 60, heldH / 60, asked / 60, jointly / 60, warm / 60, cold / 60, wet / 60, dry / 60,
        warmKMin / 60, coldKMin / 60, aboveNever / 60, frost / 60, condensing / 60, leafWet / 60, warmLimit / 60, coldLimit / 60);
}

/// <summary>What a minute brought.</summary>
internal readonly record struct MinuteSeen(double AirC, double Percent, double SaturationPa, bool Condensing, bool LeafWet, bool AllCooling, bool AllHeating);

/// <summary>Where the year's heat came from and went, J.</summary>
internal struct HeatBalance
{
    public double SunJ, HeatJ, LampJ, ShellJ, FanAirJ, OtherAirJ, GroundJ, LatentJ, StoredJ;

    /// <summary>Adds one step.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Add(in HouseFluxes x, bool fans, double stepS)
    {
        SunJ += x.SunW * stepS;
        HeatJ += x.HeatW * stepS;
        LampJ += x.LampW * stepS;
        ShellJ += (x.ShellLossW + x.ThroughCoverLossW) * stepS;
        if (fans)
        {
            FanAirJ += x.AirLossW * stepS;
        }
        else
        {
            OtherAirJ += x.AirLossW * stepS;
        }

        GroundJ += x.GroundLossW * stepS;
        LatentJ += x.LatentW * stepS;
        StoredJ += x.StoredW * stepS;
    }
}

/// <summary>Sums of one month.</summary>
internal struct MonthTally
{
    public double HeatJ, FuelJ, PowerJ, PeakW, WaterKg, Co2Kg, LightMol, LampMol;
}
