using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;

namespace Glazewright.Design.Plant;

/// <summary>Heaters with lead and lag.</summary>
internal static class HeatSizing
{
    /// <summary>Reserve over the design loss when we choose (common practice: 10 to 20 %, or two units).</summary>
    public const double Reserve = 1.10;

    /// <summary>Heat over what is asked from which a choice is too large to be left to cycling, ratio.</summary>
    private const double TooMuch = 2;

    public static HeatPlant Plant(PlantInput input, DutyResult duty, HeatAsked asked, Catalogue catalogue)
    {
        List<HeaterEntry> entries = input.Equipment.HeatersFixed.Count > 0
            ? [.. input.Equipment.HeatersFixed
                .SelectMany(f => Enumerable.Repeat(Pick.ById(catalogue.Heaters, f.Entry, e => e.Id, $"{input.Pointer}/equipment/heaters"), f.Count))
                .OrderByDescending(e => e.EfficiencyFraction).ThenByDescending(e => e.OutputW).ThenBy(e => e.Id, StringComparer.Ordinal)]
            : Choose(input, asked, catalogue);
        EqList<HeaterUnit> units = entries.Select((e, i) => new HeaterUnit(
            $"{input.House}/heater-{i + 1}", e.Id, OutputW(e, input), e.EfficiencyFraction, e.FanW, e.Electric, e.Sealed, e.ThrowM, e.MassKg, e.OutputW)
        { Part = e.Part }).ToEqList();
        double oneOutW = units.Sum(u => u.OutputW) + input.Equipment.BenchPipeW - LargestW(units, input.Equipment.BenchPipeW);
        double HoldsC(double lossWPerK) => Math.Min(
            duty.Conditions.Heating996C + (lossWPerK > 0 ? oneOutW / lossWPerK : 0), duty.NightTargetC);
        return new HeatPlant(units, oneOutW, HoldsC(asked.LossDrawnWPerK), HoldsC(asked.LossWPerK));
    }

    /// <summary>What a heater gives at the place: a burner less than its rating in thin air.</summary>
    private static double OutputW(HeaterEntry e, PlantInput input) => e.Electric ? e.OutputW : e.OutputW * BurnerAltitude.RatingFraction(input.ElevationM);

    /// <summary>Output of the largest single source: a heater, or the one boiler behind the bench pipes.</summary>
    public static double LargestW(EqList<HeaterUnit> heaters, double benchPipeW) => Math.Max(heaters.Max(h => h.OutputW), benchPipeW);

    /// <summary>
    /// Two or more equal heaters, the smallest that do. Where burners would give more than twice what is asked, as in a very small house, electric ones
    /// are taken if they come nearer: a heater far too large for its house overheats it in its shortest run. Burners that turn down are kept as long as their least fire is below that.
    /// </summary>
    private static List<HeaterEntry> Choose(PlantInput input, HeatAsked asked, Catalogue catalogue)
    {
        double needW = Math.Max(Reserve * asked.NeedW - input.Equipment.BenchPipeW, 1);
        List<HeaterEntry> electric = Fewest(catalogue, input, needW, e => e.Electric && e.Part is null);
        if (input.Utilities.Fuel == FuelKind.None)
        {
            return electric;
        }

        List<HeaterEntry> burners = Fewest(catalogue, input, needW, e => !e.Electric && e.Sealed == input.Equipment.SealedCombustion && e.Fire == input.Equipment.HeaterFire);
        double electricW = electric.Sum(e => OutputW(e, input));
        return burners.Sum(e => OutputW(e, input) * (e.Part?.LeastFraction ?? 1)) > TooMuch * needW && electricW >= needW && electricW < burners.Sum(e => OutputW(e, input)) ? electric : burners;
    }

    private static List<HeaterEntry> Fewest(Catalogue catalogue, PlantInput input, double needW, Func<HeaterEntry, bool> may)
    {
        List<HeaterEntry> sizes = [.. catalogue.Heaters.Where(may).OrderBy(e => e.OutputW)];
        for (int count = 2; count <= 12; count++)
        {
            if (sizes.Find(e => count * OutputW(e, input) >= needW) is { } fits)
            {
                return [.. Enumerable.Repeat(fits, count)];
            }
        }

        return [.. Enumerable.Repeat(sizes[^1], 12)];
    }
}
