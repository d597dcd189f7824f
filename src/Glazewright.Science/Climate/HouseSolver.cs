using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Glazewright.Science.Climate;

/// <summary>
/// One implicit Euler step of the house's network, its elimination written out, four links of a row at a time. Ground, slow mass and the four outer faces hang on one node each and are taken in
/// first (their factors, constant for a length of step, are kept); what remains are nine nodes that all see each other: cloth, four inner faces, canopy, floor, two airs.
/// With the curtain open its cloth touches the air below only, and opaque parts that are not there are passed over.
/// </summary>
/// <remarks>
/// The matrix is an M-matrix, symmetric but for the two streams between the airs, which come last: no pivoting, and every product only adds.
/// The same network in <see cref="Network.CompiledNetwork"/> gives the same temperatures (test: HouseSolverTests).
/// </remarks>
internal sealed class HouseSolver
{
    private const int Layers = HouseParameters.GroundLayerCount;

    private double forPerS = double.NaN;
    private double mInverse, mPart, groundPart, massPerS;
    private PerPart innerPerS, outerPerS; // capacity over the step, W/K
    private PerLayer layerInverse, layerPart, groundPerS;

    /// <summary>Takes one step.</summary>
    /// <param name="t">Temperatures, °C; changed in place.</param>
    /// <param name="was">The temperatures before.</param>
    /// <param name="capacity">Heat capacities, J/K.</param>
    /// <param name="gain">Heat put into each node, W.</param>
    /// <param name="g">Links; those of ground and mass, and their and the shell's capacities, must stay what they were while the length of step stays.</param>
    /// <param name="bounds">Temperatures given.</param>
    /// <param name="curtain">True when the cloth touches more than the air below.</param>
    /// <param name="opaqueAbove">True when that part is there.</param>
    /// <param name="opaqueBelow">True when that part is there.</param>
    /// <param name="perS">One over the step, 1/s.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Step(
        ref PerNode t, ref PerNode was, ref PerNode capacity, ref PerNode gain, ref HouseRates g, in HouseBounds bounds,
        bool curtain, bool opaqueAbove, bool opaqueBelow, double perS)
    {
        if (perS != forPerS)
        {
            Factor(ref capacity, ref g, perS);
        }

        was = t;
        double outsideC = bounds.OutsideC, skyC = bounds.SkyC;

        // Ground from below, then the mass.
        double r5 = groundPerS[5] * t.Ground[5] + g.Deep * bounds.DeepC;
        double r4 = groundPerS[4] * t.Ground[4] + layerPart[5] * r5;
        double r3 = groundPerS[3] * t.Ground[3] + layerPart[4] * r4;
        double r2 = groundPerS[2] * t.Ground[2] + layerPart[3] * r3 + g.Edge * outsideC;
        double r1 = groundPerS[1] * t.Ground[1] + layerPart[2] * r2;
        double r0 = groundPerS[0] * t.Ground[0] + layerPart[1] * r1;
        double mRight = massPerS * t.Mass + gain.Mass;

        // Outer faces, all four at once, then what is stored and what leaves each inner face.
        Vector256<double> core = g.Core.Four, toOutside = g.OuterAir.Four + g.OuterGround.Four, toSky = g.OuterSky.Four, stores = outerPerS.Four;
        Vector256<double> oInverse = Vector256<double>.One / (stores + toOutside + toSky + core);
        Vector256<double> oRight = stores * t.Outer.Four + gain.Outer.Four + toOutside * outsideC + toSky * skyC;
        Vector256<double> floorParts = g.FloorParts.Four, canopyParts = g.CanopyParts.Four, curtainParts = g.CurtainParts.Four, innerAir = g.InnerAir.Four, ring = g.Ring.Four;
        stores = innerPerS.Four + g.Latent.Shell;
        Vector256<double> pRight = stores * t.Inner.Four + gain.Inner.Four + core * oInverse * oRight;
        Vector256<double> pSum = stores + (core - core * core * oInverse) + innerAir + floorParts + canopyParts + curtainParts
            + (ring + Vector256.Shuffle(ring, Vector256.Create(3L, 0, 1, 2))) + Vector256.Create(g.UpperPair, g.LowerPair, g.UpperPair, g.LowerPair);
        // The nine: what is stored and what leaves each, then who meets whom.
        double cSum = capacity.Curtain * perS + g.Latent[4] + g.CurtainBelow + g.CurtainAbove + g.FloorCurtain + g.CanopyCurtain + g.CurtainSky
            + Vector256.Sum(curtainParts);
        double cRight = (capacity.Curtain * perS + g.Latent[4]) * t.Curtain + gain.Curtain + g.CurtainSky * skyC;
        double kSum = capacity.Canopy * perS + g.Latent[5] + g.CanopyAir + g.CanopyCurtain + g.CanopyFloor + g.CanopySky
            + Vector256.Sum(canopyParts);
        double kRight = (capacity.Canopy * perS + g.Latent[5]) * t.Canopy + gain.Canopy + g.CanopySky * skyC;
        double fSum = capacity.Floor * perS + g.Latent[6] + g.FloorAir + g.FloorCurtain + g.CanopyFloor + g.FloorSky + groundPart
            + Vector256.Sum(floorParts);
        double fRight = (capacity.Floor * perS + g.Latent[6]) * t.Floor + gain.Floor + g.FloorSky * skyC + layerPart[0] * r0;
        double aSum = capacity.AirAbove * perS + g.OutsideAbove + g.Upward + g.Exchange + g.CurtainAbove + innerAir.GetElement(0) + innerAir.GetElement(2);
        double aRight = capacity.AirAbove * perS * t.AirAbove + gain.AirAbove + g.OutsideAbove * outsideC;
        double bSum = capacity.AirBelow * perS + g.OutsideBelow + g.IntakeBelow + g.Downward + g.Exchange + g.CurtainBelow + innerAir.GetElement(1) + innerAir.GetElement(3)
            + g.FloorAir + g.CanopyAir + g.MassAir - g.MassAir * mPart;
        double bRight = capacity.AirBelow * perS * t.AirBelow + gain.AirBelow + g.OutsideBelow * outsideC + g.IntakeBelow * bounds.IntakeC + mPart * mRight;
        // The nine's matrix turned in sign: links, and on its diagonal less than nothing the sums. Rows of the faces, first among themselves (lanes as in PerPart), then towards canopy, floor,
        // air above, air below; rows of these four among themselves. Taking out a node adds to each row that stays its share of the row taken out.
        Vector256<double> row0 = Vector256.Create(-pSum.GetElement(0), g.Ring[0], g.UpperPair, g.Ring[3]), row1 = Vector256.Create(g.Ring[0], -pSum.GetElement(1), g.Ring[1], g.LowerPair);
        Vector256<double> row2 = Vector256.Create(g.UpperPair, g.Ring[1], -pSum.GetElement(2), g.Ring[2]), row3 = Vector256.Create(g.Ring[3], g.LowerPair, g.Ring[2], -pSum.GetElement(3));
        Vector256<double> in0 = Vector256.Create(g.CanopyParts[0], g.FloorParts[0], g.InnerAir[0], 0.0), in1 = Vector256.Create(g.CanopyParts[1], g.FloorParts[1], 0.0, g.InnerAir[1]);
        Vector256<double> in2 = Vector256.Create(g.CanopyParts[2], g.FloorParts[2], g.InnerAir[2], 0.0), in3 = Vector256.Create(g.CanopyParts[3], g.FloorParts[3], 0.0, g.InnerAir[3]);
        Vector256<double> cloth = Vector256.Create(g.CanopyCurtain, g.FloorCurtain, g.CurtainAbove, g.CurtainBelow), clothPart = default, clothIn, cGoes = Vector256.Create(1.0 / cSum);
        Vector256<double> rowK = Vector256.Create(-kSum, g.CanopyFloor, 0.0, g.CanopyAir), rowF = Vector256.Create(g.CanopyFloor, -fSum, 0.0, g.FloorAir);
        Vector256<double> rowA = Vector256.Create(0.0, 0.0, -aSum, g.Exchange), rowB = Vector256.Create(g.CanopyAir, g.FloorAir, g.Exchange, -bSum);
        Vector256<double> qRight = Vector256.Create(kRight, fRight, aRight, bRight), r;
        clothIn = cloth * cGoes;
        if (curtain)
        {
            clothPart = curtainParts * cGoes;
            r = Vector256.Create(cRight);
            row0 = Fma(Lane0(clothPart), curtainParts, row0);
            in0 = Fma(Lane0(clothPart), cloth, in0);
            row1 = Fma(Lane1(clothPart), curtainParts, row1);
            in1 = Fma(Lane1(clothPart), cloth, in1);
            row2 = Fma(Lane2(clothPart), curtainParts, row2);
            in2 = Fma(Lane2(clothPart), cloth, in2);
            row3 = Fma(Lane3(clothPart), curtainParts, row3);
            in3 = Fma(Lane3(clothPart), cloth, in3);
            rowK = Fma(Lane0(clothIn), cloth, rowK);
            rowF = Fma(Lane1(clothIn), cloth, rowF);
            rowA = Fma(Lane2(clothIn), cloth, rowA);
            rowB = Fma(Lane3(clothIn), cloth, rowB);
            pRight = Fma(clothPart, r, pRight);
            qRight = Fma(clothIn, r, qRight);
        }
        else
        {
            // Open: nothing but the air below touches the gathered cloth.
            Vector256<double> below = Vector256.Create(0.0, 0.0, 0.0, g.CurtainBelow), part = below * cGoes;
            rowB = Fma(part, below, rowB);
            qRight = Fma(part, Vector256.Create(cRight), qRight);
        }

        Vector256<double> goes, part2 = default, into2 = default, part3 = default, into3 = default, alone2 = default, alone3 = default;
        if (opaqueAbove)
        {
            goes = Vector256.Create(-1.0) / Lane2(row2);
            part2 = row2 * goes;
            into2 = in2 * goes;
            r = Lane2(pRight);
            alone2 = r * goes;
            row3 = Fma(Lane3(part2), row2, row3);
            in3 = Fma(Lane3(part2), in2, in3);
            row1 = Fma(Lane1(part2), row2, row1);
            in1 = Fma(Lane1(part2), in2, in1);
            row0 = Fma(Lane0(part2), row2, row0);
            in0 = Fma(Lane0(part2), in2, in0);
            rowK = Fma(Lane0(into2), in2, rowK);
            rowF = Fma(Lane1(into2), in2, rowF);
            rowA = Fma(Lane2(into2), in2, rowA);
            rowB = Fma(Lane3(into2), in2, rowB);
            pRight = Fma(part2, r, pRight);
            qRight = Fma(into2, r, qRight);
        }

        if (opaqueBelow)
        {
            goes = Vector256.Create(-1.0) / Lane3(row3);
            part3 = row3 * goes;
            into3 = in3 * goes;
            r = Lane3(pRight);
            alone3 = r * goes;
            row1 = Fma(Lane1(part3), row3, row1);
            in1 = Fma(Lane1(part3), in3, in1);
            row0 = Fma(Lane0(part3), row3, row0);
            in0 = Fma(Lane0(part3), in3, in0);
            rowK = Fma(Lane0(into3), in3, rowK);
            rowF = Fma(Lane1(into3), in3, rowF);
            rowA = Fma(Lane2(into3), in3, rowA);
            rowB = Fma(Lane3(into3), in3, rowB);
            pRight = Fma(part3, r, pRight);
            qRight = Fma(into3, r, qRight);
        }

        goes = Vector256.Create(-1.0) / Lane1(row1);
        Vector256<double> part1 = row1 * goes, into1 = in1 * goes;
        r = Lane1(pRight);
        Vector256<double> alone1 = r * goes;
        row0 = Fma(Lane0(part1), row1, row0);
        in0 = Fma(Lane0(part1), in1, in0);
        rowK = Fma(Lane0(into1), in1, rowK);
        rowF = Fma(Lane1(into1), in1, rowF);
        rowA = Fma(Lane2(into1), in1, rowA);
        rowB = Fma(Lane3(into1), in1, rowB);
        pRight = Fma(part1, r, pRight);
        qRight = Fma(into1, r, qRight);

        goes = Vector256.Create(-1.0) / Lane0(row0);
        Vector256<double> into0 = in0 * goes;
        r = Lane0(pRight);
        Vector256<double> alone0 = r * goes;
        rowK = Fma(Lane0(into0), in0, rowK);
        rowF = Fma(Lane1(into0), in0, rowF);
        rowA = Fma(Lane2(into0), in0, rowA);
        rowB = Fma(Lane3(into0), in0, rowB);
        qRight = Fma(into0, r, qRight);

        goes = Vector256.Create(-1.0) / Lane0(rowK);
        Vector256<double> partK = rowK * goes;
        r = Lane0(qRight);
        Vector256<double> aloneK = r * goes;
        rowF = Fma(Lane1(partK), rowK, rowF);
        rowA = Fma(Lane2(partK), rowK, rowA);
        rowB = Fma(Lane3(partK), rowK, rowB);
        qRight = Fma(partK, r, qRight);

        goes = Vector256.Create(-1.0) / Lane1(rowF);
        Vector256<double> partF = rowF * goes;
        r = Lane1(qRight);
        Vector256<double> aloneF = r * goes;
        rowA = Fma(Lane2(partF), rowF, rowA);
        rowB = Fma(Lane3(partF), rowF, rowB);
        qRight = Fma(partF, r, qRight);

        // The two airs; a stream leaves its giver unchanged, so it stands in the receiver's row alone.
        aSum = -rowA.GetElement(2);
        bSum = -rowB.GetElement(3);
        aRight = qRight.GetElement(2);
        bRight = qRight.GetElement(3);
        double aB = rowA.GetElement(3), fromBelow = aB + g.Upward, fromAbove = aB + g.Downward;
        double determinant = 1.0 / (aSum * bSum - fromBelow * fromAbove);
        double aC = (aRight * bSum + fromBelow * bRight) * determinant;
        double bC = (bRight * aSum + fromAbove * aRight) * determinant;
        double fC = aloneF.ToScalar() + partF.GetElement(2) * aC + partF.GetElement(3) * bC;
        double kC = aloneK.ToScalar() + partK.GetElement(2) * aC + partK.GetElement(3) * bC + partK.GetElement(1) * fC;
        Vector256<double> four = Vector256.Create(kC, fC, aC, bC);
        double p0C = alone0.ToScalar() + Dot(into0, four);
        double p1C = alone1.ToScalar() + Dot(into1, four) + part1.ToScalar() * p0C;
        double p3C = t.Inner[3], p2C = t.Inner[2];
        if (opaqueBelow)
        {
            p3C = alone3.ToScalar() + Dot(into3, four) + part3.ToScalar() * p0C + part3.GetElement(1) * p1C;
        }

        if (opaqueAbove)
        {
            p2C = alone2.ToScalar() + Dot(into2, four) + part2.ToScalar() * p0C + part2.GetElement(1) * p1C + part2.GetElement(3) * p3C;
        }

        Vector256<double> inner = Vector256.Create(p0C, p1C, p2C, p3C);
        double cC = cRight * cGoes.ToScalar() + (curtain ? Dot(clothIn, four) + Dot(clothPart, inner) : clothIn.GetElement(3) * bC);
        t.Inner.Four = inner;
        t.Outer.Four = (oRight + core * inner) * oInverse;
        t.Inside = Vector256.Create(cC, kC, fC, bC);
        t.AirAbove = aC;
        t.Mass = (mRight + g.MassAir * bC) * mInverse;
        double g0C = r0 * layerInverse[0] + layerPart[0] * fC;
        double g1C = r1 * layerInverse[1] + layerPart[1] * g0C;
        double g2C = r2 * layerInverse[2] + layerPart[2] * g1C;
        double g3C = r3 * layerInverse[3] + layerPart[3] * g2C;
        double g4C = r4 * layerInverse[4] + layerPart[4] * g3C;
        (t.Ground[0], t.Ground[1], t.Ground[2], t.Ground[3], t.Ground[4], t.Ground[5]) = (g0C, g1C, g2C, g3C, g4C, r5 * layerInverse[5] + layerPart[5] * g4C);
    }

    // One rounding on every processor: where there is no such instruction it is reckoned, slower, to the same bits.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Fma(Vector256<double> a, Vector256<double> b, Vector256<double> plus) => Vector256.FusedMultiplyAdd(a, b, plus);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Lane0(Vector256<double> v) => Vector256.Shuffle(v, Vector256.Create(0L));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Lane1(Vector256<double> v) => Vector256.Shuffle(v, Vector256.Create(1L));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Lane2(Vector256<double> v) => Vector256.Shuffle(v, Vector256.Create(2L));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Lane3(Vector256<double> v) => Vector256.Shuffle(v, Vector256.Create(3L));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Dot(Vector256<double> a, Vector256<double> b)
    {
        Vector256<double> all = a * b;
        Vector128<double> two = all.GetLower() + all.GetUpper();
        return two.ToScalar() + two.GetElement(1);
    }

    // Constant for a length of step: what is stored, and what each layer lets through, seen from the one above (groundPart, layerPart).
    private void Factor(ref PerNode capacity, ref HouseRates g, double perS)
    {
        forPerS = perS;
        double below = g.Deep, lets = 0.0;
        for (int layer = Layers - 1; layer >= 0; layer--)
        {
            double up = layer > 0 ? g.Below[layer - 1] : g.FloorGround;
            groundPerS[layer] = capacity.Ground[layer] * perS;
            double sum = groundPerS[layer] + up + (layer == Layers - 1 ? below : below - below * lets) + (layer == 2 ? g.Edge : 0.0);
            layerInverse[layer] = 1.0 / sum;
            lets = up / sum;
            layerPart[layer] = lets;
            below = up;
        }

        groundPart = g.FloorGround - g.FloorGround * layerPart[0];
        massPerS = capacity.Mass * perS;
        innerPerS.Four = capacity.Inner.Four * perS;
        outerPerS.Four = capacity.Outer.Four * perS;
        mInverse = 1.0 / (massPerS + g.MassAir);
        mPart = g.MassAir * mInverse;
    }
}
