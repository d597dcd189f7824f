using Glazewright.Design.Form;
using Glazewright.Design.Framing;
using Glazewright.Design.Takeoff;
using Glazewright.Papers.Solids;

namespace Glazewright.Papers.Ifc;

/// <summary>
/// Joints and rod bracing of a house. A joint is a discrete accessory that realises the connection of two elements: placed, named as it is bought, without a body, for
/// none is designed. A braced bay is an assembly of two braces, each an axis without a body, connected to the frames at its ends.
/// </summary>
internal sealed class IfcJoints(StepFile file, string axisContext, Func<string, string> id)
{
    /// <summary>Writes them; gives what the storey contains.</summary>
    /// <param name="solids">The house.</param>
    /// <param name="storeyPlace">Placement of its storey.</param>
    /// <param name="elements">Elements by path id.</param>
    public IEnumerable<string> Add(BuildingSolids solids, string storeyPlace, IReadOnlyDictionary<string, string> elements)
    {
        List<string> made = [];
        BuildingForm form = solids.Form;
        SolidPart[] piers = [.. solids.Parts.Where(p => p.Kind is SolidKind.Pier)];
        foreach (FrameJoint joint in solids.Joints)
        {
            Point3 at = Own(form, joint.At);
            string accessory = file.Add(
                $"IFCDISCRETEACCESSORY({id(joint.Id)},$,{StepText.Label(joint.Id)},{StepText.Label(JointLines.Of(joint.Kind).Label)},{StepText.Label(Word(joint.Kind))},{file.Add($"IFCLOCALPLACEMENT({storeyPlace},{file.Axes(at, new(0, 0, 1), new(1, 0, 0))})")},$,$,.{Predefined(joint.Kind)}.)");
            made.Add(accessory);
            string other = joint.To.Length > 0 ? joint.To : Ground(form, piers, at);
            if (elements.TryGetValue(joint.Member, out string? one) && elements.TryGetValue(other, out string? two))
            {
                file.Add($"IFCRELCONNECTSWITHREALIZINGELEMENTS({id(joint.Id + "#connects")},$,$,$,$,{one},{two},({accessory}),{StepText.Label(Word(joint.Kind))})");
            }
        }

        foreach (BracedBay bay in solids.Braced)
        {
            string assembly = file.Add($"IFCELEMENTASSEMBLY({id(bay.Id)},$,{StepText.Label(bay.Id)},{StepText.Label(JointLines.Bracing)},$,{storeyPlace},$,$,.SITE.,.BRACED_FRAME.)");
            made.Add(assembly);
            string[] rods = [.. bay.Rods.Select((rod, i) => Rod(form, FormattableString.Invariant($"{bay.Id}/rod-{i + 1}"), rod, storeyPlace, elements))];
            file.Add($"IFCRELAGGREGATES({id(bay.Id + "#rods")},$,$,$,{assembly},{StepFile.List(rods)})");
        }

        return made;
    }

    private string Rod(BuildingForm form, string path, RodLine rod, string storeyPlace, IReadOnlyDictionary<string, string> elements)
    {
        string line = file.Add($"IFCPOLYLINE(({file.Point(Own(form, rod.From))},{file.Point(Own(form, rod.To))}))");
        string shape = file.Add($"IFCPRODUCTDEFINITIONSHAPE($,$,({file.Add($"IFCSHAPEREPRESENTATION({axisContext},'Axis','Curve3D',({line}))")}))");
        string brace = file.Add($"IFCMEMBER({id(path)},$,{StepText.Label(path)},'Rod, diameter and ends not designed',$,{storeyPlace},{shape},$,.BRACE.)");
        foreach ((string end, string member) in new[] { ("from", rod.FromMember), ("to", rod.ToMember) })
        {
            if (elements.TryGetValue(member, out string? frame))
            {
                file.Add($"IFCRELCONNECTSELEMENTS({id($"{path}#{end}")},$,$,$,$,{brace},{frame})");
            }
        }

        return brace;
    }

    // The pier nearest the foot; without piers the floor.
    private static string Ground(BuildingForm form, SolidPart[] piers, Point3 at) => piers
        .MinBy(p => (p.Frame.Origin.XM - at.XM) * (p.Frame.Origin.XM - at.XM) + (p.Frame.Origin.YM - at.YM) * (p.Frame.Origin.YM - at.YM))?.Id ?? $"{form.Id}/floor/solid";

    private static Point3 Own(BuildingForm b, Point3 p) => new(Round((p - b.Origin).Dot(b.AlongX)), Round((p - b.Origin).Dot(b.AlongY)), Round(p.ZM - b.Origin.ZM));

    private static double Round(double m) => Math.Round(m, 9) + 0.0;

    private static string Word(JointKind kind) => kind switch
    {
        JointKind.Ridge => "Ridge joint",
        JointKind.Eave => "Eave joint",
        JointKind.Tie => "Tie joint",
        JointKind.Clip => "Clip",
        JointKind.Base => "Base plate",
        _ => "Joint of an opening",
    };

    private static string Predefined(JointKind kind) => kind switch { JointKind.Clip => "BRACKET", JointKind.Base => "ANCHORPLATE", _ => "USERDEFINED" };
}
