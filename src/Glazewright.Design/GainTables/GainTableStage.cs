using Glazewright.Design.Body;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Science.Light;
using Glazewright.Science.Light.Shadows;

namespace Glazewright.Design.GainTables;

/// <summary>GainTables: where sunlight from every direction, the sky and the ground ends in one house.</summary>
public static class GainTableStage
{
    /// <summary>Raise when results change.</summary>
    public const int Version = 9;

    private const int Azimuths = 72;
    private const int ElevationSteps = 36;
    private const double SunReachDeg = 23.44;

    /// <summary>The farthest node that the sun's place is read between: 5° by 2.5° away, and refraction.</summary>
    private const double MarginDeg = 6.2;

    /// <summary>The nodes of every table, and of the light map.</summary>
    internal static SunGrid Grid { get; } = SunGrid.Even(Azimuths, ElevationSteps);

    /// <summary>Computes one house before its equipment is known: what its equipment is sized by, with the curtain open.</summary>
    /// <param name="input">What the job says.</param>
    /// <param name="form">Shapes.</param>
    /// <param name="body">Members with sections.</param>
    /// <param name="views">What its faces see of each other.</param>
    /// <param name="cancel">Looked at before the directions are traced.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentException">No such house, or an unknown cover kind.</exception>
    public static GainTable Run(GainInput input, FormResult form, BodyResult body, HouseViews views, CancellationToken cancel) =>
        Of(input, form, body, views, null, null, cancel).Table;

    /// <summary>Computes one house with all that hangs and stands in its light, as the light map has it: what its year runs by.</summary>
    /// <param name="input">What the job says.</param>
    /// <param name="form">Shapes.</param>
    /// <param name="body">Members with sections.</param>
    /// <param name="layout">Where the equipment sits.</param>
    /// <param name="views">What its faces see of each other.</param>
    /// <param name="bare">The table before the equipment, for comparison.</param>
    /// <param name="cancel">Looked at before the directions are traced.</param>
    /// <returns>The table, and what the light map need not trace again.</returns>
    /// <exception cref="ArgumentException">No such house, or an unknown cover kind.</exception>
    public static FittedGains Fitted(
        GainInput input, FormResult form, BodyResult body, LayoutResult layout, HouseViews views, GainTable bare, CancellationToken cancel) =>
        Of(input, form, body, views, layout, bare, cancel);

    private static FittedGains Of(
        GainInput input, FormResult form, BodyResult body, HouseViews views, LayoutResult? layout, GainTable? bare, CancellationToken cancel)
    {
        BuildingForm house = form.Building(input.House);
        NamedBar[] bars =
        [
            .. HouseBars.Members(house, body.Members), .. HouseBars.Joints(house, input.Units), .. layout is null ? [] : HouseBars.Equipment(house, layout),
        ];
        Enclosure enclosure = HouseEnclosure.Of(house, form.Shared, bars, input.FrameReflectance, input.CropReflectance);
        Surroundings around = HouseSurroundings.Of(
            house, form, body.Members, input.RangeBearingDeg, input.Neighbours, input.Horizon);
        cancel.ThrowIfCancellationRequested();
        IReadOnlyList<HouseLight> lights = layout is not null && input.Curtain?.In(house) is { } curtain
            ? input.SecondCurtain?.In(house) is { } second
                ? HouseLight.InPositions(
                    enclosure, [null, curtain, second, HouseCurtain.Over(input.Curtain, input.SecondCurtain).In(house)], around, [views.Open, views.Drawn, views.Second, views.Drawn])
                : HouseLight.InPositions(enclosure, [null, curtain], around, [views.Open, views.Drawn])
            : HouseLight.InPositions(enclosure, [null], around, [views.Open]);
        bool[] wanted = [.. Enumerable.Range(0, Grid.Count).Select(node => SunComesNear(Grid.Direction(node), input))];
        IReadOnlyList<EnclosureGainTable> traced = HouseLight.Gains(lights, Grid, wanted);
        cancel.ThrowIfCancellationRequested();
        GainSet open = Set(traced[0]);
        GainTable table = new(
            input.House, 360.0 / Azimuths, 90.0 / ElevationSteps, open, traced.Count > 1 ? Set(traced[1]) : open, input.CanopyExtinctionFraction, StageReport.Empty,
            traced.Count > 3 ? Set(traced[2]) : null, traced.Count > 3 ? Set(traced[3]) : null);
        return new FittedGains(
            table with { Report = GainWorkings.Report(input, house, enclosure, lights[0], table, bare) },
            input.CropReflectance,
            lights.Take(2).Zip(traced, (l, t) => TracedLight.Of(l.Known(t))).ToEqList());
    }

    // The sun keeps within 23.44° of the equator; a margin covers the nodes that its place is read between. Rows it never comes near stay empty.
    private static bool SunComesNear(Vector3d towards, GainInput input)
    {
        double latitude = input.LatitudeDeg * Math.PI / 180;
        double bearing = input.RangeBearingDeg * Math.PI / 180;

        // North in house axes: bearings turn clockwise, axes anticlockwise.
        double north = (towards.X * Math.Cos(bearing)) + (towards.Y * Math.Sin(bearing));
        double declinationDeg = Math.Asin(Math.Clamp((Math.Sin(latitude) * towards.Z) + (Math.Cos(latitude) * north), -1, 1)) * 180 / Math.PI;
        return Math.Abs(declinationDeg) <= SunReachDeg + MarginDeg;
    }

    private static GainSet Set(EnclosureGainTable table)
    {
        // The light computation turns anticlockwise and runs elevation first; the contract clockwise and azimuth first.
        GainRow[] beam = new GainRow[table.Grid.Count];
        for (int i = 0; i < Azimuths; i++)
        {
            for (int j = 0; j <= ElevationSteps; j++)
            {
                beam[i * (ElevationSteps + 1) + j] = Row(table.Beam[j * Azimuths + (Azimuths - i) % Azimuths]);
            }
        }

        return new GainSet(EqList.Own(beam), Row(table.Dome), Row(table.Horizon), Row(table.Ground));
    }

    // A direction that meets no clear face has an aperture of 0; its share is put to what is turned away.
    private static GainRow Row(Science.Light.GainRow row) => row.ApertureM2 > 0
        ? new GainRow(
            row.ApertureM2,
            row.Share(row.CoverM2),
            row.Share(row.CurtainM2),
            row.Share(row.CropPlaneM2),
            row.Share(row.OpaqueM2),
            row.Share(row.FrameM2),
            row.Share(row.EscapesM2))
        : new GainRow(0, 0, 0, 0, 0, 0, 1);
}
