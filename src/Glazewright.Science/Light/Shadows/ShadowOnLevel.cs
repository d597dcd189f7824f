namespace Glazewright.Science.Light.Shadows;

/// <summary>Shadow of a slender bar on a level plane: a parallelogram.</summary>
/// <param name="LengthM">Of its long sides, m.</param>
/// <param name="WidthM">Between them, m.</param>
/// <param name="CentreXM">Its middle, m.</param>
/// <param name="CentreYM">Its middle, m.</param>
public readonly record struct ShadowOnLevel(double LengthM, double WidthM, double CentreXM, double CentreYM)
{
    /// <summary>The shadow of a bar.</summary>
    /// <param name="bar">The bar; the part of it below the level does not count.</param>
    /// <param name="towards">Towards the light, unit, above the horizon.</param>
    /// <param name="levelM">Height of the plane, m.</param>
    /// <returns>The shadow; null when the bar lies below the level or points at the light, or the light comes from below.</returns>
    public static ShadowOnLevel? Of(ShadeBar bar, Vector3d towards, double levelM)
    {
        Vector3d a = bar.A;
        Vector3d b = bar.B;
        if (towards.Z <= 1e-6 || Math.Max(a.Z, b.Z) <= levelM)
        {
            return null;
        }

        if (a.Z < levelM)
        {
            a += (levelM - a.Z) / (b.Z - a.Z) * (b - a);
        }
        else if (b.Z < levelM)
        {
            b += (levelM - b.Z) / (a.Z - b.Z) * (a - b);
        }

        Vector3d across = (b - a).Cross(towards);
        if (across.LengthM < 1e-9)
        {
            return null;
        }

        across = across.Unit();
        Vector3d from = Down(a, towards, levelM);
        Vector3d to = Down(b, towards, levelM);
        Vector3d side = Down(2 * bar.HalfShadowM(across) * across, towards, 0);
        double length = (to - from).LengthM;
        if (length < 1e-9)
        {
            return null;
        }

        double width = Math.Abs((to - from).Cross(side).Z) / length;
        Vector3d middle = 0.5 * (from + to);
        return new ShadowOnLevel(length, width, middle.X, middle.Y);
    }

    private static Vector3d Down(Vector3d p, Vector3d towards, double levelM) => p - ((p.Z - levelM) / towards.Z * towards);
}
