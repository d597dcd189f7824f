using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Plant;

/// <summary>The wet wall in one table, for the grower and for the plumber who prices pump, sump and drain.</summary>
internal static class WetWallChapter
{
    public static IEnumerable<Block> Of(PaperSource source, HouseResults house)
    {
        if (house.Plant.WetWall?.Choice is not { } pad)
        {
            yield break;
        }

        Said said = new(source.Job.Units);
        bool us = source.Job.Units == UnitSystem.Us;
        string Shown(string name, Unit unit) => house.Plant.Report.Figures.FirstOrDefault(f => f.Id == $"{house.Form.Id}/plant/{name}") is { } figure ? said.Text(figure.Value, unit) : "–";
        string running = pad.MostFans is { } most ? FormattableString.Invariant($"{most} of {house.Plant.Exhaust!.Choice.Fans.Count} fans on, as many as it serves") : "all fans on";
        yield return new Block.Heading(2, "Wet wall");
        yield return new Block.TableOf(new Table(
            [new Column("What", 66), new Column("Amount", 42, Along.End), new Column("Mind", 64)],
            [
                ["Pad, width × height", $"{said.Text(pad.WidthM, Unit.Metre)} × {said.Text(pad.HeightM, Unit.Metre)}", us ? $"{pad.ThicknessM / 0.0254:0} in thick" : $"{1000 * pad.ThicknessM:0} mm thick"],
                ["Air through its face, " + running, us ? $"{pad.FaceSpeedMs / 0.00508:0} ft/min" : said.Text(pad.FaceSpeedMs, Unit.MetrePerSecond), $"{Said.Percent(pad.Effectiveness)} % of the way to the wet bulb"],
                ["Pressure lost in it", Shown("pad-loss", Unit.Pascal), "wet and clean; salts and algae raise it"],
                ["Water over the pad", ServicesChapter.Flow(pad.PumpFlowM3PerS, us), "far more than evaporates: a dry stripe lets hot air in"],
                ["Pump", said.Text(pad.PumpW, Unit.ElectricWatt), "strainer, throttle valve, low-water stop"],
                ["Sump", said.Text(pad.SumpM3, Unit.WaterCubicMetre), "takes what runs back when the pump stops"],
                ["Evaporates on the design day", said.Text(pad.EvaporationKgPerS, Unit.KilogramPerSecond), running],
                ["Bleed-off", said.Text(pad.EvaporationKgPerS * pad.BleedFraction, Unit.KilogramPerSecond), $"{Said.Percent(pad.BleedFraction)} % of what evaporates, by the hardness of the water"],
                ["Make-up", Shown("pad-make-up", Unit.KilogramPerSecond), "float valve behind a backflow preventer"],
            ]));
    }
}
