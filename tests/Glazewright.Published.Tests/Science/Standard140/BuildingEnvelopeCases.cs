using static Glazewright.Published.Tests.Science.Standard140.Figure;

namespace Glazewright.Published.Tests.Science.Standard140;

/// <summary>
/// ASHRAE Standard 140-2020, building thermal envelope and fabric, with the edition's own weather (station 725650): least and greatest result of the six reference programs of
/// its tables, read in an open repository of the standard's result files; inputs as told at <see cref="BoxCase"/>. MWh a year and hourly peaks in kW, hourly air in °C.
/// Accepted: inside the range, or beside it by a tenth of its width (<see cref="Near"/>); two figures of case 195 miss that and are told (<see cref="Missed"/>). The product's inner
/// films put these four there, as the last test shows (docs/methods/climate-model.md).
/// </summary>
public class BuildingEnvelopeCases
{
    private static readonly Figure Nothing = In(0, 0);

    [Fact]
    public void Case_600_light_box_with_double_glass() =>
        Loads(BoxCase.Case600, In(3.993, 4.504), In(5.432, 6.162), In(3.020, 3.359), In(5.422, 6.481));

    [Fact]
    public void Case_620_glass_to_east_and_west() =>
        Loads(BoxCase.Case620, In(4.094, 4.719), In(3.841, 4.404), In(3.038, 3.385), In(3.955, 4.797));

    [Fact]
    public void Case_640_set_back_at_night() =>
        Loads(BoxCase.Case600 with { Control = BoxCase.SetBack }, Near(2.403, 2.682), In(5.237, 5.893), In(4.039, 4.658), In(5.365, 6.429));

    [Fact]
    public void Case_650_aired_at_night() =>
        Loads(BoxCase.Case600 with { Control = BoxCase.NightAir }, Nothing, In(4.186, 4.945), Nothing, In(5.045, 6.290));

    [Fact]
    public void Case_670_single_pane() =>
        Loads(BoxCase.Case670, In(5.300, 6.140), In(5.954, 6.623), In(3.655, 4.221), In(5.839, 6.925));

    [Fact]
    public void Case_680_thick_insulation() =>
        Loads(BoxCase.Case680, In(1.732, 2.286), Near(5.932, 6.529), In(1.778, 2.126), In(5.761, 7.051));

    [Fact]
    public void Case_900_heavy_box() =>
        Loads(BoxCase.Case900, In(1.379, 1.814), In(2.267, 2.714), In(2.443, 2.778), In(2.556, 3.376));

    [Fact]
    public void Case_940_heavy_box_set_back_at_night() =>
        Loads(BoxCase.Case900 with { Control = BoxCase.SetBack }, In(0.863, 1.389), In(2.203, 2.613), In(3.052, 3.882), In(2.556, 3.376));

    [Fact]
    public void Case_195_conduction_alone() =>
        Loads(BoxCase.Case195, In(3.951, 4.217), Missed(0.592, 0.712, 0.042), Missed(1.791, 1.802, 0.029), In(0.944, 1.118));

    [Fact]
    public void Case_960_light_box_behind_a_sunspace()
    {
        BoxYear year = Loads(BoxCase.Case960, In(2.522, 2.860), In(0.789, 0.950), In(2.085, 2.300), In(1.338, 1.480));
        Floats(year.Zones[1], In(4.2, 8.0), In(48.1, 53.2), In(26.8, 29.4));
    }

    [Fact]
    public void Case_600FF_light_box_left_to_itself() =>
        Floats(BoxYear.Run(BoxCase.Case600.FreeFloat, BoxSky.OrSkip()).Zones[0], In(-13.8, -9.9), In(62.4, 68.4), In(24.3, 26.1));

