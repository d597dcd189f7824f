using System.Net;

namespace Glazewright.Web.Serving;

/// <summary>What the server was asked for on its command line.</summary>
/// <param name="DataFolder">Folder of the store.</param>
/// <param name="Store">The store's setting: a file in that folder, or a database.</param>
/// <param name="Url">Where it listens: an address of this machine alone, unless others are let in by a sign-in.</param>
/// <param name="Outside">How others reach it; null for this machine alone.</param>
/// <param name="AddAccount">Name of an account to add in place of serving, or empty.</param>
public sealed record ServeWish(string DataFolder, string Store, Uri Url, Outside? Outside = null, string AddAccount = "")
{
    /// <summary>Where it listens when nothing is said.</summary>
    public const string UsualUrl = "http://127.0.0.1:8140";

    /// <summary>How it is called.</summary>
    public const string Usage =
        "glazewright serve [--data FOLDER] [--urls http://127.0.0.1:PORT] [--store postgres:CONNECTION]; for others: --add-account NAME once, then --public https://NAME with --certificate FILE [--key FILE] or --proxy ADDRESS";

    private static readonly string[] s_options = ["--data", "--urls", "--store", "--public", "--certificate", "--key", "--proxy", "--add-account"];

    /// <summary>Reads the command line.</summary>
    /// <param name="args">Arguments.</param>
    /// <param name="usualFolder">Folder of the store when none is named.</param>
    /// <param name="storeSetting">The store's setting from the surroundings, or null: a password does not belong on a command line.</param>
    /// <returns>The wish, or what is wrong with it.</returns>
    public static ServeReading Read(IReadOnlyList<string> args, string usualFolder, string? storeSetting)
    {
        ArgumentNullException.ThrowIfNull(args);
        Dictionary<string, string> said = [];
        for (int i = 0; i < args.Count; i += 2)
        {
            if (args[i] is "--help" or "-h")
            {
                return new ServeReading.Refused($"How it is called: {Usage}", IsHelp: true);
            }

            if (!s_options.Contains(args[i]))
            {
                return new ServeReading.Refused($"'{args[i]}' means nothing here. Right: {Usage}");
            }

            if (i + 1 == args.Count || args[i + 1].Length == 0)
            {
                return new ServeReading.Refused($"{args[i]} wants a value. Right: {Usage}");
            }

            said[args[i]] = args[i + 1];
        }

        string url = said.GetValueOrDefault("--urls", UsualUrl);
        if (WrongAddress(url, out Uri? at) is { } wrong)
        {
            return new ServeReading.Refused(wrong);
        }

        if (WrongOutside(said, at!, out Outside? outside) is { } open)
        {
            return new ServeReading.Refused(open);
        }

        string data = Path.GetFullPath(said.GetValueOrDefault("--data", usualFolder));
        string store = said.GetValueOrDefault("--store", storeSetting ?? "sqlite:" + Path.Combine(data, "jobs.db"));
        return new ServeReading.Read(new ServeWish(data, store, at!, outside, said.GetValueOrDefault("--add-account", "")));
    }

    private static string? WrongAddress(string url, out Uri? at) =>
        !Uri.TryCreate(url.Replace("://*", "://0.0.0.0", StringComparison.Ordinal), UriKind.Absolute, out at) || url.Contains(';', StringComparison.Ordinal) || at.AbsolutePath != "/" || at.Port is < 0 or > 65535
            || (at.Scheme != Uri.UriSchemeHttp && at.Scheme != Uri.UriSchemeHttps) || (at.Host != "localhost" && !IPAddress.TryParse(at.Host.Trim('[', ']'), out _))
            ? $"--urls '{url}' is not one address of a machine. Right: {UsualUrl}, or for others https://0.0.0.0:8443"
            : null;

    // Jobs hold costs and margins: nobody reaches them from elsewhere unsigned or in the clear.
    private static string? WrongOutside(Dictionary<string, string> said, Uri at, out Outside? outside)
    {
        outside = null;
        string certificate = said.GetValueOrDefault("--certificate", "");
        string key = said.GetValueOrDefault("--key", "");
        string proxy = said.GetValueOrDefault("--proxy", "");
        bool isTls = at.Scheme == Uri.UriSchemeHttps;
        if (!said.TryGetValue("--public", out string? address))
        {
            return certificate.Length + key.Length + proxy.Length > 0 ? "--certificate, --key and --proxy are for others than this machine, and it is not said how they reach it. Right: --public https://NAME with them."
                : isTls ? $"--urls '{at.OriginalString}' wants a certificate. Right: --public https://NAME --certificate FILE, or {UsualUrl} for this machine alone."
                : IsThisMachine(at.Host) ? null
                : $"--urls '{at.OriginalString}' would let other machines in without a sign-in and in the clear. Right: {UsualUrl} for this machine alone; for others add an account with --add-account NAME, then give --public https://NAME with --certificate FILE (and https in --urls), or with --proxy ADDRESS of the machine that encrypts.";
        }

        if (!Uri.TryCreate(address, UriKind.Absolute, out Uri? open) || open.Scheme != Uri.UriSchemeHttps || open.AbsolutePath != "/" || open.Host.Length == 0 || open.UserInfo.Length + open.Query.Length + open.Fragment.Length > 0)
        {
            return $"--public '{address}' is not the address that people type. Right: as https://yard.example or https://yard.example:8443";
        }

        IPAddress? gate = null;
        if (proxy.Length > 0 && !IPAddress.TryParse(proxy, out gate))
        {
            return $"--proxy '{proxy}' is not the address of one machine. Right: as 127.0.0.1 or 10.0.0.2";
        }

        if (isTls == (gate is not null) || isTls != (certificate.Length > 0) || (key.Length > 0 && certificate.Length == 0))
        {
            return "What is encrypted, and where? Right: --urls https://… with --certificate FILE [--key FILE] and no --proxy; or --urls http://… with --proxy ADDRESS of the machine that encrypts, and no certificate.";
        }

        if (new[] { certificate, key }.FirstOrDefault(f => f.Length > 0 && !File.Exists(f)) is { } lost)
        {
            return $"There is no file '{lost}'. Right: the certificate (PEM with --key, or .pfx with its password in GLAZEWRIGHT_CERTIFICATE_PASSWORD).";
        }

        outside = new Outside(open, certificate, key, gate);
        return null;
    }

    private static bool IsThisMachine(string host) =>
        host == "localhost" || (IPAddress.TryParse(host.Trim('[', ']'), out IPAddress? address) && IPAddress.IsLoopback(address));
}

/// <summary>What came of reading a command line. A closed case.</summary>
public abstract record ServeReading
{
    private ServeReading()
    {
    }

    /// <summary>It can be served.</summary>
    /// <param name="Wish">What is asked for.</param>
    public sealed record Read(ServeWish Wish) : ServeReading;

    /// <summary>It cannot.</summary>
    /// <param name="Words">What is wrong and what would be right.</param>
    /// <param name="IsHelp">True when help was asked for.</param>
    public sealed record Refused(string Words, bool IsHelp = false) : ServeReading;
}
