using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Program;
using Glazewright.Design.Quantities;
using Glazewright.Web.Fields;

namespace Glazewright.Web.Jobs;

/// <summary>A change of the control program as the document has it.</summary>
/// <param name="Part">Part of the program.</param>
/// <param name="Name">Name of the thing in it; empty where the part is one thing.</param>
/// <param name="Field">What is changed.</param>
/// <param name="Typed">As typed.</param>
/// <param name="Pointer">Where.</param>
public sealed record TypedChange(ProgramPart Part, string Name, ProgramField Field, string Typed, string Pointer)
{
    /// <summary>What it is, in words: "cooling stages, fan-2: comes on this far above the threshold".</summary>
    public string Words => ProgramWords.Place(Part, Name, Field);
}

/// <summary>What a change of a house's control program writes into the job, and what taking it back takes out.</summary>
public static class ProgramEdits
{
    /// <summary>The changes that the document holds, also those whose value is wrong and those that have nothing to change.</summary>
    /// <param name="document">The job.</param>
    /// <param name="house">Place of the house in the job, from 0.</param>
    public static IReadOnlyList<TypedChange> Of(JobDocument document, int house)
    {
        ArgumentNullException.ThrowIfNull(document);
        List<TypedChange> changes = [];
        foreach (ProgramPart part in ProgramParts.All)
        {
            string at = JsonPointer.Append(Section(house), part.Key);
            if (!part.IsNamed)
            {
                Add(document, part, "", at, changes);
            }
            else if (document.Find(at) is ListNode list)
            {
                for (int i = 0; i < list.Items.Count; i++)
                {
                    string item = JsonPointer.Append(at, i.ToString(CultureInfo.InvariantCulture));
                    Add(document, part, document.Find(item + "/id") is TextNode id ? id.Text : "", item, changes);
                }
            }
        }

        return changes;
    }

    /// <summary>Where a house's changes stand.</summary>
    /// <param name="house">Place of the house in the job, from 0.</param>
    public static string Section(int house) => string.Create(CultureInfo.InvariantCulture, $"/houses/{house}/program");

    /// <summary>Writes a value.</summary>
    /// <param name="document">The job as it is.</param>
    /// <param name="house">Place of the house in the job, from 0.</param>
    /// <param name="part">Part of the program.</param>
    /// <param name="name">Name of the thing in it.</param>
    /// <param name="field">What is changed.</param>
    /// <param name="typed">What is typed; nothing takes the change back.</param>
    /// <param name="units">Units of the job.</param>
    /// <returns>The edits; none where nothing differs.</returns>
    public static IReadOnlyList<Edit> Set(JobDocument document, int house, ProgramPart part, string name, ProgramField field, string typed, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(field);
        TypedChange? old = Of(document, house).FirstOrDefault(c => c.Part == part && c.Name == name && c.Field == field);
        if (string.IsNullOrWhiteSpace(typed))
        {
            return old is null ? [] : TakeBack(document, house, old);
        }

        string pointer = old?.Pointer ?? JsonPointer.Append(Thing(document, house, part, name) ?? "", field.Key);
        string json = field.Kind is null && int.TryParse(typed.Trim(), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int count)
            ? count.ToString(CultureInfo.InvariantCulture)
            : JsonText.Quote(Typing.WithUnit(typed.Trim(), Unit(field, units)));
        if (old is not null && json == document.Text[document.Find(pointer)!.Place.Start..document.Find(pointer)!.Place.End])
        {
            return [];
        }

        // The first change of a thing with a name brings the name along.
        return pointer == "/" + field.Key
            ? [new Edit(JsonPointer.Append(JsonPointer.Append(Section(house), part.Key), "-"), $"{{ \"id\": {JsonText.Quote(name)}, {JsonText.Quote(field.Key)}: {json} }}")]
            : [new Edit(pointer, json)];
    }

    /// <summary>Takes changes back; what would be left empty goes with the last.</summary>
    /// <param name="document">The job as it is.</param>
    /// <param name="house">Place of the house in the job, from 0.</param>
    /// <param name="change">The change.</param>
    public static IReadOnlyList<Edit> TakeBack(JobDocument document, int house, TypedChange change)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(change);
        string gone = change.Pointer;
        while (gone != Section(house) && document.Find(Above(gone)) is { } holder && Members(holder) == 1)
        {
            gone = Above(gone);
        }

