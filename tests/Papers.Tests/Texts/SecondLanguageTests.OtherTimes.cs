using Calx.Papers.Documents;
using Calx.Papers.Handouts;
using Calx.Papers.Tests.Handouts;
using Calx.Papers.Tests.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.CatchUp;

namespace Calx.Papers.Tests.Texts;

/// <summary>The same of papers that are not for the lesson itself: for those who were away, for a week, and after it.</summary>
public sealed partial class SecondLanguageTests
{
    [Theory]
    [MemberData(nameof(Practicals))]
    public void Catch_up_packs_are_in_it_but_for_the_sentences_of_practical_and_engine(string id)
    {
        PaperSetting setting = Setting(id, PseudoLanguage.Of());
        IReadOnlyList<CatchUpPack> packs = PseudoEngine.Packs[id];
        string[] engine =
        [
            "Amir", .. packs.SelectMany(p => p.Truth.Planted).Select(c => c.Label),
        ];
        IReadOnlyList<Paper> papers = PseudoEngine.CatchUpPapers(id, SupportLevel.Guided, setting.Look);
        Assert.All(papers, p => Assert.Empty(PlainIn([.. Written.LinesOf(p), .. Folds(p), p.Heads.Left, p.Heads.Foot, p.Heads.Draft!], setting, engine)));
    }

    /// <summary>Names of days and months too.</summary>
    [Fact]
    public void The_week_of_a_technician_is_in_it()
    {
        PaperLanguage language = PseudoLanguage.Of();
        Assert.All(
            [WeekSheetTests.Full(language, "1"), WeekSheetTests.Empty(language)],
            p => Assert.Empty(PlainIn([.. Written.LinesOf(p), p.Heads.Left, p.Heads.Right, p.Heads.Foot], Setting("magnesium-oxide", language), "class of", "Lab")));
    }

    /// <summary>What stands between the engine's sentences.</summary>
    [Fact]
    public void Papers_after_a_lesson_have_their_headings_in_it()
    {
        PaperSetting setting = Setting("magnesium-oxide", PseudoLanguage.Of());
        var outcome = new ClassOutcome(PseudoEngine.In(Analysed.WithCauses), IsInvented: true, ShowsAccepted: true);
        foreach (Paper paper in new[] { ReportSheet.Of(setting, outcome), DisplaySheet.Of(setting, outcome) })
        {
            IEnumerable<string> headings = Written.Blocks(paper.Content).Select(b => b switch
            {
                PaperBlock.Heading heading => heading.Text.Text,
                PaperBlock.Panel panel => panel.Title.Text,
                PaperBlock.Figure figure => $"{figure.Picture.Title} {figure.Caption?.Text}",
                _ => string.Empty,
            });
            string[] groups = [.. outcome.Findings.Groups.Select(g => g.Name)];
            Assert.Empty(PlainIn([paper.Title.Text, .. headings, paper.Heads.Left, paper.Heads.Foot], setting, groups));
        }
    }

    /// <summary>What stands at folds, and on what opens them on a screen.</summary>
    private static IEnumerable<string> Folds(Paper paper) => Written.Blocks(paper.Content).OfType<PaperBlock.FoldOver>().SelectMany(f => (string[])[f.Fold.Text, f.Open.Text]);
}
