using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Year;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Exchange;
using Glazewright.Papers.Reports;

namespace Glazewright.Papers.Days;

/// <summary>One day of a house's year on paper: air, light and equipment on one timeline, then every command with its reason.</summary>
public static class DayReport
{
    /// <summary>Commands that are printed; a day that chatters has more in its table of data.</summary>
    private const int MostRows = 240;

    private static readonly (double Fraction, string Text)[] Marks =
        [.. Enumerable.Range(0, 9).Select(i => (i / 8.0, (3 * i).ToString("00", CultureInfo.InvariantCulture)))];

    /// <summary>The day in words: "14 July".</summary>
    /// <param name="day">0 to 364.</param>
    /// <returns>Day and month of a common year.</returns>
    public static string Name(int day) => new DateTime(2011, 1, 1, 0, 0, 0, DateTimeKind.Unspecified).AddDays(day).ToString("d MMMM", CultureInfo.InvariantCulture);

    /// <summary>The report.</summary>
    /// <param name="job">Name of the job.</param>
    /// <param name="weather">Which year, in words.</param>
    /// <param name="replay">The day.</param>
    /// <param name="units">Units of the reader.</param>
    /// <param name="size">Paper.</param>
    /// <param name="date">Date of the papers, or none.</param>
    /// <param name="along">The day cell by cell, or null.</param>
    /// <returns>One chapter, or two.</returns>
    public static Report Of(string job, string weather, DayReplay replay, UnitSystem units, SheetSize size, DateOnly? date, DetailDay? along = null)
    {
        ArgumentNullException.ThrowIfNull(replay);
        string title = $"House {replay.House}, {Name(replay.Day)}";
        List<Block> blocks =
        [
            new Block.Opening(job, title + ", minute by minute", [$"Weather: {weather}; standard time", "A typical day of a model, not a record"]),
            .. Pictures(replay, units),
            .. along is null ? [] : AlongReport.Blocks(along, units),
            new Block.Heading(1, "Every command and its reason"),
            new Block.TableOf(Commands(replay, units)),
        ];
        if (replay.Spells.Count > MostRows)
        {
            blocks.Add(new Block.Paragraph(string.Create(CultureInfo.InvariantCulture, $"The first {MostRows} of {replay.Spells.Count} commands; all stand in the table of data."), Quiet: true));
        }

        return new Report($"{job}: {title}", "One day of the year's run with its commands", $"{job} · {title}", date, size, blocks);
    }

    /// <summary>Air, light and equipment on one timeline.</summary>
    /// <param name="replay">The day.</param>
    /// <param name="units">Units of the reader.</param>
    public static IReadOnlyList<Block> Pictures(DayReplay replay, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(replay);
        return
        [
            new Block.Picture(Temperatures(replay, units), "Air at the crop against its target, air above the curtain, outside."),
            new Block.Picture(Humidity(replay), "Humidity at the crop against its target."),
            new Block.Picture(Light(replay), "Global light outside."),
            new Block.Picture(CommandBars.Draw("commands", "Equipment", UsReasons.Of(replay, units), Said.WidthMm), "What the control box told each piece of equipment: the bar's height is how far on, open or drawn."),
        ];
    }

    /// <summary>The day's minutes as a table.</summary>
    /// <param name="replay">The day.</param>
    /// <returns>CSV, SI, one row a minute.</returns>
    public static string Minutes(DayReplay replay)
    {
        ArgumentNullException.ThrowIfNull(replay);
        // One column more, and only where a second curtain moves by itself.
        bool two = HasSecondCurtain(replay);
        CsvText table = new([
            "minute", "inside_c", "inside_rh_percent", "above_curtain_c", "outside_c", "sun_w_m2", "target_c", "target_rh_percent", "heat_w", "exhaust_m3_s",
            "curtain_fraction", "wet_wall_or_fog_fraction", "power_w", .. two ? (string[])["second_curtain_fraction"] : []]);
        for (int m = 0; m < replay.Minutes.Count; m++)
        {
            ReplayMinute x = replay.Minutes[m];
            table.Cell(Clock(m)).Cell(x.InsideC, 2).Cell(x.InsideRhPercent, 1).Cell(x.UpperC, 2).Cell(x.OutsideC, 2).Cell(x.SunWm2, 0);
            Maybe(x.TargetC, 2);
            Maybe(x.TargetRhPercent, 1);
            table.Cell(x.HeatW, 0).Cell(x.FlowM3PerS, 2).Cell(x.CurtainFraction, 3).Cell(x.CoolingFraction, 3).Cell(x.PowerW, 0);
            (two ? table.Cell(x.SecondCurtainFraction, 3) : table).End();
        }

        return table.ToString();

        void Maybe(double value, int decimals) => _ = double.IsNaN(value) ? table.Cell("") : table.Cell(value, decimals);
    }

