using Glazewright.Science.Climate;

namespace Glazewright.Design.Tests.Year;

/// <summary>
/// The laws of a house written once more, without the model's code: fluxes from the state at the end of a step, with fourth powers, roots and exponentials as they are printed. Sources as in docs/methods/climate-model.md
/// (films, long wave, leaks, vents, leaves: from memory); saturation is ASHRAE Fundamentals 2017 ch. 1 eqs (5), (6), without the model's table: condensation lives on differences so small that another formula, 0.1 % off, would move it by percents.
/// </summary>
internal sealed class HouseAgain(HouseParameters house)
{
    private const double Sigma = 5.670374e-8;
    private const double Cp = 1020;
    private const double Ratio = 0.621945;

    private readonly ShellPart[] parts = [house.UpperClear, house.LowerClear, house.UpperOpaque, house.LowerOpaque];

    /// <summary>Temperatures in the order of a saved state.</summary>
    internal readonly record struct Seen(double[] InnerC, double[] OuterC, double CurtainC, double CanopyC, double FloorC, double BelowC, double AboveC, double WaterBelow, double WaterAbove)
    {
        /// <summary>With both airs half way from where they were.</summary>
        public Seen WithMeanAirs(in Seen before) => this with
        {
            BelowC = 0.5 * (BelowC + before.BelowC),
            AboveC = 0.5 * (AboveC + before.AboveC),
            WaterBelow = 0.5 * (WaterBelow + before.WaterBelow),
            WaterAbove = 0.5 * (WaterAbove + before.WaterAbove),
        };

        public static Seen Of(HouseState state)
        {
            double[] t = new double[HouseState.SavedLength];
            state.Save(t);
            return new Seen(t[..4], t[4..8], t[8], t[9], t[10], t[11], t[12], state.HumidityRatioBelow, state.HumidityRatioAbove);
        }
    }

    /// <summary>Saturation pressure, Pa.</summary>
    public static double SaturationPa(double c)
    {
        double t = c + 273.15;
        return Math.Exp(c > 0
            ? (-5.8002206e3 / t) + 1.3914993 - (4.8640239e-2 * t) + (4.1764768e-5 * t * t) - (1.4452093e-8 * t * t * t) + (6.5459673 * Math.Log(t))
            : (-5.6745359e3 / t) + 6.3925247 - (9.6778430e-3 * t) + (6.2215701e-7 * t * t) + (2.0747825e-9 * t * t * t) - (9.4840240e-13 * Math.Pow(t, 4)) + (4.1635019 * Math.Log(t)));
    }

    public static double VapourPa(double ratio, double pressurePa) => ratio * pressurePa / (Ratio + ratio);

    private static double Density(double c, double pressurePa) => pressurePa / (287.042 * (c + 273.15));

    private static double Fourth(double c) => Math.Pow(c + 273.15, 4);

    /// <summary>Outer faces to wind, ground and sky, W.</summary>
    public double ShellW(in Seen s, in HouseForcing f)
    {
        double wind = house.WindLaw == OuterWindLaw.Tunnel ? 0.95 + (6.76 * Math.Pow(f.WindMPerS, 0.49)) : f.WindMPerS < 4 ? 2.8 + (1.2 * f.WindMPerS) : 2.5 * Math.Pow(f.WindMPerS, 0.8);
        double sum = 0;
        for (int p = 0; p < 4; p++)
        {
            double view = parts[p].SkyViewFraction, to = s.OuterC[p];
            double film = p < 2 ? wind : OpaqueFilm(parts[p], to - f.OutsideC, f.WindMPerS);
            sum += parts[p].AreaM2 * ((film * (to - f.OutsideC))
                + (Sigma * parts[p].OuterEmissivity * ((view * (Fourth(to) - Fourth(f.SkyC))) + ((1 - view) * (Fourth(to) - Fourth(f.OutsideC))))));
        }

        return sum;
    }

    // Opaque faces: h_n + R (√(h_n² + h_w²) − h_n), of the house's parts none is flat.
    private static double OpaqueFilm(ShellPart part, double warmer, double wind)
    {
        Assert.True(part.SlopeCosine < 0.98);
        double still = Math.Cbrt(Math.Abs(warmer)) * (warmer > 0 ? 9.482 / (7.283 - part.SlopeCosine) : 1.81 / (1.382 + part.SlopeCosine));
        double forced = ((3.26 * Math.Pow(wind, 0.89)) + (3.55 * Math.Pow(wind, 0.617))) / 2;
        return still + (part.OuterRoughnessFactor * (Math.Sqrt((still * still) + (forced * forced)) - still));
    }

    // Air moved by fans, W/(m² K) at least.
    private double ForcedFilm(in Seen s, in HouseForcing f)
    {
        double changes = 3600 * f.FanBelowM3PerS / (house.AirBelowM3 + house.AirAboveM3);
        return Math.Max(0.5, Math.Max(4 * f.CirculationFraction, Math.Min(0.06 * changes, 6)));
    }

