using System.CommandLine;
using System.Diagnostics.CodeAnalysis;
using Glazewright.Cli.Running;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;

namespace Glazewright.Cli.Commands;

/// <summary>Shows the working of a figure of an earlier package, as a tree down to what was typed.</summary>
internal static class ExplainCommand
{
    private static readonly string[] s_inPackage = ["result.json", Path.Combine("contractor", "result.json")];

    public static Command Make(Desk desk)
    {
        Argument<string> result = new("RESULT") { Description = "A result.json, or the package folder that holds it." };
        result.Validators.Add(r => CommonOptions.NotEmpty(r, "RESULT"));
        Argument<string> figure = new("FIGURE") { Description = "Id of a figure, or the end of one. Left out, all are listed.", Arity = ArgumentArity.ZeroOrOne };
        Option<bool> json = CommonOptions.Json();
        Command command = new("explain", "Shows how a figure came to be: formula, inputs and where each comes from, as a tree.\n\nExample: glazewright explain herb-yard A/duty/heat-loss") { result, figure, json };
        command.SetAction(parsed => Run(desk, parsed.GetValue(result)!, parsed.GetValue(figure) ?? "", parsed.GetValue(json)));
        return command;
    }

    private static int Run(Desk desk, string path, string wanted, bool json)
    {
        if (!TryRead(path, out EqList<ObjectNode> figures, out Fault? unread))
        {
            return Refuse(desk, unread, json);
        }

        if (wanted.Length == 0)
        {
            ListAll(desk, figures, json);
            return Exit.Done;
        }

        ObjectNode[] found = [.. figures.Where(f => Id(f) == wanted)];
        found = found.Length > 0 ? found : [.. figures.Where(f => Id(f).EndsWith("/" + wanted, StringComparison.Ordinal))];
        if (found.Length != 1)
        {
            string? nearest = NearestWord.Find(wanted, figures.Select(Id));
            return Refuse(
                desk,
                found.Length > 1
                    ? Wrong(FaultKind.UnknownChoice, $"'{wanted}' is the end of {string.Join(", ", found.Select(Id))}.", "one of them in full.")
                    : Wrong(FaultKind.UnknownChoice, $"There is no figure '{wanted}'.", nearest is null ? $"glazewright explain {path} lists them" : $"did you mean {nearest}?"),
                json);
        }

        if (json)
        {
            desk.Out.WriteLine(WorkingTree.Json(found[0], figures));
        }
        else
        {
            desk.Out.Write(WorkingTree.Text(found[0], figures));
        }

        return Exit.Done;
    }

    private static Fault Wrong(FaultKind kind, string wrong, string right) => new(kind, "", "", 0, 0, wrong, right);

    private static int Refuse(Desk desk, Fault fault, bool json)
    {
        if (json)
        {
            desk.Out.WriteLine(FaultLines.JsonObject([fault]));
        }
        else
        {
            desk.Errors.WriteLine($"{fault.Wrong} Right: {fault.Right}");
        }

        return Exit.Faults;
    }

    private static void ListAll(Desk desk, EqList<ObjectNode> figures, bool json)
    {
        if (json)
        {
            desk.Out.WriteLine("[\n" + string.Join(",\n", figures.Select(f => $"  {{ \"id\": {JsonText.Quote(Id(f))}, \"label\": {JsonText.Quote(WorkingTree.Word(f, "label"))}, \"shown\": {JsonText.Quote(WorkingTree.Word(f, "shown"))} }}")) + "\n]");
            return;
        }

        int widest = Math.Min(48, figures.Select(f => Id(f).Length).DefaultIfEmpty(0).Max());
        foreach (ObjectNode figure in figures)
        {
            desk.Out.WriteLine($"{Id(figure).PadRight(widest)}  {WorkingTree.Word(figure, "shown"),14}  {WorkingTree.Word(figure, "label")}");
        }
    }

    private static bool TryRead(string path, out EqList<ObjectNode> figures, [NotNullWhen(false)] out Fault? fault)
    {
        figures = [];
        string? file = Directory.Exists(path) ? s_inPackage.Select(n => Path.Combine(path, n)).FirstOrDefault(File.Exists) : File.Exists(path) ? path : null;
        if (file is null)
        {
            fault = Wrong(FaultKind.NotFound, $"There is no result in '{path}'.", "a result.json, or a package folder made by glazewright design.");
            return false;
        }

        JobDocument document;
        try
        {
            document = JobDocument.Read(File.ReadAllText(file));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            fault = Wrong(FaultKind.NotFound, $"'{file}' cannot be read: {e.Message}", "a file that you may read.");
            return false;
        }

        if (document.Find("/figures") is not ListNode list)
        {
            fault = document.Faults.Count > 0
                ? document.Faults[0] with { Wrong = $"'{file}' is damaged: {document.Faults[0].Wrong}.", Right = "a result.json made by glazewright design." }
                : Wrong(FaultKind.NotFound, $"'{file}' holds no figures.", "a result.json made by glazewright design.");
            return false;
        }

        figures = list.Items.OfType<ObjectNode>().ToEqList();
        fault = null;
        return true;
    }

    private static string Id(ObjectNode figure) => WorkingTree.Word(figure, "id");
}
