using Glazewright.Design.Contracts;

namespace Glazewright.Design.Framing;

/// <summary>What a hole hands its wind to.</summary>
internal enum HoleFill
{
    /// <summary>A frame screwed all round, or a leaf on stops: half to the header, half to sill or floor.</summary>
    HeadAndSill,

    /// <summary>A curtain that runs in guides: to both jambs.</summary>
    Jambs,
}

/// <summary>A hole of a wall as its framing sees it; u along the wall, v up it, both of the rough opening.</summary>
/// <param name="Id">Path id of what goes in.</param>
/// <param name="OpeningId">Id the wall's list has it under.</param>
/// <param name="FromUM">Face of the nearer jamb, m.</param>
/// <param name="ToUM">Face of the other jamb, m.</param>
/// <param name="SillVM">Top of the sill, m; 0 for a door.</param>
/// <param name="HeadVM">Underside of the header, m.</param>
/// <param name="Fill">Where its wind goes.</param>
/// <param name="OnHeaderN">Weight that hangs on the header, N.</param>
/// <param name="OnSillN">Weight that stands on the sill, N.</param>
/// <param name="OnJambN">Weight that hangs on each jamb, N.</param>
/// <param name="PostsCut">Posts headed off by it.</param>
internal sealed record WallHole(
    string Id, string OpeningId, double FromUM, double ToUM, double SillVM, double HeadVM, HoleFill Fill, double OnHeaderN, double OnSillN, double OnJambN, EqList<string> PostsCut)
{
    private const double LeastSillM = 0.05;

    /// <summary>Clear height a coil takes over its head, inside, m; 0 for none.</summary>
    internal double CoilM { get; init; }

    /// <summary>Wall a leaf slides along beside it, m; 0 for none.</summary>
    internal double AsideM { get; init; }

    internal bool HasSill => SillVM > LeastSillM;

    internal double FootVM => HasSill ? SillVM : 0;

    internal double WidthM => ToUM - FromUM;

    internal bool Holds(double uM, double vM) => uM > FromUM && uM < ToUM && vM > FootVM && vM < HeadVM;

    /// <summary>Whether a band of the wall runs through it by more than a millimetre.</summary>
    internal bool Spans(double fromUM, double toUM) => FromUM < toUM - 0.001 && ToUM > fromUM + 0.001;
}

/// <summary>An upright that is there before any hole: a post of an end wall, a column at its corner or along a side wall.</summary>
/// <param name="Id">Path id.</param>
/// <param name="UM">Its middle along the wall, m.</param>
/// <param name="WidthM">Its size along the wall, m.</param>
/// <param name="IsColumn">A column of a frame: Frame checks it, not this stage.</param>
internal readonly record struct Upright(string Id, double UM, double WidthM, bool IsColumn);

/// <summary>A wall before its holes are framed.</summary>
/// <param name="LengthM">Along it, m.</param>
/// <param name="Uprights">Posts and columns, from its start.</param>
/// <param name="Holes">The holes.</param>
/// <param name="LineVM">Top of the covering as points along the wall, from its start.</param>
internal sealed record WallFace(double LengthM, IReadOnlyList<Upright> Uprights, IReadOnlyList<WallHole> Holes, IReadOnlyList<Form.Point2> LineVM)
{
    /// <summary>Height of the covering's top, m.</summary>
    internal double TopM(double uM)
    {
        for (int i = 1; i < LineVM.Count; i++)
        {
            (Form.Point2 a, Form.Point2 b) = (LineVM[i - 1], LineVM[i]);
            if (uM <= b.UM || i == LineVM.Count - 1)
            {
                return a.VM + (b.VM - a.VM) * Math.Clamp((uM - a.UM) / Math.Max(b.UM - a.UM, 1e-9), 0, 1);
            }
        }

        return LineVM[0].VM;
    }
}
