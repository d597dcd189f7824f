using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace Glazewright.Web.Serving;

/// <summary>Where the server listens, and with which certificate.</summary>
internal static class Listening
{
    /// <exception cref="FormatException">The certificate cannot be used.</exception>
    public static void On(KestrelServerOptions kestrel, ServeWish wish)
    {
        X509Certificate2? certificate = wish.Outside is { Certificate.Length: > 0 } outside ? Read(outside) : null;
        void Secure(ListenOptions listen)
        {
            if (certificate is not null)
            {
                listen.UseHttps(certificate);
            }
        }

        if (wish.Url.Host == "localhost")
        {
            kestrel.ListenLocalhost(wish.Url.Port, Secure);
        }
        else
        {
            kestrel.Listen(IPAddress.Parse(wish.Url.Host.Trim('[', ']')), wish.Url.Port, Secure);
        }
    }

    private static X509Certificate2 Read(Outside outside)
    {
        try
        {
            bool isPacked = Path.GetExtension(outside.Certificate).ToLowerInvariant() is ".pfx" or ".p12";
            X509Certificate2 certificate = isPacked
                ? X509CertificateLoader.LoadPkcs12FromFile(outside.Certificate, Environment.GetEnvironmentVariable("GLAZEWRIGHT_CERTIFICATE_PASSWORD"))
                : X509Certificate2.CreateFromPemFile(outside.Certificate, outside.Key.Length > 0 ? outside.Key : outside.Certificate);
            return certificate.HasPrivateKey ? certificate : throw new CryptographicException("it has no private key.");
        }
        catch (CryptographicException e)
        {
            throw new FormatException($"The certificate '{outside.Certificate}' cannot be used: {e.Message} Right: PEM with its key in --key, or .pfx with its password in GLAZEWRIGHT_CERTIFICATE_PASSWORD.");
        }
    }
}
