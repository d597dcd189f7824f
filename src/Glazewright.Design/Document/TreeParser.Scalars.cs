using System.Globalization;
using System.Text;

namespace Glazewright.Design.Document;

/// <content>Texts, numbers and words.</content>
internal sealed partial class TreeParser
{
    private string? String()
    {
        Place start = Start();
        StringBuilder text = new();
        _at++;
        while (true)
        {
            char c = Here;
            if (_at >= _text.Length || c is '\n' or '\r')
            {
                Fail(start, "this text is not closed on its line", "a double quote \" at its end");
                return null;
            }

            _at++;
            if (c == '"')
            {
                return text.ToString();
            }

            if (c < ' ')
            {
                Fail(start, "this text holds a control character", "plain characters; a tab inside a text is written \\t");
                return null;
            }

            if (c != '\\')
            {
                text.Append(c);
            }
            else if (!Escape(text))
            {
                return null;
            }
        }
    }

    private bool Escape(StringBuilder text)
    {
        Place start = Start();
        char c = Here;
        _at++;
        char plain = c switch { '"' or '\\' or '/' => c, 'b' => '\b', 'f' => '\f', 'n' => '\n', 'r' => '\r', 't' => '\t', _ => '\0' };
        if (plain != '\0')
        {
            text.Append(plain);
            return true;
        }

        if (c == 'u' && _at + 4 <= _text.Length
            && ushort.TryParse(_text.AsSpan(_at, 4), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out ushort unit))
        {
            text.Append((char)unit);
            _at += 4;
            return true;
        }

        _at = Math.Min(_at, _text.Length);
        Fail(start, "a backslash stands before something it cannot escape", "\\\" \\\\ \\/ \\b \\f \\n \\r \\t or \\u and four hex digits");
        return false;
    }

    private NumberNode? Number()
    {
        Place start = Start();
        while (Here is (>= '0' and <= '9') or '-' or '+' or '.' or 'e' or 'E')
        {
            _at++;
        }

        string typed = _text[start.Start.._at];
        if (!IsJsonNumber(typed) || char.IsLetter(Here) || Here is '\'' or '"' or ':')
        {
            Fail(start, $"{typed}{(Here > ' ' && Here is not (',' or '}' or ']') ? Here : "")} is not a number of JSON", "a quantity stands in double quotes with its unit, as in \"26'-0\\\"\" or \"3.81 m\"");
            return null;
        }

        return new NumberNode(typed, Close(start));
    }

    private static bool IsJsonNumber(string typed)
    {
        string digits = typed.TrimStart('-');
        bool leadingZero = digits.Length > 1 && digits[0] == '0' && char.IsAsciiDigit(digits[1]);
        bool fraction = !digits.Contains('.', StringComparison.Ordinal) || digits.Split('.') is [{ Length: > 0 }, { Length: > 0 } tail] && char.IsAsciiDigit(tail[0]);
        return digits.Length > 0 && char.IsAsciiDigit(digits[0]) && typed.Length - digits.Length <= 1 && !leadingZero && fraction
            && double.TryParse(typed, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out double value)
            && double.IsFinite(value);
    }

    private Node? Word()
    {
        Place start = Start();
        while (char.IsLetterOrDigit(Here) || Here is '_' or '\'')
        {
            _at++;
        }

        string word = _text[start.Start.._at];
        Place place = Close(start);
        switch (word)
        {
            case "true" or "false":
                return new FlagNode(word == "true", place);
            case "null":
                return new BlankNode(place);
            default:
                string shown = word.Length == 0 ? Quoted() : word.Length > 30 ? word[..30] + "…" : word;
                Fail(start, $"{shown} stands where a value belongs", word.Length > 0 ? $"a text in double quotes: \"{shown}\"" : "a text in double quotes, a number, a list or an object");
                return null;
        }
    }
}
