using System.Text;

namespace Glazewright.Web.Serving;

/// <summary>Adds an account from the command line: the password comes from the keyboard unseen, or as one line of a pipe, and never from an argument, which others on the machine can read.</summary>
internal static class AddAccount
{
    public static int Run(ServeWish wish)
    {
        string password = Console.IsInputRedirected ? Console.In.ReadLine() ?? "" : Unseen($"Password for {wish.AddAccount} (at least {AccountFile.FewestCharacters} characters): ");
        if (!Console.IsInputRedirected && Unseen("The same again: ") != password)
        {
            Console.Error.WriteLine("The two are not the same. Nothing was changed.");
            return 2;
        }

        AccountFile accounts = new(wish.DataFolder);
        string wrong = accounts.Put(wish.AddAccount, password);
        if (wrong.Length > 0)
        {
            Console.Error.WriteLine(wrong);
            return 2;
        }

        Console.Out.WriteLine($"{wish.AddAccount} may sign in; kept in {accounts.Path}.");
        return 0;
    }

    private static string Unseen(string ask)
    {
        Console.Error.Write(ask);
        StringBuilder typed = new();
        while (Console.ReadKey(intercept: true) is { Key: not ConsoleKey.Enter } key)
        {
            if (key.Key == ConsoleKey.Backspace)
            {
                typed.Length = Math.Max(0, typed.Length - 1);
            }
            else if (!char.IsControl(key.KeyChar))
            {
                typed.Append(key.KeyChar);
            }
        }

        Console.Error.WriteLine();
        return typed.ToString();
    }
}
