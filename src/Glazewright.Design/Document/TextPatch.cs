using System.Globalization;

namespace Glazewright.Design.Document;

/// <summary>Makes an edit in the text itself, so that everything else stays exactly as typed.</summary>
internal static class TextPatch
{
    /// <summary>Applies one edit.</summary>
    /// <returns>True and the new text; false and what is wrong.</returns>
    public static bool TryApply(JobDocument document, Edit edit, out string text, out string wrong)
    {
        text = document.Text;
        wrong = "";
        string[]? keys = JsonPointer.Keys(edit.Pointer);
        if (keys is null || keys.Length == 0)
        {
            wrong = $"'{edit.Pointer}' does not point to a field";
            return false;
        }

        Node node = document.Root;
        int depth = 0;
        while (depth < keys.Length - 1 && JsonPointer.Step(node, keys[depth]) is Node next and not BlankNode)
        {
            node = next;
            depth++;
        }

        Node? old = JsonPointer.Step(node, keys[depth]);
        if (edit.Json is null)
        {
            return TryRemove(document.Text, node, keys[depth], depth == keys.Length - 1 ? old : null, edit.Pointer, out text, out wrong);
        }

        string json = Nested(keys.AsSpan(depth + 1), edit.Json);
        if (old is not null)
        {
            text = Replace(document.Text, old.Place.Start, old.Place.End, json);
            return true;
        }

        switch (node)
        {
            case ObjectNode o:
                text = AddMember(document.Text, o, keys[depth], json);
                return true;
            case ListNode list when keys[depth] == "-" || keys[depth] == list.Items.Count.ToString(CultureInfo.InvariantCulture):
                text = list.Items.Count == 0
                    ? Replace(document.Text, list.Place.Start + 1, list.Place.Start + 1, json)
                    : Replace(document.Text, list.Items[^1].Place.End, list.Items[^1].Place.End, Joint(document.Text, list.Items[^1].Place) + json);
                return true;
            default:
                wrong = $"nothing can be put at '{edit.Pointer}'";
                return false;
        }
    }

    private static string Nested(ReadOnlySpan<string> keys, string json)
    {
        for (int i = keys.Length - 1; i >= 0; i--)
        {
            json = keys[i] is "-" or "0" ? $"[{json}]" : $"{{ {JsonText.Quote(keys[i])}: {json} }}";
        }

        return json;
    }

    private static string AddMember(string text, ObjectNode o, string key, string json)
    {
        string member = $"{JsonText.Quote(key)}: {json}";
        if (o.Members.Count == 0)
        {
            return Replace(text, o.Place.Start + 1, o.Place.Start + 1, $" {member} ");
        }

        Member last = o.Members[^1];
        int end = last.Value.Place.End;
        return Replace(text, end, end, Joint(text, last.KeyPlace) + member);
    }

    // A new entry stands on its own line, indented as the one before, when that one stands at the head of a line.
    private static string Joint(string text, Place before)
    {
        int lineStart = before.Start == 0 ? 0 : text.LastIndexOf('\n', before.Start - 1) + 1;
        string lead = text[lineStart..before.Start];
        return lineStart > 0 && lead.All(c => c is ' ' or '\t') ? ",\n" + lead : ", ";
    }

    private static bool TryRemove(string whole, Node holder, string key, Node? old, string pointer, out string text, out string wrong)
    {
        text = whole;
        wrong = "";
        if (old is null)
        {
            wrong = $"nothing stands at '{pointer}'";
            return false;
        }

        int start = holder is ObjectNode o ? o.Members.First(m => m.Key == key).KeyPlace.Start : old.Place.Start;
        int comma = NextComma(whole, old.Place.End);
        if (comma >= 0)
        {
            int end = comma + 1;
            while (end < whole.Length && whole[end] is ' ' or '\t' or '\r' or '\n')
            {
                end++;
            }

            text = whole.Remove(start, end - start);
            return true;
        }

        int before = EndBefore(holder, old);
        text = before >= 0 ? whole.Remove(before, old.Place.End - before) : whole.Remove(start, old.Place.End - start);
        return true;
    }

    private static int EndBefore(Node holder, Node old)
    {
        IEnumerable<Node> values = holder is ObjectNode o ? o.Members.Select(m => m.Value) : ((ListNode)holder).Items;
        Node? last = values.TakeWhile(v => v.Place.Start < old.Place.Start).LastOrDefault();
        return last?.Place.End ?? -1;
    }

    private static int NextComma(string text, int at)
    {
        while (at < text.Length)
        {
            if (text[at] == ',')
            {
                return at;
            }

            if (text.AsSpan(at).StartsWith("//", StringComparison.Ordinal))
            {
                int end = text.IndexOf('\n', at);
                at = end < 0 ? text.Length : end;
            }
            else if (text.AsSpan(at).StartsWith("/*", StringComparison.Ordinal))
            {
                at = text.IndexOf("*/", at, StringComparison.Ordinal) + 2;
            }
            else if (!char.IsWhiteSpace(text[at]))
            {
                return -1;
            }
            else
            {
                at++;
            }
        }

        return -1;
    }

    private static string Replace(string text, int start, int end, string with) => string.Concat(text.AsSpan(0, start), with, text.AsSpan(end));
}
