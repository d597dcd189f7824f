using System.Globalization;
using System.Text;

namespace Glazewright.Papers.Dxf;

/// <summary>Writes the pairs of group code and value that a DXF text is made of, and numbers its handles.</summary>
/// <remarks>AutoCAD 2000 DXF Reference (an openly published format), group codes: from memory; read by two independent readers in the tests.</remarks>
internal sealed class DxfPairs
{
    private readonly StringBuilder text = new();
    private int last;

    /// <summary>The next free handle.</summary>
    public int Seed => last + 1;

    public static string Hex(int handle) => handle.ToString("X", CultureInfo.InvariantCulture);

    public int Handle() => ++last;

    public DxfPairs Add(int code, string value)
    {
        text.Append(code.ToString(CultureInfo.InvariantCulture).PadLeft(3)).Append("\r\n").Append(value).Append("\r\n");
        return this;
    }

    public DxfPairs Add(int code, int value) => Add(code, value.ToString(CultureInfo.InvariantCulture));

    /// <summary>Six decimals: a thousandth of a millimetre or finer in either unit.</summary>
    public DxfPairs Add(int code, double value)
    {
        double rounded = Math.Round(value, 6);
        return Add(code, (rounded == 0 ? 0 : rounded).ToString("0.0#####", CultureInfo.InvariantCulture));
    }

    /// <summary>A point with its codes 10, 20, 30 above a first code.</summary>
    public DxfPairs Point(int code, double x, double y) => Add(code, x).Add(code + 10, y).Add(code + 20, 0.0);

    /// <summary>Words: what is not ASCII is written as \U+ and four hex digits, as the format has it.</summary>
    public DxfPairs Words(int code, string words)
    {
        StringBuilder safe = new();
        foreach (char c in words)
        {
            if (c is >= ' ' and <= '~')
            {
                safe.Append(c);
            }
            else if (!char.IsControl(c))
            {
                safe.Append("\\U+").Append(((int)c).ToString("X4", CultureInfo.InvariantCulture));
            }
        }

        return Add(code, safe.ToString());
    }

    public byte[] Bytes() => Encoding.ASCII.GetBytes(text.ToString());
}
