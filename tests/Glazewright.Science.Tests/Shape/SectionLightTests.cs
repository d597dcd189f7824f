using Glazewright.Science.Optics;
using Glazewright.Science.Shape;
using Glazewright.Science.Tests.Weather;
using Glazewright.Science.Weather;

namespace Glazewright.Science.Tests.Shape;

public class SectionLightTests
{
    private static readonly SunSamples Samples = SunSamples.Of(DemoYear(), 0.2);
    private static readonly SectionYear South = SectionYear.Of(Samples, 187);
    private static readonly CoverOptics Window = FromTable(_ => new LightShares(1, 0, 0));
    private static readonly CoverOptics Sheet = GenericCovers.All.First(c => c.Id == "polycarbonate-16-triple").Optics(CoverCondition.InUse);

    // The sheet's transmittance by angle, but nothing scattered or thrown back inside.
    private static readonly CoverOptics Bare = FromTable(i => new LightShares(Sheet.At(i).TransmittanceFraction, 0, 1 - Sheet.At(i).TransmittanceFraction));
    private static readonly CoverOptics Film = GenericCovers.All.First(c => c.Id == "film-double").Optics(CoverCondition.InUse);
    private static readonly GableSection House = new(8, 2.3, 2.8, 5.2, 4.9);

    // Nothing round the points: they get what lies outside.
    [Fact]
    public void Under_covers_that_pass_everything_the_light_is_that_outdoors()
    {
        SectionLight.Bench bench = Lit(South, House, All(South, Window, 0), floorReflectance: 0);
        double[] binned = South.HorizontalWhPerM2();
        for (int m = 0; m < 12; m++)
        {
            Assert.Equal(Samples.GlobalWhPerM2[m], binned[m], 0.004 * Samples.GlobalWhPerM2[m]);
            Assert.Equal(binned[m], bench.MeanWhPerM2(m), 1e-9 * binned[m]);
            Assert.Equal(binned[m], bench.LeastWhPerM2(m), 1e-9 * binned[m]);
        }
    }

    // Model: each quarter hour and each of 60 000 sky directions traced by brute force, no bins, no tables; nothing thrown back inside.
    [Theory]
    [InlineData(187)]
    [InlineData(140)]
    [InlineData(90)]
    public void Direct_light_is_what_ray_tracing_finds(double nearAzimuthDeg)
    {
        SectionYear year = SectionYear.Of(Samples, nearAzimuthDeg, 480);
        SectionCover clear = new SectionCover.Clear(year.Through(Bare, 0.06));
        SectionCover dark = new SectionCover.Opaque(0);
        SectionCovers covers = new(dark, clear, clear, dark, clear, dark);
        SectionLight light = new(year, 12, 0.8, 0);
        SectionLight.Bench bench = light.Room();
        light.Run(House, 0.76, covers, bench);
        for (int k = 1; k < 12; k += 5)
        {
            double[] traced = Traced(nearAzimuthDeg, (k + 0.5) * 8 / 12, 0.8);
            foreach (int m in new[] { 0, 5, 9, 11 })
            {
                // Bins of 0.4° against the quarter hours themselves, rays at whole rings: 1 % of the month, also where an edge passes.
                Assert.Equal(traced[m], bench.LightWhPerM2(k, m), 0.01 * traced[m]);
            }
        }
    }

