using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.LightMaps;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using Glazewright.Papers.Sets;
using Glazewright.Science.Sun;
using Glazewright.Science.Weather;

namespace Glazewright.Papers.Sheets;

/// <summary>The site: houses on their lot with the distances between them, their shadows on the shortest day, the sun's ways, wind and what the lot has.</summary>
public static class SitePlan
{
    private const double ColumnMm = 122;
    private const double WindMm = 30;

    // Below this the shadow is longer than any lot; the hour is told, not drawn.
    private const double LeastSunDeg = 4;

    private static readonly Pen[] HourPens =
        [new(0.25, [3, 1], Paint.Of(Tone.Sun)), new(0.35, [], Paint.Of(Tone.Sun)), new(0.25, [0.8, 0.8], Paint.Of(Tone.Sun))];

    /// <summary>The sheet.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="number">Sheet number.</param>
    public static Sheet Draw(PaperSource source, string number)
    {
        ArgumentNullException.ThrowIfNull(source);
        Site site = source.Job.Site;
        SheetDraft draft = new(source, "site", "Site plan, sun and shade", number);
        Box room = draft.Room;
        Box plan = new(room.Left, room.Top, room.Width - ColumnMm - 6, room.Height);
        SunOnSite.Day day = SunOnSite.Shortest(site.LatitudeDeg);
        (int Hour, SunAngles Sun)[] hours = [.. ((int[])[9, 12, 15]).Select(h => (h, HourAngleSun.At(site.LatitudeDeg, day.DeclinationDeg, 15 * (h - 12))))];
        IReadOnlyList<Spot> corners = Corners(source, hours[1].Sun);
        Box shown = Bounds(corners);
        draft.Add(
            "site", "Site plan", plan, shown, new Pad(12, 12, 12, 12),
            (scale, _) => Plan(source, hours, scale, draft.Style));
        draft.North(new(plan.Right - 10, plan.Top + 14));
        double x = plan.Right + 6;
        double y = Rose(draft, source, new Box(x, room.Top, ColumnMm, 84));
        y = draft.Table("Sun at the site, standard time, flat horizon", SunRows(site), new(x, y)) + 4;
        y = Shades(draft, day, hours, new(x, y)) + 3;
        draft.Heading("Wind, ground and supplies", new(x, y), ColumnMm);
        WindRose? wind = source.WarmWind;
        draft.Notes(Facts(source, wind), new(x, y + 4), wind is null ? ColumnMm : ColumnMm - WindMm - 4);
        if (wind is not null)
        {
            Petals(draft, wind, site.RangeBearingDeg, new(x + ColumnMm - WindMm / 2, y + 5 + WindMm / 2));
        }

        string words = string.Join(" ", hours.Select(h => Shade(day, h.Hour, h.Sun) + "."));
        return draft.Done(
            $"{source.Form.Buildings.Count(b => b.IsHouse)} houses, ridges bearing {Degrees(site.RangeBearingDeg)} from true north. {words}",
            SheetStyle.Preliminary, "Lot lines and setbacks (dashed) as typed in the job, not surveyed. Shadows on level ground, at solar time. Call the utilities before digging.");
    }

    /// <summary>What must be in view: buildings and lot, and without a lot the noon shadows.</summary>
    private static IReadOnlyList<Spot> Corners(PaperSource source, SunAngles noon)
    {
        List<Spot> corners = [.. source.Form.Buildings.SelectMany(PlanSymbols.Footprint)];
        if (RangePlan.LotRing(source.Job.Lot) is { } lot)
        {
            corners.AddRange(lot);
        }
        else if (noon.ElevationDeg > 2 * LeastSunDeg)
        {
            corners.AddRange(source.Form.Buildings.SelectMany(b => SunOnSite.Shadow(b, noon, source.Job.Site.RangeBearingDeg)));
        }

        return corners.Count > 0 ? corners : [new(0, 0), new(10, 10)];
    }

    internal static Box Bounds(IReadOnlyList<Spot> points)
    {
        (double lowX, double lowY) = (points.Min(p => p.X), points.Min(p => p.Y));
        return new Box(lowX, lowY, points.Max(p => p.X) - lowX, points.Max(p => p.Y) - lowY);
    }

