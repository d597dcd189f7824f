using System.Globalization;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Science.Weather;
using Glazewright.Store.Library;
using Glazewright.Web.Fields;

namespace Glazewright.Web.Jobs;

/// <summary>A job that is only being begun: six lines on the start page, in no store yet.</summary>
/// <param name="weather">Weather years.</param>
public sealed class DraftJob(WeatherShelf weather) : IJobDesk
{
    // A year of a station farther off is another climate: the same limit as the job's own reading has.
    private const double FarthestKm = 300;
    private const double FootM = 0.3048;

    private EqList<Fault> _all = [];
    private bool _isAsked;

    /// <summary>Something to show has changed.</summary>
    public event Action? Changed;

    /// <summary>Weather years of the library.</summary>
    public IReadOnlyList<(LibraryFile File, YearSummary Year)> Years { get; private set; } = [];

    /// <summary>The same in words to choose from.</summary>
    public IReadOnlyList<Offer> YearsTold => WeatherShelf.Told(Years, Document, Units);

    /// <inheritdoc/>
    public JobDocument Document { get; private set; } = JobDocument.Read("{\n  \"glazewright\": 1,\n  \"houses\": [\n    { \"id\": \"A\" }\n  ]\n}\n");

    /// <summary>What is wrong; what is merely not typed yet is told once the job is asked for.</summary>
    public EqList<Fault> Faults => _isAsked ? _all : _all.Where(f => f.Kind != FaultKind.Missing).ToEqList();

    /// <inheritdoc/>
    public EqList<DefaultUsed> Defaults { get; private set; } = [];

    /// <inheritdoc/>
    public UnitSystem Units => Document.Find("/units") is TextNode { Text: "metric" } ? UnitSystem.Metric : UnitSystem.Us;

    /// <inheritdoc/>
    public bool IsLocked => false;

    /// <summary>The library's years, anew.</summary>
    /// <param name="cancel">Cancels.</param>
    public async Task LookAsync(CancellationToken cancel = default)
    {
        Years = await weather.YearsAsync(cancel);
        await ReadAsync(cancel);
    }

    /// <inheritdoc/>
    public IReadOnlyList<Offer> Offers(string pointer) => [];

    /// <inheritdoc/>
    public async Task EditAsync(IReadOnlyList<Edit> edits, string what)
    {
        ArgumentNullException.ThrowIfNull(edits);
        if (Document.TryEdit(edits, out JobDocument edited, out _))
        {
            Document = edited;
            if (edits.Any(e => e.Pointer is "/site/latitude" or "/site/longitude"))
            {
                TakeNearest();
            }

            await ReadAsync(CancellationToken.None);
        }
    }

    /// <summary>Takes a station's place and year.</summary>
    /// <param name="name">Name of its file; empty for a place by latitude and longitude.</param>
    public Task TakeStationAsync(string name) => EditAsync(
        name.Length == 0
            ? Taken("/site/weather")
            : [.. Taken("/site/latitude"), .. Taken("/site/longitude"), .. Taken("/site/weather"), Edit.Typed(PackedJob.YearPointer, name)],
        "weather");

    /// <summary>Names a design-day or statistics file in the job, where it bears the name of the job's year.</summary>
    /// <param name="kind">What it is.</param>
    /// <param name="name">Its name in the library.</param>
    /// <returns>Whether the job names it now.</returns>
    public async Task<bool> TakeDesignAsync(LibraryKind kind, string name)
    {
        bool isOurs = Document.Find(PackedJob.YearPointer) is TextNode { Text: var year } && WeatherShelf.Stem(year).Equals(WeatherShelf.Stem(name), StringComparison.OrdinalIgnoreCase);
        if (isOurs)
        {
            await EditAsync([Edit.Typed(kind == LibraryKind.DesignDays ? PackedJob.DesignDaysPointer : PackedJob.StatisticsPointer, name)], "design days");
        }

        return isOurs;
    }

    /// <summary>Suggests a width and a length for a floor.</summary>
    /// <param name="floorM2">Floor wanted, m², 10 to 10 000.</param>
    /// <returns>True when it could be suggested.</returns>
    public async Task<bool> SuggestAsync(double floorM2)
    {
        if (!(floorM2 is >= 10 and <= 10_000))
        {
            return false;
        }

        (string width, string length) = HouseSizes.For(floorM2, Units);
        await EditAsync([Edit.Typed("/houses/0/width", width), Edit.Typed("/houses/0/length", length)], "size");
        return true;
    }

