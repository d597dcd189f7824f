using System.Net;

namespace Glazewright.Web.Serving;

/// <summary>What the server was asked for on its command line.</summary>
/// <param name="DataFolder">Folder of the store.</param>
/// <param name="Store">The store's setting: a file in that folder, or a database.</param>
/// <param name="Url">Where it listens: an address of this machine alone.</param>
public sealed record ServeWish(string DataFolder, string Store, Uri Url)
{
    /// <summary>Where it listens when nothing is said.</summary>
    public const string UsualUrl = "http://127.0.0.1:8140";

    /// <summary>How it is called.</summary>
    public const string Usage = "glazewright serve [--data FOLDER] [--urls http://127.0.0.1:PORT] [--store postgres:CONNECTION]";

    /// <summary>Reads the command line.</summary>
    /// <param name="args">Arguments.</param>
    /// <param name="usualFolder">Folder of the store when none is named.</param>
    /// <param name="storeSetting">The store's setting from the surroundings, or null: a password does not belong on a command line.</param>
    /// <returns>The wish, or what is wrong with it.</returns>
    public static ServeReading Read(IReadOnlyList<string> args, string usualFolder, string? storeSetting)
    {
        ArgumentNullException.ThrowIfNull(args);
        (string? folder, string url, string? store) = (null, UsualUrl, storeSetting);
        for (int i = 0; i < args.Count; i += 2)
        {
            if (args[i] is "--help" or "-h")
            {
                return new ServeReading.Refused($"How it is called: {Usage}", IsHelp: true);
            }

            if (args[i] is not ("--data" or "--urls" or "--store"))
            {
                return new ServeReading.Refused($"'{args[i]}' means nothing here. Right: {Usage}");
            }

            if (i + 1 == args.Count || args[i + 1].Length == 0)
            {
                return new ServeReading.Refused($"{args[i]} wants a value. Right: {Usage}");
            }

            switch (args[i])
            {
                case "--data":
                    folder = args[i + 1];
                    break;
                case "--urls":
                    url = args[i + 1];
                    break;
                default:
                    store = args[i + 1];
                    break;
            }
        }

        if (WrongAddress(url, out Uri? at) is { } wrong)
        {
            return new ServeReading.Refused(wrong);
        }

        string data = Path.GetFullPath(folder ?? usualFolder);
        return new ServeReading.Read(new ServeWish(data, store ?? "sqlite:" + Path.Combine(data, "jobs.db"), at!));
    }

    // Jobs hold costs and margins, and nobody signs in: so nobody else may knock. A proxy or a tunnel that adds both can stand before a loopback address.
    private static string? WrongAddress(string url, out Uri? at)
    {
        if (!Uri.TryCreate(url, UriKind.Absolute, out at) || url.Contains(';', StringComparison.Ordinal) || at.AbsolutePath != "/" || at.Port is < 0 or > 65535)
        {
            return $"--urls '{url}' is not one address. Right: {UsualUrl}";
        }

        if (at.Scheme != Uri.UriSchemeHttp)
        {
            return $"--urls '{url}': only http on this machine itself is served. Right: {UsualUrl}";
        }

        return IsThisMachine(at.Host)
            ? null
            : $"--urls '{url}' would let other machines in, and this version has neither a sign-in nor TLS: it listens on this machine alone. Right: {UsualUrl}, and from elsewhere through a tunnel such as ssh -L, which asks who you are.";
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
