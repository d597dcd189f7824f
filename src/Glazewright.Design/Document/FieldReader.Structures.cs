using Glazewright.Design.Contracts;

namespace Glazewright.Design.Document;

/// <content>Objects and lists.</content>
public sealed partial class FieldReader
{
    /// <summary>Reads an object; left out, its fields' defaults hold.</summary>
    /// <typeparam name="T">What is made of it.</typeparam>
    /// <param name="key">Key.</param>
    /// <param name="doc">What it is for.</param>
    /// <param name="read">Reads its fields.</param>
    /// <returns>The value.</returns>
    public T Group<T>(string key, string doc, Func<FieldReader, T> read)
    {
        if (IsDescribing)
        {
            FieldReader described = new(_session, ObjectNode.Empty, Place.Nowhere, At(key), "", 0);
            T stand = read(described);
            Describe(key, doc, new FieldShape.Group(described._fields.ToEqList()), "{}", "");
            return stand;
        }

        Node? node = Take(key);
        if (node is not (null or ObjectNode))
        {
            WrongType(key, node, "an object { }", $"\"{key}\": {{ … }}");
        }

        return ReadObject(node as ObjectNode ?? ObjectNode.Empty, At(key), 0, read);
    }

    /// <summary>Reads an object that may be left out.</summary>
    /// <typeparam name="T">What is made of it.</typeparam>
    /// <param name="key">Key.</param>
    /// <param name="blank">What happens when it is left out, in words.</param>
    /// <param name="doc">What it is for.</param>
    /// <param name="read">Reads its fields.</param>
    /// <returns>The value, or null.</returns>
    public T? GroupOrBlank<T>(string key, string blank, string doc, Func<FieldReader, T> read)
        where T : class
    {
        if (IsDescribing)
        {
            FieldReader described = new(_session, ObjectNode.Empty, Place.Nowhere, At(key), "", 0);
            _ = read(described);
            Describe(key, doc, new FieldShape.Group(described._fields.ToEqList()), "", blank);
            return null;
        }

        switch (Take(key))
        {
            case null:
                _session.Defaults.Add(new DefaultUsed(At(key), blank, doc));
                return null;
            case ObjectNode o:
                return ReadObject(o, At(key), 0, read);
            case Node other:
                WrongType(key, other, "an object { }", $"\"{key}\": {{ … }}");
                return null;
        }
    }

    /// <summary>Reads a list of objects.</summary>
    /// <typeparam name="T">What is made of each.</typeparam>
    /// <param name="key">Key.</param>
    /// <param name="fewest">Fewest items.</param>
    /// <param name="most">Most items.</param>
    /// <param name="blank">What holds when it is left out, in words; null when it must be given.</param>
    /// <param name="doc">What it is for.</param>
    /// <param name="read">Reads an item's fields.</param>
    /// <returns>The items; none when it is left out.</returns>
    public EqList<T> Several<T>(string key, int fewest, int most, string? blank, string doc, Func<FieldReader, T> read)
    {
        if (IsDescribing)
        {
            Describe(key, doc, new FieldShape.Several(DescribeItem(key, read), fewest, most), "", blank ?? "");
            return [];
        }

        Node? node = Take(key);
        if (node is null)
        {
            if (blank is null)
            {
                Missing(key, $"\"{key}\": [ {{ … }} ]");
            }
            else
            {
                _session.Defaults.Add(new DefaultUsed(At(key), blank, doc));
            }

            return [];
        }

        if (node is not ListNode list)
        {
            WrongType(key, node, "a list [ ]", $"\"{key}\": [ {{ … }} ]");
            return [];
        }

        return Items(key, list, fewest, most, read);
    }

    /// <summary>Reads a word, or a list of objects in its place: "size", "none", or what is fixed.</summary>
    /// <typeparam name="T">What is made of each item.</typeparam>
    /// <param name="key">Key.</param>
    /// <param name="words">The words.</param>
    /// <param name="default">The word that holds when it is left out.</param>
    /// <param name="most">Most items.</param>
    /// <param name="doc">What it is for.</param>
    /// <param name="read">Reads an item's fields.</param>
    /// <param name="fewest">Fewest items of a list.</param>
    /// <returns>The word or the items.</returns>
    public WordOrList<T> WordOrSeveral<T>(string key, IReadOnlyList<string> words, string @default, int most, string doc, Func<FieldReader, T> read, int fewest = 1)
    {
        if (IsDescribing)
        {
            FieldShape choice = new FieldShape.Choice(words.Select(w => new ChoiceWord(w, "")).ToEqList());
            Describe(key, doc, new FieldShape.Either(choice, new FieldShape.Several(DescribeItem(key, read), fewest, most)), JsonText.Quote(@default), "");
            return new WordOrList<T>(@default, []);
        }

        return _node.Find(key) is ListNode list && Take(key) is not null
            ? new WordOrList<T>("", Items(key, list, fewest, most, read))
            : new WordOrList<T>(Word(key, words, @default, doc), []);
    }

    private FieldShape.Group DescribeItem<T>(string key, Func<FieldReader, T> read)
    {
        FieldReader item = new(_session, ObjectNode.Empty, Place.Nowhere, At(key) + "/0", "", 0);
        _ = read(item);
        return new FieldShape.Group(item._fields.ToEqList());
    }

    private EqList<T> Items<T>(string key, ListNode list, int fewest, int most, Func<FieldReader, T> read)
    {
        Counted(key, list, fewest, most);
        List<T> items = [];
        HashSet<string> ids = new(StringComparer.OrdinalIgnoreCase); // ids name files, and some disks do not tell capitals apart
        for (int i = 0; i < Math.Min(list.Items.Count, most); i++)
        {
            string pointer = JsonPointer.Append(At(key), Text(i));
            if (list.Items[i] is not ObjectNode o)
            {
                Report(FaultKind.WrongType, pointer, list.Items[i].Place, $"{list.Items[i].Called} stands where an object {{ }} belongs", "{ … }");
                continue;
            }

            if (o.Find("id") is TextNode id && !ids.Add(id.Text))
            {
                Report(FaultKind.Duplicate, pointer + "/id", id.Place, $"the id \"{id.Text}\" is taken by another in this list", ids.TryGetValue(id.Text, out string? taken) && taken != id.Text ? $"an id of its own: \"{taken}\" differs by capitals alone, and ids name files" : "an id of its own");
            }

            items.Add(ReadObject(o, pointer, i, read));
        }

        return items.ToEqList();
    }

    private void Counted(string key, ListNode list, int fewest, int most)
    {
        if (list.Items.Count < fewest || list.Items.Count > most)
        {
            string right = fewest == most ? $"{Text(fewest)} items" : $"{Text(fewest)} to {Text(most)} items";
            Report(FaultKind.OutOfRange, At(key), list.Place, list.Items.Count == 0 ? $"\"{key}\" is empty" : $"\"{key}\" has {Text(list.Items.Count)} items", right);
        }
    }

    private T ReadObject<T>(ObjectNode node, string pointer, int index, Func<FieldReader, T> read)
    {
        FieldReader reader = new(_session, node, _place, pointer, Id, index);
        T value = read(reader);
        reader.Close();
        return value;
    }
}
