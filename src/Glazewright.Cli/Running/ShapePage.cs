using System.Globalization;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Shape;
using Glazewright.Papers.Shapes;
using Glazewright.Science.Shape;

namespace Glazewright.Cli.Running;

/// <summary>What the shape finder found, as a page of text.</summary>
internal static class ShapePage
{
    private const int Rows = 8;

    public static void Write(TextWriter page, LoadedJob loaded, ShapeInput input, ShapeResult r)
    {
        UnitSystem units = input.Units;
        string winter = ShapeWords.Month(r.WinterMonth);
        string summer = ShapeWords.Month(r.SummerMonth);
        page.WriteLine($"{loaded.Job.Name}: shape of house {r.House}");
        page.WriteLine($"Weather: {loaded.Weather.Provenance.Label}");
        page.WriteLine(Line($"{r.Looked} shapes looked at, {r.Meeting} meet every wish; ridge at most {ShapeWords.Length(input.RidgeAtMostM, units)}, eaves {ShapeWords.Length(input.EaveAtLeastM, units)} to {ShapeWords.Length(input.EaveAtMostM, units)}."));
        page.WriteLine();
        Shape("Chosen", r.Best);
        Shape("As drawn", r.Drawn);
        page.WriteLine("Wishes");
        foreach (ShapeWishResult w in r.Wishes)
        {
            page.WriteLine($"  {(w.IsMet ? '●' : '■')} {w.Asked}: {w.Got}");
        }

        page.WriteLine();
        page.WriteLine(Line($"What it trades, for each choice of clear faces the most {winter} light and the least glazing looked at again (mol/m²·d):"));
        page.WriteLine($"  {winter,9} {summer,9}  {"glazing",-11} {"ridge",-8} clear");
        foreach (ShapeCheck c in ShapeAlternatives.Of(r, Rows))
        {
            page.WriteLine(Line($"  {Mol(c, r.WinterMonth),9:0.0} {Mol(c, r.SummerMonth),9:0.0}  {ShapeWords.Area(c.Score.GlazingM2, units),-11} {ShapeWords.Length(c.Score.Shape.Section.RidgeM, units),-8} {ShapeWords.Clear(c.Score.Shape)}"));
        }

        page.WriteLine();
        if (r.Winter is RankAgreement w2 && r.Summer is RankAgreement s2)
        {
            page.WriteLine(Line($"Section against full map, {w2.Count} shapes: {winter} Kendall tau {w2.KendallTauRatio:0.00}, Spearman rho {w2.SpearmanRhoRatio:0.00}; {summer} {s2.KendallTauRatio:0.00}, {s2.SpearmanRhoRatio:0.00}."));
        }

        page.WriteLine("Light here is with frame and joints but without hung equipment and parked curtain: design finds somewhat less.");
        FindingLines.Write(page, [.. r.Report.Findings.Where(f => f.Severity > Severity.Note)], 0, isWhole: true);
        foreach (Finding note in r.Report.Findings.Where(f => f.Severity == Severity.Note))
        {
            page.WriteLine("  · " + note.What);
        }

        void Shape(string name, ShapeCheck c)
        {
            page.WriteLine($"{name}: {ShapeWords.Shape(c.Score.Shape, units)}");
            page.WriteLine(Line($"  {winter} {Mol(c, r.WinterMonth):0.0} of {r.OutsideWinterMolPerM2Day:0.0} mol/m²·d outdoors, evenness {Evenness(c, r.WinterMonth):0.00}; {summer} {Mol(c, r.SummerMonth):0.0} of {r.OutsideSummerMolPerM2Day:0.0}, {c.SummerShadeHours:0} h above {input.Wishes.ShadeAboveUmolPerM2S:0} µmol/m²·s"));
            page.WriteLine($"  glazing {ShapeWords.Area(c.Score.GlazingM2, units)}, covering {Shown.Of(c.Score.CoverWPerK, Unit.WattPerKelvin, units).Text}, noon sun of {input.NoonDay} {(c.Score.NoonReachM > 0 ? ShapeWords.Length(c.Score.NoonReachM, units) + " up the wall" : "not on the wall")}");
            page.WriteLine();
        }
    }

    private static double Mol(ShapeCheck c, int month) => c.Full!.MonthMolPerM2Day[month];

    private static double Evenness(ShapeCheck c, int month) => c.Full!.MonthEvennessRatio[month];

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
