using System.Text;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;

namespace Glazewright.Cli.Commands;

/// <summary>A figure's working as an indented tree: its inputs below it, and theirs, until what was typed, a default, a table or a measurement.</summary>
internal static class WorkingTree
{
    private const int Deepest = 12;

    /// <summary>The tree as text.</summary>
    public static string Text(ObjectNode figure, EqList<ObjectNode> all)
    {
        StringBuilder text = new();
        text.Append(Word(figure, "id")).Append('\n');
        text.Append($"{Word(figure, "label")}: {Word(figure, "shown")}\n");
        Working(text, figure, all, "", [Word(figure, "id")]);
        string caution = Word(figure, "caution");
        return text.Append(caution.Length > 0 ? $"Caution: {caution}\n" : "").ToString();
    }

    /// <summary>The tree as JSON.</summary>
    public static string Json(ObjectNode figure, EqList<ObjectNode> all)
    {
        StringBuilder json = new();
        Json(json, figure, all, [Word(figure, "id")]);
        return json.ToString();
    }

    /// <summary>A text field of an object, or empty.</summary>
    public static string Word(ObjectNode node, string key) => node.Find(key) switch { TextNode t => t.Text, NumberNode n => n.Typed, _ => "" };

    private static void Working(StringBuilder text, ObjectNode figure, EqList<ObjectNode> all, string lead, string[] path)
    {
        ObjectNode working = figure.Find("working") as ObjectNode ?? ObjectNode.Empty;
        EqList<ObjectNode> inputs = (working.Find("inputs") as ListNode)?.Items.OfType<ObjectNode>().ToEqList() ?? [];
        string how = Word(working, "kind") switch
        {
            "derived" => "= " + Word(working, "formula"),
            "observed" => "observed: " + Word(working, "method"),
            _ => "stated",
        };
        text.Append($"{lead}{(inputs.Count > 0 ? "│ " : "  ")}{how}\n");
        string limits = Word(working, "limits");
        if (limits.Length > 0)
        {
            text.Append($"{lead}{(inputs.Count > 0 ? "│ " : "  ")}limits: {limits}\n");
        }

        text.Append($"{lead}{(inputs.Count > 0 ? "│ " : "  ")}source: {SourceWords(figure)}\n");
        for (int i = 0; i < inputs.Count; i++)
        {
            bool last = i == inputs.Count - 1;
            ObjectNode input = inputs[i];
            text.Append($"{lead}{(last ? "└─" : "├─")} {Word(input, "symbol")} = {Word(input, "shown")}  {Word(input, "label")}");
            ObjectNode? below = Below(input, all, path);
            if (below is null)
            {
                text.Append($"  [{SourceWords(input)}]\n");
            }
            else
            {
                text.Append($"  ({Word(below, "id")})\n");
                Working(text, below, all, lead + (last ? "   " : "│  "), [.. path, Word(below, "id")]);
            }
        }
    }

    private static void Json(StringBuilder json, ObjectNode figure, EqList<ObjectNode> all, string[] path)
    {
        ObjectNode working = figure.Find("working") as ObjectNode ?? ObjectNode.Empty;
        json.Append($"{{ \"id\": {Quoted(figure, "id")}, \"label\": {Quoted(figure, "label")}, \"value\": {Number(figure)}, \"unit\": {Quoted(figure, "unit")}, \"shown\": {Quoted(figure, "shown")}, \"kind\": {Quoted(working, "kind")}, \"formula\": {Quoted(working, "formula")}, \"method\": {Quoted(working, "method")}, \"source\": {JsonText.Quote(SourceWords(figure))}, \"caution\": {Quoted(figure, "caution")}, \"inputs\": [");
        string joint = "";
        foreach (ObjectNode input in (working.Find("inputs") as ListNode)?.Items.OfType<ObjectNode>() ?? [])
        {
            json.Append(joint).Append($"{{ \"symbol\": {Quoted(input, "symbol")}, \"label\": {Quoted(input, "label")}, \"value\": {Number(input)}, \"unit\": {Quoted(input, "unit")}, \"shown\": {Quoted(input, "shown")}, \"source\": {JsonText.Quote(SourceWords(input))}");
            if (Below(input, all, path) is ObjectNode below)
            {
                json.Append(", \"figure\": ");
                Json(json, below, all, [.. path, Word(below, "id")]);
            }

            json.Append(" }");
            joint = ", ";
        }

        json.Append("] }");
    }

    // The figure that an input stands for; not one above it, and not endlessly deep.
    private static ObjectNode? Below(ObjectNode input, EqList<ObjectNode> all, string[] path)
    {
        string reference = Word(input, "reference");
        return reference.Length == 0 || path.Contains(reference) || path.Length >= Deepest ? null : all.FirstOrDefault(f => Word(f, "id") == reference);
    }

    private static string SourceWords(ObjectNode holder)
    {
        ObjectNode source = holder.Find("source") as ObjectNode ?? ObjectNode.Empty;
        string seen = Word(source, "seen") is { Length: > 0 } mark && mark != "read" ? $" ({mark})" : "";
        return Word(source, "kind") switch
        {
            "standard" => $"{Word(source, "name")}, {Word(source, "clause")}{seen}",
            "paper" => $"{Word(source, "work")}, {Word(source, "place")}{seen}",
            "first principles" => Word(source, "of"),
            "common practice" => "common practice: " + Word(source, "rule"),
            "given" => "typed at " + Word(source, "field"),
            "default" => $"default: {Word(source, "reason")}; set it at {Word(source, "field")}",
            "catalogue" => "catalogue entry " + Word(source, "entry"),
            _ => "not said",
        };
    }

    private static string Quoted(ObjectNode node, string key) => JsonText.Quote(Word(node, key));

    private static string Number(ObjectNode node) => node.Find("value") is NumberNode n ? n.Typed : "null";
}
