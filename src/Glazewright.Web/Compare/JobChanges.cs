using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Quantities;
using Glazewright.Web.Fields;

namespace Glazewright.Web.Compare;

/// <summary>A field that two jobs have differently.</summary>
/// <param name="Pointer">Where it stands: in the second job, or in the first where only that has it.</param>
/// <param name="What">The field in words.</param>
/// <param name="Before">What the first job has, with both families of units, or what holds because it says nothing.</param>
/// <param name="After">The same of the second.</param>
/// <param name="IsSame">Whether both mean the same and are only typed otherwise.</param>
public sealed record JobChange(string Pointer, string What, string Before, string After, bool IsSame);

/// <summary>What differs between two job documents, field by field.</summary>
public static class JobChanges
{
    private const int MostTold = 12;

    /// <summary>Compares two documents. Things with ids (houses, openings, equipment) are matched by id, other items of lists by their place.</summary>
    /// <param name="before">The first.</param>
    /// <param name="beforeDefaults">What holds where it does not say.</param>
    /// <param name="after">The second.</param>
    /// <param name="afterDefaults">What holds where that does not say.</param>
    /// <returns>The changes in the order of the second document; what only the first has comes after its neighbours.</returns>
    public static IReadOnlyList<JobChange> Of(JobDocument before, EqList<DefaultUsed> beforeDefaults, JobDocument after, EqList<DefaultUsed> afterDefaults)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        List<JobChange> changes = [];
        Walk(new Side(before, beforeDefaults, before.Root, ""), new Side(after, afterDefaults, after.Root, ""), changes);
        return changes;
    }

    private static void Walk(Side a, Side b, List<JobChange> changes)
    {
        switch (a.Node, b.Node)
        {
            case (ObjectNode one, ObjectNode other):
                foreach (string key in other.Members.Select(m => m.Key).Concat(one.Members.Select(m => m.Key)).Distinct())
                {
                    Walk(a.Below(key), b.Below(key), changes);
                }

                break;
            case (ListNode one, ListNode other):
                foreach ((int? i, int? j) in Matched(one, other))
                {
                    Walk(a.At(i), b.At(j), changes);
                }

                break;
            default:
                if (a.Typed != b.Typed)
                {
                    (string pointer, JobDocument document) = b.Node is null ? (a.Pointer, a.Document) : (b.Pointer, b.Document);
                    changes.Add(new JobChange(pointer, FieldMap.Path(pointer, document), Value(a), Value(b), Means(a) is { } meant && meant.Equals(Means(b))));
                }

                break;
        }
    }

    // By id where all items have one of their own, else by place.
    private static IEnumerable<(int? One, int? Other)> Matched(ListNode one, ListNode other)
    {
        string[] ids = Ids(one);
        string[] otherIds = Ids(other);
        bool byId = IsTold(ids) && IsTold(otherIds);
        for (int j = 0; j < other.Items.Count; j++)
        {
            int i = byId ? Array.IndexOf(ids, otherIds[j]) : j < one.Items.Count ? j : -1;
            yield return (i < 0 ? null : i, j);
        }

        for (int i = 0; i < one.Items.Count; i++)
        {
            if (byId ? !otherIds.Contains(ids[i]) : i >= other.Items.Count)
            {
                yield return (i, null);
            }
        }
    }

    private static string[] Ids(ListNode list) => [.. list.Items.Select(item => item is ObjectNode o && o.Find("id") is TextNode id ? id.Text : "")];

    private static bool IsTold(string[] ids) => ids.All(id => id.Length > 0) && ids.Distinct().Count() == ids.Length;

    private static string Value(Side side)
    {
        switch (side.Node)
        {
            case null or BlankNode:
                string? held = side.Defaults.FirstOrDefault(d => d.Pointer == side.Pointer)?.Value;
                return held is { Length: > 0 } ? $"not given: {held} (default)" : "not given";
            case ObjectNode or ListNode:
                string[] parts = [.. Parts(side)];
                return parts.Length == 0 ? "there, with nothing typed in it" : string.Join(", ", parts.Take(MostTold)) + (parts.Length > MostTold ? FormattableString.Invariant($" and {parts.Length - MostTold} more") : "");
            case TextNode text when Kind(side.Pointer) is { } kind && QuantityReader.TryRead(text.Text, kind, out Quantity quantity, out _):
                return QuantityFormat.Echo(quantity);
            case FlagNode flag:
                return flag.IsTrue ? "yes" : "no";
            default:
                return side.Typed.Trim('"');
        }
    }

    private static IEnumerable<string> Parts(Side side) => side.Node switch
    {
        ObjectNode o => o.Members.SelectMany(m => Parts(side.Below(m.Key))),
        ListNode list => list.Items.SelectMany((_, i) => Parts(side.At(i))),
        null => [],
        _ => [$"{FieldMap.Words(side.Pointer.Split('/')[^1]).ToLowerInvariant()} {Typing.Text(side.Node, side.Document)}"],
    };

    // A quantity in its inside unit; another value as it stands.
    private static object? Means(Side side) => side.Node switch
    {
        TextNode text when Kind(side.Pointer) is { } kind && QuantityReader.TryRead(text.Text, kind, out Quantity quantity, out _) => (Math.Round(quantity.Inside, 9), quantity.Currency),
        TextNode text => text.Text,
        NumberNode number => decimal.TryParse(number.Typed, System.Globalization.NumberStyles.Float, System.Globalization.CultureInfo.InvariantCulture, out decimal value) ? value : null,
        _ => null,
    };

    private static QuantityKind? Kind(string pointer) => FieldMap.Find(pointer)?.Shape switch
    {
        FieldShape.Measure measure => measure.Kind,
        FieldShape.Either { First: FieldShape.Measure first } => first.Kind,
        _ => null,
    };

    /// <summary>A place in one of the documents; nothing may stand there.</summary>
    private sealed record Side(JobDocument Document, EqList<DefaultUsed> Defaults, Node? Node, string Pointer)
    {
        public string Typed => Node is null or BlankNode ? "" : Document.Text[Node.Place.Start..Node.Place.End];

        public Side Below(string key) => this with { Node = (Node as ObjectNode)?.Find(key), Pointer = JsonPointer.Append(Pointer, key) };

        public Side At(int? index) => index is { } i
            ? this with { Node = (Node as ListNode)?.Items.ElementAtOrDefault(i), Pointer = JsonPointer.Append(Pointer, i.ToString(System.Globalization.CultureInfo.InvariantCulture)) }
            : this with { Node = null };
    }
}
