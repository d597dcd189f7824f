namespace Glazewright.Design.Pipeline;

/// <summary>SHA-256 of canonical bytes.</summary>
/// <param name="Hex">64 lower-case hexadecimal digits.</param>
public readonly record struct StageHash(string Hex);

/// <summary>A value with the hash of its canonical bytes: what stages hand to each other.</summary>
/// <typeparam name="T">The value.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="Hash">Hash of its content.</param>
public sealed record Keyed<T>(T Value, StageHash Hash);
