using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace Glazewright.Papers.Ifc;

/// <summary>Globally unique ids that stay: the same path of the same job has the same id in every issue, so that another program sees what changed.</summary>
internal static class IfcIds
{
    private const string Digits = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz_$";

    /// <summary>The id of a path.</summary>
    /// <param name="job">Name of the job.</param>
    /// <param name="path">Path, unique in the job and file.</param>
    /// <returns>22 characters: a name-based UUID (version 8 of RFC 9562, the first 16 bytes of a SHA-256) in the base 64 of IFC.</returns>
    public static string Of(string job, string path)
    {
        Span<byte> hash = stackalloc byte[32];
        SHA256.HashData(Encoding.UTF8.GetBytes(job + "\n" + path), hash);
        hash[6] = (byte)((hash[6] & 0x0F) | 0x80);
        hash[8] = (byte)((hash[8] & 0x3F) | 0x80);
        UInt128 value = new(BinaryPrimitives.ReadUInt64BigEndian(hash), BinaryPrimitives.ReadUInt64BigEndian(hash[8..]));
        Span<char> id = stackalloc char[22];
        for (int i = 21; i >= 0; i--)
        {
            id[i] = Digits[(int)(value & 63)];
            value >>= 6;
        }

        return new string(id);
    }
}
