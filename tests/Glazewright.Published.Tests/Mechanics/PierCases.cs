using Glazewright.Mechanics.Checks;
using Glazewright.Mechanics.Guards;
using static Glazewright.Published.Tests.Mechanics.FrameBuild;

namespace Glazewright.Published.Tests.Mechanics;

/// <summary>
/// Embedded piers by the building code's formulae (IBC 1807.3.2; text read in a state code). First two: a forum calculation and a published sheet, read and
/// recomputed; third computed from the formula. Pounds and feet.
/// </summary>
public class PierCases
{
    private const double PsfPerFt = UsUnits.NPerM3PerPcf;

    /// <summary>3000 lb at 8 ft, 1 ft wide, 150 psf/ft at a trial depth of 6 ft, 1.33: A = 17.6 ft.</summary>
    [Fact]
    public void Factor_a_at_a_trial_depth() => Near(
        17.6, PierEmbedment.FactorAM(3000 * UsUnits.NPerLbf, 150 * PsfPerFt * 2 * UsUnits.MPerFt * 1.33, UsUnits.MPerFt) / UsUnits.MPerFt, 0.05);

    /// <summary>30 000 lb at 3 ft, 4.5 ft wide, 350 psf/ft doubled, held at grade: d = 1.509 m.</summary>
    [Fact]
    public void Held_at_grade() => Near(
        1.509, PierEmbedment.HeldAtGradeM(30_000 * UsUnits.NPerLbf, 3 * UsUnits.MPerFt, 4.5 * UsUnits.MPerFt, 700 * PsfPerFt), 0.0005);

    /// <summary>1000 lb at 5 ft, 1.5 ft wide, 150 psf/ft: d = 7.367 ft.</summary>
    [Fact]
    public void Free_at_grade() => Near(
        7.367, PierEmbedment.FreeM(1000 * UsUnits.NPerLbf, 5 * UsUnits.MPerFt, 1.5 * UsUnits.MPerFt, 150 * PsfPerFt) / UsUnits.MPerFt, 0.0005);

    /// <summary>Presumed values of the code's table (read in a reproduction): bearing psf and sideways psf per foot.</summary>
    [Theory]
    [InlineData(12000, 1200), InlineData(4000, 400), InlineData(3000, 200), InlineData(2000, 150), InlineData(1500, 100)]
    public void Presumed_soils(double bearingPsf, double perFoot) =>
        Near(perFoot, PierEmbedment.PresumedSoilPaPerM(bearingPsf * UsUnits.PaPerPsf) / PsfPerFt, 1e-9);
}
