using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Mechanics.Loads;

namespace Glazewright.Design.Frame;

/// <summary>Figures of Frame.</summary>
internal static class FrameWorkings
{
    internal static List<Figure> Figures(
        FrameInput input, BuildingForm form, FrameLoadSite site, TrialResult trial, SpanUse purlin, SpanUse girt)
    {
        List<Figure> figures = [];
        Snow(figures, input, site);
        Wind(figures, input, site);
        Members(figures, input, form, site, trial, purlin, girt);
        return figures;
    }

    private static void Snow(List<Figure> figures, FrameInput input, FrameLoadSite site)
    {
        string h = input.House + "/frame/";
        string edition = FrameWords.Edition(site.Snow.Edition);
        Source Clause(string clause, Source.Mark mark) => new Source.Standard(edition, clause, mark);
        Figure ground = Figure.State(h + "ground-snow", $"Ground snow, {edition}", Unit.AreaLoad, input.Snow.GroundPa, new Source.Given("/site/snow/ground"));
        Figure exposure = Figure.State(
            h + "snow-exposure", "Snow exposure factor Ce (roof partially exposed)", Unit.None, site.Snow.ExposureFactor, Clause("table 7.3-1", Source.Mark.ReadSecondHand));
        Figure importance = Figure.State(
            h + "snow-importance", site.Snow.Edition == LoadEdition.Asce716 ? "Snow importance factor" : "Snow importance (in the 7-22 map itself)", Unit.None,
            site.Snow.ImportanceFactor, Clause("table 1.5-2", Source.Mark.ReadSecondHand));
        Figure thermal = Figure.Observe(
            h + "thermal-factor", $"Thermal factor Ct: {FrameWords.Thermal(site.Thermal.Reason)}", Unit.None, site.Thermal.Factor,
            "Chosen by roof resistance with the curtain, coldest temperature of the schedule in the snow season, and alarm",
            [
                new("r_roof", "Roof resistance of the better slope with closed curtains, m²K/W", "", site.RoofResistanceM2KPerW, Unit.None, new Source.FirstPrinciples("1/U of the covering plus curtains")),
                new("coldest", $"Coldest target ({input.Winter.Period}, weeks {input.Winter.FromWeek} to {input.Winter.ToWeek})", input.Pointer + "/schedule", input.Winter.ColdestC, Unit.Celsius, new Source.Given(input.Pointer + "/schedule")),
                new("alarm", "Alarm or attendant at all hours", "/occupancy/freezeAlarm", input.FreezeAlarm ? 1 : 0, Unit.None, new Source.Given("/occupancy/freezeAlarm")),
            ],
            "No load capacity is ever credited to opening a curtain or raising the heat", Clause("tables 7.3-2, 7.3-3", Source.Mark.ReadSecondHand));
        Figure flat = Figure.Derive(
            h + "flat-snow", "Flat roof snow", Unit.AreaLoad,
            0.7 * Term.Of("ce", exposure) * Term.Of("ct", thermal) * Term.Of("is", importance) * Term.Of("pg", ground), Clause("eq. 7.3-1", Source.Mark.ReadSecondHand));
        figures.AddRange([ground, exposure, importance, thermal, flat]);
        foreach ((string side, double factor, double angleDeg) in new[]
            { ("left", site.Snow.LeftSlopeFactor, site.Section.LeftAngleDeg), ("right", site.Snow.RightSlopeFactor, site.Section.RightAngleDeg) })
        {
            Figure slope = Figure.Observe(
                $"{h}slope-factor-{side}", $"Slope factor Cs, {side} slope", Unit.None, factor, "Straight line of the chart for this Ct, not slippery",
                [new("theta", "Slope", "", angleDeg, Unit.Degree, new Source.FirstPrinciples("form")), new("ct", thermal.Label, thermal.Id, thermal.Value, Unit.None, thermal.Source)],
                "Snow that could slide off is not counted off", Clause("figure 7.4-1", Source.Mark.ReadSecondHand));
            figures.Add(slope);
            figures.Add(Figure.Derive(
                $"{h}roof-snow-{side}", $"Balanced snow, {side} slope", Unit.AreaLoad, Term.Of("cs", slope) * Term.Of("pf", flat), Clause("eq. 7.4-1", Source.Mark.ReadSecondHand)));
        }

        foreach (SnowCase c in site.Snow.Cases.Where(c => c.Kind is SnowCaseKind.DriftedToLeft or SnowCaseKind.DriftedToRight))
        {
            bool toRight = c.Kind == SnowCaseKind.DriftedToRight;
            SlopeSnow lee = toRight ? c.Right : c.Left;
            figures.Add(Figure.Observe(
                $"{h}drift-{(toRight ? "right" : "left")}", $"Drift surcharge, {FrameWords.Snow(c.Kind)}", Unit.AreaLoad, lee.SurchargePa,
                "Drift height from ground snow and the windward run, times snow density, over the root of the leeward run per rise",
                [
                    new("fetch", "Windward run", "", toRight ? site.Section.LeftRunM : site.Section.RightRunM, Unit.Metre, new Source.FirstPrinciples("form")),
                    new("reach", "Horizontal reach from the ridge", "", lee.SurchargeRunM, Unit.Metre, Clause("7.6.1", Source.Mark.ReadSecondHand)),
                    new("pg", ground.Label, ground.Id, ground.Value, Unit.AreaLoad, ground.Source),
                ],
                "Unlike slopes: fetch of the windward slope, pitch of the leeward one; an engineering reading to be confirmed", Clause("7.6.1", Source.Mark.ReadSecondHand)));
        }
    }

