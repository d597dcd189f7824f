namespace Glazewright.Design.Form;

/// <summary>Which of the five roof numbers was solved from the other four.</summary>
public enum SolvedRoofPart
{
    /// <summary>All five were given and agree.</summary>
    None,

    /// <summary>Left eave height.</summary>
    LeftEave,

    /// <summary>Right eave height.</summary>
    RightEave,

    /// <summary>Ridge offset from the left wall.</summary>
    RidgeOffset,

    /// <summary>Left pitch.</summary>
    LeftPitch,

    /// <summary>Right pitch.</summary>
    RightPitch,
}

/// <summary>A gable roof with its own eave and pitch on each side. Lengths m; pitches rise over run.</summary>
/// <param name="LeftEaveM">Eave height at y = 0.</param>
/// <param name="RightEaveM">Eave height at y = width.</param>
/// <param name="RidgeOffsetM">y of the ridge.</param>
/// <param name="LeftPitch">Rise over run of the left slope.</param>
/// <param name="RightPitch">Rise over run of the right slope.</param>
/// <param name="Solved">Which number was solved.</param>
public sealed record RoofProfile(
    double LeftEaveM, double RightEaveM, double RidgeOffsetM, double LeftPitch, double RightPitch, SolvedRoofPart Solved)
{
    /// <summary>Height of the ridge, m.</summary>
    public double RidgeM => LeftEaveM + RidgeOffsetM * LeftPitch;

    /// <summary>Roof height over a place across the house.</summary>
    /// <param name="yM">Distance from the left wall, m.</param>
    /// <param name="widthM">Width of the house, m.</param>
    /// <returns>Height of the roof plane there, m.</returns>
    public double HeightM(double yM, double widthM) =>
        yM <= RidgeOffsetM ? LeftEaveM + yM * LeftPitch : RightEaveM + (widthM - yM) * RightPitch;
}
