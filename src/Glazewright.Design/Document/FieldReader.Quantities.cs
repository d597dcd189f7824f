using Glazewright.Design.Contracts;
using Glazewright.Design.Quantities;

namespace Glazewright.Design.Document;

/// <content>Quantities: one general door, and named ones that say the unit of their answer.</content>
public sealed partial class FieldReader
{
    /// <summary>Reads a quantity.</summary>
    /// <param name="key">Key.</param>
    /// <param name="kind">What it measures.</param>
    /// <param name="least">Smallest sensible value, as typed with its unit.</param>
    /// <param name="most">Largest sensible value.</param>
    /// <param name="default">What holds when it is left out; null when it must be given.</param>
    /// <param name="doc">What it is for.</param>
    /// <returns>Value in the kind's inside unit.</returns>
    public double Quantity(string key, QuantityKind kind, string least, string most, string? @default, string doc)
    {
        if (IsDescribing)
        {
            Describe(key, doc, new FieldShape.Measure(kind, least, most), @default is null ? "" : JsonText.Quote(@default), "");
            return Inside(@default ?? least, kind);
        }

        Node? node = Take(key);
        if (node is not null)
        {
            return Typed(At(key), node, kind, least, most);
        }

        if (@default is null)
        {
            Missing(key, Example(key, kind, least, most));
            return Inside(least, kind);
        }

        _session.Defaults.Add(new DefaultUsed(At(key), @default, doc));
        return Inside(@default, kind);
    }

    /// <summary>Reads a quantity that may be left blank.</summary>
    /// <param name="key">Key.</param>
    /// <param name="kind">What it measures.</param>
    /// <param name="least">Smallest sensible value.</param>
    /// <param name="most">Largest sensible value.</param>
    /// <param name="blank">What happens when it is blank, in words.</param>
    /// <param name="doc">What it is for.</param>
    /// <returns>Value in the kind's inside unit, or null when blank.</returns>
    public double? QuantityOrBlank(string key, QuantityKind kind, string least, string most, string blank, string doc)
    {
        if (IsDescribing)
        {
            Describe(key, doc, new FieldShape.Measure(kind, least, most), "", blank);
            return null;
        }

        Node? node = Take(key);
        if (node is null or TextNode { Text: "" })
        {
            _session.Defaults.Add(new DefaultUsed(At(key), blank, doc));
            return null;
        }

        return Typed(At(key), node, kind, least, most);
    }

    /// <summary>Reads a list of quantities.</summary>
    /// <param name="key">Key.</param>
    /// <param name="kind">What they measure.</param>
    /// <param name="least">Smallest sensible value.</param>
    /// <param name="most">Largest sensible value.</param>
    /// <param name="fewest">Fewest items.</param>
    /// <param name="mostItems">Most items.</param>
    /// <param name="defaults">What holds when the list is left out.</param>
    /// <param name="doc">What it is for.</param>
    /// <returns>Values in the kind's inside unit.</returns>
    public EqList<double> Quantities(string key, QuantityKind kind, string least, string most, int fewest, int mostItems, string[] defaults, string doc)
    {
        if (IsDescribing)
        {
            FieldShape item = new FieldShape.Measure(kind, least, most);
            Describe(key, doc, new FieldShape.Several(item, fewest, mostItems), "[" + string.Join(", ", defaults.Select(JsonText.Quote)) + "]", "");
        }

        Node? node = Take(key);
        if (node is null)
        {
            NoteDefault(key, string.Join(", ", defaults), doc);
            return defaults.Select(d => Inside(d, kind)).ToEqList();
        }

        if (node is not ListNode list)
        {
            WrongType(key, node, "a list", $"[{string.Join(", ", defaults.Select(JsonText.Quote))}]");
            return [];
        }

        Counted(key, list, fewest, mostItems);
        return list.Items.Select((n, i) => Typed(JsonPointer.Append(At(key), Text(i)), n, kind, least, most)).ToEqList();
    }

