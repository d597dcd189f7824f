using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Program;

namespace Glazewright.Design.Brief.Reading;

/// <summary>Fields of the control program that a job may change. What is left out is as it is written from plant and wish, which is no default of the job: none is noted.</summary>
internal static class ProgramFields
{
    private const int MostChanged = 64;

    public static EqList<ProgramChange> Read(FieldReader f)
    {
        const string Doc = "What the technician changes of the control program that is written from plant and wish.";
        if (!f.IsDescribing && !f.IsGiven("program"))
        {
            f.Allow("program", new FieldShape.Group([]), "", Doc);
            return [];
        }

        List<ProgramChange> changes = [];
        _ = f.GroupOrBlank("program", "the program as it is written", Doc, p =>
        {
            foreach (ProgramPart part in ProgramParts.All)
            {
                Part(p, part, changes);
            }

            return changes;
        });
        return changes.ToEqList();
    }

    private static void Part(FieldReader p, ProgramPart part, List<ProgramChange> changes)
    {
        const string Blank = "as written";
        if (!p.IsDescribing && !p.IsGiven(part.Key))
        {
            p.Allow(part.Key, new FieldShape.Group([]), "", part.Doc);
        }
        else if (part.IsNamed)
        {
            _ = p.Several(part.Key, 0, MostChanged, Blank, part.Doc, item =>
            {
                string name = item.Words("id", null, "Name of what is changed.", part.Example, 60);
                return Values(item, part, name, changes);
            });
        }
        else
        {
            _ = p.GroupOrBlank(part.Key, Blank, part.Doc, group => Values(group, part, "", changes));
        }
    }

    private static List<ProgramChange> Values(FieldReader f, ProgramPart part, string name, List<ProgramChange> changes)
    {
        foreach (ProgramField field in part.Fields)
        {
            if (Value(f, field) is double value)
            {
                changes.Add(new ProgramChange(part.Key, name, field.Key, value, f.At(field.Key)));
            }
        }

        return changes;
    }

    private static double? Value(FieldReader f, ProgramField field)
    {
        string doc = char.ToUpperInvariant(field.Words[0]) + field.Words[1..] + ".";
        if (!f.IsDescribing && !f.IsGiven(field.Key))
        {
            f.Allow(field.Key, new FieldShape.Group([]), "", doc);
            return null;
        }

        return field.Kind is { } kind
            ? f.QuantityOrBlank(field.Key, kind, field.Least, field.Most, "as written", doc) is double inside ? field.OfInside(inside) : null
            : f.WholeOrBlank(field.Key, int.Parse(field.Least, System.Globalization.CultureInfo.InvariantCulture), int.Parse(field.Most, System.Globalization.CultureInfo.InvariantCulture), "as written", doc);
    }
}