    private static List<Entity> Plan(PaperSource source, (int Hour, SunAngles Sun)[] hours, DrawingScale scale, LengthStyle style)
    {
        Job job = source.Job;
        double bearing = job.Site.RangeBearingDeg;
        List<Entity> all = [];
        for (int i = 0; i < hours.Length; i++)
        {
            if (hours[i].Sun.ElevationDeg < LeastSunDeg)
            {
                continue;
            }

            string id = FormattableString.Invariant($"shadow/{hours[i].Hour}");
            foreach (IReadOnlyList<Spot> ring in source.Form.Buildings.Select(b => SunOnSite.Shadow(b, hours[i].Sun, bearing)).Concat(job.Site.Neighbours.Select(n => SunOnSite.Shadow(n, hours[i].Sun, bearing))))
            {
                if (hours[i].Hour == 12)
                {
                    all.Add(new Entity.Fill([ring], Paint.Of(Tone.Sun), 0.14) { Role = Role.Fill, Source = id });
                }

                all.Add(new Entity.Polyline(ring, true) { Role = Role.Light, Pen = HourPens[i], Source = id });
            }
        }

        if (RangePlan.LotRing(job.Lot) is { } lot)
        {
            all.Add(new Entity.Polyline(lot, true) { Role = Role.Lot, Source = "lot" });
            double roomM = 5 / scale.MmPerM;
            Box[] distances = [.. Distances(source.Job.Lot, source.Form, scale, style).OfType<Entity.Dimensions>().Select(d => Bounds([d.From, d.From + d.StationsM[^1] * d.Direction])).Select(d => new Box(d.Left - roomM, d.Top - roomM, d.Width + 2 * roomM, d.Height + 2 * roomM))];
            all.AddRange(SetbackLines.Of(job.Lot, style, scale.MmPerM, taken: distances));
        }

        foreach (NeighbourBox n in job.Site.Neighbours)
        {
            all.Add(new Entity.Fill([SunOnSite.Foot(n)], Paint.Of(Tone.Wash)) { Role = Role.Fill, Source = "neighbour/" + n.Id });
            all.Add(new Entity.Hatch([SunOnSite.Foot(n)], HatchPattern.Slanted, 3) { Source = "neighbour/" + n.Id });
            all.Add(new Entity.Polyline(SunOnSite.Foot(n), true) { Role = Role.Beyond, Source = "neighbour/" + n.Id });
        }

        foreach (BuildingForm b in source.Form.Buildings.Reverse())
        {
            IReadOnlyList<Spot> ring = PlanSymbols.Footprint(b);
            all.Add(new Entity.Fill([ring], Paint.Of(b.IsHouse ? Tone.Sheet : Tone.Wash)) { Role = Role.Fill, Source = b.Id });
            if (b.IsHouse)
            {
                Spot ridge = SheetStyle.Flat(b.Origin + b.Roof.RidgeOffsetM * b.AlongY);
                all.Add(new Entity.Polyline([ridge, ridge + b.LengthM * new Spot(b.AlongX.XM, b.AlongX.YM)]) { Role = Role.Centre, Source = b.Id + "/ridge" });
            }

            all.Add(new Entity.Polyline(ring, true) { Role = Role.Cut, Source = b.Id });
        }

        foreach (BuildingForm b in source.Form.Buildings)
        {
            RangePlan.Name(all, b, style, scale);
        }

        all.AddRange(Distances(source.Job.Lot, source.Form, scale, style));
        return all;
    }

