using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Quantities;

namespace Glazewright.Design.Calibration.Reading;

/// <summary>Reads a column map: every fault at once with its place. One set of calls also makes the schema.</summary>
public static class ColumnMapReader
{
    internal const string VersionKey = "glazewrightColumns";

    /// <summary>Reads a map.</summary>
    /// <param name="text">JSON, comments and trailing commas allowed.</param>
    /// <returns>The map, or its faults.</returns>
    public static ReadOutcome<ColumnMap> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        JobDocument document = JobDocument.Read(text);
        if (document.Root is not ObjectNode root || document.Faults.Any(f => f.Kind == FaultKind.NotJson))
        {
            EqList<Fault> faults = document.Faults.Count > 0
                ? document.Faults
                : [new Fault(FaultKind.NotJson, "", "", 1, 1, "the document is not an object", $"{{ \"{VersionKey}\": 1, … }}")];
            return new ReadOutcome<ColumnMap>(null, faults, []);
        }

        ReadOutcome<ColumnMap> outcome = FieldReader.Read(root, Fields);
        return document.Faults.Count == 0 ? outcome : new ReadOutcome<ColumnMap>(null, [.. document.Faults, .. outcome.Faults], outcome.Defaults);
    }

    /// <summary>The map's JSON Schema.</summary>
    /// <returns>JSON, draft 2020-12.</returns>
    public static string Schema() => SchemaWriter.Write(FieldReader.Describe(Fields), "Glazewright column map, version 1");

    private static ColumnMap Fields(FieldReader f)
    {
        f.Allow("$schema", new FieldShape.Prose(400, "", ""), "no schema is named", "Address of the schema, for an editor.");
        _ = f.Whole(VersionKey, 1, 1, null, "Version of this document.");
        string name = f.Words("name", "Logged house", "What the log is called.", "North range, autumn", 100);
        string clock = f.Words("clock", "+00:00", "Zone of the stamps: an IANA name (with its summer time) or a steady offset.", "Europe/Amsterdam", 60);
        if (!f.IsDescribing && !LogClock.TryFind(clock, out _))
        {
            f.Add(FaultKind.UnknownChoice, "clock", $"no zone '{clock}' is known", "an IANA name as Europe/Amsterdam, or an offset as +01:00");
        }

        EqList<LogTableMap> tables = f.Several("tables", 1, 8, null, "Files of the log, in the order they are given on the command line.", Table);
        if (!f.IsDescribing && tables.Count > 0 && tables[0].Form == StampForm.SameRows)
        {
            f.AddBelow(FaultKind.Contradiction, "tables/0/time/form", "the first table has no stamps of its own", "one of the other forms; later tables may follow its rows");
        }

        EqList<MappedConstant> constants = f.Several("constants", 0, 20, "nothing is held constant", "What is not logged and steady.", Constant);
        EqList<AssumedThermostat> thermostats = f.Several("thermostats", 0, 8, "nothing is assumed", "Equipment that is not logged, driven by the computed air.", Thermostat);
        int every = f.Whole("trainEvery", 2, 12, 4, "One week in so many is fitted on, the others are scored.");
        int from = f.Whole("trainFrom", 1, 12, 2, "The first week that is fitted on.");
        EqList<FittedSize> sizes = f.Several("fit", 0, SizeRange.Most, "chosen by what is logged", "Sizes to fit, at most six.", Size);
        foreach (FittedSize twice in sizes.GroupBy(s => s).Where(g => g.Count() > 1).Select(g => g.Key))
        {
            f.Add(FaultKind.Duplicate, "fit", $"'{SizeRange.Of(twice).Word}' is named twice", "each size once");
        }

        PlainHouse? house = f.GroupOrBlank("house", "a job gives the house", "A built house by its sizes, where there is no job.", PlainHouseFields.Read);
        Once(f, tables, constants, thermostats);
        return new ColumnMap(name, clock, tables, constants, thermostats, every, from, sizes, house);
    }

    private static LogTableMap Table(FieldReader f)
    {
        string name = f.Words("name", "table " + (f.Index + 1).ToString(CultureInfo.InvariantCulture), "What the file is called in messages.", "climate computer", 60);
        char separator = f.Word("separator", ["comma", "semicolon", "tab"], "comma", "Between cells.") switch { "semicolon" => ';', "tab" => '\t', _ => ',' };
        (string column, StampForm form, bool drop) = f.Group("time", "The stamps.", t => (
            t.Words("column", "", "Heading of the stamps; empty for an unnamed column.", "Date", 80),
            t.Choice<StampForm>("form", StampForm.YearMonthDay, "How they are written."),
            t.Flag("dropBackwards", false, "Leave rows out whose stamp goes back (a clock set right), instead of refusing the log.")));
        string missing = f.Words("missing", "NaN", "Texts that mean 'no reading', split by commas; an empty cell always does.", "NaN, M1", 100);
        EqList<MappedColumn> columns = f.Several("columns", 1, 40, null, "Columns that are read.", Column);
        return new LogTableMap(name, separator, column, form, missing.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).ToEqList(), drop, columns);
    }

    private static MappedColumn Column(FieldReader f)
    {
        string column = f.Words("column", null, "Heading of the column.", "Tair", 80);
        LoggedQuantity quantity = Quantity(f, "is", "What it holds.");
        (double factor, double offset) = Unit(f, quantity);
        double scale = f.Ratio("scale", "-1000", "1000", "1", "Typed values times this are in the unit.");
        bool reversed = f.Flag("reversed", false, "A share counted the other way round: 100 is open, and what counts is closed.");
        bool zeroIsOff = f.Flag("zeroIsOff", false, "A pipe that reads 0 stands still.");
        return new MappedColumn(column, quantity, factor * scale, offset, reversed, zeroIsOff, f.Pointer);
    }

    private static MappedConstant Constant(FieldReader f)
    {
        LoggedQuantity quantity = Quantity(f, "is", "What it is.");
        (double factor, double offset) = Unit(f, quantity);
        double typed = f.Ratio("value", "-100000", "200000", null, "Its value in that unit.");
        double value = typed * factor + offset;
        QuantityTraits traits = QuantityTraits.Of(quantity);
        if (!f.IsDescribing && !f.IsFaulty("value") && !f.IsFaulty("unit") && !f.IsFaulty("is") && (value < traits.LowestValue || value > traits.HighestValue))
        {
            f.Add(FaultKind.OutOfRange, "value", $"no {traits.Word} can be that", "a value in the unit that is named beside it");
        }

        return new MappedConstant(quantity, value, f.Pointer);
    }

    private static AssumedThermostat Thermostat(FieldReader f)
    {
        LoggedQuantity quantity = Quantity(f, "drives", "What it drives: fans, pad-pump, fog, heaters, roof-vents or side-vents.");
        double noneC = f.TemperatureC("noneAt", "-20 C", "60 C", null, "Air at which it stands at nothing.");
        double fullC = f.TemperatureC("fullAt", "-20 C", "60 C", null, "Air at which it stands at full.");
        if (!f.IsDescribing && quantity is not (LoggedQuantity.Fans or LoggedQuantity.PadPump or LoggedQuantity.Fog or LoggedQuantity.Heaters or LoggedQuantity.RoofVents or LoggedQuantity.SideVents))
        {
            f.Add(FaultKind.UnknownChoice, "drives", $"{QuantityTraits.Of(quantity).Word} is not driven by a thermostat here", "fans, pad-pump, fog, heaters, roof-vents or side-vents");
        }

        return new AssumedThermostat(quantity, noneC, fullC, f.Pointer);
    }

    private static FittedSize Size(FieldReader f)
    {
        string[] words = [.. SizeRange.All.Select(s => s.Word)];
        return SizeRange.All[Math.Max(0, Array.IndexOf(words, f.Word("size", words, null, "Which size.")))].Size;
    }

    private static LoggedQuantity Quantity(FieldReader f, string key, string doc)
    {
        string[] words = [.. QuantityTraits.All.Select(t => t.Word)];
        return QuantityTraits.All[Math.Max(0, Array.IndexOf(words, f.Word(key, words, null, doc)))].Quantity;
    }

    private static (double Factor, double Offset) Unit(FieldReader f, LoggedQuantity quantity)
    {
        string word = f.Word("unit", LogUnits.Words, null, "Unit of the values.");
        LoggedKind kind = QuantityTraits.Of(quantity).Kind;
        if (!LogUnits.TryFind(word, kind, out double factor, out double offset) && !f.IsDescribing && !f.IsFaulty("unit") && !f.IsFaulty("is"))
        {
            f.Add(FaultKind.Unit, "unit", $"{QuantityTraits.Of(quantity).Word} is not measured in {word}", LogUnits.Of(kind));
        }

        return (factor, offset);
    }

    // What is logged is neither constant nor assumed; only vents and lamps may stand in several columns.
    private static void Once(FieldReader f, EqList<LogTableMap> tables, EqList<MappedConstant> constants, EqList<AssumedThermostat> thermostats)
    {
        if (f.IsDescribing)
        {
            return;
        }

        (LoggedQuantity Quantity, string Below)[] logged = [.. tables.SelectMany(t => t.Columns).Select(c => (c.Quantity, c.Pointer[1..] + "/is")).Where(c => !f.IsFaulty(c.Item2))];
        foreach (IGrouping<LoggedQuantity, (LoggedQuantity Quantity, string Below)> group in logged.GroupBy(c => c.Quantity).Where(g => g.Count() > 1))
        {
            if (group.Key is not (LoggedQuantity.RoofVents or LoggedQuantity.SideVents or LoggedQuantity.Lamps))
            {
                f.AddBelow(FaultKind.Duplicate, group.Last().Below, $"{QuantityTraits.Of(group.Key).Word} is in another column too", "one column for it (only vents and lamps are averaged)");
            }
        }

        HashSet<LoggedQuantity> taken = [.. logged.Select(c => c.Quantity)];
        foreach ((LoggedQuantity quantity, string below) in constants.Select(c => (c.Quantity, c.Pointer[1..] + "/is")).Concat(thermostats.Select(t => (t.Quantity, t.Pointer[1..] + "/drives"))))
        {
            if (!taken.Add(quantity))
            {
                f.AddBelow(FaultKind.Contradiction, below, $"{QuantityTraits.Of(quantity).Word} is given in another place already", "one place for it");
            }
        }
    }
}
