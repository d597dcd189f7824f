using System.Diagnostics;
using Glazewright.Design.Behaviour;
using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.GainTables;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;
using Glazewright.Design.Tests.Duty;
using Glazewright.Science.Weather;
using DesignDay = Glazewright.Design.Tests.Duty.DesignDay;

namespace Glazewright.Design.Tests.Behaviour;

public class SeasonTests
{
    private sealed record Scene(DutyInput Input, BuildingForm Form, DutyResult Duty, PlantResult Plant)
    {
        public SeasonResult In(WeatherYear year, GainTable? gains = null, DutyInput? input = null) =>
            SeasonBehaviour.Of(Form, Duty, Plant, new SeasonGround(input ?? Input, gains ?? DesignDay.Gains(Form), year, 0.1))!;
    }

    private static Scene Set(Func<EquipmentChoice, EquipmentChoice>? change = null)
    {
        Job job = DesignDay.With(TestJobs.OneHouse(), change ?? (e => e));
        BuildingForm form = FormStage.Run(FormInput.From(job)).Building("A");
        DutyResult duty = DesignDay.Duty(job);
        return new Scene(DutyInput.From(job, "A"), form, duty, PlantStage.Run(PlantInput.From(job, "A"), form, duty, CatalogueReader.Generic));
    }

    [Theory]
    [InlineData(true, true), InlineData(false, false)]
    public void More_machines_never_hold_fewer_hours(bool wall, bool fog)
    {
        SeasonResult s = Set(e => e with { WetWall = wall, Fog = fog }).In(DesignDay.Year);
        Assert.Equal((wall, fog), (s.PadInHouse, s.FogInHouse));
        Assert.Equal(12, s.Months.Count);
        Assert.True(s.Months[6].AskedH > s.Months[0].AskedH);
        foreach (SeasonMonth m in s.Months)
        {
            Assert.InRange(m.AskedH, 0, 744);
            Assert.True(m.Fans.HeldH <= m.Pad.HeldH && m.Fans.HeldH <= m.Fog.HeldH);
            Assert.True(m.Both.HeldH >= Math.Max(m.Pad.HeldH, m.Fog.HeldH) && m.Both.HeldH <= m.AskedH);
            foreach (WayHeld w in (WayHeld[])[m.Fans, m.Pad, m.Fog, m.Both])
            {
                Assert.True(w.HumidHeldH <= w.HeldH && w.WaterM3 >= 0);
            }

            Assert.Equal(0, m.Fans.WaterM3);
            Assert.Equal(m.AskedH > m.Fans.HeldH, m.Fog.WaterM3 > 0);
        }

        Assert.Equal(s.Months.Sum(m => m.Pad.HeldH), s.Figures.Single(f => f.Id == "A/behaviour/season-pad").Value);
    }

    // The same year with every dew point three kelvins lower (one bin, so the hours stay together): the pad cools deeper in every month.
    [Fact]
    public void A_drier_year_is_never_worse_for_the_pad()
    {
        Scene scene = Set();
        WeatherYear year = DesignDay.Year;
        double[] dew = [.. year.DewPointC.Span.ToArray().Select(d => d - 3)];
        SeasonResult damp = scene.In(year);
        SeasonResult dry = scene.In(year with { DewPointC = new HourlyColumn(dew) });
        Assert.Contains(damp.Months, m => m.Pad.HeldH > m.Fans.HeldH);
        foreach ((SeasonMonth a, SeasonMonth b) in damp.Months.Zip(dry.Months).Where(p => p.First.AskedH > 0))
        {
            Assert.Equal(a.AskedH, b.AskedH);
            Assert.True(b.PadDropK > a.PadDropK);
            Assert.True(b.Pad.HeldH >= a.Pad.HeldH);
        }
    }

