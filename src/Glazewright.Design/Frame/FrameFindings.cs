using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Mechanics.Loads;

namespace Glazewright.Design.Frame;

/// <summary>What the people of the job must hear about the frame.</summary>
internal static class FrameFindings
{
    /// <summary>Weight density of concrete, 150 pcf, N/m³.</summary>
    private const double ConcreteNPerM3 = 150 * 157.0874638;

    /// <summary>Clear width a small loader needs to take snow away, 10 ft (common practice).</summary>
    private const double MachineWidthM = 3.05;

    internal static IEnumerable<Finding> Of(
        FrameInput input, BuildingForm form, FrameLoadSite site, TrialResult trial, IReadOnlyList<SectionChoice> sections) =>
    [
        Preliminary(input), .. Editions(input), .. Thermal(input, site), .. Sections(input, sections), .. Uplift(input, trial), .. Fixity(input, trial), .. Sway(input, site, trial),
        .. Neighbours(input, form, site),
    ];

    private static Finding Preliminary(FrameInput input) => new(
        "frame/preliminary", Severity.Near, input.House,
        "Structural numbers are preliminary: " + string.Join(" ", FrameWords.NotChecked.Take(6).Select(t => t[..t.IndexOf(':', StringComparison.Ordinal)].ToLowerInvariant() + ",")).TrimEnd(',')
            + " were not checked.",
        "Have a licensed engineer check and seal the frame under the code adopted locally; confirm the loads with the authority having jurisdiction.",
        new Source.CommonPractice("a member check alone is not a structural design"));

    private static IEnumerable<Finding> Editions(FrameInput input)
    {
        if (input.Snow.Edition != input.Wind.Edition)
        {
            yield return new Finding(
                "frame/editions-mixed", Severity.Danger, input.House,
                $"Ground snow is of {FrameWords.Edition(FrameLoadSite.EditionOf(input.Snow.Edition))}, wind of {FrameWords.Edition(FrameLoadSite.EditionOf(input.Wind.Edition))}; combinations follow the snow's edition.",
                "Take both from one edition: their levels and factors belong together.",
                new Source.Standard("ASCE/SEI 7", "chapters 2, 7, 26", Source.Mark.FromMemory));
        }
    }

    private static IEnumerable<Finding> Thermal(FrameInput input, FrameLoadSite site)
    {
        Source source = new Source.Standard(FrameWords.Edition(site.Snow.Edition), "table 7.3-2", Source.Mark.ReadSecondHand);
        if (input.Snow.GroundPa <= 0)
        {
            yield break;
        }

        if (site.Thermal.Reason == ThermalReason.GreenhouseWarmAllWinter)
        {
            yield return new Finding(
                "frame/snow-relies-on-heat", Severity.Danger, input.House,
                $"The snow load counts on heat: Ct 0.85 holds only while the house is kept at 50 °F (10 °C) or more all winter ({input.Winter.Period}: {FrameWords.Fahrenheit(input.Winter.ColdestC)}) with a working alarm.",
                "Print it on the drawings; never let the heat or the alarm go in snow; do not climb the roof to clear it.",
                source);
            yield break;
        }

        string why = site.Thermal.Reason switch
        {
            ThermalReason.RoofKeepsHeatIn =>
                $"The better insulated slope, with curtains closed, has R {site.RoofResistanceM2KPerW / ThermalFactor.GreenhouseResistanceLimitM2KPerW * 2:0.0} (h·ft²·F°/Btu), and the greenhouse value ends at R 2.0",
            ThermalReason.KeptCool =>
                $"{input.Winter.Period} keeps it at {FrameWords.Fahrenheit(input.Winter.ColdestC)} in weeks {input.Winter.FromWeek} to {input.Winter.ToWeek}, and the value of a warm roof asks for 50 °F all winter",
            ThermalReason.NoAlarm => "There is no alarm or attendant at all hours",
            _ => "The house is without heat, or at freezing, at some time of the snow season",
        };
        // What the same house would take if it were kept warm all winter with an alarm.
        double warmFactor = ThermalFactor.Of(site.SnowSite.Ground, new RoofThermal(site.RoofResistanceM2KPerW, ThermalFactor.GreenhouseLeastC, true)).Factor;
        // A roof that keeps its heat in is never offered 0.85: warmth alone then mends only down to its own warm value.
        double spared = site.Thermal.Reason == ThermalReason.RoofKeepsHeatIn ? 0.85 : warmFactor;
        yield return new Finding(
            "frame/greenhouse-snow-not-credited", Severity.Near, input.House,
            $"{why}: the snow load takes Ct {site.Thermal.Factor:0.00}"
                + (spared < site.Thermal.Factor ? $", not {spared:0.00}, which is {(site.Thermal.Factor / spared - 1) * 100:0} % more snow." : ", as it would kept warm."),
            warmFactor < site.Thermal.Factor
                ? $"Kept at 50 °F (10 °C) or more all winter, with an alarm, it would be Ct {warmFactor:0.00}; or keep this load."
                : "Keep this load.",
            source);
    }

