using System.Globalization;
using Glazewright.Design.Contracts;
using NodaTime;

namespace Glazewright.Design.Calibration.Reading;

/// <summary>Reads logs by a column map: every fault at once, gaps and doubts told.</summary>
public static class LogReader
{
    private const double Impossible = 0.01; // share of readings that cannot be, above which the unit is taken to be wrong

    /// <summary>Reads the files.</summary>
    /// <param name="map">Which column is what.</param>
    /// <param name="texts">The files' texts, in the map's order.</param>
    /// <param name="log">The log, when there are no faults.</param>
    /// <returns>Every fault; pointers are into the map.</returns>
    public static EqList<Fault> Read(ColumnMap map, IReadOnlyList<string> texts, out HouseLog? log)
    {
        ArgumentNullException.ThrowIfNull(map);
        ArgumentNullException.ThrowIfNull(texts);
        log = null;
        if (texts.Count != map.Tables.Count)
        {
            return [Fault(FaultKind.Usage, "/tables", $"the map tells of {Number(map.Tables.Count)} files and {Number(texts.Count)} are given", "the files in the map's order: " + string.Join(", ", map.Tables.Select(t => t.Name)))];
        }

        LogClock.TryFind(map.Clock, out LogClock clock);
        List<Fault> faults = [];
        List<LogNote> notes = [];
        List<LogSeries> series = [];
        double[] firstStamps = [];
        for (int t = 0; t < texts.Count; t++)
        {
            LogTable table = LogTable.Parse(texts[t], map.Tables[t].Separator);
            string at = "/tables/" + Number(t);
            if (table.Count == 0)
            {
                faults.Add(Fault(FaultKind.Missing, at, table.Headings.Count == 0 ? $"{map.Tables[t].Name} is empty" : $"{map.Tables[t].Name} has headings and no rows", "a table with headings and one row a reading"));
                continue;
            }

            double[] stamps = Stamps(map.Tables[t], at, table, clock, t == 0 ? null : firstStamps, faults, notes);
            firstStamps = t == 0 ? stamps : firstStamps;
            foreach (MappedColumn column in map.Tables[t].Columns)
            {
                Column(map.Tables[t], column, table, stamps, faults, notes, series);
            }
        }

        if (faults.Count == 0)
        {
            log = LogGrid.Lay(map, clock, series, faults, notes);
        }

        return faults.ToEqList();
    }

    private static double[] Stamps(LogTableMap map, string at, LogTable table, LogClock clock, double[]? first, List<Fault> faults, List<LogNote> notes)
    {
        double[] utc = new double[table.Count];
        if (map.Form == StampForm.SameRows)
        {
            if (first is null || first.Length != table.Count)
            {
                notes.Add(new LogNote("log/rows-differ", $"{map.Name} has {Number(table.Count)} rows, the table it goes along with {Number(first?.Length ?? 0)}: the shorter ends both"));
            }

            for (int i = 0; i < utc.Length; i++)
            {
                utc[i] = first is not null && i < first.Length ? first[i] : double.NaN;
            }

            return utc;
        }

        int column = table.Find(map.StampColumn);
        if (column < 0)
        {
            faults.Add(NoColumn(map, at + "/time/column", map.StampColumn, table));
            Array.Fill(utc, double.NaN);
            return utc;
        }

        double latest = double.NegativeInfinity;
        int unread = 0, back = 0, doubled = 0, firstUnread = 0, firstBack = 0;
        for (int i = 0; i < utc.Length; i++)
        {
            if (!StampReader.TryRead(table.Cell(i, column), map.Form, out LocalDateTime stamp))
            {
                firstUnread = unread++ == 0 ? i : firstUnread;
                utc[i] = double.NaN;
                continue;
            }

            double now = map.Form == StampForm.UnixSeconds ? Minutes(stamp) : clock.Utc(stamp, latest);
            if (now <= latest)
            {
                doubled += now == latest ? 1 : 0;
                back += now < latest ? 1 : 0;
                firstBack = now < latest && back == 1 ? i : firstBack;
                utc[i] = double.NaN;
                continue;
            }

            utc[i] = latest = now;
        }

        if (unread > 0)
        {
            faults.Add(Fault(
                FaultKind.WrongType, at + "/time/form",
                $"{map.Name}: {Number(unread)} of {Number(utc.Length)} stamps are not of this form, the first in row {Number(firstUnread + 2)}: '{Short(table.Cell(firstUnread, column))}'", "the form that the file uses"));
        }

        if (back > 0 && !map.DropBackwards)
        {
            faults.Add(Fault(
                FaultKind.Contradiction, at + "/time", $"{map.Name}: time goes back {Number(back)} times, first in row {Number(firstBack + 2)} ('{Short(table.Cell(firstBack, column))}')",
                "stamps that go on (summer time: a 'clock' with its name), or \"dropBackwards\": true"));
        }
        else if (back + doubled > 0)
        {
            notes.Add(new LogNote("log/rows-dropped", $"{map.Name}: {Number(back)} rows whose time goes back and {Number(doubled)} with the stamp of the row before were left out"));
        }

        return utc;
    }

