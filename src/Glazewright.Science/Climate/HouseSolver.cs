using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Glazewright.Science.Climate;

/// <summary>
/// One implicit Euler step of the house's network, its elimination written out. Ground, slow mass and the four outer faces hang on one node each and are taken in
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
        double p0Sum = pSum.GetElement(0), p1Sum = pSum.GetElement(1), p2Sum = pSum.GetElement(2), p3Sum = pSum.GetElement(3);
        double p0Right = pRight.GetElement(0), p1Right = pRight.GetElement(1), p2Right = pRight.GetElement(2), p3Right = pRight.GetElement(3);

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
        double cP0 = curtainParts.GetElement(0), cP1 = curtainParts.GetElement(1), cP2 = curtainParts.GetElement(2), cP3 = curtainParts.GetElement(3);
        double cK = g.CanopyCurtain, cF = g.FloorCurtain, cA = g.CurtainAbove, cB = g.CurtainBelow;
        double p2P3 = ring.GetElement(2), p2P1 = ring.GetElement(1), p2P0 = g.UpperPair, p2K = canopyParts.GetElement(2), p2F = floorParts.GetElement(2), p2A = innerAir.GetElement(2), p2B = 0.0;
        double p3P1 = g.LowerPair, p3P0 = ring.GetElement(3), p3K = canopyParts.GetElement(3), p3F = floorParts.GetElement(3), p3A = 0.0, p3B = innerAir.GetElement(3);
        double p1P0 = ring.GetElement(0), p1K = canopyParts.GetElement(1), p1F = floorParts.GetElement(1), p1A = 0.0, p1B = innerAir.GetElement(1);
        double p0K = canopyParts.GetElement(0), p0F = floorParts.GetElement(0), p0A = innerAir.GetElement(0), p0B = 0.0;
        double kF = g.CanopyFloor, kA = 0.0, kB = g.CanopyAir, fA = 0.0, fB = g.FloorAir, aB = g.Exchange;

        double cInverse, p2Inverse = 0.0, p3Inverse = 0.0, p1Inverse, p0Inverse, kInverse, fInverse, part;
        if (curtain)
        {
            cInverse = 1.0 / cSum;
            part = cP2 * cInverse;
            p2Sum = Fma(-part, cP2, p2Sum);
            p2P3 = Fma(part, cP3, p2P3);
            p2P1 = Fma(part, cP1, p2P1);
            p2P0 = Fma(part, cP0, p2P0);
            p2K = Fma(part, cK, p2K);
            p2F = Fma(part, cF, p2F);
            p2A = Fma(part, cA, p2A);
            p2B = Fma(part, cB, p2B);
            p2Right = Fma(part, cRight, p2Right);
            part = cP3 * cInverse;
            p3Sum = Fma(-part, cP3, p3Sum);
            p3P1 = Fma(part, cP1, p3P1);
            p3P0 = Fma(part, cP0, p3P0);
            p3K = Fma(part, cK, p3K);
            p3F = Fma(part, cF, p3F);
            p3A = Fma(part, cA, p3A);
            p3B = Fma(part, cB, p3B);
            p3Right = Fma(part, cRight, p3Right);
            part = cP1 * cInverse;
            p1Sum = Fma(-part, cP1, p1Sum);
            p1P0 = Fma(part, cP0, p1P0);
            p1K = Fma(part, cK, p1K);
            p1F = Fma(part, cF, p1F);
            p1A = Fma(part, cA, p1A);
            p1B = Fma(part, cB, p1B);
            p1Right = Fma(part, cRight, p1Right);
            part = cP0 * cInverse;
            p0Sum = Fma(-part, cP0, p0Sum);
            p0K = Fma(part, cK, p0K);
            p0F = Fma(part, cF, p0F);
            p0A = Fma(part, cA, p0A);
            p0B = Fma(part, cB, p0B);
            p0Right = Fma(part, cRight, p0Right);
            part = cK * cInverse;
            kSum = Fma(-part, cK, kSum);
            kF = Fma(part, cF, kF);
            kA = Fma(part, cA, kA);
            kB = Fma(part, cB, kB);
            kRight = Fma(part, cRight, kRight);
            part = cF * cInverse;
            fSum = Fma(-part, cF, fSum);
            fA = Fma(part, cA, fA);
            fB = Fma(part, cB, fB);
            fRight = Fma(part, cRight, fRight);
            part = cA * cInverse;
            aSum = Fma(-part, cA, aSum);
            aB = Fma(part, cB, aB);
            aRight = Fma(part, cRight, aRight);
            part = cB * cInverse;
            bSum = Fma(-part, cB, bSum);
            bRight = Fma(part, cRight, bRight);
        }
        else
        {
            // Open: nothing but the air below touches the gathered cloth.
            cInverse = 1.0 / cSum;
            part = cB * cInverse;
            bSum = Fma(-part, cB, bSum);
            bRight = Fma(part, cRight, bRight);
        }

        if (opaqueAbove)
        {
            p2Inverse = 1.0 / p2Sum;
            part = p2P3 * p2Inverse;
            p3Sum = Fma(-part, p2P3, p3Sum);
            p3P1 = Fma(part, p2P1, p3P1);
            p3P0 = Fma(part, p2P0, p3P0);
            p3K = Fma(part, p2K, p3K);
            p3F = Fma(part, p2F, p3F);
            p3A = Fma(part, p2A, p3A);
            p3B = Fma(part, p2B, p3B);
            p3Right = Fma(part, p2Right, p3Right);
            part = p2P1 * p2Inverse;
            p1Sum = Fma(-part, p2P1, p1Sum);
            p1P0 = Fma(part, p2P0, p1P0);
            p1K = Fma(part, p2K, p1K);
            p1F = Fma(part, p2F, p1F);
            p1A = Fma(part, p2A, p1A);
            p1B = Fma(part, p2B, p1B);
            p1Right = Fma(part, p2Right, p1Right);
            part = p2P0 * p2Inverse;
            p0Sum = Fma(-part, p2P0, p0Sum);
            p0K = Fma(part, p2K, p0K);
            p0F = Fma(part, p2F, p0F);
            p0A = Fma(part, p2A, p0A);
            p0B = Fma(part, p2B, p0B);
            p0Right = Fma(part, p2Right, p0Right);
            part = p2K * p2Inverse;
            kSum = Fma(-part, p2K, kSum);
            kF = Fma(part, p2F, kF);
            kA = Fma(part, p2A, kA);
            kB = Fma(part, p2B, kB);
            kRight = Fma(part, p2Right, kRight);
            part = p2F * p2Inverse;
            fSum = Fma(-part, p2F, fSum);
            fA = Fma(part, p2A, fA);
            fB = Fma(part, p2B, fB);
            fRight = Fma(part, p2Right, fRight);
            part = p2A * p2Inverse;
            aSum = Fma(-part, p2A, aSum);
            aB = Fma(part, p2B, aB);
            aRight = Fma(part, p2Right, aRight);
            part = p2B * p2Inverse;
            bSum = Fma(-part, p2B, bSum);
            bRight = Fma(part, p2Right, bRight);
        }

        if (opaqueBelow)
        {
            p3Inverse = 1.0 / p3Sum;
            part = p3P1 * p3Inverse;
            p1Sum = Fma(-part, p3P1, p1Sum);
            p1P0 = Fma(part, p3P0, p1P0);
            p1K = Fma(part, p3K, p1K);
            p1F = Fma(part, p3F, p1F);
            p1A = Fma(part, p3A, p1A);
            p1B = Fma(part, p3B, p1B);
            p1Right = Fma(part, p3Right, p1Right);
            part = p3P0 * p3Inverse;
            p0Sum = Fma(-part, p3P0, p0Sum);
            p0K = Fma(part, p3K, p0K);
            p0F = Fma(part, p3F, p0F);
            p0A = Fma(part, p3A, p0A);
            p0B = Fma(part, p3B, p0B);
            p0Right = Fma(part, p3Right, p0Right);
            part = p3K * p3Inverse;
            kSum = Fma(-part, p3K, kSum);
            kF = Fma(part, p3F, kF);
            kA = Fma(part, p3A, kA);
            kB = Fma(part, p3B, kB);
            kRight = Fma(part, p3Right, kRight);
            part = p3F * p3Inverse;
            fSum = Fma(-part, p3F, fSum);
            fA = Fma(part, p3A, fA);
            fB = Fma(part, p3B, fB);
            fRight = Fma(part, p3Right, fRight);
            part = p3A * p3Inverse;
            aSum = Fma(-part, p3A, aSum);
            aB = Fma(part, p3B, aB);
            aRight = Fma(part, p3Right, aRight);
            part = p3B * p3Inverse;
            bSum = Fma(-part, p3B, bSum);
            bRight = Fma(part, p3Right, bRight);
        }

        p1Inverse = 1.0 / p1Sum;
        part = p1P0 * p1Inverse;
        p0Sum = Fma(-part, p1P0, p0Sum);
        p0K = Fma(part, p1K, p0K);
        p0F = Fma(part, p1F, p0F);
        p0A = Fma(part, p1A, p0A);
        p0B = Fma(part, p1B, p0B);
        p0Right = Fma(part, p1Right, p0Right);
        part = p1K * p1Inverse;
        kSum = Fma(-part, p1K, kSum);
        kF = Fma(part, p1F, kF);
        kA = Fma(part, p1A, kA);
        kB = Fma(part, p1B, kB);
        kRight = Fma(part, p1Right, kRight);
        part = p1F * p1Inverse;
        fSum = Fma(-part, p1F, fSum);
        fA = Fma(part, p1A, fA);
        fB = Fma(part, p1B, fB);
        fRight = Fma(part, p1Right, fRight);
        part = p1A * p1Inverse;
        aSum = Fma(-part, p1A, aSum);
        aB = Fma(part, p1B, aB);
        aRight = Fma(part, p1Right, aRight);
        part = p1B * p1Inverse;
        bSum = Fma(-part, p1B, bSum);
        bRight = Fma(part, p1Right, bRight);

        p0Inverse = 1.0 / p0Sum;
        part = p0K * p0Inverse;
        kSum = Fma(-part, p0K, kSum);
        kF = Fma(part, p0F, kF);
        kA = Fma(part, p0A, kA);
        kB = Fma(part, p0B, kB);
        kRight = Fma(part, p0Right, kRight);
        part = p0F * p0Inverse;
        fSum = Fma(-part, p0F, fSum);
        fA = Fma(part, p0A, fA);
        fB = Fma(part, p0B, fB);
        fRight = Fma(part, p0Right, fRight);
        part = p0A * p0Inverse;
        aSum = Fma(-part, p0A, aSum);
        aB = Fma(part, p0B, aB);
        aRight = Fma(part, p0Right, aRight);
        part = p0B * p0Inverse;
        bSum = Fma(-part, p0B, bSum);
        bRight = Fma(part, p0Right, bRight);

        kInverse = 1.0 / kSum;
        part = kF * kInverse;
        fSum = Fma(-part, kF, fSum);
        fA = Fma(part, kA, fA);
        fB = Fma(part, kB, fB);
        fRight = Fma(part, kRight, fRight);
        part = kA * kInverse;
        aSum = Fma(-part, kA, aSum);
        aB = Fma(part, kB, aB);
        aRight = Fma(part, kRight, aRight);
        part = kB * kInverse;
        bSum = Fma(-part, kB, bSum);
        bRight = Fma(part, kRight, bRight);

        fInverse = 1.0 / fSum;
        part = fA * fInverse;
        aSum = Fma(-part, fA, aSum);
        aB = Fma(part, fB, aB);
        aRight = Fma(part, fRight, aRight);
        part = fB * fInverse;
        bSum = Fma(-part, fB, bSum);
        bRight = Fma(part, fRight, bRight);

        // The two airs; a stream leaves its giver unchanged, so it stands in the receiver's row alone.
        double fromBelow = aB + g.Upward, fromAbove = aB + g.Downward;
        double determinant = 1.0 / (aSum * bSum - fromBelow * fromAbove);
        double aC = (aRight * bSum + fromBelow * bRight) * determinant;
        double bC = (bRight * aSum + fromAbove * aRight) * determinant;
        double fC = Fma(fA, aC, Fma(fB, bC, fRight)) * fInverse;
        double kC = Fma(kF, fC, Fma(kA, aC, Fma(kB, bC, kRight))) * kInverse;
        double p0C = Fma(p0K, kC, Fma(p0F, fC, Fma(p0A, aC, Fma(p0B, bC, p0Right)))) * p0Inverse;
        double p1C = Fma(p1P0, p0C, Fma(p1K, kC, Fma(p1F, fC, Fma(p1A, aC, Fma(p1B, bC, p1Right))))) * p1Inverse;
        double p3C = t.Inner[3], p2C = t.Inner[2], cC;
        if (opaqueBelow)
        {
            p3C = Fma(p3P1, p1C, Fma(p3P0, p0C, Fma(p3K, kC, Fma(p3F, fC, Fma(p3A, aC, Fma(p3B, bC, p3Right)))))) * p3Inverse;
        }

        if (opaqueAbove)
        {
            p2C = Fma(p2P3, p3C, Fma(p2P1, p1C, Fma(p2P0, p0C, Fma(p2K, kC, Fma(p2F, fC, Fma(p2A, aC, Fma(p2B, bC, p2Right))))))) * p2Inverse;
        }

        if (curtain)
        {
            cC = Fma(cP2, p2C, Fma(cP3, p3C, Fma(cP1, p1C, Fma(cP0, p0C, Fma(cK, kC, Fma(cF, fC, Fma(cA, aC, Fma(cB, bC, cRight)))))))) * cInverse;
        }
        else
        {
            cC = Fma(cB, bC, cRight) * cInverse;
        }

        Vector256<double> inner = Vector256.Create(p0C, p1C, p2C, p3C);
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
    private static double Fma(double a, double b, double plus) => Math.FusedMultiplyAdd(a, b, plus);

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
