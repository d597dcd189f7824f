using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;

namespace Glazewright.Design.Layout;

/// <summary>Layout: where each piece of equipment of one house sits, and what is in its way.</summary>
public static class LayoutStage
{
    /// <summary>Raise when results change.</summary>
    public const int Version = 10;

    /// <summary>Places the equipment of one house.</summary>
    /// <param name="input">What Layout reads of the job.</param>
    /// <param name="form">Shapes of the whole range: neighbours stand in the way of air.</param>
    /// <param name="plant">The house's plant.</param>
    /// <returns>Placed pieces, bench area, conflicts.</returns>
    /// <exception cref="ArgumentException">No such house.</exception>
    public static LayoutResult Run(LayoutInput input, FormResult form, PlantResult plant)
    {
        BuildingForm house = form.Building(input.House);
        List<PlacedItem> placed = [];
        List<Finding> findings = [];
        WallLayout.Place(input, form, house, plant, placed, findings);
        HungLayout.Place(input, house, plant, placed, findings);
        List<FlueLine> flues = FlueLayout.Place(input, form, house, plant, placed, findings);
        FloorLayout.Place(input, house, placed, findings);
        LayoutFindings.PostsHeadedOff(house, new LayoutResult(input.House, placed.ToEqList(), 0, StageReport.Empty), findings);
        double benchM2 = input.Benches.Sum(b => b.WidthM * b.LengthM);
        return new LayoutResult(input.House, placed.ToEqList(), benchM2, LayoutWorkings.Report(input, house, benchM2, flues, findings)) { Flues = flues.ToEqList() };
    }
}