    private double InnerFilm(int p, in Seen s, in HouseForcing f)
    {
        double warmer = (p % 2 == 0 ? s.AboveC : s.BelowC) - s.InnerC[p], slope = parts[p].SlopeCosine;
        double film = slope < 0.2 ? 1.31 * Math.Cbrt(Math.Abs(warmer)) : warmer > 0 ? 1.7 * Math.Cbrt(warmer) / Math.Pow(slope, 2.0 / 3) : 0.6 * Math.Pow(-warmer, 0.25);
        return Math.Max(film, ForcedFilm(in s, in f));
    }

    /// <summary>Air to the inner faces of the shell, W.</summary>
    public double InnerAirW(Seen s, HouseForcing f) =>
        Enumerable.Range(0, 4).Sum(p => InnerFilm(p, in s, in f) * parts[p].AreaM2 * ((p % 2 == 0 ? s.AboveC : s.BelowC) - s.InnerC[p]));

    private double FloorFilm(in Seen s, in HouseForcing f)
    {
        double warmer = s.FloorC - s.BelowC;
        return Math.Max(warmer > 0 ? 1.7 * Math.Cbrt(warmer) : 1.3 * Math.Pow(-warmer, 0.25), ForcedFilm(in s, in f));
    }

    /// <summary>Floor to air, W.</summary>
    public double FloorAirW(Seen s, HouseForcing f) => FloorFilm(in s, in f) * house.FloorAreaM2 * (s.FloorC - s.BelowC);

    /// <summary>Long wave from floor and leaves to the inner faces, W: grey parallel planes, leaves black, through the open share of the curtain and what its cloth lets through.</summary>
    public double InnerLongWaveW(in Seen s, in HouseForcing f)
    {
        double cover = f.LeafAreaIndex > 0 ? 1 - Math.Exp(-0.94 * f.LeafAreaIndex) : 0, closed = f.CurtainClosedFraction;
        double lets = 1 - closed + (closed * house.Curtain.LongWaveTransmittance), sum = 0;
        for (int p = 0; p < 4; p++)
        {
            bool upper = p % 2 == 0;
            double space = upper ? house.UpperClear.AreaM2 + house.UpperOpaque.AreaM2 : house.LowerClear.AreaM2 + house.LowerOpaque.AreaM2;
            double view = house.FloorAreaM2 * (parts[p].AreaM2 / space) * (upper ? house.FloorToCurtainViewFraction * lets : 1 - house.FloorToCurtainViewFraction);
            double e = parts[p].InnerEmissivity, pair = e > 0 ? 1 / ((1 / house.FloorEmissivity) + (1 / e) - 1) : 0;
            sum += Sigma * view * (((1 - cover) * pair * (Fourth(s.FloorC) - Fourth(s.InnerC[p]))) + (cover * e * (Fourth(s.CanopyC) - Fourth(s.InnerC[p]))));
        }

        return sum;
    }

    private double MeanC(in Seen s) => ((s.BelowC * house.AirBelowM3) + (s.AboveC * house.AirAboveM3)) / (house.AirBelowM3 + house.AirAboveM3);

    /// <summary>Leaks, m³/s of outdoor air: √(stack² + wind²), pressed one way by fans.</summary>
    public double LeakM3PerS(in Seen s, in HouseForcing f)
    {
        double free = house.LeakageBaseM3PerS + Math.Sqrt((Math.Pow(house.LeakageStackM3PerSRootK, 2) * Math.Abs(MeanC(in s) - f.OutsideC)) + Math.Pow(house.LeakageWindM2 * f.WindMPerS, 2));
        double fans = Math.Abs((f.FanBelowM3PerS * Density(s.BelowC, f.PressurePa) / Density(f.OutsideC, f.PressurePa)) - f.PositivePressureM3PerS);
        return Math.Sqrt((fans * fans) + (free * free)) - fans;
    }

    /// <summary>Roof and side vents together, m³/s: Boulard and Baille 1995, Kittas et al. 1997.</summary>
    public double VentM3PerS(in Seen s, in HouseForcing f)
    {
        double mean = MeanC(in s), stack = 2 * 9.80665 * Math.Abs(mean - f.OutsideC) / (mean + 273.15), wind = house.VentWindFactor * f.WindMPerS * f.WindMPerS;
        double r = f.RoofVentM2, d = f.SideVentM2, closed = f.CurtainClosedFraction, gaps = (house.FloorAreaM2 * (1 - closed + (closed * house.Curtain.PorosityFraction))) + 1e-3;
        double own = 1, through = 0;
        if (r > 0 && d > 0)
        {
            double path = (1 / (r * r)) + (1 / (d * d)), share = path / (path + (1 / (gaps * gaps)));
            through = house.VentDischargeFactor * Math.Sqrt(share * ((stack * house.VentHeightDifferenceM / path) + (Math.Pow((r + d) / 2, 2) * wind)));
            own = 1 - share;
        }

        return through + (own * house.VentDischargeFactor / 2 * ((r * Math.Sqrt((stack * house.RoofVentHeightM / 4) + wind)) + (d * Math.Sqrt((stack * house.SideVentHeightM / 4) + wind))));
    }

