using System.Reflection;

namespace Glazewright.Papers.Fonts;

/// <summary>The embedded font files (IBM Plex Sans, SIL Open Font License 1.1, static TrueType outlines).</summary>
public static class FontFiles
{
    /// <summary>The bytes of a face's TrueType file.</summary>
    /// <param name="face">Which weight.</param>
    /// <exception cref="InvalidOperationException">The resource is missing: the build is broken, not the job.</exception>
    public static byte[] Bytes(Face face)
    {
        string name = face == Face.SemiBold ? "IBMPlexSans-SemiBold.ttf" : "IBMPlexSans-Regular.ttf";
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"Embedded font {name} is missing from the build.");
        byte[] bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
