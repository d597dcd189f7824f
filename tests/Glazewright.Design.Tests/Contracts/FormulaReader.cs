using System.Globalization;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Tests.Contracts;

/// <summary>Reads a printed formula and computes it from the printed inputs: an independent hand on every derived figure.</summary>
public sealed class FormulaReader
{
    private readonly string _text;
    private readonly IReadOnlyDictionary<string, double> _values;
    private int _at;

    private FormulaReader(string text, IReadOnlyDictionary<string, double> values)
    {
        _text = text;
        _values = values;
    }

    public static double Evaluate(string formula, IEnumerable<WorkingInput> inputs)
    {
        FormulaReader reader = new(formula.Replace(" ", "", StringComparison.Ordinal), inputs.ToDictionary(i => i.Symbol, i => i.Value));
        double value = reader.Sum();
        return reader._at == reader._text.Length ? value : throw new FormatException($"'{formula}' does not end at {reader._at}.");
    }

    private double Sum()
    {
        double value = Product();
        while (Take('+') is bool plus && (plus || Take('-')))
        {
            double term = Product();
            value = plus ? value + term : value - term;
        }

        return value;
    }

    private double Product()
    {
        double value = Power();
        while (Take('*') is bool times && (times || Take('/')))
        {
            double factor = Power();
            value = times ? value * factor : value / factor;
        }

        return value;
    }

    private double Power()
    {
        double value = Atom();
        return Take('^') ? Math.Pow(value, Atom()) : value;
    }

    private double Atom()
    {
        if (Take('('))
        {
            double value = Sum();
            Need(')');
            return value;
        }

        if (Take('-'))
        {
            return -Atom();
        }

        int start = _at;
        if (char.IsAsciiDigit(_text[_at]))
        {
            while (_at < _text.Length && (char.IsAsciiDigit(_text[_at]) || _text[_at] is '.' or 'E' || (_text[_at] is '-' or '+' && _text[_at - 1] == 'E')))
            {
                _at++;
            }

            return double.Parse(_text.AsSpan(start, _at - start), CultureInfo.InvariantCulture);
        }

        while (_at < _text.Length && (char.IsAsciiLetterOrDigit(_text[_at]) || _text[_at] == '_'))
        {
            _at++;
        }

        string word = _text[start.._at];
        if (!Take('('))
        {
            return _values[word];
        }

        double first = Sum();
        double second = Take(',') ? Sum() : double.NaN;
        Need(')');
        return word switch
        {
            "sqrt" => Math.Sqrt(first),
            "exp" => Math.Exp(first),
            "min" => Math.Min(first, second),
            "max" => Math.Max(first, second),
            _ => throw new FormatException($"No function '{word}'."),
        };
    }

    private bool Take(char c)
    {
        if (_at >= _text.Length || _text[_at] != c)
        {
            return false;
        }

        _at++;
        return true;
    }

    private void Need(char c)
    {
        if (!Take(c))
        {
            throw new FormatException($"'{c}' wanted at {_at} of '{_text}'.");
        }
    }
}
