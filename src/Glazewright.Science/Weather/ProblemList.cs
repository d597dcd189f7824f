namespace Glazewright.Science.Weather;

/// <summary>Problems in file order; the first forty are kept, the rest counted.</summary>
internal sealed class ProblemList
{
    private const int Kept = 40;
    private readonly List<WeatherProblem> _kept = [];
    private int _more;

    public bool Any => _kept.Count > 0;

    public void Add(WeatherProblem problem)
    {
        if (_kept.Count < Kept)
        {
            _kept.Add(problem);
        }
        else
        {
            _more++;
        }
    }

    public WeatherReading.Refused ToRefused()
    {
        var list = _kept.OrderBy(p => p.Line == 0 ? int.MaxValue : p.Line).ThenBy(p => p.Column).ToList();
        if (_more > 0)
        {
            list.Add(WeatherWords.MoreProblems(_more));
        }

        return new WeatherReading.Refused(list);
    }
}
