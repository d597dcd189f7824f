using System.Text.Encodings.Web;
using System.Text.Json;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;

namespace Glazewright.Web.Serving;

/// <summary>Who may sign in: names with hashed passwords in a file of the data folder that its owner alone reads.</summary>
/// <param name="folder">The data folder.</param>
public sealed class AccountFile(string folder)
{
    /// <summary>Fewest characters of a password.</summary>
    public const int FewestCharacters = 12;

    private const int MostCharacters = 200;
    private const int MostNameCharacters = 60;

    // PBKDF2 with HMAC-SHA512: the count that OWASP's password storage cheat sheet names (from memory: 210,000).
    private static readonly PasswordHasher<string> s_hasher = new(Options.Create(new PasswordHasherOptions { IterationCount = 210_000 }));

    // Checked for a name that has no account, so that the time taken does not tell which names have one.
    private static readonly string s_nobody = s_hasher.HashPassword("", "nobody has this password");

    private static readonly JsonSerializerOptions s_form = new() { WriteIndented = true, PropertyNamingPolicy = JsonNamingPolicy.CamelCase, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Where the accounts are kept.</summary>
    public string Path { get; } = System.IO.Path.Combine(folder, "accounts.json");

    /// <summary>Whether anyone may sign in.</summary>
    /// <exception cref="FormatException">The file is there and cannot be read.</exception>
    public bool IsAny => Read().Count > 0;

    /// <summary>Adds an account, or gives one a new password.</summary>
    /// <param name="name">Name, 1 to 60 characters.</param>
    /// <param name="password">Password.</param>
    /// <returns>What is wrong and what would be right; empty when it is done.</returns>
    /// <exception cref="FormatException">The file is there and cannot be read.</exception>
    public string Put(string name, string password)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(password);
        if (name.Trim() != name || name.Length is 0 or > MostNameCharacters || name.Any(char.IsControl))
        {
            return $"The name '{name}' cannot be used. Right: 1 to {MostNameCharacters} characters on one line, without space at its ends.";
        }

        if (password.Length is < FewestCharacters or > MostCharacters)
        {
            return $"The password has {password.Length} characters. Right: {FewestCharacters} to {MostCharacters}; a few words in a row are easily kept.";
        }

        Account account = new(name, s_hasher.HashPassword(name, password));
        Account[] all = [.. Read().Where(a => a.Name != name), account];
        Directory.CreateDirectory(folder);
        string beside = Path + ".new";
        FileStreamOptions own = new() { Mode = FileMode.Create, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
        {
            own.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        using (FileStream file = new(beside, own))
        {
            JsonSerializer.Serialize(file, all, s_form);
            file.Flush(flushToDisk: true);
        }

        File.Move(beside, Path, overwrite: true);
        return "";
    }

    /// <summary>Whether a password is that of a name.</summary>
    /// <param name="name">The name as typed.</param>
    /// <param name="password">The password as typed.</param>
    public bool Holds(string name, string password)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(password);
        if (name.Length > MostNameCharacters || password.Length > MostCharacters)
        {
            return false;
        }

        Account? account = Read().FirstOrDefault(a => a.Name == name);
        bool isRight = s_hasher.VerifyHashedPassword(name, account?.PasswordHash ?? s_nobody, password) != PasswordVerificationResult.Failed;
        return isRight && account is not null;
    }

    private IReadOnlyList<Account> Read()
    {
        try
        {
            return File.Exists(Path) ? JsonSerializer.Deserialize<Account[]>(File.ReadAllBytes(Path), s_form) ?? [] : [];
        }
        catch (JsonException e)
        {
            throw new FormatException($"{Path} cannot be read: {e.Message} Right: put it back as it was, or take it away and add the accounts again with --add-account.");
        }
    }

    private sealed record Account(string Name, string PasswordHash);
}
