using System.Reflection;
using System.Text.RegularExpressions;

namespace Glazewright.Cli.Tests.HouseRules;

/// <summary>Style guide 1: the unit stands in the name of every public number; pure ratios come from a short list.</summary>
public partial class NamesSayTheirUnit
{
    public static TheoryData<string> All => [.. Rooms.Names.Where(n => n != "glazewright")];

    [Theory]
    [MemberData(nameof(All))]
    public void Public_doubles_say_their_unit(string room)
    {
        List<string> silent = [];
        foreach (Type type in Rooms.Load(room).GetExportedTypes().Where(t => !t.IsEnum && !typeof(Delegate).IsAssignableFrom(t)))
        {
            const BindingFlags own = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
            foreach (PropertyInfo property in type.GetProperties(own).Where(p => IsNumber(p.PropertyType) && p.GetIndexParameters().Length == 0))
            {
                Look(silent, type, property.Name);
            }

            foreach (MethodInfo method in type.GetMethods(own).Where(m => !m.IsSpecialName))
            {
                foreach (ParameterInfo parameter in method.GetParameters().Where(p => IsNumber(p.ParameterType)))
                {
                    Look(silent, type, parameter.Name!, method.Name + "(…)");
                }
            }
        }

        Assert.True(silent.Count == 0, $"{silent.Count} numbers without a unit:\n" + string.Join("\n", silent.Distinct().Order()));
    }

    private static void Look(List<string> silent, Type type, string name, string member = "")
    {
        // A box on paper and an arc in a view are in the drawing's own unit: mm on the sheet, m in a view.
        bool drawing = type.Namespace == "Glazewright.Papers.Drawing";
        if (!drawing && !Unit().IsMatch(name) && !Plain().IsMatch(name))
        {
            silent.Add($"{type.FullName}{(member.Length > 0 ? "." + member : "")}: {name}");
        }
    }

    private static bool IsNumber(Type type) => type == typeof(double) || type == typeof(double?) || type == typeof(float);

    // A unit at the end, after a lower-case letter or digit (or alone as the whole name).
    [GeneratedRegex(
        "(?:^|[a-z0-9])[XYZUVAB]?(?:"
        + "M|Mm|M2|M3|M4|Mm2|Mm4|In|Ft|Ms|M3PerS|MPerS|KgPerS|KgPerM|KgPerM2|KgPerM3|Kg|G|KPerM|"
        + "W|WPerK|WPerM|WPerMK|WPerM2|Wm2|WPerM2K|Wm2K|J|JPerK|JPerKg|JPerKgK|JPerM2K|Wh|WhPerM2|WhPerM2Day|MJPerM2Day|MJPerM2|MJ|"
        + "Pa|KPa|N|Nm|NPerM|Deg|Rad|C|K|Kh|S|Ms|Min|H|Hours|Minutes|Seconds|Days|Day|Year|Percent|Fraction|Ratio|Factor|Share|Effectiveness|Efficiency|"
        + "Cosine|V|A|Va|PerHour|PerM|PerM2|PerM3|PerS|PerJoule|PerWattMonth|PerH|MolPerM2Day|UmolPerM2S|Molm2d|UmolPerJ|MgPerL|Lux|Tenths|Cm|Months|"
        + "SPerM|PaPerK|KgPerKg|M2KPerW|Ut|Au|Arcsec|Mbar|Bins|Hp|Psi|Psf|Mph|Cfm|Fc|Klux|Db|Minute|Hour|Watt|M6|M2PerS|PaS|"
        + "WPerM2Leaf|JPerUnit|MmPerUnit|Cm2|KDay|MPerSK|Ppm|Whm2|Days18|HoursPerUnit|RatioAbove|RatioBelow|Em|ToInside|AtRated|Sum)$|^(?:fraction|ratio|factor|share|effectiveness|efficiency|cosine|hours|minutes|seconds|days|day|percent)$")]
    private static partial Regex Unit();

    // Pure numbers the field names so, counts, money, and the two ends of a range in the caller's unit.
    [GeneratedRegex(
        "^(?:transferUnits|value|x|y|z|a|b|t|n|exponent|pitch|leftPitch|rightPitch|slope|tolerance|atLeast|atMost|from|to|index|"
        + "transmittance|reflectance|absorptance|emissivity|albedo|refractiveIndex|leafAreaIndex|lai|"
        + "kt|reynolds|.*emissivity|.*transmittance|.*reflectance|.*absorptance|.*albedo|.*refractiveIndex|.*coefficient|.*index|.*exponent|.*pitch|.*cosine|"
        + ".*cost|.*price|price.*|.*overhead|.*contingency|.*margin|.*quantity|.*bound|.*objective|.*utilisation|.*count|.*number|riseOverRun|unitCost|"
        + "lower|upper|argument|inside|typed|step|denominator|below|cost(?:low|high)|low|high|low.*price|high.*price|.*value|.*scale|.*steps|.*dampingRatio)$",
        RegexOptions.IgnoreCase)]
    private static partial Regex Plain();
}
