using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;

namespace Glazewright.Design.Layout;

/// <summary>The box of insect cloth before the intake: front, both sides and top are cloth, and it is as deep as the cloth's area asks.</summary>
internal static class ClothBox
{
    /// <summary>Room around louvers and pad, and the least between them and the cloth, m: blades open into it (common practice).</summary>
    private const double AroundM = 0.15;

    private const double DeepM = 2.4;

    public static void Place(FormResult form, BuildingForm house, PlantResult plant, FaceName face, WallPlan wall, List<PlacedItem> placed, List<Finding> findings)
    {
        double clothM2 = plant.InsectClothM2 - (plant.Vents is { } vents ? vents.RoofM2 + vents.SideM2 : 0);
        PlacedItem[] behind = [.. placed.Where(p => p.Face == face && p.Kind is PlacedKind.Louver or PlacedKind.WetWall or PlacedKind.IntakeBox)];
        if (clothM2 < 0.01 || behind.Length == 0)
        {
            return;
        }

        bool end = face is FaceName.End1 or FaceName.End2;
        double fromM = Math.Max(behind.Min(p => end ? p.Corner.YM : p.Corner.XM) - AroundM, 0);
        double toM = Math.Min(behind.Max(p => end ? p.Corner.YM + p.Size.YM : p.Corner.XM + p.Size.XM) + AroundM, wall.LengthM);
        double lowM = Math.Max(behind.Min(p => p.Corner.ZM) - AroundM, 0);
        double highM = behind.Max(p => p.Corner.ZM + p.Size.ZM) + AroundM;
        double outM = behind.Max(p => face switch
        {
            FaceName.End1 => -p.Corner.XM,
            FaceName.End2 => p.Corner.XM + p.Size.XM - house.LengthM,
            FaceName.Left => -p.Corner.YM,
            _ => p.Corner.YM + p.Size.YM - house.WidthM,
        });
        (double wideM, double tallM) = (toM - fromM, highM - lowM);
        double deepM = Math.Max((clothM2 - wideM * tallM) / (2 * tallM + wideM), outM + AroundM);
        string id = $"{house.Id}/cloth-box";
        WallLayout.Add(placed, id, PlacedKind.ClothBox, "Insect cloth box", wall, new WallPlace(fromM, lowM, wideM, tallM), deepM);
        OpeningForm? door = house.Face(face).Openings.FirstOrDefault(o => o.Opening.Kind.IsDoor() && o.Opening.OffsetM < toM && o.Opening.OffsetM + o.Opening.WidthM > fromM && o.Opening.SillM < highM);
        double freeM = LayoutFindings.InFront(house, form, face).Where(f => f.FromM < toM && f.ToM > fromM).Select(f => f.GapM).DefaultIfEmpty(double.PositiveInfinity).Min();
        if (door is not null || freeM < deepM || deepM > DeepM)
        {
            findings.Add(new Finding(
                "layout/cloth-box", Severity.Near, id,
                LayoutFindings.Text($"{clothM2 / 0.09290304:0} ft² of insect cloth make a box {deepM / 0.3048:0.0} ft deep before the intake{(door is null ? "" : ", across the door " + door.Opening.Id)}{(freeM < deepM ? LayoutFindings.Text($"; {freeM / 0.3048:0.0} ft are free there") : "")}."),
                "A cloth of wider mesh, pleated frames, the intake on another wall, or the door elsewhere.", LayoutFindings.Practice));
        }
    }
}
