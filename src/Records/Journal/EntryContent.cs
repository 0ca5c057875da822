using Calx.Measurement.Numbers;

namespace Calx.Records.Journal;

/// <summary>What was typed. A closed set.</summary>
public abstract record EntryContent
{
    /// <summary>Longest name, unit or letter.</summary>
    public const int LongestName = 200;

    /// <summary>Longest answer, comment, note or text of a happening.</summary>
    public const int LongestText = 4000;

    private EntryContent()
    {
    }

    /// <summary>Whether several of them in one cell all stand without contradicting each other, as notes do.</summary>
    public virtual bool StandsBesideOthers => false;

    internal abstract void Check();

    /// <summary>A reading, as written.</summary>
    /// <param name="Written">The number, trailing zeros kept.</param>
    /// <param name="Unit">Its unit.</param>
    /// <param name="Balance">The balance's printed letter, or null where none was chosen.</param>
    /// <param name="Vessel">The vessel's number, or null.</param>
    public sealed record Reading(WrittenNumber Written, string Unit, string? Balance, string? Vessel) : EntryContent
    {
        internal override void Check()
        {
            KeptText.MayBeEmpty(Unit, LongestName, nameof(Unit));
            KeptText.MayBeAbsent(Balance, LongestName, nameof(Balance));
            KeptText.MayBeAbsent(Vessel, LongestName, nameof(Vessel));
        }
    }

    /// <summary>Whether something was seen.</summary>
    /// <param name="Seen">False where the group says that it was not.</param>
    public sealed record Observation(bool Seen) : EntryContent
    {
        internal override void Check()
        {
        }
    }

    /// <summary>An answer to a question, as written.</summary>
    /// <param name="Text">The answer.</param>
    /// <param name="Unit">Its unit, or null where none was given.</param>
    public sealed record Answer(string Text, string? Unit) : EntryContent
    {
        internal override void Check()
        {
            KeptText.Needed(Text, LongestText, nameof(Text));
            KeptText.MayBeAbsent(Unit, LongestName, nameof(Unit));
        }
    }

    /// <summary>Marks given for an answer.</summary>
    /// <param name="Marks">From 0 to <paramref name="Of"/>.</param>
    /// <param name="Of">Most that could be had, above 0.</param>
    /// <param name="Comment">What the marker says of it, or null.</param>
    public sealed record Mark(decimal Marks, decimal Of, string? Comment) : EntryContent
    {
        internal override void Check()
        {
            ArgumentOutOfRangeException.ThrowIfNegative(Marks);
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(Of);
            ArgumentOutOfRangeException.ThrowIfGreaterThan(Marks, Of);
            KeptText.MayBeAbsent(Comment, LongestText, nameof(Comment));
        }
    }

    /// <summary>Words about a cell. Several of one cell all stand.</summary>
    /// <param name="Text">The words.</param>
    public sealed record Note(string Text) : EntryContent
    {
        /// <inheritdoc/>
        public override bool StandsBesideOthers => true;

        internal override void Check() => KeptText.Needed(Text, LongestText, nameof(Text));
    }

    /// <summary>Something that happened: the cell names it, as <c>flame-out</c>, <c>broken</c>, <c>joined</c>, <c>stop</c>,
    /// <c>bell</c> or <c>present</c>. It may happen several times, and all of them stand.</summary>
    /// <param name="Text">Its value; may be empty.</param>
    public sealed record Happening(string Text) : EntryContent
    {
        /// <inheritdoc/>
        public override bool StandsBesideOthers => true;

        internal override void Check() => KeptText.MayBeEmpty(Text, LongestText, nameof(Text));
    }
}
