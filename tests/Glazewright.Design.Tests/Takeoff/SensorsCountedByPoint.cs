using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Design.Price;
using Glazewright.Design.Program;
using Glazewright.Design.Services;
using Glazewright.Design.Takeoff;

namespace Glazewright.Design.Tests.Takeoff;

/// <summary>Sensors are priced as the controls points count them.</summary>
public class SensorsCountedByPoint
{
    [Fact]
    public void Each_sensor_of_the_program_is_a_line_with_a_price()
    {
        Job job = TestJobs.OneHouse();
        PlantResult plant = TwoHouses.Plants[0] with { House = "A" };
        EqList<Sensor> sensors =
        [
            Of("t", SensorQuantity.Temperature, SensorPlace.Crop), Of("h", SensorQuantity.Humidity, SensorPlace.Crop), Of("t2", SensorQuantity.Temperature, SensorPlace.BelowCurtain),
            Of("up", SensorQuantity.Temperature, SensorPlace.AboveCurtain), Of("c", SensorQuantity.CarbonDioxide, SensorPlace.Crop), Of("snow", SensorQuantity.Snow, SensorPlace.Outside), Of("p", SensorQuantity.StaticPressure, SensorPlace.Equipment),
        ];
        EqList<PointLine> points = ControlPoints.Of([plant], [ProgramStage.Run(ProgramInput.From(job, "A"), plant) with { Sensors = sensors }]);
        LineBook book = new([], UnitSystem.Us);
        ServicesTakeoff.Controls(book, [plant], points);
        EqList<TakeoffLine> lines = book.Finish();
        double Count(string item) => lines.Where(l => l.Item == item).Sum(l => l.Quantity);
        // A station, a second thermometer and one above the curtain; pressure across the fan wall; the wet wall's switches; a snow contact with the station outside.
        Assert.Equal((1.0, 2.0, 1.0, 1.0, 1.0, 1.0, 0.0), (Count("controls/sensor"), Count("controls/temperature"), Count("controls/co2"), Count("controls/pressure"), Count("controls/level"), Count("controls/outside-snow"), Count("controls/outside")));
        PriceBook prices = PriceBook.Generic();
        Assert.All(lines, l => Assert.Contains(prices.Items, i => i.Item == l.Item));
    }

    private static Sensor Of(string id, SensorQuantity quantity, SensorPlace place) => new(id, quantity, place, 60, true, 0, 0);
}
