namespace Glazewright.Science.Weather;

/// <summary>What is in a weather year: closure, months, sanity, computed design values beside the header's.</summary>
/// <param name="Closure">Radiation closure.</param>
/// <param name="Months">Twelve months.</param>
/// <param name="Computed">Values computed from this one year.</param>
/// <param name="InfraredRmsWm2">Rms of the infrared against Clark and Allen from each row's own dry bulb, dew point and cover, W/m²: near 0 means computed, not measured. 0 without cover.</param>
/// <param name="Findings">What its user should know, gravest first.</param>
public sealed record WeatherReport(
    RadiationClosure Closure, IReadOnlyList<MonthStatistics> Months, ComputedConditions Computed, double InfraredRmsWm2, IReadOnlyList<WeatherFinding> Findings)
{
    /// <summary>Looks a year over.</summary>
    /// <param name="year">The year.</param>
    /// <returns>The report.</returns>
    public static WeatherReport Of(WeatherYear year)
    {
        ArgumentNullException.ThrowIfNull(year);
        RadiationClosure closure = RadiationClosure.Of(year);
        ComputedConditions computed = ComputedConditions.Of(year);
        var findings = new List<WeatherFinding>();
        AddClosure(closure, findings);
        AddDesign(year, computed, findings);
        SanityChecks.Add(year, findings);
        findings.AddRange(Changed(year));
        findings.AddRange(year.Notes.Where(n => n.Gravity == WeatherGravity.Note).Select(n => new WeatherFinding(n.Gravity, n.Text)));
        return new WeatherReport(closure, MonthStatistics.Of(year), computed, SanityChecks.InfraredRmsWm2(year), [.. findings.OrderByDescending(f => f.Gravity)]);
    }

    /// <summary>What of a year is not as its file has it: values taken out, columns converted, hours made up. Every output that rests on the year says this.</summary>
    /// <param name="year">The year.</param>
    /// <returns>Findings; none for a year read as it stands.</returns>
    public static IEnumerable<WeatherFinding> Changed(WeatherYear year)
    {
        ArgumentNullException.ThrowIfNull(year);
        return year.Rejected.Select(r => new WeatherFinding(WeatherGravity.Warning, WeatherWords.Rejected(r)))
            .Concat(year.Notes.Where(n => n.Gravity == WeatherGravity.Warning).Select(n => new WeatherFinding(n.Gravity, n.Text)))
            .Concat(year.Gaps.Select(g => new WeatherFinding(WeatherGravity.Note, WeatherWords.Filled(g))));
    }

    private static void AddClosure(RadiationClosure c, List<WeatherFinding> findings)
    {
        string? text = c.Verdict switch
        {
            ClosureVerdict.ClosesElsewhere => FormattableString.Invariant(
                $"Radiation closes to {c.BestRmsWm2:0.0} W/m² with the sun {c.BestOffsetH:+0.00;-0.00} h from the stamp, but only to {c.StatedRmsWm2:0} W/m² at {c.StatedOffsetH:+0.00;-0.00} h as the format means: stamps or time zone are not what they should be. Read it with that offset."),
            ClosureVerdict.DoesNotClose => FormattableString.Invariant(
                $"Global, direct and diffuse radiation do not agree with each other: {c.StatedRmsWm2:0} W/m² rms."),
            ClosureVerdict.TooLittleSun => "Too few sunny hours to check the radiation columns against each other.",
            _ => null,
        };
        if (text is not null)
        {
            findings.Add(new WeatherFinding(WeatherGravity.Warning, text));
        }
    }

    private static void AddDesign(WeatherYear year, ComputedConditions computed, List<WeatherFinding> findings)
    {
        if (year.Conditions is HeaderConditions.Printed { Values: DesignConditions header })
        {
            double milder = computed.Heating996DryBulbC - header.Heating996DryBulbC;
            if (milder > 0.5)
            {
                findings.Add(new WeatherFinding(WeatherGravity.Warning, FormattableString.Invariant(
                    $"The 99.6 % dry bulb {ComputedConditions.Label} is {computed.Heating996DryBulbC:0.0} °C, {milder:0.0} K milder than the {header.Heating996DryBulbC:0.0} °C of '{header.Edition}': size heat by the latter.")));
            }
        }
        else
        {
            findings.Add(new WeatherFinding(WeatherGravity.Warning, FormattableString.Invariant(
                $"The file prints no design conditions. The 99.6 % dry bulb of {computed.Heating996DryBulbC:0.0} °C is {ComputedConditions.Label}, which leaves the extremes out (1 to 4 K too mild is usual): give the published value.")));
        }
    }
}

/// <summary>A finding about a weather year.</summary>
/// <param name="Gravity">How grave.</param>
/// <param name="Text">In words.</param>
public sealed record WeatherFinding(WeatherGravity Gravity, string Text);

/// <summary>How grave a finding is.</summary>
public enum WeatherGravity
{
    /// <summary>Good to know.</summary>
    Note,

    /// <summary>May make results wrong.</summary>
    Warning,
}
