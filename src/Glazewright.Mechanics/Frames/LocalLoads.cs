namespace Glazewright.Mechanics.Frames;

/// <summary>A member's loads turned to its own axes: x from start to end, y to the left of it.</summary>
internal sealed class LocalLoads
{
    internal readonly record struct SpreadPart(double FromM, double ToM, double AlongFrom, double AlongTo, double NormalFrom, double NormalTo);

    internal readonly record struct PointPart(double AtM, double AlongN, double NormalN, double MomentNm);

    internal List<SpreadPart> Spreads { get; } = [];

    internal List<PointPart> Points { get; } = [];

    internal static LocalLoads Of(IEnumerable<MemberLoad> loads, double lengthM, double cosine, double sine)
    {
        var local = new LocalLoads();
        foreach (MemberLoad load in loads)
        {
            switch (load)
            {
                case MemberLoad.Spread s:
                    (double along, double normal) = Unit(s.Direction, cosine, sine);
                    local.Spreads.Add(new SpreadPart(
                        s.FromFraction * lengthM, s.ToFraction * lengthM, s.FromNPerM * along, s.ToNPerM * along,
                        s.FromNPerM * normal, s.ToNPerM * normal));
                    break;
                case MemberLoad.Point p:
                    // A load at the very end stays on the member, a millionth inside, so that the diagram sees it.
                    local.Points.Add(new PointPart(
                        Math.Min(p.AtFraction, 1 - 1e-6) * lengthM, p.AcrossN * cosine + p.UpN * sine, -p.AcrossN * sine + p.UpN * cosine, p.MomentNm));
                    break;
            }
        }

        return local;
    }

    /// <summary>Work-equivalent end forces of the loads, which for a prismatic member are minus its fixed-end forces.</summary>
    /// <param name="lengthM">Length, m.</param>
    /// <param name="f">Six local end forces, added to.</param>
    internal void AddEquivalentEndForces(double lengthM, double[] f)
    {
        foreach (SpreadPart s in Spreads)
        {
            // Cubic shape functions times an even load: degree 4, which three Gauss points integrate exactly.
            double half = (s.ToM - s.FromM) / 2;
            double middle = (s.ToM + s.FromM) / 2;
            for (int g = -1; g <= 1; g++)
            {
                double weight = g == 0 ? 8.0 / 9 : 5.0 / 9;
                double t = g * Math.Sqrt(0.6);
                double share = (1 + t) / 2;
                AddPoint(
                    lengthM, middle + half * t, weight * half * (s.AlongFrom + share * (s.AlongTo - s.AlongFrom)),
                    weight * half * (s.NormalFrom + share * (s.NormalTo - s.NormalFrom)), 0, f);
            }
        }

        foreach (PointPart p in Points)
        {
            AddPoint(lengthM, p.AtM, p.AlongN, p.NormalN, p.MomentNm, f);
        }
    }

    private static void AddPoint(double lengthM, double atM, double along, double normal, double moment, double[] f)
    {
        double r = atM / lengthM;
        double r2 = r * r;
        double r3 = r2 * r;
        f[0] += along * (1 - r);
        f[3] += along * r;
        f[1] += normal * (1 - 3 * r2 + 2 * r3) + moment * (-6 * r + 6 * r2) / lengthM;
        f[2] += normal * lengthM * (r - 2 * r2 + r3) + moment * (1 - 4 * r + 3 * r2);
        f[4] += normal * (3 * r2 - 2 * r3) + moment * (6 * r - 6 * r2) / lengthM;
        f[5] += normal * lengthM * (r3 - r2) + moment * (3 * r2 - 2 * r);
    }

    private static (double Along, double Normal) Unit(SpreadDirection direction, double cosine, double sine) => direction switch
    {
        SpreadDirection.UpPerLength => (sine, cosine),
        SpreadDirection.UpPerRun => (sine * Math.Abs(cosine), cosine * Math.Abs(cosine)),
        SpreadDirection.AcrossPerLength => (cosine, -sine),
        SpreadDirection.AcrossPerRise => (cosine * Math.Abs(sine), -sine * Math.Abs(sine)),
        SpreadDirection.Normal => (0, 1),
        SpreadDirection.Along => (1, 0),
        _ => throw new InvalidOperationException("A spread direction of an unknown kind."),
    };
}