    /// <summary>Clear distances: from house to house across, and from the outermost walls to the lot lines.</summary>
    internal static IEnumerable<Entity> Distances(Lot land, FormResult form, DrawingScale scale, LengthStyle style)
    {
        List<(Spot From, Spot Way, double LengthM)> gaps = [];
        (BuildingForm Form, Box Box)[] houses = [.. form.Buildings.Where(b => b.IsHouse).Select(b => (b, Bounds(PlanSymbols.Footprint(b)))).OrderBy(b => b.Item2.Top)];
        for (int i = 0; i < houses.Length; i++)
        {
            foreach ((BuildingForm _, Box above) in houses.Skip(i + 1))
            {
                Box below = houses[i].Box;
                (double from, double to) = (Math.Max(below.Left, above.Left), Math.Min(below.Right, above.Right));
                if (to > from && above.Top > below.Bottom + 0.05)
                {
                    gaps.Add((new Spot(from + 0.6 * (to - from), below.Bottom), new Spot(0, 1), above.Top - below.Bottom));
                    break;
                }
            }
        }

        if (RangePlan.LotRing(land) is { } ring && form.Buildings.Count > 0)
        {
            Box lot = Bounds(ring);
            (BuildingForm Form, Box Box)[] all = [.. form.Buildings.Select(b => (b, Bounds(PlanSymbols.Footprint(b))))];
            Box low = all.MinBy(b => b.Box.Top).Box;
            Box high = all.MaxBy(b => b.Box.Bottom).Box;
            Box first = all.MinBy(b => b.Box.Left).Box;
            Box last = all.MaxBy(b => b.Box.Right).Box;
            gaps.Add((new(low.Left + 0.4 * low.Width, lot.Top), new(0, 1), low.Top - lot.Top));
            gaps.Add((new(high.Left + 0.4 * high.Width, high.Bottom), new(0, 1), lot.Bottom - high.Bottom));
            gaps.Add((new(lot.Left, first.Top + 0.5 * first.Height), new(1, 0), first.Left - lot.Left));
            gaps.Add((new(last.Right, last.Top + 0.5 * last.Height), new(1, 0), lot.Right - last.Right));
        }

        foreach ((Spot from, Spot way, double lengthM) in gaps)
        {
            string text = LengthText.Of(Math.Max(lengthM, 0), style);
            if (lengthM * scale.MmPerM > Lettering.WidthMm(text, Face.Regular, Lettered.SmallestMm) + 1.6)
            {
                yield return new Entity.Dimensions(from, way, [0, lengthM], 0.01, style) { Source = "site/distance" };
            }
        }
    }

    /// <summary>The sun's ways as a rose turned like the plan: rays to sunrise and sunset, ways over the sky with the zenith in the middle.</summary>
    private static double Rose(SheetDraft draft, PaperSource source, Box box)
    {
        Site site = source.Job.Site;
        draft.Heading("Sun paths, turned like the plan", new(box.Left, box.Top), box.Width);
        Spot centre = new(box.Left + box.Width / 2, box.Top + 44);
        const double r = 31;
        Spot Paper(double azimuthDeg, double byMm)
        {
            Spot way = SunOnSite.Towards(azimuthDeg, site.RangeBearingDeg);
            return centre + byMm * new Spot(way.X, -way.Y);
        }

        draft.Paper.Add(new Entity.Arc(centre, r) { Role = Role.Dimension });
        foreach (int up in (int[])[30, 60])
        {
            draft.Paper.Add(new Entity.Arc(centre, r * (90 - up) / 90) { Role = Role.Grid });
        }

        draft.Paper.Add(new Entity.Polyline([new(centre.X - r, centre.Y), new(centre.X + r, centre.Y)]) { Role = Role.Centre, Source = "ridges" });
        List<Box> taken = [];
        foreach (SunOnSite.Day day in SunOnSite.Days.Where(d => d.Month != 9))
        {
            string name = day.Month == 3 ? "equinox" : day.Name;
            Pen pen = new(day.Month == 3 ? 0.25 : 0.35, day.Month == 12 ? [2.5, 1] : [], Paint.Of(Tone.Sun));
            List<Spot> way = [];
            for (int h = -180; h <= 180; h += 3)
            {
                SunAngles sun = HourAngleSun.At(site.LatitudeDeg, day.DeclinationDeg, h);
                if (sun.ElevationDeg >= 0)
                {
                    way.Add(Paper(sun.AzimuthDeg, r * (90 - sun.ElevationDeg) / 90));
                }
                else if (way.Count > 1)
                {
                    draft.Paper.Add(new Entity.Polyline([.. way]) { Role = Role.Light, Pen = pen, Source = "sun/" + name });
                    way.Clear();
                }
            }

            if (way.Count > 1)
            {
                draft.Paper.Add(new Entity.Polyline([.. way]) { Role = Role.Light, Pen = pen, Source = "sun/" + name });
            }

            if (SunOnSite.RiseAzimuthDeg(site.LatitudeDeg, day.DeclinationDeg) is not double rise)
            {
                continue;
            }

            foreach (double azimuthDeg in (double[])[rise, 360 - rise])
            {
                draft.Paper.Add(new Entity.Polyline([Paper(azimuthDeg, r - 4), Paper(azimuthDeg, r + 2.5)]) { Role = Role.Light, Pen = pen, Source = "sun/" + name });
                Spot at = Paper(azimuthDeg, r + 5.5);
                string text = $"{name} {Degrees(azimuthDeg)}";
                double wide = Lettering.WidthMm(text, Face.Regular, Lettered.SmallestMm);
                Along along = at.X > centre.X + 8 ? Along.Start : at.X < centre.X - 8 ? Along.End : Along.Middle;
                Box label = new(at.X - (along == Along.Start ? 0 : along == Along.End ? wide : wide / 2), at.Y - 2, wide, 4);
                if (taken.TrueForAll(t => t.Left > label.Right || label.Left > t.Right || t.Top > label.Bottom || label.Top > t.Bottom))
                {
                    taken.Add(label);
                    draft.Paper.Add(new Entity.Label(at, text) { Role = Role.Text, Along = along, Across = Across.Middle });
                }
            }
        }

        return box.Bottom + 4;
    }

