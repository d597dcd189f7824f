using System.Runtime.CompilerServices;

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
    private double mInverse, mPart, groundPart;
    private PerLayer layerInverse, layerPart;

    /// <summary>Takes one step.</summary>
    /// <param name="t">Temperatures, °C; changed in place.</param>
    /// <param name="was">The temperatures before.</param>
    /// <param name="capacity">Heat capacities, J/K.</param>
    /// <param name="gain">Heat put into each node, W.</param>
    /// <param name="g">Links; those of ground and mass must stay what they were while the length of step stays.</param>
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
            FactorGround(ref capacity, ref g, perS);
        }

        was = t;
        double outsideC = bounds.OutsideC, skyC = bounds.SkyC;

        // Ground from below, then the mass.
        PerLayer right = default;
        right[5] = capacity.Ground[5] * perS * t.Ground[5] + gain.Ground[5] + g.Deep * bounds.DeepC;
        right[4] = capacity.Ground[4] * perS * t.Ground[4] + gain.Ground[4] + layerPart[5] * right[5];
        right[3] = capacity.Ground[3] * perS * t.Ground[3] + gain.Ground[3] + layerPart[4] * right[4];
        right[2] = capacity.Ground[2] * perS * t.Ground[2] + gain.Ground[2] + layerPart[3] * right[3] + g.Edge * outsideC;
        right[1] = capacity.Ground[1] * perS * t.Ground[1] + gain.Ground[1] + layerPart[2] * right[2];
        right[0] = capacity.Ground[0] * perS * t.Ground[0] + gain.Ground[0] + layerPart[1] * right[1];
        double mRight = capacity.Mass * perS * t.Mass + gain.Mass;

        // Outer faces.
        double o0Inverse, o1Inverse, o2Inverse = 0.0, o3Inverse = 0.0, o0Right, o1Right, o2Right = 0.0, o3Right = 0.0;
        double p0Sum, p1Sum, p2Sum = 0.0, p3Sum = 0.0, p0Right, p1Right, p2Right = 0.0, p3Right = 0.0;
        double c0 = g.Core[0], c1 = g.Core[1], c2 = g.Core[2], c3 = g.Core[3];
        o0Right = capacity.Outer[0] * perS * t.Outer[0] + gain.Outer[0] + (g.OuterAir[0] + g.OuterGround[0]) * outsideC + g.OuterSky[0] * skyC;
        o0Inverse = 1.0 / (capacity.Outer[0] * perS + g.OuterAir[0] + g.OuterGround[0] + g.OuterSky[0] + c0);
        p0Right = (capacity.Inner[0] * perS + g.Latent[0]) * t.Inner[0] + gain.Inner[0] + c0 * o0Inverse * o0Right;
        p0Sum = capacity.Inner[0] * perS + g.Latent[0] + c0 - c0 * c0 * o0Inverse + g.InnerAir[0] + g.FloorParts[0] + g.CanopyParts[0] + g.CurtainParts[0]
            + g.UpperPair + g.WallRoof + g.WallOpaqueRoof;
        o1Right = capacity.Outer[1] * perS * t.Outer[1] + gain.Outer[1] + (g.OuterAir[1] + g.OuterGround[1]) * outsideC + g.OuterSky[1] * skyC;
        o1Inverse = 1.0 / (capacity.Outer[1] * perS + g.OuterAir[1] + g.OuterGround[1] + g.OuterSky[1] + c1);
        p1Right = (capacity.Inner[1] * perS + g.Latent[1]) * t.Inner[1] + gain.Inner[1] + c1 * o1Inverse * o1Right;
        p1Sum = capacity.Inner[1] * perS + g.Latent[1] + c1 - c1 * c1 * o1Inverse + g.InnerAir[1] + g.FloorParts[1] + g.CanopyParts[1] + g.CurtainParts[1]
            + g.LowerPair + g.WallRoof + g.WallRoofOpaque;
        if (opaqueAbove)
        {
            o2Right = capacity.Outer[2] * perS * t.Outer[2] + gain.Outer[2] + (g.OuterAir[2] + g.OuterGround[2]) * outsideC + g.OuterSky[2] * skyC;
            o2Inverse = 1.0 / (capacity.Outer[2] * perS + g.OuterAir[2] + g.OuterGround[2] + g.OuterSky[2] + c2);
            p2Right = (capacity.Inner[2] * perS + g.Latent[2]) * t.Inner[2] + gain.Inner[2] + c2 * o2Inverse * o2Right;
            p2Sum = capacity.Inner[2] * perS + g.Latent[2] + c2 - c2 * c2 * o2Inverse + g.InnerAir[2] + g.FloorParts[2] + g.CanopyParts[2] + g.CurtainParts[2]
                + g.UpperPair + g.WallRoofOpaque + g.WallOpaqueRoofOpaque;
        }

        if (opaqueBelow)
        {
            o3Right = capacity.Outer[3] * perS * t.Outer[3] + gain.Outer[3] + (g.OuterAir[3] + g.OuterGround[3]) * outsideC + g.OuterSky[3] * skyC;
            o3Inverse = 1.0 / (capacity.Outer[3] * perS + g.OuterAir[3] + g.OuterGround[3] + g.OuterSky[3] + c3);
            p3Right = (capacity.Inner[3] * perS + g.Latent[3]) * t.Inner[3] + gain.Inner[3] + c3 * o3Inverse * o3Right;
            p3Sum = capacity.Inner[3] * perS + g.Latent[3] + c3 - c3 * c3 * o3Inverse + g.InnerAir[3] + g.FloorParts[3] + g.CanopyParts[3] + g.CurtainParts[3]
                + g.LowerPair + g.WallOpaqueRoof + g.WallOpaqueRoofOpaque;
        }

        // The nine: what is stored and what leaves each, then who meets whom.
        double cSum = capacity.Curtain * perS + g.Latent[4] + g.CurtainBelow + g.CurtainAbove + g.FloorCurtain + g.CanopyCurtain + g.CurtainSky
            + g.CurtainParts[0] + g.CurtainParts[1] + g.CurtainParts[2] + g.CurtainParts[3];
        double cRight = (capacity.Curtain * perS + g.Latent[4]) * t.Curtain + gain.Curtain + g.CurtainSky * skyC;
        double kSum = capacity.Canopy * perS + g.Latent[5] + g.CanopyAir + g.CanopyCurtain + g.CanopyFloor + g.CanopySky
            + g.CanopyParts[0] + g.CanopyParts[1] + g.CanopyParts[2] + g.CanopyParts[3];
        double kRight = (capacity.Canopy * perS + g.Latent[5]) * t.Canopy + gain.Canopy + g.CanopySky * skyC;
        double fSum = capacity.Floor * perS + g.Latent[6] + g.FloorAir + g.FloorCurtain + g.CanopyFloor + g.FloorSky + groundPart
            + g.FloorParts[0] + g.FloorParts[1] + g.FloorParts[2] + g.FloorParts[3];
        double fRight = (capacity.Floor * perS + g.Latent[6]) * t.Floor + gain.Floor + g.FloorSky * skyC + layerPart[0] * right[0];
        double aSum = capacity.AirAbove * perS + g.OutsideAbove + g.Upward + g.Exchange + g.CurtainAbove + g.InnerAir[0] + g.InnerAir[2];
        double aRight = capacity.AirAbove * perS * t.AirAbove + gain.AirAbove + g.OutsideAbove * outsideC;
        double bSum = capacity.AirBelow * perS + g.OutsideBelow + g.IntakeBelow + g.Downward + g.Exchange + g.CurtainBelow + g.InnerAir[1] + g.InnerAir[3]
            + g.FloorAir + g.CanopyAir + g.MassAir - g.MassAir * mPart;
        double bRight = capacity.AirBelow * perS * t.AirBelow + gain.AirBelow + g.OutsideBelow * outsideC + g.IntakeBelow * bounds.IntakeC + mPart * mRight;
        double cP0 = g.CurtainParts[0], cP1 = g.CurtainParts[1], cP2 = g.CurtainParts[2], cP3 = g.CurtainParts[3];
        double cK = g.CanopyCurtain, cF = g.FloorCurtain, cA = g.CurtainAbove, cB = g.CurtainBelow;
        double p2P3 = g.WallOpaqueRoofOpaque, p2P1 = g.WallRoofOpaque, p2P0 = g.UpperPair, p2K = g.CanopyParts[2], p2F = g.FloorParts[2], p2A = g.InnerAir[2], p2B = 0.0;
        double p3P1 = g.LowerPair, p3P0 = g.WallOpaqueRoof, p3K = g.CanopyParts[3], p3F = g.FloorParts[3], p3A = 0.0, p3B = g.InnerAir[3];
        double p1P0 = g.WallRoof, p1K = g.CanopyParts[1], p1F = g.FloorParts[1], p1A = 0.0, p1B = g.InnerAir[1];
        double p0K = g.CanopyParts[0], p0F = g.FloorParts[0], p0A = g.InnerAir[0], p0B = 0.0;
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
            t.Inner[3] = p3C;
            t.Outer[3] = (o3Right + c3 * p3C) * o3Inverse;
        }

        if (opaqueAbove)
        {
            p2C = (p2Right + p2B * bC + p2A * aC + p2F * fC + p2K * kC + p2P0 * p0C + p2P1 * p1C + p2P3 * p3C) * p2Inverse;
            t.Inner[2] = p2C;
            t.Outer[2] = (o2Right + c2 * p2C) * o2Inverse;
        }

        if (curtain)
        {
            cC = (cRight + cB * bC + cA * aC + cF * fC + cK * kC + cP0 * p0C + cP1 * p1C + cP3 * p3C + cP2 * p2C) * cInverse;
        }
        else
        {
            cC = (cRight + cB * bC) * cInverse;
        }

        t.AirAbove = aC;
        t.AirBelow = bC;
        t.Curtain = cC;
        t.Canopy = kC;
        t.Floor = fC;
        t.Inner[0] = p0C;
        t.Inner[1] = p1C;
        t.Outer[0] = (o0Right + c0 * p0C) * o0Inverse;
        t.Outer[1] = (o1Right + c1 * p1C) * o1Inverse;
        t.Mass = (mRight + g.MassAir * bC) * mInverse;
        double above = fC;
        for (int layer = 0; layer < Layers; layer++)
        {
            above = right[layer] * layerInverse[layer] + layerPart[layer] * above;
            t.Ground[layer] = above;
        }
    }

    // Each layer seen from the one above: what it lets through (groundPart, layerPart) is constant for a length of step.
    private void FactorGround(ref PerNode capacity, ref HouseRates g, double perS)
    {
        forPerS = perS;
        double below = g.Deep, lets = 0.0;
        for (int layer = Layers - 1; layer >= 0; layer--)
        {
            double up = layer > 0 ? g.Below[layer - 1] : g.FloorGround;
            double sum = capacity.Ground[layer] * perS + up + (layer == Layers - 1 ? below : below - below * lets) + (layer == 2 ? g.Edge : 0.0);
            layerInverse[layer] = 1.0 / sum;
            lets = up / sum;
            layerPart[layer] = lets;
            below = up;
        }

        groundPart = g.FloorGround - g.FloorGround * layerPart[0];
        mInverse = 1.0 / (capacity.Mass * perS + g.MassAir);
        mPart = g.MassAir * mInverse;
    }
}
