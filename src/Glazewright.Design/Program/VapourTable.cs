using Glazewright.Science.Maths;

namespace Glazewright.Design.Program;

/// <summary>Saturation pressure in whole pascals by whole degrees, lines between: integers for the interpreter. Magnus form after Sonntag (1990), from memory; good to 1 %, which only compares inside with outside.</summary>
internal static class VapourTable
{
    private const int LowestC = -70;
    private const int HighestC = 80;

    private static readonly int[] s_pa = Make();

    public static int SaturationPa(int centiC)
    {
        int from = Math.Clamp(centiC, LowestC * 100, HighestC * 100 - 1) - LowestC * 100;
        int at = from / 100;
        return s_pa[at] + (s_pa[at + 1] - s_pa[at]) * (from % 100) / 100;
    }

    private static int[] Make()
    {
        var pa = new int[HighestC - LowestC + 1];
        for (int i = 0; i < pa.Length; i++)
        {
            double c = LowestC + i;
            pa[i] = (int)Math.Round(c >= 0 ? 611.2 * Elementary.Exp(17.62 * c / (243.12 + c)) : 611.2 * Elementary.Exp(22.46 * c / (272.62 + c)));
        }

        return pa;
    }
}
