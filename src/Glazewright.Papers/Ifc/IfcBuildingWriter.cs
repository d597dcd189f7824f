using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Papers.Solids;

namespace Glazewright.Papers.Ifc;

/// <summary>One building with its storey, space, elements, openings and systems. Parts alike share one body by a mapped item; members alike share one type too.</summary>
internal sealed class IfcBuildingWriter(StepFile file, string bodyContext, string axisContext, string sitePlace, Func<string, string> id)
{
    // An opening body reaches through the covering on both sides.
    private const double ThroughM = 0.05;

    private static readonly Point3 Up = new(0, 0, 1);
    private static readonly Point3 X = new(1, 0, 0);
    private readonly IfcShapes _shapes = new(file, bodyContext);
    private readonly IfcSheets _sheets = new(file, id);
    private readonly IfcJoints _joints = new(file, axisContext, id);
    private readonly Dictionary<(IfcClass Class, string Mark, string Section, SolidLook Look, SolidShape Shape), Map> _maps = [];

    public string Add(BuildingSolids solids)
    {
        BuildingForm form = solids.Form;
        string place = file.Add($"IFCLOCALPLACEMENT({sitePlace},{file.Axes(form.Origin, Up, form.AlongX)})");
        string name = StepText.Label(form.Name.Length > 0 ? form.Name : form.Id);
        string building = file.Add($"IFCBUILDING({id(form.Id)},$,{name},$,{StepText.Label(form.IsHouse ? "Greenhouse" : "Link building")},{place},$,{StepText.Label(form.Id)},.ELEMENT.,$,$,$)");
        string storeyPlace = file.Add($"IFCLOCALPLACEMENT({place},{file.Axes(new(0, 0, 0), Up, X)})");
        string storey = file.Add($"IFCBUILDINGSTOREY({id(form.Id + "#storey")},$,'Ground floor',$,$,{storeyPlace},$,$,.ELEMENT.,0.0)");
        file.Add($"IFCRELAGGREGATES({id(form.Id + "#storeys")},$,$,$,{building},({storey}))");
        Space(form, storey, storeyPlace, name);

        List<string> elements = [];
        Dictionary<string, string> byPath = [];
        Dictionary<string, (string Name, double AreaM2)> openings = [];
        Dictionary<Map, List<string>> alike = [];
        SortedDictionary<string, List<string>> systems = new(StringComparer.Ordinal);
        foreach (SolidPart part in solids.Parts)
        {
            IfcClass kind = IfcClass.Of(part.Kind);
            string at = file.Add($"IFCLOCALPLACEMENT({storeyPlace},{file.Axes(part.Frame.Origin, part.Frame.AlongZ, part.Frame.AlongX)})");
            Map? map = part.Kind is SolidKind.Cover ? null : MapOf(part, kind);
            string shape = map is null ? Plate(part) : file.Add($"IFCSHAPEREPRESENTATION({bodyContext},'Body','MappedRepresentation',({map.Item}))");
            string element = file.Add(Element(id(part.Id), part, kind, at, file.Add($"IFCPRODUCTDEFINITIONSHAPE($,$,({shape}))")));
            elements.Add(element);
            byPath[part.Id] = element;
            if (map is not null)
            {
                alike.TryAdd(map, []);
                alike[map].Add(element);
                map.Elements.Add(element);
            }

            if (part.Kind is SolidKind.Cover cover)
            {
                _sheets.Cover(element, part, cover, file.Shared($"IFCMATERIAL({StepText.Label(cover.Stuff.Material)},{StepText.Label(cover.Stuff.Name)},$)"));
                Openings(part, cover.Stuff.ThicknessM, element, at, openings);
            }

            if (kind.System.Length > 0)
            {
                systems.TryAdd(kind.System, []);
                systems[kind.System].Add(element);
            }

            // Something may fill one opening only: of one over two zones, the larger piece.
            if (part.Fills.Length > 0 && openings.TryGetValue(part.Fills, out (string Name, double) filled))
            {
                file.Add($"IFCRELFILLSELEMENT({id(part.Id + "#fills")},$,$,$,{filled.Name},{element})");
            }
        }

        elements.AddRange(_joints.Add(solids, storeyPlace, byPath));
        foreach ((Map map, List<string> group) in alike)
        {
            Describe($"{form.Id}#{map.Key}", map, group);
        }

        foreach ((string system, List<string> group) in systems)
        {
            string path = $"{form.Id}#system-{system}";
            string made = file.Add($"IFCDISTRIBUTIONSYSTEM({id(path)},$,{StepText.Label($"{form.Id} {system.ToLowerInvariant()}")},$,$,$,.{system}.)");
            file.Add($"IFCRELASSIGNSTOGROUP({id(path + "-of")},$,$,$,{StepFile.List(group)},$,{made})");
            file.Add($"IFCRELSERVICESBUILDINGS({id(path + "-serves")},$,$,$,{made},({building}))");
        }

        file.Add($"IFCRELCONTAINEDINSPATIALSTRUCTURE({id(form.Id + "#elements")},$,$,$,{StepFile.List(elements)},{storey})");
        return building;
    }

    /// <summary>Types of members and piers, each with all that are of it: a type may be told once.</summary>
    public void Types()
    {
        foreach (Map map in _maps.Values.Where(m => m.First.Kind is SolidKind.Member or SolidKind.Pier))
        {
            string name = map.First switch { { Mark.Length: > 0 } marked => marked.Mark, { Kind: SolidKind.Member m } => m.Solid.Section, _ => "Pier" };
            string type = file.Add(
                $"{map.Class.Name}TYPE({id(map.Key + "#type")},$,{StepText.Label(name)},$,$,$,({map.Source}),{StepText.Label(map.First.Mark)},{(map.Class.ObjectType.Length > 0 ? StepText.Label(map.Class.ObjectType) : "$")},.{map.Class.Predefined}.)");
            file.Add($"IFCRELDEFINESBYTYPE({id(map.Key + "#typed")},$,$,$,{StepFile.List(map.Elements)},{type})");
        }
    }

    // The air inside, as the end wall's outline drawn along the house.
    private void Space(BuildingForm form, string storey, string storeyPlace, string name)
    {
        Profile.Area section = new(Profile.Rounded(form.Face(FaceName.End1).Outline), []);
        string at = file.Add($"IFCLOCALPLACEMENT({storeyPlace},{file.Axes(new(0, 0, 0), X, new(0, 1, 0))})");
        string shape = _shapes.Body([Prism.Square(section, 0, form.LengthM)], null);
        string space = file.Add($"IFCSPACE({id(form.Id + "#space")},$,{StepText.Label(form.Id)},$,$,{at},{file.Add($"IFCPRODUCTDEFINITIONSHAPE($,$,({shape}))")},{name},.ELEMENT.,.INTERNAL.,$)");
        file.Add($"IFCRELAGGREGATES({id(form.Id + "#spaces")},$,$,$,{storey},({space}))");
        _sheets.Space(form.Id + "#space", space, form);
    }

    private static string Element(string globalId, SolidPart part, IfcClass kind, string place, string shape)
    {
        string type = kind.ObjectType.Length > 0 ? StepText.Label(kind.ObjectType) : "$";
        string head = $"{kind.Name}({globalId},$,{StepText.Label(part.Id)},{StepText.Label(part.Label)},{type},{place},{shape},{StepText.Label(part.Mark)}";
        string tail = part.Kind is SolidKind.Leaf leaf
            ? $",{StepText.Real(leaf.Opening.HeightM)},{StepText.Real(leaf.Opening.WidthM)},.{kind.Predefined}.,{Operation(leaf.Opening.Kind)},$)"
            : $",.{kind.Predefined}.)";
        return head + tail;
    }

    private static string Operation(OpeningKind kind) => kind switch
    {
        OpeningKind.Door => ".NOTDEFINED.",
        OpeningKind.DoubleDoor => ".DOUBLE_DOOR_SINGLE_SWING.",
        OpeningKind.RollUpDoor => ".ROLLINGUP.",
        OpeningKind.SlidingDoor => ".NOTDEFINED.",
        _ => ".SINGLE_PANEL.",
    };

    // A covering is drawn whole; its openings take their pieces away.
    private string Plate(SolidPart part)
    {
        Prism whole = part.Shape.Prisms[0];
        return _shapes.Body([whole with { Profile = ((Profile.Area)whole.Profile) with { Holes = [] } }], SolidLook.Of(part.Kind));
    }

    private void Openings(SolidPart part, double thicknessM, string plate, string platePlace, Dictionary<string, (string Name, double AreaM2)> openings)
    {
        string at = part.Holes.Count == 0 ? "" : file.Add($"IFCLOCALPLACEMENT({platePlace},{file.Axes(new(0, 0, 0), Up, X)})");
        foreach (SolidHole hole in part.Holes)
        {
            Prism through = Prism.Square(new Profile.Area(hole.Outline, []), -ThroughM, thicknessM + ThroughM);
            string type = StepText.Label(hole.Opening.Length > 0 ? "Opening" : "Another building leans here");
            string name = StepText.Label(hole.Opening.Length > 0 ? hole.Opening : hole.Id);
            string opening = file.Add($"IFCOPENINGELEMENT({id(hole.Id)},$,{name},$,{type},{at},{file.Add($"IFCPRODUCTDEFINITIONSHAPE($,$,({_shapes.Body([through], null)}))")},$,.OPENING.)");
            file.Add($"IFCRELVOIDSELEMENT({id(hole.Id + "#voids")},$,$,$,{plate},{opening})");
            double areaM2 = Polygons.AreaM2(hole.Outline);
            if (hole.Opening.Length > 0 && (!openings.TryGetValue(hole.Opening, out (string, double AreaM2) other) || other.AreaM2 < areaM2))
            {
                openings[hole.Opening] = (opening, areaM2);
            }
        }
    }

    private Map MapOf(SolidPart part, IfcClass kind)
    {
        SolidLook look = SolidLook.Of(part.Kind);
        string section = part.Kind is SolidKind.Member m ? m.Solid.Section : "";
        var key = (kind, part.Mark, section, look, part.Shape);
        if (!_maps.TryGetValue(key, out Map? map))
        {
            string origin = file.Axes(new(0, 0, 0), Up, X);
            string source = file.Add($"IFCREPRESENTATIONMAP({origin},{_shapes.Body(part.Shape.Prisms, look)})");
            string same = file.Shared($"IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,{file.Point(new(0, 0, 0))},$,$)");

            // The first part that has a shape names it: an id from counting would move when anything before it changes.
            map = _maps[key] = new Map(part.Id, part, kind, source, file.Add($"IFCMAPPEDITEM({source},{same})"));
        }

        return map;
    }

    private void Describe(string key, Map map, List<string> group)
    {
        switch (map.First.Kind)
        {
            case SolidKind.Member { Solid: MemberSolid member }:
                string profile = _shapes.ProfileOf(map.First.Shape.Prisms[0].Profile, "");
                _sheets.Members(key, group, map.First, member, profile, file.Shared("IFCMATERIAL('Steel',$,'steel')"));
                break;
            case SolidKind.Pier:
                _sheets.Volume(key, "Qto_FootingBaseQuantities", group, map.First.Shape.VolumeM3);
                _sheets.Material(key, group, file.Shared("IFCMATERIAL('Concrete',$,'concrete')"));
                break;
            case SolidKind.Floor floor:
                _sheets.Material(key, group, file.Shared(floor.Concrete ? "IFCMATERIAL('Concrete',$,'concrete')" : "IFCMATERIAL('Gravel',$,$)"));
                break;
        }
    }

    private sealed class Map(string key, SolidPart first, IfcClass kind, string source, string item)
    {
        public string Key { get; } = key;

        public SolidPart First { get; } = first;

        public IfcClass Class { get; } = kind;

        public string Source { get; } = source;

        public string Item { get; } = item;

        public List<string> Elements { get; } = [];
    }
}
