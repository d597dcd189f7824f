using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Layout;

/// <summary>Vent and combustion-air pipe of one fuel-burning heater, as a first proposal.</summary>
/// <param name="Heater">Path id of the heater.</param>
/// <param name="InputW">Fuel input, W.</param>
/// <param name="Sealed">Direct vent; otherwise air from the house and a gravity vent through the roof.</param>
/// <param name="Condensing">Flue gas condenses: slope back to the heater and a drain.</param>
/// <param name="VentM">Vent diameter, m; zero beyond the table.</param>
/// <param name="IntakeM">Combustion-air pipe diameter, m; zero for air from the house.</param>
/// <param name="Face">Wall or roof slope it goes out by; null when no place keeps the clearances or the burner's own place is not known.</param>
/// <param name="AlongM">Middle of the terminal from the wall's start, or along the house from end 1 on a roof, m.</param>
/// <param name="HeightM">Middle of the terminal above the floor, m.</param>
/// <param name="RunM">Pipe from the collar to the terminal, m.</param>
/// <param name="Elbows">Elbows of 90°.</param>
/// <param name="EquivalentM">Run and elbows as straight pipe, m.</param>
/// <param name="MostM">The most of that, m; zero beyond the table.</param>
/// <param name="FallM">Fall of the run, m.</param>
/// <param name="LeastHeightM">Least height of the terminal for snow, m.</param>
/// <param name="ClearM">Least distance to air openings: direct vent straight, gravity vent beside and below, m.</param>
/// <param name="Nearest">Nearest air opening, or empty.</param>
/// <param name="NearestM">Distance to it, m.</param>
public sealed record FlueLine(
    string Heater,
    double InputW,
    bool Sealed,
    bool Condensing,
    double VentM,
    double IntakeM,
    FaceName? Face,
    double AlongM,
    double HeightM,
    double RunM,
    int Elbows,
    double EquivalentM,
    double MostM,
    double FallM,
    double LeastHeightM,
    double ClearM,
    string Nearest,
    double NearestM)
{
    /// <summary>What a gravity vent adds; null for a direct vent.</summary>
    public GravityVent? Gravity { get; init; }

    /// <summary>A pipe goes through a joint of sheets or panels: no place beside one was free.</summary>
    public bool AtJoint { get; init; }

    /// <summary>The burner's own place is not in the job: a boiler.</summary>
    public bool Unplaced { get; init; }
}
