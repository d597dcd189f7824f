using Glazewright.Design.Contracts;
using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Dxf;

/// <summary>
/// Writes a sheet's views as a drawing exchange file of the year 2000 (AC1015): true size in inches or millimetres, layers by what a line is, line types and weights, texts, hatched
/// areas, repeated parts as blocks.
/// </summary>
/// <remarks>
/// Dimensions and notes come as lines and texts. What a view's window cuts off on paper is drawn whole where a part of it is in view. Border, title block and tables stay on the paper set.
/// </remarks>
public static class DxfWriter
{
    private const double InchesPerM = 1 / 0.0254;
    private const double MmPerM = 1000;

    /// <summary>The file's bytes: ASCII, the same for the same sheet.</summary>
    /// <param name="sheet">A sheet with at least one view.</param>
    /// <param name="units">Inches for US jobs, millimetres for metric ones.</param>
    /// <exception cref="ArgumentException">The sheet has no view.</exception>
    public static byte[] Bytes(Sheet sheet, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        if (sheet.Views.Count == 0)
        {
            throw new ArgumentException("Only what stands in a view has a true size.", nameof(sheet));
        }

        DxfScene scene = DxfScene.Of(sheet, units == UnitSystem.Us ? InchesPerM : MmPerM);
        (Mark Mark, double UnitsPerMm)[] all = [.. scene.Marks, .. scene.Blocks.SelectMany(b => b.Block.Marks.Select(m => (m, b.UnitsPerMm)))];
        (string, Role)[] layers =
        [
            .. all.GroupBy(m => m.Mark.Layer, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal).Select(g => (g.Key, g.First().Mark.Role)),
        ];

        // The body first: only then is the highest handle known.
        DxfPairs body = new();
        IReadOnlyDictionary<string, int> records = DxfTables.Write(body, layers, [.. scene.Blocks.Select(b => b.Block.Name)]);
        Blocks(body, scene, records);
        body.Add(0, "SECTION").Add(2, "ENTITIES");
        foreach ((Mark mark, double unitsPerMm) in scene.Marks)
        {
            DxfEntities.Add(body, mark, unitsPerMm, records["*Model_Space"]);
        }

        foreach (DxfPlaced placed in scene.Placed)
        {
            body.Add(0, "INSERT").Add(5, DxfPairs.Hex(body.Handle())).Add(330, DxfPairs.Hex(records["*Model_Space"])).Add(100, "AcDbEntity").Words(8, placed.Layer)
                .Add(100, "AcDbBlockReference").Words(2, placed.Block).Point(10, placed.X, placed.Y);
        }

        body.Add(0, "ENDSEC");
        int root = body.Handle();
        int groups = body.Handle();
        body.Add(0, "SECTION").Add(2, "OBJECTS")
            .Add(0, "DICTIONARY").Add(5, DxfPairs.Hex(root)).Add(330, "0").Add(100, "AcDbDictionary").Add(281, 1).Add(3, "ACAD_GROUP").Add(350, DxfPairs.Hex(groups))
            .Add(0, "DICTIONARY").Add(5, DxfPairs.Hex(groups)).Add(330, DxfPairs.Hex(root)).Add(100, "AcDbDictionary").Add(281, 1)
            .Add(0, "ENDSEC").Add(0, "EOF");
        return [.. Head(scene, units, body.Seed), .. body.Bytes()];
    }

    private static byte[] Head(DxfScene scene, UnitSystem units, int seed)
    {
        (double Left, double Bottom, double Right, double Top) = Extents(scene);
        DxfPairs head = new();
        head.Add(0, "SECTION").Add(2, "HEADER").Add(9, "$ACADVER").Add(1, "AC1015").Add(9, "$DWGCODEPAGE").Add(3, "ANSI_1252")
            .Add(9, "$INSUNITS").Add(70, units == UnitSystem.Us ? 1 : 4).Add(9, "$MEASUREMENT").Add(70, units == UnitSystem.Us ? 0 : 1)
            .Add(9, "$LUNITS").Add(70, units == UnitSystem.Us ? 4 : 2).Add(9, "$LTSCALE").Add(40, 1.0)
            .Add(9, "$EXTMIN").Point(10, Left, Bottom).Add(9, "$EXTMAX").Point(10, Right, Top).Add(9, "$HANDSEED").Add(5, DxfPairs.Hex(seed))
            .Add(0, "ENDSEC").Add(0, "SECTION").Add(2, "CLASSES").Add(0, "ENDSEC");
        return head.Bytes();
    }

    /// <summary>The box round all points that entities are known by.</summary>
    internal static (double Left, double Bottom, double Right, double Top) Extents(DxfScene scene)
    {
        Spot[] points =
        [
            .. scene.Marks.SelectMany(m => DxfScene.Points(m.Mark)),
            .. scene.Placed.SelectMany(p => scene.Blocks.First(b => b.Block.Name == p.Block).Block.Marks.SelectMany(DxfScene.Points).Select(s => new Spot(s.X + p.X, s.Y + p.Y))),
        ];
        return (points.Min(p => p.X), points.Min(p => p.Y), points.Max(p => p.X), points.Max(p => p.Y));
    }

    private static void Blocks(DxfPairs body, DxfScene scene, IReadOnlyDictionary<string, int> records)
    {
        body.Add(0, "SECTION").Add(2, "BLOCKS");
        foreach (string space in new[] { "*Model_Space", "*Paper_Space" })
        {
            Block(space, [], 1);
        }

        foreach ((DxfBlock block, double unitsPerMm) in scene.Blocks)
        {
            Block(block.Name, block.Marks, unitsPerMm);
        }

        body.Add(0, "ENDSEC");

        void Block(string name, IReadOnlyList<Mark> marks, double unitsPerMm)
        {
            int owner = records[name];
            body.Add(0, "BLOCK").Add(5, DxfPairs.Hex(body.Handle())).Add(330, DxfPairs.Hex(owner)).Add(100, "AcDbEntity").Add(8, "0").Add(100, "AcDbBlockBegin")
                .Words(2, name).Add(70, 0).Point(10, 0, 0).Words(3, name).Add(1, "");
            foreach (Mark mark in marks)
            {
                DxfEntities.Add(body, mark, unitsPerMm, owner);
            }

            body.Add(0, "ENDBLK").Add(5, DxfPairs.Hex(body.Handle())).Add(330, DxfPairs.Hex(owner)).Add(100, "AcDbEntity").Add(8, "0").Add(100, "AcDbBlockEnd");
        }
    }
}
