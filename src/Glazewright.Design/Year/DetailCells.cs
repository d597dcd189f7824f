using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;
using Glazewright.Science.Climate;

namespace Glazewright.Design.Year;

/// <summary>The cells of one house with what hangs in them: which cells each heater's throw reaches, where the box's sensor is.</summary>
internal sealed class DetailCells
{
    private const double UsualCellM = 5;

    private readonly HouseCells cells;
    private readonly double[]?[] reached; // by actuator: share of a heater's heat a cell; null for what is no heater
    private readonly double[] heat;
    private readonly int sensor;

    /// <summary>Cuts a house.</summary>
    /// <param name="house">Its parameters.</param>
    /// <param name="form">Its shape.</param>
    /// <param name="layout">Where things sit.</param>
    /// <param name="program">For the order of the actuators.</param>
    /// <param name="heaters">For their throw.</param>
    /// <param name="count">Cells.</param>
    public DetailCells(YearHouse house, BuildingForm form, LayoutResult layout, ProgramDocument program, EqList<HeaterUnit> heaters, int count)
    {
        cells = new HouseCells(house.Parameters, count, form.LengthM);
        FromEnd2 = IntakeAtEnd2(form, layout);
        reached = [.. program.Actuators.Select(a => a.Kind == ActuatorKind.Heater
            ? Reached(layout.Placed.FirstOrDefault(p => p.Kind == PlacedKind.Heater && p.Id == a.Id), heaters.FirstOrDefault(h => h.Id == a.Id)?.ThrowM ?? 0, form)
            : null)];
        sensor = layout.Placed.FirstOrDefault(p => p.Kind == PlacedKind.Sensor) is { } box ? At(box, form) : count / 2;
        heat = new double[count];
    }

    /// <summary>Cells that a house of this length is looked at in.</summary>
    public static int CountFor(double lengthM) => Math.Clamp((int)Math.Round(lengthM / UsualCellM), 2, 20);

    /// <summary>Whether the air is drawn from end 2 to end 1: cells are counted from the intake.</summary>
    public bool FromEnd2 { get; }

    public int Count => cells.Count;

    public double CellLengthM => cells.CellLengthM;

    public int SensorCell => sensor;

    public double OutsideAirKgPerS => cells.OutsideAirKgPerS;

    /// <summary>The cell that the sensor hangs in.</summary>
    public HouseState Sensed => cells.State(sensor);

    public HouseState State(int cell) => cells.State(cell);

    public void Start(HouseState whole) => cells.Start(whole);

    public void Step(in HouseForcing forcing, YearPlant plant, double stepS)
    {
        // Heaters warm the cells that they blow through; bench pipes all of them.
        double placed = 0;
        Array.Clear(heat);
        for (int a = 0; a < reached.Length; a++)
        {
            if (reached[a] is not { } shares)
            {
                continue;
            }

            double w = plant.HeaterW(a);
            placed += w;
            for (int i = 0; i < heat.Length; i++)
            {
                heat[i] += w * shares[i];
            }
        }

        double total = forcing.HeatW;
        double even = total > 0 ? Math.Max(total - placed, 0) / heat.Length : 0;
        double sum = placed + (even * heat.Length);
        for (int i = 0; i < heat.Length; i++)
        {
            heat[i] = sum > 0 ? (heat[i] + even) / sum : 1.0 / heat.Length;
        }

        cells.Step(in forcing, heat, stepS);
    }

    // A heater blows towards the farther end, as the circulation loop has it, and warms the way evenly as far as its throw (choice).
    private double[] Reached(PlacedItem? item, double throwM, BuildingForm form)
    {
        double[] shares = new double[cells.Count];
        if (item is null)
        {
            Array.Fill(shares, 1.0 / shares.Length);
            return shares;
        }

        double atM = Math.Clamp(item.Corner.XM + (item.Size.XM / 2), 0, form.LengthM);
        double endM = atM < form.LengthM / 2 ? Math.Min(atM + throwM, form.LengthM) : Math.Max(atM - throwM, 0);
        if (Math.Abs(endM - atM) < 0.1)
        {
            shares[At(item, form)] = 1;
            return shares;
        }

        (double low, double high) = (Math.Min(atM, endM), Math.Max(atM, endM));
        for (int i = 0; i < shares.Length; i++)
        {
            int fromEnd1 = FromEnd2 ? shares.Length - 1 - i : i;
            double overlapM = Math.Min(high, (fromEnd1 + 1) * cells.CellLengthM) - Math.Max(low, fromEnd1 * cells.CellLengthM);
            shares[i] = Math.Max(overlapM, 0) / (high - low);
        }

        return shares;
    }

    private int At(PlacedItem item, BuildingForm form)
    {
        double along = Math.Clamp((item.Corner.XM + (item.Size.XM / 2)) / form.LengthM, 0, 1);
        return Math.Min((int)((FromEnd2 ? 1 - along : along) * cells.Count), cells.Count - 1);
    }

    // Fans on one end draw from the other; fans elsewhere are taken to draw from end 1.
    private static bool IntakeAtEnd2(BuildingForm form, LayoutResult layout)
    {
        double[] fans = [.. layout.Placed.Where(p => p.Kind == PlacedKind.Fan).Select(p => p.Corner.XM + (p.Size.XM / 2))];
        return fans.Length > 0 && fans.Average() < form.LengthM / 2;
    }
}
