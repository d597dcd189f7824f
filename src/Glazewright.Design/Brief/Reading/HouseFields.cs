using System.Globalization;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Form;
using Glazewright.Design.Quantities;
using Glazewright.Science.Optics;

namespace Glazewright.Design.Brief.Reading;

/// <summary>What a house's fields need of the rest of the job.</summary>
/// <param name="Catalogue">Catalogue.</param>
/// <param name="Utilities">Power, gas and water.</param>
/// <param name="Ground">The ground.</param>
internal sealed record HouseContext(Catalogue Catalogue, Utilities Utilities, GroundSite Ground, LeeEnd Lee)
{
    /// <summary>What places are measured in whole multiples of, m.</summary>
    public double EvenM { get; init; } = 0.0254;

    /// <summary>y behind the last house read, m.</summary>
    public double NextYM { get; set; }
}

/// <summary>Fields of a greenhouse.</summary>
internal static class HouseFields
{
    private const double GapM = 12 * 0.3048;
    private const double BayM = 8 * 0.3048;
    private const double LeastBayM = 2 * 0.3048;
    private const double MostBayM = 30 * 0.3048;
    private const int MostBays = 200;
    private static readonly string[] s_covers = [.. GenericCovers.All.Select(c => c.Id)];

    public static House Read(FieldReader f, HouseContext context)
    {
        string letter = ((char)('A' + f.Index)).ToString();
        string id = f.IdText(letter, "Short id: parts are named after it.");
        string name = f.Words("name", "House " + id, "Name as printed.", "House A", 60);
        int before = f.FaultCount;
        double widthM = f.LengthM("width", "6 ft", "120 ft", null, "Across the ridge.");
        double lengthM = f.LengthM("length", "8 ft", "1000 ft", null, "Along the ridge.");
        double xM = f.LengthM("x", "-3000 ft", "3000 ft", "0 ft", "Its corner (end 1, left) from the range's zero point, along the ridges.");
        double yM = f.LengthMOrBlank("y", "-3000 ft", "3000 ft", f.Index == 0 ? "0 ft" : "12 ft behind the house before it", "That corner across the ridges: more lies to the right.") ?? context.NextYM;
        context.NextYM = yM + widthM + GapM;
        bool sized = f.FaultCount == before;
        RoofProfile roof = f.Group("roof", "Eaves, ridge and pitches: four say the fifth.", r => RoofFields.Read(r, widthM, sized));
        bool roofed = f.FaultCount == before;
        int bays = f.IsGiven("bays")
            ? f.Whole("bays", 1, MostBays, 1, "Number of bays.")
            : f.Whole("bays", 1, MostBays, f.IsDescribing ? 12 : Math.Clamp((int)Math.Round(lengthM / BayM), 1, MostBays), "Number of bays; left out, bays of about 8 ft.");
        if (sized)
        {
            Spacing(f, lengthM, bays);
        }

        double ponyM = f.LengthM("ponyWall", "0 ft", "10 ft", "2'-6\"", "Height of the pony wall; 0 ft for none.");
        if (roofed && ponyM >= Math.Min(roof.LeftEaveM, roof.RightEaveM))
        {
            f.Add(FaultKind.DoesNotFit, "ponyWall", $"the pony wall reaches {FeetInches.Format(ponyM)}, over the lower eave at {FeetInches.Format(Math.Min(roof.LeftEaveM, roof.RightEaveM))}", "a pony wall below both eaves");
        }

        (EqList<FaceCovering> coverings, CoverChoice pony) = f.Group("covering", "What covers each face, and how it fares in use.", Coverings);
        EqList<Opening> openings = OpeningFields.Read(f, roof, widthM, lengthM, roofed);
        FrameChoice frame = f.Group("frame", "Frame choices.", r => FrameFields.Read(r, context.Ground, roof, roofed));
        EquipmentChoice equipment = f.Group("equipment", "Climate equipment: size it, none, or what is fixed.", e => EquipmentFields.Read(e, context, Math.Min(roof.LeftEaveM, roof.RightEaveM), roofed));
        double aisleM = f.LengthM("mainAisle", "1 ft", "20 ft", "4 ft", "Width of the main aisle at the end where one comes in.");
        EqList<Bench> benches = CropFields.Benches(f, widthM, lengthM, aisleM, sized);
        EqList<CropPeriod> schedule = CropFields.Schedule(f);
        double airtightnessPerHour = f.Quantity("airtightness", QuantityKind.AirChanges, "0.05 ACH", "6 ACH", "0.7 ACH", "Air changes by leakage at a wind of 4 m/s.");
        bool edge = f.Flag("edgeInsulated", true, "The slab edge is insulated.");
        ShapeWishes? wishes = f.GroupOrBlank("shapeWishes", "no wishes: the shape finder uses its defaults", "What the shape is to do, for the shape finder.", w => ShapeWishFields.Read(w, roof, roofed));
        EqList<ProgramChange> changes = ProgramFields.Read(f);
        return new House(id, name, xM, yM, widthM, lengthM, roof, bays, ponyM, coverings, pony, openings, frame, equipment, benches, aisleM, schedule, airtightnessPerHour, edge, wishes) { ProgramChanges = changes };
    }

