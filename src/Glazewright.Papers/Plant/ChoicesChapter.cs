using System.Globalization;
using Glazewright.Design.Choices;
using Glazewright.Design.Contracts;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Plant;

/// <summary>What the fixed choices hold and what others would. Cost stays in the contractor's own set.</summary>
internal static class ChoicesChapter
{
    public static IEnumerable<Block> Of(PaperSource source, HouseResults house)
    {
        ChoicesResult choices = house.Choices;
        Said said = new(source.Job.Units);
        if (choices.Fixed.Count > 0)
        {
            yield return new Block.Heading(2, "What the job fixes, and what it holds");
            yield return new Block.TableOf(new Table(
                [new Column("Fixed", 42), new Column("Asked", 34), new Column("Holds", 39), new Column("To spare", 21, Along.End), new Column("We would take", 36)],
                [.. choices.Fixed.Select(f => (IReadOnlyList<string>)[f.What, f.Asked, f.Holds, Margin(f.MarginFraction), f.Ours])]));
        }

        Alternative[] cooling = [.. choices.Alternatives.Where(a => a.FlowM3PerS > 0 && a.Kind is ChoiceKind.Chosen or ChoiceKind.Fans or ChoiceKind.Cooling)];
        if (cooling.Length > 1)
        {
            yield return new Block.Heading(2, "Cooling: other choices");
            yield return new Block.TableOf(new Table(
                [
                    new Column("One thing changed", 48), new Column("Air", 22, Along.End), new Column("Hottest day", 21, Along.End), new Column("Humidity there", 19, Along.End),
                    new Column("Wet-bulb day", 21, Along.End), new Column("Power", 19, Along.End), new Column("Water", 22, Along.End),
                ],
                [
                    .. cooling.Select(a => (IReadOnlyList<string>)
                    [
                        a.Label, said.Text(a.FlowM3PerS, Unit.CubicMetrePerSecond), said.Text(a.HottestC, Unit.Celsius), Said.Percent(a.DampestFraction) + " %", said.Text(a.WetDayC, Unit.Celsius),
                        said.Text(a.CoolingW, Unit.ElectricWatt), said.Text(a.WaterKgPerS, Unit.KilogramPerSecond),
                    ]),
                ]));
            yield return new Block.Paragraph(
                "Hottest air in the house (the fan end) with all fans (or as many as a small pad serves) and the pad on, or with fog and as many fans as it is sized for: on the hottest design day, and on the 0.4 % wet-bulb day with the same sun. Fog evaporates only what the air takes; the shade counted when the fans were sized is drawn.",
                Quiet: true);
        }

        Alternative[] heat = [.. choices.Alternatives.Where(a => a.HeatW > 0 && a.Kind is ChoiceKind.Chosen or ChoiceKind.Heat or ChoiceKind.Curtain)];
        if (heat.Length > 1)
        {
            yield return new Block.Heading(2, "Heat and curtain: other choices");
            yield return new Block.TableOf(new Table(
                [
                    new Column("One thing changed", 46), new Column("Heat", 27, Along.End), new Column("All on holds", 20, Along.End), new Column("One dead holds", 20, Along.End),
                    new Column("Loss, curtain drawn", 29, Along.End), new Column("Fuel, kW", 15, Along.End), new Column("Power, kW", 18, Along.End),
                ],
                [
                    .. heat.Select(a => (IReadOnlyList<string>)
                    [
                        a.Label, said.Text(a.HeatW, Unit.Watt), said.Floor(a.HoldsC, Unit.Celsius), said.Floor(a.OneOutC, Unit.Celsius), said.Text(a.NightLossW, Unit.Watt),
                        Kilowatt(a.NightFuelW), Kilowatt(a.NightPowerW),
                    ]),
                ]));
            yield return new Block.Paragraph(
                "On the 99.6 % night: what is held with the curtain open, with everything on and with the largest heat source dead; loss with the curtain drawn, filter fan's air included; fuel (gross) and electric power in kW to cover it. One boiler that dies leaves no heat: two smaller ones, or heaters kept beside it. Open the curtain slowly in cold, before the sun loads it.",
                Quiet: true);
        }
    }

    private static string Margin(double? fraction) => fraction is null ? "" : fraction < 0
        ? string.Create(CultureInfo.InvariantCulture, $"short {-100 * fraction:0} %")
        : string.Create(CultureInfo.InvariantCulture, $"{100 * fraction:0} %");

    private static string Kilowatt(double powerW) => (powerW / 1000).ToString("0.0", CultureInfo.InvariantCulture);
}
