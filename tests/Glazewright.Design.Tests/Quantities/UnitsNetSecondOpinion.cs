using Glazewright.Design.Quantities;
using UnitsNet;
using UnitsNet.Units;
using UN = UnitsNet;

namespace Glazewright.Design.Tests.Quantities;

/// <summary>Every factor of our table that UnitsNet 5.75.1 (a general unit library) knows, computed by it. Tolerance 1e-9 relative: both hold exact definitions; where it holds a rounded factor the row says so.</summary>
public class UnitsNetSecondOpinion
{
    private static readonly (string Symbol, QuantityKind Kind, double InsideOfOne, double Tolerance)[] s_rows =
    [
        ("ft", QuantityKind.Length, UN.Length.FromFeet(1).Meters, 1e-9),
        ("in", QuantityKind.Length, UN.Length.FromInches(1).Meters, 1e-9),
        ("yd", QuantityKind.Length, UN.Length.FromYards(1).Meters, 1e-9),
        ("mi", QuantityKind.Length, UN.Length.FromMiles(1).Meters, 1e-9),
        ("rad", QuantityKind.Angle, UN.Angle.FromRadians(1).Degrees, 1e-9),
        ("ft²", QuantityKind.Area, UN.Area.FromSquareFeet(1).SquareMeters, 1e-9),
        ("in²", QuantityKind.Area, UN.Area.FromSquareInches(1).SquareMeters, 1e-9),
        // UnitsNet rounds the acre to 4046.85642 m² (the survey acre is 4046.8726): 1e-6 tells the two apart.
        ("acre", QuantityKind.Area, UN.Area.FromAcres(1).SquareMeters, 1e-6),
        ("gal", QuantityKind.Volume, UN.Volume.FromUsGallons(1).CubicMeters, 1e-9),
        ("ft³", QuantityKind.Volume, UN.Volume.FromCubicFeet(1).CubicMeters, 1e-9),
        ("yd³", QuantityKind.Volume, UN.Volume.FromCubicYards(1).CubicMeters, 1e-9),
        ("L", QuantityKind.Volume, UN.Volume.FromLiters(1).CubicMeters, 1e-9),
        ("lb", QuantityKind.Mass, UN.Mass.FromPounds(1).Kilograms, 1e-9),
        ("oz", QuantityKind.Mass, UN.Mass.FromOunces(1).Kilograms, 1e-9),
        ("t", QuantityKind.Mass, UN.Mass.FromTonnes(1).Kilograms, 1e-9),
        ("°F", QuantityKind.Temperature, UN.Temperature.FromDegreesFahrenheit(1).DegreesCelsius, 1e-9),
        ("K", QuantityKind.Temperature, UN.Temperature.FromKelvins(1).DegreesCelsius, 1e-9),
        ("F°", QuantityKind.TemperatureDifference, UN.TemperatureDelta.FromDegreesFahrenheit(1).Kelvins, 1e-9),
        ("cfm", QuantityKind.AirFlow, VolumeFlow.FromCubicFeetPerMinute(1).CubicMetersPerSecond, 1e-9),
        ("m³/h", QuantityKind.AirFlow, VolumeFlow.FromCubicMetersPerHour(1).CubicMetersPerSecond, 1e-9),
        ("gpm", QuantityKind.WaterFlow, VolumeFlow.FromUsGallonsPerMinute(1).CubicMetersPerSecond, 1e-9),
        ("gph", QuantityKind.WaterFlow, VolumeFlow.FromUsGallonsPerHour(1).CubicMetersPerSecond, 1e-9),
        ("L/min", QuantityKind.WaterFlow, VolumeFlow.FromLitersPerMinute(1).CubicMetersPerSecond, 1e-9),
        // UnitsNet holds the inch of water as 249.08891 Pa since its 5.x tables; both are the conventional (4 °C) inch.
        ("inwg", QuantityKind.Pressure, UN.Pressure.FromInchesOfWaterColumn(1).Pascals, 1e-6),
        ("psi", QuantityKind.Pressure, UN.Pressure.FromPoundsForcePerSquareInch(1).Pascals, 1e-9),
        ("bar", QuantityKind.Pressure, UN.Pressure.FromBars(1).Pascals, 1e-9),
        ("psf", QuantityKind.AreaLoad, UN.Pressure.FromPoundsForcePerSquareFoot(1).Pascals, 1e-9),
        // UnitsNet's 14.59390292 is two off in its tenth digit against lbf/ft by its own pound-force and foot (4.4482216152605 / 0.3048 = 14.59390294).
        // The flux and edge units it rounds to nine, six and nine digits.
        ("plf", QuantityKind.LineLoad, ForcePerLength.FromPoundsForcePerFoot(1).NewtonsPerMeter, 2e-9),
        ("lbf", QuantityKind.Force, UN.Force.FromPoundsForce(1).Newtons, 1e-9),
        ("kip", QuantityKind.Force, UN.Force.FromKilopoundsForce(1).Newtons, 1e-9),
        ("ksi", QuantityKind.Stress, UN.Pressure.FromKilopoundsForcePerSquareInch(1).Pascals, 1e-9),
        ("mph", QuantityKind.Speed, UN.Speed.FromMilesPerHour(1).MetersPerSecond, 1e-9),
        ("fpm", QuantityKind.Speed, UN.Speed.FromFeetPerMinute(1).MetersPerSecond, 1e-9),
        ("km/h", QuantityKind.Speed, UN.Speed.FromKilometersPerHour(1).MetersPerSecond, 1e-9),
        ("Btu/h", QuantityKind.Power, (double)UN.Power.FromBritishThermalUnitsPerHour(1).Watts, 1e-9),
        ("kBtu/h", QuantityKind.Power, (double)UN.Power.FromKilobritishThermalUnitsPerHour(1).Watts, 1e-9),
        // UnitsNet rounds the mechanical horsepower to 745.69 W.
        ("hp", QuantityKind.Power, (double)UN.Power.FromMechanicalHorsepower(1).Watts, 2e-5),
        ("Btu", QuantityKind.Energy, UN.Energy.FromBritishThermalUnits(1).Joules, 1e-9),
        ("therm", QuantityKind.Energy, UN.Energy.FromThermsEc(1).Joules, 1e-9),
        ("kWh", QuantityKind.Energy, UN.Energy.FromKilowattHours(1).Joules, 1e-9),
        ("Btu/h·ft²", QuantityKind.PowerDensity, HeatFlux.FromBtusPerHourSquareFoot(1).WattsPerSquareMeter, 2e-9),
        ("W/ft²", QuantityKind.PowerDensity, HeatFlux.FromWattsPerSquareFoot(1).WattsPerSquareMeter, 5e-6),
        ("Btu/ft²", QuantityKind.EnergyDensity, Irradiation.FromBtusPerSquareFoot(1).JoulesPerSquareMeter, 1e-9),
        ("Btu/h·ft²·F", QuantityKind.Transmittance, HeatTransferCoefficient.FromBtusPerHourSquareFootDegreeFahrenheit(1).WattsPerSquareMeterKelvin, 1e-9),
        ("h·ft²·F/Btu", QuantityKind.Resistance, 1 / HeatTransferCoefficient.FromBtusPerHourSquareFootDegreeFahrenheit(1).WattsPerSquareMeterKelvin, 1e-9),
        ("Btu/h·ft·F", QuantityKind.EdgeTransmittance, ThermalConductivity.FromBtusPerHourFootFahrenheit(1).WattsPerMeterKelvin, 3e-9),
    ];

    [Fact]
    public void Factors_agree()
    {
        List<string> off = [];
        foreach ((string symbol, QuantityKind kind, double insideOfOne, double tolerance) in s_rows)
        {
            double ours = UnitTable.Of(kind).Single(u => u.Symbol == symbol).ToInside(1);
            if (!(Math.Abs(ours - insideOfOne) <= tolerance * Math.Abs(insideOfOne)))
            {
                off.Add($"{kind} {symbol}: ours {ours:R}, UnitsNet {insideOfOne:R}");
            }
        }

        Assert.True(off.Count == 0, string.Join("\n", off));
    }

    [Theory]
    [InlineData("12 ft 6 in"), InlineData("5 ft 3 in"), InlineData("0 ft 11.5 in"), InlineData("26'"), InlineData("7'6\"")]
    public void Feet_and_inches_as_UnitsNet_reads_them(string typed) =>
        Assert.Equal(UN.Length.ParseFeetInches(typed, System.Globalization.CultureInfo.InvariantCulture).Meters, QuantityReaderTests.Read(typed, QuantityKind.Length).Inside, 1e-9);
}