    private static Table SunRows(Site site)
    {
        EqList<SunOfDay> days = SunDays.Of(site);
        return new Table(
            [new("Day", 20), new("Sunrise", 32, Along.End), new("Noon sun", 22, Along.End), new("Sunset", 32, Along.End)],
            [
                .. SunOnSite.Days.Select(d =>
                {
                    SunOfDay of = days[d.Month - 1];
                    string noon = of.NoonElevationDeg > 0 ? string.Create(CultureInfo.InvariantCulture, $"{of.NoonElevationDeg:0.0}°") : "below";
                    double? rise = SunOnSite.RiseAzimuthDeg(site.LatitudeDeg, d.DeclinationDeg);
                    return of.Sun is SunDay.RisesAndSets s
                        ? (IReadOnlyList<string>)[d.Name, With(s.SunriseH, rise), noon, With(s.SunsetH, 360 - rise)]
                        : [d.Name, of.Sun is SunDay.StaysUp ? "stays up" : "stays down", noon, "–"];
                }),
            ]);

        static string With(double timeH, double? azimuthDeg) => Clock(timeH) + (azimuthDeg is double a ? $" at {Degrees(a)}" : "");
    }

    private static double Shades(SheetDraft draft, SunOnSite.Day day, (int Hour, SunAngles Sun)[] hours, Spot at)
    {
        draft.Heading($"Shadows drawn, {day.Name}, solar time", at, ColumnMm);
        double y = at.Y + 5.5;
        for (int i = 0; i < hours.Length; i++)
        {
            y += 4.6;
            draft.Paper.Add(new Entity.Polyline([new(at.X, y - 1.2), new(at.X + 14, y - 1.2)]) { Role = Role.Light, Pen = HourPens[i] });
            draft.Paper.Add(new Entity.Label(new(at.X + 17, y), Shade(null, hours[i].Hour, hours[i].Sun)) { Role = Role.Text });
        }

        return y + 2;
    }

    private static string Shade(SunOnSite.Day? day, int hour, SunAngles sun)
    {
        string when = (day is { } d ? d.Name + ", " : "") + FormattableString.Invariant($"{hour} h");
        return sun.ElevationDeg < LeastSunDeg
            ? $"{when}: sun {(sun.ElevationDeg < 0 ? "below the horizon" : "too low to draw")}"
            : string.Create(CultureInfo.InvariantCulture, $"{when}: sun {sun.ElevationDeg:0.0}° high at {sun.AzimuthDeg:0}°, shade {1 / Math.Tan(sun.ElevationDeg * Math.PI / 180):0.0} × height");
    }

    /// <summary>Where the warm hours' wind comes from, turned like the plan: a petal reaches towards it, by its share of the hours.</summary>
    private static void Petals(SheetDraft draft, WindRose wind, double rangeBearingDeg, Spot centre)
    {
        double most = Math.Max(wind.ShareFraction(wind.MostlyFrom), 0.01), r = WindMm / 2 - 3;
        draft.Paper.Add(new Entity.Arc(centre, r) { Role = Role.Grid });
        draft.Paper.Add(new Entity.Polyline([new(centre.X - r, centre.Y), new(centre.X + r, centre.Y)]) { Role = Role.Centre, Source = "ridges" });
        for (int sector = 0; sector < WindRose.Sectors; sector++)
        {
            double reach = r * wind.ShareFraction(sector) / most, half = 180.0 / WindRose.Sectors - 2;
            if (reach < 0.3)
            {
                continue;
            }

            double middle = sector * 360.0 / WindRose.Sectors;
            Spot[] ring = [centre, At(middle - half, reach), At(middle, reach), At(middle + half, reach)];
            draft.Paper.Add(new Entity.Fill([ring], Paint.Of(Tone.Series2), 0.35) { Role = Role.Fill, Source = "wind/" + WindRose.Name(sector) });
            draft.Paper.Add(new Entity.Polyline(ring, true) { Role = Role.Dimension, Source = "wind/" + WindRose.Name(sector) });
        }

        Spot At(double azimuthDeg, double byMm)
        {
            Spot way = SunOnSite.Towards(azimuthDeg, rangeBearingDeg);
            return centre + byMm * new Spot(way.X, -way.Y);
        }
    }

