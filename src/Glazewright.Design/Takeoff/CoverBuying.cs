using Glazewright.Cutting.Sheets;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Takeoff;

/// <summary>How a covering is bought.</summary>
public enum CoverForm
{
    /// <summary>Multiwall or single sheet in stock lengths, ripped and cut on site.</summary>
    Sheet,

    /// <summary>Insulated panel, made to length.</summary>
    Panel,

    /// <summary>Glass lites, by area.</summary>
    Glass,

    /// <summary>Film or cloth, by area.</summary>
    Film,
}

/// <summary>How a cover kind is bought and laid.</summary>
/// <param name="Form">Form.</param>
/// <param name="ModuleM">Width that one covers, m.</param>
/// <param name="Rules">Layout rules in shop steps.</param>
/// <param name="IsKnown">False when the kind's name says nothing and it is taken by area.</param>
public sealed record CoverBuying(CoverForm Form, double ModuleM, SheetRules Rules, bool IsKnown)
{
    /// <summary>Buying rules of a cover kind.</summary>
    /// <param name="kind">Cover kind id: its first word tells the form (<c>polycarbonate-16-triple</c>, <c>panel-76</c>, <c>glass-4</c>).</param>
    /// <param name="units">4 ft sheets and 42 in panels, or 1.2 m sheets and 1.0 m panels.</param>
    /// <returns>The rules.</returns>
    public static CoverBuying Of(string kind, UnitSystem units)
    {
        string family = kind.Split('-')[0];
        bool us = units == UnitSystem.Us;
        ShopTick tick = ShopTick.For(units);
        (CoverForm form, double moduleM) = family switch
        {
            "polycarbonate" or "acrylic" or "pvc" or "fiberglass" => (CoverForm.Sheet, us ? 1.2192 : 1.2),
            "panel" => (CoverForm.Panel, us ? 1.0668 : 1.0),
            "glass" => (CoverForm.Glass, us ? 0.6096 : 0.6),
            _ => (CoverForm.Film, us ? 3.6576 : 3.6),
        };
        bool known = form != CoverForm.Film || family is "film" or "polyethylene" or "poly" or "etfe";
        return new CoverBuying(
            form,
            moduleM,
            new SheetRules(
                tick.Nearest(moduleM),
                TrimPlace.Last,
                tick.Nearest(0.1524),
                form == CoverForm.Sheet ? tick.Nearest(TakeoffRules.SheetAllowanceM) : 0,
                MayRip: form == CoverForm.Sheet,
                RipKerfTicks: tick.Nearest(0.0032)),
            known);
    }
}
