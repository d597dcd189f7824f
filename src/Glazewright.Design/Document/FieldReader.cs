using System.Globalization;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Document;

/// <summary>
/// Reads the fields of one object and describes them: the same calls read a document (collecting every fault and every default used) and, without a
/// document, list the fields for the schema. What a reading method returns where there was a fault is a stand-in that must not be used further.
/// </summary>
public sealed partial class FieldReader
{
    private const int MostTold = 400;
    private const int HeadTold = 120;
    private const int TailTold = 200;

    private readonly Session _session;
    private readonly ObjectNode _node;
    private readonly Place _place;
    private readonly HashSet<string> _known = [];
    private readonly List<FieldDescription> _fields = [];

    private FieldReader(Session session, ObjectNode node, Place place, string pointer, string id, int index)
    {
        _session = session;
        _node = node;
        _place = node.Place.Line > 0 ? node.Place : place;
        Pointer = pointer;
        Index = index;
        Id = node.Find("id") is TextNode own ? (id.Length == 0 ? own.Text : $"{id}/{own.Text}") : id;
    }

    /// <summary>JSON pointer of the object.</summary>
    public string Pointer { get; }

    /// <summary>Path id of the nearest thing that has one, or empty.</summary>
    public string Id { get; }

    /// <summary>Index of the object in its list; 0 elsewhere.</summary>
    public int Index { get; }

    /// <summary>True when fields are being described, not read: values returned are stand-ins.</summary>
    public bool IsDescribing => _session.Describing;

    /// <summary>What is said beside "one number" where a range is typed in a field of this object; empty for nothing.</summary>
    public string RangeAdvice { get; set; } = "";

    /// <summary>Number of faults found so far in the whole reading.</summary>
    public int FaultCount => _session.Faults.Count;

    /// <summary>Reads a tree.</summary>
    /// <typeparam name="T">What is made of it.</typeparam>
    /// <param name="root">The tree.</param>
    /// <param name="read">Reads the root's fields; must not throw whatever the values are.</param>
    /// <returns>The value or the faults, and the defaults used.</returns>
    public static ReadOutcome<T> Read<T>(ObjectNode root, Func<FieldReader, T> read)
    {
        ArgumentNullException.ThrowIfNull(root);
        ArgumentNullException.ThrowIfNull(read);
        Session session = new(describing: false) { Places = new Lazy<KeyPlaces>(() => KeyPlaces.Of(Describe(read))) };
        FieldReader reader = new(session, root, new Place(0, 0, 1, 1), "", "", 0);
        T value = read(reader);
        reader.Close();
        return new ReadOutcome<T>(session.Faults.Count == 0 ? value : default, session.Faults.ToEqList(), session.Defaults.ToEqList());
    }

    /// <summary>Describes the fields that a reading function asks for.</summary>
    /// <typeparam name="T">What it would make.</typeparam>
    /// <param name="read">The reading function.</param>
    /// <returns>The fields.</returns>
    public static FieldShape.Group Describe<T>(Func<FieldReader, T> read)
    {
        ArgumentNullException.ThrowIfNull(read);
        FieldReader reader = new(new Session(describing: true), ObjectNode.Empty, Place.Nowhere, "", "", 0);
        _ = read(reader);
        return new FieldShape.Group(reader._fields.ToEqList());
    }

    /// <summary>True when the document gives the field (and not null).</summary>
    /// <param name="key">Key.</param>
    /// <returns>True when given.</returns>
    public bool IsGiven(string key) => _node.Find(key) is not (null or BlankNode);

    /// <summary>Where a field's value comes from.</summary>
    /// <param name="key">Key.</param>
    /// <param name="reason">Why the default is what it is.</param>
    /// <returns>Given, or default.</returns>
    public Source SourceOf(string key, string reason) =>
        IsGiven(key) ? new Source.Given(At(key)) : new Source.Default(At(key), reason);

    /// <summary>Pointer of a field of this object.</summary>
    /// <param name="key">Key.</param>
    /// <returns>JSON pointer.</returns>
    public string At(string key) => JsonPointer.Append(Pointer, key);

    /// <summary>Adds a fault found by a check across fields.</summary>
    /// <param name="kind">What sort.</param>
    /// <param name="key">Field it is shown at; empty for the object.</param>
    /// <param name="wrong">What is wrong.</param>
    /// <param name="right">What would be right.</param>
    public void Add(FaultKind kind, string key, string wrong, string right)
    {
        Place place = key.Length > 0 && _node.Find(key) is Node node ? node.Place : _place;
        Report(kind, key.Length == 0 ? Pointer : At(key), place, wrong, right);
    }

