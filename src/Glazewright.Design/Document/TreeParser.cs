using System.Globalization;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Document;

/// <summary>
/// Reads JSON (RFC 8259) into a tree with places. Also takes // and /* */ comments, a trailing comma and a byte-order mark, because people write these
/// files by hand. The framework's own reader is not used: it gives no place for each value, and its messages are not for builders.
/// </summary>
internal sealed partial class TreeParser
{
    private const int LongestText = 4_000_000;
    private const int Deepest = 40;

    private readonly string _text;
    private readonly List<Fault> _faults = [];
    private int _at;
    private int _line = 1;
    private int _lineStart;

    private TreeParser(string text) => _text = text;

    /// <summary>Reads a text.</summary>
    /// <param name="text">The document.</param>
    /// <param name="faults">All that is wrong with it as JSON; empty when it can be used.</param>
    /// <returns>The tree; an empty object when the text is not JSON.</returns>
    public static Node Parse(string text, out EqList<Fault> faults)
    {
        TreeParser parser = new(text);
        Node? root = parser.Document();
        faults = parser._faults.ToEqList();
        return root ?? ObjectNode.Empty;
    }

    private char Here => _at < _text.Length ? _text[_at] : '\0';

    private Node? Document()
    {
        if (_text.Length > LongestText)
        {
            Fail($"the document has {_text.Length:N0} characters", $"at most {LongestText:N0}");
            return null;
        }

        _at = _text.StartsWith('\uFEFF') ? 1 : 0;
        _lineStart = _at;
        if (!SkipTrivia())
        {
            return null;
        }

        if (_at >= _text.Length)
        {
            Fail("the document is empty", "{ \"glazewright\": 1 }");
            return null;
        }

        Node? root = Value("", 0);
        if (root is null || !SkipTrivia())
        {
            return null;
        }

        if (_at < _text.Length)
        {
            Fail($"after the end of the document stands {Quoted()}", "one value in a document; look for a bracket closed too early");
            return null;
        }

        return root;
    }

    private Node? Value(string pointer, int depth)
    {
        if (depth > Deepest)
        {
            Fail($"brackets are nested more than {Deepest} deep", "a flatter document");
            return null;
        }

        switch (Here)
        {
            case '{':
                return Object(pointer, depth);
            case '[':
                return List(pointer, depth);
            case '"':
                Place start = Start();
                return String() is string text ? new TextNode(text, Close(start)) : null;
            case '-' or (>= '0' and <= '9'):
                return Number();
            default:
                return Word();
        }
    }

    private ObjectNode? Object(string pointer, int depth)
    {
        Place start = Start();
        List<Member> members = [];
        HashSet<string> seen = [];
        _at++;
        while (true)
        {
            if (!SkipTrivia())
            {
                return null;
            }

            if (Here == '}')
            {
                _at++;
                return new ObjectNode(members.ToEqList(), Close(start));
            }

            if (Here != '"')
            {
                FailAtKey(start);
                return null;
            }

            Place keyStart = Start();
            if (String() is not string key)
            {
                return null;
            }

            Place keyPlace = Close(keyStart);
            if (!SkipTrivia())
            {
                return null;
            }

            if (Here != ':')
            {
                Fail($"behind the key \"{key}\" stands {Quoted()}", "a colon : and then the value");
                return null;
            }

            _at++;
            string inner = JsonPointer.Append(pointer, key);
            if (!SkipTrivia() || Value(inner, depth + 1) is not Node value)
            {
                return null;
            }

            if (seen.Add(key))
            {
                members.Add(new Member(key, keyPlace, value));
            }
            else
            {
                _faults.Add(new Fault(FaultKind.Duplicate, inner, "", keyPlace.Line, keyPlace.Column, $"the key \"{key}\" stands twice in this object", "keep one of them"));
            }

            if (!Comma('}', value))
            {
                return null;
            }
        }
    }

    private ListNode? List(string pointer, int depth)
    {
        Place start = Start();
        List<Node> items = [];
        _at++;
        while (true)
        {
            if (!SkipTrivia())
            {
                return null;
            }

            if (Here == ']')
            {
                _at++;
                return new ListNode(items.ToEqList(), Close(start));
            }

            if (_at >= _text.Length)
            {
                Fail($"the list [ opened in line {start.Line} is not closed", "a ] behind its last item");
                return null;
            }

            if (Value(JsonPointer.Append(pointer, items.Count.ToString(CultureInfo.InvariantCulture)), depth + 1) is not Node item)
            {
                return null;
            }

            items.Add(item);
            if (!Comma(']', item))
            {
                return null;
            }
        }
    }

    // Behind a value stands a comma or the closing bracket.
    private bool Comma(char closing, Node before)
    {
        int end = _at;
        if (!SkipTrivia())
        {
            return false;
        }

        if (Here == ',')
        {
            _at++;
            return true;
        }

        if (Here == closing)
        {
            return true;
        }

        if (before is TextNode && end == _at && Here == '"')
        {
            Fail("a quote mark stands right behind a text", "write inches inside a text as \\\" or ″ or in, as in 12'6\\\"");
        }
        else if (_at >= _text.Length)
        {
            Fail("the document ends in the middle", $"a {closing} that closes what was opened");
        }
        else
        {
            Fail($"{Quoted()} stands where a comma or {closing} belongs", $"a comma between two values, or {closing} behind the last");
        }

        return false;
    }

    private void FailAtKey(Place start)
    {
        if (_at >= _text.Length)
        {
            Fail($"the object {{ opened in line {start.Line} is not closed", "a } behind its last value");
        }
        else if (Here is '“' or '”' or '„' or '\'')
        {
            Fail($"{Quoted()} stands where a key belongs", "straight double quotes around keys and texts: \"width\"");
        }
        else
        {
            Fail($"{Quoted()} stands where a key belongs", "a key in double quotes, as in \"width\": \"26 ft\"");
        }
    }

    // Spaces and comments. False when a comment is not closed or a slash stands alone.
    private bool SkipTrivia()
    {
        while (_at < _text.Length)
        {
            char c = _text[_at];
            if (c == '\n')
            {
                _at++;
                _line++;
                _lineStart = _at;
            }
            else if (c is ' ' or '\t' or '\r' or '\u00A0')
            {
                _at++;
            }
            else if (c != '/')
            {
                return true;
            }
            else if (!Comment())
            {
                return false;
            }
        }

        return true;
    }

    private bool Comment()
    {
        Place start = Start();
        char second = _at + 1 < _text.Length ? _text[_at + 1] : '\0';
        if (second == '/')
        {
            int end = _text.IndexOf('\n', _at);
            _at = end < 0 ? _text.Length : end;
            return true;
        }

        int close = second == '*' ? _text.IndexOf("*/", _at + 2, StringComparison.Ordinal) : -1;
        if (close < 0)
        {
            Fail(start, second == '*' ? "the comment /* is not closed" : "a lone / stands here", second == '*' ? "*/ at its end" : "// before a comment");
            return false;
        }

        for (; _at < close + 2; _at++)
        {
            if (_text[_at] == '\n')
            {
                _line++;
                _lineStart = _at + 1;
            }
        }

        return true;
    }

    private Place Start() => new(_at, _at, _line, _at - _lineStart + 1);

    private Place Close(Place start) => start with { End = _at };

    private string Quoted() => _at >= _text.Length ? "the end of the text" : $"'{Here}'";

    private void Fail(string wrong, string right) => Fail(Start(), wrong, right);

    private void Fail(Place at, string wrong, string right) =>
        _faults.Add(new Fault(FaultKind.NotJson, "", "", at.Line, at.Column, wrong, right));
}
