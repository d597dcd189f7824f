using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Form;
using Glazewright.Design.Program;
using Glazewright.Design.Quantities;

namespace Glazewright.Design.Brief.Reading;

/// <summary>Fields of a house's climate equipment.</summary>
internal static class EquipmentFields
{
    private static readonly string[] s_sizeOrNone = ["size", "none"];

    private enum FanEnd
    {
        End1,
        End2,
    }

    public static EquipmentChoice Read(FieldReader f, HouseContext context, double lowerEaveM, bool roofed)
    {
        Catalogue c = context.Catalogue;
        List<string> off = [];
        WordOrList<FixedItem> exhaust = f.WordOrSeveral("exhaust", s_sizeOrNone, "size", 12, "Exhaust fans: size them, none, or which.", i => Fan(i, context));
        Units(f, "exhaust", "fans", exhaust.Items, ProgramStage.MostFans);
        FanEnd end = f.Choice<FanEnd>(
            "fanEnd", context.Lee.IsEnd1 ? FanEnd.End1 : FanEnd.End2,
            "End wall with the fans; the intake is on the other. Left out: the lee end, by the wind of the weather file's warm daylight; end-2 where no wind is known.");
        Source endSource = f.SourceOf("fanEnd", context.Lee.Why);
        double shade = f.Fraction("shade", "0 %", "80 %", "30 %", "Shade of whitewash or curtain that is counted on when fans are sized.");
        double riseK = f.DifferenceK("temperatureRise", "2 F°", "20 F°", "7 F°", "Rise allowed from intake to fans.");
        (bool wet, string pad, double padWidthM, double padHeightM) = f.Group("wetWall", "Wet wall (evaporative pad).", w => (
            Switch(w, off, true, "A wet wall is wanted.", "the wet wall", "pad", "width", "height"),
            w.Word("pad", [.. c.Pads.Select(p => p.Id)], "", "Pad."),
            w.LengthMOrBlank("width", "2 ft", "200 ft", "sized", "Pad width.") ?? 0,
            w.LengthMOrBlank("height", "2 ft", "10 ft", "sized", "Pad height.") ?? 0));
        (bool fog, string fogEntry, int nozzles) = f.Group("fog", "Fog.", g => (
            Switch(g, off, false, "Fog is wanted; it is too where its class or nozzles are given.", "the fog", "class", "nozzles"),
            g.Word("class", [.. c.Fogs.Select(e => e.Id)], "", "Pressure class. High pressure cuts skin: see the cautions."),
            g.Whole("nozzles", 0, 5000, 0, "Nozzles; 0 to size them.")));
        WordOrList<FixedItem> heaters = f.WordOrSeveral("heaters", s_sizeOrNone, "size", 12, "Unit heaters: size them, none, or which.", i => Item(i, [.. c.Heaters.Select(e => e.Id)], [.. c.Heaters.Select(EntryWords.Of)], ProgramStage.MostHeaters));
        Units(f, "heaters", "heaters", heaters.Items, ProgramStage.MostHeaters);
        HeaterFire fire = f.Choice<HeaterFire>(
            "heaterFire", HeaterFire.OnOff,
            "How heaters that are sized burn: all or nothing; low or high fire; or anything down to their least fire, which starts them far less often. Electric heaters are on or off. Listed heaters burn as their entry says.");
        double pipeW = f.PowerW("benchPipe", "0 kBtu/h", "5000 kBtu/h", "0 kBtu/h", "Hot-water pipe under the benches, output.");
        int curtains = f.Whole("curtains", 0, 2, 1, "Number of curtains. Two are of one cloth and move alike, unless secondCurtain says otherwise.");
        string cloth = f.Word("curtainCloth", [.. c.Curtains.Select(e => e.Id)], "", "Curtain cloth.");
        double curtainM = f.LengthMOrBlank("curtainHeight", "3 ft", "40 ft", "6 in (15 cm) under the lower eave, down to the whole inch or centimetre", "Height of the (first) curtain.") ?? 0;
        if (curtains == 0 && cloth.Length > 0)
        {
            off.Add("a curtain (curtainCloth)");
        }

        if (roofed && curtains > 0 && curtainM >= lowerEaveM)
        {
            f.Add(FaultKind.DoesNotFit, "curtainHeight", $"a curtain at {FeetInches.Format(curtainM)} lies above the lower eave at {FeetInches.Format(lowerEaveM)}", $"{FeetInches.Format(lowerEaveM - 0.1524)} or lower, or left out");
        }

        SecondCurtain? second = CurtainFields.Second(f, curtains, curtainM > 0 ? curtainM : roofed ? lowerEaveM - 0.15 : 0, c);
        WordOrList<FixedItem> circulation = f.WordOrSeveral("circulation", s_sizeOrNone, "size", 6, "Circulation fans: size them, none, or which.", i => Item(i, [.. c.Circulation.Select(e => e.Id)], [.. c.Circulation.Select(EntryWords.Of)], 200));
        double pressurePa = f.PressurePa("positivePressure", "0 inwg", "0.1 inwg", "0 inwg", "Pressure to hold with a filter fan while the exhaust is off; 0 for none.");
        double lampW = f.PowerW("lamps", "0 kW", "1000 kW", "0 kW", "Lamps, electric power.");
        (string pest, double porosity) = f.Group("insectScreen", "Insect screen.", s => (
            s.Words("pest", "none", "Smallest pest to keep out, or none.", "thrips", 40),
            s.Fraction("porosity", "0 %", "90 %", "0 %", "Open share of the screen; 0 for what the pest asks, and for no screen where there is none.")));
        porosity = porosity > 0 ? porosity : InsectCloth.PorosityFraction(pest);
        double roofVent = f.Fraction("roofVents", "0 %", "50 %", "0 %", "Roof vent area over floor area.");
        double sideVent = f.Fraction("sideVents", "0 %", "50 %", "0 %", "Side vent area over floor area.");
        bool sealedCombustion = f.Flag("sealedCombustion", true, "Heaters take combustion air from outside; others can back-draft beside exhaust fans.");
        if (fire != HeaterFire.OnOff && !sealedCombustion && heaters.Word != "none" && heaters.Items.Count == 0 && !c.Heaters.Any(h => !h.Sealed && h.Fire == fire))
        {
            f.Add(FaultKind.Contradiction, "heaterFire", "every heater of this kind takes its combustion air from outside, and sealedCombustion is false", "sealedCombustion true or left out, or on-off heaters");
        }

        double dryerW = f.PowerW("dehumidifier", "0 kW", "200 kW", "0 kW", "Dehumidifier, electric power; it takes out about 2 kg of water for each kWh.");
        int co2Ppm = f.Whole("co2", 0, 1500, 0, "Carbon dioxide to hold by dosing in daylight, ppm; 0 for none.");
        int oscillating = f.Whole("oscillatingFans", 0, 200, 0, "Oscillating fans over the crop; they run with the circulation fans. A finding tells how many the floor needs.");
        FixedItem? upper = UpperFans(f, context, curtains, off);
        return new EquipmentChoice(
            exhaust.Word != "none", exhaust.Items, end == FanEnd.End1 ? FaceName.End1 : FaceName.End2, endSource, shade, riseK,
            wet, pad, padWidthM, padHeightM, fog, fogEntry, nozzles, heaters.Word != "none", heaters.Items, pipeW, curtains, cloth, curtainM,
            circulation.Word != "none", circulation.Items, pressurePa, lampW, pest, porosity, roofVent, sideVent, sealedCombustion, dryerW, co2Ppm, oscillating, second)
        {
            UpperFans = upper,
            HeaterFire = fire,
            CurtainStepM = context.EvenM,
            SwitchedOff = [.. off],
        };
    }

