using Glazewright.Design.Form;
using Glazewright.Papers.Solids;

namespace Glazewright.Papers.Ifc;

/// <summary>Bodies: extruded profiles as they are, sloped ends cut off by half spaces.</summary>
internal sealed class IfcShapes(StepFile file, string bodyContext)
{
    private static readonly Point3 Up = new(0, 0, 1);
    private static readonly Point3 X = new(1, 0, 0);

    /// <summary>A representation of prisms in the part's axes.</summary>
    public string Body(IReadOnlyList<Prism> prisms, SolidLook? look)
    {
        bool clipped = prisms.Any(p => !p.Start.IsSquare || !p.End.IsSquare);
        string[] items = [.. prisms.Select(Item)];
        if (look is not null)
        {
            string style = Style(look);
            foreach (string item in items)
            {
                file.Add($"IFCSTYLEDITEM({item},({style}),$)");
            }
        }

        return file.Add($"IFCSHAPEREPRESENTATION({bodyContext},'Body','{(clipped ? "Clipping" : "SweptSolid")}',{StepFile.List(items)})");
    }

    /// <summary>A profile, once a file.</summary>
    public string ProfileOf(Profile profile, string name)
    {
        string label = StepText.Label(name);
        switch (profile)
        {
            case Profile.Tube t:
                return file.Shared($"IFCRECTANGLEHOLLOWPROFILEDEF(.AREA.,{label},{Middle()},{StepText.Real(t.WidthM)},{StepText.Real(t.DepthM)},{StepText.Real(t.WallM)},{(t.CornerM > t.WallM ? $"{StepText.Real(t.CornerM - t.WallM)},{StepText.Real(t.CornerM)}" : "$,$")})");
            case Profile.Disc d:
                return file.Shared($"IFCCIRCLEPROFILEDEF(.AREA.,{label},{Middle()},{StepText.Real(d.RadiusM)})");
            case Profile.Area { Holes.Count: 0 } a:
                return file.Shared($"IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,{label},{Line(a.Outline)})");
            case Profile.Area a:
                return file.Shared($"IFCARBITRARYPROFILEDEFWITHVOIDS(.AREA.,{label},{Line(a.Outline)},{StepFile.List(a.Holes.Select(Line))})");
            default:
                throw new InvalidOperationException("Profiles are a closed set.");
        }
    }

    // Optional since IFC4, and still asked for by readers made before.
    private string Middle() => file.Shared($"IFCAXIS2PLACEMENT2D({file.Shared("IFCCARTESIANPOINT((0.0,0.0))")},$)");

    private string Item(Prism prism)
    {
        (double low, double high) = Reach(prism);
        string solid = file.Add($"IFCEXTRUDEDAREASOLID({ProfileOf(Drawn(prism), "")},{file.Axes(new(0, 0, low), Up, X)},{file.Direction(Up)},{StepText.Real(high - low)})");
        solid = prism.Start.IsSquare ? solid : Clip(solid, prism.Start, upper: false);
        return prism.End.IsSquare ? solid : Clip(solid, prism.End, upper: true);
    }

    // The round corners of a tube that is sawn at an angle are left to its material profile and its quantities: a widespread reader leaves open edges where it cuts them.
    private static Profile Drawn(Prism prism) => prism.Profile is Profile.Tube tube && !(prism.Start.IsSquare && prism.End.IsSquare) ? tube with { CornerM = 0 } : prism.Profile;

    // The plane's normal points away from the tube; what lies on that side is taken away.
    private string Clip(string solid, EndCut cut, bool upper)
    {
        double run = Math.Sqrt(1 + cut.RiseXFactor * cut.RiseXFactor + cut.RiseYFactor * cut.RiseYFactor);
        double away = upper ? 1 / run : -1 / run;
        Point3 normal = new(-cut.RiseXFactor * away, -cut.RiseYFactor * away, away);
        double along = Math.Sqrt(1 + cut.RiseXFactor * cut.RiseXFactor);
        Point3 x = new(1 / along, 0, cut.RiseXFactor / along);
        string plane = file.Shared($"IFCPLANE({file.Axes(new(0, 0, cut.AtM), normal, x)})");
        string half = file.Shared($"IFCHALFSPACESOLID({plane},.F.)");
        return file.Add($"IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,{solid},{half})");
    }

    private static (double Low, double High) Reach(Prism prism)
    {
        if (prism.Profile is not Profile.Tube t)
        {
            return (prism.Start.AtM, prism.End.AtM);
        }

        double Rise(EndCut cut) => Math.Abs(cut.RiseXFactor) * t.WidthM / 2 + Math.Abs(cut.RiseYFactor) * t.DepthM / 2;
        return (prism.Start.AtM - Rise(prism.Start), prism.End.AtM + Rise(prism.End));
    }

    private string Line(IReadOnlyList<Point2> points)
    {
        string[] names = [.. points.Select(p => file.Shared($"IFCCARTESIANPOINT(({StepText.Real(p.UM)},{StepText.Real(p.VM)}))"))];
        return file.Shared($"IFCPOLYLINE({StepFile.List([.. names, names[0]])})");
    }

    private string Style(SolidLook look)
    {
        string colour = file.Shared($"IFCCOLOURRGB($,{Part(look.Rgb >> 16)},{Part(look.Rgb >> 8)},{Part(look.Rgb)})");
        string shade = file.Shared($"IFCSURFACESTYLERENDERING({colour},{StepText.Real(1 - look.OpaqueFraction)},$,$,$,$,$,$,.NOTDEFINED.)");
        return file.Shared($"IFCSURFACESTYLE({StepText.Label(look.Name)},.BOTH.,({shade}))");
    }

    private static string Part(int value) => StepText.Real(Math.Round((value & 0xFF) / 255.0, 4));
}
