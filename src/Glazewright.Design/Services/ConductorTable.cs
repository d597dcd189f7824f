namespace Glazewright.Design.Services;

/// <summary>A conductor size and what the code's tables say of it.</summary>
/// <param name="Name">American wire gauge, or thousands of circular mils.</param>
/// <param name="CircularMil">Area in circular mils.</param>
/// <param name="OhmPerKiloFoot">Direct-current resistance at 75 °C, Ω per 1,000 ft, uncoated.</param>
/// <param name="At60A">Ampacity of 60 °C terminals, A; 0 where not given.</param>
/// <param name="At75A">Ampacity of 75 °C terminals, A.</param>
/// <param name="At90A">Ampacity of 90 °C insulation, from which corrections start, A.</param>
internal sealed record ConductorSize(string Name, double CircularMil, double OhmPerKiloFoot, double At60A, double At75A, double At90A)
{
    private const double SquareMmPerCircularMil = 5.067074791e-4;

    /// <summary>Area, mm².</summary>
    public double AreaMm2 => CircularMil * SquareMmPerCircularMil;

    /// <summary>Resistance one way, Ω/m.</summary>
    public double OhmPerM => OhmPerKiloFoot / 304.8;
}

/// <summary>Conductors, breakers and grounds by the National Electrical Code.</summary>
/// <remarks>
/// Read at second hand, each in two or more reprints that agree where they overlap: table 310.16 (30 °C, three current-carrying conductors), its correction for
/// heat and for filled raceways, chapter 9 table 8 (75 °C, stranded, uncoated), table 250.122, ratings of 240.6(A).
/// One reprint of 310.16 misaligns its column of sizes; it was not used for the rows where it does.
/// </remarks>
internal static class ConductorTable
{
    /// <summary>Copper, smallest first. Branch circuits begin at 12 AWG: 14 is not used in farm buildings (common practice).</summary>
    public static readonly ConductorSize[] Copper =
    [
        new("14", 4110, 3.07, 15, 20, 25), new("12", 6530, 1.93, 20, 25, 30), new("10", 10_380, 1.21, 30, 35, 40), new("8", 16_510, 0.764, 40, 50, 55),
        new("6", 26_240, 0.491, 55, 65, 75), new("4", 41_740, 0.308, 70, 85, 95), new("3", 52_620, 0.245, 85, 100, 115), new("2", 66_360, 0.194, 95, 115, 130),
        new("1", 83_690, 0.154, 110, 130, 145), new("1/0", 105_600, 0.122, 125, 150, 170), new("2/0", 133_100, 0.0967, 145, 175, 195),
        new("3/0", 167_800, 0.0766, 165, 200, 225), new("4/0", 211_600, 0.0608, 195, 230, 260), new("250", 250_000, 0.0515, 215, 255, 290),
        new("300", 300_000, 0.0429, 240, 285, 320), new("350", 350_000, 0.0367, 260, 310, 350), new("400", 400_000, 0.0321, 280, 335, 380), new("500", 500_000, 0.0258, 320, 380, 430),
    ];

    /// <summary>Aluminium for the run from the pole, smallest first.</summary>
    public static readonly ConductorSize[] Aluminium =
    [
        new("6", 26_240, 0.808, 40, 50, 55), new("4", 41_740, 0.508, 55, 65, 75), new("2", 66_360, 0.319, 75, 90, 100), new("1", 83_690, 0.253, 85, 100, 115),
        new("1/0", 105_600, 0.201, 100, 120, 135), new("2/0", 133_100, 0.159, 115, 135, 150), new("3/0", 167_800, 0.126, 130, 155, 175), new("4/0", 211_600, 0.1, 150, 180, 205),
        new("250", 250_000, 0.0847, 170, 205, 230), new("300", 300_000, 0.0707, 195, 230, 260), new("350", 350_000, 0.0605, 210, 250, 280), new("400", 400_000, 0.0529, 225, 270, 305),
        new("500", 500_000, 0.0424, 260, 310, 350),
    ];

    /// <summary>Standard breaker ratings, NEC 240.6(A), A.</summary>
    public static readonly double[] BreakersA =
    [
        15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500, 600, 700, 800, 1000, 1200,
    ];

    // NEC table 250.122, copper.
    private static readonly (double UpToA, string Name)[] Grounds =
    [
        (15, "14"), (20, "12"), (60, "10"), (100, "8"), (200, "6"), (300, "4"), (400, "3"), (500, "2"), (600, "1"), (800, "1/0"), (1000, "2/0"), (1200, "3/0"),
    ];

    /// <summary>Smallest standard rating that is not below a current; the largest when none is.</summary>
    public static double NextBreakerA(double currentA) => BreakersA.FirstOrDefault(b => b >= currentA - 1e-9, BreakersA[^1]);

    /// <summary>Most a breaker may be set for a small copper conductor that is not a motor's, NEC 240.4(D), A.</summary>
    public static double SmallConductorLimitA(ConductorSize size) => size.Name switch { "14" => 15, "12" => 20, "10" => 30, _ => double.PositiveInfinity };

    /// <summary>Copper equipment ground of a breaker, grown with conductors that are larger than their load asks (250.122(B)), never above them (250.122(A)).</summary>
    /// <param name="breakerA">Breaker, A.</param>
    /// <param name="asked">Conductor by ampacity alone.</param>
    /// <param name="used">Conductor chosen.</param>
    public static ConductorSize Ground(double breakerA, ConductorSize asked, ConductorSize used)
    {
        string name = Grounds.FirstOrDefault(g => breakerA <= g.UpToA, Grounds[^1]).Name;
        ConductorSize least = Copper.First(c => c.Name == name);
        // Published ratios are rounded to three figures; without this 6 to 4 AWG would throw 10 AWG past 8 by 2 circular mils.
        double areaMil = least.CircularMil * used.CircularMil / asked.CircularMil * (1 - 5e-4);
        ConductorSize grown = Copper.FirstOrDefault(c => c.CircularMil >= areaMil, Copper[^1]);
        return grown.CircularMil > used.CircularMil ? Copper.First(c => c.CircularMil >= used.CircularMil) : grown;
    }
}
