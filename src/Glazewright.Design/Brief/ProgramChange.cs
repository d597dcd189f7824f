namespace Glazewright.Design.Brief;

/// <summary>One value of a house's control program that its technician changes: it is laid over the program that is written from plant and wish.</summary>
/// <param name="Part">Part of the program (<c>cooling</c>).</param>
/// <param name="Name">Name of the thing in it (<c>fan-2</c>); empty in a part that is one thing.</param>
/// <param name="Field">What is changed (<c>onAt</c>).</param>
/// <param name="Value">Its new value, in the program's unit: K, °C, %, s, W/m², Pa, ppm, or a count.</param>
/// <param name="Pointer">Where the job says so.</param>
public sealed record ProgramChange(string Part, string Name, string Field, double Value, string Pointer);
