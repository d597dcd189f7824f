using Glazewright.Design.Contracts;
using Glazewright.Science.Light;
using Glazewright.Science.Light.Shadows;
using Glazewright.Science.Weather;

namespace Glazewright.Design.LightMaps;

/// <summary>The light of a house ready to be summed on any plane: sun directions that carry energy, the even sky, and what is set free inside.</summary>
internal sealed class HouseSources
{
    private HouseSources(SunGrid grid, int[] nodes, HouseLight light, LightSetFree free)
    {
        Grid = grid;
        Nodes = nodes;
        Towards = [.. nodes.Select(grid.Direction)];
        Light = light;
        Free = free;
    }

    public SunGrid Grid { get; }

    /// <summary>Nodes with energy, in order.</summary>
    public int[] Nodes { get; }

    public Vector3d[] Towards { get; }

    public HouseLight Light { get; }

    /// <summary>Diffuse light set free per unit of each source.</summary>
    public LightSetFree Free { get; }

    /// <summary>Follows what each source sets free.</summary>
    /// <param name="light">The house.</param>
    /// <param name="sky">The year's skies.</param>
    /// <param name="grid">Sun nodes.</param>
    /// <param name="months">Months that count.</param>
    public static HouseSources Of(HouseLight light, SkyMonths sky, SunGrid grid, IReadOnlyList<int> months)
    {
        bool[] wanted = Wanted(sky, grid, months);
        return new HouseSources(grid, Lit(wanted), light, light.Gains(grid, wanted).SetFree);
    }

    /// <summary>The same from light that was traced for the gain table, over the whole year.</summary>
    /// <param name="scene">The house.</param>
    /// <param name="known">Traced through it, under another crop maybe.</param>
    /// <param name="cropReflectance">Of that crop.</param>
    /// <param name="sky">The year's skies.</param>
    /// <param name="grid">Sun nodes of both.</param>
    public static HouseSources Of(LightScene scene, KnownLight known, double cropReflectance, SkyMonths sky, SunGrid grid)
    {
        HouseLight light = HouseLight.Of(scene.Enclosure, scene.Drawn, scene.Around, known);
        return new HouseSources(grid, Lit(Wanted(sky, grid, [.. Enumerable.Range(0, 12)])), light, light.SetFree(known, cropReflectance));
    }

    private static bool[] Wanted(SkyMonths sky, SunGrid grid, IReadOnlyList<int> months) =>
        [.. Enumerable.Range(0, grid.Count).Select(node => months.Any(m => sky.Beam[m][node] > 0))];

    private static int[] Lit(bool[] wanted) => [.. Enumerable.Range(0, wanted.Length).Where(node => wanted[node])];

    /// <summary>Diffuse light set free on each piece in a month, Wh.</summary>
    public double[] SetFree(SkyMonths sky, int month)
    {
        LightSetFree free = Free;
        int pieces = free.DomeM2.Count;
        double[] sum = new double[pieces];
        for (int i = 0; i < pieces; i++)
        {
            sum[i] = (sky.Dome[month] * free.DomeM2[i]) + (sky.Horizon[month] * free.HorizonM2[i]) + (sky.Ground[month] * free.GroundM2[i]);
            foreach (int node in Nodes)
            {
                sum[i] += sky.Beam[month][node] * free.BeamM2[(node * pieces) + i];
            }

            // A dark horizon band may take a little more than the rest gives.
            sum[i] = Math.Max(0, sum[i]);
        }

        return sum;
    }
}

/// <summary>Light on one plane of a house.</summary>
internal sealed class PlaneLight
{
    private readonly HouseSources sources;
    private readonly LightTable sun;
    private readonly LightTable dome;
    private readonly double[] domeWeights;
    private readonly double[] domeFactor;
    private readonly RoomLight room;
    private readonly double[] dimmed;

    private PlaneLight(HouseSources sources, LightTable sun, LightTable dome, SkyDome sky, RoomLight room, double[] dimmed)
    {
        this.sources = sources;
        this.sun = sun;
        this.dome = dome;
        this.room = room;
        this.dimmed = dimmed;
        domeWeights = [.. sky.IrradianceFactors];
        domeFactor = new double[sun.Cells];
        dome.AddTo(domeWeights, domeFactor);
    }

    public int Cells => sun.Cells;

    /// <summary>Light past what stands in the scene.</summary>
    public static PlaneLight Of(LightScene scene, HouseSources sources, ReceivingPlane plane, ScanFineness fineness, CancellationToken cancel) =>
        Of(scene, sources, plane, fineness, SkyDome.Usual, cancel);

    /// <summary>The same under a sky in more or fewer directions.</summary>
    public static PlaneLight Of(
        LightScene scene, HouseSources sources, ReceivingPlane plane, ScanFineness fineness, SkyDome sky, CancellationToken cancel)
    {
        LightTable sun = LightTable.Build(scene.Enclosure, scene.Drawn, scene.Around, plane, fineness, sources.Towards, cancel);
        LightTable dome = LightTable.Build(scene.Enclosure, scene.Drawn, scene.Around, plane, fineness, sky.Directions, cancel);
        double[] even = new double[plane.Count];
        Array.Fill(even, 1);
        return new PlaneLight(sources, sun, dome, sky, sources.Light.On(plane), even);
    }

