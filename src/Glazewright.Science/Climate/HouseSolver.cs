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

    // Parts of a minute come in a dozen lengths: the factors of each are worked out once.
    private readonly Factors[] kept = new Factors[16];
    private int at, next;

    /// <summary>Takes one step.</summary>
    /// <param name="t">Temperatures, °C; changed in place.</param>
    /// <param name="was">The temperatures before.</param>
    /// <param name="capacity">Heat capacities, J/K.</param>
    /// <param name="gain">Heat put into each node, W.</param>
    /// <param name="g">Links; those of ground and mass, and their and the shell's capacities, must stay what they were.</param>
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
        if (perS != kept[at].PerS)
        {
            Find(ref capacity, ref g, perS);
        }

        ref readonly Factors k = ref kept[at];

        was = t;
        double outsideC = bounds.OutsideC, skyC = bounds.SkyC;

        // Ground from below, then the mass.
        double r5 = k.GroundPerS[5] * t.Ground[5] + g.Deep * bounds.DeepC;
        double r4 = k.GroundPerS[4] * t.Ground[4] + k.LayerPart[5] * r5;
        double r3 = k.GroundPerS[3] * t.Ground[3] + k.LayerPart[4] * r4;
        double r2 = k.GroundPerS[2] * t.Ground[2] + k.LayerPart[3] * r3 + g.Edge * outsideC;
        double r1 = k.GroundPerS[1] * t.Ground[1] + k.LayerPart[2] * r2;
        double r0 = k.GroundPerS[0] * t.Ground[0] + k.LayerPart[1] * r1;
        double mRight = k.MassPerS * t.Mass + gain.Mass;

        // Outer faces, all four at once, then what is stored and what leaves each inner face.
        Vector256<double> core = g.Core.Four, toOutside = g.OuterAir.Four + g.OuterGround.Four, toSky = g.OuterSky.Four, stores = k.OuterPerS.Four;
        Vector256<double> oInverse = Vector256<double>.One / (stores + toOutside + toSky + core);
        Vector256<double> oRight = stores * t.Outer.Four + gain.Outer.Four + toOutside * outsideC + toSky * skyC;
        Vector256<double> floorParts = g.FloorParts.Four, canopyParts = g.CanopyParts.Four, curtainParts = g.CurtainParts.Four, innerAir = g.InnerAir.Four, ring = g.Ring.Four;
        stores = k.InnerPerS.Four + g.Latent.Shell;
        Vector256<double> pRight = stores * t.Inner.Four + gain.Inner.Four + core * oInverse * oRight;
        Vector256<double> pSum = (stores + innerAir + (floorParts + canopyParts))
            + (curtainParts + Vector256.Create(g.UpperPair, g.LowerPair, g.UpperPair, g.LowerPair) + (ring + Vector256.Shuffle(ring, Vector256.Create(3L, 0, 1, 2))))
            + (core - core * core * oInverse);
        // The nine: what is stored and what leaves each, then who meets whom. Added in pairs, as a long row of additions is a long wait.
        double cSum = (capacity.Curtain * perS + g.Latent[4]) + (g.CurtainBelow + g.CurtainAbove) + ((g.FloorCurtain + g.CanopyCurtain) + (g.CurtainSky
            + Vector256.Sum(curtainParts)));
        double cRight = (capacity.Curtain * perS + g.Latent[4]) * t.Curtain + gain.Curtain + g.CurtainSky * skyC;
        double kSum = (capacity.Canopy * perS + g.Latent[5]) + (g.CanopyAir + g.CanopyCurtain) + ((g.CanopyFloor + g.CanopySky)
            + Vector256.Sum(canopyParts));
        double kRight = (capacity.Canopy * perS + g.Latent[5]) * t.Canopy + gain.Canopy + g.CanopySky * skyC;
        double fSum = (capacity.Floor * perS + g.Latent[6]) + (g.FloorAir + g.FloorCurtain) + ((g.CanopyFloor + g.FloorSky) + (k.GroundPart
            + Vector256.Sum(floorParts)));
        double fRight = (capacity.Floor * perS + g.Latent[6]) * t.Floor + gain.Floor + g.FloorSky * skyC + k.LayerPart[0] * r0;
        double aSum = (capacity.AirAbove * perS + g.OutsideAbove) + (g.Upward + g.Exchange) + (g.CurtainAbove + (innerAir.GetElement(0) + innerAir.GetElement(2)));
        double aRight = capacity.AirAbove * perS * t.AirAbove + gain.AirAbove + g.OutsideAbove * outsideC;
        double bSum = ((capacity.AirBelow * perS + g.OutsideBelow) + (g.IntakeBelow + g.Downward)) + ((g.Exchange + g.CurtainBelow) + (innerAir.GetElement(1) + innerAir.GetElement(3)))
            + ((g.FloorAir + g.CanopyAir) + (g.MassAir - g.MassAir * k.MassPart));
        double bRight = capacity.AirBelow * perS * t.AirBelow + gain.AirBelow + g.OutsideBelow * outsideC + g.IntakeBelow * bounds.IntakeC + k.MassPart * mRight;
        // The nine's matrix turned in sign: links, and on its diagonal less than nothing the sums. Rows of the faces, first among themselves (lanes as in PerPart), then towards canopy, floor,
        // air above, air below; rows of these four among themselves. Taking out a node adds to each row that stays its share of the row taken out.
        Vector256<double> row0 = Vector256.Create(-pSum.GetElement(0), g.Ring[0], g.UpperPair, g.Ring[3]), row1 = Vector256.Create(g.Ring[0], -pSum.GetElement(1), g.Ring[1], g.LowerPair);
        Vector256<double> row2 = Vector256.Create(g.UpperPair, g.Ring[1], -pSum.GetElement(2), g.Ring[2]), row3 = Vector256.Create(g.Ring[3], g.LowerPair, g.Ring[2], -pSum.GetElement(3));
        Vector256<double> in0 = Vector256.Create(g.CanopyParts[0], g.FloorParts[0], g.InnerAir[0], 0.0), in1 = Vector256.Create(g.CanopyParts[1], g.FloorParts[1], 0.0, g.InnerAir[1]);
        Vector256<double> in2 = Vector256.Create(g.CanopyParts[2], g.FloorParts[2], g.InnerAir[2], 0.0), in3 = Vector256.Create(g.CanopyParts[3], g.FloorParts[3], 0.0, g.InnerAir[3]);
        Vector256<double> cloth = Vector256.Create(g.CanopyCurtain, g.FloorCurtain, g.CurtainAbove, g.CurtainBelow), cGoes = Vector256.Create(1.0 / cSum);
        Vector256<double> rowK = Vector256.Create(-kSum, g.CanopyFloor, 0.0, g.CanopyAir), rowF = Vector256.Create(g.CanopyFloor, -fSum, 0.0, g.FloorAir);
        Vector256<double> rowA = Vector256.Create(0.0, 0.0, -aSum, g.Exchange), rowB = Vector256.Create(g.CanopyAir, g.FloorAir, g.Exchange, -bSum);
        Vector256<double> qRight = Vector256.Create(kRight, fRight, aRight, bRight);
        if (curtain)
        {
            Vector256<double> r = Vector256.Create(cRight), kLink = Lane0(cloth), fLink = Lane1(cloth), aLink = Lane2(cloth), bLink = Lane3(cloth);
            row0 = Fma(Lane0(curtainParts) * curtainParts, cGoes, row0);
            row1 = Fma(Lane1(curtainParts) * curtainParts, cGoes, row1);
            row2 = Fma(Lane2(curtainParts) * curtainParts, cGoes, row2);
            row3 = Fma(Lane3(curtainParts) * curtainParts, cGoes, row3);
            in0 = Fma(Lane0(curtainParts) * cloth, cGoes, in0);
            in1 = Fma(Lane1(curtainParts) * cloth, cGoes, in1);
            in2 = Fma(Lane2(curtainParts) * cloth, cGoes, in2);
            in3 = Fma(Lane3(curtainParts) * cloth, cGoes, in3);
            rowK = Fma(kLink * cloth, cGoes, rowK);
            rowF = Fma(fLink * cloth, cGoes, rowF);
            rowA = Fma(aLink * cloth, cGoes, rowA);
            rowB = Fma(bLink * cloth, cGoes, rowB);
            pRight = Fma(curtainParts * r, cGoes, pRight);
            qRight = Fma(cloth * r, cGoes, qRight);
        }
        else
        {
            // Open: nothing but the air below touches the gathered cloth.
            cloth = Vector256.Create(0.0, 0.0, 0.0, g.CurtainBelow);
            rowB = Fma(cloth * cloth, cGoes, rowB);
            qRight = Fma(cloth * Vector256.Create(cRight), cGoes, qRight);
        }

        // Two nodes go at a time, by one division: with sums s and t, link l and what comes to each, u and v, they are (t u + l v) and (l u + s v) over s t − l².
        // Everything but the division is at hand before it; a node that is not there has no links and changes nothing.
        Pair deep = default;
        Vector256<double> toFaces2 = default, toFaces3 = default, toRest2 = default, toRest3 = default, alone2 = default, alone3 = default;
        if (opaqueAbove || opaqueBelow)
        {
            deep = new Pair(-Lane2(row2), -Lane3(row3), Lane3(row2));
            (toFaces2, toFaces3) = (deep.First(row2, row3), deep.Second(row2, row3));
            (toRest2, toRest3) = (deep.First(in2, in3), deep.Second(in2, in3));
            row0 = Fma(Fma(Lane0(row2), toFaces2, Lane0(row3) * toFaces3), deep.Goes, row0);
            row1 = Fma(Fma(Lane1(row2), toFaces2, Lane1(row3) * toFaces3), deep.Goes, row1);
            in0 = Fma(Fma(Lane0(row2), toRest2, Lane0(row3) * toRest3), deep.Goes, in0);
            in1 = Fma(Fma(Lane1(row2), toRest2, Lane1(row3) * toRest3), deep.Goes, in1);
            rowK = Fma(Fma(Lane0(in2), toRest2, Lane0(in3) * toRest3), deep.Goes, rowK);
            rowF = Fma(Fma(Lane1(in2), toRest2, Lane1(in3) * toRest3), deep.Goes, rowF);
            rowA = Fma(Fma(Lane2(in2), toRest2, Lane2(in3) * toRest3), deep.Goes, rowA);
            rowB = Fma(Fma(Lane3(in2), toRest2, Lane3(in3) * toRest3), deep.Goes, rowB);
            Vector256<double> u = Lane2(pRight), v = Lane3(pRight);
            (alone2, alone3) = (deep.First(u, v), deep.Second(u, v));
            pRight = Fma(Fma(toFaces2, u, toFaces3 * v), deep.Goes, pRight);
            qRight = Fma(Fma(toRest2, u, toRest3 * v), deep.Goes, qRight);
        }

        Pair faces = new(-Lane0(row0), -Lane1(row1), Lane1(row0));
        Vector256<double> right0 = Lane0(pRight), right1 = Lane1(pRight), toRest0 = faces.First(in0, in1), toRest1 = faces.Second(in0, in1);
        rowK = Fma(Fma(Lane0(in0), toRest0, Lane0(in1) * toRest1), faces.Goes, rowK);
        rowF = Fma(Fma(Lane1(in0), toRest0, Lane1(in1) * toRest1), faces.Goes, rowF);
        rowA = Fma(Fma(Lane2(in0), toRest0, Lane2(in1) * toRest1), faces.Goes, rowA);
        rowB = Fma(Fma(Lane3(in0), toRest0, Lane3(in1) * toRest1), faces.Goes, rowB);
        qRight = Fma(Fma(toRest0, right0, toRest1 * right1), faces.Goes, qRight);

        Pair ground = new(-Lane0(rowK), -Lane1(rowF), Lane1(rowK));
        Vector256<double> rightK = Lane0(qRight), rightF = Lane1(qRight), toAirsK = ground.First(rowK, rowF), toAirsF = ground.Second(rowK, rowF);
        rowA = Fma(Fma(Lane2(rowK), toAirsK, Lane2(rowF) * toAirsF), ground.Goes, rowA);
        rowB = Fma(Fma(Lane3(rowK), toAirsK, Lane3(rowF) * toAirsF), ground.Goes, rowB);
        qRight = Fma(Fma(toAirsK, rightK, toAirsF * rightF), ground.Goes, qRight);

        // The two airs; a stream leaves its giver unchanged, so it stands in the receiver's row alone.
        aSum = -rowA.GetElement(2);
        bSum = -rowB.GetElement(3);
        aRight = qRight.GetElement(2);
        bRight = qRight.GetElement(3);
        double aB = rowA.GetElement(3), fromBelow = aB + g.Upward, fromAbove = aB + g.Downward;
        double determinant = 1.0 / (aSum * bSum - fromBelow * fromAbove);
        double aC = (aRight * bSum + fromBelow * bRight) * determinant;
        double bC = (bRight * aSum + fromAbove * aRight) * determinant;
        double fC = (ground.Second(rightK, rightF).ToScalar() + toAirsF.GetElement(2) * aC + toAirsF.GetElement(3) * bC) * ground.Goes.ToScalar();
        double kC = (ground.First(rightK, rightF).ToScalar() + toAirsK.GetElement(2) * aC + toAirsK.GetElement(3) * bC) * ground.Goes.ToScalar();
        Vector256<double> four = Vector256.Create(kC, fC, aC, bC);
        double p0C = (faces.First(right0, right1).ToScalar() + Dot(toRest0, four)) * faces.Goes.ToScalar();
        double p1C = (faces.Second(right0, right1).ToScalar() + Dot(toRest1, four)) * faces.Goes.ToScalar();
        double p2C = t.Inner[2], p3C = t.Inner[3];
        if (opaqueAbove)
        {
            p2C = (alone2.ToScalar() + Dot(toRest2, four) + toFaces2.ToScalar() * p0C + toFaces2.GetElement(1) * p1C) * deep.Goes.ToScalar();
        }

        if (opaqueBelow)
        {
            p3C = (alone3.ToScalar() + Dot(toRest3, four) + toFaces3.ToScalar() * p0C + toFaces3.GetElement(1) * p1C) * deep.Goes.ToScalar();
        }

        Vector256<double> inner = Vector256.Create(p0C, p1C, p2C, p3C);
        double cC = (cRight + (curtain ? Dot(cloth, four) + Dot(curtainParts, inner) : cloth.GetElement(3) * bC)) * cGoes.ToScalar();
        t.Inner.Four = inner;
        t.Outer.Four = (oRight + core * inner) * oInverse;
        t.Inside = Vector256.Create(cC, kC, fC, bC);
        t.AirAbove = aC;
        t.Mass = (mRight + g.MassAir * bC) * k.MassInverse;
        double g0C = r0 * k.LayerInverse[0] + k.LayerPart[0] * fC;
        double g1C = r1 * k.LayerInverse[1] + k.LayerPart[1] * g0C;
        double g2C = r2 * k.LayerInverse[2] + k.LayerPart[2] * g1C;
        double g3C = r3 * k.LayerInverse[3] + k.LayerPart[3] * g2C;
        double g4C = r4 * k.LayerInverse[4] + k.LayerPart[4] * g3C;
        (t.Ground[0], t.Ground[1], t.Ground[2], t.Ground[3], t.Ground[4], t.Ground[5]) = (g0C, g1C, g2C, g3C, g4C, r5 * k.LayerInverse[5] + k.LayerPart[5] * g4C);
    }

    /// <summary>Two nodes that meet: their sums, and what meets each of them, taken out of the network by one division.</summary>
    private readonly struct Pair
    {
        private readonly Vector256<double> firstSum, secondSum, link;

        /// <summary>One over the pair's determinant.</summary>
        public readonly Vector256<double> Goes;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Pair(Vector256<double> firstSum, Vector256<double> secondSum, Vector256<double> link)
        {
            (this.firstSum, this.secondSum, this.link) = (firstSum, secondSum, link);
            Goes = Vector256<double>.One / (firstSum * secondSum - link * link);
        }

        /// <summary>What the first takes of what comes to both, before <see cref="Goes"/>.</summary>
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Vector256<double> First(Vector256<double> toFirst, Vector256<double> toSecond) => Fma(secondSum, toFirst, link * toSecond);

        /// <summary>What the second takes.</summary>
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Vector256<double> Second(Vector256<double> toFirst, Vector256<double> toSecond) => Fma(link, toFirst, firstSum * toSecond);
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

    // Constant for a length of step: what is stored, and what each layer lets through, seen from the one above (k.GroundPart, k.LayerPart).
    private void Find(ref PerNode capacity, ref HouseRates g, double perS)
    {
        for (at = 0; at < kept.Length; at++)
        {
            if (kept[at].PerS == perS)
            {
                return;
            }
        }

        at = next;
        next = (next + 1) % kept.Length;
        ref Factors k = ref kept[at];
        k.PerS = perS;
        double below = g.Deep, lets = 0.0;
        for (int layer = Layers - 1; layer >= 0; layer--)
        {
            double up = layer > 0 ? g.Below[layer - 1] : g.FloorGround;
            k.GroundPerS[layer] = capacity.Ground[layer] * perS;
            double sum = k.GroundPerS[layer] + up + (layer == Layers - 1 ? below : below - below * lets) + (layer == 2 ? g.Edge : 0.0);
            k.LayerInverse[layer] = 1.0 / sum;
            lets = up / sum;
            k.LayerPart[layer] = lets;
            below = up;
        }

        k.GroundPart = g.FloorGround - g.FloorGround * k.LayerPart[0];
        k.MassPerS = capacity.Mass * perS;
        k.InnerPerS.Four = capacity.Inner.Four * perS;
        k.OuterPerS.Four = capacity.Outer.Four * perS;
        k.MassInverse = 1.0 / (k.MassPerS + g.MassAir);
        k.MassPart = g.MassAir * k.MassInverse;
    }
    /// <summary>What is constant for a length of step.</summary>
    private struct Factors
    {
        public double PerS, MassInverse, MassPart, GroundPart, MassPerS;
        public PerPart InnerPerS, OuterPerS; // capacity over the step, W/K
        public PerLayer LayerInverse, LayerPart, GroundPerS;
    }
}