    // A cover that scatters all it passes makes every part an even lamp. Model: each part's light outdoors from the quarter hours, sky, ground and horizon band
    // by their own factors, and each point's share of a part by directions traced one by one.
    [Fact]
    public void Scattered_light_is_each_part_s_light_times_what_a_point_sees_of_it()
    {
        CoverOptics milk = CoverOptics.FromTable([.. Enumerable.Range(0, CoverOptics.Entries).Select(_ => new LightShares(0.5, 0, 0.5))], 1);
        SectionYear year = SectionYear.Of(Samples, 187, 480);
        SectionLight light = new(year, 12, 0.8, 0);
        SectionLight.Bench bench = light.Room();
        light.Run(House, 0.76, All(year, milk, 0), bench);
        double e = Math.Sin(187 * Math.PI / 180);
        double n = Math.Cos(187 * Math.PI / 180);
        foreach (int k in new[] { 1, 6, 10 })
        {
            double[] share = new double[7];
            const int rings = 100;
            const int around = 400;
            for (int i = 0; i < rings; i++)
            {
                double up = Math.Sqrt((i + 0.5) / rings);
                for (int j = 0; j < around; j++)
                {
                    double near = Math.Sqrt(1 - (up * up)) * Math.Cos(2 * Math.PI * (j + 0.5) / around);
                    share[SectionRayTrace.PartSeen(House, 0.76, (k + 0.5) * 8 / 12, 0.8, Math.Atan2(up, near) * 180 / Math.PI)] += 1.0 / (rings * around);
                }
            }

            foreach (int m in new[] { 2, 5, 11 })
            {
                double expected = 0;
                for (int f = 0; f < 6; f++)
                {
                    (double toNear, double toUp) = f switch
                    {
                        0 or 1 => (1.0, 0.0),
                        2 => ((House.RidgeM - House.NearEaveM) / House.NearSlopeM, House.RidgeOffsetM / House.NearSlopeM),
                        3 => (-(House.RidgeM - House.FarEaveM) / House.FarSlopeM, (House.WidthM - House.RidgeOffsetM) / House.FarSlopeM),
                        _ => (-1.0, 0.0),
                    };
                    double outside = (Samples.DomeWhPerM2[m] * (1 + toUp) / 2) + (Samples.GroundWhPerM2[m] * (1 - toUp) / 2)
                        + (Samples.HorizonWhPerM2[m] * Math.Sqrt(1 - (toUp * toUp)));
                    foreach (SunSample s in Samples.Lit.Where(s => s.Month == m))
                    {
                        double near = (s.EastCosine * e) + (s.NorthCosine * n);
                        outside += 0.25 * s.FromSunWm2 * Math.Max(0, (toNear * near) + (toUp * s.UpCosine));
                    }

                    expected += 0.5 * outside * share[f];
                }

                Assert.Equal(expected, bench.LightWhPerM2(k, m), 0.01 * expected);
            }
        }
    }

    // Conservation: what passes the covers stays in the floor, the walls or the covers, scattered or not, from the ground or the sky.
    [Fact]
    public void Books_close()
    {
        SectionCover film = new SectionCover.Clear(South.Through(Film, 0.05));
        SectionCover sheet = new SectionCover.Clear(South.Through(Sheet, 0.05));
        SectionCover panel = new SectionCover.Opaque(0.7);
        foreach (double ponyM in new[] { 0, 0.76, 2.3 })
        {
            SectionLight.Bench bench = Lit(South, House, new SectionCovers(panel, sheet, film, panel, film, panel), 0.1, ponyM);
            for (int m = 0; m < 12; m++)
            {
                (double entered, double stayed) = bench.Books(m);
                Assert.True(entered > 0);
                Assert.Equal(entered, stayed, 1e-9 * entered);
            }
        }
    }

    // The house turned round and mirrored is the same house.
    [Fact]
    public void A_house_turned_round_has_its_light_mirrored()
    {
        SectionYear north = SectionYear.Of(Samples, 7);
        GableSection mirrored = new(House.WidthM, House.FarEaveM, House.NearEaveM, House.WidthM - House.RidgeOffsetM, House.RidgeM);
        SectionLight.Bench one = Lit(South, House, Usual(South), 0.1);
        SectionCovers u = Usual(north);
        SectionLight.Bench other = Lit(north, mirrored, new SectionCovers(u.FarPony, u.FarWall, u.FarSlope, u.NearSlope, u.NearWall, u.NearPony), 0.1);
        for (int k = 0; k < 30; k++)
        {
            Assert.Equal(one.LightWhPerM2(k, 11), other.LightWhPerM2(29 - k, 11), 2e-3 * one.MeanWhPerM2(11));
            Assert.Equal(one.LightWhPerM2(k, 5), other.LightWhPerM2(29 - k, 5), 2e-3 * one.MeanWhPerM2(5));
        }
    }

