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
    public const int Version = 7;

    private const int Azimuths = 72;
    private const int ElevationSteps = 36;
    private const double SunReachDeg = 23.44;
    private const double MarginDeg = 8;

    /// <summary>Computes one house before its equipment is known: what its equipment is sized by.</summary>
    /// <param name="input">What the job says.</param>
    /// <param name="form">Shapes.</param>
    /// <param name="body">Members with sections.</param>
    /// <param name="cancel">Looked at between the two curtain positions.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentException">No such house, or an unknown cover kind.</exception>
    public static GainTable Run(GainInput input, FormResult form, BodyResult body, CancellationToken cancel) =>
        Of(input, form, body, null, null, cancel);

    /// <summary>Computes one house with all that hangs and stands in its light, as the light map has it: what its year runs by.</summary>
    /// <param name="input">What the job says.</param>
    /// <param name="form">Shapes.</param>
    /// <param name="body">Members with sections.</param>
    /// <param name="layout">Where the equipment sits.</param>
    /// <param name="bare">The table before the equipment, for comparison.</param>
    /// <param name="cancel">Looked at between the two curtain positions.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentException">No such house, or an unknown cover kind.</exception>
    public static GainTable Fitted(GainInput input, FormResult form, BodyResult body, LayoutResult layout, GainTable bare, CancellationToken cancel) =>
        Of(input, form, body, layout, bare, cancel);

    private static GainTable Of(GainInput input, FormResult form, BodyResult body, LayoutResult? layout, GainTable? bare, CancellationToken cancel)
    {
        BuildingForm house = form.Building(input.House);
        NamedBar[] bars =
        [
            .. HouseBars.Members(house, body.Members), .. HouseBars.Joints(house, input.Units), .. layout is null ? [] : HouseBars.Equipment(house, layout),
        ];
        Enclosure enclosure = HouseEnclosure.Of(house, form.Shared, bars, input.FrameReflectance, input.CropReflectance);
        Surroundings around = HouseSurroundings.Of(
            house, form, body.Members, input.RangeBearingDeg, input.Neighbours, input.Horizon);
        SunGrid grid = SunGrid.Even(Azimuths, ElevationSteps);
        cancel.ThrowIfCancellationRequested();
        HouseLight light = new(enclosure, null, around);
        bool[] wanted = [.. Enumerable.Range(0, grid.Count).Select(node => SunComesNear(grid.Direction(node), input))];
        GainSet open = Set(light.Gains(grid, wanted));
        cancel.ThrowIfCancellationRequested();
        CurtainPlane? curtain = input.Curtain?.In(house);
        GainSet drawn = curtain is null
            ? open
            : Set(new HouseLight(enclosure.Without(ShadeCause.Curtain), curtain, around).Gains(grid, wanted));
        GainTable table = new(
            input.House, 360.0 / Azimuths, 90.0 / ElevationSteps, open, drawn, input.CanopyExtinctionFraction, StageReport.Empty);
        return table with { Report = GainWorkings.Report(input, house, enclosure, light, table, bare) };
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