    /// <summary>Reads a price that may be typed in several ways (by volume or by energy).</summary>
    /// <param name="key">Key.</param>
    /// <param name="kinds">Kinds that are taken, the likeliest first.</param>
    /// <param name="default">What holds when it is left out.</param>
    /// <param name="doc">What it is for.</param>
    /// <returns>The price, with the kind it was typed in.</returns>
    public Quantity Price(string key, QuantityKind[] kinds, string @default, string doc)
    {
        if (IsDescribing)
        {
            Describe(key, doc, PriceShape(kinds), JsonText.Quote(@default), "");
        }

        Node? node = Take(key);
        string? text = node switch { null => @default, TextNode t => t.Text, NumberNode n => n.Typed, _ => null };
        if (node is null)
        {
            NoteDefault(key, @default, doc);
        }

        foreach (QuantityKind kind in kinds)
        {
            if (text is not null && QuantityReader.TryRead(text, kind, out Quantity quantity, out _) && quantity.Inside >= 0)
            {
                OneCurrency(At(key), node ?? _node, node is null ? "" : quantity.Currency);
                return quantity;
            }
        }

        string right = string.Join(" or ", kinds.Select(k => KindWords.Of(k).Examples[0]));
        Report(text is null ? FaultKind.WrongType : FaultKind.Unit, At(key), node?.Place ?? _place, text is null ? $"{node!.Called} stands where a price belongs" : $"'{text}' is not a price that is known here", right);
        return new Quantity(kinds[0], 0, UnitTable.Of(kinds[0])[0], "");
    }

    private static FieldShape PriceShape(QuantityKind[] kinds)
    {
        FieldShape[] each = [.. kinds.Select(k => new FieldShape.Measure(k, "0 " + KindWords.Of(k).Units[0], "1000000 " + KindWords.Of(k).Units[0]))];
        return each.Reverse().Aggregate((second, first) => new FieldShape.Either(first, second));
    }

    /// <summary>A length, m.</summary>
    public double LengthM(string key, string least, string most, string? @default, string doc) => Quantity(key, QuantityKind.Length, least, most, @default, doc);

    /// <summary>A length that may be left blank, m.</summary>
    public double? LengthMOrBlank(string key, string least, string most, string blank, string doc) => QuantityOrBlank(key, QuantityKind.Length, least, most, blank, doc);

    /// <summary>A pitch as rise over run, 0 to 60°.</summary>
    public double PitchRatio(string key, string @default, string doc) => Quantity(key, QuantityKind.Pitch, "0:12", "60 deg", @default, doc);

    /// <summary>An angle, °.</summary>
    public double AngleDeg(string key, string least, string most, string? @default, string doc) => Quantity(key, QuantityKind.Angle, least, most, @default, doc);

    /// <summary>A temperature, °C.</summary>
    public double TemperatureC(string key, string least, string most, string? @default, string doc) => Quantity(key, QuantityKind.Temperature, least, most, @default, doc);

    /// <summary>A temperature difference, K.</summary>
    public double DifferenceK(string key, string least, string most, string @default, string doc) => Quantity(key, QuantityKind.TemperatureDifference, least, most, @default, doc);

    /// <summary>A share that is said in percent, 0 to 1 for 0 to 100 %.</summary>
    public double Fraction(string key, string least, string most, string? @default, string doc) => Quantity(key, QuantityKind.Fraction, least, most, @default, doc);

    /// <summary>A pure number, bare or in percent.</summary>
    public double Ratio(string key, string least, string most, string? @default, string doc) => Quantity(key, QuantityKind.Ratio, least, most, @default, doc);

    /// <summary>An air pressure, Pa.</summary>
    public double PressurePa(string key, string least, string most, string? @default, string doc) => Quantity(key, QuantityKind.Pressure, least, most, @default, doc);

    /// <summary>A load on an area, Pa.</summary>
    public double AreaLoadPa(string key, string least, string most, string? @default, string doc) => Quantity(key, QuantityKind.AreaLoad, least, most, @default, doc);

    /// <summary>A speed, m/s.</summary>
    public double SpeedMs(string key, string least, string most, string? @default, string doc) => Quantity(key, QuantityKind.Speed, least, most, @default, doc);

