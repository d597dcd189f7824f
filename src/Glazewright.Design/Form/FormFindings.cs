using Glazewright.Design.Contracts;

namespace Glazewright.Design.Form;

/// <summary>What Form finds: lot lines crossed, buildings in each other, flat clear slopes, noon shadows between houses.</summary>
internal static class FormFindings
{
    private const double RadPerDeg = Math.PI / 180;

    public static IEnumerable<Finding> Lot(FormInput input, EqList<BuildingForm> buildings)
    {
        Brief.Lot lot = input.Lot;
        if (lot.SizeXM <= 0 || lot.SizeYM <= 0)
        {
            yield break;
        }

        foreach (BuildingForm b in buildings)
        {
            (double lowX, double highX, double lowY, double highY) = Footprint(b);
            (string Line, double ShortM)[] sides =
            [
                ("end-1", lot.OriginXM + lot.SetbackEnd1M - lowX),
                ("end-2", highX - (lot.OriginXM + lot.SizeXM - lot.SetbackEnd2M)),
                ("left", lot.OriginYM + lot.SetbackLeftM - lowY),
                ("right", highY - (lot.OriginYM + lot.SizeYM - lot.SetbackRightM)),
            ];
            foreach ((string line, double shortM) in sides.Where(s => s.ShortM > 1e-6))
            {
                yield return new Finding(
                    "form/setback",
                    Severity.Miss,
                    b.Id,
                    $"{b.Name} stands {Feet(shortM)} over the setback on the {line} side.",
                    "Move or shorten it, or ask the authority for a variance.",
                    new Source.Given("/lot"));
            }
        }
    }

    public static IEnumerable<Finding> Overlaps(EqList<BuildingForm> buildings)
    {
        for (int i = 0; i < buildings.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                (double aLowX, double aHighX, double aLowY, double aHighY) = Footprint(buildings[i]);
                (double bLowX, double bHighX, double bLowY, double bHighY) = Footprint(buildings[j]);
                double x = Math.Min(aHighX, bHighX) - Math.Max(aLowX, bLowX);
                double y = Math.Min(aHighY, bHighY) - Math.Max(aLowY, bLowY);
                if (x > 0.02 && y > 0.02)
                {
                    yield return new Finding(
                        "form/buildings-overlap",
                        Severity.Miss,
                        buildings[i].Id,
                        $"{buildings[i].Name} and {buildings[j].Name} stand in each other by {Feet(x)} by {Feet(y)}.",
                        "Move one of them.",
                        new Source.FirstPrinciples("plane geometry"));
                }
            }
        }
    }

    public static IEnumerable<Finding> Pitches(EqList<BuildingForm> buildings)
    {
        foreach (BuildingForm b in buildings.Where(b => b.IsHouse))
        {
            foreach ((FaceName face, double pitch) in new[] { (FaceName.RoofLeft, b.Roof.LeftPitch), (FaceName.RoofRight, b.Roof.RightPitch) })
            {
                if (pitch < 0.5 - 1e-9)
                {
                    yield return new Finding(
                        "form/flat-slope",
                        Severity.Near,
                        b.Face(face).Id,
                        $"The slope is {pitch * 12:0.#}:12: condensate drips on the crop, snow sits and dirt stays on slopes below 6:12.",
                        "Steepen it to 6:12, or plan drip gutters and cleaning.",
                        new Source.CommonPractice("condensate runs off steep clear slopes; below about 6:12 it drips"));
                }
            }
        }
    }

    /// <summary>How far up the wall behind it each house's noon shadow reaches on the winter solstice.</summary>
    public static IEnumerable<Finding> Shadows(FormInput input, EqList<BuildingForm> buildings, double solsticeDeclinationDeg)
    {
        List<BuildingForm> houses = [.. buildings.Where(b => b.IsHouse)];
        bool north = input.LatitudeDeg >= 0;
        double altitudeDeg = 90 - Math.Abs(input.LatitudeDeg) - solsticeDeclinationDeg;
        foreach (BuildingForm behind in houses)
        {
            // The wall that looks at the noon sun.
            FaceForm wall = behind.Faces
                .Where(f => f.Name is FaceName.Left or FaceName.Right)
                .MinBy(f => Math.Abs(Turn(f.AzimuthDeg - (north ? 180 : 0))))!;
            double offDeg = Math.Abs(Turn(wall.AzimuthDeg - (north ? 180 : 0)));
            if (altitudeDeg <= 0 || offDeg > 45)
            {
                continue;
            }

            double slope = Math.Tan(altitudeDeg * RadPerDeg) / Math.Cos(offDeg * RadPerDeg);
            foreach (BuildingForm front in houses.Where(h => h.Id != behind.Id))
            {
                double sign = wall.Name == FaceName.Left ? -1 : 1;
                double wallYM = wall.Plane.Origin.YM;
                (double lowX, double highX, _, _) = Footprint(front);
                (double wallLowX, double wallHighX, _, _) = Footprint(behind);
                if (Math.Min(highX, wallHighX) - Math.Max(lowX, wallLowX) <= 0)
                {
                    continue;
                }

                (double YM, double ZM)[] profile =
                [
                    (front.Origin.YM, front.Roof.LeftEaveM),
                    (front.Origin.YM + front.Roof.RidgeOffsetM, front.Roof.RidgeM),
                    (front.Origin.YM + front.WidthM, front.Roof.RightEaveM),
                ];
                double reachM = double.NegativeInfinity;
                double gapM = double.PositiveInfinity;
                double clearM = 0;
                double ponyM = wall.Zones.Count > 1 ? wall.Zones[0].Outline.Max(p => p.VM) : 0;
                foreach ((double yM, double zM) in profile)
                {
                    double awayM = sign * (yM - wallYM);
                    reachM = Math.Max(reachM, zM - awayM * slope);
                    gapM = Math.Min(gapM, awayM);
                }

                if (gapM <= 0)
                {
                    continue;
                }

                foreach ((double yM, double zM) in profile)
                {
                    double inside = sign * (yM - wallYM) - gapM;
                    clearM = Math.Max(clearM, (zM - ponyM) / slope - inside);
                }

                if (reachM > ponyM + 1e-6)
                {
                    yield return new Finding(
                        "form/noon-shadow",
                        Severity.Near,
                        wall.Id,
                        $"At noon on the winter solstice {front.Name} shades the wall up to {Feet(reachM)}; the gap is {Feet(gapM)}.",
                        $"A gap of {Feet(clearM)} would clear the glazing of that wall.",
                        new Source.FirstPrinciples("profile angle of the noon sun"));
                }
            }
        }
    }

    private static (double LowX, double HighX, double LowY, double HighY) Footprint(BuildingForm b)
    {
        Point3 far = b.Origin + b.LengthM * b.AlongX + b.WidthM * b.AlongY;
        return (Math.Min(b.Origin.XM, far.XM), Math.Max(b.Origin.XM, far.XM), Math.Min(b.Origin.YM, far.YM), Math.Max(b.Origin.YM, far.YM));
    }

    private static double Turn(double deg) => ((deg + 540) % 360) - 180;

    private static string Feet(double metres)
    {
        double inches = Math.Round(metres / 0.0254);
        return $"{Math.Floor(inches / 12):0}'-{inches % 12:0}\" ({metres:0.00} m)".ToString(System.Globalization.CultureInfo.InvariantCulture);
    }
}
