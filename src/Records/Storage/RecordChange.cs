namespace Calx.Records.Storage;

/// <summary>Something was changed, by this program or by another that shares the database.</summary>
/// <param name="Lesson">The lesson that it concerns, or null where it is none or any.</param>
/// <param name="What">What: one of the constants here.</param>
public sealed record RecordChange(RecordId? Lesson, string What)
{
    /// <summary>Entries were added to the lesson's journal.</summary>
    public const string Entries = "entries";

    /// <summary>A lesson was added, changed or deleted.</summary>
    public const string Lessons = "lesson";

    /// <summary>A lesson's door was opened or closed.</summary>
    public const string Doors = "door";

    /// <summary>A class or its members.</summary>
    public const string Classes = "class";

    /// <summary>A balance or its checks.</summary>
    public const string Balances = "balance";

    /// <summary>A signature was given.</summary>
    public const string Signatures = "signature";

    /// <summary>A number that past lessons taught was accepted or taken back.</summary>
    public const string Numbers = "numbers";

    /// <summary>A setting.</summary>
    public const string Settings = "setting";

    /// <summary>Anything may have changed: changes of other programs were missed for a while, or much was taken in at once.</summary>
    public const string Everything = "everything";
}