    /// <summary>Whether the house has a second curtain that moves by itself.</summary>
    /// <param name="replay">The day.</param>
    public static bool HasSecondCurtain(DayReplay replay)
    {
        ArgumentNullException.ThrowIfNull(replay);
        return replay.Actuators.Contains(replay.House + "/second-curtain");
    }

    /// <summary>The day's commands as a table.</summary>
    /// <param name="replay">The day.</param>
    /// <returns>CSV, one row a stretch of one level and one reason.</returns>
    public static string CommandTable(DayReplay replay)
    {
        ArgumentNullException.ThrowIfNull(replay);
        CsvText table = new("from", "to", "equipment", "level_fraction", "reason");
        foreach (CommandSpell s in replay.Spells)
        {
            table.Cell(ToTheSecond(s.FromMinute)).Cell(ToTheSecond(s.ToMinute)).Cell(replay.Actuators[s.Actuator]).Cell(s.LevelFraction, 3).Cell(s.Because).End();
        }

        return table.ToString();
    }

    /// <summary>A minute of the day as a clock shows it.</summary>
    /// <param name="minute">0 to 1440.</param>
    /// <returns>For example 05:42.</returns>
    public static string Clock(int minute) => string.Create(CultureInfo.InvariantCulture, $"{minute / 60:00}:{minute % 60:00}");

    /// <summary>A time of the day with its seconds.</summary>
    /// <param name="minutes">0 to 1440, with fractions.</param>
    /// <returns>For example 05:42:15.</returns>
    public static string ToTheSecond(double minutes)
    {
        int seconds = (int)Math.Round(60 * minutes);
        return string.Create(CultureInfo.InvariantCulture, $"{Clock(seconds / 60)}:{seconds % 60:00}");
    }

    /// <summary>Every command with its reason, the first 240.</summary>
    /// <param name="replay">The day.</param>
    /// <param name="units">Units of the reader.</param>
    public static Table Commands(DayReplay replay, UnitSystem units) => new(
        [new Column("From", 16), new Column("To", 16), new Column("Command and reason", 140)],
        [.. replay.Spells.Take(MostRows).Select(s => (IReadOnlyList<string>)[ToTheSecond(s.FromMinute), ToTheSecond(s.ToMinute), UsReasons.Of(s.Because, units)])]);

    private static Sheet Temperatures(DayReplay replay, UnitSystem units)
    {
        string unit = Shown.Of(20, Unit.Celsius, units).Unit;
        return StripChart.Draw(
            "temperatures", "Temperatures", unit,
            [
                Strip("crop", m => m.InsideC), Strip("target", m => m.TargetC), Strip("above curtain", m => m.UpperC), Strip("outside", m => m.OutsideC),
            ],
            null, Marks, Said.WidthMm, 46, EveryFifth);

        Strip Strip(string name, Func<ReplayMinute, double> value) => new(
            name, [.. replay.Minutes.Where((_, i) => i % 5 == 0).Select(m => double.IsNaN(value(m)) ? double.NaN : Shown.Of(value(m), Unit.Celsius, units).Value)]);
    }

    private static string EveryFifth(int step) => Clock(5 * step);

    private static Sheet Humidity(DayReplay replay) => StripChart.Draw(
        "humidity", "Humidity", "% RH",
        [
            new Strip("crop", [.. replay.Minutes.Where((_, i) => i % 5 == 0).Select(m => m.InsideRhPercent)]),
            new Strip("target", [.. replay.Minutes.Where((_, i) => i % 5 == 0).Select(m => m.TargetRhPercent)]),
        ],
        null, Marks, Said.WidthMm, 24, EveryFifth);

    private static Sheet Light(DayReplay replay) => StripChart.Draw(
        "light", "Light outside", "W/m²", [new Strip("global", [.. replay.Minutes.Where((_, i) => i % 5 == 0).Select(m => m.SunWm2)])], null, Marks, Said.WidthMm, 24, EveryFifth);
}
