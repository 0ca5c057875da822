namespace Calx.Practicals.Definition;

/// <summary>What is read, and what is asked of the readings.</summary>
internal sealed record Asked(
    IReadOnlyList<ReadingDefinition> Readings,
    IReadOnlyList<ColumnDefinition> Columns,
    IReadOnlyList<QuantityDefinition> Quantities,
    FindingsDefinition Findings,
    IReadOnlyList<ConclusionDefinition> Conclusions,
    IReadOnlyList<AnswerDefinition> Answers,
    IReadOnlyList<AskedAnswer> FurtherAnswers,
    SeriesDefinition? Series = null);
