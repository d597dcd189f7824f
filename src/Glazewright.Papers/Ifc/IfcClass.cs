using Glazewright.Design.Brief;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Papers.Solids;

namespace Glazewright.Papers.Ifc;

/// <summary>Which class of the standard a part is.</summary>
/// <param name="Name">Class in capitals (<c>IFCCOLUMN</c>).</param>
/// <param name="Predefined">Its predefined type.</param>
/// <param name="ObjectType">Said in words where the type is user-defined; else empty.</param>
/// <param name="System">Distribution system it belongs to; empty for none.</param>
internal sealed record IfcClass(string Name, string Predefined, string ObjectType = "", string System = "")
{
    public static IfcClass Of(SolidKind kind) => kind switch
    {
        SolidKind.Member m => m.Solid.Line.Role switch
        {
            MemberRole.Column or MemberRole.EndPost => new("IFCCOLUMN", "COLUMN"),
            MemberRole.Ridge or MemberRole.Eave => new("IFCBEAM", "BEAM"),
            MemberRole.Header => new("IFCBEAM", "LINTEL"),
            MemberRole.Jamb => new("IFCMEMBER", "STUD"),
            MemberRole.Sill => new("IFCMEMBER", "USERDEFINED", "Sill"),
            MemberRole.Rafter => new("IFCMEMBER", "RAFTER"),
            MemberRole.CollarTie => new("IFCMEMBER", "COLLAR"),
            MemberRole.Purlin => new("IFCMEMBER", "PURLIN"),
            _ => new("IFCMEMBER", "USERDEFINED", "Girt"),
        },
        SolidKind.Cover c => new("IFCPLATE", c.Stuff.Clear ? "CURTAIN_PANEL" : "SHEET"),
        SolidKind.Leaf l => l.Opening.Kind is OpeningKind.Window or OpeningKind.Vent ? new("IFCWINDOW", "WINDOW") : new("IFCDOOR", "DOOR"),
        SolidKind.Floor { Concrete: true } => new("IFCSLAB", "BASESLAB"),
        SolidKind.Floor => new("IFCCOVERING", "FLOORING"),
        SolidKind.Pier => new("IFCFOOTING", "CAISSON_FOUNDATION"),
        SolidKind.Equipment e => Of(e.Item.Kind),
        _ => throw new InvalidOperationException("Kinds are a closed set."),
    };

    private static IfcClass Of(PlacedKind kind) => kind switch
    {
        PlacedKind.Fan => new("IFCFAN", "PROPELLORAXIAL", System: "VENTILATION"),
        PlacedKind.UpperFan => new("IFCFAN", "PROPELLORAXIAL", System: "VENTILATION"),
        PlacedKind.UpperLouver => new("IFCDAMPER", "CONTROLDAMPER", System: "VENTILATION"),
        PlacedKind.CirculationFan => new("IFCFAN", "USERDEFINED", "Circulation fan", "VENTILATION"),
        PlacedKind.OscillatingFan => new("IFCFAN", "USERDEFINED", "Oscillating fan", "VENTILATION"),
        PlacedKind.PressureFan => new("IFCFAN", "USERDEFINED", "Filter fan", "VENTILATION"),
        PlacedKind.Louver => new("IFCDAMPER", "CONTROLDAMPER", System: "VENTILATION"),
        PlacedKind.WetWall => new("IFCEVAPORATIVECOOLER", "DIRECTEVAPORATIVERIGIDMEDIAAIRCOOLER", System: "VENTILATION"),
        PlacedKind.IntakeBox => new("IFCBUILDINGELEMENTPROXY", "USERDEFINED", "Intake box"),
        PlacedKind.ClothBox => new("IFCBUILDINGELEMENTPROXY", "USERDEFINED", "Insect cloth box"),
        PlacedKind.Heater => new("IFCSPACEHEATER", "USERDEFINED", "Heater", "HEATING"),
        PlacedKind.Vent => new("IFCDUCTSEGMENT", "RIGIDSEGMENT", System: "EXHAUST"),
        PlacedKind.Curtain => new("IFCSHADINGDEVICE", "USERDEFINED", "Curtain"),
        PlacedKind.FogLine => new("IFCPIPESEGMENT", "RIGIDSEGMENT", System: "DOMESTICCOLDWATER"),
        PlacedKind.Bench => new("IFCFURNITURE", "TABLE"),
        PlacedKind.Sensor => new("IFCSENSOR", "TEMPERATURESENSOR", System: "CONTROL"),
        PlacedKind.LampRow => new("IFCLIGHTFIXTURE", "DIRECTIONSOURCE", System: "LIGHTING"),
        _ => new("IFCBUILDINGELEMENTPROXY", "NOTDEFINED"),
    };
}
