using Glazewright.Design.Contracts;
using Glazewright.Design.Document;

namespace Glazewright.Web.Fields;

/// <summary>Where fields are shown and edited: a job in the store, or one that is only being begun.</summary>
public interface IJobDesk
{
    /// <summary>The document.</summary>
    JobDocument Document { get; }

    /// <summary>What is wrong with it.</summary>
    EqList<Fault> Faults { get; }

    /// <summary>What holds where it does not say.</summary>
    EqList<DefaultUsed> Defaults { get; }

    /// <summary>Readers' units.</summary>
    UnitSystem Units { get; }

    /// <summary>Whether nothing may be changed.</summary>
    bool IsLocked { get; }

    /// <summary>Names that a field's word may be, beyond what its shape says, as files of a library.</summary>
    /// <param name="pointer">The field.</param>
    IReadOnlyList<Offer> Offers(string pointer);

    /// <summary>Edits fields.</summary>
    /// <param name="edits">The edits.</param>
    /// <param name="what">What they are, in words.</param>
    Task EditAsync(IReadOnlyList<Edit> edits, string what);
}
