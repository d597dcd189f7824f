using System.Globalization;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Sheets;
using Glazewright.Science.Sun;

namespace Glazewright.Papers.Light;

/// <summary>The house's section with the sun's rays at three hours of the solstices and the equinox: where direct light falls, where the opaque parts keep it off.</summary>
internal static class SectionHours
{
    private const double TiltDeg = 23.44;
    private const double GapMm = 5;

    /// <summary>The picture: a row a day, a column an hour.</summary>
    /// <param name="house">The house.</param>
    /// <param name="latitudeDeg">North positive.</param>
    /// <param name="rangeBearingDeg">Bearing of the ridge.</param>
    /// <param name="widthMm">Width on paper, mm.</param>
    public static Sheet Draw(HouseResults house, double latitudeDeg, double rangeBearingDeg, double widthMm)
    {
        IReadOnlyList<SectionEdge> ring = Profile.Edges(house);
        (string Day, double DeclinationDeg)[] days = [("21 Dec", -TiltDeg), ("20 Mar", 0), ("21 Jun", TiltDeg)];
        int[] hours = [9, 12, 15];
        double cellMm = (widthMm - (2 * GapMm)) / 3;
        double leadM = 0.06 * house.Form.WidthM;
        double scale = cellMm / (house.Form.WidthM + (4 * leadM));
        double highMm = ((house.Form.Roof.RidgeM + (2 * leadM)) * scale) + 6;
        List<Entity> all = [];
        List<string> said = [];
        for (int d = 0; d < days.Length; d++)
        {
            for (int h = 0; h < hours.Length; h++)
            {
                double left = h * (cellMm + GapMm);
                double ground = ((d + 1) * highMm) + (d * 2) - 1;
                SunAngles sun = HourAngleSun.At(latitudeDeg, days[d].DeclinationDeg, 15 * (hours[h] - 12));
                (double profileDeg, bool fromLeft) = InSection(sun, rangeBearingDeg);
                string name = string.Create(CultureInfo.InvariantCulture, $"{days[d].Day}, {hours[h]} h");
                all.Add(new Entity.Label(
                    new(left, ground - highMm + 3.5), sun.ElevationDeg > 0.5 ? string.Create(CultureInfo.InvariantCulture, $"{name}: {profileDeg:0}° in section") : name + ": sun down")
                {
                    Role = Role.Text,
                });
                if (sun.ElevationDeg > 0.5)
                {
                    foreach ((Spot from, Spot to) in SectionRays.Trace(ring, profileDeg, fromLeft, house.Form.WidthM / 11, leadM))
                    {
                        all.Add(new Entity.Polyline([Place(from), Place(to)]) { Role = Role.Light });
                    }

                    said.Add(string.Create(CultureInfo.InvariantCulture, $"{name}: {sun.ElevationDeg:0}° high, {profileDeg:0}° in the section from the {(fromLeft ? "left" : "right")}"));
                }

                foreach (SectionEdge edge in ring)
                {
                    all.Add(new Entity.Polyline([Place(edge.A), Place(edge.B)])
                    {
                        Role = Role.Visible,
                        Pen = edge.Clear ? new Pen(0.25, [], Paint.Of(Tone.Accent)) : new Pen(0.7, [], Paint.Of(Tone.Ink)),
                    });
                }

                Spot Place(Spot p) => new(left + ((p.X + (2 * leadM)) * scale), ground - (p.Y * scale));
            }
        }

        return new Sheet(
            $"section-hours-{house.Form.Id}", $"House {house.Form.Id}: sun in the section",
            $"Cross-section with the sun's rays, solar time; thick lines are opaque. {string.Join("; ", said)}.", widthMm, (days.Length * highMm) + (days.Length * 2), [], all);
    }

    // Angle of the rays over the horizon in the plane of the section: tan = tan(elevation) / cos(azimuth between the sun and the plane).
    private static (double ProfileDeg, bool FromLeft) InSection(SunAngles sun, double rangeBearingDeg)
    {
        double cosine = Math.Cos((sun.AzimuthDeg - rangeBearingDeg - 90) * Math.PI / 180);
        double elevation = sun.ElevationDeg * Math.PI / 180;
        return (Math.Atan2(Math.Sin(elevation), Math.Cos(elevation) * Math.Abs(cosine)) * 180 / Math.PI, cosine > 0);
    }
}
