using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;

namespace Glazewright.Design.Layout;

/// <summary>What hangs inside: curtain, heaters, circulation fans, fog, lamps, sensors.</summary>
internal static class HungLayout
{
    private const double HeadroomM = 2.03;

    /// <summary>No fan hangs lower to make way: it would stand in the crop.</summary>
    private const double LeastFanM = 1.5;

    private const double FromEndM = 1.2;
    private const double FromWallM = 0.6;
    private const double ApartM = 0.3;

    private static readonly Source HeatersApart = new Source.CommonPractice("unit heaters do not blow at one another; jets widen by a tenth of their way to half speed");

    public static void Place(LayoutInput input, BuildingForm house, PlantResult plant, List<PlacedItem> placed, List<Finding> findings)
    {
        double lowEaveM = Math.Min(house.Roof.LeftEaveM, house.Roof.RightEaveM);
        double ceilingM = plant.Curtain is { } curtain ? Math.Min(curtain.HeightM, lowEaveM) : lowEaveM;
        if (plant.Curtain is { } cloth)
        {
            double fromM = cloth.HeightM <= house.Roof.LeftEaveM ? 0 : (cloth.HeightM - house.Roof.LeftEaveM) / house.Roof.LeftPitch;
            placed.Add(new PlacedItem(
                $"{house.Id}/curtain", PlacedKind.Curtain, cloth.Layers > 1 ? "Curtains" : "Curtain",
                new Point3(0, fromM, cloth.HeightM), new Point3(house.LengthM, SmallSystems.WidthAtM(house, cloth.HeightM), 0), FaceName.Floor));
            LayoutFindings.CurtainHeight(house, cloth, lowEaveM, findings);
        }

        if (plant.SecondCurtain is { } second)
        {
            // What hangs, hangs under both.
            ceilingM = Math.Min(second.HeightM, ceilingM);
            double fromM = second.HeightM <= house.Roof.LeftEaveM ? 0 : (second.HeightM - house.Roof.LeftEaveM) / house.Roof.LeftPitch;
            placed.Add(new PlacedItem(
                $"{house.Id}/second-curtain", PlacedKind.Curtain, "Second curtain",
                new Point3(0, fromM, second.HeightM), new Point3(house.LengthM, SmallSystems.WidthAtM(house, second.HeightM), 0), FaceName.Floor));
            if (second.HeightM < HeadroomM)
            {
                findings.Add(new Finding(
                    "layout/second-curtain-low", Severity.Near, $"{house.Id}/second-curtain",
                    LayoutFindings.Text($"The second curtain hangs {second.HeightM / 0.3048:0.0} ft above the floor: heads and trolleys touch it."),
                    "Less distance between the two, or higher eaves.", LayoutFindings.Practice));
            }
        }

        // Lines and lamps run the house and stay; what is one piece makes way: heaters for lines, circulation fans for heaters.
        HungRoom room = new(house, input.Metric, ceilingM, findings);
        List<PlacedItem> lines = [];
        Lines(input, house, plant, ceilingM, room, lines);
        HeaterJets jets = new();
        Heaters(house, plant, ceilingM, room, jets, placed, findings);
        Circulation(input, house, plant, ceilingM, room, jets, placed, findings);
        Oscillating(input, house, plant, ceilingM, room, placed, findings);
        placed.AddRange(lines);
        Sensors(house, ceilingM, room, placed);
    }

