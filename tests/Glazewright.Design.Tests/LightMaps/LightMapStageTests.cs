using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.LightMaps;
using Glazewright.Design.Tests.Contracts;
using Glazewright.Design.Tests.GainTables;

namespace Glazewright.Design.Tests.LightMaps;

public class LightMapStageTests
{
    private static readonly LightMap Usual = LightJobs.Map(TestJobs.OneHouse());

    // What nature sets: no more light inside than outside, none missing.
    [Fact]
    public void No_point_has_more_light_than_outdoors()
    {
        Assert.Equal(12, Usual.Months.Count);
        for (int m = 0; m < 12; m++)
        {
            Assert.Equal(Usual.CountX * Usual.CountY, Usual.Months[m].PointMolPerM2Day.Count);
            Assert.All(Usual.Months[m].PointMolPerM2Day, p => Assert.InRange(p, 0.01, Usual.OutsideMolPerM2Day[m]));
            Assert.Equal(Usual.Months[m].PointMolPerM2Day.Average(), Usual.Months[m].MeanMolPerM2Day, 1e-9);
            Assert.Equal(Usual.Months[m].PointMolPerM2Day.Min(), Usual.Months[m].LeastMolPerM2Day, 1e-9);
        }
    }

    // The outside column is the weather file's own global energy.
    [Fact]
    public void Outside_is_the_file_s_energy_in_photons()
    {
        double julyWh = Enumerable.Range(181 * 24, 31 * 24).Sum(h => LightJobs.Weather.GhiWhm2[h]);
        Assert.Equal(julyWh * 0.007265 / 31, Usual.OutsideMolPerM2Day[6], 1e-6);
    }

    // A toy multiplies everything by one factor. Here each change moves each month by another share.
    [Fact]
    public void Turning_the_house_moves_each_month_by_a_different_share() =>
        EachMonthMovesOnItsOwn(LightJobs.Map(LightJobs.Turned(TestJobs.OneHouse(), 185)), least: 0.02);

    [Fact]
    public void A_clear_north_roof_moves_each_month_by_a_different_share()
    {
        LightMap clear = LightJobs.Map(LightJobs.Covered(TestJobs.OneHouse(), (FaceName.RoofRight, TestJobs.TripleWall)));
        EachMonthMovesOnItsOwn(clear, least: 0.05);

        // It gives more in June, when the sun is high and far round to the north, than in December.
        Assert.True(
            clear.Months[5].MeanMolPerM2Day / Usual.Months[5].MeanMolPerM2Day
            > clear.Months[11].MeanMolPerM2Day / Usual.Months[11].MeanMolPerM2Day);
    }

    // Twice the purlins: their depth takes more of a low sun than of a high one, so no single factor fits.
    [Fact]
    public void Halving_the_purlin_spacing_moves_each_month_by_a_different_share()
    {
        Job job = TestJobs.OneHouse();
        job = job with { Houses = [job.Houses[0] with { Frame = job.Houses[0].Frame with { PurlinSpacingM = 0.65 } }] };
        LightMap close = LightJobs.Map(job);
        EachMonthMovesOnItsOwn(close, least: 0.004);
        Assert.All(Enumerable.Range(0, 12), m => Assert.True(close.Months[m].MeanMolPerM2Day < Usual.Months[m].MeanMolPerM2Day));
    }

    // Opaque north side: in summer the strip along it is in the dark of its own roof.
    [Fact]
    public void An_opaque_north_roof_darkens_the_strip_below_it_in_June()
    {
        double south = RowMean(5, 2);
        double north = RowMean(5, Usual.CountY - 1);
        Assert.True(north < 0.8 * south, $"{north} against {south}");
    }

    // The front house stands 2.6 m off: in December it takes light from the rear one, most along the near wall; in June hardly any.
    [Fact]
    public void The_house_in_front_shades_the_rear_one_in_winter()
    {
        Job two = TestJobs.TwoHouses() with { Links = [] };
        LightMap shaded = LightJobs.Map(two);
        LightMap alone = LightJobs.Map(two with { Houses = [two.Houses[0]] });
        double december = shaded.Months[11].MeanMolPerM2Day / alone.Months[11].MeanMolPerM2Day;
        double june = shaded.Months[5].MeanMolPerM2Day / alone.Months[5].MeanMolPerM2Day;
        Assert.InRange(december, 0.3, 0.9);
        Assert.InRange(june, 0.9, 1);
    }

    [Fact]
    public void A_dark_month_for_the_crop_is_a_finding_with_lamps_to_mend_it()
    {
        Finding finding = Assert.Single(Usual.Report.Findings, f => f.Code == "light/below-wish");
        Assert.Equal(Severity.Miss, finding.Severity);
        Assert.Contains("Lamps of", finding.Mend, StringComparison.Ordinal);
        CropPeriod easy = TestJobs.OneHouse().Houses[0].Schedule[0] with { LightWishMolPerM2Day = 0.5 };
        Job job = TestJobs.OneHouse();
        Assert.Empty(LightJobs.Map(job with { Houses = [job.Houses[0] with { Schedule = [easy] }] }).Report.Findings);
    }

    // By hand: so many mol as the wish lacks, through the crop's hours and over its floor, are enough with a little more and too few with a tenth less.
    [Theory]
    [InlineData(1.02, Severity.Note)]
    [InlineData(0.5, Severity.Miss)]
    public void The_jobs_own_lamps_are_counted(double ofWhatLacksFraction, Severity severity)
    {
        Job job = TestJobs.OneHouse();
        CropPeriod lit = job.Houses[0].Schedule[0] with { LightWishMolPerM2Day = 20, LampHours = 16 };
        job = job with { Houses = [job.Houses[0] with { Schedule = [lit] }] };
        double lacksMol = 20 - LightWish.Of([lit], Usual.Months).Single().DarkestMolPerM2Day;
        double plantedM2 = lit.PlantedFraction * LightJobs.Form(job).Building("A").FloorAreaM2;
        Finding finding = Assert.Single(LightJobs.Map(job, ofWhatLacksFraction * lacksMol * plantedM2 / (16 * 3600e-6)).Report.Findings, f => f.Code == "light/below-wish");
        Assert.Equal(severity, finding.Severity);
        Assert.Contains(FormattableString.Invariant($"lamps add at most {ofWhatLacksFraction * lacksMol:0.0} in 16 h"), finding.What, StringComparison.Ordinal);
    }

    [Fact]
    public void Derived_figures_follow_from_their_printed_inputs()
    {
        foreach (Figure figure in Usual.Report.Figures)
        {
            if (figure.Working is Working.Derived derived)
            {
                Assert.Equal(figure.Value, FormulaReader.Evaluate(derived.Formula, derived.Inputs), 1e-9);
            }
        }

        Assert.Contains(Usual.Report.LeftOut, l => l.Contains("not designed for the site", StringComparison.Ordinal));
    }

    private static void EachMonthMovesOnItsOwn(LightMap changed, double least)
    {
        double[] moved = [.. Enumerable.Range(0, 12).Select(m => changed.Months[m].MeanMolPerM2Day / Usual.Months[m].MeanMolPerM2Day)];
        Assert.Equal(12, moved.Select(r => Math.Round(r, 8)).Distinct().Count());
        Assert.True(moved.Max() - moved.Min() > least, string.Join(" ", moved));
    }

    private static double RowMean(int month, int j) =>
        Usual.Months[month].PointMolPerM2Day.Skip(j * Usual.CountX).Take(Usual.CountX).Average();
}
