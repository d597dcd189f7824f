using Glazewright.Design.Contracts;

namespace Glazewright.Design.Calibration.Reading;

/// <summary>How stamps are written.</summary>
public enum StampForm
{
    /// <summary>2018-08-14 13:05, also with T and seconds.</summary>
    YearMonthDay,

    /// <summary>8/14/2018 13:05.</summary>
    MonthDayYear,

    /// <summary>14/8/2018 13:05.</summary>
    DayMonthYear,

    /// <summary>Days since 30 December 1899 with fractions, as spreadsheets count.</summary>
    SpreadsheetDays,

    /// <summary>Seconds since 1970 UTC.</summary>
    UnixSeconds,

    /// <summary>No stamps of its own: row by row those of the first table.</summary>
    SameRows,
}

/// <summary>A column that is read.</summary>
/// <param name="Column">Its heading; empty for an unnamed first column.</param>
/// <param name="Quantity">What it holds.</param>
/// <param name="Factor">Typed value × this + offset = inside value.</param>
/// <param name="OffsetValue">Added after the factor.</param>
/// <param name="Reversed">A share counted the other way: 1 − value.</param>
/// <param name="ZeroIsOff">A pipe that reads 0 stands still.</param>
/// <param name="Pointer">Where the map says so.</param>
public sealed record MappedColumn(string Column, LoggedQuantity Quantity, double Factor, double OffsetValue, bool Reversed, bool ZeroIsOff, string Pointer);

/// <summary>A file of the log.</summary>
/// <param name="Name">What it is called in messages.</param>
/// <param name="Separator">Between cells.</param>
/// <param name="StampColumn">Heading of the stamps.</param>
/// <param name="Form">How they are written.</param>
/// <param name="Missing">Texts that mean "no reading".</param>
/// <param name="DropBackwards">Rows whose stamp goes back are left out and counted, instead of refusing the log.</param>
/// <param name="Columns">Columns read.</param>
public sealed record LogTableMap(
    string Name, char Separator, string StampColumn, StampForm Form, EqList<string> Missing, bool DropBackwards, EqList<MappedColumn> Columns);

/// <summary>A value that holds all the time, for what is not logged.</summary>
/// <param name="Quantity">Which.</param>
/// <param name="Value">Inside unit.</param>
/// <param name="Pointer">Where the map says so.</param>
public sealed record MappedConstant(LoggedQuantity Quantity, double Value, string Pointer);

/// <summary>Equipment whose state is not logged, driven by the computed air as a plain thermostat would.</summary>
/// <param name="Quantity">What it drives.</param>
/// <param name="NoneAtC">Air at which it stands at nothing, °C.</param>
/// <param name="FullAtC">Air at which it stands at full, °C; below the other for heat.</param>
/// <param name="Pointer">Where the map says so.</param>
public sealed record AssumedThermostat(LoggedQuantity Quantity, double NoneAtC, double FullAtC, string Pointer);

/// <summary>Which column is what, and what else a log leaves open.</summary>
/// <param name="Name">What the log is called.</param>
/// <param name="Clock">Zone of the stamps: an IANA name or an offset as +01:00.</param>
/// <param name="Tables">Files, in the order they are given.</param>
/// <param name="Constants">What is not logged and steady.</param>
/// <param name="Thermostats">What is not logged and switched.</param>
/// <param name="TrainEvery">Every so many weeks one is fitted on.</param>
/// <param name="TrainFrom">The first of them, from 1.</param>
/// <param name="Sizes">Sizes to fit, at most six; empty for the default.</param>
/// <param name="House">A house by its sizes; null when a job gives it.</param>
public sealed record ColumnMap(
    string Name,
    string Clock,
    EqList<LogTableMap> Tables,
    EqList<MappedConstant> Constants,
    EqList<AssumedThermostat> Thermostats,
    int TrainEvery,
    int TrainFrom,
    EqList<FittedSize> Sizes,
    PlainHouse? House);