    // By turns at both ends, each blowing along the house towards the other: those of end 1 side by side in the left half, those of end 2 in the right, so that
    // the air goes round and no jet meets another.
    private static void Heaters(BuildingForm house, PlantResult plant, double ceilingM, HungRoom room, HeaterJets jets, List<PlacedItem> placed, List<Finding> findings)
    {
        double lowestM = double.PositiveInfinity;
        EqList<HeaterUnit> heaters = plant.Heat?.Choice.Heaters ?? [];
        var size = new Point3(0.8, 0.7, 0.7);
        for (int i = 0; i < heaters.Count; i++)
        {
            HeaterUnit unit = heaters[i];
            bool nearEnd1 = i % 2 == 0;
            int ofEnd = nearEnd1 ? (heaters.Count + 1) / 2 : heaters.Count / 2;
            double inM = FromWallM + i / 2 * Math.Max((house.WidthM / 2 - FromWallM) / ofEnd, size.YM + ApartM);
            double x = nearEnd1 ? FromEndM : house.LengthM - FromEndM - size.XM;
            double y = Math.Clamp(nearEnd1 ? inM : house.WidthM - inM - size.YM, 0, Math.Max(house.WidthM - size.YM, 0));
            double z = ceilingM - size.ZM - 0.3;
            PlacedItem heater = room.Hang(
                new PlacedItem(
                    unit.Id, PlacedKind.Heater, $"Heater {i + 1}", new Point3(Math.Clamp(x, 0, Math.Max(house.LengthM - size.XM, 0)), y, Math.Max(z, 0)), size,
                    FaceName.Floor),
                0, flue: !unit.Electric && !unit.SealedCombustion, box => jets.Met(unit, box, BlowsToEnd2(house, box)) is null);
            placed.Add(heater);
            var hung = new HungBox(heater.Corner, heater.Size);
            if (jets.Met(unit, hung, BlowsToEnd2(house, hung)) is { } other)
            {
                findings.Add(new Finding(
                    "layout/heater-jets", Severity.Near, unit.Id,
                    LayoutFindings.Text($"{heater.Label} and heater {other[(other.LastIndexOf('-') + 1)..]} blow into one another: no place in the house keeps their jets apart within their throws ({unit.ThrowM / 0.3048:0} ft). Warm air stops or turns back where they meet, and the sensors there read warm."),
                    "Fewer or smaller heaters with less throw, all of them blowing one way, or warm air spread by a duct.", HeatersApart));
            }

            jets.Add(unit, hung, BlowsToEnd2(house, hung));
            lowestM = Math.Min(lowestM, heater.Corner.ZM);
        }

        if (lowestM < 1.2)
        {
            findings.Add(new Finding(
                "layout/heater-low", Severity.Near, heaters[0].Id,
                LayoutFindings.Text($"Under a ceiling of {ceilingM / 0.3048:0.0} ft heaters hang {lowestM / 0.3048:0.0} ft above the floor."),
                "Stand them on the floor in the end bays, or raise the eave.", LayoutFindings.Practice));
        }

        double reachM = heaters.Sum(h => h.ThrowM);
        if (heaters.Count > 0 && reachM < house.LengthM)
        {
            findings.Add(new Finding(
                "layout/heater-throw", Severity.Near, heaters[0].Id,
                LayoutFindings.Text($"The heaters throw {reachM / 0.3048:0} ft together; the house is {house.LengthM / 0.3048:0} ft long."),
                "Circulation fans in line with them, or one more heater.", LayoutFindings.Practice));
        }
    }

