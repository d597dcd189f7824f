using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Year;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>The year of a house: what was held by day and hour, the air inside, hours, energy, water and cost by month.</summary>
public static class YearSheet
{
    private const double WaterKgPerM3 = 998;

    /// <summary>The sheet; none for a year that has no hours.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="house">Which house.</param>
    /// <param name="number">Sheet number.</param>
    public static Sheet Draw(PaperSource source, HouseResults house, string number)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(house);
        YearResult year = house.Year;
        Said said = new(source.Job.Units);
        SheetDraft draft = new(source, "year-" + house.Form.Id, $"House {house.Form.Id}: the year", number);
        Box room = draft.Room;
        string weather = (year.Synthetic ? "not measured, " : "") + year.Weather;
        double halfMm = room.Width / 2 - 4;
        double carpetMm = Math.Min(78, 0.36 * room.Height);
        draft.Heading("Temperature against the wish", new(room.Left, room.Top), halfMm);
        draft.Heading($"Air at the crop, {said.Of(0, Unit.Celsius).Unit}", new(room.Left + halfMm + 8, room.Top), halfMm);
        if (ClimateAnswer.Carpet(source, year, halfMm, carpetMm) is { } held)
        {
            draft.Insets.Add(new Inset(held, new(room.Left, room.Top + 5)));
        }

        if (InsideCarpet(year, source.Job.Units, halfMm, carpetMm) is { } inside)
        {
            draft.Insets.Add(new Inset(inside, new(room.Left + halfMm + 8, room.Top + 5)));
        }

        double y = room.Top + carpetMm + 12;
        double barsMm = (room.Width - 16) / 3;
        double barsHighMm = Math.Clamp(room.Bottom - y - 54, 40, 90);
        MonthSeries Months(string name, Func<YearMonth, double> of) => new(name, [.. year.Months.Select(of)]);
        double Energy(double valueJ, Unit unit) => said.Of(valueJ, unit).Value;
        if (year.Months.Count == 12)
        {
            string heat = said.Of(1, Unit.Joule).Unit;
            (string Heading, Sheet Bars)[] bars =
            [
                ($"Heat in the fuel, {heat}", MonthBars.Draw($"year-fuel-{year.House}", "Fuel by month", heat, [Months("fuel", m => Energy(m.FuelJ, Unit.Joule))], null, barsMm, barsHighMm)),
                ("Electric energy, kWh", MonthBars.Draw($"year-power-{year.House}", "Electric energy by month", "kWh", [Months("power", m => m.PowerJ / 3.6e6)], null, barsMm, barsHighMm)),
                ("Fuel, power and water, $", MonthBars.Draw($"year-cost-{year.House}", "Running cost by month", "$", [Months("cost", m => m.Cost)], null, barsMm, barsHighMm)),
            ];
            for (int i = 0; i < bars.Length; i++)
            {
                draft.Heading(bars[i].Heading, new(room.Left + i * (barsMm + 8), y), barsMm);
                draft.Insets.Add(new Inset(bars[i].Bars, new(room.Left + i * (barsMm + 8), y + 4)));
            }

            y += barsHighMm + 8;
        }

        Table hours = Hours(source, year, said);
        draft.Table("Hours", hours, new(room.Left, y));
        Table sums = Sums(year, said);
        draft.Table("The year", sums, new(room.Left + hours.WidthMm + 8, y));
        double tariffX = room.Left + hours.WidthMm + sums.WidthMm + 16;
        draft.Notes(
            [
                $"Weather: {weather}.",
                $"Tariffs: {source.Job.Tariffs.FuelShown}{(source.Job.Tariffs.PriceDate.Length > 0 ? ", " + source.Job.Tariffs.PriceDate : ", undated")}; the range is the spread the job states.",
                "Held: every minute the air at the crop within the band of the wish. Bars and sums are of this house; demand of several houses does not add up.",
            ],
            new(tariffX, y), room.Right - tariffX);
        return draft.Done(
            $"The year of house {house.Form.Id}: temperature held in {Said.Percent(Share(year.Held))} % of hours; {Said.Money(year.CostLow)} to {Said.Money(year.CostHigh)} to run.",
            "Predicted with the control program and the weather named, equipment maintained; not a warranty. A typical year leaves the extremes out: the design days stand on their own sheet.");
    }

    private static double Share(HeldCounters held) => held.TotalH > 0 ? held.HeldTemperatureH / held.TotalH : 0;

    /// <summary>Air at the crop by day and hour.</summary>
    /// <param name="year">The year.</param>
    /// <param name="units">Units of the reader.</param>
    /// <param name="widthMm">Width on paper, mm.</param>
    /// <param name="heightMm">Height on paper, mm.</param>
    /// <returns>The carpet; null for a year without hours.</returns>
    public static Sheet? InsideCarpet(YearResult year, UnitSystem units, double widthMm, double heightMm)
    {
        ArgumentNullException.ThrowIfNull(year);
        if (year.Hours.InsideC.Count == 0 || year.Hours.InsideC.Count % 24 != 0)
        {
            return null;
        }

        Said said = new(units);
        bool us = units == UnitSystem.Us;
        double[] inside = [.. year.Hours.InsideC.Select(c => said.Of(c, Unit.Celsius).Value)];
        Sheet carpet = CarpetPlot.Draw($"inside-{year.House}", $"Air at the crop in house {year.House}", "", inside, CarpetPlot.Even(Ramp.Sequential, us ? 50 : 10, us ? 10 : 5, 6), widthMm, heightMm);
        return carpet with { Readings = [.. carpet.Readings.Select(r => r.In(1, us ? "°F" : "°C", 1))] };
    }

    private static Table Hours(PaperSource source, YearResult year, Said said)
    {
        HeldCounters held = year.Held;
        string Of(double hoursH) => Said.Hours(hoursH) + " h";
        return new Table(
            [new("Of the year", 86), new("", 30, Along.End)],
            [
                [$"Temperature within {said.Text(source.Job.Band.TemperatureK, Unit.Kelvin)} of the wish", $"{Said.Percent(Share(held))} %"],
                ["Too cold", Of(held.TooColdH)],
                ["Too warm", Of(held.TooWarmH)],
                ["Humidity within its band, of the hours it is wished", held.HumidityAskedH > 0 ? $"{Said.Percent(held.HeldHumidityH / held.HumidityAskedH)} %" : "not wished"],
                ["Coldest / hottest air at the crop", $"{said.Round(year.Extremes.LowestC, Unit.Celsius)} / {said.Round(year.Extremes.HighestC, Unit.Celsius)}"],
            ]);
    }

    private static Table Sums(YearResult year, Said said) => new(
        [new("Used", 76), new("", 44, Along.End)],
        [
            ["Heat in the fuel burnt", said.Text(year.FuelJ, Unit.Joule)],
            ["Electric energy", said.Text(year.PowerJ, Unit.ElectricJoule)],
            ["Highest quarter hour", said.Text(year.PeakPowerW, Unit.ElectricWatt)],
            ["Water for cooling", said.Text(year.WaterKg / WaterKgPerM3, Unit.WaterCubicMetre)],
            ["Cost", $"{Said.Money(year.CostLow)} to {Said.Money(year.CostHigh)}"],
        ]);
}
