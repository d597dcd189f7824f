using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Layout;

/// <summary>A vent from the back of a heater to a terminal, square with the walls.</summary>
/// <param name="Terminal">Where flue gas leaves, house axes, m.</param>
/// <param name="RunM">Length, m.</param>
/// <param name="Elbows">Elbows of 90°.</param>
/// <param name="FallM">Fall of its level part, m.</param>
internal sealed record FluePath(Point3 Terminal, double RunM, int Elbows, double FallM)
{
    private const double OutsideM = 0.3048;
    private const double TurnM = 0.3;

    public double HeightM => Terminal.ZM;

    public double EquivalentM => RunM + Elbows * FlueRules.ElbowM;

    /// <summary>
    /// The way to a point of a wall; without a height, as level as the slope lets it. A height steeper by less than a step is the same way, no bend. Heaters blow along the house away from the nearer end, so the collar
    /// looks at that end: straight out is the end wall, one turn the side walls.
    /// </summary>
    public static FluePath To(WallPlan wall, PlacedItem heater, BuildingForm house, double alongM, double? heightM, bool condensing, double stepM = 0)
    {
        bool towardsEnd1 = heater.Corner.XM + heater.Size.XM / 2 < house.LengthM / 2;
        double collarX = towardsEnd1 ? heater.Corner.XM : heater.Corner.XM + heater.Size.XM;
        double collarY = heater.Corner.YM + heater.Size.YM / 2;
        double collarZ = heater.Corner.ZM + heater.Size.ZM / 2;
        bool side = wall.Name is FaceName.Left or FaceName.Right;
        (double x, double y) = wall.Name switch
        {
            FaceName.Left => (alongM, -OutsideM),
            FaceName.Right => (alongM, house.WidthM + OutsideM),
            FaceName.End1 => (-OutsideM, alongM),
            _ => (house.LengthM + OutsideM, alongM),
        };
        double backM = towardsEnd1 ? collarX - x : x - collarX;
        double asideM = Math.Abs(y - collarY);
        int elbows = side
            ? (backM >= TurnM ? 1 : 3)
            : backM < 0 ? 4 : asideM < 0.06 ? 0 : 2;
        double levelM = (backM >= TurnM ? backM : backM < 0 || side ? Math.Abs(backM) + 2 * TurnM : backM) + asideM;
        double fallM = levelM * FlueRules.SlopeRatio;
        double straightZ = collarZ + (condensing ? fallM : -fallM);
        double offM = heightM is { } h ? Math.Abs(h - straightZ) : 0;
        bool steeper = condensing ? heightM >= straightZ : heightM <= straightZ;
        if (steeper && offM < stepM)
        {
            (fallM, offM) = (fallM + offM, 0);
        }

        bool bent = offM > 1e-6;
        return new FluePath(new Point3(x, y, heightM ?? straightZ), levelM + offM, elbows + (bent ? (side ? 1 : 2) : 0), fallM);
    }
}