    // A house that takes the sun alike from every side; the year moved by 182 days, the latitude mirrored.
    [Fact]
    public void The_southern_hemisphere_is_half_a_year_off()
    {
        Scene scene = Set();
        GainRow row = new(0.5 * scene.Form.FloorAreaM2, 0.08, 0, 0.60, 0.06, 0.04, 0.22);
        GainSet set = new([.. Enumerable.Repeat(row, 8)], row, row, row);
        GainTable even = new("A", 90, 90, set, set, 0.5, StageReport.Empty);
        WeatherYear north = DesignDay.Year;
        HourlyColumn Moved(HourlyColumn c) => new([.. c.Span[(182 * 24)..].ToArray(), .. c.Span[..(182 * 24)].ToArray()]);
        WeatherYear south = north with
        {
            DryBulbC = Moved(north.DryBulbC),
            DewPointC = Moved(north.DewPointC),
            PressurePa = Moved(north.PressurePa),
            GhiWhm2 = Moved(north.GhiWhm2),
            DniWhm2 = Moved(north.DniWhm2),
            DhiWhm2 = Moved(north.DhiWhm2),
        };
        SeasonResult a = scene.In(north, even);
        SeasonResult b = scene.In(south, even, scene.Input with { LatitudeDeg = -scene.Input.LatitudeDeg });
        Assert.Equal(a.Months.Sum(m => m.AskedH), b.Months.Sum(m => m.AskedH), 0.03 * a.Months.Sum(m => m.AskedH));
        Assert.True(b.Months[0].AskedH > b.Months[6].AskedH);
        for (int m = 0; m < 12; m++)
        {
            // Months of 28 to 31 days and a two-day slip: three days of hours.
            Assert.Equal(a.Months[m].AskedH, b.Months[(m + 6) % 12].AskedH, 72.0);
        }
    }

    /// <summary>Common practice: a wet wall does much in a desert and little on a humid coast. Open typical years of two stations.</summary>
    [Fact]
    public void A_pad_gains_much_in_the_desert_and_little_on_the_humid_coast()
    {
        Scene scene = Set(e => e with { WetWall = true });
        SeasonResult At(string part, double latitude, double longitude) =>
            scene.In(Station(part), null, scene.Input with { LatitudeDeg = latitude, LongitudeDeg = longitude });
        SeasonResult desert = At("Phoenix", 33.4, -112);
        SeasonResult coast = At("Miami", 25.8, -80.3);
        double[] drops = [desert.Months[5].PadDropK, coast.Months[5].PadDropK];
        double Gained(SeasonResult s) => s.Months.Skip(5).Take(3).Sum(m => m.Pad.HeldH - m.Fans.HeldH) / s.Months.Skip(5).Take(3).Sum(m => m.AskedH);
        TestContext.Current.TestOutputHelper?.WriteLine($"June drop K {drops[0]:0.0} desert, {drops[1]:0.0} coast; share of summer hours gained {Gained(desert):0.000}, {Gained(coast):0.000}; {desert.Reason} | {coast.Reason}");
        Assert.True(drops[0] > 2 * drops[1]);
        Assert.True(Gained(desert) > Gained(coast));
    }

    [Fact]
    public void A_year_is_counted_in_a_moment()
    {
        Scene scene = Set(e => e with { WetWall = true, Fog = true });
        scene.In(DesignDay.Year);
        var watch = Stopwatch.StartNew();
        scene.In(DesignDay.Year);
        double ms = watch.Elapsed.TotalMilliseconds;
        TestContext.Current.TestOutputHelper?.WriteLine($"{ms:0} ms");
        Assert.InRange(ms, 0, 2000);
    }

    private static WeatherYear Station(string part)
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            string room = Path.Combine(at.FullName, "shared", "cases", "weather");
            string? file = Directory.Exists(room) ? Directory.GetFiles(room, $"*{part}*.epw.gz").FirstOrDefault() : null;
            if (file is not null)
            {
                return ((WeatherReading.Read)WeatherFile.Read(File.ReadAllBytes(file))).Year;
            }
        }

        Assert.Skip($"shared/cases/weather/*{part}*.epw.gz is not here: the ranking of desert and coast is NOT checked.");
        throw new FileNotFoundException(part);
    }
}
