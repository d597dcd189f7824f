using System.Globalization;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Document;

/// <summary>Brings a tree of an older version up to this one, a pure step at a time.</summary>
public static class Migrations
{
    /// <summary>The key that holds the version.</summary>
    public const string VersionKey = "glazewright";

    private static readonly Func<ObjectNode, ObjectNode>[] s_steps = [];

    /// <summary>The version this program reads and writes.</summary>
    public static int CurrentVersion => s_steps.Length + 1;

    /// <summary>Brings a document's tree up to this version.</summary>
    /// <param name="root">The tree as typed.</param>
    /// <param name="faults">What is wrong with its version; empty when it was brought up.</param>
    /// <returns>The tree in this version; the one given when its version is at fault.</returns>
    public static ObjectNode Upgrade(Node root, out EqList<Fault> faults) => Upgrade(root, s_steps, out faults);

    /// <summary>Brings a tree up through given steps; step i turns version i + 1 into version i + 2.</summary>
    /// <param name="root">The tree as typed.</param>
    /// <param name="steps">The steps.</param>
    /// <param name="faults">What is wrong with its version.</param>
    /// <returns>The upgraded tree.</returns>
    public static ObjectNode Upgrade(Node root, IReadOnlyList<Func<ObjectNode, ObjectNode>> steps, out EqList<Fault> faults)
    {
        ArgumentNullException.ThrowIfNull(steps);
        int current = steps.Count + 1;
        string right = string.Create(CultureInfo.InvariantCulture, $"\"{VersionKey}\": {current} at the top");
        if (root is not ObjectNode tree)
        {
            faults = [new Fault(FaultKind.WrongType, "", "", root.Place.Line, root.Place.Column, $"the document is {root.Called}", "an object { } with " + right)];
            return ObjectNode.Empty;
        }

        Node? typed = tree.Find(VersionKey);
        Place place = typed?.Place ?? tree.Place;
        if (typed is not NumberNode number || !int.TryParse(number.Typed, NumberStyles.None, CultureInfo.InvariantCulture, out int version) || version < 1)
        {
            string wrong = typed is null ? $"the document does not say that it is a job: \"{VersionKey}\" is missing" : "the version of the document is not a whole number from 1";
            faults = [new Fault(typed is null ? FaultKind.Missing : FaultKind.WrongType, "/" + VersionKey, "", place.Line, place.Column, wrong, right)];
            return tree;
        }

        if (version > current)
        {
            faults = [new Fault(FaultKind.OutOfRange, "/" + VersionKey, "", place.Line, place.Column, string.Create(CultureInfo.InvariantCulture, $"the document is version {version}; this program reads up to {current}"), "a newer program, or " + right)];
            return tree;
        }

        faults = [];
        for (int step = version - 1; step < steps.Count; step++)
        {
            tree = steps[step](tree);
        }

        return tree;
    }
}
