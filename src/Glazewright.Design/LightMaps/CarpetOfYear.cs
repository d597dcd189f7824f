using Glazewright.Design.Contracts;
using Glazewright.Science.Light;
using Glazewright.Science.Sky;
using Glazewright.Science.Weather;

namespace Glazewright.Design.LightMaps;

/// <summary>Sums the year hour by hour at the map's mean and at one cell.</summary>
internal static class CarpetOfYear
{
    public static LightCarpet Of(
        LightInput input, WeatherYear weather, SunGrid grid, PlaneLight plane, int darkestCell)
    {
        CellSources mean = plane.Cell(-1);
        CellSources darkest = plane.Cell(darkestCell);
        double[] ofMean = new double[CommonYear.Hours];
        double[] ofDarkest = new double[CommonYear.Hours];
        SkyQuarters.Walk(weather, input.AlbedoFraction, q =>
        {
            SunGridPlace place = grid.At(input.RangeBearingDeg - q.AzimuthDeg, q.ElevationDeg);
            ofMean[q.HourOfYear] += Power(mean, q, place) / SkyQuarters.InHour;
            ofDarkest[q.HourOfYear] += Power(darkest, q, place) / SkyQuarters.InHour;
        });
        double[] outside = [.. Enumerable.Range(0, CommonYear.Hours).Select(h => Math.Max(0, weather.GhiWhm2[h]))];
        return new LightCarpet(darkestCell, Flux(outside), Flux(ofMean), Flux(ofDarkest));

        EqList<double> Flux(double[] wh) => EqList.Own([.. wh.Select(w => Math.Max(0, w) * input.UmolPerJ)]);
    }

    private static double Power(CellSources cell, in SkyQuarter q, in SunGridPlace p) =>
        (q.Sources.FromSunWm2 * ((cell.Beam[p.Node0] * p.Weight0Fraction) + (cell.Beam[p.Node1] * p.Weight1Fraction)
            + (cell.Beam[p.Node2] * p.Weight2Fraction) + (cell.Beam[p.Node3] * p.Weight3Fraction)))
        + (q.Sources.DomeWm2 * cell.DomeFactor) + (q.Sources.HorizonWm2 * cell.HorizonFactor) + (q.Sources.GroundWm2 * cell.GroundFactor);
}
