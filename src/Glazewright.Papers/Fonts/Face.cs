namespace Glazewright.Papers.Fonts;

/// <summary>The two weights that every paper is lettered in.</summary>
public enum Face
{
    /// <summary>Running text, dimensions, table cells.</summary>
    Regular,

    /// <summary>Headings, large numbers, marks.</summary>
    SemiBold,
}
