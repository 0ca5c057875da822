namespace Calx.Practicals.Readings;

/// <summary>What a column of a class file was taken for.</summary>
public abstract record ColumnMeaning
{
    private ColumnMeaning()
    {
    }

    /// <summary>A short word for the meaning: the reading's id, <c>group</c>, <c>trial</c>, ..., or <c>ignored</c>.</summary>
    public abstract string Word { get; }

    /// <summary>A reading of the practical.</summary>
    /// <param name="BaseId">Id of the reading.</param>
    /// <param name="Occurrence">1, or the number of the repeat.</param>
    public sealed record Reading(string BaseId, int Occurrence) : ColumnMeaning
    {
        /// <inheritdoc/>
        public override string Word => TakenReading.IdOf(BaseId, Occurrence);
    }

    /// <summary>A ready-made mass: one of the practical's columns, tared or already subtracted.</summary>
    /// <param name="ColumnId">Id of the practical's column.</param>
    public sealed record ReadyMade(string ColumnId) : ColumnMeaning
    {
        /// <inheritdoc/>
        public override string Word => ColumnId;
    }

    /// <summary>Something said of the group: group, trial, arm, time, observations or balance.</summary>
    /// <param name="Kind">Which of them.</param>
    public sealed record Said(SaidOfGroup Kind) : ColumnMeaning
    {
        /// <inheritdoc/>
        public override string Word => Kind switch
        {
            SaidOfGroup.Group => "group",
            SaidOfGroup.Trial => "trial",
            SaidOfGroup.Arm => "arm",
            SaidOfGroup.Time => "time",
            SaidOfGroup.Observations => "observations",
            _ => "balance",
        };
    }

    /// <summary>Points of mass against time.</summary>
    /// <param name="Time">The time with its unit.</param>
    public sealed record Point(string Time) : ColumnMeaning
    {
        /// <inheritdoc/>
        public override string Word => "series " + Time;
    }

    /// <summary>One row a reading: this column names the reading.</summary>
    public sealed record ReadingName : ColumnMeaning
    {
        /// <inheritdoc/>
        public override string Word => "reading";
    }

    /// <summary>One row a reading: this column holds its value.</summary>
    public sealed record ReadingValue : ColumnMeaning
    {
        /// <inheritdoc/>
        public override string Word => "value";
    }

    /// <summary>Not used, with the reason.</summary>
    /// <param name="Reason">Why, a sentence without a full stop.</param>
    public sealed record Ignored(string Reason) : ColumnMeaning
    {
        /// <inheritdoc/>
        public override string Word => "ignored";
    }
}
