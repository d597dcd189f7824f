namespace Glazewright.Science.Weather;

/// <summary>Impossible values: a few are taken out as holes and listed, many refuse the file.</summary>
internal sealed partial class YearAssembly
{
    /// <summary>One hour in a hundred: more is no slip of an instrument but a wrong column, unit or file (our choice).</summary>
    private const int MostImpossibleHours = CommonYear.Hours / 100;

    private readonly List<WeatherRejected> _rejected = [];

    private void DropImpossible()
    {
        foreach (FieldLimit limit in FieldLimit.All)
        {
            double[] x = raw.Columns[limit.Target];
            int count = 0;
            int first = -1;
            double firstValue = 0;
            for (int h = 0; h < x.Length; h++)
            {
                if (x[h] < limit.Least || x[h] > limit.Most)
                {
                    (first, firstValue) = count++ == 0 ? (h, x[h]) : (first, firstValue);
                    x[h] = double.NaN;
                }
            }

            if (count > MostImpossibleHours)
            {
                problems.Add(WeatherWords.TooManyImpossible(raw.Line[first], raw.FileColumn[limit.Target], limit, count, firstValue, MostImpossibleHours));
            }
            else if (count > 0)
            {
                _rejected.Add(new WeatherRejected(limit.Field, limit.Unit, count, first, raw.Line[first], firstValue, limit.Least, limit.Most, limit.Filled));
            }
        }
    }
}