    private static IEnumerable<string> Facts(PaperSource source, WindRose? wind)
    {
        Job job = source.Job;
        Said said = new(job.Units);
        LengthStyle style = SheetStyle.Lengths(job);
        Utilities has = job.Utilities;
        yield return $"Ridges bear {Degrees(job.Site.RangeBearingDeg)} from true north, end 1 to end 2 (left to right here). {SetbackLines.Words(job.Lot, style)}".TrimEnd();
        yield return $"Wind: basic speed {said.Round(job.Site.Wind.SpeedMs, Unit.MetrePerSecond)} (3 s gust), exposure {job.Site.Wind.Exposure}. " + (wind is null
            ? "Where it mostly comes from is not known: the weather has no directions."
            : string.Create(CultureInfo.InvariantCulture, $"In the {WindRose.WarmHours:N0} warmest daylight hours of the weather year it comes mostly from {WindRose.Name(wind.MostlyFrom)} ({100 * wind.ShareFraction(wind.MostlyFrom):0} %, {said.Round(wind.MeanMs(wind.MostlyFrom), Unit.MetrePerSecond)} in the mean), onto end 1 in {100 * wind.OntoFraction(job.Site.RangeBearingDeg + 180):0} % and onto end 2 in {100 * wind.OntoFraction(job.Site.RangeBearingDeg):0} %, calm in {100 * wind.CalmFraction:0} %. The rose, turned like the plan, points to where it comes from."));
        yield return $"Ground: {(job.Site.Ground.Soil.Length > 0 ? job.Site.Ground.Soil : "soil not given")}, {(job.Site.Ground.FrostDepthM > 0 ? "frost to " + SheetStyle.Length(job.Site.Ground.FrostDepthM, style) : "no frost")}"
            + (job.Lot.FallFraction > 0 ? string.Create(CultureInfo.InvariantCulture, $", falling {100 * job.Lot.FallFraction:0.#} %") : "")
            + (job.Lot.AccessWidthM > 0 ? $"; access {SheetStyle.Length(job.Lot.AccessWidthM, style)} wide" : "") + ".";
        string panel = source.Services.Panels.Count > 0 ? $" Main panel: {source.Services.Panels[0].Place}." : "";
        yield return has.PoleDistanceM > 0 ? $"Power: the pole stands {said.Round(has.PoleDistanceM, Unit.Metre)} off; in which direction is not in the job.{panel}" : $"Power: distance of the pole is not in the job.{panel}";
        yield return (has.Fuel == FuelKind.None ? "No fuel." : $"Fuel: {Fuel(has.Fuel)}; place of tank or meter by its supplier.") + (has.DrainTo.Length > 0 ? $" Drains go to: {has.DrainTo}." : "");
        if (job.Site.Neighbours.Count > 0)
        {
            yield return $"{job.Site.Neighbours.Count.ToString(CultureInfo.InvariantCulture)} neighbour(s) that shade are hatched, heights as typed.";
        }
    }

    private static string Fuel(FuelKind kind) => kind switch { FuelKind.Propane => "propane", FuelKind.NaturalGas => "natural gas", _ => "oil" };

    internal static string Degrees(double angleDeg) => string.Create(CultureInfo.InvariantCulture, $"{angleDeg:0}°");

    private static string Clock(double timeH)
    {
        int minute = (int)Math.Floor(timeH * 60 + 0.5);
        minute = (minute % 1440 + 1440) % 1440;
        return string.Create(CultureInfo.InvariantCulture, $"{minute / 60}:{minute % 60:00}");
    }
}