    private static void Wind(List<Figure> figures, FrameInput input, FrameLoadSite site)
    {
        string h = input.House + "/frame/";
        string edition = FrameWords.Edition(site.WindSite.Edition);
        Source Clause(string clause) => new Source.Standard(edition, clause, Source.Mark.ReadSecondHand);
        Figure speed = Figure.State(h + "wind-speed", $"Basic wind speed, {edition}", Unit.MetrePerSecond, input.Wind.SpeedMs, new Source.Given("/site/wind/speed"));
        double heightM = site.Section.MeanRoofHeightM;
        Figure kz = Figure.Observe(
            h + "wind-exposure", $"Velocity pressure coefficient Kh at mean roof height, exposure {input.Wind.Exposure}", Unit.None,
            VelocityPressure.ExposureFactor(site.WindSite.Edition, site.WindSite.Exposure, heightM), "Power law of the height, held below 4.6 m",
            [new("h", "Mean roof height", "", heightM, Unit.Metre, new Source.FirstPrinciples("mean of ridge and higher eave"))], "", Clause("table 26.10-1"));
        Term elevation = Term.Of("z", "Ground above sea level", input.ElevationM, Unit.Metre, new Source.Given("/site/elevation"));
        Figure ke = Figure.Derive(h + "wind-elevation", "Ground elevation factor Ke", Unit.None, Term.Exp(-0.000119 * elevation), Clause("table 26.9-1"));
        Term v = Term.Of("v", speed);
        Term topography = Term.Of("kzt", "Topographic factor", input.Wind.TopographicFactor, Unit.None, new Source.Given("/site/wind/topography"));
        Figure q = Figure.Derive(
            h + "velocity-pressure", "Velocity pressure at mean roof height, with directionality", Unit.AreaLoad,
            0.613 * Term.Of("kz", kz) * topography * Term.Of("ke", ke) * v * v * VelocityPressure.DirectionalityFactor, Clause("eq. 26.10-1"));
        figures.AddRange([speed, kz, ke, q]);
        double uplift = site.Wind.OfType<WindCase.Pressures>().Min(p => Math.Min(p.LeftRoofPa, p.RightRoofPa));
        figures.Add(Figure.Observe(
            h + "roof-suction", "Largest roof suction on a frame (net, strength level)", Unit.AreaLoad, -uplift, "Worst of all wind cases, enclosed house",
            [new("q", q.Label, q.Id, q.Value, Unit.AreaLoad, q.Source)], "Edge and corner zones of sheets and fasteners are higher and not here", Clause("figure 27.3-1")));
    }

