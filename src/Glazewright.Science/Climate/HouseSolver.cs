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
            p2Sum -= part * cP2;
            p2P3 += part * cP3;
            p2P1 += part * cP1;
            p2P0 += part * cP0;
            p2K += part * cK;
            p2F += part * cF;
            p2A += part * cA;
            p2B += part * cB;
            p2Right += part * cRight;
            part = cP3 * cInverse;
            p3Sum -= part * cP3;
            p3P1 += part * cP1;
            p3P0 += part * cP0;
            p3K += part * cK;
            p3F += part * cF;
            p3A += part * cA;
            p3B += part * cB;
            p3Right += part * cRight;
            part = cP1 * cInverse;
            p1Sum -= part * cP1;
            p1P0 += part * cP0;
            p1K += part * cK;
            p1F += part * cF;
            p1A += part * cA;
            p1B += part * cB;
            p1Right += part * cRight;
            part = cP0 * cInverse;
            p0Sum -= part * cP0;
            p0K += part * cK;
            p0F += part * cF;
            p0A += part * cA;
            p0B += part * cB;
            p0Right += part * cRight;
            part = cK * cInverse;
            kSum -= part * cK;
            kF += part * cF;
            kA += part * cA;
            kB += part * cB;
            kRight += part * cRight;
            part = cF * cInverse;
            fSum -= part * cF;
            fA += part * cA;
            fB += part * cB;
            fRight += part * cRight;
            part = cA * cInverse;
            aSum -= part * cA;
            aB += part * cB;
            aRight += part * cRight;
            part = cB * cInverse;
            bSum -= part * cB;
            bRight += part * cRight;
        }
        else
        {
            // Open: nothing but the air below touches the gathered cloth.
            cInverse = 1.0 / cSum;
            part = cB * cInverse;
            bSum -= part * cB;
            bRight += part * cRight;
        }

        if (opaqueAbove)
        {
            p2Inverse = 1.0 / p2Sum;
            part = p2P3 * p2Inverse;
            p3Sum -= part * p2P3;
            p3P1 += part * p2P1;
            p3P0 += part * p2P0;
            p3K += part * p2K;
            p3F += part * p2F;
            p3A += part * p2A;
            p3B += part * p2B;
            p3Right += part * p2Right;
            part = p2P1 * p2Inverse;
            p1Sum -= part * p2P1;
            p1P0 += part * p2P0;
            p1K += part * p2K;
            p1F += part * p2F;
            p1A += part * p2A;
            p1B += part * p2B;
            p1Right += part * p2Right;
            part = p2P0 * p2Inverse;
            p0Sum -= part * p2P0;
            p0K += part * p2K;
            p0F += part * p2F;
            p0A += part * p2A;
            p0B += part * p2B;
            p0Right += part * p2Right;
            part = p2K * p2Inverse;
            kSum -= part * p2K;
            kF += part * p2F;
            kA += part * p2A;
            kB += part * p2B;
            kRight += part * p2Right;
            part = p2F * p2Inverse;
            fSum -= part * p2F;
            fA += part * p2A;
            fB += part * p2B;
            fRight += part * p2Right;
            part = p2A * p2Inverse;
            aSum -= part * p2A;
            aB += part * p2B;
            aRight += part * p2Right;
            part = p2B * p2Inverse;
            bSum -= part * p2B;
            bRight += part * p2Right;
        }

        if (opaqueBelow)
        {
            p3Inverse = 1.0 / p3Sum;
            part = p3P1 * p3Inverse;
            p1Sum -= part * p3P1;
            p1P0 += part * p3P0;
            p1K += part * p3K;
            p1F += part * p3F;
            p1A += part * p3A;
            p1B += part * p3B;
            p1Right += part * p3Right;
            part = p3P0 * p3Inverse;
            p0Sum -= part * p3P0;
            p0K += part * p3K;
            p0F += part * p3F;
            p0A += part * p3A;
            p0B += part * p3B;
            p0Right += part * p3Right;
            part = p3K * p3Inverse;
            kSum -= part * p3K;
            kF += part * p3F;
            kA += part * p3A;
            kB += part * p3B;
            kRight += part * p3Right;
            part = p3F * p3Inverse;
            fSum -= part * p3F;
            fA += part * p3A;
            fB += part * p3B;
            fRight += part * p3Right;
            part = p3A * p3Inverse;
            aSum -= part * p3A;
            aB += part * p3B;
            aRight += part * p3Right;
            part = p3B * p3Inverse;
            bSum -= part * p3B;
            bRight += part * p3Right;
        }

        p1Inverse = 1.0 / p1Sum;
        part = p1P0 * p1Inverse;
        p0Sum -= part * p1P0;
        p0K += part * p1K;
        p0F += part * p1F;
        p0A += part * p1A;
        p0B += part * p1B;
        p0Right += part * p1Right;
        part = p1K * p1Inverse;
        kSum -= part * p1K;
        kF += part * p1F;
        kA += part * p1A;
        kB += part * p1B;
        kRight += part * p1Right;
        part = p1F * p1Inverse;
        fSum -= part * p1F;
        fA += part * p1A;
        fB += part * p1B;
        fRight += part * p1Right;
        part = p1A * p1Inverse;
        aSum -= part * p1A;
        aB += part * p1B;
        aRight += part * p1Right;
        part = p1B * p1Inverse;
        bSum -= part * p1B;
        bRight += part * p1Right;

        p0Inverse = 1.0 / p0Sum;
        part = p0K * p0Inverse;
        kSum -= part * p0K;
        kF += part * p0F;
        kA += part * p0A;
        kB += part * p0B;
        kRight += part * p0Right;
        part = p0F * p0Inverse;
        fSum -= part * p0F;
        fA += part * p0A;
        fB += part * p0B;
        fRight += part * p0Right;
        part = p0A * p0Inverse;
        aSum -= part * p0A;
        aB += part * p0B;
        aRight += part * p0Right;
        part = p0B * p0Inverse;
        bSum -= part * p0B;
        bRight += part * p0Right;

        kInverse = 1.0 / kSum;
        part = kF * kInverse;
        fSum -= part * kF;
        fA += part * kA;
        fB += part * kB;
        fRight += part * kRight;
        part = kA * kInverse;
        aSum -= part * kA;
        aB += part * kB;
        aRight += part * kRight;
        part = kB * kInverse;
        bSum -= part * kB;
        bRight += part * kRight;

        fInverse = 1.0 / fSum;
        part = fA * fInverse;
        aSum -= part * fA;
        aB += part * fB;
        aRight += part * fRight;
        part = fB * fInverse;
        bSum -= part * fB;
        bRight += part * fRight;

        // The two airs; a stream leaves its giver unchanged, so it stands in the receiver's row alone.
        double fromBelow = aB + g.Upward, fromAbove = aB + g.Downward;
        double determinant = 1.0 / (aSum * bSum - fromBelow * fromAbove);
        double aC = (aRight * bSum + fromBelow * bRight) * determinant;
        double bC = (bRight * aSum + fromAbove * aRight) * determinant;
        double fC = (fRight + fB * bC + fA * aC) * fInverse;
        double kC = (kRight + kB * bC + kA * aC + kF * fC) * kInverse;
        double p0C = (p0Right + p0B * bC + p0A * aC + p0F * fC + p0K * kC) * p0Inverse;
        double p1C = (p1Right + p1B * bC + p1A * aC + p1F * fC + p1K * kC + p1P0 * p0C) * p1Inverse;
        double p3C = t.Inner[3], p2C = t.Inner[2], cC;
        if (opaqueBelow)
        {
            p3C = (p3Right + p3B * bC + p3A * aC + p3F * fC + p3K * kC + p3P0 * p0C + p3P1 * p1C) * p3Inverse;
        }

        if (opaqueAbove)
        {
            p2C = (p2Right + p2B * bC + p2A * aC + p2F * fC + p2K * kC + p2P0 * p0C + p2P1 * p1C + p2P3 * p3C) * p2Inverse;
        }

        if (curtain)
        {
            cC = (cRight + cB * bC + cA * aC + cF * fC + cK * kC + cP0 * p0C + cP1 * p1C + cP3 * p3C + cP2 * p2C) * cInverse;
        }
        else
        {
            cC = (cRight + cB * bC) * cInverse;
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
