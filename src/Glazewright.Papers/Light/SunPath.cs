using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Papers.Drawing;
using Glazewright.Science.Sun;

namespace Glazewright.Papers.Light;

/// <summary>The sun's ways through the year as seen lying on the ground: horizon outside, zenith in the middle, equal steps of elevation.</summary>
public static class SunPath
{
    private const double TiltDeg = 23.44;

    private static readonly (string Name, double DeclinationDeg)[] Days =
        [("21 Jun", TiltDeg), ("21 May, 23 Jul", 20.2), ("21 Apr, 22 Aug", 11.8), ("equinox", 0), ("20 Feb, 23 Oct", -11.2), ("20 Jan, 22 Nov", -20.2), ("21 Dec", -TiltDeg)];

    /// <summary>The chart.</summary>
    /// <param name="latitudeDeg">North positive.</param>
    /// <param name="rangeBearingDeg">Bearing of the ridges: drawn as a line.</param>
    /// <param name="horizon">The skyline; none for a flat one.</param>
    /// <param name="sizeMm">Width and height, mm.</param>
    public static Sheet Draw(double latitudeDeg, double rangeBearingDeg, EqList<HorizonPoint> horizon, double sizeMm)
    {
        Spot centre = new(sizeMm / 2, sizeMm / 2);
        double radius = (sizeMm / 2) - 7;
        List<Entity> all = [];
        foreach (int elevation in (int[])[0, 15, 30, 45, 60, 75])
        {
            double r = radius * (90 - elevation) / 90;
            all.Add(new Entity.Arc(centre, r) { Role = Role.Grid, Pen = elevation == 0 ? new Pen(0.35, [], Paint.Of(Tone.Edge)) : Pens.Of(Role.Grid) });
            if (elevation > 0)
            {
                all.Add(new Entity.Label(At(45, elevation), elevation.ToString(CultureInfo.InvariantCulture) + "°")
                {
                    Role = Role.Text,
                    Along = Along.Middle,
                    Across = Across.Middle,
                    Paint = Paint.Of(Tone.Ink3),
                    Masked = true,
                });
            }
        }

        foreach ((string name, double bearing) in new[] { ("N", 0.0), ("E", 90), ("S", 180), ("W", 270) })
        {
            all.Add(new Entity.Polyline([centre, At(bearing, 0)]) { Role = Role.Grid });
            all.Add(new Entity.Label(At(bearing, -6), name) { Role = Role.Text, Along = Along.Middle, Across = Across.Middle, Face = Fonts.Face.SemiBold });
        }

        all.Add(new Entity.Polyline([At(rangeBearingDeg, 0), At(rangeBearingDeg + 180, 0)]) { Role = Role.Centre });
        if (horizon.Count > 1)
        {
            Spot[] skyline = [.. Enumerable.Range(0, 73).Select(i => At(5 * i, Math.Max(0, Skyline(horizon, 5 * i))))];
            Spot[] ring = [.. Enumerable.Range(0, 73).Select(i => At(5 * i, 0))];
            all.Add(new Entity.Fill([ring, skyline], Paint.Of(Tone.Edge), 0.5) { Role = Role.Fill });
        }

        List<string> said = [];
        foreach ((string name, double declinationDeg) in Days)
        {
            bool solstice = Math.Abs(declinationDeg) > 21;
            Path(Enumerable.Range(-180, 361).Select(h => HourAngleSun.At(latitudeDeg, declinationDeg, h)), solstice || declinationDeg == 0 ? 0.5 : 0.2);
            SunAngles noon = HourAngleSun.At(latitudeDeg, declinationDeg, 0);
            if (solstice || declinationDeg == 0)
            {
                said.Add(string.Create(CultureInfo.InvariantCulture, $"{name}: {(noon.ElevationDeg > 0 ? $"noon sun {noon.ElevationDeg:0.0}° high" : "sun below the horizon at noon")}"));
                if (noon.ElevationDeg is > 4 and < 86)
                {
                    // The noon of the high sun is named towards the zenith, that of the low sun towards the horizon.
                    double shift = declinationDeg * (latitudeDeg >= 0 ? 1 : -1) >= 0 ? 4.5 : -4.5;
                    all.Add(new Entity.Label(At(noon.AzimuthDeg, noon.ElevationDeg + shift), name)
                    {
                        Role = Role.Text,
                        Along = Along.Middle,
                        Across = Across.Middle,
                        Masked = true,
                    });
                }
            }
        }

        for (int hour = 4; hour <= 20; hour++)
        {
            Path(Enumerable.Range(0, 48).Select(i => HourAngleSun.At(latitudeDeg, -TiltDeg + (i * 2 * TiltDeg / 47), 15 * (hour - 12))), 0.13);
            SunAngles june = HourAngleSun.At(latitudeDeg, latitudeDeg >= 0 ? TiltDeg : -TiltDeg, 15 * (hour - 12));
            if (june.ElevationDeg > 4 && hour is not (11 or 12 or 13) && !NearStep(At(june.AzimuthDeg, june.ElevationDeg + 4)))
            {
                all.Add(new Entity.Label(At(june.AzimuthDeg, june.ElevationDeg + 4), hour.ToString(CultureInfo.InvariantCulture))
                {
                    Role = Role.Text,
                    Along = Along.Middle,
                    Across = Across.Middle,
                    Paint = Paint.Of(Tone.Ink2),
                    Masked = true,
                });
            }
        }

        string title = "Sun paths";
        return new Sheet(
            "sun-paths", title,
            string.Create(CultureInfo.InvariantCulture, $"Sun paths at latitude {Math.Abs(latitudeDeg):0.0}° {(latitudeDeg >= 0 ? "north" : "south")}, horizon outside, zenith in the middle, solar hours. {string.Join("; ", said)}."),
            sizeMm, sizeMm, [], all);

        // The steps of elevation are lettered to the north-east; an hour does not go over them.
        bool NearStep(Spot hour) => new[] { 15, 30, 45, 60, 75 }.Any(e => (hour - At(45, e)).Length() < 6);

        Spot At(double bearingDeg, double elevationDeg)
        {
            double r = radius * (90 - elevationDeg) / 90;
            double a = bearingDeg * Math.PI / 180;
            return new Spot(centre.X + (r * Math.Sin(a)), centre.Y - (r * Math.Cos(a)));
        }

        void Path(IEnumerable<SunAngles> way, double widthMm)
        {
            List<Spot> run = [];
            foreach (SunAngles sun in way)
            {
                if (sun.ElevationDeg >= 0)
                {
                    run.Add(At(sun.AzimuthDeg, sun.ElevationDeg));
                }
                else
                {
                    Flush();
                }
            }

            Flush();

            void Flush()
            {
                if (run.Count > 1)
                {
                    all.Add(new Entity.Polyline([.. run]) { Role = Role.Light, Pen = new Pen(widthMm, [], Paint.Of(Tone.Sun)) });
                }

                run.Clear();
            }
        }
    }

    private static double Skyline(EqList<HorizonPoint> horizon, double bearingDeg)
    {
        HorizonPoint[] points = [.. horizon.OrderBy(h => h.AzimuthDeg)];
        int next = Array.FindIndex(points, p => p.AzimuthDeg > bearingDeg);
        HorizonPoint b = points[next < 0 ? 0 : next];
        HorizonPoint a = points[next <= 0 ? points.Length - 1 : next - 1];
        double span = (b.AzimuthDeg - a.AzimuthDeg + 360) % 360;
        double part = span > 0 ? ((bearingDeg - a.AzimuthDeg + 360) % 360) / span : 0;
        return a.ElevationDeg + (part * (b.ElevationDeg - a.ElevationDeg));
    }
}
