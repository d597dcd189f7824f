using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;

namespace Glazewright.Design.Services;

/// <summary>Where the machines, lights and outlets of a load line stand.</summary>
public static class LoadSpots
{
    /// <summary>One place for each.</summary>
    /// <param name="line">Line of the load list.</param>
    /// <param name="form">The range.</param>
    /// <param name="plants">Plants of all houses.</param>
    /// <param name="layouts">Layouts of all houses.</param>
    /// <returns>Places in range axes, m, as the runs of the panel schedules take them; lights and outlets spread evenly.</returns>
    public static EqList<Point3> Of(LoadLine line, FormResult form, EqList<PlantResult> plants, EqList<LayoutResult> layouts)
    {
        ArgumentNullException.ThrowIfNull(line);
        return new LoadPlaces(form, plants, layouts).Of(line).Spots.ToEqList();
    }
}
