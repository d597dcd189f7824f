using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Science.Shape;

namespace Glazewright.Design.Shape;

/// <summary>How each wish fares, and for one that is missed what it would take.</summary>
internal static class ShapeWishWords
{
    public static EqList<ShapeWishResult> Of(ShapeInput input, ShapeField field, IReadOnlyList<ShapeCell> cells, MapOverSection map, ShapeCell best, ShapeCandidate shape)
    {
        ShapeWishes w = input.Wishes;
        UnitSystem units = input.Units;
        List<ShapeWishResult> results = [];
        (_, string far) = ShapeWords.Sides(shape);
        if (w.NoonReachM is double reachM)
        {
            Add(
                ShapeWish.NoonReach,
                $"direct light {ShapeWords.Length(reachM, units)} up the {far} wall at noon on {input.NoonDay}",
                best.ReachM > 0 ? $"{ShapeWords.Length(best.ReachM, units)} up" : "none on the wall",
                Reach(input, field, best.Section, shape.Clear, reachM, far));
        }

        Add(
            ShapeWish.Shed,
            $"clear slopes at least {ShapeWords.Pitch(w.ShedPitchRatio, units)}, to shed snow and not to drip",
            ClearPitches(best.Section, shape.Clear, units),
            $"a ridge of {ShapeWords.Length(RidgeForPitches(input, field, shape.Clear), units)}, a narrower house, or an opaque cover on the flat slope");
        if (w.GlazingAtMostM2 is double glazingM2)
        {
            Add(
                ShapeWish.Glazing,
                $"clear area at most {ShapeWords.Area(glazingM2, units)}",
                ShapeWords.Area(best.GlazingM2, units),
                $"opaque ends or a shorter house: the least that any shape here has is {ShapeWords.Area(cells.Min(c => c.GlazingM2), units)}");
        }

        if (w.DarkestMonthMolPerM2Day is double mol)
        {
            Add(
                ShapeWish.DarkMonth,
                $"at least {ShapeWords.Mol(mol)} on the benches in the dark month",
                ShapeWords.Mol(best.Winter),
                $"a clearer covering, fewer members, or lamps: the most that any shape here has is about {ShapeWords.Mol(map.Winter * cells.Max(c => c.Winter))}");
        }

        if (w.EvennessAtLeastRatio is double even)
        {
            Add(
                ShapeWish.Evenness,
                $"darkest place at least {ShapeWords.Ratio(even)} of the mean in the dark month",
                ShapeWords.Ratio(best.Evenness),
                $"clear far faces and ends, or a more scattering covering: the best that any shape here has is about {ShapeWords.Ratio(map.Evenness * cells.Max(c => c.Evenness))}");
        }

        return results.ToEqList();

        void Add(ShapeWish wish, string asked, string got, string take)
        {
            bool met = !best.Missed.HasFlag(wish);
            results.Add(new ShapeWishResult(
                wish, asked, met, cells.Count(c => !c.Missed.HasFlag(wish)), cells.Count(c => (c.Missed & ~wish) == ShapeWish.None), got, met ? "" : take));
        }
    }

    // Closed forms: ridge height at this ridge place, lowest ridge anywhere, latitude for this shape.
    private static string Reach(ShapeInput input, ShapeField field, GableSection s, ClearFaces clear, double reachM, string far)
    {
        UnitSystem units = input.Units;
        double noonDeg = field.NoonProfileDeg;
        if (noonDeg <= 0)
        {
            return "another date or another latitude: on that day the sun does not rise here";
        }

        if (noonDeg >= 90)
        {
            return $"a clear {far} wall or slope, or another date: at noon on that day the sun stands overhead or on the {far} side, and no ridge height brings it in from the other";
        }

        if (reachM > s.FarEaveM)
        {
            return $"a higher {far} eave first: the {far} wall is {ShapeWords.Length(s.FarEaveM, units)} high here";
        }

        string ridge = ShapeWords.Length(NoonReach.RidgeForReachM(s.WidthM, s.RidgeOffsetM, reachM, noonDeg), units);
        (double lowestM, double eaveM) = LowestRidge(input, reachM, noonDeg);
        string lowest = ShapeWords.Length(lowestM, units);
        string eave = eaveM > input.EaveAtMostM + 1e-6 ? $" with a {far} eave of {ShapeWords.Length(eaveM, units)}, higher than the wishes allow" : "";
        string latitude = NoonSunAngle.TryLatitude(
            NoonReach.ProfileForReachDeg(s, reachM), input.NoonDeclinationDeg, input.LatitudeDeg >= 0, TurnedDeg(input, field), out double latitudeDeg)
            ? $"this shape does it from {ShapeWords.Latitude(latitudeDeg)} {(input.LatitudeDeg >= 0 ? "north" : "south")}wards"
            : "no latitude of this hemisphere does it with this shape";
        string opaque = clear.FarSlope ? "" : $", or a clear {far} slope";
        return $"a ridge of {ridge} where it is now, {lowest} at the best place the pitches allow{eave}{opaque}: the noon sun stands {ShapeWords.Degrees(noonDeg)} high in the section; {latitude}";
    }