    [Fact]
    public void Case_650FF_left_to_itself_and_aired_at_night() =>
        Floats(
            BoxYear.Run((BoxCase.Case600 with { Control = BoxCase.NightAir }).FreeFloat, BoxSky.OrSkip()).Zones[0],
            In(-17.8, -16.7), In(61.1, 66.8), In(17.6, 18.9));

    [Fact]
    public void Case_900FF_heavy_box_left_to_itself() =>
        Floats(BoxYear.Run(BoxCase.Case900.FreeFloat, BoxSky.OrSkip()).Zones[0], In(0.6, 2.2), In(43.3, 46.0), In(24.5, 25.7));

    [Fact]
    public void The_figures_beside_their_range_come_into_it_with_the_standards_constant_films()
    {
        static BoxYear Run(BoxCase box) => BoxYear.Run(box with { ConstantInnerFilms = true }, BoxSky.OrSkip());
        In(2.403, 2.682).Holds("640, heating, MWh", Run(BoxCase.Case600 with { Control = BoxCase.SetBack }).HeatMWh);
        In(5.932, 6.529).Holds("680, cooling, MWh", Run(BoxCase.Case680).CoolMWh);
        BoxYear conduction = Run(BoxCase.Case195);
        In(0.592, 0.712).Holds("195, cooling, MWh", conduction.CoolMWh);
        In(1.791, 1.802).Holds("195, greatest hour of heating, kW", conduction.PeakHeatKw);
    }

    private static BoxYear Loads(BoxCase box, Figure heatMWh, Figure coolMWh, Figure peakHeatKw, Figure peakCoolKw) =>
        Loads(BoxYear.Run(box, BoxSky.OrSkip()), heatMWh, coolMWh, peakHeatKw, peakCoolKw);

    internal static BoxYear Loads(BoxYear year, Figure heatMWh, Figure coolMWh, Figure peakHeatKw, Figure peakCoolKw)
    {
        heatMWh.Holds("heating, MWh", year.HeatMWh);
        coolMWh.Holds("cooling, MWh", year.CoolMWh);
        peakHeatKw.Holds("greatest hour of heating, kW", year.PeakHeatKw);
        peakCoolKw.Holds("greatest hour of cooling, kW", year.PeakCoolKw);
        Assert.InRange(year.LargestImbalanceW, 0, 1e-6);
        return year;
    }

    internal static void Floats(ZoneAir air, Figure leastC, Figure mostC, Figure meanC)
    {
        leastC.Holds("coldest hour, °C", air.LeastC);
        mostC.Holds("warmest hour, °C", air.MostC);
        meanC.Holds("mean of the year, °C", air.MeanC);
    }
}

/// <summary>
/// A published range: inside it; or beside it by a tenth of its width (the mark set before, TM-4 of our collected cases: "inside range + 10 % of it"); or a miss that is told, with the
/// share of the limit it is off by (docs/methods/climate-model.md).
/// </summary>
internal readonly record struct Figure(double Least, double Most, double SlackFraction, double MissFraction)
{
    public static Figure In(double least, double most) => new(least, most, 0, 0);

    public static Figure Near(double least, double most) => new(least, most, 0.1, 0);

    public static Figure Missed(double least, double most, double byFractionOfLimit) => new(least, most, 0.1, byFractionOfLimit);

    public void Holds(string what, double ours)
    {
        double slack = SlackFraction * (Most - Least), least = Least - slack, most = Most + slack;
        bool inside = ours >= least && ours <= most;
        string said = FormattableString.Invariant($"{what}: {ours:F3} ({Least} to {Most}), to be within {least:F3} to {most:F3}");
        TestContext.Current.TestOutputHelper?.WriteLine(said);
        if (MissFraction == 0)
        {
            Assert.True(inside, said);
            return;
        }

        Assert.False(inside, said + ": no longer a miss, tell it");
        Assert.True(ours >= Least * (1 - MissFraction) && ours <= Most * (1 + MissFraction), said + FormattableString.Invariant($", told as a miss of {MissFraction:P1}"));
    }
}
