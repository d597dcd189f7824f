using CsCheck;
using Glazewright.Science.Shape;
using Glazewright.Science.Sun;

namespace Glazewright.Science.Tests.Shape;

public class NoonReachTests
{
    private static readonly Gen<GableSection> Sections =
        from width in Gen.Double[4, 20]
        from near in Gen.Double[1.5, 5]
        from far in Gen.Double[1.5, 5]
        from place in Gen.Double[0.1, 0.9]
        from rise in Gen.Double[0.05, 6]
        select new GableSection(width, near, far, place * width, Math.Max(near, far) + rise);

    // Model: each height of the far wall looks back at the sun and meets a clear or an opaque part.
    [Fact]
    public void Lit_wall_is_what_ray_tracing_finds() =>
        Gen.Select(Sections, Gen.Double[5, 89], Gen.Double[0, 2], Gen.Bool, Gen.Bool).Sample((s, profileDeg, sillM, nearSlope, farSlope) =>
        {
            LitWall lit = NoonReach.OnFarWall(s, new ClearParts(sillM, nearSlope, farSlope), profileDeg);
            double low = double.PositiveInfinity;
            double high = double.NegativeInfinity;
            const int steps = 400;
            for (int i = 0; i < steps; i++)
            {
                double z = (i + 0.5) * s.FarEaveM / steps;
                int part = SectionRayTrace.PartSeen(s, Math.Min(sillM, s.NearEaveM), s.WidthM - 1e-7, z, profileDeg);
                if ((part == 1) || (part == 2 && nearSlope) || (part == 3 && farSlope))
                {
                    low = Math.Min(low, z);
                    high = Math.Max(high, z);
                }
            }

            double step = s.FarEaveM / steps;
            return high < low ? lit.HighM - lit.LowM <= 2 * step : Math.Abs(lit.LowM - low) <= step && Math.Abs(lit.HighM - high) <= step;
        });

    [Fact]
    public void Dark_strip_is_what_ray_tracing_finds() =>
        Gen.Select(Sections, Gen.Double[20, 160], Gen.Double[0, 1.2]).Sample((s, profileDeg, heightM) =>
        {
            // A sun low behind the near slope's own back lights nothing through it.
            double strip = NoonReach.DarkStripM(s, profileDeg, heightM);
            const int steps = 500;
            int dark = 0;
            for (int i = 0; i < steps; i++)
            {
                int part = SectionRayTrace.PartSeen(s, 0, (i + 0.5) * s.WidthM / steps, heightM + 1e-9, profileDeg);
                dark += part is 3 or 4 or 5 ? 1 : 0;
            }

            return Math.Abs(strip - (dark * s.WidthM / steps)) <= 1.01 * s.WidthM / steps;
        });

    [Fact]
    public void Solved_the_other_way_round_it_comes_back() =>
        Gen.Select(Sections, Gen.Double[10, 78], Gen.Double[0, 1.4]).Sample((s, profileDeg, reachM) =>
        {
            double ridgeM = NoonReach.RidgeForReachM(s.WidthM, s.RidgeOffsetM, reachM, profileDeg);
            GableSection high = s with { RidgeM = ridgeM, NearEaveM = Math.Min(s.NearEaveM, ridgeM), FarEaveM = Math.Min(s.FarEaveM, ridgeM) };
            double offsetM = NoonReach.OffsetForReachM(s.WidthM, s.RidgeM, reachM, profileDeg);
            double backDeg = NoonReach.ProfileForReachDeg(s, reachM);
            return Math.Abs(NoonReach.UnderRidgeM(high, profileDeg) - reachM) < 1e-9
                && (offsetM < 0 || Math.Abs(NoonReach.UnderRidgeM(s with { RidgeOffsetM = offsetM }, profileDeg) - reachM) < 1e-9)
                && Math.Abs(NoonReach.UnderRidgeM(s, backDeg) - reachM) < 1e-9;
        });