    private static void Column(LogTableMap map, MappedColumn column, LogTable table, double[] stamps, List<Fault> faults, List<LogNote> notes, List<LogSeries> series)
    {
        int at = table.Find(column.Column);
        if (at < 0)
        {
            faults.Add(NoColumn(map, column.Pointer + "/column", column.Column, table));
            return;
        }

        QuantityTraits traits = QuantityTraits.Of(column.Quantity);
        List<double> times = [], values = [];
        int unread = 0, firstUnread = 0, cannotBe = 0, firstCannotBe = 0, given = 0;
        for (int i = 0; i < table.Count; i++)
        {
            string cell = table.Cell(i, at);
            if (cell.Length == 0 || map.Missing.Contains(cell, StringComparer.Ordinal))
            {
                continue;
            }

            if (!double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out double typed) || !double.IsFinite(typed))
            {
                firstUnread = unread++ == 0 ? i : firstUnread;
                continue;
            }

            given++;
            double value = column.ZeroIsOff && typed == 0 ? double.NegativeInfinity : typed * column.Factor + column.OffsetValue;
            value = column.Reversed ? 1 - value : value;
            if (value != double.NegativeInfinity && (value < traits.LowestValue || value > traits.HighestValue))
            {
                firstCannotBe = cannotBe++ == 0 ? i : firstCannotBe;
                continue;
            }

            if (!double.IsNaN(stamps[i]))
            {
                times.Add(stamps[i]);
                values.Add(value == double.NegativeInfinity ? HousePipes.Off : traits.Kind == LoggedKind.Share ? Math.Clamp(value, 0, 1) : value);
            }
        }

        string name = $"{map.Name}, {column.Column}";
        if (unread > 0)
        {
            faults.Add(Fault(
                FaultKind.WrongType, column.Pointer, $"{name}: {Number(unread)} cells are no numbers, the first in row {Number(firstUnread + 2)}: '{Short(table.Cell(firstUnread, at))}'",
                "numbers; a text that means 'no reading' belongs in \"missing\""));
        }

        if (cannotBe > Impossible * Math.Max(given, 1))
        {
            faults.Add(Fault(
                FaultKind.OutOfRange, column.Pointer + "/unit",
                $"{name}: {Number(cannotBe)} of {Number(given)} readings cannot be ({traits.Word}), the first in row {Number(firstCannotBe + 2)}: '{Short(table.Cell(firstCannotBe, at))}'", "the unit and scale that the file uses"));
        }
        else if (cannotBe > 0)
        {
            notes.Add(new LogNote("log/cannot-be", $"{name}: {Number(cannotBe)} readings cannot be and count as missing, the first in row {Number(firstCannotBe + 2)}: '{Short(table.Cell(firstCannotBe, at))}'"));
        }

        if (given == 0 && unread == 0)
        {
            faults.Add(Fault(FaultKind.Missing, column.Pointer, $"{name} has no reading at all", "a column with readings, or none"));
        }

        series.Add(new LogSeries(column.Quantity, map.Name, name, [.. times], [.. values]));
    }

    private static Fault NoColumn(LogTableMap map, string pointer, string heading, LogTable table) => Fault(
        FaultKind.NotFound, pointer, $"{map.Name} has no column '{heading}'", "one of: " + string.Join(", ", table.Headings.Take(30).Select(h => h.Length == 0 ? "(unnamed)" : Short(h))));

    private static Fault Fault(FaultKind kind, string pointer, string wrong, string right) => new(kind, pointer, "", 0, 0, wrong, right);

    private static double Minutes(LocalDateTime utc) => utc.InUtc().ToInstant().ToUnixTimeSeconds() / 60.0;

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);

    private static string Short(string text) => text.Length > 30 ? text[..30] + "…" : text;
}

/// <summary>Readings of one column as they came.</summary>
/// <param name="Quantity">What they are.</param>
/// <param name="Table">Which file.</param>
/// <param name="Name">Table and column, for messages.</param>
/// <param name="Utc">Minutes since 1970 UTC, rising.</param>
/// <param name="Values">Inside unit.</param>
internal sealed record LogSeries(LoggedQuantity Quantity, string Table, string Name, double[] Utc, double[] Values);