    private static IEnumerable<Finding> Sections(FrameInput input, IReadOnlyList<SectionChoice> sections)
    {
        foreach (SectionChoice s in sections)
        {
            if (s.Answer is Answer<double>.Missed missed)
            {
                yield return new Finding(
                    "frame/member-overworked", Severity.Danger, $"{input.House}/{s.Role.ToString().ToLowerInvariant()}",
                    s.Answer.Choice >= FrameTrial.UnstableUse
                        ? $"The {Word(s.Role)} {s.Section} lets the frame buckle under its own loads."
                        : $"The {Word(s.Role)} {s.Section} is used to {s.Answer.Choice * 100:0} % of its strength or allowed deflection.",
                    missed.Limit,
                    new Source.Standard("ANSI/AISC 360-16", "H1; IBC table 1604.3", Source.Mark.FromMemory));
            }
        }
    }

    private static IEnumerable<Finding> Uplift(FrameInput input, TrialResult trial)
    {
        double upN = Math.Max(trial.Service.Left.UpN, trial.Service.Right.UpN);
        if (upN <= 0)
        {
            yield break;
        }

        double pierN = ConcreteNPerM3 * Math.PI / 4 * input.Choice.PierDiameterM * input.Choice.PierDiameterM * input.Choice.PierDepthM;
        double heldN = 0.6 * pierN;
        yield return new Finding(
            "frame/uplift", heldN < upN ? Severity.Danger : Severity.Near, input.House,
            $"Wind lifts a base with {FrameWords.Pounds(upN)} net (0.6D + 0.6W); 0.6 of the pier's weight is {FrameWords.Pounds(heldN)}.",
            heldN < upN
                ? "Larger or deeper piers, a grade beam, or soil friction shown by a soils report must hold the rest; anchors are not designed here."
                : "Anchors, embedment and pull-out are not designed here.",
            new Source.CommonPractice("a straight pier is credited with 0.6 of its weight unless a soils report gives friction"));
    }

    // A base taken as fixed moves its moment into the pier: the soil beside it must hold it.
    private static IEnumerable<Finding> Fixity(FrameInput input, TrialResult trial)
    {
        BaseExtremes worst = trial.Service.Left.MomentNm > trial.Service.Right.MomentNm ? trial.Service.Left : trial.Service.Right;
        if (!input.Choice.FixedBase || worst.MomentNm <= 0 || worst.ThrustN <= 0 || input.BearingPa <= 0)
        {
            yield break;
        }

        double soilPaPerM = Mechanics.Checks.PierEmbedment.PresumedSoilPaPerM(input.BearingPa);
        double neededM = Mechanics.Checks.PierEmbedment.FreeM(
            worst.ThrustN, Math.Min(100, worst.MomentNm / worst.ThrustN), input.Choice.PierDiameterM, soilPaPerM);
        bool isShort = neededM > input.Choice.PierDepthM;
        yield return new Finding(
            "frame/pier-depth", isShort ? Severity.Danger : Severity.Near, input.House,
            $"Bases are taken as fixed: a {FrameWords.Feet(input.Choice.PierDiameterM)} pier in soil presumed by its bearing would have to reach about {FrameWords.Feet(neededM)} to hold {FrameWords.Pounds(worst.ThrustN)} and its moment; the job has {FrameWords.Feet(input.Choice.PierDepthM)}.",
            isShort ? "Deeper or wider piers, a slab that holds them at grade, or pinned bases with a stiffer frame or a collar tie; the foundation is not designed here." : "The foundation is not designed here.",
            new Source.Standard("IBC", "1807.3.2.1, table 1806.2", Source.Mark.Read));
    }