    private static void Circulation(
        LayoutInput input, BuildingForm house, PlantResult plant, double ceilingM, HungRoom room, HeaterJets jets, List<PlacedItem> placed, List<Finding> findings)
    {
        if (plant.Circulation is not { Count: > 0 } fans)
        {
            return;
        }

        const double SizeM = 0.6;
        double wantedM = Math.Max(ceilingM - SizeM - 0.15, 0);
        double z = wantedM;
        int out_ = (fans.Count + 1) / 2;
        int back = fans.Count - out_;
        for (int i = 0; i < fans.Count; i++)
        {
            bool outward = i < out_;
            int along = outward ? i : i - out_;
            int row = outward ? out_ : back;
            // First fan about 12 ft from the end it blows from.
            double stepM = row > 1 ? Math.Max(house.LengthM - 7.3, 0) / (row - 1) * (row - 1.0) / row : 0;
            double x = 3.65 + along * stepM;
            x = outward ? x : house.LengthM - x;
            double y = FanRowM(input.Benches, house.WidthM, outward, SizeM);
            PlacedItem fan = room.Hang(
                new PlacedItem(
                    $"{house.Id}/circulation-{i + 1}", PlacedKind.CirculationFan, "Circulation fan",
                    new Point3(Math.Clamp(x - 0.15, 0, Math.Max(house.LengthM - 0.3, 0)), y - SizeM / 2, wantedM), new Point3(0.3, SizeM, SizeM), FaceName.Floor),
                LeastFanM, fits: box => jets.Against(box, outward) is null);
            placed.Add(fan);
            z = Math.Min(z, fan.Corner.ZM);
            if (jets.Against(new HungBox(fan.Corner, fan.Size), outward) is { } heater)
            {
                findings.Add(new Finding(
                    "layout/fan-in-jet", Severity.Near, fan.Id,
                    LayoutFindings.Text($"This circulation fan blows against the jet of heater {heater[(heater.LastIndexOf('-') + 1)..]}: no other place is free."),
                    "Fewer fans, or a heater at the other end.", HeatersApart));
            }
        }

        if (z < HeadroomM)
        {
            bool overBenches = input.Benches.Count > 0;
            findings.Add(new Finding(
                "layout/fan-headroom", overBenches ? Severity.Near : Severity.Danger, $"{house.Id}/circulation-1",
                LayoutFindings.Text($"Circulation fans hang {z / 0.3048:0.0} ft above the floor, where a head can meet them{(overBenches ? "; they are placed over benches" : "")}."),
                "Over benches, not over aisles; guards on both sides; lock-out before reaching in.", LayoutFindings.Practice));
        }
    }

    // Along the middle, over the bench nearest to it, all blowing the same way: each sweeps the floor before it.
    private static void Oscillating(
        LayoutInput input, BuildingForm house, PlantResult plant, double ceilingM, HungRoom room, List<PlacedItem> placed, List<Finding> findings)
    {
        if (plant.Oscillating is not { Count: > 0 } fans)
        {
            return;
        }

        const double SizeM = 0.5;
        double wantedM = Math.Max(ceilingM - SizeM - 0.15, 0);
        double z = wantedM;
        double y = OverBench(input.Benches, house.WidthM / 2) - SizeM / 2;
        for (int i = 0; i < fans.Count; i++)
        {
            double x = Math.Clamp(0.6 + i * house.LengthM / fans.Count, 0, Math.Max(house.LengthM - SizeM, 0));
            PlacedItem fan = room.Hang(
                new PlacedItem(
                    $"{house.Id}/oscillating-{i + 1}", PlacedKind.OscillatingFan, "Oscillating fan", new Point3(x, y, wantedM), new Point3(0.4, SizeM, SizeM), FaceName.Floor),
                LeastFanM);
            placed.Add(fan);
            z = Math.Min(z, fan.Corner.ZM);
        }

        if (z < HeadroomM)
        {
            findings.Add(new Finding(
                "layout/oscillating-headroom", input.Benches.Count > 0 ? Severity.Near : Severity.Danger, $"{house.Id}/oscillating-1",
                LayoutFindings.Text($"Oscillating fans hang {z / 0.3048:0.0} ft above the floor, where a head can meet them."),
                "Over benches, not over aisles; guards all round; lock-out before reaching in.", LayoutFindings.Practice));
        }
    }

    // The middle of the bench nearest the wanted line; without benches the line itself.
    private static double OverBench(EqList<Bench> benches, double wantedM) =>
        benches.Select(b => b.OffsetYM + b.WidthM / 2).OrderBy(m => Math.Abs(m - wantedM)).Append(wantedM).First();

