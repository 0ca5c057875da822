using Calx.Papers.Documents;
using Calx.Papers.Handouts.Cover;
using Calx.Papers.Spreadsheets;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;

namespace Calx.Papers.Handouts;

/// <summary>The papers of a lesson: documents, to print and for a word processor, and workbooks for a spreadsheet.</summary>
public sealed class PaperSet
{
    private readonly Practical? practical;
    private readonly PaperLanguage language;
    private readonly Lazy<IReadOnlyList<PaperPicture>> pictures;

    private PaperSet(Practical? practical, PaperLanguage language, IReadOnlyList<Paper> documents, IReadOnlyList<ResultsWorkbook> workbooks)
    {
        (this.practical, this.language) = (practical, language);
        (Documents, Workbooks) = (documents, workbooks);
        pictures = new(() => practical is null ? [] : PaperPicture.AllOf(practical, documents, language));
    }

    /// <summary>What is printed.</summary>
    public IReadOnlyList<Paper> Documents { get; }

    /// <summary>What is filled in on a computer.</summary>
    public IReadOnlyList<ResultsWorkbook> Workbooks { get; }

    /// <summary>The drawings and charts that stand on what is printed, each once, as files of their own.</summary>
    public IReadOnlyList<PaperPicture> Pictures => pictures.Value;

    /// <summary>The same with more documents behind them.</summary>
    public PaperSet With(IReadOnlyList<Paper> more) => new(practical, language, [.. Documents, .. more], Workbooks);

    /// <summary>Papers that were made already; their pictures are not kept as files.</summary>
    public static PaperSet Of(IReadOnlyList<Paper> documents)
    {
        ArgumentNullException.ThrowIfNull(documents);
        return new PaperSet(null, PaperLanguage.BritishEnglish, documents, []);
    }

    /// <summary>Makes them.</summary>
    /// <param name="setting">The lesson.</param>
    /// <param name="kinds">Which papers.</param>
    /// <param name="levels">How much the student sheets help.</param>
    /// <param name="stock">What is known of the school's stock; null for nothing.</param>
    /// <param name="outcome">What the class found; null before the lesson, when the papers that come after it are left out.</param>
    public static PaperSet Of(
        PaperSetting setting, IReadOnlyList<PaperKind> kinds, IReadOnlyList<SupportLevel> levels, PlanStock? stock = null, ClassOutcome? outcome = null)
    {
        ArgumentNullException.ThrowIfNull(setting);
        ArgumentNullException.ThrowIfNull(kinds);
        ArgumentNullException.ThrowIfNull(levels);
        List<Paper> documents = [];
        List<ResultsWorkbook> workbooks = [];
        foreach (PaperKind kind in kinds)
        {
            switch (kind)
            {
                case PaperKind.Student: documents.AddRange(levels.Select(level => StudentSheet.Of(setting, level))); break;
                case PaperKind.Requisition: documents.Add(RequisitionSheet.Of(setting, stock)); break;
                case PaperKind.Key: documents.Add(AnswerKey.Of(setting)); break;
                case PaperKind.Risk: documents.Add(RiskNotes.Of(setting)); break;
                case PaperKind.Lesson: documents.Add(LessonStrip.Of(setting)); break;
                case PaperKind.Results: workbooks.Add(ResultsWorkbook.Of(setting)); break;
                case PaperKind.Report or PaperKind.Display when outcome is null: break;
                case PaperKind.Report: documents.Add(ReportSheet.Of(setting, outcome)); break;
                case PaperKind.Display: documents.Add(DisplaySheet.Of(setting, outcome)); break;
                case PaperKind.Cover: documents.AddRange([CoverSheet.Of(setting), CoverQuestions.Of(setting), CoverKey.Of(setting)]); break;
                default: throw new ArgumentOutOfRangeException(nameof(kinds), kind, "There is no such paper.");
            }
        }

        return new PaperSet(setting.Practical, setting.Look.Language, documents, workbooks);
    }
}
