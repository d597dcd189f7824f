using System.Net;

namespace Glazewright.Web.Serving;

/// <summary>How others than this machine reach the server. Who comes from there signs in, and what passes on the way is encrypted: by this server, or by a proxy before it.</summary>
/// <param name="PublicUrl">The address that people type.</param>
/// <param name="Certificate">Certificate file (PEM or PKCS #12), or empty behind a proxy.</param>
/// <param name="Key">Its key file, or empty.</param>
/// <param name="Proxy">The only machine that may knock, or null where the server encrypts by itself.</param>
public sealed record Outside(Uri PublicUrl, string Certificate, string Key, IPAddress? Proxy);