        return [Edit.Removed(gone)];
    }

    /// <summary>The unit a bare number is taken in, which stands beside the field: seconds and W/m² for everyone, as control boxes count; a difference cannot be taken for a temperature here.</summary>
    /// <param name="field">The field.</param>
    /// <param name="units">Units of the job.</param>
    public static string Unit(ProgramField field, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(field);
        return field.Measure switch
        {
            ProgramMeasure.Time => "s",
            ProgramMeasure.Light => "W/m²",
            ProgramMeasure.Count => "",
            _ => units == UnitSystem.Us ? KindWords.Of(field.Kind!.Value).Customary : KindWords.Of(field.Kind!.Value).Metric,
        };
    }

    /// <summary>What is written, as one would type it into the field: a time in the seconds that a bare number is taken in, with minutes behind it.</summary>
    /// <param name="field">The field.</param>
    /// <param name="value">In the program's unit.</param>
    /// <param name="units">Units of the job.</param>
    public static string Written(ProgramField field, double value, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(field);
        string text = field.Text(value, units);
        return field.Measure == ProgramMeasure.Time && !text.EndsWith(" s", StringComparison.Ordinal) ? $"{QuantityFormat.Number(value, 9)} s ({text})" : text;
    }

    /// <summary>The smallest and the largest value that is taken, as one would type them: in the reader's units, rounded so that both are.</summary>
    /// <param name="field">The field.</param>
    /// <param name="units">Units of the job.</param>
    public static (string Least, string Most) Range(ProgramField field, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(field);
        return field.Kind is null ? (field.Least, field.Most) : (Limit(field, field.Least, 1, units), Limit(field, field.Most, -1, units));
    }

    /// <summary>What is understood of a value while it is typed: a few seconds where minutes are written are hardly meant.</summary>
    /// <param name="field">The field; a count has no echo.</param>
    /// <param name="typed">What is typed.</param>
    /// <param name="value">What is written, in the program's unit.</param>
    /// <param name="units">Units of the job.</param>
    public static (string Words, bool IsRight) Echo(ProgramField field, string typed, double value, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(field);
        ArgumentNullException.ThrowIfNull(typed);
        if (field.Kind is not { } kind || typed.Trim().Length == 0)
        {
            return ("", true);
        }

        (string words, bool isRight) = Typing.Echo(typed, kind, Unit(field, units));
        return field.Measure == ProgramMeasure.Time && value > 60 && QuantityReader.TryRead(Typing.WithUnit(typed.Trim(), "s"), kind, out Quantity time, out _) && time.Inside is > 0 and < 10
            ? ($"{QuantityFormat.Number(time.Inside, 6)} s, where {Written(field, value, units)} is written. For minutes type {QuantityFormat.Number(time.Inside, 6)} min.", false)
            : (words, isRight);
    }

    private static void Add(JobDocument document, ProgramPart part, string name, string at, List<TypedChange> changes) => changes.AddRange(
        from field in part.Fields
        let pointer = JsonPointer.Append(at, field.Key)
        where document.Find(pointer) is not (null or BlankNode)
        select new TypedChange(part, name, field, Typing.Text(document.Find(pointer), document), pointer));

    // A limit rounded outwards would be refused when typed: one part in two thousand, half of the last digit shown, inwards.
    private static string Limit(ProgramField field, string limit, int inwards, UnitSystem units)
    {
        double exact = Inside(limit);
        string text = field.Text(field.OfInside(exact), units);
        return inwards * (Inside(text) - exact) >= 0 ? text : field.Text(field.OfInside(exact + inwards * 0.0005 * Math.Abs(exact)), units);

        double Inside(string typed) => QuantityReader.TryRead(typed, field.Kind!.Value, out Quantity quantity, out _) ? quantity.Inside : throw new ArgumentException($"'{typed}' is no limit.", nameof(field));
    }

    // Where the fields of a thing stand; null for a thing that the document does not name.
    private static string? Thing(JobDocument document, int house, ProgramPart part, string name)
    {
        string at = JsonPointer.Append(Section(house), part.Key);
        if (!part.IsNamed)
        {
            return at;
        }

        int index = document.Find(at) is ListNode list ? list.Items.ToList().FindIndex(i => i is ObjectNode item && item.Find("id") is TextNode id && id.Text == name) : -1;
        return index < 0 ? null : JsonPointer.Append(at, index.ToString(CultureInfo.InvariantCulture));
    }

    private static string Above(string pointer) => pointer[..pointer.LastIndexOf('/')];

    // An id alone is nothing.
    private static int Members(Node node) => node switch
    {
        ObjectNode o => o.Members.Count(m => m.Key != "id"),
        ListNode list => list.Items.Count,
        _ => 0,
    };
}