    private static void Members(
        List<Figure> figures, FrameInput input, BuildingForm form, FrameLoadSite site, TrialResult trial, SpanUse purlin, SpanUse girt)
    {
        string h = input.House + "/frame/";
        Source method = new Source.Standard("ANSI/AISC 360-16", "chapters C, E, F, G, H", Source.Mark.FromMemory);
        string how = $"Plane frame, second order on 0.8 of stiffness, all {trial.Combinations} combinations of {FrameWords.Edition(site.Snow.Edition)} with their snow and wind cases";
        foreach (PartUse u in trial.Uses)
        {
            figures.Add(Figure.Observe(
                h + "use-" + u.Part.Name, $"Utilisation of {u.Part.Name.Replace('-', ' ')}", Unit.None, u.UseFraction, $"{how}; governed by {u.Combination}",
                [
                    new("axial", "Axial force there (tension positive)", "", u.TensionN, Unit.Newton, method), new("moment", "Moment there", "", u.MomentNm, Unit.NewtonMetre, method),
                    new("span", "Length", "", u.SpanM, Unit.Metre, new Source.FirstPrinciples("form")),
                ],
                "Member strength only", method, FrameWords.Preliminary));
        }

        foreach (SpanUse u in new[] { purlin, girt })
        {
            figures.Add(Figure.Observe(
                h + "use-" + u.Name, $"Utilisation of {u.Name.Replace('-', ' ')}", Unit.None, u.UseFraction, $"Simple span of one bay; governed by {u.Combination}",
                [new("span", "Bay", "", u.SpanM, Unit.Metre, new Source.FirstPrinciples("form"))], "Member strength only", method, FrameWords.Preliminary));
        }

        Source practice = new Source.FirstPrinciples("first-order frame analysis");
        void Observe(string id, string label, Unit unit, double value, string what) => figures.Add(
            Figure.Observe(h + id, label, unit, value, what, [], "Full stiffness, first order; service snow and 0.42 of strength-level wind", practice, FrameWords.Preliminary));
        Observe("ridge-drop", "Ridge drop at service", Unit.Metre, trial.Service.RidgeDropM, "Largest over dead load, equipment and live load or any snow case");
        Observe("eave-spread", "Eaves spread apart at service", Unit.Metre, trial.Service.EaveSpreadM, "Largest over the gravity cases");
        Observe("sway", "Sway at the eave in service wind", Unit.Metre, trial.Service.SwayM, "Largest over the wind cases");
        Observe("thrust", "Thrust at a base at service gravity", Unit.Newton, trial.Service.SnowThrustN, "Largest over the gravity cases");
        foreach ((string side, BaseExtremes b) in new[] { ("left", trial.Service.Left), ("right", trial.Service.Right) })
        {
            Observe($"base-{side}-down", $"Greatest down at the {side} base (ASD)", Unit.Newton, b.DownN, "Largest over all ASD combinations");
            Observe($"base-{side}-up", $"Greatest uplift at the {side} base (ASD)", Unit.Newton, b.UpN, "Largest over all ASD combinations");
            Observe($"base-{side}-across", $"Greatest horizontal force at the {side} base (ASD)", Unit.Newton, b.ThrustN, "Largest over all ASD combinations");
        }

        Term allowance = Term.Of("equipment", "Allowance for hung equipment", input.Choice.CollateralPa, Unit.AreaLoad, new Source.Given(input.Pointer + "/frame/collateral"));
        Term crop = Term.Of("crop", "Hung crop", input.Choice.CropLoadPa, Unit.AreaLoad, new Source.Given(input.Pointer + "/frame/cropLoad"));
        Term floor = Term.Of("floor", "Floor area", form.FloorAreaM2, Unit.SquareMetre, new Source.FirstPrinciples("form"));
        figures.Add(Figure.Derive(
            h + "hung-allowance", "Weight the frame may carry hung in it", Unit.Newton, (allowance + crop) * floor,
            new Source.Given(input.Pointer + "/frame/collateral"), "Heavier equipment than this is a finding, not a loop back."));
        figures.Add(Figure.State(
            h + "roof-live", "Greenhouse roof live load", Unit.AreaLoad, RoofLiveLoad.GreenhousePa, new Source.Standard("IBC", "table 1607.1", Source.Mark.FromMemory)));
    }
}
