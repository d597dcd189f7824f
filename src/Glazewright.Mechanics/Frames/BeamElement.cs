namespace Glazewright.Mechanics.Frames;

/// <summary>
/// Stiffness of one straight prismatic plane-frame element in its own axes, with geometric stiffness from its axial force
/// and pins condensed out. Order of freedoms: start along, start normal, start rotation, end along, end normal, end rotation.
/// Przemieniecki, Theory of Matrix Structural Analysis, ch. 5 and 15 (from memory).
/// </summary>
internal static class BeamElement
{
    internal static double[,] Stiffness(double elasticPa, double areaM2, double inertiaM4, double lengthM, double tensionN)
    {
        var k = new double[6, 6];
        double axial = elasticPa * areaM2 / lengthM;
        k[0, 0] = k[3, 3] = axial;
        k[0, 3] = k[3, 0] = -axial;
        double ei = elasticPa * inertiaM4;
        double g = tensionN / (30 * lengthM);
        double shear = 12 * ei / (lengthM * lengthM * lengthM) + 36 * g;
        double couple = 6 * ei / (lengthM * lengthM) + 3 * lengthM * g;
        double near = 4 * ei / lengthM + 4 * lengthM * lengthM * g;
        double far = 2 * ei / lengthM - lengthM * lengthM * g;
        k[1, 1] = k[4, 4] = shear;
        k[1, 4] = k[4, 1] = -shear;
        k[1, 2] = k[2, 1] = k[1, 5] = k[5, 1] = couple;
        k[4, 2] = k[2, 4] = k[4, 5] = k[5, 4] = -couple;
        k[2, 2] = k[5, 5] = near;
        k[2, 5] = k[5, 2] = far;
        return k;
    }

    /// <summary>Takes a freedom out by demanding that its force is zero.</summary>
    /// <param name="k">Stiffness, changed in place.</param>
    /// <param name="f">Equivalent end forces, changed in place.</param>
    /// <param name="freedom">The freedom, 2 or 5.</param>
    internal static void Release(double[,] k, double[] f, int freedom)
    {
        double pivot = k[freedom, freedom];
        if (!(pivot > 0))
        {
            return;
        }

        for (int row = 0; row < 6; row++)
        {
            if (row == freedom)
            {
                continue;
            }

            double factor = k[row, freedom] / pivot;
            for (int column = 0; column < 6; column++)
            {
                k[row, column] -= factor * k[freedom, column];
            }

            f[row] -= factor * f[freedom];
        }

        for (int i = 0; i < 6; i++)
        {
            k[freedom, i] = k[i, freedom] = 0;
        }

        f[freedom] = 0;
    }
}