    // Twice the house is twice the geometry: the light across it is the same.
    [Fact]
    public void Light_does_not_know_the_scale()
    {
        GableSection twice = new(2 * House.WidthM, 2 * House.NearEaveM, 2 * House.FarEaveM, 2 * House.RidgeOffsetM, 2 * House.RidgeM);
        SectionLight.Bench one = Lit(South, House, Usual(South), 0.1);
        SectionLight light = new(South, 30, 1.6, 0.1);
        SectionLight.Bench other = light.Room();
        light.Run(twice, 1.52, Usual(South), other);
        Assert.Equal(one.MeanWhPerM2(11), other.MeanWhPerM2(11), 1e-9 * one.MeanWhPerM2(11));
        Assert.Equal(one.LeastWhPerM2(5), other.LeastWhPerM2(5), 1e-9 * one.LeastWhPerM2(5));
    }

    // Four times the bins and points.
    [Fact]
    public void Bins_and_points_are_fine_enough()
    {
        SectionYear fine = SectionYear.Of(Samples, 187, 480);
        SectionLight.Bench usual = Lit(South, House, Usual(South), 0.1);
        SectionLight light = new(fine, 120, 0.8, 0.1);
        SectionLight.Bench bench = light.Room();
        light.Run(House, 0.76, Usual(fine), bench);
        for (int m = 0; m < 12; m++)
        {
            TestContext.Current.TestOutputHelper?.WriteLine(FormattableString.Invariant(
                $"{m + 1}: mean {usual.MeanWhPerM2(m):0} against {bench.MeanWhPerM2(m):0} Wh/m² ({(usual.MeanWhPerM2(m) / bench.MeanWhPerM2(m)) - 1:0.00 %}), least {usual.LeastWhPerM2(m):0} against {bench.LeastWhPerM2(m):0}"));
            Assert.Equal(bench.MeanWhPerM2(m), usual.MeanWhPerM2(m), 2e-3 * bench.MeanWhPerM2(m));
        }
    }

    // An opaque far slope under a white panel gives back more than under a black one, most near the far wall.
    [Fact]
    public void A_white_panel_throws_light_back()
    {
        SectionCovers white = Usual(South);
        SectionCovers black = white with { FarSlope = new SectionCover.Opaque(0) };
        SectionLight.Bench one = Lit(South, House, white, 0.1);
        SectionLight.Bench other = Lit(South, House, black, 0.1);
        double atFar = one.LightWhPerM2(28, 11) - other.LightWhPerM2(28, 11);
        double atNear = one.LightWhPerM2(1, 11) - other.LightWhPerM2(1, 11);
        Assert.True(atNear > 0 && atFar > 2 * atNear, $"{atNear} near, {atFar} far");
    }

    // Under a cover that passes everything the hours are those of the weather itself.
    [Fact]
    public void Shade_hours_without_a_house_are_those_outdoors()
    {
        SectionCovers open = All(South, Window, 0);
        SectionLight light = new(South, 30, 0.8, 0);
        SectionLight.Bench bench = light.Room();
        light.Run(House, 0.76, open, bench);
        double outside = Samples.Lit.Count(s => s.Month == 5 && s.GlobalWm2 > 400) / 4.0;
        double inside = SectionHours.Above(light, House, 0.76, open, bench, 5, 0.8, 400);
        Assert.InRange(inside, outside - 12, outside + 12);
        Assert.True(SectionHours.Above(light, House, 0.76, open, bench, 5, 0.8, 600) < inside);
    }

