using Glazewright.Design.Body;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.GainTables;
using Glazewright.Design.Layout;
using Glazewright.Science.Light;
using Glazewright.Science.Light.Shadows;

namespace Glazewright.Design.LightMaps;

/// <summary>
/// The same house in other framings: what each takes of the light. Sizes are common practice for houses of this width, not designed for the site's loads;
/// sheet joints and equipment stay.
/// </summary>
internal static class OtherFramings
{
    private const double InchM = 0.0254;

    // Rafters and columns, then purlins, girts, eave and ridge, then end posts: width × depth, in.
    private static readonly Framing[] Kinds =
    [
        new("Deep solid-web steel, 13.5 in, painted", (5, 13.5), (2.5, 8), (4, 8), 0.45, HasTies: false, EveryFrame: 1),
        new("The same at every second frame", (5, 13.5), (2.5, 8), (4, 8), 0.45, HasTies: false, EveryFrame: 2),
        new("Timber, 3.5 × 11.25 in, bare", (3.5, 11.25), (1.5, 5.5), (3.5, 5.5), 0.35, HasTies: true, EveryFrame: 1),
    ];

    public static EqList<FramingLight> Compare(
        LightScene scene, HouseLight ready, FormResult form, BodyResult body, LayoutResult layout, SkyMonths sky, SunGrid grid, FramingLight own,
        int dark, int bright, CancellationToken cancel)
    {
        List<FramingLight> rows = [own];
        NamedBar[] kept =
        [
            .. HouseBars.Joints(scene.House, scene.Input.Units), .. HouseBars.Equipment(scene.House, layout),
        ];
        foreach (Framing kind in Kinds)
        {
            EqList<MemberSolid> members = body.Members
                .Where(m => m.House == scene.House.Id && kind.Has(m.Line, scene.House))
                .Select(kind.Sized)
                .ToEqList();
            LightScene other = scene.With(form, [.. HouseBars.Members(scene.House, members), .. kept], kind.ReflectanceFraction);
            HouseSources sources = HouseSources.Of(ready.With(other.Enclosure), sky, grid, [dark, bright]);
            PlaneLight plane = PlaneLight.Of(other, sources, other.Level(other.HeightM), ScanFineness.Usual, SkyDome.Coarse, cancel);
            rows.Add(Row(kind.Name, other, plane, sky, dark, bright));
        }

        return rows.ToEqList();
    }

    /// <summary>One framing's row from its light.</summary>
    public static FramingLight Row(string name, LightScene scene, PlaneLight plane, SkyMonths sky, int dark, int bright)
    {
        LightMonth month = plane.Month(sky, dark, scene.Input.UmolPerJ);
        double declinationDeg = scene.Input.LatitudeDeg >= 0 ? -23.44 : 23.44;
        return new FramingLight(
            name,
            month.MeanMolPerM2Day,
            plane.Month(sky, bright, scene.Input.UmolPerJ).MeanMolPerM2Day,
            month.EvennessRatio,
            plane.Fate(sky, dark).FrameFraction,
            ShadowDays.BroadestNoonM(scene, declinationDeg));
    }

    private sealed record Framing(
        string Name,
        (double Width, double Depth) Main,
        (double Width, double Depth) Along,
        (double Width, double Depth) Post,
        double ReflectanceFraction,
        bool HasTies,
        int EveryFrame)
    {
        public bool Has(MemberLine line, BuildingForm house)
        {
            if (line.Role is not (MemberRole.Column or MemberRole.Rafter or MemberRole.CollarTie))
            {
                return true;
            }

            double x = (line.A - house.Origin).Dot(house.AlongX);
            int frame = Enumerable.Range(0, house.FrameLinesXM.Count).MinBy(i => Math.Abs(house.FrameLinesXM[i] - x));
            bool end = frame == house.FrameLinesXM.Count - 1;
            return (HasTies || line.Role != MemberRole.CollarTie) && (end || frame % EveryFrame == 0);
        }

        public MemberSolid Sized(MemberSolid m)
        {
            (double width, double depth) = m.Line.Role switch
            {
                MemberRole.Column or MemberRole.Rafter or MemberRole.CollarTie => Main,
                MemberRole.EndPost => Post,
                _ => Along,
            };
            return m with { WidthM = width * InchM, DepthM = depth * InchM };
        }
    }
}