    /// <summary>
    /// The lowest ridge that meets the reach under an opaque far slope with pitches from the least to the steepest, looked for along the ridge's place, and the
    /// far eave it needs: that may be higher than the wishes allow.
    /// </summary>
    internal static (double RidgeM, double FarEaveM) LowestRidge(ShapeInput input, double reachM, double noonDeg)
    {
        double tangent = Math.Tan(noonDeg * Math.PI / 180);
        double lowFarM = Math.Max(reachM, input.EaveAtLeastM);
        ShapeWishes w = input.Wishes;
        (double RidgeM, double FarEaveM) best = (double.PositiveInfinity, lowFarM);
        for (int pass = 0; pass < 2 && !double.IsFinite(best.RidgeM); pass++)
        {
            double mostFarM = pass == 0 ? input.EaveAtMostM : double.PositiveInfinity;
            for (int i = 20; i <= 980; i++)
            {
                double behindM = input.WidthM * i / 1000;
                double ridgeM = Math.Max(
                    reachM + (behindM * tangent),
                    Math.Max(lowFarM + (behindM * w.WaterPitchRatio), input.EaveAtLeastM + ((input.WidthM - behindM) * Math.Max(w.ShedPitchRatio, w.WaterPitchRatio))));
                double farM = Math.Max(lowFarM, ridgeM - (behindM * w.SteepestPitchRatio));
                if (farM <= mostFarM && ridgeM < best.RidgeM)
                {
                    best = (ridgeM, farM);
                }
            }
        }

        return best;
    }

    private static double TurnedDeg(ShapeInput input, ShapeField field)
    {
        ShapeField.Nearest(input.LatitudeDeg, field.BearingDeg, out double nearDeg);
        double turned = nearDeg - NoonSunAngle.EquatorAzimuthDeg(input.LatitudeDeg);
        return Math.Clamp(turned - (360 * Math.Round(turned / 360)), -89, 89);
    }

    // H ≥ eave + W·p₁·p₂/(p₁ + p₂) when both slopes start at the lowest eave; a noon wish beside it may ask for more.
    private static double RidgeForPitches(ShapeInput input, ShapeField field, ClearFaces clear)
    {
        ShapeWishes w = input.Wishes;
        if (w.NoonReachM is double reachM && !clear.FarSlope && field.NoonProfileDeg is > 0 and < 90)
        {
            return LowestRidge(input, reachM, field.NoonProfileDeg).RidgeM;
        }

        double near = clear.NearSlope ? Math.Max(w.ShedPitchRatio, w.WaterPitchRatio) : w.WaterPitchRatio;
        double far = clear.FarSlope ? Math.Max(w.ShedPitchRatio, w.WaterPitchRatio) : w.WaterPitchRatio;
        return input.EaveAtLeastM + (near + far > 0 ? input.WidthM * near * far / (near + far) : 0);
    }

    private static string ClearPitches(GableSection s, ClearFaces clear, UnitSystem units)
    {
        List<string> pitches = [];
        if (clear.NearSlope)
        {
            pitches.Add(ShapeWords.Pitch(s.NearPitchRatio, units));
        }

        if (clear.FarSlope)
        {
            pitches.Add(ShapeWords.Pitch(s.FarPitchRatio, units));
        }

        return pitches.Count == 0 ? "no clear slope" : string.Join(" and ", pitches);
    }
}
