using Calx.Measurement.Numbers;

namespace Calx.Records.Journal;

/// <summary>What was typed. A closed set.</summary>
public abstract record EntryContent
{
    private EntryContent()
    {
    }

    /// <summary>A reading, as written.</summary>
    /// <param name="Written">The number, trailing zeros kept.</param>
    /// <param name="Unit">Its unit.</param>
    /// <param name="Balance">The balance's printed letter, or null where none was chosen.</param>
    /// <param name="Vessel">The vessel's number, or null.</param>
    public sealed record Reading(WrittenNumber Written, string Unit, string? Balance, string? Vessel) : EntryContent;

    /// <summary>Whether something was seen.</summary>
    /// <param name="Seen">False where the group says that it was not.</param>
    public sealed record Observation(bool Seen) : EntryContent;
}