    private static FixedItem? UpperFans(FieldReader f, HouseContext context, int curtains, List<string> off)
    {
        (bool wanted, string entry, int count) = f.Group("upperFans", "Small exhaust fans in the gable, with an inlet of their own, that take away the heat a drawn shade keeps above it.", u => (
            Switch(u, off, false, "Upper fans are wanted; they are too where their entry or count is given.", "the upper fans", "entry", "count"),
            FanWord(u, context, "", "Fan: the smallest that the lot's power runs, unless named."),
            u.Whole("count", 0, 8, 0, "How many; 0 to size them.")));
        if (wanted && curtains == 0)
        {
            f.Add(FaultKind.Contradiction, "upperFans", "upper fans in a house without a curtain: there is no space above one", "curtains 1 or 2, or no upper fans");
        }

        return wanted ? new FixedItem(entry, count) : null;
    }

    // What is described is wanted, unless it is switched off by hand: then what was typed is kept, and told.
    private static bool Switch(FieldReader f, List<string> off, bool fallback, string doc, string what, params string[] described)
    {
        string[] given = [.. described.Where(f.IsGiven)];
        bool use = f.Flag("use", fallback, doc);
        if (given.Length == 0)
        {
            return use;
        }

        if (!use && f.IsGiven("use"))
        {
            off.Add($"{what} ({string.Join(", ", given)})");
        }

        return use || !f.IsGiven("use");
    }

    // Each fan and heater is an actuator of the house's control program, and that has a limit.
    private static void Units(FieldReader f, string key, string what, EqList<FixedItem> items, int most)
    {
        int count = items.Sum(i => i.Count);
        if (items.Count > 1 && count > most)
        {
            f.Add(FaultKind.OutOfRange, key, $"{HouseFields.Text(count)} {what} in one house", $"at most {HouseFields.Text(most)} together, each switched by the control program: fewer, larger units");
        }
    }

    private static FixedItem Item(FieldReader f, IReadOnlyList<string> entries, IReadOnlyList<string> meanings, int most) => new(
        f.Word("entry", entries, null, "Catalogue entry.", meanings),
        f.Whole("count", 1, most, 1, "How many."));

    private static FixedItem Fan(FieldReader f, HouseContext context)
    {
        string entry = FanWord(f, context, null, "Catalogue entry.");
        return new FixedItem(entry, f.Whole("count", 1, ProgramStage.MostFans, 1, "How many."));
    }

    private static string FanWord(FieldReader f, HouseContext context, string? fallback, string what)
    {
        string entry = f.Word("entry", [.. context.Catalogue.Fans.Select(e => e.Id)], fallback, what, [.. context.Catalogue.Fans.Select(EntryWords.Of)]);
        bool threePhase = context.Catalogue.Fans.FirstOrDefault(e => e.Id == entry) is { Phases: 3 };
        if (threePhase && context.Utilities.Phase == Phase.Single && f.IsGiven("entry"))
        {
            f.Add(FaultKind.Contradiction, "entry", $"{entry} has a three-phase motor, and the lot has single-phase service", "a single-phase fan, or utilities.phase \"three\" when the utility brings it");
        }

        return entry;
    }
}
