using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Science.Light;

namespace Glazewright.Design.GainTables;

/// <summary>What the faces of a house see of each other from inside: found once, for light and heat, before and past the equipment.</summary>
/// <param name="OpenM2">Exchange areas with the curtain open, m², row-major.</param>
/// <param name="DrawnM2">The same with it drawn; empty without a curtain.</param>
/// <param name="SecondM2">The same with the second curtain drawn; null without one that moves by itself.</param>
public sealed record HouseViews(EqList<double> OpenM2, EqList<double> DrawnM2, EqList<double>? SecondM2 = null)
{
    /// <summary>Raise when results change.</summary>
    public const int Version = 1;

    /// <summary>Finds them.</summary>
    /// <param name="input">What the job says.</param>
    /// <param name="form">Shapes.</param>
    /// <returns>The views.</returns>
    /// <exception cref="ArgumentException">No such house, or an unknown cover kind.</exception>
    public static HouseViews Of(HouseViewsInput input, FormResult form)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(form);
        BuildingForm house = form.Building(input.House);
        Enclosure enclosure = HouseEnclosure.Of(house, form.Shared, [], GainInput.UsualFrameReflectance, GainInput.UsualCropReflectance);
        return new HouseViews(Exchange(null), input.Curtain?.In(house) is { } curtain ? Exchange(curtain) : [], input.SecondCurtain?.In(house) is { } second ? Exchange(second) : null);

        EqList<double> Exchange(CurtainPlane? curtain) => InsideViews.Of(enclosure, curtain).ExchangeAreasM2.ToEqList();
    }

    internal InsideViews Open => new(OpenM2);

    internal InsideViews Drawn => new(DrawnM2);

    internal InsideViews Second => new(SecondM2 ?? []);
}

/// <summary>What <see cref="HouseViews"/> rest on beside the form.</summary>
/// <param name="House">House id.</param>
/// <param name="Curtain">The curtain; its height counts, null for none.</param>
/// <param name="SecondCurtain">The second curtain where it moves by itself; null for none.</param>
public sealed record HouseViewsInput(string House, HouseCurtain? Curtain, HouseCurtain? SecondCurtain = null);
