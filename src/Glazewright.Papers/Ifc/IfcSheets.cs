using Glazewright.Design.Body;
using Glazewright.Design.Form;
using Glazewright.Papers.Solids;

namespace Glazewright.Papers.Ifc;

/// <summary>Properties, quantities and materials of parts: those alike share one set.</summary>
internal sealed class IfcSheets(StepFile file, Func<string, string> id)
{
    private const string Caution = "Preliminary: for review and sealing by a licensed engineer. Connections, bracing and foundations are not checked.";

    /// <summary>Sets and material of a group of members that the shop cannot tell apart.</summary>
    public void Members(string key, IReadOnlyList<string> elements, SolidPart part, MemberSolid member, string profile, string steel)
    {
        string word = member.Line.Role switch
        {
            MemberRole.Column or MemberRole.EndPost => "Column",
            MemberRole.Ridge or MemberRole.Eave or MemberRole.Header => "Beam",
            _ => "Member",
        };
        Properties(key, "Common", $"Pset_{word}Common", elements, [Value("Reference", $"IFCIDENTIFIER({StepText.Label(part.Mark.Length > 0 ? part.Mark : member.Section)})"), Value("LoadBearing", "IFCBOOLEAN(.T.)")]);
        Properties(key, "Shop", "Glazewright_Shop", elements,
        [
            Value("Mark", Label(part.Mark)), Value("Section", Label(member.Section)), Value("CutLength", $"IFCLENGTHMEASURE({StepText.Real(member.CutLengthM)})"),
            Value("SawAngleA", $"IFCPLANEANGLEMEASURE({StepText.Real(member.AngleADeg * Math.PI / 180)})"),
            Value("SawAngleB", $"IFCPLANEANGLEMEASURE({StepText.Real(member.AngleBDeg * Math.PI / 180)})"),
            Value("MassPerLength", $"IFCREAL({StepText.Real(member.MassPerM)})"), Value("Caution", $"IFCTEXT({StepText.Quote(Caution)})"),
        ]);
        Quantities(key, $"Qto_{word}BaseQuantities", elements,
        [
            Quantity("LENGTH", "Length", member.CutLengthM), Quantity("AREA", "CrossSectionArea", part.Shape.Prisms[0].Profile.AreaM2),
            Quantity("VOLUME", "NetVolume", part.Shape.VolumeM3), Quantity("WEIGHT", "GrossWeight", member.CutLengthM * member.MassPerM),
        ]);
        string material = file.Shared($"IFCMATERIALPROFILE({StepText.Label(member.Section)},$,{steel},{profile},$,$)");
        string set = file.Shared($"IFCMATERIALPROFILESET({StepText.Label(member.Section)},$,({material}),$)");

        // 5: the axis runs through the middle of the profile.
        string usage = file.Shared($"IFCMATERIALPROFILESETUSAGE({set},5,$)");
        Material(key, elements, usage);
    }

    /// <summary>Sets and material of a covering.</summary>
    public void Cover(string element, SolidPart part, SolidKind.Cover cover, string material)
    {
        Properties(part.Id, "Cover", "Glazewright_Covering", [element],
        [
            Value("Zone", Label(cover.Zone.Id)), Value("Kind", Label(cover.Zone.Cover.Kind)), Value("Clear", cover.Stuff.Clear ? "IFCBOOLEAN(.T.)" : "IFCBOOLEAN(.F.)"),
            Value("ExposedArea", $"IFCAREAMEASURE({StepText.Real(cover.Zone.NetM2)})"),
        ]);
        double netM2 = part.Shape.Prisms[0].Profile.AreaM2;
        double grossM2 = cover.Zone.GrossM2;
        Quantities(part.Id, "Qto_PlateBaseQuantities", [element],
        [
            Quantity("LENGTH", "Width", cover.Stuff.ThicknessM), Quantity("AREA", "GrossArea", grossM2), Quantity("AREA", "NetArea", netM2),
            Quantity("VOLUME", "GrossVolume", grossM2 * cover.Stuff.ThicknessM), Quantity("VOLUME", "NetVolume", part.Shape.VolumeM3),
            .. cover.Stuff.MassKgPerM2 > 0 ? [Quantity("WEIGHT", "NetWeight", netM2 * cover.Stuff.MassKgPerM2)] : Array.Empty<string>(),
        ]);
        Material(part.Id, [element], material);
    }

    /// <summary>Floor and volume of the space of a building.</summary>
    public void Space(string path, string space, BuildingForm form) => Quantities(path, "Qto_SpaceBaseQuantities", [space],
    [
        Quantity("AREA", "GrossFloorArea", form.FloorAreaM2), Quantity("VOLUME", "GrossVolume", form.VolumeM3),
    ]);

    /// <summary>Volume of parts alike.</summary>
    public void Volume(string key, string set, IReadOnlyList<string> elements, double volumeM3) => Quantities(key, set, elements, [Quantity("VOLUME", "NetVolume", volumeM3)]);

    /// <summary>Associates a material.</summary>
    public void Material(string key, IReadOnlyList<string> elements, string material) =>
        file.Add($"IFCRELASSOCIATESMATERIAL({id(key + "#material")},$,$,$,{StepFile.List(elements)},{material})");

    private static string Label(string text) => $"IFCLABEL({(text.Length == 0 ? "''" : StepText.Label(text))})";

    private string Value(string name, string value) => file.Shared($"IFCPROPERTYSINGLEVALUE('{name}',$,{value},$)");

    private string Quantity(string kind, string name, double value) => file.Shared($"IFCQUANTITY{kind}('{name}',$,$,{StepText.Real(value)},$)");

    private void Properties(string key, string part, string name, IReadOnlyList<string> elements, IReadOnlyList<string> values)
    {
        string set = file.Add($"IFCPROPERTYSET({id($"{key}#{part}")},$,'{name}',$,{StepFile.List(values)})");
        Define(key, part, elements, set);
    }

    private void Quantities(string key, string name, IReadOnlyList<string> elements, IReadOnlyList<string> values)
    {
        string set = file.Add($"IFCELEMENTQUANTITY({id(key + "#quantities")},$,'{name}',$,$,{StepFile.List(values)})");
        Define(key, "quantities", elements, set);
    }

    private void Define(string key, string part, IReadOnlyList<string> elements, string set) =>
        file.Add($"IFCRELDEFINESBYPROPERTIES({id($"{key}#{part}-of")},$,$,$,{StepFile.List(elements)},{set})");
}
