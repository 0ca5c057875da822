using Calx.Chemistry.Elements;
using Calx.Papers.Documents;
using Calx.Papers.Handouts;
using Calx.Papers.Tests.Handouts;
using Calx.Practicals.Watching;

namespace Calx.Papers.Tests.Texts;

/// <summary>The same of a lesson without practical work, and of a student sheet with one step on each page.</summary>
public sealed partial class SecondLanguageTests
{
    /// <summary>Nothing is handled in it: its papers say nothing of a draft.</summary>
    [Theory]
    [MemberData(nameof(Practicals))]
    public void The_papers_of_a_cover_lesson_are_in_it_but_for_the_sentences_of_practical_and_engine(string id)
    {
        PaperSetting setting = Setting(id, PseudoLanguage.Of());
        IReadOnlyList<Paper> papers = PaperSet.Of(setting, [PaperKind.Cover], []).Documents;
        Assert.Equal(3, papers.Count);
        Assert.All(papers, p => Assert.Empty(PlainIn([.. Written.LinesOf(p), p.Heads.Left, p.Heads.Foot], setting)));
    }

    /// <summary>But for the cautions at a step: those are the engine's, whole lines of it.</summary>
    [Theory]
    [MemberData(nameof(Practicals))]
    public void A_student_sheet_with_one_step_a_page_is_in_it(string id)
    {
        var setting = new PaperSetting(
            PseudoEngine.Plans[id], PaperOccasion.Unsaid, PaperLook.Usual with { Language = PseudoLanguage.Of(), IsOneStep = true }, isChecked: false);
        IReadOnlyList<string> lines = Written.LinesOf(StudentSheet.Of(setting, SupportLevel.Open));
        string[] engine = [.. CautionsOfSteps.Of(setting.Plan.Settings, AtomicWeights.Iupac2024).Values.SelectMany(c => c)];
        Assert.Contains(PseudoLanguage.Spoken("All digits"), lines);
        Assert.Empty(PlainIn(lines.Except(engine), setting));
    }
}
