using Glazewright.Design.Contracts;

namespace Glazewright.Design.Calibration;

/// <summary>How well a log tells a size.</summary>
public enum SizeStanding
{
    /// <summary>Well enough to be used.</summary>
    Told,

    /// <summary>It ended at a bound of its range: what is missing elsewhere is put on it.</summary>
    AtBound,

    /// <summary>The log says little of it: its uncertainty is a large part of its range.</summary>
    NotTold,

    /// <summary>Not looked for: taken over from an earlier fit.</summary>
    Given,
}

/// <summary>A size taken over from an earlier fit.</summary>
/// <param name="Size">Which.</param>
/// <param name="Value">Its value.</param>
public readonly record struct GivenSize(FittedSize Size, double Value);

/// <summary>A fitted size.</summary>
/// <param name="Range">What it is and where it was looked for.</param>
/// <param name="Value">Where it ended.</param>
/// <param name="PlusMinusValue">Two standard errors; not-a-number at a bound.</param>
/// <param name="Standing">What to think of it.</param>
/// <param name="TwinWord">Another size that the log can hardly tell from it; empty for none.</param>
/// <param name="TwinCorrelationRatio">How they go together, −1 to 1.</param>
public sealed record FittedValue(SizeRange Range, double Value, double PlusMinusValue, SizeStanding Standing, string TwinWord, double TwinCorrelationRatio);

/// <summary>Errors of the computed air over some hours.</summary>
/// <param name="Id">Short name.</param>
/// <param name="Name">Which hours.</param>
/// <param name="Count">Number of steps.</param>
/// <param name="AirRmsK">Root mean square of the air's error.</param>
/// <param name="AirBiasK">Its mean, computed less measured.</param>
/// <param name="SkillRatio">1 − error over that of the mean by the hour of day.</param>
/// <param name="HumidityRmsPercent">Error of relative humidity; not-a-number where none is logged.</param>
/// <param name="HumidityBiasPercent">Its mean.</param>
/// <param name="VapourRmsKgPerM3">Error of water in the air.</param>
/// <param name="VapourBiasKgPerM3">Its mean.</param>
public sealed record ScoreLine(
    string Id, string Name, int Count, double AirRmsK, double AirBiasK, double SkillRatio, double HumidityRmsPercent, double HumidityBiasPercent, double VapourRmsKgPerM3, double VapourBiasKgPerM3);

/// <summary>What became of a mark.</summary>
public enum MarkState
{
    /// <summary>Met.</summary>
    Met,

    /// <summary>Missed.</summary>
    Missed,

    /// <summary>The log has no such hours.</summary>
    NoHours,
}

/// <summary>A mark that was set before any house was looked at.</summary>
/// <param name="Id">Short name.</param>
/// <param name="Name">What is asked.</param>
/// <param name="Found">What was found, in words.</param>
/// <param name="Asked">The limit, in words.</param>
/// <param name="State">What became of it.</param>
public sealed record CalibrationMark(string Id, string Name, string Found, string Asked, MarkState State);

/// <summary>An hour of the log, measured and computed.</summary>
/// <param name="Start">Its beginning by the log's clock, as 2018-08-14 13:00.</param>
/// <param name="Week">Week from 1.</param>
/// <param name="Trained">True in a week that was fitted on.</param>
/// <param name="MeasuredC">Air measured; not-a-number where it was not.</param>
/// <param name="ComputedC">Air computed.</param>
/// <param name="MeasuredPercent">Humidity measured.</param>
/// <param name="ComputedPercent">Humidity computed.</param>
/// <param name="OutsideC">Outside air.</param>
/// <param name="GlobalWm2">Sun outside.</param>
public sealed record LogHour(
    string Start, int Week, bool Trained, double MeasuredC, double ComputedC, double MeasuredPercent, double ComputedPercent, double OutsideC, double GlobalWm2);

/// <summary>The mean error at an hour of the day, scored weeks.</summary>
/// <param name="Hour">0 to 23.</param>
/// <param name="Count">Steps.</param>
/// <param name="AirBiasK">Mean error of the air.</param>
/// <param name="AirRmsK">Root mean square.</param>
/// <param name="HumidityBiasPercent">Mean error of humidity.</param>
public sealed record HourError(int Hour, int Count, double AirBiasK, double AirRmsK, double HumidityBiasPercent);

/// <summary>A built house fitted to its log, and how well the fitted house does on weeks it was not fitted on.</summary>
/// <param name="Name">The log.</param>
/// <param name="House">The house.</param>
/// <param name="FirstStamp">First step by the log's clock.</param>
/// <param name="LastStamp">Last step.</param>
/// <param name="StepMinutes">Step of the log.</param>
/// <param name="Steps">Number of steps.</param>
/// <param name="TrainedWeeks">Weeks fitted on.</param>
/// <param name="ScoredWeeks">Weeks scored.</param>
/// <param name="Sizes">Fitted sizes.</param>
/// <param name="Rounds">Rounds of the search.</param>
/// <param name="Settled">False when the rounds ran out.</param>
/// <param name="Start">Score before anything was fitted.</param>
/// <param name="Trained">Score of the weeks that were fitted on.</param>
/// <param name="Scores">Scores of the other weeks: all, then by kind of hours.</param>
/// <param name="Weeks">Score of each scored week.</param>
/// <param name="Marks">Marks and what became of them.</param>
/// <param name="Hours">The log by the hour.</param>
/// <param name="ByHour">Errors by the hour of day.</param>
/// <param name="JobFragment">What a job can take over, JSON; empty for nothing.</param>
/// <param name="Report">Findings: what is to be known of log and fit; and what is left out.</param>
public sealed record CalibrationResult(
    string Name,
    string House,
    string FirstStamp,
    string LastStamp,
    int StepMinutes,
    int Steps,
    EqList<int> TrainedWeeks,
    EqList<int> ScoredWeeks,
    EqList<FittedValue> Sizes,
    int Rounds,
    bool Settled,
    ScoreLine Start,
    ScoreLine Trained,
    EqList<ScoreLine> Scores,
    EqList<ScoreLine> Weeks,
    EqList<CalibrationMark> Marks,
    EqList<LogHour> Hours,
    EqList<HourError> ByHour,
    string JobFragment,
    StageReport Report);