    // Inside the tropics the June noon sun stands on the pole's side: nothing through the near side, whatever the ridge.
    [Theory]
    [InlineData(10, 23.44, false)]
    [InlineData(23.44, 23.44, false)]
    [InlineData(24, 23.44, true)]
    [InlineData(-10, -23.44, false)]
    [InlineData(-35, -23.44, true)]
    [InlineData(70, -23.44, false)]
    public void Side_of_the_noon_sun(double latitudeDeg, double declinationDeg, bool isNear)
    {
        double profileDeg = NoonSunAngle.ProfileDeg(latitudeDeg, declinationDeg, NoonSunAngle.EquatorAzimuthDeg(latitudeDeg));
        Assert.Equal(isNear, profileDeg is > 0 and < 90 - 1e-9);
        GableSection tall = new(9, 6, 6, 8.9, 40);
        Assert.Equal(isNear, NoonReach.OnFarWall(tall, new ClearParts(0, true, false), profileDeg).IsLit);
    }

    // Mirrored over the equator, with the other solstice, the section sees the same sun.
    [Fact]
    public void Southern_house_mirrors_the_northern() =>
        Gen.Select(Gen.Double[0.1, 66], Gen.Double[-23.4, 23.4], Gen.Double[-80, 80]).Sample((latitudeDeg, declinationDeg, turnedDeg) =>
        {
            double north = NoonSunAngle.ProfileDeg(latitudeDeg, declinationDeg, 180 + turnedDeg);
            double south = NoonSunAngle.ProfileDeg(-latitudeDeg, -declinationDeg, turnedDeg);
            return Math.Abs(north - south) < 1e-9;
        });

    [Fact]
    public void Latitude_comes_back() =>
        Gen.Select(Gen.Double[24, 66], Gen.Double[-80, 80], Gen.Bool).Sample((latitudeDeg, turnedDeg, isNorthern) =>
        {
            double signed = isNorthern ? latitudeDeg : -latitudeDeg;
            double declinationDeg = NoonSunAngle.LongestDayDeclinationDeg(signed);
            double profileDeg = NoonSunAngle.ProfileDeg(signed, declinationDeg, NoonSunAngle.EquatorAzimuthDeg(signed) + turnedDeg);
            return NoonSunAngle.TryLatitude(profileDeg, declinationDeg, isNorthern, turnedDeg, out double back) && Math.Abs(back - signed) < 1e-6;
        });

    // The full solar algorithm on 21 June agrees: 0.01° for the date's declination, refraction below 0.02° at these heights.
    [Theory]
    [InlineData(28)]
    [InlineData(42)]
    [InlineData(54)]
    public void Noon_altitude_against_the_full_algorithm(double latitudeDeg)
    {
        double highest = Enumerable.Range(0, 121).Max(minute =>
            SolarPosition.At(JulianDay.Of(2011, 6, 21, 11 + (minute / 60.0), 0), latitudeDeg, 0, 0, 101_325, 15, SolarPosition.DeltaTSeconds).ElevationDeg);
        Assert.Equal(highest, NoonSunAngle.AltitudeDeg(latitudeDeg, NoonSunAngle.SolsticeDeclinationDeg), 0.03);
    }

    [Fact]
    public void What_is_no_house_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => NoonReach.UnderRidgeM(new GableSection(9, 3, 3, 9, 4), 60));
        Assert.Throws<ArgumentOutOfRangeException>(() => NoonReach.UnderRidgeM(new GableSection(9, 3, 5, 4, 4), 60));
        Assert.Throws<ArgumentOutOfRangeException>(() => NoonReach.UnderRidgeM(new GableSection(9, 3, 3, 4, double.NaN), 60));
        Assert.Throws<ArgumentOutOfRangeException>(() => NoonReach.RidgeForReachM(9, 4, 1, 90));
        Assert.Throws<ArgumentOutOfRangeException>(() => NoonSunAngle.AltitudeDeg(91, 0));
    }
}
