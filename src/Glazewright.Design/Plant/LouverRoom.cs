using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using static Glazewright.Design.Plant.PlantWords;

namespace Glazewright.Design.Plant;

/// <summary>When the intake wall has no room for the louver area asked: what fits, what that costs in air, and what would make room.</summary>
internal static class LouverRoom
{
    private const double FootM = 0.3048;
    private const int MostRaisedFt = 6;

    public static Finding? Short(PlantFacts f)
    {
        Intake intake = f.Intake!;
        if (intake.LouverTyped || intake.LouverFreeM2 >= intake.LouverAskedM2 - 1e-9)
        {
            return null;
        }

        double density = f.Outside.DensityKgPerM3;
        OperatingPoint all = f.Run!.Wet[^1];
        Intake asked = intake.AsAsked();
        OperatingPoint roomy = ExhaustSizing.Run(f.Run.Fans, asked, density).Wet[^1];
        bool costly = all.FlowM3PerS < 0.97 * roomy.FlowM3PerS || (all.FlowM3PerS < f.NeededM3PerS && roomy.FlowM3PerS >= f.NeededM3PerS);
        return new Finding(
            "plant/louver-room", costly ? Severity.Near : Severity.Note, $"{f.Input.House}/louver-1",
            Text($"The intake wall takes {intake.LouverCount} louvers of {intake.Louver.SizeM / 0.0254:0} in: {Sqft(intake.LouverFreeM2)} ft² free of the {Sqft(intake.LouverAskedM2)} ft² asked for {InWg(asked.LouverPa(roomy.FlowM3PerS, density))} in. w.g. Air passes them at {Fpm(all.FlowM3PerS / intake.LouverFreeM2)} fpm and {InWg(intake.LouverPa(all.FlowM3PerS, density))} in. w.g.; the fans move {Cfm(all.FlowM3PerS)} cfm, with all of the area {Cfm(roomy.FlowM3PerS)} cfm."),
            Mend(f, intake, asked.LouverCount),
            new Source.CommonPractice("louver area by free area, not by frame; places by the layout's own rules"));
    }

    private static string Mend(PlantFacts f, Intake intake, int wanted)
    {
        List<string> ways = [];
        for (int ft = 1; ft <= MostRaisedFt; ft++)
        {
            RoofProfile roof = f.Form.Roof;
            double up = ft * FootM;
            BuildingForm taller = f.Form with { Roof = roof with { LeftEaveM = roof.LeftEaveM + up, RightEaveM = roof.RightEaveM + up } };
            if (Room(f, intake, taller, wanted) == wanted)
            {
                ways.Add(Text($"eaves {ft} ft higher"));
                break;
            }
        }

        FaceName face = LayoutInput.Opposite(f.Input.Equipment.FanFace);
        BuildingForm doorless = f.Form with
        {
            Faces = f.Form.Faces.Select(x => x.Name == face ? x with { Openings = x.Openings.Where(o => o.Opening.Kind == Brief.OpeningKind.WetWall).ToEqList() } : x).ToEqList(),
        };
        int without = Room(f, intake, doorless, wanted);
        if (without > intake.LouverCount)
        {
            ways.Add(Text($"the door on another wall ({without} of {wanted} fit)"));
        }

        ways.Add(intake.Pad is null ? "louvers or roll-ups typed on a side wall" : "louvers and pad along a side wall, or no louvers before the pad but a roll-up curtain");
        return char.ToUpperInvariant(ways[0][0]) + string.Join("; or ", ways)[1..] + ".";
    }

    private static int Room(PlantFacts f, Intake intake, BuildingForm form, int wanted)
    {
        var wall = new WallPlan(form, LayoutInput.Opposite(f.Input.Equipment.FanFace), WallModule.Inches);
        WallPlace? pad = intake.Pad is null ? null : LouverChoice.PadOn(wall, intake.PadWidthM, intake.PadHeightM);
        return LouverChoice.Fits(form, wall, intake.Pad is not null, pad, intake.Louver.SizeM, wanted);
    }
}
