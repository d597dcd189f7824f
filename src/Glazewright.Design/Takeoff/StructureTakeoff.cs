using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Framing;

namespace Glazewright.Design.Takeoff;

/// <summary>Ground, concrete, frame, doors and benches.</summary>
internal static class StructureTakeoff
{

    public static void Ground(LineBook book, FormResult form)
    {
        (double fromX, double toX, double fromY, double toY) = Extent(form);
        double m = TakeoffRules.GroundMarginM;
        double padM2 = (toX - fromX + (2 * m)) * (toY - fromY + (2 * m));
        double floorM2 = form.Buildings.Sum(b => b.FloorAreaM2);
        string extent = $"range {book.Length(toX - fromX)} × {book.Length(toY - fromY)} and {book.Length(m)} around";
        book.Add(ScopeSystem.Sitework, "site/strip-grade", "Strip, grade and proof-roll", padM2, "m²", extent);
        book.Add(ScopeSystem.Sitework, "site/gravel", "Gravel base", floorM2 * TakeoffRules.GravelM, "m³", $"all floors × {book.Size(TakeoffRules.GravelM)}");
        book.Add(ScopeSystem.Sitework, "site/drain", "Swale and drain around the range", 2 * (toX - fromX + toY - fromY + (4 * m)), "m", extent);
        book.Add(ScopeSystem.Sitework, "site/erosion", "Silt fence, seeding", 2 * (toX - fromX + toY - fromY + (4 * m)), "m", extent);
    }

    /// <summary>Piers under columns, end posts and jambs; slabs of link buildings and aisles. Foundation not checked.</summary>
    public static void Concrete(LineBook book, TakeoffInput input, FormResult form, BodyResult body)
    {
        foreach (TakeoffHouse house in input.Houses)
        {
            BuildingForm building = form.Building(house.Id);
            EqList<Pier> piers = PierPlan.Of(house.Id, body.Members, house.PierDiameterM);
            double eachM3 = PierM3(house);
            string count = FormattableString.Invariant($"{house.Id}: {piers.Count(p => p.Mark == "F1")} columns, {piers.Count(p => p.Mark == "F2")} end posts, {piers.Count(p => p.Mark == "F3")} under jambs");
            book.Add(ScopeSystem.Concrete, "concrete/pier", "Pier: drill, form, set anchor (foundation not checked)", piers.Count, "each", count);
            book.Add(ScopeSystem.Concrete, "concrete/pier-concrete", "Pier concrete (foundation not checked)",
                piers.Count * eachM3 * (1 + TakeoffRules.ConcreteWasteFraction), "m³", count);
            double pavedM2 = Math.Max(0, building.FloorAreaM2 - house.Benches.Sum(b => b.WidthM * b.LengthM));
            book.Add(ScopeSystem.Concrete, "concrete/slab", $"Slab {book.Size(TakeoffRules.SlabM)} with mesh, aisles", pavedM2, "m²", $"{house.Id}: floor without benches");
            if (house.EdgeInsulated)
            {
                book.Add(ScopeSystem.Concrete, "concrete/edge-insulation", "Edge insulation", building.PerimeterM * TakeoffRules.EdgeInsulationM, "m²",
                    $"{house.Id}: perimeter × {book.Size(TakeoffRules.EdgeInsulationM)}");
            }
        }

        foreach (LinkBuilding link in input.Links)
        {
            BuildingForm building = form.Building(link.Id);
            book.Add(ScopeSystem.Concrete, "concrete/slab", $"Slab {book.Size(TakeoffRules.SlabM)} with mesh, link buildings", building.FloorAreaM2, "m²", $"{link.Id}: floor");
            book.Add(ScopeSystem.Concrete, "concrete/slab-edge", "Thickened slab edge (foundation not checked)",
                building.PerimeterM * TakeoffRules.SlabEdgeM * TakeoffRules.SlabEdgeM, "m³", $"{link.Id}: perimeter");
        }
    }

