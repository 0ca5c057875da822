using Calx.Practicals.Definition;
using Calx.Practicals.Marking.Adjusted;

namespace Calx.Practicals.Marking;

/// <summary>A class, marked.</summary>
/// <param name="Works">Each student's, in the order they were given.</param>
/// <param name="Ideas">How widespread each idea is, the most widespread first.</param>
/// <param name="Questions">How each answer went, in the practical's order.</param>
/// <param name="Groupings">Up to three groups for the first ten minutes of the next lesson; every student who handed something in is in one.</param>
/// <param name="ToAskAbout">What looks adjusted, for the teacher's eyes only.</param>
/// <param name="LeftOverrulings">Overrulings that could not be used: they are kept.</param>
public sealed record MarkedClass(
    IReadOnlyList<MarkedWork> Works,
    IReadOnlyList<IdeaShare> Ideas,
    IReadOnlyList<QuestionResult> Questions,
    IReadOnlyList<Grouping> Groupings,
    IReadOnlyList<AdjustedLook> ToAskAbout,
    IReadOnlyList<LeftOverruling> LeftOverrulings)
{
    internal static MarkedClass Of(
        IReadOnlyList<AskedAnswer> asked, IReadOnlyList<MarkedWork> works, IReadOnlyList<AdjustedLook> toAskAbout, IReadOnlyList<LeftOverruling> left)
    {
        IdeaShare[] ideas = [.. IdeaShare.Of(works)];
        return new MarkedClass(works, ideas, [.. asked.Select(a => QuestionResult.Of(a, works))], Grouping.Of(works, ideas), toAskAbout, left);
    }
}
