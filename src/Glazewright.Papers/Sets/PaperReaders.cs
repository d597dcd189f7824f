using Glazewright.Design.Contracts;

namespace Glazewright.Papers.Sets;

/// <summary>The readers of a package in words, and the white lists that several papers share.</summary>
public static class PaperReaders
{
    /// <summary>All but the contractor, in the order of the contents page.</summary>
    public static EqList<PaperReader> All { get; } = Enum.GetValues<PaperReader>().ToEqList();

    /// <summary>The contractor alone.</summary>
    public static EqList<PaperReader> ContractorAlone { get; } = [];

    /// <summary>A reader as typed and as printed.</summary>
    /// <param name="reader">The reader.</param>
    public static string Word(PaperReader reader) => reader.ToString().ToLowerInvariant();

    /// <summary>The heading of a reader's set.</summary>
    /// <param name="reader">The reader.</param>
    public static string Heading(PaperReader reader) => reader switch
    {
        PaperReader.Grower => "For the grower",
        PaperReader.Reviewer => "For the plan reviewer and the engineer",
        PaperReader.Shop => "For the shop",
        PaperReader.Crew => "For the crew",
        PaperReader.Controls => "For the controls technician",
        _ => "For other trades",
    };

    /// <summary>Readers as initials, as the drawing list shows them.</summary>
    /// <param name="readers">A white list.</param>
    /// <returns>One letter a reader in the order of <see cref="All"/>.</returns>
    public static string Initials(EqList<PaperReader> readers)
    {
        ArgumentNullException.ThrowIfNull(readers);
        return string.Concat(All.Where(readers.Contains).Select(Initial));
    }

    /// <summary>The initial of a reader.</summary>
    /// <param name="reader">The reader.</param>
    public static char Initial(PaperReader reader) => reader switch
    {
        PaperReader.Grower => 'G',
        PaperReader.Reviewer => 'R',
        PaperReader.Shop => 'S',
        PaperReader.Crew => 'W',
        PaperReader.Controls => 'C',
        _ => 'T',
    };
}