    /// <summary>A power, W.</summary>
    public double PowerW(string key, string least, string most, string? @default, string doc) => Quantity(key, QuantityKind.Power, least, most, @default, doc);

    /// <summary>A length of time, s.</summary>
    public double DurationS(string key, string least, string most, string? @default, string doc) => Quantity(key, QuantityKind.Duration, least, most, @default, doc);

    // A quantity of the document: every way it can be wrong becomes a fault.
    private double Typed(string pointer, Node node, QuantityKind kind, string least, string most)
    {
        string key = pointer[(pointer.LastIndexOf('/') + 1)..];
        string? text = node switch { TextNode t => t.Text, NumberNode n => n.Typed, _ => null };
        if (text is null)
        {
            Report(FaultKind.WrongType, pointer, node.Place, $"{node.Called} stands where {KindWords.Of(kind).Name} belongs", Example(key, kind, least, most));
            return Inside(least, kind);
        }

        if (!QuantityReader.TryRead(text, kind, out Quantity quantity, out Misreading? misreading))
        {
            Report(FaultKind.Unit, pointer, node.Place, misreading.Wrong, misreading.IsRange && RangeAdvice.Length > 0 ? $"{misreading.Right}: {RangeAdvice}" : misreading.Right);
            return Inside(least, kind);
        }

        OneCurrency(pointer, node, quantity.Currency);
        double low = Inside(least, kind);
        double high = Inside(most, kind);
        if (!(quantity.Inside >= low - Slack(low) && quantity.Inside <= high + Slack(high)))
        {
            string slip = LikelySlip(quantity, low, high);
            Report(FaultKind.OutOfRange, pointer, node.Place, $"{quantity.Echo} is outside what such a field can hold", $"{Echo(least, kind)} to {Echo(most, kind)}{slip}");
            return low;
        }

        return quantity.Inside;
    }

    // Nothing is converted, and the price book is in $: another sign would put two currencies into one sum.
    private void OneCurrency(string pointer, Node node, string sign)
    {
        if (sign.Length > 0 && sign != "$")
        {
            Report(FaultKind.Contradiction, pointer, node.Place, $"an amount in {sign} beside a price book in $", "one currency: amounts in $; nothing is converted");
        }
    }

    // The same number in another unit of the same kind that would fit: 88 C for 88 F.
    private static string LikelySlip(Quantity quantity, double low, double high)
    {
        double number = quantity.Unit.FromInside(quantity.Inside);
        UnitOfMeasure? other = quantity.Unit.Symbol is ":12" or "" || quantity.Unit.Kind != quantity.Kind ? null
            : UnitTable.Of(quantity.Kind)
                .Where(u => u.Symbol != quantity.Unit.Symbol && u.ToInside(number) >= low && u.ToInside(number) <= high)
                .OrderBy(u => u.Family == quantity.Unit.Family ? 0 : 1)
                .FirstOrDefault();
        return other is null ? "" : $"; did you mean {QuantityFormat.Number(number, 9)} {other.Symbol}?";
    }

    private static double Inside(string text, QuantityKind kind) =>
        QuantityReader.TryRead(text, kind, out Quantity quantity, out Misreading? misreading)
            ? quantity.Inside
            : throw new ArgumentException($"A bound or default in the code cannot be read: '{text}': {misreading.Wrong}.", nameof(text));

    private static string Echo(string text, QuantityKind kind) => QuantityReader.TryRead(text, kind, out Quantity quantity, out _) ? quantity.Echo : text;

    private static double Slack(double bound) => 1e-9 * Math.Max(1e-3, Math.Abs(bound));

    // An example that the field itself would take; where the kind has none inside the range, the range is told.
    private static string Example(string key, QuantityKind kind, string least, string most)
    {
        double low = Inside(least, kind);
        double high = Inside(most, kind);
        string? fits = KindWords.Of(kind).Examples.FirstOrDefault(e => QuantityReader.TryRead(e, kind, out Quantity q, out _) && q.Inside >= low && q.Inside <= high);
        return fits is not null ? $"\"{key}\": {JsonText.Quote(fits)}" : $"\"{key}\": {JsonText.Quote(least)} to {JsonText.Quote(most)}";
    }
}
