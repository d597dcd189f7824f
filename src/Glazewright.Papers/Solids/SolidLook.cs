using Glazewright.Design.Brief;
using Glazewright.Design.Layout;
using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Solids;

/// <summary>How a part looks on a screen: a name, a colour of the house look, how much shows through.</summary>
/// <param name="Name">Name of the material in the file.</param>
/// <param name="Rgb">Colour, 0xRRGGBB.</param>
/// <param name="OpaqueFraction">1 for solid, less to see through.</param>
internal sealed record SolidLook(string Name, int Rgb, double OpaqueFraction)
{
    private static readonly SolidLook Steel = Toned("steel", Tone.Edge);
    private static readonly SolidLook Clear = new("clear covering", Tones.Light(Tone.Water), 0.16);
    private static readonly SolidLook Panel = Toned("opaque covering", Tone.Rule);
    private static readonly SolidLook Leaf = Toned("door", Tone.Accent);
    private static readonly SolidLook Window = new("window", Tones.Light(Tone.Water), 0.4);
    private static readonly SolidLook Concrete = Toned("concrete", Tone.Ink3);
    private static readonly SolidLook Gravel = Toned("gravel", Tone.Wash);
    private static readonly SolidLook Air = Toned("air equipment", Tone.Ink2);
    private static readonly SolidLook Wet = Toned("water equipment", Tone.Water);
    private static readonly SolidLook Warm = Toned("heater", Tone.Series6);
    private static readonly SolidLook Cloth = new("curtain", Tones.Light(Tone.Series2), 0.35);
    private static readonly SolidLook Bench = Toned("bench", Tone.Held);
    private static readonly SolidLook Lamp = Toned("lamp", Tone.Sun);
    private static readonly SolidLook Sensor = Toned("sensor", Tone.Series5);

    /// <summary>The look of a part.</summary>
    public static SolidLook Of(SolidKind kind) => kind switch
    {
        SolidKind.Member => Steel,
        SolidKind.Cover { Stuff.Clear: true } => Clear,
        SolidKind.Cover => Panel,
        SolidKind.Leaf { Opening.Kind: OpeningKind.Window or OpeningKind.Vent } => Window,
        SolidKind.Leaf => Leaf,
        SolidKind.Floor { Concrete: false } => Gravel,
        SolidKind.Equipment e => e.Item.Kind switch
        {
            PlacedKind.WetWall or PlacedKind.FogLine => Wet,
            PlacedKind.Heater or PlacedKind.Vent => Warm,
            PlacedKind.Curtain => Cloth,
            PlacedKind.Bench => Bench,
            PlacedKind.LampRow => Lamp,
            PlacedKind.Sensor => Sensor,
            _ => Air,
        },
        _ => Concrete,
    };

    private static SolidLook Toned(string name, Tone tone) => new(name, Tones.Light(tone), 1);
}
