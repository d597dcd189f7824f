namespace Glazewright.Papers.Sheets;

/// <summary>The sun at solar noon, in the plane of a cross-section.</summary>
/// <param name="Name">Day, as lettered.</param>
/// <param name="AltitudeDeg">Altitude over the horizon, degrees.</param>
/// <param name="ProfileDeg">Angle of its rays in the plane of the section, degrees; 90 when it shines along the ridge from overhead.</param>
/// <param name="FromLeft">Whether it shines from the left of the section.</param>
public sealed record NoonSun(string Name, double AltitudeDeg, double ProfileDeg, bool FromLeft)
{
    /// <summary>Obliquity of the ecliptic, which is the declination at the solstices, degrees (Astronomical Almanac; from memory).</summary>
    private const double ObliquityDeg = 23.44;

    /// <summary>What a section says of the suns that are drawn in it.</summary>
    /// <param name="suns">The suns.</param>
    public static string Caption(IReadOnlyList<NoonSun> suns)
    {
        ArgumentNullException.ThrowIfNull(suns);
        return suns.Count switch
        {
            0 => "no noon sun is drawn: it shines along the ridge or stays below the horizon",
            1 => $"the noon sun of {suns[0].Name}; that of the other solstice shines along the ridge or stays below the horizon",
            _ => "the noon sun of the shortest and the longest day",
        };
    }

    /// <summary>The noon sun of the shortest and of the longest day.</summary>
    /// <param name="latitudeDeg">Latitude, north positive, −90 to 90.</param>
    /// <param name="rangeBearingDeg">Bearing of the ridges, degrees.</param>
    /// <returns>Low sun first; one that stays below the horizon, or shines within 20° of the ridge, is left out.</returns>
    /// <remarks>
    /// Noon altitude is 90° less the distance of latitude and declination; the profile angle is atan(tan altitude / cos difference),
    /// the difference being that of the sun's azimuth and the section plane's (plane trigonometry).
    /// </remarks>
    public static IReadOnlyList<NoonSun> Solstices(double latitudeDeg, double rangeBearingDeg)
    {
        List<NoonSun> suns = [];
        double[] declinations = latitudeDeg >= 0 ? [-ObliquityDeg, ObliquityDeg] : [ObliquityDeg, -ObliquityDeg];
        foreach (double declinationDeg in declinations)
        {
            double altitudeDeg = 90 - Math.Abs(latitudeDeg - declinationDeg);
            double sunAzimuthDeg = latitudeDeg >= declinationDeg ? 180 : 0;

            // The left wall looks along −y, which is the ridge's bearing and a quarter turn clockwise.
            double fromLeftCosine = Math.Cos((sunAzimuthDeg - rangeBearingDeg - 90) * Math.PI / 180);
            if (altitudeDeg <= 0.5 || Math.Abs(fromLeftCosine) < 0.342)
            {
                continue;
            }

            double profileDeg = Math.Atan2(Math.Sin(altitudeDeg * Math.PI / 180), Math.Cos(altitudeDeg * Math.PI / 180) * Math.Abs(fromLeftCosine)) * 180 / Math.PI;
            string day = declinationDeg < 0 ? "21 Dec" : "21 Jun";
            suns.Add(new NoonSun(day, altitudeDeg, profileDeg, fromLeftCosine > 0));
        }

        return suns;
    }
}
