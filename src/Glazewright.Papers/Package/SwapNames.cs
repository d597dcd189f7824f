namespace Glazewright.Papers.Package;

/// <summary>Names beside the target that a swap uses; dotted, so that listings stay clean.</summary>
/// <param name="Parent">Folder that holds the target.</param>
/// <param name="Fresh">The package being built.</param>
/// <param name="Old">The earlier package while it is being replaced.</param>
/// <param name="Lock">Held while a run writes.</param>
internal sealed record SwapNames(string Parent, string Fresh, string Old, string Lock)
{
    public static SwapNames Of(string target)
    {
        string parent = Path.GetDirectoryName(target)!;
        string name = Path.GetFileName(target);
        return new SwapNames(parent, Path.Combine(parent, $".{name}.glazewright-new"), Path.Combine(parent, $".{name}.glazewright-old"), Path.Combine(parent, $".{name}.glazewright-lock"));
    }
}
