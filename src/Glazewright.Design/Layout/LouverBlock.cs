namespace Glazewright.Design.Layout;

/// <summary>Louvers in front of a wet wall: rows and columns of one size on the face of an intake box that covers the pad.</summary>
/// <param name="Louvers">Where each louver stands.</param>
/// <param name="Box">Pad and louvers together.</param>
/// <param name="Rows">Rows over each other.</param>
/// <param name="Flush">All louvers stand before the pad itself: shutters on the pad's own frame, no box beyond it.</param>
internal sealed record LouverBlock(List<WallPlace> Louvers, WallPlace Box, int Rows, bool Flush)
{
    /// <summary>How far the louvers stand before the pad, m (2 ft: common practice for the air to spread over the pad).</summary>
    public const double BoxDepthM = 0.6;

    private const double MullionM = 0.0508;
    private const int MostRows = 3;

    /// <summary>A block of so many louvers that stands free of doors, neighbours and corners; null when none does.</summary>
    public static LouverBlock? TryFind(WallPlan wall, WallPlace pad, double sizeM, int count)
    {
        LouverBlock? best = null;
        for (int rows = 1; rows <= Math.Min(MostRows, count); rows++)
        {
            int columns = (count + rows - 1) / rows;
            double widthM = columns * sizeM + (columns - 1) * MullionM;
            double heightM = rows * sizeM + (rows - 1) * MullionM;
            if (Place(wall, pad, widthM, heightM) is not { } place)
            {
                continue;
            }

            WallPlace box = place.With(pad);
            if (best is null || box.WidthM * box.HeightM < best.Box.WidthM * best.Box.HeightM - 1e-9)
            {
                List<WallPlace> louvers = [.. Enumerable.Range(0, count).Select(i => new WallPlace(
                    place.UM + i % columns * (sizeM + MullionM), place.VM + i / columns * (sizeM + MullionM), sizeM, sizeM))];
                best = new LouverBlock(louvers, box, rows, Within(place, pad));
            }
        }

        return best;
    }

    /// <summary>How many louvers of a size stand before the pad, up to a number.</summary>
    public static int Most(WallPlan wall, WallPlace pad, double sizeM, int wanted)
    {
        int n = Math.Min(wanted, MostRows * (int)Math.Floor(wall.LengthM / sizeM));
        while (n > 0 && TryFind(wall, pad, sizeM, n) is null)
        {
            n--;
        }

        return n;
    }

    // As near the pad's middle as it can.
    private static WallPlace? Place(WallPlan wall, WallPlace pad, double widthM, double heightM)
    {
        double step = wall.Module.StepM;
        double u0 = pad.MiddleM - widthM / 2;
        double v0 = Math.Max(pad.VM + (pad.HeightM - heightM) / 2, Math.Min(wall.Module.LeastSillM, pad.VM));
        WallPlace? best = null;
        double least = double.PositiveInfinity;
        int reach = (int)Math.Ceiling(Math.Max(widthM, pad.WidthM) / step);
        for (int down = 0; down <= 12; down++)
        {
            double v = v0 - down * step;
            if (v < Math.Min(wall.Module.LeastSillM, pad.VM) - 1e-9)
            {
                break;
            }

            // From the middle outward: the first free place is the nearest, and a box grows with the way.
            for (int k = 0; k <= 2 * reach; k++)
            {
                var here = new WallPlace(u0 + (k % 2 == 0 ? 1 : -1) * ((k + 1) / 2) * step, v, widthM, heightM);
                if (!Overlap(here, pad))
                {
                    break;
                }

                WallPlace box = here.With(pad);
                double cost = (k + 1) / 2 + down + 1e3 * (box.WidthM * box.HeightM - pad.WidthM * pad.HeightM);
                if (cost >= least - 1e-9)
                {
                    break;
                }

                if (Within(here, pad) || (wall.Free(here, clear: false) && wall.On(box)))
                {
                    (best, least) = (here, cost);
                    break;
                }
            }
        }

        return best;
    }

    private static bool Within(WallPlace block, WallPlace pad) =>
        block.UM >= pad.UM - 1e-6 && block.UM + block.WidthM <= pad.UM + pad.WidthM + 1e-6
        && block.VM >= pad.VM - 1e-6 && block.VM + block.HeightM <= pad.VM + pad.HeightM + 1e-6;

    // Half of the narrower at least lies before the pad: air is not led round a corner to it.
    private static bool Overlap(WallPlace block, WallPlace pad)
    {
        double commonM = Math.Min(block.UM + block.WidthM, pad.UM + pad.WidthM) - Math.Max(block.UM, pad.UM);
        return commonM >= 0.5 * Math.Min(block.WidthM, pad.WidthM);
    }
}
