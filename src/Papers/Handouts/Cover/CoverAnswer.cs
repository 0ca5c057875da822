using Calx.Practicals.Definition;

namespace Calx.Papers.Handouts.Cover;

/// <summary>An answer from the readings of one group, and what is accepted for it.</summary>
/// <param name="Answer">The answer.</param>
/// <param name="Value">Its value, unrounded.</param>
/// <param name="Low">The lowest that is accepted, in the answer's unit.</param>
/// <param name="High">The highest.</param>
/// <param name="Decimals">With how many decimals it is printed, or null where it has none.</param>
internal sealed record CoverAnswer(AnswerDefinition Answer, double Value, double Low, double High, int? Decimals)
{
    /// <summary>Whether one value only is right: a difference of readings, which nobody has to round.</summary>
    public bool IsExact => Low == High;
}