    private static IEnumerable<Finding> Sway(FrameInput input, FrameLoadSite site, TrialResult trial)
    {
        double eaveM = Math.Min(site.Section.LeftEaveM, site.Section.RightEaveM);
        if (trial.Service.SwayM > eaveM / Mechanics.Checks.DeflectionLimit.Sway.SpanOverRatio)
        {
            yield return new Finding(
                "frame/sway", Severity.Near, input.House,
                $"In service wind the eave sways {FrameWords.Feet(trial.Service.SwayM)}, one part in {eaveM / trial.Service.SwayM:0} of its height.",
                "Stiffer columns, fixed bases or knee braces; glazing joints must follow the movement.",
                new Source.CommonPractice("eave height over 60 in service wind for metal and plastic cladding"));
        }
    }

    private static IEnumerable<Finding> Neighbours(FrameInput input, BuildingForm form, FrameLoadSite site)
    {
        double density = SnowDensity.NPerM3(input.Snow.GroundPa);
        foreach (NeighbourRoof n in input.Neighbours.Where(_ => input.Snow.GroundPa > 0))
        {
            double ownEaveM = n.OnLeft ? form.Roof.LeftEaveM : form.Roof.RightEaveM;
            double ownRunM = n.OnLeft ? site.Section.LeftRunM : site.Section.RightRunM;
            foreach (Finding drift in Drift(input, site, n, ownEaveM))
            {
                yield return drift;
            }

            if (n.GapM < 0.3)
            {
                continue;
            }

            // Both slopes drop what code counts as slid, 0.4 of the flat roof snow on each facing run, on top of the ground's own snow.
            double slidN = 0.4 * site.Snow.FlatPa * (ownRunM + n.FacingRunM);
            double depthM = slidN / density / n.GapM + input.Snow.GroundPa / density;
            bool narrow = n.GapM < MachineWidthM;
            if (depthM > Math.Max(0.3, input.PonyWallM) || narrow)
            {
                yield return new Finding(
                    "frame/snow-between", Severity.Near, $"{input.House}/{(n.OnLeft ? "left" : "right")}",
                    $"Snow slid from both roofs lies about {FrameWords.Feet(depthM)} deep in the {FrameWords.Feet(n.GapM)} gap to {n.Name}, against walls that are glazed above {FrameWords.Feet(input.PonyWallM)}{(narrow ? ", and a machine does not get through" : "")}.",
                    $"Widen the gap (a small machine wants {FrameWords.Feet(MachineWidthM)}), raise the pony wall, or plan where the snow goes; the wall is not checked for it.",
                    new Source.Standard(FrameWords.Edition(site.Snow.Edition), "7.9 (amount slid); depth by spreading it over the gap", Source.Mark.FromMemory));
            }
        }
    }

    private static IEnumerable<Finding> Drift(FrameInput input, FrameLoadSite site, NeighbourRoof n, double ownEaveM)
    {
        double stepM = n.EaveM - ownEaveM;
        if (stepM <= 0.1)
        {
            yield break;
        }

        StepDrift drift = NeighbourSnow.LeewardDrift(site.SnowSite, site.Snow.FlatPa, n.WidthM, stepM, n.GapM);
        if (drift.PeakPa > 0)
        {
            yield return new Finding(
                "frame/neighbour-drift", Severity.Near, $"{input.House}/{(n.OnLeft ? "roof-left" : "roof-right")}",
                $"{n.Name}'s eave stands {FrameWords.Feet(stepM)} higher: its drift puts up to {FrameWords.Psf(drift.PeakPa)} more on this roof's edge over {FrameWords.Feet(drift.ReachM)}, which the frame check does not carry.",
                "Have the engineer add it, or widen the gap to 20 ft.",
                new Source.Standard(FrameWords.Edition(site.Snow.Edition), "7.7", Source.Mark.FromMemory));
        }
    }

    private static string Word(MemberRole role) => role switch
    {
        MemberRole.Column => "column",
        MemberRole.Rafter => "rafter",
        MemberRole.Girt => "girt",
        _ => "purlin",
    };
}
