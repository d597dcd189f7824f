using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Tests.Drawing;

/// <summary>A small lopsided section on a sheet, for tests of the writers.</summary>
internal static class Samples
{
    public static Sheet Section(string name = "Yard \"A\" & <B>")
    {
        Entity[] model =
        [
            new Entity.Hatch([[new(-1, 0), new(9, 0), new(9, -0.3), new(-1, -0.3)]], HatchPattern.Ground),
            new Entity.Polyline([new(0, 0), new(0, 2), new(5, 5), new(8, 3), new(8, 0)]) { Role = Role.Cut, Source = "A/profile" },
            new Entity.Polyline([new(0.5, 0.9), new(7.5, 0.9)]) { Role = Role.Hidden },
            new Entity.Arc(new(4, 1.5), 0.4) { Role = Role.Equipment },
            new Entity.Arc(new(2, 1.5), 0.4, 30, 100) { Role = Role.Equipment },
            new Entity.Dimensions(new(0, 0), new(1, 0), [0, 5, 8], -12, LengthStyle.Millimetres),
            new Entity.Dimensions(new(0, 0), new(0, 1), [0, 2, 5], 10, LengthStyle.Millimetres),
            new Entity.Level(new(8.4, 3), "+3000"),
            new Entity.Leader(new(2.5, 3.5), new(-8, -10), "covering\ntwo lines"),
        ];
        DrawingScale scale = new(50, "1:50");
        View view = new("section", "Section", scale, new Box(-1.5, -1.5, 13, 8), new(20, 20), model);
        TitleText title = new(name, "a place", "Section", "1", scale.Text, null, "draft", ["Not for construction."]);
        return new Sheet(
            "section-a",
            "Section of " + name,
            "A lopsided house.",
            SheetSize.A3.WidthMm,
            SheetSize.A3.HeightMm,
            [view],
            [.. Furniture.Border(SheetSize.A3, title), .. Furniture.North(new(390, 30), 97), .. Furniture.ScaleBar(new(320, 240), scale, LengthStyle.Millimetres)]);
    }
}