    // Over the bench nearest to the quarter line; where both rows would take one bench, over the part of it that is nearest to the row's own line.
    private static double FanRowM(EqList<Bench> benches, double widthM, bool outward, double sizeM)
    {
        double wantedM = (outward ? 1 : 3) * widthM / 4;
        double mine = OverBench(benches, wantedM);
        if (Math.Abs(mine - OverBench(benches, widthM - wantedM)) > sizeM || benches.Count == 0)
        {
            return mine;
        }

        Bench bench = benches.MinBy(b => Math.Abs(b.OffsetYM + b.WidthM / 2 - mine))!;
        double halfM = Math.Min(sizeM, bench.WidthM) / 2;
        return Math.Clamp(wantedM, bench.OffsetYM + halfM, bench.OffsetYM + bench.WidthM - halfM);
    }

    // Towards the farther end.
    private static bool BlowsToEnd2(BuildingForm house, HungBox box) => box.Corner.XM + box.Size.XM / 2 < house.LengthM / 2;

    private static void Lines(LayoutInput input, BuildingForm house, PlantResult plant, double ceilingM, HungRoom room, List<PlacedItem> lines)
    {
        double fogM = room.Down(ceilingM - 0.2);
        double endM = room.Even(0.5);
        if (plant.Fog is { } fog && fog.Choice.Nozzles > fog.Choice.IntakeNozzles)
        {
            for (int i = 0; i < 2; i++)
            {
                lines.Add(room.Fixed(new PlacedItem(
                    $"{house.Id}/fog-line-{i + 1}", PlacedKind.FogLine, "Fog line",
                    new Point3(endM, room.Even(house.WidthM * (i + 1) / 3), fogM), new Point3(Math.Max(house.LengthM - 2 * endM, 0), 0, 0), FaceName.Floor)));
            }
        }

        if (plant.Fog is { Choice.IntakeNozzles: > 0 })
        {
            // Across the house where the air comes in, clear of louvers and pad.
            FaceName intake = LayoutInput.Opposite(input.FanFace);
            bool atEnd = intake is FaceName.End1 or FaceName.End2;
            double wayM = atEnd ? house.LengthM : house.WidthM, fromWallM = Math.Min(1.5, wayM / 4);
            double atM = room.Even(intake is FaceName.End1 or FaceName.Left ? fromWallM : wayM - fromWallM);
            lines.Add(room.Fixed(new PlacedItem(
                $"{house.Id}/fog-line-3", PlacedKind.FogLine, "Fog line at the intake",
                atEnd ? new Point3(atM, endM, fogM) : new Point3(endM, atM, fogM),
                atEnd ? new Point3(0, Math.Max(house.WidthM - 2 * endM, 0), 0) : new Point3(Math.Max(house.LengthM - 2 * endM, 0), 0, 0), FaceName.Floor)
            {
                IsFogAtIntake = true,
            }));
        }

        if (plant.LampW > 0)
        {
            int rows = Math.Max((int)Math.Round(house.WidthM / 2.5), 1);
            for (int i = 0; i < rows; i++)
            {
                lines.Add(room.Fixed(new PlacedItem(
                    $"{house.Id}/lamp-row-{i + 1}", PlacedKind.LampRow, "Lamps",
                    new Point3(room.Even(1), room.Even(house.WidthM * (i + 0.5) / rows) - 0.1, room.Down(ceilingM - 0.4)),
                    new Point3(Math.Max(house.LengthM - 2 * room.Even(1), 0), 0.2, 0.15), FaceName.Floor)));
            }
        }
    }

    private static void Sensors(BuildingForm house, double ceilingM, HungRoom room, List<PlacedItem> placed)
    {
        double sensorM = Math.Max(Math.Min(1.5, ceilingM - 0.3), 0);
        PlacedItem Sensor(int number, string label, double alongM, Point3 size) => room.Hang(
            new PlacedItem($"{house.Id}/sensor-{number}", PlacedKind.Sensor, label, new Point3(alongM, house.WidthM / 2, sensorM), size, FaceName.Floor), 0);
        placed.Add(Sensor(1, "Aspirated sensor", house.LengthM / 2, new Point3(0.2, 0.2, 0.3)));
        placed.Add(Sensor(2, "Low-limit sensor, independent", house.LengthM / 4, new Point3(0.1, 0.1, 0.2)));
    }
}
