using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Science.Light;
using Glazewright.Science.Sky;
using Glazewright.Science.Sun;

namespace Glazewright.Design.GainTables;

/// <summary>Figures of GainTables.</summary>
internal static class GainWorkings
{
    private const double SolsticeDeclinationDeg = 23.44;

    private static readonly Source Optics = new Source.Paper(
        "Duffie and Beckman, Solar Engineering of Thermal Processes", "eqs 5.1.1 to 5.3.4 (Fresnel, Bouguer, stacks of sheets)", Source.Mark.FromMemory);

    private static readonly Source Geometry = new Source.FirstPrinciples("projection of faces along the sun; diffuse exchange with view factors");

    public static StageReport Report(
        GainInput input, BuildingForm house, Enclosure enclosure, HouseLight light, GainTable table, GainTable? bare)
    {
        string id = input.House + "/gain";
        (double straightOn, double sky) = light.CaughtByBars();
        double clearM2 = house.Faces.Sum(f => f.Zones.Where(z => IsClear(z.Cover.Kind)).Sum(z => z.NetM2));
        Term floor = Term.Of("floor", "Floor area", house.FloorAreaM2, Unit.SquareMetre, Geometry);

        string behind = bare is null ? "frame and joints" : "frame, joints and equipment";
        List<Figure> figures =
        [
            Figure.Observe(
                $"{id}/clear-area", "Clear covering against outdoor air", Unit.SquareMetre, clearM2,
                "Sum of the clear zones less openings and shared pieces", [], "Planes through the dimension lines", Geometry),
            FrameFigure("frame-share", $"Of the clear covering's area, the share behind {behind}, seen straight on", straightOn),
            FrameFigure("frame-share-sky", $"Of an even sky's light on the clear covering, the share that {behind} take", sky),
            SkyFigure("sky-to-crop", "For the heat: even sky light that crop and floor take up, over outdoors", table.CurtainOpen),
        ];
        double aloneM2 = AloneM2(enclosure);
        if (aloneM2 > 0)
        {
            Term free = Term.Of("alone", "Even sky light on the clear faces of the same house in open country", AloneM2(enclosure), Unit.SquareMetre, Geometry);
            Term reached = Term.Of("reached", "Even sky light on its clear faces", table.CurtainOpen.Sky.ApertureM2, Unit.SquareMetre, Geometry);
            figures.Add(Figure.Derive(
                $"{id}/sky-past-neighbours", "Even sky light that comes past neighbours and skyline", Unit.Fraction, reached / free, Geometry));
        }

        if (table.CurtainDrawn != table.CurtainOpen)
        {
            figures.Add(SkyFigure("sky-to-crop-drawn", "For the heat: the same with the curtain drawn", table.CurtainDrawn));
        }

        if (table is { SecondDrawn: { } second, BothDrawn: { } both })
        {
            figures.Add(SkyFigure("sky-to-crop-second", "For the heat: the same with the second curtain drawn", second));
            figures.Add(SkyFigure("sky-to-crop-both", "For the heat: the same with both drawn", both));
        }

        if (bare is not null)
        {
            Term before = Term.Of("before", "Even sky light on crop and floor before the equipment was chosen, per unit on the ground", OnCropM2(bare), Unit.SquareMetre, Optics);
            Term after = Term.Of("after", "The same past everything that hangs and stands in the light", OnCropM2(table), Unit.SquareMetre, Optics);
            figures.Add(Figure.Derive($"{id}/sky-past-equipment", "Even sky light left by hung equipment, fans, louvers, wet wall and the parked curtain", Unit.Fraction, after / before, Geometry));
        }

        GainField field = new(table, drawn: false);
        foreach ((string name, string label, double declinationDeg) in new[]
        {
            ("noon-winter", "For the heat: noon beam at the winter solstice that crop and floor take up, over outdoors", -SolsticeDeclinationDeg),
            ("noon-equinox", "For the heat: noon beam at the equinox that crop and floor take up, over outdoors", 0.0),
            ("noon-summer", "For the heat: noon beam at the summer solstice that crop and floor take up, over outdoors", SolsticeDeclinationDeg),
        })
        {
            double declination = input.LatitudeDeg >= 0 ? declinationDeg : -declinationDeg;
            SunAngles noon = HourAngleSun.At(input.LatitudeDeg, declination, 0);
            if (noon.ElevationDeg < 1)
            {
                continue;
            }

            SunW taken = field.At(new SkySources(1, 0, 0, 0, 0), noon.AzimuthDeg, noon.ElevationDeg, input.RangeBearingDeg);
            Term crop = Term.Of("crop", "Crop plane's share of a unit beam", taken.CropPlaneW, Unit.SquareMetre, Optics);
            Term sine = Term.Of("sine", "Sine of the sun's noon elevation", Math.Sin(noon.ElevationDeg * Math.PI / 180), Unit.None, Geometry);
            figures.Add(Figure.Derive($"{id}/{name}", label, Unit.Fraction, crop / (floor * sine), Optics));
        }

        return new StageReport(
            figures.ToEqList(),
            [],
            [
                bare is null
                    ? "Every member and sheet joint is followed with its true size; equipment is not chosen yet and not in this table, which it is sized by: that errs to more sun. Gutters and bracing are not followed."
                    : "Every member, sheet joint and piece of equipment is followed with its true size, as in the light map; gutters and bracing are not. The equipment itself was sized by a table without it, which errs to more sun.",
                "What shades the house is dark itself: light thrown back by neighbours is not counted; a clear neighbour passes the square of its faces' mean transmittance.",
                "Inside reflections are taken as diffuse; crop and floor are one level plane without height.",
                "Sun absorbed on the outside of opaque panels is not counted as gain.",
                "One transmittance serves all sunlight; colour is not followed.",
            ]);

        Figure FrameFigure(string name, string label, double fraction) => Figure.Observe(
            $"{id}/{name}", label, Unit.Fraction, fraction,
            "Every member and sheet joint drawn along the light with its true size, what overlaps counted once; over each clear face, by area",
            [new WorkingInput("bars", bare is null ? "Members and joints" : "Members, joints and equipment", "", enclosure.Bars.Count, Unit.Count, Geometry)],
            "Gutters and bracing are not followed; light that bars catch is taken evenly from a face",
            Geometry);

        Figure SkyFigure(string name, string label, GainSet set)
        {
            Term aperture = Term.Of("aperture", "Even sky light on clear faces, per unit on the ground", set.Sky.ApertureM2, Unit.SquareMetre, Geometry);
            Term share = Term.Of("share", "Of it taken by crop and floor", set.Sky.CropPlaneShare, Unit.Fraction, Optics);
            return Figure.Derive($"{id}/{name}", label, Unit.Fraction, aperture * share / floor, Optics);
        }
    }

    private static double OnCropM2(GainTable table) => table.CurtainOpen.Sky.ApertureM2 * table.CurtainOpen.Sky.CropPlaneShare;

    // Light of an even sky on a tilted plane: (1 + cos tilt)/2.
    private static double AloneM2(Enclosure enclosure)
    {
        double sum = 0;
        foreach (EnclosureFace face in enclosure.Faces)
        {
            double half = (1 + face.Normal.Z) / 2;
            double clearM2 = face.Covering is Science.Light.FaceCovering.Clear
                ? face.AreaM2 - face.Patches.Sum(p => p.AreaM2)
                : 0;
            sum += half * (clearM2 + face.Patches.Where(p => p.Covering is Science.Light.FaceCovering.Clear).Sum(p => p.AreaM2));
        }

        return sum;
    }

    private static bool IsClear(string kind) =>
        Science.Optics.GenericCovers.TryFind(kind, out Science.Optics.GenericCover? cover) && cover.Make is not Science.Optics.CoverMake.Opaque;
}
