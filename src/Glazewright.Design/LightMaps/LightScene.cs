using Glazewright.Design.Body;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.GainTables;
using Glazewright.Design.Layout;
using Glazewright.Science.Light;
using Glazewright.Science.Light.Shadows;

namespace Glazewright.Design.LightMaps;

/// <summary>One house set up for its light: the closed body with its bars, what stands around, and the planes that are mapped.</summary>
internal sealed class LightScene
{
    private const double CellAcrossM = 0.37;
    private const double CellAlongM = 1.15;
    private const double CellUpM = 0.3;

    private LightScene(
        LightInput input, BuildingForm house, Enclosure enclosure, Surroundings around, IReadOnlyList<NamedBar> bars, double heightM, CurtainPlane? drawn = null)
    {
        Drawn = drawn;
        Input = input;
        House = house;
        Enclosure = enclosure;
        Around = around;
        Bars = bars;
        HeightM = heightM;
        CountX = Math.Clamp((int)Math.Round(house.LengthM / CellAlongM), 4, 80);
        CountY = Math.Clamp((int)Math.Round(house.WidthM / CellAcrossM), 4, 60);
    }

    public LightInput Input { get; }

    public BuildingForm House { get; }

    public Enclosure Enclosure { get; }

    public Surroundings Around { get; }

    /// <summary>Everything in the light but the benches.</summary>
    public IReadOnlyList<NamedBar> Bars { get; }

    /// <summary>The curtain, where it is drawn; null for an open one.</summary>
    public CurtainPlane? Drawn { get; }

    /// <summary>Height of the map, m.</summary>
    public double HeightM { get; }

    public int CountX { get; }

    public int CountY { get; }

    public static LightScene Of(LightInput input, FormResult form, BodyResult body, LayoutResult layout)
    {
        BuildingForm house = form.Building(input.House);
        Surroundings around = HouseSurroundings.Of(
            house, form, body.Members, input.RangeBearingDeg, input.Neighbours, input.Horizon);
        NamedBar[] bars =
        [
            .. HouseBars.Members(house, body.Members), .. HouseBars.Joints(house, input.Units), .. HouseBars.Equipment(house, layout),
        ];
        double heightM = input.Benches.Count == 0 ? 0 : input.Benches.Average(b => b.HeightM);
        return new LightScene(
            input, house, Body(input, house, form.Shared, bars, input.FrameReflectance), around, bars, heightM);
    }

    /// <summary>The same house with other bars inside.</summary>
    public LightScene With(FormResult form, IReadOnlyList<NamedBar> bars, double frameReflectance) =>
        new(Input, House, Body(Input, House, form.Shared, bars, frameReflectance), Around, bars, HeightM);

    /// <summary>The same house with its curtain drawn: its bundles are gone; null without a curtain above the map.</summary>
    public LightScene? WithCurtainDrawn() =>
        Input.Curtain?.In(House) is { } cloth && cloth.HeightM > HeightM
            ? new(Input, House, Enclosure.Without(ShadeCause.Curtain), Around, [.. Bars.Where(b => b.Bar.Cause != ShadeCause.Curtain)], HeightM, cloth)
            : null;

    /// <summary>The level plane of the map.</summary>
    public ReceivingPlane Level(double heightM) => Level(heightM, CountX, CountY);

    /// <summary>The same in other cells.</summary>
    public ReceivingPlane Level(double heightM, int countX, int countY) => ReceivingPlane.Of(
        new Vector3d(0, 0, heightM), new Vector3d(1, 0, 0), new Vector3d(0, 1, 0), House.LengthM, House.WidthM, countX, countY);

    /// <summary>The wall that looks away from the equator, from inside.</summary>
    public (FaceName Face, ReceivingPlane Plane) FarWall()
    {
        // Bearings of the outward normals; north is 0.
        double away = Input.LatitudeDeg >= 0 ? 0 : 180;
        FaceForm wall = House.Faces
            .Where(f => f.Name is FaceName.Left or FaceName.Right or FaceName.End1 or FaceName.End2)
            .MinBy(f => Apart(f.AzimuthDeg, away))!;
        double l = House.LengthM;
        double w = House.WidthM;
        double lowEaveM = Math.Min(House.Roof.LeftEaveM, House.Roof.RightEaveM);
        return (wall.Name, wall.Name switch
        {
            FaceName.Left => Wall(new(l, 0, 0), new(-1, 0, 0), l, House.Roof.LeftEaveM),
            FaceName.Right => Wall(new(0, w, 0), new(1, 0, 0), l, House.Roof.RightEaveM),
            FaceName.End1 => Wall(new(0, 0, 0), new(0, 1, 0), w, lowEaveM),
            _ => Wall(new(l, w, 0), new(0, -1, 0), w, lowEaveM),
        });
    }

    private static ReceivingPlane Wall(Vector3d origin, Vector3d along, double lengthM, double heightM) => ReceivingPlane.Of(
        origin, along, new Vector3d(0, 0, 1), lengthM, heightM,
        Math.Clamp((int)Math.Round(lengthM / CellAlongM), 4, 80), Math.Clamp((int)Math.Round(heightM / CellUpM), 2, 40));

    private static double Apart(double a, double b)
    {
        double turn = Math.Abs(a - b) % 360;
        return Math.Min(turn, 360 - turn);
    }

    private static Enclosure Body(
        LightInput input, BuildingForm house, EqList<SharedPiece> shared, IReadOnlyList<NamedBar> bars, double frameReflectance) =>
        HouseEnclosure.Of(house, shared, bars, frameReflectance, input.CropReflectance);
}
