using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;
using Glazewright.Papers.Sets;

namespace Glazewright.Web.Jobs;

/// <summary>What answers at once when a field changes: shapes, frames, design days, equipment and its places.</summary>
/// <param name="Version">Version of the job it was computed from.</param>
/// <param name="Loaded">The job.</param>
/// <param name="Form">Shapes of all buildings.</param>
/// <param name="Houses">Each house, in the job's order.</param>
/// <param name="ProgramFaults">What the job's changes of its control programs make wrong: that the plant says first.</param>
public sealed record LightResults(int Version, LoadedJob Loaded, FormResult Form, EqList<HouseAnswers> Houses, EqList<Fault> ProgramFaults)
{
    /// <summary>Computes what has changed.</summary>
    /// <param name="version">Version of the job.</param>
    /// <param name="evaluation">The job's evaluation.</param>
    /// <param name="loaded">The job.</param>
    public static LightResults Of(int version, Evaluation evaluation, LoadedJob loaded)
    {
        ArgumentNullException.ThrowIfNull(evaluation);
        ArgumentNullException.ThrowIfNull(loaded);
        HouseAnswers[] houses = [.. loaded.Job.Houses.Select(house =>
        {
            string id = house.Id;
            HouseLook look = new(house, evaluation.Form.Value.Building(id), evaluation.Frame(id).Value, evaluation.Layout(id).Value);
            return new HouseAnswers(look, evaluation.Duty(id).Value, evaluation.Plant(id).Value, evaluation.LaidProgram(id));
        })];
        return new LightResults(version, loaded, evaluation.Form.Value, houses.ToEqList(), evaluation.ProgramFaults(loaded.Document));
    }
}

/// <summary>The quick answers for one house.</summary>
/// <param name="Look">Shape, frame, places.</param>
/// <param name="Duty">Design days.</param>
/// <param name="Plant">Equipment.</param>
/// <param name="Program">Control program, as written and as changed.</param>
public sealed record HouseAnswers(HouseLook Look, DutyResult Duty, PlantResult Plant, LaidProgram Program);
