using Calx.Measurement.Expressions;

namespace Calx.Practicals.Marking.Ideas;

/// <summary>Something that reproduces a wrong value.</summary>
/// <param name="Ideas">One idea, or two at once.</param>
/// <param name="Formula">The changed formula, for people to read.</param>
/// <param name="Value">What it gives.</param>
/// <param name="Weight">Its prior, times how well it fits.</param>
/// <param name="Chance">As in <see cref="IdeaCandidate"/>.</param>
/// <param name="Tree">The changed formula where it is one from the readings on; else null.</param>
internal sealed record WeighedIdea(IReadOnlyList<Idea> Ideas, string Formula, double Value, double Weight, double Chance, Expression? Tree = null)
{
    /// <summary>The same ideas in either order are the same.</summary>
    public static string KeyOf(IReadOnlyList<Idea> ideas) => string.Join('+', ideas.Select(i => i.Id).Order(StringComparer.Ordinal));
}
