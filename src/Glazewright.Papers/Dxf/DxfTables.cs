using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Dxf;

/// <summary>The tables of a drawing file: line types, layers, one text style, the blocks' records.</summary>
internal static class DxfTables
{
    /// <summary>Line type of a role: its own where it is dashed.</summary>
    public static string LineTypeOf(Role role) => Pens.Of(role).DashesMm.Count == 0 ? "Continuous" : role.ToString().ToUpperInvariant();

    /// <summary>Colour by the index of the format (7 is black on white and white on black), from memory.</summary>
    public static int ColourOf(Role role) => role switch
    {
        Role.Light => 40,
        Role.Equipment => 5,
        Role.Hatch or Role.Fill or Role.Grid or Role.Setback => 8,
        Role.Dimension or Role.Hidden or Role.Beyond or Role.Centre => 252,
        _ => 7,
    };

    /// <summary>Weights the format knows, hundredths of a millimetre.</summary>
    private static readonly int[] Weights = [5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60, 70, 80, 90, 100];

    public static int WeightOf(double widthMm) => Weights.MinBy(w => Math.Abs(w - (widthMm * 100)));

    /// <summary>Writes them.</summary>
    /// <param name="pairs">Where to.</param>
    /// <param name="layers">Names of layers with their role, sorted.</param>
    /// <param name="blocks">Names of blocks after the two spaces.</param>
    /// <returns>Handle of each block's record, the two spaces first.</returns>
    public static IReadOnlyDictionary<string, int> Write(DxfPairs pairs, IReadOnlyList<(string Name, Role Role)> layers, IReadOnlyList<string> blocks)
    {
        pairs.Add(0, "SECTION").Add(2, "TABLES");
        int viewport = Begin("VPORT", 1);
        Record("VPORT", viewport, "AcDbViewportTableRecord").Add(2, "*ACTIVE").Add(70, 0).Add(10, 0.0).Add(20, 0.0).Add(11, 1.0).Add(21, 1.0).Add(12, 0.0).Add(22, 0.0)
            .Add(13, 0.0).Add(23, 0.0).Add(14, 10.0).Add(24, 10.0).Add(15, 10.0).Add(25, 10.0).Add(16, 0.0).Add(26, 0.0).Add(36, 1.0).Add(17, 0.0).Add(27, 0.0).Add(37, 0.0)
            .Add(40, 1000.0).Add(41, 1.5).Add(42, 50.0).Add(43, 0.0).Add(44, 0.0).Add(50, 0.0).Add(51, 0.0);
        End();

        Role[] dashed = [.. Enum.GetValues<Role>().Where(r => Pens.Of(r).DashesMm.Count > 0)];
        int types = Begin("LTYPE", dashed.Length + 3);
        foreach (string plain in new[] { "ByBlock", "ByLayer", "Continuous" })
        {
            Record("LTYPE", types, "AcDbLinetypeTableRecord").Add(2, plain).Add(70, 0).Add(3, "").Add(72, 65).Add(73, 0).Add(40, 0.0);
        }

        foreach (Role role in dashed)
        {
            // Lengths on paper, mm: an entity's own scale of line type turns them into drawing units.
            IReadOnlyList<double> dashes = Pens.Of(role).DashesMm;
            Record("LTYPE", types, "AcDbLinetypeTableRecord").Add(2, LineTypeOf(role)).Add(70, 0).Add(3, "").Add(72, 65).Add(73, dashes.Count).Add(40, dashes.Sum());
            for (int i = 0; i < dashes.Count; i++)
            {
                pairs.Add(49, i % 2 == 0 ? dashes[i] : -dashes[i]).Add(74, 0);
            }
        }

        End();
        int layer = Begin("LAYER", layers.Count + 1);
        foreach ((string name, Role role) in layers.Prepend(("0", Role.Visible)))
        {
            Record("LAYER", layer, "AcDbLayerTableRecord").Words(2, name).Add(70, 0).Add(62, name == "0" ? 7 : ColourOf(role))
                .Add(6, name == "0" ? "Continuous" : LineTypeOf(role)).Add(370, WeightOf(Pens.Of(role).WidthMm));
        }

        End();
        int style = Begin("STYLE", 1);
        Record("STYLE", style, "AcDbTextStyleTableRecord").Add(2, "Standard").Add(70, 0).Add(40, 0.0).Add(41, 1.0).Add(50, 0.0).Add(71, 0).Add(42, 2.5).Add(3, "txt").Add(4, "");
        End();
        Begin("VIEW", 0);
        End();
        Begin("UCS", 0);
        End();
        int application = Begin("APPID", 1);
        Record("APPID", application, "AcDbRegAppTableRecord").Add(2, "ACAD").Add(70, 0);
        End();
        int dimensions = pairs.Handle();
        pairs.Add(0, "TABLE").Add(2, "DIMSTYLE").Add(5, DxfPairs.Hex(dimensions)).Add(330, "0").Add(100, "AcDbSymbolTable").Add(70, 1).Add(100, "AcDbDimStyleTable");
        pairs.Add(0, "DIMSTYLE").Add(105, DxfPairs.Hex(pairs.Handle())).Add(330, DxfPairs.Hex(dimensions)).Add(100, "AcDbSymbolTableRecord").Add(100, "AcDbDimStyleTableRecord")
            .Add(2, "Standard").Add(70, 0);
        End();

        int records = Begin("BLOCK_RECORD", blocks.Count + 2);
        Dictionary<string, int> handles = [];
        foreach (string name in blocks.Prepend("*Paper_Space").Prepend("*Model_Space"))
        {
            int handle = pairs.Handle();
            pairs.Add(0, "BLOCK_RECORD").Add(5, DxfPairs.Hex(handle)).Add(330, DxfPairs.Hex(records)).Add(100, "AcDbSymbolTableRecord").Add(100, "AcDbBlockTableRecord").Words(2, name);
            handles[name] = handle;
        }

        End();
        pairs.Add(0, "ENDSEC");
        return handles;

        int Begin(string table, int most)
        {
            int handle = pairs.Handle();
            pairs.Add(0, "TABLE").Add(2, table).Add(5, DxfPairs.Hex(handle)).Add(330, "0").Add(100, "AcDbSymbolTable").Add(70, most);
            return handle;
        }

        void End() => pairs.Add(0, "ENDTAB");

        DxfPairs Record(string type, int owner, string kind) => pairs
            .Add(0, type).Add(5, DxfPairs.Hex(pairs.Handle())).Add(330, DxfPairs.Hex(owner)).Add(100, "AcDbSymbolTableRecord").Add(100, kind);
    }
}