    // A bay is what a purlin and a girt span: tube houses stand at 4 to 12 ft (common practice), and past these limits it is another kind of building.
    private static void Spacing(FieldReader f, double lengthM, int bays)
    {
        double bayM = lengthM / bays;
        if (bayM < LeastBayM - 1e-9 || bayM > MostBayM + 1e-9)
        {
            int fewest = (int)Math.Max(1, Math.Ceiling(lengthM / MostBayM - 1e-9));
            int most = (int)Math.Clamp(Math.Floor(lengthM / LeastBayM + 1e-9), 1, MostBays);
            string bay = bays == 1 ? "one bay is" : $"{Text(bays)} bays are";
            f.Add(FaultKind.OutOfRange, "bays", $"{bay} {FeetInches.Format(bayM)} ({QuantityFormat.In(QuantityKind.Length, bayM, UnitFamily.Metric)}) from frame to frame", fewest == most ? $"{Text(most)}: bays of 2 ft to 30 ft" : $"{Text(fewest)} to {Text(most)}: bays of 2 ft to 30 ft, usually about 8 ft");
        }
    }

    private static (EqList<FaceCovering> Coverings, CoverChoice Pony) Coverings(FieldReader f)
    {
        double dirt = f.Ratio("dirt", "0.7", "1", "0.93", "Light kept after dirt.");
        double ageing = f.Ratio("ageing", "0.7", "1", "0.97", "Light kept after ageing.");
        double drops = f.Ratio("condensation", "0.8", "1", "1", "Light kept behind drops on the inner face, all year; 1 for a face that sheds its film of water.");
        double reflectance = f.Ratio("insideReflectance", "0", "0.95", "0.7", "Inside reflectance of opaque coverings (white 0.7).");
        string all = f.Word("all", s_covers, "polycarbonate-16-triple", "Covering of every face that does not name its own.");
        CoverChoice Choice(string kind) =>
            GenericCovers.TryFind(kind, out GenericCover? cover) && cover.Make is CoverMake.Opaque
                ? new CoverChoice(kind, 1, 1, reflectance)
                : new CoverChoice(kind, dirt, ageing, 0, drops);
        CoverChoice Named(string key, string doc) => Choice(f.Word(key, s_covers, all, doc));
        EqList<FaceCovering> faces =
        [
            new(FaceName.Left, Named("left", "Side wall on the left, above the pony wall.")),
            new(FaceName.Right, Named("right", "Side wall on the right.")),
            new(FaceName.End1, Named("end-1", "End wall at end 1.")),
            new(FaceName.End2, Named("end-2", "End wall at end 2.")),
            new(FaceName.RoofLeft, Named("roof-left", "Slope that rises from the left eave.")),
            new(FaceName.RoofRight, Named("roof-right", "Slope that rises from the right eave.")),
        ];
        return (faces, Choice(f.Word("pony-wall", s_covers, "panel-76", "The pony wall.")));
    }

    internal static readonly string[] Covers = s_covers;

    internal static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
