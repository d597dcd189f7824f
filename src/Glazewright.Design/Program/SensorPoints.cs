using Glazewright.Design.Contracts;

namespace Glazewright.Design.Program;

/// <summary>Which sensor feeds which reading.</summary>
public static class SensorPoints
{
    private static readonly (SensorQuantity Quantity, SensorPlace Place, Reading Reading)[] s_points =
    [
        (SensorQuantity.Temperature, SensorPlace.Crop, Reading.InsideTemperature),
        (SensorQuantity.Temperature, SensorPlace.BelowCurtain, Reading.SecondTemperature),
        (SensorQuantity.Temperature, SensorPlace.AboveCurtain, Reading.UpperTemperature),
        (SensorQuantity.Temperature, SensorPlace.Outside, Reading.OutsideTemperature),
        (SensorQuantity.Humidity, SensorPlace.Crop, Reading.InsideHumidity),
        (SensorQuantity.Humidity, SensorPlace.Outside, Reading.OutsideHumidity),
        (SensorQuantity.Light, SensorPlace.Outside, Reading.Light),
        (SensorQuantity.Wind, SensorPlace.Outside, Reading.Wind),
        (SensorQuantity.Snow, SensorPlace.Outside, Reading.Snow),
        (SensorQuantity.Rain, SensorPlace.Outside, Reading.Rain),
        (SensorQuantity.CarbonDioxide, SensorPlace.Crop, Reading.Co2),
        (SensorQuantity.StaticPressure, SensorPlace.Equipment, Reading.StaticPressure),
        (SensorQuantity.LouverOpen, SensorPlace.Equipment, Reading.LouverOpenProof),
    ];

    /// <summary>The reading that a sensor of this kind in this place feeds.</summary>
    /// <param name="quantity">What it measures.</param>
    /// <param name="place">Where it is.</param>
    /// <returns>The reading; null where nothing reads such a sensor.</returns>
    public static Reading? ReadingOf(SensorQuantity quantity, SensorPlace place)
    {
        foreach ((SensorQuantity q, SensorPlace p, Reading reading) in s_points)
        {
            if (q == quantity && p == place)
            {
                return reading;
            }
        }

        return null;
    }

    /// <summary>The sensor that feeds a reading.</summary>
    /// <param name="sensors">Sensors of a program; null for the usual ones, none of which has an error or a correction.</param>
    /// <param name="reading">The reading.</param>
    /// <returns>The sensor; null without one.</returns>
    public static Sensor? For(EqList<Sensor>? sensors, Reading reading) =>
        (sensors ?? Usual(string.Empty)).FirstOrDefault(s => ReadingOf(s.Quantity, s.Place) == reading);

    /// <summary>One sensor for each reading there is: what a program without a list is taken to have.</summary>
    /// <param name="house">House id.</param>
    /// <returns>The sensors, aspirated, without error.</returns>
    public static EqList<Sensor> Usual(string house) => s_points.Select(p => Usual(house, p.Reading)).ToEqList();

    /// <summary>The usual sensor for a reading: air inside is read in an aspirated box that lags by a minute and a half, the rest at once (common practice).</summary>
    internal static Sensor Usual(string house, Reading reading)
    {
        (SensorQuantity quantity, SensorPlace place, _) = s_points.First(p => p.Reading == reading);
        bool air = quantity is SensorQuantity.Temperature or SensorQuantity.Humidity;
        double lagS = air && place != SensorPlace.Outside ? 90 : 0;
        return new Sensor($"{house}/{Name(quantity, place)}", quantity, place, lagS, air, 0, 0);
    }

    /// <summary>Readings that no sensor feeds: the clock and the almanac.</summary>
    internal static bool IsClock(Reading reading) => s_points.All(p => p.Reading != reading);

    /// <summary>Places in which a quantity is read.</summary>
    internal static IEnumerable<SensorPlace> PlacesOf(SensorQuantity quantity) => s_points.Where(p => p.Quantity == quantity).Select(p => p.Place);

    /// <summary>The sensor a reading wants, in words.</summary>
    internal static string Words(Reading reading)
    {
        (SensorQuantity quantity, SensorPlace place, _) = s_points.First(p => p.Reading == reading);
        return $"{Words(quantity)} {Words(place)}";
    }

    internal static string Words(SensorQuantity quantity) => quantity switch
    {
        SensorQuantity.CarbonDioxide => "carbon dioxide",
        SensorQuantity.StaticPressure => "static pressure",
        SensorQuantity.LouverOpen => "louver open",
        _ => ProgramShape.Kebab(quantity.ToString()),
    };

    internal static string Words(SensorPlace place) => place switch
    {
        SensorPlace.Crop => "at the crop",
        SensorPlace.BelowCurtain => "over the crop",
        SensorPlace.AboveCurtain => "above the curtain",
        SensorPlace.Outside => "outside",
        _ => "at the machine",
    };

    private static string Name(SensorQuantity quantity, SensorPlace place) => (quantity, place) switch
    {
        (SensorQuantity.Temperature, SensorPlace.BelowCurtain) => "second-temperature",
        (SensorQuantity.Temperature, SensorPlace.AboveCurtain) => "upper-temperature",
        (_, SensorPlace.Crop or SensorPlace.Outside) => $"{ProgramShape.Kebab(place.ToString())}-{ProgramShape.Kebab(quantity.ToString())}",
        _ => ProgramShape.Kebab(quantity.ToString()),
    };
}