    public static void Frame(LineBook book, TakeoffInput input, FormResult form, BodyResult body, EqList<ShopMark> marks)
    {
        foreach (var section in marks.GroupBy(mark => mark.Section))
        {
            book.Add(ScopeSystem.Frame, LineItems.Tube, section.Key, section.Sum(mark => mark.Count * mark.MassEachKg), "kg",
                $"{section.Sum(mark => mark.Count)} pieces, {book.Length(section.Sum(mark => mark.Count * mark.LengthM))}, net of cutting");
        }

        foreach (BuildingForm house in form.Buildings.Where(b => b.IsHouse))
        {
            int frames = house.FrameLinesXM.Count;
            int ties = house.Members.Count(m => m.Role == MemberRole.CollarTie);
            EqList<FrameJoint> joints = FrameJoints.Of(house, body.Members);
            int Count(params JointKind[] kinds) => joints.Count(j => kinds.Contains(j.Kind));
            void Joint(JointKind kind, int count, string from) => book.Add(ScopeSystem.Frame, JointLines.Of(kind).Item, JointLines.Of(kind).Label, count, "each", $"{house.Id}: {from}");
            Joint(JointKind.Ridge, Count(JointKind.Ridge, JointKind.Eave, JointKind.Tie), $"{frames} frames, {ties} ties");
            Joint(JointKind.Clip, Count(JointKind.Clip), $"lines along at each of {frames} frames");
            Joint(JointKind.Opening, Count(JointKind.Opening), "ends that do not stand on a pier");
            book.Add(ScopeSystem.Frame, "frame/erect", "Stand frames, plumb, brace", frames, "each", $"{house.Id}: {frames} frames");
            EqList<BracedBay> braced = FrameJoints.Braced(house);
            book.Add(ScopeSystem.Frame, LineItems.Bracing, JointLines.Bracing, braced.Count, "each",
                $"{house.Id}: {braced.Count(b => b.Face is FaceName.Left or FaceName.Right)} bays of walls, {braced.Count(b => b.Face is FaceName.RoofLeft or FaceName.RoofRight)} of roof without openings");
        }

        book.Add(ScopeSystem.Frame, LineItems.Base, JointLines.Of(JointKind.Base).Label, body.Members.Count(PierPlan.HasFoot), "each", "one a column, post or jamb on a pier");
        int pieces = marks.Sum(mark => mark.Count);
        book.Add(ScopeSystem.Frame, "frame/cut", "Saw, drill, mark, repair zinc", pieces, "each", "one a piece");
        foreach (LinkBuilding link in input.Links)
        {
            book.Add(ScopeSystem.Frame, "frame/link", "Frame of link buildings (not modelled: by floor area)", form.Building(link.Id).FloorAreaM2, "m²", link.Id);
        }
    }

    public static void Doors(LineBook book, TakeoffInput input, FormResult form)
    {
        foreach (OpeningForm opening in form.Buildings.SelectMany(b => b.Faces).SelectMany(f => f.Openings))
        {
            Opening o = opening.Opening;
            (string Item, string Label, double Quantity, string Per)? door = o.Kind switch
            {
                OpeningKind.Door => ("doors/single", "Single door, frame, threshold, hardware", 1, "each"),
                OpeningKind.DoubleDoor => ("doors/double", "Double door, frame, threshold, hardware", 1, "each"),
                OpeningKind.RollUpDoor => ("doors/roll-up", "Roll-up door with guides, coil and hand chain", opening.AreaM2, "m²"),
                OpeningKind.SlidingDoor => ("doors/sliding", "Sliding door with track, hangers and floor guide", opening.AreaM2, "m²"),
                OpeningKind.Window => ("doors/window", "Window", 1, "each"),
                _ => null,
            };
            if (door is { } d)
            {
                book.Add(ScopeSystem.Doors, d.Item, d.Label, d.Quantity, d.Per, opening.Id);
            }
        }

        // Link buildings carry no typed openings: a corridor needs a door at each end, a head house one way out and one to goods.
        foreach (LinkBuilding link in input.Links)
        {
            bool corridor = link.Kind == LinkKind.Corridor;
            book.Add(ScopeSystem.Doors, "doors/single", "Single door, frame, threshold, hardware", corridor ? 0 : 1 + link.Rooms.Count, "each", $"{link.Id}: one out, one a room");
            book.Add(ScopeSystem.Doors, "doors/double", "Double door, frame, threshold, hardware", corridor ? 2 : 1, "each",
                corridor ? $"{link.Id}: one at each end" : $"{link.Id}: goods");
        }
    }

    public static void Benches(LineBook book, TakeoffInput input)
    {
        foreach (TakeoffHouse house in input.Houses)
        {
            book.Add(ScopeSystem.Benches, "benches/top", "Bench, rolling top and legs", house.Benches.Sum(b => b.WidthM * b.LengthM), "m²",
                $"{house.Id}: {house.Benches.Count} runs");
        }
    }

    /// <summary>Volume of one pier: π/4 · d² · depth.</summary>
    public static double PierM3(TakeoffHouse house) => Math.PI / 4 * house.PierDiameterM * house.PierDiameterM * house.PierDepthM;

    private static (double FromX, double ToX, double FromY, double ToY) Extent(FormResult form)
    {
        List<Point3> corners = [];
        foreach (BuildingForm b in form.Buildings)
        {
            corners.Add(b.Origin);
            corners.Add(b.Origin + b.LengthM * b.AlongX + b.WidthM * b.AlongY);
        }

        return corners.Count == 0
            ? (0, 0, 0, 0)
            : (corners.Min(p => p.XM), corners.Max(p => p.XM), corners.Min(p => p.YM), corners.Max(p => p.YM));
    }
}
