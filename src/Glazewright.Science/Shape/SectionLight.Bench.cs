namespace Glazewright.Science.Shape;

/// <content>Where one thread computes.</content>
public sealed partial class SectionLight
{
    /// <summary>Room that one thread computes in; its results are read before the next run.</summary>
    public sealed class Bench
    {
        internal Bench(int points, int bins)
        {
            Reached = new double[(bins + 1) * Faces * Months];
            Enters = new double[Faces * Months];
            Strikes = new double[Sides * Months];
            Sent = new double[Sides * Months];
            Bright = new double[Sides * Months];
            PointWhPerM2 = new double[points * Months];
            View = new double[Sides * Sides];
        }

        internal double[] Reached { get; }

        internal double[] Enters { get; }

        internal double[] Strikes { get; }

        internal double[] Sent { get; }

        internal double[] Bright { get; }

        internal double[] View { get; }

        internal double[] PointWhPerM2 { get; }

        /// <summary>Light at a point in a month, Wh/m².</summary>
        /// <param name="point">0 at the near wall.</param>
        /// <param name="month">0 January.</param>
        /// <returns>Wh/m².</returns>
        public double LightWhPerM2(int point, int month) => PointWhPerM2[(point * Months) + month];

        /// <summary>Mean over the points, Wh/m².</summary>
        /// <param name="month">0 January.</param>
        /// <returns>Wh/m².</returns>
        public double MeanWhPerM2(int month)
        {
            double sum = 0;
            for (int k = month; k < PointWhPerM2.Length; k += Months)
            {
                sum += PointWhPerM2[k];
            }

            return sum * Months / PointWhPerM2.Length;
        }

        /// <summary>Darkest point, Wh/m².</summary>
        /// <param name="month">0 January.</param>
        /// <returns>Wh/m².</returns>
        public double LeastWhPerM2(int month)
        {
            double least = double.PositiveInfinity;
            for (int k = month; k < PointWhPerM2.Length; k += Months)
            {
                least = Math.Min(least, PointWhPerM2[k]);
            }

            return least;
        }

        /// <summary>All that came through the covers, and where it stayed: absorbed by floor and opaque parts, taken by covers. Wh a metre of house.</summary>
        /// <param name="month">0 January.</param>
        /// <returns>Both sums; they agree when the books close.</returns>
        public (double EnteredWhM, double StayedWhM) Books(int month) => (Entered[month], Stayed[month]);

        internal double[] Entered { get; } = new double[Months];

        internal double[] Stayed { get; } = new double[Months];
    }
}
