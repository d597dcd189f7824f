using Glazewright.Design.Contracts;

namespace Glazewright.Design.Program;

/// <summary>A part of the program in which a job may change values: what stands in it goes by names that stay when the plant changes.</summary>
public abstract class ProgramPart
{
    private protected ProgramPart(string key, string title, string doc, string example, EqList<ProgramField> fields)
    {
        Key = key;
        Title = title;
        Doc = doc;
        Example = example;
        Fields = fields;
    }

    /// <summary>Its key in the job.</summary>
    public string Key { get; }

    /// <summary>Its title.</summary>
    public string Title { get; }

    /// <summary>What it is.</summary>
    public string Doc { get; }

    /// <summary>A name that a thing in it may have; empty where the part is one thing.</summary>
    public string Example { get; }

    /// <summary>Whether the things in it have names.</summary>
    public bool IsNamed => Example.Length > 0;

    /// <summary>What may be changed of each.</summary>
    public EqList<ProgramField> Fields { get; }

    /// <summary>Names of what stands in it; one empty name where the part is one thing that is there.</summary>
    /// <param name="program">The program.</param>
    public abstract IReadOnlyList<string> Names(ProgramDocument program);

    /// <summary>A value.</summary>
    /// <param name="program">The program.</param>
    /// <param name="name">Name of the thing.</param>
    /// <param name="field">Key of the field.</param>
    /// <returns>In the program's unit; null where there is no such thing, or it has no such value.</returns>
    public abstract double? Find(ProgramDocument program, string name, string field);

    internal abstract ProgramDocument With(ProgramDocument program, string name, string field, double value);
}

/// <summary>A part whose things are of one record.</summary>
internal sealed class ProgramPart<T> : ProgramPart
    where T : class
{
    private readonly Func<ProgramDocument, IEnumerable<(string Name, T Thing)>> _things;
    private readonly Func<ProgramDocument, T, T, ProgramDocument> _put;
    private readonly IReadOnlyList<Way> _ways;

    public ProgramPart(
        string key, string title, string doc, string example, Func<ProgramDocument, IEnumerable<(string Name, T Thing)>> things, Func<ProgramDocument, T, T, ProgramDocument> put, params Way[] ways)
        : base(key, title, doc, example, ways.Select(w => w.Field).ToEqList()) => (_things, _put, _ways) = (things, put, ways);

    /// <summary>How a value is taken from a thing and put into it; one that the thing does not have is null.</summary>
    public sealed record Way(ProgramField Field, Func<T, double?> Of, Func<T, double, T> With);

    public override IReadOnlyList<string> Names(ProgramDocument program) => [.. _things(program).Select(t => t.Name)];

    public override double? Find(ProgramDocument program, string name, string field) =>
        Thing(program, name) is { } thing && _ways.FirstOrDefault(w => w.Field.Key == field) is { } way ? way.Of(thing) : null;

    internal override ProgramDocument With(ProgramDocument program, string name, string field, double value)
    {
        T thing = Thing(program, name) ?? throw new ArgumentOutOfRangeException(nameof(name), name, "No such thing in the program.");
        return _put(program, thing, _ways.First(w => w.Field.Key == field).With(thing, value));
    }

    private T? Thing(ProgramDocument program, string name) => _things(program).FirstOrDefault(t => t.Name == name).Thing;
}