    private static bool Moving(in HouseForcing f, double airM3) => f.CirculationFraction > 0 || 3600 * f.FanBelowM3PerS / airM3 > 10;

    /// <summary>What dry leaves give, kg/s: Stanghellini 1987.</summary>
    public double TranspirationKgPerS(in Seen s, in HouseForcing f)
    {
        double area = house.FloorAreaM2, deficit = SaturationPa(s.CanopyC) - VapourPa(s.WaterBelow, f.PressurePa);
        if (f.LeafAreaIndex <= 0 || deficit <= 0)
        {
            return 0;
        }

        double cover = 1 - Math.Exp(-0.94 * f.LeafAreaIndex), light = (f.SunCanopyW + (f.LampW * f.LampRadiantFraction * cover)) / (area * f.LeafAreaIndex);
        bool day = light > 1;
        double byCo2 = day ? Math.Min(1.5, 1 + (6.1e-7 * Math.Pow(f.Co2Ppm - 200, 2))) : 1, byDeficit = Math.Min(5.8, 1 + ((day ? 4.3e-6 : 5.2e-6) * deficit * deficit));
        double stomata = house.LeastStomatalResistanceSPerM * (light + 4.3) / (light + 0.54) * byCo2 * byDeficit;
        double boundary = Moving(in f, house.AirBelowM3 + house.AirAboveM3) ? 150 : 275;
        // 2 LAI ρ c_p / (λ γ (r_b + r_s)) with γ = c_p p / (0.622 λ).
        return area * 2 * f.LeafAreaIndex * Density(s.BelowC, f.PressurePa) * Ratio / f.PressurePa * deficit / (boundary + stomata);
    }

    /// <summary>Water that the four inner faces take from the air, kg/s; what they give back is limited by their films.</summary>
    public double CondensationKgPerS(Seen s, HouseForcing f, double[] filmKg, double stepS)
    {
        double sum = 0;
        for (int p = 0; p < 4; p++)
        {
            double film = InnerFilm(p, in s, in f) * parts[p].AreaM2, e = VapourPa(p % 2 == 0 ? s.WaterAbove : s.WaterBelow, f.PressurePa) - SaturationPa(s.InnerC[p]);
            double taken = film * Ratio / (Math.Pow(0.87, 2.0 / 3) * Cp * f.PressurePa) * e;
            sum += Math.Max(taken, -filmKg[p] / stepS);
        }

        return sum;
    }

    /// <summary>Fog that evaporates below, kg/s: what the spray gives, and no more than brings the air that is there and comes in to 95 %, each drop cooling it.</summary>
    /// <param name="s">The state a step begins with: fog fills the room it finds.</param>
    /// <param name="f">What acts.</param>
    /// <param name="stepS">Step, s.</param>
    public double FogKgPerS(in Seen s, in HouseForcing f, double stepS)
    {
        double deficit = Math.Max(0, SaturationPa(s.BelowC) - VapourPa(s.WaterBelow, f.PressurePa));
        double sprayed = f.FogKgPerS * f.FogEfficiency * Math.Min(1, (1.0 / 3) + (2.0 / 3 * Math.Max(0, deficit - 200) / 600));
        double low = 0, high = 0.02;
        for (int i = 0; i < 60; i++)
        {
            double room = (low + high) / 2, es = SaturationPa(s.BelowC - (2.4525e6 / Cp * room));
            (low, high) = s.WaterBelow + room < 0.95 * Ratio * es / (f.PressurePa - es) ? (room, high) : (low, room);
        }

        double lower = house.LowerClear.AreaM2 + house.LowerOpaque.AreaM2, upper = house.UpperClear.AreaM2 + house.UpperOpaque.AreaM2;
        double air = Density(20, 101_325) * house.AirBelowM3;
        double comes = Math.Max(0, (f.FanBelowM3PerS * Density(s.BelowC, f.PressurePa)) - (f.PositivePressureM3PerS * Density(f.OutsideC, f.PressurePa)))
            + (Density(f.OutsideC, f.PressurePa) * ((LeakM3PerS(in s, in f) * lower / (lower + upper)) + f.PositivePressureM3PerS + VentM3PerS(in s, in f)));
        // Air that comes and goes meanwhile: what fills the room by the step's end, as an exponential does.
        return Math.Min(sprayed, low * comes / (1 - Math.Exp(-comes * stepS / air)));
    }
}
