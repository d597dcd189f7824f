using Glazewright.Design.Contracts;

namespace Glazewright.Design.Program;

/// <summary>A program that someone edited, held against the one written for the same house.</summary>
public static class GivenProgram
{
    /// <summary>Whether an edited program can run this house's equipment.</summary>
    /// <param name="given">The edited program.</param>
    /// <param name="written">The program written from the plant.</param>
    /// <returns>Every fault: equipment that the house lacks, or that the program leaves without orders.</returns>
    public static EqList<Fault> Faults(ProgramDocument given, ProgramDocument written)
    {
        ArgumentNullException.ThrowIfNull(given);
        ArgumentNullException.ThrowIfNull(written);
        List<Fault> faults = [];
        string[] has = [.. written.Actuators.Select(a => a.Id)];
        string[] told = [.. given.Actuators.Select(a => a.Id)];
        foreach (string id in told.Except(has, StringComparer.Ordinal))
        {
            faults.Add(new Fault(
                FaultKind.NotFound, "/actuators", id, 0, 0, $"house {written.House} has no equipment '{id}'", string.Join(", ", has)));
        }

        foreach (string id in has.Except(told, StringComparer.Ordinal))
        {
            faults.Add(new Fault(FaultKind.Missing, "/actuators", id, 0, 0, $"equipment '{id}' of house {written.House} is not in the program", $"'{id}' among the actuators, if only switched off"));
        }

        foreach (Actuator a in given.Actuators)
        {
            if (written.Actuators.FirstOrDefault(w => w.Id == a.Id) is { } w && w.Kind != a.Kind)
            {
                faults.Add(new Fault(FaultKind.WrongType, "/actuators", a.Id, 0, 0, $"'{a.Id}' is called {ProgramShape.Kebab(a.Kind.ToString())}", ProgramShape.Kebab(w.Kind.ToString())));
            }
        }

        return faults.ToEqList();
    }
}