    /// <summary>Light on a plane below benches: scattered light is dimmed there as the even sky is.</summary>
    public static PlaneLight Below(
        LightScene scene, Enclosure withBenches, HouseSources sources, ReceivingPlane plane, ScanFineness fineness, CancellationToken cancel)
    {
        double[] free = new double[plane.Count];
        LightTable.Build(scene.Enclosure, scene.Around, plane, fineness, SkyDome.Usual.Directions, cancel).AddTo([.. SkyDome.Usual.IrradianceFactors], free);
        LightTable sun = LightTable.Build(withBenches, scene.Around, plane, fineness, sources.Towards, cancel);
        LightTable dome = LightTable.Build(withBenches, scene.Around, plane, fineness, SkyDome.Usual.Directions, cancel);
        PlaneLight dark = new(sources, sun, dome, SkyDome.Usual, sources.Light.On(plane), new double[plane.Count]);
        for (int k = 0; k < plane.Count; k++)
        {
            dark.dimmed[k] = free[k] > 0 ? dark.domeFactor[k] / free[k] : 1;
        }

        return dark;
    }

    /// <summary>Energy on each cell in a month, Wh/m².</summary>
    public double[] MonthWh(SkyMonths sky, int month)
    {
        double[] sum = Returned(sky, month);
        sun.AddTo(Weights(sky, month), sum);
        for (int k = 0; k < sum.Length; k++)
        {
            sum[k] += sky.Dome[month] * domeFactor[k];
        }

        return sum;
    }

    /// <summary>Daily light of a month from its energy.</summary>
    public LightMonth Month(SkyMonths sky, int month, double umolPerJ)
    {
        double[] mol = [.. MonthWh(sky, month).Select(wh => PlantLight.DailyMolM2(wh / CommonYear.DaysIn(month + 1), umolPerJ))];
        double mean = mol.Average();
        double least = mol.Min();
        return new LightMonth(mean, least, mean > 0 ? least / mean : 1, EqList.Own(mol));
    }

    /// <summary>Where a month's light goes.</summary>
    public LightFate Fate(SkyMonths sky, int month)
    {
        BeamShares sum = sun.Fate(Weights(sky, month)) + (sky.Dome[month] * dome.Fate(domeWeights));
        double whole = sum.SumFraction;
        if (whole <= 0)
        {
            return new LightFate(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);
        }

        BeamShares s = 1 / whole * sum;
        return new LightFate(
            s.AroundFraction, s.OpaqueRoofFraction, s.OpaqueWallFraction, s.FrameFraction, s.EquipmentFraction, s.CurtainFraction,
            s.CoverFraction, s.StateFraction, s.ScatteredFraction, s.ArrivesFraction, Returned(sky, month).Average() / whole);
    }

    /// <summary>Light of one cell, or of the mean of all, per unit of each source: what an hour is summed from.</summary>
    /// <param name="cell">A cell, or −1 for the mean.</param>
    public CellSources Cell(int cell)
    {
        LightSetFree free = sources.Free;
        int pieces = free.DomeM2.Count;
        double[] beam = new double[sources.Grid.Count];
        foreach ((int node, int row) in sources.Nodes.Select((node, row) => (node, row)))
        {
            beam[node] = Direct(row) + Back(i => free.BeamM2[(node * pieces) + i]);
        }

        return new CellSources(
            beam,
            (cell < 0 ? domeFactor.Average() : domeFactor[cell]) + Back(i => free.DomeM2[i]),
            Back(i => free.HorizonM2[i]),
            Back(i => free.GroundM2[i]));

        double Direct(int row)
        {
            if (cell >= 0)
            {
                return sun.Factor(row, cell);
            }

            double sum = 0;
            for (int k = 0; k < Cells; k++)
            {
                sum += sun.Factor(row, k);
            }

            return sum / Cells;
        }

        double Back(Func<int, double> setFree)
        {
            Span<double> w = stackalloc double[pieces];
            for (int i = 0; i < pieces; i++)
            {
                w[i] = setFree(i);
            }

            return cell < 0 ? room.MeanIrradiance(w) : room.IrradianceAt(cell, w) * dimmed[cell];
        }
    }

    private double[] Returned(SkyMonths sky, int month)
    {
        double[] back = new double[Cells];
        room.Irradiance(sources.SetFree(sky, month), back);
        for (int k = 0; k < back.Length; k++)
        {
            back[k] *= dimmed[k];
        }

        return back;
    }

    private double[] Weights(SkyMonths sky, int month) => [.. sources.Nodes.Select(node => sky.Beam[month][node])];
}

/// <summary>Irradiance of one spot per unit of each source.</summary>
/// <param name="Beam">By sun node, over beam-normal irradiance.</param>
/// <param name="DomeFactor">Over the even sky's.</param>
/// <param name="HorizonFactor">Over the horizon band's.</param>
/// <param name="GroundFactor">Over the ground's.</param>
internal sealed record CellSources(double[] Beam, double DomeFactor, double HorizonFactor, double GroundFactor);