    // An all but flat house, an eave as high as the ridge, walls all pony: no trouble.
    [Fact]
    public void Degenerate_sections_stay_finite()
    {
        foreach (GableSection s in new GableSection[] { new(8, 2, 2, 4, 2), new(8, 2, 4, 7.999, 4), new(8, 0, 0, 0.001, 3), new(8, 0, 0, 4, 0) })
        {
            SectionLight.Bench bench = Lit(South, s, Usual(South), 0.1, 5);
            for (int m = 0; m < 12; m++)
            {
                Assert.True(double.IsFinite(bench.MeanWhPerM2(m)) && bench.LeastWhPerM2(m) >= 0);
                Assert.True(bench.MeanWhPerM2(m) <= 1.02 * Samples.GlobalWhPerM2[m]);
            }
        }
    }

    internal static WeatherYear DemoYear() => ((WeatherReading.Read)WeatherFile.Read(WeatherText.Demo())).Year;

    private static SectionCovers Usual(SectionYear year)
    {
        SectionCover clear = new SectionCover.Clear(year.Through(Sheet, 0.06));
        SectionCover panel = new SectionCover.Opaque(0.7);
        return new SectionCovers(panel, clear, clear, panel, panel, panel);
    }

    private static SectionCovers All(SectionYear year, CoverOptics cover, double frame)
    {
        SectionCover c = new SectionCover.Clear(year.Through(cover, frame));
        return new SectionCovers(c, c, c, c, c, c);
    }

    private static SectionLight.Bench Lit(SectionYear year, GableSection section, SectionCovers covers, double floorReflectance, double ponyM = 0.76)
    {
        SectionLight light = new(year, 30, 0.8, floorReflectance);
        SectionLight.Bench bench = light.Room();
        light.Run(section, ponyM, covers, bench);
        return bench;
    }

    private static CoverOptics FromTable(Func<int, LightShares> at) =>
        CoverOptics.FromTable([.. Enumerable.Range(0, CoverOptics.Entries).Select(at)], 0);

    private static double[] Traced(double nearAzimuthDeg, double y, double z)
    {
        double[] wh = new double[12];
        double e = Math.Sin(nearAzimuthDeg * Math.PI / 180);
        double n = Math.Cos(nearAzimuthDeg * Math.PI / 180);
        foreach (SunSample s in Samples.Lit)
        {
            double near = (s.EastCosine * e) + (s.NorthCosine * n);
            wh[s.Month] += 0.25 * s.FromSunWm2 * s.UpCosine * Passes(near, s.UpCosine, y, z);
        }

        // Even sky: rings of equal horizontal irradiance.
        const int rings = 100;
        const int around = 600;
        double dome = 0;
        for (int i = 0; i < rings; i++)
        {
            double up = Math.Sqrt((i + 0.5) / rings);
            for (int j = 0; j < around; j++)
            {
                double near = Math.Sqrt(1 - (up * up)) * Math.Cos(2 * Math.PI * (j + 0.5) / around);
                dome += Passes(near, up, y, z) / (rings * around);
            }
        }

        for (int m = 0; m < 12; m++)
        {
            wh[m] += dome * Samples.DomeWhPerM2[m];
        }

        return wh;
    }

    private static double Passes(double near, double up, double y, double z)
    {
        int part = SectionRayTrace.PartSeen(House, 0.76, y, z, Math.Atan2(up, near) * 180 / Math.PI);
        (double ny, double nz) = part switch
        {
            1 => (-1.0, 0.0),
            2 => (-(House.RidgeM - House.NearEaveM) / House.NearSlopeM, House.RidgeOffsetM / House.NearSlopeM),
            4 => (1.0, 0.0),
            _ => (0, 0),
        };
        double cosine = (ny * -near) + (nz * up);
        return cosine > 0 ? 0.94 * Bare.AtCosine(cosine).TransmittanceFraction : 0;
    }
}