    /// <summary>Whether the job can be begun; from now on also what is not typed is told.</summary>
    public bool Ask()
    {
        _isAsked = true;
        return _all.Count == 0;
    }

    private IReadOnlyList<Edit> Taken(string pointer) => Document.Find(pointer) is null ? [] : [Edit.Removed(pointer)];

    private void TakeNearest()
    {
        if (Degrees("/site/latitude") is not { } latitude || Degrees("/site/longitude") is not { } longitude)
        {
            return;
        }

        (LibraryFile File, YearSummary Year)? nearest = Years.Count == 0 ? null : Years.MinBy(s => s.Year.Station.ApartKm(latitude, longitude));
        IReadOnlyList<Edit> edits = nearest is { } near && near.Year.Station.ApartKm(latitude, longitude) <= FarthestKm ? [.. Taken("/site/weather"), Edit.Typed(PackedJob.YearPointer, near.File.Name)] : Taken("/site/weather");
        if (edits.Count > 0 && Document.TryEdit(edits, out JobDocument edited, out _))
        {
            Document = edited;
        }
    }

    private async Task ReadAsync(CancellationToken cancel)
    {
        (WeatherYear? year, EqList<Fault> weatherFaults) = await weather.FindAsync(Document, cancel);
        EqList<Fault> faults = LoadedJob.Read(Document, year, weatherFaults, out EqList<DefaultUsed> defaults, out _);
        Defaults = defaults;
        // "A weather file is missing" is not news to one who gave a place: that there is none near it is.
        _all = Degrees("/site/latitude") is not null && Degrees("/site/longitude") is not null && year is null
            ? [.. faults.Where(f => !f.Pointer.StartsWith("/site/weather", StringComparison.Ordinal)), MeantWest() ?? NoneNear()]
            : faults;
        Changed?.Invoke();
    }

    // A longitude of America without its sign is in Asia.
    private Fault? MeantWest() =>
        Degrees("/site/latitude") is { } latitude && Degrees("/site/longitude") is > 0 and { } east && Years.Any(s => s.Year.Station.ApartKm(latitude, -east) <= FarthestKm)
            ? new Fault(
                FaultKind.NotFound, "/site/longitude", "", 0, 0, string.Create(CultureInfo.InvariantCulture, $"{east:0.####} is east of Greenwich, and the library has no weather year near there"),
                string.Create(CultureInfo.InvariantCulture, $"did you mean {-east:0.####} (west)?"))
            : null;

    private static Fault NoneNear() => new(
        FaultKind.NotFound, PackedJob.YearPointer, "", 0, 0, string.Create(CultureInfo.InvariantCulture, $"the library has no weather year from within {FarthestKm:0} km of that place"),
        "a weather file (EPW or TMY3) of a station near it, brought in below");

    private double? Degrees(string pointer) => Document.Find(pointer) is TextNode text
        && Design.Quantities.QuantityReader.TryRead(text.Text, Design.Quantities.QuantityKind.Angle, out Design.Quantities.Quantity angle, out _) ? angle.Inside : null;

    /// <summary>Widths and lengths that are usual for a floor.</summary>
    private static class HouseSizes
    {
        // Clear widths of tube-framed houses, and bays (common practice); a house is usually three to four times as long as wide.
        private static readonly double[] s_feet = [16, 20, 26, 30, 36, 42];
        private static readonly double[] s_metres = [5, 6.4, 8, 9.6, 12.8];

        public static (string Width, string Length) For(double floorM2, UnitSystem units)
        {
            bool us = units == UnitSystem.Us;
            double unitM = us ? FootM : 1;
            double bay = us ? 8 : 4;
            double[] widths = us ? s_feet : s_metres;
            double floor = floorM2 / (unitM * unitM);
            double width = widths.MinBy(w => Math.Abs(floor / (w * w) - 3.5));
            double length = Math.Max(2, Math.Round(floor / width / bay)) * bay;
            string unit = us ? "ft" : "m";
            return (string.Create(CultureInfo.InvariantCulture, $"{width:0.#} {unit}"), string.Create(CultureInfo.InvariantCulture, $"{length:0.#} {unit}"));
        }
    }
}
