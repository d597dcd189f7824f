using Glazewright.Design.Contracts;

namespace Glazewright.Design.Program;

/// <summary>
/// Names of stages by what they bring on. A stage's number moves when the plant changes (with a fan more, the pump's stage is another); what it is for does not.
/// </summary>
public static class StageNames
{
    /// <summary>Names of stages.</summary>
    /// <param name="stages">The stages of one sort, first on first.</param>
    /// <param name="house">House id, which the names leave out.</param>
    /// <returns>In their order: the first equipment that no stage before drives as far (<c>fan-2</c>); with <c>-ajar</c>, for a heater <c>-low</c>, where it is driven less than fully.</returns>
    public static EqList<string> Of(EqList<ControlStage> stages, string house)
    {
        ArgumentNullException.ThrowIfNull(stages);
        Dictionary<string, double> driven = new(StringComparer.Ordinal);
        List<string> names = [];
        foreach (ControlStage stage in stages)
        {
            // A louver opens for the fans: what comes with it names the stage.
            ActuatorSetting[] more = [.. stage.Settings.Where(s => s.LevelFraction > driven.GetValueOrDefault(s.Actuator))];
            ActuatorSetting? first = more.FirstOrDefault(s => !s.Actuator.EndsWith("/louver", StringComparison.Ordinal)) ?? more.FirstOrDefault();
            string name = first is null ? stage.Id : Local(first.Actuator, house) + (first.LevelFraction >= 1 ? "" : first.Actuator.Contains("/heater-", StringComparison.Ordinal) ? "-low" : "-ajar");
            names.Add(names.Contains(name) ? stage.Id : name);
            foreach (ActuatorSetting setting in more)
            {
                driven[setting.Actuator] = setting.LevelFraction;
            }
        }

        return names.ToEqList();
    }

    internal static string Local(string id, string house) => id.StartsWith(house + "/", StringComparison.Ordinal) ? id[(house.Length + 1)..] : id;
}
