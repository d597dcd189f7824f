using Glazewright.Design.Body;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Takeoff;

/// <summary>Groups members that the shop cannot tell apart and gives each group its mark.</summary>
internal static class ShopMarks
{
    /// <summary>Marks of all members: by section, length and saw angles; square-cut members of any role share a mark, mitred ones only with their own role.</summary>
    public static EqList<ShopMark> Of(EqList<MemberSolid> members, ShopTick tick)
    {
        var groups = members
            .GroupBy(m =>
            {
                double a = Math.Round(m.AngleADeg, 1);
                double b = Math.Round(m.AngleBDeg, 1);
                (double small, double large) = a <= b ? (a, b) : (b, a);
                return (m.Section, Steps: tick.Nearest(m.CutLengthM), small, large, Role: large == 0 ? (MemberRole?)null : m.Line.Role);
            })
            .OrderBy(group => Order(group.First().Line.Role))
            .ThenBy(group => group.Key.Section, StringComparer.Ordinal)
            .ThenByDescending(group => group.Key.Steps)
            .ThenBy(group => group.Key.small)
            .ThenBy(group => group.Key.large);
        List<ShopMark> marks = [];
        Dictionary<string, int> numbers = [];
        foreach (var group in groups)
        {
            string letter = Letter(group.First().Line.Role);
            int number = numbers[letter] = numbers.GetValueOrDefault(letter) + 1;
            double lengthM = tick.Metres(group.Key.Steps);
            marks.Add(new ShopMark(
                FormattableString.Invariant($"{letter}-{number:00}"),
                group.Key.Section,
                lengthM,
                group.Key.small,
                group.Key.large,
                group.Count(),
                lengthM * group.First().MassPerM,
                Where([.. group])));
        }

        return marks.ToEqList();
    }

    private static int Order(MemberRole role) => role switch
    {
        MemberRole.Column => 0,
        MemberRole.EndPost => 1,
        MemberRole.Rafter => 2,
        MemberRole.CollarTie => 3,
        MemberRole.Jamb => 5,
        MemberRole.Header or MemberRole.Sill => 6,
        _ => 4,
    };

    /// <summary>Letter of a role's marks.</summary>
    public static string Letter(MemberRole role) => role switch
    {
        MemberRole.Column => "C",
        MemberRole.EndPost => "E",
        MemberRole.Rafter => "R",
        MemberRole.CollarTie => "T",
        MemberRole.Jamb => "J",
        MemberRole.Header or MemberRole.Sill => "H",
        _ => "L",
    };

    private static string Where(MemberSolid[] members) => string.Join(", ", members
        .GroupBy(m => (m.House, Part: Part(m.Line.Id)))
        .Select(g => FormattableString.Invariant($"{g.Key.House} {g.Key.Part} × {g.Count()}")));

    /// <summary>The part's word in a path id: <c>A/frame-07/rafter-left</c> is a rafter-left, <c>A/purlin-left-2/01</c> a purlin-left.</summary>
    private static string Part(string id)
    {
        string[] steps = id.Split('/');
        bool along = steps.Length > 2 && int.TryParse(steps[2], System.Globalization.CultureInfo.InvariantCulture, out _);
        return (along ? steps[1] : steps[^1]).TrimEnd('-', '0', '1', '2', '3', '4', '5', '6', '7', '8', '9');
    }
}
