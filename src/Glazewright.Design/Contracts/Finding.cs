namespace Glazewright.Design.Contracts;

/// <summary>How bad a finding is.</summary>
public enum Severity
{
    /// <summary>Good to know.</summary>
    Note,

    /// <summary>Near a limit, or to be settled before it is built.</summary>
    Near,

    /// <summary>A wish missed or a thing that will not work.</summary>
    Miss,

    /// <summary>Can hurt someone.</summary>
    Danger,
}

/// <summary>Something the people of the job must hear about: what, how bad, what limits, what would mend it.</summary>
/// <param name="Code">Short stable code, room and subject (<c>plant/pad-too-fast</c>).</param>
/// <param name="Severity">How bad.</param>
/// <param name="Id">The part it is about (path id), or empty for the job.</param>
/// <param name="What">What is so, with its numbers in SI-free words made by the room's words file.</param>
/// <param name="Mend">What would mend it; empty when nothing is to be done.</param>
/// <param name="Source">Rule behind it.</param>
/// <param name="Confidential">True when its words tell cost, margin or price book: contractor's eyes only.</param>
public sealed record Finding(
    string Code, Severity Severity, string Id, string What, string Mend, Source Source, bool Confidential = false);

/// <summary>What every stage hands over beside its result.</summary>
/// <param name="Figures">Numbers with their workings.</param>
/// <param name="Findings">Findings in order of the parts.</param>
/// <param name="LeftOut">What the stage does not do, in plain words: printed with the results.</param>
public sealed record StageReport(EqList<Figure> Figures, EqList<Finding> Findings, EqList<string> LeftOut)
{
    /// <summary>A report with nothing in it.</summary>
    public static StageReport Empty { get; } = new([], [], []);
}
