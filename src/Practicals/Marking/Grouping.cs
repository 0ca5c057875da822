using Calx.Practicals.Marking.Ideas;
using Calx.Practicals.Marking.Words;

namespace Calx.Practicals.Marking;

/// <summary>Students who can begin the next lesson with the same question.</summary>
/// <param name="Title">What they have in common, for the teacher.</param>
/// <param name="Question">The question to begin with.</param>
/// <param name="Students">Who is in it.</param>
/// <param name="Idea">The idea that they share, or null for those who need none mended.</param>
public sealed record Grouping(string Title, string Question, IReadOnlyList<string> Students, Idea? Idea)
{
    /// <summary>Two groups for the two ideas that most students share, and one for everybody else.</summary>
    internal static IReadOnlyList<Grouping> Of(IReadOnlyList<MarkedWork> works, IReadOnlyList<IdeaShare> ideas)
    {
        MarkedWork[] handedIn = [.. works.Where(w => w.Answers.Any(a => a.Verdict is not Verdict.Missing))];
        var left = new List<MarkedWork>(handedIn);
        List<Grouping> groups = [];
        // What lies behind a value is to be mended before a judgement that rests on it.
        foreach (Idea idea in ideas.Where(i => i.Students.Count > 0).OrderBy(i => i.Idea.IsOfJudgement).ThenByDescending(i => i.Students.Count).Select(i => i.Idea))
        {
            MarkedWork[] sharing = [.. left.Where(w => IdeaShare.Probability(w, idea) > 0.5)];
            if (groups.Count < 2 && sharing.Length > 0)
            {
                groups.Add(new Grouping(idea.Label, idea.Mend, [.. sharing.Select(w => w.Work.Student)], idea));
                left.RemoveAll(w => sharing.Contains(w));
            }
        }

        if (left.Count > 0)
        {
            bool right = left.All(w => w.Answers.All(a => a.IsAccepted));
            groups.Add(new Grouping(right ? MarkReasons.OfClass.NothingToMend : MarkReasons.OfClass.EachSomethingElse, right ? MarkReasons.OfClass.Further : MarkReasons.OfClass.GoThrough, [.. left.Select(w => w.Work.Student)], null));
        }

        return groups;
    }
}