    /// <summary>Adds a fault at something inside this object.</summary>
    /// <param name="kind">What sort.</param>
    /// <param name="below">Keys and indices from here, joined by slashes.</param>
    /// <param name="wrong">What is wrong.</param>
    /// <param name="right">What would be right.</param>
    public void AddBelow(FaultKind kind, string below, string wrong, string right)
    {
        Node? node = JsonPointer.Find(_node, "/" + below);
        Report(kind, $"{Pointer}/{below}", node?.Place ?? _place, wrong, right);
    }

    /// <summary>True when a fault stands at something inside this object.</summary>
    /// <param name="below">Keys and indices from here, joined by slashes.</param>
    /// <returns>True when there is one.</returns>
    public bool IsFaulty(string below) => _session.Faults.Any(f => f.Pointer == $"{Pointer}/{below}");

    /// <summary>Notes a default that was worked out from other fields.</summary>
    /// <param name="key">Field.</param>
    /// <param name="value">What holds.</param>
    /// <param name="doc">What the field is for.</param>
    public void NoteDefault(string key, string value, string doc)
    {
        if (!IsDescribing)
        {
            _session.Defaults.Add(new DefaultUsed(At(key), value, doc));
        }
    }

    /// <summary>Accepts a key that the job itself makes no use of, such as the schema's address for an editor.</summary>
    /// <param name="key">Key.</param>
    /// <param name="shape">What stands in it.</param>
    /// <param name="blank">What leaving it out means; empty when it must be given.</param>
    /// <param name="doc">What it is for.</param>
    public void Allow(string key, FieldShape shape, string blank, string doc)
    {
        _known.Add(key);
        if (IsDescribing)
        {
            Describe(key, doc, shape, "", blank);
        }
    }

    private void Report(FaultKind kind, string pointer, Place place, string wrong, string right)
    {
        if (!IsDescribing)
        {
            _session.Faults.Add(new Fault(kind, pointer, Id, place.Line, place.Column, Told(wrong), right));
        }
    }

    // A fault may quote what was typed, and a whole job is easily pasted into a field: its beginning and the words at the end are enough.
    private static string Told(string wrong)
    {
        if (wrong.Length <= MostTold)
        {
            return wrong;
        }

        int head = char.IsHighSurrogate(wrong[HeadTold - 1]) ? HeadTold - 1 : HeadTold;
        int tail = wrong.Length - TailTold;
        return wrong[..head] + " … " + wrong[(char.IsLowSurrogate(wrong[tail]) ? tail + 1 : tail)..];
    }

    private void Describe(string key, string doc, FieldShape shape, string defaultJson, string blank) =>
        _fields.Add(new FieldDescription(key, doc, shape, defaultJson, blank));

    /// <summary>The node at a key; null when it is left out or blank.</summary>
    private Node? Take(string key)
    {
        _known.Add(key);
        Node? node = _node.Find(key);
        return node is BlankNode ? null : node;
    }

    private void Missing(string key, string right) =>
        Report(FaultKind.Missing, At(key), _place, $"\"{key}\" is missing", right);

    private void WrongType(string key, Node node, string wanted, string right) =>
        Report(FaultKind.WrongType, At(key), node.Place, $"{node.Called} stands where {wanted} belongs", right);

    // Keys that no reading call asked for.
    private void Close()
    {
        foreach (Member member in _node.Members)
        {
            if (_known.Contains(member.Key))
            {
                continue;
            }

            string shown = member.Key.Length > 40 ? member.Key[..40] + "…" : member.Key;
            string right = MeantKey.Find(member.Key, _known.Where(k => _node.Find(k) is null), Pointer, _session.Places.Value)
                ?? "known here: " + string.Join(", ", _known.Order(StringComparer.Ordinal));
            Report(FaultKind.UnknownKey, At(member.Key), member.KeyPlace, $"\"{shown}\" means nothing here", right);
        }
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private sealed class Session(bool describing)
    {
        public bool Describing { get; } = describing;

        public Lazy<KeyPlaces> Places { get; init; } = new(KeyPlaces.None);

        public List<Fault> Faults { get; } = [];

        public List<DefaultUsed> Defaults { get; } = [];
    }
}
